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
func Quotient(n, by int) int {
	q := n / by
	if n%by < 0 {
		q--
	}
	return q
}

// ParseDay reads a date as a page's date box writes it, 2026-11-25 (ISO 8601), of the years 1970 to 9998.
func ParseDay(text string) (d Day, ok bool) {
	if len(text) != 10 || text[4] != '-' || text[7] != '-' {
		return 0, false
	}
	year, good := Digits(text[:4])
	month, fine := Digits(text[5:7])
	day, well := Digits(text[8:])
	if !good || !fine || !well || year < 1970 || year > 9998 || month < 1 || month > 12 || day < 1 {
		return 0, false
	}
	date := Date{year, month, day}
	d = date.Days()
	return d, d.Date() == date // the 30th of February is another day
}

// ParseClock reads a time of the day as a page's time box writes it, 07:30 or 07:30:15; an hour of one digit is read too.
func ParseClock(text string) (c Clock, ok bool) {
	if len(text) > 1 && text[1] == ':' {
		text = "0" + text
	}
	if len(text) != 5 && (len(text) != 8 || text[5] != ':') || text[2] != ':' {
		return 0, false
	}
	h, good := Digits(text[:2])
	m, fine := Digits(text[3:5])
	s, well := 0, true
	if len(text) == 8 {
		s, well = Digits(text[6:])
	}
	return Clock(h*3600 + m*60 + s), good && fine && well && h < 24 && m < 60 && s < 60
}

// Digits reads a whole number that is nothing but digits, at most twelve.
func Digits(text string) (n int, ok bool) {
	if len(text) == 0 || len(text) > 12 {
		return 0, false
	}
	for i := range len(text) {
		if text[i] < '0' || text[i] > '9' {
			return 0, false
		}
		n = n*10 + int(text[i]-'0')
	}
	return n, true
}
