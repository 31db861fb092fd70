package proof

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestWorth(t *testing.T) {
	two := func(string) (float64, bool) { return 2, true }
	for shown, want := range map[string]float64{
		"π × d² ÷ 4": math.Pi, "√(4 × A ÷ π)": math.Sqrt(8 / math.Pi), "8 − (d + 1)² ÷ 3": 5, "1 ÷ d ÷ d": 0.25,
		"(1 + 1 ÷ cos a) ÷ 2": (1 + 1/math.Cos(2)) / 2, "2 × tan(a ÷ 2)": 2 * math.Tan(1), "n × (1 − sin b)": 2 * (1 - math.Sin(2)),
		"atan(π × t × n)": math.Atan(4 * math.Pi), "acos(1 ÷ a) + asin(1 ÷ a)": math.Pi / 2, "(cos a)²": math.Cos(2) * math.Cos(2),
	} {
		side, err := Read(shown)
		require.NoError(t, err, shown)
		got, err := side.Worth(two)
		require.NoError(t, err, shown)
		assert.InDelta(t, want, got, 1e-15, shown)
	}
}

// What is not read, or is not there, is never taken for a number.
func TestUnread(t *testing.T) {
	for shown, why := range map[string]string{
		"d ×":           "expected operand",
		"d ÷ e":         "no such symbol as e",
		"e ÷ d":         "no such symbol as e",
		"sin(e)":        "no such symbol as e",
		"e²":            "no such symbol as e",
		"sinh(d)":       "a sign that is not read",
		"sin(d, d)":     "a sign that is not read",
		"d.half":        "a sign that is not read",
		"d % d":         "a sign that is not read",
		"−d":            "a sign that is not read",
		"d ÷ (d < d)":   "a sign that is not read",
		`d × "a"`:       "invalid syntax",
		"d × (d + [1])": "expected",
	} {
		side, err := Read(shown)
		if err == nil {
			_, err = side.Worth(func(symbol string) (float64, bool) { return 2, symbol == "d" })
		}
		assert.ErrorContains(t, err, why, shown)
	}
}
