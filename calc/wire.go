package calc

import "twistbench/calc/quantity"

// The words of WireRoute.
const (
	RouteNone quantity.Word = iota
	RouteTwisted
	RouteWrapped
	RouteFibre
)

// Wiring is what was typed for the wire and its supply, in SI; NaN where a number is unknown.
type Wiring struct {
	_ [0]func() // these are not compared

	Route quantity.Word // how the current goes through the muscle
}

// wire works out the answers of the wire and its supply.
func wire(p *Plan, r *Results) {}
