//go:build js && wasm

// Kernel is the heat balance of the core, and what a keystroke asks of it, to be timed beside the same in plain JavaScript: see kernel.js.
package main

import (
	"twistbench/calc/craft"
	"twistbench/calc/quantity"
)

func main() { select {} }

var hot, cool = bodies()

// bodies is a hanging coil of 0.1 m of 0.5 mm nylon at both ends, in a room of 20 °C.
func bodies() (hot, cool craft.Body) {
	const d, od, l, f = 0.5e-3, 1.2e-3, 0.1, 0.45
	b := craft.InRoom(craft.Hanging, 293.15, 0)
	b.Heat = craft.SpecificHeats[1].Of(craft.FibreMass(craft.Area(d), 1140, 1, f), 0)
	return craft.Ends(b, od, l, d, f, craft.StillUnsure)
}

// band works out, so many times, for both ends where 1 W settles, how long heating to 70 °C and cooling to 40 °C take, the swing of a cycle, and 60
// points of it. It returns their sum, to be compared.
//
//go:wasmexport band
func band(times int32) (sum float64) {
	var list [60]quantity.Temperature
	for range times {
		sum = 0
		for _, b := range [...]*craft.Body{&hot, &cool} {
			watts := b.Loss(373.15)
			low, high := b.Cycle(b, 4, 10, watts)
			sum += float64(b.Steady(watts)+low+high) + float64(b.TimeTo(293.15, 343.15, watts)+b.TimeTo(343.15, 313.15, 0))
			b.Curve(list[:30], low, watts, 4.0/30)
			b.Curve(list[30:], high, 0, 10.0/30)
			for _, t := range list {
				sum += float64(t)
			}
		}
	}
	return sum
}
