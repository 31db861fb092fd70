package craft

import "twistbench/calc/quantity"

// Precursor returns the fibre length between the ties (m) that coils to c (m) at ratio r (precursor over coiled).
func Precursor(c quantity.Length, r quantity.Ratio) quantity.Length { return c * quantity.Length(r) }

var PrecursorEq = Equation{Symbol: "P", Expr: "L × r", Holds: "own-ratio", Source: &Geometry}

// Coiled returns the as-coiled length (m) of a precursor p (m) at ratio r.
func Coiled(p quantity.Length, r quantity.Ratio) quantity.Length { return p / quantity.Length(r) }

var CoiledEq = Equation{Symbol: "L", Expr: "P ÷ r", Holds: "own-ratio", Source: &Geometry}

// RatioOf returns precursor over coiled length of one piece.
func RatioOf(p, c quantity.Length) quantity.Ratio { return quantity.Ratio(p / c) }

var RatioEq = Equation{Symbol: "r", Expr: "P ÷ L", Holds: "same-piece", Source: &Geometry}

// CutLength returns what to cut (m): the precursor and a tail at each end, rounded up to the next millimetre.
func CutLength(p, tail quantity.Length) quantity.Length {
	return quantity.Length(quantity.CeilTo(float64(p+2*tail), 0.001))
}

var CutLengthEq = Equation{Symbol: "l", Expr: "P + 2 × e", RoundUp: 0.001, Holds: "tails", Source: &Geometry}

// Pieces returns how many pieces to cut for n wanted ones and a spare share, rounded up.
func Pieces(n quantity.Count, spare quantity.Fraction) quantity.Count {
	return quantity.Count(quantity.Ceil(float64(n) * (1 + float64(spare))))
}

var PiecesEq = Equation{Symbol: "N", Expr: "n × (1 + s)", RoundUp: 1, Holds: "whole-pieces", Source: &Geometry}

// TotalLine returns the line needed (m) for n pieces of k strands, each cut to l (m).
func TotalLine(n, k quantity.Count, l quantity.Length) quantity.Length {
	return quantity.Length(float64(n) * float64(k) * float64(l))
}

var TotalLineEq = Equation{Symbol: "S", Expr: "N × k × l", Holds: "whole-pieces", Source: &Geometry}

// FibreMass returns the mass (kg) of the active fibre in one muscle: solid area a (m²), density rho (kg/m³), precursor p (m).
func FibreMass(a quantity.Area, rho quantity.Density, n quantity.Count, p quantity.Length) quantity.Mass {
	return quantity.Mass(float64(n) * float64(rho) * float64(a) * float64(p))
}

var FibreMassEq = Equation{Symbol: "m", Expr: "n × ρ × A × P", Holds: "solid", Source: &Geometry}

// ClosedRatio is the least precursor : coiled ratio of a coil whose turns all touch, at 40° bias and an index of 1.05 (worked out from
// idealised yarn shortening and contact of neighbouring turns). Below it the turns were open, or straight ends were counted.
const ClosedRatio = 3.8

// OpenRatio is the least ratio of a closed coil with no shortening by twist at all.
const OpenRatio = 3.29
