package quantity

import (
	"math"
	"strconv"
)

// Unknown is what is written for a quantity that is not known.
const Unknown = "–"

// Append writes an SI value in unit u, the number only, to so many significant
// digits, with the mark as its decimal mark (0 is a point). Digits before the
// mark are never rounded away, halves go away from zero. A value that is NaN
// or has no end is written as Unknown. A nil unit is the SI unit itself.
func Append(b []byte, si float64, u *Unit, digits int, mark byte) []byte {
	x := u.FromSI(si)
	if math.IsNaN(x) || math.IsInf(x, 0) {
		return append(b, Unknown...)
	}
	x += 0 // no negative zero
	decimals := Decimals(x, digits)
	start := len(b)
	b = strconv.AppendFloat(b, awayFromHalf(x, decimals), 'f', decimals, 64)
	if mark != 0 && mark != '.' {
		for i := len(b) - 1; i >= start; i-- {
			if b[i] == '.' {
				b[i] = mark
				break
			}
		}
	}
	return b
}

// Decimals is the number of decimals that show x, rounded, with so many
// significant digits (at least one): 4 digits of 0.52 take 4 decimals. It is 0
// where the digits before the mark are enough or more, and for 0, NaN and
// infinity.
func Decimals(x float64, digits int) int {
	if x == 0 || math.IsNaN(x) || math.IsInf(x, 0) {
		return 0
	}
	digits = max(digits, 1)
	var buf [64]byte
	e := strconv.AppendFloat(buf[:0], x, 'e', digits-1, 64)
	// The exponent is what stands after the e: a sign and at least 2 digits.
	i := len(e) - 1
	exponent, ten := 0, 1
	for ; isDigit(rune(e[i])); i-- {
		exponent += ten * int(e[i]-'0')
		ten *= 10
	}
	if e[i] == '-' {
		exponent = -exponent
	}
	return max(digits-1-exponent, 0)
}

// awayFromHalf moves x, if it lies exactly half way between two numbers of so
// many decimals, a step or two of float64 away from zero: strconv would round it to
// the even one.
func awayFromHalf(x float64, decimals int) float64 {
	if decimals > 50 {
		return x // no float64 of fewer than 17 digits lies half way
	}
	// Half way is where x × 10ⁿ × 2 is odd. 5ⁿ is odd, so that x × 2ⁿ × 2 is too, and that is exact.
	odd := x * float64(uint64(2)<<decimals)
	if odd != math.Trunc(odd) || odd/2 == math.Trunc(odd/2) {
		return x
	}
	return x + x*0x1p-52
}

// AppendTrimmed does the same without zeros behind the last digit that follows the mark.
func AppendTrimmed(b []byte, si float64, u *Unit, digits int, mark byte) []byte {
	n := len(b)
	b = Append(b, si, u, digits, mark)
	for i := n; i < len(b); i++ {
		if b[i] == mark {
			end := len(b)
			for b[end-1] == '0' {
				end--
			}
			if end-1 == i {
				end = i
			}
			return b[:end]
		}
	}
	return b
}
