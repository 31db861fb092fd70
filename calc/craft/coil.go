package craft

import (
	"math"

	"twistbench/calc/quantity"
)

// The shape of a coil: its centre line is a helix of mean diameter D and pitch p. The pitch angle is measured from the plane across the axis.
// Thickness is that of the twisted fibre.

// MeanDiameter returns the diameter (m) of the centre line of a coil whose outside measures o (m), wound of a fibre t (m) thick. It is below
// t where the two cannot both be true.
func MeanDiameter(o, t quantity.Length) quantity.Length { return o - t }

var MeanDiameterEq = Equation{Symbol: "D", Expr: "O − t", Holds: "caliper-light", Source: &Geometry}

// OuterDiameter is the way back from MeanDiameter.
func OuterDiameter(mean, t quantity.Length) quantity.Length { return mean + t }

var OuterDiameterEq = Equation{Symbol: "O", Expr: "D + t", Holds: "caliper-light", Source: &Geometry}

// Index returns the spring index: mean diameter over thickness (both m).
func Index(mean, t quantity.Length) quantity.Number { return quantity.Number(mean / t) }

var IndexEq = Equation{Symbol: "C", Expr: "D ÷ t", Holds: "helix", Source: &Geometry}

// MeanOfIndex is the way back from Index.
func MeanOfIndex(c quantity.Number, t quantity.Length) quantity.Length { return quantity.Length(c) * t }

var MeanOfIndexEq = Equation{Symbol: "D", Expr: "C × t", Holds: "helix", Source: &Geometry}

// TurnLength returns the length (m) of fibre in one coil of mean diameter d and pitch p (both m).
func TurnLength(d, p quantity.Length) quantity.Length {
	return quantity.Length(math.Hypot(math.Pi*float64(d), float64(p)))
}

var TurnLengthEq = Equation{Symbol: "l", Expr: "√((π × D)² + p²)", Holds: "helix", Source: &Geometry}

// MeanOfTurn returns the mean diameter (m) of a coil with l (m) of fibre in each turn at a pitch p (m): a coil keeps its turns and its fibre when
// it is pulled open or closes. NaN where p is over l.
func MeanOfTurn(l, p quantity.Length) quantity.Length {
	return quantity.Length(math.Sqrt(float64((l-p)*(l+p))) / math.Pi)
}

var MeanOfTurnEq = Equation{Symbol: "D", Expr: "√(l² − p²) ÷ π", Holds: "ends-held", Source: &Geometry}

// FibreInCoils returns the length (m) of fibre in n coils with l (m) in each.
func FibreInCoils(n quantity.Turns, l quantity.Length) quantity.Length {
	return quantity.Length(n) * l
}

// PitchAngle returns the angle (rad) of the fibre in a coil of mean diameter d and pitch p (both m).
func PitchAngle(d, p quantity.Length) quantity.Angle {
	return quantity.Angle(math.Atan(float64(p) / (math.Pi * float64(d))))
}

var PitchAngleEq = Equation{Symbol: "b", Expr: "atan(p ÷ (π × D))", Holds: "across-axis", Source: &Geometry}

// Pitch returns the pitch (m) of n coils in a length c (m).
func Pitch(c quantity.Length, n quantity.Turns) quantity.Length { return c / quantity.Length(n) }

var PitchEq = Equation{Symbol: "p", Expr: "L ÷ N", Holds: "even-pitch", Source: &Geometry}

// Coils returns how many coils of pitch p (m) are in a length c (m).
func Coils(c, p quantity.Length) quantity.Turns { return quantity.Turns(c / p) }

var CoilsEq = Equation{Symbol: "N", Expr: "L ÷ p", Holds: "even-pitch", Source: &Geometry}

// CoilLength returns the length (m) of n coils of pitch p (m): the coil itself, or its solid length where p is the solid pitch.
func CoilLength(n quantity.Turns, p quantity.Length) quantity.Length {
	return quantity.Length(n) * p
}

var CoilLengthEq = Equation{Symbol: "L", Expr: "N × p", Holds: "even-pitch", Source: &Geometry}

// CoilsPerLength returns the coils per metre of a coil of pitch p (m).
func CoilsPerLength(p quantity.Length) quantity.Twist { return quantity.Twist(1 / p) }

var CoilsPerLengthEq = Equation{Symbol: "k", Expr: "1 ÷ p", Holds: "even-pitch", Source: &Geometry}

// PitchOfCoils is the way back from CoilsPerLength.
func PitchOfCoils(k quantity.Twist) quantity.Length { return quantity.Length(1 / k) }

var PitchOfCoilsEq = Equation{Symbol: "p", Expr: "1 ÷ k", Holds: "even-pitch", Source: &Geometry}

// PitchOfTurn returns the pitch (m) of a coil of n turns and mean diameter d (m) made of a precursor p (m) with the contraction factor c. NaN
// where so many turns need more fibre.
func PitchOfTurn(n quantity.Turns, p quantity.Length, c quantity.Number, d quantity.Length) quantity.Length {
	l, around := float64(p)/(float64(c)*float64(n)), math.Pi*float64(d)
	return quantity.Length(math.Sqrt((l - around) * (l + around)))
}

var PitchOfTurnEq = Equation{Symbol: "p", Expr: "√((P ÷ (c × N))² − (π × D)²)", Holds: "coil-alone", Source: &Geometry, Grade: Estimate}

// RatioOfShape returns precursor over coiled length of a coil of mean diameter d and pitch p (both m) whose fibre has the contraction factor
// c.
func RatioOfShape(d, p quantity.Length, c quantity.Number) quantity.Ratio {
	return quantity.Ratio(float64(c) * float64(TurnLength(d, p)) / float64(p))
}

var RatioOfShapeEq = Equation{Symbol: "r", Expr: "c × √((π × D)² + p²) ÷ p", Holds: "coil-alone", Source: &Geometry, Grade: Estimate}

// PitchOfRatio returns the pitch (m) of a coil of mean diameter d (m) at a ratio r of precursor to coiled, with the contraction factor c. NaN
// where r is not over c: twist alone shortens the fibre so far.
func PitchOfRatio(d quantity.Length, r quantity.Ratio, c quantity.Number) quantity.Length {
	return quantity.Length(math.Pi * float64(d) / slope(r, c))
}

var PitchOfRatioEq = Equation{Symbol: "p", Expr: "π × D ÷ √((r ÷ c)² − 1)", Holds: "coil-alone", Source: &Geometry, Grade: Estimate}

// DiameterOfRatio returns the mean diameter (m) of a coil of pitch p (m) at a ratio r of precursor to coiled, with the contraction factor c.
// NaN where r is not over c.
func DiameterOfRatio(p quantity.Length, r quantity.Ratio, c quantity.Number) quantity.Length {
	return quantity.Length(float64(p) * slope(r, c) / math.Pi)
}

var DiameterOfRatioEq = Equation{Symbol: "D", Expr: "p × √((r ÷ c)² − 1) ÷ π", Holds: "coil-alone", Source: &Geometry, Grade: Estimate}

// slope is how much further the fibre of a coil runs around its axis than along it.
func slope(r quantity.Ratio, c quantity.Number) float64 {
	k := float64(r) / float64(c)
	if !(k > 1) {
		return quantity.NaN
	}
	return math.Sqrt((k - 1) * (k + 1))
}

// Curvature returns how sharply the centre line bends (rad/m): 2 cos² b/d for a mean diameter d (m) and a pitch angle b (rad).
func Curvature(d quantity.Length, b quantity.Angle) float64 {
	c := math.Cos(float64(b))
	return 2 * c * c / float64(d)
}

// Torsion returns how fast the plane of that bend turns along the centre line (rad/m): 2 sin b cos b/d.
func Torsion(d quantity.Length, b quantity.Angle) float64 {
	return math.Sin(2*float64(b)) / float64(d)
}

// Writhe returns the turns that n coils of pitch angle b (rad) take up by being coils: 1 − sin b in each, of a coil long against its pitch.
func Writhe(n quantity.Turns, b quantity.Angle) quantity.Turns {
	return n * quantity.Turns(1-math.Sin(float64(b)))
}

var WritheEq = Equation{Symbol: "W", Expr: "N × (1 − sin b)", Holds: "long-coil", Source: &LinkTheorem}

// Link returns all the turns that were put in: those left in the fibre as twist and those taken up by coiling.
func Link(twist, writhe quantity.Turns) quantity.Turns { return twist + writhe }

var LinkEq = Equation{Symbol: "N", Expr: "T + W", Holds: "ends-held", Source: &LinkTheorem}

// TwistLeft returns the turns left in the fibre as twist when link turns were put in and writhe were taken up by coiling.
func TwistLeft(link, writhe quantity.Turns) quantity.Turns { return link - writhe }

// FullCoiling returns the turns per metre of precursor that coil it from end to end: n turns per metre of twisted fibre left in it, and what
// coils of pitch angle b (rad) with l (m) of fibre in each take up, over the contraction factor c.
func FullCoiling(n quantity.Twist, b quantity.Angle, l quantity.Length, c quantity.Number) quantity.Twist {
	return quantity.Twist((float64(n) + (1-math.Sin(float64(b)))/float64(l)) / float64(c))
}

var FullCoilingEq = Equation{Symbol: "m", Expr: "(n + (1 − sin b) ÷ l) ÷ c", Holds: "long-coil", Source: &LinkTheorem, Grade: Estimate}

// Clearance returns the gap (m) between neighbouring turns, across the fibre and not along the axis: p cos b less the thickness t, for a
// pitch p (m) and a pitch angle b (rad). It is over the exact one, TurnsApart less t, by under 0.2 % of t
// where the turns nearly touch and under 2 % in an open coil.
func Clearance(p quantity.Length, b quantity.Angle, t quantity.Length) quantity.Length {
	return p*quantity.Length(math.Cos(float64(b))) - t
}

var ClearanceEq = Equation{Symbol: "g", Expr: "p × cos b − t", Holds: "near-closed", Source: &Geometry}

// ClearanceOfEq is the same of a mean diameter D.
var ClearanceOfEq = Equation{Symbol: "g", Expr: "p × cos(atan(p ÷ (π × D))) − t", Holds: "near-closed", Source: &Geometry}

// Overlaps reports whether a coil of pitch p (m) and pitch angle b (rad) cannot be of a fibre t (m) thick: its turns would lie in each other.
// What a sum of float64 leaves behind is forgiven.
func Overlaps(p quantity.Length, b quantity.Angle, t quantity.Length) bool {
	return Clearance(p, b, t) < -1e-9*t
}

// TurnsApart returns the distance (m) between the centre lines of neighbouring turns in a coil of mean diameter d and pitch p (both m): the
// least from a point of a helix to the turn after it. NaN in a coil so steep, over about 25°, that the next turn is nowhere nearest.
//
// The point at an angle of 2π + x from the first is the nearest where sin x + k (2π + x) = 0 with k = (p/(π d))², for the x between −π/2
// and 0 that is closer to 0. There the left side is convex and rising, so Newton's steps from 0 never pass the root.
func TurnsApart(d, p quantity.Length) quantity.Length {
	k := float64(p) / (math.Pi * float64(d))
	k *= k
	x := 0.0
	for range 20 {
		sin, cos := math.Sincos(x)
		rise := cos + k
		if !(rise > 0 && x > -math.Pi) { // past where the left side is least: it has no root
			return quantity.Length(quantity.NaN)
		}
		step := (sin + k*(2*math.Pi+x)) / rise
		x -= step
		if step < 1e-14 {
			half := float64(d) * math.Sin(x/2)
			return quantity.Length(math.Hypot(half, float64(p)*(1+x/(2*math.Pi))))
		}
	}
	return quantity.Length(quantity.NaN)
}

// SolidPitch returns the pitch (m) at which the turns of a coil with l (m) of fibre in each touch, of a fibre t (m) thick: where TurnsApart is
// t. The coil keeps its turns and its fibre, so it widens a little as it closes. NaN where a turn of that length cannot be wound of that
// fibre.
//
// It is a search without an equation: see touching.
func SolidPitch(l, t quantity.Length) quantity.Length {
	return touching(t, func(p quantity.Length) quantity.Length {
		return MeanOfTurn(l, p)
	})
}

// NearSolidPitch returns the pitch (m) at which turns touch, nearly: the thickness t (m) over the cosine of the pitch angle b (rad) that the
// coil has then. It is at most 0.2 % under SolidPitch.
func NearSolidPitch(t quantity.Length, b quantity.Angle) quantity.Length {
	return t / quantity.Length(math.Cos(float64(b)))
}

var NearSolidPitchEq = Equation{Symbol: "p", Expr: "t ÷ cos b", Holds: "near-closed", Source: &Geometry}

// ClosedPitch returns the pitch (m) of a coil wound with its turns touching at a mean diameter d (m), of a fibre t (m) thick. NaN where d is
// under t. It is the search of SolidPitch with the diameter kept.
func ClosedPitch(d, t quantity.Length) quantity.Length {
	return touching(t, func(quantity.Length) quantity.Length { return d })
}

// touching searches the pitch at which turns are just the thickness t apart, when the coil has the mean diameter mean(p) at a pitch p. NaN
// where that is under t. It begins with two steps that each add what is missing and goes on along the chord through the last two, which
// three or four steps take to the last digit: distance is all but straight in the pitch.
func touching(t quantity.Length, mean func(p quantity.Length) quantity.Length) quantity.Length {
	p, was := t, t
	before := quantity.Length(0) // what was missing at the pitch before
	for range 30 {
		d := mean(p)
		missing := t - TurnsApart(d, p)
		if d < t*(1-1e-9) || unknown(float64(missing)) {
			break
		}
		step := missing
		if slope := (before - missing) / (p - was); p != was && slope > 0.1 {
			step = missing / slope
		}
		p, was, before = p+step, p, missing
		if max(step, -step) <= 1e-14*t {
			return p
		}
	}
	return quantity.Length(quantity.NaN)
}

// SelfCoilModulus is the bending modulus of a fibre after twist (Pa) that fits indices of 1.7 at 10 MPa and 1.1 at 35 MPa: 0.46 and
// 0.68 GPa, and 0.55 GPa between them. Both indices are from memory.
var SelfCoilModulus = Band{0.46e9, 0.55e9, 0.68e9}

// IndexAtLoad returns the spring index of a fibre that coils by itself under a stress s (Pa) on its area before twisting, with a bending
// modulus e after twist (Pa): √(e/s)/4, an estimate of our own, and never under 1, where the turns would meet across the axis.
func IndexAtLoad(e, s quantity.Stress) quantity.Number {
	return quantity.Number(max(1, math.Sqrt(float64(e)/float64(s))/4))
}

// OnRod returns the mean diameter (m) of a coil wound on a rod r (m) thick, of a fibre t (m) thick.
func OnRod(r, t quantity.Length) quantity.Length { return r + t }

var OnRodEq = Equation{Symbol: "D", Expr: "R + t", Holds: "tight-on-rod", Source: &Geometry}

// RodFibre returns the twisted fibre (m) in a coil of length c (m), mean diameter d and pitch p (both m), without its ends.
func RodFibre(c, d, p quantity.Length) quantity.Length {
	return c / p * TurnLength(d, p)
}

var RodFibreEq = Equation{Symbol: "F", Expr: "L ÷ p × √((π × D)² + p²)", Holds: "coil-alone", Source: &Geometry}

// Untwisted returns the precursor (m) of a twisted fibre f (m) with the contraction factor c: the way back from TwistedLength.
func Untwisted(f quantity.Length, c quantity.Number) quantity.Length { return f * quantity.Length(c) }

var UntwistedEq = Equation{Symbol: "P", Expr: "F × c", Holds: "ideal-yarn", Source: &IdealYarn, Grade: Estimate}

// ClosingLimit returns the most that a coil of pitch p (m) can shorten before its turns touch at the pitch s (m), as a share of its length.
func ClosingLimit(p, s quantity.Length) quantity.Fraction { return quantity.Fraction(1 - s/p) }
