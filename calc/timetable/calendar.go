package timetable

import "strconv"

// Calendar is a calendar file in the making (RFC 5545), of the plan of a name. Its times are UTC, so that it needs no time zone. All texts are UTF-8.
type Calendar struct {
	Plan  string
	Start Instant // of the timetable
	Now   Instant // when the file is made

	b []byte
	n int // octets in the line
}

// The form of the file. A mark stands for what is filled in there.
const (
	formHead = "BEGIN:VCALENDAR\nVERSION:2.0\nPRODID:-//Twistbench//Clock//EN\n"
	// Nobody is busy all the while that a step lasts.
	formEvent = "BEGIN:VEVENT\nUID:\x01@twistbench\nDTSTAMP:\x02Z\nDTSTART:\x04Z\nDTEND:\x05Z\n" +
		"SUMMARY:\x06\nDESCRIPTION:\x07\nTRANSP:TRANSPARENT\n" + formAlarm + "-PT5M\nEND:VALARM\n" + formAlarm + "PT0S\nEND:VALARM\nEND:VEVENT\n"
	formAlarm = "BEGIN:VALARM\nACTION:DISPLAY\nDESCRIPTION:\x06\nTRIGGER:"
	formFoot  = "END:VCALENDAR\n"
)

// Add adds a step, under a title that its alarms say too: one as it begins, one five minutes before. A step of the same plan, start and load
// always has the same name, so that a calendar that takes the file in again replaces it.
func (c *Calendar) Add(s *Step, title string) {
	if c.b == nil {
		c.fill(formHead, nil, "")
	}
	c.fill(formEvent, s, title)
}

// File returns the file.
func (c *Calendar) File() string {
	c.fill(formFoot, nil, "")
	return string(c.b)
}

// fill appends a form, filled in for a step.
//
//go:noinline
func (c *Calendar) fill(form string, s *Step, title string) {
	for i := range len(form) {
		switch mark := form[i]; mark {
		case 1:
			c.b = strconv.AppendUint(c.b, c.uid(s), 16)
		case 2:
			c.utc(c.Now)
		case 4:
			c.utc(c.Start + Instant(s.Start))
		case 5:
			c.utc(c.Start + Instant(max(s.End(), s.Start+60))) // an end is later than its start (3.8.2.2)
		case 6:
			c.escaped(title)
		case 7:
			c.escaped(c.Plan)
		default:
			c.byte(mark)
		}
	}
}

// A line has at most 75 octets, its end not counted (RFC 5545, 3.1). It is folded before a character that might not fit, if it had four.
const fullLine = 75 - 4

// byte appends a byte. A line ends as it must, and is folded where it is full, never within a character.
//
//go:noinline
func (c *Calendar) byte(x byte) {
	if x == '\n' {
		c.b = append(c.b, '\r')
		c.n = -1
	} else if c.n > fullLine && x&0xc0 != 0x80 {
		c.b = append(c.b, "\r\n "...)
		c.n = 1
	}
	c.b = append(c.b, x)
	c.n++
}

// escaped appends a text (RFC 5545, 3.3.11), without control characters.
func (c *Calendar) escaped(text string) {
	for i := range len(text) {
		x := text[i]
		if x == '\n' {
			c.byte('\\')
			x = 'n'
		} else if x == '\\' || x == ';' || x == ',' {
			c.byte('\\')
		}
		if x >= ' ' && x != 0x7f {
			c.byte(x)
		}
	}
}

// utc appends an instant: 20261125T063000 (RFC 5545, 3.3.5), without the Z.
func (c *Calendar) utc(i Instant) {
	d, clock := Zone(nil).Local(i)
	date, second := d.Date(), int(clock)
	c.b = strconv.AppendInt(c.b, int64((date.Year*100+date.Month)*100+date.Day), 10)
	n := len(c.b)
	c.b = strconv.AppendInt(c.b, int64(1000000+(second/3600*100+second/60%60)*100+second%60), 10)
	c.b[n] = 'T' // in place of the million that keeps the zeros
}

// uid returns a number for a step that no other step, start or name of a plan is likely to have (FNV-1a).
func (c *Calendar) uid(s *Step) uint64 {
	h := uint64(14695981039346656037)
	for i := range len(c.Plan) {
		h = (h ^ uint64(c.Plan[i])) * prime
	}
	for n := uint64(c.Start)<<16 | uint64(s.Do)<<8 | uint64(s.Load); n > 0; n >>= 8 {
		h = (h ^ n&0xff) * prime
	}
	return h
}

const prime = 1099511628211
