// Package quantity says what a number means: kinds, units, reading what a
// person typed, and writing it out again.
//
// Inside, every quantity is a float64 in SI units with a type of its own, so a
// mass can't be passed for a length; an unknown one is NaN. Units are data
// (unit.go), one reader serves them all (parse.go, number.go), and lists and
// ratios have a file each. The package holds no sentence for people: an error
// is one of the sentinels, with the part of the text that it is about.
package quantity
