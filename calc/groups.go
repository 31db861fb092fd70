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
	MeterGroup
	LeadGroup
	SupplyGroup
	DutyGroup
	WantedGroup

	NumGroups
)

// Group is a set of fields of which some are given and the others follow. Most groups say one fact, so that one member is the given. The
// shape of a coil is three facts, of which two are free: any two of mean diameter, pitch and ratio, each said by any of its members.
type Group struct {
	Facts []Fact
}

// Fact is one of the facts of a group: fields that follow from each other, all through one quantity, the hub. The hub itself is a member
// with neither way.
type Fact struct {
	Hub     ID
	Members []Member
	Third   *Working // how the hub follows from the other facts, where none of its members is given; nil as in Member
}

// Member is one field of a group. The workings say how toHub and fromHub go, as it is shown; nil where that depends on the plan: see choice.
type Member struct {
	ID  ID
	In  *Working // given -> hub
	Out *Working // hub -> member
}

// Givens are the members of a group that were typed, oldest first; None where there is none. They are of different facts, and at least one
// fact follows from the others.
type Givens [2]ID

// Has reports whether id is one of the givens.
//
//go:noinline
func (g *Givens) Has(id ID) bool { return id != None && (g[0] == id || g[1] == id) }

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
//
//go:noinline
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
				{ID: FibreDiameter, In: &areaOfDiameter, Out: &diameterOfArea},
				{ID: FibreLinearDensity, In: &areaOfTitre, Out: &titreOfArea},
			},
		}},
	},
	YarnSizeGroup: {
		Facts: []Fact{{
			Hub: YarnArea,
			Members: []Member{
				{ID: YarnArea},
				{ID: YarnDiameter, In: &yarnAreaOfDiameter, Out: &yarnDiameterOfArea},
				{ID: YarnLinearDensity, In: &yarnAreaOfTitre, Out: &yarnTitreOfArea},
			},
		}},
	},
	HangGroup: {
		Facts: []Fact{{
			Hub: HangForce,
			Members: []Member{
				{ID: HangForce},
				{ID: HangStress, In: &forceOfStress, Out: &stressOfForce},
				{ID: HangMass, In: &forceOfMass, Out: &massOfForce},
				{ID: HangAdd, In: &forceOfAdded, Out: &addedOfForce},
			},
		}},
	},
	TwistGroup: {
		Facts: []Fact{{
			Hub: TwistPerPrecursor,
			Members: []Member{
				{ID: TwistPerPrecursor},
				{ID: TwistBias, In: &perPrecursorOfBiasEq},
				{ID: TwistPerTwisted, In: &perPrecursorOfTwistedEq, Out: &perTwistedOfBiasEq},
				{ID: TwistTurns, In: &perPrecursorOfTurns, Out: &turnsOfPerPrecursor},
				{ID: TwistFactor, In: &perPrecursorOfFactorEq, Out: &factorOfTwisted},
			},
		}},
	},
	ShapeGroup: {
		Facts: []Fact{
			{
				Hub: CoilMean,
				Members: []Member{
					{ID: CoilMean},
					{ID: CoilOutside, In: &meanOfOutside, Out: &outsideOfMean},
					{ID: CoilIndex, In: &meanOfIndex, Out: &indexOfMean},
				},
			},
			{
				Hub: CoilPitch,
				Members: []Member{
					{ID: CoilPitch},
					{ID: CoilCount, Out: &countOfPitch},
					{ID: CoilPerLength, In: &pitchOfPerLength, Out: &perLengthOfPitch},
				},
			},
			{
				Hub:     CutRatio,
				Third:   &ratioOfShape,
				Members: []Member{{ID: CutRatio}},
			},
		},
	},
	LengthGroup: {
		Facts: []Fact{{
			Hub: ClampCoiled,
			Members: []Member{
				{ID: ClampCoiled},
				{ID: CutPrecursor, In: &coiledOfPrecursor, Out: &precursorOfCoiled},
				{ID: ClampFirst, In: &coiledOfFirst, Out: &firstOfPiece},
				{ID: ClampSecond},
				{ID: ClampFinished, Out: &finishedOfLast},
			},
		}},
	},
	MeterGroup: {
		Facts: []Fact{{
			Hub: WirePerLength,
			Members: []Member{
				{ID: WirePerLength},
				{ID: WireReading, In: &perLengthOfReading, Out: &readingOfPerLength},
			},
		}},
	},
	LeadGroup: {
		Facts: []Fact{{
			Hub: WireArea,
			Members: []Member{
				{ID: WireArea},
				{ID: WireGauge, In: &areaOfGauge, Out: &gaugeOfArea},
				{ID: WireLeadDiameter, In: &areaOfLead, Out: &leadOfArea},
			},
		}},
	},
	SupplyGroup: {
		Facts: []Fact{{
			Hub: WireCurrent,
			Members: []Member{
				{ID: WireCurrent},
				{ID: WireSupplyVoltage, In: &currentOfSupply, Out: &supplyOfCurrent},
				{ID: WirePower, In: &currentOfPower, Out: &powerOfCurrent},
			},
		}},
	},
	DutyGroup: {
		Facts: []Fact{{
			Hub: WireDuty,
			Members: []Member{
				{ID: WireDuty},
				{ID: WireOnTime, In: &dutyOfTime, Out: &timeOfDuty},
				{ID: WireAverage, In: &dutyOfAverage, Out: &averageOfDuty},
			},
		}},
	},
	WantedGroup: {
		Facts: []Fact{{
			Hub: WireWanted,
			Members: []Member{
				{ID: WireWanted},
				{ID: WireWantedPower, In: &wantedOfPower, Out: &powerOfWanted},
			},
		}},
	},
}

// toHub works the hub of a fact out from a member.
func toHub(p *Plan, id ID) {
	switch id {
	case FibreDiameter:
		p.Fibre.Area = craft.Area(p.Fibre.Diameter)
	case FibreLinearDensity:
		p.Fibre.Area = craft.AreaOfTitre(p.Fibre.LinearDensity, p.Fibre.Density)
	case YarnDiameter:
		p.Yarn.Area = craft.Area(p.Yarn.Diameter)
	case YarnLinearDensity:
		p.Yarn.Area = craft.AreaOfTitre(p.Yarn.LinearDensity, p.Yarn.Density)
	case HangStress:
		p.Force = craft.ForceForStress(p.Stress, p.LoadArea)
	case HangMass:
		p.Force = craft.HangingForce(p.Mass)
	case HangAdd:
		p.Force = craft.ForceForAdded(p.Add, p.Hook)
	case TwistBias:
		perPrecursorOfBias(p)
	case TwistPerTwisted:
		perPrecursorOfTwisted(p)
	case TwistTurns:
		p.PerPrecursor = craft.TwistOfTurns(p.Turns, p.Precursor)
	case TwistFactor:
		perPrecursorOfFactor(p)
	case CoilOutside:
		p.Mean = craft.MeanDiameter(p.Outside, p.Thickness)
	case CoilIndex:
		p.Mean = craft.MeanOfIndex(p.Index, p.Thickness)
	case CoilCount:
		pitchOfCount(p)
	case CoilPerLength:
		p.Pitch = craft.PitchOfCoils(p.PerLength)
	case CutPrecursor:
		p.Coiled = craft.Coiled(p.Precursor, p.Ratio)
	case ClampFirst:
		p.Coiled = craft.Ungapped(p.First, p.FirstStretch)
	case ClampSecond:
		coilOfSecond(p)
	case ClampFinished:
		p.Coiled = craft.OfReleased(p.Finished, grown(p), fraction(p.Retained))
	default:
		wireToHub(&p.Wire, id)
	}
}

// fromHub works a member out from the hub of its fact. Not here are the bias, which follows in twisted, and the turns and coils of a whole piece,
// which wait for its length: see counted.
func fromHub(p *Plan, id ID) {
	switch id {
	case FibreDiameter:
		p.Fibre.Diameter = craft.Diameter(p.Fibre.Area)
	case FibreLinearDensity:
		p.Fibre.LinearDensity = craft.LinearDensity(p.Fibre.Area, p.Fibre.Density)
	case YarnDiameter:
		p.Yarn.Diameter = craft.Diameter(p.Yarn.Area)
	case YarnLinearDensity:
		p.Yarn.LinearDensity = craft.LinearDensity(p.Yarn.Area, p.Yarn.Density)
	case HangStress:
		p.Stress = craft.Stress(p.Force, p.LoadArea)
	case HangMass:
		p.Mass = craft.MassForForce(p.Force)
	case HangAdd:
		p.Add = craft.AddedMass(p.Force, p.Hook)
	case TwistPerTwisted:
		p.PerTwisted = craft.TwistForBias(p.Bias, p.Thickness)
	case TwistFactor:
		p.Factor = craft.FactorOfTwist(p.PerTwisted, p.Titre)
	case CoilOutside:
		p.Outside = craft.OuterDiameter(p.Mean, p.Thickness)
	case CoilIndex:
		p.Index = craft.Index(p.Mean, p.Thickness)
	case CoilPerLength:
		p.PerLength = craft.CoilsPerLength(p.Pitch)
	case CutPrecursor:
		p.Precursor = craft.Precursor(p.Coiled, p.Ratio)
	case ClampFirst:
		p.First = craft.Gap(p.Piece(), p.FirstStretch)
	case ClampSecond:
		second(p)
	case ClampFinished:
		p.Finished = craft.Released(p.Piece(), p.LastGap(), fraction(p.Retained))
	default:
		wireFromHub(&p.Wire, id)
	}
}

// GroupOf returns the group that a field belongs to.
//
//go:noinline
func GroupOf(id ID) (g GroupID, ok bool) {
	if id.IsField() && groupOf[id] != 0 {
		return groupOf[id] - 1, true
	}
	return NumGroups, false
}

// The groups' members again, for GroupOf: the group and one more, 0 for none.
var groupOf = [NumFields]GroupID{
	FibreDiameter: SizeGroup + 1, FibreLinearDensity: SizeGroup + 1, FibreArea: SizeGroup + 1,
	YarnDiameter: YarnSizeGroup + 1, YarnLinearDensity: YarnSizeGroup + 1, YarnArea: YarnSizeGroup + 1,
	HangStress: HangGroup + 1, HangMass: HangGroup + 1, HangAdd: HangGroup + 1, HangForce: HangGroup + 1,
	TwistBias: TwistGroup + 1, TwistPerTwisted: TwistGroup + 1, TwistPerPrecursor: TwistGroup + 1, TwistTurns: TwistGroup + 1, TwistFactor: TwistGroup + 1,
	CoilMean: ShapeGroup + 1, CoilOutside: ShapeGroup + 1, CoilIndex: ShapeGroup + 1, CoilPitch: ShapeGroup + 1, CoilCount: ShapeGroup + 1, CoilPerLength: ShapeGroup + 1, CutRatio: ShapeGroup + 1,
	CutPrecursor: LengthGroup + 1, ClampCoiled: LengthGroup + 1, ClampFirst: LengthGroup + 1, ClampSecond: LengthGroup + 1, ClampFinished: LengthGroup + 1,
	WirePerLength: MeterGroup + 1, WireReading: MeterGroup + 1, WireArea: LeadGroup + 1, WireGauge: LeadGroup + 1, WireLeadDiameter: LeadGroup + 1,
	WireSupplyVoltage: SupplyGroup + 1, WireCurrent: SupplyGroup + 1, WirePower: SupplyGroup + 1,
	WireDuty: DutyGroup + 1, WireOnTime: DutyGroup + 1, WireAverage: DutyGroup + 1,
	WireWanted: WantedGroup + 1, WireWantedPower: WantedGroup + 1,
}
