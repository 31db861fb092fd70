package quantity

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestDriveUnits(t *testing.T) {
	for _, c := range []struct {
		name string
		kind *Kind
		text string
		in   string
		want float64
		rel  float64
	}{
		// handbook U14 to U17, computed with GNU Units 2.22 and pint
		{"U14", KindResistancePerLength, "100 Ω/m", "Ω/ft", 30.48, 1e-12},
		{"U15", KindPower, "1 Btu/h", "W", 0.293071070172, 1e-11},
		{"U16", KindStiffness, "1 lbf/in", "N/mm", 0.175126835246, 1e-11},
		{"U17", KindTorque, "1 lbf·in", "mN·m", 112.984829028, 1e-11},
		// actuators 3: silver-coated yarn of 14 Ω/ft is 45.9 Ω/m; 14 over 0.3048
		{"yarn", KindResistancePerLength, "14 ohm/ft", "Ω/m", 45.9317585301837, 1e-12},
		{"the sign of its own", KindResistance, "3.3 \u2126", "Ω", 3.3, 1e-15},
		{"kilohm", KindResistance, "2 kohm", "Ω", 2000, 1e-15},
		{"in words", KindResistancePerLength, "45 ohms per metre", "Ω/m", 45, 1e-15},
		{"feet and inches", KindResistancePerLength, "1.2 ohms/in", "Ω/ft", 14.4, 1e-12}, // 12 in
		{"kilometre", KindResistancePerLength, "84.2 Ω/km", "Ω/m", 0.0842, 1e-12},
		{"copper", KindResistivity, "0.017241 Ω·mm²/m", "Ω·m", 1.7241e-8, 1e-12},
		{"per degree", KindTemperatureCoefficient, "0.393 %/°C", "ppm/K", 3930, 1e-12},
		{"hours of current", KindCharge, "2.5 Ah", "mAh", 2500, 1e-12},
		{"watt-hours", KindEnergy, "10 Wh", "J", 36000, 1e-15},
		{"watts along", KindPowerPerLength, "2.54 W/in", "W/cm", 1, 1e-12},
		{"milliwatt", KindPower, "250 mW", "W", 0.25, 1e-15},
		{"grams a millimetre", KindStiffness, "10 gf/mm", "N/m", 98.0665, 1e-12}, // 9.80665 m/s², by definition
		{"specific energy", KindSpecificEnergy, "2.48 kJ/kg", "J/kg", 2480, 1e-12},
		{"specific power", KindSpecificPower, "5.3 kW/kg", "W/kg", 5300, 1e-12},
		{"a fan", KindSpeed, "1 m/s", "ft/min", 196.850393701, 1e-11}, // 60 over 0.3048
		{"wind", KindSpeed, "18 km/h", "m/s", 5, 1e-14},
		{"a mile an hour", KindSpeed, "1 mph", "m/s", 0.44704, 1e-12}, // 5280 × 0.3048 over 3600
		{"loss", KindHeatLoss, "20 mW/K", "W/K", 0.02, 1e-12},
		{"capacity", KindHeatCapacity, "0.2 J/K", "mJ/K", 200, 1e-12},
		{"a book of calories", KindSpecificHeat, "0.4 cal/g/K", "J/(kg·K)", 1673.6, 1e-12}, // 4.184 J
		{"per gram", KindSpecificHeat, "1.46 J/gK", "J/(kg·K)", 1460, 1e-12},
	} {
		r, err := c.kind.Parse(c.text, "")
		require.NoError(t, err, c.name)
		assert.InEpsilon(t, c.want, c.kind.Unit(c.in).FromSI(r.SI), c.rel, c.name)
	}
	// A milliohm is not taken for a megohm, nor a milliwatt for a megawatt.
	for text, kind := range map[string]*Kind{"3 mΩ": KindResistance, "3 MΩ": KindResistance, "3 Mohm": KindResistance, "3 MW": KindPower, "3 MV": KindVoltage,
		"3 MA": KindCurrent, "3 Ω": KindResistancePerLength} {
		_, err := kind.Parse(text, "")
		assert.Error(t, err, text)
	}
}
