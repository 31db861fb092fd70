package quantity

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestAppend(t *testing.T) {
	below := func(x float64) float64 { return math.Nextafter(x, 0) }
	in := KindLength.Unit("in")
	mm := KindLength.Unit("mm")
	ne := KindLinearDensity.Unit("Ne")
	for _, c := range []struct {
		si     float64
		unit   *Unit
		digits int
		mark   byte
		want   string
	}{
		// Decimal rounding by hand, to so many significant digits.
		{408, nil, 4, '.', "408.0"},
		{1234.56, nil, 4, '.', "1235"},
		{0.52, nil, 4, '.', "0.5200"},
		{1234.5, nil, 3, '.', "1235"},
		{123456, nil, 3, '.', "123456"},
		{0, nil, 4, '.', "0"},
		{math.Copysign(0, -1), nil, 4, '.', "0"},
		{-0.52, nil, 2, '.', "-0.52"},
		{0.00001234, nil, 2, '.', "0.000012"},
		{1e21, nil, 3, '.', "1000000000000000000000"},
		{5, nil, 0, '.', "5"},
		// Each side of an edge: the half, and the float just below it.
		{999.5, nil, 3, '.', "1000"},
		{below(999.5), nil, 3, '.', "999"},
		{99.95, nil, 3, '.', "100"}, // the float is over 99.95
		{below(99.95), nil, 3, '.', "99.9"},
		{9.9375, nil, 4, '.', "9.938"},
		{below(9.9375), nil, 4, '.', "9.937"},
		{0.99951171875, nil, 3, '.', "1.00"}, // 1 - 2^-11, over 0.9995
		{0.9994, nil, 3, '.', "0.999"},
		{0.5, nil, 1, '.', "0.5"},
		// Halves go away from zero, to even and odd alike.
		{2.5, nil, 1, '.', "3"},
		{3.5, nil, 1, '.', "4"},
		{-2.5, nil, 1, '.', "-3"},
		{below(2.5), nil, 1, '.', "2"},
		{0.125, nil, 2, '.', "0.13"},
		{below(0.125), nil, 2, '.', "0.12"},
		{0.375, nil, 2, '.', "0.38"},
		{1.015625, nil, 6, '.', "1.01563"},
		// Units and marks.
		{0.408, mm, 4, ',', "408,0"},
		{0.0254, in, 4, ',', "1,000"},
		{1.234, nil, 4, 0, "1.234"},
		{0.45359237 / 768.096 / 40, ne, 3, '.', "40.0"}, // Ne 40: a pound in 40 hanks of 840 yards
		// Unknown, and what has no end.
		{NaN, mm, 4, '.', "–"},
		{math.Inf(1), mm, 4, '.', "–"},
		{0, ne, 4, '.', "–"},
	} {
		assert.Equal(t, c.want, string(Append(nil, c.si, c.unit, c.digits, c.mark)), "%v %d", c.si, c.digits)
	}
	assert.Equal(t, "1.5 2,50", string(Append([]byte("1.5 "), 2.5, nil, 3, ',')), "what stands before is left alone")
}

// The start plan's answers as the design prints them.
func TestAppendPlan(t *testing.T) {
	for want, c := range map[string]struct {
		si   float64
		unit *Unit
	}{
		"0.2124": {math.Pi / 4 * 0.52e-3 * 0.52e-3, KindArea.Unit("mm²")}, // a circle of 0.52 mm
		"408.0":  {0.085 * 4.8, KindLength.Unit("mm")},
		"20.34":  {0.2034, KindFraction.Unit("%")},
	} {
		assert.Equal(t, want, string(Append(nil, c.si, c.unit, 4, '.')))
	}
}

func TestDecimals(t *testing.T) {
	below := func(x float64) float64 { return math.Nextafter(x, 0) }
	for _, c := range []struct {
		x      float64
		digits int
		want   int
	}{
		// Digits wanted, less those before the mark once rounded.
		{408, 4, 1}, {1234.56, 4, 0}, {0.52, 4, 4}, {12345, 3, 0},
		{999.5, 3, 0}, {below(999.5), 3, 0},
		{99.96, 3, 0}, {99.94, 3, 1}, {-99.96, 3, 0},
		{9.995117, 3, 1}, {9.994, 3, 2},
		{0.09996, 3, 3}, {0.09994, 3, 4}, // 0.100 and 0.0999
		{1, 1, 0}, {1, 17, 16}, {1e-300, 2, 301}, {1e300, 17, 0},
		{0, 4, 0}, {NaN, 4, 0}, {math.Inf(-1), 4, 0}, {0.5, 0, 1}, {0.5, -3, 1},
	} {
		assert.Equal(t, c.want, Decimals(c.x, c.digits), "%v %d", c.x, c.digits)
	}
}

// Whatever is written has the digits asked for, and is as near as they allow.
func TestAppendDigits(t *testing.T) {
	for exponent := -12; exponent <= 12; exponent++ {
		for _, m := range []float64{1, 1.25, 1.999999, 2.5, 3.14159, 4.995, 9.4999, 9.5, 9.995, 9.99949, 9.9995} {
			x := m * math.Pow(10, float64(exponent))
			for digits := 1; digits <= 6; digits++ {
				s := string(Append(nil, x, nil, digits, '.'))
				whole, decimals, _ := strings.Cut(s, ".")
				n := len(strings.TrimLeft(whole+decimals, "0"))
				if decimals == "" {
					assert.GreaterOrEqual(t, n, digits, s)
				} else {
					assert.Equal(t, digits, n, s)
				}
				r, err := KindCount.Parse(s, "")
				if err != nil {
					r, err = KindDensity.Parse(s, "")
				}
				assert.NoError(t, err)
				half := 0.5 * math.Pow(10, -float64(len(decimals)))
				assert.InDelta(t, x, r.SI, half*(1+1e-9), s)
			}
		}
	}
}

func BenchmarkAppend(b *testing.B) {
	b.ReportAllocs()
	mm := KindLength.Unit("mm")
	var buf [64]byte
	for b.Loop() {
		Append(buf[:0], 0.4080123, mm, 4, ',')
	}
}
