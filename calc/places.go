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
	ofHeatCapacity
	ofHeatLoss
	ofLength
	ofLinearDensity
	ofList
	ofMass
	ofNumber
	ofPower
	ofRatio
	ofRatioDoubt
	ofRotation
	ofShare
	ofSpecificEnergy
	ofSpecificPower
	ofStiffness
	ofSpecificHeat
	ofSpeed
	ofStress
	ofTemperature
	ofTemperatureDifference
	ofTime
	ofTurns
	ofTwist
	ofTwistFactor
	ofVolume
	ofWord

	// Of the wire.
	ofCharge
	ofCurrent
	ofGauge
	ofPowerPerLength
	ofResistance
	ofResistancePerLength
	ofRows
	ofTemperatureCoefficient
	ofVoltage
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
	ofHeatCapacity:          &quantity.KindHeatCapacity,
	ofHeatLoss:              &quantity.KindHeatLoss,
	ofLength:                &quantity.KindLength,
	ofLinearDensity:         &quantity.KindLinearDensity,
	ofList:                  &quantity.KindList,
	ofMass:                  &quantity.KindMass,
	ofNumber:                &quantity.KindNumber,
	ofPower:                 &quantity.KindPower,
	ofRatio:                 &quantity.KindRatio,
	ofRatioDoubt:            &quantity.KindRatioDoubt,
	ofRotation:              &quantity.KindRotation,
	ofShare:                 &quantity.KindShare,
	ofSpecificEnergy:        &quantity.KindSpecificEnergy,
	ofSpecificPower:         &quantity.KindSpecificPower,
	ofStiffness:             &quantity.KindStiffness,
	ofSpecificHeat:          &quantity.KindSpecificHeat,
	ofSpeed:                 &quantity.KindSpeed,
	ofStress:                &quantity.KindStress,
	ofTemperature:           &quantity.KindTemperature,
	ofTemperatureDifference: &quantity.KindTemperatureDifference,
	ofTime:                  &quantity.KindTime,
	ofTurns:                 &quantity.KindTurns,
	ofTwist:                 &quantity.KindTwist,
	ofTwistFactor:           &quantity.KindTwistFactor,
	ofVolume:                &quantity.KindVolume,
	ofWord:                  &quantity.KindWord,

	ofCharge:                 &quantity.KindCharge,
	ofCurrent:                &quantity.KindCurrent,
	ofGauge:                  &quantity.KindGauge,
	ofPowerPerLength:         &quantity.KindPowerPerLength,
	ofResistance:             &quantity.KindResistance,
	ofResistancePerLength:    &quantity.KindResistancePerLength,
	ofRows:                   &quantity.KindRows,
	ofTemperatureCoefficient: &quantity.KindTemperatureCoefficient,
	ofVoltage:                &quantity.KindVoltage,
}

// Where the parts of what is worked begin, and how wide a number is.
const (
	inPlan   = unsafe.Offsetof(solved{}.Plan)
	inFibre  = inPlan + unsafe.Offsetof(Plan{}.Fibre)
	inYarn   = inPlan + unsafe.Offsetof(Plan{}.Yarn)
	inHeat   = inPlan + unsafe.Offsetof(Plan{}.Heat)
	inWire   = inPlan + unsafe.Offsetof(Plan{}.Wire)
	inDrive  = inPlan + unsafe.Offsetof(Plan{}.Drive)
	inStroke = inPlan + unsafe.Offsetof(Plan{}.Stroke)
	inOut    = unsafe.Offsetof(solved{}.Out)
	wide     = unsafe.Sizeof(float64(0))
)

// places is the table of where each number is. A choice of masses, which is text, has none.
var places = [NumIDs]place{
	FibrePolymer:          {inFibre + unsafe.Offsetof(Strand{}.Polymer), ofWord},
	FibreDiameter:         {inFibre + unsafe.Offsetof(Strand{}.Diameter), ofLength},
	FibreDiameterDoubt:    {inPlan + unsafe.Offsetof(Plan{}.DiameterDoubt), ofLength},
	FibreLinearDensity:    {inFibre + unsafe.Offsetof(Strand{}.LinearDensity), ofLinearDensity},
	FibreArea:             {inFibre + unsafe.Offsetof(Strand{}.Area), ofArea},
	FibreDensity:          {inFibre + unsafe.Offsetof(Strand{}.Density), ofDensity},
	FibreStrands:          {inFibre + unsafe.Offsetof(Strand{}.Strands), ofCount},
	FibreWeighedLength:    {inFibre + unsafe.Offsetof(Strand{}.WeighedLength), ofLength},
	FibreWeighedMass:      {inFibre + unsafe.Offsetof(Strand{}.WeighedMass), ofMass},
	FibreLabelStrength:    {inPlan + unsafe.Offsetof(Plan{}.LabelStrength), ofMass},
	FibreBundle:           {inPlan + unsafe.Offsetof(Plan{}.Bundle), ofLength},
	YarnStrands:           {inYarn + unsafe.Offsetof(Strand{}.Strands), ofCount},
	YarnPolymer:           {inYarn + unsafe.Offsetof(Strand{}.Polymer), ofWord},
	YarnDiameter:          {inYarn + unsafe.Offsetof(Strand{}.Diameter), ofLength},
	YarnLinearDensity:     {inYarn + unsafe.Offsetof(Strand{}.LinearDensity), ofLinearDensity},
	YarnArea:              {inYarn + unsafe.Offsetof(Strand{}.Area), ofArea},
	YarnDensity:           {inYarn + unsafe.Offsetof(Strand{}.Density), ofDensity},
	YarnWeighedLength:     {inYarn + unsafe.Offsetof(Strand{}.WeighedLength), ofLength},
	YarnWeighedMass:       {inYarn + unsafe.Offsetof(Strand{}.WeighedMass), ofMass},
	HangStress:            {inPlan + unsafe.Offsetof(Plan{}.Stress), ofStress},
	HangMass:              {inPlan + unsafe.Offsetof(Plan{}.Mass), ofMass},
	HangAdd:               {inPlan + unsafe.Offsetof(Plan{}.Add), ofMass},
	HangForce:             {inPlan + unsafe.Offsetof(Plan{}.Force), ofForce},
	HangHook:              {inPlan + unsafe.Offsetof(Plan{}.Hook), ofMass},
	HangArea:              {inPlan + unsafe.Offsetof(Plan{}.AreaBase), ofWord},
	HangMassDoubt:         {inPlan + unsafe.Offsetof(Plan{}.MassDoubt), ofMass},
	HangOwned:             {inPlan + unsafe.Offsetof(Plan{}.Owned), ofList},
	HangBottle:            {inPlan + unsafe.Offsetof(Plan{}.Bottle), ofMass},
	HangClearance:         {inPlan + unsafe.Offsetof(Plan{}.Clearance), ofLength},
	HangStack:             {inPlan + unsafe.Offsetof(Plan{}.Stack), ofLength},
	HangTheirMass:         {inPlan + unsafe.Offsetof(Plan{}.TheirMass), ofMass},
	HangTheirDiameter:     {inPlan + unsafe.Offsetof(Plan{}.TheirDiameter), ofLength},
	CutRatio:              {inPlan + unsafe.Offsetof(Plan{}.Ratio), ofRatio},
	CutRatioDoubt:         {inPlan + unsafe.Offsetof(Plan{}.RatioDoubt), ofRatioDoubt},
	CutPrecursor:          {inPlan + unsafe.Offsetof(Plan{}.Precursor), ofLength},
	CutTail:               {inPlan + unsafe.Offsetof(Plan{}.Tail), ofLength},
	CutPieces:             {inPlan + unsafe.Offsetof(Plan{}.Pieces), ofCount},
	CutSpare:              {inPlan + unsafe.Offsetof(Plan{}.Spare), ofFraction},
	CutTrialPrecursor:     {inPlan + unsafe.Offsetof(Plan{}.TrialPrecursor), ofLength},
	CutTrialCoiled:        {inPlan + unsafe.Offsetof(Plan{}.TrialCoiled), ofLength},
	CutLift:               {inPlan + unsafe.Offsetof(Plan{}.Lift), ofMass},
	CutLiftStress:         {inPlan + unsafe.Offsetof(Plan{}.LiftStress), ofStress},
	TwistBias:             {inPlan + unsafe.Offsetof(Plan{}.Bias), ofAngle},
	TwistPerTwisted:       {inPlan + unsafe.Offsetof(Plan{}.PerTwisted), ofTwist},
	TwistPerPrecursor:     {inPlan + unsafe.Offsetof(Plan{}.PerPrecursor), ofTwist},
	TwistTurns:            {inPlan + unsafe.Offsetof(Plan{}.Turns), ofTurns},
	TwistFactor:           {inPlan + unsafe.Offsetof(Plan{}.Factor), ofTwistFactor},
	TwistHand:             {inPlan + unsafe.Offsetof(Plan{}.Hand), ofWord},
	TwistYarnHand:         {inPlan + unsafe.Offsetof(Plan{}.YarnHand), ofWord},
	TwistSpeed:            {inPlan + unsafe.Offsetof(Plan{}.Speed), ofRotation},
	TwistTimedTurns:       {inPlan + unsafe.Offsetof(Plan{}.TimedTurns), ofTurns},
	TwistTimed:            {inPlan + unsafe.Offsetof(Plan{}.Timed), ofTime},
	TwistCounted:          {inPlan + unsafe.Offsetof(Plan{}.Counted), ofTurns},
	TwistCountedPrecursor: {inPlan + unsafe.Offsetof(Plan{}.CountedPrecursor), ofLength},
	TwistYoung:            {inPlan + unsafe.Offsetof(Plan{}.Young), ofStress},
	TwistShear:            {inPlan + unsafe.Offsetof(Plan{}.Shear), ofStress},
	TwistOtherDiameter:    {inPlan + unsafe.Offsetof(Plan{}.OtherDiameter), ofLength},
	CoilOutside:           {inPlan + unsafe.Offsetof(Plan{}.Outside), ofLength},
	CoilMean:              {inPlan + unsafe.Offsetof(Plan{}.Mean), ofLength},
	CoilIndex:             {inPlan + unsafe.Offsetof(Plan{}.Index), ofNumber},
	CoilPitch:             {inPlan + unsafe.Offsetof(Plan{}.Pitch), ofLength},
	CoilCount:             {inPlan + unsafe.Offsetof(Plan{}.Count), ofTurns},
	CoilPerLength:         {inPlan + unsafe.Offsetof(Plan{}.PerLength), ofTwist},
	CoilRod:               {inPlan + unsafe.Offsetof(Plan{}.Rod), ofLength},
	CoilRodPitch:          {inPlan + unsafe.Offsetof(Plan{}.RodPitch), ofLength},
	CoilRodLength:         {inPlan + unsafe.Offsetof(Plan{}.RodLength), ofLength},
	CoilRodHand:           {inPlan + unsafe.Offsetof(Plan{}.RodHand), ofWord},
	ClampCoiled:           {inPlan + unsafe.Offsetof(Plan{}.Coiled), ofLength},
	ClampMeasured:         {inPlan + unsafe.Offsetof(Plan{}.Measured), ofLength},
	ClampMeasuredState:    {inPlan + unsafe.Offsetof(Plan{}.MeasuredState), ofWord},
	ClampStages:           {inPlan + unsafe.Offsetof(Plan{}.Stages), ofWord},
	ClampFirstStretch:     {inPlan + unsafe.Offsetof(Plan{}.FirstStretch), ofFraction},
	ClampSecondStretch:    {inPlan + unsafe.Offsetof(Plan{}.SecondStretch), ofFraction},
	ClampSecondBase:       {inPlan + unsafe.Offsetof(Plan{}.SecondBase), ofWord},
	ClampRelaxed:          {inPlan + unsafe.Offsetof(Plan{}.Relaxed), ofLength},
	ClampFirst:            {inPlan + unsafe.Offsetof(Plan{}.First), ofLength},
	ClampSecond:           {inPlan + unsafe.Offsetof(Plan{}.Second), ofLength},
	ClampRetained:         {inPlan + unsafe.Offsetof(Plan{}.Retained), ofShare},
	ClampFinished:         {inPlan + unsafe.Offsetof(Plan{}.Finished), ofLength},
	ClampRulerDoubt:       {inPlan + unsafe.Offsetof(Plan{}.RulerDoubt), ofLength},
	ClampZero:             {inPlan + unsafe.Offsetof(Plan{}.Zero), ofLength},
	ClampHolePitch:        {inPlan + unsafe.Offsetof(Plan{}.HolePitch), ofLength},
	ClampHoleOffset:       {inPlan + unsafe.Offsetof(Plan{}.HoleOffset), ofLength},
	HeatSet:               {inHeat + unsafe.Offsetof(Heating{}.Set), ofTemperature},
	HeatOvershoot:         {inHeat + unsafe.Offsetof(Heating{}.Overshoot), ofTemperatureDifference},
	HeatMelt:              {inHeat + unsafe.Offsetof(Heating{}.Melt), ofTemperature},
	HeatFrameLimit:        {inHeat + unsafe.Offsetof(Heating{}.FrameLimit), ofTemperature},
	HeatDial1:             {inHeat + unsafe.Offsetof(Heating{}.Readings), ofTemperature},
	HeatProbe1:            {inHeat + unsafe.Offsetof(Heating{}.Readings) + 1*wide, ofTemperature},
	HeatDial2:             {inHeat + unsafe.Offsetof(Heating{}.Readings) + 2*wide, ofTemperature},
	HeatProbe2:            {inHeat + unsafe.Offsetof(Heating{}.Readings) + 3*wide, ofTemperature},
	HeatDial3:             {inHeat + unsafe.Offsetof(Heating{}.Readings) + 4*wide, ofTemperature},
	HeatProbe3:            {inHeat + unsafe.Offsetof(Heating{}.Readings) + 5*wide, ofTemperature},
	HeatPreheat:           {inHeat + unsafe.Offsetof(Heating{}.Times), ofTime},
	HeatLoad:              {inHeat + unsafe.Offsetof(Heating{}.Times) + 1*wide, ofTime},
	HeatRecovery:          {inHeat + unsafe.Offsetof(Heating{}.Times) + 2*wide, ofTime},
	HeatHold1:             {inHeat + unsafe.Offsetof(Heating{}.Times) + 3*wide, ofTime},
	HeatCool1:             {inHeat + unsafe.Offsetof(Heating{}.Times) + 4*wide, ofTime},
	HeatReclamp:           {inHeat + unsafe.Offsetof(Heating{}.Times) + 5*wide, ofTime},
	HeatHold2:             {inHeat + unsafe.Offsetof(Heating{}.Times) + 6*wide, ofTime},
	HeatCool2:             {inHeat + unsafe.Offsetof(Heating{}.Times) + 7*wide, ofTime},
	HeatRest:              {inHeat + unsafe.Offsetof(Heating{}.Times) + 8*wide, ofTime},
	HeatOvenWidth:         {inHeat + unsafe.Offsetof(Heating{}.OvenWidth), ofLength},
	HeatOvenDepth:         {inHeat + unsafe.Offsetof(Heating{}.OvenDepth), ofLength},
	HeatOvenShelves:       {inHeat + unsafe.Offsetof(Heating{}.Shelves), ofCount},
	HeatFrameLength:       {inHeat + unsafe.Offsetof(Heating{}.FrameLength), ofLength},
	HeatFrameWidth:        {inHeat + unsafe.Offsetof(Heating{}.FrameWidth), ofLength},
	HeatFrameGap:          {inHeat + unsafe.Offsetof(Heating{}.FrameGap), ofLength},
	HeatFramePieces:       {inHeat + unsafe.Offsetof(Heating{}.FramePieces), ofCount},
	ClockMode:             {inPlan + unsafe.Offsetof(Plan{}.ClockMode), ofWord},
	ClockDay:              {inPlan + unsafe.Offsetof(Plan{}.Day), ofDay},
	ClockTime:             {inPlan + unsafe.Offsetof(Plan{}.Time), ofClock},

	// Of the wire.
	WireRoute:         {inWire + unsafe.Offsetof(Wiring{}.Route), ofWord},
	WirePerLength:     {inWire + unsafe.Offsetof(Wiring{}.PerLength), ofResistancePerLength},
	WireReading:       {inWire + unsafe.Offsetof(Wiring{}.Reading), ofResistance},
	WireReadingLeads:  {inWire + unsafe.Offsetof(Wiring{}.ReadingLeads), ofResistance},
	WireReadingLength: {inWire + unsafe.Offsetof(Wiring{}.ReadingLength), ofLength},
	WireTest:          {inWire + unsafe.Offsetof(Wiring{}.Test), ofRows},
	WireStrands:       {inWire + unsafe.Offsetof(Wiring{}.Strands), ofCount},
	WireWrapDiameter:  {inWire + unsafe.Offsetof(Wiring{}.WrapDiameter), ofLength},
	WireWrapPitch:     {inWire + unsafe.Offsetof(Wiring{}.WrapPitch), ofLength},
	WireInRow:         {inWire + unsafe.Offsetof(Wiring{}.InRow), ofCount},
	WireRows:          {inWire + unsafe.Offsetof(Wiring{}.Rows), ofCount},
	WireSupply:        {inWire + unsafe.Offsetof(Wiring{}.Supply), ofWord},
	WireMost:          {inWire + unsafe.Offsetof(Wiring{}.Most), ofCurrent},
	WireLeast:         {inWire + unsafe.Offsetof(Wiring{}.Least), ofCurrent},
	WireSupplyVoltage: {inWire + unsafe.Offsetof(Wiring{}.SupplyVoltage), ofVoltage},
	WireCurrent:       {inWire + unsafe.Offsetof(Wiring{}.Current), ofCurrent},
	WirePower:         {inWire + unsafe.Offsetof(Wiring{}.Power), ofPower},
	WireDuty:          {inWire + unsafe.Offsetof(Wiring{}.Duty), ofShare},
	WireOnTime:        {inWire + unsafe.Offsetof(Wiring{}.OnTime), ofTime},
	WireAverage:       {inWire + unsafe.Offsetof(Wiring{}.Average), ofPower},
	WirePeriod:        {inWire + unsafe.Offsetof(Wiring{}.Period), ofTime},
	WireArea:          {inWire + unsafe.Offsetof(Wiring{}.Area), ofArea},
	WireGauge:         {inWire + unsafe.Offsetof(Wiring{}.Gauge), ofGauge},
	WireLeadDiameter:  {inWire + unsafe.Offsetof(Wiring{}.LeadDiameter), ofLength},
	WireLeadLength:    {inWire + unsafe.Offsetof(Wiring{}.LeadLength), ofLength},
	WireLeadRating:    {inWire + unsafe.Offsetof(Wiring{}.LeadRating), ofCurrent},
	WireCharge:        {inWire + unsafe.Offsetof(Wiring{}.Charge), ofCharge},
	WireCell:          {inWire + unsafe.Offsetof(Wiring{}.Cell), ofVoltage},
	WireCoefficient:   {inWire + unsafe.Offsetof(Wiring{}.Coefficient), ofTemperatureCoefficient},
	WireBefore:        {inWire + unsafe.Offsetof(Wiring{}.Before), ofResistance},
	WireAfter:         {inWire + unsafe.Offsetof(Wiring{}.After), ofResistance},

	WireReadingVolts:   {inWire + unsafe.Offsetof(Wiring{}.Across), ofVoltage},
	WireReadingAmperes: {inWire + unsafe.Offsetof(Wiring{}.Through), ofCurrent},
	WireWanted:         {inWire + unsafe.Offsetof(Wiring{}.Wanted), ofResistance},
	WireWantedPower:    {inWire + unsafe.Offsetof(Wiring{}.WantedPower), ofPower},
	WireReadCold:       {inWire + unsafe.Offsetof(Wiring{}.ReadCold), ofResistance},
	WireReadHot:        {inWire + unsafe.Offsetof(Wiring{}.ReadHot), ofResistance},

	// Of the drive.
	DriveWay:          {inDrive + unsafe.Offsetof(Driving{}.Way), ofWord},
	DriveSpeed:        {inDrive + unsafe.Offsetof(Driving{}.Speed), ofSpeed},
	DriveRoom:         {inDrive + unsafe.Offsetof(Driving{}.Room), ofTemperature},
	DriveTarget:       {inDrive + unsafe.Offsetof(Driving{}.Target), ofTemperature},
	DriveCoolTo:       {inDrive + unsafe.Offsetof(Driving{}.CoolTo), ofTemperature},
	DrivePower:        {inDrive + unsafe.Offsetof(Driving{}.Power), ofPower},
	DriveOn:           {inDrive + unsafe.Offsetof(Driving{}.On), ofTime},
	DriveOff:          {inDrive + unsafe.Offsetof(Driving{}.Off), ofTime},
	DriveAt:           {inDrive + unsafe.Offsetof(Driving{}.At), ofTime},
	DriveAltitude:     {inDrive + unsafe.Offsetof(Driving{}.Altitude), ofLength},
	DriveEmissivity:   {inDrive + unsafe.Offsetof(Driving{}.Emissivity), ofShare},
	DriveSpecificHeat: {inDrive + unsafe.Offsetof(Driving{}.SpecificHeat), ofSpecificHeat},
	DriveCurve:        {inDrive + unsafe.Offsetof(Driving{}.Curve), ofRows},
	DriveTrialPower:   {inDrive + unsafe.Offsetof(Driving{}.TrialPower), ofPower},
	DriveCoolWay:      {inDrive + unsafe.Offsetof(Driving{}.CoolWay), ofWord},
	DriveTrialHot:     {inDrive + unsafe.Offsetof(Driving{}.TrialHot), ofTemperature},

	// Of the stroke.
	StrokeLoad:          {inStroke + unsafe.Offsetof(Stroking{}.Load), ofMass},
	StrokeAgainst:       {inStroke + unsafe.Offsetof(Stroking{}.Against), ofWord},
	StrokeSpring:        {inStroke + unsafe.Offsetof(Stroking{}.Spring), ofStiffness},
	StrokeSlack:         {inStroke + unsafe.Offsetof(Stroking{}.Slack), ofLength},
	StrokeApart:         {inStroke + unsafe.Offsetof(Stroking{}.Apart), ofLength},
	StrokeSpringWire:    {inStroke + unsafe.Offsetof(Stroking{}.Wire), ofLength},
	StrokeSpringOutside: {inStroke + unsafe.Offsetof(Stroking{}.Outside), ofLength},
	StrokeSpringTurns:   {inStroke + unsafe.Offsetof(Stroking{}.Turns), ofTurns},
	StrokeBeside:        {inStroke + unsafe.Offsetof(Stroking{}.Beside), ofCount},
	StrokeLever:         {inStroke + unsafe.Offsetof(Stroking{}.Lever), ofNumber},
	StrokePulley:        {inStroke + unsafe.Offsetof(Stroking{}.Pulley), ofLength},
	StrokeOwn:           {inStroke + unsafe.Offsetof(Stroking{}.Own), ofFraction},
	StrokeBase:          {inStroke + unsafe.Offsetof(Stroking{}.Base), ofWord},
	StrokeLoaded:        {inStroke + unsafe.Offsetof(Stroking{}.Loaded), ofLength},
	StrokeLight:         {inStroke + unsafe.Offsetof(Stroking{}.Light), ofMass},
	StrokeHeavy:         {inStroke + unsafe.Offsetof(Stroking{}.Heavy), ofMass},
	StrokeColdLight:     {inStroke + unsafe.Offsetof(Stroking{}.ColdUnder), ofLength},
	StrokeColdHeavy:     {inStroke + unsafe.Offsetof(Stroking{}.ColdUnder) + 1*wide, ofLength},
	StrokeHotLight:      {inStroke + unsafe.Offsetof(Stroking{}.HotUnder), ofLength},
	StrokeHotHeavy:      {inStroke + unsafe.Offsetof(Stroking{}.HotUnder) + 1*wide, ofLength},
	StrokeScaleCold:     {inStroke + unsafe.Offsetof(Stroking{}.ScaleCold), ofMass},
	StrokeScaleHot:      {inStroke + unsafe.Offsetof(Stroking{}.ScaleHot), ofMass},
	StrokeAdded:         {inStroke + unsafe.Offsetof(Stroking{}.Added), ofMass},
	StrokeChange:        {inStroke + unsafe.Offsetof(Stroking{}.Change), ofLength},
	StrokeTime:          {inStroke + unsafe.Offsetof(Stroking{}.Time), ofTime},

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

	// Of the wire.
	WireLength:         {inOut + unsafe.Offsetof(Results{}.YarnLength), ofLength},
	WireOhms:           {inOut + unsafe.Offsetof(Results{}.Ohms), ofResistance},
	WireLeastOhms:      {inOut + unsafe.Offsetof(Results{}.LeastOhms), ofResistance},
	WireOfPrecursor:    {inOut + unsafe.Offsetof(Results{}.OfPrecursor), ofResistancePerLength},
	WireOfCoil:         {inOut + unsafe.Offsetof(Results{}.OfCoil), ofResistancePerLength},
	WireOfFinished:     {inOut + unsafe.Offsetof(Results{}.OfFinished), ofResistancePerLength},
	WireTotal:          {inWire + unsafe.Offsetof(Wiring{}.Total), ofResistance},
	WireRowCurrent:     {inOut + unsafe.Offsetof(Results{}.RowCurrent), ofCurrent},
	WireSideCurrent:    {inOut + unsafe.Offsetof(Results{}.SideCurrent), ofCurrent},
	WireAverageCurrent: {inOut + unsafe.Offsetof(Results{}.AverageCurrent), ofCurrent},
	WireMusclePower:    {inOut + unsafe.Offsetof(Results{}.MusclePower), ofPower},
	WireFullPower:      {inOut + unsafe.Offsetof(Results{}.FullPower), ofPower},
	WirePowerPerLength: {inOut + unsafe.Offsetof(Results{}.PowerPer), ofPowerPerLength},
	WireLeadOhms:       {inWire + unsafe.Offsetof(Wiring{}.LeadOhms), ofResistance},
	WireDrop:           {inOut + unsafe.Offsetof(Results{}.Drop), ofVoltage},
	WireLeadHeat:       {inOut + unsafe.Offsetof(Results{}.LeadHeat), ofPower},
	WireFuse:           {inOut + unsafe.Offsetof(Results{}.Fuse), ofCurrent},
	WireDummy:          {inOut + unsafe.Offsetof(Results{}.Dummy), ofResistance},
	WireCycles:         {inOut + unsafe.Offsetof(Results{}.Cycles), ofNumber},
	WireHotOhms:        {inOut + unsafe.Offsetof(Results{}.HotOhms), ofResistance},
	WireDrift:          {inOut + unsafe.Offsetof(Results{}.Drift), ofFraction},
	WireTestPerLength:  {inOut + unsafe.Offsetof(Results{}.TestPerLength), ofResistancePerLength},
	WireTestContact:    {inOut + unsafe.Offsetof(Results{}.TestContact), ofResistance},

	WireOwnVoltage:       {inOut + unsafe.Offsetof(Results{}.OwnVoltage), ofVoltage},
	WirePause:            {inOut + unsafe.Offsetof(Results{}.Pause), ofTime},
	WireDummyPower:       {inOut + unsafe.Offsetof(Results{}.DummyPower), ofPower},
	WireEnergy:           {inOut + unsafe.Offsetof(Results{}.BatteryEnergy), ofEnergy},
	WireLasts:            {inOut + unsafe.Offsetof(Results{}.BatteryTime), ofTime},
	WireReadingOhms:      {inOut + unsafe.Offsetof(Results{}.ReadingOhms), ofResistance},
	WireReadingPerLength: {inOut + unsafe.Offsetof(Results{}.ReadingPerLength), ofResistancePerLength},
	WireWantedPerLength:  {inOut + unsafe.Offsetof(Results{}.WantedPerLength), ofResistancePerLength},
	WireWantedLength:     {inOut + unsafe.Offsetof(Results{}.WantedLength), ofLength},
	WireWantedStrands:    {inOut + unsafe.Offsetof(Results{}.WantedStrands), ofCount},
	WireWantedReal:       {inOut + unsafe.Offsetof(Results{}.WantedReal), ofPower},
	WireReadTemperature:  {inOut + unsafe.Offsetof(Results{}.ReadTemperature), ofTemperature},

	// Of the drive.
	DriveHottest:    {inOut + unsafe.Offsetof(Results{}.Steady), ofTemperature},
	DriveCoolest:    {inOut + unsafe.Offsetof(Results{}.Steady) + 1*wide, ofTemperature},
	DriveStuck:      {inOut + unsafe.Offsetof(Results{}.Stuck), ofTemperature},
	DriveMargin:     {inOut + unsafe.Offsetof(Results{}.StuckMargin), ofTemperatureDifference},
	DriveMeltTime:   {inOut + unsafe.Offsetof(Results{}.MeltTime), ofTime},
	DriveHeatLeast:  {inOut + unsafe.Offsetof(Results{}.Heats), ofTime},
	DriveHeatMost:   {inOut + unsafe.Offsetof(Results{}.Heats) + 1*wide, ofTime},
	DriveCoolLeast:  {inOut + unsafe.Offsetof(Results{}.Cools), ofTime},
	DriveCoolMost:   {inOut + unsafe.Offsetof(Results{}.Cools) + 1*wide, ofTime},
	DriveCycles:     {inOut + unsafe.Offsetof(Results{}.PerMinute), ofNumber},
	DriveHigh:       {inOut + unsafe.Offsetof(Results{}.Peaks) + 1*wide, ofTemperature},
	DriveHighLeast:  {inOut + unsafe.Offsetof(Results{}.Peaks), ofTemperature},
	DriveLow:        {inOut + unsafe.Offsetof(Results{}.Coldest), ofTemperature},
	DriveAtMost:     {inOut + unsafe.Offsetof(Results{}.Then) + 1*wide, ofTemperature},
	DriveAtLeast:    {inOut + unsafe.Offsetof(Results{}.Then), ofTemperature},
	DriveShown:      {inOut + unsafe.Offsetof(Results{}.Shown), ofTime},
	DriveHoldLeast:  {inOut + unsafe.Offsetof(Results{}.Hold), ofPower},
	DriveHoldMost:   {inOut + unsafe.Offsetof(Results{}.Hold) + 1*wide, ofPower},
	DriveDutyMost:   {inOut + unsafe.Offsetof(Results{}.HoldDuty), ofShare},
	DriveEnergy:     {inOut + unsafe.Offsetof(Results{}.CycleEnergy), ofEnergy},
	DriveEfficiency: {inOut + unsafe.Offsetof(Results{}.Efficiency), ofFraction},
	DriveBiot:       {inOut + unsafe.Offsetof(Results{}.Biot), ofNumber},
	DriveInner:      {inOut + unsafe.Offsetof(Results{}.Inner), ofTime},
	DriveConstant:   {inOut + unsafe.Offsetof(Results{}.Constant), ofTime},
	DriveCapacity:   {inOut + unsafe.Offsetof(Results{}.Capacity), ofHeatCapacity},
	DriveTrialLoss:  {inOut + unsafe.Offsetof(Results{}.TrialLoss), ofHeatLoss},
	DriveBookLeast:  {inOut + unsafe.Offsetof(Results{}.BookLoss), ofHeatLoss},
	DriveBookMost:   {inOut + unsafe.Offsetof(Results{}.BookLoss) + 1*wide, ofHeatLoss},
	DriveSetTime:    {inOut + unsafe.Offsetof(Results{}.SetTime), ofTime},
	DriveBoiling:    {inOut + unsafe.Offsetof(Results{}.Boiling), ofTemperature},

	// Of the stroke.
	StrokeStroke:        {inOut + unsafe.Offsetof(Results{}.Strokes) + 1*wide, ofLength},
	StrokeLeast:         {inOut + unsafe.Offsetof(Results{}.Strokes), ofLength},
	StrokeMost:          {inOut + unsafe.Offsetof(Results{}.Strokes) + 2*wide, ofLength},
	StrokeShare:         {inOut + unsafe.Offsetof(Results{}.Shares) + 1*wide, ofFraction},
	StrokeShareLeast:    {inOut + unsafe.Offsetof(Results{}.Shares), ofFraction},
	StrokeShareMost:     {inOut + unsafe.Offsetof(Results{}.Shares) + 2*wide, ofFraction},
	StrokeOfCoiled:      {inOut + unsafe.Offsetof(Results{}.ShareOfCoiled), ofFraction},
	StrokeOfFinished:    {inOut + unsafe.Offsetof(Results{}.ShareOfFinished), ofFraction},
	StrokeColdLength:    {inOut + unsafe.Offsetof(Results{}.ColdLength), ofLength},
	StrokeHotLength:     {inOut + unsafe.Offsetof(Results{}.HotLength), ofLength},
	StrokeBlocked:       {inOut + unsafe.Offsetof(Results{}.BlockedPull), ofForce},
	StrokeGain:          {inOut + unsafe.Offsetof(Results{}.HeldGain), ofForce},
	StrokeOther:         {inOut + unsafe.Offsetof(Results{}.OtherHot), ofLength},
	StrokeSwing:         {inOut + unsafe.Offsetof(Results{}.Swing), ofLength},
	StrokeAtLoad:        {inOut + unsafe.Offsetof(Results{}.AtLoad), ofForce},
	StrokeUnequal:       {inOut + unsafe.Offsetof(Results{}.Unequal), ofFraction},
	StrokeLoadTravel:    {inOut + unsafe.Offsetof(Results{}.LoadTravel), ofLength},
	StrokeTurn:          {inOut + unsafe.Offsetof(Results{}.PulleyTurn), ofAngle},
	StrokePull:          {inOut + unsafe.Offsetof(Results{}.StrokePull), ofForce},
	StrokeBack:          {inOut + unsafe.Offsetof(Results{}.Back), ofStiffness},
	StrokeSlackAt:       {inOut + unsafe.Offsetof(Results{}.SlackAt), ofLength},
	StrokeByMasses:      {inOut + unsafe.Offsetof(Results{}.ByMasses), ofLength},
	StrokeSpringRate:    {inOut + unsafe.Offsetof(Results{}.SpringRate), ofStiffness},
	StrokeSpringPull:    {inOut + unsafe.Offsetof(Results{}.SpringPull), ofForce},
	StrokeSpringStress:  {inOut + unsafe.Offsetof(Results{}.SpringStress), ofStress},
	StrokeSpringLimit:   {inOut + unsafe.Offsetof(Results{}.SpringLimit), ofStress},
	StrokeColdPull:      {inOut + unsafe.Offsetof(Results{}.ColdPull), ofForce},
	StrokeHotPull:       {inOut + unsafe.Offsetof(Results{}.HotPull), ofForce},
	StrokeAlong:         {inOut + unsafe.Offsetof(Results{}.Along), ofFraction},
	StrokeAcross:        {inOut + unsafe.Offsetof(Results{}.Across), ofFraction},
	StrokeFree:          {inOut + unsafe.Offsetof(Results{}.FreeStroke), ofLength},
	StrokeColdFree:      {inOut + unsafe.Offsetof(Results{}.ColdFree), ofLength},
	StrokeHotFree:       {inOut + unsafe.Offsetof(Results{}.HotFree), ofLength},
	StrokeColdRate:      {inOut + unsafe.Offsetof(Results{}.ColdRate), ofStiffness},
	StrokeHotRate:       {inOut + unsafe.Offsetof(Results{}.HotRate), ofStiffness},
	StrokeScalePull:     {inOut + unsafe.Offsetof(Results{}.ScalePull), ofForce},
	StrokeWork:          {inOut + unsafe.Offsetof(Results{}.Work), ofEnergy},
	StrokeSpecificWork:  {inOut + unsafe.Offsetof(Results{}.SpecificWork), ofSpecificEnergy},
	StrokePower:         {inOut + unsafe.Offsetof(Results{}.WorkPower), ofPower},
	StrokeSpecificPower: {inOut + unsafe.Offsetof(Results{}.SpecificPower), ofSpecificPower},

	// Of what goes wrong.
	TroubleLess:       {inOut + unsafe.Offsetof(Results{}.LessMass), ofMass},
	TroubleLessAdd:    {inOut + unsafe.Offsetof(Results{}.LessAdd), ofMass},
	TroubleMore:       {inOut + unsafe.Offsetof(Results{}.MoreMass), ofMass},
	TroubleMoreAdd:    {inOut + unsafe.Offsetof(Results{}.MoreAdd), ofMass},
	TroubleBrokeShare: {inOut + unsafe.Offsetof(Results{}.BrokeShare), ofFraction},
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
