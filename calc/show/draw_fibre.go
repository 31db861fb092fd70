package show

import (
	"math"

	"twistbench/calc"
	"twistbench/calc/craft"
)

const (
	fibreStrands = iota
	fibreYarn
	fibreCuts
	fibreEnvelope
	fibreDims
	fibreStrandLabel
	fibreYarnName
	fibreYarnLabel
	fibreBundleLabel
	fibreScaleLabel
	fibreMany
)

var fibreShapes = [...]Shape{
	fibreStrands:     {"draw.fibre.strands", "path", "fibre", "", nil, ""},
	fibreYarn:        {"draw.fibre.yarn", "path", "yarn", "", nil, ""},
	fibreCuts:        {"draw.fibre.cuts", "path", "dim", "", nil, ""},
	fibreEnvelope:    {"draw.fibre.envelope", "path", "ghost", "", nil, ""},
	fibreDims:        {"draw.fibre.dims", "path", "dim", "", nil, ""},
	fibreStrandLabel: {"draw.fibre.strand-label", "text", "label", "middle", nil, ""},
	fibreYarnName:    {"draw.fibre.yarn-name", "text", "label", "start", nil, ""},
	fibreYarnLabel:   {"draw.fibre.yarn-label", "text", "label", "start", nil, ""},
	fibreBundleLabel: {"draw.fibre.bundle-label", "text", "label", "middle", nil, ""},
	fibreScaleLabel:  {"draw.fibre.scale-label", "text", "label", "start", nil, ""},
	fibreMany:        {"draw.fibre.many", "text", "label", "end", nil, ""},
}

// mostStrands is how many strands are drawn at most, of the fibre and of the companion yarn.
const mostStrands = 19

// bundle is the strands of a plan side by side, seen from their cut ends, in units of the drawing.
type bundle struct {
	x, y, r [2 * mostStrands]float64
	n, main int // drawn in all, and of the main fibre
}

// add puts n strands of diameter d round (x, y): up to six in a ring, then in full rings of six and of twelve round one.
func (u *bundle) add(n int, d, x, y float64) {
	at := ringed[:]
	switch {
	case n < 6:
		at = few[n*(n-1)/2:]
	case n == 6:
		at = ringed[1:]
	}
	for i := range min(n, mostStrands) {
		u.x[u.n], u.y[u.n], u.r[u.n] = x+at[i][0]*d, y+at[i][1]*d, d/2
		u.n++
	}
}

const (
	root3 = 1.7320508075688772
	ring3 = 1 / root3          // how far from the middle three touching strands lie, in strands
	ring4 = math.Sqrt2 / 2     // and four
	ring5 = 0.8506508083520400 // and five: 1/(2 sin 36°)
	sin72 = 0.9510565162951535 // of the strands of a ring of five
	cos72 = 0.3090169943749474
	sin36 = 0.5877852522924731
	cos36 = 0.8090169943749475
)

// few is where one strand lies, and two, three, four and five touching ones, in strands from the middle: the first at the top.
var few = [15][2]float64{
	{0, 0},
	{0, -0.5}, {0, 0.5},
	{0, -ring3}, {0.5, ring3 / 2}, {-0.5, ring3 / 2},
	{0, -ring4}, {ring4, 0}, {0, ring4}, {-ring4, 0},
	{0, -ring5}, {ring5 * sin72, -ring5 * cos72}, {ring5 * sin36, ring5 * cos36}, {-ring5 * sin36, ring5 * cos36}, {-ring5 * sin72, -ring5 * cos72},
}

// ringed is where up to 19 lie: one, and round it a ring of six and a ring of twelve.
var ringed = [mostStrands][2]float64{
	{0, 0},
	{0, -1}, {root3 / 2, -0.5}, {root3 / 2, 0.5}, {0, 1}, {-root3 / 2, 0.5}, {-root3 / 2, -0.5},
	{root3 / 2, -1.5}, {root3, 0}, {root3 / 2, 1.5}, {-root3 / 2, 1.5}, {-root3, 0}, {-root3 / 2, -1.5},
	{0, -2}, {root3, -1}, {root3, 1}, {0, 2}, {-root3, 1}, {-root3, -1},
}

// drawFibre draws the strands from their cut ends, all at one scale, each reaching away to the left.
func drawFibre(s *sketch) {
	p, o := &s.st.Plan, &s.st.Out
	d, n := float64(p.Fibre.Diameter), float64(p.Fibre.Strands)
	yd, yn := float64(p.Yarn.Diameter), float64(p.Yarn.Strands)
	most, least := float64(o.Thick), float64(o.Thin)
	drawn := known(d, n)
	both := known(most, yd) && yn > 0
	single := n == 1 && !both

	x, y, r := 140.0, 94.0, 54.0
	if single {
		y, r = 104, 66
	}
	var u bundle
	k := 0.0 // units to the metre
	if drawn {
		main := float64(craft.Envelope(p.Fibre.Strands, p.Fibre.Diameter))
		k = 2 * r / main
		if both {
			k = 2 * r / most
			u.add(int(n), d*k, x, y-r+main*k/2)
			u.main = u.n
			u.add(int(yn), yd*k, x, y+r-(most-main)*k/2)
		} else {
			u.add(int(n), d*k, x, y)
			u.main = u.n
		}
	}

	s.path(fibreStrands)
	s.strands(&u, 0, u.main)
	s.end()
	s.path(fibreYarn)
	s.strands(&u, u.main, u.n)
	s.end()
	s.path(fibreCuts)
	if u.n <= 7 { // more are too small to be hatched
		for i := range u.n {
			s.hatch(u.x[i], u.y[i], u.r[i], i >= u.main)
		}
	}
	s.end()
	s.path(fibreEnvelope)
	if drawn && !single {
		s.circle(x, y, r)
	}
	s.end()

	// The upper strand's thickness above, the bundle's below, the yarn's at the right.
	top := 0
	for i := range u.main {
		if u.y[i] < u.y[top]-1e-9 {
			top = i
		}
	}
	bundled := drawn && !single && known(most, least)
	scale, length := 0.0, 0.0
	unit := s.shownIn(calc.FibreDiameter)
	s.path(fibreDims)
	if drawn {
		tx, ty, tr := u.x[top], u.y[top], u.r[top]
		s.bar(tx-tr, tx+tr, 26)
		s.stroke(tx-tr, 32, tx-tr, ty)
		s.stroke(tx+tr, 32, tx+tr, ty)
		scale, _ = above(unit.FromSI(24 / k))
		length = unit.ToSI(scale) * k
		s.bar(8, 8+length, 203)
	}
	if twisted := float64(p.Bundle) * k / 2; bundled && known(twisted) {
		if twisted < x-margin {
			s.bar(x-twisted, x+twisted, y+r+14)
		}
	} else if bundled {
		s.bar(x-r, x+r, y+r+14)
		for _, edge := range [2]float64{x - least*k/2, x + least*k/2} {
			s.stroke(edge, y+r+11, edge, y+r+17)
		}
	}
	if both && drawn {
		yx, yy, yr := u.x[u.main], u.y[u.main], u.r[u.main]
		s.upright = true
		s.bar(yy-yr, yy+yr, x+r+11)
		s.upright = false
		s.stroke(yx, yy-yr, x+r+6, yy-yr)
		s.stroke(yx, yy+yr, x+r+6, yy+yr)
	}
	s.end()

	key := "draw.fibre.strand"
	if n > 1 {
		key = "draw.fibre.strands"
	}
	if drawn {
		s.label(fibreStrandLabel, u.x[top], 16, s.w, true, key)
	} else {
		s.needs(fibreStrandLabel, x, 16, calc.FibreThick)
	}
	yy := y
	if both && drawn {
		yy = math.Max(60, math.Min(u.y[u.main], y+r-8))
	}
	s.label(fibreYarnName, x+r+17, yy-3, 107, both && drawn, "draw.fibre.companion")
	s.label(fibreYarnLabel, x+r+17, yy+13, 107, both && drawn, "draw.fibre.yarn")
	key = "draw.fibre.range"
	if known(float64(p.Bundle)) {
		key = "draw.fibre.measured"
	}
	s.label(fibreBundleLabel, x, y+r+32, s.w, bundled, key)
	from := s.text(fibreScaleLabel)
	if drawn {
		s.digits(unit.ToSI(scale), unit, 1)
		s.unit(unit)
	}
	s.place(fibreScaleLabel, from, 14+length, 207, 120)
	s.label(fibreMany, s.w-4, 207, 160, drawn && longest(n, yn) > mostStrands, "draw.fibre.many")

	s.sayOld("draw.fibre:title", "draw.fibre.title")
	key = "draw.fibre.desc"
	if n != 1 {
		key = "draw.fibre.desc-strands"
	}
	s.desc("draw.fibre:desc", key)
	s.also(yn > 0, "draw.fibre.desc-yarn")
	s.also(!single, "draw.fibre.desc-bundle")
	s.end()
}

// strands draws the cut ends of some strands of a bundle and the strands themselves, which reach away to the left from them, each
// until another hides it. What little shows between neighbours is left out, and
// so are strands as thin as a line.
func (s *sketch) strands(u *bundle, from, to int) {
	for i := from; i < to; i++ {
		x, y, r := u.x[i], u.y[i], u.r[i]
		s.circle(x, y, r)
		if r < 1 {
			continue
		}
		for _, edge := range [2]float64{y - r, y + r} {
			end := 0.0
			for j := range u.n {
				dy := math.Abs(edge - u.y[j])
				if dy > u.r[j]-0.05 || u.x[j] > x-1e-9 || j == i {
					continue
				}
				end = math.Max(end, u.x[j]+math.Sqrt(u.r[j]*u.r[j]-dy*dy))
			}
			if x-end > r {
				s.stroke(x, edge, end, edge)
			}
		}
	}
}

// hatch draws the slant lines of a cut face, those of the companion yarn the other way.
func (s *sketch) hatch(x, y, r float64, other bool) {
	const apart = 12 // along x
	lean := -1.0
	if other {
		lean = 1
	}
	r -= 1.5
	// A line of them is y = lean·x + c, and c of the face's middle is:
	middle := y - lean*x
	for c := math.Ceil((middle-r*math.Sqrt2)/apart) * apart; c < middle+r*math.Sqrt2; c += apart {
		off := (c - middle) / 2
		half := math.Sqrt(math.Max(r*r-2*off*off, 0)) / math.Sqrt2
		if half < 1 {
			continue
		}
		footX, footY := x-lean*off, y+off
		s.stroke(footX-half, footY-lean*half, footX+half, footY+lean*half)
	}
}
