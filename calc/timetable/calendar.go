package timetable

import (
	"strconv"
	"unicode/utf8"

	"twistbench/calc/quantity"
)

// Event is an entry of a calendar file.
type Event struct {
	UID    string // the same whenever the same step of the same start is written
	Start  Instant
	Length int    // s; 0 for a moment
	Title  string // also what its alarms say
	Text   string
	Before int // minutes from its first alarm to its second, which is at its start; 0 for only that one
}

// AppendCalendar appends a calendar file (RFC 5545) with events as they stand at an instant, now. The times are UTC, so that it needs no time
// zone. A calendar that takes it in again puts later versions of an event in the place of earlier ones.
func AppendCalendar(b []byte, now Instant, events []Event) []byte {
	w := writer{b}
	w.line("BEGIN", "VCALENDAR")
	w.line("VERSION", "2.0")
	w.line("PRODID", "-//Twistbench//Clock//EN")
	for i := range events {
		w.event(&events[i], now)
	}
	w.line("END", "VCALENDAR")
	return w.b
}

// writer writes the lines of a calendar file.
type writer struct{ b []byte }

func (w *writer) event(e *Event, now Instant) {
	w.line("BEGIN", "VEVENT")
	w.line("UID", e.UID)
	w.line("DTSTAMP", utc(now))
	w.line("SEQUENCE", number(max(int(now)/60, 0))) // grows, so that the newest version of an event wins
	w.line("DTSTART", utc(e.Start))
	if e.Length > 0 {
		w.line("DTEND", utc(e.Start+Instant(e.Length)))
	}
	w.line("SUMMARY", escaped(e.Title))
	if e.Text != "" {
		w.line("DESCRIPTION", escaped(e.Text))
	}
	w.line("TRANSP", "TRANSPARENT") // nobody is busy all the while
	if e.Before > 0 {
		w.alarm(e, "-PT"+number(e.Before)+"M")
	}
	w.alarm(e, "PT0S")
	w.line("END", "VEVENT")
}

func (w *writer) alarm(e *Event, trigger string) {
	w.line("BEGIN", "VALARM")
	w.line("ACTION", "DISPLAY")
	w.line("TRIGGER", trigger)
	w.line("DESCRIPTION", escaped(e.Title))
	w.line("END", "VALARM")
}

// octets is the most that a line has, its end not counted.
const octets = 75

// line writes a line, folded where it is too long, never within a character (RFC 5545, 3.1).
//
//go:noinline
func (w *writer) line(name, value string) {
	w.b = append(w.b, name...)
	w.b = append(w.b, ':')
	n := len(name) + 1
	for len(value) > 0 {
		_, size := utf8.DecodeRuneInString(value)
		if n+size > octets {
			w.b = append(w.b, "\r\n "...)
			n = 1
		}
		w.b = append(w.b, value[:size]...)
		n += size
		value = value[size:]
	}
	w.b = append(w.b, "\r\n"...)
}

// escaped writes a text as a calendar file does (RFC 5545, 3.3.11), without control characters; a byte that is no letter is left out.
func escaped(text string) string {
	var b []byte
	for len(text) > 0 {
		r, size := utf8.DecodeRuneInString(text)
		switch {
		case r == '\n':
			b = append(b, `\n`...)
		case r < ' ' || r >= 0x7f && r < 0xa0 || r == utf8.RuneError && size == 1:
		case r == '\\' || r == ';' || r == ',':
			b = append(b, '\\', byte(r))
		default:
			b = append(b, text[:size]...)
		}
		text = text[size:]
	}
	return string(b)
}

// utc writes an instant: 20261125T063000Z (RFC 5545, 3.3.5).
func utc(i Instant) string {
	d, c := Zone(nil).Local(i)
	date, second := d.Date(), int(c)
	b := quantity.AppendPadded(nil, (date.Year*100+date.Month)*100+date.Day, 8)
	b = append(b, 'T')
	b = quantity.AppendPadded(b, (second/3600*100+second/60%60)*100+second%60, 6)
	return string(append(b, 'Z'))
}

func number(n int) string { return string(strconv.AppendInt(nil, int64(n), 10)) }

// UID returns the name of a step for calendars: the same for the same step of the same start of a plan of that name, and for no other.
func UID(plan string, start Instant, s *Step) string {
	h := uint64(14695981039346656037) // FNV-1a
	for i := range len(plan) {
		h = (h ^ uint64(plan[i])) * 1099511628211
	}
	for n := uint64(start); n > 0; n >>= 8 {
		h = (h ^ n&0xff) * 1099511628211
	}
	b := strconv.AppendUint(nil, h, 16)
	b = append(b, '-')
	b = append(b, s.Do.Key()...)
	b = append(b, '-')
	b = strconv.AppendInt(b, int64(s.Load), 10)
	return string(append(b, "@twistbench"...))
}
