package calc

import (
	"unsafe"

	"twistbench/calc/craft"
	"twistbench/calc/quantity"
)

// place is where a State keeps a number, and of what kind it is. (A function that returns where each number is would take ten times as much
// of the page's program.)
type place struct {
	at   uintptr // bytes from the start of the State
	kind uint8   // of kindsOf
}

// The kinds of numbers in a plan and its answers.
const (
	none uint8 = iota
	ofAngle
	ofArea
	ofClock
	ofCount
	ofDay
	ofDensity
	ofEnergy
	ofForce
	ofFraction
	ofLength
	ofLinearDensity
	ofList
	ofMass
	ofNumber
	ofRatio
	ofRatioDoubt
	ofRotation
	ofShare
	ofStress
	ofTemperature
	ofTemperatureDifference
	ofTime
	ofTurns
	ofTwist
	ofTwistFactor
	ofVolume
	ofWord
)

var noKind *quantity.Kind

// kindsOf has where each kind is kept: the kinds themselves would be copied when the program starts.
var kindsOf = [...]**quantity.Kind{
	none:                    &noKind,
	ofAngle:                 &quantity.KindAngle,
	ofArea:                  &quantity.KindArea,
	ofClock:                 &quantity.KindClock,
	ofCount:                 &quantity.KindCount,
	ofDay:                   &quantity.KindDay,
	ofDensity:               &quantity.KindDensity,
	ofEnergy:                &quantity.KindEnergy,
	ofForce:                 &quantity.KindForce,
	ofFraction:              &quantity.KindFraction,
	ofLength:                &quantity.KindLength,
	ofLinearDensity:         &quantity.KindLinearDensity,
	ofList:                  &quantity.KindList,
	ofMass:                  &quantity.KindMass,
	ofNumber:                &quantity.KindNumber,
	ofRatio:                 &quantity.KindRatio,
	ofRatioDoubt:            &quantity.KindRatioDoubt,
	ofRotation:              &quantity.KindRotation,
	ofShare:                 &quantity.KindShare,
	ofStress:                &quantity.KindStress,
	ofTemperature:           &quantity.KindTemperature,
	ofTemperatureDifference: &quantity.KindTemperatureDifference,
	ofTime:                  &quantity.KindTime,
	ofTurns:                 &quantity.KindTurns,
	ofTwist:                 &quantity.KindTwist,
	ofTwistFactor:           &quantity.KindTwistFactor,
	ofVolume:                &quantity.KindVolume,
	ofWord:                  &quantity.KindWord,
}

// Where the parts of what is worked begin, and how wide a number is.
const (
	inPlan  = unsafe.Offsetof(solved{}.Plan)
	inFibre = inPlan + unsafe.Offsetof(Plan{}.Fibre)
	inYarn  = inPlan + unsafe.Offsetof(Plan{}.Yarn)
	inHeat  = inPlan + unsafe.Offsetof(Plan{}.Heat)
	inOut   = unsafe.Offsetof(solved{}.Out)
	wide    = unsafe.Sizeof(float64(0))
)

// places is the table of where each number is. A choice of masses, which is text, has none.
var places = [NumIDs]place{
	FibrePolymer:              {inFibre + unsafe.Offsetof(Strand{}.Polymer), ofWord},
	FibreDiameter:             {inFibre + unsafe.Offsetof(Strand{}.Diameter), ofLength},
	FibreDiameterDoubt:        {inPlan + unsafe.Offsetof(Plan{}.DiameterDoubt), ofLength},
	FibreLinearDensity:        {inFibre + unsafe.Offsetof(Strand{}.LinearDensity), ofLinearDensity},
	FibreArea:                 {inFibre + unsafe.Offsetof(Strand{}.Area), ofArea},
	FibreDensity:              {inFibre + unsafe.Offsetof(Strand{}.Density), ofDensity},
	FibreStrands:              {inFibre + unsafe.Offsetof(Strand{}.Strands), ofCount},
	FibreWeighedLength:        {inFibre + unsafe.Offsetof(Strand{}.WeighedLength), ofLength},
	FibreWeighedMass:          {inFibre + unsafe.Offsetof(Strand{}.WeighedMass), ofMass},
	FibreLabelStrength:        {inPlan + unsafe.Offsetof(Plan{}.LabelStrength), ofMass},
	FibreBundle:               {inPlan + unsafe.Offsetof(Plan{}.Bundle), ofLength},
	YarnStrands:               {inYarn + unsafe.Offsetof(Strand{}.Strands), ofCount},
	YarnPolymer:               {inYarn + unsafe.Offsetof(Strand{}.Polymer), ofWord},
	YarnDiameter:              {inYarn + unsafe.Offsetof(Strand{}.Diameter), ofLength},
	YarnLinearDensity:         {inYarn + unsafe.Offsetof(Strand{}.LinearDensity), ofLinearDensity},
	YarnArea:                  {inYarn + unsafe.Offsetof(Strand{}.Area), ofArea},
	YarnDensity:               {inYarn + unsafe.Offsetof(Strand{}.Density), ofDensity},
	YarnWeighedLength:         {inYarn + unsafe.Offsetof(Strand{}.WeighedLength), ofLength},
	YarnWeighedMass:           {inYarn + unsafe.Offsetof(Strand{}.WeighedMass), ofMass},
	HangStress:                {inPlan + unsafe.Offsetof(Plan{}.Stress), ofStress},
	HangMass:                  {inPlan + unsafe.Offsetof(Plan{}.Mass), ofMass},
	HangAdd:                   {inPlan + unsafe.Offsetof(Plan{}.Add), ofMass},
	HangForce:                 {inPlan + unsafe.Offsetof(Plan{}.Force), ofForce},
	HangHook:                  {inPlan + unsafe.Offsetof(Plan{}.Hook), ofMass},
	HangArea:                  {inPlan + unsafe.Offsetof(Plan{}.AreaBase), ofWord},
	HangMassDoubt:             {inPlan + unsafe.Offsetof(Plan{}.MassDoubt), ofMass},
	HangOwned:                 {inPlan + unsafe.Offsetof(Plan{}.Owned), ofList},
	HangBottle:                {inPlan + unsafe.Offsetof(Plan{}.Bottle), ofMass},
	HangClearance:             {inPlan + unsafe.Offsetof(Plan{}.Clearance), ofLength},
	HangStack:                 {inPlan + unsafe.Offsetof(Plan{}.Stack), ofLength},
	HangTheirMass:             {inPlan + unsafe.Offsetof(Plan{}.TheirMass), ofMass},
	HangTheirDiameter:         {inPlan + unsafe.Offsetof(Plan{}.TheirDiameter), ofLength},
	CutRatio:                  {inPlan + unsafe.Offsetof(Plan{}.Ratio), ofRatio},
	CutRatioDoubt:             {inPlan + unsafe.Offsetof(Plan{}.RatioDoubt), ofRatioDoubt},
	CutPrecursor:              {inPlan + unsafe.Offsetof(Plan{}.Precursor), ofLength},
	CutTail:                   {inPlan + unsafe.Offsetof(Plan{}.Tail), ofLength},
	CutPieces:                 {inPlan + unsafe.Offsetof(Plan{}.Pieces), ofCount},
	CutSpare:                  {inPlan + unsafe.Offsetof(Plan{}.Spare), ofFraction},
	CutTrialPrecursor:         {inPlan + unsafe.Offsetof(Plan{}.TrialPrecursor), ofLength},
	CutTrialCoiled:            {inPlan + unsafe.Offsetof(Plan{}.TrialCoiled), ofLength},
	CutLift:                   {inPlan + unsafe.Offsetof(Plan{}.Lift), ofMass},
	CutLiftStress:             {inPlan + unsafe.Offsetof(Plan{}.LiftStress), ofStress},
	TwistBias:                 {inPlan + unsafe.Offsetof(Plan{}.Bias), ofAngle},
	TwistPerTwisted:           {inPlan + unsafe.Offsetof(Plan{}.PerTwisted), ofTwist},
	TwistPerPrecursor:         {inPlan + unsafe.Offsetof(Plan{}.PerPrecursor), ofTwist},
	TwistTurns:                {inPlan + unsafe.Offsetof(Plan{}.Turns), ofTurns},
	TwistFactor:               {inPlan + unsafe.Offsetof(Plan{}.Factor), ofTwistFactor},
	TwistHand:                 {inPlan + unsafe.Offsetof(Plan{}.Hand), ofWord},
	TwistYarnHand:             {inPlan + unsafe.Offsetof(Plan{}.YarnHand), ofWord},
	TwistSpeed:                {inPlan + unsafe.Offsetof(Plan{}.Speed), ofRotation},
	TwistTimedTurns:           {inPlan + unsafe.Offsetof(Plan{}.TimedTurns), ofTurns},
	TwistTimed:                {inPlan + unsafe.Offsetof(Plan{}.Timed), ofTime},
	TwistCounted:              {inPlan + unsafe.Offsetof(Plan{}.Counted), ofTurns},
	TwistCountedPrecursor:     {inPlan + unsafe.Offsetof(Plan{}.CountedPrecursor), ofLength},
	TwistYoung:                {inPlan + unsafe.Offsetof(Plan{}.Young), ofStress},
	TwistShear:                {inPlan + unsafe.Offsetof(Plan{}.Shear), ofStress},
	TwistOtherDiameter:        {inPlan + unsafe.Offsetof(Plan{}.OtherDiameter), ofLength},
	CoilOutside:               {inPlan + unsafe.Offsetof(Plan{}.Outside), ofLength},
	CoilMean:                  {inPlan + unsafe.Offsetof(Plan{}.Mean), ofLength},
	CoilIndex:                 {inPlan + unsafe.Offsetof(Plan{}.Index), ofNumber},
	CoilPitch:                 {inPlan + unsafe.Offsetof(Plan{}.Pitch), ofLength},
	CoilCount:                 {inPlan + unsafe.Offsetof(Plan{}.Count), ofTurns},
	CoilPerLength:             {inPlan + unsafe.Offsetof(Plan{}.PerLength), ofTwist},
	CoilRod:                   {inPlan + unsafe.Offsetof(Plan{}.Rod), ofLength},
	CoilRodPitch:              {inPlan + unsafe.Offsetof(Plan{}.RodPitch), ofLength},
	CoilRodLength:             {inPlan + unsafe.Offsetof(Plan{}.RodLength), ofLength},
	CoilRodHand:               {inPlan + unsafe.Offsetof(Plan{}.RodHand), ofWord},
	ClampCoiled:               {inPlan + unsafe.Offsetof(Plan{}.Coiled), ofLength},
	ClampMeasured:             {inPlan + unsafe.Offsetof(Plan{}.Measured), ofLength},
	ClampMeasuredState:        {inPlan + unsafe.Offsetof(Plan{}.MeasuredState), ofWord},
	ClampStages:               {inPlan + unsafe.Offsetof(Plan{}.Stages), ofWord},
	ClampFirstStretch:         {inPlan + unsafe.Offsetof(Plan{}.FirstStretch), ofFraction},
	ClampSecondStretch:        {inPlan + unsafe.Offsetof(Plan{}.SecondStretch), ofFraction},
	ClampSecondBase:           {inPlan + unsafe.Offsetof(Plan{}.SecondBase), ofWord},
	ClampRelaxed:              {inPlan + unsafe.Offsetof(Plan{}.Relaxed), ofLength},
	ClampFirst:                {inPlan + unsafe.Offsetof(Plan{}.First), ofLength},
	ClampSecond:               {inPlan + unsafe.Offsetof(Plan{}.Second), ofLength},
	ClampRetained:             {inPlan + unsafe.Offsetof(Plan{}.Retained), ofShare},
	ClampFinished:             {inPlan + unsafe.Offsetof(Plan{}.Finished), ofLength},
	ClampRulerDoubt:           {inPlan + unsafe.Offsetof(Plan{}.RulerDoubt), ofLength},
	ClampZero:                 {inPlan + unsafe.Offsetof(Plan{}.Zero), ofLength},
	ClampHolePitch:            {inPlan + unsafe.Offsetof(Plan{}.HolePitch), ofLength},
	ClampHoleOffset:           {inPlan + unsafe.Offsetof(Plan{}.HoleOffset), ofLength},
	HeatSet:                   {inHeat + unsafe.Offsetof(Heating{}.Set), ofTemperature},
	HeatOvershoot:             {inHeat + unsafe.Offsetof(Heating{}.Overshoot), ofTemperatureDifference},
	HeatMelt:                  {inHeat + unsafe.Offsetof(Heating{}.Melt), ofTemperature},
	HeatFrameLimit:            {inHeat + unsafe.Offsetof(Heating{}.FrameLimit), ofTemperature},
	HeatDial1:                 {inHeat + unsafe.Offsetof(Heating{}.Readings), ofTemperature},
	HeatProbe1:                {inHeat + unsafe.Offsetof(Heating{}.Readings) + 1*wide, ofTemperature},
	HeatDial2:                 {inHeat + unsafe.Offsetof(Heating{}.Readings) + 2*wide, ofTemperature},
	HeatProbe2:                {inHeat + unsafe.Offsetof(Heating{}.Readings) + 3*wide, ofTemperature},
	HeatDial3:                 {inHeat + unsafe.Offsetof(Heating{}.Readings) + 4*wide, ofTemperature},
	HeatProbe3:                {inHeat + unsafe.Offsetof(Heating{}.Readings) + 5*wide, ofTemperature},
	HeatPreheat:               {inHeat + unsafe.Offsetof(Heating{}.Times), ofTime},
	HeatLoad:                  {inHeat + unsafe.Offsetof(Heating{}.Times) + 1*wide, ofTime},
	HeatRecovery:              {inHeat + unsafe.Offsetof(Heating{}.Times) + 2*wide, ofTime},
	HeatHold1:                 {inHeat + unsafe.Offsetof(Heating{}.Times) + 3*wide, ofTime},
	HeatCool1:                 {inHeat + unsafe.Offsetof(Heating{}.Times) + 4*wide, ofTime},
	HeatReclamp:               {inHeat + unsafe.Offsetof(Heating{}.Times) + 5*wide, ofTime},
	HeatHold2:                 {inHeat + unsafe.Offsetof(Heating{}.Times) + 6*wide, ofTime},
	HeatCool2:                 {inHeat + unsafe.Offsetof(Heating{}.Times) + 7*wide, ofTime},
	HeatRest:                  {inHeat + unsafe.Offsetof(Heating{}.Times) + 8*wide, ofTime},
	HeatOvenWidth:             {inHeat + unsafe.Offsetof(Heating{}.OvenWidth), ofLength},
	HeatOvenDepth:             {inHeat + unsafe.Offsetof(Heating{}.OvenDepth), ofLength},
	HeatOvenShelves:           {inHeat + unsafe.Offsetof(Heating{}.Shelves), ofCount},
	HeatFrameLength:           {inHeat + unsafe.Offsetof(Heating{}.FrameLength), ofLength},
	HeatFrameWidth:            {inHeat + unsafe.Offsetof(Heating{}.FrameWidth), ofLength},
	HeatFrameGap:              {inHeat + unsafe.Offsetof(Heating{}.FrameGap), ofLength},
	HeatFramePieces:           {inHeat + unsafe.Offsetof(Heating{}.FramePieces), ofCount},
	ClockMode:                 {inPlan + unsafe.Offsetof(Plan{}.ClockMode), ofWord},
	ClockDay:                  {inPlan + unsafe.Offsetof(Plan{}.Day), ofDay},
	ClockTime:                 {inPlan + unsafe.Offsetof(Plan{}.Time), ofClock},
	TroubleBroke:              {inPlan + unsafe.Offsetof(Plan{}.Broke), ofTurns},
	FibreSolidArea:            {inPlan + unsafe.Offsetof(Plan{}.SolidArea), ofArea},
	FibreThin:                 {inOut + unsafe.Offsetof(Results{}.Thin), ofLength},
	FibreThick:                {inOut + unsafe.Offsetof(Results{}.Thick), ofLength},
	FibreWeighed:              {inOut + unsafe.Offsetof(Results{}.Weighed), ofLinearDensity},
	FibreImplied:              {inOut + unsafe.Offsetof(Results{}.Implied), ofDensity},
	FibrePacking:              {inOut + unsafe.Offsetof(Results{}.Packing), ofFraction},
	FibreLabelStress:          {inOut + unsafe.Offsetof(Results{}.LabelStress), ofStress},
	YarnWeighed:               {inOut + unsafe.Offsetof(Results{}.Weighed) + 1*wide, ofLinearDensity},
	YarnImplied:               {inOut + unsafe.Offsetof(Results{}.Implied) + 1*wide, ofDensity},
	YarnPacking:               {inOut + unsafe.Offsetof(Results{}.Packing) + 1*wide, ofFraction},
	HangLoadArea:              {inPlan + unsafe.Offsetof(Plan{}.LoadArea), ofArea},
	HangLow:                   {inOut + unsafe.Offsetof(Results{}.Low), ofMass},
	HangHigh:                  {inOut + unsafe.Offsetof(Results{}.High), ofMass},
	HangUnder:                 {inOut + unsafe.Offsetof(Results{}.Under) + unsafe.Offsetof(craft.Load{}.Sum), ofMass},
	HangUnderTotal:            {inOut + unsafe.Offsetof(Results{}.UnderTotal), ofMass},
	HangUnderStress:           {inOut + unsafe.Offsetof(Results{}.UnderStress), ofStress},
	HangOver:                  {inOut + unsafe.Offsetof(Results{}.Over) + unsafe.Offsetof(craft.Load{}.Sum), ofMass},
	HangOverTotal:             {inOut + unsafe.Offsetof(Results{}.OverTotal), ofMass},
	HangOverStress:            {inOut + unsafe.Offsetof(Results{}.OverStress), ofStress},
	HangWater:                 {inOut + unsafe.Offsetof(Results{}.Water), ofVolume},
	HangRise:                  {inOut + unsafe.Offsetof(Results{}.Rise), ofLength},
	HangHookHeight:            {inOut + unsafe.Offsetof(Results{}.HookHeight), ofLength},
	HangDropStart:             {inOut + unsafe.Offsetof(Results{}.DropStart), ofEnergy},
	HangDropCoiled:            {inOut + unsafe.Offsetof(Results{}.DropCoiled), ofEnergy},
	HangTheirStress:           {inOut + unsafe.Offsetof(Results{}.TheirStress), ofStress},
	HangSameMass:              {inOut + unsafe.Offsetof(Results{}.SameMass), ofMass},
	HangOfLabel:               {inOut + unsafe.Offsetof(Results{}.OfLabel), ofFraction},
	CutLength:                 {inOut + unsafe.Offsetof(Results{}.Length), ofLength},
	CutAllPieces:              {inOut + unsafe.Offsetof(Results{}.AllPieces), ofCount},
	CutTotal:                  {inOut + unsafe.Offsetof(Results{}.Total), ofLength},
	CutYarnTotal:              {inOut + unsafe.Offsetof(Results{}.YarnTotal), ofLength},
	CutFibreMass:              {inOut + unsafe.Offsetof(Results{}.FibreMass), ofMass},
	CutTrialRatio:             {inOut + unsafe.Offsetof(Results{}.TrialRatio), ofRatio},
	CutMuscles:                {inOut + unsafe.Offsetof(Results{}.Muscles), ofCount},
	CutMuscleStress:           {inOut + unsafe.Offsetof(Results{}.MuscleStress), ofStress},
	CutMuscleForce:            {inOut + unsafe.Offsetof(Results{}.MuscleForce), ofForce},
	CutMuscleShare:            {inOut + unsafe.Offsetof(Results{}.MuscleShare), ofMass},
	TwistBefore:               {inPlan + unsafe.Offsetof(Plan{}.Before), ofLength},
	TwistThickness:            {inPlan + unsafe.Offsetof(Plan{}.Thickness), ofLength},
	TwistContraction:          {inPlan + unsafe.Offsetof(Plan{}.Contraction), ofNumber},
	TwistShortening:           {inOut + unsafe.Offsetof(Results{}.Shortening), ofFraction},
	TwistStraight:             {inOut + unsafe.Offsetof(Results{}.Straight), ofLength},
	TwistTitre:                {inPlan + unsafe.Offsetof(Plan{}.Titre), ofLinearDensity},
	TwistStrain:               {inOut + unsafe.Offsetof(Results{}.Strain), ofFraction},
	TwistMost:                 {inOut + unsafe.Offsetof(Results{}.MostTwist), ofTwist},
	TwistTimedSpeed:           {inOut + unsafe.Offsetof(Results{}.TimedSpeed), ofRotation},
	TwistOnsetBias:            {inOut + unsafe.Offsetof(Results{}.OnsetBias), ofAngle},
	TwistOnsetBiasLeast:       {inOut + unsafe.Offsetof(Results{}.OnsetBias) + 1*wide, ofAngle},
	TwistOnsetBiasMost:        {inOut + unsafe.Offsetof(Results{}.OnsetBias) + 2*wide, ofAngle},
	TwistOnset:                {inOut + unsafe.Offsetof(Results{}.Onset), ofTurns},
	TwistOnsetLeast:           {inOut + unsafe.Offsetof(Results{}.Onset) + 1*wide, ofTurns},
	TwistOnsetMost:            {inOut + unsafe.Offsetof(Results{}.Onset) + 2*wide, ofTurns},
	TwistSlow:                 {inOut + unsafe.Offsetof(Results{}.Slow), ofTurns},
	TwistSlowTime:             {inOut + unsafe.Offsetof(Results{}.SlowTime), ofTime},
	TwistTime:                 {inOut + unsafe.Offsetof(Results{}.DrillTime), ofTime},
	TwistOther:                {inOut + unsafe.Offsetof(Results{}.OtherTwist), ofTwist},
	CoilAngle:                 {inOut + unsafe.Offsetof(Results{}.CoilAngle), ofAngle},
	CoilTurnLength:            {inOut + unsafe.Offsetof(Results{}.TurnLength), ofLength},
	CoilGap:                   {inOut + unsafe.Offsetof(Results{}.CoilGap), ofLength},
	CoilWrithe:                {inOut + unsafe.Offsetof(Results{}.Writhe), ofTurns},
	CoilTurns:                 {inOut + unsafe.Offsetof(Results{}.AllTurns), ofTurns},
	CoilTurnsPerPrecursor:     {inOut + unsafe.Offsetof(Results{}.AllPerPrecursor), ofTwist},
	CoilSolidPitch:            {inOut + unsafe.Offsetof(Results{}.SolidPitch), ofLength},
	CoilSolid:                 {inOut + unsafe.Offsetof(Results{}.Solid), ofLength},
	CoilNearSolid:             {inOut + unsafe.Offsetof(Results{}.NearSolid), ofLength},
	CoilTravelLength:          {inOut + unsafe.Offsetof(Results{}.CoilTravelLength), ofLength},
	CoilTravel:                {inOut + unsafe.Offsetof(Results{}.CoilTravel), ofFraction},
	CoilFinishedTravel:        {inOut + unsafe.Offsetof(Results{}.CoilFinTravel), ofFraction},
	CoilLastPitch:             {inOut + unsafe.Offsetof(Results{}.LastPitch), ofLength},
	CoilLastMean:              {inOut + unsafe.Offsetof(Results{}.LastMean), ofLength},
	CoilLastGap:               {inOut + unsafe.Offsetof(Results{}.LastGap), ofLength},
	CoilSolidMean:             {inOut + unsafe.Offsetof(Results{}.SolidMean), ofLength},
	CoilShapeRatio:            {inOut + unsafe.Offsetof(Results{}.ShapeRatio), ofRatio},
	CoilLoadIndex:             {inOut + unsafe.Offsetof(Results{}.LoadIndex), ofNumber},
	CoilLoadIndexLeast:        {inOut + unsafe.Offsetof(Results{}.LoadIndex) + 1*wide, ofNumber},
	CoilLoadIndexMost:         {inOut + unsafe.Offsetof(Results{}.LoadIndex) + 2*wide, ofNumber},
	CoilRodMean:               {inOut + unsafe.Offsetof(Results{}.RodMean), ofLength},
	CoilRodIndex:              {inOut + unsafe.Offsetof(Results{}.RodIndex), ofNumber},
	CoilRodAngle:              {inOut + unsafe.Offsetof(Results{}.RodAngle), ofAngle},
	CoilRodGap:                {inOut + unsafe.Offsetof(Results{}.RodGap), ofLength},
	CoilRodCount:              {inOut + unsafe.Offsetof(Results{}.RodCount), ofTurns},
	CoilRodFibre:              {inOut + unsafe.Offsetof(Results{}.RodFibre), ofLength},
	CoilRodPrecursor:          {inOut + unsafe.Offsetof(Results{}.RodPrecursor), ofLength},
	CoilRodLimit:              {inOut + unsafe.Offsetof(Results{}.RodLimit), ofFraction},
	ClampPiece:                {inOut + unsafe.Offsetof(Results{}.Piece), ofLength},
	ClampBase:                 {inOut + unsafe.Offsetof(Results{}.Base), ofLength},
	ClampLast:                 {inOut + unsafe.Offsetof(Results{}.Last), ofLength},
	ClampThisRatio:            {inOut + unsafe.Offsetof(Results{}.ThisRatio), ofRatio},
	ClampThisFinished:         {inOut + unsafe.Offsetof(Results{}.ThisFinished), ofLength},
	ClampFirstReal:            {inOut + unsafe.Offsetof(Results{}.Real), ofFraction},
	ClampSecondReal:           {inOut + unsafe.Offsetof(Results{}.Real) + 1*wide, ofFraction},
	ClampFirstMove:            {inOut + unsafe.Offsetof(Results{}.Move), ofLength},
	ClampSecondMove:           {inOut + unsafe.Offsetof(Results{}.Move) + 1*wide, ofLength},
	ClampSecondOfFirst:        {inOut + unsafe.Offsetof(Results{}.SecondOfOne), ofFraction},
	ClampTravelLength:         {inOut + unsafe.Offsetof(Results{}.TravelLength), ofLength},
	ClampTravel:               {inOut + unsafe.Offsetof(Results{}.Travel), ofFraction},
	ClampFinishedTravelLength: {inOut + unsafe.Offsetof(Results{}.FinTravelLen), ofLength},
	ClampFinishedTravel:       {inOut + unsafe.Offsetof(Results{}.FinTravel), ofFraction},
	ClampFirstPosition:        {inOut + unsafe.Offsetof(Results{}.Position), ofLength},
	ClampSecondPosition:       {inOut + unsafe.Offsetof(Results{}.Position) + 1*wide, ofLength},
	ClampFirstHole:            {inOut + unsafe.Offsetof(Results{}.Hole), ofCount},
	ClampFirstHoleGap:         {inOut + unsafe.Offsetof(Results{}.HoleGap), ofLength},
	ClampFirstHoleStretch:     {inOut + unsafe.Offsetof(Results{}.HoleStretch), ofFraction},
	ClampSecondHole:           {inOut + unsafe.Offsetof(Results{}.Hole) + 1*wide, ofCount},
	ClampSecondHoleGap:        {inOut + unsafe.Offsetof(Results{}.HoleGap) + 1*wide, ofLength},
	ClampSecondHoleStretch:    {inOut + unsafe.Offsetof(Results{}.HoleStretch) + 1*wide, ofFraction},
	HeatDial:                  {inOut + unsafe.Offsetof(Results{}.Dial), ofTemperature},
	HeatMeanDial:              {inOut + unsafe.Offsetof(Results{}.MeanDial), ofTemperature},
	HeatMeanProbe:             {inOut + unsafe.Offsetof(Results{}.MeanProbe), ofTemperature},
	HeatSlope:                 {inOut + unsafe.Offsetof(Results{}.Slope), ofNumber},
	HeatPeak:                  {inOut + unsafe.Offsetof(Results{}.Peak), ofTemperature},
	HeatMargin:                {inOut + unsafe.Offsetof(Results{}.Margin), ofTemperatureDifference},
	HeatFrames:                {inOut + unsafe.Offsetof(Results{}.Frames), ofCount},
	HeatPerLoad:               {inOut + unsafe.Offsetof(Results{}.PerLoad), ofCount},
	HeatLoads:                 {inOut + unsafe.Offsetof(Results{}.Loads), ofCount},
	HeatTotal:                 {inOut + unsafe.Offsetof(Results{}.HeatTime), ofTime},
	TroubleLess:               {inOut + unsafe.Offsetof(Results{}.LessMass), ofMass},
	TroubleLessAdd:            {inOut + unsafe.Offsetof(Results{}.LessAdd), ofMass},
	TroubleMore:               {inOut + unsafe.Offsetof(Results{}.MoreMass), ofMass},
	TroubleMoreAdd:            {inOut + unsafe.Offsetof(Results{}.MoreAdd), ofMass},
	TroubleBrokeShare:         {inOut + unsafe.Offsetof(Results{}.BrokeShare), ofFraction},
}

// KindOf returns the kind of a number; nil for a choice of masses.
//
//go:noinline
func KindOf(id ID) *quantity.Kind { return *kindsOf[places[id].kind] }

// Value returns where a number is kept; the zero Ref for a choice of masses.
//
//go:noinline
func (w *solved) Value(id ID) quantity.Ref {
	p := &places[id]
	return quantity.RefTo(*kindsOf[p.kind], unsafe.Add(unsafe.Pointer(w), p.at))
}

// Value returns where the plan keeps a field, or one of the few answers that it holds.
//
//go:noinline
func (p *Plan) Value(id ID) quantity.Ref {
	at := &places[id]
	return quantity.RefTo(*kindsOf[at.kind], unsafe.Add(unsafe.Pointer(p), uintptr(at.at)-inPlan))
}
