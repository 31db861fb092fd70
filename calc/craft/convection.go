package craft

import (
	"math"

	"twistbench/calc/quantity"
)

// What moving air takes away, as Nusselt numbers: the coefficient times a size over the conductivity of the air. They fit measurements to
// about a fifth; end conduction and draughts in a room do more.

// StillUnsure is how far the coefficient for a thin fibre in air may be off on either side: other correlations for the same rod lie 25 % over
// and 13 % under the one used here.
const StillUnsure = 0.2

// StirredWater is the coefficient (W/(m²·K)) of a muscle in stirred water, a round figure on the low side for thin coils: the real one may be
// half or some times of it, and WaterUnsure is how far.
const (
	StirredWater = 1500
	WaterUnsure  = 0.5
)

// Emissivity of bare nylon, 0.85 to 0.95. Bright silver has 0.02 to 0.03, a worn silver coat 0.3 to 0.7.
const EmissivityNylon = 0.9

const stefanBoltzmann = 5.670374419e-8 // W/(m²·K⁴), exact in the SI of 2019

// NusseltLying is that of a long horizontal cylinder in still air, on its diameter, for a Rayleigh number from 1e-5 to 1e12. Its
// source is LyingCylinder. Below 1, where fibres of half a millimetre are, it rests on few measurements.
func NusseltLying(rayleigh, prandtl float64) float64 {
	n := 0.6 + 0.387*power(rayleigh, 1.0/6)/power(1+power(0.559/prandtl, 9.0/16), 8.0/27)
	return n * n
}

// NusseltUpright is that of a slender vertical cylinder in still air, on its height, for a Grashof number on the same and a height over the
// diameter of slender: a plate (LyingCylinder) times what its curvature adds (SlenderBody). For a Prandtl number from 0.01 to
// 100. A thin muscle taken for a plate would seem to lose a third of what it does.
func NusseltUpright(grashof, prandtl, slender float64) float64 {
	plate := 0.825 + 0.387*power(grashof*prandtl, 1.0/6)/power(1+power(0.492/prandtl, 9.0/16), 8.0/27)
	b := 0.0571322 + 0.20305*power(prandtl, -0.43)
	c := 0.9165 - 0.0043*math.Sqrt(prandtl) + 0.01333*quantity.Log(prandtl) + 4.809e-4/prandtl
	return plate * plate * (1 + b*power(curvature(grashof, slender), c))
}

// curvature says how thin a vertical cylinder is against the layer of warm air that rises about it.
func curvature(grashof, slender float64) float64 {
	return math.Sqrt(32/math.Sqrt(grashof)) * slender
}

// NusseltStream is that of a cylinder across a stream, on its diameter, where Reynolds times Prandtl is over 0.2 (StreamCylinder).
func NusseltStream(reynolds, prandtl float64) float64 {
	return 0.3 + 0.62*math.Sqrt(reynolds)*power(prandtl, 1.0/3)/power(1+power(0.4/prandtl, 2.0/3), 0.25)*power(1+power(reynolds/282000, 0.625), 0.8)
}

// Radiation returns the coefficient (W/(m²·K)) that stands for what a surface of emissivity e at t (K) sends to walls at w (K) that are large
// against it: e σ (t + w)(t² + w²). It changes with t, but times t − w it is exact.
func Radiation(e quantity.Fraction, t, w quantity.Temperature) float64 {
	return stefanBoltzmann * float64(e) * float64((t+w)*(t*t+w*w))
}
