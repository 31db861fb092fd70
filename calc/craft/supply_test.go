package craft

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"twistbench/calc/quantity"
)

// By hand, all of it: a muscle of 20 Ω on 5 V, and what follows.
func TestSupplyRows(t *testing.T) {
	for _, row := range []struct {
		name      string
		got, want float64
	}{
		{"current", float64(Current(5, 20)), 0.25},
		{"power", float64(Watts(5, 20)), 1.25},
		{"volts of the current", float64(VoltageOfCurrent(0.25, 20)), 5},
		{"ohms of both", float64(OhmsOf(5, 0.25)), 20},
		{"behind 5 Ω of leads", float64(ThroughLeads(5, 20, 5)), 0.2},
		{"and back", float64(SupplyOfCurrent(0.2, 20, 5)), 5},
		{"watts of it", float64(PowerOfCurrent(0.2, 20)), 0.8},
		{"and back", float64(CurrentOfPower(0.8, 20)), 0.2},
		{"six in a row", float64(RowCurrent(6, 20, 3, 2)), 0.05},
		{"six side by side", float64(SideCurrent(6, 20, 3, 2)), 1.8},
		{"heat in the leads", float64(LeadHeat(0.2, 5)), 0.2},
		{"duty for 0.5 W", float64(Duty(0.5, 1.25)), 0.4},
		{"all of it", float64(Duty(1.25, 1.25)), 1},
		{"average current", float64(AverageCurrent(0.4, 0.25)), 0.1},
		{"on in 20 s", float64(OnTime(0.4, 20)), 8},
		{"duty of 8 s in 20", float64(DutyOfTime(8, 20)), 0.4},
		{"lost in 5 Ω of leads", float64(LeadDrop(0.2, 5)), 1},
		{"of 6 W in six muscles", float64(MusclePower(6, 3, 2)), 1},
		{"1 W on 10 cm, per cm", float64(PowerPer(1, 0.1)) / 100, 0.1},
		{"dummy beside 0.05 A for 0.1 A", float64(DummyOhms(5, 0.1, 0.05, 2)), 100},
		{"and while the switch is open", float64(DummyOhms(5, 0.1, 0, quantity.Current(quantity.NaN))), 50},
		{"which makes", float64(Watts(5, 50)), 0.5},
		{"pause of 8 s on in 20", float64(Pause(20, 8)), 12},
		{"2000 mAh at 3.7 V are 7.4 Wh", float64(BatteryEnergy(7200, 3.7)) / 3600, 7.4},
		{"which last at 0.5 W, in hours", float64(BatteryTime(7.4*3600, 0.5)) / 3600, 14.8},
		{"a muscle of 5 W, one of two in a row on 12 V: 6 V", float64(OhmsForPower(5, 12, 2)), 7.2},
		{"and back", float64(PowerAtOhms(7.2, 12, 2)), 5},
		{"three strands of 0.5 m at 48 Ω/m there: 8 Ω", float64(PowerOfStrands(12, 2, 3, 48, 0.5)), 4.5},
		{"cycles of 7.4 Wh, 1.25 W for 8 s in 20: 0.5 W, 14.8 h", float64(BatteryCycles(BatteryTime(7.4*3600, 0.5), 20)), 2664},
	} {
		assert.InEpsilon(t, row.want, row.got, 1e-12, row.name)
	}
	isNaN(t, Current(5, 0), "0 Ω")
	isNaN(t, Watts(5, -1), "negative ohms")
	isNaN(t, OhmsOf(5, 0), "no current")
	isNaN(t, ThroughLeads(5, 0, 0), "a short")
	isNaN(t, Duty(2, 1.25), "more than there is")
	isNaN(t, DutyOfTime(21, 20), "longer than the period")
	isNaN(t, PowerPer(1, 0), "no length")
	isNaN(t, DummyOhms(5, 0.1, 0.1, 2), "enough already")
	isNaN(t, DummyOhms(5, 100, 0.24, 2), "0.05 Ω would be a short")
	isNaN(t, BatteryTime(36000, 0), "never on")
	isNaN(t, OhmsForPower(0, 5, 1), "no power")
}

// Each of volts, amperes and watts says the other two, at any resistance.
func TestVoltsAmperesWatts(t *testing.T) {
	for _, r := range []quantity.Resistance{0.3, 3.5, 22, 1500} {
		for _, v := range []quantity.Voltage{0.5, 5, 12, 60} {
			i, p := Current(v, r), Watts(v, r)
			assert.InEpsilon(t, float64(v), float64(VoltageOfCurrent(i, r)), 1e-14)
			assert.InEpsilon(t, float64(p), float64(v)*float64(i), 1e-14)
			assert.InEpsilon(t, float64(r), float64(OhmsOf(v, i)), 1e-14)
			for _, d := range []quantity.Share{0.05, 0.3, 1} {
				assert.InEpsilon(t, float64(d), float64(Duty(AveragePower(d, p), p)), 1e-14)
			}
			for _, in := range []quantity.Count{1, 2, 7} { // muscles in a row share the volts
				assert.InEpsilon(t, float64(r), float64(OhmsForPower(PowerAtOhms(r, v, in), v, in)), 1e-14)
			}
		}
	}
}

// IEC 60127-1, from memory: 10 to the decade, R10 rounded. The exact steps are 10^(n/10); rounding moves them by at most 2 %.
func TestFuses(t *testing.T) {
	for i, f := range fuses {
		exact := math.Pow(10, float64(i)/10-1.5) // from 0.0316
		assert.InEpsilon(t, exact, float64(f), 0.02)
		assert.Equal(t, f, Fuse(f*0.999), "the one above")
	}
	for _, row := range []struct{ i, want quantity.Current }{
		{0, 0.032}, {0.5225, 0.63}, {1, 1.25}, {1.2, 1.25}, {0.63, 0.8}, {9.9, 10},
	} {
		assert.Equal(t, row.want, Fuse(row.i), "%g A", float64(row.i))
	}
	isNaN(t, Fuse(10), "larger than small fuses are")
	assert.Equal(t, LargestFuse, fuses[len(fuses)-1])
	isNaN(t, Fuse(quantity.Current(nan)), "unknown")
}

func TestSupplies(t *testing.T) {
	keys := map[string]bool{}
	for i := range Supplies {
		s := &Supplies[i]
		assert.False(t, keys[s.Key], s.Key)
		keys[s.Key] = true
		assert.NotNil(t, s.Source, s.Key)
		assert.Greater(t, s.Most, s.Least, s.Key)
		assert.LessOrEqual(t, float64(s.Voltage), 60.0, "%s: nothing here may hurt", s.Key)
	}
	// from memory: 5 V, and 0.5, 0.9 and 3 A of ports by their specifications
	assert.InDelta(t, 2.5, float64(Supplies[0].Voltage)*float64(Supplies[0].Most), 1e-12)
	assert.InDelta(t, 4.5, float64(Supplies[1].Voltage)*float64(Supplies[1].Most), 1e-12)
	assert.InDelta(t, 15, float64(Supplies[2].Voltage)*float64(Supplies[2].Most), 1e-12)
	for _, s := range []*Source{&Copper, &WireGauge, &USBPort, &FuseRatings, &Springs, &SteepSpring, &LoadStudy, &StrokeCurve} {
		assert.NotEmpty(t, s.Cite)
		assert.Contains(t, []Mark{Read, FromMemory}, s.Mark)
	}
}
