package calc

import "twistbench/calc/quantity"

// Stroking is what was typed for the load, in SI; NaN where a number is unknown.
type Stroking struct {
	_ [0]func() // these are not compared

	Load quantity.Mass // that hangs on one muscle
}

// stroke works out how far and how hard the muscle pulls.
func stroke(p *Plan, r *Results) {}
