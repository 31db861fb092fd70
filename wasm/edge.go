//go:build js && wasm

package main

import "github.com/hack-pad/safejs"

// edge is the way to the browser. It holds the first error that the browser gave, and asks nothing more while it holds one: what is asked for
// is undefined then, so that a row of questions is looked at once, at its end.
type edge struct{ err error }

//go:noinline
func (e *edge) get(of safejs.Value, name string) (v safejs.Value) {
	if e.err == nil {
		v, e.err = of.Get(name)
	}
	return v
}

//go:noinline
func (e *edge) call(of safejs.Value, name string, args ...any) (v safejs.Value) {
	if e.err == nil {
		v, e.err = of.Call(name, args...)
	}
	return v
}

// text returns what is a string.
//
//go:noinline
func (e *edge) text(v safejs.Value) (s string) {
	if e.err == nil {
		s, e.err = v.String()
	}
	return s
}

// float returns what is a number.
func (e *edge) float(v safejs.Value) (x float64) {
	if e.err == nil {
		x, e.err = v.Float()
	}
	return x
}

// window returns something of the browser's window.
//
//go:noinline
func (e *edge) window(name string) safejs.Value { return e.get(safejs.Global(), name) }

// navigator returns something that not every browser has.
func (e *edge) navigator(name string) safejs.Value { return e.get(e.window("navigator"), name) }

// there reports whether the browser has something.
//
//go:noinline
func there(v safejs.Value) bool { return v.Type() == safejs.TypeObject }

// report is where every error of the browser ends.
func (e *edge) report() {
	if e.err != nil {
		said := e.err.Error()
		e.err = nil
		e.call(e.window("console"), "error", said)
		e.err = nil
	}
}

// reason is why the browser calls the program back.
type reason uint8

const (
	happened   reason = iota // an event
	paused                   // in typing
	registered               // the service worker
	unregistered
	copied
	uncopied

	numReasons
)

// callbacks makes the functions that the browser calls, one for each reason.
func (a *app) callbacks() {
	for why := range numReasons {
		f, err := safejs.FuncOf(func(_ safejs.Value, args []safejs.Value) any {
			a.called(why, args)
			return nil
		})
		if err != nil {
			a.err = err
		}
		a.back[why] = f.Value()
	}
}

// called takes what happened to where it is answered, and writes what that put. Its errors end here.
func (a *app) called(why reason, args []safejs.Value) {
	switch why {
	case happened:
		a.event(args[0])
	case paused:
		a.paused()
	case registered:
		a.worker.registered(a, args[0])
	case copied:
		a.tell("say.copied", "")
	case uncopied:
		a.byHand()
	}
	a.report()
	a.flush()
	a.report()
}

// then lets a promise that is settled be answered, for one of two reasons.
//
//go:noinline
func (a *app) then(promise safejs.Value, good, bad reason) {
	a.call(promise, "then", a.back[good], a.back[bad])
}
