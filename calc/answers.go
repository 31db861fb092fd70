package calc

import (
	"twistbench/calc/craft"
	"twistbench/calc/quantity"
	"twistbench/calc/trial"
)

// Results is the answers of a plan, in SI; NaN while something they need is unknown.
type Results struct {
	_ [0]func() // results are not compared

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

	Shortening quantity.Fraction
	Straight   quantity.Length
	Strain     quantity.Fraction
	MostTwist  quantity.Twist
	TimedSpeed quantity.Rotation
	OnsetBias  [3]quantity.Angle // typical, least, most
	Onset      [3]quantity.Turns
	Slow       quantity.Turns
	SlowTime   quantity.Time
	OtherTwist quantity.Twist

	CoilAngle           quantity.Angle
	TurnLength, CoilGap quantity.Length
	Writhe, AllTurns    quantity.Turns
	AllPerPrecursor     quantity.Twist
	DrillTime           quantity.Time
	SolidPitch, Solid   quantity.Length
	NearSolid           quantity.Length
	CoilTravelLength    quantity.Length
	CoilTravel          quantity.Fraction
	CoilFinTravel       quantity.Fraction
	LastPitch, LastGap  quantity.Length
	LastMean, SolidMean quantity.Length
	ShapeRatio          quantity.Ratio
	LoadIndex           [3]quantity.Number // typical, least, most
	RodMean             quantity.Length
	RodIndex            quantity.Number
	RodAngle            quantity.Angle
	RodGap              quantity.Length
	RodCount            quantity.Turns
	RodFibre            quantity.Length
	RodPrecursor        quantity.Length
	RodLimit            quantity.Fraction

	Piece        quantity.Length // as coiled, measured or else planned
	Base         quantity.Length // what the second stretch is a stretch of
	Last         quantity.Length // the last gap
	ThisRatio    quantity.Ratio
	ThisFinished quantity.Length
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

	Dial, MeanDial, MeanProbe, Peak quantity.Temperature
	Slope                           quantity.Number
	Margin                          quantity.TemperatureDifference
	Frames, PerLoad, Loads          quantity.Count
	HeatTime                        quantity.Time
	oven                            trial.Line
	LessMass, LessAdd               quantity.Mass
	MoreMass, MoreAdd               quantity.Mass
	BrokeShare                      quantity.Fraction

	// Of the wire.
	YarnLength                      quantity.Length
	Ohms, LeastOhms                 quantity.Resistance // of a muscle
	OfPrecursor, OfCoil, OfFinished quantity.ResistancePerLength
	RowCurrent, SideCurrent         quantity.Current // all in a row, all side by side
	AverageCurrent, Fuse            quantity.Current
	MusclePower                     quantity.Power // average power in one muscle, switched on and off
	FullPower                       quantity.Power // the same while on, or where the switch sticks
	PowerPer                        quantity.PowerPerLength
	Drop                            quantity.Voltage
	LeadHeat                        quantity.Power
	Dummy, HotOhms, TestContact     quantity.Resistance
	DummyPower                      quantity.Power
	OwnVoltage                      quantity.Voltage // of the supply
	Pause                           quantity.Time
	Cycles                          quantity.Number
	BatteryEnergy                   quantity.Energy
	BatteryTime                     quantity.Time
	ReadingOhms                     quantity.Resistance // volts over amperes
	ReadingPerLength                quantity.ResistancePerLength
	WantedPerLength                 quantity.ResistancePerLength
	WantedLength                    quantity.Length
	WantedStrands                   quantity.Count
	WantedReal                      quantity.Power
	ReadTemperature                 quantity.Temperature
	Drift                           quantity.Fraction
	TestPerLength                   quantity.ResistancePerLength

	// Of the drive. Of two, the first is of the end that loses least heat, where there is no less and more to them.
	Steady      [2]quantity.Temperature // left on
	Stuck       quantity.Temperature    // at most, with the switch stuck on
	StuckMargin quantity.TemperatureDifference
	MeltTime    quantity.Time // to melting, then
	Heats       [2]quantity.Time
	Cools       [2]quantity.Time
	PerMinute   quantity.Number // cycles
	Peaks       [2]quantity.Temperature
	Coldest     quantity.Temperature
	Then        [2]quantity.Temperature // at the marker
	Shown       quantity.Time           // in the drawing
	Hold        [2]quantity.Power
	HoldDuty    quantity.Share
	CycleEnergy quantity.Energy
	Efficiency  quantity.Fraction
	Biot        quantity.Number
	Inner       quantity.Time
	Constant    quantity.Time // of the own cooling curve
	Capacity    quantity.HeatCapacity
	TrialLoss   quantity.HeatLoss
	BookLoss    [2]quantity.HeatLoss // the book's, at what is hot
	SetTime     quantity.Time        // to where it was set, with the switch stuck on
	Boiling     quantity.Temperature // of water
	warmth      warmth

	// Of the stroke.
	Strokes                      [3]quantity.Length // least, usual, most
	Shares                       [3]quantity.Fraction
	ShareOfCoiled                quantity.Fraction
	ShareOfFinished              quantity.Fraction
	ColdLength, HotLength        quantity.Length
	BlockedPull, HeldGain        quantity.Force
	OtherHot, Swing              quantity.Length // of a pair
	SpringRate                   quantity.Stiffness
	SpringPull                   quantity.Force // hot
	SpringStress, SpringLimit    quantity.Stress
	AtLoad                       quantity.Force
	Unequal                      quantity.Fraction
	LoadTravel                   quantity.Length
	PulleyTurn                   quantity.Angle
	StrokePull                   quantity.Force // on one muscle, of the load alone
	Back                         quantity.Stiffness
	SlackAt, ByMasses            quantity.Length
	ColdPull, HotPull, ScalePull quantity.Force
	Along, Across                quantity.Fraction
	FreeStroke                   quantity.Length
	ColdFree, HotFree            quantity.Length
	ColdRate, HotRate            quantity.Stiffness
	Work                         quantity.Energy
	SpecificWork                 quantity.SpecificEnergy
	WorkPower                    quantity.Power
	SpecificPower                quantity.SpecificPower
}

// Answer is a number that follows from a plan and can't be typed.
type Answer struct {
	Key     string
	Unit    string
	Digits  int
	Working *Working // nil where it depends on the plan: see choice
}

// Answers is the table of everything that follows.
var Answers = [NumAnswers]Answer{
	FibreSolidArea - NumFields:   {Key: "fibre.solid-area", Unit: "mm²", Digits: 4},
	FibreThin - NumFields:        {Key: "fibre.thickness-least", Unit: "mm", Digits: 4, Working: &Working{Eq: &craft.DiameterEq, Terms: []ID{FibreSolidArea}}},
	FibreThick - NumFields:       {Key: "fibre.thickness-most", Unit: "mm", Digits: 4},
	FibreWeighed - NumFields:     {Key: "fibre.weighed", Unit: "tex", Digits: 4, Working: &Working{Eq: &craft.WeighedTitreEq, Terms: []ID{FibreWeighedMass, FibreWeighedLength}}},
	FibreImplied - NumFields:     {Key: "fibre.implied-density", Unit: "kg/m³", Digits: 3, Working: &Working{Eq: &craft.ImpliedDensityEq, Terms: []ID{FibreWeighed, FibreArea}}},
	FibrePacking - NumFields:     {Key: "fibre.packing", Unit: "%", Digits: 3, Working: &Working{Eq: &craft.PackingEq, Terms: []ID{FibreWeighed, FibreDensity, FibreArea}}},
	FibreLabelStress - NumFields: {Key: "fibre.label-stress", Unit: "MPa", Digits: 3, Working: &Working{Eq: &craft.StressOfMassEq, Terms: []ID{FibreLabelStrength, FibreArea}}},
	YarnWeighed - NumFields:      {Key: "yarn.weighed", Unit: "dtex", Digits: 4, Working: &Working{Eq: &craft.WeighedTitreEq, Terms: []ID{YarnWeighedMass, YarnWeighedLength}}},
	YarnImplied - NumFields:      {Key: "yarn.implied-density", Unit: "kg/m³", Digits: 3, Working: &Working{Eq: &craft.ImpliedDensityEq, Terms: []ID{YarnWeighed, YarnArea}}},
	YarnPacking - NumFields:      {Key: "yarn.packing", Unit: "%", Digits: 3, Working: &Working{Eq: &craft.PackingEq, Terms: []ID{YarnWeighed, YarnDensity, YarnArea}}},

	HangLoadArea - NumFields:    {Key: "hang.load-area", Unit: "mm²", Digits: 4},
	HangLow - NumFields:         {Key: "hang.mass-least", Unit: "g", Digits: 4, Working: &Working{Eq: &craft.MassOnThinnerEq, Terms: []ID{HangStress, HangLoadArea, FibreStrands, FibreDiameter, FibreDiameterDoubt, FibreArea}}},
	HangHigh - NumFields:        {Key: "hang.mass-most", Unit: "g", Digits: 4, Working: &Working{Eq: &craft.MassOnThickerEq, Terms: []ID{HangStress, HangLoadArea, FibreStrands, FibreDiameter, FibreDiameterDoubt, FibreArea}}},
	HangUnder - NumFields:       {Key: "hang.under", Unit: "g", Digits: 3, Working: &nearest},
	HangUnderTotal - NumFields:  {Key: "hang.under-total", Unit: "g", Digits: 3, Working: &Working{Eq: &craft.TotalMassEq, Terms: []ID{HangUnder, HangHook}}},
	HangUnderStress - NumFields: {Key: "hang.under-stress", Unit: "MPa", Digits: 4, Working: &Working{Eq: &craft.StressOfMassEq, Terms: []ID{HangUnderTotal, HangLoadArea}}},
	HangUnderSet - NumFields:    {Key: "hang.under-set", Working: &nearest},
	HangOver - NumFields:        {Key: "hang.over", Unit: "g", Digits: 3, Working: &nearest},
	HangOverTotal - NumFields:   {Key: "hang.over-total", Unit: "g", Digits: 3, Working: &Working{Eq: &craft.TotalMassEq, Terms: []ID{HangOver, HangHook}}},
	HangOverStress - NumFields:  {Key: "hang.over-stress", Unit: "MPa", Digits: 4, Working: &Working{Eq: &craft.StressOfMassEq, Terms: []ID{HangOverTotal, HangLoadArea}}},
	HangOverSet - NumFields:     {Key: "hang.over-set", Working: &nearest},
	HangWater - NumFields:       {Key: "hang.water", Unit: "ml", Digits: 3, Working: &Working{Eq: &craft.WaterEq, Terms: []ID{HangAdd, HangBottle}}},
	HangRise - NumFields:        {Key: "hang.rise", Unit: "mm", Digits: 4, Working: &Working{Eq: &craft.RiseEq, Terms: []ID{CutPrecursor, ClampCoiled}}},
	HangHookHeight - NumFields:  {Key: "hang.hook-height", Unit: "mm", Digits: 4, Working: &Working{Eq: &craft.HookHeightEq, Terms: []ID{HangClearance, HangStack, CutLength}}},
	HangDropStart - NumFields:   {Key: "hang.drop-start", Unit: "J", Digits: 4, Working: &Working{Eq: &craft.DropEnergyEq, Terms: []ID{HangMass, HangClearance}}},
	HangDropCoiled - NumFields:  {Key: "hang.drop-coiled", Unit: "J", Digits: 4, Working: &Working{Eq: &craft.DropEnergyCoiledEq, Terms: []ID{HangMass, HangClearance, HangRise}}},
	HangTheirStress - NumFields: {Key: "hang.their-stress", Unit: "MPa", Digits: 4, Working: &Working{Eq: &craft.StressOnRoundEq, Terms: []ID{HangTheirMass, HangTheirDiameter}}},
	HangSameMass - NumFields:    {Key: "hang.same-mass", Unit: "g", Digits: 3, Working: &Working{Eq: &craft.SameStressEq, Terms: []ID{HangTheirStress, HangLoadArea}}},
	HangOfLabel - NumFields:     {Key: "hang.of-label", Unit: "%", Digits: 3, Working: &Working{Eq: &craft.ShareEq, Terms: []ID{HangStress, FibreLabelStress}}},

	CutLength - NumFields:       {Key: "cut.length", Unit: "mm", Digits: 4, Working: &Working{Eq: &craft.CutLengthEq, Terms: []ID{CutPrecursor, CutTail}}},
	CutAllPieces - NumFields:    {Key: "cut.all-pieces", Digits: 1, Working: &Working{Eq: &craft.PiecesEq, Terms: []ID{CutPieces, CutSpare}}},
	CutTotal - NumFields:        {Key: "cut.total", Unit: "m", Digits: 4, Working: &Working{Eq: &craft.TotalLineEq, Terms: []ID{CutAllPieces, FibreStrands, CutLength}}},
	CutYarnTotal - NumFields:    {Key: "cut.yarn-total", Unit: "m", Digits: 4, Working: &Working{Eq: &craft.TotalLineEq, Terms: []ID{CutAllPieces, YarnStrands, CutLength}}},
	CutFibreMass - NumFields:    {Key: "cut.fibre-mass", Unit: "g", Digits: 4, Working: &Working{Eq: &craft.FibreMassEq, Terms: []ID{FibreStrands, FibreDensity, FibreArea, CutPrecursor}}},
	CutTrialRatio - NumFields:   {Key: "cut.trial-ratio", Digits: 4, Working: &Working{Eq: &craft.RatioEq, Terms: []ID{CutTrialPrecursor, CutTrialCoiled}}},
	CutMuscles - NumFields:      {Key: "cut.muscles", Digits: 1, Working: &Working{Eq: &craft.SideBySideEq, Terms: []ID{CutLift, CutLiftStress, HangLoadArea}}},
	CutMuscleStress - NumFields: {Key: "cut.muscle-stress", Unit: "MPa", Digits: 4, Working: &Working{Eq: &craft.StressEq, Terms: []ID{CutMuscleForce, HangLoadArea}}},
	CutMuscleForce - NumFields:  {Key: "cut.muscle-force", Unit: "N", Digits: 4, Working: &Working{Eq: &craft.HangingForceEq, Terms: []ID{CutMuscleShare}}},
	CutMuscleShare - NumFields:  {Key: "cut.muscle-share", Unit: "g", Digits: 4, Working: &Working{Eq: &craft.MassShareEq, Terms: []ID{CutLift, CutMuscles}}},

	TwistBefore - NumFields:         {Key: "twist.before", Unit: "mm", Digits: 4},
	TwistThickness - NumFields:      {Key: "twist.thickness", Unit: "mm", Digits: 4},
	TwistContraction - NumFields:    {Key: "twist.contraction", Digits: 4, Working: &Working{Eq: &craft.ContractionEq, Terms: []ID{TwistBias}}},
	TwistShortening - NumFields:     {Key: "twist.shortening", Unit: "%", Digits: 3, Working: &Working{Eq: &craft.RetractionEq, Terms: []ID{TwistContraction}}},
	TwistStraight - NumFields:       {Key: "twist.straight", Unit: "mm", Digits: 4, Working: &Working{Eq: &craft.TwistedLengthEq, Terms: []ID{CutPrecursor, TwistContraction}}},
	TwistTitre - NumFields:          {Key: "twist.titre", Unit: "tex", Digits: 4},
	TwistStrain - NumFields:         {Key: "twist.strain", Unit: "%", Digits: 3, Working: &Working{Eq: &craft.SurfaceShearEq, Terms: []ID{TwistBias}}},
	TwistMost - NumFields:           {Key: "twist.most", Unit: "turns/m", Digits: 3},
	TwistTimedSpeed - NumFields:     {Key: "twist.timed-speed", Unit: "rpm", Digits: 3, Working: &Working{Eq: &craft.DrillSpeedEq, Terms: []ID{TwistTimedTurns, TwistTimed}}},
	TwistOnsetBias - NumFields:      {Key: "twist.onset-bias", Unit: "°", Digits: 3, Working: &onsetBias},
	TwistOnsetBiasLeast - NumFields: {Key: "twist.onset-bias-least", Unit: "°", Digits: 3, Working: &onsetBiasBand},
	TwistOnsetBiasMost - NumFields:  {Key: "twist.onset-bias-most", Unit: "°", Digits: 3, Working: &onsetBiasBand},
	TwistOnset - NumFields:          {Key: "twist.onset", Unit: "turns", Digits: 3},
	TwistOnsetLeast - NumFields:     {Key: "twist.onset-least", Unit: "turns", Digits: 3},
	TwistOnsetMost - NumFields:      {Key: "twist.onset-most", Unit: "turns", Digits: 3},
	TwistSlow - NumFields:           {Key: "twist.slow", Unit: "turns", Digits: 3},
	TwistSlowTime - NumFields:       {Key: "twist.slow-time", Unit: "s", Digits: 3, Working: &Working{Eq: &craft.DrillTimeEq, Terms: []ID{TwistSlow, TwistSpeed}}},
	TwistTime - NumFields:           {Key: "twist.time", Unit: "s", Digits: 3, Working: &Working{Eq: &craft.DrillTimeEq, Terms: []ID{CoilTurns, TwistSpeed}}},
	TwistOther - NumFields:          {Key: "twist.other", Unit: "turns/m", Digits: 4, Working: &Working{Eq: &craft.SameTightnessEq, Terms: []ID{TwistPerPrecursor, TwistBefore, TwistOtherDiameter}}},

	CoilAngle - NumFields:             {Key: "coil.angle", Unit: "°", Digits: 4, Working: &Working{Eq: &craft.PitchAngleEq, Terms: []ID{CoilPitch, CoilMean}}},
	CoilTurnLength - NumFields:        {Key: "coil.turn-length", Unit: "mm", Digits: 4, Working: &Working{Eq: &craft.TurnLengthEq, Terms: []ID{CoilMean, CoilPitch}}},
	CoilGap - NumFields:               {Key: "coil.gap", Unit: "mm", Digits: 3, Working: &Working{Eq: &craft.ClearanceEq, Terms: []ID{CoilPitch, CoilAngle, TwistThickness}}},
	CoilWrithe - NumFields:            {Key: "coil.writhe", Unit: "turns", Digits: 4, Working: &Working{Eq: &craft.WritheEq, Terms: []ID{CoilCount, CoilAngle}}},
	CoilTurns - NumFields:             {Key: "coil.turns", Unit: "turns", Digits: 4, Working: &Working{Eq: &craft.LinkEq, Terms: []ID{TwistTurns, CoilWrithe}}},
	CoilTurnsPerPrecursor - NumFields: {Key: "coil.turns-per-precursor", Unit: "turns/m", Digits: 4, Working: &Working{Eq: &craft.FullCoilingEq, Terms: []ID{TwistPerTwisted, CoilAngle, CoilTurnLength, TwistContraction}}},
	CoilSolidPitch - NumFields:        {Key: "coil.solid-pitch", Unit: "mm", Digits: 4, Working: &touchingWorking},
	CoilSolid - NumFields:             {Key: "coil.solid", Unit: "mm", Digits: 4, Working: &Working{Eq: &craft.CoilLengthEq, Terms: []ID{CoilCount, CoilSolidPitch}}},
	CoilNearSolid - NumFields:         {Key: "coil.near-solid", Unit: "mm", Digits: 4, Working: &Working{Eq: &craft.NearSolidPitchEq, Terms: []ID{TwistThickness, CoilAngle}}},
	CoilTravelLength - NumFields:      {Key: "coil.travel-length", Unit: "mm", Digits: 4, Working: &Working{Eq: &craft.TravelToSolidEq, Terms: []ID{ClampLast, CoilSolid}}},
	CoilTravel - NumFields:            {Key: "coil.travel", Unit: "%", Digits: 4, Working: &Working{Eq: &craft.TravelToSolidShareEq, Terms: []ID{ClampLast, CoilSolid}}},
	CoilFinishedTravel - NumFields:    {Key: "coil.finished-travel", Unit: "%", Digits: 4, Working: &Working{Eq: &craft.TravelToSolidShareEq, Terms: []ID{ClampThisFinished, CoilSolid}}},
	CoilLastPitch - NumFields:         {Key: "coil.last-pitch", Unit: "mm", Digits: 4, Working: &Working{Eq: &craft.PitchEq, Terms: []ID{ClampLast, CoilCount}}},
	CoilLastMean - NumFields:          {Key: "coil.last-mean", Unit: "mm", Digits: 4, Working: &Working{Eq: &craft.MeanOfTurnEq, Terms: []ID{CoilTurnLength, CoilLastPitch}}},
	CoilLastGap - NumFields:           {Key: "coil.last-gap", Unit: "mm", Digits: 3, Working: &Working{Eq: &craft.ClearanceOfEq, Terms: []ID{CoilLastPitch, CoilLastMean, TwistThickness}}},
	CoilSolidMean - NumFields:         {Key: "coil.solid-mean", Unit: "mm", Digits: 4, Working: &Working{Eq: &craft.MeanOfTurnEq, Terms: []ID{CoilTurnLength, CoilSolidPitch}}},
	CoilShapeRatio - NumFields:        {Key: "coil.shape-ratio", Digits: 4, Working: &ratioOfShape},
	CoilLoadIndex - NumFields:         {Key: "coil.load-index", Digits: 3, Working: &loadIndexBand},
	CoilLoadIndexLeast - NumFields:    {Key: "coil.load-index-least", Digits: 3, Working: &loadIndexBand},
	CoilLoadIndexMost - NumFields:     {Key: "coil.load-index-most", Digits: 3, Working: &loadIndexBand},
	CoilRodMean - NumFields:           {Key: "coil.rod-mean", Unit: "mm", Digits: 4, Working: &Working{Eq: &craft.OnRodEq, Terms: []ID{CoilRod, TwistThickness}}},
	CoilRodIndex - NumFields:          {Key: "coil.rod-index", Digits: 4, Working: &Working{Eq: &craft.IndexEq, Terms: []ID{CoilRodMean, TwistThickness}}},
	CoilRodAngle - NumFields:          {Key: "coil.rod-angle", Unit: "°", Digits: 3, Working: &Working{Eq: &craft.PitchAngleEq, Terms: []ID{CoilRodPitch, CoilRodMean}}},
	CoilRodGap - NumFields:            {Key: "coil.rod-gap", Unit: "mm", Digits: 3, Working: &Working{Eq: &craft.ClearanceEq, Terms: []ID{CoilRodPitch, CoilRodAngle, TwistThickness}}},
	CoilRodCount - NumFields:          {Key: "coil.rod-count", Unit: "coils", Digits: 4, Working: &Working{Eq: &craft.CoilsEq, Terms: []ID{CoilRodLength, CoilRodPitch}}},
	CoilRodFibre - NumFields:          {Key: "coil.rod-fibre", Unit: "mm", Digits: 4, Working: &Working{Eq: &craft.RodFibreEq, Terms: []ID{CoilRodLength, CoilRodPitch, CoilRodMean}}},
	CoilRodPrecursor - NumFields:      {Key: "coil.rod-precursor", Unit: "mm", Digits: 4, Working: &Working{Eq: &craft.UntwistedEq, Terms: []ID{CoilRodFibre, TwistContraction}}},
	CoilRodLimit - NumFields:          {Key: "coil.rod-limit", Unit: "%", Digits: 3, Working: &rodTouching},

	ClampPiece - NumFields:                {Key: "clamp.piece", Unit: "mm", Digits: 4},
	ClampBase - NumFields:                 {Key: "clamp.base", Unit: "mm", Digits: 4},
	ClampLast - NumFields:                 {Key: "clamp.last", Unit: "mm", Digits: 4},
	ClampThisRatio - NumFields:            {Key: "clamp.this-ratio", Digits: 4, Working: &Working{Eq: &craft.RatioEq, Terms: []ID{CutPrecursor, ClampMeasured}}},
	ClampThisFinished - NumFields:         {Key: "clamp.this-finished", Unit: "mm", Digits: 4, Working: &finishedOfLast},
	ClampFirstReal - NumFields:            {Key: "clamp.first-real", Unit: "%", Digits: 4, Working: &Working{Eq: &craft.StretchEq, Terms: []ID{ClampFirst, ClampPiece}}},
	ClampSecondReal - NumFields:           {Key: "clamp.second-real", Unit: "%", Digits: 4, Working: &Working{Eq: &craft.StretchEq, Terms: []ID{ClampSecond, ClampBase}}},
	ClampFirstMove - NumFields:            {Key: "clamp.first-move", Unit: "mm", Digits: 4, Working: &Working{Eq: &craft.MoveEq, Terms: []ID{ClampFirst, ClampPiece}}},
	ClampSecondMove - NumFields:           {Key: "clamp.second-move", Unit: "mm", Digits: 4, Working: &Working{Eq: &craft.MoveEq, Terms: []ID{ClampSecond, ClampFirst}}},
	ClampSecondOfFirst - NumFields:        {Key: "clamp.second-of-first", Unit: "%", Digits: 4, Working: &Working{Eq: &craft.StretchEq, Terms: []ID{ClampSecond, ClampFirst}}},
	ClampTravelLength - NumFields:         {Key: "clamp.travel-length", Unit: "mm", Digits: 4, Working: &Working{Eq: &craft.TravelEq, Terms: []ID{ClampLast, ClampPiece}}},
	ClampTravel - NumFields:               {Key: "clamp.travel", Unit: "%", Digits: 4, Working: &Working{Eq: &craft.TravelShareEq, Terms: []ID{ClampLast, ClampPiece}}},
	ClampFinishedTravelLength - NumFields: {Key: "clamp.finished-travel-length", Unit: "mm", Digits: 4, Working: &Working{Eq: &craft.TravelEq, Terms: []ID{ClampThisFinished, ClampPiece}}},
	ClampFinishedTravel - NumFields:       {Key: "clamp.finished-travel", Unit: "%", Digits: 4, Working: &Working{Eq: &craft.TravelShareEq, Terms: []ID{ClampThisFinished, ClampPiece}}},
	ClampFirstPosition - NumFields:        {Key: "clamp.first-position", Unit: "mm", Digits: 4, Working: &Working{Eq: &craft.PositionEq, Terms: []ID{ClampZero, ClampFirst}}},
	ClampSecondPosition - NumFields:       {Key: "clamp.second-position", Unit: "mm", Digits: 4, Working: &Working{Eq: &craft.PositionEq, Terms: []ID{ClampZero, ClampSecond}}},
	ClampFirstHole - NumFields:            {Key: "clamp.first-hole", Digits: 1, Working: &Working{Method: "nearest-hole", Source: &craft.Geometry, Terms: []ID{ClampFirst, ClampHolePitch, ClampHoleOffset}}},
	ClampFirstHoleGap - NumFields:         {Key: "clamp.first-hole-gap", Unit: "mm", Digits: 4, Working: &Working{Eq: &craft.HoleGapEq, Terms: []ID{ClampFirstHole, ClampHolePitch, ClampHoleOffset}}},
	ClampFirstHoleStretch - NumFields:     {Key: "clamp.first-hole-stretch", Unit: "%", Digits: 4, Working: &Working{Eq: &craft.StretchEq, Terms: []ID{ClampFirstHoleGap, ClampPiece}}},
	ClampSecondHole - NumFields:           {Key: "clamp.second-hole", Digits: 1, Working: &Working{Method: "nearest-hole", Source: &craft.Geometry, Terms: []ID{ClampSecond, ClampHolePitch, ClampHoleOffset}}},
	ClampSecondHoleGap - NumFields:        {Key: "clamp.second-hole-gap", Unit: "mm", Digits: 4, Working: &Working{Eq: &craft.HoleGapEq, Terms: []ID{ClampSecondHole, ClampHolePitch, ClampHoleOffset}}},
	ClampSecondHoleStretch - NumFields:    {Key: "clamp.second-hole-stretch", Unit: "%", Digits: 4},

	HeatDial - NumFields:      {Key: "heat.dial", Unit: "°C", Digits: 3},
	HeatMeanDial - NumFields:  {Key: "heat.mean-dial", Unit: "°C", Digits: 4},
	HeatMeanProbe - NumFields: {Key: "heat.mean-probe", Unit: "°C", Digits: 4},
	HeatSlope - NumFields:     {Key: "heat.slope", Digits: 4},
	HeatPeak - NumFields:      {Key: "heat.peak", Unit: "°C", Digits: 3, Working: &Working{Eq: &craft.PeakEq, Terms: []ID{HeatSet, HeatOvershoot}}},
	HeatMargin - NumFields:    {Key: "heat.margin", Unit: "K", Digits: 3, Working: &Working{Eq: &craft.MarginEq, Terms: []ID{HeatMelt, HeatPeak}}},
	HeatFrames - NumFields:    {Key: "heat.frames", Digits: 1, Working: &Working{Method: "whole-frames", Source: &craft.Geometry, Terms: []ID{HeatOvenWidth, HeatOvenDepth, HeatOvenShelves, HeatFrameLength, HeatFrameWidth, HeatFrameGap}}},
	HeatPerLoad - NumFields:   {Key: "heat.per-load", Digits: 1, Working: &Working{Eq: &craft.PerLoadEq, Terms: []ID{HeatFrames, HeatFramePieces}}},
	HeatLoads - NumFields:     {Key: "heat.loads", Digits: 1, Working: &Working{Eq: &craft.LoadsEq, Terms: []ID{CutAllPieces, HeatPerLoad}}},
	HeatTotal - NumFields:     {Key: "heat.total", Unit: "h", Digits: 3},

	// Of the wire.
	WireLength - NumFields:         {Key: "wire.length", Unit: "mm", Digits: 4},
	WireOhms - NumFields:           {Key: "wire.ohms", Unit: "Ω", Digits: 4, Working: &Working{Eq: &craft.YarnOhmsEq, Terms: []ID{WirePerLength, WireLength, WireStrands}}},
	WireLeastOhms - NumFields:      {Key: "wire.least-ohms", Unit: "Ω", Digits: 2, Working: &Working{Eq: &craft.ShuntedOhmsEq, Terms: []ID{WireOhms, ClampPiece, WireLength}}},
	WireOfPrecursor - NumFields:    {Key: "wire.of-precursor", Unit: "Ω/cm", Digits: 3, Working: &Working{Eq: &craft.OhmsPerEq, Terms: []ID{WireOhms, CutPrecursor}}},
	WireOfCoil - NumFields:         {Key: "wire.of-coil", Unit: "Ω/cm", Digits: 3, Working: &Working{Eq: &craft.OhmsPerEq, Terms: []ID{WireOhms, ClampPiece}}},
	WireOfFinished - NumFields:     {Key: "wire.of-finished", Unit: "Ω/cm", Digits: 3, Working: &Working{Eq: &craft.OhmsPerEq, Terms: []ID{WireOhms, ClampThisFinished}}},
	WireTotal - NumFields:          {Key: "wire.total", Unit: "Ω", Digits: 4, Working: &Working{Eq: &craft.WiredEq, Terms: []ID{WireOhms, WireInRow, WireRows}}},
	WireRowCurrent - NumFields:     {Key: "wire.row-current", Unit: "A", Digits: 3, Working: &Working{Eq: &craft.RowCurrentEq, Terms: []ID{WireSupplyVoltage, WireOhms, WireInRow, WireRows}}},
	WireSideCurrent - NumFields:    {Key: "wire.side-current", Unit: "A", Digits: 3, Working: &Working{Eq: &craft.SideCurrentEq, Terms: []ID{WireSupplyVoltage, WireInRow, WireRows, WireOhms}}},
	WireAverageCurrent - NumFields: {Key: "wire.average-current", Unit: "A", Digits: 3, Working: &Working{Eq: &craft.AverageCurrentEq, Terms: []ID{WireDuty, WireCurrent}}},
	WireMusclePower - NumFields:    {Key: "wire.muscle-power", Unit: "W", Digits: 3, Working: &Working{Eq: &craft.MusclePowerEq, Terms: []ID{WireAverage, WireInRow, WireRows}}},
	WireFullPower - NumFields:      {Key: "wire.full-power", Unit: "W", Digits: 3, Working: &Working{Eq: &craft.MusclePowerEq, Terms: []ID{WirePower, WireInRow, WireRows}}},
	WirePowerPerLength - NumFields: {Key: "wire.power-per-length", Unit: "W/cm", Digits: 3, Working: &Working{Eq: &craft.PowerPerEq, Terms: []ID{WireFullPower, ClampThisFinished}}},
	WireLeadOhms - NumFields:       {Key: "wire.lead-ohms", Unit: "Ω", Digits: 3, Working: &Working{Eq: &craft.CopperOhmsEq, Terms: []ID{WireLeadLength, WireArea}}},
	WireDrop - NumFields:           {Key: "wire.drop", Unit: "V", Digits: 3, Working: &Working{Eq: &craft.LeadDropEq, Terms: []ID{WireCurrent, WireLeadOhms}}},
	WireLeadHeat - NumFields:       {Key: "wire.lead-heat", Unit: "W", Digits: 3, Working: &Working{Eq: &craft.LeadHeatEq, Terms: []ID{WireCurrent, WireLeadOhms}}},
	WireFuse - NumFields:           {Key: "wire.fuse", Unit: "A", Digits: 3, Working: &Working{Method: "fuse", Source: &craft.FuseRatings, Terms: []ID{WireCurrent}}},
	WireDummy - NumFields:          {Key: "wire.dummy", Unit: "Ω", Digits: 3},
	WireCycles - NumFields:         {Key: "wire.cycles", Digits: 3, Working: &Working{Eq: &craft.BatteryCyclesEq, Terms: []ID{WireLasts, WirePeriod}}},
	WireHotOhms - NumFields:        {Key: "wire.hot-ohms", Unit: "Ω", Digits: 4, Working: &Working{Eq: &craft.OhmsAtEq, Terms: []ID{WireTotal, WireCoefficient, DriveTarget, DriveRoom}}},
	WireDrift - NumFields:          {Key: "wire.drift", Unit: "%", Digits: 3, Working: &Working{Eq: &craft.OhmsDriftEq, Terms: []ID{WireAfter, WireBefore}}},
	WireTestPerLength - NumFields:  {Key: "wire.test-per-length", Unit: "Ω/m", Digits: 4, Working: &lineTest},
	WireTestContact - NumFields:    {Key: "wire.test-contact", Unit: "Ω", Digits: 3, Working: &lineTest},

	WireOwnVoltage - NumFields:       {Key: "wire.own-voltage", Unit: "V", Digits: 2},
	WirePause - NumFields:            {Key: "wire.pause", Unit: "s", Digits: 3, Working: &Working{Eq: &craft.PauseEq, Terms: []ID{WirePeriod, WireOnTime}}},
	WireDummyPower - NumFields:       {Key: "wire.dummy-power", Unit: "W", Digits: 2, Working: &Working{Eq: &craft.WattsEq, Terms: []ID{WireSupplyVoltage, WireDummy}}},
	WireEnergy - NumFields:           {Key: "wire.energy", Unit: "Wh", Digits: 3, Working: &Working{Eq: &craft.BatteryEnergyEq, Terms: []ID{WireCharge, WireCell}}},
	WireLasts - NumFields:            {Key: "wire.lasts", Unit: "h", Digits: 3},
	WireReadingOhms - NumFields:      {Key: "wire.reading-ohms", Unit: "Ω", Digits: 4, Working: &Working{Eq: &craft.OhmsOfEq, Terms: []ID{WireReadingVolts, WireReadingAmperes}}},
	WireReadingPerLength - NumFields: {Key: "wire.reading-per-length", Unit: "Ω/m", Digits: 4, Working: &Working{Eq: &craft.OhmsPerEq, Terms: []ID{WireReadingOhms, WireReadingLength}}},
	WireWantedPerLength - NumFields:  {Key: "wire.wanted-per-length", Unit: "Ω/m", Digits: 4, Working: &Working{Eq: &craft.PerLengthForOhmsEq, Terms: []ID{WireWanted, WireStrands, WireLength}}},
	WireWantedLength - NumFields:     {Key: "wire.wanted-length", Unit: "mm", Digits: 4, Working: &Working{Eq: &craft.YarnForOhmsEq, Terms: []ID{WireWanted, WireStrands, WirePerLength}}},
	WireWantedStrands - NumFields:    {Key: "wire.wanted-strands", Digits: 1, Working: &Working{Eq: &craft.StrandsForOhmsEq, Terms: []ID{WirePerLength, WireLength, WireWanted}}},
	WireWantedReal - NumFields:       {Key: "wire.wanted-real", Unit: "W", Digits: 3, Working: &Working{Eq: &craft.PowerOfStrandsEq, Terms: []ID{WireSupplyVoltage, WireInRow, WireWantedStrands, WirePerLength, WireLength}}},
	WireReadTemperature - NumFields:  {Key: "wire.read-temperature", Unit: "°C", Digits: 3, Working: &Working{Eq: &craft.TemperatureOfOhmsEq, Terms: []ID{DriveRoom, WireReadHot, WireReadCold, WireCoefficient}}},

	// Of the drive.
	DriveHottest - NumFields:    {Key: "drive.hottest", Unit: "°C", Digits: 3},
	DriveCoolest - NumFields:    {Key: "drive.coolest", Unit: "°C", Digits: 3},
	DriveStuck - NumFields:      {Key: "drive.stuck", Unit: "°C", Digits: 3},
	DriveMargin - NumFields:     {Key: "drive.margin", Unit: "K", Digits: 3, Working: &Working{Eq: &craft.MarginEq, Terms: []ID{HeatMelt, DriveStuck}}},
	DriveMeltTime - NumFields:   {Key: "drive.melt-time", Unit: "s", Digits: 3, Working: &Working{Method: "in-time", Source: &craft.StepPair, Terms: []ID{HeatMelt, DriveRoom, DriveStuck, CutFibreMass, DriveSpecificHeat}}},
	DriveHeatLeast - NumFields:  {Key: "drive.heat-least", Unit: "s", Digits: 3, Working: &inTime},
	DriveHeatMost - NumFields:   {Key: "drive.heat-most", Unit: "s", Digits: 3, Working: &inTime},
	DriveCoolLeast - NumFields:  {Key: "drive.cool-least", Unit: "s", Digits: 3, Working: &inTime},
	DriveCoolMost - NumFields:   {Key: "drive.cool-most", Unit: "s", Digits: 3, Working: &inTime},
	DriveCycles - NumFields:     {Key: "drive.cycles", Digits: 3, Working: &Working{Eq: &craft.CyclesPerMinuteEq, Terms: []ID{DriveOn, DriveOff}}},
	DriveHigh - NumFields:       {Key: "drive.high", Unit: "°C", Digits: 3, Working: &swing},
	DriveHighLeast - NumFields:  {Key: "drive.high-least", Unit: "°C", Digits: 3, Working: &swing},
	DriveLow - NumFields:        {Key: "drive.low", Unit: "°C", Digits: 3, Working: &swing},
	DriveAtMost - NumFields:     {Key: "drive.at-most", Unit: "°C", Digits: 3, Working: &course},
	DriveAtLeast - NumFields:    {Key: "drive.at-least", Unit: "°C", Digits: 3, Working: &course},
	DriveShown - NumFields:      {Key: "drive.shown", Unit: "s", Digits: 3, Working: &Working{Method: "three-cycles", Source: &craft.Geometry, Terms: []ID{DriveOn, DriveOff}}},
	DriveHoldLeast - NumFields:  {Key: "drive.hold-least", Unit: "W", Digits: 3},
	DriveHoldMost - NumFields:   {Key: "drive.hold-most", Unit: "W", Digits: 3},
	DriveDutyMost - NumFields:   {Key: "drive.duty-most", Unit: "%", Digits: 3, Working: &Working{Eq: &craft.DutyEq, Terms: []ID{DriveHoldMost, DrivePower}}},
	DriveEnergy - NumFields:     {Key: "drive.energy", Unit: "J", Digits: 3, Working: &Working{Eq: &craft.CycleEnergyEq, Terms: []ID{DrivePower, DriveOn}}},
	DriveEfficiency - NumFields: {Key: "drive.efficiency", Unit: "%", Digits: 2, Working: &Working{Eq: &craft.EfficiencyEq, Terms: []ID{StrokeWork, DriveEnergy}}},
	DriveBiot - NumFields:       {Key: "drive.biot", Digits: 2, Working: &Working{Method: "biot", Source: &craft.HeatTheory, Terms: heatTerms}},
	DriveInner - NumFields:      {Key: "drive.inner", Unit: "s", Digits: 2, Working: &Working{Method: "inner-time", Source: &craft.HeatTheory, Terms: []ID{FibreDensity, DriveSpecificHeat, TwistThickness}}},
	DriveConstant - NumFields:   {Key: "drive.constant", Unit: "s", Digits: 3, Working: &decayFit},
	DriveCapacity - NumFields:   {Key: "drive.capacity", Unit: "J/K", Digits: 3, Working: &Working{Method: "heat-capacity", Source: &craft.HeatTheory, Terms: []ID{CutFibreMass, DriveSpecificHeat, DriveRoom, DriveTarget}}},
	DriveTrialLoss - NumFields:  {Key: "drive.trial-loss", Unit: "mW/K", Digits: 3},
	DriveBookLeast - NumFields:  {Key: "drive.book-least", Unit: "mW/K", Digits: 3},
	DriveBookMost - NumFields:   {Key: "drive.book-most", Unit: "mW/K", Digits: 3},
	DriveSetTime - NumFields:    {Key: "drive.set-time", Unit: "s", Digits: 3, Working: &Working{Method: "in-time", Source: &craft.StepPair, Terms: []ID{HeatSet, DriveRoom, DriveStuck, CutFibreMass, DriveSpecificHeat}}},
	DriveBoiling - NumFields:    {Key: "drive.boiling", Unit: "°C", Digits: 3, Working: &Working{Method: "boiling", Source: &craft.HeatTheory, Terms: []ID{DriveAltitude}}},

	// Of the stroke.
	StrokeStroke - NumFields:        {Key: "stroke.stroke", Unit: "mm", Digits: 3},
	StrokeLeast - NumFields:         {Key: "stroke.least", Unit: "mm", Digits: 2},
	StrokeMost - NumFields:          {Key: "stroke.most", Unit: "mm", Digits: 2},
	StrokeShare - NumFields:         {Key: "stroke.share", Unit: "%", Digits: 3, Working: &shareOfCold},
	StrokeShareLeast - NumFields:    {Key: "stroke.share-least", Unit: "%", Digits: 2},
	StrokeShareMost - NumFields:     {Key: "stroke.share-most", Unit: "%", Digits: 2},
	StrokeOfCoiled - NumFields:      {Key: "stroke.of-coiled", Unit: "%", Digits: 3, Working: &Working{Eq: &craft.StrokeShareEq, Terms: []ID{StrokeStroke, ClampPiece}}},
	StrokeOfFinished - NumFields:    {Key: "stroke.of-finished", Unit: "%", Digits: 3, Working: &Working{Eq: &craft.StrokeShareEq, Terms: []ID{StrokeStroke, ClampThisFinished}}},
	StrokeColdLength - NumFields:    {Key: "stroke.cold-length", Unit: "mm", Digits: 4},
	StrokeHotLength - NumFields:     {Key: "stroke.hot-length", Unit: "mm", Digits: 4},
	StrokeBlocked - NumFields:       {Key: "stroke.blocked", Unit: "N", Digits: 3},
	StrokeGain - NumFields:          {Key: "stroke.gain", Unit: "N", Digits: 3, Working: &Working{Eq: &craft.HeldGainEq, Terms: []ID{StrokeBlocked, StrokeColdPull}}},
	StrokeOther - NumFields:         {Key: "stroke.other", Unit: "mm", Digits: 4},
	StrokeSwing - NumFields:         {Key: "stroke.swing", Unit: "mm", Digits: 3, Working: &Working{Eq: &craft.StrokeEq, Terms: []ID{StrokeOther, StrokeHotLength}}},
	StrokeAtLoad - NumFields:        {Key: "stroke.at-load", Unit: "N", Digits: 3, Working: &Working{Eq: &craft.PullAtLoadEq, Terms: []ID{StrokeBlocked, StrokeColdPull, StrokePull, StrokeBeside, StrokeLever}}},
	StrokeUnequal - NumFields:       {Key: "stroke.unequal", Unit: "%", Digits: 2, Working: &Working{Eq: &craft.UnequalEq, Terms: []ID{StrokeColdRate, ClampRulerDoubt, StrokePull}}},
	StrokeLoadTravel - NumFields:    {Key: "stroke.load-travel", Unit: "mm", Digits: 3, Working: &Working{Eq: &craft.LeverStrokeEq, Terms: []ID{StrokeStroke, StrokeLever}}},
	StrokeTurn - NumFields:          {Key: "stroke.turn", Unit: "°", Digits: 3, Working: &Working{Eq: &craft.PulleyTurnEq, Terms: []ID{StrokeStroke, StrokePulley}}},
	StrokePull - NumFields:          {Key: "stroke.pull", Unit: "N", Digits: 3, Working: &Working{Eq: &craft.MusclePullEq, Terms: []ID{StrokeLoad, StrokeLever, StrokeBeside}}},
	StrokeBack - NumFields:          {Key: "stroke.back", Unit: "N/m", Digits: 3},
	StrokeSlackAt - NumFields:       {Key: "stroke.slack-at", Unit: "mm", Digits: 4},
	StrokeByMasses - NumFields:      {Key: "stroke.by-masses", Unit: "mm", Digits: 4, Working: &Working{Eq: &craft.LengthOfMassEq, Terms: []ID{StrokeColdLight, StrokeColdPull, StrokeLight, StrokeColdRate}}},
	StrokeSpringRate - NumFields:    {Key: "stroke.spring-rate", Unit: "N/m", Digits: 3, Working: &Working{Eq: &craft.SteelSpringRateEq, Terms: []ID{StrokeSpringWire, StrokeSpringOutside, StrokeSpringTurns}}},
	StrokeSpringPull - NumFields:    {Key: "stroke.spring-pull", Unit: "N", Digits: 3, Working: &Working{Eq: &craft.SpringPullEq, Terms: []ID{StrokeHotPull, StrokePull, StrokeBeside, StrokeLever}}},
	StrokeSpringStress - NumFields:  {Key: "stroke.spring-stress", Unit: "MPa", Digits: 3, Working: &Working{Eq: &craft.SpringStressEq, Terms: []ID{StrokeSpringPull, StrokeSpringOutside, StrokeSpringWire}}},
	StrokeSpringLimit - NumFields:   {Key: "stroke.spring-limit", Unit: "MPa", Digits: 2, Working: &Working{Method: "music-wire", Source: &craft.SpringWires, Terms: []ID{StrokeSpringWire}}},
	StrokeColdPull - NumFields:      {Key: "stroke.cold-pull", Unit: "N", Digits: 3},
	StrokeHotPull - NumFields:       {Key: "stroke.hot-pull", Unit: "N", Digits: 3},
	StrokeAlong - NumFields:         {Key: "stroke.along", Unit: "%", Digits: 2, Working: &warming},
	StrokeAcross - NumFields:        {Key: "stroke.across", Unit: "%", Digits: 2, Working: &warming},
	StrokeFree - NumFields:          {Key: "stroke.free", Unit: "mm", Digits: 3},
	StrokeColdFree - NumFields:      {Key: "stroke.cold-free", Unit: "mm", Digits: 4},
	StrokeHotFree - NumFields:       {Key: "stroke.hot-free", Unit: "mm", Digits: 4},
	StrokeColdRate - NumFields:      {Key: "stroke.cold-rate", Unit: "N/m", Digits: 3},
	StrokeHotRate - NumFields:       {Key: "stroke.hot-rate", Unit: "N/m", Digits: 3},
	StrokeScalePull - NumFields:     {Key: "stroke.scale-pull", Unit: "N", Digits: 4, Working: &Working{Eq: &craft.ScaleForceEq, Terms: []ID{StrokeScaleCold, StrokeScaleHot}}},
	StrokeWork - NumFields:          {Key: "stroke.work", Unit: "mJ", Digits: 3, Working: &Working{Eq: &craft.SpringWorkEq, Terms: []ID{StrokeColdPull, StrokeHotPull, StrokeStroke}}},
	StrokeSpecificWork - NumFields:  {Key: "stroke.specific-work", Unit: "J/kg", Digits: 3, Working: &Working{Eq: &craft.SpecificWorkEq, Terms: []ID{StrokeWork, CutFibreMass}}},
	StrokePower - NumFields:         {Key: "stroke.power", Unit: "mW", Digits: 3},
	StrokeSpecificPower - NumFields: {Key: "stroke.specific-power", Unit: "W/kg", Digits: 3, Working: &Working{Eq: &craft.SpecificPowerEq, Terms: []ID{StrokePower, CutFibreMass}}},

	// Of what goes wrong.
	TroubleLess - NumFields:       {Key: "trouble.less-mass", Unit: "g", Digits: 3, Working: &Working{Eq: &craft.LessMassEq, Terms: []ID{HangMass}}},
	TroubleLessAdd - NumFields:    {Key: "trouble.less-add", Unit: "g", Digits: 3, Working: &Working{Eq: &craft.OnHookEq, Terms: []ID{TroubleLess, HangHook}}},
	TroubleMore - NumFields:       {Key: "trouble.more-mass", Unit: "g", Digits: 3, Working: &Working{Eq: &craft.MoreMassEq, Terms: []ID{HangMass}}},
	TroubleMoreAdd - NumFields:    {Key: "trouble.more-add", Unit: "g", Digits: 3, Working: &Working{Eq: &craft.OnHookEq, Terms: []ID{TroubleMore, HangHook}}},
	TroubleBrokeShare - NumFields: {Key: "trouble.broke-share", Unit: "%", Digits: 3, Working: &Working{Eq: &craft.TurnsShareEq, Terms: []ID{TroubleBroke, TwistOnset}}},
}

var nearest = Working{Method: "nearest-load", Source: &craft.Geometry, Terms: []ID{HangAdd, HangOwned}}

var (
	mainArea = Working{Eq: &craft.MainAreaEq, Terms: []ID{FibreStrands, FibreArea}}
	allAreas = Working{Eq: &craft.AllAreaEq, Terms: []ID{FibreStrands, FibreArea, YarnStrands, YarnArea}}

	envelopeMain = Working{Method: "envelope", Source: &craft.Geometry, Terms: []ID{FibreStrands, FibreDiameter}}
	envelopeAll  = Working{Method: "envelope", Source: &craft.Geometry, Terms: []ID{FibreStrands, FibreDiameter, YarnStrands, YarnDiameter}}
)
