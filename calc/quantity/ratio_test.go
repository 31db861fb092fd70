package quantity

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// The expected ratios are the quotient of what is written, larger over
// smaller.
func TestRatio(t *testing.T) {
	for _, c := range []struct {
		text  string
		want  float64
		other string
	}{
		{"4:1", 4, ""},
		{"1:4", 4, ""},
		{"4 : 1", 4, ""},
		{"4 to 1", 4, ""},
		{"4TO1", 4, ""},
		{"1∶4", 4, ""}, // the ratio sign
		{"408:85", 4.8, ""},
		{"4.8:1", 4.8, ""},
		{"4,8 : 1", 4.8, ""},
		{"0.25", 4, ""},
		{"0,25", 4, ""},
		{"1/4", 4, ""},
		{"408/85", 4.8, ""},
		{"25 %", 4, ""},
		{"25%", 4, ""},
		{"400 %", 4, ""},
		{"4", 4, ""},
		{" 4.8 ", 4.8, ""},
		{"4 1/2", 4.5, ""},
		{"4.125", 4.125, "4125"},
		{"4.125:1", 4.125, "4125:1"},
		{"1.000:4", 4, "1000:4"},
	} {
		t.Run(c.text, func(t *testing.T) {
			r, err := KindRatio.Parse(c.text, "")
			require.NoError(t, err)
			assert.InEpsilon(t, c.want, r.SI, 1e-15)
			assert.Equal(t, c.other, r.Other)
			roundTrip(t, KindRatio, r)
		})
	}
}

func TestRatioFails(t *testing.T) {
	for _, c := range []struct {
		text string
		err  error
		part string
	}{
		{"", ErrEmpty, ""},
		{"1", ErrOne, "1"},
		{"1:1", ErrOne, "1:1"},
		{"3 : 3", ErrOne, "3 : 3"},
		{"100 %", ErrOne, "100 %"},
		{"4/4", ErrOne, "4/4"},
		{"1.000", ErrOne, "1.000"},
		{"0", ErrNumber, "0"},
		{"-4", ErrNumber, "-4"},
		{"4:0", ErrNumber, "4:0"},
		{"0:4", ErrNumber, "0:4"},
		{"4:-1", ErrNumber, "4:-1"},
		{"-4:-1", ErrNumber, "-4:-1"},
		{"0 %", ErrNumber, "0 %"},
		{"4:", ErrNumber, "4:"},
		{":4", ErrNumber, ":4"},
		{"4:1:2", ErrTrailing, ":2"},
		{"4 mm", ErrTrailing, "mm"},
		{"4:1 %", ErrTrailing, "%"},
		{"1:1e-320", ErrNotFinite, "1:1e-320"},
	} {
		t.Run(c.text, func(t *testing.T) {
			_, err := KindRatio.Parse(c.text, "")
			require.ErrorIs(t, err, c.err)
			var e *ParseError
			require.ErrorAs(t, err, &e)
			assert.Equal(t, c.part, e.Part)
		})
	}
}

func TestRatioDoubt(t *testing.T) {
	for _, c := range []struct {
		text string
		want float64 // of a ratio of 5
	}{
		{"0.2", 0.2},
		{"10 %", 0.5}, // a tenth of 5
		{"0", 0},
	} {
		r, err := KindRatioDoubt.Parse(c.text, "")
		require.NoError(t, err)
		var d RatioDoubt
		d.SetSI(r.SI)
		d.SetUnit(r.Unit)
		assert.InDelta(t, c.want, d.Of(5), 1e-15, c.text)
	}
	var d RatioDoubt
	d.SetSI(NaN)
	assert.True(t, math.IsNaN(d.Of(5)))
	d.SetUnit(KindFraction.Default())
	assert.True(t, d.OfRatio)
	d.SetUnit(nil)
	assert.False(t, d.OfRatio)
}
