package calc

import "twistbench/calc/craft"

// GroupID names a group of fields that say the same facts in several ways.
type GroupID uint8

const (
	SizeGroup GroupID = iota
	YarnSizeGroup
	HangGroup
	TwistGroup
	ShapeGroup
	LengthGroup

	NumGroups
)

// Group is a set of fields of which some are given and the others follow. Most groups say one fact, so that one member is the given. The
// shape of a coil is three facts, of which two are free: any two of mean diameter, pitch and ratio, each said by any of its members.
type Group struct {
	Facts   []Fact
	Before  func(*Plan) // what must be known before the group can be worked out
	Between func(*Plan) // the fact that no given says, from the others
	After   func(*Plan) // what stays as it is although the group would move it
}

// Fact is one of the facts of a group: fields that follow from each other, all through one quantity, the hub. The hub itself is a member
// with neither way.
type Fact struct {
	Hub     ID
	Members []Member
	Third   way // how the hub follows from the other facts, where none of its members is given
}

// Member is one field of a group. ToHub works the hub out from it, FromHub the field from the hub; the workings say how, as it is shown.
type Member struct {
	ID      ID
	ToHub   func(*Plan)
	FromHub func(*Plan)
	In      way // given -> hub
	Out     way // hub -> member
}

// Givens are the members of a group that were typed, oldest first; None where there is none. They are of different facts, and at least one
// fact follows from the others.
type Givens [2]ID

// Has reports whether id is one of the givens.
//
//go:noinline
func (g Givens) Has(id ID) bool { return id != None && (g[0] == id || g[1] == id) }

// open reports whether a group has room for id as one more given: too few are, and none says the same fact.
func (g Givens) open(group *Group, id ID) bool {
	for _, given := range g {
		if given != None && group.Fact(given) == group.Fact(id) {
			return false
		}
	}
	return g[group.Free()-1] == None
}

// Free returns how many givens the group takes.
func (g *Group) Free() int { return max(1, len(g.Facts)-1) }

// Fact returns which fact of the group a field says.
func (g *Group) Fact(id ID) int {
	for i := range g.Facts {
		for j := range g.Facts[i].Members {
			if g.Facts[i].Members[j].ID == id {
				return i
			}
		}
	}
	return -1
}

// Groups is the table of groups, in the order in which they are worked out.
var Groups = [NumGroups]Group{
	SizeGroup: {
		Facts: []Fact{{
			Hub: FibreArea,
			Members: []Member{
				{ID: FibreArea},
				{
					ID:      FibreDiameter,
					ToHub:   func(p *Plan) { p.Fibre.Area = craft.Area(p.Fibre.Diameter) },
					FromHub: func(p *Plan) { p.Fibre.Diameter = craft.Diameter(p.Fibre.Area) },
					In:      way{always: &areaOfDiameter},
					Out:     way{always: &diameterOfArea},
				},
				{
					ID:      FibreLinearDensity,
					ToHub:   func(p *Plan) { p.Fibre.Area = craft.AreaOfTitre(p.Fibre.LinearDensity, p.Fibre.Density) },
					FromHub: func(p *Plan) { p.Fibre.LinearDensity = craft.LinearDensity(p.Fibre.Area, p.Fibre.Density) },
					In:      way{always: &areaOfTitre},
					Out:     way{always: &titreOfArea},
				},
			},
		}},
	},
	YarnSizeGroup: {
		Facts: []Fact{{
			Hub: YarnArea,
			Members: []Member{
				{ID: YarnArea},
				{
					ID:      YarnDiameter,
					ToHub:   func(p *Plan) { p.Yarn.Area = craft.Area(p.Yarn.Diameter) },
					FromHub: func(p *Plan) { p.Yarn.Diameter = craft.Diameter(p.Yarn.Area) },
					In:      way{always: &yarnAreaOfDiameter},
					Out:     way{always: &yarnDiameterOfArea},
				},
				{
					ID:      YarnLinearDensity,
					ToHub:   func(p *Plan) { p.Yarn.Area = craft.AreaOfTitre(p.Yarn.LinearDensity, p.Yarn.Density) },
					FromHub: func(p *Plan) { p.Yarn.LinearDensity = craft.LinearDensity(p.Yarn.Area, p.Yarn.Density) },
					In:      way{always: &yarnAreaOfTitre},
					Out:     way{always: &yarnTitreOfArea},
				},
			},
		}},
	},
	HangGroup: {
		Before: loadArea,
		Facts: []Fact{{
			Hub: HangForce,
			Members: []Member{
				{ID: HangForce},
				{
					ID:      HangStress,
					ToHub:   func(p *Plan) { p.Force = craft.ForceForStress(p.Stress, p.LoadArea) },
					FromHub: func(p *Plan) { p.Stress = craft.Stress(p.Force, p.LoadArea) },
					In:      way{always: &forceOfStress},
					Out:     way{always: &stressOfForce},
				},
				{
					ID:      HangMass,
					ToHub:   func(p *Plan) { p.Force = craft.HangingForce(p.Mass) },
					FromHub: func(p *Plan) { p.Mass = craft.MassForForce(p.Force) },
					In:      way{always: &forceOfMass},
					Out:     way{always: &massOfForce},
				},
				{
					ID:      HangAdd,
					ToHub:   func(p *Plan) { p.Force = craft.ForceForAdded(p.Add, p.Hook) },
					FromHub: func(p *Plan) { p.Add = craft.AddedMass(p.Force, p.Hook) },
					In:      way{always: &forceOfAdded},
					Out:     way{always: &addedOfForce},
				},
			},
		}},
	},
	TwistGroup: {
		Before:  untwisted,
		Between: twisted,
		Facts: []Fact{{
			Hub: TwistPerPrecursor,
			Members: []Member{
				{ID: TwistPerPrecursor},
				{
					ID:    TwistBias,
					ToHub: perPrecursorOfBias, // the way back is in twisted
					In:    way{always: &perPrecursorOfBiasEq},
					Out:   way{choose: biasOfPerPrecursorWorking},
				},
				{
					ID:      TwistPerTwisted,
					ToHub:   perPrecursorOfTwisted,
					FromHub: func(p *Plan) { p.PerTwisted = craft.TwistForBias(p.Bias, p.Thickness) },
					In:      way{always: &perPrecursorOfTwistedEq},
					Out:     way{always: &perTwistedOfBiasEq},
				},
				{
					ID:    TwistTurns,
					ToHub: func(p *Plan) { p.PerPrecursor = craft.TwistOfTurns(p.Turns, p.Precursor) },
					// the way back waits for the precursor: see counted
					In:  way{always: &perPrecursorOfTurns},
					Out: way{always: &turnsOfPerPrecursor},
				},
				{
					ID:      TwistFactor,
					ToHub:   perPrecursorOfFactor,
					FromHub: func(p *Plan) { p.Factor = craft.FactorOfTwist(p.PerTwisted, p.Titre) },
					In:      way{always: &perPrecursorOfFactorEq},
					Out:     way{always: &factorOfTwisted},
				},
			},
		}},
	},
	ShapeGroup: {
		Between: third,
		Facts: []Fact{
			{
				Hub:   CoilMean,
				Third: way{choose: meanOfOthers},
				Members: []Member{
					{ID: CoilMean},
					{
						ID:      CoilOutside,
						ToHub:   func(p *Plan) { p.Mean = craft.MeanDiameter(p.Outside, p.Thickness) },
						FromHub: func(p *Plan) { p.Outside = craft.OuterDiameter(p.Mean, p.Thickness) },
						In:      way{always: &meanOfOutside},
						Out:     way{always: &outsideOfMean},
					},
					{
						ID:      CoilIndex,
						ToHub:   func(p *Plan) { p.Mean = craft.MeanOfIndex(p.Index, p.Thickness) },
						FromHub: func(p *Plan) { p.Index = craft.Index(p.Mean, p.Thickness) },
						In:      way{always: &meanOfIndex},
						Out:     way{always: &indexOfMean},
					},
				},
			},
			{
				Hub:   CoilPitch,
				Third: way{choose: pitchOfOthers},
				Members: []Member{
					{ID: CoilPitch},
					{
						ID:    CoilCount,
						ToHub: pitchOfCount,
						// the way back waits for the coiled length: see counted
						In:  way{choose: pitchOfCountWorking},
						Out: way{always: &countOfPitch},
					},
					{
						ID:      CoilPerLength,
						ToHub:   func(p *Plan) { p.Pitch = craft.PitchOfCoils(p.PerLength) },
						FromHub: func(p *Plan) { p.PerLength = craft.CoilsPerLength(p.Pitch) },
						In:      way{always: &pitchOfPerLength},
						Out:     way{always: &perLengthOfPitch},
					},
				},
			},
			{
				Hub:     CutRatio,
				Third:   way{always: &ratioOfShape},
				Members: []Member{{ID: CutRatio}},
			},
		},
	},
	LengthGroup: {
		After: lengthsKnown,
		Facts: []Fact{{
			Hub: ClampCoiled,
			Members: []Member{
				{ID: ClampCoiled},
				{
					ID:      CutPrecursor,
					ToHub:   func(p *Plan) { p.Coiled = craft.Coiled(p.Precursor, p.Ratio) },
					FromHub: func(p *Plan) { p.Precursor = craft.Precursor(p.Coiled, p.Ratio) },
					In:      way{always: &coiledOfPrecursor},
					Out:     way{always: &precursorOfCoiled},
				},
				{
					ID:      ClampFirst,
					ToHub:   func(p *Plan) { p.Coiled = craft.Ungapped(p.First, p.FirstStretch) },
					FromHub: func(p *Plan) { p.First = craft.Gap(p.Piece(), p.FirstStretch) },
					In:      way{always: &coiledOfFirst},
					Out:     way{always: &firstOfPiece},
				},
				{
					ID:      ClampSecond,
					ToHub:   coilOfSecond,
					FromHub: second,
					In:      way{choose: coiledOfSecondWorking},
					Out:     way{choose: secondWorking},
				},
				{
					ID:      ClampFinished,
					ToHub:   func(p *Plan) { p.Coiled = craft.OfReleased(p.Finished, grown(p), fraction(p.Retained)) },
					FromHub: func(p *Plan) { p.Finished = craft.Released(p.Piece(), p.LastGap(), fraction(p.Retained)) },
					In:      way{choose: coiledOfFinishedWorking},
					Out:     way{always: &finishedOfLast},
				},
			},
		}},
	},
}

// GroupOf returns the group that a field belongs to.
func GroupOf(id ID) (g GroupID, ok bool) {
	if !id.IsField() {
		return NumGroups, false
	}
	g = groupOf[id]
	return g, g < NumGroups
}

// The groups' members again, for GroupOf: Groups itself can't be asked by what Groups is made of.
var groupOf = func() (of [NumFields]GroupID) {
	for id := range of {
		of[id] = NumGroups
	}
	for _, id := range []ID{FibreDiameter, FibreLinearDensity, FibreArea} {
		of[id] = SizeGroup
	}
	for _, id := range []ID{YarnDiameter, YarnLinearDensity, YarnArea} {
		of[id] = YarnSizeGroup
	}
	for _, id := range []ID{HangStress, HangMass, HangAdd, HangForce} {
		of[id] = HangGroup
	}
	for _, id := range []ID{TwistBias, TwistPerTwisted, TwistPerPrecursor, TwistTurns, TwistFactor} {
		of[id] = TwistGroup
	}
	for _, id := range []ID{CoilMean, CoilOutside, CoilIndex, CoilPitch, CoilCount, CoilPerLength, CutRatio} {
		of[id] = ShapeGroup
	}
	for _, id := range []ID{CutPrecursor, ClampCoiled, ClampFirst, ClampSecond, ClampFinished} {
		of[id] = LengthGroup
	}
	return of
}()
