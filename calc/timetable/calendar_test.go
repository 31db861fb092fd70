package timetable

import (
	"bytes"
	"strings"
	"testing"
	"time"
	"unicode/utf8"

	"github.com/emersion/go-ical"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// rules checks what RFC 5545 asks of every file: lines that end in CRLF and have at most 75 octets (3.1), whole characters and no control
// characters in each.
func rules(t *testing.T, file string) {
	t.Helper()
	require.True(t, strings.HasPrefix(file, "BEGIN:VCALENDAR\r\n"))
	require.True(t, strings.HasSuffix(file, "END:VCALENDAR\r\n"))
	for line := range strings.SplitSeq(strings.TrimSuffix(file, "\r\n"), "\r\n") {
		assert.LessOrEqual(t, len(line), 75, line)
		assert.NotEmpty(t, line)
		assert.True(t, utf8.ValidString(line), line)
		for _, r := range line {
			assert.False(t, r < ' ' || r == 0x7f, "%q", line)
		}
	}
}

// decode reads a file with another's parser.
func decode(t *testing.T, file string) []ical.Event {
	t.Helper()
	d := ical.NewDecoder(strings.NewReader(file))
	calendar, err := d.Decode()
	require.NoError(t, err)
	var again bytes.Buffer
	require.NoError(t, ical.NewEncoder(&again).Encode(calendar), "it finds all that must be there")
	return calendar.Events()
}

func TestCalendar(t *testing.T) {
	titles := []string{
		"Load 2: take it out",
		"Semicolon; comma, back\\slash \\n and: colon",
		"two\nlines\r\nof text",
		"“Ünïcödé” ≥ 180 °C, 一二三四五六七八九十一二三四五六七八九十一二三四五六七八九十 🧵🧵🧵🧵🧵🧵🧵🧵🧵🧵🧵🧵🧵🧵🧵🧵🧵🧵",
		strings.Repeat("x", 66), strings.Repeat("x", 67), strings.Repeat("x", 68), strings.Repeat("é", 200), strings.Repeat("\\", 200),
		" blanks at both ends ",
		"",
	}
	for _, plan := range titles {
		c := Calendar{Plan: plan, Start: noon, Now: noon - 3600}
		var steps []Step
		for i, title := range titles {
			steps = append(steps, Step{Do(i), 1, i * day, i * 60})
			c.Add(&steps[i], title)
		}
		file := c.File()
		rules(t, file)
		got := decode(t, file)
		require.Len(t, got, len(titles))
		for i, title := range titles {
			g := &got[i]
			title = strings.ReplaceAll(title, "\r", "")
			summary, err := g.Props.Text(ical.PropSummary)
			require.NoError(t, err)
			assert.Equal(t, title, summary)
			description, err := g.Props.Text(ical.PropDescription)
			require.NoError(t, err)
			assert.Equal(t, strings.ReplaceAll(plan, "\r", ""), description)
			start, err := g.DateTimeStart(nil)
			require.NoError(t, err)
			assert.Equal(t, int(noon)+i*day, int(start.Unix()))
			end, err := g.DateTimeEnd(nil)
			require.NoError(t, err)
			assert.Equal(t, max(time.Duration(i), 1)*time.Minute, end.Sub(start), "later than the start, also for a moment")
			stamp, err := g.Props.DateTime(ical.PropDateTimeStamp, nil)
			require.NoError(t, err)
			assert.Equal(t, "2026-11-25T11:00:00Z", stamp.Format(time.RFC3339))

			var before []time.Duration
			for _, alarm := range g.Children {
				assert.Equal(t, ical.CompAlarm, alarm.Name)
				assert.Equal(t, "DISPLAY", alarm.Props.Get(ical.PropAction).Value)
				said, err := alarm.Props.Text(ical.PropDescription)
				assert.NoError(t, err)
				assert.Equal(t, title, said)
				by, err := alarm.Props.Get(ical.PropTrigger).Duration()
				require.NoError(t, err)
				before = append(before, by)
			}
			assert.Equal(t, []time.Duration{-5 * time.Minute, 0}, before)
		}
	}
}

// The whole file, by hand from RFC 5545, for one event.
func TestCalendarText(t *testing.T) {
	c := Calendar{Plan: "Cold-frame vent, first try. Follow local rules, and your lab's own risk assessment", Start: noon - 60, Now: noon}
	c.Add(&Step{DoCool1, 1, 60, 600}, "Take it out; let it cool")
	assert.Regexp(t, strings.ReplaceAll(`^BEGIN:VCALENDAR
VERSION:2.0
PRODID:-//Twistbench//Clock//EN
BEGIN:VEVENT
UID:[0-9a-f]{14,16}@twistbench
DTSTAMP:20261125T120000Z
DTSTART:20261125T120000Z
DTEND:20261125T121000Z
SUMMARY:Take it out\\; let it cool
DESCRIPTION:Cold-frame vent\\, first try. Follow local rules\\, and your l
 ab's own risk assessment
TRANSP:TRANSPARENT
BEGIN:VALARM
ACTION:DISPLAY
DESCRIPTION:Take it out\\; let it cool
TRIGGER:-PT5M
END:VALARM
BEGIN:VALARM
ACTION:DISPLAY
DESCRIPTION:Take it out\\; let it cool
TRIGGER:PT0S
END:VALARM
END:VEVENT
END:VCALENDAR
$`, "\n", "\r\n"), c.File())
}

func TestNoControls(t *testing.T) {
	c := Calendar{Plan: "\r", Start: noon, Now: noon}
	c.Add(&Step{Do: DoReady, Load: 1}, "a\x00b\x07c\td\x7fe\x1f")
	file := c.File()
	rules(t, file)
	summary, err := decode(t, file)[0].Props.Text(ical.PropSummary)
	assert.NoError(t, err)
	assert.Equal(t, "abcde", summary)
}

// The same plan and start name their steps the same, whatever else became of them; anything else does not.
func TestUID(t *testing.T) {
	seen := map[string]bool{}
	r := lesson(noon)
	uids := func(r *Run) (all []string) {
		c := Calendar{Plan: r.Name, Start: r.Start, Now: noon}
		for i := range r.Steps {
			c.Add(&r.Steps[i], "")
		}
		for _, e := range decode(t, c.File()) {
			all = append(all, e.Props.Get(ical.PropUID).Value)
		}
		return all
	}
	was := uids(&r)
	r.Late(noon+40*minute, 300)
	assert.ElementsMatch(t, was, uids(&r))
	for _, name := range []string{"Lesson", "lesson", "", "Lesson2"} {
		for _, start := range []Instant{noon, noon + 60, noon + 256, 0} {
			r := lesson(start)
			r.Name = name
			for _, uid := range uids(&r) {
				assert.False(t, seen[uid], uid)
				seen[uid] = true
			}
		}
	}
}
