package craft

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"twistbench/calc/quantity"
)

// A fifth less and a fifth more mass make a fifth less and more stress on the same area. By hand: four and six fifths.
func TestFifths(t *testing.T) {
	for _, c := range []struct {
		mass, less, more quantity.Mass
		hook             quantity.Mass
		onHook           quantity.Mass // for less stress
	}{
		{0.368, 0.2944, 0.4416, 0.035, 0.2594},
		{0.1, 0.08, 0.12, 0, 0.08},
		{0.04, 0.032, 0.048, 0.035, -0.003},
	} {
		assert.InDelta(t, float64(c.less), float64(LessMass(c.mass)), 1e-12)
		assert.InDelta(t, float64(c.more), float64(MoreMass(c.mass)), 1e-12)
		assert.InDelta(t, float64(c.onHook), float64(OnHook(LessMass(c.mass), c.hook)), 1e-12)
		const area = 0.2e-6
		now := StressOfMass(c.mass, area)
		assert.InEpsilon(t, 0.8*float64(now), float64(StressOfMass(LessMass(c.mass), area)), 1e-12)
		assert.InEpsilon(t, 1.2*float64(now), float64(StressOfMass(MoreMass(c.mass), area)), 1e-12)
		assert.InDelta(t, float64(c.mass), float64(OnHook(TotalMass(c.mass, c.hook), c.hook)), 1e-15, "the way back")
	}
	assert.InDelta(t, 0.5, float64(TurnsShare(80, 160)), 1e-15)
	assert.InDelta(t, 1.0625, float64(TurnsShare(170, 160)), 1e-15)
	assert.True(t, unknown(float64(TurnsShare(quantity.Turns(quantity.NaN), 160))))
}
