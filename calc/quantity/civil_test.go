package quantity

import (
	"fmt"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
)

func TestDays(t *testing.T) {
	for _, c := range []struct {
		text       string
		day        Day
		weekday    int
		year, week int
	}{
		{"1970-01-01", 0, 4, 1970, 1},      // a Thursday, the beginning of Unix time
		{"2000-02-29", 11016, 2, 2000, 9},  // Python's datetime
		{"2026-11-25", 20782, 3, 2026, 48}, // 2026-W48-3, Python's datetime
		{"2027-01-01", 20819, 5, 2026, 53}, // 2026-W53-5, Python's datetime
		{"2100-03-01", 47541, 1, 2100, 9},  // Python's datetime; 2100 is no leap year
	} {
		r, err := KindDay.Parse(c.text, "")
		assert.NoError(t, err, c.text)
		d := Day(r.SI)
		assert.Equal(t, c.day, d, c.text)
		assert.Equal(t, c.weekday, d.Weekday(), c.text)
		year, week := d.Week()
		assert.Equal(t, []int{c.year, c.week}, []int{year, week}, c.text)
		date := d.Date()
		assert.Equal(t, c.text, fmt.Sprintf("%04d-%02d-%02d", date.Year, date.Month, date.Day))
	}
}

// Every day of six hundred years is what Go's own calendar says.
func TestEveryDay(t *testing.T) {
	at := time.Date(1800, 1, 1, 0, 0, 0, 0, time.UTC)
	for d := (Date{1800, 1, 1}).Days(); d.Date().Year < 2400; d++ {
		date := d.Date()
		year, week := d.Week()
		wantYear, wantWeek := at.ISOWeek()
		got := [...]int{date.Year, date.Month, date.Day, d.Weekday() % 7, year, week, int(date.Days())}
		want := [...]int{at.Year(), int(at.Month()), at.Day(), int(at.Weekday()), wantYear, wantWeek, int(d)}
		if got != want {
			t.Fatalf("day %v: got %v, want %v", float64(d), got, want)
		}
		at = at.AddDate(0, 0, 1)
	}
}

func TestParseCivil(t *testing.T) {
	for _, c := range []struct {
		kind *Kind
		text string
		want float64
	}{
		{KindClock, "00:00", 0}, {KindClock, "07:30", 27000}, {KindClock, "7:30", 27000}, {KindClock, "23:59", 86340}, {KindClock, "07:30:15", 27015}, {KindClock, " 7:30:15 ", 27015},
		{KindDay, "1970-01-01", 0}, {KindDay, " 2026-11-25", 20782}, {KindDay, "2026-2-3", 20487}, {KindDay, "9998-12-31", 2932531}, // Python's datetime
	} {
		r, err := c.kind.Parse(c.text, "")
		assert.NoError(t, err, c.text)
		assert.Equal(t, c.want, r.SI, c.text)
		assert.Nil(t, r.Unit)
	}
	for _, text := range []string{"2026", "2026-11", "2026/11/25", "25.11.2026", "2026-00-10", "2026-13-10", "2026-11-00", "2026-11-31", "2026-02-29", "2100-02-29", "1969-12-31", "9999-01-01", "+026-11-25", "2026-11-2x", "2026-11-25-1", "2026--25", "-2026-11-25", "2026-11-", "20260-11-25", "２026-11-25", "x"} {
		_, err := KindDay.Parse(text, "")
		assert.ErrorIs(t, err, ErrDay, text)
	}
	for _, text := range []string{":", "7", "24:00", "12:60", "12:30:60", "12.30", "-1:30", "12:30pm", "12:30:15.5", "1:", ":30", "a:30", "1:2:3:4", "12:30 7"} {
		_, err := KindClock.Parse(text, "")
		assert.ErrorIs(t, err, ErrClock, text)
	}
	_, err := KindDay.Parse(" ", "")
	assert.ErrorIs(t, err, ErrEmpty)
}
