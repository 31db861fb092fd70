package show

import (
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
	d := english()
	d.Now, d.Zone = eight, berlin
	s, faults := calc.ParsePlan(plan)
	require.Empty(t, faults)
	var st calc.State
	st.Work(&s)
	values, _ := slots(t, d.Slots(nil, &st))
	return d, values
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
		{"clock.time=22:10", "Start 22:10, ready to test Mon 00:51.", "Mon 00:51", "", "22:10 ● | Heat up the oven | 00:15"}, // clocks go back in between
		{"clock.time=19:59", "Start 19:59, ready to test Sun 22:40.", "", "", ""},
		{"clock.time=20:00", "", "", "", "20:00 ● | Heat up the oven | 00:15"},
		// Today is a Saturday, and without a day the next such time is taken: that of 22:10 today would need a start yesterday.
		{"clock.time=22:10&clock.mode=ready", "Start Sun 18:29, ready to test Mon 22:10.", "Mon 22:10", "Start Sun 18:29, ready to test Mon 22:10.", "18:29 ● | Heat up the oven | 00:15"},
		{"clock.time=19:58", "Start Sun 19:58, ready to test Mon 23:39.", "Mon 23:39", "Start Sun 19:58, ready to test Mon 23:39.", "19:58 ● | Heat up the oven | 00:15"},
		{"clock.time=01:30", "Start Sun 01:30, ready to test Mon 04:11.", "Mon 04:11", "Start Sun 01:30, ready to test Mon 04:11.", "01:30 ● | Heat up the oven | 00:15"},               // an hour is put back in between
		{"clock.time=19:58&heat.rest=90 days&clock.mode=ready", "Start Sun 16:17, ready to test Sat 2027-01-23 19:58.", "", "Start Sun 16:17, ready to test Sat 2027-01-23 19:58.", ""}, // 90 days and 221 min
		{"clock.time=19:58&clock.day=2026-10-24", "Start 19:58, ready to test Sun 22:39.", "", "That is a start 19:58, which is past. Choose another time or day.", ""},
		{"clock.time=22:10&clock.mode=ready&clock.day=2026-11-02", "Start Sun 2026-11-01 18:29, ready to test Mon 2026-11-02 22:10.", "Mon 22:10", "", ""},
		{"clock.time=02:30&clock.day=2026-10-25", "", "", "That time comes twice, as clocks are put back: the first is taken.", "02:30 ● | Heat up the oven | 00:15"},
		{"clock.time=02:30&clock.day=2027-03-28", "Start Sun 2027-03-28 03:30, ready to test Mon 2027-03-29 07:11.", "Mon 07:11", "Clocks are put forward over that time: so much later is taken.", "03:30 ● | Heat up the oven | 00:15"},
		{"clock.time=25:00", "Ready to test 27:41 h after the start.", "+27:41", "“25:00” is not a time I can read. Type it like 07:30.", "+00:00 ● | Heat up the oven | 00:15"},
		{"clock.time=22:10&clock.day=tomorrow", "", "", "", ""},
		{"heat.cool-1=", "needs first cooling", "–", "", ""},
		{"heat.cool-1=&clock.time=22:10", "needs first cooling", "–", "", ""},
		{"heat.cool-2=&clamp.stages=one", "Ready to test 25:53 h after the start.", "+25:53", "", ""}, // 15 + 3 + 5 + 60 + 30 min and a day
		{"heat.rest=90 days&clock.time=20:00", "Start 20:00, ready to test Fri 2027-01-22 22:41.", "Fri 2027-01-22 22:41", "", ""},
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
	assert.Contains(t, got, "+01:03 ● | Take it out to cool | 00:10")
	assert.Contains(t, got, "+01:03 ● | Put it in, load 2 | 00:03")
	assert.Contains(t, got, "+01:36 ● | Take it out to cool, load 2 | 00:10")
	_, values = at(t, "cut.pieces=10000")
	assert.Contains(t, values["clock.table r"], ", load 12")
	assert.NotContains(t, values["clock.table r"], ", load 13")
}

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
func started(t testing.TB, d *Display, name string, start timetable.Instant) *timetable.Run {
	t.Helper()
	r, missing := d.Run(true)
	require.Equal(t, calc.None, missing)
	r.Name, r.Start = name, start
	return r
}

func TestRun(t *testing.T) {
	d, _ := at(t, "clock.time=22:10")
	now, missing := d.Run(true)
	assert.Equal(t, calc.None, missing)
	assert.Equal(t, eight, now.Start)
	assert.Equal(t, eight, now.Seen)
	later, _ := d.Run(false)
	assert.Equal(t, eight+130*60, later.Start)
	now.Steps[0].Length = 7
	assert.Equal(t, 900, later.Steps[0].Length, "each has steps of its own")
	d, _ = at(t, "")
	assert.False(t, d.Past(), "no time was typed")
	_, missing = d.Run(false)
	assert.Equal(t, calc.ClockTime, missing)
	d, _ = at(t, "heat.rest=")
	_, missing = d.Run(true)
	assert.Equal(t, calc.HeatRest, missing)
}

// A start is past from a minute after it on, also when the page has stood since it was typed.
func TestPast(t *testing.T) {
	d, _ := at(t, "clock.time=20:10")
	for after, want := range map[timetable.Instant]bool{0: false, 660: false, 661: true} {
		d.Now = eight + after
		assert.Equal(t, want, d.Past(), "%d s", after)
	}
	d, _ = at(t, "clock.time=20:10&clock.day=2026-10-23")
	assert.True(t, d.Past())
}

func TestRuns(t *testing.T) {
	d, _ := at(t, "")
	runs := Runs{started(t, d, "A", eight), started(t, d, "B", eight+600), started(t, d, "C", eight-100000), started(t, d, "D", eight)}
	runs[3].Off = true
	look := func(after int) (map[string]string, string) {
		t.Helper()
		d.Now = eight + timetable.Instant(after)
		b, due := d.Started(nil, &runs)
		values, order := slots(t, b)
		empty, _ := d.Started(nil, &Runs{})
		_, want := slots(t, empty)
		require.Equal(t, want, order, "always the same slots")
		return values, due
	}
	values, due := look(60)
	assert.Empty(t, due)
	for id, want := range map[string]string{
		"run.1 s": "on", "run.1:on t": "Next: Put it in", "run.1:left t": "14:00", "run.1:rest t": "at 20:15; until then: Heat up the oven – A",
		"run.2 s": "on", "run.2:on t": "Next: Heat up the oven", "run.2:left t": "09:00", "run.2:rest t": "at 20:10 – B",
		"run.3 s": "on", "run.3:on t": "Ready to test", "run.3:left t": "", "run.3:rest t": "since 19:54 – C", // 27:41 h after the start are 340 s ago
		"run.4 s": "off", "run.5 s": "", "run.5:on t": "", "run.5:rest t": "", "strip.clock s": "on",
	} {
		assert.Equal(t, want, values[id], id)
	}
	runs[2].Seen = 0
	values, due = look(60)
	assert.Equal(t, "Ready to test", due)
	assert.Equal(t, "due", values["run.3 s"])
	assert.Equal(t, "due", values["strip.clock s"])
	runs[2].Seen = d.Now

	values, due = look(3*3600 + 4*60)
	assert.Empty(t, due)
	assert.Equal(t, "Next: Take it out to cool", values["run.1:on t"])
	assert.Equal(t, "at 23:11; until then: Second hold – A", values["run.1:rest t"])
	assert.Equal(t, "07:00", values["run.1:left t"])
	values, due = look(3*3600 + 11*60)
	assert.Equal(t, "Take it out to cool", due)
	assert.Equal(t, "due", values["run.1 s"])
	values, _ = look(3*3600 + 50*60)
	assert.Equal(t, "23:51:00", values["run.1:left t"])
	assert.Equal(t, "next at Sun 22:41: Ready to test – A", values["run.1:rest t"]) // clocks went back
}

// What is due next is counted down to, with its load, and what is on is of the same load. Minutes of the lesson: load 1 in at 30, out at 63, as
// load 2 goes in, and ready at 73; load 2 is out at 96 and ready at 106.
func TestNextOfLoads(t *testing.T) {
	d, _ := at(t, lesson)
	runs := Runs{started(t, d, "Lesson", eight)}
	for _, c := range []struct {
		minute, seen         int
		next, left, at, said string
	}{
		{10, 10, "Next: Put it in, load 1", "20:00", "at 20:30; until then: Heat up the oven – Lesson", ""},
		{40, 40, "Next: Take it out to cool, load 1 + Put it in, load 2", "23:00", "at 21:03; until then: Hold, load 1 – Lesson", ""},
		{63, 62, "Take it out to cool, load 1 + Put it in, load 2", "10:00", "next at 21:13: Release, let it rest, load 1 + Ready to test, load 1 – Lesson", "Take it out to cool, load 1 + Put it in, load 2"},
		{65, 64, "Next: Release, let it rest, load 1 + Ready to test, load 1", "08:00", "at 21:13; until then: Take it out to cool, load 1 – Lesson", ""},
		{80, 79, "Next: Take it out to cool, load 2", "16:00", "at 21:36; until then: Hold, load 2 – Lesson", ""},
		{107, 107, "Ready to test, load 2", "", "since 21:46 – Lesson", ""},
	} {
		d.Now, runs[0].Seen = eight+timetable.Instant(c.minute*60), eight+timetable.Instant(c.seen*60)
		b, due := d.Started(nil, &runs)
		values, _ := slots(t, b)
		assert.Equal(t, c.next, values["run.1:on t"], "%d min", c.minute)
		assert.Equal(t, c.left, values["run.1:left t"], "%d min", c.minute)
		assert.Equal(t, c.at, values["run.1:rest t"], "%d min", c.minute)
		assert.Equal(t, c.said, due, "%d min", c.minute)
	}
}

// Two plans at once: both are said.
func TestTwoRunsDue(t *testing.T) {
	d, _ := at(t, "")
	runs := Runs{started(t, d, "A", eight), started(t, d, "B", eight-15*60)}
	runs[0].Seen, runs[1].Seen = eight-1, eight-1
	_, due := d.Started(nil, &runs)
	assert.Equal(t, "Heat up the oven + Put it in", due)
}

func TestCalendarOfRun(t *testing.T) {
	d, _ := at(t, lesson)
	file := d.Calendar(started(t, d, "Lesson", eight))
	assert.Equal(t, 9, strings.Count(file, "BEGIN:VEVENT"), "heat up, and for each load in, out, release and ready")
	assert.Contains(t, file, "SUMMARY:Put it in\\, load 2\r\nDESCRIPTION:Lesson\r\n")
	assert.NotContains(t, file, "Hold")
}
