package calc

import "twistbench/calc/craft"

// Field is a number that can be typed. A field of a group is worked out while another member is the given.
type Field struct {
	Key    string
	Unit   string  // unit of a bare number; "" where the kind has none
	Digits int     // significant digits shown when worked out
	Start  string  // text of the start plan
	Low    float64 // least and most that is possible, SI; both inclusive
	High   float64
	Usual  [2]float64 // SI; outside is accepted with advice; {0, 0} where anything possible is usual
	Words  []string   // what a word field may say, the first is the default
	Doubt  ID         // the field that holds this one's ±
	Bench  bool       // belongs to the bench, not to a muscle: clearing leaves it
}

// Fields is the table of everything that can be typed. A key is for ever, once it has been in a link.
var Fields = [NumFields]Field{
	FibrePolymer:       {Key: "fibre.polymer", Start: "nylon-66", Words: polymers},
	FibreDiameter:      {Key: "fibre.diameter", Unit: "mm", Digits: 4, Start: "0.52 mm", Low: 1e-6, High: 0.02, Usual: [2]float64{30e-6, 2e-3}, Doubt: FibreDiameterDoubt},
	FibreDiameterDoubt: {Key: "fibre.diameter-doubt", Unit: "mm", Digits: 2, Start: "0.01 mm", Low: 0, High: 5e-3, Bench: true},
	FibreLinearDensity: {Key: "fibre.linear-density", Unit: "tex", Digits: 4, Low: 1e-9, High: 1},
	FibreArea:          {Key: "fibre.area", Unit: "mm²", Digits: 4, Low: 1e-13, High: 4e-4},
	FibreDensity:       {Key: "fibre.density", Unit: "kg/m³", Digits: 4, Low: 100, High: 22000, Usual: [2]float64{850, 2300}},
	FibreStrands:       {Key: "fibre.strands", Start: "1", Digits: 1, Low: 1, High: 1000, Bench: true},
	FibreWeighedLength: {Key: "fibre.weighed-length", Unit: "m", Digits: 4, Low: 1e-3, High: 1e5},
	FibreWeighedMass:   {Key: "fibre.weighed-mass", Unit: "g", Digits: 4, Low: 1e-9, High: 100},
	FibreLabelStrength: {Key: "fibre.label-strength", Unit: "kg", Digits: 3, Low: 1e-3, High: 1000},
	FibreBundle:        {Key: "fibre.bundle", Unit: "mm", Digits: 4, Low: 1e-6, High: 0.05, Doubt: FibreDiameterDoubt},
	YarnStrands:        {Key: "yarn.strands", Start: "0", Digits: 1, Low: 0, High: 1000, Bench: true},
	YarnPolymer:        {Key: "yarn.polymer", Start: "nylon-66", Words: polymers},
	YarnDiameter:       {Key: "yarn.diameter", Unit: "mm", Digits: 4, Low: 1e-6, High: 0.02, Usual: [2]float64{20e-6, 2e-3}},
	YarnLinearDensity:  {Key: "yarn.linear-density", Unit: "dtex", Digits: 4, Low: 1e-9, High: 1},
	YarnArea:           {Key: "yarn.area", Unit: "mm²", Digits: 4, Low: 1e-13, High: 4e-4},
	YarnDensity:        {Key: "yarn.density", Unit: "kg/m³", Digits: 4, Low: 100, High: 22000, Usual: [2]float64{850, 9000}},
	YarnWeighedLength:  {Key: "yarn.weighed-length", Unit: "m", Digits: 4, Low: 1e-3, High: 1e5},
	YarnWeighedMass:    {Key: "yarn.weighed-mass", Unit: "g", Digits: 4, Low: 1e-9, High: 100},

	HangStress:        {Key: "hang.stress", Unit: "MPa", Digits: 4, Start: "17 MPa", Low: 1, High: 5e9, Usual: [2]float64{5e6, 50e6}},
	HangMass:          {Key: "hang.mass", Unit: "g", Digits: 3, Low: 1e-6, High: 1000, Usual: [2]float64{2e-3, 10}, Doubt: HangMassDoubt},
	HangAdd:           {Key: "hang.add", Unit: "g", Digits: 3, Low: 0, High: 1000},
	HangForce:         {Key: "hang.force", Unit: "N", Digits: 4, Low: 1e-5, High: 1e4},
	HangHook:          {Key: "hang.hook", Unit: "g", Digits: 3, Start: "35 g", Low: 0, High: 100, Bench: true},
	HangArea:          {Key: "hang.area", Start: "main", Words: []string{"main", "all"}},
	HangMassDoubt:     {Key: "hang.mass-doubt", Unit: "g", Digits: 2, Start: "1 g", Low: 0, High: 100, Bench: true},
	HangOwned:         {Key: "hang.owned", Unit: "g", Start: "20x2, 50x2, 100, 200", Low: 1e-6, High: 1000, Bench: true},
	HangBottle:        {Key: "hang.bottle", Unit: "g", Digits: 3, Start: "0 g", Low: 0, High: 100, Bench: true},
	HangClearance:     {Key: "hang.clearance", Unit: "mm", Digits: 4, Start: "30 mm", Low: 0, High: 10, Usual: [2]float64{0.005, 0.3}, Bench: true},
	HangStack:         {Key: "hang.stack", Unit: "mm", Digits: 4, Start: "120 mm", Low: 0, High: 10, Bench: true},
	HangTheirMass:     {Key: "hang.their-mass", Unit: "g", Digits: 3, Low: 1e-6, High: 1000},
	HangTheirDiameter: {Key: "hang.their-diameter", Unit: "mm", Digits: 4, Low: 1e-6, High: 0.02},

	CutRatio:          {Key: "cut.ratio", Digits: 4, Start: "4.8", Low: 1.0000001, High: 100, Usual: [2]float64{2, 9}, Doubt: CutRatioDoubt},
	CutRatioDoubt:     {Key: "cut.ratio-doubt", Digits: 2, Start: "0.2", Low: 0, High: 50},
	CutPrecursor:      {Key: "cut.precursor", Unit: "mm", Digits: 4, Low: 1e-3, High: 100, Doubt: ClampRulerDoubt},
	CutTail:           {Key: "cut.tail", Unit: "mm", Digits: 4, Start: "40 mm", Low: 0, High: 10, Bench: true},
	CutPieces:         {Key: "cut.pieces", Digits: 1, Start: "5", Low: 1, High: 1e6},
	CutSpare:          {Key: "cut.spare", Unit: "%", Digits: 3, Start: "20 %", Low: 0, High: 10},
	CutTrialPrecursor: {Key: "cut.trial-precursor", Unit: "mm", Digits: 4, Low: 1e-3, High: 100},
	CutTrialCoiled:    {Key: "cut.trial-coiled", Unit: "mm", Digits: 4, Low: 1e-3, High: 100},
	CutLift:           {Key: "cut.lift", Unit: "kg", Digits: 4, Low: 1e-4, High: 1e5},
	CutLiftStress:     {Key: "cut.lift-stress", Unit: "MPa", Digits: 4, Low: 1, High: 5e9, Usual: [2]float64{1e5, 50e6}},

	TwistBias:             {Key: "twist.bias", Unit: "°", Digits: 4, Start: "40 °", Low: 0.01, High: 1.2217304763960306, Usual: [2]float64{0.35, 0.96}},
	TwistPerTwisted:       {Key: "twist.per-twisted", Unit: "turns/m", Digits: 4, Low: 0.1, High: 1e6},
	TwistPerPrecursor:     {Key: "twist.per-precursor", Unit: "turns/m", Digits: 4, Low: 0.1, High: 1e6},
	TwistTurns:            {Key: "twist.turns", Unit: "turns", Digits: 4, Low: 0.1, High: 1e7},
	TwistFactor:           {Key: "twist.factor", Unit: "turns/m·√tex", Digits: 4, Low: 1e-3, High: 1e4},
	TwistHand:             {Key: "twist.hand", Start: "z", Words: []string{"z", "s"}},
	TwistYarnHand:         {Key: "twist.yarn-hand", Start: "none", Words: []string{"none", "z", "s"}},
	TwistSpeed:            {Key: "twist.speed", Unit: "rpm", Digits: 3, Start: "250 rpm", Low: 1.0 / 60, High: 1000, Usual: [2]float64{0.5, 17}, Bench: true},
	TwistTimedTurns:       {Key: "twist.timed-turns", Unit: "turns", Digits: 3, Start: "20 turns", Low: 0.5, High: 1e6, Bench: true},
	TwistTimed:            {Key: "twist.timed", Unit: "s", Digits: 3, Low: 0.1, High: 1e5},
	TwistCounted:          {Key: "twist.counted", Unit: "turns", Digits: 4, Low: 1, High: 1e7},
	TwistCountedPrecursor: {Key: "twist.counted-precursor", Unit: "mm", Digits: 4, Low: 1e-3, High: 100},
	TwistYoung:            {Key: "twist.young", Unit: "GPa", Digits: 3, Low: 1e7, High: 1e12},
	TwistShear:            {Key: "twist.shear", Unit: "GPa", Digits: 3, Low: 1e6, High: 1e11},
	TwistOtherDiameter:    {Key: "twist.other-diameter", Unit: "mm", Digits: 4, Low: 1e-6, High: 0.02},

	CoilOutside:   {Key: "coil.outside", Unit: "mm", Digits: 4, Start: "1.30 mm", Low: 1e-6, High: 0.5, Doubt: FibreDiameterDoubt},
	CoilMean:      {Key: "coil.mean", Unit: "mm", Digits: 4, Low: 1e-6, High: 0.5},
	CoilIndex:     {Key: "coil.index", Digits: 4, Low: 1, High: 100, Usual: [2]float64{1.05, 8}},
	CoilPitch:     {Key: "coil.pitch", Unit: "mm", Digits: 4, Low: 1e-6, High: 0.5},
	CoilCount:     {Key: "coil.count", Unit: "coils", Digits: 4, Low: 0.5, High: 1e6},
	CoilPerLength: {Key: "coil.per-length", Unit: "turns/cm", Digits: 4, Low: 1, High: 1e6},
	CoilRod:       {Key: "coil.rod", Unit: "mm", Digits: 4, Low: 1e-5, High: 0.5},
	CoilRodPitch:  {Key: "coil.rod-pitch", Unit: "mm", Digits: 4, Low: 1e-6, High: 0.5},
	CoilRodLength: {Key: "coil.rod-length", Unit: "mm", Digits: 4, Low: 1e-4, High: 100},
	CoilRodHand:   {Key: "coil.rod-hand", Start: "same", Words: []string{"same", "opposite"}},

	ClampCoiled:        {Key: "clamp.coiled", Unit: "mm", Digits: 4, Start: "85 mm", Low: 1e-4, High: 100},
	ClampMeasured:      {Key: "clamp.measured", Unit: "mm", Digits: 4, Low: 1e-4, High: 100, Doubt: ClampRulerDoubt},
	ClampMeasuredState: {Key: "clamp.measured-state", Start: "held", Words: []string{"held", "relaxed"}},
	ClampStages:        {Key: "clamp.stages", Start: "two", Words: []string{"two", "one"}},
	ClampFirstStretch:  {Key: "clamp.first-stretch", Unit: "%", Digits: 4, Start: "18 %", Low: -0.99, High: 20, Usual: [2]float64{0.02, 1.5}},
	ClampSecondStretch: {Key: "clamp.second-stretch", Unit: "%", Digits: 4, Start: "42 %", Low: -0.99, High: 20, Usual: [2]float64{0.02, 1.5}},
	ClampSecondBase:    {Key: "clamp.second-base", Start: "coiled", Words: []string{"coiled", "first-gap", "relaxed"}},
	ClampRelaxed:       {Key: "clamp.relaxed", Unit: "mm", Digits: 4, Low: 1e-4, High: 100, Doubt: ClampRulerDoubt},
	ClampFirst:         {Key: "clamp.first", Unit: "mm", Digits: 4, Low: 1e-4, High: 100},
	ClampSecond:        {Key: "clamp.second", Unit: "mm", Digits: 4, Low: 1e-4, High: 100},
	ClampRetained:      {Key: "clamp.retained", Unit: "%", Digits: 3, Start: "85 %", Low: 0, High: 1, Usual: [2]float64{0.3, 1}, Bench: true},
	ClampFinished:      {Key: "clamp.finished", Unit: "mm", Digits: 4, Low: 1e-4, High: 100},
	ClampRulerDoubt:    {Key: "clamp.ruler-doubt", Unit: "mm", Digits: 2, Start: "1 mm", Low: 0, High: 0.1, Bench: true},
	ClampZero:          {Key: "clamp.zero", Unit: "mm", Digits: 4, Start: "0 mm", Low: 0, High: 10, Bench: true},
	ClampHolePitch:     {Key: "clamp.hole-pitch", Unit: "mm", Digits: 4, Low: 1e-4, High: 1, Bench: true},
	ClampHoleOffset:    {Key: "clamp.hole-offset", Unit: "mm", Digits: 4, Start: "0 mm", Low: -1, High: 1, Bench: true},

	HeatSet:         {Key: "heat.set", Unit: "°C", Digits: 3, Start: "180 °C", Low: freezing, High: hottest},
	HeatOvershoot:   {Key: "heat.overshoot", Unit: "K", Digits: 3, Start: "10 K", Low: 0, High: 200, Bench: true},
	HeatMelt:        {Key: "heat.melt", Unit: "°C", Digits: 3, Low: freezing, High: hottest},
	HeatFrameLimit:  {Key: "heat.frame-limit", Unit: "°C", Digits: 3, Low: freezing, High: 2000, Bench: true},
	HeatDial1:       {Key: "heat.dial-1", Unit: "°C", Digits: 3, Low: freezing, High: hottest, Bench: true},
	HeatProbe1:      {Key: "heat.probe-1", Unit: "°C", Digits: 3, Low: freezing, High: hottest, Bench: true},
	HeatDial2:       {Key: "heat.dial-2", Unit: "°C", Digits: 3, Low: freezing, High: hottest, Bench: true},
	HeatProbe2:      {Key: "heat.probe-2", Unit: "°C", Digits: 3, Low: freezing, High: hottest, Bench: true},
	HeatDial3:       {Key: "heat.dial-3", Unit: "°C", Digits: 3, Low: freezing, High: hottest, Bench: true},
	HeatProbe3:      {Key: "heat.probe-3", Unit: "°C", Digits: 3, Low: freezing, High: hottest, Bench: true},
	HeatPreheat:     {Key: "heat.preheat", Unit: "min", Digits: 3, Start: "15 min", Low: 0, High: longestStep, Usual: [2]float64{600, 2 * 3600}, Bench: true},
	HeatLoad:        {Key: "heat.load", Unit: "min", Digits: 3, Start: "3 min", Low: 0, High: longestStep, Bench: true},
	HeatRecovery:    {Key: "heat.recovery", Unit: "min", Digits: 3, Start: "5 min", Low: 0, High: longestStep, Bench: true},
	HeatHold1:       {Key: "heat.hold-1", Unit: "min", Digits: 3, Start: "60 min", Low: 0, High: longestStep, Usual: usualHold},
	HeatCool1:       {Key: "heat.cool-1", Unit: "min", Digits: 3, Start: "30 min", Low: 0, High: longestStep, Bench: true},
	HeatReclamp:     {Key: "heat.reclamp", Unit: "min", Digits: 3, Start: "10 min", Low: 0, High: longestStep, Bench: true},
	HeatHold2:       {Key: "heat.hold-2", Unit: "min", Digits: 3, Start: "60 min", Low: 0, High: longestStep, Usual: usualHold},
	HeatCool2:       {Key: "heat.cool-2", Unit: "min", Digits: 3, Start: "30 min", Low: 0, High: longestStep, Bench: true},
	HeatRest:        {Key: "heat.rest", Unit: "h", Digits: 3, Start: "24 h", Low: 0, High: longestStep, Bench: true},
	HeatOvenWidth:   {Key: "heat.oven-width", Unit: "mm", Digits: 4, Start: "350 mm", Low: 1e-3, High: 20, Bench: true},
	HeatOvenDepth:   {Key: "heat.oven-depth", Unit: "mm", Digits: 4, Start: "300 mm", Low: 1e-3, High: 20, Bench: true},
	HeatOvenShelves: {Key: "heat.oven-shelves", Digits: 1, Start: "1", Low: 1, High: 100, Bench: true},
	HeatFrameLength: {Key: "heat.frame-length", Unit: "mm", Digits: 4, Start: "180 mm", Low: 1e-3, High: 20, Bench: true},
	HeatFrameWidth:  {Key: "heat.frame-width", Unit: "mm", Digits: 4, Start: "60 mm", Low: 1e-3, High: 20, Bench: true},
	HeatFrameGap:    {Key: "heat.frame-gap", Unit: "mm", Digits: 4, Start: "20 mm", Low: 0, High: 1, Bench: true},
	HeatFramePieces: {Key: "heat.frame-pieces", Digits: 1, Start: "2", Low: 1, High: 1000, Bench: true},

	ClockMode: {Key: "clock.mode", Start: "start", Words: []string{"start", "ready"}},
	ClockDay:  {Key: "clock.day", Low: 0, High: 2932531}, // to the end of the year 9998
	ClockTime: {Key: "clock.time", Low: 0, High: 86399},

	// Of the wire.
	WireRoute:         {Key: "wire.route", Start: "none", Words: []string{"none", "twisted", "wrapped", "fibre"}},
	WirePerLength:     {Key: "wire.per-length", Unit: "Ω/m", Digits: 4, Low: 1e-3, High: 1e6},
	WireReading:       {Key: "wire.reading", Unit: "Ω", Digits: 4, Low: 1e-3, High: 1e7},
	WireReadingLeads:  {Key: "wire.reading-leads", Unit: "Ω", Digits: 3, Start: "0.3 Ω", Low: 0, High: 100, Bench: true},
	WireReadingLength: {Key: "wire.reading-length", Unit: "mm", Digits: 4, Low: 1e-3, High: 1000},
	WireTest:          {Key: "wire.test", Digits: 1, Low: 2, High: mostRows},
	WireStrands:       {Key: "wire.strands", Digits: 1, Start: "1", Low: 1, High: 1000},
	WireWrapDiameter:  {Key: "wire.wrap-diameter", Unit: "mm", Digits: 4, Low: 1e-6, High: 0.5},
	WireWrapPitch:     {Key: "wire.wrap-pitch", Unit: "mm", Digits: 4, Low: 1e-6, High: 0.5},
	WireInRow:         {Key: "wire.in-row", Digits: 1, Start: "1", Low: 1, High: 1000},
	WireRows:          {Key: "wire.rows", Digits: 1, Start: "1", Low: 1, High: 1000},
	WireSupply:        {Key: "wire.supply", Start: "bench", Words: []string{"bench", "usb-2", "usb-3", "usb-c", "power-bank", "battery"}},
	WireMost:          {Key: "wire.most", Unit: "A", Digits: 3, Low: 1e-4, High: 1000, Bench: true},
	WireLeast:         {Key: "wire.least-current", Unit: "mA", Digits: 3, Low: 0, High: 10, Bench: true},
	WireSupplyVoltage: {Key: "wire.supply-voltage", Unit: "V", Digits: 4, Low: 1e-3, High: craft.VoltageStop},
	WireCurrent:       {Key: "wire.current", Unit: "A", Digits: 4, Low: 1e-6, High: 1000},
	WirePower:         {Key: "wire.power", Unit: "W", Digits: 4, Low: 1e-6, High: 1e5},
	WireDuty:          {Key: "wire.duty", Unit: "%", Digits: 3, Start: "100 %", Low: 0, High: 1},
	WireOnTime:        {Key: "wire.on-time", Unit: "s", Digits: 3, Low: 0, High: 1e6},
	WireAverage:       {Key: "wire.average", Unit: "W", Digits: 4, Low: 0, High: 1e5},
	WirePeriod:        {Key: "wire.period", Unit: "s", Digits: 3, Start: "20 s", Low: 1e-3, High: 1e6},
	WireArea:          {Key: "wire.area", Unit: "mm²", Digits: 3, Start: "0.5 mm²", Low: 1e-10, High: 1e-3, Bench: true},
	WireGauge:         {Key: "wire.gauge", Unit: "AWG", Digits: 3, Low: -3, High: 50, Bench: true},
	WireLeadDiameter:  {Key: "wire.lead-diameter", Unit: "mm", Digits: 3, Low: 1e-5, High: 0.04, Bench: true},
	WireLeadLength:    {Key: "wire.lead-length", Unit: "m", Digits: 3, Start: "1 m", Low: 0, High: 1000, Bench: true},
	WireLeadRating:    {Key: "wire.lead-rating", Unit: "A", Digits: 3, Low: 1e-4, High: 1e4, Bench: true},
	WireCharge:        {Key: "wire.charge", Unit: "mAh", Digits: 4, Low: 3.6e-3, High: 3.6e6, Bench: true},
	WireCell:          {Key: "wire.cell", Unit: "V", Digits: 3, Start: "3.7 V", Low: 0.1, High: craft.VoltageStop, Bench: true},
	WireCoefficient:   {Key: "wire.coefficient", Unit: "%/K", Digits: 3, Low: -0.05, High: 0.05},
	WireBefore:        {Key: "wire.before", Unit: "Ω", Digits: 4, Low: 1e-3, High: 1e7},
	WireAfter:         {Key: "wire.after", Unit: "Ω", Digits: 4, Low: 1e-3, High: 1e7},

	WireReadingVolts:   {Key: "wire.reading-volts", Unit: "V", Digits: 4, Low: 1e-3, High: craft.VoltageStop},
	WireReadingAmperes: {Key: "wire.reading-amperes", Unit: "A", Digits: 4, Low: 1e-6, High: 1000},
	WireWanted:         {Key: "wire.wanted-ohms", Unit: "Ω", Digits: 4, Low: 1e-3, High: 1e7},
	WireWantedPower:    {Key: "wire.wanted-power", Unit: "W", Digits: 4, Low: 1e-6, High: 1e5},
	WireReadCold:       {Key: "wire.read-cold", Unit: "Ω", Digits: 4, Low: 1e-3, High: 1e7},
	WireReadHot:        {Key: "wire.read-hot", Unit: "Ω", Digits: 4, Low: 1e-3, High: 1e7},

	// Of the drive.
	DriveWay:          {Key: "drive.way", Start: "hanging", Words: []string{"still", "hanging", "fan", "water"}, Bench: true},
	DriveSpeed:        {Key: "drive.speed", Unit: "m/s", Digits: 3, Start: "1 m/s", Low: 0.1, High: 30, Bench: true},
	DriveRoom:         {Key: "drive.room", Unit: "°C", Digits: 3, Start: "20 °C", Low: coldest, High: hottest, Bench: true},
	DriveTarget:       {Key: "drive.target", Unit: "°C", Digits: 3, Start: "50 °C", Low: coldest, High: hottest},
	DriveCoolTo:       {Key: "drive.cool-to", Unit: "°C", Digits: 3, Start: "25 °C", Low: coldest, High: hottest},
	DrivePower:        {Key: "drive.power", Unit: "W", Digits: 3, Low: 1e-6, High: 1e4},
	DriveOn:           {Key: "drive.on", Unit: "s", Digits: 3, Low: 1e-3, High: 1e5},
	DriveOff:          {Key: "drive.off", Unit: "s", Digits: 3, Low: 1e-3, High: 1e5},
	DriveAt:           {Key: "drive.at", Unit: "s", Digits: 3, Low: 0, High: 1e6},
	DriveAltitude:     {Key: "drive.altitude", Unit: "m", Digits: 3, Start: "0 m", Low: -450, High: 9000, Bench: true},
	DriveEmissivity:   {Key: "drive.emissivity", Unit: "%", Digits: 2, Start: "90 %", Low: 0, High: 1, Bench: true},
	DriveSpecificHeat: {Key: "drive.specific-heat", Unit: "J/(kg·K)", Digits: 3, Low: 100, High: 5000},
	DriveCurve:        {Key: "drive.curve", Digits: 1, Low: fewestRows, High: curveRows},
	DriveTrialPower:   {Key: "drive.trial-power", Unit: "W", Digits: 3, Low: 1e-6, High: 1e4},
	DriveCoolWay:      {Key: "drive.cool-way", Start: "as-heated", Words: []string{"as-heated", "still", "hanging", "fan", "water"}, Bench: true},
	DriveTrialHot:     {Key: "drive.trial-hot", Unit: "°C", Digits: 3, Low: coldest, High: hottest},

	// Of the stroke.
	StrokeLoad:          {Key: "stroke.load", Unit: "g", Digits: 3, Start: "50 g", Low: 0, High: 1000},
	StrokeAgainst:       {Key: "stroke.against", Start: "weight", Words: []string{"weight", "spring", "muscle"}},
	StrokeSpring:        {Key: "stroke.spring", Unit: "N/m", Digits: 3, Low: 1e-3, High: 1e6},
	StrokeSlack:         {Key: "stroke.slack", Unit: "mm", Digits: 4, Low: 1e-4, High: 100},
	StrokeApart:         {Key: "stroke.apart", Unit: "mm", Digits: 4, Low: 1e-4, High: 200},
	StrokeSpringWire:    {Key: "stroke.spring-wire", Unit: "mm", Digits: 3, Low: 1e-5, High: 0.1},
	StrokeSpringOutside: {Key: "stroke.spring-outside", Unit: "mm", Digits: 3, Low: 1e-4, High: 1},
	StrokeSpringTurns:   {Key: "stroke.spring-turns", Unit: "turns", Digits: 3, Low: 0.5, High: 1e4},
	StrokeBeside:        {Key: "stroke.beside", Digits: 1, Low: 1, High: 1000},
	StrokeLever:         {Key: "stroke.lever", Digits: 4, Start: "1", Low: 0.01, High: 100},
	StrokePulley:        {Key: "stroke.pulley", Unit: "mm", Digits: 4, Low: 1e-4, High: 10},
	StrokeOwn:           {Key: "stroke.own", Unit: "%", Digits: 3, Low: -1, High: 0.95},
	StrokeBase:          {Key: "stroke.base", Start: "loaded", Words: []string{"loaded", "coiled", "finished"}},
	StrokeLoaded:        {Key: "stroke.loaded", Unit: "mm", Digits: 4, Low: 1e-4, High: 100},
	StrokeLight:         {Key: "stroke.light", Unit: "g", Digits: 3, Low: 0, High: 1000},
	StrokeHeavy:         {Key: "stroke.heavy", Unit: "g", Digits: 3, Low: 0, High: 1000},
	StrokeColdLight:     {Key: "stroke.cold-light", Unit: "mm", Digits: 4, Low: 1e-4, High: 100},
	StrokeColdHeavy:     {Key: "stroke.cold-heavy", Unit: "mm", Digits: 4, Low: 1e-4, High: 100},
	StrokeHotLight:      {Key: "stroke.hot-light", Unit: "mm", Digits: 4, Low: 1e-4, High: 100},
	StrokeHotHeavy:      {Key: "stroke.hot-heavy", Unit: "mm", Digits: 4, Low: 1e-4, High: 100},
	StrokeScaleCold:     {Key: "stroke.scale-cold", Unit: "g", Digits: 4, Low: 0, High: 1000},
	StrokeScaleHot:      {Key: "stroke.scale-hot", Unit: "g", Digits: 4, Low: 0, High: 1000},
	StrokeAdded:         {Key: "stroke.added", Unit: "g", Digits: 3, Low: 1e-6, High: 1000},
	StrokeChange:        {Key: "stroke.change", Unit: "mm", Digits: 4, Low: 1e-6, High: 100},
	StrokeTime:          {Key: "stroke.time", Unit: "s", Digits: 3, Low: 1e-3, High: 1e5},

	TroubleBroke: {Key: "trouble.broke", Unit: "turns", Digits: 4, Low: 1, High: 1e7},
}

const (
	freezing    = 273.15         // K: what is colder is no oven
	coldest     = 243.15         // K: -30 °C, as cold as a room or a winter night
	hottest     = 400 + 273.15   // K: no fibre listed stands more
	mostRows    = 40             // of a pasted table
	longestStep = 90 * 24 * 3600 // s
)

// usualHold: half an hour to two hours in papers, from memory; here with as much again either way.
var usualHold = [2]float64{900, 4 * 3600}

// polymers are the keys of craft.Polymers, in its order.
var polymers = []string{"nylon-6", "nylon-66", "polyethylene", "polyester", "pvdf", "other"}
