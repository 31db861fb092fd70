package calc

import (
	"twistbench/calc/craft"
	"twistbench/calc/quantity"
)

// The shape of the coil: mean diameter, pitch and ratio, of which two are given. The ratio is that of the piece at hand: once a piece is
// measured, its own.

// shapeRatio returns the ratio that the shape is worked out from.
func shapeRatio(p *Plan) quantity.Ratio {
	if known(p.Measured) {
		return craft.RatioOf(p.Precursor, p.Measured)
	}
	return p.Ratio
}

// pitchOfCount works the pitch out of a count of coils: on the coiled length, or, where that is not known before the ratio is, from the
// fibre in each coil.
func pitchOfCount(p *Plan) {
	if l := p.Piece(); known(l) {
		p.Pitch = craft.Pitch(l, p.Count)
		return
	}
	p.Pitch = craft.PitchOfTurn(p.Count, p.Precursor, p.Contraction, p.Mean)
}

// third works out the fact that no given says.
func third(p *Plan) {
	given := p.Given[ShapeGroup]
	switch {
	case narrow(p): // no coil is: it has no pitch and no ratio
	case !given.Has(CutRatio):
		p.Ratio = craft.RatioOfShape(p.Mean, p.Pitch, p.Contraction)
	case given.Has(CoilMean) || given.Has(CoilOutside) || given.Has(CoilIndex):
		p.Pitch = craft.PitchOfRatio(p.Mean, shapeRatio(p), p.Contraction)
	default:
		p.Mean = craft.DiameterOfRatio(p.Pitch, shapeRatio(p), p.Contraction)
	}
}

// narrow reports whether the mean diameter is under the thickness of the fibre.
func narrow(p *Plan) bool { return p.Mean < p.Thickness*justUnder }

// justUnder is the share of a length that is surely less than it, whatever was rounded.
const justUnder = 1 - 1e-9

func coilResults(p *Plan, r *Results) {
	r.CoilAngle = craft.PitchAngle(p.Mean, p.Pitch)
	r.TurnLength = craft.TurnLength(p.Mean, p.Pitch)
	r.CoilGap = craft.Clearance(p.Pitch, r.CoilAngle, p.Thickness)
	r.Writhe = craft.Writhe(p.Count, r.CoilAngle)
	r.AllTurns = craft.Link(p.Turns, r.Writhe)
	r.DrillTime = craft.DrillTime(r.AllTurns, p.Speed)
	r.SolidPitch = craft.SolidPitch(r.TurnLength, p.Thickness)
	r.Solid = craft.CoilLength(p.Count, r.SolidPitch)
	r.CoilTravelLength, r.CoilTravel = craft.Travel(r.Last, r.Solid), craft.TravelShare(r.Last, r.Solid)
	r.CoilFinTravel = craft.TravelShare(r.ThisFinished, r.Solid)
	r.LastPitch = craft.Pitch(r.Last, p.Count)
	r.LastMean = craft.MeanOfTurn(r.TurnLength, r.LastPitch)
	r.LastGap = craft.Clearance(r.LastPitch, craft.PitchAngle(r.LastMean, r.LastPitch), p.Thickness)
	r.ShapeRatio = craft.RatioOfShape(p.Mean, p.Pitch, p.Contraction)
}

// coilRest works out the answers of the coil that no ± is asked of.
func coilRest(p *Plan, r *Results) {
	r.AllPerPrecursor = craft.FullCoiling(p.PerTwisted, r.CoilAngle, r.TurnLength, p.Contraction)
	r.NearSolid = craft.NearSolidPitch(p.Thickness, r.CoilAngle)
	r.SolidMean = craft.MeanOfTurn(r.TurnLength, r.SolidPitch)
	b := &craft.SelfCoilModulus
	for i, e := range [3]quantity.Stress{b.Typical, b.Low, b.High} {
		r.LoadIndex[i] = craft.IndexAtLoad(e, p.Stress)
	}

	r.RodMean = craft.OnRod(p.Rod, p.Thickness)
	r.RodIndex = craft.Index(r.RodMean, p.Thickness)
	r.RodAngle = craft.PitchAngle(r.RodMean, p.RodPitch)
	r.RodGap = craft.Clearance(p.RodPitch, r.RodAngle, p.Thickness)
	r.RodCount = craft.Coils(p.RodLength, p.RodPitch)
	r.RodFibre = craft.RodFibre(p.RodLength, r.RodMean, p.RodPitch)
	r.RodPrecursor = craft.Untwisted(r.RodFibre, p.Contraction)
	if r.RodLimit = quantity.Fraction(quantity.NaN); p.RodHand == RodSame {
		r.RodLimit = craft.ClosingLimit(p.RodPitch, craft.SolidPitch(craft.TurnLength(r.RodMean, p.RodPitch), p.Thickness))
	}
}

var (
	meanOfOutside    = Working{Eq: &craft.MeanDiameterEq, Terms: []ID{CoilOutside, TwistThickness}}
	outsideOfMean    = Working{Eq: &craft.OuterDiameterEq, Terms: []ID{CoilMean, TwistThickness}}
	meanOfIndex      = Working{Eq: &craft.MeanOfIndexEq, Terms: []ID{CoilIndex, TwistThickness}}
	indexOfMean      = Working{Eq: &craft.IndexEq, Terms: []ID{CoilMean, TwistThickness}}
	pitchOfCounted   = Working{Eq: &craft.PitchEq, Terms: []ID{ClampPiece, CoilCount}}
	pitchOfTurn      = Working{Eq: &craft.PitchOfTurnEq, Terms: []ID{CutPrecursor, TwistContraction, CoilCount, CoilMean}}
	countOfPitch     = Working{Eq: &craft.CoilsEq, Terms: []ID{ClampPiece, CoilPitch}}
	pitchOfPerLength = Working{Eq: &craft.PitchOfCoilsEq, Terms: []ID{CoilPerLength}}
	perLengthOfPitch = Working{Eq: &craft.CoilsPerLengthEq, Terms: []ID{CoilPitch}}
	ratioOfShape     = Working{Eq: &craft.RatioOfShapeEq, Terms: []ID{TwistContraction, CoilMean, CoilPitch}}
	meanOfPlanned    = Working{Eq: &craft.DiameterOfRatioEq, Terms: []ID{CoilPitch, CutRatio, TwistContraction}}
	meanOfMeasured   = Working{Eq: &craft.DiameterOfRatioEq, Terms: []ID{CoilPitch, ClampThisRatio, TwistContraction}}
	pitchOfPlanned   = Working{Eq: &craft.PitchOfRatioEq, Terms: []ID{CoilMean, CutRatio, TwistContraction}}
	pitchOfMeasured  = Working{Eq: &craft.PitchOfRatioEq, Terms: []ID{CoilMean, ClampThisRatio, TwistContraction}}

	touchingWorking = Working{Method: "touching", Source: &craft.Geometry, Terms: []ID{CoilTurnLength, TwistThickness}}
	rodTouching     = Working{Method: "touching", Source: &craft.Geometry, Terms: []ID{CoilRodMean, CoilRodPitch, TwistThickness}}
	loadIndexBand   = Working{Method: "index-band", Source: &craft.SelfCoil, Terms: []ID{HangStress}}
)
