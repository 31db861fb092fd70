package calc

import "twistbench/calc/craft"

// GroupID names a group of fields that say the same fact in several ways.
type GroupID uint8

const (
	SizeGroup GroupID = iota
	YarnSizeGroup
	HangGroup
	LengthGroup

	NumGroups
)

// Group is a set of fields of which one is given and the others follow, all through one quantity, the hub. ToHub works the hub
// out from a member, FromHub a member from the hub; the workings say how, as it is shown. The hub itself is a member with
// neither.
type Group struct {
	Hub     ID
	Members []Member
	Before  func(*Plan) // what must be known before the group can be worked out
	After   func(*Plan) // what stays as it is although the group would move it
}

// Member is one field of a group.
type Member struct {
	ID      ID
	ToHub   func(*Plan)
	FromHub func(*Plan)
	In      way // given -> hub
	Out     way // hub -> member
}

// Groups is the table of groups, in the order in which they are worked out.
var Groups = [NumGroups]Group{
	SizeGroup: {
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
	},
	YarnSizeGroup: {
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
	},
	HangGroup: {
		Hub:    HangForce,
		Before: loadArea,
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
	},
	LengthGroup: {
		Hub:   ClampCoiled,
		After: jawsStay,
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
	for _, id := range []ID{CutPrecursor, ClampCoiled, ClampFirst, ClampSecond, ClampFinished} {
		of[id] = LengthGroup
	}
	return of
}()
