package craft

import "twistbench/calc/quantity"

// Wire: what the conducting yarn of a muscle resists, and what the leads to it do. A length of yarn is that along the yarn: of one twisted in
// with the fibre, or of a fibre that conducts itself, the precursor's; of one wrapped around afterwards, that of its own turns. Its
// resistance is its own: pulling the coil open or letting it close does not change it, as long as no turns touch.

// YarnPerLength returns the resistance per length (Ω/m) of a yarn of which a length l (m) reads r (Ω) on a meter whose leads, held together,
// read q (Ω). NaN where nothing is left. A reading under a few ohms is mostly leads: then take volts over amperes.
func YarnPerLength(r, q quantity.Resistance, l quantity.Length) quantity.ResistancePerLength {
	return quantity.ResistancePerLength(positive(float64(r-q)) / positive(float64(l)))
}

var YarnPerLengthEq = Equation{Symbol: "r", Expr: "(R − q) ÷ l", Holds: "straight-yarn", Source: &Geometry}

// MeterReading is the way back from YarnPerLength: what the meter reads (Ω).
func MeterReading(r quantity.ResistancePerLength, l quantity.Length, q quantity.Resistance) quantity.Resistance {
	return quantity.Resistance(float64(r)*float64(l)) + q
}

var MeterReadingEq = Equation{Symbol: "R", Expr: "r × l + q", Holds: "straight-yarn", Source: &Geometry}

// WrapLength returns the yarn (m) around a muscle of length l (m), wrapped at a mean diameter w and a pitch p (both m).
func WrapLength(l, w, p quantity.Length) quantity.Length {
	return FibreInCoils(Coils(l, p), TurnLength(w, p))
}

var WrapLengthEq = Equation{Symbol: "y", Expr: "L ÷ p × √((π × w)² + p²)", Holds: "helix", Source: &Geometry}

// YarnOhms returns the resistance (Ω) of n strands side by side, each l (m) long with r ohms per metre.
func YarnOhms(r quantity.ResistancePerLength, l quantity.Length, n quantity.Count) quantity.Resistance {
	return quantity.Resistance(float64(r) * float64(l) / float64(n))
}

var YarnOhmsEq = Equation{Symbol: "R", Expr: "r × y ÷ n", Holds: "no-shunt", Source: &Geometry}

// ShuntedOhms returns the least resistance (Ω) that a yarn of r (Ω) and y (m) can have between the ends of a coil of length c (m) when its
// turns touch: r (c/y)². Any conductor that fills the same volume evenly between the same ends carries at most what a straight bar of
// that volume would, however well its turns touch (Dirichlet's principle).
func ShuntedOhms(r quantity.Resistance, c, y quantity.Length) quantity.Resistance {
	k := quantity.Resistance(c / y)
	return r * k * k
}

var ShuntedOhmsEq = Equation{Symbol: "S", Expr: "R × (L ÷ y)²", Holds: "perfect-contact", Source: &Worked, Grade: Estimate}

// OhmsPer returns the resistance per length (Ω/m) of a resistance r (Ω) over a length l (m): that of the precursor, the twisted fibre, the
// coil as it came off or the finished muscle. One yarn has as many as there are lengths to name.
func OhmsPer(r quantity.Resistance, l quantity.Length) quantity.ResistancePerLength {
	return quantity.ResistancePerLength(float64(r) / positive(float64(l)))
}

var OhmsPerEq = Equation{Symbol: "k", Expr: "R ÷ l", Holds: "that-length", Source: &Geometry}

// PerLengthForOhms returns the resistance per length (Ω/m) that each of n strands side by side, l (m) long, must have for r (Ω) in all.
func PerLengthForOhms(r quantity.Resistance, n quantity.Count, l quantity.Length) quantity.ResistancePerLength {
	return OhmsPer(r*quantity.Resistance(n), l)
}

var PerLengthForOhmsEq = Equation{Symbol: "r", Expr: "R × n ÷ y", Holds: "no-shunt", Source: &Geometry}

// YarnForOhms returns the length (m) of n strands side by side that makes a resistance r (Ω) of a yarn of k ohms per metre.
func YarnForOhms(r quantity.Resistance, n quantity.Count, k quantity.ResistancePerLength) quantity.Length {
	return quantity.Length(float64(r) * float64(n) / positive(float64(k)))
}

var YarnForOhmsEq = Equation{Symbol: "y", Expr: "R × n ÷ r", Holds: "no-shunt", Source: &Geometry}

// StrandsForOhms returns how many strands of length l (m) and k ohms per metre, side by side, resist at most r (Ω).
func StrandsForOhms(k quantity.ResistancePerLength, l quantity.Length, r quantity.Resistance) quantity.Count {
	return quantity.Count(quantity.Ceil(float64(k) * float64(l) / positive(float64(r))))
}

var StrandsForOhmsEq = Equation{Symbol: "n", Expr: "r × y ÷ R", RoundUp: 1, Holds: "no-shunt", Source: &Geometry}

// Wired returns the resistance (Ω) of muscles of r (Ω) each, s of them end to end in each of p rows side by side.
func Wired(r quantity.Resistance, s, p quantity.Count) quantity.Resistance {
	return r * quantity.Resistance(s/p)
}

var WiredEq = Equation{Symbol: "W", Expr: "R × s ÷ p", Holds: "equal-ohms", Source: &Geometry}

// Gauges of wire run from 4/0, which is −3, to 50.
const thickestGauge, thinnestGauge = -3, 50

// GaugeDiameter returns the diameter (m) of a wire of the American gauge n: 36 is 0.005 in, and each of the 39 steps from there to 4/0, which
// is 0.46 in, is the same ratio. NaN beyond the gauges there are.
func GaugeDiameter(n quantity.Gauge) quantity.Length {
	if !(n >= thickestGauge && n <= thinnestGauge) {
		return quantity.Length(quantity.NaN)
	}
	return quantity.Length(127e-6 * quantity.Exp(gaugeStep*float64(36-n)))
}

// GaugeOf is the way back from GaugeDiameter: seldom a whole number.
func GaugeOf(d quantity.Length) quantity.Gauge {
	return quantity.Gauge(36 - quantity.Log(float64(d)/127e-6)/gaugeStep)
}

// gaugeStep is ln 92 over 39.
const gaugeStep = 4.52178857704904031 / 39

// Annealed copper at 20 °C: its resistivity is 1/58 Ω·mm²/m, its coefficient of resistance 0.00393 per kelvin of that at 20 °C.
const (
	CopperResistivity = quantity.Resistivity(1 / 58e6)
	CopperCoefficient = quantity.TemperatureCoefficient(0.00393)
	CopperTemperature = quantity.Temperature(20 + ice)
)

// WirePerLength returns the resistance per length (Ω/m) of a wire of resistivity rho (Ω·m) and section a (m²). A nominal section is not
// quite the true one.
func WirePerLength(rho quantity.Resistivity, a quantity.Area) quantity.ResistancePerLength {
	return quantity.ResistancePerLength(float64(rho) / positive(float64(a)))
}

var copper = []Constant{{Symbol: "ρ", SI: 1 / 58e6, Unit: quantity.KindResistivity.Default(), Text: "0.01724"}}

// LeadOhms returns the resistance (Ω) of a pair of leads of r ohms per metre to a muscle l (m) away, there and back.
func LeadOhms(r quantity.ResistancePerLength, l quantity.Length) quantity.Resistance {
	return quantity.Resistance(2 * float64(r) * float64(l))
}

// CopperOhmsEq is that of copper leads by their section.
var CopperOhmsEq = Equation{Symbol: "q", Expr: "2 × ρ × l ÷ A", Const: copper, Holds: "there-and-back", Source: &Copper, Grade: Handbook}

// LeadDensity is a careful current density (A/m²) for copper leads with their insulation, lying together: 3 A in 0.5 mm², as flexible cords
// are held to, from memory. The rating of the lead itself goes before.
const LeadDensity = 6e6

// LeadRating returns a careful rating (A) of a copper lead of section a (m²).
func LeadRating(a quantity.Area) quantity.Current { return LeadDensity * quantity.Current(a) }

// OhmsAt returns the resistance (Ω) at a temperature at (K) of what has r (Ω) at a temperature from (K), with the coefficient k of it there;
// NaN where that would leave none.
func OhmsAt(r quantity.Resistance, k quantity.TemperatureCoefficient, at, from quantity.Temperature) quantity.Resistance {
	return r * quantity.Resistance(positive(1+float64(k)*float64(at-from)))
}

var OhmsAtEq = Equation{Symbol: "S", Expr: "R × (1 + k × (T − U))", Holds: "own-coefficient", Source: &Copper, Grade: Handbook}

// TemperatureOfOhms is the way back from OhmsAt: the temperature (K) at which what has r (Ω) at from (K) has s (Ω); NaN where there is none.
func TemperatureOfOhms(r, s quantity.Resistance, k quantity.TemperatureCoefficient, from quantity.Temperature) quantity.Temperature {
	if k == 0 {
		return quantity.Temperature(quantity.NaN)
	}
	return quantity.Temperature(positive(float64(from) + float64(s/r-1)/float64(k)))
}

var TemperatureOfOhmsEq = Equation{Symbol: "T", Expr: "U + (S ÷ R − 1) ÷ k", Holds: "own-coefficient", Source: &Copper, Grade: Handbook}

// OhmsDrift returns by what share a resistance has changed from a to b (both Ω, at one temperature): up, the yarn or a joint is hurt; down,
// turns touch or strands have come together.
func OhmsDrift(a, b quantity.Resistance) quantity.Fraction { return quantity.Fraction(b/a - 1) }

var OhmsDriftEq = Equation{Symbol: "x", Expr: "b ÷ a − 1", Holds: "same-temperature", Source: &Geometry}

// DriftCare is a drift of resistance, up or down, that is worth a look. A judgement, no source: twice what a meter reading is good for.
const DriftCare = 0.1

// positive returns x over 0, and NaN for any other.
//
//go:noinline
func positive(x float64) float64 {
	if !(x > 0) {
		return quantity.NaN
	}
	return x
}
