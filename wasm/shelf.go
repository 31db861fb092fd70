//go:build js && wasm

package main

import (
	"strconv"

	"twistbench/calc"
	"twistbench/calc/quantity"
)

// The device keeps one entry for each plan, which of them was open, and how units are shown. Storage may be blocked or full; then nothing is
// kept, and keep says so.

const (
	planPrefix = "twistbench/plan/"
	openKey    = "twistbench/open"
	deviceKey  = "twistbench/units"
	clearedKey = "twistbench/cleared"
)

// stored returns a text that is kept.
//
//go:noinline
func stored(key string) (text string, ok bool) { return received(kept(key)) }

// planKey returns the entry of a plan.
//
//go:noinline
func planKey(n int) string { return planPrefix + decimal(n) }

// plans returns the numbers of the kept plans, oldest first.
func plans() (ns []int) {
	for i := int32(0); ; i++ {
		key, ok := received(keyAt(i))
		if !ok {
			return ns
		}
		n := number(key)
		if n == 0 {
			continue
		}
		ns = append(ns, n)
		for j := len(ns) - 1; j > 0 && ns[j-1] > n; j-- {
			ns[j-1], ns[j] = n, ns[j-1]
		}
	}
}

// number returns the number of a kept plan's key, 0 for any other key.
func number(key string) int {
	rest, ok := quantity.CutPrefix(key, planPrefix)
	if !ok {
		return 0
	}
	n := 0
	for i := range len(rest) {
		if rest[i] < '0' || rest[i] > '9' || i == 9 {
			return 0
		}
		n = n*10 + int(rest[i]-'0')
	}
	return n
}

//go:noinline
func decimal(n int) string { return string(strconv.AppendInt(nil, int64(n), 10)) }

// unused returns the number for a new plan.
func unused() int {
	n := 1
	for _, taken := range plans() {
		n = max(n, taken+1)
	}
	return n
}

func lastOpen() (key string, ok bool) {
	key, ok = stored(openKey)
	if !ok || number(key) == 0 {
		return "", false
	}
	_, ok = stored(key)
	return key, ok
}

func setOpen(key string) {
	if key == "" {
		drop(openKey)
		return
	}
	keep(openKey, key)
}

// lastCleared returns what a plan was before it was cleared, and the plan's key.
func lastCleared() (was calc.Sheet, key string, ok bool) {
	kept, ok := stored(clearedKey)
	if !ok {
		return was, "", false
	}
	key, was, _ = calc.ParseKept(kept)
	return was, key, true
}
