package quantity

import "math"

// forgiven is the share of a number by which it may lie over a step and still
// count as on it: what sums of float64 leave behind.
const forgiven = 1e-9

// Ceil is x rounded up to a whole number: CeilTo(x, 1).
func Ceil(x float64) float64 { return CeilTo(x, 1) }

// Floor is x rounded down to a whole number, forgiving as CeilTo does: for what
// fits into a space.
func Floor(x float64) float64 { return -Ceil(-x) + 0 }

// CeilTo is x rounded up to a multiple of step, after forgiving 1e-9 of x on
// either side of a multiple. It is NaN for a step that is not over 0.
func CeilTo(x, step float64) float64 {
	if !(step > 0) || math.IsInf(step, 0) {
		return NaN
	}
	n := unscale(x, step)
	if math.IsNaN(n) || math.IsInf(n, 0) {
		return n
	}
	whole := math.Round(n)
	if math.Abs(n-whole) > forgiven*math.Abs(n) {
		whole = math.Ceil(n)
	}
	return scale(whole, step) + 0
}
