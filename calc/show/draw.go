package show

import (
	"math"
	"unicode/utf8"

	"twistbench/calc"
)

// Drawing is a picture in SVG. Its shapes are always the same ones: what a plan changes is their slots, "d" and sometimes "stroke-width" of a
// path, and the text, "x", "y" and sometimes "transform" of a text. A drawing of a section has the slots draw.KEY:title and draw.KEY:desc
// too, its text equivalent; one of the thread has none, for it says nothing that the section's own drawing does not say.
type Drawing struct {
	Key    string
	W, H   float64 // viewBox 0 0 W H
	Shapes []Shape
}

// Shape is an element of a drawing. How its class looks is the style sheet's: a drawing has strokes, filled with paper at most, and must read in one
// colour.
type Shape struct {
	ID     string // of its slots
	Tag    string // "path" or "text"
	Class  string
	Anchor string // text-anchor of a text
}

const (
	fibreDrawing = iota
	hangDrawing
	cutDrawing
	twistDrawing
	coilDrawing
	clampDrawing
	heatDrawing
	clockDrawing
	fibreThread
	hangThread
	cutThread
	twistThread
	coilThread
	clampThread
	heatThread
)

// Drawings lists them: of each section, and of the thread that runs down the page beside it.
var Drawings = [...]Drawing{
	fibreDrawing: {"fibre", 320, 214, fibreShapes[:]},
	hangDrawing:  {"hang", 320, 424, hangShapes[:]},
	cutDrawing:   {"cut", 320, 262, cutShapes[:]},
	twistDrawing: {"twist", 320, 364, twistShapes[:]},
	coilDrawing:  {"coil", 320, 322, coilShapes[:]},
	clampDrawing: {"clamp", 320, 238, clampShapes[:]},
	heatDrawing:  {"heat", 320, 192, heatShapes[:]},
	clockDrawing: {"clock", 320, 178, clockShapes[:]},
	fibreThread:  {"thread.fibre", 28, 2400, threadFibreShapes[:]},
	hangThread:   {"thread.hang", 28, 2400, threadHangShapes[:]},
	cutThread:    {"thread.cut", 28, 2400, threadCutShapes[:]},
	twistThread:  {"thread.twist", 28, 2400, threadTwistShapes[:]},
	coilThread:   {"thread.coil", 28, 2400, threadCoilShapes[:]},
	clampThread:  {"thread.clamp", 28, 2400, threadClampShapes[:]},
	heatThread:   {"thread.heat", 28, 2400, threadHeatShapes[:]},
}

// drawing appends the slots of drawing i.
func (w *writer) drawing(i int) {
	s := sketch{writer: *w, shapes: Drawings[i].Shapes, w: Drawings[i].W}
	s.draw(i)
	w.b = s.b
}

// draw appends the slots of drawing i. (A function in its row would move the sketch to the heap at every keystroke.)
func (s *sketch) draw(i int) {
	switch i {
	case fibreDrawing:
		drawFibre(s)
	case hangDrawing:
		drawHang(s)
	case cutDrawing:
		drawCut(s)
	case twistDrawing:
		drawTwist(s)
	case coilDrawing:
		drawCoil(s)
	case clampDrawing:
		drawClamp(s)
	case heatDrawing:
		drawHeat(s)
	case clockDrawing:
		drawClock(s)
	case fibreThread:
		drawThreadFibre(s)
	case hangThread:
		drawThreadHang(s)
	case cutThread:
		drawThreadCut(s)
	case twistThread:
		drawThreadTwist(s)
	case coilThread:
		drawThreadCoil(s)
	case clampThread:
		drawThreadClamp(s)
	case heatThread:
		drawThreadHeat(s)
	}
}

// sketch is a drawing in the making. Its pen draws with relative moves, from and to whole tenths of a unit, so that a path is short
// and its rounding never adds up.
type sketch struct {
	writer
	shapes  []Shape
	w       float64
	x, y    int  // where the pen is, in tenths
	upright bool // the pen's x runs down the page, as along a hanging thread
}

// path begins the path of shape i; what the pen does until end is in it, which may be nothing.
//
//go:noinline
func (s *sketch) path(i int) {
	s.open(s.shapes[i].ID, "", "d")
	s.x, s.y = 0, 0
}

// end ends what path, text or desc began.
//
//go:noinline
func (s *sketch) end() { s.shut() }

//go:noinline
func (s *sketch) move(x, y float64) { s.to('m', x, y) }

//go:noinline
func (s *sketch) line(x, y float64) { s.to('l', x, y) }

//go:noinline
func (s *sketch) to(command byte, x, y float64) {
	if s.upright {
		x, y = y, x
	}
	dx, dy := int(math.Round(x*10))-s.x, int(math.Round(y*10))-s.y
	switch {
	case command == 'l' && dy == 0:
		s.char('h')
		s.tenths(dx)
	case command == 'l' && dx == 0:
		s.char('v')
		s.tenths(dy)
	default:
		if command != ' ' || dx >= 0 {
			s.char(command)
		}
		s.tenths(dx)
		if dy >= 0 {
			s.char(' ')
		}
		s.tenths(dy)
	}
	s.x, s.y = s.x+dx, s.y+dy
}

//go:noinline
func (w *writer) tenths(n int) {
	if n < 0 {
		w.char('-')
		n = -n
	}
	if n >= 10 || n == 0 {
		w.int(n / 10)
	}
	if n%10 != 0 {
		w.char('.')
		w.char('0' + byte(n%10))
	}
}

// circle draws a circle round (x, y): an arc all the way round but for a tenth of a unit, and closed.
//
//go:noinline
func (s *sketch) circle(x, y, r float64) {
	n := max(int(math.Round(r*10)), 1)
	s.move(x-float64(n)/10, y)
	s.char('a')
	s.tenths(n)
	s.char(' ')
	s.tenths(n)
	s.str(" 0 1 1 0 .1z")
}

// disc draws a circle that reads as filled, with strokes alone.
//
//go:noinline
func (s *sketch) disc(x, y, r float64) {
	for ; r > 0.3; r -= 1.2 {
		s.circle(x, y, r)
	}
}

// box draws a rectangle from (x, y), w wide and h high.
//
//go:noinline
func (s *sketch) box(x, y, w, h float64) {
	s.move(x, y)
	s.line(x+w, y)
	s.line(x+w, y+h)
	s.line(x, y+h)
	s.line(x, y)
}

// bar draws a line from x to end with a tick across it at both.
//
//go:noinline
func (s *sketch) bar(x, end, y float64) {
	s.stroke(x, y-3, x, y+3)
	s.stroke(x, y, end, y)
	s.stroke(end, y-3, end, y+3)
}

// arrow draws an arrow from x to end, with a tick where it starts.
//
//go:noinline
func (s *sketch) arrow(x, end, y float64) {
	head := math.Max(-5, math.Min(5, end-x))
	s.stroke(x, y-3, x, y+3)
	s.stroke(x, y, end, y)
	s.stroke(end-head, y-math.Abs(head)*0.6, end, y)
	s.line(end-head, y+math.Abs(head)*0.6)
}

//go:noinline
func (s *sketch) stroke(x, y, toX, toY float64) {
	s.move(x, y)
	s.line(toX, toY)
}

// The strands of a coil that are seen from the side: those on the near side, those on the far side, or both.
const (
	nearSide = 1 << iota
	farSide
)

// coil draws a coil of so many turns from x to x + length round the line y, with the hand of the plan's twist. A helix seen from the side.
func (s *sketch) coil(x, y, length, radius float64, turns, side int) {
	half := length / float64(turns) / 2
	if radius *= s.hand(); !s.upright { // to be upright changes places of x and y, and so turns the hand around
		radius = -radius
	}
	if side == nearSide|farSide {
		s.move(x, y+radius)
	}
	for i := range turns {
		at := x + 2*half*float64(i)
		if side&nearSide != 0 {
			if side&farSide == 0 {
				s.move(at, y+radius)
			}
			s.line(at+half, y-radius)
		}
		if side&farSide != 0 {
			if side&nearSide == 0 {
				s.move(at+half, y-radius)
			}
			s.line(at+2*half, y+radius)
		}
	}
}

// hand returns 1 where the twist is Z and −1 where it is S: a coil that coils by itself has the hand of its twist.
//
//go:noinline
func (s *sketch) hand() float64 {
	if s.st.Plan.Hand == calc.HandS {
		return -1
	}
	return 1
}

// helix is a coil in the drawing round the upright line x, its lowest turn beginning at the height foot. One without a pitch is not drawn.
type helix struct{ x, foot, radius, pitch float64 }

// The paths of tubes, from the first on.
const (
	tubesFar = iota
	tubesFarInside
	tubesEnds
	tubesNear
	tubesNearInside
)

// tubes draws the same n turns of coils as the five paths from shape i on.
//
// Seen from the side, the two outlines of a tube are its centre line moved by half its thickness. So it is a stroke as wide as the tube, and
// on it one of paper that is narrower by an outline; and near strands hide the far ones. Each coil begins and ends where it turns, so that
// its cut ends are seen as discs.
//
//go:noinline
func (s *sketch) tubes(i int, coils []helix, thick float64, n int) {
	for part := range tubesNearInside + 1 {
		s.path(i + part)
		width, past := thick+outline, 0.0
		if thick < thin {
			width = math.Max(thick, 1)
		}
		if part == tubesFarInside || part == tubesNearInside {
			width, past = math.Max(thick-outline, 0), 0.6
		}
		for _, c := range coils {
			switch {
			case thick < thin && (part == tubesEnds || past > 0) || !(c.pitch > 0):
			case part == tubesEnds:
				x := c.x - c.radius*s.hand()
				s.circle(x, c.foot, thick/2)
				s.circle(x, c.foot-float64(n)*c.pitch, thick/2)
			case part < tubesEnds:
				c.foot, c.radius = c.foot-c.pitch/2, -c.radius
				s.crossings(c, n, past)
			default:
				s.crossings(c, n, past)
			}
		}
		s.end()
		if part != tubesEnds {
			s.attribute(i+part, "stroke-width", width)
		}
	}
}

const (
	thin    = 3.0 // under this thickness the two outlines of a fibre are one
	outline = 1.5 // how wide they are
)

// crossings draws the centre lines of the near side of n turns of a coil; with a radius below zero, of strands that cross the other way.
// Each begins and ends so much past its turning points.
//
// The half wave between two of its turning points is one cubic curve, upright at its ends and as steep as the helix in the middle.
//
//go:noinline
func (s *sketch) crossings(c helix, n int, past float64) {
	radius, y := c.radius*s.hand(), c.foot
	ease := (0.5 - 1/math.Pi) * c.pitch
	for range n {
		s.move(c.x-radius, y+past)
		if past > 0 {
			s.line(c.x-radius, y)
		}
		s.curve(c.x-radius, y-ease, c.x+radius, y-c.pitch/2+ease, c.x+radius, y-c.pitch/2)
		if past > 0 {
			s.line(c.x+radius, y-c.pitch/2-past)
		}
		y -= c.pitch
	}
}

// curve draws a cubic curve to (x, y) with two control points.
//
//go:noinline
func (s *sketch) curve(x1, y1, x2, y2, x, y float64) {
	fromX, fromY := s.x, s.y
	s.to('c', x1, y1)
	s.x, s.y = fromX, fromY
	s.to(' ', x2, y2)
	s.x, s.y = fromX, fromY
	s.to(' ', x, y)
}

// turns returns how many turns to draw for a coil of that length in the drawing: how many there are is not known before it is coiled.
//
//go:noinline
func turns(length float64, most int) int { return min(max(int(length/4.5), 3), most) }

// label appends the words of a key as the text of shape i at (x, y), moved so that they stay in the drawing, and returns how wide they are.
// They are left out when show is false or when they need more than the room there is.
//
//go:noinline
func (s *sketch) label(i int, x, y, room float64, show bool, key string) float64 {
	from := s.text(i)
	if show {
		s.words(key)
	}
	return s.place(i, from, x, y, room)
}

// needs appends as the text of shape i what must be given before a drawing can be made, where its number id is not known.
//
//go:noinline
func (s *sketch) needs(i int, x, y float64, id calc.ID) {
	from := s.text(i)
	s.needing(s.st.Needs(id))
	s.place(i, from, x, y, s.w)
}

// text begins the text of shape i and returns where it starts.
//
//go:noinline
func (s *sketch) text(i int) int {
	s.writer.text(s.shapes[i].ID, "")
	return len(s.b)
}

// place ends a text and puts it at (x, y).
func (s *sketch) place(i, from int, x, y, room float64) float64 {
	w := wide(s.b[from:])
	if w > math.Min(room, s.w-2*margin) {
		s.b, w = s.b[:from], 0
	}
	s.end()
	if w == 0 {
		x, y = 0, 0 // a place may be as unknown as the words
	}
	switch s.shapes[i].Anchor {
	case "start":
		x = math.Min(x, s.w-margin-w)
	case "middle":
		x = math.Max(margin+w/2, math.Min(x, s.w-margin-w/2))
	case "end":
		x = math.Max(x, margin+w)
	}
	s.attribute(i, "x", x)
	s.attribute(i, "y", y)
	return w
}

const margin = 3

//go:noinline
func (s *sketch) attribute(i int, name string, x float64) {
	s.open(s.shapes[i].ID, "", name)
	s.tenths(int(math.Round(x * 10)))
	s.shut()
}

// say appends the words of a key, for those who do not see the drawing.
//
//go:noinline
func (s *sketch) say(id, key string) {
	s.desc(id, key)
	s.shut()
}

// desc begins the same, so that more words can follow.
//
//go:noinline
func (s *sketch) desc(id, key string) {
	s.writer.text(id, "")
	s.words(key)
}

// also appends more words to a text that is not ended yet.
//
//go:noinline
func (s *sketch) also(show bool, key string) {
	if show {
		s.char(' ')
		s.words(key)
	}
}

// wide returns about how wide a text is in the size of a label, rather too much than too little.
//
//go:noinline
func wide(text []byte) float64 {
	w := 0.0
	for len(text) > 0 {
		r, n := utf8.DecodeRune(text)
		text = text[n:]
		switch r {
		case ' ', '.', ',', ':', ';', 'i', 'l', 'j', 'f', 't', '|', '(', ')':
			w += 4.8
		case 'm', 'w', 'M', 'W', '%', '–':
			w += 12.7
		default:
			w += 8.3
		}
	}
	return w
}

// known reports whether all of the numbers are.
//
//go:noinline
func known(numbers ...float64) bool {
	for _, x := range numbers {
		if math.IsNaN(x) || math.IsInf(x, 0) {
			return false
		}
	}
	return true
}

// longest returns the greatest of the numbers that are known, 0 where none is.
//
//go:noinline
func longest(numbers ...float64) float64 {
	most := 0.0
	for _, x := range numbers {
		if x > most {
			most = x
		}
	}
	return most
}

// above returns the least of 1, 2, 5, 10, 20 … and of 0.5, 0.2, 0.1 … that is not below x, and which of 1, 2 and 5 it begins with.
//
//go:noinline
func above(x float64) (round float64, leading int) {
	if !(x > 1e-300 && x < 1e300) {
		return x, 1
	}
	x *= 1 - 1e-9
	ten := 1.0
	for ten > x {
		ten /= 10
	}
	for ten*10 <= x {
		ten *= 10
	}
	for _, n := range [...]int{1, 2, 5} {
		if float64(n)*ten >= x {
			return float64(n) * ten, n
		}
	}
	return 10 * ten, 1
}
