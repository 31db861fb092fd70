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
	In      func(*Plan) *Working // given -> hub
	Out     func(*Plan) *Working // hub -> member
}

// Groups is the table of groups, in the order in which they are worked out.
var Groups = [NumGroups]Group{
	SizeGroup: {
		Hub:     FibreArea,
		Before:  func(p *Plan) { bookDensity(&p.Fibre) },
		Members: sizeMembers(func(p *Plan) *Strand { return &p.Fibre }, &fibreSize),
	},
	YarnSizeGroup: {
		Hub:     YarnArea,
		Before:  func(p *Plan) { bookDensity(&p.Yarn) },
		Members: sizeMembers(func(p *Plan) *Strand { return &p.Yarn }, &yarnSize),
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
				In:      always(&Working{Eq: &craft.ForceForStressEq, Terms: []ID{HangStress, HangLoadArea}}),
				Out:     always(&Working{Eq: &craft.StressEq, Terms: []ID{HangForce, HangLoadArea}}),
			},
			{
				ID:      HangMass,
				ToHub:   func(p *Plan) { p.Force = craft.HangingForce(p.Mass) },
				FromHub: func(p *Plan) { p.Mass = craft.MassForForce(p.Force) },
				In:      always(&Working{Eq: &craft.HangingForceEq, Terms: []ID{HangMass}}),
				Out:     always(&Working{Eq: &craft.MassForForceEq, Terms: []ID{HangForce}}),
			},
			{
				ID:      HangAdd,
				ToHub:   func(p *Plan) { p.Force = craft.ForceForAdded(p.Add, p.Hook) },
				FromHub: func(p *Plan) { p.Add = craft.AddedMass(p.Force, p.Hook) },
				In:      always(&Working{Eq: &craft.ForceForAddedEq, Terms: []ID{HangAdd, HangHook}}),
				Out:     always(&Working{Eq: &craft.AddedMassEq, Terms: []ID{HangForce, HangHook}}),
			},
		},
	},
	LengthGroup: {
		Hub: ClampCoiled,
		Members: []Member{
			{ID: ClampCoiled},
			{
				ID:      CutPrecursor,
				ToHub:   func(p *Plan) { p.Coiled = craft.Coiled(p.Precursor, p.Ratio) },
				FromHub: func(p *Plan) { p.Precursor = craft.Precursor(p.Coiled, p.Ratio) },
				In:      always(&Working{Eq: &craft.CoiledEq, Terms: []ID{CutPrecursor, CutRatio}}),
				Out:     always(&Working{Eq: &craft.PrecursorEq, Terms: []ID{ClampCoiled, CutRatio}}),
			},
			{
				ID:      ClampFirst,
				ToHub:   func(p *Plan) { p.Coiled = craft.Ungapped(p.First, p.FirstStretch) },
				FromHub: func(p *Plan) { p.First = craft.Gap(p.Piece(), p.FirstStretch) },
				In:      always(&Working{Eq: &craft.OfFirstGapEq, Terms: []ID{ClampFirst, ClampFirstStretch}}),
				Out:     pieced(&firstGap, &firstGapOfPiece),
			},
			{
				ID:      ClampSecond,
				ToHub:   coiledOfSecond,
				FromHub: second,
				In:      func(p *Plan) *Working { return &ofSecond[p.SecondBase] },
				Out:     secondWorking,
			},
			{
				ID:      ClampFinished,
				ToHub:   coiledOfFinished,
				FromHub: func(p *Plan) { p.Finished = craft.Released(p.Piece(), p.LastGap(), fraction(p.Retained)) },
				In:      finishedIn,
				Out:     finishedOut,
			},
		},
		After: jawsStay,
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
