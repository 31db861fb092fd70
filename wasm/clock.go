//go:build js && wasm

package main

import (
	"twistbench/calc"
	"twistbench/calc/quantity"
	"twistbench/calc/show"
	"twistbench/calc/timetable"
)

// clock is the timetables that were started, each with its entry on the shelf. What they show is worked out anew from the browser's clock at
// every tick: a tick that comes late, or not at all while the page is hidden, makes nothing wrong.
type clock struct {
	runs       []*timetable.Run
	last, next []byte // slots
	due        bool   // something needs hands
}

const runPrefix = "twistbench/run/"

// openRuns reads the runs that are kept; what can't be read is let alone.
func (a *app) openRuns() {
	runs := a.clock.runs[:0]
	for _, n := range a.shelf.numbers(runPrefix) {
		r := &timetable.Run{}
		key := runPrefix + decimal(n)
		if text, _ := a.shelf.get(key); r.Parse(text) {
			r.Entry = key
			runs = append(runs, r)
		}
	}
	a.clock.runs = runs
	a.tick()
}

// tick shows the runs as they are now. Where one needs hands all of a sudden, that is said, and shown in place of another step's bench view.
func (a *app) tick() {
	c := &a.clock
	var due string
	c.next, due = a.display.Runs(c.next[:0], c.runs)
	a.out = show.Changes(a.out, c.last, c.next)
	c.last, c.next = c.next, c.last
	if c.due != (due != "") {
		c.due = !c.due
		a.put("say", text, due)
		if c.due && a.bench != "" {
			a.openBench("clock")
		}
	}
}

// timed is a tap that starts the plan's timetable, now or at the time that was typed, or asks for its calendar file.
func (a *app) timed(do string) {
	c := &a.clock
	if do != "calendar" && len(c.runs) == len(show.CardIDs) {
		a.tell("clock.full", "")
		return
	}
	r, missing := a.display.Run(do == "start")
	if r == nil {
		key := missing.Key()
		a.tell("clock.missing", a.say("name."+key, ""))
		a.put(key, focus, "")
		return
	}
	r.Name = calc.Clean(a.name)
	if do == "calendar" {
		a.file(r)
		return
	}
	r.Entry = runPrefix + decimal(a.shelf.unused(runPrefix))
	c.runs = append(c.runs, r)
	a.keepRun(r)
	a.openBench("clock")
}

// file hands over a calendar file.
//
//go:noinline
func (a *app) file(r *timetable.Run) {
	a.put("clock-file", "b", r.Name+".ics\x1c"+a.display.Calendar(r))
}

// keepRun writes a run to the shelf, or takes it off where it was stopped.
//
//go:noinline
func (a *app) keepRun(r *timetable.Run) {
	if r.Off {
		a.shelf.remove(r.Entry)
	} else if !a.shelf.set(r.Entry, r.Text()) {
		a.tell("say.not-kept", "")
	}
	a.tick()
}

// onCard is a tap on a button of a card.
func (a *app) onCard(h *happening) {
	n, _ := quantity.Digits(h.key)
	r := a.clock.runs[n]
	by, _ := quantity.Digits(h.value)
	switch h.do {
	case "file":
		a.file(r)
	case "seen":
		r.Seen = a.display.Now
	case "late":
		r.Late(a.display.Now, by*60)
	case "early":
		r.Late(a.display.Now, -by*60)
	case "stop":
		r.Off = !r.Off
	}
	a.keepRun(r)
}
