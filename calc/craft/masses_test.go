package craft

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"twistbench/calc/quantity"
)

// grams makes a set of masses from pairs of grams and pieces.
func grams(pairs ...float64) (set []quantity.Item) {
	for i := 0; i < len(pairs); i += 2 {
		set = append(set, quantity.Item{Each: pairs[i] / 1000, Count: int(pairs[i+1])})
	}
	return set
}

func TestNearestLoads(t *testing.T) {
	nan := math.NaN()
	start := grams(20, 2, 50, 2, 100, 1, 200, 1)
	for _, row := range []struct {
		name              string
		set               []quantity.Item
		want, under, over float64 // g
		pieces            [2]int  // how many pieces there are in each
	}{
		{"the start plan", start, 333.2, 320, 340, [2]int{3, 4}}, // 200+100+20; 200+100+20×2
		{"exactly there", start, 340, 340, 340, [2]int{4, 4}},
		{"everything", start, 440, 440, 440, [2]int{6, 6}},
		{"not enough", start, 441, 440, nan, [2]int{6, 0}},
		{"less than the least", start, 13, 0, 20, [2]int{0, 1}},
		{"nothing to add", start, 0, 0, 0, [2]int{0, 0}},
		{"the hook is too heavy", start, -5, nan, 0, [2]int{0, 0}},
		{"fewest of equal sums", grams(50, 4, 100, 2, 200, 1), 200, 200, 200, [2]int{1, 1}},
		{"fewest, 300 as two", grams(100, 3, 200, 1), 310, 300, 400, [2]int{2, 3}},
		{"washers of 6.2 g", grams(6.2, 11), 20, 18.6, 24.8, [2]int{3, 4}},
		{"exactly three washers", grams(6.2, 11), 18.6, 18.6, 18.6, [2]int{3, 3}},
		{"nothing owned", nil, 333.2, nan, nan, [2]int{}},
		{"unknown", start, nan, nan, nan, [2]int{}},
	} {
		under, over := NearestLoads(row.set, quantity.Mass(row.want/1000))
		for i, got := range []Load{under, over} {
			want := [2]float64{row.under, row.over}[i]
			if math.IsNaN(want) {
				assert.True(t, math.IsNaN(float64(got.Sum)), row.name)
				continue
			}
			assert.InDelta(t, want/1000, float64(got.Sum), 1e-12, row.name)
			assert.Equal(t, row.pieces[i], pieces(t, row.set, got), row.name)
		}
	}
}

// pieces counts the masses of a load, and checks that they are there and make its sum.
func pieces(t *testing.T, set []quantity.Item, l Load) (n int) {
	t.Helper()
	sum := 0.0
	for i, c := range l.Count {
		if c == 0 {
			continue
		}
		require.Less(t, i, len(set))
		require.LessOrEqual(t, int(c), set[i].Count)
		sum += float64(c) * set[i].Each
		n += int(c)
	}
	require.InDelta(t, sum, float64(l.Sum), 1e-12)
	return n
}

// Against trying every choice, on small sets.
func TestNearestLoadsAgainstAll(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	for range 400 {
		var set []quantity.Item
		total := 0.0
		for range 1 + r.IntN(4) {
			it := quantity.Item{Each: float64(1+r.IntN(4000)) / 10 / 1000, Count: 1 + r.IntN(4)}
			set = append(set, it)
			total += it.Each * float64(it.Count)
		}
		want := r.Float64() * 1.2 * total
		if r.IntN(4) == 0 {
			want = math.Round(want*1e4) / 1e4 // on the grain, so that ties happen
		}
		low, high := math.Inf(-1), math.Inf(1)
		fewest := map[int]int{} // by tenths of a gram
		var try func(i int, sum float64, n int)
		try = func(i int, sum float64, n int) {
			if i == len(set) {
				if sum <= want+1e-9 {
					low = max(low, sum)
				}
				if sum >= want-1e-9 {
					high = min(high, sum)
				}
				key := int(math.Round(sum * 1e4))
				if f, ok := fewest[key]; !ok || n < f {
					fewest[key] = n
				}
				return
			}
			for c := range set[i].Count + 1 {
				try(i+1, sum+float64(c)*set[i].Each, n+c)
			}
		}
		try(0, 0, 0)
		under, over := NearestLoads(set, quantity.Mass(want))
		assert.InDelta(t, low, float64(under.Sum), 1e-9, "under %g of %v", want, set)
		assert.Equal(t, fewest[int(math.Round(low*1e4))], pieces(t, set, under), "under %g of %v", want, set)
		if math.IsInf(high, 1) {
			assert.True(t, math.IsNaN(float64(over.Sum)), "over %g of %v", want, set)
			continue
		}
		assert.InDelta(t, high, float64(over.Sum), 1e-9, "over %g of %v", want, set)
		assert.Equal(t, fewest[int(math.Round(high*1e4))], pieces(t, set, over), "over %g of %v", want, set)
	}
}

// A list of odd masses, which takes a coarser grain, never stalls and never gives what is not there.
func TestNearestLoadsOfOddMasses(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 4))
	var set []quantity.Item
	total := 0.0
	for range MostMasses {
		it := quantity.Item{Each: 0.005 + 0.3*r.Float64(), Count: 1 + r.IntN(12)}
		set = append(set, it)
		total += it.Each * float64(it.Count)
	}
	for _, want := range []float64{0, 0.1, 0.5, 1.5, 5, total, total * 2} {
		under, over := NearestLoads(set, quantity.Mass(want))
		for _, l := range []Load{under, over} {
			if l.Sum == l.Sum {
				pieces(t, set, l)
			}
		}
		assert.LessOrEqual(t, float64(under.Sum), want+1e-9)
		assert.False(t, float64(over.Sum) < want-1e-9)
		if want >= 0.5 && want < total {
			assert.Less(t, want-float64(under.Sum), 0.003*want, "%g", want)
			assert.Less(t, float64(over.Sum)-want, 0.003*want, "%g", want)
		}
	}
	for i := range set {
		set[i].Count = 999
	}
	under, over := NearestLoads(set, 1000)
	assert.False(t, under.Sum > 1000 || over.Sum < 1000)
	under, _ = NearestLoads(append(set, quantity.Item{Each: 1, Count: 1}), 1)
	assert.True(t, math.IsNaN(float64(under.Sum)), "more than a set may hold")
	under, _ = NearestLoads(grams(1e-7, 3), 1)
	assert.True(t, math.IsNaN(float64(under.Sum)), "below a milligram there is no grain")
}
