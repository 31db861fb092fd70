package craft

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"twistbench/calc/quantity"
)

// Handbook 6, ISO 13732-1:2006, from memory: 43, 48 and 51 °C are only for 8 h, 10 min and 1 min; bare metal at 65 °C must warn. The informal list
// there (metal 49 °C over 5 min, 52 1.5 to 2 min, 60 under 5 s, 68 1 s) must not be less strict than ours by a whole row.
func TestTouchTime(t *testing.T) {
	for _, row := range []struct {
		s    Surface
		c    float64
		want float64
	}{
		{Metal, 43, 8 * 3600}, {Ceramic, 43, 8 * 3600}, {Plastic, 43, 8 * 3600},
		{Metal, 43.1, 600}, {Metal, 48, 600}, {Plastic, 48, 600}, {Plastic, 48.1, 60},
		{Metal, 51, 60}, {Metal, 51.1, 1}, {Ceramic, 56, 60}, {Ceramic, 56.1, 0}, {Plastic, 60, 60}, {Plastic, 60.1, 1},
		{Metal, 64.9, 1}, {Metal, 65, 0}, {Plastic, 84.9, 1}, {Plastic, 85, 0}, {Plastic, 160, 0},
		{Metal, -10, 8 * 3600},
	} {
		assert.Equal(t, row.want, float64(TouchTime(row.s, quantity.Temperature(row.c+ice))), "%d at %g °C", row.s, row.c)
	}
	assert.True(t, math.IsNaN(float64(TouchTime(Metal, quantity.Temperature(quantity.NaN)))))
	for i := 1; i < len(Touches); i++ {
		assert.Less(t, Touches[i].Time, Touches[i-1].Time)
		for s := range surfaces {
			assert.False(t, Touches[i].Most[s] != 0 && Touches[i].Most[s] < Touches[i-1].Most[s], "a shorter touch bears more")
		}
	}
}

// Handbook 6, IEC 61140 and IEC 61201: 50 V AC and 120 V DC of safety extra-low voltage, 25 and 60 V touchable, 35 V DC on wet skin, 0 immersed;
// our own 30 and 60 V.
func TestVoltages(t *testing.T) {
	want := map[string][2]float64{"extra-low": {50, 120}, "touchable": {25, 60}, "wet": {math.NaN(), 35}, "immersed": {0, 0}}
	assert.Len(t, Voltages, len(want))
	for i := range Voltages {
		v := &Voltages[i]
		assert.Equal(t, want[v.Key][1], float64(v.DC), v.Key)
		assert.True(t, float64(v.AC) == want[v.Key][0] || math.IsNaN(want[v.Key][0]) && math.IsNaN(float64(v.AC)), v.Key)
		assert.Equal(t, Read, v.Source.Mark)
	}
	assert.Less(t, float64(VoltageCare), float64(Voltages[2].DC), "below the figure for wet skin")
	assert.Equal(t, Voltages[1].DC, quantity.Voltage(VoltageStop), "60.0 V is taken, 60.1 V is not")
}
