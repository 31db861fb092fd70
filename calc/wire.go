package calc

import (
	"math"

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
	SupplyVoltage, Voltage   quantity.Voltage // at the supply, and at all muscles
	Current                  quantity.Current // while on
	Power                    quantity.Power   // the same, in all muscles
	Duty                     quantity.Share
	OnTime, Period           quantity.Time
	Average                  quantity.Power
	Area                     quantity.Area // of a lead
	Gauge                    quantity.Number
	LeadDiameter, LeadLength quantity.Length
	LeadRating               quantity.Current

	Charge                quantity.Charge
	Cell                  quantity.Voltage
	Arrives               quantity.Share
	Coefficient           quantity.TemperatureCoefficient
	Before, After, Wanted quantity.Resistance

	// Worked out.
	Total, LeadOhms quantity.Resistance // of all muscles, and of both leads

	bookRating bool // no rating was typed
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
		w.Voltage = craft.AtMuscle(w.SupplyVoltage, w.Total, w.LeadOhms)
	case WireCurrent:
		w.Voltage = craft.VoltageOfCurrent(w.Current, w.Total)
	case WirePower:
		w.Voltage = craft.VoltageOfPower(w.Power, w.Total)
	case WireOnTime:
		w.Duty = craft.DutyOfTime(w.OnTime, w.Period)
	case WireAverage:
		w.Duty = craft.Duty(w.Average, w.Power)
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
		w.SupplyVoltage = craft.AtSupply(w.Voltage, w.Total, w.LeadOhms)
	case WireCurrent:
		w.Current = craft.Current(w.Voltage, w.Total)
	case WirePower:
		w.Power = craft.Watts(w.Voltage, w.Total)
	case WireOnTime:
		w.OnTime = craft.OnTime(w.Duty, w.Period)
	case WireAverage:
		w.Average = craft.AveragePower(w.Duty, w.Power)
	}
}

// wire works out the answers of the wire and its supply, and the groups among its fields, which need some of them.
func wire(p *Plan, r *Results) {
	w := &p.Wire
	lineOf(w, r)
	solveGroup(p, MeterGroup)
	solveGroup(p, LeadGroup)
	if w.bookRating {
		w.LeadRating = craft.LeadRating(w.Area)
	}
	r.WrapTurns = craft.Coils(r.ThisFinished, w.WrapPitch)
	switch w.Route {
	case RouteNone:
		r.YarnLength = quantity.Length(quantity.NaN)
	case RouteWrapped:
		r.YarnLength = craft.WrapLength(r.WrapTurns, w.WrapDiameter, w.WrapPitch)
	default:
		r.YarnLength = p.Precursor
	}
	r.Ohms = craft.YarnOhms(w.PerLength, r.YarnLength, w.Strands)
	r.LeastOhms = craft.ShuntedOhms(r.Ohms, r.Piece, r.YarnLength)
	for i, l := range [3]quantity.Length{p.Precursor, r.Piece, r.ThisFinished} {
		r.OhmsPer[i] = craft.OhmsPer(r.Ohms, l)
	}
	w.Total = craft.Wired(r.Ohms, w.InRow, w.Rows)
	r.LeadPerLength = craft.WirePerLength(craft.CopperResistivity, w.Area)
	w.LeadOhms = craft.LeadOhms(r.LeadPerLength, w.LeadLength)
	solveGroup(p, SupplyGroup)
	solveGroup(p, DutyGroup)

	r.WiredOhms = [2]quantity.Resistance{craft.RowOhms(r.Ohms, w.InRow, w.Rows), craft.SideOhms(r.Ohms, w.InRow, w.Rows)}
	for i, ohms := range r.WiredOhms {
		r.WiredCurrent[i] = craft.Current(w.SupplyVoltage, ohms)
	}
	r.AverageCurrent = craft.AverageCurrent(w.Duty, w.Current)
	r.MusclePower = craft.MusclePower(w.Average, w.InRow, w.Rows)
	r.FullPower = craft.MusclePower(w.Power, w.InRow, w.Rows)
	r.PowerPer = craft.PowerPer(r.FullPower, r.ThisFinished)
	r.Drop = craft.LeadDrop(w.Current, w.LeadOhms)
	r.LeadHeat = craft.LeadHeat(w.Current, w.LeadOhms)
	r.Fuse = craft.Fuse(w.Current)
	r.Dummy = craft.DummyOhms(w.SupplyVoltage, w.Least, r.AverageCurrent)

	r.BatteryEnergy = craft.BatteryEnergy(w.Charge, w.Cell)
	r.Cycles = craft.BatteryCycles(r.BatteryEnergy, w.Arrives, w.Power, w.OnTime)
	r.BatteryTime = craft.BatteryTime(r.BatteryEnergy, w.Arrives, w.Average)
	r.HotOhms = craft.OhmsAt(w.Total, w.Coefficient, p.Drive.Target, p.Drive.Room)
	r.Drift = craft.OhmsDrift(w.Before, w.After)
	r.WantedLength = craft.YarnForOhms(w.Wanted, w.Strands, w.PerLength)
	r.WantedStrands = craft.StrandsForOhms(w.PerLength, r.YarnLength, w.Wanted)
}

// lineOf lays a line through the readings of several lengths: its slope is the yarn's, and what it reads at no length at all are the contacts.
func lineOf(w *Wiring, r *Results) {
	var lengths, ohms [mostRows]float64
	n := 0
	if known(w.Test.N) {
		n, _, _ = trial.Pairs(w.Test.Text, quantity.KindLength, quantity.KindResistance, lengths[:], ohms[:])
	}
	x, y := lengths[:n], ohms[:n]
	line := trial.Fit(x, y)
	r.TestPerLength, r.TestContact = quantity.ResistancePerLength(line.Slope), quantity.Resistance(line.Intercept())
	r.testSlope, r.testContact = line.SlopeDoubt(x, y), line.DoubtAt(x, y, 0)
}

// readRows reads what was pasted as rows of a length and its ohms. Part of its notice is the first line that is none; the others count.
func readRows(text string, rows *quantity.Rows, n *Notice) {
	var x, y [mostRows]float64
	read, _, first := trial.Pairs(text, quantity.KindLength, quantity.KindResistance, x[:], y[:])
	for rest := text; first > 0; first-- {
		n.Part, rest = quantity.Split(rest, '\n')
	}
	n.Part = quantity.Trim(n.Part)
	if read < 2 {
		n.Reason = TooFewRows
		return
	}
	*rows = quantity.Rows{N: float64(read), Text: text}
}

// lineDoubts are the ± of the line test: they follow from how its readings scatter.
func (st *State) lineDoubts() {
	for id, by := range [...]float64{st.Out.testSlope, st.Out.testContact} {
		if known(by) && !math.IsInf(by, 0) {
			st.Doubt[WireTestPerLength+ID(id)], st.Mostly[WireTestPerLength+ID(id)] = by, WireTest
		}
	}
}

var (
	perLengthOfReading = Working{Eq: &craft.YarnPerLengthEq, Terms: []ID{WireReading, WireReadingLeads, WireReadingLength}}
	readingOfPerLength = Working{Eq: &craft.MeterReadingEq, Terms: []ID{WirePerLength, WireReadingLength, WireReadingLeads}}
	areaOfGauge        = Working{Method: "gauge", Source: &craft.WireGauge, Terms: []ID{WireGauge}}
	gaugeOfArea        = Working{Method: "gauge", Source: &craft.WireGauge, Terms: []ID{WireArea}}
	areaOfLead         = Working{Eq: &craft.AreaEq, Terms: []ID{WireLeadDiameter}}
	leadOfArea         = Working{Eq: &craft.DiameterEq, Terms: []ID{WireArea}}
	voltageOfSupply    = Working{Eq: &craft.AtMuscleEq, Terms: []ID{WireSupplyVoltage, WireTotal, WireLeadOhms}}
	supplyOfVoltage    = Working{Eq: &craft.AtSupplyEq, Terms: []ID{WireVoltage, WireTotal, WireLeadOhms}}
	voltageOfCurrent   = Working{Eq: &craft.VoltageOfCurrentEq, Terms: []ID{WireCurrent, WireTotal}}
	currentOfVoltage   = Working{Eq: &craft.CurrentEq, Terms: []ID{WireVoltage, WireTotal}}
	voltageOfPower     = Working{Eq: &craft.VoltageOfPowerEq, Terms: []ID{WirePower, WireTotal}}
	powerOfVoltage     = Working{Eq: &craft.WattsEq, Terms: []ID{WireVoltage, WireTotal}}
	dutyOfTime         = Working{Eq: &craft.DutyOfTimeEq, Terms: []ID{WireOnTime, WirePeriod}}
	timeOfDuty         = Working{Eq: &craft.OnTimeEq, Terms: []ID{WireDuty, WirePeriod}}
	dutyOfAverage      = Working{Eq: &craft.DutyEq, Terms: []ID{WireAverage, WirePower}}
	averageOfDuty      = Working{Eq: &craft.AveragePowerEq, Terms: []ID{WireDuty, WirePower}}

	yarnAlong   = Working{Method: "yarn-along", Source: &craft.Geometry, Terms: []ID{CutPrecursor}}
	yarnWrapped = Working{Eq: &craft.WrapLengthEq, Terms: []ID{WireWrapTurns, WireWrapDiameter, WireWrapPitch}}
	lineTest    = Working{Method: "line-test", Source: &craft.LeastSquares, Terms: []ID{WireTest}}

	// where the limits of a supply are from, and the rating of a lead
	bookSupply = Working{Method: "book-value", Source: &craft.USBPort}
	bookBank   = Working{Method: "book-value", Source: &craft.Common}
	bookRating = Working{Method: "lead-rating", Source: &craft.Memory, Terms: []ID{WireArea}}
)
