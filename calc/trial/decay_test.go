package trial

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"

	"twistbench/calc/quantity"
)

// Handbook E01, block E01: a made-up cooling curve, and scipy 1.10.1 curve_fit on it, to 1e-5 of the parameters and 1e-3 of the doubts; with
// the end kept at 23.3, and five readings of a warming one that begin at 3 s, by scipy 1.10.1 too.
func TestFitDecay(t *testing.T) {
	x := []float64{0, 2, 4, 6, 8, 10, 14, 18, 24, 30, 40, 50}
	y := []float64{108.4, 87.95, 72.68, 60.62, 51.92, 44.96, 36.01, 30.75, 26.66, 24.69, 23.62, 23.34}
	for _, c := range []struct {
		name                  string
		x, y                  []float64
		end                   float64
		first                 float64
		height, constant, at0 float64
		doubts                [3]float64
		squares               float64
		free                  int
	}{
		{"E01", x, y, math.NaN(), 0, 85.0081916722, 7.32817447476, 23.3283224036,
			[3]float64{0.108985440537, 0.0215786174883, 0.0645828156012}, 0.125739654127, 9},
		{"E01, end kept", x, y, 23.3, 0, 85.027918725, 7.334610288, 23.3, [3]float64{0.095092009, 0.015212040, 0}, 0.128420204, 10},
		{"warming", []float64{3, 5, 8, 13, 21}, []float64{24.1, 38.2, 52.9, 66.8, 76.1}, math.NaN(), 3, -56.172345813, 6.982580498, 80.316743968,
			[3]float64{0.173534765, 0.056828061, 0.177035177}, 0.020309432, 2},
	} {
		d := FitDecay(c.x, c.y, c.end)
		assert.Equal(t, len(c.x), d.N, c.name)
		assert.Equal(t, c.first, d.First, c.name)
		assert.InEpsilon(t, c.height, d.Height, 1e-5, c.name)
		assert.InEpsilon(t, c.constant, d.Constant, 1e-5, c.name)
		assert.InEpsilon(t, c.at0, d.End, 1e-5, c.name)
		assert.InEpsilon(t, c.doubts[0], d.HeightDoubt, 1e-3, c.name)
		assert.InEpsilon(t, c.doubts[1], d.ConstantDoubt, 1e-3, c.name)
		assert.InDelta(t, c.doubts[2], d.EndDoubt, 1e-3*c.doubts[2], c.name)
		assert.InEpsilon(t, math.Sqrt(c.squares/float64(c.free)), d.Residual, 1e-4, c.name)
	}
}

// Exact readings give back what made them, at any time of a clock and in any scale, also out of order and with gaps.
func TestFitDecayExact(t *testing.T) {
	nan := math.NaN()
	r := rand.New(rand.NewPCG(3, 4))
	for range 200 {
		tau, height, end, from := math.Exp(6*r.Float64()-2), 200*r.Float64()-100, 300*r.Float64(), 1000*r.Float64()
		if math.Abs(height) < 1 {
			continue
		}
		var x, y [9]float64
		for i := range x {
			x[i] = from + tau*(3*r.Float64()+float64(i%3))
			y[i] = end + height*math.Exp(-(x[i]-from)/tau)
		}
		y[4] = nan
		d := FitDecay(x[:], y[:], nan)
		assert.Equal(t, 8, d.N)
		assert.InEpsilon(t, tau, d.Constant, 1e-5)
		assert.InDelta(t, end, d.End, 1e-4*math.Abs(height))
		assert.InDelta(t, y[0], d.At(x[0]), 1e-4*math.Abs(height))
		d = FitDecay(x[:], y[:], end)
		assert.InEpsilon(t, tau, d.Constant, 1e-5)
		assert.Zero(t, d.EndDoubt)
	}
}

// The doubt is what it says: of many trials with a scatter of 0.5 K two thirds lie within one standard doubt.
func TestFitDecayDoubts(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 6))
	within, off := 0, 0.0
	const trials = 600
	for range trials {
		var x, y [15]float64
		for i := range x {
			x[i] = 2 * float64(i)
			y[i] = 23 + 70*math.Exp(-x[i]/8) + 0.5*r.NormFloat64()
		}
		d := FitDecay(x[:], y[:], math.NaN())
		if math.Abs(d.Constant-8) < d.ConstantDoubt {
			within++
		}
		off += (d.Constant - 8) / trials
	}
	assert.InDelta(t, 0.66, float64(within)/trials, 0.06) // t with 12 degrees of freedom: 0.663
	assert.InDelta(t, 0, off, 0.05)
}

func TestFitDecayUndetermined(t *testing.T) {
	nan := math.NaN()
	for _, c := range []struct {
		name string
		x, y []float64
		end  float64
		n    int
	}{
		{"none", nil, nil, nan, 0},
		{"one row", []float64{0}, []float64{90}, nan, 1},
		{"one row and the room", []float64{0}, []float64{90}, 20, 1},
		{"two rows", []float64{0, 5}, []float64{90, 60}, nan, 2},
		{"all at once", []float64{5, 5, 5, 5}, []float64{90, 80, 70, 60}, nan, 4},
		{"a straight line", []float64{0, 1, 2, 3, 4}, []float64{90, 80, 70, 60, 50}, nan, 5},
		{"bent the wrong way", []float64{0, 1, 2, 3, 4}, []float64{90, 89, 86, 81, 74}, nan, 5},
		{"cold at once", []float64{0, 100, 200, 300, 400}, []float64{90, 20, 20, 20, 20}, nan, 5},
		{"only gaps", []float64{0, nan, 2}, []float64{nan, 5, nan}, nan, 0},
	} {
		d := FitDecay(c.x, c.y, c.end)
		assert.Equal(t, c.n, d.N, c.name)
		assert.True(t, math.IsNaN(d.Constant) && math.IsNaN(d.Height) && math.IsNaN(d.ConstantDoubt), c.name)
	}
	// two rows and the room: by hand 5/ln 2 from 80 to 40 K over it, with nothing to say of the doubt
	d := FitDecay([]float64{0, 5}, []float64{100, 60}, 20)
	assert.InEpsilon(t, 5/math.Ln2, d.Constant, 1e-6)
	assert.True(t, math.IsNaN(d.ConstantDoubt))
}

func TestColumns(t *testing.T) {
	const ice = 273.15
	for _, c := range []struct {
		name, text string
		x, y       []float64
		bad, first int
	}{
		{"tabs", "0\t108.4\n2\t87.95\n", []float64{0, 2}, []float64{108.4, 87.95}, 0, 0},
		{"commas", "0,108.4\r\n2.345,87.95\r\n", []float64{0, 2.345}, []float64{108.4, 87.95}, 0, 0},
		{"commas and spaces", "0, 108.4\n2.5, 87.95", []float64{0, 2.5}, []float64{108.4, 87.95}, 0, 0},
		{"decimal commas", "0,5;108,4\n2,345;87,95", []float64{0.5, 2.345}, []float64{108.4, 87.95}, 0, 0},
		{"decimal commas in spaces", "0,5   108,4\n 2,5 87,95 ", []float64{0.5, 2.5}, []float64{108.4, 87.95}, 0, 0},
		{"commas for all", "0,5,108,4", []float64{0.5}, []float64{108.4}, 0, 0},
		{"heading", "time s;temp °C\n0;90\n1;80", []float64{0, 1}, []float64{90, 80}, 0, 0},
		{"heading in other units", "min;°C\n0;90\n0.25;80", []float64{0, 15}, []float64{90, 80}, 0, 0},
		{"heading in Fahrenheit", "s,°F\n0,194\n1,176", []float64{0, 1}, []float64{90, 80}, 0, 0},
		{"heading of a logger", "run A\ntime (ms)\ttemp [C]\n0\t90\n500\t80", []float64{0, 0.5}, []float64{90, 80}, 1, 1},
		{"heading and units", "t/min T/°F\n0 90 °C\n60 s 176", []float64{0, 60}, []float64{90, 80}, 0, 0},
		{"heading of an unknown unit", "ticks;°C\n0;90\n1;80", []float64{0, 1}, []float64{90, 80}, 1, 1},
		{"heading of no unit", "time;temp\n0;90", []float64{0}, []float64{90}, 1, 1},
		{"a reading is no heading", "gap min;90 °C\n1;80", []float64{1}, []float64{80}, 1, 1},
		{"heading below rows", "0;90\nmin;°F\n1;80", []float64{0, 1}, []float64{90, 80}, 1, 2},
		{"units", "0 s, 90 °C\n1 min 176 °F", []float64{0, 60}, []float64{90, 80}, 0, 0},
		{"gaps", "0;90\n\n1;\n;70\n3;60", []float64{0, 3}, []float64{90, 60}, 2, 3},
		{"below zero", "-1;-5\n+1;−10", []float64{-1, 1}, []float64{-5, -10}, 0, 0},
		{"one row", "0;90", []float64{0}, []float64{90}, 0, 0},
		{"words", "cooling\nas read\nx;y", nil, nil, 3, 1},
		{"one column", "1\n2\n3", nil, nil, 3, 1},
		{"three columns", "1;2;3\n1;2;3", nil, nil, 2, 1},
		{"too large a number", "0;90\n1;1e999", []float64{0}, []float64{90}, 1, 2},
		{"nothing", " \n\n", nil, nil, 0, 0},
		{"more than there is room for", "1;1\n2;2\n3;3\n4;4\n5;5", []float64{1, 2, 3, 4}, []float64{1, 2, 3, 4}, 0, 0},
	} {
		var x, y [4]float64
		n, bad, first := Columns(c.text, x[:], y[:])
		if assert.Equal(t, len(c.x), n, c.name) {
			for i := range c.x {
				assert.InDelta(t, c.x[i], x[i], 1e-12, c.name)
				assert.InDelta(t, c.y[i], y[i]-ice, 1e-9, c.name)
			}
		}
		assert.Equal(t, c.bad, bad, c.name)
		assert.Equal(t, c.first, first, c.name)
	}
}

// A line test of ohms: lengths in mm where nothing is said, and a meter's Ω.
func TestPairs(t *testing.T) {
	var x, y [4]float64
	for _, c := range []struct {
		text             string
		rows, bad, first int
		x, y             []float64
	}{
		{"length, ohms\n100, 5.2\n200, 9.9\n\n300, 15.1", 3, 1, 1, []float64{0.1, 0.2, 0.3}, []float64{5.2, 9.9, 15.1}},
		{"10 cm;5,2 Ω\n20 cm;\n1 ft;1,2 kΩ", 2, 1, 2, []float64{0.1, 0.3048}, []float64{5.2, 1200}}, // a foot is 304.8 mm
		{"100 mm", 0, 1, 1, nil, nil},
		{"cm;ohm\n10;4.8\n20;9.3", 2, 0, 0, []float64{0.1, 0.2}, []float64{4.8, 9.3}},
		{"length in cm, kohm\n10, 4.8", 1, 0, 0, []float64{0.1}, []float64{4800}},
		{"length in cm ohm\n10;4.8", 1, 1, 1, []float64{0.01}, []float64{4.8}}, // three words: which part?
		{"ohm;cm\n10;4.8", 1, 1, 1, []float64{0.01}, []float64{4.8}},           // the other way round
		{"100 5.2\n200 s 9", 1, 1, 2, []float64{0.1}, []float64{5.2}},          // seconds are no length
	} {
		n, bad, first := Pairs(c.text, quantity.KindLength, quantity.KindResistance, x[:], y[:])
		assert.Equal(t, [3]int{c.rows, c.bad, c.first}, [3]int{n, bad, first}, c.text)
		for i := range c.x {
			assert.InEpsilon(t, c.x[i], x[i], 1e-12, c.text)
			assert.InEpsilon(t, c.y[i], y[i], 1e-12, c.text)
		}
	}
}

// Whatever is pasted, nothing falls over, and every line is counted at most once.
func FuzzColumns(f *testing.F) {
	f.Add("0;90\n1;80")
	f.Add("t,T\n0,5 108,4\n−1\t2")
	f.Fuzz(func(t *testing.T, text string) {
		var x, y [8]float64
		n, bad, first := Columns(text, x[:], y[:])
		lines := 1
		for _, c := range text {
			if c == '\n' {
				lines++
			}
		}
		if n > 8 || n+bad > lines || first > lines || (first == 0) != (bad == 0) {
			t.Fatalf("%q: %d rows, %d bad, first %d", text, n, bad, first)
		}
		for i := range n {
			if math.IsNaN(x[i]+y[i]) || math.IsInf(x[i]+y[i], 0) {
				t.Fatalf("%q: no number", text)
			}
		}
	})
}

func BenchmarkFitDecay(b *testing.B) {
	var x, y [60]float64
	for i := range x {
		x[i] = float64(i)
		y[i] = 23 + 70*math.Exp(-x[i]/8) + 0.3*math.Sin(5*x[i])
	}
	for range b.N {
		FitDecay(x[:], y[:], math.NaN())
	}
}
