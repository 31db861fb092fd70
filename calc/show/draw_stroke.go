package show

import (
	"math"

	"twistbench/calc"
	"twistbench/calc/craft"
	"twistbench/calc/quantity"
)

// What the drawing of the stroke names. Of a pair, cold and hot, the hot one is second.
const (
	strokeEnds = iota + firstPlace // of the coils
	strokeEndHot
	strokeShown  // 0 where there are coils
	strokeMoves  // the end of the cold one, where the other's is so far from it that it can be marked
	strokeBeside // of what is said of that
	strokeLines  // 0 where there are load lines
	strokeSolid  // along the length
	strokeFree   // unloaded
	strokeFreeHot
	strokeTop // where the lines leave at the top
	strokeTopHot
	strokeAt // where they come to rest
	strokeAtHot
	strokePull // what they pull there
	strokePullHot
	strokeBlocked // held at the cold length
	strokeTaut    // of what pulls back: where it leaves at the left or at the top, and how much it pulls there
	strokeTautPull
	strokeSlack // where it goes slack
	strokeLoad  // and how much the load alone pulls
	strokeLeft  // the lines' ends, from the left, and 0 where the hot one is the first and 1 where it isn't
	strokeRight
	strokeCross
	strokeSays // 0 where there is room for the words of the pull, and of the pull when held
	strokeSaysBlocked
	strokeGraph // 0 where there is one
	strokeTarget
	strokeLeast // heights, when hot
	strokeUsual
	strokeMost
	strokeUpper // where the words of a round stroke are, which (m), and its height; the same of none, and of one below
	strokeUpperIs
	strokeUpperY
	strokeNone
	strokeNoneIs
	strokeNoneY
	strokeLower
	strokeLowerIs
	strokeLowerY
	strokeLast // where the words of the last temperature are, and which
	strokeLastIs
	strokeNote // 0 where all is known, 1 where something is needed, and 2 where there is none
)

var strokeShapes = []Shape{
	{"draw.stroke.far", "path", "tube", "", []place{upright, tube, tubesFar * u}, ""},
	{"draw.stroke.far-inside", "path", "tube inside", "", []place{upright, tube, tubesFarInside * u}, ""},
	{"draw.stroke.near", "path", "tube", "", []place{upright, tube, tubesNear * u}, ""},
	{"draw.stroke.near-inside", "path", "tube inside", "", []place{upright, tube, tubesNearInside * u}, ""},
	{"draw.stroke.dims", "path", "dim", "", []place{
		stroke, strokeShown + 8*u, 18 * u, strokeShown + 8*u, 104 * u, stroke, strokeEnds, 18 * u, strokeEnds, 106 * u, arrow, strokeMoves, strokeEndHot, 106 * u,
		// The axis of the lengths, the wall where turns touch, and from the crossings down.
		stroke, strokeLines + 56*u, 246 * u, 306 * u, 246 * u, stroke, strokeSolid, 142 * u, strokeSolid, 246 * u, hatch, strokeLines + 56*u, strokeSolid, 6 * u, 142 * u, 246 * u, 0,
		stroke, strokeAt, 246 * u, strokeAt, strokeBlocked, stroke, strokeAtHot, 246 * u, strokeAtHot, strokePullHot,
		// Those of the graph.
		stroke, strokeGraph + 56*u, 298 * u, 56 * u, 390 * u, stroke, 56 * u, strokeNoneY, 306 * u, strokeNoneY, stroke, 53 * u, strokeUpperY, 59 * u, strokeUpperY, stroke, 53 * u, strokeLowerY, 59 * u, strokeLowerY,
		stroke, strokeTarget, strokeUsual, strokeTarget, 394 * u,
	}, ""},
	{"draw.stroke.cold", "path", "fibre", "", []place{stroke, strokeFree, 246 * u, strokeTop, 142 * u}, ""},
	{"draw.stroke.hot", "path", "warm", "", []place{stroke, strokeFreeHot, 246 * u, strokeTopHot, 142 * u}, ""},
	{"draw.stroke.load", "path", "yarn", "", []place{stroke, strokeTaut, strokeTautPull, strokeSlack, strokeLoad, line, 306 * u, strokeLoad}, ""},
	{"draw.stroke.rests", "path", "jaw", "", []place{circle, strokeAt, strokeBlocked, 3 * u, disc, strokeAt, strokePull, 3 * u, disc, strokeAtHot, strokePullHot, 3 * u}, ""},
	{"draw.stroke.graph", "path", "fibre", "", []place{through, 1 * u}, ""},
	{"draw.stroke.band", "path", "yarn", "", []place{through, 0, through, 2 * u}, ""},
	{"draw.stroke.bar", "path", "fibre", "", []place{stroke, strokeTarget, strokeLeast, strokeTarget, strokeMost, disc, strokeTarget, strokeUsual, 3 * u}, ""},
	{"draw.stroke.cold-label", "text", "label", "start", []place{strokeShown + 14*u, 13 * u}, "draw.stroke.cold"},
	{"draw.stroke.hot-label", "text", "label", "start", []place{strokeShown + 14*u, 65 * u}, "draw.stroke.hot"},
	{"draw.stroke.moves", "text", "label", "start", []place{strokeBeside, 111 * u, 100 * u}, "{stroke.stroke}"},
	{"draw.stroke.lines", "text", "label", "start", []place{strokeLines + 4*u, 132 * u}, "draw.stroke.lines"},
	{"draw.stroke.left", "text", "label", "end", []place{strokeLeft - 5*u, 150 * u, 0, strokeCross, strokeCross - 1*u}, "draw.stroke.is-hot" + or + "draw.stroke.is-cold"},
	{"draw.stroke.right", "text", "label", "start", []place{strokeRight + 6*u, 150 * u, 0, strokeCross, strokeCross - 1*u}, "draw.stroke.is-cold" + or + "draw.stroke.is-hot"},
	{"draw.stroke.pull", "text", "label", "end", []place{strokeAtHot - 7*u, strokePullHot - 6*u, 50 * u, strokeSays}, "{stroke.hot-pull}"},
	{"draw.stroke.blocked", "text", "label", "start", []place{strokeAt + 8*u, strokeBlocked + 5*u, 60 * u, strokeSaysBlocked}, "{stroke.blocked}"},
	{"draw.stroke.solid", "text", "label", "start", []place{strokeSolid - 4*u, 262 * u}, "draw.stroke.solid"},
	{"draw.stroke.title", "text", "label", "start", []place{strokeGraph + 4*u, 286 * u}, "draw.stroke.graph"},
	{"draw.stroke.upper", "text", "label", "end", []place{strokeUpper, strokeUpperY + 5*u, 46 * u}, scaled},
	{"draw.stroke.none", "text", "label", "end", []place{strokeNone, strokeNoneY + 5*u, 46 * u}, scaled},
	{"draw.stroke.lower", "text", "label", "end", []place{strokeLower, strokeLowerY + 5*u, 46 * u}, scaled},
	{"draw.stroke.room", "text", "label", "start", []place{strokeGraph + 56*u, 408 * u, 100 * u}, "{drive.room}"},
	{"draw.stroke.last", "text", "label", "end", []place{strokeLast, 408 * u, 100 * u}, "draw.stroke.last"},
	{"draw.stroke.target", "text", "label", "middle", []place{strokeTarget, 422 * u}, "draw.stroke.target"},
	{"draw.stroke.note", "text", "label", "start", []place{4 * u, 437 * u, 0, strokeNote, strokeNote - 1*u, strokeNote - 2*u}, "draw.stroke.note" + or + needs + or + "draw.stroke.none"},
}

var strokeSaid = []Shape{
	{":title", "", "", "", nil, "draw.stroke.said"},
	{":desc", "", "", "", []place{strokeNote, strokeNote - 1*u, strokeNote - 2*u, strokeLines}, "draw.stroke.desc" + or + needs + or + "draw.stroke.none" + and + "draw.stroke.desc-lines"},
}

// drawStroke draws the coil cold and hot under its load, a few of its turns at one scale; its pull against its length, cold and hot, with the
// load and the wall where turns touch; and its stroke against temperature, with its band.
func drawStroke(s *sketch) {
	const (
		left, right = 56.0, 256.0 // of the load lines, which leave room for words at their right
		foot, rise  = 246.0, 104.0
	)
	p, o := &s.st.Plan, &s.st.Out
	var n numbers

	// The coils. They lie, which turns their hand around.
	s.hand = -s.hand
	thick, count := float64(p.Thickness), float64(p.Count)
	long := [2]float64{float64(o.ColdLength) / count, float64(o.HotLength) / count}
	s.turns = max(1, int(min(count, mostTurns)))
	many, widest := float64(s.turns), 0.0
	shown := where(thick - 1e-12)
	for i, pitch := range long {
		mean := float64(craft.MeanOfTurn(o.TurnLength, quantity.Length(pitch)))
		shown += where(pitch-1e-12) + where(mean)
		widest = max(widest, mean)
		s.coils[i] = helix{radius: mean / 2, pitch: pitch}
	}
	k := shown + min(28/(widest+thick), 250/(many*longest(long[0], long[1])+thick)) // units to the metre
	if s.thick = thick * k; k != k {
		s.thick = 0
	}
	for i := range long {
		c := &s.coils[i]
		c.radius, c.pitch = c.radius*k, c.pitch*k
		c.x, c.foot = 36+52*float64(i), 12+s.thick/2+many*c.pitch
		n[strokeEnds+i] = c.foot + s.thick/2 + shown
	}
	n[strokeShown] = shown
	n[strokeMoves] = n[strokeEnds] + where(math.Abs(n[strokeEnds]-n[strokeEndHot])-4)
	n[strokeBeside] = n[strokeMoves] + 8
	if n[strokeEndHot] > n[strokeEnds] {
		n[strokeBeside] = n[strokeEndHot] + 8
	}

	// The load lines.
	e, a := s.st.Pulls()
	cold, hot, solid := float64(e.Cold.Free), float64(e.Hot.Free), float64(o.Solid)
	pull, pullHot, blocked := float64(o.ColdPull), float64(o.HotPull), float64(o.BlockedPull)
	top := longest(pull, pullHot, blocked) * 1.5
	ends := [2]float64{cold + top/float64(e.Cold.Rate), hot + top/float64(e.Hot.Rate)}
	least := min(solid, hot, cold, float64(o.HotLength))
	most := max(solid, ends[0], ends[1], float64(o.ColdLength), float64(o.HotLength))
	x, y := (right-left)/(most-least), rise/top
	n[strokeLines] = where(top-1e-9) + where(most-least-1e-9) + 0*x
	for i, l := range [...]float64{solid, cold, hot, ends[0], ends[1], float64(o.ColdLength), float64(o.HotLength)} {
		n[strokeSolid+i] = left + (l-least)*x + n[strokeLines]
	}
	for i, f := range [...]float64{pull, pullHot, blocked} {
		n[strokePull+i] = foot - f*y + n[strokeLines]
	}
	// What pulls back, from the left or from the top down to where it goes slack.
	slack, taut := min(max(float64(a.Slack), least), most), least
	if a.Spring == 0 {
		slack = least
	} else if f := float64(a.At(quantity.Length(least))); f > top {
		taut = slack - (top-float64(a.At(quantity.Length(slack))))/float64(a.Spring)
	}
	for i, l := range [...]float64{taut, slack} {
		n[strokeTaut+2*i] = left + (l-least)*x + n[strokeLines]
		n[strokeTautPull+2*i] = foot - float64(a.At(quantity.Length(l)))*y + n[strokeLines]
	}
	n[strokeLeft], n[strokeRight] = n[strokeTopHot], n[strokeTop]
	if ends[1] > ends[0] {
		n[strokeLeft], n[strokeRight], n[strokeCross] = n[strokeTop], n[strokeTopHot], 1
	}
	if n[strokeAtHot] > n[strokeAt] {
		n[strokeSays] = 1
	}
	if n[strokeBlocked] > n[strokePull]-14 && o.Strokes[1] <= 0 || blocked == 0 {
		n[strokeSaysBlocked] = 1
	}

	// The graph: from the room to the hottest that the book knows.
	const upper, lower, end = 298.0, 390.0, 306.0
	room, last := float64(p.Drive.Room), float64(craft.HottestWarm)
	n[strokeGraph] = where(last-room-1) + 0*float64(o.Strokes[1])
	g, unit := &s.graphs, s.shownIn(calc.FibreDiameter)
	g.from, g.apart = left, (end-left)/(graphPoints-1)
	high, low := 0.0, 0.0
	for i := range graphPoints + 1 {
		strokes := o.Strokes
		if i < graphPoints {
			strokes = s.st.StrokesAt(quantity.Temperature(min(room+(last-room)*float64(i)/(graphPoints-1), last)))
		}
		for j, stroke := range strokes {
			stroke := float64(stroke)
			if i < graphPoints {
				g.y[j][i] = stroke
			} else {
				n[strokeLeast+j] = stroke
			}
			if stroke > high {
				high = stroke
			}
			if stroke < low {
				low = stroke
			}
		}
	}
	high, _ = above(unit.FromSI(high))
	low, _ = above(unit.FromSI(-low))
	high, low = unit.ToSI(high), -unit.ToSI(low)
	y = (lower-upper)/(high-low) + n[strokeGraph] + where(high-low-1e-9)
	n[strokeGraph] = 0 * y
	for j := range g.y {
		for i := range g.y[j] {
			g.y[j][i] = lower - (g.y[j][i]-low)*y
		}
		n[strokeLeast+j] = lower - (n[strokeLeast+j]-low)*y
	}
	target := float64(p.Drive.Target)
	n[strokeTarget] = left + (target-room)/(last-room)*(end-left) + n[strokeGraph] + where(target-room) + where(last-target)
	for i, stroke := range [...]float64{high, 0, low} {
		at := strokeUpper + 3*i
		n[at], n[at+1], n[at+2] = 50+n[strokeGraph], stroke, lower-(stroke-low)*y
	}
	for _, at := range [...]int{strokeUpper, strokeLower} {
		if math.Abs(n[at+2]-n[strokeNoneY]) < 14 {
			n[at], n[at+2] = quantity.NaN, quantity.NaN
		}
	}
	n[strokeLast], n[strokeLastIs] = end+n[strokeGraph], last
	if !known(float64(o.Strokes[1])) {
		needs := s.st.Needs(calc.StrokeStroke)
		n[lacks], n[strokeNote] = float64(needs), 1
		if needs == calc.None {
			n[strokeNote] = 2
		}
	}
	s.n = n
}
