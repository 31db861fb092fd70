package show

import (
	"twistbench/calc"
)

// What the drawing of the oven names.
const (
	heatSet = iota + firstPlace // along the bar
	heatHot                     // its hottest, where that is hotter
	heatMelting
	heatPeak  // 0 where the hottest is known
	heatMelts // and where melting is
	heatDial  // 0 where the dial is at another temperature, and 1 where it is not
	heatSpans // from and to, along the bar, the middle between them, and both in K: to melting, glass transition, usual, frame
)

// heatSpan is how many numbers there are of a span.
const heatSpan = 5

var heatShapes = []Shape{
	{"draw.heat.melting", "path", "warm", "", []place{hatch, heatMelting, 306 * u, 7 * u, 78 * u, 52 * u, 0}, ""},
	{"draw.heat.over", "path", "warm", "", []place{bar, heatSet, heatHot, 65 * u}, ""},
	{"draw.heat.bar", "path", "rule", "", []place{box, 14 * u, 52 * u, 292 * u, 26 * u, stroke, heatMelting, 52 * u, heatMelting, 88 * u}, ""},
	{"draw.heat.marks", "path", "fibre", "", []place{stroke, heatSet, 49 * u, heatSet, 81 * u, disc, heatSet, 65 * u, 4 * u}, ""},
	{"draw.heat.margin", "path", "dim", "", []place{bar, heatSpans, heatSpans + 1, 24 * u}, ""},
	{"draw.heat.margin-label", "text", "label", "middle", []place{heatSpans + 2, 16 * u}, "draw.heat.margin"},
	{"draw.heat.glass", "path", "dim", "", []place{bar, heatSpans + heatSpan, heatSpans + heatSpan + 1, 112 * u}, ""},
	{"draw.heat.glass-label", "text", "label", "middle", []place{heatSpans + heatSpan + 2, 129 * u}, "draw.heat.glass"},
	{"draw.heat.usual", "path", "dim", "", []place{bar, heatSpans + 2*heatSpan, heatSpans + 2*heatSpan + 1, 140 * u}, ""},
	{"draw.heat.usual-label", "text", "label", "middle", []place{heatSpans + 2*heatSpan + 2, 157 * u}, "draw.heat.usual"},
	{"draw.heat.frame", "path", "dim", "", []place{bar, heatSpans + 3*heatSpan, heatSpans + 3*heatSpan + 1, 168 * u}, ""},
	{"draw.heat.frame-label", "text", "label", "middle", []place{heatSpans + 3*heatSpan + 2, 185 * u}, "draw.heat.frame"},
	{"draw.heat.set-label", "text", "label", "middle", []place{heatSet, heatPeak + 42*u, 0, heatDial, heatDial - 1*u}, "draw.heat.dial" + or + "draw.heat.set"},
	{"draw.heat.melt-label", "text", "label", "end", []place{306 * u, 101 * u, 0, heatMelts}, "draw.heat.melt" + or + needs},
}

var heatSaid = []Shape{
	{":title", "", "", "", nil, "draw.heat.title"},
	{":desc", "", "", "", nil, "draw.heat.desc"},
}

// coldRoom is where the bar begins (K): 20 °C.
const coldRoom = 20 + 273.15

// drawHeat draws a bar from the cold room to what melts, with where the oven is and what the fibre's polymer does in between.
func drawHeat(s *sketch) {
	const left, right = 14.0, 306.0 // the ends of the bar
	p, book := &s.st.Plan.Heat, s.st.Heating()
	set, peak, melt := float64(p.Set), float64(s.st.Out.Peak), float64(p.Melt)
	top := longest(set, peak, melt, float64(book.Melt.High), coldRoom+80) + 10
	k := (right - left) / (top - coldRoom)
	var n numbers
	// Where they are along the bar, at its end for what lies beyond.
	for i, t := range [...]float64{set, peak, melt} {
		n[heatSet+i] = left + (max(coldRoom, min(t, top))-coldRoom)*k
	}
	n[heatPeak], n[heatMelts] = 0*peak, 0*melt
	n[heatHot] += only(n[heatHot] > n[heatSet])
	if dial := float64(s.st.Out.Dial); !known(dial) || dial == set {
		n[heatDial] = 1
	}
	if !known(melt) {
		n[lacks] = float64(s.st.Needs(calc.HeatMargin))
	}
	// What is not along the bar is left out.
	for i, span := range [...][2]float64{
		{peak, melt}, {float64(book.Glass.Low), float64(book.Glass.High)}, {float64(book.Setting.Low), float64(book.Setting.High)}, {coldRoom, float64(p.FrameLimit)},
	} {
		low, high := span[0], span[1]
		at := heatSpans + heatSpan*i
		from, to := left+(max(low, coldRoom)-coldRoom)*k+where(high-low-1e-9)+where(high-coldRoom-1e-9)+where(top-high), left+(high-coldRoom)*k
		n[at], n[at+1], n[at+2], n[at+3], n[at+4] = from, to, (from+to)/2, low, high
	}
	s.n = n
}
