package calc

import (
	"math"

	"twistbench/calc/craft"
	"twistbench/calc/quantity"
	"twistbench/calc/trial"
)

// The words of DriveWay; the first three are craft's ways of losing heat in air, in its order.
const (
	WayStill quantity.Word = iota
	WayHanging
	WayFan
	WayWater
)

// Driving is what was typed for heating and cooling, in SI; NaN where a number is unknown. Power, times and specific heat that were left empty
// are worked out by drive.
type Driving struct {
	_ [0]func() // these are not compared

	Way                  quantity.Word // how it loses its heat
	Speed                quantity.Speed
	Room, Target, CoolTo quantity.Temperature // around it and at first; hot; cold enough for the next heating
	Power                quantity.Power       // in one muscle while it is on
	On, Off              quantity.Time
	At                   quantity.Time // of the marker
	Altitude             quantity.Length
	Emissivity           quantity.Share
	SpecificHeat         quantity.SpecificHeat
	Curve                quantity.Table // own cooling curve

	empty struct{ power, on, off, heat bool } // what was left empty
}

// The two ends between which a muscle loses its heat.
const (
	hotEnd = iota
	coolEnd
	ends
)

// warmth is a muscle at both ends, while it is heated and while it cools, and the own cooling curve that was fitted last.
type warmth struct {
	on, off   [ends]craft.Body
	watts     quantity.Power
	surrounds bool          // what is around it heats it, and no current
	outside   craft.Outside // which bounds its losses leave

	curve quantity.Table
	room  quantity.Temperature
	decay trial.Decay
}

const (
	// Never stands for a time (s) without an end.
	Never quantity.Time = 1e9

	cycles = 3 // in the drawing and under its marker

	nearly = 0.05 // of a difference that is left where it would take for ever

	boiling = 373.15 // K: water, at sea level
	glowing = 5000   // K: where nothing holds it, and nothing is left of it

	mostRows   = 200 // of a cooling curve
	fewestRows = 3
	heatUnsure = 0.08 // of the specific heat, and so of losses that are known from a time and it
)

// drive works out how hot it gets, and how fast.
func drive(p *Plan, r *Results) {
	d, w := &p.Drive, &r.warmth
	nan := math.NaN()
	w.surrounds = p.Wire.Route == RouteNone && d.empty.power
	full := d.Power
	switch {
	case w.surrounds:
		d.Power, full = quantity.Power(nan), 0
	case d.empty.power:
		d.Power, full = r.MusclePower, r.FullPower
	}
	w.watts = d.Power
	if w.surrounds {
		w.watts = 0
	}
	muscle(p, r)
	on, off := &w.on, &w.off

	goal := d.Target
	if w.surrounds {
		goal -= nearly * (d.Target - d.Room)
	}
	if !(d.CoolTo < goal) {
		goal = quantity.Temperature(nan)
	}
	for i := range ends {
		r.Steady[i] = min(on[i].Steady(w.watts), glowing)
		r.Heats[i] = timeTo(&on[i], d.CoolTo, goal, w.watts)
		r.Cools[i] = timeTo(&off[i], d.Target+0*goal, d.CoolTo, 0)
		r.Hold[i] = off[i].Loss(d.Target)
		r.HoldDuty[i] = craft.Duty(r.Hold[i], d.Power)
	}
	r.Stuck = r.Steady[hotEnd]
	if full != w.watts {
		r.Stuck = min(on[hotEnd].Steady(full), glowing)
	}
	r.StuckMargin = craft.Margin(p.Heat.Melt, r.Stuck)
	for i, limit := range [...]quantity.Temperature{p.Heat.Set, p.Heat.Melt} {
		r.LimitTime[i] = timeTo(&on[hotEnd], d.Room, limit, full)
	}

	order(&r.Heats) // what loses least heat is slower to be warmed by what is around it
	order(&r.Cools)
	// A cycle that both ends take part in: as long as the slower one takes, and what never gets there nearly to where it settles.
	if d.empty.on {
		d.On = r.Heats[1]
		if d.On >= Never {
			d.On = timeTo(&on[coolEnd], d.CoolTo, r.Steady[coolEnd]-nearly*(r.Steady[coolEnd]-d.CoolTo), w.watts)
		}
	}
	if d.empty.off {
		d.Off = r.Cools[1]
		if d.Off >= Never {
			d.Off = timeTo(&off[hotEnd], d.Target, d.Room+nearly*(d.Target-d.Room), 0)
		}
	}
	for _, t := range [...]*quantity.Time{&d.On, &d.Off} {
		if *t >= Never {
			*t = quantity.Time(nan)
		}
	}
	for i := range ends {
		r.Lows[i], r.Peaks[i] = on[i].Cycle(&off[i], d.On, d.Off, w.watts)
		r.Then[i] = w.at(p, i)
	}
	order(&r.Lows)
	order(&r.Peaks)
	order(&r.Then)
	r.Cycles = craft.CyclesPerMinute(d.On, d.Off)
	r.Shown = cycles * (d.On + d.Off)
	r.CycleEnergy = craft.CycleEnergy(d.Power, d.On)
}

// order puts the lower of two numbers first.
func order[T ~float64](x *[ends]T) {
	if x[0] > x[1] {
		x[0], x[1] = x[1], x[0]
	}
}

// timeTo returns how long a body takes, Never where it doesn't get there.
//
//go:noinline
func timeTo(b *craft.Body, from, to quantity.Temperature, watts quantity.Power) quantity.Time {
	t := b.TimeTo(from, to, watts)
	if t > Never {
		t = Never
	}
	return t
}

// muscle makes the bodies, of the fibre as it is coiled and the length as it is finished.
func muscle(p *Plan, r *Results) {
	d, w := &p.Drive, &r.warmth
	capacity := craft.SpecificHeats[p.Fibre.Polymer].Capacity
	if d.empty.heat {
		d.SpecificHeat = quantity.SpecificHeat(capacity.At20)
	} else {
		capacity = craft.Capacity{At20: float64(d.SpecificHeat)}
	}
	yarn := craft.YarnHeat * float64(craft.FibreMass(p.Yarn.Area, p.Yarn.Density, p.Yarn.Strands, p.Precursor))
	if !known(yarn) {
		yarn = 0 // without a size it is left out, as of every sum
	}
	b, unsure := craft.InWater(d.Room), quantity.Fraction(craft.WaterUnsure)
	bath := d.Room
	if w.surrounds {
		bath = max(bath, d.Target)
	}
	switch {
	case d.Way != WayWater:
		b, unsure = craft.InRoom(craft.Way(d.Way), d.Room, d.Altitude), craft.StillUnsure
		b.Speed, b.Emissivity = float64(d.Speed), quantity.Fraction(d.Emissivity)
	case bath >= boiling:
		b.Coefficient = math.NaN()
	}
	b.Heat = capacity.Of(r.FibreMass, yarn)
	r.Capacity = quantity.HeatCapacity(b.Heat.At((d.Room + d.Target) / 2))
	w.off[hotEnd], w.off[coolEnd] = craft.Ends(b, p.Outside, r.ThisFinished, p.Thickness, r.Straight, unsure)
	w.outside = 0
	for i := range ends {
		w.outside |= w.off[i].Bounds(d.Target, p.Thickness, craft.NylonConductivity)
	}
	cool := &w.off[coolEnd]
	h, _ := cool.Film(d.Target)
	r.Biot = craft.Biot(float64(cool.Share)*h+craft.Radiation(cool.Emissivity, d.Target, cool.Walls), p.Thickness, craft.NylonConductivity)
	r.Inner = craft.InnerTime(p.Fibre.Density, float64(d.SpecificHeat), p.Thickness, craft.NylonConductivity)

	own(p, r)
	w.on = w.off
	for i := range ends {
		if w.surrounds {
			w.on[i].Air, w.on[i].Walls = d.Target, d.Target
		}
	}
}

// own fits the own cooling curve, and makes the bodies lose what it says instead of what the book does.
func own(p *Plan, r *Results) {
	d, w := &p.Drive, &r.warmth
	r.Rows, r.Constant = quantity.Count(quantity.NaN), quantity.Time(quantity.NaN)
	r.TrialLoss = quantity.HeatLoss(quantity.NaN)
	if d.Curve == "" {
		return
	}
	if w.curve != d.Curve || w.room != d.Room {
		var times, temperatures [mostRows]float64
		n, _, _ := trial.Columns(string(d.Curve), times[:], temperatures[:])
		w.curve, w.room, w.decay = d.Curve, d.Room, trial.FitDecay(times[:n], temperatures[:n], float64(d.Room))
	}
	r.Rows, r.Constant = quantity.Count(w.decay.N), quantity.Time(w.decay.Constant)
	loss := craft.TrialLoss(float64(r.Capacity), r.Constant)
	r.TrialLoss = quantity.HeatLoss(loss)
	if !known(loss) {
		return
	}
	unsure := heatUnsure
	if known(w.decay.ConstantDoubt) {
		unsure += w.decay.ConstantDoubt / w.decay.Constant
	}
	unsure = min(unsure, 0.9)
	w.off[hotEnd].Measured(loss * (1 - unsure))
	w.off[coolEnd].Measured(loss * (1 + unsure))
}

// at returns the temperature (K) of an end at the marker, from a cold start on; NaN beyond the cycles that are drawn.
func (w *warmth) at(p *Plan, end int) quantity.Temperature {
	d := &p.Drive
	left, temperature := d.At, d.Room
	for range cycles {
		temperature = w.on[end].After(temperature, w.watts, min(left, d.On))
		if left -= d.On; !(left > 0) {
			return temperature + quantity.Temperature(0*left)
		}
		temperature = w.off[end].After(temperature, 0, min(left, d.Off))
		if left -= d.Off; !(left > 1e-9*d.Off) {
			return temperature
		}
	}
	return quantity.Temperature(quantity.NaN)
}

// Course puts the temperatures (K) of the end that gets hottest (0) or least hot (1) into a list, from a cold start on: at as many moments,
// evenly apart, of each of the heatings and the coolings that are drawn.
func (st *State) Course(end int, into []quantity.Temperature) {
	w, d := &st.Out.warmth, &st.Plan.Drive
	each := len(into) / (2 * cycles)
	temperature := d.Room
	for i := 0; i+each <= len(into); i += 2 * each {
		temperature = w.on[end].Curve(into[i:i+each], temperature, w.watts, d.On/quantity.Time(each))
		temperature = w.off[end].Curve(into[i+each:i+2*each], temperature, 0, d.Off/quantity.Time(each))
	}
}

var (
	muscleTerms = []ID{DriveTarget, DriveRoom, CoilOutside, ClampThisFinished, TwistThickness, TwistStraight, DriveEmissivity, DriveAltitude, DriveSpeed}
	heatTerms   = []ID{DriveTarget, DriveRoom, CoilOutside, ClampThisFinished, TwistThickness, TwistStraight, DriveEmissivity, DriveAltitude, CutFibreMass, DriveSpecificHeat, DriveSpeed, DriveCoolTo}
	powerTerms  = []ID{DrivePower, DriveRoom, CoilOutside, ClampThisFinished, TwistThickness, TwistStraight, DriveEmissivity, DriveAltitude, CutFibreMass, DriveSpecificHeat, DriveSpeed, DriveTarget, DriveCoolTo}

	// where what it loses is from, by way
	balances = [...]Working{
		{Method: "balance", Source: &craft.LyingCylinder, Terms: powerTerms},
		{Method: "balance", Source: &craft.SlenderBody, Terms: powerTerms},
		{Method: "balance", Source: &craft.StreamCylinder, Terms: powerTerms},
		{Method: "balance", Source: &craft.Memory, Terms: powerTerms},
	}
	holds = [...]Working{
		{Method: "hold", Source: &craft.LyingCylinder, Terms: muscleTerms},
		{Method: "hold", Source: &craft.SlenderBody, Terms: muscleTerms},
		{Method: "hold", Source: &craft.StreamCylinder, Terms: muscleTerms},
		{Method: "hold", Source: &craft.Memory, Terms: muscleTerms},
	}
	balanceOwn  = Working{Method: "balance-own", Source: &craft.HeatTheory, Terms: []ID{DrivePower, DriveRoom, DriveTrialLoss}}
	holdOwn     = Working{Method: "balance-own", Source: &craft.HeatTheory, Terms: []ID{DriveTarget, DriveRoom, DriveTrialLoss}}
	surrounding = Working{Method: "surroundings", Source: &craft.Geometry, Terms: heatTerms}

	inTime       = Working{Method: "in-time", Source: &craft.StepPair, Terms: powerTerms}
	warmedInTime = Working{Method: "warmed-in-time", Source: &craft.StepPair, Terms: heatTerms}
	coolsInTime  = Working{Method: "in-time", Source: &craft.StepPair, Terms: heatTerms}
	toLimit      = Working{Method: "in-time", Source: &craft.StepPair, Terms: []ID{DriveStuck, DriveRoom, CutFibreMass, DriveSpecificHeat, HeatSet, HeatMelt}}
	onTime       = Working{Method: "on-time", Source: &craft.StepPair, Terms: []ID{DriveHeatMost}}
	offTime      = Working{Method: "off-time", Source: &craft.StepPair, Terms: []ID{DriveCoolMost}}
	swing        = Working{Method: "swing", Source: &craft.StepPair, Terms: []ID{DriveOn, DriveOff, DriveHottest, DriveCoolest}}
	course       = Working{Method: "course", Source: &craft.StepPair, Terms: []ID{DriveOn, DriveOff, DriveHottest, DriveCoolest, DriveAt}}
	ofWire       = Working{Method: "of-wire", Source: &craft.Geometry}
	decayFit     = Working{Method: "decay-fit", Source: &craft.LeastSquares, Terms: []ID{DriveRoom, DriveCurve}}

	// where the specific heat of each polymer is from
	bookHeats = [...]Working{
		{Method: "book-value", Source: &craft.HeatTables},
		{Method: "book-value", Source: &craft.HeatTables},
		{Method: "book-value", Source: &craft.Memory},
		{Method: "book-value", Source: &craft.HeatTables},
		{Method: "book-value", Source: &craft.Memory},
		{Method: "book-value", Source: &craft.Memory},
	}
)

// driven returns how a number of the drive was worked out where that depends on the plan.
func driven(p *Plan, id ID) *Working {
	surrounds := p.Wire.Route == RouteNone && p.Drive.empty.power
	own := p.Drive.Curve != ""
	switch id {
	case DriveHottest, DriveCoolest, DriveStuck:
		if !surrounds {
			return either(own, &balanceOwn, &balances[p.Drive.Way])
		}
		return &surrounding
	case DriveHoldLeast, DriveHoldMost:
		return either(own, &holdOwn, &holds[p.Drive.Way])
	case DriveHeatLeast, DriveHeatMost:
		return either(surrounds, &warmedInTime, &inTime)
	case DriveSetTime, DriveMeltTime:
		return &toLimit
	case DriveCoolLeast, DriveCoolMost:
		return &coolsInTime
	case DrivePower:
		return &ofWire
	case DriveOn:
		return &onTime
	case DriveOff:
		return &offTime
	case DriveSpecificHeat:
		return &bookHeats[p.Fibre.Polymer]
	}
	return nil
}
