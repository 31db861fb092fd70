package quantity

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestValues(t *testing.T) {
	values := []Value{new(Length), new(Mass), new(Force), new(Stress), new(Area), new(Volume), new(LinearDensity), new(Density),
		new(Energy), new(Acceleration), new(TemperatureDifference), new(Fraction), new(Ratio), new(Count), new(Word), new(List), new(RatioDoubt), new(Share),
		new(Angle), new(Twist), new(TwistFactor), new(Turns), new(Rotation), new(Time), new(Torque), new(Number), new(Temperature),
		new(Resistance), new(ResistancePerLength), new(Resistivity), new(TemperatureCoefficient), new(Voltage), new(Current), new(Power), new(Charge),
		new(Stiffness), new(SpecificEnergy), new(SpecificPower), new(Speed), new(HeatLoss), new(HeatCapacity), new(SpecificHeat)}
	for i, v := range values {
		assert.Same(t, kinds[i], v.Kind())
		switch v.(type) {
		case *List:
			continue
		case *Word:
		default:
			v.SetSI(NaN)
			assert.True(t, math.IsNaN(v.SI()), v.Kind().Name)
		}
		v.SetSI(3)
		assert.Equal(t, 3.0, v.SI(), v.Kind().Name)
	}
}

func TestWord(t *testing.T) {
	for x, want := range map[float64]Word{0: 0, 7: 7, 255: 255, 256: 0, -1: 0, math.Inf(1): 0} {
		w := Word(9)
		w.SetSI(x)
		assert.Equal(t, want, w)
	}
	w := Word(9)
	w.SetSI(NaN)
	assert.Zero(t, w)
}

func TestListValue(t *testing.T) {
	l := List("20x2, 50")
	assert.Equal(t, 3.0, l.SI()) // two and one
	l.SetSI(5)
	assert.Equal(t, List("20x2, 50"), l)
	l.SetSI(NaN)
	assert.Empty(t, l)
	assert.True(t, math.IsNaN(l.SI()))
	l = "20 mm"
	assert.True(t, math.IsNaN(l.SI()))
}
