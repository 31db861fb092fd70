package show

import (
	"math"

	"twistbench/calc"
	"twistbench/calc/quantity"
)

// Drawing is a picture in SVG. Its shapes are always the same ones: what a plan changes is their slots, "d" and sometimes "stroke-width" of a
// path, and the text, "x", "y" and sometimes "transform" of a text. A drawing of a section has the slots draw.KEY:title and draw.KEY:desc
// too, its text equivalent; one of the thread has none, for it says nothing that the section's own drawing does not say.
type Drawing struct {
	Key    string
	W, H   float64 // viewBox 0 0 W H
	Shapes []Shape
	said   []Shape // in words for those who do not see it: what its slots add to draw.KEY, when each key is said, and the keys
}

// Shape is an element of a drawing. How its class looks is the style sheet's: a drawing has strokes, filled with paper at most, and must read in one
// colour.
type Shape struct {
	ID     string // of its slots
	Tag    string // "path" or "text"
	Class  string
	Anchor string  // text-anchor of a text
	at     []place // of a path: its steps; of a text: x, y, the room there is for it (0 for all), and when each of its keys is said
	says   string  // of a text: the keys of its words; of a path: what is always the same, before the steps
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
	wireDrawing
	driveDrawing
	strokeDrawing
	fibreThread
	hangThread
	cutThread
	twistThread
	coilThread
	clampThread
	heatThread
	wireThread
	driveThread
	strokeThread
)

// Drawings lists them: of each section, and of the thread that runs down the page beside it.
var Drawings = [...]Drawing{
	fibreDrawing:  {"fibre", 320, 214, fibreShapes, fibreSaid},
	hangDrawing:   {"hang", 320, 424, hangShapes, hangSaid},
	cutDrawing:    {"cut", 320, 262, cutShapes, cutSaid},
	twistDrawing:  {"twist", 320, 364, twistShapes, twistSaid},
	coilDrawing:   {"coil", 320, 322, coilShapes, coilSaid},
	clampDrawing:  {"clamp", 320, 238, clampShapes, clampSaid},
	heatDrawing:   {"heat", 320, 192, heatShapes, heatSaid},
	clockDrawing:  {"clock", 320, 178, clockShapes, clockSaid},
	wireDrawing:   {"wire", 320, 216, wireShapes, wireSaid},
	driveDrawing:  {"drive", 320, 252, driveShapes, driveSaid},
	strokeDrawing: {"stroke", 320, 432, strokeShapes, strokeSaid},
	fibreThread:   {"thread.fibre", 28, 2400, threadFibreShapes, nil},
	hangThread:    {"thread.hang", 28, 2400, threadHangShapes, nil},
	cutThread:     {"thread.cut", 28, 2400, threadCutShapes, nil},
	twistThread:   {"thread.twist", 28, 2400, threadTwistShapes, nil},
	coilThread:    {"thread.coil", 28, 2400, threadCoilShapes, nil},
	clampThread:   {"thread.clamp", 28, 2400, threadClampShapes, nil},
	heatThread:    {"thread.heat", 28, 2400, threadHeatShapes, nil},
	wireThread:    {"thread.wire", 28, 2400, threadWireShapes, nil},
	driveThread:   {"thread.drive", 28, 2400, threadDriveShapes, nil},
	strokeThread:  {"thread.stroke", 28, 2400, threadStrokeShapes, nil},
}

// drawing appends the slots of drawing i. (A function in its row would move the sketch to the heap at every keystroke.)
func (w *writer) drawing(i int) {
	g := &Drawings[i]
	s := sketch{writer: *w, w: g.W, hand: 1}
	if w.st.Plan.Hand == calc.HandS {
		s.hand = -1
	}
	switch i {
	case fibreDrawing:
		drawFibre(&s)
	case hangDrawing:
		drawHang(&s)
	case cutDrawing:
		drawCut(&s)
	case twistDrawing:
		drawTwist(&s)
	case coilDrawing:
		drawCoil(&s)
	case clampDrawing:
		drawClamp(&s)
	case heatDrawing:
		drawHeat(&s)
	case clockDrawing:
		drawClock(&s)
	case wireDrawing:
		drawWire(&s)
	case driveDrawing:
		drawDrive(&s)
	case strokeDrawing:
		drawStroke(&s)
	default:
		drawThread(&s, i)
	}
	for i := range g.Shapes {
		if p := &g.Shapes[i]; p.Anchor == "" {
			s.path(p)
		} else {
			s.label(p)
		}
	}
	for i := range g.said {
		p := &g.said[i]
		s.str("draw.")
		s.writer.text(g.Key, p.ID)
		s.says(p, 0)
		s.shut()
	}
	w.b = s.b
}

// sketch is a drawing in the making. Its pen draws with relative moves, from and to whole tenths of a unit, so that a path is short
// and its rounding never adds up.
type sketch struct {
	writer
	w       float64
	x, y    int               // where the pen is, in tenths
	n       numbers           // what places name
	a       [8]float64        // the places of the step at hand
	sum     float64           // of them
	text    int               // the number behind the x of the text at hand
	width   float64           // of the path's stroke, where it is as the plan says
	hand    float64           // 1 where the twist is Z and −1 where it is S: a coil that coils by itself has the hand of its twist
	coils   [coilStates]helix // in the drawing, the same turns of each
	turns   int
	thick   float64 // their fibre
	marks   marks   // of a rule
	graphs  graphs
	bundle  bundle
	plots   [2]plotted
	upright bool // the pen's x runs down the page, as along a hanging thread
}

//go:noinline
func (s *sketch) to(command byte, x, y float64) {
	if s.upright {
		x, y = y, x
	}
	dx, dy := tenth(x)-s.x, tenth(y)-s.y
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

// tenth returns a place in a drawing, which is not below 0, in tenths.
func tenth(x float64) int { return int(x*10 + 0.5) }

//go:noinline
func (w *writer) tenths(n int) {
	if n < 0 {
		w.char('-')
		n = -n
	}
	switch {
	case n >= 100:
		w.int(n / 10)
	case n >= 10 || n == 0:
		w.char('0' + byte(n/10))
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
	n := max(tenth(r), 1)
	s.to('m', x-float64(n)/10, y)
	s.char('a')
	s.tenths(n)
	s.char(' ')
	s.tenths(n)
	s.str(" 0 1 1 0 .1z")
}

// box draws a rectangle from (x, y), w wide and h high.
//
//go:noinline
func (s *sketch) box(x, y, w, h float64) {
	s.to('m', x, y)
	s.to('l', x+w, y)
	s.to('l', x+w, y+h)
	s.to('l', x, y+h)
	s.to('l', x, y)
}

//go:noinline
func (s *sketch) stroke(x, y, toX, toY float64) {
	s.to('m', x, y)
	s.to('l', toX, toY)
}

// The strands of a coil that are seen from the side: those on the near side, those on the far side, or both.
const (
	nearSide = 1 << iota
	farSide
	bothSides = nearSide | farSide
)

// coil draws a coil of so many turns from x to x + length round the line y, with the hand of the plan's twist. A helix seen from the side.
func (s *sketch) coil() {
	x, y, radius, turns, side := s.a[0], s.a[1], s.a[3], int(s.a[4]), int(s.a[5])
	half := s.a[2] / s.a[4] / 2
	if radius *= s.hand; !s.upright { // to be upright changes places of x and y, and so turns the hand around
		radius = -radius
	}
	if side == nearSide|farSide {
		s.to('m', x, y+radius)
	}
	for i := range turns {
		at := x + 2*half*float64(i)
		if side&nearSide != 0 {
			if side&farSide == 0 {
				s.to('m', at, y+radius)
			}
			s.to('l', at+half, y-radius)
		}
		if side&farSide != 0 {
			if side&nearSide == 0 {
				s.to('m', at+half, y-radius)
			}
			s.to('l', at+2*half, y+radius)
		}
	}
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
	tubesClash
	tubesYarn // a line along the near side
)

// tube draws one of these parts of the sketch's coils.
//
// Seen from the side, the two outlines of a tube are its centre line moved by half its thickness. So it is a stroke as wide as the tube, and
// on it one of paper that is narrower by an outline; and near strands hide the far ones. Each coil begins and ends where it turns, so that
// its cut ends are seen as discs.
func (s *sketch) tube() {
	part := int(s.a[0])
	width, past := s.thick+outline, 0.0
	if s.thick < thin {
		width = max(s.thick, 1)
	}
	if part == tubesFarInside || part == tubesNearInside {
		width, past = max(s.thick-outline, 0), 0.6
	}
	if part != tubesEnds && part < tubesClash {
		s.width = width
	}
	for i := range s.coils {
		c := s.coils[i]
		switch {
		case s.thick < thin && (part == tubesEnds || past > 0) || !(c.pitch > 0):
		case part == tubesEnds:
			x := c.x - c.radius*s.hand
			s.circle(x, c.foot, s.thick/2)
			s.circle(x, c.foot-float64(s.turns)*c.pitch, s.thick/2)
		case part == tubesClash:
			// The edges of turns that would lie in each other: they show through each other.
			if s.n[coilClash+i] == 0 {
				edge, foot := min(c.along(s.thick)/2, 16), c.foot
				for _, by := range [2]float64{edge, -edge} {
					c.foot = foot + by
					s.crossings(&c, 0)
				}
			}
		default:
			if part < tubesEnds {
				c.foot, c.radius = c.foot-c.pitch/2, -c.radius
			}
			s.crossings(&c, past)
		}
	}
}

const (
	thin    = 3.0 // under this thickness the two outlines of a fibre are one
	outline = 1.5 // how wide they are
)

// crossings draws the centre lines of the near side of the turns of a coil; with a radius below zero, of strands that cross the other way.
// Each begins and ends so much past its turning points.
//
// The half wave between two of its turning points is one cubic curve, upright at its ends and as steep as the helix in the middle.
//
//go:noinline
func (s *sketch) crossings(c *helix, past float64) {
	radius, y := c.radius*s.hand, c.foot
	ease := (0.5 - 1/math.Pi) * c.pitch
	for range s.turns {
		s.to('m', c.x-radius, y+past)
		if past > 0 {
			s.to('l', c.x-radius, y)
		}
		s.curve(c.x-radius, y-ease, c.x+radius, y-c.pitch/2+ease, c.x+radius, y-c.pitch/2)
		if past > 0 {
			s.to('l', c.x+radius, y-c.pitch/2-past)
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

// graphs are three lines through points that are evenly apart: where the first is, how far apart they are, their values (NaN where there is
// none), and where 0 is and how much higher 1 is.
type graphs struct {
	from, apart, zero, k float64
	points               [graphPoints][3]quantity.Length
}

const graphPoints = 17

// through draws one of the sketch's graphs.
func (s *sketch) through() {
	g, command := &s.graphs, byte('m')
	for i := range g.points {
		if y := g.zero - float64(g.points[i][int(s.a[0])])*g.k; known(y) {
			s.to(command, g.from+float64(i)*g.apart, y)
			command = 'l'
		}
	}
}

// turns returns how many turns to draw for a coil of that length in the drawing: how many there are is not known before it is coiled.
func turns(length float64, most int) int { return min(max(int(length/4.5), 3), most) }

// widths is how wide the narrow and the wide characters of a label are, in tenths of a unit; all others are 8.3 units.
var widths = [128]uint8{
	' ': 48, '.': 48, ',': 48, ':': 48, ';': 48, 'i': 48, 'l': 48, 'j': 48, 'f': 48, 't': 48, '|': 48, '(': 48, ')': 48,
	'm': 127, 'w': 127, 'M': 127, 'W': 127, '%': 127,
}

// wide returns about how wide a text is in the size of a label, rather too much than too little.
//
//go:noinline
func wide(text []byte) float64 {
	w := 0.0
	for i, c := range text {
		by := widths[c&127]
		switch {
		case c >= 0x80 && c < 0xC0: // not the first byte of a character
			continue
		case c == 0xE2 && string(text[i:min(i+3, len(text))]) == "–":
			by = 127
		case c >= 0x80 || by == 0:
			by = 83
		}
		w += float64(by) / 10
	}
	return w
}

// known reports whether a number is.
func known(x float64) bool { return x-x == 0 }

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
