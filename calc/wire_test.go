package calc

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// One choice, a supply with a voltage of its own, answers what flows; what is typed goes before, and where it is taken back that voltage is the
// given again. An unreadable text is not nothing. The rest by hand: 408 mm at 50 Ω/m and 0.06897 Ω of leads are 20.469 Ω.
func TestSupplyVoltageOfItsOwn(t *testing.T) {
	var st State
	s := sheetOf(t, wired+"&wire.supply=usb-c")
	st.Work(&s)
	assert.Equal(t, 5.0, st.SI(WireSupplyVoltage)) // of every USB port as it starts
	assert.InEpsilon(t, 5/20.46897, st.SI(WireCurrent), 1e-6)
	assert.True(t, st.Worked(WireSupplyVoltage))
	steps, n := st.Workings(WireSupplyVoltage)
	require.Equal(t, 1, n)
	assert.Equal(t, "book-value", steps[0].Method)
	_, n = st.Workings(WirePower)
	assert.Equal(t, 2, n)
	assert.Empty(t, s.Text[WireSupplyVoltage], "nothing is typed for anybody")

	h := History{}
	h.Before(&s, WireCurrent)
	typed := st.Type(s, WireCurrent, "0.1", "A")
	st.Work(&typed)
	assert.InEpsilon(t, 2.046897, st.SI(WireSupplyVoltage), 1e-6)
	_, n = st.Workings(WireSupplyVoltage)
	assert.Equal(t, 1, n)
	for _, back := range []Sheet{st.Type(typed, WireCurrent, "", "A"), h.Refill(st.Type(typed, WireCurrent, "", "A"), WireCurrent)} {
		st.Work(&back)
		assert.Equal(t, 5.0, st.SI(WireSupplyVoltage))
		assert.InEpsilon(t, 5/20.46897, st.SI(WireCurrent), 1e-6)
	}
	wrong := s.Type(WireSupplyVoltage, "5 apples", "V")
	st.Work(&wrong)
	assert.False(t, known(st.SI(WireCurrent)))
	assert.Equal(t, WireSupplyVoltage, st.Needs(WireCurrent))
	none := s.Type(WireSupply, "bench", "")
	st.Work(&none)
	assert.False(t, known(st.SI(WireSupplyVoltage)))
	assert.False(t, known(st.SI(WireOwnVoltage)))
}

// A power bank at 5 V, 0.1 A at least, and muscles of 0.2443 A: what it is asked for in a pause, and while on.
func TestDummy(t *testing.T) {
	for _, row := range []struct {
		plan  string
		want  float64
		terms int
	}{
		{"wire.duty=20 %", 50, 2},                 // 16 s of nothing: 5 V over 0.1 A
		{"wire.duty=20 %&wire.period=10 s", 0, 3}, // 8 s of it are waited for
		{"wire.duty=20 %&wire.least-current=300 mA", 5 / 0.3, 2},
		{"wire.least-current=300 mA", 5 / (0.3 - 5/20.46897), 3}, // beside them
		{"wire.duty=100 %", 0, 3},
		{"wire.duty=20 %&wire.least-current=100", 50, 2},  // a bare number there is in mA
		{"wire.least-current=10 A&wire.most=9.9 A", 0, 3}, // 0.5 Ω is no resistor but a short
		{"wire.duty=20 %&wire.least-current=10 A&wire.most=1 A", 0, 2},
	} {
		st := work(t, wired+"&wire.supply=power-bank&"+row.plan)
		if row.want > 0 {
			assert.InEpsilon(t, row.want, st.SI(WireDummy), 1e-6, row.plan)
			assert.InEpsilon(t, 25/row.want, st.SI(WireDummyPower), 1e-6, row.plan)
		} else {
			assert.False(t, known(st.SI(WireDummy)), row.plan)
			assert.Equal(t, None, st.Needs(WireDummyPower), row.plan)
		}
		steps, _ := st.Workings(WireDummy)
		assert.Len(t, steps[0].Terms, row.terms, row.plan)
	}
}

// A battery feeds the resistor too, all the time. 10 Ah at 3.7 V are 37 Wh; muscles of 25 over 20.4 W by 20.4² over 20.469² of a quarter of the time,
// 0.3043 W, and 25 over 50 W: 46.0 h. Once every 20 s that is 3600 ÷ 20 times 46.0.
func TestBatteryLasts(t *testing.T) {
	const muscles = 0.25 * 25 * 20.4 / (20.46897 * 20.46897)
	for _, row := range []struct {
		plan string
		want float64 // W, on average
	}{
		{"wire.duty=25 %", muscles + 0.5},
		{"wire.duty=25 %&wire.least-current=0", muscles},            // none is needed
		{"wire.duty=25 %&wire.period=1 s", muscles},                 // the same: no pause is long
		{"wire.duty=25 %&wire.least-current=10 A", muscles},         // none can be had
		{"wire.duty=100 %", 4 * muscles},                            // no pause at all
		{"wire.duty=25 %&wire.least-current=50 mA", muscles + 0.25}, // 25 over 100
	} {
		st := work(t, wired+"&wire.supply=power-bank&wire.charge=10 Ah&"+row.plan)
		assert.InEpsilon(t, 37/row.want, st.SI(WireLasts)/3600, 1e-6, row.plan)
		assert.InEpsilon(t, 37*3600/row.want, st.SI(WireCycles)*st.SI(WirePeriod), 1e-6, row.plan)
		steps, _ := st.Workings(WireLasts)
		assert.Len(t, steps[0].Terms, map[bool]int{true: 3, false: 2}[known(st.SI(WireDummyPower))], row.plan)
	}
}

// Question 46: 1.5 W in each of two muscles in a row on 12 V, so 6 V each: 24 Ω. By hand, of 408 mm and a yarn of 150 Ω/m, 61.2 Ω a strand.
func TestWantedConductor(t *testing.T) {
	for _, given := range []string{"wire.wanted-power=1.5 W", "wire.wanted-ohms=24"} {
		st := work(t, "wire.route=twisted&wire.per-length=150&wire.in-row=2&wire.rows=3&wire.supply-voltage=12 V&"+given)
		for id, want := range map[ID]float64{
			WireWanted: 24, WireWantedPower: 1.5, WireWantedPerLength: 24 / 0.408, WireWantedLength: 0.16, WireWantedStrands: 3, WireWantedReal: 36 / 20.4,
		} {
			assert.InEpsilon(t, want, st.SI(id), 1e-12, id.Key())
		}
	}
	// no yarn chosen yet: what to buy is known all the same
	st := work(t, "wire.route=twisted&wire.supply=usb-2&wire.wanted-power=2 W")
	assert.InEpsilon(t, 12.5, st.SI(WireWanted), 1e-12) // 25 over 2
	assert.InEpsilon(t, 12.5/0.408, st.SI(WireWantedPerLength), 1e-12)
	assert.Equal(t, WirePerLength, st.Needs(WireWantedStrands))
}

// Rows side by side in Wire are muscles side by side in Stroke, until another number is typed there.
func TestBesideOfRows(t *testing.T) {
	st := work(t, "wire.rows=3")
	assert.Equal(t, 3.0, st.SI(StrokeBeside))
	assert.True(t, st.Worked(StrokeBeside))
	st = work(t, "wire.rows=3&stroke.beside=1")
	assert.Equal(t, 1.0, st.SI(StrokeBeside))
	assert.False(t, st.Worked(StrokeBeside))
}
