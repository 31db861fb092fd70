package calc

import (
	"twistbench/calc/craft"
	"twistbench/calc/quantity"
	"twistbench/calc/trial"
)

// The words of WireRoute.
const (
	RouteNone quantity.Word = iota
	RouteTwisted
	RouteWrapped
	RouteFibre
)

// SupplyBank is the word of WireSupply from which on a supply has a least current, or none that is known.
const SupplyBank quantity.Word = 4

// Wiring is what was typed for the wire and its supply, in SI; NaN where a number is unknown.
type Wiring struct {
	_ [0]func() // these are not compared

	Route                   quantity.Word // how the current goes through the muscle
	PerLength               quantity.ResistancePerLength
	Reading, ReadingLeads   quantity.Resistance
	ReadingLength           quantity.Length
	Test                    quantity.Rows // lengths, and what they read
	Strands                 quantity.Count
	WrapDiameter, WrapPitch quantity.Length
	InRow, Rows             quantity.Count // muscles end to end, and such rows side by side

	Supply                   quantity.Word
	Most, Least              quantity.Current // what it gives, and must be asked for
	SupplyVoltage            quantity.Voltage
	Current                  quantity.Current // while on
	Power                    quantity.Power   // the same, in all muscles
	Duty                     quantity.Share
	OnTime, Period           quantity.Time
	Average                  quantity.Power
	Area                     quantity.Area // of a lead
	Gauge                    quantity.Gauge
	LeadDiameter, LeadLength quantity.Length
	LeadRating               quantity.Current

	Charge        quantity.Charge
	Cell          quantity.Voltage
	Coefficient   quantity.TemperatureCoefficient
	Before, After quantity.Resistance

	Across            quantity.Voltage // a length of the conductor, and the current through it
	Through           quantity.Current
	Wanted            quantity.Resistance // of a muscle
	WantedPower       quantity.Power      // in it, while on
	ReadCold, ReadHot quantity.Resistance

	// Worked out.
	Total, LeadOhms quantity.Resistance // of all muscles, and of both leads

	beside      bool // a resistor, lest the supply switches off
	bookRating  bool // no rating was typed
	bookVoltage bool // nor what flows, and the supply has a voltage of its own
	line        trial.Line
	lineDoubt   float64 // of its slope
}

// wireToHub works the hub of a group of the wire out from a member.
func wireToHub(w *Wiring, id ID) {
	switch id {
	case WireReading:
		w.PerLength = craft.YarnPerLength(w.Reading, w.ReadingLeads, w.ReadingLength)
	case WireGauge:
		w.Area = craft.Area(craft.GaugeDiameter(w.Gauge))
	case WireLeadDiameter:
		w.Area = craft.Area(w.LeadDiameter)
	case WireSupplyVoltage:
		w.Current = craft.ThroughLeads(w.SupplyVoltage, w.Total, w.LeadOhms)
	case WirePower:
		w.Current = craft.CurrentOfPower(w.Power, w.Total)
	case WireOnTime:
		w.Duty = craft.DutyOfTime(w.OnTime, w.Period)
	case WireAverage:
		w.Duty = craft.Duty(w.Average, w.Power)
	case WireWantedPower:
		w.Wanted = craft.OhmsForPower(w.WantedPower, w.SupplyVoltage, w.InRow)
	}
}

// wireFromHub works a member out from its hub.
func wireFromHub(w *Wiring, id ID) {
	switch id {
	case WireReading:
		w.Reading = craft.MeterReading(w.PerLength, w.ReadingLength, w.ReadingLeads)
	case WireGauge:
		w.Gauge = craft.GaugeOf(craft.Diameter(w.Area))
	case WireLeadDiameter:
		w.LeadDiameter = craft.Diameter(w.Area)
	case WireSupplyVoltage:
		w.SupplyVoltage = craft.SupplyOfCurrent(w.Current, w.Total, w.LeadOhms)
	case WirePower:
		w.Power = craft.PowerOfCurrent(w.Current, w.Total)
	case WireOnTime:
		w.OnTime = craft.OnTime(w.Duty, w.Period)
	case WireAverage:
		w.Average = craft.AveragePower(w.Duty, w.Power)
	case WireWantedPower:
		w.WantedPower = craft.PowerAtOhms(w.Wanted, w.SupplyVoltage, w.InRow)
	}
}

// limits returns what a supply of its kind gives, nil where that is as it was set or made.
func (w *Wiring) limits() *craft.SupplyLimit {
	if n := int(w.Supply) - 1; n >= 0 && n < len(craft.Supplies) {
		return &craft.Supplies[n]
	}
	return nil
}

// book fills in what the supply gives where nothing was typed. Where none of what flows was, its own voltage is the given.
func (w *Wiring) book(s *Sheet, given *Givens) {
	own := w.limits()
	if own == nil {
		return
	}
	if s.Text[WireMost] == "" {
		w.Most = own.Most
	}
	if s.Text[WireLeast] == "" {
		w.Least = own.Least
	}
	if w.bookVoltage = s.Text[WireSupplyVoltage] == "" && s.Text[WireCurrent] == "" && s.Text[WirePower] == ""; w.bookVoltage {
		*given = Givens{WireSupplyVoltage}
		w.SupplyVoltage = own.Voltage
	}
}

// crowds reports whether a resistor that gives the supply its least through the pauses is too much for it while the muscles are on.
func (w *Wiring) crowds() bool { return w.rests() && w.Least <= w.Most && w.Current+w.Least > w.Most }

// rests reports whether nothing flows for longer than a supply that switches itself off waits.
func (w *Wiring) rests() bool { return craft.Pause(w.Period, w.OnTime) > craft.BankPatience }

// wire works out the answers of the wire and its supply, and the groups among its fields, which need some of them.
func wire(p *Plan, r *Results) {
	w := &p.Wire
	r.TestPerLength, r.TestContact = quantity.ResistancePerLength(w.line.Slope), quantity.Resistance(w.line.Intercept())
	solveGroup(p, MeterGroup)
	solveGroup(p, LeadGroup)
	if w.bookRating {
		w.LeadRating = craft.LeadRating(w.Area)
	}
	switch w.Route {
	case RouteNone:
		r.YarnLength = quantity.Length(quantity.NaN)
	case RouteWrapped:
		r.YarnLength = craft.WrapLength(r.ThisFinished, w.WrapDiameter, w.WrapPitch)
	default:
		r.YarnLength = p.Precursor
	}
	r.Ohms = craft.YarnOhms(w.PerLength, r.YarnLength, w.Strands)
	r.LeastOhms = craft.ShuntedOhms(r.Ohms, r.Piece, r.YarnLength)
	r.OfPrecursor, r.OfCoil, r.OfFinished = craft.OhmsPer(r.Ohms, p.Precursor), craft.OhmsPer(r.Ohms, r.Piece), craft.OhmsPer(r.Ohms, r.ThisFinished)
	w.Total = craft.Wired(r.Ohms, w.InRow, w.Rows)
	w.LeadOhms = craft.LeadOhms(craft.WirePerLength(craft.CopperResistivity, w.Area), w.LeadLength)
	solveGroup(p, SupplyGroup)
	solveGroup(p, DutyGroup)
	solveGroup(p, WantedGroup)

	r.RowCurrent, r.SideCurrent = craft.RowCurrent(w.SupplyVoltage, r.Ohms, w.InRow, w.Rows), craft.SideCurrent(w.SupplyVoltage, r.Ohms, w.InRow, w.Rows)
	r.AverageCurrent = craft.AverageCurrent(w.Duty, w.Current)
	r.MusclePower = craft.MusclePower(w.Average, w.InRow, w.Rows)
	r.FullPower = craft.MusclePower(w.Power, w.InRow, w.Rows)
	r.PowerPer = craft.PowerPer(r.FullPower, r.ThisFinished)
	r.Drop = craft.LeadDrop(w.Current, w.LeadOhms)
	r.LeadHeat = craft.LeadHeat(w.Current, w.LeadOhms)
	r.Fuse = craft.Fuse(w.Current)
	r.OwnVoltage = quantity.Voltage(quantity.NaN)
	if own := w.limits(); own != nil {
		r.OwnVoltage = own.Voltage
	}
	r.Pause = craft.Pause(w.Period, w.OnTime)
	beside := w.Current
	if w.rests() {
		beside = 0
	}
	r.Dummy = craft.DummyOhms(w.SupplyVoltage, w.Least, beside, w.Most)
	r.DummyPower = craft.Watts(w.SupplyVoltage, r.Dummy)
	r.BatteryEnergy = craft.BatteryEnergy(w.Charge, w.Cell)
	drawn := w.Average
	if w.beside = known(float64(r.DummyPower)); w.beside {
		drawn += r.DummyPower
	}
	r.BatteryTime = craft.BatteryTime(r.BatteryEnergy, drawn)
	r.Cycles = craft.BatteryCycles(r.BatteryTime, w.Period)
	r.ReadingOhms = craft.OhmsOf(w.Across, w.Through)
	r.ReadingPerLength = craft.OhmsPer(r.ReadingOhms, w.ReadingLength)
	r.WantedPerLength = craft.PerLengthForOhms(w.Wanted, w.Strands, r.YarnLength)
	r.WantedLength = craft.YarnForOhms(w.Wanted, w.Strands, w.PerLength)
	r.WantedStrands = craft.StrandsForOhms(w.PerLength, r.YarnLength, w.Wanted)
	r.WantedReal = craft.PowerOfStrands(w.SupplyVoltage, w.InRow, r.WantedStrands, w.PerLength, r.YarnLength)
	r.ReadTemperature = craft.TemperatureOfOhms(w.ReadCold, w.ReadHot, w.Coefficient, p.Drive.Room)
	r.HotOhms = craft.OhmsAt(w.Total, w.Coefficient, p.Drive.Target, p.Drive.Room)
	r.Drift = craft.OhmsDrift(w.Before, w.After)
}

// readTest reads what was pasted as rows of a length and its ohms, and lays a line through them: its slope is the yarn's, and what it reads at no
// length at all are the contacts. Its notice has how many lines are no rows, and the first of them; the others count.
func (w *Wiring) readTest(text string, n *Notice) {
	var lengths, ohms [mostRows]float64
	rows, bad, first := trial.Pairs(text, quantity.KindLength, quantity.KindResistance, lengths[:], ohms[:])
	n.Lines = bad
	x, y := lengths[:rows], ohms[:rows]
	w.line = trial.Fit(x, y)
	if w.lineDoubt = w.line.SlopeDoubt(x, y); w.lineDoubt < 1e-9*w.line.Slope {
		w.lineDoubt = quantity.NaN // that is rounding
	}
	rises := w.line.Slope > 0
	for _, length := range x {
		rises = rises && length > 0
	}
	for rest := text; first > 0; first-- {
		n.Part, rest = quantity.Split(rest, '\n')
	}
	switch {
	case text == "":
	case rows < 2:
		n.Reason = TooFewRows
		w.line = trial.Fit(nil, nil)
	case !rises:
		n.Reason = NotRising
		w.line = trial.Fit(nil, nil)
	default:
		w.Test = quantity.Rows{N: float64(rows), Text: text}
	}
}

var (
	perLengthOfReading = Working{Eq: &craft.YarnPerLengthEq, Terms: []ID{WireReading, WireReadingLeads, WireReadingLength}}
	readingOfPerLength = Working{Eq: &craft.MeterReadingEq, Terms: []ID{WirePerLength, WireReadingLength, WireReadingLeads}}
	areaOfGauge        = Working{Method: "gauge", Source: &craft.WireGauge, Terms: []ID{WireGauge}}
	gaugeOfArea        = Working{Method: "gauge", Source: &craft.WireGauge, Terms: []ID{WireArea}}
	areaOfLead         = Working{Eq: &craft.AreaEq, Terms: []ID{WireLeadDiameter}}
	leadOfArea         = Working{Eq: &craft.DiameterEq, Terms: []ID{WireArea}}
	currentOfSupply    = Working{Eq: &craft.ThroughLeadsEq, Terms: []ID{WireSupplyVoltage, WireTotal, WireLeadOhms}}
	supplyOfCurrent    = Working{Eq: &craft.SupplyOfCurrentEq, Terms: []ID{WireCurrent, WireTotal, WireLeadOhms}}
	currentOfPower     = Working{Eq: &craft.CurrentOfPowerEq, Terms: []ID{WirePower, WireTotal}}
	powerOfCurrent     = Working{Eq: &craft.PowerOfCurrentEq, Terms: []ID{WireCurrent, WireTotal}}
	dutyOfTime         = Working{Eq: &craft.DutyOfTimeEq, Terms: []ID{WireOnTime, WirePeriod}}
	timeOfDuty         = Working{Eq: &craft.OnTimeEq, Terms: []ID{WireDuty, WirePeriod}}
	dutyOfAverage      = Working{Eq: &craft.DutyEq, Terms: []ID{WireAverage, WirePower}}
	averageOfDuty      = Working{Eq: &craft.AveragePowerEq, Terms: []ID{WireDuty, WirePower}}

	wantedOfPower = Working{Eq: &craft.OhmsForPowerEq, Terms: []ID{WireSupplyVoltage, WireInRow, WireWantedPower}}
	powerOfWanted = Working{Eq: &craft.PowerAtOhmsEq, Terms: []ID{WireSupplyVoltage, WireInRow, WireWanted}}

	dummyBeside = Working{Eq: &craft.DummyOhmsEq, Terms: []ID{WireSupplyVoltage, WireLeast, WireCurrent}}
	dummyAlone  = Working{Eq: &craft.DummyAloneEq, Terms: []ID{WireSupplyVoltage, WireLeast}}

	lastsAlone  = Working{Eq: &craft.BatteryTimeEq, Terms: []ID{WireEnergy, WireAverage}}
	lastsBeside = Working{Eq: &craft.BatteryBesideEq, Terms: []ID{WireEnergy, WireAverage, WireDummyPower}}

	yarnAlong   = Working{Method: "yarn-along", Source: &craft.Geometry, Terms: []ID{CutPrecursor}}
	yarnWrapped = Working{Eq: &craft.WrapLengthEq, Terms: []ID{ClampThisFinished, WireWrapPitch, WireWrapDiameter}}
	lineTest    = Working{Method: "line-test", Source: &craft.LeastSquares, Terms: []ID{WireTest}}

	besideOfRows = Working{Method: "of-rows", Source: &craft.Geometry, Terms: []ID{WireRows}}

	// where the limits of a supply are from, and the rating of a lead
	bookSupply = Working{Method: "book-value", Source: &craft.USBPort}
	bookBank   = Working{Method: "book-value", Source: &craft.Common}
	bookRating = Working{Method: "lead-rating", Source: &craft.Memory, Terms: []ID{WireArea}}
)
