package quantity

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Rows of the handbook of outside figures: text read, then shown in a unit.
func TestHandbook(t *testing.T) {
	for _, c := range []struct {
		row  string
		kind *Kind
		text string
		in   string
		want float64
		rel  float64
	}{
		// NIST SP 811 App. B, factors from memory; computed with GNU Units 2.22 and pint 0.19.2.
		{"U01", KindLength, "1 inch", "mm", 25.4, 1e-9},
		{"U02", KindLength, "1 thou", "mm", 0.0254, 1e-9},
		{"U03", KindMass, "1 lb", "g", 453.59237, 1e-9},
		{"U04", KindMass, "1 oz", "g", 28.349523125, 1e-9},
		{"U05", KindForce, "1 lbf", "N", 4.44822161526, 1e-9},
		{"U08", KindStress, "1 psi", "Pa", 6894.75729317, 1e-9},
		{"U09", KindStress, "1 ksi", "MPa", 6.89475729317, 1e-9},
		{"U12", KindLength, "1 ft", "m", 0.3048, 1e-9},
		{"U13", KindLength, "1 yd", "m", 0.9144, 1e-9},
		// The same, computed with GNU Units 2.22 alone.
		{"U06", KindForce, "1 ozf", "N", 0.278013850954, 1e-9},
		{"U07", KindForce, "1 gf", "N", 0.00980665, 1e-9},
		// A difference scales by 9/5 and takes no offset; pint 0.19.2: 54.
		// NIST SP 811 B.8, from memory; computed with GNU Units 2.22.
		{"U18", KindTemperature, "72 °F", "°C", 22.2222222222, 1e-11},
		{"U19", KindTemperature, "150 °C", "°F", 302, 1e-12},
		{"U20", KindTemperatureDifference, "30 K", "°F", 54, 1e-15},
		// ISO 1144 (tex is g/km); denier is g per 9 km; GNU Units 2.22.
		{"T01", KindLinearDensity, "210 den", "tex", 23.3333333333, 1e-11},
		{"T02", KindLinearDensity, "630 denier", "tex", 70, 1e-12},
		// 840 yard hanks to the pound; GNU Units 2.22.
		{"T03", KindLinearDensity, "1 Ne", "tex", 590.541247448, 1e-9},
		{"T04", KindLinearDensity, "Ne 40", "tex", 14.7635311862, 1e-9},
		// Kilometres to the kilogram; GNU Units 2.22.
		{"T05", KindLinearDensity, "50 Nm", "tex", 20, 1e-12},
		// Metric ticket 3 x Nm: two explainer pages of the sewing trade.
		{"T06", KindLinearDensity, "ticket 40", "tex", 75, 1e-12},
		{"T07", KindLinearDensity, "120 tkt", "tex", 25, 1e-12},
		// Cotton ticket 3 x Ne: a trade page, 590.54 / tex x 3.
		{"T08", KindLinearDensity, "36 cotton tkt", "tex", 49.21175, 1e-4},
	} {
		t.Run(c.row, func(t *testing.T) {
			r, err := c.kind.Parse(c.text, "")
			require.NoError(t, err)
			u := c.kind.Unit(c.in)
			require.NotNil(t, u)
			assert.InEpsilon(t, c.want, u.FromSI(r.SI), c.rel)
		})
	}
}

// Factors that no row above reaches.
func TestFactors(t *testing.T) {
	for _, c := range []struct {
		kind   *Kind
		symbol string
		si     float64
	}{
		{KindVolume, "fl oz", 29.5735295625e-6},           // US gallon of 231 in³ over 128 (NIST Handbook 44, from memory)
		{KindVolume, "ml", 1e-6},                          // SI brochure: a litre is a cubic decimetre
		{KindVolume, "l", 1e-3},                           // the same
		{KindVolume, "cm³", 1e-6},                         // SI prefix
		{KindDensity, "g/cm³", 1000},                      // SI prefixes
		{KindDensity, "lb/ft³", 16.01846337396},           // NIST SP 811 App. B: 16.01846
		{KindEnergy, "ft·lbf", 1.3558179483314},           // NIST SP 811 App. B: 1.355818
		{KindAcceleration, "ft/s²", 0.3048},               // 12 in of 25.4 mm
		{KindForce, "kgf", 9.80665},                       // CGPM 1901
		{KindForce, "cN", 0.01},                           // SI prefix
		{KindArea, "in²", 6.4516e-4},                      // 25.4 mm squared
		{KindArea, "µm²", 1e-12},                          // SI prefix
		{KindStress, "N/mm²", 1e6},                        // newton over 1e-6 m²
		{KindStress, "GPa", 1e9},                          // SI prefix
		{KindLinearDensity, "dtex", 1e-7},                 // ISO 1144
		{KindLinearDensity, "ktex", 1e-3},                 // ISO 1144
		{KindLinearDensity, "g/m", 1e-3},                  // SI prefix
		{KindLinearDensity, "mg/m", 1e-6},                 // SI prefix
		{KindLinearDensity, "g/km", 1e-6},                 // SI prefix
		{KindTemperatureDifference, "°C", 1},              // a step of °C is a kelvin
		{KindTemperatureDifference, "°F", 0.555555555556}, // 5/9 K
		{KindFraction, "%", 0.01},                         // a hundredth
	} {
		u := c.kind.Unit(c.symbol)
		require.NotNil(t, u, c.symbol)
		assert.InEpsilon(t, c.si, u.ToSI(1), 1e-11, c.symbol)
	}
}

var kinds = []*Kind{KindLength, KindMass, KindForce, KindStress, KindArea, KindVolume, KindLinearDensity, KindDensity, KindEnergy,
	KindAcceleration, KindTemperatureDifference, KindFraction, KindRatio, KindCount, KindWord, KindList, KindRatioDoubt, KindShare,
	KindAngle, KindTwist, KindTwistFactor, KindTurns, KindRotation, KindTime, KindTorque, KindNumber, KindTemperature,
	KindResistance, KindResistancePerLength, KindResistivity, KindTemperatureCoefficient, KindVoltage, KindCurrent, KindPower, KindCharge,
	KindStiffness, KindSpecificEnergy, KindSpecificPower, KindSpeed, KindHeatLoss, KindHeatCapacity, KindSpecificHeat}

func TestUnitTables(t *testing.T) {
	names := map[string]bool{}
	for _, k := range kinds {
		assert.False(t, names[k.Name], k.Name)
		names[k.Name] = true
		typed := map[string]string{}
		for i := range k.Units {
			u := &k.Units[i]
			assert.Greater(t, u.Factor, 0.0, u.Symbol)
			assert.Same(t, u, k.Unit(u.Symbol), u.Symbol)
			for _, a := range append([]string{u.Symbol}, u.Aliases...) {
				assert.Empty(t, typed[a], "%s is two units", a)
				typed[a] = u.Symbol + " "
				assert.Same(t, u, k.Unit(a), "%s %q", k.Name, a)
				if u.Symbol == "" || k.Style == StyleList {
					continue
				}
				r, err := k.Parse("3"+a, "")
				require.NoError(t, err, "3%s", a)
				assert.Same(t, u, r.Unit, "3%s", a)
				assert.False(t, r.Bare)
			}
			if u.US != "" {
				us := k.Unit(u.US)
				require.NotNil(t, us, u.US)
				assert.Equal(t, u.US, us.Symbol)
			}
			assert.InDelta(t, 7.25, u.FromSI(u.ToSI(7.25)), 1e-15*(7.25+u.Offset), u.Symbol)
		}
	}
	// The unit shown instead when US units are on.
	us := map[string]string{"mm": "in", "m": "ft", "g": "oz", "kg": "lb", "N": "lbf", "MPa": "psi", "mm²": "in²", "ml": "fl oz", "J": "ft·lbf", "kg/m³": "lb/ft³",
		"turns/m": "tpi", "K": "°F", "°C": "°F", "turns/m·√tex": "tpi/√Ne",
		"Ω/m": "Ω/ft", "N/m": "lbf/in", "N/mm": "lbf/in", "m/s": "ft/min"}
	for _, k := range kinds {
		for _, u := range k.Units {
			assert.Equal(t, us[u.Symbol], u.US, "%s %s", k.Name, u.Symbol)
		}
	}
}

func TestUnit(t *testing.T) {
	for _, c := range []struct {
		kind *Kind
		typed,
		want string
	}{
		{KindLength, "MM", "mm"},
		{KindLength, "Inches", "in"},
		{KindLength, "um", "µm"},
		{KindLength, "\u03bcm", "µm"}, // the Greek letter
		{KindLength, "\u00b5m", "µm"}, // the micro sign
		{KindStress, "mpa", "MPa"},
		{KindStress, "N/mm2", "N/mm²"},
		{KindStress, "n/mm^2", "N/mm²"},
		{KindDensity, "kg/m3", "kg/m³"},
		{KindDensity, "kg m-3", "kg/m³"},
		{KindDensity, "kg m^-3", "kg/m³"},
		{KindDensity, "kg m⁻³", "kg/m³"},
		{KindDensity, "g/ml", "g/cm³"},
		{KindArea, "mm^2", "mm²"},
		{KindVolume, "Fl  OZ", "fl oz"},
		{KindLinearDensity, "nm", "Nm"},
		{KindLinearDensity, "Cotton Ticket", "cotton tkt"},
		{KindLinearDensity, "D", "den"},
		{KindEnergy, "ft lb", "ft·lbf"},
		{KindTemperatureDifference, "° c", "°C"},
		{KindTemperature, "deg c", "°C"},
		{KindTemperature, "degF", "°F"},
		{KindTemperature, "º F", "°F"}, // the sign of an ordinal
		{KindTemperature, "k", "K"},
		{KindTemperature, "°", ""},
		{KindTemperature, "°K", ""},
		{KindFraction, "Percent", "%"},
		// Another size, or another kind.
		{KindForce, "MN", ""},
		{KindEnergy, "MJ", ""},
		{KindStress, "mPa", ""},
		{KindMass, "Mg", ""},
		{KindForce, "oz", ""},
		{KindForce, "g", ""},
		{KindMass, "gf", ""},
		{KindMass, "N", ""},
		{KindLength, "mm²", ""},
		{KindLength, "mm2", ""},
		{KindLength, "", ""},
		{KindLength, " ", ""},
		{KindLength, "m m", ""},
		{KindCount, "mm", ""},
	} {
		u := c.kind.Unit(c.typed)
		if c.want == "" {
			assert.Nil(t, u, c.typed)
			continue
		}
		require.NotNil(t, u, c.typed)
		assert.Equal(t, c.want, u.Symbol, c.typed)
	}
}

func TestDefault(t *testing.T) {
	want := []string{"mm", "g", "N", "MPa", "mm²", "ml", "tex", "kg/m³", "J", "m/s²", "K", "%"} // the first of each table
	for i, w := range want {
		assert.Equal(t, w, kinds[i].Default().Symbol)
	}
	assert.Nil(t, KindRatio.Default())
	assert.Nil(t, KindCount.Default())
	assert.Nil(t, KindWord.Default())
	assert.Equal(t, "g", KindList.Default().Symbol)
	assert.Empty(t, KindRatioDoubt.Default().Symbol)
	assert.Equal(t, 3.0, (*Unit)(nil).ToSI(3))
}
