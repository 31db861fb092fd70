package calc

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"twistbench/calc/craft"
	"twistbench/calc/quantity"
)

const mm, g, mPa = 1e-3, 1e-3, 1e6

// The difference that ± makes to f at x, to first order: the slope from a small central difference, times the ±.
func central(f func(x float64) float64, x, by float64) float64 {
	const part = 1e-3
	return (f(x+by*part) - f(x-by*part)) / (2 * part)
}

func round(d float64) float64 { return math.Pi / 4 * d * d }

func TestDoubt(t *testing.T) {
	const gravity = craft.StandardGravity
	for _, row := range []struct {
		name   string
		plan   string
		id     ID
		want   float64
		rel    float64
		mostly ID
	}{
		// handbook M06: 50 ± 0.1 g on 0.127 ± 0.002 mm is 38.707342617 ± 1.22158434483 MPa, from uncertainties 3.1.6
		{"M06", "fibre.diameter=0.127 mm&fibre.diameter-doubt=0.002 mm&hang.mass=50 g&hang.mass-doubt=0.1 g", HangStress, 1.22158434483 * mPa, 1e-6, FibreDiameter},
		// a small ±, where the first order is all there is: u/m = 2 u/d
		{"to first order", "fibre.diameter=0.5 mm&fibre.diameter-doubt=0.001 mm&hang.stress=20 MPa", HangMass, 20 * mPa * round(0.5*mm) / gravity * 2 * 0.001 / 0.5, 1e-5, FibreDiameter},

		{"mass for a wanted stress: the caliper's", "", HangMass, central(func(d float64) float64 { return 17 * mPa * round(d) / gravity }, 0.52*mm, 0.01*mm), 1e-6, FibreDiameter},
		{"the same for what is added", "", HangAdd, central(func(d float64) float64 { return 17 * mPa * round(d) / gravity }, 0.52*mm, 0.01*mm), 1e-6, FibreDiameter},
		{"what is hung is as sure as the scale", "hang.mass=368 g", HangMass, 1 * g, 1e-6, HangMass},
		{"what is added too", "hang.add=333 g", HangAdd, 1 * g, 1e-6, HangMass},
		{"stress of a mass: caliper and scale", "hang.mass=20 g&hang.mass-doubt=2 g&fibre.diameter=0.2 mm&fibre.diameter-doubt=0.001 mm", HangStress, math.Hypot(
			central(func(d float64) float64 { return 20 * g * gravity / round(d) }, 0.2*mm, 0.001*mm),
			central(func(m float64) float64 { return m * gravity / round(0.2*mm) }, 20*g, 2*g)), 1e-6, HangMass},
		{"the diameter keeps its own", "", FibreDiameter, 0.01 * mm, 1e-6, FibreDiameter},
		{"the ratio keeps its own", "", CutRatio, 0.2, 1e-6, CutRatio},

		// design section 7: ± 17.00 mm from the ratio, 85 mm × 0.2
		{"precursor of a wanted coil: the ratio's", "", CutPrecursor, 17 * mm, 1e-6, CutRatio},
		{"a share of the ratio", "cut.ratio-doubt=5 %", CutPrecursor, 85 * mm * 4.8 * 0.05, 1e-6, CutRatio},
		{"an untried ratio is sure to 10 %", "cut.ratio-doubt=", CutPrecursor, 85 * mm * 4.8 * 0.1, 1e-6, CutRatio},
		{"a precursor that is given is as sure as the ruler", "cut.precursor=400 mm&clamp.ruler-doubt=2 mm", CutPrecursor, 2 * mm, 1e-6, CutPrecursor},
		{"coil of a given precursor: ratio and ruler", "cut.precursor=400 mm", ClampCoiled, math.Hypot(
			central(func(r float64) float64 { return 400 * mm / r }, 4.8, 0.2), 1*mm/4.8), 1e-6, CutRatio},
		{"the coil that a cut length really gives", "", ClampCoiled, math.Hypot(
			central(func(r float64) float64 { return 408 * mm / r }, 4.8, 0.2), 1*mm/4.8), 1e-6, CutRatio},

		// a measured coil: the ruler alone, and the ratio no longer
		{"gap on a measured coil", "clamp.measured=88 mm", ClampFirst, 1.18 * mm, 1e-6, ClampMeasured},
		{"travel on a measured coil", "clamp.measured=88 mm", ClampTravelLength, math.Hypot(1, 1) * mm, 1e-6, ClampMeasured},
		{"ratio of a measured coil", "clamp.measured=88 mm", ClampThisRatio, math.Hypot(
			central(func(l float64) float64 { return 408 * mm / l }, 88*mm, 1*mm), 1.0/88), 1e-6, ClampMeasured},
		{"a measured coil is as sure as the ruler", "clamp.measured=88 mm", ClampMeasured, 1 * mm, 1e-6, ClampMeasured},
		{"gap on a measured relaxed length", "clamp.second-base=relaxed&clamp.relaxed=97 mm", ClampSecond, 1.42 * mm, 1e-6, ClampRelaxed},
		// travel from the second gap, coil not measured: the jaw, and the coil of 408 mm by the ratio and the ruler
		{"travel of the plan", "", ClampTravelLength, math.Sqrt(sq(1*mm) + sq(1*mm/4.8) + sq(central(func(r float64) float64 { return 408 * mm / r }, 4.8, 0.2))), 1e-6, CutRatio},
		{"a typed stretch is as sure as the jaws", "clamp.measured=88 mm", ClampFirstStretch, math.Hypot(
			central(func(l float64) float64 { return 103.84 * mm / l }, 88*mm, 1*mm), 1.0/88), 1e-6, ClampMeasured},

		{"titre of a caliper", "", FibreLinearDensity, central(func(d float64) float64 { return 1140 * round(d) }, 0.52*mm, 0.01*mm), 1e-6, FibreDiameter},
		{"fibre in a muscle: ratio and caliper", "", CutFibreMass, math.Hypot(
			central(func(d float64) float64 { return 1140 * round(d) * 408 * mm }, 0.52*mm, 0.01*mm), 1140*round(0.52*mm)*17*mm), 1e-6, CutRatio},
	} {
		t.Run(row.name, func(t *testing.T) {
			st := work(t, row.plan)
			assert.InEpsilon(t, row.want, st.Doubt[row.id], row.rel)
			assert.Equal(t, row.mostly.Key(), st.Mostly[row.id].Key())
		})
	}
}

func sq(x float64) float64 { return x * x }

func TestNoDoubt(t *testing.T) {
	for _, row := range []struct {
		name, plan string
		id         ID
	}{
		{"no ± at all", "fibre.diameter-doubt=0&hang.mass-doubt=0", HangMass},
		{"an empty ±", "fibre.diameter-doubt=&hang.mass-doubt=0", HangStress},
		{"what nothing measured goes into", "", CutTotal},
		{"the gap of a wanted coil", "", ClampFirst},
		{"an unknown number", "fibre.diameter=", HangMass},
		{"an unreadable number", "hang.stress=abc", HangMass},
		{"one heat-set has no second stretch", "clamp.stages=one", ClampSecondStretch},
	} {
		s := sheetOf(t, row.plan)
		var st State
		st.Work(&s)
		assert.True(t, math.IsNaN(st.Doubt[row.id]), "%s: %g", row.name, st.Doubt[row.id])
		assert.Equal(t, None, st.Mostly[row.id], row.name)
	}
}

// Every doubt is a number over 0 of a number that is known, and comes from a field of the plan; and moving readings moves nothing else.
func TestDoubtsAreSound(t *testing.T) {
	for _, plan := range plans(t) {
		for _, st := range asGivens(t, plan.Text) {
			for id := None + 1; id < NumIDs; id++ {
				if d := st.Doubt[id]; known(d) {
					assert.True(t, d > 0 && !math.IsInf(d, 0), "%s in %s: %g", id.Key(), plan.Name, d)
					assert.True(t, known(st.SI(id)), "%s in %s", id.Key(), plan.Name)
					assert.True(t, st.Mostly[id].IsField(), "%s in %s", id.Key(), plan.Name)
				} else {
					assert.Equal(t, None, st.Mostly[id], "%s in %s", id.Key(), plan.Name)
				}
			}
			p, out := st.asRead, st.Out
			Solve(&p)
			results(&p, &out)
			rest(&p, &out) // the groups of the wire need its answers
			last(&p, &out) // and what is left empty in the drive
			for id := None + 1; id < NumFields; id++ {
				same(t, p.Value(id).SI(), st.SI(id), "%s in %s", id.Key(), plan.Name)
			}
		}
	}
}

// What is asked about is worked out for every reading moved: the rest is not.
func TestAskedIsWorkedOut(t *testing.T) {
	for _, plan := range plans(t) {
		st := work(t, plan.Text)
		var m State
		m.Plan = st.asRead
		m.Out.Under, m.Out.Over = st.Out.Under, st.Out.Over
		m.solve()
		for q := range questions {
			for _, id := range questions[q].asked {
				same(t, st.SI(id), m.SI(id), "%s in %s", id.Key(), plan.Name)
			}
		}
	}
}

func TestUntriedRatio(t *testing.T) {
	var p Plan
	p.Ratio, p.RatioDoubt.Size = 4, quantity.NaN
	assert.InDelta(t, 0.4, ratioDoubt(&p), 1e-15)
	p.RatioDoubt = quantity.RatioDoubt{Size: 0.3}
	assert.InDelta(t, 0.3, ratioDoubt(&p), 1e-15)
	p.RatioDoubt = quantity.RatioDoubt{Size: 0.05, OfRatio: true}
	assert.InDelta(t, 0.2, ratioDoubt(&p), 1e-15)
}

// The ± of what the hand sets says how far that may be from what is needed, the ± of what comes of it how far it may be from what was wished.
func TestGets(t *testing.T) {
	for id, gets := range map[ID]bool{
		HangMass: false, HangAdd: false, HangStress: true, CutPrecursor: false, ClampCoiled: true, ClampFirst: false, ClampSecond: false, ClampFinished: true,
		TwistBias: false, TwistTurns: false, CoilPitch: true, CoilOutside: true, CoilCount: true,
	} {
		assert.Equal(t, gets, Gets(id), id.Key())
	}
	asked := map[ID]int{}
	for _, q := range questions {
		for _, id := range q.asked {
			asked[id]++
			assert.Equal(t, 1, asked[id], "%s is asked of once", id.Key())
		}
	}
}
