package show

import (
	"math"

	"twistbench/calc"
	"twistbench/calc/craft"
	"twistbench/calc/quantity"
)

// The thread's own drawings are narrow and long, and the page shows as much of their upper end as it has room for beside a section.
// The fibre enters at the top and leaves at the foot at the same place, so that it goes on from section to section.

// What the drawings of the thread name.
const (
	threadMore = iota + firstPlace // more than one strand
	threadThree
	threadYarn
	threadMassX // the mass
	threadMassW
	threadMassH
	threadCut
	threadTie1 // the ties
	threadTie2
	threadTwist
	threadPitch
	threadCoil
	threadCoilX // where the coil begins and ends
	threadCoilFoot
	threadHeld
	threadLong // from jaw to jaw
	threadTurns
	threadFoot  // the face of the lower jaw
	threadPiece // where it was before
	threadFirst
	threadWrap // 0 where yarn is wrapped round the coil, and how wide
	threadWide
)

var threadFibreShapes = []Shape{
	{"draw.thread.fibre.line", "path", "fibre", "", []place{
		when, threadMore, stroke, 14 * u, 0, 14 * u, 24 * u, stroke, 14 * u, 264 * u, 14 * u, 2400 * u,
		stroke, threadThree + 14*u, 24 * u, 14 * u, 264 * u, stroke, 14 * u, 24 * u, 9 * u, 44 * u, line, 9 * u, 244 * u, line, 14 * u, 264 * u,
		stroke, 14 * u, 24 * u, 19 * u, 44 * u, line, 19 * u, 244 * u, line, 14 * u, 264 * u,
		instead, stroke, 14 * u, 0, 14 * u, 2400 * u,
	}, ""},
	{"draw.thread.fibre.yarn", "path", "yarn", "", []place{when, threadYarn, stroke, 14 * u, 24 * u, 24 * u, 44 * u, line, 24 * u, 244 * u, line, 14 * u, 264 * u}, ""},
}

var threadHangShapes = []Shape{
	{"draw.thread.hang.line", "path", "fibre", "", []place{stroke, 14 * u, 0, 14 * u, 2400 * u}, ""},
	{"draw.thread.hang.mass", "path", "mass", "", []place{box, threadMassX, 150 * u, threadMassW, threadMassH}, ""},
}

var threadCutShapes = []Shape{
	{"draw.thread.cut.line", "path", "fibre", "", []place{
		when, threadCut, stroke, 14 * u, 0, 14 * u, 44 * u, stroke, 14 * u, 52 * u, 14 * u, 324 * u,
		stroke, 14 * u, 332 * u, 14 * u, 2400 * u, disc, 14 * u, threadTie1, 2.6 * u, disc, 14 * u, threadTie2, 2.6 * u, instead, stroke, 14 * u, 0, 14 * u, 2400 * u,
	}, ""},
	{"draw.thread.cut.ends", "path", "cut", "", []place{when, threadCut, stroke, 3 * u, 48 * u, 25 * u, 48 * u, stroke, 3 * u, 328 * u, 25 * u, 328 * u}, ""},
	{"draw.thread.cut.label", "text", "label", "middle", []place{25.5 * u, 188 * u, upwards, threadCut}, "{cut.length}"},
}

var threadTwistShapes = []Shape{
	{"draw.thread.twist.line", "path", "fibre", "", []place{
		when, threadTwist,
		stroke, 14 * u, 0, 14 * u, 26 * u, line, 6 * u, 40 * u, line, 6 * u, 280 * u, line, 14 * u, 294 * u,
		stroke, 14 * u, 0, 14 * u, 26 * u, line, 22 * u, 40 * u, line, 22 * u, 280 * u, line, 14 * u, 294 * u,
		stroke, 14 * u, 294 * u, 14 * u, 2400 * u, instead, stroke, 14 * u, 0, 14 * u, 2400 * u,
	}, ""},
	{"draw.thread.twist.slants", "path", "turn", "", []place{slants, threadTwist + 14*u, 40 * u, 280 * u, 8 * u, threadPitch}, ""},
}

var threadCoilShapes = []Shape{
	{"draw.thread.coil.line", "path", "fibre", "", threadCoilLine, ""},
	{"draw.thread.coil.far", "path", "tube", "", []place{tube, tubesFar * u}, ""},
	{"draw.thread.coil.far-inside", "path", "tube inside", "", []place{tube, tubesFarInside * u}, ""},
	{"draw.thread.coil.ends", "path", "end", "", []place{tube, tubesEnds * u}, ""},
	{"draw.thread.coil.near", "path", "tube", "", []place{tube, tubesNear * u}, ""},
	{"draw.thread.coil.near-inside", "path", "tube inside", "", []place{tube, tubesNearInside * u}, ""},
}

var threadWireShapes = []Shape{
	{"draw.thread.wire.line", "path", "fibre", "", threadCoilLine, ""},
	{"draw.thread.wire.far", "path", "tube", "", []place{tube, tubesFar * u}, ""},
	{"draw.thread.wire.far-inside", "path", "tube inside", "", []place{tube, tubesFarInside * u}, ""},
	{"draw.thread.wire.ends", "path", "end", "", []place{tube, tubesEnds * u}, ""},
	{"draw.thread.wire.near", "path", "tube", "", []place{tube, tubesNear * u}, ""},
	{"draw.thread.wire.near-inside", "path", "tube inside", "", []place{tube, tubesNearInside * u}, ""},
	{"draw.thread.wire.yarn", "path", "yarn", "", []place{tube, threadYarn + tubesYarn*u, slants, threadWrap + 14*u, 40 * u, threadCoilFoot, threadWide, threadPitch}, ""},
}

var threadDriveShapes = []Shape{
	{"draw.thread.drive.line", "path", "fibre", "", threadCoilLine, ""},
	{"draw.thread.drive.far", "path", "tube", "", []place{tube, tubesFar * u}, ""},
	{"draw.thread.drive.far-inside", "path", "tube inside", "", []place{tube, tubesFarInside * u}, ""},
	{"draw.thread.drive.ends", "path", "end", "", []place{tube, tubesEnds * u}, ""},
	{"draw.thread.drive.near", "path", "tube", "", []place{tube, tubesNear * u}, ""},
	{"draw.thread.drive.near-inside", "path", "tube inside", "", []place{tube, tubesNearInside * u}, ""},
	{"draw.thread.drive.warmth", "path", "warm", "", nil, warmth},
}

var threadStrokeShapes = []Shape{
	{"draw.thread.stroke.line", "path", "fibre", "", threadCoilLine, ""},
	{"draw.thread.stroke.far", "path", "tube", "", []place{tube, tubesFar * u}, ""},
	{"draw.thread.stroke.far-inside", "path", "tube inside", "", []place{tube, tubesFarInside * u}, ""},
	{"draw.thread.stroke.ends", "path", "end", "", []place{tube, tubesEnds * u}, ""},
	{"draw.thread.stroke.near", "path", "tube", "", []place{tube, tubesNear * u}, ""},
	{"draw.thread.stroke.near-inside", "path", "tube inside", "", []place{tube, tubesNearInside * u}, ""},
	{"draw.thread.stroke.load", "path", "mass", "", []place{box, threadMassX, threadCoilFoot + 26*u, threadMassW, threadMassH}, ""},
}

// The fibre above a coil, and below it.
var threadCoilLine = []place{
	when, threadCoil, stroke, 14 * u, 0, 14 * u, 24 * u, line, threadCoilX, 40 * u,
	stroke, threadCoilX, threadCoilFoot, 14 * u, threadCoilFoot + 16*u, line, 14 * u, 2400 * u, instead, stroke, 14 * u, 0, 14 * u, 2400 * u,
}

var threadClampShapes = []Shape{
	{"draw.thread.clamp.line", "path", "fibre", "", threadHeldLine, ""},
	{"draw.thread.clamp.coil", "path", "fibre", "", threadHeldCoil, ""},
	{"draw.thread.clamp.jaws", "path", "jaw", "", threadHeldJaws, ""},
	{"draw.thread.clamp.marks", "path", "ghost", "", []place{stroke, 2 * u, threadPiece, 26 * u, threadPiece, stroke, 2 * u, threadFirst, 26 * u, threadFirst}, ""},
}

var threadHeatShapes = []Shape{
	{"draw.thread.heat.line", "path", "fibre", "", threadHeldLine, ""},
	{"draw.thread.heat.coil", "path", "fibre", "", threadHeldCoil, ""},
	{"draw.thread.heat.jaws", "path", "jaw", "", threadHeldJaws, ""},
	{"draw.thread.heat.warmth", "path", "warm", "", nil, warmth},
}

// The coil between its jaws, in the frame and in the oven.
var (
	threadHeldLine = []place{when, threadHeld, stroke, 14 * u, 0, 14 * u, 40 * u, stroke, 14 * u, threadFoot, 14 * u, 2400 * u, instead, stroke, 14 * u, 0, 14 * u, 2400 * u}
	threadHeldCoil = []place{upright, coil, 40 * u, 14 * u, threadLong, 6 * u, threadTurns, bothSides * u}
	threadHeldJaws = []place{when, threadHeld, box, 2 * u, 28 * u, 24 * u, 12 * u, box, 2 * u, threadFoot, 24 * u, 12 * u}
)

// warmth rises on both sides of the coil.
const warmth = "m2 296l3-18-3-18 3-18-3-18 3-18-3-18m21 108l3-18-3-18 3-18-3-18 3-18-3-18"

// drawThread draws the thread of each section: the strands side by side, three at most, laid together above and below; the mass, its volume as
// the mass is; one piece between its cuts, with its ties, the tails in proportion to the whole; a length as thick as the gutter allows,
// with the slant and the hand of the twist; some turns of the coil as wide as the gutter allows, with its index, pitch and hand; the coil
// between the jaws at the last gap, and where the jaw stood before, in proportion; and the same in the oven's warmth.
func drawThread(s *sketch, drawing int) {
	p, o := &s.st.Plan, &s.st.Out
	var n numbers
	switch drawing {
	case fibreThread:
		strands := float64(p.Fibre.Strands)
		n[threadMore], n[threadThree], n[threadYarn] = where(strands-2), where(strands-3), where(float64(p.Yarn.Strands)-1)
	case hangThread:
		w, h := block(float64(p.Mass), 24, 25, 120)
		// Wider than the gutter it grows downwards.
		if side := 24 * cubeRoot(float64(p.Mass)); side > 25 {
			h = min(side*side*side/(w*w), 120)
		}
		n[threadMassX], n[threadMassW], n[threadMassH] = 14-w/2+0*float64(p.Mass), w, h
	case cutThread:
		length, tail := float64(o.Length), float64(p.Tail)
		tie := min(tail/length, 0.5) * 280
		n[threadCut], n[threadTie1], n[threadTie2] = where(length-1e-9)+0*tail, 48+tie, 328-tie
	case twistThread:
		angle := float64(p.Bias)
		n[threadTwist], n[threadPitch] = where(angle-1e-9)+where(math.Pi/2-angle), 16*math.Pi/math.Tan(angle)
	case coilThread, wireThread, driveThread, strokeThread:
		const across, high, most = 22.0, 240.0, 6.0
		thick, mean, pitch := float64(p.Thickness), float64(p.Mean), float64(p.Pitch)
		coiled := where(thick-1e-12) + where(mean-1e-12) + where(pitch-1e-12)
		if drawing == strokeThread { // hot, with its load
			if hot := float64(o.HotLength) / float64(p.Count); hot > 0 {
				pitch, mean = hot, float64(craft.MeanOfTurn(o.TurnLength, quantity.Length(hot)))
				coiled += where(mean)
			}
			w, h := block(float64(p.Stroke.Load), 24, 25, 60)
			n[threadMassX], n[threadMassW], n[threadMassH] = 14-w/2+coiled+0*float64(p.Stroke.Load), w, h
		}
		k := coiled + across/(mean+thick) // units to the metre
		many := max(1, min(most, math.Floor(high/(pitch*k))))
		k = min(k, high/pitch)
		foot := 40 + many*pitch*k
		s.turns, s.thick, s.coils = int(many), thick*k, [coilStates]helix{{14, foot, mean * k / 2, pitch * k}}
		if coiled != 0 {
			s.thick = 0
		}
		n[threadCoil], n[threadCoilX], n[threadCoilFoot] = coiled, 14-s.hand*mean*k/2, foot
		route, wrap := p.Wire.Route, float64(p.Wire.WrapPitch)*k
		n[threadYarn] = coiled + only(route == calc.RouteTwisted)
		n[threadWrap], n[threadWide], n[threadPitch] = coiled+only(route == calc.RouteWrapped), (mean+thick)*k/2+1, wrap+where(foot-40-wrap)
	default:
		piece, first, last := float64(p.Piece()), float64(p.First), float64(p.LastGap())
		held := where(last - 1e-12)
		k := held + 260/longest(piece, first, last)
		n[threadHeld], n[threadLong], n[threadFoot], n[threadTurns] = held, last*k, 40+last*k, float64(turns(piece*k, 14))
		n[threadPiece], n[threadFirst] = 40+piece*k+only(piece != last), 40+first*k+only(first != last)
	}
	s.n = n
}
