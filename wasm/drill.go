//go:build js && wasm

package main

import (
	"twistbench/calc"
	"twistbench/calc/quantity"
)

// drill times a drill by taps, one at every so many turns: what is typed is the mean time between them.
type drill struct {
	first, last float64 // ms, by the browser's clock
	taps        int
}

// A pause of so many ms between taps begins the timing anew.
const longPause = 60e3

func (a *app) tapped() {
	now := elapsed()
	d := &a.drill
	if d.taps == 0 || now-d.last > longPause {
		*d = drill{first: now, last: now, taps: 1}
		a.tell("say.tap", "")
		return
	}
	d.last = now
	mean := (now - d.first) / float64(d.taps) / 1000
	d.taps++
	a.take(calc.TwistTimed, string(quantity.Append(nil, mean, nil, 4, '.')), calc.TwistTimed)
}
