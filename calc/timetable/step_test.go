package timetable

import (
	"math"
	"math/rand/v2"
	"testing"

	"twistbench/calc/quantity"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

const minute = 60

// times makes Times of minutes: preheat, load, recovery, hold 1, cool 1, re-clamp, hold 2, cool 2, rest.
func times(stages, loads int, minutes ...float64) *Times {
	t := &Times{Stages: stages, Loads: loads}
	for p := range NumParts {
		t.Part[p] = quantity.Time(minutes[p] * minute)
	}
	return t
}

var nan = math.NaN()

type when struct {
	do        string
	load      int
	from, len int // min
}

func TestSteps(t *testing.T) {
	for _, c := range []struct {
		name  string
		times *Times
		want  []when
	}{
		// A school's double lesson: the first load is ready at 30 min; load 3, recovery 5, hold 25, cool 10 outside: out at 63, cool at 73; the
		// second load goes in at 63, is out at 96 and cool at 106 min.
		{"two loads, one oven", times(1, 2, 30, 3, 5, 25, 10, nan, nan, nan, 0), []when{
			{"preheat", 1, 0, 30},
			{"load-1", 1, 30, 3}, {"recovery-1", 1, 33, 5}, {"hold-1", 1, 38, 25},
			{"cool-1", 1, 63, 10}, {"load-1", 2, 63, 3}, {"recovery-1", 2, 66, 5}, {"hold-1", 2, 71, 25},
			{"rest", 1, 73, 0}, {"ready", 1, 73, 0},
			{"cool-1", 2, 96, 10}, {"rest", 2, 106, 0}, {"ready", 2, 106, 0},
		}},
		// Two holds of an hour, cooling between, a day of rest: common practice. 15 + 2 × (3 + 5 + 60 + 30) + 10 = 221 min.
		{"two heat-sets", times(2, 1, 15, 3, 5, 60, 30, 10, 60, 30, 1440), []when{
			{"preheat", 1, 0, 15},
			{"load-1", 1, 15, 3}, {"recovery-1", 1, 18, 5}, {"hold-1", 1, 23, 60}, {"cool-1", 1, 83, 30}, {"reclamp", 1, 113, 10},
			{"load-2", 1, 123, 3}, {"recovery-2", 1, 126, 5}, {"hold-2", 1, 131, 60}, {"cool-2", 1, 191, 30},
			{"rest", 1, 221, 1440}, {"ready", 1, 1661, 0},
		}},
		// Worked by hand: the second load is in the oven from 68 to 136, so the first, ready at 108, waits until 136.
		{"a load waits for the oven", times(2, 2, 0, 3, 5, 60, 30, 10, 60, 30, 0), []when{
			{"load-1", 1, 0, 3}, {"recovery-1", 1, 3, 5}, {"hold-1", 1, 8, 60},
			{"load-1", 2, 68, 3}, {"cool-1", 1, 68, 30}, {"recovery-1", 2, 71, 5}, {"hold-1", 2, 76, 60},
			{"reclamp", 1, 98, 10}, {"load-2", 1, 136, 3}, {"cool-1", 2, 136, 30}, {"recovery-2", 1, 139, 5}, {"hold-2", 1, 144, 60},
			{"reclamp", 2, 166, 10}, {"load-2", 2, 204, 3}, {"cool-2", 1, 204, 30}, {"recovery-2", 2, 207, 5}, {"hold-2", 2, 212, 60},
			{"rest", 1, 234, 0}, {"ready", 1, 234, 0}, {"cool-2", 2, 272, 30}, {"rest", 2, 302, 0}, {"ready", 2, 302, 0},
		}},
		{"what takes no time but hands stays, but for an oven that is hot", times(2, 1, 0, 0, 0, 0, 0, 0, 0, 0, 0), []when{
			{"load-1", 1, 0, 0}, {"hold-1", 1, 0, 0}, {"cool-1", 1, 0, 0}, {"reclamp", 1, 0, 0},
			{"load-2", 1, 0, 0}, {"hold-2", 1, 0, 0}, {"cool-2", 1, 0, 0}, {"rest", 1, 0, 0}, {"ready", 1, 0, 0},
		}},
		{"no load counts as one", times(1, 0, 0, 1, 0, 1, 1, 0, 0, 0, 0), []when{
			{"load-1", 1, 0, 1}, {"hold-1", 1, 1, 1}, {"cool-1", 1, 2, 1}, {"rest", 1, 3, 0}, {"ready", 1, 3, 0},
		}},
	} {
		t.Run(c.name, func(t *testing.T) {
			steps, unknown := Steps(nil, c.times)
			require.Equal(t, NumParts, unknown)
			var got []when
			for _, s := range steps {
				got = append(got, when{s.Do.Key(), s.Load, s.Start / minute, s.Length / minute})
			}
			assert.ElementsMatch(t, c.want, got)
			assert.IsNonDecreasing(t, starts(steps))
			last := c.want[len(c.want)-1]
			assert.Equal(t, (last.from+last.len)*minute, Total(steps))
		})
	}
}

// There is a timetable of all the loads or of none, so that none of them is left out unsaid.
func TestMaxLoads(t *testing.T) {
	for loads, want := range map[int]int{-1: 1, 1: 1, MaxLoads: MaxLoads, MaxLoads + 1: 0, 1 << 40: 0} {
		steps, unknown := Steps(nil, times(2, loads, 15, 3, 5, 60, 30, 10, 60, 30, 1440))
		assert.Equal(t, NumParts, unknown)
		assert.Equal(t, want, Loads(steps), "%d loads", loads)
	}
}

func starts(steps []Step) (all []int) {
	for _, s := range steps {
		all = append(all, s.Start)
	}
	return all
}

func TestUnknownPart(t *testing.T) {
	for _, stages := range []int{1, 2} {
		for p := range NumParts {
			for _, x := range []float64{nan, -1, math.Inf(1), math.Inf(-1), 1e9, 366*86400 + 1} {
				all := times(stages, 1, 15, 3, 5, 60, 30, 10, 60, 30, 1440)
				all.Part[p] = quantity.Time(x)
				steps, unknown := Steps(nil, all)
				if stages == 1 && p >= Reclamp && p <= Cool2 {
					assert.Equal(t, NumParts, unknown, "the second heat-set is not asked for")
					assert.NotEmpty(t, steps)
					continue
				}
				assert.Equal(t, p, unknown)
				assert.Empty(t, steps)
			}
		}
	}
}

func TestWholeSeconds(t *testing.T) {
	steps, _ := Steps(nil, times(1, 1, 0.1/minute, 1.4/minute, 1.6/minute, 2.5/minute, 0, 0, 0, 0, 0))
	assert.Equal(t, []Step{{DoLoad1, 1, 0, 1}, {DoRecovery1, 1, 1, 2}, {DoHold1, 1, 3, 3}, {DoCool1, 1, 6, 0}, {DoRest, 1, 6, 0}, {DoReady, 1, 6, 0}}, steps)
}

// some makes Times as they may come.
func some(r *rand.Rand) *Times {
	t := &Times{Stages: 1 + r.IntN(2), Loads: r.IntN(MaxLoads + 1)}
	for p := range NumParts {
		t.Part[p] = quantity.Time(r.IntN(5) * r.IntN(5000))
	}
	return t
}

// check finds what can't be in a timetable: two loads in the oven, a step that begins before the one before it ended, a load that is left in
// the oven, or that comes out of it before its time.
func check(t *testing.T, steps []Step) {
	t.Helper()
	var a after
	var last [MaxLoads + 1]Step
	assert.IsNonDecreasing(t, starts(steps))
	for i := range steps {
		s := &steps[i]
		assert.GreaterOrEqual(t, s.Start, a.load[s.Load], "one thing at a time with a load")
		if s.Do.loads() {
			assert.GreaterOrEqual(t, s.Start, a.oven, "one load in the oven")
		} else if before := last[s.Load]; before.Load != 0 {
			assert.Equal(t, before.End(), s.Start, "%s follows at once", s.Do.Key())
		}
		a.note(s)
		last[s.Load] = *s
	}
}

func TestOneOven(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	for range 500 {
		all := some(r)
		steps, unknown := Steps(nil, all)
		require.Equal(t, NumParts, unknown)
		check(t, steps)
		assert.LessOrEqual(t, len(steps), int(NumDos)*MaxLoads)
		assert.Equal(t, max(all.Loads, 1), Loads(steps))
	}
}
