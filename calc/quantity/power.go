package quantity

import "math"

// The library's exponential and logarithm take 3 kB of the page's program, and in WebAssembly twice the time of these.

// Log returns the natural logarithm of x; −Inf of 0, NaN of what is below, within 2e-15 of the greater of 1 and the logarithm.
func Log(x float64) float64 {
	switch {
	case x == 0:
		return math.Inf(-1)
	case !(x > 0):
		return NaN
	case x > math.MaxFloat64:
		return x
	}
	twos := 0.0
	if x < 0x1p-1000 { // what has no leading 1
		x *= 0x1p60
		twos = -60
	}
	// x = 2ⁿ m, with m about 1; then ln m = 2 artanh((m − 1)/(m + 1)), as a series.
	bits := math.Float64bits(x) - 0x3FE6A09E667F3BCD // of √½
	twos += float64(int64(bits) >> 52)
	m := math.Float64frombits(bits&(1<<52-1) + 0x3FE6A09E667F3BCD)
	s := (m - 1) / (m + 1)
	z := s * s
	return twos*math.Ln2 + 2*s*(1+z*(1.0/3+z*(1.0/5+z*(1.0/7+z*(1.0/9+z*(1.0/11+z*(1.0/13+z*(1.0/15+z*(1.0/17+z*(1.0/19+z*(1.0/21)))))))))))
}

// Exp returns e to the power x, 0 and Inf beyond what a number can be; within some 1e-15 of it, and that times x where x is large.
func Exp(x float64) float64 {
	switch {
	case x > 709:
		return math.Inf(1)
	case x < -708:
		return 0
	case x != x:
		return x
	}
	// x = n ln 2 + r, with r about 0
	n := math.Floor(x/math.Ln2 + 0.5)
	r := x - n*0x1.62e42feep-1 - n*0x1.a39ef35793c76p-33 // ln 2 in two parts
	sum := 1 + r*(1+r*(1.0/2+r*(1.0/6+r*(1.0/24+r*(1.0/120+r*(1.0/720+r*(1.0/5040+r*(1.0/40320+r*(1.0/362880+r*(1.0/3628800+r*(1.0/39916800+r*(1.0/479001600))))))))))))
	return sum * math.Float64frombits(uint64(n+1023)<<52)
}
