package trial

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestLineDoubts(t *testing.T) {
	nan := math.NaN()
	for _, c := range []struct {
		name            string
		x, y            []float64
		at, slope, at0  float64
		uSlope, uAt, by float64
	}{
		// handbook M05a, M05b: JCGM 100:2008 H.3 gives −0.1712(29) at 20 °C and 0.00218(67); the further digits from scipy 1.10.1
		{"thermometer", []float64{21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511},
			[]float64{-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160},
			20, 0.00218269773989, -0.171203790131, 0.000667938773228, 0.00287759783516, 1e-9},
		// by hand: 1, 3, 4 at 0, 1, 2 leave −1/6, 1/3, −1/6, so s = √(1/6), and Σ(x − 1)² = 2: s/√2 and s √(1/3 + 1/2)
		{"three", []float64{0, 1, 2}, []float64{1, 3, 4}, 0, 1.5, 7.0 / 6, math.Sqrt(1.0 / 12), math.Sqrt(5.0 / 36), 1e-14},
		{"with a gap", []float64{0, nan, 1, 2, 7}, []float64{1, 5, 3, 4, nan}, 0, 1.5, 7.0 / 6, math.Sqrt(1.0 / 12), math.Sqrt(5.0 / 36), 1e-14},
	} {
		l := Fit(c.x, c.y)
		assert.InEpsilon(t, c.slope, l.Slope, c.by, c.name)
		assert.InEpsilon(t, c.at0, l.At(c.at), c.by, c.name)
		assert.InEpsilon(t, c.uSlope, l.SlopeDoubt(c.x, c.y), c.by, c.name)
		assert.InEpsilon(t, c.uAt, l.DoubtAt(c.x, c.y, c.at), c.by, c.name)
	}
	two := []float64{1, 2}
	l := Fit(two, two)
	assert.True(t, math.IsNaN(l.SlopeDoubt(two, two)), "two readings fit any line")
	assert.True(t, math.IsNaN(l.DoubtAt(two, two, 0)))
}

// A yarn of 46 Ω/m behind 0.4 Ω of leads and contacts, read at three lengths to 0.05 Ω, ten thousand times: the slopes and the intercepts scatter
// as much as the line says of itself, in the mean of squares, to the 5 % that so many trials are good for.
func TestDoubtsByTrials(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	x := []float64{0.1, 0.2, 0.5}
	const trials = 10000
	var slopes, zeros, said, saidZero float64
	for range trials {
		y := make([]float64, len(x))
		for i := range x {
			y[i] = 46*x[i] + 0.4 + 0.05*r.NormFloat64()
		}
		l := Fit(x, y)
		slopes += (l.Slope - 46) * (l.Slope - 46)
		zeros += (l.Intercept() - 0.4) * (l.Intercept() - 0.4)
		said += l.SlopeDoubt(x, y) * l.SlopeDoubt(x, y)
		saidZero += l.DoubtAt(x, y, 0) * l.DoubtAt(x, y, 0)
	}
	assert.InEpsilon(t, 1, said/slopes, 0.05)
	assert.InEpsilon(t, 1, saidZero/zeros, 0.05)
}
