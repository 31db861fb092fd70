package calc

import "twistbench/calc/craft"

// Working says how a number was worked out: an equation with the numbers that went in, or, where there is no equation, a
// method (a table looked up, a search) with its inputs. Terms are in the order of the equation's symbols.
type Working struct {
	Eq     *craft.Equation
	Terms  []ID
	Method string        // key of a sentence, "method." + Method; "" for an equation
	Source *craft.Source // of a method
}

var (
	areaOfDiameter     = Working{Eq: &craft.AreaEq, Terms: []ID{FibreDiameter}}
	diameterOfArea     = Working{Eq: &craft.DiameterEq, Terms: []ID{FibreArea}}
	areaOfTitre        = Working{Eq: &craft.AreaOfTitreEq, Terms: []ID{FibreLinearDensity, FibreDensity}}
	titreOfArea        = Working{Eq: &craft.LinearDensityEq, Terms: []ID{FibreDensity, FibreArea}}
	yarnAreaOfDiameter = Working{Eq: &craft.AreaEq, Terms: []ID{YarnDiameter}}
	yarnDiameterOfArea = Working{Eq: &craft.DiameterEq, Terms: []ID{YarnArea}}
	yarnAreaOfTitre    = Working{Eq: &craft.AreaOfTitreEq, Terms: []ID{YarnLinearDensity, YarnDensity}}
	yarnTitreOfArea    = Working{Eq: &craft.LinearDensityEq, Terms: []ID{YarnDensity, YarnArea}}

	forceOfStress = Working{Eq: &craft.ForceForStressEq, Terms: []ID{HangStress, HangLoadArea}}
	stressOfForce = Working{Eq: &craft.StressEq, Terms: []ID{HangForce, HangLoadArea}}
	forceOfMass   = Working{Eq: &craft.HangingForceEq, Terms: []ID{HangMass}}
	massOfForce   = Working{Eq: &craft.MassForForceEq, Terms: []ID{HangForce}}
	forceOfAdded  = Working{Eq: &craft.ForceForAddedEq, Terms: []ID{HangAdd, HangHook}}
	addedOfForce  = Working{Eq: &craft.AddedMassEq, Terms: []ID{HangForce, HangHook}}

	coiledOfPrecursor = Working{Eq: &craft.CoiledEq, Terms: []ID{CutPrecursor, CutRatio}}
	precursorOfCoiled = Working{Eq: &craft.PrecursorEq, Terms: []ID{ClampCoiled, CutRatio}}
	coiledOfFirst     = Working{Eq: &craft.OfFirstGapEq, Terms: []ID{ClampFirst, ClampFirstStretch}}
	firstOfPiece      = Working{Eq: &craft.FirstGapEq, Terms: []ID{ClampPiece, ClampFirstStretch}}
	secondOfBase      = Working{Eq: &craft.SecondGapEq, Terms: []ID{ClampBase, ClampSecondStretch}}
	finishedOfLast    = Working{Eq: &craft.ReleasedEq, Terms: []ID{ClampPiece, ClampRetained, ClampLast}}

	// back to the coil from the second gap and from the finished length, by second base
	coiledOfSecond = [...]Working{
		BaseCoiled:   {Eq: &craft.OfSecondGapEq, Terms: []ID{ClampSecond, ClampSecondStretch}},
		BaseFirstGap: {Eq: &craft.OfGapOfGapEq, Terms: []ID{ClampSecond, ClampFirstStretch, ClampSecondStretch}},
		BaseRelaxed:  {Eq: &craft.OfGapOfRelaxedEq, Terms: []ID{ClampSecond, ClampRetained, ClampFirstStretch, ClampSecondStretch}},
	}
	coiledOfFinished = [...]Working{
		BaseCoiled:   {Eq: &craft.OfReleasedCoiledEq, Terms: []ID{ClampFinished, ClampRetained, ClampSecondStretch}},
		BaseFirstGap: {Eq: &craft.OfReleasedGapEq, Terms: []ID{ClampFinished, ClampRetained, ClampFirstStretch, ClampSecondStretch}},
		BaseRelaxed:  {Eq: &craft.OfReleasedRelaxedEq, Terms: []ID{ClampFinished, ClampRetained, ClampFirstStretch, ClampSecondStretch}},
	}
	coiledOfFinishedOne = Working{Eq: &craft.OfReleasedOneEq, Terms: []ID{ClampFinished, ClampRetained, ClampFirstStretch}}

	oneStage        = Working{Method: "one-stage", Source: &craft.Geometry}
	pieceMeasured   = Working{Method: "measured", Source: &craft.Geometry, Terms: []ID{ClampMeasured}}
	piecePlanned    = Working{Method: "planned", Source: &craft.Geometry, Terms: []ID{ClampCoiled}}
	basePiece       = Working{Method: "base-coiled", Source: &craft.Geometry, Terms: []ID{ClampPiece}}
	baseFirst       = Working{Method: "base-first", Source: &craft.Geometry, Terms: []ID{ClampFirst}}
	baseRelaxed     = Working{Method: "measured", Source: &craft.Geometry, Terms: []ID{ClampRelaxed}}
	baseGuess       = Working{Eq: &craft.ReleasedEq, Terms: []ID{ClampPiece, ClampRetained, ClampFirst}}
	lastFirst       = Working{Method: "last", Source: &craft.Geometry, Terms: []ID{ClampFirst}}
	lastSecond      = Working{Method: "last", Source: &craft.Geometry, Terms: []ID{ClampSecond}}
	holeOfBase      = Working{Eq: &craft.StretchEq, Terms: []ID{ClampSecondHoleGap, ClampBase}}
	holeOfFirstHole = Working{Eq: &craft.StretchEq, Terms: []ID{ClampSecondHoleGap, ClampFirstHoleGap}}

	// where the density of each polymer is from
	bookDensities = [...]Working{
		{Method: "book-value", Source: &craft.FibreTables},
		{Method: "book-value", Source: &craft.FibreTables},
		{Method: "book-value", Source: &craft.FibreTables},
		{Method: "book-value", Source: &craft.FibreTables},
		{Method: "book-value", Source: &craft.Memory},
		{Method: "book-value", Source: &craft.Memory},
	}
)

func coiledOfSecondWorking(p *Plan) *Working {
	return either(p.Stages == StagesOne, &oneStage, &coiledOfSecond[p.SecondBase])
}

func secondWorking(p *Plan) *Working {
	return either(p.Stages == StagesOne, &oneStage, &secondOfBase)
}

func coiledOfFinishedWorking(p *Plan) *Working {
	return either(p.Stages == StagesOne, &coiledOfFinishedOne, &coiledOfFinished[p.SecondBase])
}

func pieceWorking(p *Plan) *Working {
	return either(known(p.Measured), &pieceMeasured, &piecePlanned)
}

func baseWorking(p *Plan) *Working {
	switch {
	case p.SecondBase == BaseFirstGap:
		return &baseFirst
	case p.SecondBase == BaseRelaxed && known(p.Relaxed):
		return &baseRelaxed
	case p.SecondBase == BaseRelaxed:
		return &baseGuess
	}
	return &basePiece
}

func lastWorking(p *Plan) *Working {
	return either(p.Stages == StagesOne, &lastFirst, &lastSecond)
}

func secondHoleWorking(p *Plan) *Working {
	return either(p.SecondBase == BaseFirstGap, &holeOfFirstHole, &holeOfBase)
}

// either returns one of two workings.
func either(yes bool, a, b *Working) *Working {
	if yes {
		return a
	}
	return b
}

// way is how one number follows from others: always alike, or by the plan.
type way struct {
	always *Working
	choose func(*Plan) *Working
}

func (w *way) of(p *Plan) *Working {
	if w.choose != nil {
		return w.choose(p)
	}
	return w.always
}

// workings returns how a field of a group was worked out: hub from the given, or from the other facts, and then the field from the hub.
// Either is nil where there is nothing to show: a typed field has none, and a hub that was typed needs no way in.
func workings(p *Plan, id ID) (in, out *Working) {
	g, ok := GroupOf(id)
	if !ok || p.Given[g].Has(id) {
		return nil, nil
	}
	fact := &Groups[g].Facts[Groups[g].Fact(id)]
	in = fact.Third.of(p)
	for i := range fact.Members {
		m := &fact.Members[i]
		if p.Given[g].Has(m.ID) {
			in = m.In.of(p)
		}
		if m.ID == id {
			out = m.Out.of(p)
		}
	}
	return in, out
}
