package calc

import "twistbench/calc/quantity"

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
	Given [NumGroups]ID // the member of each group that was typed; None where none was

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

	LoadArea, SolidArea quantity.Area // worked out by Solve: under load, and of all strands

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

// Piece returns the as-coiled length (m) of the piece at hand: as measured, or else as planned.
func (p *Plan) Piece() quantity.Length {
	if known(p.Measured) {
		return p.Measured
	}
	return p.Coiled
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
