package craft

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"twistbench/calc/quantity"
)

// metre returns a metre of a smooth rod d (m) thick.
func metre(b Body, d quantity.Length) Body {
	b.Diameter, b.Height, b.Area = d, 1, quantity.Area(math.Pi*d)
	return b
}

// Handbook 4.3: a heated rod in a room of 23 °C, the whole chain from W/m, to 0.7 K and 2 % of h: Churchill & Chu 1975 and
// Churchill & Bernstein 1977 with the air of chemicals 1.5.2 and fluids 1.3.1, solved with scipy 1.10.1.
func TestBalanceRows(t *testing.T) {
	for _, row := range []struct {
		name       string
		d          quantity.Length
		watts      quantity.Power
		speed      float64
		celsius, h float64
	}{
		{"J01", 1 * mm, 4, 0, 61.59, 26.562},
		{"J02", 0.8 * mm, 2.5, 0, 51.13, 29.258},
		{"J03", 2 * mm, 8, 0, 72.94, 18.694},
		{"J04", 1 * mm, 4, 1, 33.99, 110.275},
	} {
		b := metre(InRoom(Still, 23+ice, 0), row.d)
		if row.speed > 0 {
			b.Way, b.Speed = Fan, row.speed
		}
		at := b.Steady(row.watts)
		assert.InDelta(t, row.celsius, float64(at-ice), 0.7, row.name)
		assert.InDelta(t, row.celsius, float64(at-ice), 0.15, "%s: much closer than it must be", row.name)
		h, out := b.Film(at)
		assert.Zero(t, out, row.name)
		assert.InEpsilon(t, row.h, h, 0.02, row.name)
		assert.InDelta(t, float64(row.watts), float64(b.Loss(at)), 1e-6, row.name)
	}
	// H04a, Incropera ex. 5.2: gas at 200 °C, walls at 400 °C, h 400, emissivity 0.9
	ball := Body{Way: Given, Air: 200 + ice, Walls: 400 + ice, Coefficient: 400, Share: 1, Emissivity: 0.9, Area: 1}
	assert.InDelta(t, 218.713475971, float64(ball.Steady(0)-ice), 0.3)
	// and the other way round, where it settles below the air
	ball.Air, ball.Walls = ball.Walls, ball.Air
	at := ball.Steady(0)
	assert.True(t, at > ball.Walls && at < ball.Air)
	assert.InDelta(t, 0, float64(ball.Loss(at)), 1e-4)
	// H11b, Holman ex. 2-6: 3961 W on a metre of 3 mm with h 4000 in 110 °C
	rod := metre(Body{Way: Given, Air: 110 + ice, Coefficient: 4000, Share: 1}, 3*mm)
	assert.InDelta(t, 215.073820074, float64(rod.Steady(3961.18969473)-ice), 1e-6)
	assert.Equal(t, rod.Air, rod.Steady(0))
}

// Below M15: 1.2 mm outside, 80 K over 20 °C: h 26.6 and 7.7, 0.103 W/cm; 99.7 in a stream of 1 m/s. Air there is of Sutherland's constants.
func TestLossOfReference(t *testing.T) {
	b := metre(InRoom(Still, 20+ice, 0), 1.2*mm)
	h, _ := b.Film(100 + ice)
	assert.InEpsilon(t, 26.57, h, 0.01)
	assert.InEpsilon(t, 10.3, float64(b.Loss(100+ice)), 0.01)
	b.Way, b.Speed = Fan, 1
	h, _ = b.Film(100 + ice)
	assert.InEpsilon(t, 99.7, h, 0.01)
}

// coil returns the outside diameter, length, thickness and fibre of a coil 0.1 m long of index 1.4, whose pitch is so many thicknesses.
func coil(d quantity.Length, pitches float64) (od, l, t, f quantity.Length) {
	l = 0.1
	p := d * quantity.Length(pitches)
	return 2.4 * d, l, d, l / p * TurnLength(1.4*d, p)
}

// Table 3.1: index 1.4, pitch 1.3 d, 0.1 m, 1700 J/(kg·K), 100 in 20 °C, smooth: mass (mg), J/K, W/K in still air, time constant (s) in still
// air, at 1 m/s, 3 m/s and in stirred water.
func TestLumpedTable(t *testing.T) {
	for _, row := range [][8]float64{
		{0.25, 19.7, .0336, .00909, 3.7, 1.2, 0.7, 0.12},
		{0.50, 79.0, .134, .0129, 10.4, 3.3, 2.0, 0.24},
		{0.80, 202, .344, .0170, 20, 6.7, 4.1, 0.38},
	} {
		od, l, d, f := coil(quantity.Length(row[0]*mm), 1.3)
		mass := FibreMass(Area(d), 1140, 1, f)
		heat := 1700 * float64(mass)
		assert.InEpsilon(t, row[1], float64(mass)*1e6, 5e-3)
		assert.InEpsilon(t, row[2], heat, 5e-3)
		smooth, _ := Ends(InRoom(Still, 20+ice, 0), od, l, d, f, 0)
		per := func() float64 { return float64(smooth.Loss(100+ice)) / 80 }
		assert.InEpsilon(t, row[3], per(), 0.01)
		assert.InEpsilon(t, row[4], heat/per(), 0.02)
		smooth.Way, smooth.Speed = Fan, 1
		assert.InEpsilon(t, row[5], heat/per(), 0.05)
		smooth.Speed = 3
		assert.InEpsilon(t, row[6], heat/per(), 0.07)
		water, _ := Ends(InWater(20+ice), od, l, d, f, 0)
		assert.InEpsilon(t, row[7], heat/(float64(water.Loss(100+ice))/80), 0.05)
	}
}

// Caveat 5.1: turns standing apart lose 1.6 (p = 2 d) to 2.3 times (p = 1.3 d) as much; hanging coils are slender cylinders, about 20 to 27
// W/(m²·K), never the plate of 7.9.
func TestEnds(t *testing.T) {
	for pitches, want := range map[float64]float64{1.3: 2.3, 2: 1.6} {
		od, l, d, f := coil(0.5*mm, pitches)
		hot, cool := Ends(InRoom(Still, 20+ice, 0), od, l, d, f, 0)
		assert.InEpsilon(t, want, float64(cool.Loss(100+ice)/hot.Loss(100+ice)), 0.025)
		assert.Greater(t, hot.Steady(0.8), cool.Steady(0.8))
		wideHot, wideCool := Ends(InRoom(Still, 20+ice, 0), od, l, d, f, StillUnsure)
		assert.Greater(t, wideHot.Steady(0.8), hot.Steady(0.8), "the band holds the doubt of the coefficient")
		assert.Less(t, wideCool.Steady(0.8), cool.Steady(0.8))
	}
	od, l, d, f := coil(0.5*mm, 1.3)
	hot, cool := Ends(InRoom(Hanging, 20+ice, 0), od, l, d, f, 0)
	h, out := hot.Film(80 + ice)
	assert.Zero(t, out)
	assert.True(t, h > 20 && h < 27, "%g", h)
	assert.Equal(t, Still, cool.Way, "turns lie across")
	// a wide open coil, index 8: its cylinder has more surface than its fibre, and the end that loses less is the hot one
	wide := TurnLength(4*mm, 5*mm) * 20
	hot, cool = Ends(InRoom(Still, 20+ice, 0), 4.5*mm, 0.1, 0.5*mm, wide, 0)
	assert.Equal(t, quantity.Length(0.5*mm), hot.Diameter)
	assert.Less(t, hot.Loss(70+ice), cool.Loss(70+ice))
	// a straight fibre has no band but that of the coefficient
	hot, cool = Ends(InRoom(Still, 20+ice, 0), 0.5*mm, 0.1, 0.5*mm, 0.1, 0)
	assert.Equal(t, hot.Loss(100+ice), cool.Loss(100+ice))
}

// A trial's losses are the same at both ends, and in proportion.
func TestMeasured(t *testing.T) {
	od, l, d, f := coil(0.5*mm, 1.3)
	hot, cool := Ends(InRoom(Still, 20+ice, 1000), od, l, d, f, StillUnsure)
	for _, b := range []*Body{&hot, &cool} {
		b.Measured(0.02)
		assert.InDelta(t, 80, float64(b.Steady(1.6)-20-ice), 1e-6) // model M14: 1.6 W over 0.02 W/K
		assert.InDelta(t, 0.8, float64(b.Loss(60+ice)), 1e-12)
	}
}

// Losses rise with the temperature in every way and at every altitude, without a jump; above the air they are losses, below gains.
func TestLossRises(t *testing.T) {
	od, l, d, f := coil(0.3*mm, 1.2)
	for _, b := range []Body{InRoom(Still, 20+ice, 0), InRoom(Hanging, 20+ice, 3000), InRoom(Fan, -5+ice, 0), InRoom(Fan, 40+ice, 2000), InWater(60 + ice)} {
		b.Speed = 0.05
		hot, cool := Ends(b, od, l, d, f, StillUnsure)
		for _, end := range []*Body{&hot, &cool} {
			was := quantity.Power(math.Inf(-1))
			for at := quantity.Temperature(250); at < 600; at += 0.5 {
				loss := end.Loss(at)
				assert.Greater(t, loss, was, "at %g K", float64(at))
				assert.Equal(t, at > end.Air, loss > 0, "at %g K", float64(at))
				was = loss
			}
			for _, watts := range []quantity.Power{0.001, 0.1, 1, 5} {
				at := end.Steady(watts)
				assert.InEpsilon(t, float64(watts), float64(end.Loss(at)), 1e-5)
			}
		}
	}
}

// Thinner air takes less: at 3000 m the same heat makes it hotter.
func TestAltitude(t *testing.T) {
	low, high := metre(InRoom(Still, 20+ice, 0), 1*mm), metre(InRoom(Still, 20+ice, 3000), 1*mm)
	assert.Greater(t, high.Steady(4)-low.Steady(4), quantity.Temperature(1))
	assert.Less(t, high.Steady(4)-low.Steady(4), quantity.Temperature(10))
}

func TestBounds(t *testing.T) {
	for _, row := range []struct {
		name string
		b    Body
		d    quantity.Length
		at   quantity.Temperature
		want Outside
	}{
		{"a rod in a room", InRoom(Still, 23+ice, 0), 1 * mm, 80 + ice, 0},
		{"cold", InRoom(Still, -60+ice, 0), 1 * mm, -40 + ice, OutsideAir},
		{"glowing", InRoom(Still, 23+ice, 0), 0.5 * mm, 950, OutsideAir},
		{"hair in thin air", InRoom(Still, 23+ice, 11000), 0.005 * mm, 30 + ice, OutsideStill},
		{"a barrel", InRoom(Still, 23+ice, 0), 20000 * mm, 400 + ice, OutsideStill | OutsideLumped},
		{"a breath", Body{Way: Fan, Air: 23 + ice, Walls: 23 + ice, Pressure: SeaLevel, Share: 1, Speed: 0.001}, 1 * mm, 60 + ice, OutsideFan},
		{"a fan", Body{Way: Fan, Air: 23 + ice, Walls: 23 + ice, Pressure: SeaLevel, Share: 1, Speed: 0.5}, 1 * mm, 60 + ice, 0},
		{"hanging", InRoom(Hanging, 23+ice, 0), 1 * mm, 80 + ice, 0},
		{"hanging hair", InRoom(Hanging, 23+ice, 0), 0.02 * mm, 80 + ice, OutsideHanging},
		{"in water", InWater(20 + ice), 0.5 * mm, 80 + ice, OutsideLumped}, // table 3.1: the lumped model fails
		{"a thick rod", InRoom(Still, 23+ice, 0), 4 * mm, 80 + ice, 0},
		{"a thick rod in a stream", Body{Way: Fan, Air: 23 + ice, Walls: 23 + ice, Pressure: SeaLevel, Share: 1, Speed: 3}, 4 * mm, 60 + ice, OutsideLumped},
	} {
		b := metre(row.b, row.d)
		b.Height = 0.5
		assert.Equal(t, row.want, b.Bounds(row.at, row.d, NylonConductivity), row.name)
	}
	bits := 0
	for o := OutsideAir | OutsideStill | OutsideHanging | OutsideFan | OutsideLumped; o != 0; o &= o - 1 {
		bits++
	}
	assert.Len(t, OutsideKeys, bits)
}

// A resistance that rises takes power from a kept voltage and adds it to a kept current: with 0.02 W/K it settles at P/(G + …), by hand from
// G T² a + G T − P = 0 and T = P/(G − a P); and where a P is over G it runs away.
func TestTempco(t *testing.T) {
	b := Body{Way: Given, Air: 20 + ice, Walls: 20 + ice, Coefficient: 0.02, Share: 1, Area: 1, Tempco: 0.004}
	assert.InDelta(t, (-0.02+math.Sqrt(0.02*0.02+4*0.02*0.004*1.6))/(2*0.02*0.004), float64(b.Steady(1.6)-b.Air), 1e-5)
	b.Current = true
	assert.InDelta(t, 1.6/(0.02-0.004*1.6), float64(b.Steady(1.6)-b.Air), 1e-5)
	assert.True(t, math.IsInf(float64(b.Steady(5.1)), 1))
}

func TestBalanceUnknown(t *testing.T) {
	nan := quantity.NaN
	good := metre(InRoom(Still, 23+ice, 0), 1*mm)
	assert.True(t, math.IsNaN(float64(good.Steady(quantity.Power(nan)))))
	assert.True(t, math.IsNaN(float64(good.Steady(-1))))
	for _, spoil := range []func(*Body){
		func(b *Body) { b.Air = quantity.Temperature(nan) }, func(b *Body) { b.Walls = quantity.Temperature(nan) },
		func(b *Body) { b.Pressure = nan }, func(b *Body) { b.Diameter = quantity.Length(nan) },
		func(b *Body) { b.Area = quantity.Area(nan) }, func(b *Body) { b.Emissivity = quantity.Fraction(nan) },
		func(b *Body) { b.Way, b.Speed = Fan, nan }, func(b *Body) { b.Way, b.Height = Hanging, quantity.Length(nan) },
	} {
		b := good
		spoil(&b)
		assert.True(t, math.IsNaN(float64(b.Steady(1))))
		b.Heat.At20 = 1
		assert.True(t, math.IsNaN(float64(b.After(400, 1, 5))))
		assert.True(t, math.IsNaN(float64(b.TimeTo(400, 410, 1))))
		low, high := b.Cycle(&b, 1, 2, 1)
		assert.True(t, math.IsNaN(float64(low)) && math.IsNaN(float64(high)))
	}
}

// A heater whose ohms fall as it warms, checked against a look at every hundredth of a kelvin: the lowest temperature at which it loses all it
// gets, or one that melts anything where a kept voltage runs away; and how long it takes there, against ten thousand small steps.
func TestFallingOhms(t *testing.T) {
	for _, row := range []struct {
		tempco quantity.TemperatureCoefficient
		watts  quantity.Power
		runs   bool // away
	}{
		{-0.0005, 1, false}, {-0.004, 0.3, false}, {-0.006, 0.2, false}, {-0.02, 0.05, false}, {-0.05, 0.02, false},
		{-0.01, 3, true}, {-0.02, 1, true}, {-0.05, 1, true},
	} {
		b := metre(InRoom(Still, 20+ice, 0), 1*mm)
		b.Height, b.Area, b.Tempco = 0.1, b.Area/10, row.tempco
		b.Heat = Capacity{At20: 0.1}
		want := float64(b.Air)
		for want < hottest && b.excess(row.watts, want) > 0 {
			want += 0.01
		}
		got := b.Steady(row.watts)
		if row.runs {
			assert.True(t, math.IsInf(float64(got), 1), "%v", row)
			assert.Greater(t, want, float64(b.Air)-0.9/float64(row.tempco), "%v: past where its ohms fall", row)
			got = 400 + ice // on its way
		} else {
			assert.InDelta(t, want, float64(got), 0.011, "%v", row)
		}
		goal := b.Air + (got-b.Air)/2
		at, step := float64(b.Air), 0.0
		const h = 1e-3
		for ; at < float64(goal) && step < 1e6; step++ {
			at += h * b.rate(row.watts, at)
		}
		assert.InDelta(t, step*h, float64(b.TimeTo(b.Air, goal, row.watts)), 0.01*step*h+2*h, "%v", row)
	}
	b := metre(InRoom(Still, 20+ice, 0), 1*mm)
	b.Tempco = -0.01
	assert.Equal(t, quantity.Power(2), b.Power(1, 70+ice), "half its ohms, twice the power")
	assert.Equal(t, quantity.Power(20), b.Power(1, 400+ice))
	b.Current = true
	assert.InDelta(t, 0.5, float64(b.Power(1, 70+ice)), 1e-12)
}
