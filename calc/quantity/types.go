package quantity

// Value is a quantity that can be set from its SI value.
type Value interface {
	Kind() *Kind
	SI() float64
	SetSI(float64)
}

// The quantities, each in its SI unit, NaN where it is unknown.
type (
	Length                float64 // metre
	Mass                  float64 // kilogram
	Force                 float64 // newton
	Stress                float64 // pascal
	Area                  float64 // square metre
	Volume                float64 // cubic metre
	LinearDensity         float64 // kilogram per metre, plies included
	Density               float64 // kilogram per cubic metre
	Energy                float64 // joule
	Acceleration          float64 // metre per second squared
	TemperatureDifference float64 // kelvin
	Temperature           float64 // kelvin
	Fraction              float64 // one is the whole
	Ratio                 float64 // precursor over coiled, over 1
	Count                 float64 // a whole number
	Gauge                 float64 // of American wire: 0 is 0, 4/0 is −3
)

// Word is the place of a word in its field's list of words. Its SI value is
// that place.
type Word uint8

// List is the checked text of a list of masses. Its SI value is the number of
// pieces, NaN if it has none.
type List string

// RatioDoubt is the doubt of a ratio: an amount of it (0.2), or a share of it
// (10 %, Size 0.1). Its SI value is the size.
type RatioDoubt struct {
	Size    float64
	OfRatio bool
}

// Of is the absolute doubt of the ratio r.
func (d RatioDoubt) Of(r Ratio) float64 {
	if d.OfRatio {
		return d.Size * float64(r)
	}
	return d.Size
}

// SetUnit says what the size is of: a unit of % makes it a share of the ratio,
// any other, or none, an amount.
func (d *RatioDoubt) SetUnit(u *Unit) { d.OfRatio = u != nil && u.Symbol == "%" }

func (*Length) Kind() *Kind                { return KindLength }
func (*Mass) Kind() *Kind                  { return KindMass }
func (*Force) Kind() *Kind                 { return KindForce }
func (*Stress) Kind() *Kind                { return KindStress }
func (*Area) Kind() *Kind                  { return KindArea }
func (*Volume) Kind() *Kind                { return KindVolume }
func (*LinearDensity) Kind() *Kind         { return KindLinearDensity }
func (*Density) Kind() *Kind               { return KindDensity }
func (*Energy) Kind() *Kind                { return KindEnergy }
func (*Acceleration) Kind() *Kind          { return KindAcceleration }
func (*TemperatureDifference) Kind() *Kind { return KindTemperatureDifference }
func (*Temperature) Kind() *Kind           { return KindTemperature }
func (*Fraction) Kind() *Kind              { return KindFraction }
func (*Ratio) Kind() *Kind                 { return KindRatio }
func (*Count) Kind() *Kind                 { return KindCount }
func (*Gauge) Kind() *Kind                 { return KindGauge }
func (*Word) Kind() *Kind                  { return KindWord }
func (*List) Kind() *Kind                  { return KindList }
func (*RatioDoubt) Kind() *Kind            { return KindRatioDoubt }

func (v *Length) SI() float64                { return float64(*v) }
func (v *Mass) SI() float64                  { return float64(*v) }
func (v *Force) SI() float64                 { return float64(*v) }
func (v *Stress) SI() float64                { return float64(*v) }
func (v *Area) SI() float64                  { return float64(*v) }
func (v *Volume) SI() float64                { return float64(*v) }
func (v *LinearDensity) SI() float64         { return float64(*v) }
func (v *Density) SI() float64               { return float64(*v) }
func (v *Energy) SI() float64                { return float64(*v) }
func (v *Acceleration) SI() float64          { return float64(*v) }
func (v *TemperatureDifference) SI() float64 { return float64(*v) }
func (v *Temperature) SI() float64           { return float64(*v) }
func (v *Fraction) SI() float64              { return float64(*v) }
func (v *Ratio) SI() float64                 { return float64(*v) }
func (v *Count) SI() float64                 { return float64(*v) }
func (v *Gauge) SI() float64                 { return float64(*v) }
func (v *Word) SI() float64                  { return float64(*v) }
func (v *RatioDoubt) SI() float64            { return v.Size }

// SI is the number of pieces in the list, NaN if it is empty or unreadable.
func (v *List) SI() float64 {
	items, err := ParseList(KindList, string(*v), "")
	if err != nil {
		return NaN
	}
	n := 0
	for _, it := range items {
		n += it.Count
	}
	return float64(n)
}

func (v *Length) SetSI(x float64)                { *v = Length(x) }
func (v *Mass) SetSI(x float64)                  { *v = Mass(x) }
func (v *Force) SetSI(x float64)                 { *v = Force(x) }
func (v *Stress) SetSI(x float64)                { *v = Stress(x) }
func (v *Area) SetSI(x float64)                  { *v = Area(x) }
func (v *Volume) SetSI(x float64)                { *v = Volume(x) }
func (v *LinearDensity) SetSI(x float64)         { *v = LinearDensity(x) }
func (v *Density) SetSI(x float64)               { *v = Density(x) }
func (v *Energy) SetSI(x float64)                { *v = Energy(x) }
func (v *Acceleration) SetSI(x float64)          { *v = Acceleration(x) }
func (v *TemperatureDifference) SetSI(x float64) { *v = TemperatureDifference(x) }
func (v *Temperature) SetSI(x float64)           { *v = Temperature(x) }
func (v *Fraction) SetSI(x float64)              { *v = Fraction(x) }
func (v *Ratio) SetSI(x float64)                 { *v = Ratio(x) }
func (v *Count) SetSI(x float64)                 { *v = Count(x) }
func (v *Gauge) SetSI(x float64)                 { *v = Gauge(x) }
func (v *RatioDoubt) SetSI(x float64)            { v.Size = x }

// SetSI takes the place of a word, 0 to 255. A word is never unknown: anything
// else, NaN too, is the first word.
func (v *Word) SetSI(x float64) {
	if !(x >= 0 && x <= 255) {
		x = 0
	}
	*v = Word(x)
}

// SetSI empties the list if x is NaN. A number of pieces says nothing of their
// masses, so any other x leaves the list as it is.
func (v *List) SetSI(x float64) {
	if x != x {
		*v = ""
	}
}
