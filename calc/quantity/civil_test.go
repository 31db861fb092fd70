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
		d, ok := ParseDay(c.text)
		assert.True(t, ok, c.text)
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

func TestParseDay(t *testing.T) {
	for _, text := range []string{"", "2026", "2026-11", "2026-11-5", "2026/11/25", "25.11.2026", "2026-00-10", "2026-13-10", "2026-11-00", "2026-11-31", "2026-02-29", "2100-02-29", "1969-12-31", "9999-01-01", "+026-11-25", "2026-11-2x", "2026-11-25 ", "２０26-11"} {
		_, ok := ParseDay(text)
		assert.False(t, ok, text)
	}
}

func TestParseClock(t *testing.T) {
	for text, want := range map[string]Clock{"00:00": 0, "07:30": 27000, "7:30": 27000, "23:59": 86340, "07:30:15": 27015, "7:30:15": 27015} {
		got, ok := ParseClock(text)
		assert.True(t, ok, text)
		assert.Equal(t, want, got, text)
	}
	for _, text := range []string{"", ":", "7", "24:00", "12:60", "12:30:60", "12.30", "-1:30", "12:3", "012:30", "12:30:1", "12:30pm", "12:30:15.5", "1:", "a:30"} {
		_, ok := ParseClock(text)
		assert.False(t, ok, text)
	}
}
