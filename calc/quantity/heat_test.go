package quantity

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Temperatures read, in kelvin. The ice point is 273.15 K and the steam point of old 373.15 K; 0 °C is 32 °F, 100 °C is 212 °F and
// −40 is the same in both (definitions of the scales).
func TestTemperatureTexts(t *testing.T) {
	for _, c := range []struct {
		text, unit string
		want       float64
		bare       bool
	}{
		{"180", "", 453.15, true},
		{"180 C", "", 453.15, false},
		{"180°C", "", 453.15, false},
		{"180 degC", "", 453.15, false},
		{"180 deg c", "", 453.15, false},
		{"356 F", "", 453.15, false},
		{"356", "°F", 453.15, true},
		{"180 °C", "°F", 453.15, false},
		{"453.15 K", "", 453.15, false},
		{"82,5", "", 355.65, true},
		{"0", "", 273.15, true},
		{"32 °F", "", 273.15, false},
		{"212 °F", "", 373.15, false},
		{"-40 °C", "", 233.15, false},
		{"\u221240", "°F", 233.15, true},
		{"-4 F", "", 253.15, false},
		{"-273.15", "", 0, true},
		{"0 K", "", 0, false},
	} {
		r, err := KindTemperature.Parse(c.text, c.unit)
		require.NoError(t, err, c.text)
		assert.InDelta(t, c.want, r.SI, 1e-10, c.text)
		assert.Equal(t, c.bare, r.Bare, c.text)
	}
	// One temperature is not the sum of two, and a difference is none.
	for _, text := range []string{"180 °C 5 °F", "5 K 3 °F", "180 °C 5", "180 mm", "180°", "180 °K", "°C"} {
		_, err := KindTemperature.Parse(text, "")
		assert.Error(t, err, text)
	}
	// A step is no temperature: 10 °C more is 10 K more, also where it is typed in Fahrenheit.
	for text, want := range map[string]float64{"10": 10, "10 °C": 10, "18 °F": 10, "-5 K": -5} {
		r, err := KindTemperatureDifference.Parse(text, "")
		require.NoError(t, err, text)
		assert.InDelta(t, want, r.SI, 1e-12, text)
	}
}

func TestTemperatureShown(t *testing.T) {
	for _, c := range []struct {
		si     float64
		unit   string
		digits int
		want   string
	}{
		{453.15, "°C", 4, "180.0"},
		{453.15, "°F", 3, "356"},
		{233.15, "°F", 3, "-40.0"},
		{273.15, "°C", 3, "0"},
		{0, "K", 3, "0"},
		{NaN, "°C", 3, Unknown},
	} {
		assert.Equal(t, c.want, string(Append(nil, c.si, KindTemperature.Unit(c.unit), c.digits, '.')), "%g K in %s", c.si, c.unit)
	}
}

// Times as they are said at the oven, in seconds: 60 to the minute, 60 to the hour, 24 to the day.
func TestTimeTexts(t *testing.T) {
	for _, c := range []struct {
		text, unit string
		want       float64
	}{
		{"15", "min", 900},
		{"1 h", "min", 3600},
		{"1 h 30 min", "", 5400},
		{"1 h 30", "", 5400},
		{"1h30", "", 5400},
		{"1 h 30 15", "", 5415},
		{"2 min 30", "h", 150},
		{"1 day 6", "", 108000},
		{"1.5 days", "", 129600},
		{"2 d", "", 172800},
		{"24 h", "min", 86400},
		{"-1 h 30", "", -5400},
	} {
		r, err := KindTime.Parse(c.text, c.unit)
		require.NoError(t, err, c.text)
		assert.InDelta(t, c.want, r.SI, 1e-9, c.text)
	}
	for _, text := range []string{"30 s 5", "1 min 1 h", "1 h 30 2 h", "5 ms 3", "1 h 30 K", "1 h -30"} {
		_, err := KindTime.Parse(text, "")
		assert.Error(t, err, text)
	}
	// As a clock shows them: 60 to the minute and to the hour; the first part is hours, or minutes in a box of seconds, unless there are three.
	for _, c := range []struct {
		text, unit string
		want       float64
		read       string // the unit of the last part
		other      string
	}{
		{"1:30", "min", 5400, "min", "1 min 30"},
		{"1:30", "h", 5400, "min", ""},
		{"1:07", "s", 67, "s", ""},
		{"1:07.5", "s", 67.5, "s", ""},
		{"0:30", "min", 1800, "min", "0 min 30"},
		{"24:00", "h", 86400, "min", ""},
		{"100:05", "min", 360300, "min", "100 min 05"},
		{"1:5", "min", 3900, "min", "1 min 5"},
		{" 1:30 ", "h", 5400, "min", ""},
		{"1:30:15", "min", 5415, "s", ""},
		{"1:30:15", "s", 5415, "s", ""},
	} {
		r, err := KindTime.Parse(c.text, c.unit)
		require.NoError(t, err, c.text)
		assert.InDelta(t, c.want, r.SI, 1e-9, c.text)
		assert.Equal(t, c.read, r.Unit.Symbol, c.text)
		assert.Equal(t, c.other, r.Other, c.text)
		assert.False(t, r.Bare, c.text)
	}
	for text, why := range map[string]error{
		"1:75": ErrClock, "1:60": ErrClock, "1:30:60": ErrClock, "1:": ErrNumber, "1:30:": ErrNumber, "1:2:3:4": ErrTrailing, "1::30": ErrNumber, "1:-30": ErrNumber, "1:x": ErrNumber,
		":30": ErrNumber, ":": ErrNumber, "1:30 min": ErrTrailing, "1:30 s": ErrTrailing, "1:30 5": ErrTrailing, "1 h:30": ErrTrailing, "1:30 mm": ErrTrailing,
	} {
		_, err := KindTime.Parse(text, "min")
		assert.ErrorIs(t, err, why, text)
	}
	// Other kinds have no such habit.
	for k, text := range map[*Kind]string{KindMass: "1 lb 4", KindLength: "5 ft 3", KindTurns: "20 turns 3"} {
		_, err := k.Parse(text, "")
		assert.Error(t, err, text)
	}
}
