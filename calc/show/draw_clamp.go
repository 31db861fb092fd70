package show

import (
	"math"
	"strconv"

	"twistbench/calc"
	"twistbench/calc/quantity"
)

const (
	clampRule = iota
	clampIndex
	clampCoil1
	clampCoil2
	clampFar
	clampCoiled
	clampFixed
	clampFirst
	clampSecond
	clampMoves
	clampHoles
	clampNearest
	clampLetter1
	clampLetter2
	clampLabel1
	clampLabel2
	clampMove1
	clampMove2
	clampHolesLabel
	clampNote
	clampNumbers
)

// mostNumbers is how many numbers there are along the rule at most.
const mostNumbers = 8

var clampShapes = [...]Shape{
	clampRule:        {"draw.clamp.rule", "path", "rule", "", nil, ""},
	clampIndex:       {"draw.clamp.index", "path", "dim", "", nil, ""},
	clampCoil1:       {"draw.clamp.first-coil", "path", "fibre", "", nil, ""},
	clampCoil2:       {"draw.clamp.second-coil", "path", "fibre", "", nil, ""},
	clampFar:         {"draw.clamp.far", "path", "dim", "", nil, ""},
	clampCoiled:      {"draw.clamp.coiled", "path", "ghost", "", nil, ""},
	clampFixed:       {"draw.clamp.fixed", "path", "jaw", "", nil, ""},
	clampFirst:       {"draw.clamp.first", "path", "jaw", "", nil, ""},
	clampSecond:      {"draw.clamp.second", "path", "jaw", "", nil, ""},
	clampMoves:       {"draw.clamp.moves", "path", "dim", "", nil, ""},
	clampHoles:       {"draw.clamp.holes", "path", "dim", "", nil, ""},
	clampNearest:     {"draw.clamp.nearest", "path", "jaw", "", nil, ""},
	clampLetter1:     {"draw.clamp.letter-first", "text", "letter", "start", nil, ""},
	clampLetter2:     {"draw.clamp.letter-second", "text", "letter", "start", nil, ""},
	clampLabel1:      {"draw.clamp.first-label", "text", "label", "start", nil, ""},
	clampLabel2:      {"draw.clamp.second-label", "text", "label", "start", nil, ""},
	clampMove1:       {"draw.clamp.first-move", "text", "label", "end", nil, ""},
	clampMove2:       {"draw.clamp.second-move", "text", "label", "end", nil, ""},
	clampHolesLabel:  {"draw.clamp.holes-label", "text", "label", "start", nil, ""},
	clampNote:        {"draw.clamp.note", "text", "label", "start", nil, ""},
	clampNumbers:     {"draw.clamp.number-1", "text", "label", "middle", nil, ""},
	clampNumbers + 1: {"draw.clamp.number-2", "text", "label", "middle", nil, ""},
	clampNumbers + 2: {"draw.clamp.number-3", "text", "label", "middle", nil, ""},
	clampNumbers + 3: {"draw.clamp.number-4", "text", "label", "middle", nil, ""},
	clampNumbers + 4: {"draw.clamp.number-5", "text", "label", "middle", nil, ""},
	clampNumbers + 5: {"draw.clamp.number-6", "text", "label", "middle", nil, ""},
	clampNumbers + 6: {"draw.clamp.number-7", "text", "label", "middle", nil, ""},
	clampNumbers + 7: {"draw.clamp.number-8", "text", "label", "middle", nil, ""},
}

const (
	clampFace = 40.0  // where the fixed jaw's face is in the drawing
	clampMost = 290.0 // where the face of the farthest moving jaw is
)

// drawClamp draws the frame from above, once for each heat-set, along a rule with the scale of the gaps.
func drawClamp(s *sketch) {
	const (
		jawW, jawH = 22.0, 28.0
		radius     = 9.0
	)
	p, o := &s.st.Plan, &s.st.Out
	piece, zero := float64(p.Piece()), float64(p.Zero)
	gaps := [2]float64{float64(p.First), float64(p.Second)}
	rows := 2
	if p.Stages == calc.StagesOne {
		rows, gaps[1] = 1, quantity.NaN
	}
	k := 0.0 // units to the metre
	if most := longest(piece, gaps[0], gaps[1]); most > 0 {
		k = (clampMost - clampFace) / most
	}
	lines := [2]float64{48, 124} // of the coils
	shown := [2]bool{known(gaps[0]) && gaps[0] > 0, known(gaps[1]) && gaps[1] > 0}
	jaws := [2]float64{clampFace + gaps[0]*k, clampFace + gaps[1]*k}
	rule := lines[rows-1] + 46
	coiled := clampFace + piece*k
	n := turns(piece*k, 16)

	marks := s.marks(k, zero)
	s.path(clampRule)
	if marks.step > 0 {
		s.rule(marks, rule)
	}
	s.end()
	s.path(clampIndex)
	for i, show := range shown {
		if !show {
			continue
		}
		// From the jaw to the rule, past the words of the row below.
		x := jaws[i]
		if i == 0 && rows == 2 {
			s.stroke(x, lines[0]+jawH/2, x, lines[0]+jawH/2+8)
			s.stroke(x, lines[1]+jawH/2+4, x, rule)
		} else {
			s.stroke(x, lines[i]+jawH/2, x, rule)
		}
	}
	if shown[0] || shown[1] {
		s.stroke(clampFace, lines[rows-1]+jawH/2, clampFace, rule)
	}
	s.end()
	for i := range 2 {
		s.path(clampCoil1 + i)
		if shown[i] {
			s.coil(clampFace, lines[i], gaps[i]*k, radius, n, nearSide)
		}
		s.end()
	}
	s.path(clampFar)
	for i := range 2 {
		if shown[i] {
			s.coil(clampFace, lines[i], gaps[i]*k, radius, n, farSide)
		}
	}
	s.end()
	s.path(clampCoiled)
	if shown[0] && known(piece) {
		s.stroke(coiled, lines[0]-jawH/2-9, coiled, lines[0]+jawH/2)
	}
	s.end()
	s.path(clampFixed)
	for i := range rows {
		if shown[i] {
			s.jaw(clampFace-jawW, lines[i]-jawH/2, jawW, jawH)
		}
	}
	s.end()
	for i := range 2 {
		s.path(clampFirst + i)
		if shown[i] {
			s.jaw(jaws[i], lines[i]-jawH/2, jawW, jawH)
		}
		s.end()
	}
	moves := [2]bool{shown[0] && known(piece), shown[0] && shown[1]}
	from := [2]float64{coiled, jaws[0]}
	s.path(clampMoves)
	for i := range 2 {
		if moves[i] {
			s.arrow(from[i], jaws[i], lines[i]-jawH/2-8)
		}
	}
	s.end()
	pitch, offset := float64(p.HolePitch)*k, float64(p.HoleOffset)*k
	holed := known(pitch, offset) && pitch > 0
	s.path(clampHoles)
	for i := range 2 {
		if !holed || !shown[i] {
			continue
		}
		for side := -2.0; side <= 2; side++ {
			hole := float64(o.Hole[i]) + side
			taken := i == 1 && shown[0] && math.Abs(hole-float64(o.Hole[0])) <= 2
			if pitch >= 9 && side != 0 && hole >= 1 && !taken || side == 0 {
				s.hole(clampFace+hole*pitch+offset, rule-9, false)
			}
		}
	}
	s.end()
	s.path(clampNearest)
	for i := range 2 {
		if holed && shown[i] {
			s.hole(clampFace+float64(o.Hole[i])*pitch+offset, rule-9, true)
		}
	}
	s.end()

	var used [2]float64
	letters := [2]string{"1", "2"}
	for i := range 2 {
		from := s.text(clampLetter1 + i)
		if i < rows {
			s.str(letters[i])
		}
		s.place(clampLetter1+i, from, clampFace-jawW, lines[i]-31, 20)
	}
	for i := range 2 {
		used[i] = s.label(clampLabel1+i, clampFace-2, lines[i]-31, s.w-clampFace, shown[i], [2]string{"draw.clamp.first", "draw.clamp.second"}[i])
	}
	for i := range 2 {
		at := s.text(clampMove1 + i)
		if moves[i] {
			s.signed(calc.ClampFirstMove + calc.ID(i))
		}
		s.place(clampMove1+i, at, s.w-4, lines[i]-31, s.w-4-(clampFace-2)-used[i]-8)
	}
	y := rule + 46
	key := "draw.clamp.holes"
	if rows == 1 {
		key = "draw.clamp.hole"
	}
	holed = holed && shown[0] && (shown[1] || rows == 1)
	s.label(clampHolesLabel, 4, y, s.w, holed, key)
	if holed {
		y += 17
	}
	if shown[0] || shown[1] {
		s.label(clampNote, 4, y, s.w, true, "draw.clamp.note")
	} else {
		s.needs(clampNote, 4, y, calc.ClampFirst)
	}
	for i := range mostNumbers {
		at := s.text(clampNumbers + i)
		x := clampFace
		if position, ok := marks.number(i); ok {
			x = clampFace + (marks.unit.ToSI(position)-zero)*k
			s.decimals(position, marks.decimals)
			if w := wide(s.b[at:]) / 2; x-w < margin || x+w > s.w-margin {
				s.b = s.b[:at]
			}
		}
		s.place(clampNumbers+i, at, x, rule+25, marks.room)
	}

	s.sayOld("draw.clamp:title", "draw.clamp.title")
	s.desc("draw.clamp:desc", "draw.clamp.desc")
	s.also(rows == 2, "draw.clamp.desc-second")
	s.also(holed && rows == 2, "draw.clamp.holes")
	s.also(holed && rows == 1, "draw.clamp.hole")
	s.end()
}

// jaw draws a jaw from above, with its screw.
func (s *sketch) jaw(x, y, w, h float64) {
	s.box(x, y, w, h)
	s.circle(x+w/2, y+h/2, 4)
	s.stroke(x+w/2-2.5, y+h/2+2.5, x+w/2+2.5, y+h/2-2.5)
}

// hole draws a hole of the frame where it is in the drawing.
func (s *sketch) hole(x, y float64, filled bool) {
	switch {
	case !(x > 6 && x < s.w-6):
	case filled:
		s.disc(x, y, 3)
	default:
		s.circle(x, y, 3)
	}
}

// signed appends how far a jaw moves, with its sign.
func (s *sketch) signed(id calc.ID) {
	x := s.st.SI(id)
	u := s.shownIn(id)
	switch {
	case x < 0:
		s.str("−")
	case x > 0:
		s.char('+')
	}
	s.digits(forgive(math.Abs(x)), u, digitsOf(id))
	s.unit(u)
}

// marks is how a rule is divided, in the unit of the gaps.
type marks struct {
	unit        *quantity.Unit
	step        float64 // from number to number; 0 where there is no rule
	ticks       int     // between them
	start, end  float64 // of the rule
	decimals    int
	room        float64 // for a number, in the drawing
	from, to, k float64 // in the drawing: its ends, and units to the metre
}

// marks divides the rule for a drawing of k units to the metre with the fixed jaw at zero (m): so many numbers as there is room for.
func (s *sketch) marks(k, zero float64) (m marks) {
	m.unit, m.k = s.shownIn(calc.ClampFirst), k
	if !(k > 0) || !known(zero) {
		return m
	}
	m.from = math.Max(12, clampFace-zero*k)
	m.to = s.w - 8
	each := k * m.unit.ToSI(1) // units to one of the unit
	at := m.unit.FromSI(zero)
	m.start, m.end = at+(m.from-clampFace)/each, at+(m.to-clampFace)/each
	m.room = 38
	n, first := len(s.b), 1
	for range 3 {
		m.step, first = above(m.room / each)
		m.ticks = 10
		if m.unit.Factor == inch && m.step <= 1 {
			for m.step = 1; m.step/2 >= m.room/each; {
				m.step /= 2
			}
			m.ticks = 8
		}
		m.decimals = 0
		for x := m.step; math.Abs(x-math.Round(x)) > 1e-6*x && m.decimals < 12; x *= 10 {
			m.decimals++
		}
		s.decimals(math.Floor(m.end/m.step)*m.step, m.decimals)
		m.room = math.Max(m.room, wide(s.b[n:])+8)
		s.b = s.b[:n]
	}
	switch {
	case m.ticks == 8:
	case first == 5:
		m.ticks = 5
	case first == 2:
		m.ticks = 4
	case m.step*each < 50:
		m.ticks = 2
	}
	return m
}

// inch is one in metres, exact by definition: the yard and pound agreement of 1959.
const inch = 0.0254

// number returns what stands at number i of the rule.
func (m *marks) number(i int) (position float64, ok bool) {
	if m.step == 0 {
		return 0, false
	}
	position = (math.Ceil(m.start/m.step-1e-9) + float64(i)) * m.step
	return position, position <= m.end
}

// rule draws the rule with its marks, from the line y down.
func (s *sketch) rule(m marks, y float64) {
	s.stroke(m.from, y, m.to, y)
	tick := m.step / float64(m.ticks)
	for i := math.Ceil(m.start/tick - 1e-9); i*tick <= m.end && i-m.start/tick < 200; i++ {
		x := m.from + (i*tick-m.start)*m.unit.ToSI(1)*m.k
		long := 5.0
		if whole := i / float64(m.ticks); whole == math.Floor(whole) {
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
