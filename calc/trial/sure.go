package trial

import "math"

// SlopeDoubt returns the standard uncertainty of the slope of the line through the same readings: the residual over √Σ(x − x̄)² (JCGM
// 100:2008, H.3). NaN with two pairs or fewer: they fit any line.
func (l *Line) SlopeDoubt(x, y []float64) float64 {
	return l.Residual(x, y) / math.Sqrt(l.spread(x, y))
}

// DoubtAt returns the standard uncertainty of the line's y at a place at, through the same readings: at 0 it is that of the intercept.
func (l *Line) DoubtAt(x, y []float64, at float64) float64 {
	d := at - l.MeanX
	return l.Residual(x, y) * math.Sqrt(1/float64(l.N)+d*d/l.spread(x, y))
}

// spread returns Σ(x − x̄)² of the pairs that the line was fitted to.
func (l *Line) spread(x, y []float64) (sum float64) {
	for i := range min(len(x), len(y)) {
		if d := x[i] - l.MeanX; d+y[i] == d+y[i] {
			sum += d * d
		}
	}
	return sum
}
