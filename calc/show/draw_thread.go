package show

import (
	"math"

	"twistbench/calc"
)

// The thread's own drawings are narrow and long, and the page shows as much of their upper end as it has room for beside a section.
// The fibre enters at the top and leaves at the foot at the same place, so that it goes on from section to section.
const (
	threadX   = 14.0
	threadEnd = 2400.0
)

const (
	threadFibreLine = iota
	threadFibreYarn
)

var threadFibreShapes = [...]Shape{
	threadFibreLine: {"draw.thread.fibre.line", "path", "fibre", "", nil, ""},
	threadFibreYarn: {"draw.thread.fibre.yarn", "path", "yarn", "", nil, ""},
}

// drawThreadFibre draws the strands side by side, three at most, laid together above and below.
func drawThreadFibre(s *sketch) {
	const top, spread, foot = 24.0, 44.0, 244.0
	p := &s.st.Plan
	s.path(threadFibreLine)
	if p.Fibre.Strands >= 2 {
		s.stroke(threadX, 0, threadX, top)
		s.stroke(threadX, foot+spread-top, threadX, threadEnd)
		if p.Fibre.Strands >= 3 {
			s.stroke(threadX, top, threadX, foot+spread-top)
		}
		for _, x := range [2]float64{threadX - 5, threadX + 5} {
			s.stroke(threadX, top, x, spread)
			s.line(x, foot)
			s.line(threadX, foot+spread-top)
		}
	} else {
		s.stroke(threadX, 0, threadX, threadEnd)
	}
	s.end()
	s.path(threadFibreYarn)
	if p.Yarn.Strands >= 1 {
		s.stroke(threadX, top, threadX+10, spread)
		s.line(threadX+10, foot)
		s.line(threadX, foot+spread-top)
	}
	s.end()
}

const (
	threadHangLine = iota
	threadHangMass
)

var threadHangShapes = [...]Shape{
	threadHangLine: {"draw.thread.hang.line", "path", "fibre", "", nil, ""},
	threadHangMass: {"draw.thread.hang.mass", "path", "mass", "", nil, ""},
}

// drawThreadHang draws the mass on the thread, its volume as the mass is.
func drawThreadHang(s *sketch) {
	const at = 150.0
	mass := float64(s.st.Plan.Mass)
	s.path(threadHangLine)
	s.stroke(threadX, 0, threadX, threadEnd)
	s.end()
	s.path(threadHangMass)
	if known(mass) {
		w, h := block(mass, 24, 25, 120)
		// Wider than the gutter it grows downwards.
		if side := 24 * math.Cbrt(mass); side > 25 {
			h = math.Min(side*side*side/(w*w), 120)
		}
		s.box(threadX-w/2, at, w, h)
	}
	s.end()
}

const (
	threadCutLine = iota
	threadCutEnds
	threadCutLabel
)

var threadCutShapes = [...]Shape{
	threadCutLine:  {"draw.thread.cut.line", "path", "fibre", "", nil, ""},
	threadCutEnds:  {"draw.thread.cut.ends", "path", "cut", "", nil, ""},
	threadCutLabel: {"draw.thread.cut.label", "text", "label", "middle", nil, ""},
}

// drawThreadCut draws one piece between its cuts, with its ties, the tails in proportion to the whole.
func drawThreadCut(s *sketch) {
	const top, foot, gap = 48.0, 328.0, 4.0
	p, o := &s.st.Plan, &s.st.Out
	cut, tail := float64(o.Length), float64(p.Tail)
	shown := known(cut, tail) && cut > 0
	s.path(threadCutLine)
	if shown {
		tie := math.Min(tail/cut, 0.5) * (foot - top)
		s.stroke(threadX, 0, threadX, top-gap)
		s.stroke(threadX, top+gap, threadX, foot-gap)
		s.stroke(threadX, foot+gap, threadX, threadEnd)
		s.disc(threadX, top+tie, 2.6)
		s.disc(threadX, foot-tie, 2.6)
	} else {
		s.stroke(threadX, 0, threadX, threadEnd)
	}
	s.end()
	s.path(threadCutEnds)
	if shown {
		s.stroke(3, top, 25, top)
		s.stroke(3, foot, 25, foot)
	}
	s.end()
	from := s.text(threadCutLabel)
	if shown {
		s.number(calc.CutLength)
		if wide(s.b[from:]) > foot-top-20 {
			s.b = s.b[:from]
		}
	}
	s.end()
	id := s.shapes[threadCutLabel].ID
	s.put(id, "", "x", "25.5")
	s.put(id, "", "y", "188")
	s.put(id, "", "transform", "rotate(-90 25.5 188)")
}

const (
	threadTwistLine = iota
	threadTwistSlants
)

var threadTwistShapes = [...]Shape{
	threadTwistLine:   {"draw.thread.twist.line", "path", "fibre", "", nil, ""},
	threadTwistSlants: {"draw.thread.twist.slants", "path", "turn", "", nil, ""},
}

// drawThreadTwist draws a length of the thread as thick as the gutter allows, with the slant and the hand of the twist.
func drawThreadTwist(s *sketch) {
	const top, foot, neck, radius = 40.0, 280.0, 14.0, 8.0
	angle := float64(s.st.Plan.Bias)
	shown := angle > 0 && angle < math.Pi/2
	s.path(threadTwistLine)
	if shown {
		for _, x := range [2]float64{threadX - radius, threadX + radius} {
			s.stroke(threadX, 0, threadX, top-neck)
			s.line(x, top)
			s.line(x, foot)
			s.line(threadX, foot+neck)
		}
		s.stroke(threadX, foot+neck, threadX, threadEnd)
	} else {
		s.stroke(threadX, 0, threadX, threadEnd)
	}
	s.end()
	s.path(threadTwistSlants)
	if shown {
		s.slants(threadX, top, foot, radius, 2*math.Pi*radius/math.Tan(angle))
	}
	s.end()
}

const (
	threadCoilLine = iota
	threadCoilTubes
)

var threadCoilShapes = [...]Shape{
	threadCoilLine:      {"draw.thread.coil.line", "path", "fibre", "", nil, ""},
	threadCoilTubes:     {"draw.thread.coil.far", "path", "tube", "", nil, ""},
	threadCoilTubes + 1: {"draw.thread.coil.far-inside", "path", "tube inside", "", nil, ""},
	threadCoilTubes + 2: {"draw.thread.coil.ends", "path", "end", "", nil, ""},
	threadCoilTubes + 3: {"draw.thread.coil.near", "path", "tube", "", nil, ""},
	threadCoilTubes + 4: {"draw.thread.coil.near-inside", "path", "tube inside", "", nil, ""},
}

// drawThreadCoil draws some turns of the coil as wide as the gutter allows, with its index, pitch and hand.
func drawThreadCoil(s *sketch) {
	const top, across, high, most = 40.0, 22.0, 240.0, 6.0
	p := &s.st.Plan
	thick, mean, pitch := float64(p.Thickness), float64(p.Mean), float64(p.Pitch)
	shown := thick > 0 && mean > 0 && pitch > 0 && known(thick, mean, pitch)
	n := 0.0
	if shown {
		k := across / (mean + thick) // units to the metre
		n = math.Max(1, math.Min(most, math.Floor(high/(pitch*k))))
		k = math.Min(k, high/pitch)
		thick, mean, pitch = thick*k, mean*k, pitch*k
	} else {
		thick, mean, pitch = 0, 0, 0
	}
	foot := top + n*pitch
	s.path(threadCoilLine)
	if shown {
		x := threadX - s.hand()*mean/2 // where the coil begins and ends
		s.stroke(threadX, 0, threadX, top-16)
		s.line(x, top)
		s.stroke(x, foot, threadX, foot+16)
		s.line(threadX, threadEnd)
	} else {
		s.stroke(threadX, 0, threadX, threadEnd)
	}
	s.end()
	s.coils = [coilStates]helix{{threadX, foot, mean / 2, pitch}}
	s.thick, s.turns = thick, int(n)
	for i := range 5 {
		s.path(threadCoilTubes + i)
		s.width = math.NaN()
		s.tube(i)
		s.end()
		if s.width == s.width {
			s.attribute(s.shapes[threadCoilTubes+i].ID, "stroke-width", s.width)
		}
	}
}

const (
	threadClampLine = iota
	threadClampCoil
	threadClampJaws
	threadClampMarks
)

var threadClampShapes = [...]Shape{
	threadClampLine:  {"draw.thread.clamp.line", "path", "fibre", "", nil, ""},
	threadClampCoil:  {"draw.thread.clamp.coil", "path", "fibre", "", nil, ""},
	threadClampJaws:  {"draw.thread.clamp.jaws", "path", "jaw", "", nil, ""},
	threadClampMarks: {"draw.thread.clamp.marks", "path", "ghost", "", nil, ""},
}

// drawThreadClamp draws the coil between the jaws at the last gap, and where the jaw stood before, in proportion.
func drawThreadClamp(s *sketch) {
	const top = threadTop
	p := &s.st.Plan
	piece, first, last := float64(p.Piece()), float64(p.First), float64(p.LastGap())
	k := threadHeld(s, threadClampLine, threadClampCoil, threadClampJaws)
	s.path(threadClampMarks)
	for _, x := range [2]float64{piece, first} {
		if k > 0 && known(x) && x != last {
			s.stroke(2, top+x*k, 26, top+x*k)
		}
	}
	s.end()
}

const threadTop = 40.0 // the face of the upper jaw

// threadHeld draws the thread coiled between two jaws at the last gap, and returns its scale in units to the metre; 0 where there is no gap.
func threadHeld(s *sketch, line, coil, jaws int) float64 {
	const top, most, jaw = threadTop, 260.0, 12.0
	p := &s.st.Plan
	piece, first, last := float64(p.Piece()), float64(p.First), float64(p.LastGap())
	k, foot := 0.0, top
	if known(last) && last > 0 {
		k = most / longest(piece, first, last)
		foot += last * k
	}
	s.path(line)
	if k > 0 {
		s.stroke(threadX, 0, threadX, top)
		s.stroke(threadX, foot, threadX, threadEnd)
	} else {
		s.stroke(threadX, 0, threadX, threadEnd)
	}
	s.end()
	n := turns(piece*k, 14)
	s.upright = true
	s.path(coil)
	if k > 0 {
		s.coil(top, threadX, last*k, 6, n, nearSide|farSide)
	}
	s.end()
	s.upright = false
	s.path(jaws)
	if k > 0 {
		s.box(2, top-jaw, 24, jaw)
		s.box(2, foot, 24, jaw)
	}
	s.end()
	return k
}
