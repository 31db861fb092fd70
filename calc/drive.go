package calc

import "twistbench/calc/quantity"

// Driving is what was typed for heating and cooling, in SI; NaN where a number is unknown.
type Driving struct {
	_ [0]func() // these are not compared

	Room, Target quantity.Temperature // cold and hot
}

// drive works out how hot it gets, and how fast.
func drive(p *Plan, r *Results) {}
