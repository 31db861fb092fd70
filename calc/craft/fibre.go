package craft

import (
	"math"

	"twistbench/calc/quantity"
)

// Area returns the cross-section (m²) of a solid round strand of diameter d (m).
func Area(d quantity.Length) quantity.Area { return quantity.Area(math.Pi * d * d / 4) }

var AreaEq = Equation{Symbol: "A", Expr: "π × d² ÷ 4", Holds: "solid-round", Source: &Geometry}

// Diameter returns the diameter (m) of the solid round strand of cross-section a (m²).
func Diameter(a quantity.Area) quantity.Length {
	return quantity.Length(math.Sqrt(4 * float64(a) / math.Pi))
}

var DiameterEq = Equation{Symbol: "d", Expr: "√(4 × A ÷ π)", Holds: "solid-round", Source: &Geometry}

// LinearDensity returns the mass per length (kg/m) of a solid strand of cross-section a (m²) and density rho (kg/m³).
// Tex is g/km (ISO 1144).
func LinearDensity(a quantity.Area, rho quantity.Density) quantity.LinearDensity {
	return quantity.LinearDensity(float64(rho) * float64(a))
}

var LinearDensityEq = Equation{Symbol: "T", Expr: "ρ × A", Holds: "solid", Source: &LinearUnits}

// AreaOfTitre returns the solid cross-section (m²) of a strand of linear density t (kg/m) and density rho (kg/m³).
func AreaOfTitre(t quantity.LinearDensity, rho quantity.Density) quantity.Area {
	return quantity.Area(float64(t) / float64(rho))
}

var AreaOfTitreEq = Equation{Symbol: "A", Expr: "T ÷ ρ", Holds: "solid", Source: &LinearUnits}

// WeighedTitre returns the linear density (kg/m) of a length l (m) that weighs m (kg).
func WeighedTitre(m quantity.Mass, l quantity.Length) quantity.LinearDensity {
	return quantity.LinearDensity(float64(m) / float64(l))
}

var WeighedTitreEq = Equation{Symbol: "T", Expr: "m ÷ l", Holds: "weighed", Source: &LinearUnits}

// ImpliedDensity returns the density (kg/m³) that a strand of linear density t (kg/m) would have if its cross-section a
// (m²) were solid.
func ImpliedDensity(t quantity.LinearDensity, a quantity.Area) quantity.Density {
	return quantity.Density(float64(t) / float64(a))
}

var ImpliedDensityEq = Equation{Symbol: "ρ", Expr: "T ÷ A", Holds: "solid", Source: &Geometry}

// Packing returns the share of the measured cross-section a (m²) that polymer of density rho (kg/m³) fills in a strand of
// linear density t (kg/m).
func Packing(t quantity.LinearDensity, rho quantity.Density, a quantity.Area) quantity.Fraction {
	return quantity.Fraction(float64(t) / (float64(rho) * float64(a)))
}

var PackingEq = Equation{Symbol: "φ", Expr: "T ÷ (ρ × A)", Holds: "packing", Source: &Geometry}

// SolidArea returns all the solid cross-section (m²) of n strands of area a with ny companion strands of area ay. With no
// companion (ny = 0) the companion's area is not needed.
func SolidArea(n quantity.Count, a quantity.Area, ny quantity.Count, ay quantity.Area) quantity.Area {
	sum := quantity.Area(n) * a
	if ny > 0 {
		sum += quantity.Area(ny) * ay
	}
	return sum
}

var (
	MainAreaEq = Equation{Symbol: "A", Expr: "n × a", Holds: "main-area", Source: &Geometry}
	AllAreaEq  = Equation{Symbol: "A", Expr: "n × a + k × b", Holds: "all-area", Source: &Geometry}
)

// Envelope returns the diameter (m) of the smallest circle around n equal round strands of diameter d (m): exact for up to
// seven strands, for more the circle around the full hexagonal rings that hold them, which is never too small.
func Envelope(n quantity.Count, d quantity.Length) quantity.Length {
	switch {
	case !(n >= 0):
		return quantity.Length(quantity.NaN)
	case n == 0:
		return 0
	case n <= 7:
		return d * quantity.Length(envelope[int(n)-1])
	}
	k := 2.0
	for 1+3*k*(k+1) < float64(n) {
		k++
	}
	return d * quantity.Length(2*k+1)
}

// envelope is the diameter of the circle around 1 to 7 equal circles, in diameters of one: 1 + 1/sin(π/n) for 2 to 6 (for 6 it equals
// the 3 of the full ring), geometry.
var envelope = [7]float64{1, 2, 2.1547005383792515290, 1 + math.Sqrt2, 2.7013016167040798644, 3, 3}

// BundleDiameter returns the diameter (m) of the round strand with the same solid area a (m²) as the whole bundle: the
// least a twisted bundle can measure.
func BundleDiameter(a quantity.Area) quantity.Length { return Diameter(a) }

// BundleEnvelope returns the most a twisted bundle can measure (m): the circle around its n strands of diameter d, beside the
// circle around its ny companion strands of diameter dy.
func BundleEnvelope(n quantity.Count, d quantity.Length, ny quantity.Count, dy quantity.Length) quantity.Length {
	most := Envelope(n, d)
	if ny > 0 {
		most += Envelope(ny, dy)
	}
	return most
}
