package show

import (
	"math"

	"twistbench/calc"
)

const (
	twistFibre = iota
	twistMarks
	twistAngle
	twistHand
	twistBias
	twistThick
	twistRises
	twistHead
	twistLegend
	twistNote = twistLegend + twistRows
)

// twistRows is how many marks there are along the count of turns: slow down, first coil, turns of twist, full coiling.
const twistRows = 4

var twistShapes = [...]Shape{
	twistFibre:      {"draw.twist.fibre", "path", "fibre", "", nil, ""},
	twistMarks:      {"draw.twist.marks", "path", "turn", "", nil, ""},
	twistAngle:      {"draw.twist.angle", "path", "dim", "", nil, ""},
	twistHand:       {"draw.twist.hand", "text", "hand", "middle", nil, ""},
	twistBias:       {"draw.twist.bias", "text", "label", "middle", nil, ""},
	twistThick:      {"draw.twist.thick", "text", "label", "start", nil, ""},
	twistRises:      {"draw.twist.rises", "text", "label", "start", nil, ""},
	twistHead:       {"draw.twist.head", "text", "label", "start", nil, ""},
	twistLegend:     {"draw.twist.slow", "text", "label", "start", nil, ""},
	twistLegend + 1: {"draw.twist.onset", "text", "label", "start", nil, ""},
	twistLegend + 2: {"draw.twist.turns", "text", "label", "start", nil, ""},
	twistLegend + 3: {"draw.twist.full", "text", "label", "start", nil, ""},
	twistNote:       {"draw.twist.note", "text", "label", "start", nil, ""},
}

var twistKeys = [twistRows]string{"draw.twist.slow", "draw.twist.onset", "draw.twist.turns", "draw.twist.full"}

// drawTwist draws a length of the fibre as twisted, with lines that ran straight along it before, and below it the turns of the drill from 0 to
// the last that this plan speaks of.
func drawTwist(s *sketch) {
	const (
		middle, radius = 92.0, 24.0 // the fibre
		top, foot      = 80.0, 186.0
		reach          = 62.0 // of the angle
		left, right    = 14.0, 306.0
		line           = 246.0 // of the count
		legend, row    = 282.0, 18.0
	)
	p, o := &s.st.Plan, &s.st.Out
	angle, hand := float64(p.Bias), s.hand()
	shown := angle > 0 && angle < math.Pi/2 && known(float64(p.Thickness))
	sin, cos := math.Sincos(angle)

	counts := [twistRows]float64{float64(o.Slow), float64(o.Onset[0]), float64(p.Turns), float64(o.AllTurns)}
	least, most := float64(o.Onset[1]), float64(o.Onset[2])
	end := longest(counts[0], counts[1], counts[2], counts[3], most)
	k := (right - left) / end // units to the turn
	var marked [twistRows]bool
	for i, x := range counts {
		marked[i] = known(x) && x >= 0 && (i != 1 || known(least, most))
	}

	s.path(twistFibre)
	if shown {
		s.stroke(middle-radius, top, middle-radius, foot)
		s.stroke(middle+radius, top, middle+radius, foot)
	}
	if end > 0 {
		s.stroke(left, line-6, left, line+6)
		s.stroke(left, line, right, line)
	}
	s.end()
	s.path(twistMarks)
	if shown {
		s.slants(middle, top, foot, radius, 2*math.Pi*radius*cos/sin)
	}
	for i, x := range counts {
		if marked[i] {
			s.turnMark(i, left+x*k, line, left+least*k, left+most*k, false)
			s.turnMark(i, left, legend+row*float64(i)-4.5, left-8, left+8, true)
		}
	}
	s.end()
	s.path(twistAngle)
	if shown {
		s.stroke(middle, foot+6, middle, top-reach-6)
		s.stroke(middle, top, middle+hand*sin*(reach+6), top-cos*(reach+6))
		// The arc between them, as one cubic curve.
		x, y, ease := middle+hand*sin*reach, top-cos*reach, reach*4/3*math.Tan(angle/4)
		s.move(middle, top-reach)
		s.curve(middle+hand*ease, top-reach, x-hand*cos*ease, y-sin*ease, x, y)
		s.bar(middle-radius, middle+radius, foot+14)
	}
	s.end()

	from := s.text(twistHand)
	if shown {
		s.number(calc.TwistHand)
	}
	s.place(twistHand, from, 250, top-6, 60)
	s.label(twistBias, middle+hand*(sin*(reach+6)+26), top-cos*(reach+6)+2, 90, shown, "draw.twist.bias")
	s.label(twistThick, middle+radius+10, foot+18, s.w-middle-radius-10, shown, "draw.twist.thick")
	rises := "draw.twist.right"
	if hand < 0 {
		rises = "draw.twist.left"
	}
	s.label(twistRises, 150, top+22, s.w-150, shown, rises)
	s.label(twistHead, 4, line-24, s.w, end > 0, "draw.twist.count")
	for i, key := range twistKeys {
		s.label(twistLegend+i, left+16, legend+row*float64(i), s.w, marked[i], key)
	}
	needs := s.st.Needs(calc.TwistBias)
	if needs == calc.None {
		needs = s.st.Needs(calc.CoilTurns)
	}
	from = s.text(twistNote)
	if needs != calc.None {
		s.needing(needs)
	} else {
		s.words("draw.twist.note")
	}
	s.place(twistNote, from, 4, 358, s.w)

	s.sayOld("draw.twist:title", "draw.twist.title")
	s.writer.text("draw.twist:desc", "")
	if shown {
		s.words("draw.twist.desc")
	} else {
		s.needing(needs)
	}
	for i, key := range twistKeys {
		if marked[i] {
			s.str("; ")
			s.words(key)
		}
	}
	s.char('.')
	s.end()
}

// slants draws the near side of lines that ran straight along a fibre round the upright line x before it was twisted, from the height top to
// foot: each goes once round in a pitch, and one is in the middle at the top.
func (s *sketch) slants(x, top, foot, radius, pitch float64) {
	// As many lines side by side as the eye parts.
	lines := math.Max(1, math.Min(6, math.Round(pitch/28)))
	apart := math.Max(pitch/lines, 9)
	rise, hand := pitch/(2*math.Pi), s.hand() // to the radian
	for at := top - math.Floor(pitch/4/apart)*apart; at <= foot+pitch/4; at += apart {
		from := math.Max(-math.Pi/2, (at-foot)/rise)
		to := math.Min(math.Pi/2, (at-top)/rise)
		if to-from < 0.01 {
			continue
		}
		s.move(x+hand*radius*math.Sin(from), at-from*rise)
		// A piece on either side of the middle: cubic curves with the slopes of the helix at both ends.
		for _, end := range [2]float64{math.Min(to, 0), to} {
			if part := (end - from) / 3; part > 0 {
				sin, cos := math.Sincos(from)
				endSin, endCos := math.Sincos(end)
				s.curve(x+hand*radius*(sin+cos*part), at-(from+part)*rise,
					x+hand*radius*(endSin-endCos*part), at-(end-part)*rise,
					x+hand*radius*endSin, at-end*rise)
				from = end
			}
		}
	}
}

// turnMark draws the mark of a row for x on the line y: a triangle above it, a hatched band, a ring below it, and a disc on it; in the legend
// all of them are on the line.
//
//go:noinline
func (s *sketch) turnMark(row int, x, y, least, most float64, legend bool) {
	const size = 4.5
	switch row {
	case 0:
		if !legend {
			y -= 12
		}
		s.stroke(x-size-1, y-size, x+size+1, y-size)
		s.line(x, y+size)
		s.line(x-size-1, y-size)
	case 1:
		s.box(least, y-size-1, most-least, 2*size+2)
		for at := least + 2*size + 2; at <= most; at += 6 {
			s.stroke(at-2*size-2, y+size+1, at, y-size-1)
		}
		s.stroke(x, y-9, x, y+9)
	case 2:
		if !legend {
			s.stroke(x, y, x, y+10)
			y += 10 + size
		}
		s.circle(x, y, size)
	case 3:
		s.disc(x, y, size)
	}
}
