package quantity

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestCeil(t *testing.T) {
	tail, coiled := 0.04, 0.07
	sum := (coiled*4 + 2*tail) * 1000 // 360 on paper, 360.00000000000006 in float64
	assert.Equal(t, 361.0, math.Ceil(sum), "what is to be forgiven")
	for _, c := range []struct{ x, want float64 }{
		{sum, 360},
		{360, 360},
		{360.001, 361},
		{359.0001, 360},
		{360 * (1 + 0.9e-9), 360}, // either side of the forgiven share
		{360 * (1 + 1.1e-9), 361},
		{360 * (1 - 1.1e-9), 360},
		{1, 1}, {1.2, 2}, {0, 0}, {1e-12, 1}, {1e15, 1e15},
		{-0.3, 0}, {-1.5, -1}, {-2, -2}, {-360.00000000000006, -360},
		{1e10 + 0.5, 1e10 + 1},
		{math.Inf(1), math.Inf(1)},
	} {
		got := Ceil(c.x)
		assert.Equal(t, c.want, got, "%v", c.x)
		assert.False(t, got == 0 && math.Signbit(got), "%v", c.x)
	}
	assert.True(t, math.IsNaN(Ceil(NaN)))
}

func TestFloor(t *testing.T) {
	for _, c := range []struct{ x, want float64 }{
		{0.29 / 0.145, 2}, {2.9999999999, 3}, {3 * (1 - 1.1e-9), 2}, {3, 3}, {3.7, 3}, {0.4, 0}, {-0.5, -1}, {-2, -2}, {math.Inf(1), math.Inf(1)},
	} {
		got := Floor(c.x)
		assert.Equal(t, c.want, got, "%v", c.x)
		assert.False(t, got == 0 && math.Signbit(got), "%v", c.x)
	}
	assert.True(t, math.IsNaN(Floor(NaN)))
}

// A grid of sums that are whole on paper: n steps made in several ways, and
// just over and just under.
func TestCeilToGrid(t *testing.T) {
	for _, g := range []struct {
		step   float64
		per    float64 // steps to the unit, 0 if the step is itself whole
		digits float64
	}{
		{1, 1, 0}, {0.1, 10, 0}, {0.5, 2, 0}, {0.001, 1000, 0}, {0.25, 4, 0}, {5, 0.2, 0}, {10, 0.1, 0}, {0.005, 200, 0},
	} {
		for n := 1; n <= 2000; n++ {
			x := float64(n) / g.per
			if g.step >= 1 {
				x = float64(n) * g.step
			}
			for _, way := range []float64{x, float64(n) * g.step, x / 7 * 7, x*0.1 + x*0.9, x * (1 + 5e-10), x * (1 - 5e-10)} {
				assert.InEpsilon(t, x, CeilTo(way, g.step), 1e-15, "%d steps of %v", n, g.step)
			}
			over := CeilTo(x+0.01*g.step, g.step)
			assert.InEpsilon(t, x+g.step, over, 1e-15, "over %d steps of %v", n, g.step)
			under := CeilTo(x-0.99*g.step, g.step)
			assert.InEpsilon(t, x, under, 1e-15, "under %d steps of %v", n, g.step)
		}
	}
}

// Lengths in whole millimetres, added up in metres as a maker's plan does.
func TestCeilMillimetres(t *testing.T) {
	for coiled := 10; coiled <= 200; coiled += 7 {
		for tenths := 20; tenths <= 80; tenths += 3 {
			for tail := 0; tail <= 60; tail += 5 {
				want := (coiled*tenths + 9) / 10 // whole numbers only
				m := float64(coiled) / 1000 * (float64(tenths) / 10)
				assert.Equal(t, float64(want+2*tail), Ceil((m+2*(float64(tail)/1000))*1000), "%d %d %d", coiled, tenths, tail)
			}
		}
	}
}

func TestCeilToStep(t *testing.T) {
	assert.Equal(t, 0.3, CeilTo(0.1+0.2, 0.1))
	for _, step := range []float64{0, -1, NaN, math.Inf(1)} {
		assert.True(t, math.IsNaN(CeilTo(5, step)), "%v", step)
	}
}
