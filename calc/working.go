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

// either returns one of two workings.
func either(yes bool, a, b *Working) *Working {
	if yes {
		return a
	}
	return b
}

// supplyBook returns where the limits of the supply are from.
//
//go:noinline
func supplyBook(p *Plan) *Working { return either(p.Wire.Supply < SupplyBank, &bookSupply, &bookBank) }

// choice returns how a number was worked out where that depends on the plan: an answer, or a member of a group from its hub.
func choice(p *Plan, id ID) *Working {
	yarn, bundle, measured, own, one := p.Yarn.Strands > 0, known(p.Bundle), known(p.Measured), known(p.Counted), p.Stages == StagesOne
	switch id {
	case FibreSolidArea:
		return either(yarn, &allAreas, &mainArea)
	case FibreThick:
		return either(yarn, &envelopeAll, &envelopeMain)
	case HangLoadArea:
		return either(yarn && p.AreaBase == AreaAll, &allAreas, &mainArea)
	case TwistBias:
		return either(bundle, &biasOfMeasured, &biasOfEstimated)
	case TwistBefore:
		return either(bundled(p), &beforeBundle, &beforeOne)
	case TwistThickness:
		return either(bundle, &thicknessMeasured, &thicknessEstimated)
	case TwistTitre:
		return either(yarn && known(p.Yarn.LinearDensity), &titreAll, &titreMain)
	case TwistMost:
		return either(bundle, &mostMeasured, &mostEstimated)
	case TwistOnset:
		if own {
			return either(known(p.CountedPrecursor), &onsetOwn, &onsetOwnHere)
		}
		return onsetTurnsWorking(p, 0)
	case TwistOnsetLeast:
		return either(own, &onsetOwnBand, onsetTurnsWorking(p, 1))
	case TwistOnsetMost:
		return either(own, &onsetOwnBand, onsetTurnsWorking(p, 2))
	case TwistSlow:
		return either(own, &slowOwn, &slowLeast)
	case ClampPiece:
		return either(measured, &pieceMeasured, &piecePlanned)
	case ClampBase:
		switch {
		case p.SecondBase == BaseCoiled:
			return &basePiece
		case p.SecondBase == BaseFirstGap:
			return &baseFirst
		}
		return either(known(p.Relaxed), &baseRelaxed, &baseGuess)
	case ClampLast:
		return either(one, &lastFirst, &lastSecond)
	case ClampSecond:
		return either(one, &oneStage, &secondOfBase)
	case ClampSecondHoleStretch:
		return either(p.SecondBase == BaseFirstGap, &holeOfFirstHole, &holeOfBase)
	case HeatDial:
		return either(oven(&p.Heat).N == 0, &dialAsWanted, &dialOfLine)
	case HeatMeanDial, HeatMeanProbe, HeatSlope: // where the line of the oven is from
		return either(known(oven(&p.Heat).Slope), &lineFit, &oneReading)
	case WireLength:
		return either(p.Wire.Route == RouteWrapped, &yarnWrapped, &yarnAlong)
	case WireOwnVoltage:
		return supplyBook(p)
	case WireLasts:
		return either(p.Wire.beside, &lastsBeside, &lastsAlone)
	case WireDummy:
		return either(p.Wire.rests(), &dummyAlone, &dummyBeside)
	case HeatTotal:
		return either(one, &oneStaged, &twoStaged)
	case StrokeFree, StrokeHotFree, StrokeColdRate, StrokeHotRate, StrokeBack, StrokeSlackAt, StrokeStroke, StrokeLeast, StrokeMost, StrokeShareLeast, StrokeShareMost,
		StrokeBlocked, StrokeOther, StrokePower, StrokeColdFree, StrokeColdLength, StrokeHotLength, StrokeColdPull, StrokeHotPull:
		return strokeChoice(p, id)
	case DriveHottest, DriveCoolest, DriveStuck, DriveHoldLeast, DriveHoldMost:
		return balance(p)
	case DriveBookLeast, DriveBookMost:
		return &balances[p.Drive.Way]
	case DriveTrialLoss:
		return either(known(p.Drive.Curve.N) || !p.Drive.settled(), &lossOfCurve, &lossOfSteady)
	}
	return nil
}

// choiceIn returns the same of a hub: from a given, or, of a fact that no given says, from the other facts.
func choiceIn(p *Plan, id ID) *Working {
	measured, one := known(p.Measured), p.Stages == StagesOne
	switch id {
	case CoilMean:
		return either(measured, &meanOfMeasured, &meanOfPlanned)
	case CoilPitch:
		return either(measured, &pitchOfMeasured, &pitchOfPlanned)
	case CoilCount:
		return either(p.Given[LengthGroup].Has(CutPrecursor) && !measured && !p.Given[ShapeGroup].Has(CutRatio), &pitchOfTurn, &pitchOfCounted)
	case ClampSecond:
		return either(one, &oneStage, &coiledOfSecond[p.SecondBase])
	case ClampFinished:
		return either(one, &coiledOfFinishedOne, &coiledOfFinished[p.SecondBase])
	}
	return nil
}

// workings returns how a field of a group was worked out: hub from the given, or from the other facts, and then the field from the hub.
// Either is nil where there is nothing to show: a typed field has none, and a hub that was typed needs no way in.
func workings(p *Plan, id ID) (in, out *Working) {
	g, ok := GroupOf(id)
	if !ok || p.Given[g].Has(id) {
		return nil, nil
	}
	fact := &Groups[g].Facts[Groups[g].Fact(id)]
	in, from := fact.Third, fact.Hub
	for i := range fact.Members {
		m := &fact.Members[i]
		if p.Given[g].Has(m.ID) {
			in, from = m.In, m.ID
		}
		if m.ID == id {
			out = m.Out
		}
	}
	if in == nil && !p.Given[g].Has(fact.Hub) {
		in = choiceIn(p, from)
	}
	if out == nil {
		out = choice(p, id)
	}
	return in, out
}
