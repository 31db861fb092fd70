package craft

import (
	"math"

	"twistbench/calc/quantity"
)

// Way is how a muscle loses its heat.
type Way uint8

const (
	Still   Way = iota // lying in still air
	Hanging            // hanging in still air
	Fan                // across a stream of air
	Given              // with a coefficient that is known: in water, or from an own trial
)

// Outside says which bounds of a heat balance a case leaves: a bit for each of OutsideKeys.
type Outside uint8

const (
	OutsideAir     Outside = 1 << iota // film temperature out of 250 to 600 K
	OutsideStill                       // Rayleigh number out of 1e-5 to 1e12
	OutsideHanging                     // more slender than the thinnest wire compared with
	OutsideFan                         // Reynolds times Prandtl under 0.2: the fan is too slow to count
	OutsideLumped                      // Biot number over 0.1: the inside lags behind
)

// OutsideKeys are the keys of these bounds, in the order of their bits.
var OutsideKeys = [...]string{"air-range", "still-range", "hanging-range", "fan-range", "lumped-range"}

// Most of curvature with which NusseltUpright was compared: a vertical wire of 0.1 mm and half a metre.
const mostCurvature = 170

// Body is a muscle that is warm all through, and where it is. Losses are for Area in all, so that Diameter is only the size that the air
// flows about.
type Body struct {
	_ [0]func() // bodies are not compared

	Way         Way
	Air, Walls  quantity.Temperature // K; walls are what it radiates to
	Pressure    float64              // of the air, Pa
	Speed       float64              // of the stream, m/s
	Coefficient float64              // W/(m²·K), for Given
	Share       quantity.Fraction    // of what the correlation says that is lost to the air, 1 for all
	Emissivity  quantity.Fraction

	Diameter, Height quantity.Length // m; the height of what hangs
	Area             quantity.Area   // m²
	Heat             Capacity        // J/K

	Tempco  quantity.TemperatureCoefficient // change of the resistance per kelvin over Air, 1/K
	Current bool                            // the current is kept, not the voltage
}

// InRoom returns a body, without size yet, in a room of air and walls at t (K) and an altitude h (m), with nothing changing its resistance.
func InRoom(w Way, t quantity.Temperature, h quantity.Length) Body {
	return Body{Way: w, Air: t, Walls: t, Pressure: PressureAt(h), Share: 1, Emissivity: EmissivityNylon}
}

// Ends returns the two ends between which the losses of a coil b lie: a smooth cylinder of its outside diameter od and length l, and turns
// standing apart, a fibre of thickness t and length f (all m). The book's coefficient counts less unsure for the hot end and more for the cool
// one. Turns that stand apart lie across the flow also in a hanging coil, and radiate with all of their surface. A wide open coil has more
// surface as a cylinder than its fibre has: the hot end is always the one that loses less.
func Ends(b Body, od, l, t, f quantity.Length, unsure quantity.Fraction) (hot, cool Body) {
	two := [2]Body{b}
	EndsOf(&two, od, l, t, f, unsure)
	return two[0], two[1]
}

// EndsOf makes the first of two bodies, which has no size yet, the hot end and the other one the cool end: see Ends.
func EndsOf(b *[2]Body, od, l, t, f quantity.Length, unsure quantity.Fraction) {
	b[1] = b[0]
	hot, cool := &b[0], &b[1]
	hot.Diameter, hot.Height, hot.Area = od, l, quantity.Area(math.Pi*od*l)
	cool.Diameter, cool.Height, cool.Area = t, l, quantity.Area(math.Pi*t*f)
	if cool.Way == Hanging {
		cool.Way = Still
	}
	if probe := hot.Air + 50; hot.Loss(probe) > cool.Loss(probe) {
		b[0], b[1] = b[1], b[0]
	}
	hot.Share *= 1 - unsure
	cool.Share *= 1 + unsure
}

// InWater returns a body, without size yet, in stirred water at t (K).
func InWater(t quantity.Temperature) Body {
	return Body{Way: Given, Air: t, Walls: t, Share: 1, Coefficient: StirredWater}
}

// Measured makes a body with its size lose g (W/K) for each kelvin over the air, as an own trial found it, instead of what the book says.
func (b *Body) Measured(g float64) {
	b.Way, b.Coefficient, b.Share, b.Emissivity = Given, g/float64(b.Area), 1, 0
}

// Film returns the coefficient (W/(m²·K)) of the air about a surface at t (K), without radiation and before Share, and which bounds that
// leaves.
func (b *Body) Film(t quantity.Temperature) (h float64, out Outside) {
	if b.Way == Given {
		return b.Coefficient, 0
	}
	film := (t + b.Air) / 2
	if !(film >= coldestAir && film <= hottestAir) {
		out = OutsideAir
	}
	a := AirAt(film, b.Pressure)
	pr, d := a.Prandtl(), float64(b.Diameter)
	rise := max(0.01, math.Abs(float64(t-b.Air))) // a coefficient of nothing is of no use
	if b.Way == Hanging {
		l := float64(b.Height)
		gr := a.Grashof(rise, l)
		if curvature(gr, l/d) > mostCurvature {
			out |= OutsideHanging
		}
		return NusseltUpright(gr, pr, l/d) * a.Conductivity / l, out
	}
	ra := a.Grashof(rise, d) * pr
	n := NusseltLying(ra, pr)
	if b.Way == Fan {
		re := b.Speed * d / a.Viscosity
		if !(re*pr >= 0.2) {
			out |= OutsideFan
		}
		n = max(n, NusseltStream(re, pr))
	} else if !(ra >= 1e-5 && ra <= 1e12) {
		out |= OutsideStill
	}
	return n * a.Conductivity / d, out
}

// Loss returns what a body at t (K) loses (W) to air and walls; negative where it is warmed by them.
func (b *Body) Loss(t quantity.Temperature) quantity.Power {
	h, _ := b.Film(t)
	return quantity.Power(float64(b.Area) * (float64(b.Share)*h*float64(t-b.Air) + Radiation(b.Emissivity, t, b.Walls)*float64(t-b.Walls)))
}

// leastOhms is the share of its cold ohms that a heater is taken to keep, however hot: none falls in a straight line to nothing. A judgement, so
// that one that runs away is seen to, in finite time.
const leastOhms = 0.05

// Power returns what a heater of watts (W) when cold gives at t (K), as its resistance changes with Tempco, but not to less than a twentieth.
func (b *Body) Power(watts quantity.Power, t quantity.Temperature) quantity.Power {
	if b.Tempco == 0 {
		return watts
	}
	ohms := quantity.Power(max(leastOhms, 1+float64(b.Tempco)*float64(t-b.Air))) // of the cold ones
	if b.Current {
		return watts * ohms
	}
	return watts / ohms
}

// excess returns what a body at t (K) gets over what it loses, W.
func (b *Body) excess(watts quantity.Power, t float64) float64 {
	return float64(b.Power(watts, quantity.Temperature(t)) - b.Loss(quantity.Temperature(t)))
}

// rate returns how fast a body at t (K) warms, K/s.
func (b *Body) rate(watts quantity.Power, t float64) float64 {
	return b.excess(watts, t) / b.Heat.At(quantity.Temperature(t))
}

// hottest (K) is where a search for a balance ends: nothing of a muscle is left there.
const hottest = 5000

// Steady returns the temperature (K) at which a body heated with watts (W) when cold loses all it gets: what it comes to when it is left on.
// Infinite where nothing holds it under 5000 K, as when a kept current heats a resistance that rises ever faster, or a kept voltage one that falls
// as it warms. There may then be several such temperatures; it is the lowest, to which it comes from the cold. It is a search.
func (b *Body) Steady(watts quantity.Power) quantity.Temperature {
	var c chord
	c.high = float64(min(b.Air, b.Walls))
	c.most = b.excess(watts, c.high)
	if c.most == 0 {
		return quantity.Temperature(c.high)
	}
	if !(c.most > 0) {
		return quantity.Temperature(quantity.NaN)
	}
	fall := 0.0 // over how many kelvins its ohms fall
	if b.Tempco < 0 {
		fall = -1 / float64(b.Tempco)
	}
	for step := 20.0; c.most > 0; step *= 2 {
		if !(c.high < hottest) {
			return quantity.Temperature(math.Inf(1))
		}
		c.low, c.least = c.high, c.most
		if fall > 0 && c.high < float64(b.Air)+fall {
			step = min(step, fall/50) // not to skip over a balance
		}
		c.high += step
		c.most = b.excess(watts, c.high)
	}
	if fall > 0 && c.low >= float64(b.Air)+fall {
		return quantity.Temperature(math.Inf(1)) // it ran away through all that its ohms can fall
	}
	was := c.high
	for range 60 {
		t := c.next()
		if math.Abs(t-was) < 1e-6 {
			return quantity.Temperature(t)
		}
		was = t
		c.take(t, b.excess(watts, t))
	}
	return quantity.Temperature(quantity.NaN)
}

// Bounds returns which bounds a body at t (K) leaves, with fibre of thickness d (m) and conductivity k (W/(m·K)).
func (b *Body) Bounds(t quantity.Temperature, d quantity.Length, k float64) Outside {
	_, out := b.Film(t)
	if b.Biot(t, d, k) > MostBiot {
		out |= OutsideLumped
	}
	return out
}

// Biot returns the Biot number of a body at t (K), with fibre of thickness d (m) and conductivity k (W/(m·K)).
func (b *Body) Biot(t quantity.Temperature, d quantity.Length, k float64) quantity.Number {
	h, _ := b.Film(t)
	return Biot(float64(b.Share)*h+Radiation(b.Emissivity, t, b.Walls), d, k)
}
