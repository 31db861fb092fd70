package show

import (
	"math"

	"twistbench/calc"
)

const (
	coilTubes = iota
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
		top, high    = 28.0, 198.0 // the coils
		across       = 62.0
		table, row   = 256.0, 17.0
	)
	p, o := &s.st.Plan, &s.st.Out
	thick := float64(p.Thickness)
	n := mostTurns
	if p.Count < mostTurns {
		n = max(1, int(p.Count))
	}
	coils := [coilStates]helix{
		{radius: float64(p.Mean), pitch: float64(p.Pitch)},
		{radius: float64(o.LastMean), pitch: float64(o.LastPitch)},
		{radius: float64(o.SolidMean), pitch: float64(o.SolidPitch)},
	}
	var shown, clash [coilStates]bool
	wide, long := 0.0, 0.0
	for i := range coils {
		c := &coils[i]
		c.radius /= 2
		shown[i] = thick > 0 && c.radius > 0 && c.pitch > 0 && known(thick, c.radius, c.pitch)
		if shown[i] {
			wide, long = math.Max(wide, 2*c.radius), math.Max(long, c.pitch)
			clash[i] = c.pitch < 0.99*c.along(thick)
		} else {
			*c = helix{}
		}
	}
	any := wide > 0
	k := 0.0 // units to the metre
	if any {
		k = math.Min(across/(wide+thick), high/(float64(n)*long+thick))
		thick *= k
	} else {
		thick = 0
	}
	for i := range coils {
		c := &coils[i]
		c.radius, c.pitch = c.radius*k, c.pitch*k
		c.x, c.foot = first+apart*float64(i), top+thick/2+float64(n)*c.pitch
	}

	s.tubes(coilTubes, coils[:], thick, n)
	// Turns that would lie in each other show through each other.
	s.path(coilClash)
	for i := range coils {
		if c := &coils[i]; clash[i] {
			edge := math.Min(c.along(thick)/2, 16)
			for _, by := range [2]float64{edge, -edge} {
				s.crossings(helix{c.x, c.foot + by, c.radius, c.pitch}, n, 0)
			}
		}
	}
	s.end()

	c, closed := &coils[1], &coils[2]
	gap := float64(o.LastGap) * k / 2
	dims := shown[1] && n >= 3 && c.pitch >= 10
	gaps := dims && gap >= 1
	foot, room := c.foot+thick/2, c.foot-closed.foot
	travels := shown[1] && shown[2] && room >= 8
	side := c.radius + thick/2
	hand := s.hand()
	turn := c.foot - float64(n/2)*c.pitch // where a strand in the middle comes to the front
	bend := turn - (3+hand)/4*c.pitch     // and where it is on the right, and the one above it: between them
	between := turn - 0.75*c.pitch        // the gap to the one above, in the middle
	edge := between + hand*c.pitch/4      // and on the left
	s.path(coilDims)
	s.upright = true
	if dims {
		s.bar(bend-c.pitch/2, bend+c.pitch/2, c.x+side+5)
	}
	if travels {
		s.arrow(foot, foot-room+2, closed.x-26)
	}
	s.upright = false
	if travels {
		s.stroke(c.x+8, foot, closed.x-32, foot)
	}
	if gaps {
		// Along the gap to the left, and up to it from strand to strand.
		s.stroke(c.x-side-3, edge, c.x-0.7*c.radius, between+hand*c.pitch*0.123)
		s.line(c.x, between)
		x, y := c.pitch/(2*math.Pi), hand*c.radius
		long := math.Hypot(x, y)
		x, y = x/long, y/long
		for _, by := range [2]float64{gap, -gap} {
			far := by + math.Copysign(9, by)
			s.stroke(c.x+x*far, between+y*far, c.x+x*by, between+y*by)
		}
	}
	s.end()

	from := s.text(coilHand)
	if any {
		s.number(calc.TwistHand)
	}
	s.place(coilHand, from, 28, top+44, 40)
	s.symbol(coilPitchLetter, c.x+side+10, bend+4, dims, 'p')
	s.symbol(coilGapLetter, c.x-side-6, edge+4, gaps, 'g')
	s.label(coilTravel, closed.x-19, foot-room/2+5, apart/2+16, travels, "draw.coil.travel")
	for i, key := range coilHeadKeys {
		s.label(coilHeads+i, coils[i].x, 16, apart, shown[i], key)
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
		case id == calc.CoilLastPitch && o.LastPitch > o.TurnLength:
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

// along returns how far a length across the fibre of a coil reaches along its axis.
func (c *helix) along(across float64) float64 {
	return across * math.Hypot(1, c.pitch/(2*math.Pi*c.radius))
}
