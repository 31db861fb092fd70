package timetable

import (
	"fmt"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// lesson is the school's double lesson: two loads, one heat-set, in at 30 min, out at 63 and 96, cool at 73 and 106 min.
func lesson(start Instant) Run {
	steps, _ := Steps(nil, times(1, 2, 30, 3, 5, 25, 10, 0, 0, 0, 0))
	return Run{Name: "Lesson", Start: start, Seen: start, Steps: steps}
}

const noon = Instant(1795608000) // 2026-11-25 12:00 UTC

func key(r *Run, i int) string {
	if i < 0 {
		return ""
	}
	return r.Steps[i].Do.Key() + " " + string(rune('0'+r.Steps[i].Load))
}

func TestAt(t *testing.T) {
	r := lesson(noon)
	for _, c := range []struct {
		second   int // from the start
		on, next string
		left     int // s
	}{
		{-600, "", "preheat 1", 600},
		{0, "preheat 1", "load-1 1", 30 * minute},
		{30*minute - 1, "preheat 1", "load-1 1", 1},
		{30 * minute, "load-1 1", "recovery-1 1", 3 * minute},
		{50 * minute, "hold-1 1", "cool-1 1", 13 * minute},
		{63 * minute, "load-1 2", "recovery-1 2", 3 * minute}, // the first load came out as the second went in
		{71*minute + 30, "hold-1 2", "rest 1", 90},
		{73 * minute, "ready 1", "cool-1 2", 23 * minute},
		{105 * minute, "cool-1 2", "rest 2", minute},
		{106 * minute, "ready 2", "", 0},
		{1 << 30, "ready 2", "", 0},
	} {
		now := noon + Instant(c.second)
		on, next := r.At(now)
		assert.Equal(t, [2]string{c.on, c.next}, [2]string{key(&r, on), key(&r, next)}, "%d s", c.second)
		if next >= 0 {
			assert.Equal(t, c.left, int(r.Begins(next)-now), "%d s", c.second)
		}
	}
}

// The same lesson: what needs hands next is of whichever load, and with each something may be on.
func TestNextHands(t *testing.T) {
	r := lesson(noon)
	for _, c := range []struct {
		minute   int
		next, on string
	}{
		{-1, "preheat 1", ""},
		{0, "load-1 1", "preheat 1"},
		{34, "cool-1 1", "recovery-1 1"},
		{62, "cool-1 1", "hold-1 1"},
		{63, "rest 1", "cool-1 1, load-1 2"},
		{72, "rest 1", "cool-1 1, hold-1 2"},
		{80, "cool-1 2", "hold-1 2"},
		{106, "", ""},
	} {
		now := noon + Instant(c.minute*minute)
		next := ""
		if s := r.NextHands(now); s != nil {
			next = s.Do.Key() + " " + string(rune('0'+s.Load))
		}
		assert.Equal(t, c.next, next, "%d min", c.minute)
		var on []string
		for i := range r.Steps {
			if r.On(&r.Steps[i], now) {
				on = append(on, key(&r, i))
			}
		}
		assert.Equal(t, c.on, strings.Join(on, ", "), "%d min", c.minute)
	}
}

func TestWaits(t *testing.T) {
	r := lesson(noon)
	for _, c := range []struct {
		second, seen int // seconds from the start
		missed, due  string
	}{
		{0, 0, "", ""},            // it was started by hand just now
		{0, -60, "", "preheat 1"}, // it started by itself
		{30*minute - 1, 0, "", ""},
		{30 * minute, 0, "", "load-1 1"},
		{30*minute + 5, 30*minute + 4, "", ""}, // seen to
		{33 * minute, 0, "", "load-1 1"},       // the oven's recovery needs no hands
		{40*minute - 1, 0, "", "load-1 1"},
		{40 * minute, 0, "load-1 1", ""}, // ten minutes of ringing are long enough; it is not forgotten
		{62 * minute, 0, "load-1 1", ""},
		{63 * minute, 31 * minute, "", "cool-1 1, load-1 2"}, // both at once
		{63 * minute, 0, "load-1 1", "cool-1 1, load-1 2"},
		{73 * minute, 0, "load-1 1, cool-1 1, load-1 2", "rest 1, ready 1"},
		{74 * minute, 70 * minute, "", "rest 1, ready 1"},
		{9999 * minute, 0, "load-1 1, cool-1 1, load-1 2, rest 1, ready 1, cool-1 2, rest 2, ready 2", ""}, // the page was closed for a week
		{9999 * minute, 106*minute - 1, "rest 2, ready 2", ""},
		{9999 * minute, 9999 * minute, "", ""},
	} {
		r.Seen = noon + Instant(c.seen)
		got := map[Wait][]string{}
		for i := range r.Steps {
			wait := r.Waits(&r.Steps[i], noon+Instant(c.second))
			got[wait] = append(got[wait], key(&r, i))
		}
		assert.Equal(t, c.missed, strings.Join(got[Missed], ", "), "%d s", c.second)
		assert.Equal(t, c.due, strings.Join(got[Due], ", "), "%d s", c.second)
	}
}

func TestLate(t *testing.T) {
	type late struct{ second, by int }
	for _, c := range []struct {
		name string
		late []late
		want map[string]int // step -> start, min
	}{
		{"while the oven heats up everything moves", []late{{10 * minute, 5 * minute}},
			map[string]int{"preheat 1": 0, "load-1 1": 35, "cool-1 1": 68, "ready 1": 78, "load-1 2": 68, "cool-1 2": 101, "ready 2": 111}},
		{"in the first hold everything behind it moves", []late{{40 * minute, 5 * minute}},
			map[string]int{"load-1 1": 30, "hold-1 1": 38, "cool-1 1": 68, "load-1 2": 68, "ready 2": 111}},
		{"both loads that are under way", []late{{72 * minute, 15 * minute}},
			map[string]int{"cool-1 1": 63, "ready 1": 88, "load-1 2": 63, "hold-1 2": 71, "cool-1 2": 111, "ready 2": 121}},
		{"twice", []late{{40 * minute, minute}, {65 * minute, 15 * minute}},
			map[string]int{"cool-1 1": 64, "load-1 2": 64, "ready 1": 89, "ready 2": 122}},
		{"and back", []late{{40 * minute, 15 * minute}, {41 * minute, -5 * minute}},
			map[string]int{"hold-1 1": 38, "cool-1 1": 73, "load-1 2": 73, "ready 2": 116}},
		{"before the start", []late{{-60, 5 * minute}}, map[string]int{"preheat 1": 5, "load-1 1": 35, "ready 2": 111}},
	} {
		t.Run(c.name, func(t *testing.T) {
			r := lesson(noon)
			for _, l := range c.late {
				assert.True(t, r.Late(noon+Instant(l.second), l.by))
			}
			check(t, r.Steps)
			got := map[string]int{}
			for i := range r.Steps {
				got[key(&r, i)] = r.Steps[i].Start / minute
			}
			for k, want := range c.want {
				assert.Equal(t, want, got[k], k)
			}
			assert.Equal(t, noon, r.Start)
		})
	}
	for name, l := range map[string]late{"all done": {106 * minute, 60}, "for ever": {0, 1 << 40}, "to now": {62 * minute, -60}, "to before now": {62 * minute, -120}} {
		r := lesson(noon)
		assert.False(t, r.Late(noon+Instant(l.second), l.by), name)
		assert.Equal(t, lesson(noon), r, name)
	}
}

// However late a run is, it stays one that can be carried out: nothing moves that has begun, everything else by what was lost; and back again.
func TestLateAnywhere(t *testing.T) {
	random := rand.New(rand.NewPCG(3, 4))
	for range 500 {
		steps, _ := Steps(nil, some(random))
		r := Run{Start: noon, Steps: slices.Clone(steps)}
		now, by := noon+Instant(random.IntN(Total(steps)+1)), 1+random.IntN(3000)
		if !r.Late(now, by) {
			continue
		}
		check(t, r.Steps)
		for i := range steps {
			moved := r.Steps[i].Start - steps[i].Start
			assert.Equal(t, noon+Instant(steps[i].Start) > now, moved == by)
			assert.Contains(t, []int{0, by}, moved)
		}
		assert.True(t, r.Late(now, -by))
		assert.Equal(t, steps, r.Steps)
	}
}

// Steps that differ in anything have another sum; 0 is for none that is known.
func TestSum(t *testing.T) {
	seen := map[int]string{}
	note := func(name string, steps []Step) {
		sum := Sum(steps)
		assert.NotZero(t, sum, name)
		assert.Less(t, sum, int(1e12), "%s: twelve digits are read", name)
		assert.Empty(t, seen[sum], name)
		seen[sum] = name
	}
	note("none", nil)
	steps := lesson(noon).Steps
	note("as they are", steps)
	for i := range steps {
		for name, other := range map[string]Step{"do": {Do: 1}, "load": {Load: 1}, "start": {Start: 60}, "length": {Length: 60}} {
			moved := slices.Clone(steps)
			s := &moved[i]
			*s = Step{s.Do + other.Do, s.Load + other.Load, s.Start + other.Start, s.Length + other.Length}
			note(fmt.Sprint(name, " of ", i), moved)
		}
		note(fmt.Sprint("without ", i), slices.Delete(slices.Clone(steps), i, i+1))
	}
}

func TestRunText(t *testing.T) {
	random := rand.New(rand.NewPCG(5, 6))
	for i := range 200 {
		steps, _ := Steps(nil, some(random))
		r := Run{Name: []string{"", " = ", "Blind “a=b” 50 %", "1 2 3"}[i%4], Start: noon + Instant(i), Seen: noon, Made: Sum(steps), Gap: []string{"", "120.7 mm", "4 3/4 in"}[i%3], Oven: []string{"dial 187 °C", ""}[i%2], Steps: steps}
		var got Run
		require.True(t, got.Parse(r.Text()), r.Text())
		assert.Equal(t, r, got)
		r.Late(noon, 300)
		assert.True(t, got.Parse(r.Text()))
		assert.Equal(t, r, got)
	}
	r := lesson(noon)
	assert.Equal(t, "3 1795608000 1795608000 0 0 1 0 1800 1 1 1800 180 2 1 1980 300 3 1 2280 1500 4 1 3780 600 1 2 3780 180 2 2 3960 300 3 2 4260 1500 10 1 4380 0 11 1 4380 0 4 2 5760 600 10 2 6360 0 11 2 6360 0 ===Lesson", r.Text())
}

func TestParseRefuses(t *testing.T) {
	for name, text := range map[string]string{
		"nothing":             "",
		"another version":     "4 5 5 0 1 0 60 =x",
		"no sum":              "3 5 5 0 1 0 60 =x",
		"no name":             "1 5 5 0 1 0 60 ",
		"no steps":            "1 5 5 =x",
		"two blanks":          "1 5 5 0 1 0 60  =x",
		"no blank":            "1 5 5 0 1 0 60=x",
		"a minus":             "1 -5 5 0 1 0 60 =x",
		"no number":           "1 a 5 0 1 0 60 =x",
		"after the calendar":  "1 253370764800 5 0 1 0 60 =x",
		"seen after that":     "1 5 253370764800 0 1 0 60 =x",
		"unknown step":        "1 5 5 12 1 0 60 =x",
		"a step far off":      "1 5 5 256 1 0 60 =x",
		"no load":             "1 5 5 0 0 0 60 =x",
		"too many loads":      "1 5 5 0 13 0 60 =x",
		"endless":             "1 5 5 0 1 0 999999999999 =x",
		"starts never":        "1 5 5 0 1 999999999999 60 =x",
		"more than 12 digits": "1 5 5 0 1 0 0000000000060 =x",
		"half a step":         "1 5 5 0 1 0 =x",
		"a step and a half":   "1 5 5 0 1 0 60 5 =x",
		"a full stop":         "1 5 5 0 1 0 60. =x",
		"not in order":        "1 5 5 0 1 60 60 1 1 0 60 =x",
		"control characters":  "1 5 5 0 1 0 60 =a\x1fb",
		"delete":              "1 5 5 0 1 0 60 =a\x7fb",
		"too many steps":      "1 5 5 " + strings.Repeat("0 1 0 60 ", int(NumDos)*MaxLoads+1) + "=x",
	} {
		r := lesson(noon)
		assert.False(t, r.Parse(text), name)
		assert.Equal(t, Run{}, r, name)
	}
	var r Run
	step := []Step{{DoPreheat, 1, 0, 60}}
	for text, want := range map[string]Run{
		"1 5 6 0 1 0 60 =x":                      {Name: "x", Start: 5, Seen: 6, Steps: step}, // as it was kept before gap and oven were
		"1 5 6 0 1 0 60 =a=b=c":                  {Name: "a=b=c", Start: 5, Seen: 6, Steps: step},
		"2 5 6 0 1 0 60 =120.7 mm=dial 187 °C=x": {Name: "x", Gap: "120.7 mm", Oven: "dial 187 °C", Start: 5, Seen: 6, Steps: step},
		"2 5 6 0 1 0 60 =120\t mm==a=b":          {Name: "a=b", Gap: "120\t mm", Start: 5, Seen: 6, Steps: step}, // what a box can hold
		"3 5 6 7 0 1 0 60 =4 in==x":              {Name: "x", Gap: "4 in", Start: 5, Seen: 6, Made: 7, Steps: step},
	} {
		assert.True(t, r.Parse(text), text)
		assert.Equal(t, want, r)
	}
}

func FuzzParse(f *testing.F) {
	r := lesson(noon)
	f.Add(r.Text(), int64(noon+2000), 60)
	f.Add("1 5 5 0 1 0 60 =x", int64(5), 60)
	f.Add("3 5 5 7 0 1 0 60 =4 in=dial 187 °C=x", int64(5), 60)
	f.Add("2 5 5 0 1 0 60 =4 in=dial 187 °C=x", int64(5), 60)
	f.Fuzz(func(t *testing.T, text string, now int64, by int) {
		var r, again Run
		if !r.Parse(text) {
			return
		}
		assert.NotEmpty(t, r.Steps)
		assert.True(t, again.Parse(r.Text()))
		assert.Equal(t, r, again)
		r.At(Instant(now))
		r.NextHands(Instant(now))
		r.Waits(&r.Steps[0], Instant(now))
		r.Late(Instant(now), by)
		assert.LessOrEqual(t, Loads(r.Steps), MaxLoads)
	})
}
