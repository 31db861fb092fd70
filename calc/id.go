package calc

import "twistbench/calc/quantity"

// ID names a number of the sheet: a field, which can be typed, or an answer, which follows. None is no number.
type ID uint16

// The fields, in the order of the work. The order is free to change; the keys in Fields are not.
const (
	None ID = iota

	FibrePolymer
	FibreDiameter
	FibreDiameterDoubt
	FibreLinearDensity
	FibreArea
	FibreDensity
	FibreStrands
	FibreWeighedLength
	FibreWeighedMass
	FibreLabelStrength
	FibreBundle
	YarnStrands
	YarnPolymer
	YarnDiameter
	YarnLinearDensity
	YarnArea
	YarnDensity
	YarnWeighedLength
	YarnWeighedMass

	HangStress
	HangMass
	HangAdd
	HangForce
	HangHook
	HangArea
	HangMassDoubt
	HangOwned
	HangBottle
	HangClearance
	HangStack
	HangTheirMass
	HangTheirDiameter

	CutRatio
	CutRatioDoubt
	CutPrecursor
	CutTail
	CutPieces
	CutSpare
	CutTrialPrecursor
	CutTrialCoiled
	CutLift
	CutLiftStress

	TwistBias
	TwistPerTwisted
	TwistPerPrecursor
	TwistTurns
	TwistFactor
	TwistHand
	TwistYarnHand
	TwistSpeed
	TwistTimedTurns
	TwistTimed
	TwistCounted
	TwistCountedPrecursor
	TwistYoung
	TwistShear
	TwistOtherDiameter

	CoilOutside
	CoilMean
	CoilIndex
	CoilPitch
	CoilCount
	CoilPerLength
	CoilRod
	CoilRodPitch
	CoilRodLength
	CoilRodHand

	ClampCoiled
	ClampMeasured
	ClampMeasuredState
	ClampStages
	ClampFirstStretch
	ClampSecondStretch
	ClampSecondBase
	ClampRelaxed
	ClampFirst
	ClampSecond
	ClampRetained
	ClampFinished
	ClampRulerDoubt
	ClampZero
	ClampHolePitch
	ClampHoleOffset

	HeatSet
	HeatOvershoot
	HeatMelt
	HeatFrameLimit
	HeatDial1
	HeatProbe1
	HeatDial2
	HeatProbe2
	HeatDial3
	HeatProbe3
	HeatPreheat
	HeatLoad
	HeatRecovery
	HeatHold1
	HeatCool1
	HeatReclamp
	HeatHold2
	HeatCool2
	HeatRest
	HeatOvenWidth
	HeatOvenDepth
	HeatOvenShelves
	HeatFrameLength
	HeatFrameWidth
	HeatFrameGap
	HeatFramePieces

	ClockMode
	ClockDay
	ClockTime

	// Of the wire.
	WireRoute
	WirePerLength
	WireReading
	WireReadingLeads
	WireReadingLength
	WireTest
	WireStrands
	WireWrapDiameter
	WireWrapPitch
	WireInRow
	WireRows
	WireSupply
	WireMost
	WireLeast
	WireSupplyVoltage
	WireCurrent
	WirePower
	WireDuty
	WireOnTime
	WireAverage
	WirePeriod
	WireArea
	WireGauge
	WireLeadDiameter
	WireLeadLength
	WireLeadRating
	WireCharge
	WireCell
	WireCoefficient
	WireBefore
	WireAfter
	WireReadingVolts
	WireReadingAmperes
	WireWanted
	WireWantedPower
	WireReadCold
	WireReadHot

	// Of the drive.
	DriveWay
	DriveSpeed
	DriveRoom
	DriveTarget
	DriveCoolTo
	DrivePower
	DriveOn
	DriveOff
	DriveAt
	DriveAltitude
	DriveEmissivity
	DriveSpecificHeat
	DriveCurve
	DriveTrialPower
	DriveTrialHot
	DriveCoolWay

	// Of the stroke.
	StrokeLoad
	StrokeAgainst
	StrokeSpring
	StrokeSlack
	StrokeApart
	StrokeSpringWire
	StrokeSpringOutside
	StrokeSpringTurns
	StrokeBeside
	StrokeLever
	StrokePulley
	StrokeOwn
	StrokeBase
	StrokeLoaded
	StrokeLight
	StrokeHeavy
	StrokeColdLight
	StrokeColdHeavy
	StrokeHotLight
	StrokeHotHeavy
	StrokeScaleCold
	StrokeScaleHot
	StrokeAdded
	StrokeChange
	StrokeTime

	TroubleBroke

	NumFields
)

// The answers, in the order of the work.
const (
	FibreSolidArea ID = NumFields + iota
	FibreThin
	FibreThick
	FibreWeighed
	FibreImplied
	FibrePacking
	FibreLabelStress
	YarnWeighed
	YarnImplied
	YarnPacking

	HangLoadArea
	HangLow
	HangHigh
	HangUnder
	HangUnderTotal
	HangUnderStress
	HangUnderSet
	HangOver
	HangOverTotal
	HangOverStress
	HangOverSet
	HangWater
	HangRise
	HangHookHeight
	HangDropStart
	HangDropCoiled
	HangTheirStress
	HangSameMass
	HangOfLabel

	CutLength
	CutAllPieces
	CutTotal
	CutYarnTotal
	CutFibreMass
	CutTrialRatio
	CutMuscles
	CutMuscleStress
	CutMuscleForce
	CutMuscleShare

	TwistBefore
	TwistThickness
	TwistContraction
	TwistShortening
	TwistStraight
	TwistTitre
	TwistStrain
	TwistMost
	TwistTimedSpeed
	TwistOnsetBias
	TwistOnsetBiasLeast
	TwistOnsetBiasMost
	TwistOnset
	TwistOnsetLeast
	TwistOnsetMost
	TwistSlow
	TwistSlowTime
	TwistTime
	TwistOther

	CoilAngle
	CoilTurnLength
	CoilGap
	CoilWrithe
	CoilTurns
	CoilTurnsPerPrecursor
	CoilSolidPitch
	CoilSolid
	CoilNearSolid
	CoilTravelLength
	CoilTravel
	CoilFinishedTravel
	CoilLastPitch
	CoilLastMean
	CoilLastGap
	CoilSolidMean
	CoilShapeRatio
	CoilLoadIndex
	CoilLoadIndexLeast
	CoilLoadIndexMost
	CoilRodMean
	CoilRodIndex
	CoilRodAngle
	CoilRodGap
	CoilRodCount
	CoilRodFibre
	CoilRodPrecursor
	CoilRodLimit

	ClampPiece
	ClampBase
	ClampLast
	ClampThisRatio
	ClampThisFinished
	ClampFirstReal
	ClampSecondReal
	ClampFirstMove
	ClampSecondMove
	ClampSecondOfFirst
	ClampTravelLength
	ClampTravel
	ClampFinishedTravelLength
	ClampFinishedTravel
	ClampFirstPosition
	ClampSecondPosition
	ClampFirstHole
	ClampFirstHoleGap
	ClampFirstHoleStretch
	ClampSecondHole
	ClampSecondHoleGap
	ClampSecondHoleStretch

	HeatDial
	HeatMeanDial
	HeatMeanProbe
	HeatSlope
	HeatPeak
	HeatMargin
	HeatFrames
	HeatPerLoad
	HeatLoads
	HeatTotal

	// Of the wire.
	WireLength
	WireOhms
	WireLeastOhms
	WireOfPrecursor
	WireOfCoil
	WireOfFinished
	WireTotal
	WireRowCurrent
	WireSideCurrent
	WireAverageCurrent
	WireMusclePower
	WireFullPower
	WirePowerPerLength
	WireLeadOhms
	WireDrop
	WireLeadHeat
	WireFuse
	WireDummy
	WireCycles
	WireHotOhms
	WireDrift
	WireTestPerLength
	WireTestContact
	WireOwnVoltage
	WirePause
	WireDummyPower
	WireEnergy
	WireLasts
	WireReadingOhms
	WireReadingPerLength
	WireWantedPerLength
	WireWantedLength
	WireWantedStrands
	WireWantedReal
	WireReadTemperature

	// Of the drive.
	DriveHottest
	DriveCoolest
	DriveStuck
	DriveMargin
	DriveMeltTime
	DriveHeatLeast
	DriveHeatMost
	DriveCoolLeast
	DriveCoolMost
	DriveCycles
	DriveHigh
	DriveHighLeast
	DriveLow
	DriveAtMost
	DriveAtLeast
	DriveShown
	DriveHoldLeast
	DriveHoldMost
	DriveDutyMost
	DriveEnergy
	DriveEfficiency
	DriveBiot
	DriveInner
	DriveConstant
	DriveCapacity
	DriveTrialLoss
	DriveBookLeast
	DriveBookMost
	DriveSetTime
	DriveBoiling

	// Of the stroke.
	StrokeStroke
	StrokeLeast
	StrokeMost
	StrokeShare
	StrokeShareLeast
	StrokeShareMost
	StrokeOfCoiled
	StrokeOfFinished
	StrokeColdLength
	StrokeHotLength
	StrokeBlocked
	StrokeGain
	StrokeOther
	StrokeSwing
	StrokeAtLoad
	StrokeUnequal
	StrokeLoadTravel
	StrokeTurn
	StrokePull
	StrokeBack
	StrokeSlackAt
	StrokeByMasses
	StrokeSpringRate
	StrokeSpringPull
	StrokeSpringStress
	StrokeSpringLimit
	StrokeColdPull
	StrokeHotPull
	StrokeAlong
	StrokeAcross
	StrokeFree
	StrokeColdFree
	StrokeHotFree
	StrokeColdRate
	StrokeHotRate
	StrokeScalePull
	StrokeWork
	StrokeSpecificWork
	StrokePower
	StrokeSpecificPower

	// Of what goes wrong.
	TroubleLess
	TroubleLessAdd
	TroubleMore
	TroubleMoreAdd
	TroubleBrokeShare

	NumIDs
)

// NumAnswers is the number of answers.
const NumAnswers = NumIDs - NumFields

// IsField reports whether id can be typed.
func (id ID) IsField() bool { return id > None && id < NumFields }

// Key returns the name of the number in plans, links and the page: "step.name".
//
//go:noinline
func (id ID) Key() string {
	if id.IsField() {
		return Fields[id].Key
	}
	return Answers[id-NumFields].Key
}

// Unit returns the symbol of the unit that the number has where nothing else was typed or chosen.
func (id ID) Unit() string {
	if id.IsField() {
		return Fields[id].Unit
	}
	return Answers[id-NumFields].Unit
}

// Digits returns how many significant digits of the number are shown.
//
//go:noinline
func (id ID) Digits() int {
	if id.IsField() {
		return Fields[id].Digits
	}
	return Answers[id-NumFields].Digits
}

// Find returns the number of that key, or None.
//
//go:noinline
func Find(key string) ID { return ID(keys.Find("", key) + 1) }

var keys = allKeys()

// allKeys returns the key of every number but None.
func allKeys() (n quantity.Names) {
	for id := None + 1; id < NumIDs; id++ {
		n.Add(id.Key())
	}
	return n
}
