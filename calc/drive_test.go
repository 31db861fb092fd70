package calc

import (
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"

	"twistbench/calc/quantity"
)

// A supply at 50 %: each is the plan that says the same with a typed power. Only fast switching is an average; the cycle of the drive is slow
// and has the whole power while it is on, so that no duty counts twice.
func TestDutyOnce(t *testing.T) {
	const wire = "wire.route=twisted&wire.per-length=45 ohm/m&wire.supply-voltage=5 V&wire.duty=50 %&"
	full := work(t, wire).Out.FullPower
	for _, row := range []struct {
		plan  string
		share quantity.Power // of the full power
	}{
		{"", 1},                             // a period of 20 s
		{"drive.on=10 s&drive.off=10 s", 1}, // the same
		{"wire.period=10 ms&drive.on=10 s&drive.off=10 s", 0.5},
		{"wire.period=10 ms", 0.5}, // heating takes some seconds
		{"wire.period=0.99 s&drive.on=10 s", 0.5},
		{"wire.period=1.01 s&drive.on=10 s", 1},
		{"wire.period=", 1},
	} {
		st := work(t, wire+row.plan)
		assert.InEpsilon(t, float64(row.share*full), float64(st.Plan.Drive.Power), 1e-12, row.plan)
		typed := work(t, wire+row.plan+"&drive.power="+strconv.FormatFloat(1e3*float64(row.share*full), 'f', -1, 64)+" mW")
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
