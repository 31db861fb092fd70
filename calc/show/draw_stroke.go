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
	strokeMoves  // the end of the cold one, where the other's is so far from it that there is room for an arrow
	strokeBeside // of how far that is
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
	strokeUpper // where the words of a round stroke are, which (m), and its height; and the height of none
	strokeUpperIs
	strokeUpperY
	strokeNoneY
	strokeLast // where the words of the last temperature are, and which
	strokeLastIs
	strokeNoteY // the height of what is said of the whole: at the foot, or at the top where there is nothing else
	strokeBand  // 0 where there is one
	strokeNote  // 0 where all is known, 1 where something is needed, and 2 where there is none
)

var strokeShapes = []Shape{
	{"draw.stroke.far", "path", "tube", "", []place{upright, tube, tubesFar * u}, ""},
	{"draw.stroke.far-inside", "path", "tube inside", "", []place{upright, tube, tubesFarInside * u}, ""},
	{"draw.stroke.near", "path", "tube", "", []place{upright, tube, tubesNear * u}, ""},
	{"draw.stroke.near-inside", "path", "tube inside", "", []place{upright, tube, tubesNearInside * u}, ""},
	{"draw.stroke.dims", "path", "dim", "", []place{
		stroke, strokeShown + 8*u, 18 * u, strokeShown + 8*u, 104 * u, stroke, strokeEnds, 18 * u, strokeEnds, 54 * u, stroke, strokeEnds, 72 * u, strokeEnds, 106 * u, arrow, strokeMoves, strokeEndHot, 106 * u,
		// The axis of the lengths, the wall where turns touch, and from the crossings down.
		stroke, strokeLines + 64*u, 240 * u, 306 * u, 240 * u, stroke, strokeSolid, 136 * u, strokeSolid, 240 * u, hatch, strokeLines + 52*u, strokeSolid, 4 * u, 136 * u, 240 * u, 0,
		stroke, strokeAt, 240 * u, strokeAt, strokeBlocked, stroke, strokeAtHot, 240 * u, strokeAtHot, strokePullHot,
		// Those of the graph.
		stroke, strokeGraph + 64*u, 288 * u, 64 * u, 380 * u, stroke, 64 * u, strokeNoneY, 306 * u, strokeNoneY, stroke, 61 * u, strokeGraph + 288*u, 67 * u, 288 * u,
		stroke, strokeTarget, strokeUsual, strokeTarget, 384 * u,
	}, ""},
	{"draw.stroke.cold", "path", "fibre", "", []place{stroke, strokeFree, 240 * u, strokeTop, 136 * u}, ""},
	{"draw.stroke.hot", "path", "warm", "", []place{stroke, strokeFreeHot, 240 * u, strokeTopHot, 136 * u}, ""},
	{"draw.stroke.load", "path", "yarn", "", []place{stroke, strokeTaut, strokeTautPull, strokeSlack, strokeLoad, line, 306 * u, strokeLoad}, ""},
	{"draw.stroke.rests", "path", "jaw", "", []place{circle, strokeAt, strokeBlocked, 3 * u, disc, strokeAt, strokePull, 3 * u, disc, strokeAtHot, strokePullHot, 3 * u}, ""},
	{"draw.stroke.graph", "path", "fibre", "", []place{through, 1 * u}, ""},
	{"draw.stroke.band", "path", "yarn", "", []place{through, 0, through, 2 * u}, ""},
	{"draw.stroke.bar", "path", "fibre", "", []place{stroke, strokeTarget, strokeLeast, strokeTarget, strokeMost, disc, strokeTarget, strokeUsual, 3 * u}, ""},
	{"draw.stroke.cold-label", "text", "label", "start", []place{strokeShown + 14*u, 13 * u}, "draw.stroke.cold"},
	{"draw.stroke.hot-label", "text", "label", "start", []place{strokeShown + 14*u, 65 * u}, "draw.stroke.hot"},
	{"draw.stroke.moves", "text", "label", "start", []place{strokeBeside, 111 * u, 100 * u}, "{stroke.stroke}"},
	{"draw.stroke.lines", "text", "label", "start", []place{strokeLines + 4*u, 126 * u}, "draw.stroke.lines"},
	{"draw.stroke.left", "text", "label", "end", []place{strokeLeft - 10*u, 144 * u, 0, strokeCross, strokeCross - 1*u}, "draw.stroke.is-hot" + or + "draw.stroke.is-cold"},
	{"draw.stroke.right", "text", "label", "start", []place{strokeRight + 6*u, 144 * u, 0, strokeCross, strokeCross - 1*u}, "draw.stroke.is-cold" + or + "draw.stroke.is-hot"},
	{"draw.stroke.pull", "text", "label", "end", []place{306 * u, strokeLoad - 6*u, 90 * u}, "{stroke.pull}"},
	{"draw.stroke.blocked", "text", "label", "end", []place{strokeAt - 10*u, strokeBlocked - 2*u, 0, strokeSays}, "{stroke.blocked}"},
	{"draw.stroke.solid", "text", "label", "start", []place{strokeSolid - 4*u, 256 * u}, "draw.stroke.solid"},
	{"draw.stroke.title", "text", "label", "start", []place{strokeGraph + 4*u, 276 * u}, "draw.stroke.graph"},
	{"draw.stroke.upper", "text", "label", "end", []place{strokeUpper, strokeUpperY + 5*u, 57 * u}, scaled},
	{"draw.stroke.zero", "text", "label", "end", []place{strokeGraph + 60*u, strokeNoneY + 5*u}, "0"},
	{"draw.stroke.room", "text", "label", "start", []place{strokeGraph + 64*u, 398 * u, 100 * u}, "{drive.room}"},
	{"draw.stroke.last", "text", "label", "end", []place{strokeLast, 398 * u, 100 * u}, "draw.stroke.last"},
	{"draw.stroke.target", "text", "label", "middle", []place{strokeTarget, 412 * u}, "draw.stroke.target"},
	{"draw.stroke.note", "text", "label", "start", []place{4 * u, strokeNoteY, 0, strokeNote, strokeNote - 1*u, strokeNote - 2*u}, "draw.stroke.note" + or + needs + or + "draw.stroke.none"},
}

var strokeSaid = []Shape{
	{":title", "", "", "", nil, "draw.stroke.said"},
	{":desc", "", "", "", []place{strokeNote, strokeNote - 1*u, strokeNote - 2*u, strokeBand, strokeLines}, "draw.stroke.desc" + or + needs + or + "draw.stroke.none" + and + "draw.stroke.desc-band" + and + "draw.stroke.desc-lines"},
}

// drawStroke draws the coil cold and hot under its load, a few of its turns at one scale; its pull against its length, cold and hot, with the
// load and the wall where turns touch; and its stroke against temperature, with its band.
func drawStroke(s *sketch) {
	const left, foot = 64.0, 240.0 // of the load lines
	p, o, n := &s.st.Plan, &s.st.Out, &s.n

	// The coils. They lie, which turns their hand around.
	s.hand = -s.hand
	thick, count := float64(p.Thickness), float64(p.Count)
	s.turns = max(1, int(min(count, 10)))
	many := float64(s.turns)
	widest, longer := 0.0, 0.0
	shown := where(thick-1e-12) + 0*float64(p.Drive.Room+p.Drive.Target)
	for i, l := range [...]quantity.Length{o.ColdLength, o.HotLength} {
		pitch := float64(l) / count
		mean := float64(craft.MeanOfTurn(o.TurnLength, quantity.Length(pitch)))
		shown += where(pitch-1e-12) + where(mean)
		widest, longer = longest(widest, mean), longest(longer, pitch)
		s.coils[i].radius, s.coils[i].pitch = mean/2, pitch
	}
	k := shown + min(28/(widest+thick), 250/(many*longer+thick)) // units to the metre
	if s.thick = thick * k; k != k {
		s.thick = 0
	}
	for i := range 2 {
		c := &s.coils[i]
		c.radius *= k
		c.pitch *= k
		c.x, c.foot = 36+52*float64(i), 12+s.thick/2+many*c.pitch
		n[strokeEnds+i] = c.foot + s.thick/2
	}
	n[strokeShown] = shown
	n[strokeMoves] = n[strokeEnds] + where(math.Abs(n[strokeEnds]-n[strokeEndHot])-4)
	n[strokeBeside] = n[strokeEnds] + longest(n[strokeEndHot]-n[strokeEnds]) + 8

	// The load lines.
	pulls := [...]float64{float64(o.ColdPull), float64(o.HotPull), float64(o.BlockedPull), 0, float64(o.StrokePull)}
	top := longest(pulls[:3]...) * 1.5
	free, freeHot := float64(o.ColdFree), float64(o.HotFree)
	lengths := [...]float64{float64(o.Solid), free, freeHot, free + top/float64(o.ColdRate), freeHot + top/float64(o.HotRate), float64(o.ColdLength), float64(o.HotLength), 0, 0}
	least, most := lengths[0], lengths[0]
	for _, l := range lengths[1:7] {
		least, most = min(least, l), max(most, l)
	}
	// What pulls back, from the left or from the top down to where it goes slack, or to the right.
	taut, slack, pull := least, float64(o.SlackAt), pulls[4]
	if back := float64(o.Back); back > 0 && slack > least {
		if pull += back * (slack - least); pull > top {
			taut += (pull - top) / back
			pull = top
		}
		if slack > most {
			pulls[4] += back * (slack - most)
			slack = most
		}
	} else {
		slack = least
	}
	lengths[7], lengths[8], pulls[3] = taut, slack, pull
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
	under := n[strokeBlocked] - n[strokeLoad] // the label of the load, that of the held pull reaching so far right
	if pulls[2] == 0 || lengths[6] > lengths[5] || n[strokeAt] > 226 && under > -17 && under < 9 {
		n[strokeSays] = 1
	}

	// The graph: from the room to the hottest that the book knows.
	const lower, high, wide = 380.0, 92.0, 242.0
	room, last, target := float64(p.Drive.Room), float64(craft.HottestWarm), float64(p.Drive.Target)
	g, unit := &s.graphs, s.shownIn(calc.FibreDiameter)
	g.from, g.apart = left, wide/(graphPoints-1)
	strokes, up, down := &o.Strokes, 0.0, 0.0 // what is taken when hot, and then the book's
	for i := range graphPoints + 1 {
		for _, l := range strokes {
			up, down = longest(up, float64(l)), -longest(-down, -float64(l))
		}
		if i < graphPoints {
			strokes = &g.points[i]
			s.st.StrokeAt(quantity.Temperature(last-(last-room)*float64(graphPoints-1-i)/(graphPoints-1)), strokes)
		}
	}
	up, _ = above(unit.FromSI(up))
	up = unit.ToSI(up)
	graph := where(last-room-1) + where(up-down-1e-9) + 0*float64(strokes[1]+o.Strokes[1]) // none where the marker would have no place
	g.k = high/(up-down) + graph
	g.zero = lower + down*g.k
	for i, l := range o.Strokes {
		n[strokeLeast+i] = g.zero - float64(l)*g.k
	}
	n[strokeBand] = 0 * float64(o.Strokes[0])
	n[strokeGraph], n[strokeLast], n[strokeLastIs] = graph, 306+graph, last
	n[strokeTarget] = left + (target-room)/(last-room)*wide + graph + where(target-room) + where(last-target)
	n[strokeUpperY], n[strokeNoneY] = lower-high, g.zero
	n[strokeUpper], n[strokeUpperIs] = 60+where(g.zero-lower+high-14), up
	if n[strokeNoteY] = 427; n[strokeGraph] != 0 && shown != 0 {
		n[strokeNoteY] = 17
	}
	if asked := calc.StrokeStroke; !known(shown + float64(o.Strokes[1])) {
		if known(float64(o.Strokes[1])) {
			asked = calc.StrokeHotLength
		}
		needs := s.st.Needs(asked)
		n[lacks], n[strokeNote] = float64(needs), 1
		if needs == calc.None {
			n[strokeNote] = 2
		}
	}
}
