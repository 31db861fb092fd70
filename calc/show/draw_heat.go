package show

import "twistbench/calc"

const (
	heatMelting = iota
	heatOver
	heatBar
	heatMarks
	heatMargin
	heatMarginLabel
	heatGlass
	heatGlassLabel
	heatUsual
	heatUsualLabel
	heatFrame
	heatFrameLabel
	heatSetLabel
	heatMeltLabel
)

var heatShapes = [...]Shape{
	heatMelting:     {"draw.heat.melting", "path", "warm", ""},
	heatOver:        {"draw.heat.over", "path", "warm", ""},
	heatBar:         {"draw.heat.bar", "path", "rule", ""},
	heatMarks:       {"draw.heat.marks", "path", "fibre", ""},
	heatMargin:      {"draw.heat.margin", "path", "dim", ""},
	heatMarginLabel: {"draw.heat.margin-label", "text", "label", "middle"},
	heatGlass:       {"draw.heat.glass", "path", "dim", ""},
	heatGlassLabel:  {"draw.heat.glass-label", "text", "label", "middle"},
	heatUsual:       {"draw.heat.usual", "path", "dim", ""},
	heatUsualLabel:  {"draw.heat.usual-label", "text", "label", "middle"},
	heatFrame:       {"draw.heat.frame", "path", "dim", ""},
	heatFrameLabel:  {"draw.heat.frame-label", "text", "label", "middle"},
	heatSetLabel:    {"draw.heat.set-label", "text", "label", "middle"},
	heatMeltLabel:   {"draw.heat.melt-label", "text", "label", "end"},
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

// span draws shape i, a line from low to high (K), with its words as the text of the next shape. It is left out where it is not along the bar.
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
	n := s.text(i + 1)
	if show {
		s.about(key, calc.HeatDial, about{limit: low, high: high})
	}
	s.place(i+1, n, (from+to)/2, textY, s.w)
}

// drawHeat draws a bar from the cold room to what melts, with where the oven is and what the fibre's polymer does in between.
func drawHeat(sk *sketch) {
	p, book := &sk.st.Plan.Heat, sk.st.Heating()
	set, peak, melt := float64(p.Set), float64(sk.st.Out.Peak), float64(p.Melt)
	s := heatSketch{sketch: sk, top: longest(set, peak, melt, float64(book.Melt.High), coldRoom+80) + 10}
	s.k = (heatRight - heatLeft) / (s.top - coldRoom)
	left, hottest, melting := s.at(set), s.at(peak), s.at(melt)

	s.path(heatMelting)
	for x := melting; x < heatRight; x += 7 {
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
		s.stroke(melting, heatHead, melting, heatFoot+10)
	}
	s.end()
	s.path(heatMarks)
	if left > 0 {
		s.stroke(left, heatHead-3, left, heatFoot+3)
		s.disc(left, (heatHead+heatFoot)/2, 4)
	}
	s.end()
	s.span(heatMargin, 24, 16, peak, melt, "draw.heat.margin")
	s.span(heatGlass, 112, 129, float64(book.Glass.Low), float64(book.Glass.High), "draw.heat.glass")
	s.span(heatUsual, 140, 157, float64(book.Setting.Low), float64(book.Setting.High), "draw.heat.usual")
	s.span(heatFrame, 168, 185, coldRoom, float64(p.FrameLimit), "draw.heat.frame")

	key := "draw.heat.set"
	if dial := float64(sk.st.Out.Dial); known(dial) && dial != set {
		key = "draw.heat.dial"
	}
	s.label(heatSetLabel, left, heatHead-10, s.w, known(peak), key)
	n := s.text(heatMeltLabel)
	if known(melt) {
		s.words("draw.heat.melt")
	} else {
		s.needing(s.st.Needs(calc.HeatMargin))
	}
	s.place(heatMeltLabel, n, heatRight, heatFoot+23, s.w)

	s.say("draw.heat:title", "draw.heat.title")
	s.say("draw.heat:desc", "draw.heat.desc")
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

// drawThreadHeat draws the coil between the jaws as in the frame, and beside it the oven's warmth.
func drawThreadHeat(s *sketch) {
	threadHeld(s, threadHeatLine, threadHeatCoil, threadHeatJaws)
	s.put(s.shapes[threadHeatWarmth].ID, "", "d", warmth)
}

// warmth rises on both sides of the coil.
const warmth = "m2 296l3-18-3-18 3-18-3-18 3-18-3-18m21 108l3-18-3-18 3-18-3-18 3-18-3-18"
