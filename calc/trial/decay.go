package trial

import (
	"math"

	"twistbench/calc/quantity"
)

// Decay is the exponential that fits readings best: y = End + Height × exp(−(x − First)/Constant), a body that cools, or warms, with losses in
// proportion. First is the least x of the readings, so that they may begin at any time of a clock.
//
// A member that the readings don't determine is NaN: all but N with fewer readings than unknowns, or where the curve hardly bends, so that any
// long Constant would do; the doubts with no reading more than unknowns.
type Decay struct {
	_ [0]func() // these are not compared

	N                                    int // pairs used
	First                                float64
	End, Height, Constant                float64
	EndDoubt, HeightDoubt, ConstantDoubt float64 // standard ones, from how the readings scatter
	Residual                             float64 // standard deviation of the readings about the curve
}

// The shortest and longest Constant that readings may tell, in spans of theirs, and the steps between in which it is looked for at first and then.
const (
	shortest = 0.01
	longest  = 10
	grid     = 60
	fine     = 20
	finest   = 1e-7 // of a Constant
)

// FitDecay returns the exponential for which the squares of the distances in y are least. With end known, as that of a room is, it is kept;
// NaN searches it too. It takes x as exact and all y as equally sure. A pair with a NaN is left out.
//
// For each Constant the rest is a straight line in exp(−x/Constant): the search is for the one number. Doubts are those of the model made
// straight at what was found (JCGM 100:2008, 5.1.2, with the residual for all).
func FitDecay(x, y []float64, end float64) Decay {
	nan := math.NaN()
	d := Decay{First: nan, End: nan, Height: nan, Constant: nan, EndDoubt: nan, HeightDoubt: nan, ConstantDoubt: nan, Residual: nan}
	x, y = x[:min(len(x), len(y))], y[:min(len(x), len(y))]
	last := nan
	for i := range x {
		if x[i]+y[i] != x[i]+y[i] {
			continue
		}
		if d.N == 0 {
			d.First, last = x[i], x[i]
		}
		d.First, last = min(d.First, x[i]), max(last, x[i])
		d.N++
	}
	unknowns := 3
	if end == end {
		unknowns = 2
	}
	span := last - d.First
	if d.N < unknowns || !(span > 0) {
		return d
	}
	// The best of a grid, and then again and again the best of a finer one between its neighbours.
	var s sums
	low, steps, step := shortest*span, grid, quantity.Log(longest/shortest)/grid
	for finer := false; step > finest; finer = true {
		ratio := quantity.Exp(step)
		best, least, at := 0, math.Inf(1), low
		for i := range steps + 1 {
			if rest := s.take(x, y, d.First, end, at); rest+1e-14*s.yy < least { // by more than rounding
				best, least, d.Constant = i, rest, at
			}
			at *= ratio
		}
		if !finer && (best == 0 || best == steps) {
			d.Constant = nan
			return d
		}
		low, steps, step = d.Constant/ratio, fine, 2*step/fine
	}
	rest := s.take(x, y, d.First, end, d.Constant)
	d.Height = s.ey / s.ee
	d.End = s.y - d.Height*s.e
	free := float64(d.N - unknowns)
	if free < 1 {
		return d
	}
	// How sure it is, from the sum of the squares that are left and how each reading would move with each unknown: with Height as e, with
	// Constant as Height × s/Constant², with End as 1, which is taken out where that is searched.
	variance := rest / free
	d.Residual = math.Sqrt(variance)
	variance /= s.ee*s.ss - s.es*s.es
	d.HeightDoubt = math.Sqrt(variance * s.ss)
	d.ConstantDoubt = math.Sqrt(variance*s.ee) * d.Constant * d.Constant / math.Abs(d.Height)
	d.EndDoubt = 0
	if unknowns == 3 {
		d.EndDoubt = math.Sqrt(rest/free/float64(d.N) + variance*(s.e*s.e*s.ss-2*s.e*s.s*s.es+s.s*s.s*s.ee))
	}
	return d
}

// sums are of e = exp(−x/Constant), of s = x × e, and of y: their means, or, with the end known, 0, 0 and the end; and the sums of the
// products of what they are off those.
type sums struct{ e, s, y, ee, es, ss, ey, yy float64 }

// take works them out for a Constant, and returns the sum of the squares of the distances from the line in e for which that is least.
func (m *sums) take(x, y []float64, first, end, constant float64) (rest float64) {
	*m = sums{}
	n := 0.0
	for pass := range 2 {
		for i := range x {
			z, v := x[i]-first, y[i]
			if z+v != z+v {
				continue
			}
			e := quantity.Exp(-z / constant)
			s := z * e
			if pass == 0 {
				n++
				m.e += e
				m.s += s
				m.y += v
				continue
			}
			e, s, v = e-m.e, s-m.s, v-m.y
			m.ee += e * e
			m.es += e * s
			m.ss += s * s
			m.ey += e * v
			m.yy += v * v
		}
		if pass == 0 {
			m.e, m.s, m.y = m.e/n, m.s/n, m.y/n
			if end == end {
				m.e, m.s, m.y = 0, 0, end
			}
		}
	}
	return max(0, m.yy-m.ey*m.ey/m.ee)
}

// At returns the y of the curve at x.
func (d *Decay) At(x float64) float64 {
	return d.End + d.Height*quantity.Exp(-(x-d.First)/d.Constant)
}
