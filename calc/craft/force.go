package craft

import "twistbench/calc/quantity"

// Force: a muscle as a straight line, pull against length, one cold and one hot; where the line meets what it pulls on; and what comes of it.
// It cannot push, and it cannot get shorter than its turns allow.

// Pull is a muscle or a spring at one temperature: its length without pull (m) and its stiffness (N/m).
type Pull struct {
	Free quantity.Length
	Rate quantity.Stiffness
}

// At returns the pull (N) at a length l (m); none where it hangs loose.
func (p Pull) At(l quantity.Length) quantity.Force { return max(0, HeldForce(p.Rate, l, p.Free)) }

// HeldForce returns the pull (N) of what is k (N/m) stiff and f (m) long without it, held at a length l (m): the preload cold, the blocked force
// hot.
func HeldForce(k quantity.Stiffness, l, f quantity.Length) quantity.Force {
	return quantity.Force(float64(k) * float64(l-f))
}

var HeldForceEq = Equation{Symbol: "F", Expr: "k × (L − f)", Holds: "straight-line", Source: &Geometry, Grade: Estimate}

// LoadedLength returns the length (m) under a pull p (N) of what is f (m) long without it and k (N/m) stiff.
func LoadedLength(f quantity.Length, p quantity.Force, k quantity.Stiffness) quantity.Length {
	return f + quantity.Length(float64(p)/float64(k))
}

var LoadedLengthEq = Equation{Symbol: "L", Expr: "f + F ÷ k", Holds: "straight-line", Source: &Geometry, Grade: Estimate}

// UnloadedLength is the way back: the length (m) without a pull p (N) of what is l (m) long under it and k (N/m) stiff.
func UnloadedLength(l quantity.Length, p quantity.Force, k quantity.Stiffness) quantity.Length {
	return l - quantity.Length(float64(p)/float64(k))
}

var UnloadedLengthEq = Equation{Symbol: "f", Expr: "L − F ÷ k", Holds: "straight-line", Source: &Geometry, Grade: Estimate}

// Opposing is what a muscle pulls on: a weight (N) that always hangs, and a spring (N/m), or another muscle, that goes slack when the muscle
// is as long as Slack (m). A spring of no stiffness is none.
type Opposing struct {
	Weight quantity.Force
	Spring quantity.Stiffness
	Slack  quantity.Length
}

// At returns the pull (N) of the load at a length l (m) of the muscle.
//
//go:noinline
func (a Opposing) At(l quantity.Length) quantity.Force {
	if a.Spring == 0 || l >= a.Slack {
		return a.Weight
	}
	return LoadPull(a.Weight, a.Spring, a.Slack, l)
}

// LoadPull returns the pull (N) of a weight w (N) and a spring of s (N/m) when the muscle is l (m) long, e (m) being where the spring goes slack.
func LoadPull(w quantity.Force, s quantity.Stiffness, e, l quantity.Length) quantity.Force {
	return w + HeldForce(s, e, l)
}

var LoadPullEq = Equation{Symbol: "F", Expr: "w + s × (e − L)", Holds: "spring-taut", Source: &Geometry}

// Settled returns the length (m) at which a muscle of stiffness k (N/m) that is f (m) long without pull comes to rest against a weight w (N)
// and a spring of stiffness s (N/m) that is slack when the muscle is e (m) long.
func Settled(k quantity.Stiffness, f quantity.Length, w quantity.Force, s quantity.Stiffness, e quantity.Length) quantity.Length {
	return quantity.Length((float64(k)*float64(f) + float64(w) + float64(s)*float64(e)) / float64(k+s))
}

var SettledEq = Equation{Symbol: "L", Expr: "(k × f + F + s × e) ÷ (k + s)", Holds: "spring-taut", Source: &Geometry, Grade: Estimate}

// Rest returns the length (m) at which a muscle comes to rest against a load: where both pull alike, or its length without pull where the load
// pulls nothing.
//
//go:noinline
func (p Pull) Rest(a Opposing) quantity.Length {
	if a.Spring != 0 {
		if l := Settled(p.Rate, p.Free, a.Weight, a.Spring, a.Slack); !(l >= a.Slack) {
			return l
		}
	}
	return LoadedLength(p.Free, a.Weight, p.Rate)
}

// Outcome is what a muscle does against a load: its length (m) and the pull (N) cold and hot.
type Outcome struct {
	_ [0]func() // these are not compared

	Cold, Hot         quantity.Length
	ColdPull, HotPull quantity.Force
}

// Against returns what a muscle does that is no shorter than least and no longer than most (both m).
func (e *Pulls) Against(a Opposing, least, most quantity.Length) (o Outcome) {
	o.Cold = min(max(e.Cold.Rest(a), least), most)
	o.Hot = min(max(e.Hot.Rest(a), least), most)
	o.ColdPull, o.HotPull = a.At(o.Cold), a.At(o.Hot)
	return o
}

// Stroke returns how far (m) it shortens; negative where it lengthens.
func (o *Outcome) Stroke() quantity.Length { return Stroke(o.Cold, o.Hot) }

// PairRoom returns how short and how long (m) one of two equal muscles can be that share a length both (m) between their far ends, each no shorter than
// solid and no longer than straight (m): as one gets shorter, the other gets longer. Where there is no such length, NaN.
func PairRoom(both, solid, straight quantity.Length) (least, most quantity.Length) {
	least, most = max(solid, both-straight), min(straight, both-solid)
	if !(least <= most) {
		least, most = quantity.Length(quantity.NaN), quantity.Length(quantity.NaN)
	}
	return least, most
}

// Pair returns the lengths (m) of the first of two muscles that share a length both (m) between their far ends, pulling against each other and
// a weight w (N) that pulls on the first: when it is hot and the other cold, and when the other is hot and it is cold. It gets no shorter than
// least, and no longer than most (m): PairRoom.
func Pair(a, b *Pulls, w quantity.Force, both, least, most quantity.Length) (hot, cold quantity.Length) {
	hot = a.Hot.Rest(Opposing{w, b.Cold.Rate, both - b.Cold.Free})
	cold = a.Cold.Rest(Opposing{w, b.Hot.Rate, both - b.Hot.Free})
	return min(max(hot, least), most), min(max(cold, least), most)
}

// OtherSlack returns the length (m) of a muscle at which the other one of a pair, f (m) long without pull, goes slack, when their far ends are b
// (m) apart.
func OtherSlack(b, f quantity.Length) quantity.Length { return b - f }

var OtherSlackEq = Equation{Symbol: "e", Expr: "B − f", Holds: "equal-pair", Source: &Geometry}

// PairLength returns the length (m) of a muscle of stiffness k (N/m) that is f (m) long without pull, against a weight w (N) and an equal muscle
// that is hot, c (N/m) stiff and h (m) long without pull then; cold, that one is slack when the muscle is e (m) long.
func PairLength(k quantity.Stiffness, f quantity.Length, w quantity.Force, c quantity.Stiffness, e, h quantity.Length) quantity.Length {
	return Settled(k, f, w, c, e+f-h)
}

var PairLengthEq = Equation{Symbol: "L", Expr: "(k × f + F + K × (e + f − h)) ÷ (k + K)", Holds: "equal-pair", Source: &Geometry, Grade: Estimate}

// HeldGain returns by how much more (N) than cold, c (N), a muscle pulls with b (N): on the middle of a pair that is held, or on any load.
func HeldGain(b, c quantity.Force) quantity.Force { return b - c }

var HeldGainEq = Equation{Symbol: "G", Expr: "F − c", Holds: "straight-line", Source: &Geometry, Grade: Estimate}

// SpringPull returns the pull (N) of the spring itself where each of n muscles pulls p (N), w (N) of it on the load, and the spring moves i times as
// far as they do.
func SpringPull(p, w quantity.Force, n quantity.Count, i quantity.Number) quantity.Force {
	return (p - w) * quantity.Force(n) / quantity.Force(i)
}

var SpringPullEq = Equation{Symbol: "Q", Expr: "(F − w) × n ÷ i", Holds: "shared-lever", Source: &Geometry, Grade: Estimate}

// PullAtLoad returns what n muscles of f (N) each leave for a load that moves i times as far as they do, and of which w (N) is on each. Where
// they are held all that pulls back at each is c (N): what of it isn't the load's, a spring or another muscle takes for itself. Below 0 that is more than they have.
func PullAtLoad(f, c, w quantity.Force, n quantity.Count, i quantity.Number) quantity.Force {
	return SpringPull(f, c-w, n, i)
}

var PullAtLoadEq = Equation{Symbol: "Q", Expr: "(F − c + w) × n ÷ i", Holds: "shared-lever", Source: &Geometry}

// SpringWork returns the work (J) of a pull that goes evenly from c to h (N) over a stroke s (m); of a weight both are the same (M16).
func SpringWork(c, h quantity.Force, s quantity.Length) quantity.Energy {
	return quantity.Energy(float64(c+h) / 2 * float64(s))
}

var SpringWorkEq = Equation{Symbol: "W", Expr: "(F + G) ÷ 2 × s", Holds: "even-pull", Source: &Geometry}

// SpecificWork returns the work w (J) per mass m (kg): of the fibre that works, without yarn and ends.
func SpecificWork(w quantity.Energy, m quantity.Mass) quantity.SpecificEnergy {
	return quantity.SpecificEnergy(float64(w) / positive(float64(m)))
}

var SpecificWorkEq = Equation{Symbol: "w", Expr: "W ÷ m", Holds: "active-fibre", Source: &Geometry}

// WorkPower returns the power (W) of a work w (J) in a time t (s): of the pull alone, or of a whole cycle.
func WorkPower(w quantity.Energy, t quantity.Time) quantity.Power {
	return quantity.Power(float64(w) / positive(float64(t)))
}

var WorkPowerEq = Equation{Symbol: "P", Expr: "W ÷ t", Holds: "that-time", Source: &Geometry}

// SpecificPower returns the power p (W) per mass m (kg) of the fibre that works.
func SpecificPower(p quantity.Power, m quantity.Mass) quantity.SpecificPower {
	return quantity.SpecificPower(float64(p) / positive(float64(m)))
}

var SpecificPowerEq = Equation{Symbol: "p", Expr: "P ÷ m", Holds: "active-fibre", Source: &Geometry}

// LeverPull returns the pull (N) that a load f (N) asks of a muscle when it moves i times as far.
func LeverPull(f quantity.Force, i quantity.Number) quantity.Force { return f * quantity.Force(i) }

var LeverPullEq = Equation{Symbol: "p", Expr: "F × i", Holds: "no-friction", Source: &Geometry}

// MusclePull returns the pull (N) on each of n muscles side by side that together hold a mass m (kg), which moves i times as far as they do.
func MusclePull(m quantity.Mass, i quantity.Number, n quantity.Count) quantity.Force {
	return LeverPull(HangingForce(m), i) / quantity.Force(n)
}

var MusclePullEq = Equation{Symbol: "p", Expr: "m × g × i ÷ n", Const: gravity, Holds: "shared-lever", Source: &Geometry}

// SpringAtMuscle returns how stiff (N/m) a spring of k (N/m) is to each of n muscles side by side, when its end moves i times as far as they do.
func SpringAtMuscle(k quantity.Stiffness, i quantity.Number, n quantity.Count) quantity.Stiffness {
	return LeverRate(k, i) / quantity.Stiffness(n)
}

var SpringAtMuscleEq = Equation{Symbol: "s", Expr: "k × i² ÷ n", Holds: "shared-lever", Source: &Geometry}

// LeverStroke returns how far (m) a load moves that goes i times as far as a muscle's stroke s (m).
func LeverStroke(s quantity.Length, i quantity.Number) quantity.Length {
	return s * quantity.Length(i)
}

var LeverStrokeEq = Equation{Symbol: "x", Expr: "s × i", Holds: "no-friction", Source: &Geometry}

// LeverRate returns how stiff (N/m) a spring of k (N/m) at the load is to the muscle.
func LeverRate(k quantity.Stiffness, i quantity.Number) quantity.Stiffness {
	return k * quantity.Stiffness(i*i)
}

var LeverRateEq = Equation{Symbol: "K", Expr: "k × i²", Holds: "no-friction", Source: &Geometry}

// PulleyTurn returns how far (rad) a stroke s (m) turns a pulley of radius r (m).
func PulleyTurn(s, r quantity.Length) quantity.Angle {
	return quantity.Angle(float64(s) / positive(float64(r)))
}

var PulleyTurnEq = Equation{Symbol: "φ", Expr: "s ÷ r", Holds: "no-slip", Source: &Geometry}

// ScaleForce returns the pull (N) on a mass on a scale that read a and then b (kg).
func ScaleForce(a, b quantity.Mass) quantity.Force { return HangingForce(a - b) }

var ScaleForceEq = Equation{Symbol: "F", Expr: "(a − b) × g", Const: gravity, Holds: "scale-still", Source: &Geometry}
