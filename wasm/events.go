//go:build js && wasm

package main

import (
	"twistbench/calc"
	"twistbench/calc/quantity"
	"twistbench/calc/show"
)

// kind is a kind of events: the browser's own, and those of boot.js.
type kind uint8

const (
	input kind = iota
	change
	focusout
	click
	toggle
	keydown
	contentvisibilityautostatechange
	storage
	hashchange
	visibilitychange
	beforeprint

	start
	tick
	paused // in typing
	copied
	uncopied
	offered // a version of the page that waits
)

var kinds = [...]string{
	input:                            "input",
	change:                           "change",
	focusout:                         "focusout",
	click:                            "click",
	toggle:                           "toggle",
	keydown:                          "keydown",
	contentvisibilityautostatechange: "contentvisibilityautostatechange",
	storage:                          "storage",
	hashchange:                       "hashchange",
	visibilitychange:                 "visibilitychange",
	beforeprint:                      "beforeprint",
	start:                            "start",
	tick:                             "tick",
	paused:                           "paused",
	copied:                           "copied",
	uncopied:                         "uncopied",
	offered:                          "offered",
}

func (a *app) event(h *happening) {
	kind := kind(quantity.Place(kinds[:], h.kind))
	if kind == start {
		a.start(h)
		return
	}
	a.takeNow(h)
	if kind != input {
		a.state.Finish()
	}
	switch kind {
	case input:
		a.hush()
		a.input(h)
	case change:
		a.choice(h)
	case focusout:
		a.left(h)
	case click:
		a.hush()
		a.tap(h)
	case toggle:
		if key, ok := quantity.CutSuffix(h.id, ":why"); ok {
			a.display.Open[calc.Find(key)] = h.value != "" // only open ones are rendered
			a.slots(&a.state)
		}
	case keydown:
		if h.value == "Escape" {
			a.unbench()
		}
	case contentvisibilityautostatechange, beforeprint:
		if a.waits {
			a.slots(&a.state)
		}
	case storage:
		a.changed(h.value)
	case tick:
		a.tick()
	case visibilitychange:
		a.slots(&a.state) // other local clocks may hold than when it was hidden
		a.tick()
	case hashchange:
		if link := linkOf(h.href); link != "" {
			a.openLink(link)
			a.opened()
		}
	case paused:
		a.pause()
	case copied:
		a.tell("say.copied", "")
	case uncopied:
		a.byHand()
	case offered:
		a.put("offer-text", text, a.say("say.new-version", ""))
		a.put("offer", hidden, "")
	}
}

// input is a keystroke in a box, or a choice of a word or a unit.
func (a *app) input(h *happening) {
	if h.id == "plan-name" {
		a.rename(h.value)
		return
	}
	key, isUnit := quantity.CutSuffix(h.id, ":unit")
	id := calc.Find(key)
	if !id.IsField() || !h.box(key) {
		return
	}
	if isUnit && a.state.Worked(id) {
		a.showIn(id, h.unit)
		a.slots(&a.state)
		return
	}
	a.display.Units[id] = nil
	if h.text == "" {
		a.showIn(id, h.unit) // what is typed next is in it
	}
	if !isUnit && calc.Fields[id].Words == nil {
		a.display.Typing = id
	}
	a.display.Away = show.ParseAway(h.away)
	a.hurried = true
	a.change(a.history.Refill(a.state.Type(a.sheet, id, h.text, h.unit), id), id)
	a.hurried = false
	if isUnit {
		if _, own := calc.Detach(id, a.state.Text(id)); h.text != "" && own != h.unit {
			a.put(h.id, chosenOption, own) // the text names its unit itself
		}
	}
	a.paused = id
	wait(short)
}

const short = 800 // ms, a pause in typing

// showIn shows a number in the unit chosen beside it.
//
//go:noinline
func (a *app) showIn(id calc.ID, unit string) {
	a.display.Units[id] = a.state.Value(id).Kind().Unit(unit)
}

// left is leaving a box: what there is to say of it is said at once, and a unit typed behind the number goes to the list beside it.
func (a *app) left(h *happening) {
	a.history.Pause()
	if h.box(h.id) {
		id := calc.Find(h.id)
		if shown, _ := calc.Detach(id, a.state.Text(id)); shown != "" && shown != h.text {
			a.put(h.id, value, shown)
		}
	}
	if a.display.Typing != calc.None {
		a.display.Typing = calc.None
		a.slots(&a.state)
	}
}

// pause says what is wrong with the box, or else the few numbers for the bench.
func (a *app) pause() {
	a.display.Typing = calc.None
	a.slots(&a.state)
	var sentence []byte
	if n := &a.state.Notices[a.paused]; n.Reason != "" {
		sentence = a.display.AppendProblem(nil, &a.state, a.paused, n.Problem)
	} else {
		sentence = a.display.Sentence(nil, &a.state)
	}
	a.put("say", text, string(sentence))
	if id := a.display.Wish; id != a.wish { // it may be far from this box
		a.wish = id
		if id != calc.None {
			a.told(string(a.display.AppendSays(nil, &a.state, id)))
		}
	}
}

// choice is a choice outside the boxes.
func (a *app) choice(h *happening) {
	switch h.id {
	case "units":
		a.display.US = h.value == "us"
		keep(deviceKey, h.value)
		a.slots(&a.state)
	case "plan-list":
		a.choose(h.value)
	}
}

// take puts a text that the page offered into a field, as one step of undo that began so.
func (a *app) take(id calc.ID, text string, began calc.ID) {
	if text != "" {
		a.change(a.state.Type(a.sheet, id, text, calc.Fields[id].Unit), began)
	}
}

// takeOver puts an answer into a field, while the number that it stands on is known.
func (a *app) takeOver(id, answer, of calc.ID) {
	if x := a.state.SI(of); x == x {
		a.take(id, string(a.display.Append(nil, &a.state, answer)), calc.None)
	}
}

// clear takes out what was typed. What it was is kept too, so that undo brings it back also after a reload.
func (a *app) clear() {
	was := a.sheet
	a.change(a.sheet.Cleared(), calc.None)
	if a.sheet != was {
		a.cleared = keep(clearedKey, calc.Kept(a.open, &was))
	}
	a.tell("say.cleared", "")
}

// uncleared forgets what was cleared: from here on undo has other steps to take back first.
func (a *app) uncleared() {
	if a.cleared {
		drop(clearedKey)
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
	a.set("undo", disabled, a.history.Empty())
	a.tell("say.undone", "")
}

// openBench fills the screen with a step.
//
//go:noinline
func (a *app) openBench(step string) {
	a.bench = step
	a.put("page", "data-bench", step)
	a.focus(step + "-next")
}

// unbench leaves the bench view, which fills the screen with one step's picture and its few numbers.
func (a *app) unbench() {
	if a.bench != "" {
		a.put("page", "data-bench", "")
		a.focus(a.bench + "-bench")
		a.bench = ""
	}
}
