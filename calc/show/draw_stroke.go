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
	strokeTaut // where the line of what pulls back begins, at the left or at the top, and where it goes slack
	strokeSlack
	strokePull // heights: what they pull at rest, held at the cold length, and what pulls back at those two
	strokePullHot
	strokeBlocked
	strokeTautPull
	strokeLoad
	strokeLeft // the lines' ends, from the left, and 0 where the hot one is the first and 1 where it isn't
	strokeRight
	strokeCross
	strokeSays  // 0 where there is room for the words of the pull when held
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
		stroke, strokeShown + 8*u, 18 * u, strokeShown + 8*u, 104 * u, stroke, strokeEnds, 18 * u, strokeEnds, 54 * u, stroke, strokeEnds, 72 * u, strokeEnds, 106 * u, arrow, strokeMoves, strokeEndHot, 106 * u,
		// The axis of the lengths, the wall where turns touch, and from the crossings down.
		stroke, strokeLines + 64*u, 246 * u, 306 * u, 246 * u, stroke, strokeSolid, 142 * u, strokeSolid, 246 * u, hatch, strokeLines + 52*u, strokeSolid, 4 * u, 142 * u, 246 * u, 0,
		stroke, strokeAt, 246 * u, strokeAt, strokeBlocked, stroke, strokeAtHot, 246 * u, strokeAtHot, strokePullHot,
		// Those of the graph.
		stroke, strokeGraph + 64*u, 298 * u, 64 * u, 390 * u, stroke, 64 * u, strokeNoneY, 306 * u, strokeNoneY, stroke, 61 * u, strokeUpperY, 67 * u, strokeUpperY, stroke, 61 * u, strokeLowerY, 67 * u, strokeLowerY,
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
	{"draw.stroke.left", "text", "label", "end", []place{strokeLeft - 10*u, 150 * u, 0, strokeCross, strokeCross - 1*u}, "draw.stroke.is-hot" + or + "draw.stroke.is-cold"},
	{"draw.stroke.right", "text", "label", "start", []place{strokeRight + 6*u, 150 * u, 0, strokeCross, strokeCross - 1*u}, "draw.stroke.is-cold" + or + "draw.stroke.is-hot"},
	{"draw.stroke.pull", "text", "label", "end", []place{306 * u, strokeLoad - 6*u, 90 * u}, "{stroke.pull}"},
	{"draw.stroke.blocked", "text", "label", "end", []place{strokeAt - 10*u, strokeBlocked - 2*u, 0, strokeSays}, "{stroke.blocked}"},
	{"draw.stroke.solid", "text", "label", "start", []place{strokeSolid - 4*u, 262 * u}, "draw.stroke.solid"},
	{"draw.stroke.title", "text", "label", "start", []place{strokeGraph + 4*u, 286 * u}, "draw.stroke.graph"},
	{"draw.stroke.upper", "text", "label", "end", []place{strokeUpper, strokeUpperY + 5*u, 57 * u}, scaled},
	{"draw.stroke.none", "text", "label", "end", []place{strokeNone, strokeNoneY + 5*u, 57 * u}, scaled},
	{"draw.stroke.lower", "text", "label", "end", []place{strokeLower, strokeLowerY + 5*u, 57 * u}, scaled},
	{"draw.stroke.room", "text", "label", "start", []place{strokeGraph + 64*u, 408 * u, 100 * u}, "{drive.room}"},
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
	const left, end = 64.0, 306.0 // of the load lines and the graph; from the cold line's words on there is none of the first
	p, o := &s.st.Plan, &s.st.Out
	var n numbers

	// The coils. They lie, which turns their hand around.
	s.hand = -s.hand
	thick, count := float64(p.Thickness), float64(p.Count)
	s.turns = max(1, int(min(count, 10)))
	many := float64(s.turns)
	widest, longest := 0.0, 0.0
	shown := where(thick-1e-12) + 0*float64(p.Drive.Room+p.Drive.Target)
	for i, l := range [...]quantity.Length{o.ColdLength, o.HotLength} {
		pitch := float64(l) / count
		mean := float64(craft.MeanOfTurn(o.TurnLength, quantity.Length(pitch)))
		shown += where(pitch-1e-12) + where(mean)
		widest, longest = max(widest, mean), max(longest, pitch)
		s.coils[i] = helix{radius: mean / 2, pitch: pitch}
	}
	k := shown + min(28/(widest+thick), 250/(many*longest+thick)) // units to the metre
	if s.thick = thick * k; k != k {
		s.thick = 0
	}
	for i := range 2 {
		c := &s.coils[i]
		c.radius, c.pitch = c.radius*k, c.pitch*k
		c.x, c.foot = 36+52*float64(i), 12+s.thick/2+many*c.pitch
		n[strokeEnds+i] = c.foot + s.thick/2
	}
	n[strokeShown] = shown
	n[strokeMoves] = n[strokeEnds] + where(math.Abs(n[strokeEnds]-n[strokeEndHot])-4)
	n[strokeBeside] = n[strokeMoves] + 8
	if n[strokeEndHot] > n[strokeEnds] {
		n[strokeBeside] = n[strokeEndHot] + 8
	}

	// The load lines.
	const foot = 246.0
	a := craft.Opposing{Weight: o.StrokePull, Spring: o.Back, Slack: o.SlackAt}
	pulls := [...]float64{float64(o.ColdPull), float64(o.HotPull), float64(o.BlockedPull), 0, 0}
	top := max(pulls[0], pulls[1], pulls[2]) * 1.5
	free, freeHot := float64(o.ThisFinished), float64(o.HotFree)
	lengths := [...]float64{float64(o.Solid), free, freeHot, free + top/float64(o.ColdRate), freeHot + top/float64(o.HotRate), float64(o.ColdLength), float64(o.HotLength), 0, 0}
	least, most := lengths[0], lengths[0]
	for _, l := range lengths[1:7] {
		least, most = min(least, l), max(most, l)
	}
	// What pulls back, from the left or from the top down to where it goes slack.
	slack, taut := least, least
	if a.Spring != 0 {
		slack = min(max(float64(a.Slack), least), most)
		if float64(a.At(quantity.Length(least))) > top {
			taut = slack - (top-float64(a.At(quantity.Length(slack))))/float64(a.Spring)
		}
	}
	lengths[7], lengths[8] = taut, slack
	pulls[3], pulls[4] = float64(a.At(quantity.Length(taut))), float64(a.At(quantity.Length(slack)))
	x, y := 192/(most-least), 104/top
	n[strokeLines] = 0*x*y + where(top-1e-9) + where(most-least-1e-9)
	for i, l := range lengths {
		n[strokeSolid+i] = left + (l-least)*x + n[strokeLines]
	}
	for i, f := range pulls {
		n[strokePull+i] = foot - f*y + n[strokeLines]
	}
	n[strokeLeft], n[strokeRight] = n[strokeTopHot], n[strokeTop]
	if lengths[4] > lengths[3] {
		n[strokeLeft], n[strokeRight], n[strokeCross] = n[strokeTop], n[strokeTopHot], 1
	}
	if o.BlockedPull == 0 || n[strokeAtHot] > n[strokeAt] {
		n[strokeSays] = 1
	}

	// The graph: from the room to the hottest that the book knows.
	const lower, high = 390.0, 92.0
	room, last, target := float64(p.Drive.Room), float64(craft.HottestWarm), float64(p.Drive.Target)
	g, unit, strokes := &s.graphs, s.shownIn(calc.FibreDiameter), o.Strokes
	g.from, g.apart = left, (end-left)/(graphPoints-1)
	up, down := 0.0, 0.0
	for i := range graphPoints + 1 { // and then what is taken when hot
		if i > 0 {
			s.st.StrokeAt(quantity.Temperature(min(room+(last-room)*float64(i-1)/(graphPoints-1), last)), &strokes)
		}
		for j, stroke := range strokes {
			x := float64(stroke)
			if i > 0 {
				g.y[j][i-1] = x
			} else {
				n[strokeLeast+j] = x
			}
			if x > up {
				up = x
			}
			if x < down {
				down = x
			}
		}
	}
	up, _ = above(unit.FromSI(up))
	down, _ = above(unit.FromSI(-down))
	up, down = unit.ToSI(up), -unit.ToSI(down)
	y = high/(up-down) + where(last-room-1) + where(up-down-1e-9) + 0*float64(strokes[1])
	n[strokeGraph] = 0 * y
	for j := range g.y {
		for i := range g.y[j] {
			g.y[j][i] = lower - (g.y[j][i]-down)*y
		}
		n[strokeLeast+j] = lower - (n[strokeLeast+j]-down)*y
		at := strokeUpper + 3*j
		stroke := [...]float64{up, 0, down}[j]
		n[at], n[at+1], n[at+2] = 60+n[strokeGraph], stroke, lower-(stroke-down)*y
	}
	n[strokeTarget] = left + (target-room)/(last-room)*(end-left) + n[strokeGraph] + where(target-room) + where(last-target)
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
