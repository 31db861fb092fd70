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

// always returns the choice of a working that does not depend on the plan.
func always(w *Working) func(*Plan) *Working { return func(*Plan) *Working { return w } }

// pieced chooses between the working for the planned coil and for the measured one.
func pieced(planned, measured *Working) func(*Plan) *Working {
	return func(p *Plan) *Working {
		if known(p.Measured) {
			return measured
		}
		return planned
	}
}

// sizeIDs are the fields of one strand's size group.
type sizeIDs struct{ diameter, titre, area, density ID }

var (
	fibreSize = sizeIDs{FibreDiameter, FibreLinearDensity, FibreArea, FibreDensity}
	yarnSize  = sizeIDs{YarnDiameter, YarnLinearDensity, YarnArea, YarnDensity}
)

// sizeMembers makes the members of a size group: the fibre's and the companion's are the same relations.
func sizeMembers(strand func(*Plan) *Strand, id *sizeIDs) []Member {
	return []Member{
		{ID: id.area},
		{
			ID:      id.diameter,
			ToHub:   func(p *Plan) { s := strand(p); s.Area = craft.Area(s.Diameter) },
			FromHub: func(p *Plan) { s := strand(p); s.Diameter = craft.Diameter(s.Area) },
			In:      always(&Working{Eq: &craft.AreaEq, Terms: []ID{id.diameter}}),
			Out:     always(&Working{Eq: &craft.DiameterEq, Terms: []ID{id.area}}),
		},
		{
			ID:      id.titre,
			ToHub:   func(p *Plan) { s := strand(p); s.Area = craft.AreaOfTitre(s.LinearDensity, s.Density) },
			FromHub: func(p *Plan) { s := strand(p); s.LinearDensity = craft.LinearDensity(s.Area, s.Density) },
			In:      always(&Working{Eq: &craft.AreaOfTitreEq, Terms: []ID{id.titre, id.density}}),
			Out:     always(&Working{Eq: &craft.LinearDensityEq, Terms: []ID{id.density, id.area}}),
		},
	}
}

var (
	firstGap        = Working{Eq: &craft.FirstGapEq, Terms: []ID{ClampCoiled, ClampFirstStretch}}
	firstGapOfPiece = Working{Eq: &craft.FirstGapEq, Terms: []ID{ClampMeasured, ClampFirstStretch}}

	// by second base
	ofSecond = [...]Working{
		BaseCoiled:   {Eq: &craft.OfSecondGapEq, Terms: []ID{ClampSecond, ClampSecondStretch}},
		BaseFirstGap: {Eq: &craft.OfGapOfGapEq, Terms: []ID{ClampSecond, ClampFirstStretch, ClampSecondStretch}},
		BaseRelaxed:  {Eq: &craft.OfGapOfRelaxedEq, Terms: []ID{ClampSecond, ClampRetained, ClampFirstStretch, ClampSecondStretch}},
	}
	ofFinished = [...]Working{
		BaseCoiled:   {Eq: &craft.OfReleasedCoiledEq, Terms: []ID{ClampFinished, ClampRetained, ClampSecondStretch}},
		BaseFirstGap: {Eq: &craft.OfReleasedGapEq, Terms: []ID{ClampFinished, ClampRetained, ClampFirstStretch, ClampSecondStretch}},
		BaseRelaxed:  {Eq: &craft.OfReleasedRelaxedEq, Terms: []ID{ClampFinished, ClampRetained, ClampFirstStretch, ClampSecondStretch}},
	}
	ofFinishedOne = Working{Eq: &craft.OfReleasedOneEq, Terms: []ID{ClampFinished, ClampRetained, ClampFirstStretch}}

	secondGap          = Working{Eq: &craft.SecondGapEq, Terms: []ID{ClampCoiled, ClampSecondStretch}}
	secondGapOfPiece   = Working{Eq: &craft.SecondGapEq, Terms: []ID{ClampMeasured, ClampSecondStretch}}
	secondGapOfGap     = Working{Eq: &craft.GapOfGapEq, Terms: []ID{ClampFirst, ClampSecondStretch}}
	secondGapOfRelaxed = Working{Eq: &craft.GapOfRelaxedEq, Terms: []ID{ClampRelaxed, ClampSecondStretch}}
	secondGapGuess     = Working{Eq: &craft.GapOfEstimatedEq, Terms: []ID{ClampCoiled, ClampRetained, ClampFirstStretch, ClampSecondStretch}}
	secondGapGuessed   = Working{Eq: &craft.GapOfEstimatedEq, Terms: []ID{ClampMeasured, ClampRetained, ClampFirstStretch, ClampSecondStretch}}
	oneStage           = Working{Method: "one-stage", Source: craft.Geometry}

	// by stages and by whether the coil was measured
	released = [...][2]Working{
		StagesTwo: {
			{Eq: &craft.ReleasedEq, Terms: []ID{ClampCoiled, ClampRetained, ClampSecond}},
			{Eq: &craft.ReleasedEq, Terms: []ID{ClampMeasured, ClampRetained, ClampSecond}},
		},
		StagesOne: {
			{Eq: &craft.ReleasedEq, Terms: []ID{ClampCoiled, ClampRetained, ClampFirst}},
			{Eq: &craft.ReleasedEq, Terms: []ID{ClampMeasured, ClampRetained, ClampFirst}},
		},
	}
)

func secondWorking(p *Plan) *Working {
	switch {
	case p.Stages == StagesOne:
		return &oneStage
	case p.SecondBase == BaseFirstGap:
		return &secondGapOfGap
	case p.SecondBase == BaseRelaxed && known(p.Relaxed):
		return &secondGapOfRelaxed
	case p.SecondBase == BaseRelaxed && known(p.Measured):
		return &secondGapGuessed
	case p.SecondBase == BaseRelaxed:
		return &secondGapGuess
	case known(p.Measured):
		return &secondGapOfPiece
	}
	return &secondGap
}

func finishedIn(p *Plan) *Working {
	if p.Stages == StagesOne {
		return &ofFinishedOne
	}
	return &ofFinished[p.SecondBase]
}

func finishedOut(p *Plan) *Working { return &released[p.Stages][measured(p)] }

// measured returns 1 where the coil was measured, else 0: an index into pairs of workings.
func measured(p *Plan) int {
	if known(p.Measured) {
		return 1
	}
	return 0
}

// workings returns how a field of a group was worked out: hub from the given, and then the field from the hub. Either is nil
// where there is nothing to show: a typed field has none, and a hub that was typed needs no way in.
func workings(p *Plan, id ID) (in, out *Working) {
	g, ok := GroupOf(id)
	if !ok {
		return nil, nil
	}
	given := p.Given[g]
	for i := range Groups[g].Members {
		m := &Groups[g].Members[i]
		if m.ID == given && m.In != nil {
			in = m.In(p)
		}
		if m.ID == id && m.Out != nil {
			out = m.Out(p)
		}
	}
	if id == given {
		return nil, nil
	}
	return in, out
}

// bookDensities says, for each polymer, where its density is from.
var bookDensities = func() (w []Working) {
	for i := range craft.Polymers {
		w = append(w, Working{Method: "book-value", Source: craft.Polymers[i].Source})
	}
	return w
}()
