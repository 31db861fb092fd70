package craft

import (
	"math"

	"twistbench/calc/quantity"
)

// Capacity is a heat capacity (J/K), or a specific heat (J/(kg·K)), that changes with the temperature: At20 + Rise x + Bend x², with x as the
// part of the way from 20 °C to 100 °C. From 260 °C on, where no muscle is left, it stays.
type Capacity struct{ At20, Rise, Bend float64 }

// At returns the capacity at t (K).
func (c *Capacity) At(t quantity.Temperature) float64 {
	x := min(3, float64(t-20-ice)/80)
	return c.At20 + x*(c.Rise+x*c.Bend)
}

// Of returns the capacity (J/K) of a mass (kg) whose specific heat is c, with more (J/K) in it of which none changes, as of a yarn.
func (c Capacity) Of(m quantity.Mass, more float64) Capacity {
	k := float64(m)
	return Capacity{c.At20*k + more, c.Rise * k, c.Bend * k}
}

// Energy returns the heat (J) that takes a body of capacity c (J/K) from one temperature to another (both K, up to 260 °C), with
// no losses.
func (c *Capacity) Energy(from, to quantity.Temperature) quantity.Energy {
	a, b := float64(from-20-ice)/80, float64(to-20-ice)/80
	return quantity.Energy(80 * (c.At20*(b-a) + c.Rise*(b*b-a*a)/2 + c.Bend*(b*b*b-a*a*a)/3))
}

// SpecificHeat is what a polymer takes up, dry, J/(kg·K).
type SpecificHeat struct {
	Capacity
	Source *Source
}

// SpecificHeats has a row for each of Polymers, in their order. Figures at 20 °C for nylon and polyester were read; how nylon's rises, 40 % to
// 100 °C and 75 % to 180 °C, is from memory and sure to 8 %. The others stay as they are: that of polyester jumps at about 70 °C, by how much
// is not known here. Melting takes some 150 J/g more, which nothing here counts.
var SpecificHeats = [...]SpecificHeat{
	{Capacity{1430, 622, -44}, &HeatTables},
	{Capacity{1460, 635, -45}, &HeatTables},
	{Capacity{2050, 0, 0}, &Memory}, // 1800 to 2300
	{Capacity{1030, 0, 0}, &HeatTables},
	{Capacity{1300, 0, 0}, &Memory}, // 1200 to 1400
	{Capacity{quantity.NaN, 0, 0}, &Memory},
}

// YarnHeat is the specific heat (J/(kg·K)) of a nylon yarn with a fifth of its mass in silver: four fifths of nylon's 1430 and a fifth of
// silver's 235, which is from memory.
const YarnHeat = 1191

// NylonConductivity is how nylon conducts heat, W/(m·K).
const NylonConductivity = 0.25

// MostBiot is the Biot number up to which a body may count as evenly warm.
const MostBiot = 0.1

// Biot returns the Biot number of a round fibre of thickness d (m) and conductivity k (W/(m·K)) that loses h (W/(m²·K)): the resistance
// inside against that outside.
func Biot(h float64, d quantity.Length, k float64) quantity.Number {
	return quantity.Number(h * float64(d) / (4 * positive(k)))
}

var BiotEq = Equation{Symbol: "B", Expr: "h × d ÷ (4 × k)", Holds: "round-fibre", Source: &HeatTheory, Grade: Handbook}

// InnerTime returns how long (s) the middle of a round fibre of thickness d (m) lags behind its surface, for a density ρ (kg/m³), specific
// heat c (J/(kg·K)) and conductivity k (W/(m·K)): the slowest decay with the surface held, (d/2)²/(j² k/(ρ c)) with j = 2.405, the first zero
// of the Bessel function J₀, and 23 for 4 j², which is 0.6 % over. In water it is what decides.
func InnerTime(rho quantity.Density, c float64, d quantity.Length, k float64) quantity.Time {
	return quantity.Time(float64(rho) * c * float64(d*d) / (23 * positive(k)))
}

var InnerTimeEq = Equation{Symbol: "t", Expr: "ρ × c × d² ÷ (23 × k)", Holds: "round-fibre", Source: &HeatTheory, Grade: Handbook}

// CentreRise returns how much hotter (K) the middle of a round fibre is than its surface, when p (W/m) comes evenly from within it and its
// conductivity is k (W/(m·K)). The page leaves it out, some tenths of a kelvin in a fibre; it carries the check of a heated rod.
func CentreRise(p, k float64) quantity.TemperatureDifference {
	return quantity.TemperatureDifference(p / (4 * math.Pi * positive(k)))
}

var CentreRiseEq = Equation{Symbol: "T", Expr: "p ÷ (4 × π × k)", Holds: "round-fibre", Source: &HeatTheory, Grade: Handbook}

// EndReach returns how far (m) a cold clamp reaches into a round fibre of thickness d (m) and conductivity k (W/(m·K)) that loses h
// (W/(m²·K)): over this length the difference falls to 37 %. The page leaves it out, a millimetre in nylon; it carries the check of a fin.
func EndReach(h float64, d quantity.Length, k float64) quantity.Length {
	return quantity.Length(math.Sqrt(k * float64(d) / (4 * positive(h))))
}

var EndReachEq = Equation{Symbol: "x", Expr: "√(k × d ÷ (4 × h))", Holds: "round-fibre", Source: &HeatTheory, Grade: Handbook}

// CoatRadius returns the radius (m) up to which a coat of conductivity k (W/(m·K)) about a fibre makes it lose more, not less, where its
// surface loses h (W/(m²·K)): several times any fibre's here, so that every coat cools. It carries the check of an insulated pipe.
func CoatRadius(k, h float64) quantity.Length { return quantity.Length(k / positive(h)) }

var CoatRadiusEq = Equation{Symbol: "r", Expr: "k ÷ h", Holds: "round-fibre", Source: &HeatTheory, Grade: Handbook}

// TimeConstant returns the time (s) in which a body of heat capacity c (J/K) that loses g (W/K) comes 63 % of the way to where it settles.
func TimeConstant(c, g float64) quantity.Time { return quantity.Time(c / positive(g)) }

var TimeConstantEq = Equation{Symbol: "t", Expr: "C ÷ G", Holds: "evenly-warm", Source: &HeatTheory, Grade: Handbook}

// TrialLoss returns what a body of heat capacity c (J/K) loses per kelvin (W/K) when it was found to cool with a time constant t (s): the way
// back from TimeConstant.
func TrialLoss(c float64, t quantity.Time) float64 { return c / positive(float64(t)) }

var TrialLossEq = Equation{Symbol: "G", Expr: "C ÷ t", Holds: "evenly-warm", Source: &HeatTheory, Grade: Handbook}

// SteadyLoss returns what a body loses per kelvin (W/K) that came to t (K) in air at u (K) when p (W) heated it for long: an own trial that needs
// no clock.
func SteadyLoss(p quantity.Power, t, u quantity.Temperature) float64 {
	return float64(p) / positive(float64(t-u))
}

var SteadyLossEq = Equation{Symbol: "G", Expr: "P ÷ (T − U)", Holds: "evenly-warm", Source: &HeatTheory, Grade: Handbook}

// TakenUp returns the heat (J) that a mass m (kg) of specific heat c (J/(kg·K)) takes up over a temperature difference (K), with no losses.
func TakenUp(m quantity.Mass, c float64, rise quantity.TemperatureDifference) quantity.Energy {
	return quantity.Energy(float64(m) * c * float64(rise))
}

var TakenUpEq = Equation{Symbol: "Q", Expr: "m × c × T", Holds: "no-losses", Source: &Geometry}

// CyclesPerMinute returns how many cycles go into a minute when each heats for a and cools for b (both s).
func CyclesPerMinute(a, b quantity.Time) quantity.Number {
	return quantity.Number(60 / positive(float64(a+b)))
}

var CyclesPerMinuteEq = Equation{Symbol: "n", Expr: "60 ÷ (a + b)", Holds: "on-average", Source: &Geometry}

// CycleEnergy returns what a heater of p (W) takes (J) in a cycle that has it on for t (s).
func CycleEnergy(p quantity.Power, t quantity.Time) quantity.Energy {
	return quantity.Energy(float64(p) * float64(t))
}

var CycleEnergyEq = Equation{Symbol: "E", Expr: "P × t", Holds: "on-average", Source: &Geometry}

// Efficiency returns the share of the energy e that went in which came out as work w (both J).
func Efficiency(w, e quantity.Energy) quantity.Fraction {
	return quantity.Fraction(float64(w) / positive(float64(e)))
}

var EfficiencyEq = Equation{Symbol: "q", Expr: "w ÷ E", Holds: "all-that-went-in", Source: &Geometry}
