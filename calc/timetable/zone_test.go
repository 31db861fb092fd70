package timetable

import (
	"fmt"
	"testing"
	"time"
	_ "time/tzdata"

	"twistbench/calc/quantity"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// zoneOf makes a Zone of what Go knows of a place between two instants.
func zoneOf(t *testing.T, place string, from, to time.Time) (z Zone, l *time.Location) {
	l, err := time.LoadLocation(place)
	require.NoError(t, err)
	for at := from.In(l); ; {
		_, ahead := at.Zone()
		z = append(z, Shift{Instant(at.Unix()), ahead})
		_, next := at.ZoneBounds()
		if next.IsZero() || next.After(to) {
			return z, l
		}
		at = next
	}
}

func at(text string, l *time.Location) (d quantity.Day, c quantity.Clock, i Instant) {
	w, err := time.ParseInLocation("2006-01-02 15:04", text, l)
	if err != nil {
		panic(err)
	}
	day, err := quantity.KindDay.Parse(text[:10], "")
	if err != nil {
		panic(err)
	}
	clock, err := quantity.KindClock.Parse(text[11:], "")
	if err != nil {
		panic(err)
	}
	return quantity.Day(day.SI), quantity.Clock(clock.SI), Instant(w.Unix())
}

func said(d quantity.Day, c quantity.Clock) string {
	date := d.Date()
	return fmt.Sprintf("%04d-%02d-%02d %02d:%02d", date.Year, date.Month, date.Day, int(c)/3600, int(c)/60%60)
}

func TestInstant(t *testing.T) {
	for _, c := range []struct {
		place, local string
		fit          Fit
		utc, says    string // says: what local clocks say then
	}{
		{"America/New_York", "2007-11-04 01:30", Doubled, "2007-11-04 05:30", "2007-11-04 01:30"}, // RFC 5545, 3.3.5: 1:30 EDT, UTC-04:00
		{"America/New_York", "2007-03-11 02:30", Never, "2007-03-11 07:30", "2007-03-11 03:30"},   // RFC 5545, 3.3.5: 3:30 EDT, UTC-04:00
		{"America/New_York", "2007-03-11 03:30", Once, "2007-03-11 07:30", "2007-03-11 03:30"},
		{"America/New_York", "2007-11-04 02:00", Once, "2007-11-04 07:00", "2007-11-04 02:00"},
		// The rest: from Go's copy of the time zone database, by hand.
		{"Europe/Berlin", "2026-03-29 01:59", Once, "2026-03-29 00:59", "2026-03-29 01:59"},
		{"Europe/Berlin", "2026-03-29 02:00", Never, "2026-03-29 01:00", "2026-03-29 03:00"},
		{"Europe/Berlin", "2026-03-29 02:59", Never, "2026-03-29 01:59", "2026-03-29 03:59"},
		{"Europe/Berlin", "2026-10-25 02:00", Doubled, "2026-10-25 00:00", "2026-10-25 02:00"},
		{"Europe/Berlin", "2026-10-25 03:00", Once, "2026-10-25 02:00", "2026-10-25 03:00"},
		{"Europe/Berlin", "2026-12-31 23:59", Once, "2026-12-31 22:59", "2026-12-31 23:59"},
		{"Australia/Lord_Howe", "2026-04-05 01:45", Doubled, "2026-04-04 14:45", "2026-04-05 01:45"}, // half an hour back
		{"Australia/Lord_Howe", "2026-10-04 02:15", Never, "2026-10-03 15:45", "2026-10-04 02:45"},
		{"Asia/Kathmandu", "2026-06-01 00:00", Once, "2026-05-31 18:15", "2026-06-01 00:00"},
		{"Pacific/Apia", "2011-12-30 12:00", Never, "2011-12-30 22:00", "2011-12-31 12:00"}, // a whole day that never was
	} {
		t.Run(c.place+" "+c.local, func(t *testing.T) {
			_, _, want := at(c.utc, time.UTC)
			year := time.Unix(int64(want), 0).UTC().Year()
			z, _ := zoneOf(t, c.place, time.Date(year-1, 6, 1, 0, 0, 0, 0, time.UTC), time.Date(year+1, 6, 1, 0, 0, 0, 0, time.UTC))
			d, second, _ := at(c.local, time.UTC)
			i, fit := z.Instant(d, second)
			assert.Equal(t, want, i)
			assert.Equal(t, c.fit, fit)
			d, second = z.Local(i)
			assert.Equal(t, c.says, said(d, second))
		})
	}
}

// Every quarter of an hour of some years, over midnights, ends of months and years and changes of the clocks, is what Go says of it, and
// every time of the local clocks leads back to the first instant at which they say it.
func TestEveryQuarter(t *testing.T) {
	from, to := time.Date(2026, 1, 1, 0, 0, 0, 0, time.UTC), time.Date(2029, 1, 1, 0, 0, 0, 0, time.UTC)
	for _, place := range []string{"UTC", "Europe/Berlin", "America/St_Johns", "America/Los_Angeles", "Australia/Lord_Howe", "Asia/Kathmandu", "Africa/Casablanca", "Pacific/Chatham"} {
		t.Run(place, func(t *testing.T) {
			z, l := zoneOf(t, place, from, to)
			type wall struct {
				d quantity.Day
				c quantity.Clock
			}
			first, times := map[wall]Instant{}, map[wall]int{}
			for w := from; w.Before(to); w = w.Add(15 * time.Minute) {
				local := w.In(l)
				d, second := z.Local(Instant(w.Unix()))
				date := d.Date()
				got := [...]int{date.Year, date.Month, date.Day, int(second)}
				want := [...]int{local.Year(), int(local.Month()), local.Day(), local.Hour()*3600 + local.Minute()*60 + local.Second()}
				if got != want {
					t.Fatalf("%v: got %v, want %v", w, got, want)
				}
				k := wall{d, second}
				if times[k]++; times[k] == 1 {
					first[k] = Instant(w.Unix())
				}
			}
			begin, _ := z.Local(Instant(from.Unix()))
			end, _ := z.Local(Instant(to.Unix()))
			for d := begin + 1; d < end; d++ {
				for second := quantity.Clock(0); second < day; second += 900 {
					i, fit := z.Instant(d, second)
					k := wall{d, second}
					if fit != [...]Fit{Never, Once, Doubled}[times[k]] || times[k] > 0 && i != first[k] {
						t.Fatalf("%s: got %d, %d", said(d, second), i, fit)
					}
				}
			}
		})
	}
}

func TestShortZones(t *testing.T) {
	for _, c := range []struct {
		name string
		z    Zone
	}{
		{"none", nil},
		{"one", Zone{{0, 3600}}},
		{"only later ones", Zone{{2000000000, -5 * 3600}}},
	} {
		for _, i := range []Instant{0, 1, 86399, 86400, 1700000000, 1999999999} {
			d, second := c.z.Local(i)
			back, fit := c.z.Instant(d, second)
			assert.Equal(t, i, back, c.name)
			assert.Equal(t, Once, fit, c.name)
		}
	}
}

func TestParseNow(t *testing.T) {
	for text, want := range map[string]Zone{
		"":                                     nil,
		"5 ":                                   nil,
		"5":                                    nil,
		"5 1774400000 90000 1774746000 93600 ": {{1774400000, 3600}, {1774746000, 7200}},
		"5 1774400000 68400 ":                  {{1774400000, -5 * 3600}},
		"5 1774400000 90000 1774746000":        {{1774400000, 3600}},
		"5 1774400000 90000 x y ":              {{1774400000, 3600}},
		"5 1774400000":                         nil,
	} {
		now, z := ParseNow(text)
		assert.Equal(t, want, z, text)
		if len(text) > 1 {
			assert.Equal(t, Instant(5), now, text)
		}
	}
}
