package show

import (
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"twistbench/calc"
	"twistbench/calc/timetable"
)

// berlin has the changes of its clocks in 2026 and 2027 (the time zone database).
var berlin = timetable.Zone{{From: 1767222000, Ahead: 3600}, {From: 1774746000, Ahead: 7200}, {From: 1792890000, Ahead: 3600}, {From: 1806195600, Ahead: 7200}}

// eight is 2026-10-24 20:00 there.
const eight = timetable.Instant(1792864800)

// at shows a plan at eight in the evening in Berlin.
func at(t testing.TB, plan string) (*Display, map[string]string) {
	t.Helper()
	d, _, values := worked(t, plan)
	return d, values
}

// worked does the same, and returns the state too.
func worked(t testing.TB, plan string) (*Display, *calc.State, map[string]string) {
	t.Helper()
	d := english()
	d.Now, d.Zone = eight, berlin
	s, faults := calc.ParsePlan(plan)
	require.Empty(t, faults)
	var st calc.State
	st.Work(&s)
	values, _ := slots(t, d.Slots(nil, &st))
	return d, &st, values
}

func rows(table string) []string {
	return strings.Split(strings.ReplaceAll(table, string(rune(Cell)), " | "), string(rune(Row)))
}

// 15 + 2 × (3 + 5 + 60 + 30) + 10 = 221 min and 24 h of rest.
func TestTimetable(t *testing.T) {
	_, values := at(t, "")
	got := rows(values["clock.table r"])
	assert.Len(t, got, 12)
	assert.Equal(t, "+00:15 ● | Put it in | 00:03", got[1])
	assert.Equal(t, "+03:41 ● | Release, let it rest | 24:00", got[10])
	assert.Equal(t, "+27:41 ● | Ready to test | ", got[11])
	assert.Equal(t, "Ready to test 27:41 h after the start.", values["clock.ready t"])
	assert.Equal(t, "+27:41", values["clock.at t"])

	for _, c := range []struct {
		plan, ready, at, says, first string
	}{
		// Today is a Saturday. Without a day the next such time is taken, and which one that is always said.
		{"clock.time=22:10", "Start Sat 22:10, ready to test Mon 00:51.", "Mon 00:51", "Start Sat 22:10, ready to test Mon 00:51.", "Sat 22:10 ● | Heat up the oven | 00:15"}, // clocks go back in between
		{"clock.time=19:59", "Start Sat 19:59, ready to test Sun 22:40.", "", "Start Sat 19:59, ready to test Sun 22:40.", ""},
		{"clock.time=20:00", "", "", "Start Sat 20:00, ready to test Sun 22:41.", "Sat 20:00 ● | Heat up the oven | 00:15"},
		{"clock.time=22:10&clock.mode=ready", "Start Sun 18:29, ready to test Mon 22:10.", "Mon 22:10", "Start Sun 18:29, ready to test Mon 22:10.", "Sun 18:29 ● | Heat up the oven | 00:15"}, // that of 22:10 today would need a start yesterday
		{"clock.time=19:58", "Start Sun 19:58, ready to test Mon 23:39.", "Mon 23:39", "Start Sun 19:58, ready to test Mon 23:39.", "Sun 19:58 ● | Heat up the oven | 00:15"},
		{"clock.time=01:30", "Start Sun 01:30, ready to test Mon 04:11.", "Mon 04:11", "Start Sun 01:30, ready to test Mon 04:11.", "Sun 01:30 ● | Heat up the oven | 00:15"},           // an hour is put back in between
		{"clock.time=19:58&heat.rest=90 days&clock.mode=ready", "Start Sun 16:17, ready to test Sat 2027-01-23 19:58.", "", "Start Sun 16:17, ready to test Sat 2027-01-23 19:58.", ""}, // 90 days and 221 min
		{"clock.time=19:58&clock.day=2026-10-24", "Start Sat 19:58, ready to test Sun 22:39.", "", "That is a start Sat 19:58, which is past. Choose another time or day.", ""},
		{"clock.time=20:30&clock.day=2026-10-24", "Start Sat 20:30, ready to test Sun 23:11.", "", "", "Sat 20:30 ● | Heat up the oven | 00:15"},
		// All on another day, the end too: 221 min and an hour of rest.
		{"clock.time=14:00&clock.mode=ready&heat.rest=1 h", "Start Sun 09:19, ready to test Sun 14:00.", "Sun 14:00", "Start Sun 09:19, ready to test Sun 14:00.", "Sun 09:19 ● | Heat up the oven | 00:15"},
		{"clock.time=22:10&clock.mode=ready&clock.day=2026-11-02", "Start Sun 2026-11-01 18:29, ready to test Mon 2026-11-02 22:10.", "Mon 22:10", "", "Sun 2026-11-01 18:29 ● | Heat up the oven | 00:15"},
		{"clock.time=02:30&clock.day=2026-10-25", "", "", "That time comes twice, as clocks are put back: the first is taken.", "Sun 02:30 ● | Heat up the oven | 00:15"},
		{"clock.time=02:30", "", "", "That time comes twice, as clocks are put back: the first is taken. Start Sun 02:30, ready to test Mon 05:11.", "Sun 02:30 ● | Heat up the oven | 00:15"},
		{"clock.time=02:30&clock.day=2027-03-28", "Start Sun 2027-03-28 03:30, ready to test Mon 2027-03-29 07:11.", "Mon 07:11", "Clocks are put forward over that time: so much later is taken.", "Sun 2027-03-28 03:30 ● | Heat up the oven | 00:15"},
		{"clock.time=25:00", "Ready to test 27:41 h after the start.", "+27:41", "“25:00” is not a time I can read. Type it like 07:30.", "+00:00 ● | Heat up the oven | 00:15"},
		{"clock.time=22:10&clock.day=tomorrow", "", "", "Start Sat 22:10, ready to test Mon 00:51.", ""},
		{"heat.cool-1=", "needs first cooling", "–", "", ""},
		{"heat.cool-1=&clock.time=22:10", "needs first cooling", "–", "", ""},
		{"heat.cool-2=&clamp.stages=one", "Ready to test 25:53 h after the start.", "+25:53", "", ""}, // 15 + 3 + 5 + 60 + 30 min and a day
		{"heat.rest=90 days&clock.time=20:00", "Start Sat 20:00, ready to test Fri 2027-01-22 22:41.", "Fri 2027-01-22 22:41", "Start Sat 20:00, ready to test Fri 2027-01-22 22:41.", ""},
		{"heat.hold-1=1 h 30 min 5 s", "Ready to test 28:11 h after the start.", "", "", ""},
	} {
		_, values := at(t, c.plan)
		for id, want := range map[string]string{"clock.ready t": c.ready, "clock.at t": c.at, "clock.time:says t": c.says} {
			if want != "" || id == "clock.time:says t" {
				assert.Equal(t, want, values[id], "%s in %q", id, c.plan)
			}
		}
		if c.first != "" {
			assert.Equal(t, c.first, rows(values["clock.table r"])[0], c.plan)
		}
	}
}

// Two loads in one oven: of the lesson that a load is out of at 63 and 96 min.
const lesson = "clamp.stages=one&heat.preheat=30 min&heat.load=3 min&heat.recovery=5 min&heat.hold-1=25 min&heat.cool-1=10 min&heat.rest=0 h&cut.pieces=25&cut.spare=25 %&heat.frame-pieces=4&heat.oven-width=440 mm&heat.oven-depth=240 mm&heat.frame-length=180 mm&heat.frame-width=80 mm"

func TestTimetableOfLoads(t *testing.T) {
	_, values := at(t, lesson)
	require.Equal(t, "2", values["heat.loads t"])
	got := rows(values["clock.table r"])
	assert.Contains(t, got, "+01:03 ● | Take it out to cool, load 1 | 00:10")
	assert.Contains(t, got, "+01:03 ● | Put it in, load 2 | 00:03")
	assert.Contains(t, got, "+01:36 ● | Take it out to cool, load 2 | 00:10")
}

// There is no ready time of fewer loads than there are, and no step in an oven that a note stops without its saying so. The start plan's oven takes
// 8 pieces; it wants 6 and the fibre melts from 255 °C.
func TestHalts(t *testing.T) {
	const many = "More than 12 loads are no timetable. Bake on several days, or fit more pieces in a load."
	const ready = "Ready to test 27:41 h after the start."
	for _, c := range []struct {
		plan, ready string
		loads       int // of the table
		oven        string
	}{
		{"", ready, 1, "180 °C"},
		{"cut.pieces=96&cut.spare=0 %", "", timetable.MaxLoads, "180 °C"},
		{"cut.pieces=97&cut.spare=0 %", many, 0, ""},
		{"cut.pieces=10000&clamp.stages=one&clock.time=22:10", many, 0, ""},
		{"cut.pieces=10000&heat.rest=", "needs rest", 0, ""},
		{"heat.frame-length=400 mm", ready, 1, "180 °C: STOP, see Heat-set"}, // no frame lies flat in it
		{"heat.frame-pieces=", ready, 1, "180 °C"},
		{"heat.set=260 °C", ready, 1, "260 °C: STOP, see Heat-set"},
		{"heat.set=250 °C", ready, 1, "250 °C: STOP, see Heat-set"}, // 260 °C at its hottest
		{"heat.set=240 °C", ready, 1, "240 °C"},                     // 5 K under melting are for care
		{"heat.set=260 °C&heat.dial-1=150 °C&heat.probe-1=140 °C&heat.dial-2=200 °C&heat.probe-2=190 °C", ready, 1, "dial 270 °C: STOP, see Heat-set"},
		{"fibre.polymer=other&heat.set=", ready, 1, "STOP, see Heat-set"},
		{"hang.hook=400 g", ready, 1, "180 °C"}, // that stops at Hang
	} {
		d, st, values := worked(t, c.plan)
		if c.ready != "" {
			assert.Equal(t, c.ready, values["clock.ready t"], c.plan)
		}
		assert.Equal(t, c.loads, timetable.Loads(d.clock.steps), c.plan)
		assert.Equal(t, c.loads == 0, values["clock.at t"] == "–", c.plan)
		assert.Equal(t, c.loads == 0, values["clock.table r"] == "", c.plan)
		r, missing := d.Run(st, true)
		if c.loads == 0 {
			assert.Nil(t, r, c.plan)
			assert.Equal(t, c.ready == many, missing == calc.None, c.plan)
			assert.Empty(t, values["clock.time:says t"], c.plan)
			assert.False(t, d.Past(), c.plan)
			continue
		}
		require.NotNil(t, r, c.plan)
		assert.Equal(t, c.oven, r.Oven, c.plan)
		assert.Contains(t, strings.ReplaceAll(d.Calendar(r), "\r\n ", ""), "SUMMARY:Put it in ("+strings.ReplaceAll(c.oven, ",", "\\,")+")", c.plan)
	}
}

func TestHeatSection(t *testing.T) { assert.Equal(t, "heat", sections[heatSection]) }

// The strip is true to time: in the start plan 221 min are 292 units wide.
func TestClockStrip(t *testing.T) {
	_, values := at(t, "")
	x := func(minutes float64) float64 { return 14 + minutes*292/221 }
	corners := map[float64]bool{}
	for _, p := range follow(t, values["draw.clock.oven d"]).points {
		corners[p.x] = true
	}
	for _, minutes := range []float64{0, 15, 18, 23, 83, 123, 126, 131, 191} {
		found := false
		for c := range corners {
			found = found || c > x(minutes)-0.06 && c < x(minutes)+0.06
		}
		assert.True(t, found, "something of the oven ends or begins at %g min", minutes)
	}
	low, high := follow(t, values["draw.clock.outside d"]).box()
	assert.InDelta(t, x(0), low.x, 0.06)
	assert.InDelta(t, x(221), high.x, 0.06)
	assert.Equal(t, "Release, let it rest: 24:00 →", values["draw.clock.note t"])
	for i, want := range []string{"+00:00", "+01:00", "+02:00", "+03:00"} {
		assert.Equal(t, want, values["draw.clock.number-"+string(rune('1'+i))+" t"])
	}
	_, values = at(t, "heat.load=")
	assert.Equal(t, "needs loading", values["draw.clock.note t"])
	for _, id := range []string{"oven d", "outside d", "first t", "number-1 t"} {
		assert.Empty(t, values["draw.clock."+id])
	}
}

// started starts the plan that was shown at an instant.
func started(t testing.TB, d *Display, st *calc.State, name string, start timetable.Instant) *timetable.Run {
	t.Helper()
	r, missing := d.Run(st, true)
	require.Equal(t, calc.None, missing)
	r.Name, r.Start = name, start
	return r
}

func TestRun(t *testing.T) {
	d, st, _ := worked(t, "clock.time=22:10")
	now, missing := d.Run(st, true)
	assert.Equal(t, calc.None, missing)
	assert.Equal(t, eight, now.Start)
	assert.Equal(t, eight, now.Seen)
	later, _ := d.Run(st, false)
	assert.Equal(t, eight+130*60, later.Start)
	now.Steps[0].Length = 7
	assert.Equal(t, 900, later.Steps[0].Length, "each has steps of its own")
	d, st, _ = worked(t, "")
	assert.False(t, d.Past(), "no time was typed")
	_, missing = d.Run(st, false)
	assert.Equal(t, calc.ClockTime, missing)
	d, st, _ = worked(t, "heat.rest=")
	_, missing = d.Run(st, true)
	assert.Equal(t, calc.HeatRest, missing)
}

// A start is past from a minute after it on, also when the page has stood since it was typed.
func TestPast(t *testing.T) {
	d, _ := at(t, "clock.time=20:10")
	for after, want := range map[timetable.Instant]bool{0: false, 660: false, 661: true} {
		d.Now = eight + after
		assert.Equal(t, want, d.Past(), "%d s", after)
	}
	// Shown anew, another day is taken of an empty one, and named; one that was typed stays.
	for _, day := range []string{"", "&clock.day=2026-10-24"} {
		d, st, values := worked(t, "clock.time=20:10"+day)
		was := values["clock.time:says t"]
		d.Now = eight + 661
		values, _ = slots(t, d.Slots(nil, st))
		if day == "" {
			assert.Equal(t, "Start Sat 20:10, ready to test Sun 22:51.", was)
			assert.Equal(t, "Start Sun 20:10, ready to test Mon 23:51.", values["clock.time:says t"])
		} else {
			assert.Equal(t, "That is a start Sat 20:10, which is past. Choose another time or day.", values["clock.time:says t"])
		}
		assert.Equal(t, day != "", d.Past())
	}
	d, _ = at(t, "clock.time=20:10&clock.day=2026-10-23")
	assert.True(t, d.Past())
}

func TestRuns(t *testing.T) {
	d, st, _ := worked(t, "")
	runs := Runs{started(t, d, st, "A", eight), started(t, d, st, "B", eight+600), started(t, d, st, "C", eight-100000), started(t, d, st, "D", eight)}
	runs[3].Off = true
	look := func(after int) (map[string]string, string) {
		t.Helper()
		d.Now = eight + timetable.Instant(after)
		b, due, _ := d.Started(nil, &runs, "")
		values, order := slots(t, b)
		empty, _, _ := d.Started(nil, &Runs{}, "")
		_, want := slots(t, empty)
		require.Equal(t, want, order, "always the same slots")
		return values, due
	}
	values, due := look(60)
	assert.Empty(t, due)
	for id, want := range map[string]string{
		"run.1 s": "on", "run.1:on t": "Next: Put it in (180 °C)", "run.1:left t": "14:00", "run.1:rest t": "at 20:15; until then: Heat up the oven (180 °C) – A",
		"run.2 s": "on", "run.2:on t": "Next: Heat up the oven (180 °C)", "run.2:left t": "09:00", "run.2:rest t": "at 20:10 – B",
		"run.3 s": "on", "run.3:on t": "Ready to test", "run.3:left t": "", "run.3:rest t": "since 19:54 – C", // 27:41 h after the start are 340 s ago
		"run.4 s": "off", "run.5 s": "", "run.5:on t": "", "run.5:rest t": "", "strip.clock s": "on",
	} {
		assert.Equal(t, want, values[id], id)
	}
	runs[2].Seen = eight - 341
	values, due = look(60)
	assert.Equal(t, "Ready to test", due)
	assert.Equal(t, "due", values["run.3 s"])
	assert.Equal(t, "due", values["strip.clock s"])
	runs[2].Seen = d.Now

	runs[0].Seen, runs[1].Seen = eight+3*3600, eight+3*3600
	values, due = look(3*3600 + 4*60)
	assert.Empty(t, due)
	assert.Equal(t, "Next: Take it out to cool", values["run.1:on t"])
	assert.Equal(t, "at 23:11; until then: Second hold (180 °C) – A", values["run.1:rest t"])
	assert.Equal(t, "07:00", values["run.1:left t"])
	values, due = look(3*3600 + 11*60)
	assert.Equal(t, "Take it out to cool", due)
	assert.Equal(t, "due", values["run.1 s"])
	runs[0].Seen = eight + 3*3600 + 12*60
	values, _ = look(3*3600 + 50*60)
	assert.Equal(t, "23:51:00", values["run.1:left t"])
	assert.Equal(t, "Next: Ready to test, in", values["run.1:then t"])
	assert.Equal(t, "at Sun 22:41; until then: it rests – A", values["run.1:rest t"]) // clocks went back
}

// What is due next is counted down to, with its load, and what is on is of the same load. Minutes of the lesson: load 1 in at 30, out at 63, as
// load 2 goes in, and ready at 73; load 2 is out at 96 and ready at 106.
func TestNextOfLoads(t *testing.T) {
	d, st, _ := worked(t, lesson)
	runs := Runs{started(t, d, st, "Lesson", eight)}
	for _, c := range []struct {
		minute, seen         int
		next, left, at, said string
	}{
		{10, 10, "Next: Put it in (180 °C), load 1", "20:00", "at 20:30; until then: Heat up the oven (180 °C) – Lesson", ""},
		{40, 40, "Next: Take it out to cool, load 1 + Put it in (180 °C), load 2", "23:00", "at 21:03; until then: Hold (180 °C), load 1 – Lesson", ""},
		{63, 62, "Take it out to cool, load 1 + Put it in (180 °C), load 2, due 21:03, 0 min ago", "10:00", "at 21:13; until then: it cools, load 1 + Put it in (180 °C), load 2 – Lesson", "Take it out to cool, load 1 + Put it in (180 °C), load 2"},
		{65, 64, "Next: Release, let it rest, load 1 + Ready to test, load 1", "08:00", "at 21:13; until then: it cools, load 1 + Put it in (180 °C), load 2 – Lesson", ""},
		{80, 79, "Next: Take it out to cool, load 2", "16:00", "at 21:36; until then: Hold (180 °C), load 2 – Lesson", ""},
		{107, 107, "Ready to test, load 2", "", "since 21:46 – Lesson", ""},
	} {
		d.Now, runs[0].Seen = eight+timetable.Instant(c.minute*60), eight+timetable.Instant(c.seen*60)
		b, due, _ := d.Started(nil, &runs, "")
		values, _ := slots(t, b)
		assert.Equal(t, c.next, values["run.1:on t"], "%d min", c.minute)
		assert.Equal(t, c.left, values["run.1:left t"], "%d min", c.minute)
		assert.Equal(t, c.at, values["run.1:rest t"], "%d min", c.minute)
		assert.Equal(t, c.said, due, "%d min", c.minute)
	}
}

// Two plans at once: both are said.
func TestTwoRunsDue(t *testing.T) {
	d, st, _ := worked(t, "")
	runs := Runs{started(t, d, st, "A", eight), started(t, d, st, "B", eight-15*60)}
	runs[0].Seen, runs[1].Seen = eight-1, eight-1
	_, due, _ := d.Started(nil, &runs, "")
	assert.Equal(t, "Heat up the oven (180 °C). Put it in (180 °C)", due)
}

// What came due while the page was away is said until it is seen to, the eldest first; it rings at each that is new. The start plan: in at 15,
// out at 83, clamped again at 113 and in again at 123, out at 191, released at 221 min.
func TestMissed(t *testing.T) {
	d, st, _ := worked(t, "")
	runs := Runs{started(t, d, st, "A", eight)}
	for _, c := range []struct {
		minute, seen                  int
		state, missed, on, rest, said string
		newest                        int // min, 0 for none
	}{
		{14, 0, "on", "", "Next: Put it in (180 °C)", "at 20:15; until then: Heat up the oven (180 °C) – A", "", 0},
		{15, 0, "due", "", "Put it in (180 °C), due 20:15, 0 min ago", "at 21:23; until then: Put it in (180 °C) – A", "Put it in (180 °C)", 15},
		{25, 0, "missed", "Came due, not seen to: 20:15 Put it in (180 °C)", "Next: Take it out to cool", "at 21:23; until then: Hold (180 °C) – A", "Came due, not seen to: 20:15 Put it in (180 °C)", 15},
		{84, 0, "due", "Came due, not seen to: 20:15 Put it in (180 °C)", "Take it out to cool, due 21:23, 1 min ago", "at 21:53; until then: it cools – A", "Came due, not seen to: 20:15 Put it in (180 °C). Take it out to cool", 83},
		{84, 84, "on", "", "Next: Clamp at the second gap (120.7 mm)", "at 21:53; until then: it cools – A", "", 0},
		{124, 84, "due", "Came due, not seen to: 21:53 Clamp at the second gap (120.7 mm)", "Put it in again (180 °C), due 22:03, 1 min ago", "at 23:11; until then: Put it in again (180 °C) – A", "Came due, not seen to: 21:53 Clamp at the second gap (120.7 mm). Put it in again (180 °C)", 123},
		{185, 84, "missed", "Came due, not seen to: 21:53 Clamp at the second gap (120.7 mm); 22:03 Put it in again (180 °C)", "Next: Take it out to cool", "at 23:11; until then: Second hold (180 °C) – A", "Came due, not seen to: 21:53 Clamp at the second gap (120.7 mm); 22:03 Put it in again (180 °C)", 123},
		// Over midnight: the day is named where it changes; and clocks went back, so that the day of rest ends at 22:41.
		{300, 184, "missed", "Came due, not seen to: Sat 2026-10-24 23:11 Take it out to cool; 23:41 Release, let it rest", "Next: Ready to test", "at 22:41; until then: it rests – A", "Came due, not seen to: Sat 2026-10-24 23:11 Take it out to cool; 23:41 Release, let it rest", 221},
		{1700, 192, "missed", "Came due, not seen to: Sat 2026-10-24 23:41 Release, let it rest; Sun 22:41 Ready to test", "Ready to test", "since 22:41 – A", "Came due, not seen to: Sat 2026-10-24 23:41 Release, let it rest; Sun 22:41 Ready to test", 1661},
	} {
		d.Now, runs[0].Seen = eight+timetable.Instant(c.minute*60), eight+timetable.Instant(c.seen*60)
		b, said, newest := d.Started(nil, &runs, "")
		values, _ := slots(t, b)
		for id, want := range map[string]string{"run.1 s": c.state, "strip.clock s": c.state, "run.1:missed t": c.missed, "run.1:on t": c.on, "run.1:rest t": c.rest} {
			assert.Equal(t, want, values[id], "%s, %d min", id, c.minute)
		}
		assert.Equal(t, c.said, said, "%d min", c.minute)
		want, rings := timetable.Instant(0), ""
		if c.newest > 0 {
			want = eight + timetable.Instant(c.newest*60)
			rings = strconv.Itoa(int(want))
		}
		assert.Equal(t, want, newest, "%d min", c.minute)
		assert.Equal(t, rings, values["strip.clock data-newest"], "%d min", c.minute)
	}
	runs[0].Off = true
	b, said, newest := d.Started(nil, &runs, "")
	values, _ := slots(t, b)
	assert.Empty(t, said+values["run.1:missed t"]+values["strip.clock s"])
	assert.Zero(t, newest)
}

// While something is due, the digits are those of what is next, and that is named right above them: never are they read as the time left for
// what is due. That says since when it is. Of what was missed the newest three are named. Two loads, and minutes of the lesson as above.
func TestDueCard(t *testing.T) {
	d, st, _ := worked(t, lesson)
	runs := Runs{started(t, d, st, "Lesson", eight)}
	for _, c := range []struct {
		second, seen                 int
		on, then, left, rest, missed string
		over                         string
	}{
		{62 * 60, 62 * 60, "Next: Take it out to cool, load 1 + Put it in (180 °C), load 2", "", "01:00", "at 21:03; until then: Hold (180 °C), load 1 – Lesson", "", ""},
		{67*60 - 1, 62 * 60, "Take it out to cool, load 1 + Put it in (180 °C), load 2, due 21:03, 3 min ago", "Next: Release, let it rest, load 1 + Ready to test, load 1, in", "06:01", "at 21:13; until then: it cools, load 1 + Oven heats up again (180 °C), load 2 – Lesson", "", ""},
		// What is due since another time says so of itself: load 2 is out at 96 and ready at 106 min.
		{96 * 60, 62 * 60, "Take it out to cool, load 2, due 21:36, 0 min ago", "Next: Release, let it rest, load 2 + Ready to test, load 2, in", "10:00", "at 21:46; until then: it cools, load 2 – Lesson",
			"21:03 Put it in (180 °C), load 2; 21:13 Release, let it rest, load 1; 21:13 Ready to test, load 1; and 1 more", ""},
		{107 * 60, 72 * 60, "Release, let it rest, load 2 + Ready to test, load 2, due 21:46, 1 min ago", "", "", "since 21:46 – Lesson",
			"21:13 Release, let it rest, load 1; 21:13 Ready to test, load 1; 21:36 Take it out to cool, load 2", "over"},
		{3 * 3600, 0, "Ready to test, load 2", "", "", "since 21:46 – Lesson", "21:36 Take it out to cool, load 2; 21:46 Release, let it rest, load 2; 21:46 Ready to test, load 2; and 5 more", "over"},
	} {
		d.Now, runs[0].Seen = eight+timetable.Instant(c.second), eight+timetable.Instant(c.seen)
		b, _, _ := d.Started(nil, &runs, "")
		values, _ := slots(t, b)
		if c.missed != "" {
			c.missed = "Came due, not seen to: " + c.missed
		}
		for id, want := range map[string]string{":on t": c.on, ":then t": c.then, ":left t": c.left, ":rest t": c.rest, ":missed t": c.missed, ":left s": c.over} {
			assert.Equal(t, want, values["run.1"+id], "%s, %d s", id, c.second)
		}
	}
	// Two at once that are due since two times.
	d, st, _ = worked(t, "heat.load=5 min&heat.recovery=0 min&heat.hold-1=1 min&heat.cool-1=1 min")
	runs = Runs{started(t, d, st, "A", eight)}
	d.Now, runs[0].Seen = eight+22*60, eight+16*60
	b, said, _ := d.Started(nil, &runs, "")
	values, _ := slots(t, b)
	assert.Equal(t, "Take it out to cool, due 20:21, 1 min ago + Clamp at the second gap (120.7 mm), due 20:22, 0 min ago", values["run.1:on t"])
	assert.Equal(t, "Take it out to cool + Clamp at the second gap (120.7 mm)", said)
}

// A run is of the plan as it was when it was started: where the times of that plan are others by now, its card says so. Lateness is no such change.
func TestPlanChanged(t *testing.T) {
	const changed = ". The plan has changed since; start it anew if that should count."
	for _, c := range []struct {
		plan, name string // by now
		minute     int
		late, old  bool
		rest       string
	}{
		{"", "A", 10, false, false, "at 20:15; until then: Heat up the oven (180 °C) – A"},
		{"heat.set=170 °C", "A", 10, false, false, "at 20:15; until then: Heat up the oven (180 °C) – A"}, // no time of it
		{"heat.hold-1=90 min", "A", 10, false, false, "at 20:15; until then: Heat up the oven (180 °C) – A" + changed},
		{"heat.hold-1=90 min", "A", 30, false, false, "at 21:23; until then: Hold (180 °C) – A" + changed}, // what is on is the longer
		{"heat.hold-1=", "A", 10, false, false, "at 20:15; until then: Heat up the oven (180 °C) – A" + changed},
		{"cut.pieces=97&cut.spare=0 %", "A", 10, false, false, "at 20:15; until then: Heat up the oven (180 °C) – A" + changed},
		{"heat.hold-1=90 min", "B", 10, false, false, "at 20:15; until then: Heat up the oven (180 °C) – A"},
		{"", "A", 10, true, false, "at 20:20; until then: Heat up the oven (180 °C) – A"},
		{"heat.hold-1=90 min", "A", 10, true, false, "at 20:20; until then: Heat up the oven (180 °C) – A" + changed},
		{"heat.hold-1=90 min", "A", 10, false, true, "at 20:15; until then: Heat up the oven (180 °C) – A"}, // kept before sums were
		{"heat.hold-1=90 min", "A", 2000, false, false, "since Sun 2026-10-25 22:41 – A"},
	} {
		d, st, _ := worked(t, "")
		runs := Runs{started(t, d, st, "A", eight)}
		d, _, _ = worked(t, c.plan)
		d.Now = eight + timetable.Instant(c.minute*60)
		runs[0].Seen = d.Now
		if c.late {
			assert.True(t, runs[0].Late(d.Now, 300))
		}
		if c.old {
			runs[0].Made = 0
		}
		b, _, _ := d.Started(nil, &runs, c.name)
		values, _ := slots(t, b)
		assert.Equal(t, c.rest, values["run.1:rest t"], "%+v", c)
	}
}

// What a run names besides what is done: the gap in the page's unit, the dial of an oven that was tried, and nothing that is not known.
func TestDetails(t *testing.T) {
	for _, c := range []struct {
		plan, gap, oven string
		us              bool
	}{
		{"", "120.7 mm", "180 °C", false}, // 85 mm and 42 %
		{"", "4.752 in", "356 °F", true},  // in the units of the page, whatever was typed
		{"heat.dial-1=150 °C&heat.probe-1=140 °C&heat.dial-2=200 °C&heat.probe-2=190 °C", "120.7 mm", "dial 190 °C", false},        // the probe is 10 K less everywhere
		{"heat.dial-1=150 °C&heat.probe-1=180 °C&heat.dial-2=200 °C&heat.probe-2=160 °C", "120.7 mm", "STOP, see Heat-set", false}, // readings that fall give no dial, and no other temperature stands for it
		{"heat.set=", "120.7 mm", "", false},
		{"clamp.coiled=", "", "180 °C", false},
		{"clamp.second-stretch=-95 %&clamp.first-stretch=-99 %&clamp.coiled=1 mm", "", "180 °C", false}, // a gap below what is possible
		{"clamp.stages=one", "", "180 °C", false},
	} {
		d, st, _ := worked(t, c.plan)
		d.US = c.us
		r, missing := d.Run(st, true)
		require.Equal(t, calc.None, missing)
		assert.Equal(t, c.gap, r.Gap, c.plan)
		assert.Equal(t, c.oven, r.Oven, c.plan)
		assert.NotContains(t, d.Calendar(r), "–")
		assert.NotContains(t, d.Calendar(r), "()")
	}
}

func TestCalendarOfRun(t *testing.T) {
	d, st, _ := worked(t, lesson)
	file := d.Calendar(started(t, d, st, "Lesson", eight))
	assert.Equal(t, 9, strings.Count(file, "BEGIN:VEVENT"), "heat up, and for each load in, out, release and ready")
	assert.Contains(t, file, "SUMMARY:Put it in (180 °C)\\, load 2\r\nDESCRIPTION:Lesson\r\n")
	assert.NotContains(t, file, "Hold")
}
