package quantity

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Against the library's, over all that a float64 can be.
func TestPower(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	for range 200000 {
		x := math.Float64frombits(r.Uint64() &^ (1 << 63))
		if x-x != 0 || x < 0x1p-1022 { // of what has no leading 1 the library's is off on some machines
			continue
		}
		want := math.Log(x)
		require.InDelta(t, want, Log(x), 2e-15*max(1, math.Abs(want)), "%g", x)
		y := 1416*r.Float64() - 708
		require.InEpsilon(t, math.Exp(y), Exp(y), 1e-15*max(2, math.Abs(y)), "%g", y)
		y /= 1000
		require.InEpsilon(t, math.Exp(y), Exp(y), 1e-15, "%g", y)
		require.InDelta(t, math.Log(1+y/2), Log(1+y/2), 1e-15, "%g", 1+y/2)
	}
	assert.Zero(t, Log(1))
	assert.Equal(t, 1.0, Exp(0))
	for x, want := range map[float64]float64{0: math.Inf(-1), math.Inf(1): math.Inf(1), math.MaxFloat64: math.Log(math.MaxFloat64)} {
		assert.Equal(t, want, Log(x), "%g", x)
	}
	assert.InDelta(t, -1074*math.Ln2, Log(5e-324), 1e-12) // 2⁻¹⁰⁷⁴, the least there is
	assert.True(t, math.IsNaN(Log(-1)) && math.IsNaN(Log(NaN)) && math.IsNaN(Exp(NaN)))
	assert.Equal(t, math.Inf(1), Exp(1000))
	assert.Zero(t, Exp(-1000))
}
