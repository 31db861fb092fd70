//go:build js && wasm

package main

import (
	"twistbench/calc"
	"twistbench/calc/quantity"
)

// deed is what a button asks for.
type deed uint8

const (
	doUndo deed = iota
	doClear
	doOther
	doTrial
	doSpeed
	doCount
	doLine
	doVolts
	doTap
	doNew
	doDelete
	doLink
	doSummary
	doTake
	doBench
	doUnbench
	doInvert
	doStart
	doStartAt
	doCalendar
	doFile
	doSeen
	doStop
	doLate1
	doLate5
	doLate15
	doEarly5
)

// deeds is what data-do says of each on the page. (Texts in the cases of a switch would take three times of the page's program.)
var deeds = [...]string{
	doUndo:     "undo",
	doClear:    "clear",
	doOther:    "other",
	doTrial:    "trial",
	doSpeed:    "speed",
	doCount:    "count",
	doLine:     "line",
	doVolts:    "volts",
	doTap:      "tap",
	doNew:      "new",
	doDelete:   "delete",
	doLink:     "link",
	doSummary:  "summary",
	doTake:     "take",
	doBench:    "bench",
	doUnbench:  "unbench",
	doInvert:   "invert",
	doStart:    "start",
	doStartAt:  "start-at",
	doCalendar: "calendar",
	doFile:     "file",
	doSeen:     "seen",
	doStop:     "stop",
	doLate1:    "late-1",
	doLate5:    "late-5",
	doLate15:   "late-15",
	doEarly5:   "early-5",
}

// tap is a tap on one of the page's buttons.
func (a *app) tap(h *happening) {
	switch do := deed(quantity.Place(deeds[:], h.do)); do {
	case doUndo:
		a.undo()
	case doClear:
		a.clear()
	case doOther:
		key, _ := quantity.CutSuffix(h.id, ":other")
		id := calc.Find(key)
		a.take(id, a.display.Other(&a.state, id), calc.None)
		a.focus(key) // the button is gone
	case doTrial:
		a.takeOver(calc.CutRatio, calc.CutTrialRatio, calc.CutTrialRatio)
	case doSpeed:
		a.takeOver(calc.TwistSpeed, calc.TwistTimedSpeed, calc.TwistTimedSpeed)
	case doCount:
		a.takeOver(calc.TwistTurns, calc.TwistOnset, calc.TwistCounted)
	case doLine:
		a.takeOver(calc.WirePerLength, calc.WireTestPerLength, calc.WireTestPerLength)
	case doVolts:
		a.takeOver(calc.WirePerLength, calc.WireReadingPerLength, calc.WireReadingPerLength)
	case doTap:
		a.tapped()
	case doNew:
		a.open = ""
		a.sheet = a.sheet.Anew()
		a.history = calc.History{}
		a.set("undo", disabled, true)
		a.refresh()
		a.keep()
		a.tell("say.opened", a.name)
	case doDelete:
		a.deletePlan()
	case doLink:
		address, _ := quantity.Split(h.href, '#')
		a.copy(address + "#" + calc.Link(&a.sheet))
	case doSummary:
		a.copy(string(a.display.Summary(nil, &a.state, a.name)))
	case doTake:
		takeOver()
	case doBench:
		a.openBench(h.key)
	case doStart, doStartAt, doCalendar:
		a.timed(do)
	case doSeen, doLate1, doLate5, doLate15, doEarly5, doStop, doFile:
		a.onCard(h, do)
	case doInvert:
		a.inverted = !a.inverted
		a.set("page", "data-invert", a.inverted)
	case doUnbench:
		a.unbench()
	}
}
