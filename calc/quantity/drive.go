package quantity

// The quantities of wire, supply and pull, each in its SI unit, NaN where it is unknown.
type (
	Resistance             float64 // ohm
	ResistancePerLength    float64 // ohm per metre
	Resistivity            float64 // ohm metre
	TemperatureCoefficient float64 // per kelvin
	Voltage                float64 // volt
	Current                float64 // ampere
	Power                  float64 // watt
	PowerPerLength         float64 // watt per metre
	Charge                 float64 // coulomb
	Stiffness              float64 // newton per metre
	SpecificEnergy         float64 // joule per kilogram
	SpecificPower          float64 // watt per kilogram
)

// The kinds of wire, supply and pull.
var (
	KindResistance             = &Kind{Name: "resistance", Units: resistanceUnits}
	KindResistancePerLength    = &Kind{Name: "resistance-per-length", Units: resistancePerLengthUnits}
	KindResistivity            = &Kind{Name: "resistivity", Units: resistivityUnits}
	KindTemperatureCoefficient = &Kind{Name: "temperature-coefficient", Units: temperatureCoefficientUnits}
	KindVoltage                = &Kind{Name: "voltage", Units: voltageUnits}
	KindCurrent                = &Kind{Name: "current", Units: currentUnits}
	KindPower                  = &Kind{Name: "power", Units: powerUnits}
	KindPowerPerLength         = &Kind{Name: "power-per-length", Units: powerPerLengthUnits}
	KindCharge                 = &Kind{Name: "charge", Units: chargeUnits}
	KindStiffness              = &Kind{Name: "stiffness", Units: stiffnessUnits}
	KindSpecificEnergy         = &Kind{Name: "specific-energy", Units: specificEnergyUnits}
	KindSpecificPower          = &Kind{Name: "specific-power", Units: specificPowerUnits}
)

func (*Resistance) Kind() *Kind             { return KindResistance }
func (*ResistancePerLength) Kind() *Kind    { return KindResistancePerLength }
func (*Resistivity) Kind() *Kind            { return KindResistivity }
func (*TemperatureCoefficient) Kind() *Kind { return KindTemperatureCoefficient }
func (*Voltage) Kind() *Kind                { return KindVoltage }
func (*Current) Kind() *Kind                { return KindCurrent }
func (*Power) Kind() *Kind                  { return KindPower }
func (*PowerPerLength) Kind() *Kind         { return KindPowerPerLength }
func (*Charge) Kind() *Kind                 { return KindCharge }
func (*Stiffness) Kind() *Kind              { return KindStiffness }
func (*SpecificEnergy) Kind() *Kind         { return KindSpecificEnergy }
func (*SpecificPower) Kind() *Kind          { return KindSpecificPower }

func (v *Resistance) SI() float64             { return float64(*v) }
func (v *ResistancePerLength) SI() float64    { return float64(*v) }
func (v *Resistivity) SI() float64            { return float64(*v) }
func (v *TemperatureCoefficient) SI() float64 { return float64(*v) }
func (v *Voltage) SI() float64                { return float64(*v) }
func (v *Current) SI() float64                { return float64(*v) }
func (v *Power) SI() float64                  { return float64(*v) }
func (v *PowerPerLength) SI() float64         { return float64(*v) }
func (v *Charge) SI() float64                 { return float64(*v) }
func (v *Stiffness) SI() float64              { return float64(*v) }
func (v *SpecificEnergy) SI() float64         { return float64(*v) }
func (v *SpecificPower) SI() float64          { return float64(*v) }

func (v *Resistance) SetSI(x float64)             { *v = Resistance(x) }
func (v *ResistancePerLength) SetSI(x float64)    { *v = ResistancePerLength(x) }
func (v *Resistivity) SetSI(x float64)            { *v = Resistivity(x) }
func (v *TemperatureCoefficient) SetSI(x float64) { *v = TemperatureCoefficient(x) }
func (v *Voltage) SetSI(x float64)                { *v = Voltage(x) }
func (v *Current) SetSI(x float64)                { *v = Current(x) }
func (v *Power) SetSI(x float64)                  { *v = Power(x) }
func (v *PowerPerLength) SetSI(x float64)         { *v = PowerPerLength(x) }
func (v *Charge) SetSI(x float64)                 { *v = Charge(x) }
func (v *Stiffness) SetSI(x float64)              { *v = Stiffness(x) }
func (v *SpecificEnergy) SetSI(x float64)         { *v = SpecificEnergy(x) }
func (v *SpecificPower) SetSI(x float64)          { *v = SpecificPower(x) }

// There is a sign of its own for the ohm beside the Greek letter: both are read. Neither a milliohm nor a megohm is a unit here, so that one
// cannot be taken for the other.
var resistanceUnits = []Unit{
	{Symbol: "Ω", Factor: 1, Aliases: []string{"\u2126", "ohm", "ohms"}},
	{Symbol: "kΩ", Factor: 1e3, Aliases: []string{"k\u2126", "kohm", "kilohm", "kilohms"}},
}

var resistancePerLengthUnits = []Unit{
	{Symbol: "Ω/m", Factor: 1, US: "Ω/ft", Aliases: []string{"\u2126/m", "ohm/m", "ohms/m", "ohm per m", "ohms per m", "ohm per metre", "ohms per metre"}},
	{Symbol: "Ω/cm", Factor: 100, Aliases: []string{"\u2126/cm", "ohm/cm", "ohms/cm"}},
	{Symbol: "kΩ/m", Factor: 1e3, Aliases: []string{"k\u2126/m", "kohm/m"}},
	{Symbol: "Ω/km", Factor: 1e-3, Aliases: []string{"\u2126/km", "ohm/km", "ohms/km"}},
	{Symbol: "Ω/ft", Factor: 1 / foot, Aliases: []string{"\u2126/ft", "ohm/ft", "ohms/ft", "ohms/foot"}},
	{Symbol: "Ω/in", Factor: 1 / inch, Aliases: []string{"\u2126/in", "ohm/in", "ohms/in", "ohms/inch"}},
}

var resistivityUnits = []Unit{
	{Symbol: "Ω·mm²/m", Factor: 1e-6, Aliases: []string{"\u2126·mm²/m", "ohm mm²/m"}},
	{Symbol: "Ω·m", Factor: 1, Aliases: []string{"\u2126·m", "ohm m"}},
}

var temperatureCoefficientUnits = []Unit{
	{Symbol: "%/K", Factor: 1e-2, Aliases: []string{"%/°C", "%/C"}},
	{Symbol: "ppm/K", Factor: 1e-6, Aliases: []string{"ppm/°C", "ppm/C"}},
}

var voltageUnits = []Unit{
	{Symbol: "V", Factor: 1, Aliases: []string{"volt", "volts"}},
	{Symbol: "mV", Factor: 1e-3, Aliases: []string{"millivolt", "millivolts"}},
}

var currentUnits = []Unit{
	{Symbol: "A", Factor: 1, Aliases: []string{"amp", "amps", "ampere", "amperes"}},
	{Symbol: "mA", Factor: 1e-3, Aliases: []string{"milliamp", "milliamps"}},
}

// A Btu is that of the International Table, pound × 2326 J/kg × 9/5 by definition.
var powerUnits = []Unit{
	{Symbol: "W", Factor: 1, Aliases: []string{"watt", "watts", "J/s"}},
	{Symbol: "mW", Factor: 1e-3, Aliases: []string{"milliwatt", "milliwatts"}},
	{Symbol: "kW", Factor: 1e3, Aliases: []string{"kilowatt", "kilowatts"}},
	{Symbol: "Btu/h", Factor: pound * 2326 / 3600, Aliases: []string{"Btu/hr"}},
}

var powerPerLengthUnits = []Unit{
	{Symbol: "W/cm", Factor: 100, US: "W/in"},
	{Symbol: "W/m", Factor: 1, US: "W/in"},
	{Symbol: "W/in", Factor: 1 / inch},
}

var chargeUnits = []Unit{
	{Symbol: "mAh", Factor: 3.6},
	{Symbol: "Ah", Factor: 3600},
}

var stiffnessUnits = []Unit{
	{Symbol: "N/m", Factor: 1, US: "lbf/in", Aliases: []string{"N m-1"}},
	{Symbol: "N/mm", Factor: 1e3, US: "lbf/in", Aliases: []string{"N mm-1"}},
	{Symbol: "gf/mm", Factor: gravity},
	{Symbol: "lbf/in", Factor: pound * gravity / inch, Aliases: []string{"lb/in"}},
}

var specificEnergyUnits = []Unit{
	{Symbol: "J/kg", Factor: 1},
	{Symbol: "kJ/kg", Factor: 1e3, Aliases: []string{"J/g"}},
}

var specificPowerUnits = []Unit{
	{Symbol: "W/kg", Factor: 1},
	{Symbol: "kW/kg", Factor: 1e3, Aliases: []string{"W/g"}},
}
