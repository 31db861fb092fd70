package timetable

// Day is a date of the Gregorian calendar as a number of days since 1 January 1970.
type Day int

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
	return Day(eraStart + year*365 + floor(year, 4) - floor(year, 100) + floor(year, 400) + (153*month+2)/5 + d.Day - 1)
}

// Date returns the date of a day.
func (d Day) Date() Date {
	n := int(d) - eraStart
	eras := floor(n, era)
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
	return n - floor(n, 7)*7 + 1
}

// Week returns the year and the number of the week (ISO 8601): a week begins on Monday and is of the year in which its Thursday is.
func (d Day) Week() (year, week int) {
	thursday := d + 4 - Day(d.Weekday())
	year = thursday.Date().Year
	return year, int(thursday-Date{year, 1, 1}.Days())/7 + 1
}

// floor divides by a number over 0, down also below 0.
func floor(n, by int) int {
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
	year, good := digits(text[:4])
	month, fine := digits(text[5:7])
	day, well := digits(text[8:])
	if !good || !fine || !well || year < 1970 || year > 9998 || month < 1 || month > 12 || day < 1 {
		return 0, false
	}
	date := Date{year, month, day}
	d = date.Days()
	return d, d.Date() == date // the 30th of February is another day
}

// ParseTime reads a time of the day as a page's time box writes it, 07:30 or 07:30:15; an hour of one digit is read too. It returns the
// seconds since midnight.
func ParseTime(text string) (second int, ok bool) {
	if len(text) > 1 && text[1] == ':' {
		text = "0" + text
	}
	if len(text) != 5 && (len(text) != 8 || text[5] != ':') || text[2] != ':' {
		return 0, false
	}
	h, good := digits(text[:2])
	m, fine := digits(text[3:5])
	s, well := 0, true
	if len(text) == 8 {
		s, well = digits(text[6:])
	}
	return h*3600 + m*60 + s, good && fine && well && h < 24 && m < 60 && s < 60
}

// digits reads a whole number that is nothing but digits, at most twelve.
func digits(text string) (n int, ok bool) {
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

// AppendDay appends a date: 2026-11-25.
func AppendDay(b []byte, d Day) []byte {
	date := d.Date()
	b = appendPadded(b, date.Year, 4)
	b = append(b, '-')
	b = appendPadded(b, date.Month, 2)
	b = append(b, '-')
	return appendPadded(b, date.Day, 2)
}

// AppendTime appends a time of the day to the minute: 07:30.
func AppendTime(b []byte, second int) []byte {
	b = appendPadded(b, second/3600, 2)
	b = append(b, ':')
	return appendPadded(b, second/60%60, 2)
}

// AppendWait appends a length of time as it is counted down: 9:05, or 1:09:05 from an hour on.
func AppendWait(b []byte, seconds int) []byte {
	if seconds < 3600 {
		b = appendPadded(b, seconds/60, 1)
	} else {
		b = appendPadded(b, seconds/3600, 1)
		b = append(b, ':')
		b = appendPadded(b, seconds/60%60, 2)
	}
	b = append(b, ':')
	return appendPadded(b, seconds%60, 2)
}

// appendPadded appends a number of 0 or more with at least so many digits.
//
//go:noinline
func appendPadded(b []byte, n, width int) []byte {
	ten := 1
	for i := 1; i < width || n/ten > 9; i++ {
		ten *= 10
	}
	for ; ten > 0; ten /= 10 {
		b = append(b, byte('0'+n/ten%10))
	}
	return b
}
