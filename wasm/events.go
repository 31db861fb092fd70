//go:build js && wasm

package main

import (
	"twistbench/calc"
	"twistbench/calc/quantity"

	"github.com/hack-pad/safejs"
)

// callback makes a function that the browser can call: it calls f with its first argument, and writes what f put. Errors end in report.
func (a *app) callback(f func(first safejs.Value) error) (safejs.Func, error) {
	return safejs.FuncOf(func(_ safejs.Value, args []safejs.Value) any {
		var first safejs.Value
		if len(args) > 0 {
			first = args[0]
		}
		a.report(f(first))
		a.report(a.flush())
		return nil
	})
}

// on calls f for every event of a name on a target.
func (a *app) on(target safejs.Value, name string, f func(event safejs.Value) error) error {
	listener, err := a.callback(f)
	if err != nil {
		return err
	}
	_, err = target.Call("addEventListener", name, listener.Value(), true) // toggle does not bubble
	return err
}

func (a *app) listen() error {
	paused, err := a.callback(a.paused)
	if err != nil {
		return err
	}
	a.pause.over = paused.Value()
	for _, name := range [...]string{"input", "change", "focusout", "click", "toggle", "keydown"} {
		if err := a.on(a.document, name, a.event); err != nil {
			return err
		}
	}
	for _, name := range [...]string{"storage", "hashchange", "tick", "visibilitychange"} {
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
	a.takeNow(&h)
	switch h.kind {
	case "input":
		a.input(&h)
	case "change":
		a.choice(&h)
	case "focusout":
		a.left(&h)
	case "click":
		if h.do != "" {
			return a.tap(&h)
		}
	case "toggle":
		if key, ok := quantity.CutSuffix(h.id, ":why"); ok {
			a.display.Open[calc.Find(key)] = h.value != "" // only open ones are rendered
			a.slots(&a.state)
		}
	case "keydown":
		if h.value == "Escape" {
			a.unbench()
		}
	case "storage":
		a.stored(h.value)
	case "tick":
		a.tick()
	case "visibilitychange":
		a.slots(&a.state) // other local clocks may hold than when it was hidden
		a.tick()
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
	key, isUnit := quantity.CutSuffix(h.id, ":unit")
	id := calc.Find(key)
	b, ok := h.box(key)
	if !ok || !id.IsField() {
		return
	}
	if isUnit && a.state.Worked(id) {
		a.showIn(id, b.unit)
		a.slots(&a.state)
		return
	}
	a.display.Units[id] = nil
	if b.text == "" {
		a.showIn(id, b.unit) // what is typed next is in it
	}
	if !isUnit && calc.Fields[id].Words == nil {
		a.display.Typing = id
	}
	a.change(a.history.Refill(a.state.Type(a.sheet, id, b.text, b.unit), id), id)
	if isUnit {
		if _, own := calc.Detach(id, a.state.Text(id)); b.text != "" && own != b.unit {
			a.put(h.id, chosenOption, own) // the text names its unit itself
		}
	}
	a.wait(id)
}

// showIn shows a number in the unit chosen beside it.
//
//go:noinline
func (a *app) showIn(id calc.ID, unit string) {
	a.display.Units[id] = a.state.Value(id).Kind().Unit(unit)
}

// left is leaving a box: what there is to say of it is said at once, and a unit typed behind the number goes to the list beside it.
func (a *app) left(h *happening) {
	a.history.Pause()
	if b, ok := h.box(h.id); ok {
		id := calc.Find(h.id)
		shown, _ := calc.Detach(id, a.state.Text(id))
		if b.text == "" && id.IsField() && a.state.Worked(id) {
			shown = string(a.display.AppendNumber(nil, &a.state, id)) // emptied, it is worked out
		}
		if shown != "" && shown != b.text {
			a.put(h.id, value, shown)
		}
	}
	if a.display.Typing != calc.None {
		a.display.Typing = calc.None
		a.slots(&a.state)
	}
}

// pause is the wait for a pause in typing. The browser's timer does it: package time would be a tenth of all that the page downloads.
type pause struct {
	over, timer safejs.Value
	id          calc.ID // the box typed in
}

const short = 800 // ms

// wait lets a short time pass without another keystroke in the box id.
func (a *app) wait(id calc.ID) {
	p := &a.pause
	p.id = id
	_, err := a.window.Call("clearTimeout", p.timer)
	a.report(err)
	p.timer, err = a.window.Call("setTimeout", p.over, short)
	a.report(err)
}

// paused says what is wrong with the box, or else the few numbers for the bench.
func (a *app) paused(safejs.Value) error {
	a.display.Typing = calc.None
	a.slots(&a.state)
	var sentence []byte
	if n := &a.state.Notices[a.pause.id]; n.Reason != "" {
		sentence = a.display.AppendProblem(nil, &a.state, a.pause.id, n.Problem)
	} else {
		sentence = a.display.Sentence(nil, &a.state)
	}
	a.put("say", text, string(sentence))
	return nil
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
		a.clear()
	case "other":
		key, _ := quantity.CutSuffix(h.id, ":other")
		id := calc.Find(key)
		a.take(id, a.display.Other(&a.state, id))
		a.put(key, focus, "") // the button is gone
	case "trial":
		a.take(calc.CutRatio, string(a.display.AppendNumber(nil, &a.state, calc.CutTrialRatio)))
	case "speed":
		a.take(calc.TwistSpeed, string(a.display.Append(nil, &a.state, calc.TwistTimedSpeed)))
	case "count":
		if a.state.Text(calc.TwistCounted) != "" {
			a.take(calc.TwistTurns, string(a.display.Append(nil, &a.state, calc.TwistOnset)))
		}
	case "tap":
		return a.tapped()
	case "new":
		a.open = ""
		a.sheet = a.sheet.Anew()
		a.history = calc.History{}
		a.disable("undo", true)
		a.refresh()
		a.keep()
		a.tell("say.opened", a.name)
	case "delete":
		a.deletePlan()
	case "link":
		address, _ := quantity.Split(h.href, '#')
		return a.copy(address + "#" + calc.Link(&a.sheet))
	case "summary":
		return a.copy(string(a.display.Summary(nil, &a.state, a.name)))
	case "take":
		return a.worker.take()
	case "bench":
		a.openBench(h.key)
	case "start", "start-at", "calendar":
		a.timed(h.do)
	case "seen", "late-1", "late-5", "late-15", "early-5", "stop", "file":
		a.onCard(h)
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
		a.change(a.state.Type(a.sheet, id, text, calc.Fields[id].Unit), calc.None)
	}
}

// clear takes out what was typed. What it was is kept too, so that undo brings it back also after a reload.
func (a *app) clear() {
	was := a.sheet
	a.change(a.sheet.Cleared(), calc.None)
	if a.sheet != was {
		a.cleared = a.shelf.set(clearedKey, calc.Kept(a.open, &was))
	}
	a.tell("say.cleared", "")
}

// uncleared forgets what was cleared: from here on undo has other steps to take back first.
func (a *app) uncleared() {
	if a.cleared {
		a.shelf.remove(clearedKey)
		a.cleared = false
	}
}

func (a *app) undo() {
	s, ok := a.history.Undo()
	if !ok {
		return
	}
	a.uncleared()
	a.sheet = s
	a.refresh()
	a.keepAs(a.deleted)
	a.disable("undo", a.history.Empty())
	a.tell("say.undone", "")
}

// openBench fills the screen with a step.
//
//go:noinline
func (a *app) openBench(step string) {
	a.bench = step
	a.put("page", "data-bench", step)
	a.put(step+"-next", focus, "")
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
