//go:build js && wasm

package main

import (
	"strconv"

	"twistbench/calc"
	"twistbench/calc/quantity"

	"github.com/hack-pad/safejs"
)

// shelf is what the device keeps: one entry for each plan, which of them was open, and how units are shown. Storage may be blocked or
// full; then nothing is kept, and works says so.
type shelf struct {
	storage safejs.Value
	works   bool
}

const (
	planPrefix = "twistbench/plan/"
	openKey    = "twistbench/open"
	deviceKey  = "twistbench/units"
	clearedKey = "twistbench/cleared"
)

func (s *shelf) open(edge safejs.Value) {
	storage, err := edge.Get("shelf") // null where storage is blocked
	s.storage = storage
	s.works = err == nil && storage.Type() == safejs.TypeObject
}

func (s *shelf) get(key string) (text string, ok bool) {
	if !s.works {
		return "", false
	}
	v, err := s.storage.Call("getItem", key)
	if err != nil || v.Type() != safejs.TypeString {
		return "", false
	}
	text, err = v.String()
	return text, err == nil
}

// set keeps a text; it reports whether it is kept.
func (s *shelf) set(key, text string) bool {
	if !s.works {
		return false
	}
	_, err := s.storage.Call("setItem", key, text)
	return err == nil
}

func (s *shelf) remove(key string) {
	if s.works {
		_, _ = s.storage.Call("removeItem", key) // what can't be removed stays listed
	}
}

// plans returns the keys of the kept plans, oldest first.
func (s *shelf) plans() (keys []string) {
	for _, n := range s.numbers() {
		keys = append(keys, planPrefix+decimal(n))
	}
	return keys
}

func (s *shelf) numbers() (ns []int) {
	if !s.works {
		return nil
	}
	for i := 0; ; i++ {
		v, err := s.storage.Call("key", i)
		if err != nil || v.Type() != safejs.TypeString {
			break
		}
		key, err := v.String()
		n := number(key)
		if err != nil || n == 0 {
			continue
		}
		ns = append(ns, n)
		for j := len(ns) - 1; j > 0 && ns[j-1] > n; j-- {
			ns[j-1], ns[j] = n, ns[j-1]
		}
	}
	return ns
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

func decimal(n int) string { return string(strconv.AppendInt(nil, int64(n), 10)) }

// unused returns the number for a new plan.
func (s *shelf) unused() int {
	n := 1
	for _, taken := range s.numbers() {
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

func (s *shelf) device() string         { units, _ := s.get(deviceKey); return units }
func (s *shelf) setDevice(units string) { s.set(deviceKey, units) }

// lastCleared returns what a plan was before it was cleared, and the plan's key.
func (s *shelf) lastCleared() (was calc.Sheet, key string, ok bool) {
	kept, ok := s.get(clearedKey)
	if !ok {
		return was, "", false
	}
	key, was, _ = calc.ParseKept(kept)
	return was, key, true
}
