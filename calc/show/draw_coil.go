package show

import (
	"math"

	"twistbench/calc"
)

const (
	coilAxis = iota
	coilTubes
	coilClash = iota + tubesNearInside
	coilDims
	coilHand
	coilPitchLetter
	coilGapLetter
	coilTravel
	coilHeads
	coilRows  = coilHeads + coilStates
	coilCells = coilRows + coilFacts
	coilNote  = coilCells + coilFacts*coilStates
)

const (
	coilStates = 3 // as coiled, at the last gap, and closed until the turns touch
	coilFacts  = 3 // length, pitch, gap
)

var coilShapes = [...]Shape{
	coilAxis:        {"draw.coil.axis", "path", "ghost", ""},
	coilTubes:       {"draw.coil.far", "path", "tube", ""},
	coilTubes + 1:   {"draw.coil.far-inside", "path", "tube inside", ""},
	coilTubes + 2:   {"draw.coil.ends", "path", "end", ""},
	coilTubes + 3:   {"draw.coil.near", "path", "tube", ""},
	coilTubes + 4:   {"draw.coil.near-inside", "path", "tube inside", ""},
	coilClash:       {"draw.coil.clash", "path", "clash", ""},
	coilDims:        {"draw.coil.dims", "path", "dim", ""},
	coilHand:        {"draw.coil.hand", "text", "hand", "middle"},
	coilPitchLetter: {"draw.coil.pitch-letter", "text", "label", "start"},
	coilGapLetter:   {"draw.coil.gap-letter", "text", "label", "end"},
	coilTravel:      {"draw.coil.travel", "text", "label", "start"},
	coilHeads:       {"draw.coil.head-coiled", "text", "label", "middle"},
	coilHeads + 1:   {"draw.coil.head-last", "text", "label", "middle"},
	coilHeads + 2:   {"draw.coil.head-solid", "text", "label", "middle"},
	coilRows:        {"draw.coil.row-length", "text", "label", "start"},
	coilRows + 1:    {"draw.coil.row-pitch", "text", "label", "start"},
	coilRows + 2:    {"draw.coil.row-gap", "text", "label", "start"},
	coilCells:       {"draw.coil.length-coiled", "text", "label", "middle"},
	coilCells + 1:   {"draw.coil.length-last", "text", "label", "middle"},
	coilCells + 2:   {"draw.coil.length-solid", "text", "label", "middle"},
	coilCells + 3:   {"draw.coil.pitch-coiled", "text", "label", "middle"},
	coilCells + 4:   {"draw.coil.pitch-last", "text", "label", "middle"},
	coilCells + 5:   {"draw.coil.pitch-solid", "text", "label", "middle"},
	coilCells + 6:   {"draw.coil.gap-coiled", "text", "label", "middle"},
	coilCells + 7:   {"draw.coil.gap-last", "text", "label", "middle"},
	coilCells + 8:   {"draw.coil.gap-solid", "text", "label", "middle"},
	coilNote:        {"draw.coil.note", "text", "label", "start"},
}

var (
	coilHeadKeys = [coilStates]string{"draw.hang.as-coiled", "draw.coil.last", "draw.coil.solid"}
	coilRowKeys  = [coilFacts]string{"draw.coil.length", "draw.coil.pitch", "draw.coil.gap"}
	coilNumbers  = [coilFacts * coilStates]calc.ID{
		calc.ClampPiece, calc.ClampLast, calc.CoilSolid,
		calc.CoilPitch, calc.CoilLastPitch, calc.CoilSolidPitch,
		calc.CoilGap, calc.CoilLastGap, calc.None,
	}
)

// mostTurns is how many turns of a coil are drawn at most, the same of it in each state.
const mostTurns = 6

// drawCoil draws the same few turns of the coil three times, hung side by side at one scale: mean diameter, thickness, pitch and hand are the
// plan's.
func drawCoil(s *sketch) {
	const (
		first, apart = 94.0, 88.0  // columns
		top, high    = 36.0, 186.0 // the coils
		across       = 62.0
		table, row   = 256.0, 17.0
	)
	p, o := &s.st.Plan, &s.st.Out
	thick := float64(p.Thickness)
	n := mostTurns
	if p.Count < mostTurns {
		n = max(1, int(p.Count))
	}
	means := [coilStates]float64{float64(p.Mean), float64(o.LastMean), float64(o.SolidMean)}
	pitches := [coilStates]float64{float64(p.Pitch), float64(o.LastPitch), float64(o.SolidPitch)}
	var coils [coilStates]helix
	var shown, clash [coilStates]bool
	wide, long := 0.0, 0.0
	for i, mean := range means {
		pitch := pitches[i]
		shown[i] = thick > 0 && mean > 0 && pitch > 0 && known(thick, mean, pitch)
		if shown[i] {
			coils[i] = helix{radius: mean / 2, pitch: pitch}
			wide, long = math.Max(wide, mean), math.Max(long, pitch)
			clash[i] = pitch < thick*0.99*lean(mean, pitch)
		}
	}
	k := 0.0 // units to the metre
	if wide > 0 {
		k = math.Min(across/(wide+thick), high/(float64(n)*long+thick))
		thick *= k
	} else {
		thick = 0
	}
	begin := top + thick/2
	for i := range coils {
		c := &coils[i]
		c.radius, c.pitch = c.radius*k, c.pitch*k
		c.x, c.foot = first+apart*float64(i), begin+float64(n)*c.pitch
	}

	s.path(coilAxis)
	for i, c := range coils {
		if shown[i] {
			s.stroke(c.x, top-9, c.x, c.foot+thick/2+9)
		}
	}
	s.end()
	s.tubes(coilTubes, coils[:], thick, n)
	// Turns that would lie in each other show through each other.
	s.path(coilClash)
	for i, c := range coils {
		if clash[i] {
			edge := math.Min(thick/2*lean(means[i], pitches[i]), 16)
			c.foot += edge
			s.crossings(c, n, 0)
			c.foot -= 2 * edge
			s.crossings(c, n, 0)
		}
	}
	s.end()

	c := coils[1]
	dims := shown[1] && n >= 3 && c.pitch >= 10
	gap := float64(o.LastGap) * k
	gaps := dims && !clash[1] && gap >= 2
	end := [2]float64{c.foot + thick/2, coils[2].foot + thick/2}
	travels := shown[1] && shown[2] && end[0]-end[1] >= 8
	side := c.radius + thick/2
	turn := c.foot - float64(n/2)*c.pitch // where a strand in the middle comes to the front
	bend := turn - (1+s.hand())/4*c.pitch // and where it is on the right
	between := turn - 0.75*c.pitch        // the gap to the one above
	s.path(coilDims)
	s.upright = true
	if dims {
		s.bar(bend-c.pitch, bend, c.x+side+5)
	}
	if travels {
		s.arrow(end[0], end[1]+2, coils[2].x-26)
	}
	s.upright = false
	if travels {
		s.stroke(c.x+8, end[0], coils[2].x-32, end[0])
	}
	edge := between + s.hand()*c.pitch/4
	if gaps {
		// Along the gap to the left, and across it from strand to strand.
		s.stroke(c.x-side-3, edge, c.x-0.7*c.radius, between+s.hand()*c.pitch*0.123)
		s.line(c.x, between)
		// The unit vector across it, and the other turned by a right angle along it.
		x, y := c.pitch/(2*math.Pi), s.hand()*c.radius
		long := math.Hypot(x, y)
		x, y = x/long, y/long
		for _, side := range [2]float64{-1, 1} {
			at := func(off, along float64) (float64, float64) {
				off = (gap/2 + off) * side
				return c.x + x*off + y*along, between + y*off - x*along
			}
			s.move(at(9, 0))
			s.line(at(0, 0))
			s.move(at(3, -2))
			s.line(at(0, 0))
			s.line(at(3, 2))
		}
	}
	s.end()

	from := s.text(coilHand)
	any := wide > 0
	if any {
		s.number(calc.TwistHand)
	}
	s.place(coilHand, from, 28, top+44, 40)
	s.symbol(coilPitchLetter, c.x+side+10, bend-c.pitch/2+4, dims, 'p')
	s.symbol(coilGapLetter, c.x-side-6, edge+4, gaps, 'g')
	s.label(coilTravel, coils[2].x-19, (end[0]+end[1])/2+5, apart/2+16, travels, "draw.coil.travel")
	for i, c := range coils {
		s.label(coilHeads+i, c.x, 16, apart, shown[i], coilHeadKeys[i])
	}
	for i := range coilFacts {
		s.label(coilRows+i, 4, table+row*float64(i), first-apart/2, any, coilRowKeys[i])
	}
	for i, id := range coilNumbers {
		state, fact := i%coilStates, i/coilStates
		from := s.text(coilCells + i)
		switch {
		case !any:
		case id == calc.None:
			if shown[state] {
				s.words("draw.coil.touch")
			}
		case fact == 2 && clash[state]:
			s.words("draw.coil.clash")
		case fact == 1 && state == 1 && pitches[1] > float64(o.TurnLength):
			s.words("draw.coil.long")
		case known(s.st.SI(id)):
			s.number(id)
		}
		s.place(coilCells+i, from, coils[state].x, table+row*float64(fact), apart)
	}

	needs := s.st.Needs(calc.CoilPitch)
	if needs == calc.None {
		needs = s.st.Needs(calc.CoilMean)
	}
	from = s.text(coilNote)
	s.coilNote(any, needs, "draw.coil.note")
	s.place(coilNote, from, 4, table+row*coilFacts+6, s.w)

	s.say("draw.coil:title", "draw.coil.title")
	s.writer.text("draw.coil:desc", "")
	s.coilNote(any, needs, "draw.coil.desc")
	s.also(shown[0], "draw.coil.desc-coiled")
	s.also(clash[0], "draw.coil.desc-clash")
	s.also(shown[1], "draw.coil.desc-last")
	s.also(shown[2], "draw.coil.desc-solid")
	s.also(travels, "draw.coil.desc-travel")
	s.end()
}

// coilNote appends the words of a key where a coil is drawn, and else what is needed for one, or that there is none.
func (s *sketch) coilNote(any bool, needs calc.ID, key string) {
	switch {
	case any:
		s.words(key)
	case needs != calc.None:
		s.needing(needs)
	default:
		s.words("draw.coil.none")
	}
}

// symbol appends a letter as the text of shape i at (x, y).
//
//go:noinline
func (s *sketch) symbol(i int, x, y float64, show bool, letter byte) {
	from := s.text(i)
	if show {
		s.char(letter)
	}
	s.place(i, from, x, y, s.w)
}

// lean returns how much further apart along the axis the turns of a coil are than across the fibre: one over the cosine of its pitch angle.
func lean(mean, pitch float64) float64 { return math.Hypot(1, pitch/(math.Pi*mean)) }
