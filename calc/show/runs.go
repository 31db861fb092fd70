package show

import "twistbench/calc/timetable"

// Runs are the timetables that were started, nil where there is none. Each has its card on the page.
type Runs [len(CardIDs)]*timetable.Run

// CardIDs are the elements of the cards.
var CardIDs = [...]string{"run.1", "run.2", "run.3", "run.4", "run.5", "run.6"}

// card is what a card's words name.
type card struct {
	run  *timetable.Run
	on   *timetable.Step   // what is on in the load that needs hands next, nil where it only waits
	next timetable.Instant // when hands are needed next, or since when all is done
}

// Started appends the slots of the timetables that were started, always the same ones in the same order: the cards, and whether there are any. A
// card counts down to the next time that hands are needed, and names what for. Due is what needs hands now, in words; empty where nothing does.
func (d *Display) Started(b []byte, runs *Runs) (slots []byte, due string) {
	w := writer{Display: d, b: b}
	c := &d.card
	strip := ""
	for i, r := range runs {
		id := CardIDs[i]
		state, rest := "", ""
		next := -1
		c.run = r
		if r != nil {
			state = "off"
			if !r.Off {
				state, strip = "on", "on"
				if r.Due(d.Now) >= 0 {
					state = stateDue
				}
			}
			rest = "clock.done"
			last := len(r.Steps) - 1
			c.next = r.Begins(last)
			if next = r.NextHands(d.Now); next >= 0 {
				c.next = r.Begins(next)
				rest = "clock.next"
				if c.on = r.On(r.Steps[next].Load, d.Now); c.on != nil {
					rest = "clock.on"
				}
				if state == stateDue {
					rest = "clock.then"
				}
			}
		}
		w.put(id, "", State, state)
		w.text(id, ":on")
		from := len(w.b)
		switch {
		case state == stateDue:
			for k := range r.Steps { // the eldest first
				if r.Waits(k, d.Now) {
					w.also(from, &r.Steps[k])
				}
			}
			if due != "" {
				due += " + "
			}
			due += string(w.b[from:])
		case next >= 0:
			w.words("clock.due")
		case r != nil:
			w.also(from, &r.Steps[len(r.Steps)-1])
		}
		w.shut()
		w.text(id, ":left")
		if next >= 0 {
			w.wait(int(c.next - d.Now))
		}
		w.shut()
		w.text(id, ":rest")
		if rest != "" {
			w.words(rest)
		}
		w.shut()
	}
	if due != "" {
		strip = stateDue
	}
	w.put("strip.clock", "", State, strip)
	return w.b, due
}

// upcoming appends all that needs hands next, at the same moment.
func (w *writer) upcoming() {
	r := w.card.run
	from := len(w.b)
	for k := range r.Steps {
		if s := &r.Steps[k]; s.Do.Hands() && r.Begins(k) == w.card.next {
			w.also(from, s)
		}
	}
}

// also appends a step of the card's run behind others from a place on, with its load where there are several.
//
//go:noinline
func (w *writer) also(from int, s *timetable.Step) {
	if len(w.b) > from {
		w.str(" + ")
	}
	w.doing(s)
	if s.Load == 1 && s.Do != timetable.DoPreheat && timetable.Loads(w.card.run.Steps) > 1 {
		w.ofLoad(1)
	}
}

// ofRun appends what the words of a card name: when hands are needed next, what for, what is on until then, or whose the run is.
func (w *writer) ofRun(name string) {
	c := &w.card
	switch name {
	case "ends":
		w.when(c.next, w.Now)
	case "next":
		w.upcoming()
	case "on":
		w.also(len(w.b), c.on)
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
