//go:build js && wasm

package main

import (
	"strings"
	"time"

	"twistbench/calc"

	"github.com/hack-pad/safejs"
)

// on calls f for every event of a name on a target, and writes what it put. Errors end in report.
func (a *app) on(target safejs.Value, name string, f func(event safejs.Value) error) error {
	listener, err := safejs.FuncOf(func(_ safejs.Value, args []safejs.Value) any {
		a.report(f(args[0]))
		a.report(a.flush())
		return nil
	})
	if err != nil {
		return err
	}
	_, err = target.Call("addEventListener", name, listener.Value(), true) // toggle does not bubble
	return err
}

func (a *app) listen() error {
	for _, name := range [...]string{"input", "change", "focusout", "click", "toggle", "keydown"} {
		if err := a.on(a.document, name, a.event); err != nil {
			return err
		}
	}
	for _, name := range [...]string{"storage", "hashchange"} {
		if err := a.on(a.window, name, a.event); err != nil {
			return err
		}
	}
	return nil
}

func (a *app) event(event safejs.Value) error {
	h, err := a.gather(event)
	if err != nil {
		return err
	}
	switch h.kind {
	case "input":
		a.input(&h)
	case "change":
		a.choice(&h)
	case "focusout":
		a.left()
	case "click":
		if h.do != "" {
			return a.tap(&h)
		}
	case "toggle":
		if key, ok := strings.CutSuffix(h.id, ":why"); ok {
			a.display.Open[calc.Find(key)] = h.value != "" // only open ones are rendered
			a.slots(&a.state)
		}
	case "keydown":
		if h.value == "Escape" {
			a.unbench()
		}
	case "storage":
		a.stored(h.value)
	case "hashchange":
		if link := linkOf(h.href); link != "" {
			a.openLink(link)
			a.opened()
		}
	}
	return nil
}

// input is a keystroke in a box, or a choice of a word or a unit.
func (a *app) input(h *happening) {
	if h.id == "plan-name" {
		a.rename(h.value)
		return
	}
	key, isUnit := strings.CutSuffix(h.id, ":unit")
	id := calc.Find(key)
	b, ok := h.box(key)
	if !ok || !id.IsField() {
		return
	}
	if isUnit && a.state.Worked(id) {
		a.display.Units[id] = a.state.Value(id).Kind().Unit(b.unit)
		a.slots(&a.state)
		return
	}
	a.display.Units[id] = nil
	if !isUnit && calc.Fields[id].Words == nil {
		a.display.Typing = id
	}
	a.change(a.sheet.Type(id, b.text, b.unit), id)
	a.pause.after(a, id)
}

// left is leaving a box: what there is to say of it is said at once.
func (a *app) left() {
	a.history.Pause()
	if a.display.Typing != calc.None {
		a.display.Typing = calc.None
		a.slots(&a.state)
	}
}

// pause waits for a pause in typing.
type pause struct{ timer *time.Timer }

const short = 800 * time.Millisecond

// after lets a short time pass without another keystroke, and then says what is wrong with the box, or the few numbers for the bench.
func (p *pause) after(a *app, id calc.ID) {
	if p.timer != nil {
		p.timer.Stop()
	}
	p.timer = time.AfterFunc(short, func() {
		a.display.Typing = calc.None
		a.slots(&a.state)
		var sentence []byte
		if n := &a.state.Notices[id]; n.Reason != "" {
			sentence = a.display.AppendProblem(nil, &a.state, id, n.Problem)
		} else {
			sentence = a.display.Sentence(nil, &a.state)
		}
		a.put("say", text, string(sentence))
		a.report(a.flush())
	})
}

// choice is a choice outside the boxes.
func (a *app) choice(h *happening) {
	switch h.id {
	case "units":
		a.display.US = h.value == "us"
		a.shelf.setDevice(h.value)
		a.slots(&a.state)
	case "plan-list":
		a.choose(h.value)
	}
}

// tap is a tap on one of the page's buttons.
func (a *app) tap(h *happening) error {
	switch h.do {
	case "undo":
		a.undo()
	case "clear":
		a.change(a.sheet.Cleared(), calc.None)
		a.tell("say.cleared", "")
	case "other":
		id := calc.Find(h.key)
		a.take(id, a.display.Other(&a.state, id))
	case "trial":
		a.take(calc.CutRatio, string(a.display.AppendNumber(nil, &a.state, calc.CutTrialRatio)))
	case "new":
		a.open = ""
		a.keep()
		a.tell("say.opened", a.name)
	case "delete":
		a.deletePlan()
	case "link":
		address, _, _ := strings.Cut(h.href, "#")
		return a.copy(address + "#" + calc.Link(&a.sheet))
	case "summary":
		return a.copy(string(a.display.Summary(nil, &a.state, a.name)))
	case "take":
		return a.worker.take()
	case "bench":
		a.bench = h.key
		a.put("page", "data-bench", h.key)
		a.put(h.key+"-next", focus, "")
	case "invert":
		a.inverted = !a.inverted
		invert := ""
		if a.inverted {
			invert = "1"
		}
		a.put("page", "data-invert", invert)
	case "unbench":
		a.unbench()
	}
	return nil
}

// take puts a text that the page offered into a field.
func (a *app) take(id calc.ID, text string) {
	if text != "" {
		a.change(a.sheet.Type(id, text, calc.Fields[id].Unit), calc.None)
	}
}

func (a *app) undo() {
	s, ok := a.history.Undo()
	if !ok {
		return
	}
	a.sheet = s
	a.refresh()
	a.keep()
	a.disable("undo", a.history.Empty())
	a.tell("say.undone", "")
}

// unbench leaves the bench view, which fills the screen with one step's picture and its few numbers.
func (a *app) unbench() {
	if a.bench != "" {
		a.put("page", "data-bench", "")
		a.put(a.bench+"-bench", focus, "")
		a.bench = ""
	}
}

//go:noinline
func (a *app) disable(id string, disabled bool) {
	v := ""
	if disabled {
		v = "1"
	}
	a.put(id, "disabled", v)
}
