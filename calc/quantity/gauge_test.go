package quantity

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// As the trade writes gauges: ASTM B258 names those thicker than 0 by their zeros, and counts them 0, −1, −2 and −3 in its formula.
func TestGauge(t *testing.T) {
	for _, row := range []struct {
		text string
		want float64
		bare bool
	}{
		{"24", 24, true}, {"AWG 24", 24, false}, {"24 AWG", 24, false}, {"awg24", 24, false}, {"24awg", 24, false}, {"24 ga", 24, false}, {"24 ga.", 24, false},
		{"#30", 30, false}, {"gauge 30", 30, false}, {"22,5", 22.5, true},
		{"0", 0, true}, {"00", -1, true}, {"000", -2, true}, {"0000", -3, true}, {"0000 AWG", -3, false}, {"AWG 00", -1, false},
		{"1/0", 0, true}, {"2/0", -1, true}, {"3/0 AWG", -2, false}, {"AWG 4/0", -3, false}, {"-3", -3, true}, {"0.5", 0.5, true}, {"10", 10, true},
	} {
		r, err := KindGauge.Parse(row.text, "")
		if assert.NoError(t, err, row.text) {
			assert.Equal(t, row.want, r.SI, row.text)
			assert.Equal(t, row.bare, r.Bare, row.text)
		}
	}
	for text, want := range map[string]error{
		"": ErrEmpty, "AWG": ErrNumber, "24 SWG": ErrUnit, "4/0/0": ErrTrailing, "0/0": ErrTrailing, "24 mm": ErrUnit, "abc": ErrNumber, "AWG 24 AWG 24": ErrTrailing, "4/ 0": ErrTrailing,
	} {
		_, err := KindGauge.Parse(text, "")
		assert.ErrorIs(t, err, want, text)
	}
}
