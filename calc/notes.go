package calc

import (
	"math"

	"twistbench/calc/craft"
	"twistbench/calc/quantity"
)

// Level is how much a note matters. Each has a word and a shape of its own on the page.
type Level uint8

const (
	Fine Level = iota // good to know
	Care              // accepted, with advice
	Stop              // impossible, or past a limit
)

// Note is a sentence that some plans call for. Its words are "note." + Key; they name the numbers they need.
type Note struct {
	Key   string
	At    ID // the number it stands under
	Level Level
	tests []test
}

// test is one thing that must be so of a plan before it calls for a note: how the number of stands to times another one, or to times alone
// where than is None.
type test struct {
	of    ID
	is    relation
	than  ID
	times float64 // SI
}

// relation is what a test asks. Nothing holds of what is unknown, but that it is.
type relation uint8

const (
	less relation = iota
	atMost
	equal
	atLeast
	more
	isKnown
	isWorked

	isOff      // scale and caliper disagree
	isMultiple // the plies on the label were forgotten
	isOther    // as dense as another polymer
	isThick    // more than strands side by side measure
	pastDoubt  // of the ratio
	isMany     // pieces of one mass, more than four times its grams
	isContrary // twisted the other way than the fibre
	overlaps   // by more than what was measured leaves open
	gapes      // the same
	isSaid     // both givens of the shape are known
	isApart    // two lengths of one piece, by more than the ruler's ±
	isOpen     // coils that do not touch
	isCold     // under the glass transition
	isLoose    // nylon that may spring open
	isUnusual
	isFitted // a line through the oven's readings
	isWired  // Wire switches slowly, and its times are those of Drive
	isBeyond // what was read of the oven

	isStraight // the coil, drawn out by the load anywhere in the band
	isClipped  // own stroke, where the turns touch
	isTried    // from own trials, and no estimate

	isColder // a row of the cooling curve than the room, or all of its fit

	isCrowded // the supply, by muscles and resistor at once

	isOutside // of the bound of losses that times is, one of craft.Outside

	not relation = 1 << 6 // it must not be so; of what is unknown it isn't
	or  relation = 1 << 7 // it, or else the next test
)

// Notes is the table of notes, in the order in which they are shown.
var Notes = [...]Note{
	{"weighed-agrees", FibreWeighed, Fine, []test{{FibrePacking, isKnown, None, 0}, {FibrePacking, not | isOff, None, 0}}},
	{"weighed-twice", FibreWeighed, Care, []test{{FibrePacking, isMultiple, None, 0}}},
	{"weighed-polymer", FibreWeighed, Care, []test{{FibrePacking, isOff, None, 0}, {FibrePacking, not | isMultiple, None, 0}, {FibreImplied, isOther, None, 0}}},
	{"weighed-light", FibreWeighed, Care, []test{{FibrePacking, isOff, None, 0}, {FibrePacking, less, None, 1}, {FibreImplied, not | isOther, None, 0}}},
	{"weighed-heavy", FibreWeighed, Care, []test{{FibrePacking, isOff, None, 0}, {FibrePacking, more, None, 1}, {FibrePacking, not | isMultiple, None, 0}, {FibreImplied, not | isOther, None, 0}}},
	{"label-off", FibreLabelStress, Care, []test{{FibreLabelStress, or | less, None, 200e6}, {FibreLabelStress, more, None, strongest}}},
	{"bundle", FibreThick, Care, []test{{FibreStrands, or | more, None, 1}, {YarnStrands, more, None, 0}, {FibreBundle, not | isKnown, None, 0}, {FibreThick, more, None, 0}}},
	{"bundle-off", FibreThick, Care, []test{{FibreBundle, or | less, FibreThin, 0.95}, {FibreBundle, isThick, None, 0}}},
	{"yarn-size", YarnStrands, Care, []test{{YarnStrands, more, None, 0}, {YarnArea, not | isKnown, None, 0}}},
	{"yarn-density", YarnDensity, Care, []test{{YarnStrands, more, None, 0}, {YarnDensity, isWorked, None, 0}}},
	{"yarn-agrees", YarnWeighed, Fine, []test{{YarnPacking, isKnown, None, 0}, {YarnPacking, not | isOff, None, 0}}},
	{"yarn-off", YarnWeighed, Care, []test{{YarnPacking, isOff, None, 0}}},

	{"hook-heavy", HangAdd, Stop, []test{{HangAdd, less, None, 0}}},
	{"hook-nothing", HangHook, Care, []test{{HangHook, equal, None, 0}}},
	{"stress-low", HangStress, Care, []test{{HangStress, less, None, 8e6}}},
	{"stress-high", HangStress, Care, []test{{HangStress, more, None, 40e6}, {HangStress, atMost, None, strongest}, {HangOfLabel, not | more, None, 1}}},
	{"stress-break", HangStress, Stop, []test{{HangStress, more, None, strongest}}},
	{"over-label", HangStress, Stop, []test{{HangOfLabel, more, None, 1}}},
	{"all-area", HangArea, Care, []test{{HangArea, equal, None, float64(AreaAll)}, {YarnStrands, more, None, 0}}},
	{"set-many", HangOwned, Care, []test{{HangOwned, isMany, None, 0}}},
	{"no-load", HangUnder, Care, []test{{HangOwned, isKnown, None, 0}, {HangAdd, more, None, 0}, {HangOver, not | isKnown, None, 0}}},
	{"bottle-full", HangWater, Stop, []test{{HangWater, less, None, 0}, {HangAdd, atLeast, None, 0}}},

	{"ratio-guess", CutRatio, Care, []test{{CutRatioDoubt, not | isKnown, None, 0}, {CutRatio, isKnown, None, 0}}},
	{"ratio-open", CutRatio, Care, []test{{CutRatio, less, None, craft.ClosedRatio}}},
	{"trial-off", CutTrialRatio, Care, []test{{CutTrialRatio, pastDoubt, None, 0}}},
	{"trial-shorter", CutTrialRatio, Stop, []test{{CutTrialRatio, atMost, None, 1}}},

	{"twist-most", TwistBias, Stop, []test{{TwistPerPrecursor, more, TwistMost, 1}}},
	{"twist-hand-own", TwistHand, Care, []test{{TwistYarnHand, isContrary, None, 0}}},
	{"turns-shape", CoilTurns, Care, []test{{CoilIndex, or | less, CoilLoadIndexLeast, 0.8}, {CoilIndex, more, CoilLoadIndexMost, 1.2}}},
	{"onset-early", TwistBias, Care, []test{{TwistTurns, more, TwistOnsetMost, 1}}},

	{"coil-thin", CoilOutside, Stop, []test{{CoilMean, less, TwistThickness, justUnder}}},
	{"coil-overlap", CoilOutside, Stop, []test{{CoilMean, not | less, TwistThickness, justUnder}, {CoilGap, overlaps, None, 0}}},
	{"coil-unlike", CoilOutside, Care, []test{{CoilIndex, atLeast, None, 1}, {CoilIndex, or | less, CoilLoadIndexLeast, 0.8}, {CoilIndex, more, CoilLoadIndexMost, 1.2}}},
	{"coil-open", CoilOutside, Fine, []test{{CoilGap, gapes, None, 0}}},
	{"coil-counted", CoilCount, Care, []test{{CoilCount, not | isWorked, None, 0}, {CutPrecursor, not | isWorked, None, 0}, {ClampMeasured, not | isKnown, None, 0}, {CoilPitch, isKnown, None, 0}}},
	{"coil-lengths", CoilOutside, Care, []test{{CutRatio, isWorked, None, 0}, {CoilShapeRatio, or | less, ClampThisRatio, 0.93}, {CoilShapeRatio, more, ClampThisRatio, 1.07}}},
	{"coil-unknown", CoilOutside, Stop, []test{{TwistThickness, isKnown, None, 0}, {CoilMean, isSaid, None, 0}, {TwistContraction, isKnown, None, 0}, {CoilMean, not | less, TwistThickness, justUnder}, {CoilPitch, or | not | isKnown, None, 0}, {CoilMean, not | isKnown, None, 0}}},
	{"coil-past", CoilTravel, Stop, []test{{CoilTravelLength, less, None, 0}}},
	{"rod-same", CoilRodHand, Fine, []test{{CoilRodMean, isKnown, None, 0}, {CoilRodHand, equal, None, float64(RodSame)}}},
	{"rod-opposite", CoilRodHand, Care, []test{{CoilRodMean, isKnown, None, 0}, {CoilRodHand, equal, None, float64(RodOpposite)}}},
	{"rod-overlap", CoilRodHand, Stop, []test{{CoilRodGap, less, None, 0}}},

	{"measured", ClampMeasured, Fine, []test{{ClampThisRatio, more, None, 1}}},
	{"measured-shape", ClampMeasured, Fine, []test{{CutRatio, isWorked, None, 0}, {ClampMeasured, isApart, None, 0}}},
	{"measured-long", ClampMeasured, Stop, []test{{ClampThisRatio, atMost, None, 1}}},
	{"measured-relaxed", ClampMeasured, Care, []test{{ClampMeasured, isKnown, None, 0}, {ClampMeasuredState, equal, None, float64(StateRelaxed)}}},
	{"first-wish", ClampFirst, Care, []test{{ClampMeasured, isKnown, None, 0}, {ClampFirst, not | isWorked, None, 0}}},
	{"finished-wish", ClampFinished, Care, []test{{ClampMeasured, isKnown, None, 0}, {ClampFinished, not | isWorked, None, 0}}},
	{"second-wish", ClampSecond, Care, []test{{ClampMeasured, isKnown, None, 0}, {ClampSecond, not | isWorked, None, 0}}},
	{"relaxed-guess", ClampRelaxed, Care, []test{{ClampStages, equal, None, float64(StagesTwo)}, {ClampSecondBase, equal, None, float64(BaseRelaxed)}, {ClampRelaxed, not | isKnown, None, 0}}},
	{"second-shorter", ClampSecond, Care, []test{{ClampSecond, less, ClampFirst, 1}}},
	{"no-room", ClampTravel, Stop, []test{{ClampTravelLength, atMost, None, 0}}},
	{"travel-least", ClampTravel, Care, []test{{ClampTravelLength, more, None, 0}, {ClampTravel, isOpen, None, 0}}},

	{"heat-unknown", HeatSet, Stop, []test{{HeatMelt, isWorked, None, 0}, {HeatMelt, not | isKnown, None, 0}}},
	{"heat-over", HeatSet, Stop, []test{{HeatSet, atLeast, HeatMelt, 1}}},
	{"heat-cold", HeatSet, Care, []test{{HeatSet, isCold, None, 0}}},
	{"heat-loop", HeatSet, Care, []test{{HeatSet, isLoose, None, 0}}},
	{"heat-unusual", HeatSet, Care, []test{{HeatSet, isUnusual, None, 0}, {HeatSet, not | atLeast, HeatMelt, 1}, {HeatSet, not | isCold, None, 0}, {HeatSet, not | isLoose, None, 0}}},
	{"peak-over", HeatPeak, Stop, []test{{HeatPeak, atLeast, HeatMelt, 1}, {HeatSet, not | atLeast, HeatMelt, 1}}},
	{"peak-near", HeatPeak, Care, []test{{HeatMargin, more, None, 0}, {HeatMargin, less, None, craft.KeepUnderMelting}}},
	{"frame-limit", HeatPeak, Stop, []test{{HeatPeak, more, HeatFrameLimit, 1}}},
	{"probe-falls", HeatDial, Stop, []test{{HeatSlope, atMost, None, 0}}},
	{"dial-one", HeatDial, Care, []test{{HeatMeanDial, isKnown, None, 0}, {HeatSlope, not | isFitted, None, 0}}},
	{"dial-beyond", HeatDial, Care, []test{{HeatSlope, isFitted, None, 0}, {HeatSlope, more, None, 0}, {HeatDial, isBeyond, None, 0}}},
	{"frame-short", HeatPerLoad, Stop, []test{{HeatFrameLength, less, ClampLast, 1}}},
	{"frame-large", HeatPerLoad, Stop, []test{{HeatFrames, equal, None, 0}}},
	{"loads-many", HeatLoads, Stop, []test{{HeatLoads, more, None, 12}}}, // timetable.MaxLoads
	{"wire-leads", WireReading, Stop, []test{{WireReading, atMost, WireReadingLeads, 1}}},
	{"wire-over", WireCurrent, Stop, []test{{WireSupplyVoltage, more, WireOwnVoltage, craft.MostOfOwn}}},
	{"wire-under", WireCurrent, Stop, []test{{WireSupplyVoltage, less, WireOwnVoltage, craft.LeastOfOwn}}},
	{"wire-most", WireCurrent, Stop, []test{{WireCurrent, more, WireMost, 1}}},
	{"wire-thin", WireCurrent, Stop, []test{{WireCurrent, more, WireLeadRating, 1}}},
	{"wire-fuse", WireCurrent, Stop, []test{{WireFuse, more, WireLeadRating, 1}, {WireCurrent, not | more, WireLeadRating, 1}}},
	{"wire-fuse-none", WireCurrent, Stop, []test{{WireCurrent, atLeast, None, float64(craft.LargestFuse)}}},
	{"wire-least", WireCurrent, Care, []test{{WireCurrent, less, WireLeast, 1}, {WireLeast, not | more, WireMost, 1}}},
	{"wire-pause", WireCurrent, Care, []test{{WireLeast, more, None, 0}, {WirePause, more, None, float64(craft.BankPatience)}, {WireCurrent, atLeast, WireLeast, 1}, {WireLeast, not | isCrowded, None, 0}}},
	{"wire-crowd", WireCurrent, Stop, []test{{WireLeast, isCrowded, None, 0}, {WireCurrent, atMost, WireMost, 1}}},
	{"wire-volts", WireSupplyVoltage, Care, []test{{WireSupplyVoltage, more, None, craft.VoltageCare}}},
	{"wire-melts-cycle", WireCurrent, Stop, []test{{DriveHigh, atLeast, HeatMelt, 1}, {DrivePower, isWorked, None, 0}}},
	{"wire-runs", WireCurrent, Stop, []test{{DriveStuck, atLeast, None, away}, {DrivePower, or | isWorked, None, 0}, {DrivePower, less, WireFullPower, 1}}},
	{"wire-melts", WireCurrent, Stop, []test{{DriveStuck, atLeast, HeatMelt, 1}, {DriveStuck, less, None, away}, {DrivePower, or | isWorked, None, 0}, {DrivePower, less, WireFullPower, 1}}},
	{"wire-average", WireAverage, Stop, []test{{WireAverage, or | more, WirePower, 1 + 1e-9}, {WireOnTime, more, WirePeriod, 1 + 1e-9}}},
	{"wire-least-over", WireLeast, Stop, []test{{WireLeast, more, WireMost, 1}}},
	{"wire-steady", WireLeast, Fine, []test{{WireLeast, more, None, 0}, {WireCurrent, atLeast, WireLeast, 1}, {WirePause, atMost, None, float64(craft.BankPatience)}}},
	{"wire-fuse-never", WireFuse, Care, []test{{WireMost, less, WireFuse, craft.FuseBlows}}},
	{"wire-wanted", WireWantedReal, Care, []test{{WireWantedReal, more, WireWantedPower, craft.WantedCare}}},
	{"wire-gone", WireCoefficient, Stop, []test{{WireCoefficient, less, None, 0}, {WireTotal, isKnown, None, 0}, {DriveTarget, more, DriveRoom, 1}, {WireHotOhms, not | isKnown, None, 0}}},
	{"wire-falls", WireCoefficient, Care, []test{{WireCoefficient, less, None, 0}}},
	{"wire-drift-up", WireDrift, Care, []test{{WireDrift, more, None, craft.DriftCare}}},
	{"wire-drift-down", WireDrift, Care, []test{{WireDrift, less, None, -craft.DriftCare}}},

	// Of the drive.
	{"water-boils", DriveWay, Stop, []test{{DriveWay, equal, None, float64(WayWater)}, {DriveRoom, or | atLeast, DriveBoiling, 1}, {DriveTarget, atLeast, DriveBoiling, 1}}},
	{"water-scalds", DriveWay, Care, []test{{DriveWay, equal, None, float64(WayWater)}, {DriveTarget, or | atLeast, None, scalding}, {DriveRoom, atLeast, None, scalding}}},
	{"water-live", DriveWay, Care, []test{{DriveWay, or | equal, None, float64(WayWater)}, {DriveCoolWay, equal, None, float64(WayWater) + 1}, {DrivePower, isKnown, None, 0}}},
	{"drive-wet", DriveWay, Care, []test{{DriveWay, equal, None, float64(WayWater)}, {DriveCoolWay, more, None, 0}, {DriveCoolWay, atMost, None, float64(WayWater)}}},
	{"air-range", DriveWay, Care, []test{{DriveWay, isOutside, None, float64(craft.OutsideAir)}}},
	{"still-range", DriveWay, Care, []test{{DriveWay, isOutside, None, float64(craft.OutsideStill)}}},
	{"hanging-range", DriveWay, Care, []test{{DriveWay, isOutside, None, float64(craft.OutsideHanging)}}},
	{"fan-range", DriveWay, Care, []test{{DriveWay, isOutside, None, float64(craft.OutsideFan)}}},
	{"lumped-range", DriveWay, Care, []test{{DriveWay, isOutside, None, float64(craft.OutsideLumped)}}},
	{"drive-cool", DriveTarget, Stop, []test{{DriveTarget, atMost, DriveRoom, 1}}},
	{"drive-goal", DriveTarget, Stop, []test{{DriveCoolTo, atLeast, DriveTarget, 1}, {DriveTarget, more, DriveRoom, 1}}},
	{"drive-cold", DriveTarget, Care, []test{{DriveCoolTo, atMost, DriveRoom, 1}, {DriveTarget, more, DriveRoom, 1}}},
	{"drive-fast", DriveHottest, Fine, []test{{DrivePower, isWorked, None, 0}, {DrivePower, less, WireFullPower, 0.999}}},
	{"drive-yarn", DriveHottest, Fine, []test{{WireRoute, or | equal, None, float64(RouteTwisted)}, {WireRoute, equal, None, float64(RouteWrapped)}, {YarnStrands, less, None, 1}, {DriveCapacity, isKnown, None, 0}}},
	{"drive-differs", DriveHottest, Care, []test{{DrivePower, not | isWorked, None, 0}, {DrivePower, or | less, WireFullPower, 0.98}, {DrivePower, more, WireFullPower, 1.02}}},
	{"drive-wired", DriveHottest, Fine, []test{{DriveOn, isWired, None, 0}, {DriveOn, or | isWorked, None, 0}, {DriveOff, isWorked, None, 0}}},
	{"drive-melts-cycle", DriveStuck, Stop, []test{{DriveHigh, atLeast, HeatMelt, 1}, {DrivePower, isKnown, None, 0}}},
	{"drive-over", DriveTarget, Stop, []test{{DriveTarget, atLeast, HeatMelt, 1}, {DrivePower, isKnown, None, 0}}},
	{"drive-runs", DriveStuck, Stop, []test{{DriveStuck, atLeast, None, away}}},
	{"drive-melts", DriveStuck, Stop, []test{{DriveStuck, atLeast, HeatMelt, 1}, {DriveStuck, less, None, away}}},
	{"drive-near", DriveStuck, Care, []test{{DriveMargin, more, None, 0}, {DriveMargin, less, None, craft.KeepUnderMelting}}},
	{"drive-set", DriveStuck, Care, []test{{DriveStuck, more, HeatSet, 1}, {DriveStuck, not | atLeast, HeatMelt, 1}}},
	{"drive-around", DriveTarget, Stop, []test{{DrivePower, not | isKnown, None, 0}, {DriveTarget, atLeast, HeatMelt, 1}}},
	{"drive-around-set", DriveTarget, Care, []test{{DrivePower, not | isKnown, None, 0}, {DriveTarget, more, HeatSet, 1}, {DriveTarget, less, HeatMelt, 1}}},
	{"drive-never", DriveHeatMost, Stop, []test{{DriveHeatLeast, atLeast, None, float64(Never)}}},
	{"drive-perhaps", DriveHeatMost, Care, []test{{DriveHeatMost, atLeast, None, float64(Never)}, {DriveHeatLeast, less, None, float64(Never)}}},
	{"touch-minute", DriveHigh, Care, []test{{DriveHigh, more, None, 60 + 273.15}, {DriveHigh, less, None, 85 + 273.15}}},
	{"touch-second", DriveHigh, Care, []test{{DriveHigh, atLeast, None, 85 + 273.15}}},
	{"at-beyond", DriveAt, Fine, []test{{DriveAt, more, DriveShown, 1}}},
	{"curve-used", DriveCurve, Fine, []test{{DriveTrialLoss, isKnown, None, 0}}},
	{"curve-less", DriveCurve, Care, []test{{DriveTrialLoss, less, DriveBookLeast, 1}, {DriveCurve, isKnown, None, 0}}},
	{"curve-more", DriveCurve, Care, []test{{DriveTrialLoss, more, DriveBookMost, 1}, {DriveCurve, isKnown, None, 0}}},
	{"trial-less", DriveTrialHot, Care, []test{{DriveTrialLoss, less, DriveBookLeast, 1}, {DriveCurve, not | isKnown, None, 0}}},
	{"trial-more", DriveTrialHot, Care, []test{{DriveTrialLoss, more, DriveBookMost, 1}, {DriveCurve, not | isKnown, None, 0}}},
	{"curve-colder", DriveCurve, Care, []test{{DriveCurve, isColder, None, 0}}},
	{"cycle-settles", DriveCycles, Fine, []test{{DriveHeatMost, atLeast, None, float64(Never)}, {DriveHigh, less, DriveTarget, 0.999}, {DriveCycles, isKnown, None, 0}}},
	{"trial-cold", DriveTrialHot, Stop, []test{{DriveTrialHot, atMost, DriveRoom, 1}}},
	{"curve-straight", DriveCurve, Care, []test{{DriveCurve, isKnown, None, 0}, {DriveConstant, not | isKnown, None, 0}}},
	{"stroke-polymer", StrokeStroke, Care, []test{{FibrePolymer, more, None, float64(PolymerNylon66)}, {StrokeStroke, not | isKnown, None, 0}, {StrokeLoad, isKnown, None, 0}}},
	{"stroke-warm", StrokeStroke, Care, []test{{DriveTarget, or | more, None, craft.HottestWarm}, {DriveRoom, more, None, craft.HottestWarm}, {FibrePolymer, atMost, None, float64(PolymerNylon66)}, {StrokeStroke, not | isKnown, None, 0}}},
	{"stroke-own", StrokeStroke, Fine, []test{{StrokeOwn, isKnown, None, 0}, {StrokeStroke, isKnown, None, 0}, {StrokeStroke, not | isClipped, None, 0}}},
	{"stroke-lengths", StrokeStroke, Fine, []test{{StrokeOwn, not | isKnown, None, 0}, {StrokeStroke, isTried, None, 0}}},
	{"stroke-disagree", StrokeStroke, Care, []test{{StrokeAgainst, less, None, float64(AgainstMuscle)}, {StrokeLoaded, or | less, StrokeByMasses, 0.98}, {StrokeLoaded, more, StrokeByMasses, 1.02}}},
	{"stroke-clipped", StrokeStroke, Care, []test{{StrokeStroke, isClipped, None, 0}}},
	{"stroke-opposite", StrokeStroke, Care, []test{{CoilRodHand, equal, None, float64(RodOpposite)}, {StrokeLeast, isKnown, None, 0}}},
	{"stroke-longer", StrokeStroke, Care, []test{{StrokeStroke, less, None, 0}, {StrokeLeast, or | not | isKnown, None, 0}, {CoilRodHand, equal, None, float64(RodSame)}}},
	{"stroke-touch", StrokeStroke, Care, []test{{StrokeHotLength, atMost, CoilSolid, 1}, {StrokeStroke, not | isClipped, None, 0}}},
	{"stroke-straight", StrokeStroke, Stop, []test{{StrokeStroke, isStraight, None, 0}, {StrokeAgainst, equal, None, float64(AgainstWeight)}}},
	{"stroke-straight-back", StrokeStroke, Stop, []test{{StrokeStroke, isStraight, None, 0}, {StrokeAgainst, more, None, float64(AgainstWeight)}}},
	{"stroke-load", StrokeStroke, Care, []test{{StrokePull, more, HangForce, 1}, {StrokeAgainst, equal, None, float64(AgainstWeight)}}},
	{"stroke-load-back", StrokeStroke, Care, []test{{StrokeColdPull, or | more, HangForce, 1}, {StrokeHotPull, more, HangForce, 1}, {StrokeAgainst, more, None, float64(AgainstWeight)}}},
	{"stroke-perhaps", StrokeStroke, Care, []test{{DrivePower, isKnown, None, 0}, {DriveHeatMost, atLeast, None, float64(Never)}, {DriveHigh, atLeast, DriveTarget, 0.999}, {StrokeLeast, isKnown, None, 0}}},
	{"stroke-cold", StrokeStroke, Care, []test{{DrivePower, isKnown, None, 0}, {DriveHigh, less, DriveTarget, 0.999}, {StrokeLeast, isKnown, None, 0}}},
	{"stroke-over", StrokeStroke, Care, []test{{StrokeShare, or | more, None, craft.LargestStroke}, {StrokeShareMost, more, None, craft.LargestStroke}}},
	{"stroke-least", StrokeStroke, Care, []test{{StrokeLeast, less, None, 0}, {CoilRodHand, equal, None, float64(RodSame)}, {StrokeAgainst, equal, None, float64(AgainstWeight)}}},
	{"stroke-least-back", StrokeStroke, Care, []test{{StrokeLeast, less, None, 0}, {CoilRodHand, equal, None, float64(RodSame)}, {StrokeAgainst, more, None, float64(AgainstWeight)}}},
	{"stroke-cooler", StrokeStroke, Stop, []test{{DriveTarget, atMost, DriveRoom, 1}}},
	{"stroke-wet", StrokeStroke, Care, []test{{DriveWay, or | equal, None, float64(WayWater)}, {DriveCoolWay, equal, None, float64(WayWater) + 1}, {StrokeLeast, isKnown, None, 0}}},
	{"stroke-boils", StrokeStroke, Stop, []test{{DriveWay, equal, None, float64(WayWater)}, {DriveTarget, atLeast, DriveBoiling, 1}, {DriveTarget, more, DriveRoom, 1}}},
	{"stroke-loaded", StrokeStroke, Stop, []test{{StrokeAgainst, less, None, float64(AgainstMuscle)}, {StrokeLoaded, less, CoilSolid, 1}}},
	{"stroke-masses", StrokeColdRate, Care, []test{{StrokeHeavy, or | atMost, StrokeLight, 1}, {StrokeColdHeavy, or | atMost, StrokeColdLight, 1}, {StrokeHotHeavy, atMost, StrokeHotLight, 1}}},
	{"stroke-outside", StrokeSpringStress, Stop, []test{{StrokeSpringOutside, atMost, StrokeSpringWire, 2}}},
	{"stroke-wire", StrokeSpringStress, Care, []test{{StrokeAgainst, equal, None, float64(AgainstSpring)}, {StrokeSpringStress, more, StrokeSpringLimit, 1}}},
	{"stroke-apart", StrokeSlackAt, Stop, []test{{StrokeAgainst, equal, None, float64(AgainstMuscle)}, {StrokeApart, less, CoilSolid, 2}}},
	{"stroke-slack", StrokeSlackAt, Care, []test{{StrokeAgainst, more, None, float64(AgainstWeight)}, {StrokeColdLength, more, StrokeSlackAt, 1.0001}}},
	{"stroke-rows", StrokeSlackAt, Care, []test{{StrokeAgainst, equal, None, float64(AgainstMuscle)}, {StrokeBeside, isWorked, None, 0}, {StrokeBeside, more, None, 1}}},
	{"stroke-in-row", StrokeSlackAt, Care, []test{{StrokeAgainst, equal, None, float64(AgainstMuscle)}, {WireRoute, more, None, float64(RouteNone)}, {WireInRow, more, None, 1}}},
	{"stroke-scale", StrokeScalePull, Care, []test{{StrokeScalePull, less, None, 0}}},
	{"less-hook", TroubleLessAdd, Care, []test{{TroubleLessAdd, less, None, 0}}},
	{"broke-early", TroubleBrokeShare, Care, []test{{TroubleBroke, less, TwistOnsetLeast, 1}}},
	{"broke-late", TroubleBrokeShare, Care, []test{{TroubleBroke, atLeast, TwistOnsetLeast, 1}}},
}

// When reports whether a plan calls for the note.
func (n *Note) When(s *State) bool {
	for i := 0; i < len(n.tests); i++ {
		so := n.tests[i].holds(s)
		for ; n.tests[i].is&or != 0; i++ {
			so = so || n.tests[i+1].holds(s)
		}
		if !so {
			return false
		}
	}
	return true
}

func (t *test) holds(s *State) bool {
	p, r := &s.Plan, &s.Out
	x, y := s.SI(t.of), t.times
	if t.than != None {
		y *= s.SI(t.than)
	}
	so := false
	switch t.is &^ (not | or) {
	case less:
		so = x < y
	case atMost:
		so = x <= y
	case equal:
		so = x == y
	case atLeast:
		so = x >= y
	case more:
		so = x > y
	case isKnown:
		so = known(x)
	case isWorked:
		so = s.Worked(t.of)
	case isOff:
		// by more than the caliper's doubt and 5 % for the scale, the ruler and the polymer's own spread
		slack := 0.05
		if d := s.Doubt[t.of]; known(d) {
			slack += d
		}
		so = x < 1-slack || x > 1+slack
	case isMultiple:
		for n := 2.0; n <= 4; n++ {
			so = so || x > n*0.93 && x < n*1.07
		}
	case isOther:
		n := craft.Nearest(quantity.Density(x))
		so = n >= 0 && n != int(p.Fibre.Polymer) && craft.Polymers[n].Density != craft.Polymers[p.Fibre.Polymer].Density
	case isThick:
		so = x > float64(r.Thick)*math.Sqrt(float64(p.Contraction))*1.1
	case pastDoubt:
		d := x - float64(p.Ratio)
		so = d*d > ratioDoubt(p)*ratioDoubt(p)
	case isMany:
		for i := range s.Set {
			n := float64(s.Set[i].Count)
			so = so || n > 9 && n > 4000*s.Set[i].Each
		}
	case isContrary:
		so = p.YarnHand != YarnHandNone && p.YarnHand-1 != p.Hand
	case overlaps:
		so = x < -overlap(s)
	case gapes:
		so = x > overlap(s)
	case isSaid:
		given := p.Given[ShapeGroup]
		so = known(s.SI(given[0])) && known(s.SI(given[1]))
	case isApart:
		so = s.Apart() > float64(p.RulerDoubt)
	case isOpen:
		ratio := p.Ratio
		if known(p.Measured) {
			ratio = r.ThisRatio
		}
		so = ratio < craft.ClosedRatio
	case isCold:
		so = tooCold(s)
	case isLoose:
		// Set below 150 °C is well below the 160 °C and more of most makers (loops given 93 °C for 10 minutes hardly set; both from makers'
		// notes).
		so = p.Fibre.Polymer <= PolymerNylon66 && x < 150+273.15 && !tooCold(s)
	case isUnusual:
		usual := &s.Heating().Setting
		so = x < float64(usual.Low) || x > float64(usual.High)
	case isFitted:
		so = known(r.oven.Slope)
	case isOutside:
		so = known(r.Biot) && r.warmth.outside&craft.Outside(t.times) != 0
	case isStraight:
		so = p.Stroke.straight
	case isClipped:
		so = p.Stroke.clipped && known(x)
	case isTried:
		so = p.Stroke.tried && known(x)
	case isColder:
		so = known(x) && r.warmth.colder(p.Drive.Room)
	case isCrowded:
		so = p.Wire.crowds()
	case isWired:
		so = p.Drive.wired
	case isBeyond:
		so = known(x) && !r.oven.Within(x)
	}
	return so == (t.is&not == 0)
}

// Heating returns what is known of the fibre in the oven.
func (st *State) Heating() *craft.Heating { return &craft.Heatings[st.Plan.Fibre.Polymer] }

// Apart returns by how much (m) the length measured on the piece is another than what was cut and the shape of its coil make.
func (st *State) Apart() float64 { return math.Abs(float64(st.Plan.Coiled - st.Plan.Measured)) }

// tooCold reports whether the oven stays under the glass transition.
func tooCold(s *State) bool { return s.Plan.Heat.Set < s.Heating().Glass.High }

// scalding (K) is water that burns skin in minutes (48 °C; common practice, from memory).
const scalding = 48 + 273.15

// away (K) is hotter than anything that settles.
const away = 5000

// strongest is more than the fibres in Polymers hold before they are twisted (Pa; 450 to 1000 MPa for nylon line and drawn nylon, from memory).
const strongest = 1300e6

// overlap returns the gap between turns (m) that is within what was measured: its own ± and a hundredth of the thickness.
func overlap(s *State) float64 {
	slack := float64(s.Plan.Thickness) / 100
	if d := s.Doubt[CoilGap]; known(d) {
		slack += d
	}
	return slack
}

// bundled reports whether more than one strand is twisted together, so that thickness is a range.
func bundled(p *Plan) bool { return p.Fibre.Strands > 1 || p.Yarn.Strands > 0 }
