package show

import (
	"math"

	"twistbench/calc"
	"twistbench/calc/quantity"
	"twistbench/calc/timetable"
)

// A drawing is a table of shapes, and a function that works out the numbers which the table names: where things are, in units of the drawing.
// What is not known is not drawn: a step of a path or a text that names a number which is not known is left out.

// place is a number in a table of shapes: one of the sketch's, by its index, and what is added to it, in whole tenths of a unit. Where end is
// such an index: end, end+14*u, end-2.6*u. Number 0 is 0, so that 14*u is just 14.
type place = int32

// u is a unit of the drawing in a place.
const u = 10 * mostPlaces

// mostPlaces is how many numbers a drawing may have.
const mostPlaces = 1 << placeBits

const placeBits = 6

// numbers are what the places of a drawing name.
type numbers [mostPlaces]float64

// The numbers that every drawing has; its own are from firstPlace on.
const (
	zero   = iota
	lacks  // what must be given before there is a drawing, a calc.ID; 0 where there is one
	beside // how much room is left at the right of the text before
	firstPlace
)

// at returns what number a place is.
func (s *sketch) at(p place) float64 { return s.n[p&(mostPlaces-1)] + float64(p>>placeBits)/10 }

// The steps of paths. Behind each stand its places.
const (
	move    = iota // x, y
	line           // x, y: from where the pen is
	stroke         // x, y, to x, to y
	bend           // two control points and an end, each x, y: a cubic curve from where the pen is
	circle         // x, y, radius
	disc           // x, y, radius
	box            // x, y, width, height
	bar            // x, end, y: a dimension along x
	ends           // x, end, y, half: its ticks alone, so high above and below y
	arrow          // x, end, y: a move along x
	hatch          // x, end, apart, y, to y, lean: strokes that end at x and so on, each beginning so far to the left of its end
	coil           // x, y, length, radius, turns, sides
	slants         // x, top, foot, radius, pitch
	when           // x: what follows is left out unless x is 0
	instead        // what follows is drawn instead of what was left out
	upright        // in what follows x runs down the page and y across it
	level          // and here no longer
	tube           // part: of the sketch's coils
	ruler          // y: the sketch's marks
	jaw            // x, y: of the frame, from above, with its screw
	holes          // y
	strands        // which: of the fibre, 0, or of the companion yarn, 1
	cuts           // the hatched faces of both
	timed          // where: what is done in the oven, 0, or outside, 1
	bank           // x, end, y, apart, in a row, rows: muscles between two rails
	through        // which: the points of one of the sketch's graphs
	plot           // which, x: a line through the points of one of the sketch's plots; x is 0
	numSteps
)

// places is how many places stand behind each step.
var places = [32]uint8{
	move: 2, line: 2, stroke: 4, bend: 6, circle: 3, disc: 3, box: 4, bar: 3, ends: 4, arrow: 3, hatch: 6, coil: 6, slants: 5, when: 1, tube: 1, strands: 1, ruler: 1, jaw: 2, holes: 1, timed: 1, bank: 6, through: 1, plot: 2,
}

// take reads n places into a, 0 where there are not so many, and returns the others. Their sum says whether all of them are known.
//
//go:noinline
func (s *sketch) take(at []place, n int) []place {
	s.sum = 0
	for i := range n {
		x := 0.0
		if len(at) > 0 {
			x = s.at(at[0])
			at = at[1:]
		}
		s.a[i&7] = x
		s.sum += x
	}
	return at
}

// path appends the slots of a path.
func (s *sketch) path(p *Shape) {
	s.open(p.ID, "", "d")
	s.str(p.says)
	s.x, s.y, s.upright, s.width = 0, 0, false, -1
	a, at, skip := &s.a, p.at, false
	for len(at) > 0 {
		step := at[0]
		at = s.take(at[1:], int(places[step&31]))
		if step == when && s.sum != 0 {
			skip = true
		} else if step == instead {
			skip = !skip
		}
		if skip || !known(s.sum) {
			continue
		}
		switch step {
		case move:
			s.to('m', a[0], a[1])
		case line:
			s.to('l', a[0], a[1])
		case stroke:
			s.stroke(a[0], a[1], a[2], a[3])
		case bend:
			s.curve(a[0], a[1], a[2], a[3], a[4], a[5])
		case circle:
			s.circle(a[0], a[1], a[2])
		case disc: // it reads as filled, with strokes alone
			for ; a[2] > 0.3; a[2] -= 1.2 {
				s.circle(a[0], a[1], a[2])
			}
		case box:
			s.box(a[0], a[1], a[2], a[3])
		case bar:
			s.stroke(a[0], a[2]-3, a[0], a[2]+3)
			s.stroke(a[0], a[2], a[1], a[2])
			s.stroke(a[1], a[2]-3, a[1], a[2]+3)
		case ends:
			s.stroke(a[0], a[2]-a[3], a[0], a[2]+a[3])
			s.stroke(a[1], a[2]-a[3], a[1], a[2]+a[3])
		case arrow:
			head := max(-5, min(5, a[1]-a[0]))
			s.stroke(a[0], a[2]-3, a[0], a[2]+3)
			s.stroke(a[0], a[2], a[1], a[2])
			s.stroke(a[1]-head, a[2]-math.Abs(head)*0.6, a[1], a[2])
			s.to('l', a[1]-head, a[2]+math.Abs(head)*0.6)
		case hatch:
			for ; a[0] < a[1]; a[0] += a[2] {
				s.stroke(a[0]-a[5], a[3], a[0], a[4])
			}
		case coil:
			s.coil()
		case slants:
			s.slants()
		case tube:
			s.tube()
		case ruler:
			s.ruler()
		case jaw:
			s.box(a[0], a[1], 22, 28)
			s.circle(a[0]+11, a[1]+14, 4)
			s.stroke(a[0]+8.5, a[1]+16.5, a[0]+13.5, a[1]+11.5)
		case holes:
			s.holes()
		case strands:
			s.strands()
		case cuts:
			s.cuts()
		case timed:
			s.timed()
		case bank:
			s.bank()
		case through:
			s.through()
		case plot:
			s.plot()
		case upright, level:
			s.upright = step == upright
		}
	}
	s.shut()
	if s.width >= 0 {
		s.attribute(p.ID, "stroke-width", s.width)
	}
}

// plotted is the points of a curve; n of them.
type plotted struct {
	n    int
	x, y [61]float64
}

// plot draws a line through the points of a plot.
func (s *sketch) plot() {
	p := &s.plots[int(s.a[0])&1]
	for i := range p.n {
		if i == 0 {
			s.to('m', p.x[0], p.y[0])
		} else {
			s.to('l', p.x[i], p.y[i])
		}
	}
}

// Between keys: one or the other of a text, and more of a text equivalent.
const (
	or   = "|"
	and  = " "
	semi = ";"
)

// upwards is the room of a text that runs up the page instead of along it.
const upwards = -260 * u

// What may stand in the place of a key, besides a sentence. Some say the number that stands behind the one that is the text's x.
const (
	needs  = "?" // what must be given before a drawing can be made: number lacks
	signed = "+" // before the key of a number: the number with its sign
	number = "*" // the number of that calc.ID
	along  = "#" // the number, along the sketch's marks
	scaled = "=" // the number (m)
	hour   = "@" // the number (s) as a moment
	held   = ">" // what is done in the step of that number
	rests  = "<" // how long the rest is
)

// says appends the words of a shape's keys, each where its place is 0 or it has none; the places stand behind so many others.
func (s *sketch) says(p *Shape, when int) {
	from, keys, between := len(s.b), p.says, and[0]
	for keys != "" {
		n := 0
		for n < len(keys) && keys[n] != or[0] && keys[n] != and[0] && keys[n] != semi[0] {
			n++
		}
		key := keys[:n]
		if when >= len(p.at) || s.at(p.at[when]) == 0 {
			if len(s.b) > from && between != or[0] && key != "." {
				if between == semi[0] {
					s.char(between)
				}
				s.char(' ')
			}
			s.say(key)
		}
		when++
		keys = keys[n:]
		if keys != "" {
			between, keys = keys[0], keys[1:]
		}
	}
}

// say appends the words of a key, or what stands in the place of one. In words {limit} is the number behind the text's x, and {other} the next.
func (s *sketch) say(key string) {
	x := s.n[s.text&(mostPlaces-1)]
	switch key[0] {
	case 'd': // draw.
		s.about(key, calc.HeatDial, about{limit: x, high: s.n[(s.text+1)&(mostPlaces-1)]})
	case needs[0]:
		s.needing(calc.ID(s.n[lacks]))
	case signed[0]:
		id := calc.Find(key[1:])
		by, unit := s.st.SI(id), s.shownIn(id)
		switch {
		case by < 0:
			s.str("−")
		case by > 0:
			s.char('+')
		}
		s.digits(forgive(math.Abs(by)), unit, id.Digits())
		s.unit(unit)
	case number[0]:
		s.number(calc.ID(x))
	case along[0]:
		s.decimals(x, s.marks.decimals)
	case scaled[0]:
		unit := s.shownIn(calc.FibreDiameter)
		s.digits(x, unit, 1)
		s.unit(unit)
	case hour[0]:
		s.moment(int(x))
	case held[0]:
		s.doing(&s.clock.steps[int(x)])
	case rests[0]:
		s.wordsOf("do.", timetable.DoRest.Key())
		s.str(": ")
		s.hm(int(s.n[clockRest]))
		s.str(" →")
	default:
		s.sentence(key, calc.None, about{})
	}
}

// label appends the slots of a text, moved so that it stays in the drawing. It is left out where it needs more than the room there is.
func (s *sketch) label(p *Shape) {
	s.writer.text(p.ID, "")
	s.text = int(p.at[0]) + 1
	from := len(s.b)
	s.take(p.at, 3)
	x, y, room := s.a[0], s.a[1], s.a[2]
	if known(s.sum) {
		s.says(p, 3)
	}
	w := wide(s.b[from:])
	most, turned := s.w-2*margin, room == upwards/u
	if turned {
		most = -room
	} else if room != 0 && room < most {
		most = room
	}
	if w > most {
		s.b, w = s.b[:from], 0
	}
	s.shut()
	s.n[beside] = s.w - x - w
	if !turned {
		anchor := p.Anchor[0]
		if w == 0 {
			x, y = 0, 0 // a place may be as unknown as the words
		}
		half := w
		if anchor == 'm' {
			half = w / 2
		}
		if end := s.w - margin - half; anchor != 'e' && x > end {
			x = end
		}
		if anchor != 's' && x < margin+half {
			x = margin + half
		}
	}
	s.attribute(p.ID, "x", x)
	s.attribute(p.ID, "y", y)
	if turned {
		s.put(p.ID, "", "transform", "rotate(-90 25.5 188)")
	}
}

const margin = 3

//go:noinline
func (s *sketch) attribute(id, name string, x float64) {
	s.open(id, "", name)
	s.tenths(tenth(x))
	s.shut()
}

// where returns 0 where a number is 0 or above, and one that is not known where it is below 0 or not known.
func where(x float64) float64 { return 0 * math.Sqrt(x) }

// only returns a number that is 0 where a condition holds and not known where it does not.
//
//go:noinline
func only(condition bool) float64 {
	if condition {
		return 0
	}
	return quantity.NaN
}
