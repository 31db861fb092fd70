// Package timetable says when each thing of the making happens: the steps in the oven and beside it, one after the other; their clock times,
// also across midnight and a change of the clocks; the calendar file that carries them to a phone; and a timetable that was started, which
// runs late and is caught up with.
//
// It has no clock. An Instant is handed in by whoever has one, with a Zone for the place, and everything follows from these two. Lengths are
// whole seconds. The package holds no sentence: a step has a key, and a part of the making that is unknown is named.
package timetable
