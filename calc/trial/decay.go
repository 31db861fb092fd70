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

// The shortest and longest Constant that readings may tell, in spans of theirs, and the steps between in which it is looked for first.
const (
	shortest = 0.01
	longest  = 10
	grid     = 60
)

// FitDecay returns the exponential for which the squares of the distances in y are least. With end known, as that of a room is, it is kept;
// NaN searches it too. It takes x as exact and all y as equally sure. A pair with a NaN is left out.
//
// For each Constant the rest is a straight line in exp(−x/Constant): the search is for the one number. Doubts are those of the model made
// straight at what was found (JCGM 100:2008, 5.1.2, with the residual for all).
func FitDecay(x, y []float64, end float64) Decay {
	nan := math.NaN()
	d := Decay{First: nan, End: nan, Height: nan, Constant: nan, EndDoubt: nan, HeightDoubt: nan, ConstantDoubt: nan, Residual: nan}
	e := make([]float64, 0, len(x)) // the readings that are known, and what becomes of x
	z := make([]float64, 0, len(x))
	v := make([]float64, 0, len(x))
	last := nan
	for i := range min(len(x), len(y)) {
		if x[i]+y[i] != x[i]+y[i] {
			continue
		}
		if len(v) == 0 {
			d.First, last = x[i], x[i]
		}
		d.First, last = min(d.First, x[i]), max(last, x[i])
		z, v, e = append(z, x[i]), append(v, y[i]), append(e, 0)
	}
	d.N = len(v)
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
	// the best of a grid, then the golden section of what lies between its neighbours
	best, least := -1, math.Inf(1)
	ratio := math.Exp(math.Log(longest/shortest) / grid)
	at := shortest * span
	for i := 0; i <= grid; i++ {
		if rest, _ := squares(e, z, v, end, at); rest < least {
			best, least = i, rest
		}
		at *= ratio
	}
	if best <= 0 || best >= grid {
		return d
	}
	at = shortest * span * math.Exp(math.Log(ratio)*float64(best))
	low, high := at/ratio, at*ratio
	const golden = 0.6180339887498949
	a, b := high-golden*(high-low), low+golden*(high-low)
	fa, _ := squares(e, z, v, end, a)
	fb, _ := squares(e, z, v, end, b)
	for high-low > 1e-7*at {
		if fa < fb {
			high, b, fb = b, a, fa
			a = high - golden*(high-low)
			fa, _ = squares(e, z, v, end, a)
		} else {
			low, a, fa = a, b, fb
			b = low + golden*(high-low)
			fb, _ = squares(e, z, v, end, b)
		}
	}
	d.Constant = (low + high) / 2
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
