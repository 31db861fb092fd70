package show

import (
	"math"

	"twistbench/calc"
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
	zero  = iota
	lacks // what must be given before there is a drawing, a calc.ID; 0 where there is one
	firstPlace
)

// at returns what number a place is.
//
//go:noinline
func (s *sketch) at(p place) float64 { return s.n[p&(mostPlaces-1)] + float64(p>>placeBits)/10 }

// The steps of paths. Behind each stand its places.
const (
	move    = iota // x, y
	line           // x, y: from where the pen is
	stroke         // x, y, to x, to y
	circle         // x, y, radius
	disc           // x, y, radius
	box            // x, y, width, height
	bar            // x, end, y: a dimension along x
	arrow          // x, end, y: a move along x
	coil           // x, y, length, radius, turns, sides
	when           // x: all that follows is left out unless x is 0
	upright        // in what follows x runs down the page and y across it
	level          // and here no longer
	numSteps
)

// places is how many places stand behind each step.
var places = [numSteps]uint8{move: 2, line: 2, stroke: 4, circle: 3, disc: 3, box: 4, bar: 3, arrow: 3, coil: 6, when: 1}

// steps draws the steps of a path.
func (s *sketch) steps(at []place) {
	var x [6]float64
	for len(at) > 0 {
		step := at[0]
		n := int(places[step])
		sum := 0.0
		for i := range n {
			x[i] = s.at(at[1+i])
			sum += x[i]
		}
		at = at[1+n:]
		if sum-sum != 0 { // one of them is not known
			if step == when {
				return
			}
			continue
		}
		switch step {
		case move:
			s.move(x[0], x[1])
		case line:
			s.line(x[0], x[1])
		case stroke:
			s.stroke(x[0], x[1], x[2], x[3])
		case circle:
			s.circle(x[0], x[1], x[2])
		case disc:
			s.disc(x[0], x[1], x[2])
		case box:
			s.box(x[0], x[1], x[2], x[3])
		case bar:
			s.bar(x[0], x[1], x[2])
		case arrow:
			s.arrow(x[0], x[1], x[2])
		case coil:
			s.coil(x[0], x[1], x[2], x[3], int(x[4]), int(x[5]))
		case when:
			if x[0] != 0 {
				return
			}
		case upright:
			s.upright = true
		case level:
			s.upright = false
		}
	}
	s.upright = false
}

// Between keys: one or the other of a text, and more of a text equivalent.
const (
	or   = "|"
	and  = " "
	semi = ";"
)

// In the place of a key: what must be given before a drawing can be made, as number lacks says.
const needs = "?"

// says appends the words of some keys, each where its place is 0 or it has none.
func (s *sketch) says(keys string, when []place) {
	from := len(s.b)
	for between := and[0]; keys != ""; {
		n := 0
		for n < len(keys) && keys[n] != or[0] && keys[n] != and[0] && keys[n] != semi[0] {
			n++
		}
		key := keys[:n]
		show := len(when) == 0 || s.at(when[0]) == 0
		if show {
			if len(s.b) > from && between != or[0] && key != "." {
				if between == semi[0] {
					s.char(between)
				}
				s.char(' ')
			}
			s.say(key)
		}
		if len(when) > 0 {
			when = when[1:]
		}
		if n == len(keys) {
			break
		}
		between, keys = keys[n], keys[n+1:]
	}
}

// say appends the words of a key, or a sentence that stands in the place of one.
func (s *sketch) say(key string) {
	switch key[0] {
	case 'd': // draw.
		s.words(key)
	case needs[0]:
		s.needing(calc.ID(s.n[lacks]))
	default:
		s.sentence(key, calc.None, about{})
	}
}

// draw appends the slots of a drawing.
func (s *sketch) draw(drawing int, n *numbers) {
	g := &Drawings[drawing]
	s.n, s.w = *n, g.W
	for i := range g.Shapes {
		p := &g.Shapes[i]
		if p.Anchor == "" {
			s.open(p.ID, "", "d")
			s.str(p.says)
			s.x, s.y = 0, 0
			s.steps(p.at)
			s.shut()
			continue
		}
		s.writer.text(p.ID, "")
		from := len(s.b)
		x, y, room := s.at(p.at[0]), s.at(p.at[1]), s.w
		if len(p.at) > 2 && p.at[2] != 0 {
			room = s.at(p.at[2])
		}
		if sum := x + y; sum-sum == 0 {
			s.says(p.says, p.at[min(3, len(p.at)):])
		}
		s.place(i, from, x, y, room)
	}
	if g.title != "" {
		s.equivalent(g.Key, ":title", g.title, nil)
		s.equivalent(g.Key, ":desc", g.desc, g.when)
	}
}

// equivalent appends the slot of a drawing that has words for those who do not see it.
//
//go:noinline
func (s *sketch) equivalent(key, what, keys string, when []place) {
	s.str("draw.")
	s.writer.text(key, what)
	s.says(keys, when)
	s.shut()
}

// only returns a number that is 0 where a condition holds and not known where it does not.
func only(condition bool) float64 {
	if condition {
		return 0
	}
	return math.NaN()
}

// scale returns how many units of the drawing there are to one of what is drawn, where the most of it has so much room; not known where there
// is none.
//
//go:noinline
func scale(room, most float64) float64 {
	if most > 0 && known(most) {
		return room / most
	}
	return math.NaN()
}
