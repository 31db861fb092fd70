package show

import (
	"math"

	"twistbench/calc"
	"twistbench/calc/craft"
	"twistbench/calc/quantity"
)

// What the drawing of the fibre names.
const (
	fibreY    = iota + firstPlace // the middle of the bundle
	fibreFoot                     // its lowest
	fibreSide                     // and its right
	fibreRing                     // its radius, where it is more than one strand
	fibreLeft                     // the upper strand
	fibreRight
	fibreTopY
	fibreScaleX // the words of the scale, and what it is (m)
	fibreScale
	fibreTwistLow // the bundle as twisted: measured, or its range
	fibreTwistHigh
	fibreEdgeLow
	fibreEdgeHigh
	fibreYarnX // the upper strand of the yarn
	fibreYarnLow
	fibreYarnHigh
	fibreYarnAt // the words of it
	fibreNameAt // and of the upper strand
	fibreMain   // 0 where the fibre is one strand, and 1 where it is more
	fibreNamed  // the same, where its thickness is known
	fibreBundle // 0 where the bundle is measured, and 1 where it is not and its range is known
	fibreMany   // 0 where not all strands are drawn
	fibreYarn   // 0 where there is a companion yarn
	fibreTwist  // 0 where there is something to twist together
)

var fibreShapes = []Shape{
	{"draw.fibre.strands", "path", "fibre", "", []place{strands, 0}, ""},
	{"draw.fibre.yarn", "path", "yarn", "", []place{strands, 1 * u}, ""},
	{"draw.fibre.cuts", "path", "dim", "", []place{cuts}, ""},
	{"draw.fibre.envelope", "path", "ghost", "", []place{circle, 140 * u, fibreY, fibreRing}, ""},
	// The upper strand's thickness above, the bundle's below, the yarn's at the right.
	{"draw.fibre.dims", "path", "dim", "", []place{
		bar, fibreLeft, fibreRight, 26 * u, stroke, fibreLeft, 32 * u, fibreLeft, fibreTopY, stroke, fibreRight, 32 * u, fibreRight, fibreTopY, bar, 8 * u, fibreScaleX - 6*u, 203 * u,
		bar, fibreTwistLow, fibreTwistHigh, fibreFoot + 14*u, ends, fibreEdgeLow, fibreEdgeHigh, fibreFoot + 14*u, 3 * u,
		upright, bar, fibreYarnLow, fibreYarnHigh, fibreSide + 11*u, level,
		stroke, fibreYarnX, fibreYarnLow, fibreSide + 6*u, fibreYarnLow, stroke, fibreYarnX, fibreYarnHigh, fibreSide + 6*u, fibreYarnHigh,
	}, ""},
	{"draw.fibre.strand-label", "text", "label", "middle", []place{fibreNameAt, 16 * u, 0, fibreNamed, fibreNamed - 1*u}, "draw.fibre.strand" + or + "draw.fibre.strands" + or + needs},
	{"draw.fibre.yarn-name", "text", "label", "start", []place{fibreSide + 17*u, fibreYarnAt - 3*u, 107 * u}, "draw.fibre.companion"},
	{"draw.fibre.yarn-label", "text", "label", "start", []place{fibreSide + 17*u, fibreYarnAt + 13*u, 107 * u}, "draw.fibre.yarn"},
	{"draw.fibre.bundle-label", "text", "label", "middle", []place{140 * u, fibreFoot + 32*u, 0, fibreBundle, fibreBundle - 1*u}, "draw.fibre.measured" + or + "draw.fibre.range"},
	{"draw.fibre.scale-label", "text", "label", "start", []place{fibreScaleX, 207 * u, 120 * u}, scaled},
	{"draw.fibre.many", "text", "label", "end", []place{316 * u, fibreMany + 207*u, 160 * u}, "draw.fibre.many"},
}

var fibreSaid = []Shape{
	{":title", "", "", "", nil, "draw.fibre.title"},
	{
		":desc", "", "", "", []place{fibreMain, fibreMain - 1*u, fibreYarn, fibreTwist},
		"draw.fibre.desc" + or + "draw.fibre.desc-strands" + and + "draw.fibre.desc-yarn" + and + "draw.fibre.desc-bundle",
	},
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
	const x = 140.0
	p, o, b := &s.st.Plan, &s.st.Out, &s.bundle
	var n numbers
	d, count := float64(p.Fibre.Diameter), float64(p.Fibre.Strands)
	yd, yn := float64(p.Yarn.Diameter), float64(p.Yarn.Strands)
	most, least, measured := float64(o.Thick), float64(o.Thin), float64(p.Bundle)
	both, single := known(most+yd) && yn > 0, false
	y, r, main := 94.0, 54.0, float64(craft.Envelope(p.Fibre.Strands, p.Fibre.Diameter))
	whole := most
	if !both {
		whole, single = main, count == 1
	}
	if single {
		y, r = 104, 66
	}
	k := 2*r/whole + 0*(d+count) // units to the metre
	if k == k {
		at := y
		if both {
			at = y - r + main*k/2
		}
		b.add(int(count), d*k, x, at)
		b.main = b.n
	}

	n[fibreY], n[fibreFoot], n[fibreSide] = y, y+r, x+r
	n[fibreTwist], n[fibreYarn], n[fibreYarnAt] = only(!single), only(yn > 0), quantity.NaN
	n[fibreRing] = r + 0*k + n[fibreTwist]
	if count != 1 {
		n[fibreMain] = 1
	}
	n[fibreNamed] = n[fibreMain] + 0*k
	top := 0
	for i := range b.main {
		if b.y[i] < b.y[top]-1e-9 {
			top = i
		}
	}
	at, half := b.x[top], b.r[top]+0*k
	n[fibreNameAt], n[fibreLeft], n[fibreRight], n[fibreTopY] = at, at-half, at+half, b.y[top]
	if k != k {
		n[fibreNameAt], n[lacks] = x, float64(s.st.Needs(calc.FibreThick))
	}
	unit := s.shownIn(calc.FibreDiameter)
	scale, _ := above(unit.FromSI(24 / k))
	scale = unit.ToSI(scale)
	n[fibreScale], n[fibreScaleX] = scale, 14+scale*k

	n[fibreBundle] = n[fibreRing] - r + 0*(most+least)
	twisted := measured * k / 2
	n[fibreEdgeLow] = quantity.NaN
	if measured != measured {
		n[fibreBundle]++
		twisted = r
		n[fibreEdgeLow], n[fibreEdgeHigh] = x-least*k/2+0*n[fibreBundle], x+least*k/2
	}
	twisted += 0*n[fibreBundle] + where(x-margin-twisted)
	n[fibreTwistLow], n[fibreTwistHigh] = x-twisted, x+twisted
	n[fibreYarnX], n[fibreYarnLow] = quantity.NaN, quantity.NaN
	if both && k == k {
		b.add(int(yn), yd*k, x, y+r-(most-main)*k/2)
		at, half = b.y[b.main], b.r[b.main]
		n[fibreYarnX], n[fibreYarnLow], n[fibreYarnHigh] = b.x[b.main], at-half, at+half
		n[fibreYarnAt] = max(60, min(at, y+r-8))
	}
	n[fibreMany] = 0*k + where(longest(count, yn)-mostStrands-1)
	s.n = n
}

// strands draws the cut ends of the fibre's strands or of the companion yarn's, and the strands themselves, which reach away to the left from
// them, each until another hides it. What little shows between neighbours is left out, and so are strands as thin as a line.
func (s *sketch) strands() {
	b := &s.bundle
	from, to := 0, b.main
	if s.a[0] != 0 {
		from, to = to, b.n
	}
	for i := from; i < to; i++ {
		x, y, r := b.x[i], b.y[i], b.r[i]
		s.circle(x, y, r)
		if r < 1 {
			continue
		}
		for _, edge := range [2]float64{y - r, y + r} {
			end := 0.0
			for j := range b.n {
				dy := math.Abs(edge - b.y[j])
				if dy > b.r[j]-0.05 || b.x[j] > x-1e-9 || j == i {
					continue
				}
				end = max(end, b.x[j]+math.Sqrt(b.r[j]*b.r[j]-dy*dy))
			}
			if x-end > r {
				s.stroke(x, edge, end, edge)
			}
		}
	}
}

// cuts draws the slant lines of the cut faces, those of the companion yarn the other way, where they are not too small to be hatched.
func (s *sketch) cuts() {
	const apart = 12 // along x
	b := &s.bundle
	for i := range b.n {
		if b.n > 7 {
			return
		}
		x, y, r, lean := b.x[i], b.y[i], b.r[i]-1.5, -1.0
		if i >= b.main {
			lean = 1
		}
		// A line of them is y = lean·x + c, and c of the face's middle is:
		middle := y - lean*x
		for c := math.Ceil((middle-r*math.Sqrt2)/apart) * apart; c < middle+r*math.Sqrt2; c += apart {
			off := (c - middle) / 2
			half := math.Sqrt(max(r*r-2*off*off, 0)) / math.Sqrt2
			if half < 1 {
				continue
			}
			footX, footY := x-lean*off, y+off
			s.stroke(footX-half, footY-lean*half, footX+half, footY+lean*half)
		}
	}
}
