package show

import "twistbench/calc/timetable"

// Runs are the timetables that were started, nil where there is none. Each has its card on the page.
type Runs [len(CardIDs)]*timetable.Run

// CardIDs are the elements of the cards.
var CardIDs = [...]string{"run.1", "run.2", "run.3", "run.4", "run.5", "run.6"}

// card is what a card's words name.
type card struct {
	_ [0]func() // not compared

	run  *timetable.Run
	next *timetable.Step   // when hands are needed next, nil where all is done
	at   timetable.Instant // when that is, or the last step, or what is due began
	more int               // steps that were missed, but for the newest few

	count int // what some words count
}

// The states of a card, and of the strip after the gravest of them. A step that was missed waits until it is seen to, but nothing rings.
const (
	cardNone = iota
	cardOff
	cardOn
	cardMissed
	cardDue
)

var cardStates = [...]string{"", "off", "on", "missed", "due"}

// mostMissed is how many of the steps that were missed a card names.
const mostMissed = 3

// Started appends the slots of the timetables that were started, always the same ones in the same order: the cards, and whether there are any. A
// card counts down to the next time that hands are needed, and names what for right above that; what is due, and since when; and what was missed.
// Said is what waits for hands, in words, and newest when the newest of it came due; 0 where nothing waits. Name is that of the plan that was shown last.
func (d *Display) Started(b []byte, runs *Runs, name string) (slots []byte, said string, newest timetable.Instant) {
	w := writer{Display: d, b: b}
	c := &d.card
	say := writer{Display: d}
	strip := cardOff
	for i, r := range runs {
		id := CardIDs[i]
		state, rest := cardNone, ""
		c.run, c.next, c.more = r, nil, -mostMissed
		var last *timetable.Step
		if r != nil {
			state, rest = cardOn, "clock.next"
			for k := range r.Steps {
				s := &r.Steps[k]
				if r.On(s, d.Now) {
					rest = "clock.on"
				}
				if wait := r.Waits(s, d.Now); wait != timetable.Nothing && !r.Off {
					if wait == timetable.Missed {
						c.more++
					}
					state = cardOn + int(wait)
					newest = max(newest, r.Begins(k))
				}
			}
			if r.Off {
				state = cardOff
			}
			last = r.NextHands(d.Now)
			if c.next = last; last == nil {
				rest = "clock.done"
				last = &r.Steps[len(r.Steps)-1]
			}
			c.at = r.Start + timetable.Instant(last.Start)
		}
		strip = max(strip, state)
		w.put(id, "", State, cardStates[state])
		w.text(id, ":missed")
		if c.more > -mostMissed {
			w.words("clock.missed")
			say.next(0, ". ")
			say.words("clock.missed")
		}
		w.shut()
		w.text(id, ":on")
		switch {
		case state == cardDue:
			w.which(listDue)
			say.next(0, ". ")
			say.which(listSaid)
		case c.next != nil:
			w.words("clock.due")
		case r != nil:
			w.stepOf(last, false)
		}
		w.shut()
		w.text(id, ":then")
		if state == cardDue && c.next != nil {
			w.words("clock.then")
		}
		w.shut()
		w.text(id, ":left")
		long := "over"
		if c.next != nil {
			left := int(c.at - d.Now)
			w.wait(left)
			if long = ""; left >= 3600 {
				long = "long"
			}
		}
		w.shut()
		w.put(id, ":left", State, long)
		w.text(id, ":rest")
		if r != nil {
			w.words(rest)
		}
		if state > cardOff && c.next != nil && r.Made != 0 && r.Name == name && r.Made != timetable.Sum(d.clock.steps) {
			w.words("clock.changed")
		}
		w.shut()
	}
	if strip == cardOff {
		strip = cardNone
	}
	w.put("strip.clock", "", State, cardStates[strip])
	w.open("strip.clock", "", "data-newest") // at a greater one it rings
	if newest > 0 {
		w.int(int(newest))
	}
	w.shut()
	return w.b, string(say.b), newest
}

// What a list of steps is of.
const (
	listMissed = iota // the newest few of them, the eldest first, and how many more there are
	listDue           // with since when
	listSaid          // the same without
	listNext          // all that need hands next, at the same moment
	listOn
)

// which appends steps of the card's run.
//
//go:noinline
func (w *writer) which(of int) {
	c := &w.card
	r := c.run
	from, at := len(w.b), w.Now
	skip := c.more
	for k := range r.Steps {
		s := &r.Steps[k]
		is := false
		switch of {
		case listNext:
			is = s.Do.Hands() && s.Start == c.next.Start
		case listOn:
			is = r.On(s, w.Now)
		case listMissed:
			if r.Waits(s, w.Now) == timetable.Missed {
				skip--
				is = skip < 0
			}
		default:
			is = r.Waits(s, w.Now) == timetable.Due
		}
		if !is {
			continue
		}
		begins := r.Begins(k)
		if of == listMissed {
			w.next(from, "; ")
			w.when(begins, at, false)
			at = begins
			w.char(' ')
		} else {
			w.next(from, " + ")
		}
		w.stepOf(s, of == listOn)
		if of == listDue && (k+1 == len(r.Steps) || r.Steps[k+1].Start != s.Start) {
			until := c.at
			c.at, c.count = begins, int(w.Now-begins)/60
			w.words("clock.since")
			c.at = until
		}
	}
	if of == listMissed && c.more > 0 {
		c.count = c.more
		w.words("clock.more")
	}
}

// stepOf appends a step of the card's run, that begins or that is on, with what is to be known there, and with its load where there are several.
//
//go:noinline
func (w *writer) stepOf(s *timetable.Step, on bool) {
	r := w.card.run
	key := s.Do.Key()
	if on && s.Do.Cools() { // hands were needed only as it began
		key = "cools"
	} else if on && s.Do == timetable.DoRest {
		key = "rests"
	}
	w.wordsOf("do.", key)
	detail := ""
	if s.Do == timetable.DoReclamp {
		detail = r.Gap
	} else if s.Do.Oven() {
		detail = r.Oven
	}
	if detail != "" {
		w.str(" (")
		w.str(detail)
		w.char(')')
	}
	w.ofLoad(r.Steps, s)
}

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
	d.card.run = r
	for i := range r.Steps {
		if s := &r.Steps[i]; s.Do.Hands() {
			w.stepOf(s, false)
			c.Add(s, w.cut(0))
		}
	}
	return c.File()
}
