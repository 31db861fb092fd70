package calc

import (
	"math"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"

	"twistbench/calc/quantity"
)

// A supply at 50 %: each is the plan that says the same with a typed power. Only fast switching is an average; slow switching is the cycle of the
// drive, and has the whole power while it is on, so that no duty counts twice.
func TestDutyOnce(t *testing.T) {
	const wire = "wire.route=twisted&wire.per-length=45 ohm/m&wire.supply-voltage=5 V&wire.duty=50 %&"
	full := work(t, wire).Out.FullPower
	for _, row := range []struct {
		plan  string
		share quantity.Power // of the full power
		times string         // which the wire's switching says
	}{
		{"", 1, "&drive.on=10 s&drive.off=10 s"}, // a period of 20 s
		{"drive.on=10 s&drive.off=10 s", 1, ""},  // the same
		{"wire.period=10 ms&drive.on=10 s&drive.off=10 s", 0.5, ""},
		{"wire.period=10 ms", 0.5, ""}, // heating takes some seconds
		{"wire.period=0.99 s&drive.on=10 s", 0.5, ""},
		{"wire.period=1.01 s&drive.on=10 s", 1, "&drive.off=505 ms"},
		{"wire.period=", 1, ""},
	} {
		st := work(t, wire+row.plan)
		assert.InEpsilon(t, float64(row.share*full), float64(st.Plan.Drive.Power), 1e-12, row.plan)
		typed := work(t, wire+row.plan+"&drive.power="+strconv.FormatFloat(1e3*float64(row.share*full), 'f', -1, 64)+" mW"+row.times)
		assert.InEpsilon(t, float64(typed.Plan.Drive.On), float64(st.Plan.Drive.On), 1e-9, row.plan)
		assert.InEpsilon(t, float64(typed.Plan.Drive.Off), float64(st.Plan.Drive.Off), 1e-9, row.plan)
		assert.InDelta(t, float64(typed.Out.Peaks[1]), float64(st.Out.Peaks[1]), 0.01, row.plan)
		assert.InDelta(t, float64(typed.Out.Steady[hotEnd]), float64(st.Out.Steady[hotEnd]), 0.01, row.plan)
		steps, _ := st.Workings(DrivePower)
		want := WireFullPower
		if row.share < 1 {
			want = WireMusclePower
		}
		assert.Equal(t, want, steps[0].Terms[0], "it says the same: %s", row.plan)
	}
}

// With a kept current more ohms heat more, with a kept voltage less.
func TestKeptCurrent(t *testing.T) {
	hot := func(plan string) quantity.Temperature {
		return work(t, "wire.route=twisted&wire.per-length=45 ohm/m&"+plan).Out.Steady[hotEnd]
	}
	for _, given := range []string{"wire.current=0.25 A", "wire.supply-voltage=4 V"} {
		none, more, less := hot(given), hot(given+"&wire.coefficient=0.2 %/K"), hot(given+"&wire.coefficient=-0.1 %/K")
		if given[5] == 'c' {
			more, less = less, more
		}
		assert.Less(t, more, none, given)
		assert.Greater(t, less, none, given)
	}
}

// With the switch stuck on, it passes where it was set before it melts; where what is around it warms it, there is no switch.
func TestStuck(t *testing.T) {
	st := work(t, "drive.power=6 W")
	assert.Greater(t, st.Out.SetTime, quantity.Time(1))
	assert.Greater(t, st.Out.MeltTime, st.Out.SetTime)
	assert.InDelta(t, float64(st.Plan.Heat.Set), float64(st.Out.warmth.on[hotEnd].After(st.Plan.Drive.Room, 6, st.Out.SetTime)), 0.05)
	assert.Equal(t, Never, work(t, "drive.power=1 W").Out.SetTime)
	for _, id := range []ID{DriveStuck, DriveMargin, DriveSetTime, DriveMeltTime} {
		around := work(t, "drive.way=water&drive.target=95 °C")
		assert.False(t, known(around.SI(id)), id.Key())
		assert.Equal(t, WireRoute, around.Needs(id), id.Key())
	}
	runs := work(t, "wire.route=twisted&wire.per-length=50&wire.supply-voltage=9&wire.coefficient=-1 %/K")
	assert.True(t, math.IsInf(runs.SI(DriveStuck), 1))
	assert.Greater(t, runs.Out.MeltTime, quantity.Time(0))
	assert.Less(t, runs.Out.MeltTime, work(t, "wire.route=twisted&wire.per-length=50&wire.supply-voltage=9").Out.MeltTime, "sooner than with ohms that stay")
	weak := work(t, "drive.power=0.2 W")
	assert.False(t, known(weak.SI(DriveEfficiency)), "the work is that of a heat it never gets to")
	assert.Equal(t, DrivePower, weak.Needs(DriveEfficiency))
}

// An own trial without a clock: 0.8 W for 50 K over the room of 20 °C is 16 mW a kelvin, and so 0.48 W keep it at 50 °C, give or take the 5 % that
// such a trial is known to. A curve goes first.
func TestSteadyTrial(t *testing.T) {
	const trial = "drive.power=1 W&drive.trial-power=0.8 W&drive.trial-hot=70 °C"
	st := work(t, trial)
	assert.InEpsilon(t, 0.016, st.SI(DriveTrialLoss), 1e-12)
	assert.InEpsilon(t, 0.95*0.48, st.SI(DriveHoldLeast), 1e-9)
	assert.InEpsilon(t, 1.05*0.48, st.SI(DriveHoldMost), 1e-9)
	book := work(t, "drive.power=1 W")
	for end := range ends {
		assert.InEpsilon(t, float64(book.Out.Hold[end])/30, float64(st.Out.BookLoss[end]), 1e-9, "the book's is still told")
	}
	curve := work(t, trial+"&drive.curve=0 80\n5 56\n10 42\n20 28")
	assert.NotEqual(t, st.SI(DriveTrialLoss), curve.SI(DriveTrialLoss))
	assert.InEpsilon(t, curve.SI(DriveCapacity)/curve.SI(DriveConstant), curve.SI(DriveTrialLoss), 1e-12)
	assert.False(t, known(work(t, "drive.power=1 W&drive.trial-power=0.8 W&drive.trial-hot=20 °C").SI(DriveTrialLoss)))
}

// Water boils sooner on a mountain: 90 °C at 3000 m (steam tables: 0.70 bar).
func TestBoilingOnAMountain(t *testing.T) {
	const bath = "drive.way=water&drive.altitude=3000 m&drive.target="
	assert.InDelta(t, 90, work(t, bath+"80 °C").SI(DriveBoiling)-273.15, 0.5)
	assert.True(t, known(work(t, bath+"89 °C").SI(DriveHeatMost)))
	assert.False(t, known(work(t, bath+"91 °C").SI(DriveHeatMost)))
	assert.True(t, known(work(t, "drive.way=water&drive.target=91 °C").SI(DriveHeatMost)))
}

// What is not over the room it starts in has no times and no power that holds it; what it comes to is still told, but not of a bath.
func TestHotIsOverTheRoom(t *testing.T) {
	for _, plan := range []string{"drive.room=60 °C&drive.target=60 °C", "drive.room=95 °C&drive.target=60 °C&drive.way=water", "drive.target=15 °C&drive.power=1 W"} {
		st := work(t, plan)
		for id := DriveHeatLeast; id < DriveBiot; id++ {
			assert.False(t, known(st.SI(id)), "%s: %s is %g", plan, id.Key(), st.SI(id))
		}
		assert.Equal(t, plan == "drive.target=15 °C&drive.power=1 W", known(st.SI(DriveHottest)), plan)
		assert.Equal(t, DriveTarget, st.Needs(DriveHeatMost), plan)
	}
	boils := work(t, "drive.way=water&drive.target=150 °C")
	assert.Equal(t, DriveTarget, boils.Needs(DriveHeatMost))
}

// It may cool another way than it is heated: each half is that of a plan that does both so.
func TestCoolWay(t *testing.T) {
	still, fan, both := work(t, "drive.power=1 W&drive.way=still"), work(t, "drive.power=1 W&drive.way=fan"), work(t, "drive.power=1 W&drive.way=still&drive.cool-way=fan")
	assert.Equal(t, still.Out.Steady, both.Out.Steady)
	assert.Equal(t, still.Out.Heats, both.Out.Heats)
	assert.Equal(t, still.Out.Hold, both.Out.Hold)
	assert.Equal(t, fan.Out.Cools, both.Out.Cools)
	assert.NotEqual(t, fan.Out.Cools, still.Out.Cools)
	assert.Equal(t, max(still.Out.Biot, fan.Out.Biot), both.Out.Biot)
	assert.Equal(t, fan.Out.Cools, work(t, "drive.power=1 W&drive.way=fan&drive.cool-way=fan").Out.Cools)
	// out of hot water into the air, as a school does it
	dip, air := work(t, "drive.way=water&drive.target=80 °C&drive.cool-way=still"), work(t, "drive.way=still&drive.target=80 °C")
	assert.Equal(t, work(t, "drive.way=water&drive.target=80 °C").Out.Heats, dip.Out.Heats)
	assert.Equal(t, air.Out.Cools, dip.Out.Cools)
	// a cooling curve is of the way it cools, a power held of the way it is heated
	const curve, held = "&drive.curve=0 80\n5 56\n10 42\n20 28", "&drive.trial-power=0.8 W&drive.trial-hot=70 °C"
	mixed := "drive.power=1 W&drive.way=still&drive.cool-way=fan"
	assert.Equal(t, still.Out.Heats, work(t, mixed+curve).Out.Heats)
	assert.Equal(t, work(t, "drive.power=1 W&drive.way=still"+curve).Out.Cools, work(t, mixed+curve).Out.Cools)
	assert.Equal(t, fan.Out.Cools, work(t, mixed+held).Out.Cools)
	assert.Equal(t, work(t, "drive.power=1 W&drive.way=still"+held).Out.Heats, work(t, mixed+held).Out.Heats)
}

// A yarn that is wrapped is as long as its wrapping.
func TestHeatOfWrappedYarn(t *testing.T) {
	const yarn = "yarn.strands=1&yarn.diameter=0.2 mm&"
	along, wrapped := work(t, yarn+"wire.route=twisted"), work(t, yarn+"wire.route=wrapped&wire.wrap-diameter=3 mm&wire.wrap-pitch=1 mm")
	assert.Greater(t, wrapped.Out.YarnLength, along.Out.YarnLength)
	none := work(t, "")
	assert.InEpsilon(t, float64((along.Out.Capacity-none.Out.Capacity)/quantity.HeatCapacity(along.Out.YarnLength)), float64((wrapped.Out.Capacity-none.Out.Capacity)/quantity.HeatCapacity(wrapped.Out.YarnLength)), 1e-9)
}

// A power typed here may be less than what Wire gives where its switch sticks: the larger is what melts.
func TestStuckIsTheLarger(t *testing.T) {
	const wire = "wire.route=twisted&wire.per-length=45&wire.supply-voltage=12"
	all := work(t, wire)
	low, high := work(t, wire+"&drive.power=0.5 W"), work(t, wire+"&drive.power=10 W")
	assert.InEpsilon(t, all.SI(DriveStuck), low.SI(DriveStuck), 1e-12)
	assert.InEpsilon(t, float64(all.Out.MeltTime), float64(low.Out.MeltTime), 1e-12)
	assert.Less(t, low.SI(DriveHottest), all.SI(DriveHottest))
	assert.Greater(t, high.SI(DriveStuck), all.SI(DriveStuck))
}

// Of a bath it is cold again at any temperature under Hot, and what is missing is named.
func TestColdAgainInABath(t *testing.T) {
	st := work(t, "drive.way=water&drive.target=60 °C&drive.cool-to=59 °C")
	assert.True(t, known(st.SI(DriveHeatMost)))
	assert.Equal(t, DriveCoolTo, work(t, "drive.way=water&drive.target=60 °C&drive.cool-to=60 °C").Needs(DriveCycles))
	assert.Equal(t, WireRoute, st.Needs(DriveHoldMost))
	assert.Equal(t, WireRoute, st.Needs(DriveEfficiency))
	assert.Equal(t, DriveTrialHot, work(t, "drive.trial-power=1 W&drive.trial-hot=15 °C").Needs(DriveTrialLoss))
	// a conductor that no current flows through is in the bath all the same
	idle := work(t, "wire.route=twisted&wire.per-length=45&drive.way=water&drive.target=60 °C")
	assert.Equal(t, work(t, "drive.way=water&drive.target=60 °C").Out.Heats, idle.Out.Heats)
}
