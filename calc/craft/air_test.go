package craft

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"twistbench/calc/quantity"
)

// Handbook 4.1, dry air at 101 325 Pa, reference formulation by chemicals 1.5.2: T, density, 1e6 × viscosity ν, conductivity, 1e6 × diffusivity,
// Prandtl. The fits promise 0.1 % of density and 0.3, 0.6 % of viscosity μ and conductivity; the last digit of the table is up to 0.03 %.
func TestAirTable(t *testing.T) {
	for _, row := range [][6]float64{
		{250.00, 1.4130, 11.351, 0.02256, 15.878, 0.7149},
		{275.00, 1.2840, 13.482, 0.02450, 18.969, 0.7107},
		{293.15, 1.2043, 15.117, 0.02587, 21.348, 0.7081},
		{296.15, 1.1921, 15.395, 0.02610, 21.752, 0.7077},
		{300.00, 1.1767, 15.753, 0.02638, 22.275, 0.7072},
		{325.00, 1.0860, 18.160, 0.02822, 25.782, 0.7044},
		{350.00, 1.0083, 20.696, 0.03000, 29.478, 0.7021},
		{375.00, 0.9410, 23.356, 0.03175, 33.350, 0.7003},
		{400.00, 0.8821, 26.137, 0.03345, 37.387, 0.6991},
		{450.00, 0.7840, 32.045, 0.03676, 45.907, 0.6981},
		{500.00, 0.7056, 38.394, 0.03994, 54.958, 0.6986},
		{550.00, 0.6414, 45.162, 0.04302, 64.479, 0.7004},
		{600.00, 0.5880, 52.332, 0.04601, 74.427, 0.7031},
	} {
		a := AirAt(quantity.Temperature(row[0]), SeaLevel)
		assert.InEpsilon(t, row[1], a.Density, 1e-3, "%g K", row[0])
		assert.InEpsilon(t, row[2], a.Viscosity*1e6, 3.5e-3, "%g K", row[0])
		assert.InEpsilon(t, row[3], a.Conductivity, 6e-3, "%g K", row[0])
		assert.InEpsilon(t, row[4], a.Diffusivity*1e6, 7e-3, "%g K", row[0])
		assert.InEpsilon(t, row[5], a.Prandtl(), 8e-3, "%g K", row[0])
		assert.InEpsilon(t, 1/row[0], a.Expansion, 1e-12)
	}
}

// Other tables: the one of coiled actuators below M15 (ideal gas and Sutherland's own constants), with an independent one beside it, and
// textbook inputs read for the handbook (4.1), old handbooks being up to 2 % off.
func TestAirElsewhere(t *testing.T) {
	a := AirAt(300, SeaLevel)
	for _, row := range []struct{ got, want, rel float64 }{
		{a.Density, 1.1766, 1e-3}, {a.Viscosity, 1.569e-5, 0.01}, {a.Conductivity, 0.02617, 0.01}, {a.Prandtl(), 0.710, 0.01},
		{a.Viscosity, 1.589e-5, 0.01}, {a.Conductivity, 0.0263, 0.01},
	} {
		assert.InEpsilon(t, row.want, row.got, row.rel)
	}
	a = AirAt(367, SeaLevel)
	for _, row := range []struct{ got, want, rel float64 }{
		{a.Viscosity, 22.8e-6, 0.02}, {a.Conductivity, 0.0313, 0.02}, {a.Diffusivity, 32.8e-6, 0.02}, {a.Prandtl(), 0.697, 0.02},
	} {
		assert.InEpsilon(t, row.want, row.got, row.rel)
	}
	a = AirAt(285, SeaLevel)
	for _, row := range []struct{ got, want, rel float64 }{
		{a.Viscosity, 14.56e-6, 0.02}, {a.Conductivity, 0.0252, 0.02}, {a.Prandtl(), 0.712, 0.02},
	} {
		assert.InEpsilon(t, row.want, row.got, row.rel)
	}
}

// ISO 2533:1975, from memory: pressures of the standard atmosphere.
func TestPressureAt(t *testing.T) {
	for h, want := range map[quantity.Length]float64{0: 101325, 500: 95461, 1000: 89874.6, 2000: 79495.2, 2240: 77162, 5000: 54019.9, 11000: 22632} {
		assert.InEpsilon(t, want, PressureAt(h), 3e-4, "%g m", float64(h))
	}
	assert.True(t, math.IsNaN(PressureAt(quantity.Length(quantity.NaN))))
	// Handbook 4.1: at altitude viscosity and diffusivity go as 1/p, all else stays; so a Rayleigh number goes as p².
	low, high := AirAt(330, SeaLevel), AirAt(330, SeaLevel/2)
	assert.InEpsilon(t, 2*low.Viscosity, high.Viscosity, 1e-12)
	assert.InEpsilon(t, 2*low.Diffusivity, high.Diffusivity, 1e-12)
	assert.InEpsilon(t, low.Conductivity, high.Conductivity, 1e-12)
	assert.InEpsilon(t, low.Grashof(60, 1e-3)*low.Prandtl()/4, high.Grashof(60, 1e-3)*high.Prandtl(), 1e-12)
}

func TestPower(t *testing.T) {
	for _, x := range []float64{0, 1e-12, 0.3, 1, 7, 1e9} {
		for _, y := range []float64{0.058, 0.25, 1, 5.25588} {
			assert.InDelta(t, math.Pow(x, y), power(x, y), 1e-13*math.Pow(x, y), "%g to the %g", x, y)
		}
	}
}

// Steam tables (Incropera et al., appendix A.6, from memory): saturation pressures at 350 to 373.15 K.
func TestBoiling(t *testing.T) {
	for _, row := range []struct{ kelvin, bar float64 }{{350, 0.4163}, {355, 0.5100}, {360, 0.6209}, {365, 0.7514}, {370, 0.9040}, {373.15, 1.0133}} {
		assert.InDelta(t, row.kelvin, float64(BoilingAt(row.bar*1e5)), 0.65)
	}
	assert.InDelta(t, 373.15, float64(BoilingAt(PressureAt(0))), 1e-9)
	assert.InDelta(t, 373.15-1000.0/300, float64(BoilingAt(PressureAt(1000))), 0.15, "a kelvin for 300 m: common practice")
	assert.True(t, math.IsNaN(float64(BoilingAt(math.NaN()))))
}
