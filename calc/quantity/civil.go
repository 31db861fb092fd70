package quantity

// When something is, on the clocks and calendars of a place; NaN where it is unknown.
type (
	Day   float64 // a date of the Gregorian calendar: whole days since 1 January 1970
	Clock float64 // a time of the day: seconds since midnight
)

// The kinds of days and times of the day.
var (
	KindDay   = &Kind{Name: "day", Style: StyleDay}
	KindClock = &Kind{Name: "clock", Style: StyleClock}
)

func (*Day) Kind() *Kind   { return KindDay }
func (*Clock) Kind() *Kind { return KindClock }

func (v *Day) SI() float64   { return float64(*v) }
func (v *Clock) SI() float64 { return float64(*v) }

func (v *Day) SetSI(x float64)   { *v = Day(x) }
func (v *Clock) SetSI(x float64) { *v = Clock(x) }

// Date is a year, a month and a day of the month, from 1 on.
type Date struct{ Year, Month, Day int }

// The calendar repeats every 400 years, of this many days.
const era = 400*365 + 97

// eraStart is 1 March of the year 0, from which days are counted here: with the leap day at the end of a year, the months before it follow
// one another alike, 153 days in five.
const eraStart = -719468

// Days returns the day of a date (Gregorian rules, ISO 8601; years from 0 on).
func (d Date) Days() Day {
	year, month := d.Year, d.Month-3 // March is 0
	if month < 0 {
		year, month = year-1, month+12
	}
	return Day(eraStart + year*365 + Quotient(year, 4) - Quotient(year, 100) + Quotient(year, 400) + (153*month+2)/5 + d.Day - 1)
}

// Date returns the date of a day.
func (d Day) Date() Date {
	n := int(d) - eraStart
	eras := Quotient(n, era)
	n -= eras * era
	year := (n - n/1460 + n/36524 - n/(era-1)) / 365 // without the leap days before it
	n -= year*365 + year/4 - year/100
	month := (5*n + 2) / 153
	date := Date{Year: 400*eras + year, Month: month + 3, Day: n - (153*month+2)/5 + 1}
	if date.Month > 12 {
		date.Month -= 12
		date.Year++
	}
	return date
}

// Weekday returns the day of the week, 1 for Monday to 7 for Sunday (ISO 8601). 1 January 1970 was a Thursday.
func (d Day) Weekday() int {
	n := int(d) + 3
	return n - Quotient(n, 7)*7 + 1
}

// Week returns the year and the number of the week (ISO 8601): a week begins on Monday and is of the year in which its Thursday is.
func (d Day) Week() (year, week int) {
	thursday := d + 4 - Day(d.Weekday())
	year = thursday.Date().Year
	return year, int(thursday-Date{year, 1, 1}.Days())/7 + 1
}

// Quotient divides by a number over 0, down also below 0.
//
//go:noinline
func Quotient(n, by int) int {
	q := n / by
	if n%by < 0 {
		q--
	}
	return q
}

// civil reads a date of the years 1970 to 9998, 2026-11-25 (ISO 8601), or a time of the day, 07:30 or 07:30:15, as the boxes of a page write
// them, and leaves nothing.
func (p *parser) civil(r *Reading) {
	mark, wrong := byte('-'), ErrDay
	if p.kind.Style == StyleClock {
		mark, wrong = ':', ErrClock
	}
	var n [3]int
	part, digits := 0, 0
	text := Trim(p.s)
	for i := 0; i < len(text); i++ {
		switch c := text[i]; {
		case c == mark && part < 2 && digits > 0:
			part++
			digits = 0
		case c >= '0' && c <= '9' && digits < 4:
			n[part] = n[part]*10 + int(c-'0')
			digits++
		default:
			i, digits = len(text), 0
		}
	}
	p.i = len(p.s)
	if digits > 0 && mark == '-' && part == 2 && n[0] >= 1970 && n[0] < 9999 {
		date := Date{n[0], n[1], n[2]}
		if d := date.Days(); d.Date() == date { // the 30th of February is another day
			r.SI = float64(d)
			return
		}
	}
	if digits > 0 && mark == ':' && part > 0 && n[0] < 24 && n[1] < 60 && n[2] < 60 {
		r.SI = float64(n[0]*3600 + n[1]*60 + n[2])
		return
	}
	p.fail(0, p.i, wrong)
}
