package quantity

import "math"

// The quantities of twisting and coiling, each in its SI unit, NaN where it is unknown.
type (
	Angle       float64 // radian
	Twist       float64 // turns per metre
	TwistFactor float64 // turns per metre × √(kilogram per metre)
	Turns       float64 // turns, or coils: one is once round
	Rotation    float64 // turns per second
	Time        float64 // second
	Torque      float64 // newton metre
	Number      float64 // a plain number: spring index, contraction factor
)

// The kinds of twisting and coiling.
var (
	KindAngle       = &Kind{Name: "angle", Units: angleUnits}
	KindTwist       = &Kind{Name: "twist", Units: twistUnits}
	KindTwistFactor = &Kind{Name: "twist-factor", Units: twistFactorUnits}
	KindTurns       = &Kind{Name: "turns", Units: turnsUnits}
	KindRotation    = &Kind{Name: "rotation", Units: rotationUnits}
	KindTime        = &Kind{Name: "time", Units: timeUnits}
	KindTorque      = &Kind{Name: "torque", Units: torqueUnits}
	KindNumber      = &Kind{Name: "number", Units: numberUnits}
)

func (*Angle) Kind() *Kind       { return KindAngle }
func (*Twist) Kind() *Kind       { return KindTwist }
func (*TwistFactor) Kind() *Kind { return KindTwistFactor }
func (*Turns) Kind() *Kind       { return KindTurns }
func (*Rotation) Kind() *Kind    { return KindRotation }
func (*Time) Kind() *Kind        { return KindTime }
func (*Torque) Kind() *Kind      { return KindTorque }
func (*Number) Kind() *Kind      { return KindNumber }

func (v *Angle) SI() float64       { return float64(*v) }
func (v *Twist) SI() float64       { return float64(*v) }
func (v *TwistFactor) SI() float64 { return float64(*v) }
func (v *Turns) SI() float64       { return float64(*v) }
func (v *Rotation) SI() float64    { return float64(*v) }
func (v *Time) SI() float64        { return float64(*v) }
func (v *Torque) SI() float64      { return float64(*v) }
func (v *Number) SI() float64      { return float64(*v) }

func (v *Angle) SetSI(x float64)       { *v = Angle(x) }
func (v *Twist) SetSI(x float64)       { *v = Twist(x) }
func (v *TwistFactor) SetSI(x float64) { *v = TwistFactor(x) }
func (v *Turns) SetSI(x float64)       { *v = Turns(x) }
func (v *Rotation) SetSI(x float64)    { *v = Rotation(x) }
func (v *Time) SetSI(x float64)        { *v = Time(x) }
func (v *Torque) SetSI(x float64)      { *v = Torque(x) }
func (v *Number) SetSI(x float64)      { *v = Number(x) }

var angleUnits = []Unit{
	{Symbol: "°", Factor: math.Pi / 180, Aliases: []string{"deg", "deg.", "degree", "degrees"}},
	{Symbol: "rad", Factor: 1, Aliases: []string{"radian", "radians"}},
}

var twistUnits = []Unit{
	{Symbol: "turns/m", Factor: 1, US: "tpi", Aliases: []string{"turn/m", "t/m", "tpm", "turns per m", "turns per metre", "turns per meter"}},
	{Symbol: "turns/cm", Factor: 100, Aliases: []string{"turn/cm", "t/cm", "tpcm", "turns per cm"}},
	{Symbol: "tpi", Factor: 1 / inch, Aliases: []string{"turns/in", "turn/in", "t/in", "turns/inch", "turns per in", "turns per inch"}},
}

// cottonTwist is a twist of one turn per inch at a count of 1, in SI: √(pound / (840 × yard)) / inch.
const cottonTwist = 0.956734427219117944

var twistFactorUnits = []Unit{
	{Symbol: "turns/m·√tex", Factor: 1.0 / 1000, US: "tpi/√Ne", Aliases: []string{"t/m·√tex", "turns/m √tex", "t/m √tex", "turns/m sqrt tex", "tex^0.5/m", "√tex/m"}},
	{Symbol: "tpi/√Ne", Factor: cottonTwist, Aliases: []string{"TM", "twist multiplier", "tpi/sqrt Ne"}},
}

var turnsUnits = []Unit{
	{Symbol: "turns", Factor: 1, Aliases: []string{"turn", "rev", "revs", "revolutions"}},
	{Symbol: "coils", Factor: 1, Aliases: []string{"coil"}},
}

var rotationUnits = []Unit{
	{Symbol: "rpm", Factor: 1.0 / 60, Aliases: []string{"r.p.m.", "rev/min", "r/min", "turns/min", "turns per minute"}},
	{Symbol: "turns/s", Factor: 1, Aliases: []string{"rps", "rev/s", "r/s", "turns per second"}},
}

var timeUnits = []Unit{
	{Symbol: "s", Factor: 1, Aliases: []string{"sec", "secs", "sec.", "second", "seconds"}},
	{Symbol: "min", Factor: 60, Aliases: []string{"mins", "min.", "minute", "minutes"}},
	{Symbol: "h", Factor: 3600, Aliases: []string{"hr", "hrs", "hour", "hours"}},
	{Symbol: "ms", Factor: 1e-3, Aliases: []string{"msec", "millisecond", "milliseconds"}},
	{Symbol: "days", Factor: 86400, Aliases: []string{"d", "day"}},
}

// first reads the colon of a time as a clock shows it, 1:30 or 1:30:15, and is the unit of the part before it: hours, but for two parts in a box
// of seconds minutes. In a box of minutes they are likely too: that is the other reading. Without a colon it is nil.
func (p *parser) first(box *Unit) *Unit {
	if p.kind != KindTime || p.i == len(p.s) || p.s[p.i] != ':' {
		return nil
	}
	hours, minutes := &timeUnits[2], &timeUnits[1]
	switch two := Index(p.s[p.i+1:], ':') < 0; {
	case two && box == minutes:
		p.other = p.s[:p.i] + " min " + p.s[p.i+1:]
	case two && box.Factor < 60:
		return minutes
	}
	return hours
}

// below is the unit of a bare number behind one of u: in 1 h 30 it is
// minutes. Behind seconds, and for other kinds than time, it is nil.
func (k *Kind) below(u *Unit) *Unit {
	if k != KindTime {
		return nil
	}
	var b *Unit
	for i := range k.Units {
		if f := k.Units[i].Factor; f >= 1 && f < u.Factor && (b == nil || f > b.Factor) {
			b = &k.Units[i]
		}
	}
	return b
}

var torqueUnits = []Unit{
	{Symbol: "mN·m", Factor: 1e-3, Aliases: []string{"mN m", "mNm", "N·mm", "N mm", "Nmm"}},
	{Symbol: "µN·m", Factor: 1e-6, Aliases: []string{"µN m", "µNm", "uN·m", "uN m", "uNm"}},
	{Symbol: "N·m", Factor: 1, Aliases: []string{"N m", "Nm"}},
	{Symbol: "lbf·in", Factor: pound * gravity * inch, Aliases: []string{"lbf in", "lb·in", "lb in"}},
}

var numberUnits = []Unit{{Symbol: "", Factor: 1}}
