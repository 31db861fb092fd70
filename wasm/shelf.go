//go:build js && wasm

package main

import (
	"slices"
	"strconv"
	"strings"

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
)

func (s *shelf) open(window safejs.Value) {
	storage, err := window.Get("localStorage") // throws where storage is blocked
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
		keys = append(keys, planPrefix+strconv.Itoa(n))
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
		if key, err := v.String(); err == nil && number(key) > 0 {
			ns = append(ns, number(key))
		}
	}
	slices.Sort(ns)
	return ns
}

// number returns the number of a kept plan's key, 0 for any other key.
func number(key string) int {
	rest, ok := strings.CutPrefix(key, planPrefix)
	if !ok {
		return 0
	}
	n, err := strconv.Atoi(rest)
	if err != nil || n < 1 {
		return 0
	}
	return n
}

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
