package show

import (
	"twistbench/calc"
	"twistbench/calc/quantity"
)

// Where the times and temperatures of the drawing are: the curves' frame.
const (
	driveLeft, driveRight = 52.0, 306.0
	driveTop, driveFoot   = 30.0, 172.0
)

// What the drawing of heating and cooling names.
const (
	driveKnown  = iota + firstPlace // 0 where the curves are
	driveHeated                     // where each heating begins, and how long it is
	driveAgain
	driveLast
	driveWide
	driveEnds // of each
	driveAgainEnds
	driveLastEnds
	driveRoom // heights
	driveTarget
	driveSet
	driveMelts
	driveTargetLabel // where there is room for a label
	driveSetLabel
	driveMark // the marker
	driveMarkMost
	driveMarkLeast
	driveMarkFoot
	driveNote // height of the last line
)

var driveShapes = []Shape{
	{"draw.drive.frame", "path", "rule", "", []place{
		when, driveKnown, stroke, driveLeft * u, driveTop * u, driveLeft * u, driveFoot * u, line, driveRight * u, driveFoot * u,
		box, driveHeated, 180 * u, driveWide, 10 * u, box, driveAgain, 180 * u, driveWide, 10 * u, box, driveLast, 180 * u, driveWide, 10 * u,
	}, ""},
	{"draw.drive.heats", "path", "warm", "", []place{
		when, driveKnown, hatch, driveHeated + 3*u, driveEnds, 5 * u, 180 * u, 190 * u, 0,
		hatch, driveAgain + 3*u, driveAgainEnds, 5 * u, 180 * u, 190 * u, 0, hatch, driveLast + 3*u, driveLastEnds, 5 * u, 180 * u, 190 * u, 0,
	}, ""},
	{"draw.drive.target", "path", "ghost", "", []place{stroke, driveLeft * u, driveTarget, driveRight * u, driveTarget}, ""},
	{"draw.drive.limits", "path", "warm", "", []place{
		stroke, driveLeft * u, driveSet, driveRight * u, driveSet,
		stroke, driveLeft * u, driveMelts, driveRight * u, driveMelts, stroke, driveLeft * u, driveMelts - 2.5*u, driveRight * u, driveMelts - 2.5*u,
	}, ""},
	{"draw.drive.most", "path", "yarn", "", []place{plot, coolest * u, driveKnown}, ""},
	{"draw.drive.least", "path", "fibre", "", []place{plot, hottest * u, driveKnown}, ""},
	{"draw.drive.mark", "path", "given", "", []place{
		stroke, driveMark, driveTop * u, driveMark, driveMarkFoot, disc, driveMark, driveMarkMost, 4 * u, disc, driveMark, driveMarkLeast, 4 * u,
	}, ""},
	{"draw.drive.mark-label", "text", "label given", "middle", []place{driveMark, 20 * u}, "draw.drive.mark"},
	{"draw.drive.room-label", "text", "label", "end", []place{(driveLeft - 4) * u, driveRoom + 4*u}, "{drive.room}"},
	{"draw.drive.target-label", "text", "label", "end", []place{(driveLeft - 4) * u, driveTargetLabel + 4*u}, "{drive.target}"},
	{"draw.drive.set-label", "text", "label", "end", []place{(driveRight - 2) * u, driveSetLabel + 14*u}, "draw.drive.set"},
	{"draw.drive.melt-label", "text", "label", "end", []place{(driveRight - 2) * u, driveMelts + 14*u}, "draw.drive.melts"},
	{"draw.drive.zero", "text", "label", "middle", []place{driveLeft * u, 206 * u, 0, driveKnown}, "draw.drive.zero"},
	{"draw.drive.shown", "text", "label", "end", []place{driveRight * u, 206 * u, 0, driveKnown}, "{drive.shown}"},
	{"draw.drive.cycle", "text", "label", "start", []place{4 * u, 226 * u, 0, driveKnown}, "draw.drive.cycle"},
	{"draw.drive.note", "text", "label", "start", []place{4 * u, driveNote, 0, lacks}, "draw.drive.note" + or + needs},
}

var driveSaid = []Shape{
	{":title", "", "", "", nil, "draw.drive.title"},
	{":desc", "", "", "", []place{lacks, zero, driveMarkFoot}, "draw.drive.desc" + or + needs + and + "draw.drive.desc-mark"},
}

// The curves of the drawing: of what loses least heat, and of what loses most.
const (
	hottest = iota
	coolest
)

// moments is how many there are of each heating and each cooling.
const moments = 10

// drawDrive draws temperature against time for the cycles from a cold start, of what loses least heat and of what loses most, between the room
// and what is hottest. The temperature that was set and that of melting stand there where they are not far above.
func drawDrive(s *sketch) {
	st := s.st
	p := &st.Plan.Drive
	var n numbers
	room, target, on, off, all := float64(p.Room), float64(p.Target), float64(p.On), float64(p.Off), float64(st.Out.Shown)
	n[driveNote] = 244
	if !known(all + room) {
		n[lacks], n[driveNote] = float64(st.Needs(calc.DriveShown)), 20
	}
	across := (driveRight-driveLeft)/all + where(all-1e-9) // units to the second
	low, high := room, max(room+1, target, float64(st.Out.Peaks[1]))
	var course [2][6 * moments]quantity.Temperature
	for end := range course {
		st.Course(end, course[end][:])
		for _, t := range course[end] {
			low, high = min(low, float64(t)), max(high, float64(t))
		}
	}
	span := high - low
	for _, limit := range [...]quantity.Temperature{st.Plan.Heat.Set, st.Plan.Heat.Melt} {
		if t := float64(limit); t < low+1.6*span && t > high {
			high = t
		}
	}
	up := (driveFoot - driveTop) / (1.04 * (high - low)) // units to the kelvin
	height := func(t float64) float64 { return driveFoot - (t-low)*up }
	for end := range course {
		c := &s.plots[end]
		c.n = len(c.x)
		c.x[0], c.y[0] = driveLeft, height(room)
		x := driveLeft
		for i, t := range course[end] {
			step := off
			if i/moments%2 == 0 {
				step = on
			}
			x += step * across / moments
			c.x[i+1], c.y[i+1] = x, height(float64(t))
		}
	}
	period := (on + off) * across
	n[driveKnown] = 0 * (across + up + period)
	n[driveWide] = on * across
	for i := range 3 {
		n[driveHeated+i] = driveLeft + float64(i)*period
		n[driveEnds+i] = n[driveHeated+i] + n[driveWide]
	}
	visible := func(t float64) float64 { return height(t) + where(high-t) + where(t-low) + n[driveKnown] }
	n[driveRoom], n[driveTarget], n[driveSet], n[driveMelts] = height(room)+n[driveKnown], visible(target), visible(float64(st.Plan.Heat.Set)), visible(float64(st.Plan.Heat.Melt))
	n[driveTargetLabel] = n[driveTarget] + where(n[driveRoom]-n[driveTarget]-14)
	n[driveSetLabel] = n[driveSet]
	if d := n[driveSet] - n[driveMelts]; d*d < 18*18 {
		n[driveSetLabel] = quantity.NaN
	}
	then := &st.Out.Then
	n[driveMarkMost], n[driveMarkLeast] = height(float64(then[1])), height(float64(then[0]))
	n[driveMark], n[driveMarkFoot] = driveLeft+float64(p.At)*across+0*n[driveMarkMost], driveFoot+0*n[driveMarkMost]
	s.n = n
}
