package craft

// chord searches where a falling function is 0 between two bounds, along chords; the bound that stays while the other moves counts half
// (regula falsi, the Illinois way). Begin with both bounds and the values there, ask for next, give its value to take.
type chord struct {
	low, high   float64
	least, most float64 // the values there: least is over 0, most is not
	side        int
}

// next returns where the function may be 0.
func (c *chord) next() float64 { return c.low + (c.high-c.low)*c.least/(c.least-c.most) }

// take narrows the bounds to what the function is at t.
//
//go:noinline
func (c *chord) take(t, f float64) {
	if f > 0 {
		c.low, c.least = t, f
		if c.side > 0 {
			c.most /= 2
		}
		c.side = 1
	} else {
		c.high, c.most = t, f
		if c.side < 0 {
			c.least /= 2
		}
		c.side = -1
	}
}
