package trial

import "math"

// Line is the straight line that fits pairs of readings best: y = MeanY + Slope × (x − MeanX). In this form it holds in every unit of x and
// y, also where their scales begin elsewhere, as those of temperatures do.
//
// A member that the pairs don't determine is NaN: all but N without a pair; Slope with one pair, or with one x.
type Line struct {
	_ [0]func() // these are not compared

	N            int     // pairs used
	MeanX, MeanY float64 // the middle of the readings
	Slope        float64 // y per x
	Low, High    float64 // least and most x
}

// Fit returns the line for which the squares of the distances in y are least: the slope is Σ(x − x̄)(y − ȳ) / Σ(x − x̄)², through the middle of
// the readings (JCGM 100:2008, H.3). It takes x as exact and all y as equally sure. A pair with a NaN is left out, and so is what is left
// over of the longer list.
func Fit(x, y []float64) Line {
	l := Line{MeanX: math.NaN(), MeanY: math.NaN(), Slope: math.NaN(), Low: math.NaN(), High: math.NaN()}
	n := min(len(x), len(y))
	sumX, sumY, sumXX, sumXY := 0.0, 0.0, 0.0, 0.0
	for i := range n {
		if x[i]+y[i] != x[i]+y[i] {
			continue
		}
		if l.N == 0 {
			l.Low, l.High = x[i], x[i]
		}
		l.N++
		l.Low, l.High = min(l.Low, x[i]), max(l.High, x[i])
		sumX += x[i]
		sumY += y[i]
	}
	if l.N == 0 {
		return l
	}
	l.MeanX, l.MeanY = sumX/float64(l.N), sumY/float64(l.N)
	if l.Low == l.High {
		return l
	}
	for i := range n {
		if dx, dy := x[i]-l.MeanX, y[i]-l.MeanY; dx+dy == dx+dy {
			sumXX += dx * dx
			sumXY += dx * dy
		}
	}
	l.Slope = sumXY / sumXX
	return l
}

// Intercept returns the y of the line at x = 0.
func (l *Line) Intercept() float64 { return l.At(0) }

// Residual returns the standard deviation of the same readings about the line, with N − 2 degrees of freedom; NaN with two pairs or fewer.
func (l *Line) Residual(x, y []float64) float64 {
	rest := 0.0
	for i := range min(len(x), len(y)) {
		if d := y[i] - l.At(x[i]); d == d {
			rest += d * d
		}
	}
	if l.N <= 2 {
		return math.NaN()
	}
	return math.Sqrt(rest / float64(l.N-2))
}

// At returns the y of the line at x.
func (l *Line) At(x float64) float64 { return l.MeanY + l.Slope*(x-l.MeanX) }

// Inverse returns the x at which the line reaches y; not finite where the line is level.
func (l *Line) Inverse(y float64) float64 { return l.MeanX + (y-l.MeanY)/l.Slope }

// Within reports whether x lies between the readings. What a line says beyond them is extrapolation.
func (l *Line) Within(x float64) bool { return x >= l.Low && x <= l.High }
