package show

import (
	"math"
	"strconv"

	"twistbench/calc"
	"twistbench/calc/quantity"
)

// mostNumbers is how many numbers there are along the rule at most.
const mostNumbers = 8

// What the drawing of the frame names.
const (
	clampOn  = iota + firstPlace // 0 where there is a gap
	clampOn1                     // and where each is known
	clampOn2
	clampGap1 // their lengths
	clampGap2
	clampTurns
	clampJaw1 // the faces of the moving jaws
	clampJaw2
	clampPast   // the first one, where the row of the second is below it
	clampDown   // how far a line goes down from it
	clampCoiled // how long the coil was before
	clampMoves1 // 0 where the first move is known, and the second
	clampMoves2
	clampRule  // the height of the rule
	clampMarks // the same, where there is one
	clampHoles
	clampPitch // of them, and where they begin
	clampOffset
	clampHole1 // the nearest
	clampHole2
	clampTwo     // 0 where there are two heat-sets, and 1 where there is one
	clampSays    // the same, where nearest holes are known
	clampHolesAt // the words of them
	clampNoteAt
	clampNumbers                              // along the rule
	clampRooms   = clampNumbers + mostNumbers // for each
)

var clampShapes = []Shape{
	{"draw.clamp.rule", "path", "rule", "", []place{ruler, clampMarks}, ""},
	// From the jaw to the rule, past the words of the row below.
	{"draw.clamp.index", "path", "dim", "", []place{
		stroke, clampJaw1, 62 * u, clampJaw1, clampDown, stroke, clampPast, 142 * u, clampPast, clampRule,
		stroke, clampJaw2, 138 * u, clampJaw2, clampRule, stroke, clampOn + 40*u, clampRule - 32*u, clampOn + 40*u, clampRule,
	}, ""},
	{"draw.clamp.first-coil", "path", "fibre", "", []place{coil, 40 * u, 48 * u, clampGap1, 9 * u, clampTurns, nearSide * u}, ""},
	{"draw.clamp.second-coil", "path", "fibre", "", []place{coil, 40 * u, 124 * u, clampGap2, 9 * u, clampTurns, nearSide * u}, ""},
	{"draw.clamp.far", "path", "dim", "", []place{coil, 40 * u, 48 * u, clampGap1, 9 * u, clampTurns, farSide * u, coil, 40 * u, 124 * u, clampGap2, 9 * u, clampTurns, farSide * u}, ""},
	{"draw.clamp.coiled", "path", "ghost", "", []place{stroke, clampCoiled, 25 * u, clampCoiled, 62 * u}, ""},
	{"draw.clamp.fixed", "path", "jaw", "", []place{jaw, clampOn1 + 18*u, 34 * u, jaw, clampOn2 + 18*u, 110 * u}, ""},
	{"draw.clamp.first", "path", "jaw", "", []place{jaw, clampJaw1, 34 * u}, ""},
	{"draw.clamp.second", "path", "jaw", "", []place{jaw, clampJaw2, 110 * u}, ""},
	{"draw.clamp.moves", "path", "dim", "", []place{arrow, clampCoiled, clampJaw1, 26 * u, arrow, clampJaw1, clampJaw2, 102 * u}, ""},
	{"draw.clamp.holes", "path", "dim", "", []place{holes, clampHoles - 9*u}, ""},
	{"draw.clamp.nearest", "path", "jaw", "", []place{disc, clampHole1, clampRule - 9*u, 3 * u, disc, clampHole2, clampRule - 9*u, 3 * u}, ""},
	{"draw.clamp.letter-first", "text", "letter", "start", []place{18 * u, 17 * u}, "1"},
	{"draw.clamp.letter-second", "text", "letter", "start", []place{18 * u, 93 * u, 0, clampTwo}, "2"},
	{"draw.clamp.first-label", "text", "label", "start", []place{38 * u, clampOn1 + 17*u, 280 * u}, "draw.clamp.first"},
	{"draw.clamp.first-move", "text", "label", "end", []place{316 * u, 17 * u, beside - 12*u, clampMoves1}, signed + "clamp.first-move"},
	{"draw.clamp.second-label", "text", "label", "start", []place{38 * u, clampOn2 + 93*u, 280 * u}, "draw.clamp.second"},
	{"draw.clamp.second-move", "text", "label", "end", []place{316 * u, 93 * u, beside - 12*u, clampMoves2}, signed + "clamp.second-move"},
	{"draw.clamp.holes-label", "text", "label", "start", []place{4 * u, clampHolesAt, 0, clampSays, clampSays - 1*u}, "draw.clamp.holes" + or + "draw.clamp.hole"},
	{"draw.clamp.note", "text", "label", "start", []place{4 * u, clampNoteAt, 0, lacks}, "draw.clamp.note" + or + needs},
	{"draw.clamp.number-1", "text", "label", "middle", []place{clampNumbers, clampRule + 25*u, clampNumbers + 2}, along},
	{"draw.clamp.number-2", "text", "label", "middle", []place{clampNumbers + 3, clampRule + 25*u, clampNumbers + 5}, along},
	{"draw.clamp.number-3", "text", "label", "middle", []place{clampNumbers + 6, clampRule + 25*u, clampNumbers + 8}, along},
	{"draw.clamp.number-4", "text", "label", "middle", []place{clampNumbers + 9, clampRule + 25*u, clampNumbers + 11}, along},
	{"draw.clamp.number-5", "text", "label", "middle", []place{clampNumbers + 12, clampRule + 25*u, clampNumbers + 14}, along},
	{"draw.clamp.number-6", "text", "label", "middle", []place{clampNumbers + 15, clampRule + 25*u, clampNumbers + 17}, along},
	{"draw.clamp.number-7", "text", "label", "middle", []place{clampNumbers + 18, clampRule + 25*u, clampNumbers + 20}, along},
	{"draw.clamp.number-8", "text", "label", "middle", []place{clampNumbers + 21, clampRule + 25*u, clampNumbers + 23}, along},
}

var clampSaid = []Shape{
	{":title", "", "", "", nil, "draw.clamp.title"},
	{
		":desc", "", "", "", []place{zero, clampTwo, clampSays, clampSays - 1*u},
		"draw.clamp.desc" + and + "draw.clamp.desc-second" + and + "draw.clamp.holes" + and + "draw.clamp.hole",
	},
}

const (
	clampFace = 40.0  // where the fixed jaw's face is in the drawing
	clampMost = 290.0 // where the face of the farthest moving jaw is
)

// drawClamp draws the frame from above, once for each heat-set, along a rule with the scale of the gaps.
func drawClamp(s *sketch) {
	p, o := &s.st.Plan, &s.st.Out
	var n numbers
	rule, second := 170.0, float64(p.Second)
	if p.Stages == calc.StagesOne {
		rule, second, n[clampTwo] = 94, quantity.NaN, 1
	}
	piece, zero := float64(p.Piece()), float64(p.Zero)
	gaps := [2]float64{float64(p.First), second}
	most := longest(piece, gaps[0], second)
	k := (clampMost-clampFace)/most + only(most > 0) // units to the metre
	pitch, offset := float64(p.HolePitch)*k, float64(p.HoleOffset)*k
	pitch += where(pitch - 1e-9)
	n[clampOn] = quantity.NaN
	for i, gap := range gaps {
		gap *= k
		gap += where(gap - 1e-9)
		n[clampOn1+i], n[clampGap1+i], n[clampJaw1+i] = 0*gap, gap, clampFace+gap
		if gap > 0 {
			n[clampOn] = 0
		}
		hole := clampFace + float64(o.Hole[i])*pitch + offset
		n[clampHole1+i] = hole + 0*gap + where(hole-6) + where(314-hole)
	}
	n[clampTurns] = float64(turns(piece*k, 16))
	n[clampPast], n[clampDown] = n[clampJaw1], 70
	if n[clampTwo] != 0 {
		n[clampPast], n[clampDown] = quantity.NaN, rule
	}
	n[clampCoiled] = clampFace + piece*k + n[clampOn1]
	n[clampRule], n[clampMarks], n[clampHoles] = rule, rule+0*(k+zero), rule+0*(pitch+offset)
	n[clampPitch], n[clampOffset] = pitch, offset
	n[clampMoves1], n[clampMoves2] = 0*n[clampCoiled], n[clampOn1]+n[clampOn2]
	n[clampHolesAt], n[clampNoteAt] = rule+46, rule+46
	holed := 0*(pitch+offset) + n[clampOn1]
	if n[clampTwo] == 0 {
		holed += n[clampOn2]
	}
	n[clampSays] = n[clampTwo] + holed
	if holed == 0 {
		n[clampNoteAt] += 17
	}
	if n[clampOn] != 0 {
		n[lacks] = float64(s.st.Needs(calc.ClampFirst))
	}
	m, unit := &s.marks, s.shownIn(calc.ClampFirst)
	m.k, m.unit, m.from = k, unit.ToSI(1), max(12, clampFace-zero*k)
	m.start = unit.FromSI(zero) + (m.from-clampFace)/(k*m.unit)
	m.end = unit.FromSI(zero) + (312-clampFace)/(k*m.unit)
	if n[clampMarks] == rule {
		s.mark(unit.Factor == inch)
	}
	first := math.Ceil(m.start/m.step - 1e-9)
	for i := range mostNumbers {
		number := (first + float64(i)) * m.step
		x := clampFace + (unit.ToSI(number)-zero)*k + n[clampMarks] - rule
		at := clampNumbers + 3*i
		n[at], n[at+1] = x+where(m.end-number), number
		n[at+2] = min(m.room, 2*min(x-margin, 320-margin-x))
	}
	s.n = n
}

// holes draws the nearest hole of the frame for each gap and two on either side of it, where they are far enough apart to be told from it.
func (s *sketch) holes() {
	o, y := &s.st.Out, s.a[0]
	pitch := s.n[clampPitch]
	for i := range 2 {
		for side := -2.0; side <= 2; side++ {
			hole := float64(o.Hole[i]) + side
			taken := i == 1 && s.n[clampOn1] == 0 && math.Abs(hole-float64(o.Hole[0])) <= 2
			x := clampFace + hole*pitch + s.n[clampOffset]
			if s.n[clampOn1+i] == 0 && (side == 0 || pitch >= 9 && hole >= 1 && !taken) && x > 6 && x < s.w-6 {
				s.circle(x, y, 3)
			}
		}
	}
}

// marks is how a rule or an axis is divided.
type marks struct {
	start, end float64 // in its own unit
	from       float64 // where it starts in the drawing
	unit, k    float64 // one of the unit in SI, and that in the drawing
	step       float64 // from number to number
	ticks      float64 // between them
	room       float64 // for a number, in the drawing
	decimals   int
}

// mark divides a rule whose start, end and scale are set, in so many numbers as there is room for; inches are divided in halves.
func (s *sketch) mark(inches bool) {
	m := &s.marks
	n, each, room, step, decimals, first := len(s.b), m.k*m.unit, 38.0, 0.0, 0, 0
	for range 3 {
		step, first = above(room / each)
		if inches && step <= 1 {
			first = 8
			for step = 1; step/2 >= room/each; {
				step /= 2
			}
		}
		decimals = 0
		for x := step; math.Abs(x-math.Round(x)) > 1e-6*x && decimals < 12; x *= 10 {
			decimals++
		}
		s.decimals(math.Floor(m.end/step)*step, decimals)
		room = max(room, wide(s.b[n:])+8)
		s.b = s.b[:n]
	}
	switch {
	case first == 2:
		first = 4
	case first == 1 && step*each < 50:
		first = 2
	case first == 1:
		first = 10
	}
	m.step, m.ticks, m.room, m.decimals = step, float64(first), room, decimals
}

// inch is one in metres, exact by definition: the yard and pound agreement of 1959.
const inch = 0.0254

// ruler draws the rule with its marks, from a line y down.
func (s *sketch) ruler() {
	m, y := &s.marks, s.a[0]
	s.stroke(m.from, y, m.from+(m.end-m.start)*m.unit*m.k, y)
	tick := m.step / m.ticks
	for i := math.Ceil(m.start/tick - 1e-9); i*tick <= m.end && i-m.start/tick < 200; i++ {
		x := m.from + (i*tick-m.start)*m.unit*m.k
		long := 5.0
		if whole := i / m.ticks; whole == math.Floor(whole) {
			long = 10
		}
		s.stroke(x, y, x, y+long)
	}
}

// decimals appends x with so many decimals.
//
//go:noinline
func (s *sketch) decimals(x float64, decimals int) {
	n := len(s.b)
	s.b = strconv.AppendFloat(s.b, x, 'f', decimals, 64)
	for i := n; i < len(s.b); i++ {
		if s.b[i] == '.' {
			s.b[i] = s.Lang.Mark
		}
	}
}
