package craft

import (
	"math"

	"twistbench/calc/quantity"
)

// What an elastic rod does when it is twisted under a pull: it stays straight up to a critical torque, then throws a coil. A drawn polymer is
// well past linear by then and its moduli are guesses, so what follows from it is an estimate, shown as a band and beaten by one counted
// trial.
//
// No shear modulus here comes from a Poisson's ratio: a drawn fibre is far stiffer along than in shear, and E/(2(1 + ν)) would put the
// onset at two thirds of its angle.

// Band is the least, the usual and the most of a modulus (Pa), NaN where nothing is known.
type Band struct{ Low, Typical, High quantity.Stress }

// Moduli are the moduli of a drawn fibre at room temperature: along the fibre, and in shear about its axis.
type Moduli struct {
	Young, Shear Band
	Source       *Source
}

// DrawnModuli has the moduli of each polymer, in the order of Polymers. Nylon: monofilament line, initial modulus 1.5 to 3.5 GPa, from
// memory; torsion of nylon 0.33 to 0.48 GPa at 65 % relative humidity, and a ratio of the two of about 6, from memory. For the others
// nothing is known that would stand.
var DrawnModuli = [...]*Moduli{&nylonModuli, &nylonModuli, &noModuli, &noModuli, &noModuli, &noModuli}

var (
	nylonModuli = Moduli{Young: Band{1.5e9, 2.5e9, 3.5e9}, Shear: Band{0.33e9, 0.42e9, 0.5e9}, Source: &TorsionTables}
	noModuli    = Moduli{Young: noBand, Shear: noBand, Source: &Memory}
	noBand      = Band{quantity.Stress(quantity.NaN), quantity.Stress(quantity.NaN), quantity.Stress(quantity.NaN)}
)

// OnsetBias returns the bias angle (rad) at which a long fibre of moduli e and g (Pa) under a stress s (Pa) throws its first coil. It is
// OnsetTorque put equal to the torque of the twist, ElasticTorque: size drops out, tan a = 2 √(e s)/g. The stress is strictly that on the
// twisted cross-section; on the area before twisting it is at most √c too high in the tangent, far less than the doubt of the moduli.
func OnsetBias(e, g, s quantity.Stress) quantity.Angle {
	return quantity.Angle(math.Atan(2 * math.Sqrt(float64(e)*float64(s)) / float64(g)))
}

var OnsetBiasEq = Equation{Symbol: "a", Expr: "atan(2 × √(E × σ) ÷ G)", Holds: "elastic-rod", Source: &RodTheory, Grade: Estimate}

// Onset returns the bias angles (rad) between which the first coil is expected under a stress s (Pa), and the usual one: a soft fibre that is
// stiff in shear coils early, the other way round late.
func (m *Moduli) Onset(s quantity.Stress) (low, typical, high quantity.Angle) {
	return OnsetBias(m.Young.Low, m.Shear.High, s), OnsetBias(m.Young.Typical, m.Shear.Typical, s), OnsetBias(m.Young.High, m.Shear.Low, s)
}

// OnsetTurns returns the turns in a precursor p (m) of diameter d (m) at which its bias angle is a (rad), straight so far. Beyond SteepestBias
// it takes no more than there.
func OnsetTurns(p quantity.Length, a quantity.Angle, d quantity.Length) quantity.Turns {
	return TurnsIn(PrecursorTwistUntwisted(min(a, SteepestBias), d), p)
}

// OnsetTurnsEq holds up to SteepestBias, MostTurnsEq from there on.
var OnsetTurnsEq = Equation{Symbol: "N", Expr: "2 × P × tan(a ÷ 2) ÷ (π × d × √((1 + 1 ÷ cos a) ÷ 2))", Holds: "elastic-rod", Source: &Worked, Grade: Estimate}

var MostTurnsEq = Equation{Symbol: "N", Expr: "P ÷ (π × d)", Holds: "precursor-twist", Source: &Worked, Grade: Estimate}

// SameOnset returns the turns at the first coil in a precursor p (m) after k turns were counted in one of q (m), same fibre and stress.
func SameOnset(k quantity.Turns, p, q quantity.Length) quantity.Turns { return k * quantity.Turns(p/q) }

var SameOnsetEq = Equation{Symbol: "N", Expr: "k × P ÷ q", Holds: "own-count", Source: &Geometry}

// OnsetTorque returns the torque (N·m) at which a long round rod of modulus e (Pa), thickness t (m) and pull f (N) throws a coil: 2 √(e I f)
// with I = π t⁴/64.
func OnsetTorque(e quantity.Stress, t quantity.Length, f quantity.Force) quantity.Torque {
	return quantity.Torque(2 * math.Sqrt(bending(e, t)*float64(f)))
}

// OnsetTorquePinned is the same for a rod of length l (m) whose ends may tilt: (M/(2 e I))² = f/(e I) + (π/l)².
func OnsetTorquePinned(e quantity.Stress, t quantity.Length, f quantity.Force, l quantity.Length) quantity.Torque {
	b, k := bending(e, t), math.Pi/float64(l)
	return quantity.Torque(2 * b * math.Sqrt(float64(f)/b+k*k))
}

// SlackTorque is the same with no pull, 2π e I/l.
func SlackTorque(e quantity.Stress, t, l quantity.Length) quantity.Torque {
	return quantity.Torque(2 * math.Pi * bending(e, t) / float64(l))
}

// ElasticTorque returns the torque (N·m) of n turns per metre in a round rod of shear modulus g (Pa) and thickness t (m), as long as it
// stays elastic: 2π n g J with J = π t⁴/32.
func ElasticTorque(n quantity.Twist, g quantity.Stress, t quantity.Length) quantity.Torque {
	return quantity.Torque(4 * math.Pi * float64(n) * bending(g, t))
}

// ElasticTwist returns the turns per metre of a torque m (N·m): the way back from ElasticTorque.
func ElasticTwist(m quantity.Torque, g quantity.Stress, t quantity.Length) quantity.Twist {
	return quantity.Twist(float64(m) / (4 * math.Pi * bending(g, t)))
}

// bending returns a modulus times the second moment of a round section t (m) thick, N·m².
func bending(e quantity.Stress, t quantity.Length) float64 {
	a := float64(t * t)
	return float64(e) * math.Pi * a * a / 64
}
