package show

import (
	"math"

	"twistbench/calc/timetable"
)

const (
	clockOven = iota
	clockOutside
	clockHold
	clockNote
	clockNumbers
)

// mostHours is how many numbers there are along the scale at most.
const mostHours = 4

var clockShapes = [...]Shape{
	clockOven:        {"draw.clock.oven", "path", "warm", "", nil, ""},
	clockOutside:     {"draw.clock.outside", "path", "dim", "", nil, ""},
	clockHold:        {"draw.clock.first", "text", "label", "start", nil, ""},
	clockNote:        {"draw.clock.note", "text", "label", "end", nil, ""},
	clockNumbers:     {"draw.clock.number-1", "text", "label", "middle", nil, ""},
	clockNumbers + 1: {"draw.clock.number-2", "text", "label", "middle", nil, ""},
	clockNumbers + 2: {"draw.clock.number-3", "text", "label", "middle", nil, ""},
	clockNumbers + 3: {"draw.clock.number-4", "text", "label", "middle", nil, ""},
}

// drawClock draws a row for each load, all to one scale of time from the start to the end of the last cooling: the oven's steps as boxes, the
// holds hatched, what is done outside as a line, a tick where hands are needed. The rest, far longer than all else, is left to words.
func drawClock(s *sketch) {
	const left, right, top, foot = 14.0, 306.0, 24.0, 124.0
	c := &s.clock
	rest, work, hold := 0, 0, -1
	for i := range c.steps {
		st := &c.steps[i]
		switch st.Do {
		case timetable.DoRest:
			rest = st.Length
		case timetable.DoHold1:
			if hold < 0 {
				hold = i
			}
		case timetable.DoReady:
		default:
			work = max(work, st.End())
		}
	}
	k := (right - left) / float64(max(work, 1)) // per second
	row := (foot - top) / float64(max(timetable.Loads(c.steps), 1))
	h := math.Min(row*0.6, 56)
	s.path(clockOven)
	for i := range c.steps {
		st := &c.steps[i]
		x, y, w := left+float64(st.Start)*k, top+float64(st.Load-1)*row, float64(st.Length)*k
		if st.Do.Oven() {
			s.box(x, y, w, h)
		}
		if st.Do.Holds() {
			for at := 8.0; at < w+h; at += 8 {
				s.stroke(x+math.Max(at-h, 0), y+math.Min(at, h), x+math.Min(at, w), y+math.Max(at-w, 0))
			}
		}
	}
	s.end()
	s.path(clockOutside)
	for i := range c.steps {
		st := &c.steps[i]
		if st.Start > work || st.Do == timetable.DoRest {
			continue
		}
		x, y := left+float64(st.Start)*k, top+float64(st.Load-1)*row
		if st.Do.Hands() {
			s.stroke(x, y-4, x, y+h+4)
		}
		if !st.Do.Oven() {
			s.stroke(x, y+h/2, x+float64(st.Length)*k, y+h/2)
		}
	}
	every := 900
	for work/every >= mostHours {
		every *= 2
	}
	for at := 0; at <= work && work > 0; at += every {
		x := left + float64(at)*k
		s.stroke(x, foot, x, foot+8)
	}
	s.end()

	from := s.text(clockHold)
	x := left
	if hold >= 0 {
		st := &c.steps[hold]
		x += float64(st.Start) * k
		s.doing(st)
	}
	s.place(clockHold, from, x, top-8, s.w)
	from = s.text(clockNote)
	switch {
	case c.unknown != 0:
		s.needing(c.unknown)
	case rest > 0:
		s.wordsOf("do.", timetable.DoRest.Key())
		s.str(": ")
		s.hm(rest)
		s.str(" →")
	}
	s.place(clockNote, from, right, foot+46, s.w)
	for i := range mostHours {
		from := s.text(clockNumbers + i)
		if at := i * every; at <= work && work > 0 {
			s.moment(at)
		}
		s.place(clockNumbers+i, from, left+float64(i*every)*k, foot+24, float64(every)*k-6)
	}
	s.sayOld("draw.clock:title", "draw.clock.title")
	s.sayOld("draw.clock:desc", "draw.clock.desc")
}
