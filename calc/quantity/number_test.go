package quantity

import (
	"math"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// What is expected is strconv.ParseFloat, which is right to the last bit.
func TestDigits(t *testing.T) {
	for _, c := range []struct {
		text string
		off  float64 // by how many steps of float64 the reading may miss
	}{
		{"0.1", 0}, {"0.52", 0}, {"408.0", 0}, {"0.0254", 0}, {"45359237e-8", 0}, {"123456789012345", 0},
		{"9007199254740993", 0}, {"1e22", 0}, {"1e-22", 0}, {"000000000000000000000000.5", 0}, {"0e99", 0},
		{"1e23", 1}, {"3.14159265358979323846264338327950288", 1}, {"0.1234567890123456789", 1},
		{"123456789012345678901234567890", 1}, {"0.00000000000000000000000000000000012345", 2},
		{"6.02214076e+45", 2}, {"1.7976931348623157e308", 15}, {"1e-300", 15}, {"5e-324", 0}, {"1e-400", 0},
	} {
		want, err := strconv.ParseFloat(c.text, 64)
		require.NoError(t, err, c.text)
		r, err := KindCount.number(c.text)
		require.NoError(t, err, c.text)
		step := math.Nextafter(want, math.Inf(1)) - want
		if math.IsInf(step, 0) {
			step = want - math.Nextafter(want, 0)
		}
		assert.InDelta(t, want, r, c.off*step, c.text)
	}
	for _, text := range []string{"1e309", "1e999", "1e99999999999999999999", "9.99e308"} {
		_, err := KindCount.number(text)
		assert.ErrorIs(t, err, ErrNotFinite, text)
	}
}

// number reads a text that is one number.
func (k *Kind) number(text string) (float64, error) {
	p := parser{kind: k, s: text}
	x := p.number(true)
	p.done()
	return x, p.err
}

func TestTrim(t *testing.T) {
	for text, want := range map[string]string{
		"": "", " ": "", "a": "a", " a b\t": "a b", "\u00a0\u202f1 mm\u2009\n": "1 mm", "\xff ": "\xff", " é": "é",
	} {
		assert.Equal(t, want, Trim(text), "%q", text)
	}
}
