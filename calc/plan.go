package calc

import (
	"twistbench/calc/craft"
	"twistbench/calc/quantity"
)

// Strand is a fibre or yarn as it is bought, in SI.
type Strand struct {
	_ [0]func() // strands are not compared

	Polymer       quantity.Word
	Diameter      quantity.Length
	LinearDensity quantity.LinearDensity
	Area          quantity.Area
	Density       quantity.Density
	Strands       quantity.Count
	WeighedLength quantity.Length
	WeighedMass   quantity.Mass
}

// Plan is the quantities read from a Sheet and, after Solve, the worked-out members of each group; NaN where a number is
// unknown. It is never stored, and holds no pointer, so that a copy is a plan of its own.
type Plan struct {
	_ [0]func() // plans are not compared

	Given [NumGroups]Givens // the members of each group that were typed

	Fibre, Yarn   Strand
	DiameterDoubt quantity.Length
	LabelStrength quantity.Mass
	Bundle        quantity.Length

	Stress           quantity.Stress
	Mass, Add        quantity.Mass
	Force            quantity.Force
	Hook             quantity.Mass
	AreaBase         quantity.Word
	MassDoubt        quantity.Mass
	Owned            quantity.List
	Bottle           quantity.Mass
	Clearance, Stack quantity.Length
	TheirMass        quantity.Mass
	TheirDiameter    quantity.Length

	Ratio           quantity.Ratio
	RatioDoubt      quantity.RatioDoubt
	Precursor, Tail quantity.Length
	Pieces          quantity.Count
	Spare           quantity.Fraction
	TrialPrecursor  quantity.Length
	TrialCoiled     quantity.Length
	Lift            quantity.Mass
	LiftStress      quantity.Stress

	Bias                     quantity.Angle
	PerTwisted, PerPrecursor quantity.Twist
	Turns                    quantity.Turns
	Factor                   quantity.TwistFactor
	Hand, YarnHand           quantity.Word
	Speed                    quantity.Rotation
	TimedTurns               quantity.Turns
	Timed                    quantity.Time
	Counted                  quantity.Turns
	CountedPrecursor         quantity.Length
	Young, Shear             quantity.Stress
	OtherDiameter            quantity.Length

	Outside, Mean       quantity.Length
	Index               quantity.Number
	Pitch               quantity.Length
	Count               quantity.Turns
	PerLength           quantity.Twist
	Rod                 quantity.Length
	RodPitch, RodLength quantity.Length
	RodHand             quantity.Word

	Coiled, Measured        quantity.Length
	MeasuredState           quantity.Word
	Stages                  quantity.Word
	FirstStretch            quantity.Fraction
	SecondStretch           quantity.Fraction
	SecondBase              quantity.Word
	Relaxed                 quantity.Length
	First, Second, Finished quantity.Length
	Retained                quantity.Share
	RulerDoubt              quantity.Length
	Zero                    quantity.Length
	HolePitch, HoleOffset   quantity.Length

	Heat   Heating
	Wire   Wiring
	Drive  Driving
	Stroke Stroking

	ClockMode quantity.Word // what Day and Time are of
	Day       quantity.Day
	Time      quantity.Clock
	Broke     quantity.Turns

	// Worked out by Solve.
	LoadArea, SolidArea quantity.Area          // under load, and of all strands
	Before, Thickness   quantity.Length        // of the fibre or bundle, before twist and as twisted
	Contraction         quantity.Number        // precursor over twisted length
	Titre               quantity.LinearDensity // of all strands as twisted

	between float64 // where between the least and the most thickness a bundle is taken to be: 0 in the middle, ±1 at the ends

	jaws struct { // gaps that stay where they are while what the hand measured is moved by its doubt
		set           bool
		first, second quantity.Length
	}
}

// The words of the word fields, in the order of their lists in Fields.
const (
	PolymerNylon6 quantity.Word = iota
	PolymerNylon66
	PolymerPolyethylene
	PolymerPolyester
	PolymerPVDF
	PolymerOther
)

const (
	AreaMain quantity.Word = iota
	AreaAll
)

const (
	StateHeld quantity.Word = iota
	StateRelaxed
)

const (
	StagesTwo quantity.Word = iota
	StagesOne
)

const (
	BaseCoiled quantity.Word = iota
	BaseFirstGap
	BaseRelaxed
)

const (
	HandZ quantity.Word = iota
	HandS
)

const (
	YarnHandNone quantity.Word = iota
	YarnHandZ
	YarnHandS
)

const (
	RodSame quantity.Word = iota
	RodOpposite
)

const (
	ClockStart quantity.Word = iota // of the first step
	ClockReady                      // of the end of the last
)

// Piece returns the as-coiled length (m) of the piece at hand: as measured, or else as planned.
//
//go:noinline
func (p *Plan) Piece() quantity.Length {
	if known(p.Measured) {
		return p.Measured
	}
	return p.Coiled
}

// Base returns the length (m) that the second stretch is a stretch of. A relaxed length that was not measured yet is what the first
// heat-set is expected to leave.
func (p *Plan) Base() quantity.Length {
	switch {
	case p.SecondBase == BaseFirstGap:
		return p.First
	case p.SecondBase == BaseRelaxed && known(p.Relaxed):
		return p.Relaxed
	case p.SecondBase == BaseRelaxed:
		return craft.Released(p.Piece(), p.First, fraction(p.Retained))
	}
	return p.Piece()
}

// LastGap returns the gap (m) of the last heat-set.
func (p *Plan) LastGap() quantity.Length {
	if p.Stages == StagesOne {
		return p.First
	}
	return p.Second
}

// known reports whether x is a number.
func known[T ~float64](x T) bool { return x == x }
