package show

import "twistbench/calc/timetable"

// CardIDs are the elements of the cards, one for each timetable that was started, as many as there can be at a time.
var CardIDs = [...]string{"run.1", "run.2", "run.3", "run.4", "run.5", "run.6"}

// card is a run that was started, as it is now. The steps are nil for none.
type card struct {
	run      *timetable.Run
	on, next *timetable.Step
	ends     timetable.Instant // when on ends and next begins, or since when the last is on
}

// Runs appends the slots of the timetables that were started, always the same ones in the same order: the cards, and what the strip says. Due is
// what needs hands now, in words; empty where nothing does.
func (d *Display) Runs(b []byte, runs []*timetable.Run) (slots []byte, due string) {
	w := writer{Display: d, b: b}
	strip := ""
	for i, id := range CardIDs {
		c := &d.card
		*c = card{}
		state := ""
		if i < len(runs) {
			state = c.take(runs[i], d.Now)
			if state == "on" && due == "" {
				strip = state
			}
			if state == stateDue {
				strip = state
				due = d.Lang.SayOf("do.", c.on.Do.Key())
			}
		}
		w.put(id, "", State, state)
		w.text(id, ":on")
		if c.on != nil {
			w.doing(c.on)
		}
		w.shut()
		w.text(id, ":left")
		if c.next != nil {
			w.wait(int(c.ends - w.Now))
		}
		w.shut()
		w.text(id, ":rest")
		switch {
		case c.next != nil:
			w.words("clock.on")
		case c.on != nil:
			w.words("clock.done")
		}
		w.shut()
	}
	w.put("strip.clock", "", State, strip)
	return w.b, due
}

// stateDue is the state of a card whose step needs hands now, and of the strip while any does.
const stateDue = "due"

// take looks at a run, and returns its state.
func (c *card) take(r *timetable.Run, now timetable.Instant) (state string) {
	on, next := r.At(now)
	c.run, state = r, "on"
	if due := r.Due(now); due >= 0 {
		on, state = due, stateDue
	}
	if on >= 0 {
		c.on, c.ends = &r.Steps[on], r.Begins(on)
	}
	if next >= 0 {
		c.next, c.ends = &r.Steps[next], r.Begins(next)
	}
	if r.Off {
		return "off"
	}
	return state
}

// wait appends a number of seconds as they are counted down: 09:05, or 01:09:05.
func (w *writer) wait(seconds int) {
	if seconds >= 3600 {
		w.hm(seconds)
	} else {
		w.two(seconds / 60)
	}
	w.char(':')
	w.two(seconds % 60)
}

// Calendar returns a calendar file with the steps of a run at which hands are needed.
func (d *Display) Calendar(r *timetable.Run) string {
	c := timetable.Calendar{Plan: r.Name, Start: r.Start, Now: d.Now}
	w := writer{Display: d}
	for i := range r.Steps {
		if s := &r.Steps[i]; s.Do.Hands() {
			w.doing(s)
			c.Add(s, w.cut(0))
		}
	}
	return c.File()
}
