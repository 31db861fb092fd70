package calc

import (
	"twistbench/calc/craft"
	"twistbench/calc/quantity"
)

// Twist: from the given to turns per metre of precursor, the hub, and from there to the rest. The thickness is the measured one or else the
// estimate, which follows the bias angle.

// untwisted works out the thickness before twist: the diameter of one strand, and of several what lies between the least and the most.
func untwisted(p *Plan) {
	p.Before = p.Fibre.Diameter
	if bundled(p) {
		least := craft.BundleDiameter(p.SolidArea)
		most := craft.BundleEnvelope(p.Fibre.Strands, p.Fibre.Diameter, p.Yarn.Strands, p.Yarn.Diameter)
		p.Before = (least+most)/2 + quantity.Length(p.between)*(most-least)/2
	}
}

// twisted works out the bias angle where it is not the given, and what follows from it.
func twisted(p *Plan) {
	if !p.Given[TwistGroup].Has(TwistBias) {
		if known(p.Bundle) {
			p.Bias = craft.BiasOfPrecursorTwist(p.PerPrecursor, p.Bundle)
		} else {
			p.Bias = craft.BiasOfPrecursorTwistUntwisted(p.PerPrecursor, p.Before)
		}
	}
	p.Contraction = craft.Contraction(p.Bias)
	p.Thickness = thickness(p, p.Contraction)
	p.Titre = craft.TwistedTitre(titre(p), p.Contraction)
}

// thickness returns the thickness as twisted (m) at a contraction factor: as measured, or else at constant volume.
func thickness(p *Plan, c quantity.Number) quantity.Length {
	if known(p.Bundle) {
		return p.Bundle
	}
	return craft.TwistedThickness(p.Before, c)
}

// titre returns the linear density of all strands before twist (kg/m).
func titre(p *Plan) quantity.LinearDensity {
	t := p.Fibre.LinearDensity * quantity.LinearDensity(p.Fibre.Strands)
	if p.Yarn.Strands > 0 && known(p.Yarn.LinearDensity) {
		t += p.Yarn.LinearDensity * quantity.LinearDensity(p.Yarn.Strands)
	}
	return t
}

func perPrecursorOfBias(p *Plan) {
	p.PerPrecursor = craft.PrecursorTwist(p.Bias, thickness(p, craft.Contraction(p.Bias)))
}

func perPrecursorOfTwisted(p *Plan) {
	a := craft.BiasUntwisted(p.PerTwisted, p.Before)
	if known(p.Bundle) {
		a = craft.Bias(p.PerTwisted, p.Bundle)
	}
	p.PerPrecursor = craft.PrecursorOfTwist(p.PerTwisted, craft.Contraction(a))
}

func perPrecursorOfFactor(p *Plan) {
	u := titre(p)
	a := craft.BiasOfFactorUntwisted(p.Factor, p.Before, u)
	if known(p.Bundle) {
		a = craft.BiasOfFactorAt(p.Factor, p.Bundle, u)
	}
	c := craft.Contraction(a)
	p.PerPrecursor = craft.PrecursorOfTwist(craft.TwistOfFactor(p.Factor, craft.TwistedTitre(u, c)), c)
}

// counted works out the turns and the coils in a whole piece, where they are not the given.
func counted(p *Plan) {
	if !p.Given[TwistGroup].Has(TwistTurns) {
		p.Turns = craft.TurnsIn(p.PerPrecursor, p.Precursor)
	}
	if !p.Given[ShapeGroup].Has(CoilCount) {
		p.Count = craft.Coils(p.Piece(), p.Pitch)
	}
}

// CountDoubt is by how much own counts of the first coil differ from piece to piece, as a share: from memory.
const CountDoubt = 0.1

// SlowShare is the share of one's own count of turns at the first coil from which to turn slowly: common practice.
const SlowShare = 0.8

// moduli returns the moduli of the fibre: the book's with their band, or typed ones, which have none.
func moduli(p *Plan) craft.Moduli {
	m := *craft.DrawnModuli[p.Fibre.Polymer]
	if p.Young != m.Young.Typical {
		m.Young = craft.Band{Low: p.Young, Typical: p.Young, High: p.Young}
	}
	if p.Shear != m.Shear.Typical {
		m.Shear = craft.Band{Low: p.Shear, Typical: p.Shear, High: p.Shear}
	}
	return m
}

// onsetBiases returns the bias angles at which the first coil is expected: typical, least and most.
func onsetBiases(p *Plan) [3]quantity.Angle {
	m := moduli(p)
	low, typical, high := m.Onset(p.Stress)
	return [3]quantity.Angle{typical, low, high}
}

// onset works out at how many turns the first coil is expected: by one's own count, or else by the band of the book.
func onset(p *Plan, r *Results) {
	r.OnsetBias = onsetBiases(p)
	if known(p.Counted) {
		own := craft.SameOnset(p.Counted, p.Precursor, trialPrecursor(p))
		r.Onset = [3]quantity.Turns{own, own * (1 - CountDoubt), own * (1 + CountDoubt)}
		r.Slow = own * SlowShare
		return
	}
	for i, a := range r.OnsetBias {
		r.Onset[i] = craft.OnsetTurns(p.Precursor, a, p.Before)
	}
	r.Slow = r.Onset[1]
}

// trialPrecursor returns the precursor (m) in which turns were counted: this plan's, unless another is typed.
func trialPrecursor(p *Plan) quantity.Length {
	if known(p.CountedPrecursor) {
		return p.CountedPrecursor
	}
	return p.Precursor
}

// twistRest works out the answers of the twist that no ± is asked of.
func twistRest(p *Plan, r *Results) {
	r.Shortening = craft.Retraction(p.Contraction)
	r.Straight = craft.TwistedLength(p.Precursor, p.Contraction)
	r.Strain = craft.SurfaceShear(p.Bias)
	r.MostTwist = craft.MostPrecursorTwist(p.Before)
	if known(p.Bundle) {
		r.MostTwist = 2 * craft.MostPrecursorTwist(p.Bundle)
	}
	r.TimedSpeed = craft.DrillSpeed(p.TimedTurns, p.Timed)
	onset(p, r)
	r.SlowTime = craft.DrillTime(r.Slow, p.Speed)
}

var (
	perPrecursorOfBiasEq    = Working{Eq: &craft.PrecursorTwistEq, Terms: []ID{TwistBias, TwistThickness}}
	biasOfMeasured          = Working{Eq: &craft.BiasOfPrecursorTwistEq, Terms: []ID{TwistThickness, TwistPerPrecursor}}
	biasOfEstimated         = Working{Eq: &craft.BiasOfPrecursorTwistUntwistedEq, Terms: []ID{TwistBefore, TwistPerPrecursor}}
	perPrecursorOfTwistedEq = Working{Eq: &craft.PrecursorOfTwistEq, Terms: []ID{TwistPerTwisted, TwistContraction}}
	perTwistedOfBiasEq      = Working{Eq: &craft.TwistForBiasEq, Terms: []ID{TwistBias, TwistThickness}}
	perPrecursorOfTurns     = Working{Eq: &craft.TwistOfTurnsEq, Terms: []ID{TwistTurns, CutPrecursor}}
	turnsOfPerPrecursor     = Working{Eq: &craft.TurnsInEq, Terms: []ID{TwistPerPrecursor, CutPrecursor}}
	perPrecursorOfFactorEq  = Working{Eq: &craft.PrecursorOfFactorEq, Terms: []ID{TwistFactor, TwistContraction, TwistTitre}}
	factorOfTwisted         = Working{Eq: &craft.FactorOfTwistEq, Terms: []ID{TwistPerTwisted, TwistTitre}}

	beforeOne          = Working{Method: "one-strand", Source: &craft.Geometry, Terms: []ID{FibreDiameter}}
	beforeBundle       = Working{Eq: &craft.MiddleEq, Terms: []ID{FibreThin, FibreThick}}
	thicknessMeasured  = Working{Method: "measured", Source: &craft.Geometry, Terms: []ID{FibreBundle}}
	thicknessEstimated = Working{Eq: &craft.TwistedThicknessEq, Terms: []ID{TwistBefore, TwistContraction}}
	titreMain          = Working{Eq: &craft.TitreOfStrandsEq, Terms: []ID{TwistContraction, FibreStrands, FibreLinearDensity}}
	titreAll           = Working{Eq: &craft.TitreOfAllEq, Terms: []ID{TwistContraction, FibreStrands, FibreLinearDensity, YarnStrands, YarnLinearDensity}}
	mostMeasured       = Working{Eq: &craft.MostTwistMeasuredEq, Terms: []ID{TwistThickness}}
	mostEstimated      = Working{Eq: &craft.MostTwistEq, Terms: []ID{TwistBefore}}

	onsetBias     = Working{Eq: &craft.OnsetBiasEq, Terms: []ID{TwistYoung, HangStress, TwistShear}}
	onsetBiasBand = Working{Method: "onset-band", Source: &craft.TorsionTables, Terms: []ID{TwistYoung, TwistShear, HangStress}}
	onsetTurns    = [3]Working{
		{Eq: &craft.OnsetTurnsEq, Terms: []ID{CutPrecursor, TwistOnsetBias, TwistBefore}},
		{Eq: &craft.OnsetTurnsEq, Terms: []ID{CutPrecursor, TwistOnsetBiasLeast, TwistBefore}},
		{Eq: &craft.OnsetTurnsEq, Terms: []ID{CutPrecursor, TwistOnsetBiasMost, TwistBefore}},
	}
	onsetMost    = Working{Eq: &craft.MostTurnsEq, Terms: []ID{CutPrecursor, TwistBefore}}
	onsetOwn     = Working{Eq: &craft.SameOnsetEq, Terms: []ID{TwistCounted, CutPrecursor, TwistCountedPrecursor}}
	onsetOwnHere = Working{Method: "own-count", Source: &craft.Geometry, Terms: []ID{TwistCounted}}
	onsetOwnBand = Working{Method: "own-band", Source: &craft.Memory, Terms: []ID{TwistOnset}}
	slowOwn      = Working{Method: "slow-own", Source: &craft.Common, Terms: []ID{TwistOnset}}
	slowLeast    = Working{Method: "slow-least", Source: &craft.Common, Terms: []ID{TwistOnsetLeast}}
	bookModuli   = Working{Method: "book-value", Source: &craft.TorsionTables}
)

// onsetTurnsWorking returns how the typical, least or most turns are worked out: so many turns as the fibre takes at all, where its moduli
// ask for a steeper angle than it has.
func onsetTurnsWorking(p *Plan, i int) *Working {
	return either(onsetBiases(p)[i] > craft.SteepestBias, &onsetMost, &onsetTurns[i])
}
