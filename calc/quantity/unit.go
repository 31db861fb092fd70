package quantity

import (
	"math"
	"unicode/utf8"
)

// Unit is a unit of a kind.
type Unit struct {
	Symbol  string   // as it is shown
	Factor  float64  // SI per unit; for Inverse: the SI value times the number
	Aliases []string // typed forms besides the symbol
	Inverse bool     // counts: SI = Factor / number
	Offset  float64  // temperatures: SI = (number + Offset) × Factor
	About   bool     // a commercial label, rounded by the trade
	US      string   // symbol of the unit shown instead when US units are on, "" for the same
}

// ToSI is the SI value of a number of the unit.
//
//go:noinline
func (u *Unit) ToSI(number float64) float64 {
	if u == nil {
		return number
	}
	if u.Inverse {
		return u.Factor / number
	}
	return scale(number+u.Offset, u.Factor)
}

// FromSI is the number of the unit that an SI value makes.
//
//go:noinline
func (u *Unit) FromSI(si float64) float64 {
	if u == nil {
		return si
	}
	if u.Inverse {
		return u.Factor / si
	}
	return unscale(si, u.Factor) - u.Offset
}

// scale is x times f. A factor such as 0.001 has no exact float64 but its
// reciprocal has: dividing by that is the nearer answer.
func scale(x, f float64) float64 {
	if f < 1 {
		if n := math.Round(1 / f); 1/n == f {
			return x / n
		}
	}
	return x * f
}

// unscale is x over f, the other way round.
func unscale(x, f float64) float64 {
	if f < 1 {
		if n := math.Round(1 / f); 1/n == f {
			return x * n
		}
	}
	return x / f
}

// Exact by definition: the yard and pound agreement of 1959 and the standard
// acceleration of free fall (CGPM 1901).
const (
	inch    = 0.0254     // m
	foot    = 12 * inch  // m
	yard    = 3 * foot   // m
	pound   = 0.45359237 // kg
	ounce   = pound / 16 // kg
	gravity = 9.80665    // m/s²
)

// What one yarn of count 1 weighs, kg/m.
const (
	cotton = pound / (840 * yard) // a pound of 840 yard hanks
	metric = 1e-3                 // a kilogram of kilometres
)

var lengthUnits = []Unit{
	{Symbol: "mm", Factor: 1e-3, US: "in", Aliases: []string{"millimetre", "millimetres", "millimeter", "millimeters"}},
	{Symbol: "µm", Factor: 1e-6, Aliases: []string{"um", "micron", "microns", "micrometre", "micrometres", "micrometer", "micrometers"}},
	{Symbol: "cm", Factor: 1e-2, Aliases: []string{"centimetre", "centimetres", "centimeter", "centimeters"}},
	{Symbol: "m", Factor: 1, US: "ft", Aliases: []string{"metre", "metres", "meter", "meters"}},
	{Symbol: "in", Factor: inch, Aliases: []string{"inch", "inches", "in.", `"`, "″", "”", "''", "′′", "’’"}},
	{Symbol: "thou", Factor: inch / 1000, Aliases: []string{"mil", "mils", "thous"}},
	{Symbol: "ft", Factor: foot, Aliases: []string{"foot", "feet", "ft.", "'", "′", "’"}},
	{Symbol: "yd", Factor: yard, Aliases: []string{"yard", "yards", "yds", "yd."}},
}

var massUnits = []Unit{
	{Symbol: "g", Factor: 1e-3, US: "oz", Aliases: []string{"gram", "grams", "gramme", "grammes"}},
	{Symbol: "kg", Factor: 1, US: "lb", Aliases: []string{"kilo", "kilos", "kilogram", "kilograms", "kilogramme", "kilogrammes"}},
	{Symbol: "mg", Factor: 1e-6, Aliases: []string{"milligram", "milligrams", "milligramme", "milligrammes"}},
	{Symbol: "lb", Factor: pound, Aliases: []string{"lbs", "lb.", "lbs.", "pound", "pounds"}},
	{Symbol: "oz", Factor: ounce, Aliases: []string{"oz.", "ounce", "ounces"}},
}

var forceUnits = []Unit{
	{Symbol: "N", Factor: 1, US: "lbf", Aliases: []string{"newton", "newtons"}},
	{Symbol: "mN", Factor: 1e-3, Aliases: []string{"millinewton", "millinewtons"}},
	{Symbol: "cN", Factor: 1e-2, Aliases: []string{"centinewton", "centinewtons"}},
	{Symbol: "gf", Factor: gravity / 1000, Aliases: []string{"gram-force", "grams-force", "g force"}},
	{Symbol: "kgf", Factor: gravity, Aliases: []string{"kilogram-force", "kilograms-force", "kg force"}},
	{Symbol: "lbf", Factor: pound * gravity, Aliases: []string{"pound-force", "pounds-force", "lb force"}},
	{Symbol: "ozf", Factor: ounce * gravity, Aliases: []string{"ounce-force", "ounces-force", "oz force"}},
}

var stressUnits = []Unit{
	{Symbol: "MPa", Factor: 1e6, US: "psi", Aliases: []string{"megapascal", "megapascals"}},
	{Symbol: "N/mm²", Factor: 1e6, Aliases: []string{"N mm-2"}},
	{Symbol: "kPa", Factor: 1e3, Aliases: []string{"kilopascal", "kilopascals"}},
	{Symbol: "GPa", Factor: 1e9, Aliases: []string{"gigapascal", "gigapascals"}},
	{Symbol: "Pa", Factor: 1, Aliases: []string{"pascal", "pascals", "N/m²", "N m-2"}},
	{Symbol: "psi", Factor: pound * gravity / (inch * inch), Aliases: []string{"lbf/in²"}},
	{Symbol: "ksi", Factor: 1000 * pound * gravity / (inch * inch)},
}

var areaUnits = []Unit{
	{Symbol: "mm²", Factor: 1e-6, US: "in²", Aliases: []string{"sq mm"}},
	{Symbol: "µm²", Factor: 1e-12, Aliases: []string{"um²", "sq µm"}},
	{Symbol: "cm²", Factor: 1e-4, Aliases: []string{"sq cm"}},
	{Symbol: "m²", Factor: 1, Aliases: []string{"sq m"}},
	{Symbol: "in²", Factor: inch * inch, Aliases: []string{"sq in"}},
}

var volumeUnits = []Unit{
	{Symbol: "ml", Factor: 1e-6, US: "fl oz", Aliases: []string{"mL", "millilitre", "millilitres", "milliliter", "milliliters"}},
	{Symbol: "l", Factor: 1e-3, Aliases: []string{"L", "litre", "litres", "liter", "liters"}},
	{Symbol: "cm³", Factor: 1e-6, Aliases: []string{"cc", "ccm"}},
	{Symbol: "m³", Factor: 1},
	{Symbol: "fl oz", Factor: 231 * inch * inch * inch / 128, Aliases: []string{"floz", "fl. oz", "fl. oz.", "fluid ounce", "fluid ounces"}},
}

var linearDensityUnits = []Unit{
	{Symbol: "tex", Factor: 1e-6},
	{Symbol: "dtex", Factor: 1e-7, Aliases: []string{"decitex"}},
	{Symbol: "den", Factor: 1e-6 / 9, Aliases: []string{"denier", "d", "D"}},
	{Symbol: "g/m", Factor: 1e-3, Aliases: []string{"g m-1"}},
	{Symbol: "mg/m", Factor: 1e-6, Aliases: []string{"mg m-1"}},
	{Symbol: "g/km", Factor: 1e-6, Aliases: []string{"g km-1"}},
	{Symbol: "ktex", Factor: 1e-3, Aliases: []string{"kilotex"}},
	{Symbol: "Ne", Factor: cotton, Inverse: true, Aliases: []string{"NeC", "cotton count"}},
	{Symbol: "Nm", Factor: metric, Inverse: true, Aliases: []string{"metric count"}},
	{Symbol: "tkt", Factor: 3 * metric, Inverse: true, About: true, Aliases: []string{"ticket", "metric tkt", "metric ticket"}},
	{Symbol: "cotton tkt", Factor: 3 * cotton, Inverse: true, About: true, Aliases: []string{"cotton ticket"}},
}

var densityUnits = []Unit{
	{Symbol: "kg/m³", Factor: 1, US: "lb/ft³", Aliases: []string{"kg m-3", "kg·m-3", "g/l", "g/L"}},
	{Symbol: "g/cm³", Factor: 1e3, Aliases: []string{"g cm-3", "g·cm-3", "g/ml", "g/mL", "g/cc", "kg/l", "kg/L"}},
	{Symbol: "lb/ft³", Factor: pound / (foot * foot * foot), Aliases: []string{"lb ft-3", "lbs/ft³", "pcf"}},
}

var energyUnits = []Unit{
	{Symbol: "J", Factor: 1, US: "ft·lbf", Aliases: []string{"joule", "joules", "N m", "N·m"}},
	{Symbol: "mJ", Factor: 1e-3, Aliases: []string{"millijoule", "millijoules"}},
	{Symbol: "Wh", Factor: 3600, Aliases: []string{"W h", "watt-hour", "watt-hours"}},
	{Symbol: "ft·lbf", Factor: foot * pound * gravity, Aliases: []string{"ft lbf", "ft-lbf", "ft*lbf", "ftlbf", "ft lb", "ft·lb", "ft-lb", "ft*lb", "foot-pound", "foot-pounds"}},
}

var accelerationUnits = []Unit{
	{Symbol: "m/s²", Factor: 1, Aliases: []string{"m s-2", "m·s-2", "m/s/s"}},
	{Symbol: "ft/s²", Factor: foot, Aliases: []string{"ft s-2", "ft·s-2", "ft/s/s"}},
}

// A difference takes no offset.
var temperatureDifferenceUnits = []Unit{
	{Symbol: "K", Factor: 1, US: "°F", Aliases: []string{"kelvin", "kelvins"}},
	{Symbol: "°C", Factor: 1, US: "°F", Aliases: celsius},
	{Symbol: "°F", Factor: 5.0 / 9, Aliases: fahrenheit},
}

// The ice point of the Celsius scale is 273.15 K by definition; a degree Fahrenheit is 5/9 of a kelvin, and 32 °F is 0 °C.
var temperatureUnits = []Unit{
	{Symbol: "°C", Factor: 1, Offset: 273.15, US: "°F", Aliases: celsius},
	{Symbol: "°F", Factor: 5.0 / 9, Offset: 459.67, Aliases: fahrenheit},
	{Symbol: "K", Factor: 1, US: "°F", Aliases: []string{"kelvin", "kelvins"}},
}

var (
	celsius    = []string{"C", "deg C", "degC", "° C"}
	fahrenheit = []string{"F", "deg F", "degF", "° F"}
)

var fractionUnits = []Unit{
	{Symbol: "%", Factor: 1e-2, Aliases: []string{"percent", "per cent", "pct"}},
}

var ratioDoubtUnits = []Unit{
	{Symbol: "", Factor: 1},
	{Symbol: "%", Factor: 1e-2, Aliases: []string{"percent", "per cent", "pct"}},
}

// match finds the longest unit written at s[i:] and where it ends; nil and i
// if there is none. The letters as typed are tried first, then without regard
// to case, if that leaves one unit.
func (k *Kind) match(s string, i int) (*Unit, int) {
	first := byte(0) // letter of what is written, where it tells
	if i < len(s) && s[i] < utf8.RuneSelf && s[i] != '^' {
		first = s[i] | 0x20
	}
	for _, fold := range [...]bool{false, true} {
		var found *Unit
		end, doubt := i, false
		for n := range k.Units {
			u := &k.Units[n]
			name := u.Symbol
			for a := -1; ; name = u.Aliases[a] {
				if name != "" && (first == 0 || name[0]|0x20 == first || name[0] >= utf8.RuneSelf) { // most names end here
					e := matchName(s, i, name, fold, a < 0)
					switch {
					case e <= i || e < end || !edge(s, e):
					case e > end:
						found, end, doubt = u, e, false
					case found != u:
						doubt = true
					}
				}
				if a++; a == len(u.Aliases) {
					break
				}
			}
		}
		if found != nil && !doubt {
			return found, end
		}
	}
	return nil, i
}

// matchName is where the name ends if it is written at s[i:], else -1. Marks
// of the pen don't matter (see letter), a space matches any spaces. A symbol
// whose leading m alone differs in case is another size, not another
// spelling: MN is not mN.
func matchName(s string, i int, name string, fold, symbol bool) int {
	differ, lead, second := 0, false, rune(0)
	for j := 0; j < len(name); {
		want, n := letter(name[j:])
		if want == ' ' {
			e := skipSpace(s, i)
			if e == i {
				return -1
			}
			i, j = e, j+n
			continue
		}
		got, m := letter(s[i:])
		if got != want {
			if !fold || got > 'z' || want > 'z' || lower(got) != lower(want) {
				return -1
			}
			differ++
			lead = lead || j == 0 && lower(want) == 'm'
		} else if differ == 1 && second == 0 {
			second = want
		}
		i, j = i+m, j+n
	}
	if symbol && lead && differ == 1 && isLetter(second) {
		return -1
	}
	return i
}

// letter is the first rune of s in the one form that units are compared in,
// and its width: ² is 2, ^ is left out, both micro signs are one.
func letter(s string) (rune, int) {
	skipped := 0
	if len(s) > 1 && s[0] == '^' {
		s, skipped = s[1:], 1
	}
	r, n := utf8.DecodeRuneInString(s)
	switch r {
	case '²':
		r = '2'
	case '³':
		r = '3'
	case '¹':
		r = '1'
	case '⁻', minus:
		r = '-'
	case 'μ':
		r = 'µ'
	case '⋅', '∙', '•':
		r = '·'
	case 'º', '˚':
		r = '°'
	case utf8.RuneError:
		if n < 2 {
			r = -1
		}
	}
	return r, n + skipped
}

// edge says whether a unit may end before s[e:].
func edge(s string, e int) bool {
	r, n := utf8.DecodeRuneInString(s[e:])
	switch {
	case n == 0:
		return true
	case isSpace(r), isDigit(r):
		return true
	case r == 'x', r == 'X':
		return nextDigit(s, skipSpace(s, e+n))
	case r == 'f':
		return nextDigit(s, e+n)
	case isTimes(r):
		return true
	case isLetter(r), r == '^':
		return false
	case r >= utf8.RuneSelf:
		_, w := vulgar(s, e)
		return w > 0
	case r == '/', r == '-':
		a, _ := utf8.DecodeRuneInString(s[e+n:])
		return !isLetter(a) && !(r == '-' && isDigit(a))
	}
	return true
}

// Trim is text without the spaces around it, also those that typesetting puts
// there.
func Trim(text string) string {
	text = text[skipSpace(text, 0):]
	end := 0 // of what is no space
	for i := 0; i < len(text); {
		r, n := utf8.DecodeRuneInString(text[i:])
		i += n
		if r > ' ' && r < utf8.RuneSelf || !isSpace(r) {
			end = i
		}
	}
	return text[:end]
}

func skipSpace(s string, i int) int {
	for i < len(s) {
		r, n := utf8.DecodeRuneInString(s[i:])
		if r > ' ' && r < utf8.RuneSelf || !isSpace(r) {
			break
		}
		i += n
	}
	return i
}

//go:noinline
func nextDigit(s string, i int) bool { return i < len(s) && isDigit(rune(s[i])) }

//go:noinline
func lower(r rune) rune {
	if r >= 'A' && r <= 'Z' {
		return r + 'a' - 'A'
	}
	return r
}

func isDigit(r rune) bool { return r >= '0' && r <= '9' }

//go:noinline
func isLetter(r rune) bool { return lower(r) >= 'a' && lower(r) <= 'z' }

func isTimes(r rune) bool { return r == 'x' || r == 'X' || r == '×' || r == '*' }

// isSpace: the common spaces, with the ones that typesetting puts into numbers.
//
//go:noinline
func isSpace(r rune) bool {
	switch r {
	case ' ', '\t', '\n', '\r', '\v', '\f', '\u00a0', '\u2007', '\u2009', '\u200a', '\u202f':
		return true
	}
	return false
}

const minus = '\u2212'
