package quantity

import (
	"math"
	"unicode/utf8"
)

// NaN is the value of every unknown quantity.
var NaN = math.NaN()

// Style is the way a kind's text is read and shown.
type Style uint8

// The styles.
const (
	StylePlain   Style = iota // a number with a unit
	StylePercent              // a bare number is percent, SI is the fraction
	StyleShare                // percent, but a bare number up to 1 is the fraction
	StyleRatio                // 4:1, 1:4, 0.25, 25 %, 4
	StyleCount                // a whole number
	StyleWord                 // one of a fixed list
	StyleList                 // masses, each with how many there are
	StyleDay                  // a date: 2026-11-25
	StyleClock                // a time of the day: 07:30
	StyleRows                 // rows of two numbers, as they are pasted
	StyleGauge                // a number of the American wire gauge: AWG 24, 24, 4/0, 0000
)

// Kind is a kind of quantity: how it is written, and in which units.
type Kind struct {
	Name  string // the key of the kind's words
	Style Style
	Units []Unit // the first is the default
	Plies bool   // titres: 470 dtex x2, 40/2 Ne
}

// The kinds.
var (
	KindLength                = &Kind{Name: "length", Units: lengthUnits}
	KindMass                  = &Kind{Name: "mass", Units: massUnits}
	KindForce                 = &Kind{Name: "force", Units: forceUnits}
	KindStress                = &Kind{Name: "stress", Units: stressUnits}
	KindArea                  = &Kind{Name: "area", Units: areaUnits}
	KindVolume                = &Kind{Name: "volume", Units: volumeUnits}
	KindLinearDensity         = &Kind{Name: "linear-density", Units: linearDensityUnits, Plies: true}
	KindDensity               = &Kind{Name: "density", Units: densityUnits}
	KindEnergy                = &Kind{Name: "energy", Units: energyUnits}
	KindAcceleration          = &Kind{Name: "acceleration", Units: accelerationUnits}
	KindTemperatureDifference = &Kind{Name: "temperature-difference", Units: temperatureDifferenceUnits}
	KindTemperature           = &Kind{Name: "temperature", Units: temperatureUnits}
	KindFraction              = &Kind{Name: "fraction", Style: StylePercent, Units: fractionUnits}
	KindRatio                 = &Kind{Name: "ratio", Style: StyleRatio}
	KindCount                 = &Kind{Name: "count", Style: StyleCount}
	KindGauge                 = &Kind{Name: "gauge", Style: StyleGauge, Units: gaugeUnits}
	KindWord                  = &Kind{Name: "word", Style: StyleWord}
	KindList                  = &Kind{Name: "list", Style: StyleList, Units: massUnits}
	KindRatioDoubt            = &Kind{Name: "ratio-doubt", Units: ratioDoubtUnits}
)

// Default is the kind's first unit, nil if the kind has none.
func (k *Kind) Default() *Unit {
	if len(k.Units) == 0 {
		return nil
	}
	return &k.Units[0]
}

// Named finds the unit that a heading without digits ends with, as those of "min", "time in min", "t/min" and "T (°C)"; nil if there is none.
func (k *Kind) Named(heading string) *Unit {
	heading = Trim(heading)
	if n := len(heading) - 1; n > 0 && (heading[n] == ')' || heading[n] == ']') {
		heading = Trim(heading[:n])
	}
	var found *Unit
	inWord := false
	for i, r := range heading {
		if isDigit(r) {
			return nil
		}
		if !inWord && !isSpace(r) && found == nil {
			found = k.Unit(heading[i:])
		}
		inWord = isLetter(r) || r >= utf8.RuneSelf
	}
	return found
}

// Unit finds a unit by its symbol or one of its typed forms, nil if there is
// none.
func (k *Kind) Unit(symbol string) *Unit {
	for i := range k.Units {
		if k.Units[i].Symbol == symbol {
			return &k.Units[i]
		}
	}
	if symbol == "" {
		return nil
	}
	if u, end := k.match(symbol, 0); end == len(symbol) {
		return u
	}
	return nil
}
