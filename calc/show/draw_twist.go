package show

import (
	"math"

	"twistbench/calc"
)

// twistRows is how many marks there are along the count of turns: slow down, first coil, turns of twist, full coiling.
const twistRows = 4

// What the drawing of the twist names.
const (
	twistOn    = iota + firstPlace // 0 where the fibre is drawn
	twistOff                       // 0 where it is not, and 1 where it is
	twistPitch                     // of the lines on it
	twistArmX                      // the end of the line at the bias angle
	twistArmY
	twistBend1 // the control points of the arc, and its end
	twistBend2
	twistBend2Y
	twistArcX
	twistArcY
	twistBiasX // the words beside it
	twistLeft  // 0 where lines rise to the left, and 2 where to the right
	twistCount // 0 where there is a count of turns
	twistLeast // of the first coil
	twistMost
	twistWide
	twistTurns                          // where each mark is on the line
	twistMarks = twistTurns + twistRows // 0 for those that are known
)

var twistShapes = []Shape{
	{"draw.twist.fibre", "path", "fibre", "", []place{
		stroke, twistOn + 68*u, 80 * u, twistOn + 68*u, 186 * u, stroke, twistOn + 116*u, 80 * u, twistOn + 116*u, 186 * u,
		stroke, twistCount + 14*u, 240 * u, twistCount + 14*u, 252 * u, stroke, twistCount + 14*u, 246 * u, twistCount + 306*u, 246 * u,
	}, ""},
	// A triangle above the line, a hatched band, a ring below it and a disc on it; and each of them in the legend.
	{"draw.twist.marks", "path", "turn", "", []place{
		slants, twistOn + 92*u, 80 * u, 186 * u, 24 * u, twistPitch,
		stroke, twistTurns - 5.5*u, 229.5 * u, twistTurns + 5.5*u, 229.5 * u, line, twistTurns, 238.5 * u, line, twistTurns - 5.5*u, 229.5 * u,
		stroke, twistMarks + 8.5*u, 273 * u, twistMarks + 19.5*u, 273 * u, line, twistMarks + 14*u, 282 * u, line, twistMarks + 8.5*u, 273 * u,
		box, twistLeast, 240.5 * u, twistWide, 11 * u, hatch, twistLeast + 11*u, twistMost, 6 * u, 251.5 * u, 240.5 * u, 11 * u, stroke, twistTurns + 1, 237 * u, twistTurns + 1, 255 * u,
		box, twistMarks + 1 + 6*u, 290 * u, 16 * u, 11 * u, hatch, twistMarks + 1 + 17*u, 22 * u, 6 * u, 301 * u, 290 * u, 11 * u, stroke, twistMarks + 1 + 14*u, 286.5 * u, twistMarks + 1 + 14*u, 304.5 * u,
		stroke, twistTurns + 2, 246 * u, twistTurns + 2, 256 * u, circle, twistTurns + 2, 260.5 * u, 4.5 * u,
		circle, twistMarks + 2 + 14*u, 313.5 * u, 4.5 * u,
		disc, twistTurns + 3, 246 * u, 4.5 * u, disc, twistMarks + 3 + 14*u, 331.5 * u, 4.5 * u,
	}, ""},
	{"draw.twist.angle", "path", "dim", "", []place{
		when, twistOn, stroke, 92 * u, 192 * u, 92 * u, 12 * u, stroke, 92 * u, 80 * u, twistArmX, twistArmY,
		move, 92 * u, 18 * u, bend, twistBend1, 18 * u, twistBend2, twistBend2Y, twistArcX, twistArcY, bar, 68 * u, 116 * u, 200 * u,
	}, ""},
	{"draw.twist.hand", "text", "hand", "middle", []place{twistOn + 250*u, 74 * u}, "{twist.hand}"},
	{"draw.twist.bias", "text", "label", "middle", []place{twistBiasX, twistArmY + 2*u, 90 * u}, "draw.twist.bias"},
	{"draw.twist.thick", "text", "label", "start", []place{twistOn + 126*u, 204 * u, 194 * u}, "draw.twist.thick"},
	{"draw.twist.rises", "text", "label", "start", []place{twistOn + 150*u, 102 * u, 170 * u, twistLeft, twistLeft - 2*u}, "draw.twist.left" + or + "draw.twist.right"},
	{"draw.twist.head", "text", "label", "start", []place{twistCount + 4*u, 222 * u}, "draw.twist.count"},
	{"draw.twist.slow", "text", "label", "start", []place{twistMarks + 30*u, 282 * u}, "draw.twist.slow"},
	{"draw.twist.onset", "text", "label", "start", []place{twistMarks + 1 + 30*u, 300 * u}, "draw.twist.onset"},
	{"draw.twist.turns", "text", "label", "start", []place{twistMarks + 2 + 30*u, 318 * u}, "draw.twist.turns"},
	{"draw.twist.full", "text", "label", "start", []place{twistMarks + 3 + 30*u, 336 * u}, "draw.twist.full"},
	{"draw.twist.note", "text", "label", "start", []place{4 * u, 358 * u, 0, lacks}, "draw.twist.note" + or + needs},
}

var twistSaid = []Shape{
	{":title", "", "", "", nil, "draw.twist.title"},
	{
		":desc", "", "", "", []place{twistOn, twistOff, twistMarks, twistMarks + 1, twistMarks + 2, twistMarks + 3},
		"draw.twist.desc" + or + needs + semi + "draw.twist.slow" + semi + "draw.twist.onset" + semi + "draw.twist.turns" + semi + "draw.twist.full" + and + ".",
	},
}

// drawTwist draws a length of the fibre as twisted, with lines that ran straight along it before, and below it the turns of the drill from 0 to
// the last that this plan speaks of.
func drawTwist(s *sketch) {
	const (
		middle, top = 92.0, 80.0 // of the fibre
		arm, reach  = 68.0, 62.0 // of the angle
		left, right = 14.0, 306.0
	)
	p, o := &s.st.Plan, &s.st.Out
	var n numbers
	angle, hand := float64(p.Bias), s.hand
	on := where(angle-1e-9) + where(math.Pi/2-angle) + 0*float64(p.Thickness)
	sin, cos := math.Sincos(angle + on)
	ease := reach * 4 / 3 * math.Tan(angle/4)
	n[twistOn], n[twistPitch] = on, 48*math.Pi*cos/sin
	if on == 0 {
		n[twistOff] = 1
	}
	n[twistArmX], n[twistArmY], n[twistBiasX] = middle+hand*sin*arm, top-cos*arm, middle+hand*(sin*arm+26)
	n[twistArcX], n[twistArcY] = middle+hand*sin*reach, top-cos*reach
	n[twistBend1], n[twistBend2], n[twistBend2Y] = middle+hand*ease, n[twistArcX]-hand*cos*ease, n[twistArcY]-sin*ease
	n[twistLeft] = hand + 1

	least, most := float64(o.Onset[1]), float64(o.Onset[2])
	counts := [twistRows]float64{float64(o.Slow), float64(o.Onset[0]) + 0*(least+most), float64(p.Turns), float64(o.AllTurns)}
	end := longest(counts[0], counts[1], counts[2], counts[3], most)
	k := (right-left)/end + only(end > 0) // units to the turn
	n[twistCount], n[twistLeast], n[twistMost], n[twistWide] = 0*k, left+least*k, left+most*k, (most-least)*k
	for i, x := range counts {
		x += where(x)
		n[twistTurns+i], n[twistMarks+i] = left+x*k, 0*x
	}
	needs := s.st.Needs(calc.TwistBias)
	if needs == calc.None {
		needs = s.st.Needs(calc.CoilTurns)
	}
	n[lacks] = float64(needs)
	s.n = n
}

// slants draws the near side of lines that ran straight along a fibre round the upright line x before it was twisted, from the height top to
// foot: each goes once round in a pitch, and one is in the middle at the top.
func (s *sketch) slants() {
	x, top, foot, radius, pitch := s.a[0], s.a[1], s.a[2], s.a[3], s.a[4]
	// As many lines side by side as the eye parts.
	lines := max(1, min(6, math.Round(pitch/28)))
	apart := max(pitch/lines, 9)
	rise, hand := pitch/(2*math.Pi), s.hand // to the radian
	for at := top - math.Floor(pitch/4/apart)*apart; at <= foot+pitch/4; at += apart {
		from := max(-math.Pi/2, (at-foot)/rise)
		to := min(math.Pi/2, (at-top)/rise)
		if to-from < 0.01 {
			continue
		}
		sin, cos := math.Sincos(from)
		s.to('m', x+hand*radius*sin, at-from*rise)
		// A piece on either side of the middle: cubic curves with the slopes of the helix at both ends.
		for _, end := range [2]float64{min(to, 0), to} {
			if part := (end - from) / 3; part > 0 {
				endSin, endCos := math.Sincos(end)
				s.curve(x+hand*radius*(sin+cos*part), at-(from+part)*rise,
					x+hand*radius*(endSin-endCos*part), at-(end-part)*rise,
					x+hand*radius*endSin, at-end*rise)
				from, sin, cos = end, endSin, endCos
			}
		}
	}
}
