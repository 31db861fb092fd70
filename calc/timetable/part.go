package timetable

import "twistbench/calc/quantity"

// Part is a part of the making whose length is typed.
type Part uint8

// The parts, in the order of the work.
const (
	Preheat  Part = iota // of the empty oven
	Load                 // putting a load in
	Recovery             // until the oven is as hot as before the door was opened
	Hold1
	Cool1
	Reclamp // to the second gap
	Hold2
	Cool2
	Rest // after release, before testing

	NumParts
)

// Times are the lengths of the parts (s), NaN where one is unknown, and what they are for.
type Times struct {
	Part   [NumParts]quantity.Time
	Stages int // heat-sets, 1 or 2; the parts of the second count for nothing in a plan of one
	Loads  int // oven loads, 1 to MaxLoads; fewer count as one, of more there is no timetable
}

// MaxLoads is the greatest number of loads that a timetable has. More take days and nights at the oven, and are better planned as several
// bakes. A timetable that stopped at the last of them would say that all is ready when it is not, so more of them have none, and
// whoever asks for one says so (show does, with the words of the note on the number of loads).
const MaxLoads = 12

// longest is more than any part lasts (s): a year.
const longest = 366 * 86400

// seconds returns the length of a part in whole seconds; ok is false where it is unknown.
func (t *Times) seconds(p Part) (n int, ok bool) {
	x := float64(t.Part[p])
	if !(x >= 0 && x <= longest) {
		return 0, false
	}
	return int(x + 0.5), true
}
