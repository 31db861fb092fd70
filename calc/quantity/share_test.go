package quantity

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestShare(t *testing.T) {
	for _, c := range []struct {
		text string
		want float64
		bare bool
	}{
		{"0.85", 0.85, true}, {"0,85", 0.85, true}, {"85", 0.85, true}, {"85 %", 0.85, false},
		{"1", 1, true}, {"1.5", 0.015, true}, {"1 %", 0.01, false}, {"0", 0, true}, {"100", 1, true},
	} {
		r, err := KindShare.Parse(c.text, "%")
		require.NoError(t, err, c.text)
		assert.InDelta(t, c.want, r.SI, 1e-12, c.text)
		assert.Equal(t, c.bare, r.Bare, c.text)
	}
}
