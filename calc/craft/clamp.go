package craft

import (
	"math"

	"twistbench/calc/quantity"
)

// Gap returns the jaw-to-jaw distance (m) that stretches a length l (m) by s.
func Gap(l quantity.Length, s quantity.Fraction) quantity.Length { return l * quantity.Length(1+s) }

var (
	FirstGapEq  = Equation{Symbol: "G", Expr: "L × (1 + s)", Holds: "jaw-to-jaw", Source: &Geometry}
	SecondGapEq = Equation{Symbol: "H", Expr: "B × (1 + t)", Holds: "jaw-to-jaw", Source: &Geometry}
)

// Ungapped returns the length (m) that a stretch s brings to a gap g (m).
func Ungapped(g quantity.Length, s quantity.Fraction) quantity.Length {
	return g / quantity.Length(1+s)
}

var (
	OfFirstGapEq     = Equation{Symbol: "L", Expr: "G ÷ (1 + s)", Holds: "jaw-to-jaw", Source: &Geometry}
	OfSecondGapEq    = Equation{Symbol: "L", Expr: "H ÷ (1 + t)", Holds: "jaw-to-jaw", Source: &Geometry}
	OfGapOfGapEq     = Equation{Symbol: "L", Expr: "H ÷ ((1 + s) × (1 + t))", Holds: "jaw-to-jaw", Source: &Geometry}
	OfGapOfRelaxedEq = Equation{Symbol: "L", Expr: "H ÷ ((1 + q × s) × (1 + t))", Holds: "relaxed-guess", Source: &Common, Grade: Estimate}
)

// Released returns the length (m) after release from a gap g (m): the as-coiled length l (m) and the share q of the stretch that the
// heat-set keeps. Shares from 0.35 to 0.85 were read for nylon 6 set at 170 °C, by the temperature of recovery.
func Released(l, g quantity.Length, q quantity.Fraction) quantity.Length {
	return l + quantity.Length(q)*(g-l)
}

var ReleasedEq = Equation{Symbol: "f", Expr: "L + q × (G − L)", Holds: "retained", Source: &SetRetention, Grade: Estimate}

// OfReleased returns the as-coiled length (m) of a muscle that measures f (m) after release, when the last gap is k times the as-coiled
// length and the heat-set keeps the share q.
func OfReleased(f quantity.Length, k float64, q quantity.Fraction) quantity.Length {
	return f / quantity.Length(1+float64(q)*(k-1))
}

var (
	OfReleasedOneEq     = Equation{Symbol: "L", Expr: "f ÷ (1 + q × s)", Holds: "retained", Source: &SetRetention, Grade: Estimate}
	OfReleasedCoiledEq  = Equation{Symbol: "L", Expr: "f ÷ (1 + q × t)", Holds: "retained", Source: &SetRetention, Grade: Estimate}
	OfReleasedGapEq     = Equation{Symbol: "L", Expr: "f ÷ (1 + q × ((1 + s) × (1 + t) − 1))", Holds: "retained", Source: &SetRetention, Grade: Estimate}
	OfReleasedRelaxedEq = Equation{Symbol: "L", Expr: "f ÷ (1 + q × ((1 + q × s) × (1 + t) − 1))", Holds: "retained", Source: &SetRetention, Grade: Estimate}
)

// Move returns how far (m) a jaw moves from one gap to the next.
func Move(from, to quantity.Length) quantity.Length { return to - from }

var MoveEq = Equation{Symbol: "x", Expr: "b − a", Holds: "one-jaw", Source: &Geometry}

// Stretch returns the stretch of a length l (m) brought to g (m).
func Stretch(g, l quantity.Length) quantity.Fraction { return quantity.Fraction(g/l - 1) }

var StretchEq = Equation{Symbol: "s", Expr: "G ÷ L − 1", Holds: "jaw-to-jaw", Source: &Geometry}

// Travel returns how far (m) a muscle of length g (m) can shorten before its turns touch, if they touched at length l (m).
func Travel(g, l quantity.Length) quantity.Length { return g - l }

var TravelEq = Equation{Symbol: "x", Expr: "G − L", Holds: "touched", Source: &Geometry}

// TravelShare returns the same as a share of the length g.
func TravelShare(g, l quantity.Length) quantity.Fraction { return quantity.Fraction((g - l) / g) }

var TravelShareEq = Equation{Symbol: "x", Expr: "(G − L) ÷ G", Holds: "touched", Source: &Geometry}

// The same to a solid length that is known, touched or not.
var (
	TravelToSolidEq      = Equation{Symbol: "x", Expr: "G − S", Holds: "same-hand", Source: &Geometry}
	TravelToSolidShareEq = Equation{Symbol: "x", Expr: "(G − S) ÷ G", Holds: "same-hand", Source: &Geometry}
)

// Position returns where (m) a jaw stands on a rule whose fixed jaw stands at z (m).
func Position(z, g quantity.Length) quantity.Length { return z + g }

var PositionEq = Equation{Symbol: "y", Expr: "z + G", Holds: "zero-mark", Source: &Geometry}

// Hole returns the number of the hole, counted from the fixed jaw, whose gap is nearest to g (m) on a frame with holes p (m) apart,
// where hole 0 would give the gap o (m). It is never below 1.
func Hole(g, p, o quantity.Length) quantity.Count {
	k := math.Round(float64((g - o) / p))
	if k < 1 {
		k = 1
	}
	if unknown(float64(g + p + o)) {
		return quantity.Count(quantity.NaN)
	}
	return quantity.Count(k)
}

// HoleGap returns the gap (m) of hole k on such a frame.
func HoleGap(k quantity.Count, p, o quantity.Length) quantity.Length { return quantity.Length(k)*p + o }

var HoleGapEq = Equation{Symbol: "G", Expr: "k × p + o", Holds: "holes", Source: &Geometry}
