package calc

import (
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
	CoolWay              quantity.Word // the same while it cools: 0 the same way, or one more than that
	Speed                quantity.Speed
	Room, Target, CoolTo quantity.Temperature // around it and at first; hot; cold enough for the next heating
	Power                quantity.Power       // in one muscle while it is on; left empty, the wire's, as fast says
	On, Off              quantity.Time
	At                   quantity.Time // of the marker
	Altitude             quantity.Length
	Emissivity           quantity.Share
	SpecificHeat         quantity.SpecificHeat
	Curve                quantity.Rows        // own cooling curve
	TrialPower           quantity.Power       // own trial without a clock: what it was heated with for long,
	TrialHot             quantity.Temperature // and what it came to

	empty struct{ power, on, off, heat bool } // what was left empty
	fast  bool                                // the wire's switching is so fast that its average power heats
	wired bool                                // it is slower, and times left empty are the wire's
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

	text    string // the own cooling curve that was read last: its rows, and the first line that is none
	columns [2][curveRows]float64
	rows    int
	left    string
	bad     int    // lines that are none
	fitted  string // and what was fitted last
	room    quantity.Temperature
	decay   trial.Decay
}

const (
	// Never stands for a time (s) without an end.
	Never quantity.Time = 1e9

	cycles = 3 // in the drawing and under its marker

	nearly = 0.05 // of a difference that is left where it would take for ever

	thermometer = 1 // K, common practice for a cheap one

	curveRows  = 200 // of a cooling curve
	fewestRows = 3
	switchings = 10 // in a heating, from which on the wire's duty is an average

	heatUnsure   = 0.08 // of the specific heat, and so of losses that are known from a time and it
	steadyUnsure = 0.05 // of losses that are known from a power and a temperature, as a bench measures them: a judgement
)

// drive works out how hot it gets, and how fast.
func drive(p *Plan, r *Results) {
	d, w := &p.Drive, &r.warmth
	nan := quantity.NaN
	if d.fast = false; d.empty.power {
		d.Power = r.FullPower
	}
	full := d.Power
	w.surrounds = d.empty.power && (p.Wire.Route == RouteNone || d.Way == WayWater && !known(float64(r.FullPower)))
	goal := d.Target
	if w.surrounds {
		d.Power, full = quantity.Power(nan), 0
		goal -= nearly * (d.Target - d.Room)
		if goal <= d.CoolTo {
			goal = d.Target - nearly*(d.Target-d.CoolTo)
		}
	}
	if !(d.CoolTo < goal && d.Target > d.Room) {
		goal = quantity.Temperature(nan)
	}
	muscle(p, r)
	w.watts = full
	if d.empty.power && r.MusclePower < full && p.Wire.Period*switchings < w.heating(d, w.heats(d, goal, r.MusclePower), r.MusclePower) {
		d.Power, w.watts, d.fast = r.MusclePower, r.MusclePower, true
	}
	d.wired = !d.fast && d.empty.power && p.Wire.Route != RouteNone && p.Wire.Duty < 1 && known(float64(p.Wire.OnTime))
	if r.FullPower > full { // a switch that sticks gives all of it, whatever was typed here
		full = r.FullPower
	}
	for i := range ends {
		r.Steady[i] = w.on[i].Steady(w.watts)
		r.Cools[i] = timeTo(&w.off[i], d.Target+0*goal, d.CoolTo, 0)
		r.Hold[i] = w.on[i].Loss(d.Target + 0*goal)
	}
	hot := &w.on[hotEnd]
	r.Stuck = r.Steady[hotEnd]
	r.SetTime, r.MeltTime = timeTo(hot, d.Room, p.Heat.Set, full), timeTo(hot, d.Room, p.Heat.Melt, full)
	switch {
	case w.surrounds: // and no switch, and nothing to hold it with
		r.Stuck, r.SetTime, r.MeltTime = quantity.Temperature(nan), quantity.Time(nan), quantity.Time(nan)
		r.Hold = [ends]quantity.Power{quantity.Power(nan), quantity.Power(nan)}
	case full != w.watts:
		r.Stuck = hot.Steady(full)
	}
	r.StuckMargin = craft.Margin(p.Heat.Melt, r.Stuck)

	r.Heats = w.heats(d, goal, w.watts)
	if d.empty.on && d.wired {
		d.On = p.Wire.OnTime
	} else {
		d.On = w.heating(d, r.Heats, w.watts)
	}
	order(&r.Heats[0], &r.Heats[1]) // what loses least heat is slower to be warmed by what is around it
	order(&r.Cools[0], &r.Cools[1])
	switch {
	case d.empty.off && d.wired:
		d.Off = p.Wire.Period - p.Wire.OnTime
	case d.empty.off:
		d.Off = within(r.Cools[1], &w.off[hotEnd], d.Target, d.Room+nearly*(d.Target-d.Room), 0)
	}
	var lows [ends]quantity.Temperature
	for i := range ends {
		lows[i], r.Peaks[i] = w.on[i].Cycle(&w.off[i], d.On, d.Off, w.watts)
		var course [2 * cycles]quantity.Temperature
		r.Then[i] = w.course(d, i, course[:], d.At)
	}
	r.Coldest = min(lows[0], lows[1])
	order(&r.Peaks[0], &r.Peaks[1])
	order(&r.Then[0], &r.Then[1])
	r.PerMinute = craft.CyclesPerMinute(d.On, d.Off)
	r.Shown = cycles * (d.On + d.Off)
	r.HoldDuty = quantity.Share(r.Hold[coolEnd] / d.Power) // over 1 where all of it is too little
	r.CycleEnergy = craft.CycleEnergy(d.Power, d.On)
}

// heats returns how long each end takes with watts from cold to a goal.
func (w *warmth) heats(d *Driving, goal quantity.Temperature, watts quantity.Power) (heats [ends]quantity.Time) {
	for i := range heats {
		heats[i] = timeTo(&w.on[i], d.CoolTo, goal, watts)
	}
	return heats
}

// heating returns how long a heating of the cycle takes with watts: as typed, or a cycle that both ends take part in, as long as the slower one
// takes to the goal, and what never gets there nearly to where it settles.
func (w *warmth) heating(d *Driving, heats [ends]quantity.Time, watts quantity.Power) quantity.Time {
	if !d.empty.on {
		return d.On
	}
	cool := &w.on[coolEnd]
	settled := cool.Steady(watts)
	return within(max(heats[hotEnd], heats[coolEnd]), cool, d.CoolTo, settled-nearly*(settled-d.CoolTo), watts)
}

// order puts the lower of two numbers first.
//
//go:noinline
func order[T ~float64](a, b *T) {
	if *a > *b {
		*a, *b = *b, *a
	}
}

// timeTo returns how long a body takes, Never where it doesn't get there.
//
//go:noinline
func timeTo(b *craft.Body, from, to quantity.Temperature, watts quantity.Power) quantity.Time {
	return min(b.TimeTo(from, to, watts), Never)
}

// within returns a time, and where that is Never the one that a body takes to another temperature; NaN where that is Never too.
//
//go:noinline
func within(t quantity.Time, b *craft.Body, from, to quantity.Temperature, watts quantity.Power) quantity.Time {
	if t == Never {
		t = timeTo(b, from, to, watts)
	}
	if t == Never {
		t = quantity.Time(quantity.NaN)
	}
	return t
}

// stand puts a muscle, coiled and as long as it is finished, into a way of losing its heat: what is given of the fibre is in the first body.
func stand(b *[ends]craft.Body, way quantity.Word, p *Plan, r *Results) {
	d, of, unsure := &p.Drive, &b[hotEnd], quantity.Fraction(craft.StillUnsure)
	heat, tempco, current := of.Heat, of.Tempco, of.Current
	if way == WayWater {
		*of, unsure = craft.InWater(d.Room), craft.WaterUnsure
		if d.Room >= r.Boiling {
			of.Coefficient = quantity.NaN
		}
	} else {
		*of = craft.InRoom(craft.Way(way), d.Room, d.Altitude)
		of.Speed, of.Emissivity = float64(d.Speed), quantity.Fraction(d.Emissivity)
	}
	of.Heat, of.Tempco, of.Current = heat, tempco, current
	craft.EndsOf(b, p.Outside, r.ThisFinished, p.Thickness, r.Straight, unsure)
	for i := range b {
		r.warmth.outside |= b[i].Bounds(d.Target, p.Thickness, craft.NylonConductivity)
	}
	r.Biot = max(r.Biot, b[coolEnd].Biot(d.Target, p.Thickness, craft.NylonConductivity))
}

// muscle makes the bodies, of the fibre as it is coiled and the length as it is finished.
func muscle(p *Plan, r *Results) {
	d, w := &p.Drive, &r.warmth
	r.Boiling = craft.BoilingAt(craft.PressureAt(d.Altitude))
	along := p.Precursor
	if p.Wire.Route == RouteWrapped && known(float64(r.YarnLength)) {
		along = r.YarnLength
	}
	yarn := craft.YarnHeat * float64(craft.FibreMass(p.Yarn.Area, p.Yarn.Density, p.Yarn.Strands, along))
	if !known(yarn) {
		yarn = 0 // without a size it is left out, as of every sum
	}
	heat := craft.SpecificHeats[p.Fibre.Polymer].Capacity
	if d.empty.heat {
		d.SpecificHeat = quantity.SpecificHeat(heat.At20)
	} else {
		heat = craft.Capacity{At20: float64(d.SpecificHeat)}
	}
	var b craft.Body
	b.Heat = heat.Of(r.FibreMass, yarn)
	if known(p.Wire.Coefficient) {
		b.Tempco, b.Current = p.Wire.Coefficient, p.Given[SupplyGroup].Has(WireCurrent)
	}
	r.Capacity = quantity.HeatCapacity(b.Heat.At((d.Room + d.Target) / 2))
	r.Inner = craft.InnerTime(p.Fibre.Density, float64(d.SpecificHeat), p.Thickness, craft.NylonConductivity)
	w.outside, r.Biot = 0, 0
	w.on[hotEnd], w.off[hotEnd] = b, b
	stand(&w.on, d.Way, p, r)
	if d.CoolWay > 0 {
		stand(&w.off, d.CoolWay-1, p, r)
	} else {
		w.off = w.on
	}
	tried(p, r)
	if w.surrounds {
		for i := range ends {
			at := d.Target
			if !(at > d.Room) || d.Way == WayWater && at >= r.Boiling {
				at = quantity.Temperature(quantity.NaN)
			}
			w.on[i].Air, w.on[i].Walls = at, at
		}
	}
}

// tried lets an own trial take the place of the book's losses: a cooling curve those while it cools, a power held those while it is heated, and
// both where it cools the way it is heated.
func tried(p *Plan, r *Results) {
	d, w := &p.Drive, &r.warmth
	if w.fitted != d.Curve.Text || w.room != d.Room {
		w.fitted, w.room = d.Curve.Text, d.Room
		w.decay = trial.FitDecay(w.columns[0][:w.rows], w.columns[1][:w.rows], float64(d.Room))
	}
	r.Constant = quantity.Time(quantity.NaN)
	if known(d.Curve.N) {
		r.Constant = quantity.Time(w.decay.Constant)
	}
	of := &w.off
	loss, share := craft.TrialLoss(float64(r.Capacity), r.Constant), heatUnsure
	if !known(d.Curve.N) && d.settled() {
		of = &w.on
		loss, share = craft.SteadyLoss(d.TrialPower, d.TrialHot, d.Room), steadyUnsure
	}
	for i := range ends {
		r.BookLoss[i] = quantity.HeatLoss(craft.SteadyLoss(of[i].Loss(d.Target), d.Target, d.Room))
	}
	if r.TrialLoss = quantity.HeatLoss(loss); !known(loss) {
		return
	}
	if doubt := w.decay.ConstantDoubt / w.decay.Constant; doubt > 0 && known(d.Curve.N) {
		share = min(share+doubt, 0.9)
	}
	of[hotEnd].Measured(loss * (1 - share))
	of[coolEnd].Measured(loss * (1 + share))
	if d.CoolWay == 0 {
		w.on, w.off = *of, *of
	}
}

// colder reports whether the own curve warms up to the room instead, or has a row that is colder by more than a thermometer leaves open.
func (w *warmth) colder(room quantity.Temperature) bool {
	for _, t := range w.columns[1][:w.rows] {
		if t < float64(room)-thermometer {
			return true
		}
	}
	return w.decay.Height < 0
}

// settled reports whether an own trial without a clock was typed.
func (d *Driving) settled() bool { return known(float64(d.TrialPower)) && d.TrialHot > d.Room }

// course puts the temperatures (K) of an end into a list, from a cold start on: at as many moments, evenly apart, of each of the heatings and
// the coolings that are drawn, up to a time left (s) from the start. It returns the last, NaN where the time is beyond them.
func (w *warmth) course(d *Driving, end int, into []quantity.Temperature, left quantity.Time) quantity.Temperature {
	each := len(into) / (2 * cycles)
	t := d.Room
	for i := range 2 * cycles {
		b, watts, time := &w.on[end], w.watts, d.On
		if i&1 != 0 {
			b, watts, time = &w.off[end], 0, d.Off
		}
		time = min(time, left)
		left -= time
		t = b.Curve(into[i*each:(i+1)*each], t, watts, time/quantity.Time(each))
	}
	if left > 1e-9*d.At {
		t = quantity.Temperature(quantity.NaN)
	}
	return t
}

// Course puts the temperatures (K) of the end that loses least heat (0) or most (1) into a list, from a cold start on: at as many moments,
// evenly apart, of each of the heatings and the coolings that are drawn.
func (st *State) Course(end int, into []quantity.Temperature) {
	st.Out.warmth.course(&st.Plan.Drive, end, into, st.Out.Shown)
}

// readCurve takes the own cooling curve if it has as many rows as a fit needs. Its notice has how many lines are no rows, and the first of them;
// the others count. It remembers what it read last.
func (st *State) readCurve() {
	text, w, n := st.sheet.Text[DriveCurve], &st.Out.warmth, &st.Notices[DriveCurve]
	if w.text != text {
		line := 0
		w.text, w.left, w.fitted = text, "", ""
		w.rows, w.bad, line = trial.Columns(text, w.columns[0][:], w.columns[1][:])
		for rest := text; line > 0; line-- {
			w.left, rest = quantity.Split(rest, '\n')
		}
	}
	n.Part, n.Lines = w.left, w.bad
	if w.rows >= fewestRows {
		st.Plan.Drive.Curve = quantity.Rows{N: float64(w.rows), Text: text}
	} else if text != "" {
		n.Reason = TooFewTimes
	}
}

var (
	heatTerms = []ID{DriveTarget, DriveRoom, CoilOutside, ClampThisFinished, TwistThickness, TwistStraight, DriveEmissivity, DriveAltitude, CutFibreMass, DriveSpecificHeat, DriveSpeed, DriveCoolTo, DrivePower}

	// where what it loses is from, by way, and then of an own cooling curve
	balances = [...]Working{
		{Method: "balance", Source: &craft.LyingCylinder, Terms: heatTerms},
		{Method: "balance", Source: &craft.SlenderBody, Terms: heatTerms},
		{Method: "balance", Source: &craft.StreamCylinder, Terms: heatTerms},
		{Method: "balance", Source: &craft.Memory, Terms: heatTerms},
		{Method: "balance-own", Source: &craft.HeatTheory, Terms: []ID{DriveRoom, DriveTarget, DriveTrialLoss, DrivePower}},
	}
	inTime       = Working{Method: "in-time", Source: &craft.StepPair, Terms: heatTerms}
	swing        = Working{Method: "swing", Source: &craft.StepPair, Terms: []ID{DriveOn, DriveOff, DriveHottest, DriveCoolest}}
	course       = Working{Method: "course", Source: &craft.StepPair, Terms: []ID{DriveOn, DriveOff, DriveHottest, DriveCoolest, DriveAt}}
	lossOfCurve  = Working{Eq: &craft.TrialLossEq, Terms: []ID{DriveCapacity, DriveConstant}}
	lossOfSteady = Working{Eq: &craft.SteadyLossEq, Terms: []ID{DriveTrialPower, DriveTrialHot, DriveRoom}}
	decayFit     = Working{Method: "decay-fit", Source: &craft.LeastSquares, Terms: []ID{DriveRoom, DriveCurve}}

	// how an empty power and empty times are worked out
	emptied = [...]Working{
		{Method: "of-wire", Source: &craft.Geometry, Terms: []ID{WireFullPower}},
		{Method: "on-time", Source: &craft.StepPair, Terms: []ID{DriveHeatMost}},
		{Method: "off-time", Source: &craft.StepPair, Terms: []ID{DriveCoolMost}},
	}

	// and of a wire that switches slowly
	ofWire = [...]Working{
		{Method: "of-wire-times", Source: &craft.Geometry, Terms: []ID{WireOnTime}},
		{Method: "of-wire-times", Source: &craft.Geometry, Terms: []ID{WirePeriod, WireOnTime}},
	}
	ofFastWire = Working{Method: "of-fast-wire", Source: &craft.Geometry, Terms: []ID{WireMusclePower, WirePeriod}}

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

// balance returns how it was worked out what a muscle loses and where that settles.
func balance(p *Plan) *Working {
	way := p.Drive.Way
	if known(p.Drive.Curve.N) || p.Drive.settled() {
		way = WayWater + 1
	}
	return &balances[way]
}
