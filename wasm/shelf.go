//go:build js && wasm

package main

import (
	"strconv"

	"twistbench/calc"
	"twistbench/calc/quantity"

	"github.com/hack-pad/safejs"
)

// shelf is what the device keeps: one entry for each plan, which of them was open, and how units are shown. Storage may be blocked or
// full; then nothing is kept, and set says so. So its errors are its own, and looked at here.
type shelf struct {
	edge
	storage safejs.Value // null where it is blocked
}

const (
	planPrefix = "twistbench/plan/"
	openKey    = "twistbench/open"
	deviceKey  = "twistbench/units"
	clearedKey = "twistbench/cleared"
)

// ask calls a method of the storage; it reports whether that could be done.
//
//go:noinline
func (s *shelf) ask(method string, args ...any) (v safejs.Value, ok bool) {
	s.err = nil
	v = s.call(s.storage, method, args...)
	return v, s.err == nil
}

// read returns a text that the storage answers with.
//
//go:noinline
func (s *shelf) read(method string, arg any) (text string, ok bool) {
	v, _ := s.ask(method, arg)
	if v.Type() != safejs.TypeString {
		return "", false
	}
	return s.text(v), s.err == nil
}

//go:noinline
func (s *shelf) get(key string) (text string, ok bool) { return s.read("getItem", key) }

// set keeps a text; it reports whether it is kept.
//
//go:noinline
func (s *shelf) set(key, text string) bool {
	_, ok := s.ask("setItem", key, text)
	return ok
}

//go:noinline
func (s *shelf) remove(key string) { s.ask("removeItem", key) } // what can't be removed stays listed

// planKey returns the entry of a plan.
//
//go:noinline
func planKey(n int) string { return planPrefix + decimal(n) }

// plans returns the numbers of the kept plans, oldest first.
func (s *shelf) plans() (ns []int) {
	for i := 0; ; i++ {
		key, ok := s.read("key", i)
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
func (s *shelf) unused() int {
	n := 1
	for _, taken := range s.plans() {
		n = max(n, taken+1)
	}
	return n
}

func (s *shelf) lastOpen() (key string, ok bool) {
	key, ok = s.get(openKey)
	if !ok || number(key) == 0 {
		return "", false
	}
	_, ok = s.get(key)
	return key, ok
}

func (s *shelf) setOpen(key string) {
	if key == "" {
		s.remove(openKey)
		return
	}
	s.set(openKey, key)
}

// lastCleared returns what a plan was before it was cleared, and the plan's key.
func (s *shelf) lastCleared() (was calc.Sheet, key string, ok bool) {
	kept, ok := s.get(clearedKey)
	if !ok {
		return was, "", false
	}
	key, was, _ = calc.ParseKept(kept)
	return was, key, true
}
