package show

import (
	"twistbench/calc/quantity"
	"twistbench/calc/timetable"
)

// mostHours is how many numbers there are along the scale at most.
const mostHours = 4

// What the drawing of the clock names.
const (
	clockScale = iota + firstPlace // units to the second
	clockRow                       // from row to row
	clockHigh                      // a row
	clockWork                      // the end of all but the rest (s)
	clockEnd                       // where that is, half a second later
	clockEvery                     // from number to number
	clockRoom                      // for each
	clockHold                      // the first hold, and which step it is
	clockHoldStep
	clockRests   // 0 where there is a rest
	clockRest    // how long it is (s)
	clockNumbers // along the scale: where each is, and what (s)
)

var clockShapes = []Shape{
	{"draw.clock.oven", "path", "warm", "", []place{timed, 0}, ""},
	{"draw.clock.outside", "path", "dim", "", []place{timed, 1 * u, hatch, 14 * u, clockEnd, clockEvery, 124 * u, 132 * u, 0}, ""},
	{"draw.clock.first", "text", "label", "start", []place{clockHold, 16 * u}, held},
	{"draw.clock.note", "text", "label", "end", []place{306 * u, 170 * u, 0, zero, clockRests}, needs + or + rests},
	{"draw.clock.number-1", "text", "label", "middle", []place{clockNumbers, 148 * u, clockRoom}, hour},
	{"draw.clock.number-2", "text", "label", "middle", []place{clockNumbers + 2, 148 * u, clockRoom}, hour},
	{"draw.clock.number-3", "text", "label", "middle", []place{clockNumbers + 4, 148 * u, clockRoom}, hour},
	{"draw.clock.number-4", "text", "label", "middle", []place{clockNumbers + 6, 148 * u, clockRoom}, hour},
}

var clockSaid = []Shape{
	{":title", "", "", "", nil, "draw.clock.title"},
	{":desc", "", "", "", nil, "draw.clock.desc"},
}

const clockLeft, clockTop = 14.0, 24.0

// drawClock draws a row for each load, all to one scale of time from the start to the end of the last cooling: the oven's steps as boxes, the
// holds hatched, what is done outside as a line, a tick where hands are needed. The rest, far longer than all else, is left to words.
func drawClock(s *sketch) {
	const right, foot = 306.0, 124.0
	c := &s.clock
	var n numbers
	n[lacks], n[clockHold], n[clockRests] = float64(c.unknown), quantity.NaN, quantity.NaN
	work := 0
	for i := range c.steps {
		st := &c.steps[i]
		switch st.Do {
		case timetable.DoRest:
			n[clockRests], n[clockRest] = only(st.Length > 0 && c.unknown == 0), float64(st.Length)
		case timetable.DoReady:
		default:
			work = max(work, st.End())
		}
	}
	k := (right - clockLeft) / float64(max(work, 1))
	for i := len(c.steps) - 1; i >= 0; i-- {
		if st := &c.steps[i]; st.Do == timetable.DoHold1 {
			n[clockHold], n[clockHoldStep] = clockLeft+float64(st.Start)*k, float64(i)
		}
	}
	row := (foot - clockTop) / float64(max(timetable.Loads(c.steps), 1))
	every := 900
	for work/every >= mostHours {
		every *= 2
	}
	apart := float64(every) * k
	n[clockScale], n[clockRow], n[clockHigh], n[clockWork] = k, row, min(row*0.6, 56), float64(work)
	n[clockEvery], n[clockRoom] = apart, apart-6
	n[clockEnd] = clockLeft + (float64(work)+0.5)*k + only(work > 0)
	for i := range mostHours {
		at := clockNumbers + 2*i
		n[at], n[at+1] = clockLeft+apart*float64(i)+only(i*every <= work && work > 0), float64(i*every)
	}
	s.n = n
}

// timed draws what is done in the oven, or what is done outside and where hands are needed.
func (s *sketch) timed() {
	k, h := s.n[clockScale], s.n[clockHigh]
	for i := range s.clock.steps {
		st := &s.clock.steps[i]
		x, y, w := clockLeft+float64(st.Start)*k, clockTop+float64(st.Load-1)*s.n[clockRow], float64(st.Length)*k
		switch {
		case s.a[0] != 0:
			if float64(st.Start) > s.n[clockWork] || st.Do == timetable.DoRest {
				continue
			}
			if st.Do.Hands() {
				s.stroke(x, y-4, x, y+h+4)
			}
			if !st.Do.Oven() {
				s.stroke(x, y+h/2, x+w, y+h/2)
			}
		case st.Do.Oven():
			s.box(x, y, w, h)
			for at := 8.0; st.Do.Holds() && at < w+h; at += 8 {
				s.stroke(x+max(at-h, 0), y+min(at, h), x+min(at, w), y+max(at-w, 0))
			}
		}
	}
}
