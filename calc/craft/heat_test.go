package craft

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"twistbench/calc/quantity"
)

const minutes = quantity.Time(60)

func TestHeatRows(t *testing.T) {
	for _, row := range []struct {
		name      string
		got, want float64
		abs       float64
	}{
		// by hand: dial 150 is 160 °C, dial 200 is 212 °C, so 1.04 to a step; 175 + (180 − 186)/1.04
		{"dial of two readings", float64(Dial(180+ice, 175+ice, 186+ice, 1.04) - ice), 169.230769230769, 1e-9},
		// by hand: an oven found 28 °C too hot at 150, one reading: 150 − 28
		{"dial of one reading", float64(Dial(150+ice, 150+ice, 178+ice, 1) - ice), 122, 1e-9},
		// the same oven, dial and readings in Fahrenheit: 302 − 50.4
		{"dial in Fahrenheit", float64(Dial(150+ice, 150+ice, 178+ice, 1))*9/5 - 459.67, 251.6, 1e-9},
		// common practice, no source: nylon 6,6 at about 180 °C; 10 K over; its melting from 255 °C
		{"peak", float64(Peak(180+ice, 10) - ice), 190, 1e-9},
		{"margin", float64(Margin(Heatings[1].Melt.Low, Peak(180+ice, 10))), 65, 1e-9},
		{"over it", float64(Margin(Heatings[2].Melt.Low, 130+ice)), -20, 1e-9},
		// by hand: 300 mm less a gap of 10 holds one of 140 + 10 or four of 60 + 10; 250 holds three of 60 + 10 or one of 140 + 10
		{"frames", float64(Frames(300*mm, 250*mm, 2, 140*mm, 60*mm, 10*mm)), 8, 0},
		{"frames turned", float64(Frames(250*mm, 300*mm, 2, 140*mm, 60*mm, 10*mm)), 8, 0},
		{"frames that just fit", float64(Frames(300*mm, 70*mm, 1, 135*mm, 50*mm, 10*mm)), 2, 0},
		{"a hair too long", float64(Frames(300*mm, 70*mm, 1, 135.001*mm, 50*mm, 10*mm)), 1, 0},
		{"too large", float64(Frames(300*mm, 300*mm, 3, 301*mm, 50*mm, 0)), 0, 0},
		{"gap larger than the oven", float64(Frames(300*mm, 300*mm, 3, 50*mm, 50*mm, 400*mm)), 0, 0},
		// the workshop of scenario S2: 4 frames of 4 pieces; 32 pieces are two loads, 16 are one; 3 + 5 + 25 in the oven and 10 beside it
		{"S2 pieces per load", float64(PerLoad(4, 4)), 16, 0},
		{"S2 plan A, loads", float64(Loads(32, 16)), 2, 0},
		{"S2 plan B, loads", float64(Loads(16, 16)), 1, 0},
		{"S2 a load", float64(OneStageTime(0, 3*minutes, 5*minutes, 25*minutes, 10*minutes, 0) / minutes), 43, 1e-9},
		{"one more", float64(Loads(17, 16)), 2, 0},
		// common practice, no source: two holds of an hour, cooling between, a day of rest: 15 + 2 × 8 + 60 + 30 + 10 + 60 + 30 + 1440
		{"two stages", float64(TwoStageTime(15*minutes, 3*minutes, 5*minutes, 60*minutes, 30*minutes, 10*minutes, 60*minutes, 30*minutes, 1440*minutes) / minutes), 1661, 1e-9},
	} {
		assert.InDelta(t, row.want, row.got, row.abs, row.name)
	}
	assert.True(t, math.IsNaN(float64(Loads(16, 0))), "nothing goes in")
	assert.True(t, math.IsNaN(float64(Loads(16, quantity.Count(quantity.NaN)))))
	assert.True(t, math.IsNaN(float64(Frames(300*mm, quantity.Length(quantity.NaN), 1, 100*mm, 50*mm, 0))))
}

// Frames put down one by one, along the width and along the depth, on a grid of whole millimetres.
func TestFramesByPlacing(t *testing.T) {
	place := func(space, l, g int) (n int) {
		for at := g; at+l+g <= space; at += l + g {
			n++
		}
		return n
	}
	for _, w := range []int{180, 300, 455} {
		for _, d := range []int{150, 310} {
			for _, l := range []int{60, 95, 140, 295} {
				for _, b := range []int{20, 45, 70} {
					for _, g := range []int{0, 5, 20} {
						want := max(place(w, l, g)*place(d, b, g), place(w, b, g)*place(d, l, g))
						got := Frames(quantity.Length(w)*mm, quantity.Length(d)*mm, 1, quantity.Length(l)*mm, quantity.Length(b)*mm, quantity.Length(g)*mm)
						assert.Equal(t, quantity.Count(want), got, "%d × %d, frames %d × %d, gap %d", w, d, l, b, g)
					}
				}
			}
		}
	}
}

// The values of the reference table of coiled-fibre actuators, 1.2, °C, and what else is from memory.
func TestHeatings(t *testing.T) {
	assert.Len(t, Polymers, len(Heatings))
	for i, want := range []struct {
		key                              string
		melt, meltTo, glass, from, until float64
		read                             bool // the melting point was read, not recalled
	}{
		{"nylon-6", 220, 220, 50, 140, 180, true},
		{"nylon-66", 255, 265, 50, 120, 210, false},
		{"polyethylene", 110, 145, -130, 80, 125, false},
		{"polyester", 250, 265, 70, 160, 220, false},
		{"pvdf", 165, 175, -40, quantity.NaN, quantity.NaN, false},
		{"other", quantity.NaN, quantity.NaN, quantity.NaN, quantity.NaN, quantity.NaN, false},
	} {
		h := &Heatings[i]
		assert.Equal(t, want.key, Polymers[i].Key)
		for _, v := range [][2]float64{
			{want.melt, float64(h.Melt.Low)}, {want.meltTo, float64(h.Melt.High)}, {want.glass, float64(h.Glass.Low)},
			{want.from, float64(h.Setting.Low)}, {want.until, float64(h.Setting.High)},
		} {
			if math.IsNaN(v[0]) {
				assert.True(t, math.IsNaN(v[1]), want.key)
			} else {
				assert.InDelta(t, v[0], v[1]-ice, 1e-9, want.key)
			}
		}
		assert.Equal(t, want.read, h.MeltSource.Mark == Read, want.key)
		assert.False(t, h.Glass.High < h.Glass.Low || h.Setting.High < h.Setting.Low || h.Setting.High > h.Melt.High, want.key)
		assert.NotNil(t, h.GlassSource)
		assert.NotNil(t, h.SettingSource)
	}
}
