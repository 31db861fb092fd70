package calc

import (
	"twistbench/calc/craft"
	"twistbench/calc/quantity"
)

// Strand is a fibre or yarn as it is bought, in SI.
type Strand struct {
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

	Broke quantity.Turns

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

// Value returns where the plan keeps a field. (One switch is a quarter of what a function for each row of Fields would take of the page's
// program.)
func (p *Plan) Value(id ID) quantity.Value {
	f := &p.Fibre // asks once whether p is nil, and not in every case
	switch id {
	case FibrePolymer:
		return &f.Polymer
	case FibreDiameter:
		return &f.Diameter
	case FibreDiameterDoubt:
		return &p.DiameterDoubt
	case FibreLinearDensity:
		return &f.LinearDensity
	case FibreArea:
		return &f.Area
	case FibreDensity:
		return &f.Density
	case FibreStrands:
		return &f.Strands
	case FibreWeighedLength:
		return &f.WeighedLength
	case FibreWeighedMass:
		return &f.WeighedMass
	case FibreLabelStrength:
		return &p.LabelStrength
	case FibreBundle:
		return &p.Bundle
	case YarnStrands:
		return &p.Yarn.Strands
	case YarnPolymer:
		return &p.Yarn.Polymer
	case YarnDiameter:
		return &p.Yarn.Diameter
	case YarnLinearDensity:
		return &p.Yarn.LinearDensity
	case YarnArea:
		return &p.Yarn.Area
	case YarnDensity:
		return &p.Yarn.Density
	case YarnWeighedLength:
		return &p.Yarn.WeighedLength
	case YarnWeighedMass:
		return &p.Yarn.WeighedMass
	case HangStress:
		return &p.Stress
	case HangMass:
		return &p.Mass
	case HangAdd:
		return &p.Add
	case HangForce:
		return &p.Force
	case HangHook:
		return &p.Hook
	case HangArea:
		return &p.AreaBase
	case HangMassDoubt:
		return &p.MassDoubt
	case HangOwned:
		return &p.Owned
	case HangBottle:
		return &p.Bottle
	case HangClearance:
		return &p.Clearance
	case HangStack:
		return &p.Stack
	case HangTheirMass:
		return &p.TheirMass
	case HangTheirDiameter:
		return &p.TheirDiameter
	case CutRatio:
		return &p.Ratio
	case CutRatioDoubt:
		return &p.RatioDoubt
	case CutPrecursor:
		return &p.Precursor
	case CutTail:
		return &p.Tail
	case CutPieces:
		return &p.Pieces
	case CutSpare:
		return &p.Spare
	case CutTrialPrecursor:
		return &p.TrialPrecursor
	case CutTrialCoiled:
		return &p.TrialCoiled
	case CutLift:
		return &p.Lift
	case CutLiftStress:
		return &p.LiftStress
	case TwistBias:
		return &p.Bias
	case TwistPerTwisted:
		return &p.PerTwisted
	case TwistPerPrecursor:
		return &p.PerPrecursor
	case TwistTurns:
		return &p.Turns
	case TwistFactor:
		return &p.Factor
	case TwistHand:
		return &p.Hand
	case TwistYarnHand:
		return &p.YarnHand
	case TwistSpeed:
		return &p.Speed
	case TwistTimedTurns:
		return &p.TimedTurns
	case TwistTimed:
		return &p.Timed
	case TwistCounted:
		return &p.Counted
	case TwistCountedPrecursor:
		return &p.CountedPrecursor
	case TwistYoung:
		return &p.Young
	case TwistShear:
		return &p.Shear
	case TwistOtherDiameter:
		return &p.OtherDiameter
	case CoilOutside:
		return &p.Outside
	case CoilMean:
		return &p.Mean
	case CoilIndex:
		return &p.Index
	case CoilPitch:
		return &p.Pitch
	case CoilCount:
		return &p.Count
	case CoilPerLength:
		return &p.PerLength
	case CoilRod:
		return &p.Rod
	case CoilRodPitch:
		return &p.RodPitch
	case CoilRodLength:
		return &p.RodLength
	case CoilRodHand:
		return &p.RodHand
	case ClampCoiled:
		return &p.Coiled
	case ClampMeasured:
		return &p.Measured
	case ClampMeasuredState:
		return &p.MeasuredState
	case ClampStages:
		return &p.Stages
	case ClampFirstStretch:
		return &p.FirstStretch
	case ClampSecondStretch:
		return &p.SecondStretch
	case ClampSecondBase:
		return &p.SecondBase
	case ClampRelaxed:
		return &p.Relaxed
	case ClampFirst:
		return &p.First
	case ClampSecond:
		return &p.Second
	case ClampRetained:
		return &p.Retained
	case ClampFinished:
		return &p.Finished
	case ClampRulerDoubt:
		return &p.RulerDoubt
	case ClampZero:
		return &p.Zero
	case ClampHolePitch:
		return &p.HolePitch
	case ClampHoleOffset:
		return &p.HoleOffset
	case TroubleBroke:
		return &p.Broke
	}
	return nil
}
