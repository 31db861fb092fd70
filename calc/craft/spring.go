package craft

import (
	"math"

	"twistbench/calc/quantity"
)

// Springs: the one that pulls a muscle back, and the muscle as one. Thickness is that of the wire or the twisted fibre; the mean diameter is
// that of the centre line.

// CloseRate returns the stiffness (N/m) of n turns of a wire t (m) thick at a mean diameter d (m), of shear modulus g (Pa), wound close: the
// handbook's G t⁴/(8 D³ N).
func CloseRate(g quantity.Stress, t, d quantity.Length, n quantity.Turns) quantity.Stiffness {
	a, r := t*t, t/d
	return quantity.Stiffness(float64(g) * float64(r*r*r*a) / (8 * float64(t) * float64(n)))
}

var CloseRateEq = Equation{Symbol: "k", Expr: "G × t² × t² ÷ (8 × D² × D × N)", Holds: "close-spring", Source: &Springs, Grade: Handbook}

// SteelShear is the shear modulus of spring steel (Pa).
const SteelShear = 81.37e9

var steel = []Constant{{Symbol: "G", SI: SteelShear, Unit: quantity.KindStress.Default(), Text: "81370"}}

// SteelSpringRate returns the stiffness (N/m) of n turns of steel wire t (m) thick, o (m) across outside, wound close: CloseRate. NaN where the
// wire would fill its coil.
func SteelSpringRate(t, o quantity.Length, n quantity.Turns) quantity.Stiffness {
	if !(o > 2*t) {
		return quantity.Stiffness(quantity.NaN)
	}
	return CloseRate(SteelShear, t, o-t, n)
}

var SteelSpringRateEq = Equation{Symbol: "k", Expr: "G × t² × t² ÷ (8 × (O − t)² × (O − t) × N)", Const: steel, Holds: "steel-spring", Source: &SpringWires, Grade: Handbook}

// SteepRate returns the stiffness (N/m) of a coil that may be steep, whose ends cannot turn: l (m) of fibre t (m) thick at a mean diameter d
// (m) and a pitch angle b (rad), of moduli e along it and g in shear (Pa). It is what the two compliances of a helix, in pull and in turn,
// leave when the turn is none: (G J cos² b + E I sin² b)/(l r²).
func SteepRate(g, e quantity.Stress, t quantity.Length, b quantity.Angle, l, d quantity.Length) quantity.Stiffness {
	sin, cos := math.Sincos(float64(b))
	return quantity.Stiffness((2*bending(g, t)*cos*cos + bending(e, t)*sin*sin) * 4 / (float64(l) * float64(d*d)))
}

var SteepRateEq = Equation{Symbol: "k", Expr: "π × t² × t² × (2 × G × (cos b)² + E × (sin b)²) ÷ (16 × l × D²)", Holds: "steep-spring", Source: &SteepSpring, Grade: Estimate}

// WahlFactor returns by how much the stress at the inside of a coil of index c, over 1, exceeds that of plain twist (S01 to S03, M10); NaN where
// the index is none.
func WahlFactor(c quantity.Number) quantity.Number {
	if !(c > 1) {
		return quantity.Number(quantity.NaN)
	}
	return (4*c-1)/(4*c-4) + 0.615/c
}

// SpringStress returns the shear stress (Pa) at the inside of a spring under a pull f (N), of wire t (m) thick at a mean diameter d (m), with
// a factor k for its index.
func SpringStress(k quantity.Number, f quantity.Force, d, t quantity.Length) quantity.Stress {
	return quantity.Stress(8 * float64(k) * float64(f) * float64(d) / (math.Pi * float64(t*t*t)))
}

// SpringStressEq has the diameter outside, and the factor for its index: WahlFactor.
var SpringStressEq = Equation{Symbol: "σ", Expr: "8 × F × (O − t) ÷ (π × t² × t) × ((4 × O − 5 × t) ÷ (4 × O − 8 × t) + 123 × t ÷ (200 × (O − t)))", Holds: "steel-spring", Source: &Springs, Grade: Handbook}

// MusicWire returns the shear stress (Pa) at which hard-drawn steel spring wire t (m) thick begins to give: 0.45 of its strength in pull, 201 ksi
// over the 0.145th power of the inches (S08).
func MusicWire(t quantity.Length) quantity.Stress {
	return quantity.Stress(0.45 * 201e3 * 6894.757293168 / math.Pow(float64(t)/0.0254, 0.145))
}

// TwistedYoung returns the modulus (Pa) along a fibre of modulus e (Pa) after twist to a bias angle a (rad): between e cos² a, and e cos⁴ a for
// chains that only follow the surface helix. At 40° that is 0.46 of it; 0.4 to 0.6 is usual, from memory.
func TwistedYoung(e quantity.Stress, a quantity.Angle) quantity.Stress {
	c := math.Cos(float64(a))
	c *= c
	return e * quantity.Stress(c*(1+c)/2)
}

var TwistedYoungEq = Equation{Symbol: "E", Expr: "Y × (cos a)² × (1 + (cos a)²) ÷ 2", Holds: "surface-helix", Source: &Worked, Grade: Estimate}

// RateOfMasses returns the stiffness (N/m) of what measures k (m) under a mass n (kg) and l (m) under m (kg).
func RateOfMasses(m, n quantity.Mass, l, k quantity.Length) quantity.Stiffness {
	return quantity.Stiffness(float64(HangingForce(m-n)) / float64(l-k))
}

var RateOfMassesEq = Equation{Symbol: "k", Expr: "(m − n) × g ÷ (L − K)", Const: gravity, Holds: "two-masses", Source: &Geometry}

// FreeOfMass returns the length (m) without a load of what measures k (m) under a mass n (kg) and is c (N/m) stiff.
func FreeOfMass(k quantity.Length, n quantity.Mass, c quantity.Stiffness) quantity.Length {
	return UnloadedLength(k, HangingForce(n), c)
}

var FreeOfMassEq = Equation{Symbol: "f", Expr: "K − n × g ÷ k", Const: gravity, Holds: "two-masses", Source: &Geometry}

// LengthOfMass returns the length (m) under a pull f (N) of what measures k (m) under a mass n (kg) and is c (N/m) stiff.
func LengthOfMass(k quantity.Length, f quantity.Force, n quantity.Mass, c quantity.Stiffness) quantity.Length {
	return LoadedLength(k, f-HangingForce(n), c)
}

var LengthOfMassEq = Equation{Symbol: "L", Expr: "K + (F − n × g) ÷ k", Const: gravity, Holds: "two-masses", Source: &Geometry}

// RateOfAdded returns the stiffness (N/m) of what a mass m (kg), added to what hangs on it, stretches by x (m).
func RateOfAdded(m quantity.Mass, x quantity.Length) quantity.Stiffness {
	return quantity.Stiffness(float64(HangingForce(m)) / float64(x))
}

var RateOfAddedEq = Equation{Symbol: "k", Expr: "m × g ÷ x", Const: gravity, Holds: "one-added", Source: &Geometry}

// Unequal returns what share of its part f (N) a muscle of stiffness k (N/m) carries more when it is shorter by u (m) than those beside it.
func Unequal(k quantity.Stiffness, u quantity.Length, f quantity.Force) quantity.Fraction {
	return quantity.Fraction(float64(k) * float64(u) / positive(float64(f)))
}

var UnequalEq = Equation{Symbol: "x", Expr: "k × u ÷ F", Holds: "equal-share", Source: &Geometry}
