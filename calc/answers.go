package calc

import (
	"twistbench/calc/craft"
	"twistbench/calc/quantity"
)

// Results is the answers of a plan, in SI; NaN while something they need is unknown.
type Results struct {
	Thin, Thick  quantity.Length
	Weighed      [2]quantity.LinearDensity // fibre, yarn
	Implied      [2]quantity.Density
	Packing      [2]quantity.Fraction
	LabelStress  quantity.Stress
	Low, High    quantity.Mass
	Under, Over  craft.Load
	UnderTotal   quantity.Mass
	UnderStress  quantity.Stress
	OverTotal    quantity.Mass
	OverStress   quantity.Stress
	Water        quantity.Volume
	Rise         quantity.Length
	HookHeight   quantity.Length
	DropStart    quantity.Energy
	DropCoiled   quantity.Energy
	TheirStress  quantity.Stress
	SameMass     quantity.Mass
	OfLabel      quantity.Fraction
	Length       quantity.Length
	AllPieces    quantity.Count
	Total        quantity.Length
	YarnTotal    quantity.Length
	FibreMass    quantity.Mass
	TrialRatio   quantity.Ratio
	Muscles      quantity.Count
	MuscleStress quantity.Stress
	MuscleForce  quantity.Force
	MuscleShare  quantity.Mass
	ThisRatio    quantity.Ratio
	Real         [2]quantity.Fraction // first, second stretch
	Move         [2]quantity.Length
	SecondOfOne  quantity.Fraction
	TravelLength quantity.Length
	Travel       quantity.Fraction
	FinTravelLen quantity.Length
	FinTravel    quantity.Fraction
	Position     [2]quantity.Length
	Hole         [2]quantity.Count
	HoleGap      [2]quantity.Length
	HoleStretch  [2]quantity.Fraction
}

// Answer is a number that follows from a plan and can't be typed.
type Answer struct {
	Key     string
	Get     func(*State) quantity.Value // nil for a choice of masses, which is text
	Unit    string
	Digits  int
	Working func(*Plan) *Working
	Low     float64 // a value below it is impossible or past a limit and is shown as such; 0 where there is no such limit
}

// Answers is the table of everything that follows.
var Answers = [NumAnswers]Answer{
	FibreSolidArea - NumFields:   {Key: "fibre.solid-area", Get: func(s *State) quantity.Value { return &s.Plan.SolidArea }, Unit: "mm²", Digits: 4, Working: solidAreaWorking},
	FibreThin - NumFields:        {Key: "fibre.thickness-least", Get: func(s *State) quantity.Value { return &s.Out.Thin }, Unit: "mm", Digits: 4, Working: always(&Working{Eq: &craft.DiameterEq, Terms: []ID{FibreSolidArea}})},
	FibreThick - NumFields:       {Key: "fibre.thickness-most", Get: func(s *State) quantity.Value { return &s.Out.Thick }, Unit: "mm", Digits: 4, Working: thickWorking},
	FibreWeighed - NumFields:     {Key: "fibre.weighed", Get: func(s *State) quantity.Value { return &s.Out.Weighed[0] }, Unit: "tex", Digits: 4, Working: always(&Working{Eq: &craft.WeighedTitreEq, Terms: []ID{FibreWeighedMass, FibreWeighedLength}})},
	FibreImplied - NumFields:     {Key: "fibre.implied-density", Get: func(s *State) quantity.Value { return &s.Out.Implied[0] }, Unit: "kg/m³", Digits: 3, Working: always(&Working{Eq: &craft.ImpliedDensityEq, Terms: []ID{FibreWeighed, FibreArea}})},
	FibrePacking - NumFields:     {Key: "fibre.packing", Get: func(s *State) quantity.Value { return &s.Out.Packing[0] }, Unit: "%", Digits: 3, Working: always(&Working{Eq: &craft.PackingEq, Terms: []ID{FibreWeighed, FibreDensity, FibreArea}})},
	FibreLabelStress - NumFields: {Key: "fibre.label-stress", Get: func(s *State) quantity.Value { return &s.Out.LabelStress }, Unit: "MPa", Digits: 3, Working: always(&Working{Eq: &craft.StressOfMassEq, Terms: []ID{FibreLabelStrength, FibreArea}})},
	YarnWeighed - NumFields:      {Key: "yarn.weighed", Get: func(s *State) quantity.Value { return &s.Out.Weighed[1] }, Unit: "dtex", Digits: 4, Working: always(&Working{Eq: &craft.WeighedTitreEq, Terms: []ID{YarnWeighedMass, YarnWeighedLength}})},
	YarnImplied - NumFields:      {Key: "yarn.implied-density", Get: func(s *State) quantity.Value { return &s.Out.Implied[1] }, Unit: "kg/m³", Digits: 3, Working: always(&Working{Eq: &craft.ImpliedDensityEq, Terms: []ID{YarnWeighed, YarnArea}})},
	YarnPacking - NumFields:      {Key: "yarn.packing", Get: func(s *State) quantity.Value { return &s.Out.Packing[1] }, Unit: "%", Digits: 3, Working: always(&Working{Eq: &craft.PackingEq, Terms: []ID{YarnWeighed, YarnDensity, YarnArea}})},

	HangLoadArea - NumFields:    {Key: "hang.load-area", Get: func(s *State) quantity.Value { return &s.Plan.LoadArea }, Unit: "mm²", Digits: 4, Working: loadAreaWorking},
	HangLow - NumFields:         {Key: "hang.mass-least", Get: func(s *State) quantity.Value { return &s.Out.Low }, Unit: "g", Digits: 4, Working: always(&Working{Eq: &craft.MassOnThinnerEq, Terms: []ID{HangStress, HangLoadArea, FibreStrands, FibreDiameter, FibreDiameterDoubt, FibreArea}})},
	HangHigh - NumFields:        {Key: "hang.mass-most", Get: func(s *State) quantity.Value { return &s.Out.High }, Unit: "g", Digits: 4, Working: always(&Working{Eq: &craft.MassOnThickerEq, Terms: []ID{HangStress, HangLoadArea, FibreStrands, FibreDiameter, FibreDiameterDoubt, FibreArea}})},
	HangUnder - NumFields:       {Key: "hang.under", Get: func(s *State) quantity.Value { return &s.Out.Under.Sum }, Unit: "g", Digits: 3, Working: always(&nearest)},
	HangUnderTotal - NumFields:  {Key: "hang.under-total", Get: func(s *State) quantity.Value { return &s.Out.UnderTotal }, Unit: "g", Digits: 3, Working: always(&Working{Eq: &craft.TotalMassEq, Terms: []ID{HangUnder, HangHook}})},
	HangUnderStress - NumFields: {Key: "hang.under-stress", Get: func(s *State) quantity.Value { return &s.Out.UnderStress }, Unit: "MPa", Digits: 4, Working: always(&Working{Eq: &craft.StressOfMassEq, Terms: []ID{HangUnderTotal, HangLoadArea}})},
	HangUnderSet - NumFields:    {Key: "hang.under-set", Working: always(&nearest)},
	HangOver - NumFields:        {Key: "hang.over", Get: func(s *State) quantity.Value { return &s.Out.Over.Sum }, Unit: "g", Digits: 3, Working: always(&nearest)},
	HangOverTotal - NumFields:   {Key: "hang.over-total", Get: func(s *State) quantity.Value { return &s.Out.OverTotal }, Unit: "g", Digits: 3, Working: always(&Working{Eq: &craft.TotalMassEq, Terms: []ID{HangOver, HangHook}})},
	HangOverStress - NumFields:  {Key: "hang.over-stress", Get: func(s *State) quantity.Value { return &s.Out.OverStress }, Unit: "MPa", Digits: 4, Working: always(&Working{Eq: &craft.StressOfMassEq, Terms: []ID{HangOverTotal, HangLoadArea}})},
	HangOverSet - NumFields:     {Key: "hang.over-set", Working: always(&nearest)},
	HangWater - NumFields:       {Key: "hang.water", Get: func(s *State) quantity.Value { return &s.Out.Water }, Unit: "ml", Digits: 3, Working: always(&Working{Eq: &craft.WaterEq, Terms: []ID{HangAdd, HangBottle}})},
	HangRise - NumFields:        {Key: "hang.rise", Get: func(s *State) quantity.Value { return &s.Out.Rise }, Unit: "mm", Digits: 4, Working: always(&Working{Eq: &craft.RiseEq, Terms: []ID{CutPrecursor, ClampCoiled}})},
	HangHookHeight - NumFields:  {Key: "hang.hook-height", Get: func(s *State) quantity.Value { return &s.Out.HookHeight }, Unit: "mm", Digits: 4, Working: always(&Working{Eq: &craft.HookHeightEq, Terms: []ID{HangClearance, HangStack, CutLength}})},
	HangDropStart - NumFields:   {Key: "hang.drop-start", Get: func(s *State) quantity.Value { return &s.Out.DropStart }, Unit: "J", Digits: 4, Working: always(&Working{Eq: &craft.DropEnergyEq, Terms: []ID{HangMass, HangClearance}})},
	HangDropCoiled - NumFields:  {Key: "hang.drop-coiled", Get: func(s *State) quantity.Value { return &s.Out.DropCoiled }, Unit: "J", Digits: 4, Working: always(&Working{Eq: &craft.DropEnergyCoiledEq, Terms: []ID{HangMass, HangClearance, HangRise}})},
	HangTheirStress - NumFields: {Key: "hang.their-stress", Get: func(s *State) quantity.Value { return &s.Out.TheirStress }, Unit: "MPa", Digits: 4, Working: always(&Working{Eq: &craft.StressOnRoundEq, Terms: []ID{HangTheirMass, HangTheirDiameter}})},
	HangSameMass - NumFields:    {Key: "hang.same-mass", Get: func(s *State) quantity.Value { return &s.Out.SameMass }, Unit: "g", Digits: 3, Working: always(&Working{Eq: &craft.SameStressEq, Terms: []ID{HangTheirStress, HangLoadArea}})},
	HangOfLabel - NumFields:     {Key: "hang.of-label", Get: func(s *State) quantity.Value { return &s.Out.OfLabel }, Unit: "%", Digits: 3, Working: always(&Working{Eq: &craft.ShareEq, Terms: []ID{HangStress, FibreLabelStress}})},

	CutLength - NumFields:       {Key: "cut.length", Get: func(s *State) quantity.Value { return &s.Out.Length }, Unit: "mm", Digits: 1, Working: always(&Working{Eq: &craft.CutLengthEq, Terms: []ID{CutPrecursor, CutTail}})},
	CutAllPieces - NumFields:    {Key: "cut.all-pieces", Get: func(s *State) quantity.Value { return &s.Out.AllPieces }, Digits: 1, Working: always(&Working{Eq: &craft.PiecesEq, Terms: []ID{CutPieces, CutSpare}})},
	CutTotal - NumFields:        {Key: "cut.total", Get: func(s *State) quantity.Value { return &s.Out.Total }, Unit: "m", Digits: 4, Working: always(&Working{Eq: &craft.TotalLineEq, Terms: []ID{CutAllPieces, FibreStrands, CutLength}})},
	CutYarnTotal - NumFields:    {Key: "cut.yarn-total", Get: func(s *State) quantity.Value { return &s.Out.YarnTotal }, Unit: "m", Digits: 4, Working: always(&Working{Eq: &craft.TotalLineEq, Terms: []ID{CutAllPieces, YarnStrands, CutLength}})},
	CutFibreMass - NumFields:    {Key: "cut.fibre-mass", Get: func(s *State) quantity.Value { return &s.Out.FibreMass }, Unit: "g", Digits: 4, Working: always(&Working{Eq: &craft.FibreMassEq, Terms: []ID{FibreStrands, FibreDensity, FibreArea, CutPrecursor}})},
	CutTrialRatio - NumFields:   {Key: "cut.trial-ratio", Get: func(s *State) quantity.Value { return &s.Out.TrialRatio }, Digits: 4, Working: always(&Working{Eq: &craft.RatioEq, Terms: []ID{CutTrialPrecursor, CutTrialCoiled}})},
	CutMuscles - NumFields:      {Key: "cut.muscles", Get: func(s *State) quantity.Value { return &s.Out.Muscles }, Digits: 1, Working: always(&Working{Eq: &craft.SideBySideEq, Terms: []ID{CutLift, CutLiftStress, HangLoadArea}})},
	CutMuscleStress - NumFields: {Key: "cut.muscle-stress", Get: func(s *State) quantity.Value { return &s.Out.MuscleStress }, Unit: "MPa", Digits: 4, Working: always(&Working{Eq: &craft.StressEq, Terms: []ID{CutMuscleForce, HangLoadArea}})},
	CutMuscleForce - NumFields:  {Key: "cut.muscle-force", Get: func(s *State) quantity.Value { return &s.Out.MuscleForce }, Unit: "N", Digits: 4, Working: always(&Working{Eq: &craft.HangingForceEq, Terms: []ID{CutMuscleShare}})},
	CutMuscleShare - NumFields:  {Key: "cut.muscle-share", Get: func(s *State) quantity.Value { return &s.Out.MuscleShare }, Unit: "g", Digits: 4, Working: always(&Working{Eq: &craft.MassShareEq, Terms: []ID{CutLift, CutMuscles}})},

	ClampThisRatio - NumFields:            {Key: "clamp.this-ratio", Get: func(s *State) quantity.Value { return &s.Out.ThisRatio }, Digits: 4, Working: always(&Working{Eq: &craft.RatioEq, Terms: []ID{CutPrecursor, ClampMeasured}})},
	ClampFirstReal - NumFields:            {Key: "clamp.first-real", Get: func(s *State) quantity.Value { return &s.Out.Real[0] }, Unit: "%", Digits: 4, Working: pieced(stretchOf(ClampFirst, ClampCoiled), stretchOf(ClampFirst, ClampMeasured))},
	ClampSecondReal - NumFields:           {Key: "clamp.second-real", Get: func(s *State) quantity.Value { return &s.Out.Real[1] }, Unit: "%", Digits: 4, Working: secondStretch(ClampSecond, ClampFirst)},
	ClampFirstMove - NumFields:            {Key: "clamp.first-move", Get: func(s *State) quantity.Value { return &s.Out.Move[0] }, Unit: "mm", Digits: 4, Working: pieced(&Working{Eq: &craft.MoveEq, Terms: []ID{ClampFirst, ClampCoiled}}, &Working{Eq: &craft.MoveEq, Terms: []ID{ClampFirst, ClampMeasured}})},
	ClampSecondMove - NumFields:           {Key: "clamp.second-move", Get: func(s *State) quantity.Value { return &s.Out.Move[1] }, Unit: "mm", Digits: 4, Working: always(&Working{Eq: &craft.MoveEq, Terms: []ID{ClampSecond, ClampFirst}})},
	ClampSecondOfFirst - NumFields:        {Key: "clamp.second-of-first", Get: func(s *State) quantity.Value { return &s.Out.SecondOfOne }, Unit: "%", Digits: 4, Working: always(stretchOf(ClampSecond, ClampFirst))},
	ClampTravelLength - NumFields:         {Key: "clamp.travel-length", Get: func(s *State) quantity.Value { return &s.Out.TravelLength }, Unit: "mm", Digits: 4, Working: travelOf(&craft.TravelEq)},
	ClampTravel - NumFields:               {Key: "clamp.travel", Get: func(s *State) quantity.Value { return &s.Out.Travel }, Unit: "%", Digits: 4, Working: travelOf(&craft.TravelShareEq)},
	ClampFinishedTravelLength - NumFields: {Key: "clamp.finished-travel-length", Get: func(s *State) quantity.Value { return &s.Out.FinTravelLen }, Unit: "mm", Digits: 4, Working: pieced(&Working{Eq: &craft.TravelEq, Terms: []ID{ClampFinished, ClampCoiled}}, &Working{Eq: &craft.TravelEq, Terms: []ID{ClampFinished, ClampMeasured}})},
	ClampFinishedTravel - NumFields:       {Key: "clamp.finished-travel", Get: func(s *State) quantity.Value { return &s.Out.FinTravel }, Unit: "%", Digits: 4, Working: pieced(&Working{Eq: &craft.TravelShareEq, Terms: []ID{ClampFinished, ClampCoiled}}, &Working{Eq: &craft.TravelShareEq, Terms: []ID{ClampFinished, ClampMeasured}})},
	ClampFirstPosition - NumFields:        {Key: "clamp.first-position", Get: func(s *State) quantity.Value { return &s.Out.Position[0] }, Unit: "mm", Digits: 4, Working: always(&Working{Eq: &craft.PositionEq, Terms: []ID{ClampZero, ClampFirst}})},
	ClampSecondPosition - NumFields:       {Key: "clamp.second-position", Get: func(s *State) quantity.Value { return &s.Out.Position[1] }, Unit: "mm", Digits: 4, Working: always(&Working{Eq: &craft.PositionEq, Terms: []ID{ClampZero, ClampSecond}})},
	ClampFirstHole - NumFields:            {Key: "clamp.first-hole", Get: func(s *State) quantity.Value { return &s.Out.Hole[0] }, Digits: 1, Working: always(&Working{Method: "nearest-hole", Source: craft.Geometry, Terms: []ID{ClampFirst, ClampHolePitch, ClampHoleOffset}})},
	ClampFirstHoleGap - NumFields:         {Key: "clamp.first-hole-gap", Get: func(s *State) quantity.Value { return &s.Out.HoleGap[0] }, Unit: "mm", Digits: 4, Working: always(&Working{Eq: &craft.HoleGapEq, Terms: []ID{ClampFirstHole, ClampHolePitch, ClampHoleOffset}})},
	ClampFirstHoleStretch - NumFields:     {Key: "clamp.first-hole-stretch", Get: func(s *State) quantity.Value { return &s.Out.HoleStretch[0] }, Unit: "%", Digits: 4, Working: pieced(stretchOf(ClampFirstHoleGap, ClampCoiled), stretchOf(ClampFirstHoleGap, ClampMeasured))},
	ClampSecondHole - NumFields:           {Key: "clamp.second-hole", Get: func(s *State) quantity.Value { return &s.Out.Hole[1] }, Digits: 1, Working: always(&Working{Method: "nearest-hole", Source: craft.Geometry, Terms: []ID{ClampSecond, ClampHolePitch, ClampHoleOffset}})},
	ClampSecondHoleGap - NumFields:        {Key: "clamp.second-hole-gap", Get: func(s *State) quantity.Value { return &s.Out.HoleGap[1] }, Unit: "mm", Digits: 4, Working: always(&Working{Eq: &craft.HoleGapEq, Terms: []ID{ClampSecondHole, ClampHolePitch, ClampHoleOffset}})},
	ClampSecondHoleStretch - NumFields:    {Key: "clamp.second-hole-stretch", Get: func(s *State) quantity.Value { return &s.Out.HoleStretch[1] }, Unit: "%", Digits: 4, Working: secondStretch(ClampSecondHoleGap, ClampFirstHoleGap)},
}

var nearest = Working{Method: "nearest-load", Source: craft.Geometry, Terms: []ID{HangAdd, HangOwned}}

func stretchOf(gap, of ID) *Working { return &Working{Eq: &craft.StretchEq, Terms: []ID{gap, of}} }

func solidAreaWorking(p *Plan) *Working {
	if p.Yarn.Strands > 0 {
		return &allAreas
	}
	return &mainArea
}

func loadAreaWorking(p *Plan) *Working {
	if p.AreaBase == AreaAll {
		return solidAreaWorking(p)
	}
	return &mainArea
}

var (
	mainArea = Working{Eq: &craft.MainAreaEq, Terms: []ID{FibreStrands, FibreArea}}
	allAreas = Working{Eq: &craft.AllAreaEq, Terms: []ID{FibreStrands, FibreArea, YarnStrands, YarnArea}}

	envelopeMain = Working{Method: "envelope", Source: craft.Geometry, Terms: []ID{FibreStrands, FibreDiameter}}
	envelopeAll  = Working{Method: "envelope", Source: craft.Geometry, Terms: []ID{FibreStrands, FibreDiameter, YarnStrands, YarnDiameter}}
)

func thickWorking(p *Plan) *Working {
	if p.Yarn.Strands > 0 {
		return &envelopeAll
	}
	return &envelopeMain
}

// travelOf makes the choice of working for travel from the last gap: by stages and by whether the coil was measured.
func travelOf(eq *craft.Equation) func(*Plan) *Working {
	of := [2][2]Working{
		StagesTwo: {{Eq: eq, Terms: []ID{ClampSecond, ClampCoiled}}, {Eq: eq, Terms: []ID{ClampSecond, ClampMeasured}}},
		StagesOne: {{Eq: eq, Terms: []ID{ClampFirst, ClampCoiled}}, {Eq: eq, Terms: []ID{ClampFirst, ClampMeasured}}},
	}
	return func(p *Plan) *Working { return &of[p.Stages][measured(p)] }
}

// secondStretch makes the choice of working for the stretch that a second gap gives, by what it is a stretch of.
func secondStretch(gap, first ID) func(*Plan) *Working {
	coiled, measured := stretchOf(gap, ClampCoiled), stretchOf(gap, ClampMeasured)
	ofFirst, ofRelaxed := stretchOf(gap, first), stretchOf(gap, ClampRelaxed)
	return func(p *Plan) *Working {
		switch {
		case p.SecondBase == BaseFirstGap:
			return ofFirst
		case p.SecondBase == BaseRelaxed && known(p.Relaxed):
			return ofRelaxed
		case known(p.Measured):
			return measured
		}
		return coiled
	}
}
