package timetable

import "twistbench/calc/quantity"

// Instant is a moment, in seconds since the beginning of 1970 UTC.
type Instant int

// Shift says how many seconds local clocks are ahead of UTC from an instant on.
type Shift struct {
	From  Instant
	Ahead int
}

// Zone is the local clocks of a place for some years, in the order of the instants; before the first it is as from the first on. An empty
// one is UTC.
type Zone []Shift

const day = 86400 // s

// ParseNow reads what the page tells of its clock: the instant, and, where more follows, the zone: of each shift its instant, and how many
// seconds clocks are ahead of UTC and a day more, so that no number is below 0. Each has a blank behind it. What can't be read, and all behind
// it, is left out.
func ParseNow(text string) (now Instant, z Zone) {
	s := ints{text: text}
	now = Instant(s.next())
	for s.text != "" {
		shift := Shift{Instant(s.next()), s.next() - day}
		if s.bad {
			break
		}
		z = append(z, shift)
	}
	return now, z
}

// ahead returns the last shift that holds at an instant.
func (z Zone) ahead(i Instant) int {
	if len(z) == 0 {
		return 0
	}
	n := 0
	for n+1 < len(z) && z[n+1].From <= i {
		n++
	}
	return z[n].Ahead
}

// Local returns what calendar and clock at the place say at an instant: the day, and the time of the day to the second.
//
//go:noinline
func (z Zone) Local(i Instant) (quantity.Day, quantity.Clock) {
	n := int(i) + z.ahead(i)
	d := quantity.Quotient(n, day)
	return quantity.Day(d), quantity.Clock(n - d*day)
}

// Fit says how often a day and time of the day come on the local clocks.
type Fit uint8

// The fits.
const (
	Once    Fit = iota
	Never       // clocks were put forward over it
	Doubled     // clocks were put back over it
)

// Instant returns when the local clocks say a day and a time of the day. A time that comes twice is the first of the
// two. One that never comes counts as clocks ran before they were put forward, so that they say as much more as they were put forward by
// (both as RFC 5545, 3.3.5).
func (z Zone) Instant(d quantity.Day, c quantity.Clock) (i Instant, fit Fit) {
	said := Instant(int(d)*day + int(c))
	found := false
	for n := len(z) - 1; n > 0; n-- {
		before, after := Instant(z[n-1].Ahead), Instant(z[n].Ahead)
		if first, last := z[n].From+before, z[n].From+after; said >= first && said < last {
			return said - before, Never
		}
		if said-after >= z[n].From && (n+1 == len(z) || said-after < z[n+1].From) {
			if found {
				fit = Doubled
			}
			i, found = said-after, true
		}
	}
	ahead := 0
	if len(z) > 0 {
		ahead = z[0].Ahead
	}
	if said -= Instant(ahead); len(z) < 2 || said < z[1].From {
		if found {
			fit = Doubled
		}
		i = said
	}
	return i, fit
}
