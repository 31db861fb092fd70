package craft

import (
	"math"

	"twistbench/calc/quantity"
)

// How a body warms and cools: C(T) dT/dt = P(T) − losses(T), from moment to moment by an explicit Runge-Kutta pair of third and second order
// (its source is StepPair), with steps as long as their difference allows and a cubic between them.

// stepError (K) is how far the two orders may differ in one step. What is lost or gained fades as the body settles, so that a curve is within
// some of these of the true one.
const stepError = 0.003

// run is one heating or cooling on its way: where it is, and where the step before began.
type run struct {
	body           *Body
	watts          quantity.Power
	at, temp, rate float64 // s, K, K/s
	was            struct{ at, temp, rate float64 }
	next           float64 // length of the next step, s; 0 once the body has settled
}

func (b *Body) start(from quantity.Temperature, watts quantity.Power) (r run) {
	r.body, r.watts = b, watts
	r.temp = float64(from)
	r.rate = b.rate(watts, r.temp)
	if unknown(r.rate) {
		r.temp = r.rate
	} else if r.rate != 0 {
		r.next = 0.5 / math.Abs(r.rate) // half a kelvin
	}
	return r
}

// try takes a step of h (s) from where a run is: the temperature and rate then (K, K/s), and how far the two orders differ (K).
func (r *run) try(h float64) (temp, rate, off float64) {
	k1 := r.rate
	k2 := r.body.rate(r.watts, r.temp+h/2*k1)
	k3 := r.body.rate(r.watts, r.temp+3*h/4*k2)
	temp = r.temp + h/9*(2*k1+3*k2+4*k3)
	rate = r.body.rate(r.watts, temp)
	return temp, rate, h / 72 * math.Abs(-5*k1+6*k2+8*k3-9*rate)
}

// step goes one step on that is sure to stepError. It reports false, and goes nowhere, where the body has settled or a number is unknown.
func (r *run) step() bool {
	for range 50 {
		h := r.next
		if !(h > 0) {
			break
		}
		temp, rate, off := r.try(h)
		if !(off < 1e6) { // beyond all sense
			r.next = h / 10
			continue
		}
		grow := 0.9 * power(stepError/off, 1.0/3)
		r.next = h * max(0.2, min(5, grow))
		if off > stepError {
			continue
		}
		r.was.at, r.was.temp, r.was.rate = r.at, r.temp, r.rate
		r.at, r.temp, r.rate = r.at+h, temp, rate
		// A rate that falls by so much of the temperature says how far it is still to go. Steps no longer than 1.5 of its inverse close in
		// without a swing; what is left of a body that has settled is not worth steps that could be no longer than before.
		fall := (r.was.rate - rate) / (temp - r.was.temp)
		if fall > 0 {
			r.next = min(r.next, 1.5/fall)
		}
		if !(math.Abs(rate) > stepError/2*fall) {
			r.next = 0
		}
		return true
	}
	return false
}

// between returns the temperature (K) at a time t (s) within the last step: the cubic that has its temperatures and rates at both ends.
func (r *run) between(t float64) float64 {
	h := r.at - r.was.at
	if !(h > 0) {
		return r.temp + 0*t
	}
	x := (t - r.was.at) / h
	d := r.temp - r.was.temp
	a, b := h*r.was.rate-d, d-h*r.rate
	return r.was.temp + x*(d+(1-x)*(a*(1-x)+b*x))
}

// Curve puts the temperatures (K) of a body that begins at from (K) and is heated with watts (W) into the places of a list, one for each
// further every (s), and returns the last.
func (b *Body) Curve(into []quantity.Temperature, from quantity.Temperature, watts quantity.Power, every quantity.Time) quantity.Temperature {
	r := b.start(from, watts)
	for i := range into {
		t := float64(every) * float64(i+1)
		for r.at < t && r.step() {
		}
		into[i] = quantity.Temperature(r.between(min(t, r.at)))
	}
	if len(into) > 0 {
		from = into[len(into)-1]
	}
	return from
}

// After returns the temperature (K) of a body that was at from (K) when it has been heated with watts (W) for t (s).
func (b *Body) After(from quantity.Temperature, watts quantity.Power, t quantity.Time) quantity.Temperature {
	var one [1]quantity.Temperature
	return b.Curve(one[:], from, watts, t)
}

// TimeTo returns how long (s) a body takes from one temperature to another (both K), heated with watts (W) or, with 0, left to cool; infinite
// where it never gets there.
func (b *Body) TimeTo(from, to quantity.Temperature, watts quantity.Power) quantity.Time {
	r := b.start(from, watts)
	goal, way := float64(to), float64(to-from)
	if way == 0 {
		return 0
	}
	if unknown(way) || unknown(r.rate) {
		return quantity.Time(quantity.NaN)
	}
	for r.rate*way > 0 && r.step() {
		if (goal-r.temp)*way > 0 {
			continue
		}
		low, high := r.was.at, r.at
		for range 40 {
			mid := (low + high) / 2
			if (goal-r.between(mid))*way > 0 {
				low = mid
			} else {
				high = mid
			}
		}
		return quantity.Time(high)
	}
	return quantity.Time(math.Inf(1))
}

// Cycle returns the temperatures (K) between which a body comes to swing when it is heated with watts (W) for on and then, as it is while it
// cools, not for off (both s), again and again: low when a heating begins, high when it ends. Both bodies are the same one, cool what is
// around it while it cools: where surroundings alone warm it, that is what changes. NaN where it doesn't settle.
//
// It is a search for the low one: that from which one cycle leads back to it.
func (b *Body) Cycle(cool *Body, on, off quantity.Time, watts quantity.Power) (low, high quantity.Temperature) {
	var c chord
	c.low, c.high = float64(cool.Steady(0)), min(hottest, float64(b.Steady(watts)))
	c.least, c.most = b.gain(cool, on, off, watts, c.low), b.gain(cool, on, off, watts, c.high)
	was := c.low
	switch {
	case unknown(c.least + c.most):
		was = quantity.NaN
	case !(c.least > 0): // cold again at the end of each cycle
	case !(c.most < 0): // as hot as it gets
		was = c.high
	default:
		for range 30 {
			t := c.next()
			step := t - was
			was = t
			if math.Abs(step) < stepError {
				break
			}
			c.take(t, b.gain(cool, on, off, watts, t))
		}
	}
	low = quantity.Temperature(was)
	return low, b.After(low, watts, on)
}

// gain returns how much warmer (K) a body is after one cycle that it begins at t (K).
//
//go:noinline
func (b *Body) gain(cool *Body, on, off quantity.Time, watts quantity.Power, t float64) float64 {
	from := quantity.Temperature(t)
	return float64(cool.After(b.After(from, watts, on), 0, off) - from)
}
