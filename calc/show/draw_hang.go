package show

import (
	"math"

	"twistbench/calc"
)

const (
	hangBeam = iota
	hangTray
	hangFibre
	hangCoil
	hangStem
	hangMass
	hangGhost
	hangDims
	hangHeightLabel
	hangCutName
	hangCutLabel
	hangCoilLabel
	hangCoilName
	hangRiseLabel
	hangClearLabel
	hangAddLabel
	hangMassLabel
	hangNote
)

var hangShapes = [...]Shape{
	hangBeam:        {"draw.hang.beam", "path", "hook", ""},
	hangTray:        {"draw.hang.tray", "path", "tray", ""},
	hangFibre:       {"draw.hang.fibre", "path", "fibre", ""},
	hangCoil:        {"draw.hang.coil", "path", "dim", ""},
	hangStem:        {"draw.hang.stem", "path", "hook", ""},
	hangMass:        {"draw.hang.mass", "path", "mass", ""},
	hangGhost:       {"draw.hang.ghost", "path", "ghost", ""},
	hangDims:        {"draw.hang.dims", "path", "dim", ""},
	hangHeightLabel: {"draw.hang.height-label", "text", "label", "start"},
	hangCutName:     {"draw.hang.cut-name", "text", "label", "end"},
	hangCutLabel:    {"draw.hang.cut-label", "text", "label", "end"},
	hangCoilLabel:   {"draw.hang.coil-label", "text", "label", "start"},
	hangCoilName:    {"draw.hang.coil-name", "text", "label", "start"},
	hangRiseLabel:   {"draw.hang.rise-label", "text", "label", "end"},
	hangClearLabel:  {"draw.hang.clear-label", "text", "label", "start"},
	hangAddLabel:    {"draw.hang.add-label", "text", "label", "start"},
	hangMassLabel:   {"draw.hang.mass-label", "text", "label", "start"},
	hangNote:        {"draw.hang.note", "text", "label", "start"},
}

// What stays as it is: the beam that the hook is in, and a tray with something soft in it.
const (
	beam    = "m60 25h232v9h-232zm6 9l9-9m15 9l9-9m15 9l9-9m15 9l9-9m15 9l9-9m15 9l9-9m15 9l9-9m15 9l9-9m15 9l9-9m15 9l9-9"
	cushion = "m40 350v12h264v-12m-260 6q16-12 32 0 16-12 32 0 16-12 32 0 16-12 32 0 16-12 32 0 16-12 32 0 16-12 32 0 16-12 32 0"
)

// drawHang draws the fibre under its mass, and beside it the same when it is fully coiled. Every height is true to the height of the
// hook above the tray.
func drawHang(s *sketch) {
	const (
		hook, tray      = 34.0, 350.0 // heights in the drawing
		now, then       = 100.0, 214.0
		heights, rising = 14.0, 268.0
		clearing        = 151.0
	)
	p, o := &s.st.Plan, &s.st.Out
	cut, mass := float64(o.Length), float64(p.Mass)
	high := known(float64(o.HookHeight)) && o.HookHeight > 0
	k := 0.0 // units to the metre
	if high {
		k = (tray - hook) / float64(o.HookHeight)
	}
	tail, coiled := float64(p.Tail)*k, float64(p.Coiled)*k
	rise := float64(o.Rise) * k
	end := hook + cut*k                       // of the fibre
	under := tray - float64(p.Clearance)*k    // the lowest of the stack
	stack := float64(p.Stack) * k             // from the fibre's end to there
	w, h := block(mass, 46, 72, stack)        // of the mass
	climbs := high && known(rise) && rise > 0 // the fully coiled one is known

	s.put(s.shapes[hangBeam].ID, "", "d", beam)
	s.put(s.shapes[hangTray].ID, "", "d", cushion)
	s.path(hangFibre)
	if high {
		s.stroke(now, hook, now, end)
		s.disc(now, hook+tail, 2.6)
		s.disc(now, end-tail, 2.6)
	}
	s.end()
	s.path(hangCoil)
	if climbs {
		s.upright = true
		s.stroke(hook, then, hook+tail, then)
		s.coil(hook+tail, then, coiled, 6, turns(coiled, 12), nearSide|farSide)
		s.stroke(hook+tail+coiled, then, end-rise, then)
		s.upright = false
	}
	s.end()
	s.path(hangStem)
	if high {
		s.stroke(now, end, now, under)
	}
	s.end()
	s.path(hangMass)
	if high && known(mass) {
		s.box(now-w/2, under-h, w, h)
	}
	s.end()
	s.path(hangGhost)
	if climbs {
		if under-h > end+0.1 {
			s.stroke(then, end-rise, then, under-rise-h)
		}
		if known(mass) {
			s.box(then-w/2, under-rise-h, w, h)
		}
	}
	s.end()
	s.path(hangDims)
	if high {
		s.upright = true
		s.bar(hook, tray, heights)
		s.bar(tray, under, clearing)
		if climbs {
			s.arrow(under, under-rise, rising)
		}
		s.upright = false
		s.stroke(heights+5, hook, 56, hook)
		s.stroke(heights+5, tray, 36, tray)
		if climbs {
			s.stroke(now+w/2+4, under, rising-5, under)
			s.stroke(then+w/2+4, under-rise, rising+5, under-rise)
		}
	}
	s.end()

	s.label(hangHeightLabel, 4, 17, s.w, high, "draw.hang.height")
	y := math.Max((hook+end)/2, hook+18)
	clear := high && y+18 < under-h
	s.label(hangCutName, now-8, y-3, now-26, clear, "draw.hang.cut")
	s.label(hangCutLabel, now-8, y+13, now-26, clear, "draw.hang.length")
	y = math.Max(hook+tail+coiled/2, hook+18)
	top := under - rise - h
	s.label(hangCoilLabel, then+14, y-3, 98, climbs && y < top, "draw.hang.coiled")
	s.label(hangCoilName, then+14, y+13, 98, climbs && y+16 < top, "draw.hang.as-coiled")
	s.label(hangRiseLabel, rising-7, under-rise/2+5, rising-7-now-12, climbs && rise > 20, "draw.hang.rises")
	y = under - 5
	roomy := tray-under > 16
	if roomy {
		y = (tray+under)/2 + 5
	}
	s.label(hangClearLabel, clearing+6, y, rising-clearing-12, high && (!climbs || roomy || rise > 48), "draw.hang.clearance")
	s.label(hangAddLabel, 40, tray+32, s.w, known(float64(p.Hook)) && p.Add >= 0, "draw.hang.add")
	s.label(hangMassLabel, 40, tray+49, s.w, known(mass), "draw.hang.mass")
	if high {
		s.label(hangNote, 40, tray+68, s.w, true, "draw.hang.note")
	} else {
		s.needs(hangNote, 40, tray+68, calc.HangHookHeight)
	}

	s.say("draw.hang:title", "draw.hang.title")
	s.say("draw.hang:desc", "draw.hang.desc")
}

// block returns how wide and how high the side of a cylinder is whose volume is as the mass (kg): a kilogram is as wide as it is high,
// kilo units. It is at most as high as the room there is, and then wider; only at the least and the most width is it out of proportion.
func block(mass, kilo, most, room float64) (w, h float64) {
	if !known(mass) {
		return 0, 0
	}
	side := kilo * math.Cbrt(mass)
	h = math.Max(math.Min(side, room), 3)
	w = math.Max(3, math.Min(math.Sqrt(side*side*side/h), most))
	return w, h
}
