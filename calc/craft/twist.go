package craft

import (
	"math"

	"twistbench/calc/quantity"
)

// The bias angle is that of the fibre at the surface, measured from the axis. It needs the thickness as twisted: a measured one, or that of
// TwistedThickness, which follows the angle. Twist is in turns per metre of twisted fibre unless a name says precursor.

// SteepestBias is the bias angle (rad) at which a metre of precursor has taken up all the turns that it can, acos(1/3) = 70.53°, in the
// idealised yarn at constant volume: beyond it the fibre shortens faster than it takes up turns.
const SteepestBias = 1.23095941734077468

// Contraction returns the length of the precursor over that of the twisted fibre at a bias angle a (rad, 0 to under π/2; NaN beyond). It is
// that of an idealised yarn, its layers equally packed and unstretched; a solid monofilament follows it roughly.
func Contraction(a quantity.Angle) quantity.Number {
	return quantity.Number((1 + 1/math.Cos(acute(a))) / 2)
}

var ContractionEq = Equation{Symbol: "c", Expr: "(1 + 1 ÷ cos a) ÷ 2", Holds: "ideal-yarn", Source: &IdealYarn, Grade: Estimate}

// Retraction returns the share of its length that a precursor loses at a contraction factor c. In the idealised yarn it is tan²(a/2).
func Retraction(c quantity.Number) quantity.Fraction { return quantity.Fraction(1 - 1/c) }

var RetractionEq = Equation{Symbol: "s", Expr: "1 − 1 ÷ c", Holds: "ideal-yarn", Source: &IdealYarn, Grade: Estimate}

// TwistedLength returns the length (m) that a precursor p (m) has when it is twisted but not coiled.
func TwistedLength(p quantity.Length, c quantity.Number) quantity.Length {
	return p / quantity.Length(c)
}

var TwistedLengthEq = Equation{Symbol: "l", Expr: "P ÷ c", Holds: "ideal-yarn", Source: &IdealYarn, Grade: Estimate}

// TwistedThickness returns the thickness (m) of a fibre of diameter d (m) when it is twisted: what it loses in length goes into its
// cross-section at constant volume.
func TwistedThickness(d quantity.Length, c quantity.Number) quantity.Length {
	return d * quantity.Length(math.Sqrt(float64(c)))
}

var TwistedThicknessEq = Equation{Symbol: "t", Expr: "d × √(c)", Holds: "constant-volume", Source: &Worked, Grade: Estimate}

// TwistedTitre returns the linear density (kg/m) of a twisted fibre that had t (kg/m) before.
func TwistedTitre(t quantity.LinearDensity, c quantity.Number) quantity.LinearDensity {
	return t * quantity.LinearDensity(c)
}

// The same of n strands of linear density u, and with m strands of a companion of v beside them.
var (
	TitreOfStrandsEq = Equation{Symbol: "T", Expr: "c × n × u", Holds: "ideal-yarn", Source: &IdealYarn, Grade: Estimate}
	TitreOfAllEq     = Equation{Symbol: "T", Expr: "c × (n × u + m × v)", Holds: "ideal-yarn", Source: &IdealYarn, Grade: Estimate}
)

// MiddleEq is the middle between the least and the most thickness of strands side by side.
var MiddleEq = Equation{Symbol: "d", Expr: "(u + v) ÷ 2", Holds: "bundle-middle", Source: &Worked, Grade: Estimate}

// Bias returns the bias angle (rad) of n turns per metre of twisted fibre t (m) thick.
func Bias(n quantity.Twist, t quantity.Length) quantity.Angle {
	return quantity.Angle(math.Atan(math.Pi * float64(t) * float64(n)))
}

// TwistForBias returns the turns per metre of twisted fibre t (m) thick that make a bias angle a (rad, under π/2).
func TwistForBias(a quantity.Angle, t quantity.Length) quantity.Twist {
	return quantity.Twist(math.Tan(acute(a)) / (math.Pi * float64(t)))
}

var TwistForBiasEq = Equation{Symbol: "n", Expr: "tan a ÷ (π × t)", Holds: "surface-helix", Source: &IdealYarn}

// BiasUntwisted returns the bias angle (rad) of n turns per metre of twisted fibre whose diameter was d (m) before it thickened as
// TwistedThickness says. With q = π d n that is tan a = q √((1 + sec a)/2), whose solution is sec a = 1 + q²/2.
func BiasUntwisted(n quantity.Twist, d quantity.Length) quantity.Angle {
	q := math.Pi * float64(d) * float64(n)
	return quantity.Angle(math.Atan(q * math.Sqrt(1+q*q/4)))
}

// PrecursorTwist returns the turns per metre of precursor at a bias angle a (rad, under π/2) of a fibre t (m) thick as twisted: TwistForBias
// over Contraction, which is 2 tan(a/2) / (π t). At a given thickness it rises with the angle all the way, to 2/(π t).
func PrecursorTwist(a quantity.Angle, t quantity.Length) quantity.Twist {
	return quantity.Twist(2 * math.Tan(acute(a)/2) / (math.Pi * float64(t)))
}

var PrecursorTwistEq = Equation{Symbol: "n", Expr: "2 × tan(a ÷ 2) ÷ (π × t)", Holds: "precursor-twist", Source: &Worked, Grade: Estimate}

// PrecursorTwistUntwisted returns the turns per metre of precursor at a bias angle a (rad) of a fibre of diameter d (m) that thickens as
// TwistedThickness says. It rises with the angle up to SteepestBias, where it is 1/(π d). Beyond, the same turns belong to a smaller angle
// too and the fibre only shortens: NaN.
func PrecursorTwistUntwisted(a quantity.Angle, d quantity.Length) quantity.Twist {
	if !(a <= SteepestBias) {
		return quantity.Twist(quantity.NaN)
	}
	return PrecursorTwist(a, TwistedThickness(d, Contraction(a)))
}

// BiasOfPrecursorTwist returns the bias angle (rad) of n turns per metre of precursor in a fibre t (m) thick as twisted. NaN at 2/(π t) and
// beyond: no angle has so many. It is the way back from PrecursorTwist.
func BiasOfPrecursorTwist(n quantity.Twist, t quantity.Length) quantity.Angle {
	half := math.Atan(math.Pi * float64(t) * float64(n) / 2)
	if !(half < math.Pi/4) {
		return quantity.Angle(quantity.NaN)
	}
	return quantity.Angle(2 * half)
}

var BiasOfPrecursorTwistEq = Equation{Symbol: "a", Expr: "2 × atan(π × t × n ÷ 2)", Holds: "precursor-twist", Source: &Worked, Grade: Estimate}

// BiasOfPrecursorTwistUntwisted is the way back from PrecursorTwistUntwisted. NaN beyond 1/(π d), the most turns per metre of precursor that
// any angle has. With q = π d n and s = √(1 − q²) the equation for sec a is quadratic, and its smaller solution is (3 − s)/(1 + s).
func BiasOfPrecursorTwistUntwisted(n quantity.Twist, d quantity.Length) quantity.Angle {
	q := math.Pi * float64(d) * float64(n)
	s := 1 + math.Sqrt((1-q)*(1+q))
	return quantity.Angle(math.Atan(q * math.Sqrt(8/s) / s)) // acos((1 + s)/(3 − s)) without its loss at small angles
}

var BiasOfPrecursorTwistUntwistedEq = Equation{Symbol: "a", Expr: "acos((1 + √(1 − (π × d × n)²)) ÷ (3 − √(1 − (π × d × n)²)))", Holds: "precursor-twist", Source: &Worked, Grade: Estimate}

// PrecursorOfTwist returns the turns per metre of precursor of a fibre with n turns per metre of twisted fibre.
func PrecursorOfTwist(n quantity.Twist, c quantity.Number) quantity.Twist {
	return n / quantity.Twist(c)
}

var PrecursorOfTwistEq = Equation{Symbol: "m", Expr: "n ÷ c", Holds: "precursor-twist", Source: &IdealYarn, Grade: Estimate}

// MostPrecursorTwist returns the most turns per metre of precursor that a fibre of diameter d (m) takes, at SteepestBias: beyond, more turns
// only shorten it. One that keeps a thickness t takes 2/(π t), twice as many as this says of it.
func MostPrecursorTwist(d quantity.Length) quantity.Twist {
	return quantity.Twist(1 / (math.Pi * float64(d)))
}

var (
	MostTwistEq         = Equation{Symbol: "n", Expr: "1 ÷ (π × d)", Holds: "precursor-twist", Source: &Worked, Grade: Estimate}
	MostTwistMeasuredEq = Equation{Symbol: "n", Expr: "2 ÷ (π × t)", Holds: "precursor-twist", Source: &Worked, Grade: Estimate}
)

// TurnsIn returns the turns in a precursor p (m) with n turns per metre of precursor.
func TurnsIn(n quantity.Twist, p quantity.Length) quantity.Turns {
	return quantity.Turns(float64(n) * float64(p))
}

var TurnsInEq = Equation{Symbol: "N", Expr: "n × P", Holds: "between-ties", Source: &Geometry}

// TwistOfTurns returns the turns per metre of a length p (m) with k turns.
func TwistOfTurns(k quantity.Turns, p quantity.Length) quantity.Twist {
	return quantity.Twist(float64(k) / float64(p))
}

var TwistOfTurnsEq = Equation{Symbol: "n", Expr: "N ÷ P", Holds: "between-ties", Source: &Geometry}

// FactorOfTwist returns the twist factor (turns/m × √(kg/m)) of n turns per metre in a fibre of linear density t (kg/m), both as twisted.
func FactorOfTwist(n quantity.Twist, t quantity.LinearDensity) quantity.TwistFactor {
	return quantity.TwistFactor(float64(n) * math.Sqrt(float64(t)))
}

var FactorOfTwistEq = Equation{Symbol: "K", Expr: "n × √(T)", Holds: "as-twisted", Source: &IdealYarn}

// TwistOfFactor returns the turns per metre of a twist factor k in a fibre of linear density t (kg/m), both as twisted.
func TwistOfFactor(k quantity.TwistFactor, t quantity.LinearDensity) quantity.Twist {
	return quantity.Twist(float64(k) / math.Sqrt(float64(t)))
}

var PrecursorOfFactorEq = Equation{Symbol: "n", Expr: "K ÷ (c × √(T))", Holds: "as-twisted", Source: &IdealYarn, Grade: Estimate}

// BiasOfFactorUntwisted returns the bias angle (rad) of a twist factor k in a fibre that had the diameter d (m) and the linear density u (kg/m)
// before it thickened as TwistedThickness says. Thickness and linear density grow alike, so that tan a = π d k/√u.
func BiasOfFactorUntwisted(k quantity.TwistFactor, d quantity.Length, u quantity.LinearDensity) quantity.Angle {
	return quantity.Angle(math.Atan(math.Pi * float64(d) * float64(k) / math.Sqrt(float64(u))))
}

// BiasOfFactorAt is the same for a measured thickness t (m) as twisted: tan a √c = π t k/√u, by Newton's steps in sec a, which never pass
// the root from above because the left side's square is convex.
func BiasOfFactorAt(k quantity.TwistFactor, t quantity.Length, u quantity.LinearDensity) quantity.Angle {
	q := math.Pi * float64(t) * float64(k) / math.Sqrt(float64(u))
	q *= 2 * q
	s := 1 + q // (s² − 1)(1 + s) = q at the root, which lies below
	for range 60 {
		step := ((s-1)*(s+1)*(s+1) - q) / ((s + 1) * (3*s - 1))
		s -= step
		if !(step > 1e-15*s) {
			break
		}
	}
	return quantity.Angle(math.Atan(math.Sqrt((s - 1) * (s + 1))))
}

// BiasOfFactor returns the bias angle (rad) of a twist factor k (turns/m × √(kg/m)) in a solid fibre of density rho (kg/m³), of any size.
func BiasOfFactor(k quantity.TwistFactor, rho quantity.Density) quantity.Angle {
	return quantity.Angle(math.Atan(2 * float64(k) * math.Sqrt(math.Pi/float64(rho))))
}

// FactorForBias is the way back from BiasOfFactor, for a bias angle a (rad, under π/2).
func FactorForBias(a quantity.Angle, rho quantity.Density) quantity.TwistFactor {
	return quantity.TwistFactor(math.Tan(acute(a)) / (2 * math.Sqrt(math.Pi/float64(rho))))
}

// SameTightness returns the turns per metre that give a fibre u (m) thick the bias angle that n turns per metre give one t (m) thick. It
// holds per metre of twisted fibre and per metre of precursor alike, and for the thicknesses before twist as well as after.
func SameTightness(n quantity.Twist, t, u quantity.Length) quantity.Twist {
	return n * quantity.Twist(t/u)
}

var SameTightnessEq = Equation{Symbol: "m", Expr: "n × t ÷ u", Holds: "same-bias", Source: &Geometry}

// SurfaceShear returns the shear strain of the surface at a bias angle a (rad, under π/2).
func SurfaceShear(a quantity.Angle) quantity.Fraction {
	return quantity.Fraction(math.Tan(acute(a)))
}

var SurfaceShearEq = Equation{Symbol: "γ", Expr: "tan a", Holds: "surface-helix", Source: &Geometry}

// DrillTime returns how long (s) a drill of speed r (turns/s) takes for k turns; NaN for a drill that stands still.
func DrillTime(k quantity.Turns, r quantity.Rotation) quantity.Time {
	if !(r > 0) {
		return quantity.Time(quantity.NaN)
	}
	return quantity.Time(float64(k) / float64(r))
}

var DrillTimeEq = Equation{Symbol: "t", Expr: "N ÷ r", Holds: "steady-speed", Source: &Geometry}

// DrillSpeed returns the speed (turns/s) of a drill that takes t (s) for k turns; NaN where no time has passed.
func DrillSpeed(k quantity.Turns, t quantity.Time) quantity.Rotation {
	if !(t > 0) {
		return quantity.Rotation(quantity.NaN)
	}
	return quantity.Rotation(float64(k) / float64(t))
}

var DrillSpeedEq = Equation{Symbol: "r", Expr: "N ÷ t", Holds: "steady-speed", Source: &Geometry}

// acute returns an angle of 0 to under π/2, and NaN for any other.
func acute(a quantity.Angle) float64 {
	if !(a >= 0 && a < math.Pi/2) {
		return quantity.NaN
	}
	return float64(a)
}
