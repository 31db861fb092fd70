//go:build js && wasm

// Wasm is the page's program: it takes what happens on the page to the core and brings back what the page then shows. It is the only
// package that talks to the browser.
package main

import (
	"twistbench/calc"
	"twistbench/calc/words"
)

// core is the one page there is.
var core app

func main() { select {} } // all else is in answer to what happens

// app is the open page.
type app struct {
	page

	sheet   calc.Sheet
	history calc.History
	state   calc.State

	open     string // key of the kept plan on the page; "" for one that is not kept
	name     string // of the plan
	bench    string // the step that fills the screen, "" for none
	inverted bool   // black on white there
	deleted  string // name of the plan that was deleted and that undo brings back
	cleared  bool   // what was cleared last is kept, for undo after a reload
	copying  string // what was asked to be copied last
	linked   bool   // a link stands in the address and is to be taken out at the first change

	paused calc.ID // the box typed in last
	wish   calc.ID // the wish of which was said that it no longer counts
	warned bool    // that nothing is kept
	clock  clock
	drill  drill
}

// start takes over the page as the build made it: first what it shows, then a link or the plan that was open, then whatever was typed
// before the program was there.
func (a *app) start(now *happening) {
	a.display.Lang = words.Languages[0]
	a.sheet = calc.Start()
	a.state.Work(&a.sheet)
	a.assume(&a.state)

	a.name = a.say("plan.start", "")
	if link := linkOf(now.href); link != "" {
		a.openLink(link)
	} else if key, ok := lastOpen(); ok {
		a.openKept(key)
		a.put("status", text, "") // in place of what stands there for the start plan
	}
	if was, key, ok := lastCleared(); ok && key == a.open && key != "" {
		a.history.Before(&was, calc.None)
		a.cleared = true
		a.set("undo", disabled, false)
	}
	units, _ := stored(deviceKey)
	a.display.US = units == "us"
	a.plans()
	was := a.sheet
	a.early(now, true)
	a.early(now, false)
	if a.sheet != was {
		a.keep()
	}
	a.takeNow(now)
	a.refresh()
	a.clock.last, _, _ = a.display.Started(nil, &a.clock.runs, "") // as the build made it
	a.openRuns()
	a.set("page", "data-ready", true)
}

// refresh works the sheet, though not what is out of sight and takes long; flush then shows what changed.
func (a *app) refresh() {
	a.state.Begin(&a.sheet)
	if !a.display.Away.Driven() {
		a.state.Finish()
	}
	a.display.Wish, a.display.Wished = a.history.Wish(&a.sheet)
	if a.display.Wish == calc.None {
		a.wish = calc.None
	}
	a.slots(&a.state)
}

// change makes next the sheet, as one step of undo that began with typing in id or with something else, and keeps it.
func (a *app) change(next calc.Sheet, id calc.ID) {
	if next == a.sheet {
		a.refresh()
		return
	}
	a.uncleared()
	a.history.Before(&a.sheet, id)
	a.sheet = next
	a.refresh()
	a.set("undo", disabled, false)
	a.keep()
}
