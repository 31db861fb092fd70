package craft

import (
	"math"

	"twistbench/calc/quantity"
)

// Supply: volts, amperes and watts at a resistance that is given, of which each says the others; switched on and off for a share of the time;
// and what feeds it. While the switch is closed the current is volts over ohms, whatever the share: only the average is less, and a switch
// that sticks leaves it all on.

// Current returns the current (A) that v (V) drives through r (Ω); NaN for a resistance that is not over 0.
func Current(v quantity.Voltage, r quantity.Resistance) quantity.Current {
	return quantity.Current(float64(v) / positive(float64(r)))
}

// Watts returns the power (W) of v (V) on r (Ω).
func Watts(v quantity.Voltage, r quantity.Resistance) quantity.Power {
	return quantity.Power(float64(v*v) / positive(float64(r)))
}

var WattsEq = Equation{Symbol: "P", Expr: "V² ÷ R", Holds: "ohms-as-they-are", Source: &Geometry}

// VoltageOfCurrent returns the voltage (V) that i (A) takes through r (Ω): at a muscle, or lost in its leads.
func VoltageOfCurrent(i quantity.Current, r quantity.Resistance) quantity.Voltage {
	return quantity.Voltage(float64(i) * positive(float64(r)))
}

// OhmsOf returns the resistance (Ω) that takes i (A) at v (V): the way to measure a few ohms.
func OhmsOf(v quantity.Voltage, i quantity.Current) quantity.Resistance {
	return quantity.Resistance(float64(v) / positive(float64(i)))
}

var OhmsOfEq = Equation{Symbol: "R", Expr: "V ÷ I", Holds: "at-the-muscle", Source: &Geometry}

// ThroughLeads returns the current (A) that a supply of u (V) drives through r (Ω) and its leads of q (Ω); SupplyOfCurrent is the way back.
func ThroughLeads(u quantity.Voltage, r, q quantity.Resistance) quantity.Current {
	return Current(u, r+q)
}

func SupplyOfCurrent(i quantity.Current, r, q quantity.Resistance) quantity.Voltage {
	return VoltageOfCurrent(i, r+q)
}

// PowerOfCurrent returns the power (W) of i (A) in r (Ω); CurrentOfPower is the way back.
func PowerOfCurrent(i quantity.Current, r quantity.Resistance) quantity.Power { return LeadHeat(i, r) }

func CurrentOfPower(p quantity.Power, r quantity.Resistance) quantity.Current {
	return quantity.Current(math.Sqrt(float64(p) / positive(float64(r))))
}

var (
	ThroughLeadsEq    = Equation{Symbol: "I", Expr: "U ÷ (R + q)", Holds: "ohms-as-they-are", Source: &Geometry}
	SupplyOfCurrentEq = Equation{Symbol: "U", Expr: "I × (R + q)", Holds: "ohms-as-they-are", Source: &Geometry}
	PowerOfCurrentEq  = Equation{Symbol: "P", Expr: "I² × R", Holds: "ohms-as-they-are", Source: &Geometry}
	CurrentOfPowerEq  = Equation{Symbol: "I", Expr: "√(P ÷ R)", Holds: "ohms-as-they-are", Source: &Geometry}
)

// RowCurrent returns the current (A) that u (V) drives through s times p muscles of r (Ω) all in one row, leads left out; SideCurrent the same of
// all side by side.
func RowCurrent(u quantity.Voltage, r quantity.Resistance, s, p quantity.Count) quantity.Current {
	return Current(u, Wired(r, s*p, 1))
}

func SideCurrent(u quantity.Voltage, r quantity.Resistance, s, p quantity.Count) quantity.Current {
	return Current(u, Wired(r, 1, s*p))
}

var (
	RowCurrentEq  = Equation{Symbol: "I", Expr: "U ÷ (R × s × p)", Holds: "equal-ohms", Source: &Geometry}
	SideCurrentEq = Equation{Symbol: "I", Expr: "U × s × p ÷ R", Holds: "equal-ohms", Source: &Geometry}
)

// LeadDrop returns what i (A) loses (V) in leads of q (Ω).
func LeadDrop(i quantity.Current, q quantity.Resistance) quantity.Voltage {
	return quantity.Voltage(float64(i) * float64(q))
}

var LeadDropEq = Equation{Symbol: "V", Expr: "I × q", Holds: "ohms-as-they-are", Source: &Geometry}

// LeadHeat returns the heat (W) of i (A) in leads of q (Ω).
func LeadHeat(i quantity.Current, q quantity.Resistance) quantity.Power {
	return quantity.Power(float64(i*i) * float64(q))
}

var LeadHeatEq = Equation{Symbol: "H", Expr: "I² × q", Holds: "ohms-as-they-are", Source: &Geometry}

// Duty returns the share of the time that p (W) must be on for an average of a (W); NaN where even all of it is too little.
func Duty(a, p quantity.Power) quantity.Share {
	return atMostAll(float64(a / p))
}

var DutyEq = Equation{Symbol: "d", Expr: "a ÷ P", Holds: "even-period", Source: &Geometry}

// AveragePower returns the average (W) of p (W) that is on for a share d of the time.
func AveragePower(d quantity.Share, p quantity.Power) quantity.Power { return quantity.Power(d) * p }

var AveragePowerEq = Equation{Symbol: "a", Expr: "d × P", Holds: "even-period", Source: &Geometry}

// AverageCurrent returns the average (A) of i (A) that is on for a share d of the time: what empties a battery.
func AverageCurrent(d quantity.Share, i quantity.Current) quantity.Current {
	return quantity.Current(d) * i
}

var AverageCurrentEq = Equation{Symbol: "i", Expr: "d × I", Holds: "even-period", Source: &Geometry}

// OnTime returns how long (s) it is on in each period of t (s) at a share d.
func OnTime(d quantity.Share, t quantity.Time) quantity.Time { return quantity.Time(d) * t }

var OnTimeEq = Equation{Symbol: "s", Expr: "d × t", Holds: "even-period", Source: &Geometry}

// DutyOfTime is the way back from OnTime; NaN where it would be on for longer than the period.
func DutyOfTime(s, t quantity.Time) quantity.Share {
	return atMostAll(float64(s / t))
}

var DutyOfTimeEq = Equation{Symbol: "d", Expr: "s ÷ t", Holds: "even-period", Source: &Geometry}

// atMostAll returns a share that is not over the whole, but by what was rounded, and NaN for any other.
func atMostAll(x float64) quantity.Share {
	if !(x <= 1+1e-9) {
		x = quantity.NaN
	}
	return quantity.Share(min(x, 1))
}

// MusclePower returns the part of p (W) in each muscle, of n in each of m rows.
func MusclePower(p quantity.Power, n, m quantity.Count) quantity.Power {
	return p / quantity.Power(n*m)
}

var MusclePowerEq = Equation{Symbol: "m", Expr: "P ÷ (s × p)", Holds: "equal-ohms", Source: &Geometry}

// PowerPer returns the power per length (W/m) of p (W) over a length l (m).
func PowerPer(p quantity.Power, l quantity.Length) quantity.PowerPerLength {
	return quantity.PowerPerLength(float64(p) / positive(float64(l)))
}

var PowerPerEq = Equation{Symbol: "k", Expr: "P ÷ l", Holds: "that-length", Source: &Geometry}

// A SupplyLimit is what a supply gives (V), at most (A), and the least it must be asked for (A) lest it switches itself off.
type SupplyLimit struct {
	Key         string
	Voltage     quantity.Voltage
	Most, Least quantity.Current
	Source      *Source
}

// Supplies lists the supplies whose limits are much the same everywhere: defaults that the label goes before. A bench supply and a battery have
// only those that are typed.
var Supplies = [...]SupplyLimit{
	{"usb-2", 5, 0.5, 0, &USBPort},
	{"usb-3", 5, 0.9, 0, &USBPort},
	{"usb-c", 5, 3, 0, &USBPort},
	{"power-bank", 5, 2, 0.1, &Common},
}

// LeastOfOwn and MostOfOwn are how many times its own voltage a supply in Supplies may be measured to give. From memory: 4.4 to 5.5 V at a port.
const LeastOfOwn, MostOfOwn = 0.88, 1.1

// BankPatience is how long (s) a supply that switches itself off waits at less than its least before it does: the shortest wait, from memory.
// Many wait for half a minute.
const BankPatience quantity.Time = 10

// Pause returns how long (s) nothing flows in each period of t (s) with s (s) on.
func Pause(t, s quantity.Time) quantity.Time { return t - s }

var PauseEq = Equation{Symbol: "o", Expr: "t − s", Holds: "even-period", Source: &Geometry}

// DummyOhms returns the resistance (Ω) that, beside muscles of i (A), makes a supply of v (V) give at least m (A); NaN where they alone do, and
// where the supply gives less than m: at most n (A), NaN for no limit. With an i of 0 it does so alone.
func DummyOhms(v quantity.Voltage, m, i, n quantity.Current) quantity.Resistance {
	if m > n {
		return quantity.Resistance(quantity.NaN)
	}
	return OhmsOf(v, m-i)
}

var (
	DummyOhmsEq  = Equation{Symbol: "R", Expr: "V ÷ (m − I)", Holds: "beside-muscles", Source: &Geometry}
	DummyAloneEq = Equation{Symbol: "R", Expr: "V ÷ m", Holds: "alone-in-pause", Source: &Geometry}
)

// BatteryEnergy returns what (J) is in a battery of charge q (C) and cells of v (V).
func BatteryEnergy(q quantity.Charge, v quantity.Voltage) quantity.Energy {
	return quantity.Energy(float64(q) * float64(v))
}

var BatteryEnergyEq = Equation{Symbol: "E", Expr: "Q × V", Holds: "fresh-battery", Source: &Geometry}

// BatteryTime returns how long (s) an energy e (J) lasts at an average of a (W), if all of it arrives.
func BatteryTime(e quantity.Energy, a quantity.Power) quantity.Time {
	return quantity.Time(float64(e) / positive(float64(a)))
}

// BatteryTimeEq is that of muscles alone, BatteryBesideEq that with a resistor of b (W) beside them, on all the time.
var (
	BatteryTimeEq   = Equation{Symbol: "t", Expr: "E ÷ a", Holds: "fresh-battery", Source: &Geometry}
	BatteryBesideEq = Equation{Symbol: "t", Expr: "E ÷ (a + b)", Holds: "fresh-battery", Source: &Geometry}
)

// BatteryCycles returns how many times a battery that lasts for t (s) heats, once every p (s).
func BatteryCycles(t, p quantity.Time) quantity.Number { return quantity.Number(t / p) }

var BatteryCyclesEq = Equation{Symbol: "c", Expr: "t ÷ p", Holds: "fresh-battery", Source: &Geometry}

// OhmsForPower returns the resistance (Ω) of a muscle that makes p (W) while on, one of s end to end in each row at a supply of u (V), leads left
// out; PowerAtOhms is the way back.
func OhmsForPower(p quantity.Power, u quantity.Voltage, s quantity.Count) quantity.Resistance {
	each := float64(u) / float64(s)
	return quantity.Resistance(each * each / positive(float64(p)))
}

func PowerAtOhms(r quantity.Resistance, u quantity.Voltage, s quantity.Count) quantity.Power {
	return Watts(u/quantity.Voltage(s), r)
}

// PowerOfStrands returns what (W) a muscle makes there whose conductor is n strands of k ohms per metre side by side, each l (m) long.
func PowerOfStrands(u quantity.Voltage, s, n quantity.Count, k quantity.ResistancePerLength, l quantity.Length) quantity.Power {
	return PowerAtOhms(YarnOhms(k, l, n), u, s)
}

// WantedCare is how many times the wanted power strands that were rounded up may make without a word. A judgement, no source: as much hotter over
// the room, and what was meant for 180 °C comes to about 230.
const WantedCare = 1.3

var (
	OhmsForPowerEq   = Equation{Symbol: "R", Expr: "(U ÷ s)² ÷ P", Holds: "leads-out", Source: &Geometry}
	PowerAtOhmsEq    = Equation{Symbol: "P", Expr: "(U ÷ s)² ÷ R", Holds: "leads-out", Source: &Geometry}
	PowerOfStrandsEq = Equation{Symbol: "P", Expr: "(U ÷ s)² × n ÷ (r × y)", Holds: "leads-out", Source: &Geometry}
)

// fuses are the rated currents (A) of small fuses: ten to the decade, rounded. LargestFuse is the last.
var fuses = [...]quantity.Current{0.032, 0.04, 0.05, 0.063, 0.08, 0.1, 0.125, 0.16, 0.2, 0.25, 0.315, 0.4, 0.5, 0.63, 0.8,
	1, 1.25, 1.6, 2, 2.5, 3.15, 4, 5, 6.3, 8, 10}

const LargestFuse quantity.Current = 10

// Fuse returns the next rated current (A) of small fuses over a current i (A), from 32 mA to 10 A; NaN beyond. It is for the current while
// it is on, not for its average: a fuse may be as quick as the switch. It is looked up in FuseRatings.
func Fuse(i quantity.Current) quantity.Current {
	for _, f := range fuses {
		if f > i*(1+1e-9) {
			return f
		}
	}
	return quantity.Current(quantity.NaN)
}

// FuseBlows is how many times its rated current a small fuse takes before it opens within half an hour, from memory. Between one and that it
// may hold for hours. A fuse guards the leads: what the muscle takes is far too little for one when it is too hot.
const FuseBlows = 2.1
