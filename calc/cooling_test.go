package calc

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"

	"twistbench/calc/craft"
	"twistbench/calc/quantity"
	"twistbench/calc/trial"
)

// An own timed trial, from the readings to what replaces the book's losses: a muscle in air cools by the book, is read once a second to a tenth
// of a kelvin, and the fit makes a body of it that cools alike and settles alike where the trial was, an eighth aside: its losses no longer
// change with the temperature. (The book's own doubt is a fifth and more.)
func TestOwnCoolingTrial(t *testing.T) {
	const ice = 273.15
	for _, thickness := range []float64{0.3e-3, 0.5e-3, 0.8e-3} {
		d := quantity.Length(thickness)
		l := quantity.Length(0.1)
		od, fibre := 2.4*d, l/(1.3*d)*craft.TurnLength(1.4*d, 1.3*d)
		b := craft.InRoom(craft.Still, 22+ice, 0)
		b.Heat = craft.SpecificHeats[1].Of(craft.FibreMass(craft.Area(d), 1140, 1, fibre), 0)
		book, _ := craft.Ends(b, od, l, d, fibre, 0)
		var x, y [40]float64
		r := rand.New(rand.NewPCG(7, uint64(1e6*thickness)))
		for i := range x {
			x[i] = 12 + float64(i)
			y[i] = math.Round(10*(float64(book.After(100+ice, 0, quantity.Time(i)))+0.1*r.NormFloat64())) / 10
		}
		fit := trial.FitDecay(x[:], y[:], 22+ice)
		assert.Less(t, fit.ConstantDoubt/fit.Constant, 0.02)
		own := book
		own.Measured(craft.TrialLoss(own.Heat.At(61+ice), quantity.Time(fit.Constant)))
		for _, to := range []quantity.Temperature{70, 50, 40} {
			assert.InEpsilon(t, float64(book.TimeTo(100+ice, to+ice, 0)), float64(own.TimeTo(100+ice, to+ice, 0)), 0.12, "%g mm to %g", 1e3*thickness, float64(to))
		}
		watts := book.Loss(80 + ice)
		assert.InDelta(t, 80+ice, float64(own.Steady(watts)), 0.12*58)
	}
}

// What makes a cooling curve doubtful: rows that are colder than the room.
func TestColderThanTheRoom(t *testing.T) {
	for rows, want := range map[string]bool{
		"0 15\n5 18\n10 19":               true,  // it warms
		"0 19.1\n5 19.6\n10 19.8":         true,  // by little, but all of it is under the room's 20 °C
		"0 80\n5 45\n10 25\n20 12":        true,  // it ends under the room's
		"0 80\n5 56\n10 42\n60 19.2":      false, // within a thermometer's kelvin
		"0 80\n5 56\n10 42\n20 28\n40 21": false,
	} {
		st := work(t, "drive.room=20 °C&drive.curve="+rows)
		assert.Equal(t, want, st.Out.warmth.colder(st.Plan.Drive.Room), rows)
	}
}
