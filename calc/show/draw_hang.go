package show

import (
	"math"

	"twistbench/calc"
	"twistbench/calc/quantity"
)

// The hook and the tray in the drawing, and its two fibres: now, and fully coiled.
const (
	hangTop, hangFoot = 34, 350
	hangNow, hangThen = 100 * u, 214 * u
)

// What the drawing of the hanging fibre names.
const (
	hangKnown  = iota + firstPlace // 0 where all heights are
	hangHook                       // the hook, where they are
	hangTies                       // the upper tie
	hangTie                        // and the lower
	hangEnd                        // of the fibre
	hangUnder                      // the lowest of the stack
	hangClimbs                     // 0 where the fully coiled fibre is known
	hangCoiled                     // how long its coil is
	hangTurns
	hangCoilEnd
	hangRisen  // the lowest of its stack
	hangShort  // its end
	hangStem   // the same, where a stem is seen
	hangWeighs // 0 where the mass is known
	hangWide   // the mass
	hangHigh
	hangLeft // where it is, and where when coiled
	hangLeftThen
	hangRight
	hangRightThen
	hangOver
	hangOverThen
	hangCutAt // where words stand, where there is room for them
	hangCoilAt
	hangNameAt
	hangRiseAt
	hangClearAt
	hangAdds // 0 where the hook's mass is known
)

var hangShapes = []Shape{
	{"draw.hang.beam", "path", "hook", "", nil, beam},
	{"draw.hang.tray", "path", "tray", "", nil, cushion},
	{"draw.hang.fibre", "path", "fibre", "", []place{
		stroke, hangNow, hangHook, hangNow, hangEnd, disc, hangNow, hangTies, 2.6 * u, disc, hangNow, hangTie, 2.6 * u,
	}, ""},
	{"draw.hang.coil", "path", "dim", "", []place{
		when, hangClimbs, upright, stroke, hangHook, hangThen, hangTies, hangThen,
		coil, hangTies, hangThen, hangCoiled, 6 * u, hangTurns, bothSides * u, stroke, hangCoilEnd, hangThen, hangShort, hangThen,
	}, ""},
	{"draw.hang.stem", "path", "hook", "", []place{stroke, hangNow, hangEnd, hangNow, hangUnder}, ""},
	{"draw.hang.mass", "path", "mass", "", []place{when, hangWeighs, box, hangLeft, hangOver, hangWide, hangHigh}, ""},
	{"draw.hang.ghost", "path", "ghost", "", []place{
		when, hangClimbs, stroke, hangThen, hangStem, hangThen, hangOverThen, when, hangWeighs, box, hangLeftThen, hangOverThen, hangWide, hangHigh,
	}, ""},
	{"draw.hang.dims", "path", "dim", "", []place{
		upright, bar, hangHook, hangFoot * u, 14 * u, bar, hangFoot * u, hangUnder, 151 * u, arrow, hangUnder, hangRisen, 268 * u, level,
		stroke, 19 * u, hangHook, 56 * u, hangHook, when, hangKnown, stroke, 19 * u, hangFoot * u, 36 * u, hangFoot * u,
		when, hangClimbs, stroke, hangRight + 4*u, hangUnder, 263 * u, hangUnder, stroke, hangRightThen + 4*u, hangRisen, 273 * u, hangRisen,
	}, ""},
	{"draw.hang.height-label", "text", "label", "start", []place{4 * u, 17 * u, 0, hangKnown}, "draw.hang.height"},
	{"draw.hang.cut-name", "text", "label", "end", []place{hangNow - 8*u, hangCutAt - 3*u, 74 * u}, "draw.hang.cut"},
	{"draw.hang.cut-label", "text", "label", "end", []place{hangNow - 8*u, hangCutAt + 13*u, 74 * u}, "draw.hang.length"},
	{"draw.hang.coil-label", "text", "label", "start", []place{hangThen + 14*u, hangCoilAt - 3*u, 98 * u}, "draw.hang.coiled"},
	{"draw.hang.coil-name", "text", "label", "start", []place{hangThen + 14*u, hangNameAt + 13*u, 98 * u}, "draw.hang.as-coiled"},
	{"draw.hang.rise-label", "text", "label", "end", []place{261 * u, hangRiseAt, 149 * u}, "draw.hang.rises"},
	{"draw.hang.clear-label", "text", "label", "start", []place{157 * u, hangClearAt, 105 * u}, "draw.hang.clearance"},
	{"draw.hang.add-label", "text", "label", "start", []place{40 * u, 382 * u, 0, hangAdds}, "draw.hang.add"},
	{"draw.hang.mass-label", "text", "label", "start", []place{40 * u, 399 * u, 0, hangWeighs}, "draw.hang.mass"},
	{"draw.hang.note", "text", "label", "start", []place{40 * u, 418 * u, 0, lacks}, "draw.hang.note" + or + needs},
}

var hangSaid = []Shape{
	{":title", "", "", "", nil, "draw.hang.title"},
	{":desc", "", "", "", nil, "draw.hang.desc"},
}

// What stays as it is: the beam that the hook is in, and a tray with something soft in it.
const (
	beam    = "m60 25h232v9h-232zm6 9l9-9m15 9l9-9m15 9l9-9m15 9l9-9m15 9l9-9m15 9l9-9m15 9l9-9m15 9l9-9m15 9l9-9m15 9l9-9"
	cushion = "m40 350v12h264v-12m-260 6q16-12 32 0 16-12 32 0 16-12 32 0 16-12 32 0 16-12 32 0 16-12 32 0 16-12 32 0 16-12 32 0"
)

// drawHang draws the fibre under its mass, and beside it the same when it is fully coiled. Every height is true to the height of the
// hook above the tray.
func drawHang(s *sketch) {
	p, o := &s.st.Plan, &s.st.Out
	var n numbers
	high := float64(o.HookHeight)
	k := (hangFoot-hangTop)/high + only(high > 0) // units to the metre
	if k != k {
		n[lacks] = float64(s.st.Needs(calc.HangHookHeight))
	}
	tail, coiled, rise := float64(p.Tail)*k, float64(p.Coiled)*k, float64(o.Rise)*k
	end, under := hangTop+float64(o.Length)*k, hangFoot-float64(p.Clearance)*k
	w, h := block(float64(p.Mass), 46, 72, float64(p.Stack)*k)
	if !(rise > 0) {
		rise = quantity.NaN
	}
	top, over := under-h, under-rise-h
	n[hangKnown], n[hangHook] = 0*k, hangTop+0*k
	n[hangTies], n[hangTie], n[hangEnd], n[hangUnder] = hangTop+tail, end-tail, end, under
	n[hangClimbs], n[hangCoiled], n[hangTurns], n[hangCoilEnd] = 0*rise, coiled, float64(turns(coiled, 12)), hangTop+tail+coiled
	n[hangRisen], n[hangShort], n[hangStem] = under-rise, end-rise, end-rise+where(top-end-0.1)
	n[hangWeighs], n[hangWide], n[hangHigh], n[hangOver], n[hangOverThen] = 0*float64(p.Mass), w, h, top, over
	n[hangLeft], n[hangRight], n[hangLeftThen], n[hangRightThen] = 100-w/2, 100+w/2, 214-w/2, 214+w/2

	y := max((hangTop+end)/2, hangTop+18)
	n[hangCutAt] = y + where(top-y-18)
	y = max(hangTop+tail+coiled/2, hangTop+18)
	n[hangCoilAt], n[hangNameAt] = y+where(over-y), y+where(over-y-16)
	n[hangRiseAt] = under - rise/2 + 5 + where(rise-20)
	room := hangFoot - under
	y = under - 5
	if room > 16 {
		y = (hangFoot+under)/2 + 5
	}
	n[hangClearAt] = y + only(room > 16 || !(rise <= 48))
	n[hangAdds] = 0*float64(p.Hook) + where(float64(p.Add))
	s.n = n
}

// block returns how wide and how high the side of a cylinder is whose volume is as the mass (kg): a kilogram is as wide as it is high,
// kilo units. It is at most as high as the room there is, and then wider; only at the least and the most width is it out of proportion.
func block(mass, kilo, most, room float64) (w, h float64) {
	if !known(mass) {
		return 0, 0
	}
	side := kilo * cubeRoot(mass)
	h = max(min(side, room), 3)
	w = max(3, min(math.Sqrt(side*side*side/h), most))
	return w, h
}

// cubeRoot returns the cube root of a mass (kg) or the like, by Newton's way; the library's takes 1 kB more of the page's program.
//
//go:noinline
func cubeRoot(x float64) float64 {
	root := 1.0
	for range 40 {
		root = (2*root + x/(root*root)) / 3
	}
	return root
}
