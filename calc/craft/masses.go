package craft

import (
	"math"

	"twistbench/calc/quantity"
)

// MostMasses is how many different masses a set may hold.
const MostMasses = 40

// Load is a choice from a set of masses: the sum (kg) and how many of each are taken, in the order of the set.
type Load struct {
	Sum   quantity.Mass
	Count [MostMasses]uint16
}

// NearestLoads searches a set of masses for the two sums nearest to want (kg): the largest that is not above it and the smallest
// that is not below it. Of equal sums the one with the fewest pieces is taken. Where there is none, the Sum is NaN. Zero, nothing
// added, counts as a sum.
//
// The search is exact to grain (kg), the largest step that divides every mass and is at least 1 mg; beyond steps of work it takes a
// coarser grain, so that a list of odd masses never stalls a keystroke.
func NearestLoads(set []quantity.Item, want quantity.Mass) (under, over Load) {
	under.Sum, over.Sum = quantity.Mass(quantity.NaN), quantity.Mass(quantity.NaN)
	if unknown(float64(want)) || len(set) == 0 || len(set) > MostMasses {
		return under, over
	}
	grain, pieces, total, most := 0, 0, 0.0, 0.0
	for _, it := range set {
		grain = gcd(grain, int(math.Round(it.Each*1e6)))
		pieces += it.Count
		total += it.Each * float64(it.Count)
		most = max(most, it.Each)
	}
	if grain == 0 {
		return under, over
	}
	step := float64(grain) * 1e-6
	span := min(total, max(float64(want), 0)+most)
	for span/step*float64(pieces) > steps {
		step *= 2
	}
	n := int(span/step+1e-6) + 1
	// fewest[i] is the least number of masses that make i steps; took[k*n+i] how many of mass k are among them.
	fewest, next := make([]uint16, n), make([]uint16, n)
	took := make([]uint16, len(set)*n)
	for i := 1; i < n; i++ {
		fewest[i] = none
	}
	for k, it := range set {
		w := int(math.Round(it.Each / step))
		row := took[k*n : (k+1)*n]
		for i := range next {
			best, by := fewest[i], uint16(0)
			for c := 1; c <= it.Count && w > 0 && c*w <= i; c++ {
				if f := fewest[i-c*w]; f != none && f+uint16(c) < best {
					best, by = f+uint16(c), uint16(c)
				}
			}
			next[i], row[i] = best, by
		}
		fewest, next = next, fewest
	}
	choose := func(i int) (l Load) {
		for k := len(set) - 1; k >= 0; k-- {
			c := took[k*n+i]
			l.Count[k] = c
			l.Sum += quantity.Mass(float64(c) * set[k].Each)
			i -= int(c) * int(math.Round(set[k].Each/step))
		}
		return l
	}
	// With a grain that divides every mass the first sum that is met is the one; with a coarser one it may lie on the wrong side.
	at := float64(want) / step
	for i := min(int(math.Floor(at+1e-6)), n-1); i >= 0; i-- {
		if fewest[i] != none {
			if l := choose(i); l.Sum <= want+same {
				under = l
				break
			}
		}
	}
	for i := max(int(math.Ceil(at-1e-6)), 0); i < n; i++ {
		if fewest[i] != none {
			if l := choose(i); l.Sum >= want-same {
				over = l
				break
			}
		}
	}
	return under, over
}

const (
	none  = math.MaxUint16
	same  = 1e-9    // kg: sums that differ by less are the same
	steps = 1 << 21 // about 10 ms of work on a slow phone
)

func gcd(a, b int) int {
	for b != 0 {
		a, b = b, a%b
	}
	return a
}
