package show

import "twistbench/calc"

const (
	heatMelting = iota
	heatOver
	heatBar
	heatMarks
	heatTicks
	heatMargin
	heatGlass
	heatUsual
	heatFrame
	heatMarginLabel
	heatGlassLabel
	heatUsualLabel
	heatFrameLabel
	heatSetLabel
	heatPeakLabel
	heatMeltLabel
	heatNote
	heatNumbers
)

// mostHeatNumbers is how many numbers there are along the bar at most.
const mostHeatNumbers = 4

var heatShapes = [...]Shape{
	heatMelting:     {"draw.heat.melting", "path", "warm", ""},
	heatOver:        {"draw.heat.over", "path", "warm", ""},
	heatBar:         {"draw.heat.bar", "path", "rule", ""},
	heatMarks:       {"draw.heat.marks", "path", "fibre", ""},
	heatTicks:       {"draw.heat.ticks", "path", "rule", ""},
	heatMargin:      {"draw.heat.margin", "path", "dim", ""},
	heatGlass:       {"draw.heat.glass", "path", "dim", ""},
	heatUsual:       {"draw.heat.usual", "path", "dim", ""},
	heatFrame:       {"draw.heat.frame", "path", "dim", ""},
	heatMarginLabel: {"draw.heat.margin-label", "text", "label", "middle"},
	heatGlassLabel:  {"draw.heat.glass-label", "text", "label", "middle"},
	heatUsualLabel:  {"draw.heat.usual-label", "text", "label", "middle"},
	heatFrameLabel:  {"draw.heat.frame-label", "text", "label", "middle"},
	heatSetLabel:    {"draw.heat.set-label", "text", "label", "end"},
	heatPeakLabel:   {"draw.heat.peak-label", "text", "label", "start"},
	heatMeltLabel:   {"draw.heat.melt-label", "text", "label", "end"},
	heatNote:        {"draw.heat.note", "text", "label", "start"},
	heatNumbers:     {"draw.heat.number-1", "text", "label", "middle"},
	heatNumbers + 1: {"draw.heat.number-2", "text", "label", "middle"},
	heatNumbers + 2: {"draw.heat.number-3", "text", "label", "middle"},
	heatNumbers + 3: {"draw.heat.number-4", "text", "label", "middle"},
}

// coldRoom is where the bar begins (K): 20 °C.
const coldRoom = 20 + 273.15

const (
	heatLeft, heatRight = 14.0, 306.0 // the ends of the bar
	heatHead, heatFoot  = 52.0, 78.0
)

// heatSketch is the drawing of the oven in the making: temperatures up to top (K) along a bar, k units to the kelvin.
type heatSketch struct {
	*sketch
	top, k float64
}

// at returns where a temperature (K) is along the bar, at its end for what lies beyond.
//
//go:noinline
func (s *heatSketch) at(t float64) float64 {
	switch {
	case t > s.top:
		t = s.top
	case t < coldRoom:
		t = coldRoom
	}
	return heatLeft + (t-coldRoom)*s.k
}

// span draws shape i, a line from low to high (K), with its words as the text next to it. It is left out where it is not along the bar.
//
//go:noinline
func (s *heatSketch) span(i int, y, textY, low, high float64, key string) {
	from, to := s.at(low), s.at(high)
	show := high > low && high > coldRoom && high <= s.top
	s.path(i)
	if show {
		s.bar(from, to, y)
	}
	s.end()
	i += heatMarginLabel - heatMargin
	n := s.text(i)
	if show {
		s.about(key, calc.HeatSet, about{limit: low, high: high})
	}
	s.place(i, n, (from+to)/2, textY, s.w)
}

// drawHeat draws a bar from the cold room to what melts, with where the oven is and what the fibre's polymer does in between.
func drawHeat(sk *sketch) {
	p, book := &sk.st.Plan.Heat, sk.st.Heating()
	set, peak, melt := float64(p.Set), float64(sk.st.Out.Peak), float64(p.Melt)
	s := heatSketch{sketch: sk, top: longest(set, peak, melt, float64(book.Melt.High), coldRoom+80) + 10}
	s.k = (heatRight - heatLeft) / (s.top - coldRoom)
	left, hottest, melting := s.at(set), s.at(peak), s.at(melt)

	s.path(heatMelting)
	for x := melting; x < heatRight; x += 5 {
		s.stroke(x, heatFoot, x, heatHead)
	}
	s.end()
	s.path(heatOver)
	if hottest > left {
		s.bar(left, hottest, (heatHead+heatFoot)/2)
	}
	s.end()
	s.path(heatBar)
	s.box(heatLeft, heatHead, heatRight-heatLeft, heatFoot-heatHead)
	if melting > 0 {
		s.stroke(melting, heatHead, melting, heatFoot+28)
	}
	s.end()
	s.path(heatMarks)
	if left > 0 {
		s.stroke(left, heatHead-6, left, heatFoot+3)
		s.disc(left, (heatHead+heatFoot)/2, 4)
	}
	s.end()
	s.span(heatMargin, 24, 16, peak, melt, "draw.heat.margin")
	s.span(heatGlass, 126, 143, float64(book.Glass.Low), float64(book.Glass.High), "draw.heat.glass")
	s.span(heatUsual, 154, 171, float64(book.Setting.Low), float64(book.Setting.High), "draw.heat.usual")
	s.span(heatFrame, 182, 199, coldRoom, float64(p.FrameLimit), "draw.heat.frame")

	// The two labels above the bar stand on either side of their marks, and give way to each other at its ends.
	n := s.text(heatSetLabel)
	if known(set) {
		s.words("draw.heat.set")
	}
	end := len(s.b)
	s.words("draw.heat.peak")
	setEnd := min(max(left-2, margin+wide(s.b[n:end])), s.w-margin-8-wide(s.b[end:]))
	s.b = s.b[:end]
	s.place(heatSetLabel, n, setEnd, heatHead-9, s.w)
	s.label(heatPeakLabel, max(hottest, setEnd+8), heatHead-9, s.w, hottest > left, "draw.heat.peak")
	n = s.text(heatMeltLabel)
	if known(melt) {
		s.words("draw.heat.melt")
	} else {
		s.needing(s.st.Needs(calc.HeatMargin))
	}
	s.place(heatMeltLabel, n, heatRight, heatFoot+39, s.w)
	s.label(heatNote, 4, 222, s.w, true, "draw.heat.note")

	u := s.shownIn(calc.HeatSet)
	step := 10
	if u.Factor < 1 {
		step = 20
	}
	s.path(heatTicks)
	number := int(u.FromSI(coldRoom))/step*step + step
	first := number
	for ; u.ToSI(float64(number)) <= s.top; number += step {
		x := s.at(u.ToSI(float64(number)))
		long := 4.0
		if number%(5*step) == 0 {
			long = 8
		}
		s.stroke(x, heatFoot, x, heatFoot+long)
	}
	s.end()
	number = (first + 10*step - 1) / (10 * step) * 10 * step
	for i := range mostHeatNumbers {
		x := u.ToSI(float64(number))
		n := s.text(heatNumbers + i)
		if x <= s.top {
			s.int(number)
		}
		s.place(heatNumbers+i, n, s.at(x), heatFoot+21, 40)
		number += 10 * step
	}

	s.say("draw.heat:title", "draw.heat.title")
	s.desc("draw.heat:desc", "draw.heat.desc")
	s.also(known(melt), "draw.heat.desc-melt")
	s.end()
}

const (
	threadHeatLine = iota
	threadHeatCoil
	threadHeatJaws
	threadHeatWarmth
)

var threadHeatShapes = [...]Shape{
	threadHeatLine:   {"draw.thread.heat.line", "path", "fibre", ""},
	threadHeatCoil:   {"draw.thread.heat.coil", "path", "fibre", ""},
	threadHeatJaws:   {"draw.thread.heat.jaws", "path", "jaw", ""},
	threadHeatWarmth: {"draw.thread.heat.warmth", "path", "warm", ""},
}

// drawThreadHeat draws the coil between the jaws as in the frame, and beside it the oven's warmth, over as much of it as the set temperature
// is of the way to melting.
func drawThreadHeat(s *sketch) {
	k := threadHeld(s, threadHeatLine, threadHeatCoil, threadHeatJaws)
	p := &s.st.Plan.Heat
	share := float64(p.Set-coldRoom) / float64(p.Melt-coldRoom)
	s.path(threadHeatWarmth)
	foot := threadTop + float64(s.st.Plan.LastGap())*k
	for x := 3.0; x < 28 && k > 0; x += 22 {
		s.move(x, foot)
		side := 3.0
		for y := foot - 4; y > foot-(foot-threadTop)*min(share, 1); y -= 4 {
			s.line(x+side-1.5, y)
			side = 3 - side
		}
	}
	s.end()
}
