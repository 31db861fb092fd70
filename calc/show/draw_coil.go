package show

import (
	"math"

	"twistbench/calc"
)

const (
	coilStates = 3 // as coiled, at the last gap, and closed until the turns touch
	coilFacts  = 3 // length, pitch, gap
)

// What the drawing of the coil names.
const (
	coilOn    = iota + firstPlace // 0 where there are coils
	coilOff                       // 0 there too, 1 where one needs something, and 2 where there is none
	coilRight                     // of the coil at the last gap, and of what is at its right
	coilBend                      // the middle of the pitch that is marked, and its ends
	coilBendLow
	coilBendHigh
	coilFoot // the lowest of that coil
	coilRise // where it comes to when it closes, less the head of an arrow
	coilTravel
	coilLeft  // of the gap, and of its mark
	coilEdge  // its height at the left
	coilNearX // from there to the middle
	coilNearY
	coilMiddle
	coilGaps                             // its upper and lower mark, each from and to
	coilShown   = coilGaps + 8           // 0 for each coil that is drawn
	coilClash   = coilShown + coilStates // 0 for each whose turns would lie in each other
	coilTravels = coilClash + coilStates // 0 where it can close
	coilCells   = coilTravels + 1        // of the table: 0 where there is something to say, which number, and 1 where words take its place
)

var coilShapes = []Shape{
	{"draw.coil.far", "path", "tube", "", []place{tube, tubesFar * u}, ""},
	{"draw.coil.far-inside", "path", "tube inside", "", []place{tube, tubesFarInside * u}, ""},
	{"draw.coil.ends", "path", "end", "", []place{tube, tubesEnds * u}, ""},
	{"draw.coil.near", "path", "tube", "", []place{tube, tubesNear * u}, ""},
	{"draw.coil.near-inside", "path", "tube inside", "", []place{tube, tubesNearInside * u}, ""},
	{"draw.coil.clash", "path", "clash", "", []place{tube, tubesClash * u}, ""},
	{"draw.coil.dims", "path", "dim", "", []place{
		upright, bar, coilBendLow, coilBendHigh, coilRight + 5*u, arrow, coilFoot, coilRise, 244 * u, level, stroke, 190 * u, coilFoot, 238 * u, coilFoot,
		// Along the gap to the left, and up to it from strand to strand.
		stroke, coilLeft - 3*u, coilEdge, coilNearX, coilNearY, line, 182 * u, coilMiddle,
		stroke, coilGaps, coilGaps + 1, coilGaps + 2, coilGaps + 3, stroke, coilGaps + 4, coilGaps + 5, coilGaps + 6, coilGaps + 7,
	}, ""},
	{"draw.coil.hand", "text", "hand", "middle", []place{coilOn + 28*u, 72 * u}, "{twist.hand}"},
	{"draw.coil.pitch-letter", "text", "label", "start", []place{coilRight + 10*u, coilBend + 4*u}, "p"},
	{"draw.coil.gap-letter", "text", "label", "end", []place{coilLeft - 6*u, coilEdge + 4*u}, "g"},
	{"draw.coil.travel", "text", "label", "start", []place{251 * u, coilTravel, 60 * u}, "draw.coil.travel"},
	{"draw.coil.head-coiled", "text", "label", "middle", []place{coilShown + 94*u, 16 * u, 88 * u}, "draw.hang.as-coiled"},
	{"draw.coil.head-last", "text", "label", "middle", []place{coilShown + 1 + 182*u, 16 * u, 88 * u}, "draw.coil.last"},
	{"draw.coil.head-solid", "text", "label", "middle", []place{coilShown + 2 + 270*u, 16 * u, 88 * u}, "draw.coil.solid"},
	{"draw.coil.row-length", "text", "label", "start", []place{coilOn + 4*u, 256 * u, 50 * u}, "draw.coil.length"},
	{"draw.coil.row-pitch", "text", "label", "start", []place{coilOn + 4*u, 273 * u, 50 * u}, "draw.coil.pitch"},
	{"draw.coil.row-gap", "text", "label", "start", []place{coilOn + 4*u, 290 * u, 50 * u}, "draw.coil.gap"},
	{"draw.coil.length-coiled", "text", "label", "middle", []place{coilCells + 94*u, 256 * u, 88 * u}, number},
	{"draw.coil.length-last", "text", "label", "middle", []place{coilCells + 3 + 182*u, 256 * u, 88 * u}, number},
	{"draw.coil.length-solid", "text", "label", "middle", []place{coilCells + 6 + 270*u, 256 * u, 88 * u}, number},
	{"draw.coil.pitch-coiled", "text", "label", "middle", []place{coilCells + 9 + 94*u, 273 * u, 88 * u}, number},
	{"draw.coil.pitch-last", "text", "label", "middle", []place{coilCells + 12 + 182*u, 273 * u, 88 * u, coilCells + 14, coilCells + 14 - 1*u}, number + or + "draw.coil.long"},
	{"draw.coil.pitch-solid", "text", "label", "middle", []place{coilCells + 15 + 270*u, 273 * u, 88 * u}, number},
	{"draw.coil.gap-coiled", "text", "label", "middle", []place{coilCells + 18 + 94*u, 290 * u, 88 * u, coilCells + 20, coilCells + 20 - 1*u}, number + or + "draw.coil.clash"},
	{"draw.coil.gap-last", "text", "label", "middle", []place{coilCells + 21 + 182*u, 290 * u, 88 * u, coilCells + 23, coilCells + 23 - 1*u}, number + or + "draw.coil.clash"},
	{"draw.coil.gap-solid", "text", "label", "middle", []place{270 * u, 290 * u, 88 * u, coilShown + 2}, "draw.coil.touch"},
	{"draw.coil.note", "text", "label", "start", []place{4 * u, 313 * u, 0, coilOff, coilOff - 1*u, coilOff - 2*u}, "draw.coil.note" + or + needs + or + "draw.coil.none"},
}

var coilSaid = []Shape{
	{":title", "", "", "", nil, "draw.coil.title"},
	{
		":desc", "", "", "", []place{coilOff, coilOff - 1*u, coilOff - 2*u, coilShown, coilClash, coilShown + 1, coilShown + 2, coilTravels},
		"draw.coil.desc" + or + needs + or + "draw.coil.none" + and + "draw.coil.desc-coiled" + and + "draw.coil.desc-clash" + and + "draw.coil.desc-last" + and + "draw.coil.desc-solid" + and + "draw.coil.desc-travel",
	},
}

var coilNumbers = [...]calc.ID{
	calc.ClampPiece, calc.ClampLast, calc.CoilSolid,
	calc.CoilPitch, calc.CoilLastPitch, calc.CoilSolidPitch,
	calc.CoilGap, calc.CoilLastGap,
}

// mostTurns is how many turns of a coil are drawn at most, the same of it in each state.
const mostTurns = 6

// drawCoil draws the same few turns of the coil three times, hung side by side at one scale: mean diameter, thickness, pitch and hand are the
// plan's.
func drawCoil(s *sketch) {
	const (
		first, apart = 94.0, 88.0  // columns
		top, high    = 28.0, 198.0 // the coils
		across       = 62.0
	)
	p, o := &s.st.Plan, &s.st.Out
	var n numbers
	thick := float64(p.Thickness)
	s.turns = mostTurns
	if p.Count < mostTurns {
		s.turns = max(1, int(p.Count))
	}
	many := float64(s.turns)
	s.coils = [coilStates]helix{
		{radius: float64(p.Mean) / 2, pitch: float64(p.Pitch)},
		{radius: float64(o.LastMean) / 2, pitch: float64(o.LastPitch)},
		{radius: float64(o.SolidMean) / 2, pitch: float64(o.SolidPitch)},
	}
	widest, tallest := 0.0, 0.0
	for i := range s.coils {
		c := &s.coils[i]
		shown := where(thick-1e-12) + where(c.radius-1e-12) + where(c.pitch-1e-12)
		n[coilShown+i], n[coilClash+i] = shown, shown+where(0.99*c.along(thick)-c.pitch)
		if shown == 0 {
			widest, tallest = max(widest, 2*c.radius), max(tallest, c.pitch)
		}
	}
	k := only(widest > 0) + min(across/(widest+thick), high/(many*tallest+thick)) // units to the metre
	s.thick = thick * k
	if k != k {
		s.thick = 0
	}
	for i := range s.coils {
		c := &s.coils[i]
		c.radius, c.pitch = c.radius*k, c.pitch*k+n[coilShown+i]
		c.x, c.foot = first+apart*float64(i), top+s.thick/2+many*c.pitch
	}

	c, closed := &s.coils[1], &s.coils[2]
	hand, side := s.hand, c.radius+s.thick/2
	room := c.foot - closed.foot
	travels := where(room - 8)
	n[coilTravels] = travels
	n[coilFoot] = c.foot + s.thick/2 + travels
	n[coilRise], n[coilTravel] = n[coilFoot]-room+2, n[coilFoot]-room/2+5
	dims := where(many-3) + where(c.pitch-10)
	turn := c.foot - float64(s.turns/2)*c.pitch // where a strand in the middle comes to the front
	bend := turn - (3+hand)/4*c.pitch + dims    // and where it is on the right, and the one above it: between them
	n[coilRight], n[coilBend], n[coilBendLow], n[coilBendHigh] = c.x+side, bend, bend-c.pitch/2, bend+c.pitch/2
	gap := float64(o.LastGap) * k / 2
	middle := turn - 0.75*c.pitch + dims + where(gap-1) // the gap to the one above
	n[coilMiddle], n[coilLeft], n[coilEdge] = middle, c.x-side, middle+hand*c.pitch/4
	n[coilNearX], n[coilNearY] = c.x-0.7*c.radius, middle+hand*c.pitch*0.123
	x, y := c.pitch/(2*math.Pi), hand*c.radius
	long := math.Sqrt(x*x + y*y)
	for i := coilGaps; i < coilShown; i += 4 {
		far := gap + math.Copysign(9, gap)
		n[i], n[i+1], n[i+2], n[i+3] = c.x+x/long*far, middle+y/long*far, c.x+x/long*gap, middle+y/long*gap
		gap = -gap
	}

	for i, id := range coilNumbers {
		at := coilCells + 3*i
		n[at], n[at+1] = 0*(k+s.st.SI(id)), float64(id)
		if i >= 6 && n[coilClash+i%3] == 0 || id == calc.CoilLastPitch && o.LastPitch > o.TurnLength {
			n[at], n[at+2] = 0*k, 1
		}
	}
	n[coilOn] = 0 * k
	if k != k {
		needs := s.st.Needs(calc.CoilPitch)
		if needs == calc.None {
			needs = s.st.Needs(calc.CoilMean)
		}
		n[lacks], n[coilOff] = float64(needs), 1
		if needs == calc.None {
			n[coilOff] = 2
		}
	}
	s.n = n
}

// along returns how far a length across the fibre of a coil reaches along its axis.
func (c *helix) along(across float64) float64 {
	rise := c.pitch / (2 * math.Pi * c.radius)
	return across * math.Sqrt(1+rise*rise)
}
