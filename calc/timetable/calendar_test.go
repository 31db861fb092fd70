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
func rules(t *testing.T, file []byte) {
	t.Helper()
	require.True(t, bytes.HasPrefix(file, []byte("BEGIN:VCALENDAR\r\n")))
	require.True(t, bytes.HasSuffix(file, []byte("END:VCALENDAR\r\n")))
	for line := range strings.SplitSeq(strings.TrimSuffix(string(file), "\r\n"), "\r\n") {
		assert.LessOrEqual(t, len(line), 75, line)
		assert.NotEmpty(t, line)
		assert.True(t, utf8.ValidString(line), line)
		for _, r := range line {
			assert.False(t, r < ' ' || r >= 0x7f && r < 0xa0, "%q", line)
		}
	}
}

// decode reads a file with another's parser.
func decode(t *testing.T, file []byte) []ical.Event {
	t.Helper()
	d := ical.NewDecoder(bytes.NewReader(file))
	calendar, err := d.Decode()
	require.NoError(t, err)
	var again bytes.Buffer
	require.NoError(t, ical.NewEncoder(&again).Encode(calendar), "it finds all that must be there")
	return calendar.Events()
}

func TestAppendCalendar(t *testing.T) {
	titles := []string{
		"Load 2: take it out",
		"Semicolon; comma, back\\slash \\n and: colon",
		"two\nlines\r\nof text",
		"“Ünïcödé” ≥ 180 °C, 一二三四五六七八九十一二三四五六七八九十一二三四五六七八九十 🧵🧵🧵🧵🧵🧵🧵🧵🧵🧵🧵🧵🧵🧵🧵🧵🧵🧵",
		strings.Repeat("x", 66), strings.Repeat("x", 67), strings.Repeat("x", 68), strings.Repeat("é", 200), strings.Repeat("\\", 200),
		" blanks at both ends ",
		"",
	}
	var events []Event
	for i, title := range titles {
		events = append(events, Event{UID: UID(title, noon, &Step{Do: Do(i), Load: 1}), Start: noon + Instant(i*day), Length: i * 60, Title: title, Text: title, Before: 5 * (i % 2)})
	}
	file := AppendCalendar(nil, noon-3600, events)
	rules(t, file)
	got := decode(t, file)
	require.Len(t, got, len(events))
	for i := range events {
		e, g := &events[i], &got[i]
		title := strings.ReplaceAll(e.Title, "\r", "")
		summary, err := g.Props.Text(ical.PropSummary)
		require.NoError(t, err)
		assert.Equal(t, title, summary)
		description, err := g.Props.Text(ical.PropDescription)
		require.NoError(t, err)
		assert.Equal(t, title, description)
		start, err := g.DateTimeStart(nil)
		require.NoError(t, err)
		assert.Equal(t, int64(e.Start), start.Unix())
		end, err := g.DateTimeEnd(nil)
		require.NoError(t, err)
		assert.Equal(t, time.Duration(e.Length)*time.Second, end.Sub(start))
		stamp, err := g.Props.DateTime(ical.PropDateTimeStamp, nil)
		require.NoError(t, err)
		assert.Equal(t, "2026-11-25T11:00:00Z", stamp.Format(time.RFC3339))
		assert.Equal(t, e.UID, g.Props.Get(ical.PropUID).Value)

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
		want := []time.Duration{0}
		if e.Before > 0 {
			want = []time.Duration{-time.Duration(e.Before) * time.Minute, 0}
		}
		assert.Equal(t, want, before)
	}
}

// The whole file, by hand from RFC 5545, for one event.
func TestCalendarText(t *testing.T) {
	file := AppendCalendar(nil, noon, []Event{{UID: "u", Start: noon, Length: 600, Title: "Take it out; let it cool", Text: "Cold-frame vent, load 1. Follow local rules, and your lab's own risk assessment", Before: 5}})
	assert.Equal(t, strings.ReplaceAll(`BEGIN:VCALENDAR
VERSION:2.0
PRODID:-//Twistbench//Clock//EN
BEGIN:VEVENT
UID:u
DTSTAMP:20261125T120000Z
SEQUENCE:29926800
DTSTART:20261125T120000Z
DTEND:20261125T121000Z
SUMMARY:Take it out\; let it cool
DESCRIPTION:Cold-frame vent\, load 1. Follow local rules\, and your lab's o
 wn risk assessment
TRANSP:TRANSPARENT
BEGIN:VALARM
ACTION:DISPLAY
TRIGGER:-PT5M
DESCRIPTION:Take it out\; let it cool
END:VALARM
BEGIN:VALARM
ACTION:DISPLAY
TRIGGER:PT0S
DESCRIPTION:Take it out\; let it cool
END:VALARM
END:VEVENT
END:VCALENDAR
`, "\n", "\r\n"), string(file))
}

func TestNoControls(t *testing.T) {
	file := AppendCalendar(nil, noon, []Event{{UID: "u", Start: noon, Title: "a\x00b\x07c\td\x7fe\u0085f\xffg\xc3", Text: "\xf0\x9f\x92"}})
	rules(t, file)
	summary, err := decode(t, file)[0].Props.Text(ical.PropSummary)
	assert.NoError(t, err)
	assert.Equal(t, "abcdefg", summary)
}

// The same plan and start name their steps the same, whatever else became of them; anything else does not.
func TestUID(t *testing.T) {
	seen := map[string]bool{}
	r := lesson(noon)
	uids := func(r *Run) (all []string) {
		for i := range r.Steps {
			all = append(all, UID(r.Name, r.Start, &r.Steps[i]))
		}
		return all
	}
	was := uids(&r)
	r.Late(noon+40*minute, 1, 300)
	assert.ElementsMatch(t, was, uids(&r))
	for _, name := range []string{"Lesson", "lesson", "", "Lesson2"} {
		for _, start := range []Instant{noon, noon + 60, noon + 256, 0} {
			r := lesson(start)
			r.Name = name
			for _, uid := range uids(&r) {
				assert.False(t, seen[uid], uid)
				seen[uid] = true
				assert.Regexp(t, `^[0-9a-f]+-[a-z0-9-]+-[0-9]+@twistbench$`, uid)
			}
		}
	}
}
