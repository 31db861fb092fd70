package timetable

import (
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
	return r.Steps[i].Do.Key()
}

func TestAt(t *testing.T) {
	r := lesson(noon)
	for _, c := range []struct {
		second   int // from the start
		load     int
		on, next string
		left     int // s; -1 where no more is to come
	}{
		{-600, 1, "", "preheat", 600},
		{0, 1, "preheat", "load-1", 30 * minute},
		{0, 2, "", "load-1", 63 * minute},
		{30*minute - 1, 1, "preheat", "load-1", 1},
		{30 * minute, 1, "load-1", "recovery-1", 3 * minute},
		{50 * minute, 1, "hold-1", "cool-1", 13 * minute},
		{63 * minute, 1, "cool-1", "ready", 10 * minute},
		{63 * minute, 2, "load-1", "recovery-1", 3 * minute},
		{73 * minute, 1, "ready", "", -1},
		{80 * minute, 2, "hold-1", "cool-1", 16 * minute},
		{1 << 30, 2, "ready", "", -1},
		{0, 3, "", "", -1},
	} {
		now := noon + Instant(c.second)
		on, next := r.At(now, c.load)
		assert.Equal(t, [2]string{c.on, c.next}, [2]string{key(&r, on), key(&r, next)}, "%d s, load %d", c.second, c.load)
		ends, ok := r.Ends(now, c.load)
		assert.Equal(t, c.left >= 0, ok)
		if ok {
			assert.Equal(t, c.left, int(ends-now), "%d s, load %d", c.second, c.load)
		}
	}
	assert.Equal(t, 2, r.Loads())
	assert.Equal(t, noon+106*minute, r.Over())
}

func TestDue(t *testing.T) {
	r := lesson(noon)
	for _, c := range []struct {
		second, load, seen int // seconds from the start
		due                string
	}{
		{0, 1, 0, ""},          // it was started by hand just now
		{0, 1, -60, "preheat"}, // it started by itself
		{30*minute - 1, 1, 0, ""},
		{30 * minute, 1, 0, "load-1"},
		{30 * minute, 2, 0, ""},
		{30*minute + 5, 1, 30*minute + 4, ""}, // seen to
		{33 * minute, 1, 0, "load-1"},         // the oven's recovery needs no hands
		{39 * minute, 1, 0, "load-1"},
		{40 * minute, 1, 0, ""}, // ten minutes are long enough
		{63 * minute, 1, 31 * minute, "cool-1"},
		{63 * minute, 2, 31 * minute, "load-1"},
		{74 * minute, 1, 31 * minute, "ready"},
	} {
		r.Seen = noon + Instant(c.seen)
		assert.Equal(t, c.due, key(&r, r.Due(noon+Instant(c.second), c.load)), "%d s, load %d", c.second, c.load)
	}
}

func TestLate(t *testing.T) {
	type late struct{ second, load, by int }
	for _, c := range []struct {
		name string
		late []late
		want map[string]int // "do load" -> start, min
	}{
		{"while the oven heats up everything moves", []late{{10 * minute, 1, 5 * minute}},
			map[string]int{"load-1 1": 35, "cool-1 1": 68, "ready 1": 78, "load-1 2": 68, "cool-1 2": 101, "ready 2": 111}},
		{"in the first hold everything behind it moves", []late{{40 * minute, 1, 5 * minute}},
			map[string]int{"load-1 1": 30, "hold-1 1": 38, "cool-1 1": 68, "load-1 2": 68, "ready 2": 111}},
		{"cooling holds up nobody else", []late{{64 * minute, 1, 15 * minute}},
			map[string]int{"cool-1 1": 63, "ready 1": 88, "load-1 2": 63, "cool-1 2": 96, "ready 2": 106}},
		{"a load that waits waits longer", []late{{10 * minute, 2, 5 * minute}},
			map[string]int{"load-1 1": 30, "cool-1 1": 63, "load-1 2": 68, "cool-1 2": 101}},
		{"twice", []late{{40 * minute, 1, minute}, {65 * minute, 2, 15 * minute}},
			map[string]int{"cool-1 1": 64, "ready 1": 74, "load-1 2": 64, "hold-1 2": 87, "ready 2": 122}},
		{"before the start", []late{{-60, 1, 5 * minute}}, map[string]int{"preheat 1": 5, "load-1 1": 35, "ready 2": 111}},
	} {
		t.Run(c.name, func(t *testing.T) {
			r := lesson(noon)
			for _, l := range c.late {
				assert.True(t, r.Late(noon+Instant(l.second), l.load, l.by))
			}
			check(t, r.Steps)
			got := map[string]int{}
			for _, s := range r.Steps {
				got[s.Do.Key()+" "+string(rune('0'+s.Load))] = s.Start / minute
			}
			for k, want := range c.want {
				assert.Equal(t, want, got[k], k)
			}
			assert.Equal(t, noon, r.Start)
		})
	}
	for name, l := range map[string]late{"all done": {106 * minute, 2, 60}, "that load is done": {74 * minute, 1, 60}, "no such load": {0, 3, 60}, "not at all": {0, 1, 0}, "early": {0, 1, -60}, "for ever": {0, 1, 1 << 40}} {
		r := lesson(noon)
		assert.False(t, r.Late(noon+Instant(l.second), l.load, l.by), name)
		assert.Equal(t, lesson(noon), r, name)
	}
}

// However late a run is, it stays one that can be carried out: nothing moves that is over, everything else by at most as much as was lost.
func TestLateAnywhere(t *testing.T) {
	random := rand.New(rand.NewPCG(3, 4))
	for range 500 {
		steps, _ := Steps(nil, some(random))
		r := Run{Start: noon, Steps: steps}
		now, load, by := noon+Instant(random.IntN(Total(steps)+1)), 1+random.IntN(r.Loads()), 1+random.IntN(3000)
		before := slices.Clone(steps)
		if !r.Late(now, load, by) {
			continue
		}
		check(t, r.Steps)
		was := map[[2]int]Step{}
		for _, s := range before {
			was[[2]int{int(s.Do), s.Load}] = s
		}
		longer := 0
		for _, s := range r.Steps {
			old := was[[2]int{int(s.Do), s.Load}]
			longer += s.Length - old.Length
			moved := s.Start - old.Start
			assert.GreaterOrEqual(t, moved, 0)
			assert.LessOrEqual(t, moved, by)
			if noon+Instant(old.Start) <= now {
				assert.Zero(t, moved, "what has begun stays")
			}
		}
		assert.Contains(t, []int{0, by}, longer)
	}
}

func TestRunText(t *testing.T) {
	random := rand.New(rand.NewPCG(5, 6))
	for i := range 200 {
		steps, _ := Steps(nil, some(random))
		r := Run{Name: []string{"", " = ", "Blind “a=b” 50 %", "1 2 3"}[i%4], Start: noon + Instant(i), Seen: noon, Steps: steps}
		got, ok := ParseRun(r.Text())
		require.True(t, ok, r.Text())
		assert.Equal(t, r, got)
		r.Late(noon, 1, 300)
		got, ok = ParseRun(r.Text())
		assert.True(t, ok)
		assert.Equal(t, r, got)
	}
	r := lesson(noon)
	assert.Equal(t, "1 1795608000 1795608000 0.1.0.1800 1.1.1800.180 2.1.1980.300 3.1.2280.1500 4.1.3780.600 1.2.3780.180 2.2.3960.300 3.2.4260.1500 11.1.4380.0 4.2.5760.600 11.2.6360.0 =Lesson", r.Text())
}

func TestParseRunRefuses(t *testing.T) {
	for name, text := range map[string]string{
		"nothing":              "",
		"another version":      "2 5 5 0.1.0.60 =x",
		"no name":              "1 5 5 0.1.0.60",
		"no steps":             "1 5 5 =x",
		"no step behind":       "1 5 5 0.1.0.60  =x",
		"a minus":              "1 -5 5 0.1.0.60 =x",
		"no number":            "1 a 5 0.1.0.60 =x",
		"after the calendar":   "1 253370764800 5 0.1.0.60 =x",
		"unknown step":         "1 5 5 12.1.0.60 =x",
		"a step far off":       "1 5 5 256.1.0.60 =x",
		"no load":              "1 5 5 0.0.0.60 =x",
		"too many loads":       "1 5 5 0.13.0.60 =x",
		"endless":              "1 5 5 0.1.0.999999999999 =x",
		"too short a step":     "1 5 5 0.1.0 =x",
		"too long a step":      "1 5 5 0.1.0.60.5 =x",
		"a full stop too many": "1 5 5 0.1.0.60. =x",
		"not in order":         "1 5 5 0.1.60.60 1.1.0.60 =x",
		"control characters":   "1 5 5 0.1.0.60 =a\x1fb",
		"a new line":           "1 5 5 0.1.0.60 =a\nb",
		"too many steps":       "1 5 5" + strings.Repeat(" 0.1.0.60", int(NumDos)*MaxLoads+1) + " =x",
	} {
		r, ok := ParseRun(text)
		assert.False(t, ok, name)
		assert.Empty(t, r.Steps, name)
	}
}

func FuzzParseRun(f *testing.F) {
	r := lesson(noon)
	f.Add(r.Text(), int64(noon+2000), 1, 60)
	f.Add("1 5 5 0.1.0.60 =x", int64(5), 1, 60)
	f.Fuzz(func(t *testing.T, text string, now int64, load, by int) {
		r, ok := ParseRun(text)
		if !ok {
			return
		}
		assert.Equal(t, len(r.Steps) > 0, ok)
		again, ok := ParseRun(r.Text())
		assert.True(t, ok)
		assert.Equal(t, r, again)
		r.At(Instant(now), load)
		r.Ends(Instant(now), load)
		r.Due(Instant(now), load)
		r.Late(Instant(now), load, by)
		assert.LessOrEqual(t, r.Loads(), MaxLoads)
	})
}
