package quantity

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// A row of what is read. The expected numbers are the text itself in SI, by
// the factors in TestHandbook and TestFactors.
type reads struct {
	kind  *Kind
	text  string
	unit  string // the default
	si    float64
	typed string // the unit of the reading
	other string
}

func TestParse(t *testing.T) {
	length, mass, ld, pc := KindLength, KindMass, KindLinearDensity, KindFraction
	const ne = 0.45359237 / 768.096 // kg/m of Ne 1: a pound in 840 yards of 0.9144 m
	for _, c := range []reads{
		// Marks, signs, exponents, spaces.
		{length, "0,45 mm", "", 0.45e-3, "mm", ""},
		{length, "0.45mm", "", 0.45e-3, "mm", ""},
		{length, ".022 in", "", 0.022 * 0.0254, "in", ""},
		{length, ",022 in", "", 0.022 * 0.0254, "in", ""},
		{length, "22 thou", "", 0.022 * 0.0254, "thou", ""},
		{length, "408", "", 0.408, "mm", ""},
		{length, "408", "cm", 4.08, "cm", ""},
		{length, "408", "\"", 408 * 0.0254, "in", ""},
		{length, "5.", "", 5e-3, "mm", ""},
		{length, "5, cm", "", 5e-2, "cm", ""},
		{length, "1e-3 m", "", 1e-3, "m", ""},
		{length, "1E3", "", 1, "mm", ""},
		{length, "1.5e+2", "", 0.15, "mm", ""},
		{length, "1e\u22123 m", "", 1e-3, "m", ""},
		{length, "1.234e3", "", 1.234, "mm", ""},
		{length, "-5", "", -5e-3, "mm", ""},
		{length, "\u22125 mm", "", -5e-3, "mm", ""},
		{length, "+5 mm", "", 5e-3, "mm", ""},
		{length, "\u00a0 5\u202fmm\u2009 ", "", 5e-3, "mm", ""},
		{length, "007", "", 7e-3, "mm", ""},
		{length, "-0", "", 0, "mm", ""},
		// Thousands.
		{length, "1 234", "", 1.234, "mm", ""},
		{length, "1\u00a0234 mm", "", 1.234, "mm", ""},
		{length, "1\u2009234\u2009567", "", 1234.567, "mm", ""},
		{length, "1\u202f234", "", 1.234, "mm", ""},
		{length, "1'234", "", 1.234, "mm", ""},
		{length, "12’345’678", "", 12345.678, "mm", ""},
		{length, "1 234,5", "", 1.2345, "mm", ""},
		{length, "1'234.567", "", 1.234567, "mm", ""},
		{length, "1,234.5", "", 1.2345, "mm", ""},
		{length, "1.234,5", "", 1.2345, "mm", ""},
		{length, "1.234.567,8", "", 1234.5678, "mm", ""},
		{length, "1,234,567", "", 1234.567, "mm", ""},
		{length, "1.234.567 m", "", 1234567, "m", ""},
		// One mark and three digits: the other reading is offered.
		{length, "1.234 mm", "", 1.234e-3, "mm", "1234 mm"},
		{length, "1,234 mm", "", 1.234e-3, "mm", "1234 mm"},
		{length, " 123,456", "", 123.456e-3, "mm", " 123456"},
		{length, "-1.234", "", -1.234e-3, "mm", "-1234"},
		{length, "1.000 ft 1,000 in", "", 0.3302, "in", "1000 ft 1000 in"},
		{pc, "12.500 %", "", 0.125, "%", "12500 %"},
		{length, "0.123", "", 0.123e-3, "mm", ""},
		{length, "01.234", "", 1.234e-3, "mm", ""},
		{length, "1234.567", "", 1.234567, "mm", ""},
		{length, "1.23", "", 1.23e-3, "mm", ""},
		{length, "1.2345", "", 1.2345e-3, "mm", ""},
		{length, ".123", "", 0.123e-3, "mm", ""},
		// Fractions.
		{length, "1/4 in", "", 6.35e-3, "in", ""},
		{length, "1 1/4 in", "", 31.75e-3, "in", ""},
		{length, "1-1/4 in", "", 31.75e-3, "in", ""},
		{length, "-1 1/4 in", "", -31.75e-3, "in", ""},
		{length, "¼ in", "", 6.35e-3, "in", ""},
		{length, "1¼ in", "", 31.75e-3, "in", ""},
		{length, "1 ¼ in", "", 31.75e-3, "in", ""},
		{length, "1\u20444 in", "", 6.35e-3, "in", ""}, // fraction slash
		{length, "⅝\"", "", 15.875e-3, "in", ""},
		{length, "3/2", "cm", 1.5e-2, "cm", ""},
		{length, "10 125/1000 in", "", 10.125 * 0.0254, "in", ""},
		{mass, "1/2", "lb", 0.5 * 0.45359237, "lb", ""},
		// Several units.
		{mass, "1 lb 4 oz", "", 1.25 * 0.45359237, "oz", ""},
		{mass, "1lb4oz", "", 1.25 * 0.45359237, "oz", ""},
		{mass, "-1 lb 4 oz", "", -1.25 * 0.45359237, "oz", ""},
		{mass, "1 kg 250 g 500 mg", "", 1.2505, "mg", ""},
		{length, "5 ft 3 in", "", 1.6002, "in", ""},
		{length, "5'3\"", "", 1.6002, "in", ""},
		{length, "5′ 3″", "", 1.6002, "in", ""},
		{length, "5’ 3½”", "", 1.6129, "in", ""},
		{length, "5' 3''", "", 1.6002, "in", ""},
		{length, "5 ft 3 1/2 in", "", 1.6129, "in", ""},
		{length, "5'½\"", "", 1.5367, "in", ""},
		{length, "1 m 5 cm 2 mm", "", 1.052, "mm", ""},
		// Units of several signs.
		{KindDensity, "1140 kg/m³", "", 1140, "kg/m³", ""},
		{KindDensity, "1.14 g/ml", "", 1140, "g/cm³", ""},
		{KindStress, "17 N/mm2", "", 17e6, "N/mm²", ""},
		{KindArea, "0,2124 mm^2", "", 0.2124e-6, "mm²", ""},
		{KindLength, "520 \u03bcm", "", 520e-6, "µm", ""},
		{KindAcceleration, "9.80665 m/s2", "", 9.80665, "m/s²", ""},
		{KindEnergy, "1 ft-lbf", "", 1.3558179483314004, "ft·lbf", ""},
		// Percent.
		{pc, "18", "", 0.18, "%", ""},
		{pc, "18 %", "", 0.18, "%", ""},
		{pc, "-2,5%", "", -0.025, "%", ""},
		{pc, "1/2", "", 0.005, "%", ""},
		// Plies: the same yarn in every way of writing it.
		{ld, "470 dtex x2", "", 94e-6, "dtex", ""},
		{ld, "470dtex×2", "", 94e-6, "dtex", ""},
		{ld, "470 dtex × 2", "", 94e-6, "dtex", ""},
		{ld, "470dtexx2", "", 94e-6, "dtex", ""},
		{ld, "470 dtex*2", "", 94e-6, "dtex", ""},
		{ld, "2x470 dtex", "", 94e-6, "dtex", ""},
		{ld, "2 X 470 dtex", "", 94e-6, "dtex", ""},
		{ld, "470x2 dtex", "", 94e-6, "dtex", ""},
		{ld, "470/2 dtex", "", 94e-6, "dtex", ""},
		{ld, "470/2dtex", "", 94e-6, "dtex", ""},
		{ld, "470 dtex/2", "", 94e-6, "dtex", ""},
		{ld, "470 dtex 2-ply", "", 94e-6, "dtex", ""},
		{ld, "470 dtex 2 ply", "", 94e-6, "dtex", ""},
		{ld, "470 dtex 2Ply", "", 94e-6, "dtex", ""},
		{ld, "dtex 470 x2", "", 94e-6, "dtex", ""},
		{ld, "470/2", "dtex", 94e-6, "dtex", ""},
		{ld, "470 x2", "dtex", 94e-6, "dtex", ""},
		{ld, "235 dtex f34 x2", "", 47e-6, "dtex", ""},
		{ld, "235dtexf34x2", "", 47e-6, "dtex", ""},
		{ld, "235 f34 x2", "dtex", 47e-6, "dtex", ""},
		{ld, "235 dtex f 34", "", 23.5e-6, "dtex", ""},
		{ld, "235 dtex f34/2", "", 47e-6, "dtex", ""},
		{ld, "1.5x3 tex", "", 4.5e-6, "tex", ""},
		{ld, "3x1.5 tex", "", 4.5e-6, "tex", ""},
		{ld, "2x1.250 tex", "", 2.5e-6, "tex", "2x1250 tex"},
		{ld, "242.1", "", 242.1e-6, "tex", ""},
		{ld, "40/12 Ne", "", 12 * ne / 40, "Ne", ""},
		{ld, "40/2 Ne", "", ne / 20, "Ne", ""},
		{ld, "Ne 40/2", "", ne / 20, "Ne", ""},
		{ld, "ne40/2", "", ne / 20, "Ne", ""},
		{ld, "40x2 Ne", "", ne / 20, "Ne", ""},
		{ld, "2x40 Ne", "", ne / 20, "Ne", ""},
		{ld, "40 Ne 2-ply", "", ne / 20, "Ne", ""},
		{ld, "50/2 Nm", "", 40e-6, "Nm", ""},
		{ld, "60/2 tkt", "", 100e-6, "tkt", ""},
		{ld, "630", "den", 70e-6, "den", ""},
		// Counts.
		{KindCount, "6", "", 6, "", ""},
		{KindCount, " 6.0 ", "", 6, "", ""},
		{KindCount, "1 234", "", 1234, "", ""},
		{KindCount, "-3", "", -3, "", ""},
		{KindCount, "4/2", "", 2, "", ""},
		{KindCount, "2.000", "", 2, "", "2000"},
		// The doubt of a ratio.
		{KindRatioDoubt, "0.2", "", 0.2, "", ""},
		{KindRatioDoubt, "10 %", "", 0.1, "%", ""},
		{KindRatioDoubt, "10", "%", 0.1, "%", ""},
	} {
		t.Run(c.text, func(t *testing.T) {
			r, err := c.kind.Parse(c.text, c.unit)
			require.NoError(t, err)
			assert.InDelta(t, c.si, r.SI, 1e-13*math.Abs(c.si))
			assert.False(t, math.Signbit(r.SI) && r.SI == 0)
			assert.Equal(t, c.other, r.Other)
			if c.kind.Style == StyleCount {
				assert.Nil(t, r.Unit)
				assert.False(t, r.Bare)
			} else {
				assert.Equal(t, c.typed, r.Unit.Symbol)
			}
			roundTrip(t, c.kind, r)
		})
	}
}

func TestParseBare(t *testing.T) {
	for _, c := range []struct {
		kind *Kind
		text string
		unit string
		bare bool
	}{
		{KindLength, "408", "", true},
		{KindLength, "408", "in", true},
		{KindLength, "408 mm", "", false},
		{KindLength, "1 ft 3 in", "", false},
		{KindFraction, "18", "", true},
		{KindFraction, "18 %", "", false},
		{KindLinearDensity, "470/2", "", true},
		{KindLinearDensity, "470/2 dtex", "", false},
		{KindLinearDensity, "Ne 40", "", false},
		{KindLinearDensity, "235 f34 x2", "dtex", true},
		{KindRatioDoubt, "0.2", "", false}, // no symbol to type
		{KindRatioDoubt, "10", "%", true},
		{KindRatio, "4", "", false},
		{KindCount, "4", "", false},
	} {
		r, err := c.kind.Parse(c.text, c.unit)
		require.NoError(t, err, c.text)
		assert.Equal(t, c.bare, r.Bare, c.text)
	}
}

func TestParseFails(t *testing.T) {
	length, mass, ld := KindLength, KindMass, KindLinearDensity
	for _, c := range []struct {
		kind *Kind
		text string
		err  error
		part string
	}{
		{length, "", ErrEmpty, ""},
		{length, " \u00a0\t", ErrEmpty, ""},
		// Numbers.
		{length, "mm", ErrNumber, "mm"},
		{length, "0,4,5", ErrNumber, "0,4,5"},
		{length, "0.4.5 mm", ErrNumber, "0.4.5"},
		{length, "1.23.456", ErrNumber, "1.23.456"},
		{length, "1,2345,678", ErrNumber, "1,2345,678"},
		{length, "0,123,456", ErrNumber, "0,123,456"},
		{length, "12,34.5", ErrNumber, "12,34.5"},
		{length, "1234,567.8", ErrNumber, "1234,567.8"},
		{length, "1,234.567,8", ErrNumber, "1,234.567,8"},
		{length, "1.234,567.8", ErrNumber, "1.234,567.8"},
		{length, "1,234,", ErrNumber, "1,234,"},
		{length, "1 234,567.8", ErrNumber, "1 234,567.8"},
		{length, ".", ErrNumber, "."},
		{length, "-", ErrNumber, "-"},
		{length, "--5", ErrNumber, "--5"},
		{length, "- 5", ErrNumber, "-"},
		{length, "NaN", ErrNumber, "NaN"},
		{length, "Inf", ErrNumber, "Inf"},
		{length, "-Infinity mm", ErrNumber, "-Infinity"},
		{length, "1/0 in", ErrNumber, "1/0"},
		{length, "1234567/2", ErrNumber, "1234567/2"},
		{length, "\xff5", ErrNumber, "\xff5"},
		{length, "1e999", ErrNotFinite, "1e999"},
		{KindStress, "1e308 GPa", ErrNotFinite, "1e308 GPa"},
		// Units.
		{length, "5 g", ErrUnit, "g"},
		{length, "5 parsec", ErrUnit, "parsec"},
		{length, "5 mm2", ErrUnit, "mm2"},
		{length, "5 mm²", ErrUnit, "mm²"},
		{length, "5 mm/s", ErrUnit, "mm/s"},
		{length, "5 ft-lbf", ErrUnit, "ft-lbf"},
		{length, "5 '", ErrUnit, "'"},
		{length, "5 \"", ErrUnit, "\""},
		{length, "0xff", ErrUnit, "xff"},
		{length, "1e", ErrUnit, "e"},
		{length, "5 %", ErrUnit, "%"},
		{length, "5\xff", ErrUnit, "\xff"},
		{mass, "5 oz 3 zz", ErrUnit, "zz"},
		{mass, "5 N", ErrUnit, "N"},
		{KindForce, "35 g", ErrUnit, "g"},
		{KindForce, "5 MN", ErrUnit, "MN"},
		{KindFraction, "5 mm", ErrUnit, "mm"},
		{ld, "40 mm", ErrUnit, "mm"},
		// Left over.
		{length, "5 mm 3", ErrTrailing, "3"},
		{length, "5 ft 3", ErrTrailing, "3"},
		{length, "5 in 3 ft", ErrTrailing, "3 ft"},
		{length, "5 in 3 in", ErrTrailing, "3 in"},
		{length, "5 mm;", ErrTrailing, ";"},
		{length, "1_000", ErrTrailing, "_000"},
		{length, "1-2 mm", ErrTrailing, "-2 mm"},
		{length, "1/2/3", ErrTrailing, "/3"},
		{length, "1 5/4 in", ErrTrailing, "5/4 in"},
		{length, "5 1234", ErrTrailing, "1234"},
		{length, "0 123", ErrTrailing, "123"},
		{length, "1 234'567", ErrUnit, "'567"},
		{length, "5 x2", ErrTrailing, "x2"},
		{KindCount, "6 mm", ErrTrailing, "mm"},
		{ld, "1 1/4 tex", ErrTrailing, "1/4 tex"},
		{ld, "1 ktex 5 tex", ErrTrailing, "5 tex"},
		{ld, "Ne 40 tex", ErrTrailing, "tex"},
		// Plies.
		{ld, "150/48 den", ErrPlies, "/48"},
		{ld, "40/13 Ne", ErrPlies, "/13"},
		{ld, "40/0 Ne", ErrPlies, "/0"},
		{ld, "40/2.5 Ne", ErrPlies, "/2.5"},
		{ld, "470 dtex x0", ErrPlies, "x0"},
		{ld, "470 dtex x1,5", ErrPlies, "x1,5"},
		{ld, "470 dtex x1000", ErrPlies, "x1000"},
		{ld, "470 dtex 0-ply", ErrPlies, "0-ply"},
		{ld, "470/2 dtex x2", ErrPlies, "x2"},
		{ld, "40/2/3 Ne", ErrPlies, "/3"},
		{ld, "1.5x2.5 tex", ErrPlies, "x2.5"},
		{ld, "0x10 tex", ErrPlies, "x10"},
		{ld, "0 Ne", ErrNotFinite, "0 Ne"},
		// Whole.
		{KindCount, "2.5", ErrWhole, "2.5"},
		{KindCount, "1/2", ErrWhole, "1/2"},
		{KindCount, "1.234", ErrWhole, "1.234"},
		// Not read here.
		{KindWord, "copper", ErrNumber, "copper"},
		{KindList, "5", ErrNumber, "5"},
	} {
		t.Run(c.text, func(t *testing.T) {
			r, err := c.kind.Parse(c.text, "")
			require.ErrorIs(t, err, c.err)
			var e *ParseError
			require.ErrorAs(t, err, &e)
			assert.Equal(t, c.part, e.Part)
			assert.Equal(t, c.text, e.Text)
			assert.Same(t, c.kind, e.Kind)
			assert.Equal(t, c.err.Error()+": "+c.part, e.Error())
			assert.True(t, math.IsNaN(r.SI))
			assert.Nil(t, r.Unit)
		})
	}
	_, err := length.Parse("5", "furlong")
	require.ErrorIs(t, err, ErrUnit)
	_, err = length.Parse(strings.Repeat("9", 400), "")
	require.ErrorIs(t, err, ErrNotFinite)
}

// roundTrip writes a reading at 17 digits and reads it again.
func roundTrip(t *testing.T, k *Kind, r Reading) {
	t.Helper()
	for _, mark := range []byte{'.', ','} {
		b := Append(nil, r.SI, r.Unit, 17, mark)
		unit := ""
		if r.Unit != nil && r.Unit.Symbol != "" {
			unit = " " + r.Unit.Symbol
		}
		again, err := k.Parse(string(b)+unit, "")
		require.NoError(t, err, "%s%s", b, unit)
		assert.InDelta(t, r.SI, again.SI, 1e-12*math.Abs(r.SI)+1e-300, "%s%s", b, unit)
		assert.Same(t, r.Unit, again.Unit)
		assert.False(t, again.Bare && unit != "")
	}
}

func BenchmarkParse(b *testing.B) {
	for _, c := range []struct {
		kind *Kind
		text string
	}{
		{KindLength, "0,45 mm"},
		{KindLength, "1 1/4 in"},
		{KindMass, "1 lb 4 oz"},
		{KindLinearDensity, "470 dtex x2"},
		{KindRatio, "4.8:1"},
	} {
		b.Run(c.text, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				if _, err := c.kind.Parse(c.text, ""); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
