package trial

import "math"

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
	n := min(len(x), len(y))
	room := make([]float64, 3*n)
	z, v, e := room[:n], room[n:2*n], room[2*n:] // the readings that are known, and what becomes of x
	last := nan
	for i := range n {
		if x[i]+y[i] != x[i]+y[i] {
			continue
		}
		if d.N == 0 {
			d.First, last = x[i], x[i]
		}
		z[d.N], v[d.N] = x[i], y[i]
		d.First, last = min(d.First, x[i]), max(last, x[i])
		d.N++
	}
	z, v, e = z[:d.N], v[:d.N], e[:d.N]
	unknowns := 3
	if end == end {
		unknowns = 2
	}
	span := last - d.First
	if d.N < unknowns || !(span > 0) {
		return d
	}
	for i := range z {
		z[i] -= d.First
	}
	// The best of a grid, and then again and again the best of a finer one between its neighbours.
	low, steps, step := shortest*span, grid, math.Log(longest/shortest)/grid
	for finer := false; step > finest; finer = true {
		ratio := math.Exp(step)
		best, least, at := 0, math.Inf(1), low
		for i := range steps + 1 {
			if rest, _ := squares(e, z, v, end, at); rest < least {
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
	rest, l := squares(e, z, v, end, d.Constant)
	d.Height, d.End = l.Slope, l.At(0)
	d.doubts(e, z, rest, unknowns)
	return d
}

// squares returns the sum of the squares of the distances for a Constant, and the line in e = exp(−x/Constant) that makes it least.
func squares(e, x, y []float64, end, constant float64) (rest float64, l Line) {
	for i := range x {
		e[i] = math.Exp(-x[i] / constant)
	}
	if end == end { // through a point that is known
		ee, ey := 0.0, 0.0
		for i := range e {
			ee += e[i] * e[i]
			ey += e[i] * (y[i] - end)
		}
		l = Line{N: len(x), MeanY: end, Slope: ey / ee}
	} else {
		l = Fit(e, y)
	}
	for i := range e {
		off := y[i] - l.At(e[i])
		rest += off * off
	}
	return rest, l
}

// doubts works out how sure the fit is, from the sum of the squares that are left and how each reading would move with each unknown: with
// Height as e, with Constant as s = Height x e/Constant², with End as 1.
func (d *Decay) doubts(e, x []float64, rest float64, unknowns int) {
	free := d.N - unknowns
	if free < 1 {
		return
	}
	var ee, es, ss, e1, s1, n float64
	for i := range e {
		s := d.Height * x[i] * e[i] / (d.Constant * d.Constant)
		ee += e[i] * e[i]
		es += e[i] * s
		ss += s * s
		e1 += e[i]
		s1 += s
	}
	variance := rest / float64(free)
	d.Residual = math.Sqrt(variance)
	d.EndDoubt = 0
	if unknowns == 3 {
		// taking each about its mean leaves what End doesn't take up
		n = float64(d.N)
		all := ee*(ss*n-s1*s1) - es*(es*n-s1*e1) + e1*(es*s1-ss*e1)
		d.EndDoubt = math.Sqrt(variance * (ee*ss - es*es) / all)
		ee, es, ss = ee-e1*e1/n, es-e1*s1/n, ss-s1*s1/n
	}
	det := ee*ss - es*es
	d.HeightDoubt = math.Sqrt(variance * ss / det)
	d.ConstantDoubt = math.Sqrt(variance * ee / det)
}

// At returns the y of the curve at x.
func (d *Decay) At(x float64) float64 {
	return d.End + d.Height*math.Exp(-(x-d.First)/d.Constant)
}
