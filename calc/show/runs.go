package show

import "twistbench/calc/timetable"

// Runs are the timetables that were started, nil where there is none. Each has its card on the page.
type Runs [len(CardIDs)]*timetable.Run

// CardIDs are the elements of the cards.
var CardIDs = [...]string{"run.1", "run.2", "run.3", "run.4", "run.5", "run.6"}

// card is what a card's words name.
type card struct {
	run  *timetable.Run
	next *timetable.Step
	ends timetable.Instant // when on ends and next begins, or since when the last is on
}

// Started appends the slots of the timetables that were started, always the same ones in the same order: the cards, and whether there are any. Due
// is what needs hands now, in words; empty where nothing does.
func (d *Display) Started(b []byte, runs *Runs) (slots []byte, due string) {
	w := writer{Display: d, b: b}
	c := &d.card
	strip := ""
	for i, r := range runs {
		id := CardIDs[i]
		var on *timetable.Step
		state := ""
		c.next = nil
		if r != nil {
			state = "off"
			j, next := r.At(d.Now)
			if c.ends = r.Start; j >= 0 {
				on, c.ends = &r.Steps[j], r.Begins(j)
			}
			if next >= 0 {
				c.next, c.ends = &r.Steps[next], r.Begins(next)
				for ; j >= 0; j-- { // what is on in the load that is next, not in another
					if s := &r.Steps[j]; s.Load == c.next.Load {
						on = s
						break
					}
				}
			}
			if !r.Off {
				state, strip = "on", "on"
				if r.Due(d.Now) >= 0 {
					state, due = stateDue, ""
					for k := range r.Steps {
						if r.Waits(k, d.Now) {
							if due != "" {
								due += " + "
							}
							due += d.Lang.SayOf("do.", r.Steps[k].Do.Key())
						}
					}
				}
			}
			c.run = r
		}
		w.put(id, "", State, state)
		w.text(id, ":on")
		if state == stateDue {
			w.waiting(r)
		} else if on != nil {
			w.doing(on)
		}
		w.shut()
		w.text(id, ":left")
		if c.next != nil {
			w.wait(int(c.ends - d.Now))
		}
		w.shut()
		w.text(id, ":rest")
		if c.next != nil {
			w.words("clock.on")
		} else if on != nil {
			w.words("clock.done")
		}
		w.shut()
	}
	if due != "" {
		strip = stateDue
	}
	w.put("strip.clock", "", State, strip)
	return w.b, due
}

// waiting appends what needs hands now, all of it.
func (w *writer) waiting(r *timetable.Run) {
	more := false
	for i := range r.Steps {
		if r.Waits(i, w.Now) {
			if more {
				w.str(" + ")
			}
			more = true
			w.doing(&r.Steps[i])
		}
	}
}

// ofRun appends what the words of a card name: when the step ends, what is next, or whose the run is.
func (w *writer) ofRun(name string) {
	c := &w.card
	switch name {
	case "ends":
		w.when(c.ends, w.Now)
	case "next":
		w.doing(c.next)
	default:
		w.str(c.run.Name)
	}
}

// stateDue is the state of a card whose step needs hands now, and of the strip while any does.
const stateDue = "due"

// wait appends a number of seconds as they are counted down: 09:05, or 01:09:05.
//
//go:noinline
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
//
//go:noinline
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
