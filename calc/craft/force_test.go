package craft

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"twistbench/calc/quantity"
)

// creeping is how a coil grows longer under a lasting load: a spring, one that is damped, and a dashpot in a row (Pa, Pa, s, Pa·s). It serves row
// M17 alone: no fibre's four numbers are known, so no plan is answered with it.
type creeping struct {
	Spring, Damped quantity.Stress
	Time           quantity.Time
	Flow           float64
}

// share returns the share by which it is longer a time t (s) after a stress s (Pa) is put on.
func (c *creeping) share(s quantity.Stress, t quantity.Time) quantity.Fraction {
	return quantity.Fraction(float64(s) * (1/float64(c.Spring) - math.Expm1(-float64(t/c.Time))/float64(c.Damped) + float64(t)/c.Flow))
}

func TestForceRows(t *testing.T) {
	// M16: 0.5 mm, 15 MPa, 0.3 m of fibre at 1140 kg/m³, 11.4 mm
	pull := ForceForStress(15*mPa, Area(0.5*mm))
	mass := FibreMass(Area(0.5*mm), 1140, 1, 0.3)
	work := SpringWork(pull, pull, 11.4*mm)
	creep := creeping{Spring: 40 * mPa, Damped: 100 * mPa, Time: 30, Flow: 6e9}
	for _, row := range []struct {
		name      string
		got, want float64
		rel       float64
	}{
		{"M16 force", float64(pull), 2.945, 1e-4},
		{"M16 mass, mg", float64(mass) * 1e6, 67.15, 3e-5},
		{"M16 work", float64(work), 0.0336, 1e-3},
		{"M16 specific work", float64(SpecificWork(work, mass)), 500, 1e-12},
		{"M17 creep of 5 MPa after a minute", float64(creep.share(5*mPa, 60)), 0.2182, 2e-4},
		// craft, isometric test: 1000 to 846 g is 1.510 N
		{"force from a scale", float64(ScaleForce(1, 0.846)), 1.510, 2e-4},
		// by hand: 80 N/m stretched 10 mm; a spring of 40 pulled 20 mm beside it
		{"preload", float64(Pull{0.12, 80}.At(0.13)), 0.8, 1e-12},
		{"at rest against a spring", float64(Pull{0.12, 80}.Rest(Opposing{Spring: 40, Slack: 0.15})), 0.13, 1e-12},
		{"and a weight", float64(Pull{0.12, 80}.Rest(Opposing{Weight: 0.6, Spring: 40, Slack: 0.15})), 0.135, 1e-12},
		{"a weight alone", float64(Pull{0.12, 80}.Rest(Opposing{Weight: 0.6})), 0.1275, 1e-12},
		{"a weight that slackens the spring", float64(Pull{0.12, 80}.Rest(Opposing{Weight: 4, Spring: 40, Slack: 0.15})), 0.17, 1e-12},
		{"work on a spring from 1 to 2 N over 10 mm", float64(SpringWork(1, 2, 0.01)), 0.015, 1e-12},
		{"power", float64(WorkPower(0.015, 3)), 0.005, 1e-12},
		{"specific power", float64(SpecificPower(0.005, 1e-4)), 50, 1e-12},
		// by hand: 200 g five times as far are 9.80665 N, shared by two; a spring of 2 N/m there is 50, shared by two
		{"two on a lever", float64(MusclePull(0.2, 5, 2)), 4.903325, 1e-12},
		{"a spring there", float64(SpringAtMuscle(2, 5, 2)), 25, 1e-12},
		{"without its load", float64(UnloadedLength(0.1275, 0.6, 80)), 0.12, 1e-12},
		{"lever, five times as far", float64(LeverPull(1, 5)), 5, 1e-12},
		{"its stroke", float64(LeverStroke(0.01, 5)), 0.05, 1e-12},
		{"its spring", float64(LeverRate(2, 5)), 50, 1e-12},
		// by hand: 10 mm on a pulley of 10 mm radius are a radian
		{"pulley", float64(PulleyTurn(10*mm, 10*mm)) / deg, 180 / math.Pi, 1e-12},
	} {
		assert.InEpsilon(t, row.want, row.got, row.rel, row.name)
	}
	assert.Zero(t, float64(Pull{0.12, 80}.At(0.11)), "a slack muscle does not push")
	assert.Zero(t, float64(Opposing{Spring: 40, Slack: 0.15}.At(0.16)), "nor does a slack spring")
	isNaN(t, PulleyTurn(0.01, 0), "no pulley")
	isNaN(t, WorkPower(1, 0), "no time")
	isNaN(t, SpecificWork(1, 0), "no mass")
}

// Scenario S5: 2 kg on 0.70 mm nylon at 5 MPa or less, 120 mm long under load, ratio 0.25 of 100 mm, own stroke 15 % of the loaded length, to the
// digits given.
func TestScenarioS5(t *testing.T) {
	area := Area(0.7 * mm)
	n := SideBySide(2, 5*mPa, area)
	load := HangingForce(2)
	share := HangingForce(MassShare(2, n))
	active := Precursor(100*mm, 4)
	stroke := StrokeOf(0.15, 120*mm)
	work := SpringWork(load, load, stroke)
	mass := FibreMass(area, 1140, n, active)
	for _, row := range []struct {
		name      string
		got, want float64
		half      float64
	}{
		{"area, mm²", float64(area) * 1e6, 0.384845, 5e-7},
		{"most on each", float64(ForceForStress(5*mPa, area)), 1.92423, 5e-6},
		{"load", float64(load), 19.6133, 5e-5},
		{"muscles", float64(n), 11, 0},
		{"stress of each", float64(Stress(share, area)) / mPa, 4.633, 5e-4},
		{"force of each", float64(share), 1.783, 5e-4},
		{"mass of each, g", float64(MassShare(2, n)) * 1000, 181.8, 0.05},
		{"line, m", float64(TotalLine(1, n, CutLength(active, 40*mm))), 5.28, 1e-9},
		{"stroke, mm", float64(stroke) / mm, 18, 1e-12},
		{"work", float64(work), 0.353, 5e-4},
		{"fibre, g", float64(mass) * 1000, 1.930, 5e-4},
		{"specific work", float64(SpecificWork(work, mass)), 183, 0.5},
		{"2 mm too short, N", float64(HeldForce(100, 122*mm, 120*mm)), 0.20, 1e-9},
		{"as a share", float64(Unequal(100, 2*mm, share)), 0.11, 5e-3},
		{"their pull at the load, N", float64(PullAtLoad(share, share, share, n, 1)), 19.6133, 5e-5},
		{"15 % of the loaded length is of the length as it came off", float64(StrokeShare(stroke, 100*mm)), 0.18, 1e-12},
	} {
		assert.InDelta(t, row.want, row.got, row.half, row.name)
	}
}

// Band returns the three outcomes of a muscle between two temperatures (K) against a load.
func (m *Muscle) Band(cold, hot quantity.Temperature, a Opposing) (band [3]Outcome) {
	ends := m.Pulls(cold, hot)
	for i := range band {
		band[i] = ends[i].Against(a, m.Solid, m.Fibre)
	}
	return band
}

// Where a muscle comes to rest is where both pull alike, found by halving.
func TestRestIsWherePullsMeet(t *testing.T) {
	for _, p := range []Pull{{0.115, 85}, {0.095, 30}, {0.14, 400}} {
		for _, a := range []Opposing{{Weight: 0.5}, {Weight: 5}, {Spring: 40, Slack: 0.16}, {Spring: 400, Slack: 0.14}, {Weight: 1, Spring: 40, Slack: 0.15},
			{Weight: 3, Spring: 10, Slack: 0.12}} {
			low, high := p.Free, p.Free+1
			for range 60 {
				mid := (low + high) / 2
				if p.At(mid) < a.At(mid) {
					low = mid
				} else {
					high = mid
				}
			}
			assert.InDelta(t, float64(max(low, p.Free)), float64(max(p.Rest(a), p.Free)), 1e-12, "%v %v", p, a)
		}
	}
	// a spring that is slack before the muscle is stretched pulls nothing: both lie loose
	assert.InDelta(t, 0.115, float64(Pull{0.115, 85}.Rest(Opposing{Spring: 40, Slack: 0.1})), 1e-15)
}

// Against a spring the work is the integral of its pull, and between no load and a locked one it passes a most: with lines of one stiffness,
// when the spring is as stiff as the muscle.
func TestWorkAgainstSpring(t *testing.T) {
	e := Pulls{Pull{0.12, 80}, Pull{0.10, 80}}
	best, at := quantity.Energy(0), quantity.Stiffness(0)
	for s := quantity.Stiffness(5); s < 400; s += 5 {
		o := e.Against(Opposing{Spring: s, Slack: 0.12}, 0, 1)
		sum := 0.0
		for i := range 1000 {
			l := o.Cold - o.Stroke()*quantity.Length(float64(i)+0.5)/1000
			sum += float64(Opposing{Spring: s, Slack: 0.12}.At(l)) * float64(o.Stroke()) / 1000
		}
		w := SpringWork(o.ColdPull, o.HotPull, o.Stroke())
		assert.InEpsilon(t, sum, float64(w), 1e-9)
		if w > best {
			best, at = w, s
		}
	}
	assert.Equal(t, quantity.Stiffness(80), at)
	// a stiff spring takes the blocked force: 80 N/m over 20 mm
	o := e.Against(Opposing{Spring: 1e9, Slack: 0.12}, 0, 1)
	assert.InEpsilon(t, 1.6, float64(o.HotPull), 1e-6)
	assert.InEpsilon(t, 1.6, float64(HeldGain(e.Hot.At(o.Cold), o.ColdPull)), 1e-6)
}

// A muscle stops at its solid length; one wound against its twist where its fibre is drawn out.
func TestOutcomeLimits(t *testing.T) {
	e := Pulls{Pull{0.12, 80}, Pull{0.08, 80}}
	for _, row := range []struct {
		weight    quantity.Force
		cold, hot float64
	}{
		{0, 0.12, 0.085}, {0.2, 0.1225, 0.085}, {0.4, 0.125, 0.085}, {0.8, 0.13, 0.09}, {24, 0.35, 0.35},
	} {
		o := e.Against(Opposing{Weight: row.weight}, 0.085, 0.35)
		assert.InDelta(t, row.cold, float64(o.Cold), 1e-12, "%v", row)
		assert.InDelta(t, row.hot, float64(o.Hot), 1e-12, "%v", row)
	}
	// the start plan's muscle, 150 mm long by a load, has 65 mm until its turns touch and never takes more
	m := ventCoil()
	hand := *m
	hand.Opposite = true
	for at := quantity.Temperature(25); at <= 180; at += 5 {
		for _, w := range []quantity.Force{0, 0.5, 1, 3} {
			for _, o := range m.Band(20+ice, at+ice, Opposing{Weight: w}) {
				assert.GreaterOrEqual(t, o.Hot, m.Solid)
				assert.LessOrEqual(t, o.Hot, m.Fibre)
			}
			for _, o := range hand.Band(20+ice, at+ice, Opposing{Weight: w}) {
				assert.Less(t, o.Stroke(), quantity.Length(0), "it lengthens")
			}
		}
	}
	m.Length = m.Solid + 1*mm
	for _, o := range m.Band(20+ice, 180+ice, Opposing{}) {
		assert.InDelta(t, 1*mm, float64(o.Stroke()), 1e-12, "one that was set shut")
	}
}

// Without softening a load changes no stroke, only its place; with it, less and less is left, and every end keeps its side.
func TestLoadedBand(t *testing.T) {
	m := ventCoil()
	free := m.Band(20+ice, 90+ice, Opposing{})
	last := free
	for w := quantity.Force(0.2); w <= 3; w += 0.2 {
		b := m.Band(20+ice, 90+ice, Opposing{Weight: w})
		held := func(i int) quantity.Force { return HeldGain(m.Pulls(20+ice, 90+ice)[i].Hot.At(b[i].Cold), w) }
		assert.InEpsilon(t, float64(free[2].Stroke()), float64(b[2].Stroke()), 1e-9)
		for i := range b {
			assert.Greater(t, b[i].Cold, last[i].Cold)
			assert.InEpsilon(t, float64(w), float64(b[i].HotPull), 1e-12)
			if i < 2 {
				assert.Less(t, b[i].Stroke(), last[i].Stroke())
			}
			if i > 0 {
				assert.Greater(t, b[i].Stroke(), b[i-1].Stroke())
				assert.Greater(t, held(i), held(i-1))
			}
		}
		last = b
	}
}

// Two equal muscles on one line go as far to one side as to the other, less than either alone, and the same by halving.
func TestPair(t *testing.T) {
	e := Pulls{Pull{0.12, 80}, Pull{0.10, 60}}
	const both = 0.26
	least, most := PairRoom(both, 0.085, 0.35)
	assert.InDelta(t, 0.085, float64(least), 1e-12)
	assert.InDelta(t, both-0.085, float64(most), 1e-12)
	hot, cold := Pair(&e, &e, 0, both, least, most)
	assert.InDelta(t, both, float64(hot+cold), 1e-12)
	// by hand: 60 (x − 0.10) = 80 (0.26 − x − 0.12)
	assert.InDelta(t, (60*0.10+80*0.14)/140, float64(hot), 1e-12)
	assert.Less(t, float64(cold-hot), 2*0.02)
	assert.Greater(t, float64(cold-hot), 0.0)
	// a weight of 0.7 N on the first, by hand: 60 (x − 0.10) = 0.7 + 80 (0.14 − x), and 80 (x − 0.12) = 0.7 + 60 (0.16 − x)
	hot, cold = Pair(&e, &e, 0.7, both, least, most)
	assert.InDelta(t, (0.7+60*0.10+80*0.14)/140, float64(hot), 1e-12)
	assert.InDelta(t, (0.7+80*0.12+60*0.16)/140, float64(cold), 1e-12)
	assert.InDelta(t, float64(cold), float64(PairLength(80, 0.12, 0.7, 60, OtherSlack(both, 0.12), 0.10)), 1e-12)
	least, most = PairRoom(both, 0.128, 0.35)
	hot, cold = Pair(&e, &e, 0, both, least, most)
	assert.InDelta(t, 0.128, float64(hot), 1e-12, "stopped by its turns")
	assert.InDelta(t, both-0.128, float64(cold), 1e-12, "stopped by the other's turns")
	// drawn straight, one is as long as it can be, and the other has what is left, whichever is hot
	soft := Pulls{Pull{0.12, 80}, Pull{0.115, 40}} // by hand: 40 (x − 0.115) = 80 (0.58 − x) is past 0.354
	least, most = PairRoom(0.7, 0.085, 0.354)
	hot, cold = Pair(&soft, &soft, 0, 0.7, least, most)
	assert.InDelta(t, 0.354, float64(hot), 1e-12)
	assert.InDelta(t, 0.346, float64(cold), 1e-12)
	hot, _ = Pair(&e, &Pulls{Pull{quantity.Length(nan), 80}, Pull{0.1, 60}}, 0, both, 0.085, 0.175)
	isNaN(t, hot, "the other unknown")
	for _, ends := range []quantity.Length{0.169, 0.701, quantity.Length(nan)} { // too close, and too far for 350 mm each
		least, most = PairRoom(ends, 0.085, 0.35)
		hot, cold = Pair(&e, &e, 0, ends, least, most)
		isNaN(t, hot, "no room for both")
		isNaN(t, cold, "no room for both")
	}
}
