package craft

import (
	"math"

	"twistbench/calc/quantity"
)

// Air is what air, or another gas around a muscle, is like at one temperature and pressure.
type Air struct {
	Density      float64 // kg/m³
	Conductivity float64 // of heat, W/(m·K)
	Viscosity    float64 // kinematic, m²/s
	Diffusivity  float64 // of heat, m²/s
	Expansion    float64 // share of the volume per kelvin, 1/K
}

// SeaLevel is the standard pressure of air at sea level (Pa), by definition.
const SeaLevel = 101325.0

const gasOfAir = 287.05 // J/(kg·K): gas constant over the molar mass of dry air

// The film temperatures (K) between which the properties of AirAt were compared with a reference formulation.
const (
	coldestAir = 250
	hottestAir = 600
)

// AirAt returns the properties of dry air at a film temperature t (K), the mean of a surface and the air about it, and a pressure p (Pa).
//
// Density is that of an ideal gas; viscosity and conductivity have Sutherland's form, their constants and the heat capacity fitted to a
// reference formulation at 101 325 Pa (AirTables). Between 250 and 600 K density is within 0.1 %, viscosity 0.3 %, conductivity 0.6 % of it. At other
// pressures, up to some bar, only density changes.
func AirAt(t quantity.Temperature, p float64) (a Air) {
	k := float64(t)
	warm := k - 300
	heat := 1006.69 + 0.04238*warm + 3.62e-4*warm*warm // J/(kg·K)
	a.Density = p / (gasOfAir * k)
	a.Conductivity = 2.41244e-3 * k * math.Sqrt(k) / (k + 174.95)
	a.Viscosity = 1.51019e-6 * k * math.Sqrt(k) / (k + 123.2) / a.Density
	a.Diffusivity = a.Conductivity / (a.Density * heat)
	a.Expansion = 1 / k
	return a
}

// Prandtl returns how fast momentum spreads against heat.
func (a *Air) Prandtl() float64 { return a.Viscosity / a.Diffusivity }

// Grashof returns buoyancy against viscosity for a size l (m) and a temperature difference (K) of either sign.
func (a *Air) Grashof(difference, l float64) float64 {
	return StandardGravity * a.Expansion * math.Abs(difference) * l * l * l / (a.Viscosity * a.Viscosity)
}

// PressureAt returns the pressure (Pa) of the standard atmosphere at an altitude h (m) above sea level, up to 11 km (AirOfAltitude). Weather moves
// it by some 3 %.
func PressureAt(h quantity.Length) float64 {
	return SeaLevel * power(1-2.25577e-5*float64(h), 5.25588)
}

// BoilingAt returns the temperature (K) at which water boils under a pressure p (Pa), by the law of Clausius and Clapeyron from 100 °C at sea level
// with its heat of vaporization there (HeatTheory, steam tables): 0.6 K low at 350 K.
func BoilingAt(p float64) quantity.Temperature {
	const perMole, gas = 40660, 8.314 // J/mol, J/(mol·K)
	return quantity.Temperature(1 / (1/373.15 - gas/perMole*quantity.Log(p/SeaLevel)))
}

// power returns x to the power y for an x that is not negative.
//
//go:noinline
func power(x, y float64) float64 { return quantity.Exp(y * quantity.Log(x)) }
