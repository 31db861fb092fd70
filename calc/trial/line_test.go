package trial

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
)

// NIST Statistical Reference Datasets, linear regression, Norris: data and certified values.
func TestFitNorris(t *testing.T) {
	x := []float64{0.2, 337.4, 118.2, 884.6, 10.1, 226.5, 666.3, 996.3, 448.6, 777.0, 558.2, 0.4, 0.6, 775.5, 666.9, 338.0, 447.5, 11.6, 556.0,
		228.1, 995.8, 887.6, 120.2, 0.3, 0.3, 556.8, 339.1, 887.2, 999.0, 779.0, 11.1, 118.3, 229.2, 669.1, 448.9, 0.5}
	y := []float64{0.1, 338.8, 118.1, 888.0, 9.2, 228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3, 0.1, 778.1, 668.8, 339.3, 448.9, 10.8, 557.7,
		228.3, 998.0, 888.8, 119.6, 0.3, 0.6, 557.6, 339.3, 888.0, 998.5, 778.9, 10.2, 117.6, 228.9, 668.4, 449.2, 0.2}
	l := Fit(x, y)
	assert.Equal(t, 36, l.N)
	assert.InEpsilon(t, -0.262323073774029, l.Intercept(), 1e-9)
	assert.InEpsilon(t, 1.00211681802045, l.Slope, 1e-9)
	assert.InEpsilon(t, 0.884796396144373, l.Residual(x, y), 1e-9)
	assert.Equal(t, 0.2, l.Low)
	assert.Equal(t, 999.0, l.High)
}

// JCGM 100:2008, H.3: corrections of a thermometer, at 20 °C −0.1712 °C and 0.00218 per degree; the further digits from scipy 1.10.1.
func TestFitThermometer(t *testing.T) {
	x := []float64{21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511}
	y := []float64{-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160}
	l := Fit(x, y)
	assert.InDelta(t, -0.171203790131, l.At(20), 5e-12)
	assert.InDelta(t, 0.00218269773989, l.Slope, 5e-14)
	assert.InDelta(t, 0.0035, l.Residual(x, y), 5e-5) // H.3: s = 0.0035 °C
	assert.False(t, l.Within(20), "the readings begin at 21.5")
	assert.True(t, l.Within(25))
	assert.InDelta(t, 24, l.Inverse(l.At(24)), 1e-9)
}

// By hand: two pairs make the line through both; of three at −1, 0, 1 the slope is half the rise, and the residual of 0, 3, 0 is
// √(1² + 2² + 1²) about the mean of 1.
func TestFitByHand(t *testing.T) {
	nan := math.NaN()
	for _, c := range []struct {
		name       string
		x, y       []float64
		n          int
		slope, at0 float64
		residual   float64
	}{
		{"through two", []float64{150, 200}, []float64{160, 212}, 2, 1.04, 4, nan},
		{"the rest is left out", []float64{150, nan, 200, 300, 9}, []float64{160, 5, 212, nan}, 2, 1.04, 4, nan},
		{"three", []float64{-1, 0, 1}, []float64{0, 3, 0}, 3, 0, 1, math.Sqrt(6)},
		{"falling", []float64{1, 2}, []float64{5, 3}, 2, -2, 7, nan},
		{"one pair", []float64{150}, []float64{160}, 1, nan, nan, nan},
		{"the same twice", []float64{150, 150}, []float64{160, 162}, 2, nan, nan, nan},
		{"none", nil, nil, 0, nan, nan, nan},
	} {
		l := Fit(c.x, c.y)
		assert.Equal(t, c.n, l.N, c.name)
		for _, v := range [][2]float64{{c.slope, l.Slope}, {c.at0, l.Intercept()}, {c.residual, l.Residual(c.x, c.y)}} {
			if math.IsNaN(v[0]) {
				assert.True(t, math.IsNaN(v[1]), c.name)
			} else {
				assert.InDelta(t, v[0], v[1], 1e-12, c.name)
			}
		}
	}
	l := Fit([]float64{150, 150}, []float64{160, 162})
	assert.Equal(t, 161.0, l.MeanY, "the middle is known without a slope")
	assert.Equal(t, 150.0, l.MeanX)
}

// Shifting either scale shifts the line and turns nothing: Celsius and kelvin give one dial.
func TestFitInEveryScale(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	for range 200 {
		var x, y, kx, ky [3]float64
		for i := range x {
			x[i] = 100 + 40*float64(i) + 10*r.Float64()
			y[i] = x[i]*(0.8+0.4*r.Float64()) + 20*r.Float64()
			kx[i], ky[i] = x[i]+273.15, y[i]+273.15
		}
		a, b := Fit(x[:], y[:]), Fit(kx[:], ky[:])
		assert.InEpsilon(t, a.Slope, b.Slope, 1e-9)
		assert.InDelta(t, a.Inverse(180), b.Inverse(453.15)-273.15, 1e-8)
		sum := 0.0
		for i := range x {
			sum += y[i] - a.At(x[i])
		}
		assert.InDelta(t, 0, sum, 1e-9, "the line goes through the middle")
	}
}

func TestFitAllocatesNothing(t *testing.T) {
	x, y := [3]float64{150, 180, 200}, [3]float64{160, 190, 212}
	slope := 0.0
	assert.Zero(t, testing.AllocsPerRun(100, func() {
		l := Fit(x[:], y[:])
		slope = l.Slope
	}))
	assert.Positive(t, slope)
}
