package calc

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
)

// What is typed into a field, and what is said of it.
func TestRead(t *testing.T) {
	nan := math.NaN()
	for _, row := range []struct {
		id     ID
		text   string
		si     float64
		reason Reason
		part   string
	}{
		{FibreDiameter, "0,52 mm", 0.52e-3, "", ""},
		{FibreDiameter, "22 thou", 22 * 25.4e-6, "", ""}, // an inch is 25.4 mm
		{FibreDiameter, "", nan, "", ""},
		{ClockDay, "2026-11-25", 20782, "", ""}, // Python's datetime
		{ClockDay, " 2026-11-25 ", 20782, "", ""},
		{ClockDay, "25.11.2026", nan, NotADay, "25.11.2026"},
		{ClockDay, "2026-02-30", nan, NotADay, "2026-02-30"},
		{ClockTime, "07:30", 27000, "", ""},
		{ClockTime, "24:00", nan, NotATime, "24:00"},
		{ClockTime, "soon", nan, NotATime, "soon"},
		{FibreDiameter, "abc", nan, NotANumber, "abc"},
		{FibreDiameter, "0,4,5", nan, NotANumber, "0,4,5"},
		{FibreDiameter, "NaN", nan, NotANumber, "NaN"},
		{FibreDiameter, "inf", nan, NotANumber, "inf"},
		{FibreDiameter, "0.5 kg", nan, BadUnit, "kg"},
		{FibreDiameter, "0", nan, TooLow, ""},
		{FibreDiameter, "-1", nan, TooLow, ""},
		{FibreDiameter, "21 mm", nan, TooHigh, ""},
		{FibreDiameter, "20 mm", 20e-3, "", ""},
		{FibreDiameter, "1e999", nan, NotFinite, "1e999"},
		{FibreLinearDensity, "470 dtex x2", 94e-6, "", ""}, // tex is g/km
		{FibreLinearDensity, "470 dtex x0", nan, BadPlies, "x0"},
		{FibreStrands, "1.5", nan, NotWhole, "1.5"},
		{FibreStrands, "0", nan, TooLow, ""},
		{YarnStrands, "0", 0, "", ""},
		{FibrePolymer, "polyester", 3, "", ""},
		{FibrePolymer, "silk", 0, NotAWord, "silk"},
		{FibrePolymer, "", 0, "", ""},
		{FibreDensity, "", 1140, "", ""}, // the book value
		{FibreDensity, "1,2 g/cm3", 1200, "", ""},
		{FibreDensity, "0", nan, TooLow, ""}, // and not the book value
		{HangOwned, "20x2, 50", 3, "", ""},
		{HangOwned, "20x0", nan, BadItem, "x0"},
		{HangOwned, "20x2; foo", nan, BadItem, "foo"},
		{HangOwned, "2x100 g", nan, BadItem, "2x100 g"},
		{HangOwned, "2000 kg", nan, TooHigh, ""},
		{CutRatio, "0.25", 4, "", ""},
		{CutRatio, "1:1", nan, RatioOfOne, "1:1"},
		{CutRatio, "1", nan, RatioOfOne, "1"},
		{CutRatio, "200", nan, TooHigh, ""},
		{CutSpare, "0", 0, "", ""},
		{CutSpare, "-5", nan, TooLow, ""},
		{ClampFirstStretch, "0", 0, "", ""},
		{ClampFirstStretch, "20", 0.2, "", ""},
		{ClampFirstStretch, "-100", nan, TooLow, ""},
		{ClampFirstStretch, "-10 %", -0.1, "", ""},
		{ClampRetained, "0.85", 0.85, "", ""},
		{ClampRetained, "85", 0.85, "", ""},
		{ClampRetained, "120", nan, TooHigh, ""},
		{WirePerLength, "0", nan, TooLow, ""},
		{WirePerLength, "14 ohm/ft", 14 / 0.3048, "", ""}, // a foot is 304.8 mm
		{WireReadingLength, "-5", nan, TooLow, ""},
		{WireSupplyVoltage, "230", nan, TooManyVolts, ""}, // mains is never taken, and said to be that
		{WireSupplyVoltage, "60", 60, "", ""},
		{WireSupplyVoltage, "60.1", nan, TooManyVolts, ""},
		{WireReadingVolts, "230", nan, TooManyVolts, ""},
		{WireTest, "100 5.2\n200 9.9", 2, "", ""},
		{WireTest, "length, ohms\n100, 5.2\n200, 9,9\n\n300, 15", 3, "", "length, ohms"},
		{WireTest, "100 5.2\n200 gap\n300 15\nend", 2, "", "200 gap"}, // what is left out is said
		{WireCoefficient, "-6 %/K", nan, TooLow, ""},
		{WireGauge, "AWG 24", 24, "", ""},
		{WireGauge, "4/0", -3, "", ""}, // the thickest of ASTM B258
		{WireGauge, "5/0", nan, TooLow, ""},
		{WireGauge, "24 SWG", nan, BadUnit, "SWG"},
		{WireTest, "100 9\n200 5", nan, NotRising, ""},
		{WireTest, "100 9\n100 9.1\n100 9.2", nan, NotRising, ""},
		{WireTest, "-100 5\n200 9", nan, NotRising, ""},
		{WireTest, "100 5.2", nan, TooFewRows, ""},
		{WireTest, "100 5.2\nsoon", nan, TooFewRows, "soon"},
		{WireTest, "", nan, "", ""},
	} {
		s := Start().Type(row.id, row.text, Fields[row.id].Unit)
		var st State
		st.Work(&s)
		n := st.Notices[row.id]
		name := row.id.Key() + "=" + row.text
		assert.Equal(t, row.reason, n.Reason, name)
		if row.part != "" {
			assert.Equal(t, row.part, n.Part, name)
		}
		switch n.Reason {
		case TooLow:
			assert.Equal(t, Fields[row.id].Low, n.Limit)
		case TooHigh, TooManyVolts:
			assert.Equal(t, Fields[row.id].High, n.Limit)
		default:
			assert.Zero(t, n.Limit)
		}
		if math.IsNaN(row.si) {
			assert.True(t, math.IsNaN(st.SI(row.id)), "%s: %g", name, st.SI(row.id))
		} else {
			assert.InDelta(t, row.si, st.SI(row.id), 1e-12*math.Abs(row.si), name)
		}
	}
}

func TestOtherReading(t *testing.T) {
	for text, other := range map[string]string{"1.234 mm": "1234 mm", "1,234": "1234 mm", "1.23": "", "0.234": ""} {
		s := Start().Type(CutTail, text, "mm")
		var st State
		st.Work(&s)
		assert.Equal(t, other, st.Notices[CutTail].Other, text)
	}
}

// What a number needs is a field, and filling in what is needed, one after another, makes it known.
// Where all is there and yet there is no coil, nothing more is needed of it; what follows from it needs it.
func TestNeedsNothing(t *testing.T) {
	s := sheetOf(t, "coil.outside=1.05 mm&cut.ratio=4.8") // narrower than the fibre, 0.558 mm twice
	var st State
	st.Work(&s)
	assert.False(t, known(st.SI(CoilPitch)))
	assert.Equal(t, None, st.Needs(CoilPitch))
	assert.Equal(t, CoilPitch, st.Needs(CoilTurns))
	s = s.Type(CoilOutside, "", "mm")
	st.Work(&s)
	assert.Equal(t, CoilOutside, st.Needs(CoilPitch))

	// One heat-set, and the gap of a second one as what all lengths follow from.
	s = sheetOf(t, "clamp.second=130&clamp.stages=one")
	st.Work(&s)
	for _, id := range []ID{ClampCoiled, CutPrecursor, CutLength, ClampFirst} {
		assert.Equal(t, ClampStages, st.Needs(id), id.Key())
	}
}

func TestNeeds(t *testing.T) {
	fill := map[ID]string{
		FibreDiameter: "0.5 mm", FibreDensity: "1140 kg/m³", FibreStrands: "1", FibreWeighedLength: "10 m", FibreWeighedMass: "2 g",
		FibreLabelStrength: "5 kg", FibreDiameterDoubt: "0.01 mm", YarnStrands: "1", YarnDiameter: "0.1 mm", YarnLinearDensity: "90 dtex", YarnArea: "0.01 mm²",
		YarnDensity: "1140", YarnWeighedLength: "10 m", YarnWeighedMass: "1 g", HangStress: "17 MPa", HangHook: "35 g", HangOwned: "20x2",
		HangBottle: "0 g", HangClearance: "30 mm", HangStack: "100 mm", HangTheirMass: "200 g", HangTheirDiameter: "0.4 mm",
		CutRatio: "4.8", CutTail: "40 mm", CutPieces: "5", CutSpare: "20 %", CutTrialPrecursor: "300 mm", CutTrialCoiled: "60 mm",
		CutLift: "2 kg", CutLiftStress: "5 MPa", ClampCoiled: "85 mm", ClampMeasured: "80 mm", ClampStages: "two", ClampFirstStretch: "18 %",
		ClampSecondStretch: "42 %", ClampRetained: "85 %", ClampZero: "0 mm", ClampHolePitch: "10 mm", ClampHoleOffset: "0 mm", TroubleBroke: "150",
		FibreBundle: "0.6 mm", CutRatioDoubt: "0.2", ClampRelaxed: "95 mm", HangMassDoubt: "1 g", ClampRulerDoubt: "1 mm",
		FibreLinearDensity: "200 tex", FibreArea: "0.2 mm²", HangMass: "300 g", HangAdd: "270 g", HangForce: "3 N", CutPrecursor: "400 mm",
		TwistBias: "40", TwistPerTwisted: "480", TwistPerPrecursor: "415", TwistTurns: "170", TwistFactor: "8000", TwistSpeed: "250", TwistTimedTurns: "20", TwistTimed: "5",
		TwistCounted: "160", TwistCountedPrecursor: "400", TwistYoung: "2.5", TwistShear: "0.4", TwistOtherDiameter: "0.3",
		CoilOutside: "1.3", CoilMean: "0.75", CoilIndex: "1.3", CoilPitch: "0.6", CoilCount: "140", CoilPerLength: "17",
		CoilRod: "2 mm", CoilRodPitch: "1.2 mm", CoilRodLength: "60 mm", CoilRodHand: "same",
		ClampFirst: "100 mm", ClampSecond: "120 mm", ClampFinished: "115 mm",
		HeatSet: "180 °C", HeatOvershoot: "10 K", HeatMelt: "255 °C", HeatFrameLimit: "200 °C", HeatDial1: "150 °C", HeatProbe1: "160 °C",
		HeatDial2: "200 °C", HeatProbe2: "212 °C", HeatDial3: "220 °C", HeatProbe3: "230 °C", HeatPreheat: "15 min", HeatLoad: "3 min",
		HeatRecovery: "5 min", HeatHold1: "1 h", HeatCool1: "30 min", HeatReclamp: "10 min", HeatHold2: "1 h", HeatCool2: "30 min",
		HeatRest: "24 h", HeatOvenWidth: "350 mm", HeatOvenDepth: "300 mm", HeatOvenShelves: "1", HeatFrameLength: "180 mm",
		HeatFrameWidth: "60 mm", HeatFrameGap: "20 mm", HeatFramePieces: "2",
		ClockDay: "2026-11-25", ClockTime: "07:30",
		WireRoute: "twisted", WireSupply: "usb-c", WirePerLength: "45.9", WireReading: "23 Ω", WireReadingLeads: "0.3", WireReadingLength: "500 mm", WireTest: "100 mm 5.2\n200 mm 9.9\n300 mm 15",
		WireStrands: "1", WireWrapDiameter: "1.5 mm", WireWrapPitch: "1 mm", WireInRow: "1", WireRows: "1", WireMost: "3 A", WireLeast: "2 A",
		WireSupplyVoltage: "5 V", WireCurrent: "0.3 A", WirePower: "1 W", WireDuty: "50 %", WireOnTime: "5 s", WireAverage: "0.2 W", WirePeriod: "20 s",
		WireArea: "0.5 mm²", WireGauge: "20", WireLeadDiameter: "0.8 mm", WireLeadLength: "1 m", WireLeadRating: "3 A", WireCharge: "2000 mAh", WireCell: "3.7 V",
		WireCoefficient: "0.1 %/K", WireBefore: "20 Ω", WireAfter: "21 Ω", WireReadingVolts: "1.2 V", WireReadingAmperes: "0.1 A", WireWanted: "20 Ω", WireWantedPower: "1 W", WireReadCold: "20 Ω", WireReadHot: "21 Ω", FibrePolymer: "nylon-66", DriveRoom: "20 °C", DriveTarget: "50 °C",
		StrokeLoad: "20 g", StrokeSpring: "30 N/m", StrokeSlack: "120 mm", StrokeAgainst: "muscle", StrokeApart: "240 mm", StrokeSpringWire: "0.5 mm", StrokeSpringOutside: "5 mm", StrokeSpringTurns: "30 turns", StrokeAdded: "50 g", StrokeChange: "6 mm", StrokeBeside: "2", StrokeLever: "3", StrokePulley: "10 mm", StrokeOwn: "9 %",
		StrokeLoaded: "120 mm", StrokeLight: "20 g", StrokeHeavy: "80 g", StrokeColdLight: "117 mm", StrokeColdHeavy: "124 mm",
		StrokeHotLight: "108 mm", StrokeHotHeavy: "117 mm", StrokeScaleCold: "1000 g", StrokeScaleHot: "900 g", StrokeTime: "4 s",
		// Of the drive.
		DriveSpeed: "1 m/s", DriveCoolTo: "25 °C", DrivePower: "20 W", DriveAt: "1 s", DriveAltitude: "0 m",
		DriveEmissivity: "90 %", DriveSpecificHeat: "1400", DriveCurve: "0 80\n5 56\n10 42\n20 28", DriveOn: "10 s", DriveOff: "20 s", DriveTrialPower: "0.8 W", DriveTrialHot: "71 °C",
	}
	loads := []ID{HangUnder, HangUnderTotal, HangUnderStress, HangOver, HangOverTotal, HangOverStress}
	for name, begin := range map[string]Sheet{
		"start": Start(), "cleared": Start().Cleared(), "one stage": Start().Type(ClampStages, "one", "").Cleared(), "nothing": {},
		"other polymer": Start().Type(FibrePolymer, "other", ""),
	} {
		for id := None + 1; id < NumIDs; id++ {
			if in(loads, id) {
				continue // there may be no such load
			}
			s := begin
			var st State
			st.Work(&s)
			if !st.Value(id).Is() || isList(st.Value(id).Kind()) {
				continue
			}
			for range 24 {
				needs := st.Needs(id)
				if needs == None {
					break
				}
				if !assert.True(t, needs.IsField(), "%s: %s needs %s", name, id.Key(), needs.Key()) {
					break
				}
				text, ok := fill[needs]
				if !assert.True(t, ok, "%s: %s needs %s", name, id.Key(), needs.Key()) {
					break
				}
				s = s.Type(needs, text, Fields[needs].Unit)
				st.Work(&s)
			}
			if st.Plan.Stroke.tried && in([]ID{StrokeLeast, StrokeMost, StrokeShareLeast, StrokeShareMost}, id) {
				continue // own trials leave no band
			}
			assert.True(t, known(st.SI(id)), "%s: %s stays unknown", name, id.Key())
		}
	}
}
