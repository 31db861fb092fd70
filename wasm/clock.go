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
	runs       show.Runs
	last, next []byte            // as the cards were last written, and room for the next
	newest     timetable.Instant // when the newest of what waits for hands came due; 0 where nothing does
}

const runPrefix = "twistbench/run/"

// takeNow takes the time of an event, and the local clocks where it tells of them.
func (a *app) takeNow(h *happening) {
	now, zone := timetable.ParseNow(h.now)
	a.display.Now = now
	if zone != nil {
		a.display.Zone = zone
	}
}

// openRuns reads the runs that are kept; what can't be read is let alone.
func (a *app) openRuns() {
	for i := range a.clock.runs {
		r := &timetable.Run{}
		if text, _ := stored(runKey(i)); !r.Parse(text) {
			r = nil
		}
		a.clock.runs[i] = r
	}
	a.tick()
}

// runKey returns the entry of a run.
//
//go:noinline
func runKey(i int) string { return runPrefix + decimal(i) }

// tick shows the runs as they are now. What comes due is said, each time something does, and shown in place of another step's bench view.
//
//go:noinline
func (a *app) tick() {
	c := &a.clock
	slots, said, newest := a.display.Started(c.next[:0], &c.runs, a.name)
	a.out = show.Changes(a.out, c.last, slots)
	c.last, c.next = slots, c.last
	if was := c.newest; was != newest {
		c.newest = newest
		a.put("say", text, said)
		if newest > was && a.bench != "" && a.bench != "clock" {
			a.openBench("clock")
		}
	}
}

// timed is a tap that starts the plan's timetable, now or at the time that was typed, or asks for its calendar file.
func (a *app) timed(do deed) {
	r, missing := a.display.Run(&a.state, do == doStart)
	if r == nil {
		if missing == calc.None {
			a.tell("note.loads-many", "")
			return
		}
		key := missing.Key()
		a.tell("clock.missing", a.say("name."+key, ""))
		a.focus(key)
		return
	}
	if do != doStart && a.display.Past() {
		a.tell("clock.past", "")
		a.slots(&a.state) // without a day another one is taken by now
		a.focus(calc.ClockTime.Key())
		return
	}
	r.Name = calc.Clean(a.name)
	if do == doCalendar {
		a.file(r)
		return
	}
	runs := a.clock.runs[:]
	free := -1
	for i := len(runs) - 1; i >= 0; i-- {
		if other := runs[i]; other == nil {
			free = i
		} else if other.Name == r.Name {
			a.tell("clock.again", "")
		}
	}
	if free < 0 {
		a.tell("clock.full", "")
		return
	}
	runs[free] = r
	a.keepRun(free)
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
func (a *app) keepRun(i int) {
	if r := a.clock.runs[i]; r.Off {
		drop(runKey(i))
	} else if !keep(runKey(i), r.Text()) {
		a.notKept()
	}
	a.tick()
}

// onCard is a tap on a button of a card.
func (a *app) onCard(h *happening, do deed) {
	i := int(h.key[0] - '0')
	r := a.clock.runs[i]
	by := 0
	switch do {
	case doFile:
		a.file(r)
	case doSeen:
		r.Seen = a.display.Now
	case doLate1:
		by = 1
	case doLate5:
		by = 5
	case doLate15:
		by = 15
	case doEarly5:
		by = -5
	case doStop:
		r.Off = !r.Off
	}
	r.Late(a.display.Now, by*60)
	a.keepRun(i)
}

// isRun reports whether an entry of the shelf is a run.
func isRun(key string) bool {
	_, is := quantity.CutPrefix(key, runPrefix)
	return is
}
