package show

import (
	"twistbench/calc"
	"twistbench/calc/quantity"
	"twistbench/calc/timetable"
)

// clock is the timetable of a plan, as it was last worked out.
type clock struct {
	_ [0]func() // not compared

	steps   []timetable.Step
	total   int               // s
	unknown calc.ID           // what has to be given before there are steps
	start   timetable.Instant // 0 while it has no day and time
	fit     timetable.Fit     // of the day and time
	taken   bool              // no day was typed, and the time is taken of the next day on which it can be
}

// Run returns the timetable of the plan that was shown last as one that starts, now or at the time that was typed. Where something has to be
// given for that, it returns the field; where there are too many loads for a timetable, neither. What the oven is set to says so where a
// note of Heat-set stops the plan, such as that of a hold above melting; the page says the same above its buttons.
//
//go:noinline
func (d *Display) Run(st *calc.State, now bool) (r *timetable.Run, missing calc.ID) {
	c := &d.clock
	start := c.start
	if now {
		start = d.Now
	}
	if c.unknown != calc.None {
		return nil, c.unknown
	}
	if len(c.steps) == 0 {
		return nil, calc.None
	}
	if start == 0 {
		return nil, calc.ClockTime
	}
	r = &timetable.Run{Start: start, Seen: d.Now, Made: timetable.Sum(c.steps), Steps: append([]timetable.Step(nil), c.steps...)}
	w := writer{Display: d, st: st}
	if st.SI(calc.ClampSecond) > 0 && !w.impossible(calc.ClampSecond) {
		w.number(calc.ClampSecond)
	}
	r.Gap = w.cut(0)
	switch set, dial := st.SI(calc.HeatSet), st.SI(calc.HeatDial); {
	case !(dial > 0): // readings give none, and the temperature wanted would be taken for it
	case dial != set: // it has readings
		w.words("clock.dial")
	default:
		w.number(calc.HeatSet)
	}
	for i := range calc.Notes {
		if n := &calc.Notes[i]; n.Level == calc.Stop && homes[n.At] == heatSection && n.When(st) {
			w.next(0, ": ")
			w.words("clock.halt")
			break
		}
	}
	r.Oven = w.cut(0)
	return r, calc.None
}

// Past reports whether the start that was typed, or follows from what was, is past by a minute and more.
func (d *Display) Past() bool { return d.clock.start != 0 && d.clock.start < d.Now-60 }

// plan works out the timetable.
func (w *writer) plan() {
	c := &w.clock
	p := &w.st.Plan
	t := timetable.Times{Stages: 2, Loads: 1}
	for part := range timetable.NumParts { // the parts are in the order of their fields
		t.Part[part] = quantity.Time(w.st.SI(calc.HeatPreheat + calc.ID(part)))
	}
	if p.Stages == calc.StagesOne {
		t.Stages = 1
	}
	if n := w.st.SI(calc.HeatLoads); n > 1 {
		t.Loads = int(min(n, timetable.MaxLoads+1))
	}
	var unknown timetable.Part
	c.steps, unknown = timetable.Steps(c.steps[:0], &t)
	c.total, c.unknown, c.start = timetable.Total(c.steps), calc.None, 0
	if unknown < timetable.NumParts {
		c.unknown = calc.HeatPreheat + calc.ID(unknown)
	}
	if len(c.steps) == 0 || w.Now == 0 || !known(float64(p.Time)) {
		return
	}
	day, lead := p.Day, timetable.Instant(0)
	if p.ClockMode == calc.ClockReady {
		lead = timetable.Instant(c.total)
	}
	c.taken = !known(float64(day))
	if c.taken {
		day, _ = w.Zone.Local(w.Now)
	}
	c.start, c.fit = w.Zone.Instant(day, p.Time)
	c.start -= lead
	// Without a day it is the next such time for which the start is not past. A day of a change of the clocks is longer or shorter: that takes
	// another look.
	for c.taken && w.Past() {
		day += quantity.Day(max((w.Now-60-c.start)/86400, 1))
		c.start, c.fit = w.Zone.Instant(day, p.Time)
		c.start -= lead
	}
}

// timetable appends the slots of the clock's section: a row for each step, and when all is done.
func (w *writer) timetable() {
	c := &w.clock
	w.open("clock.table", "", Rows)
	for i := range c.steps {
		s := &c.steps[i]
		if i > 0 {
			w.char(Row)
		}
		if i == 0 && c.start != 0 {
			w.when(c.start, w.Now, true)
		} else {
			w.moment(s.Start)
		}
		if s.Do.Hands() {
			w.str(" ●")
		}
		w.char(Cell)
		w.doing(s)
		w.char(Cell)
		if s.Length > 0 {
			w.hm(s.Length)
		}
	}
	w.shut()
	w.text("clock.at", "")
	switch {
	case len(c.steps) == 0:
		w.str(quantity.Unknown)
	case c.start != 0:
		w.when(c.start+timetable.Instant(c.total), c.start, true)
	default:
		w.moment(c.total)
	}
	w.shut()
	w.text("clock.ready", "")
	w.ready()
	w.shut()
}

// ready appends when all is done, or what has to be given first, or why there is no such time.
func (w *writer) ready() {
	key := "clock.from"
	switch c := &w.clock; {
	case c.unknown != calc.None:
		w.needing(c.unknown)
		return
	case len(c.steps) == 0:
		key = "note.loads-many"
	case c.start == 0:
		key = "clock.lasts"
	}
	w.words(key)
}

// clockSays appends what there is to say of the time that was typed; without a day, always which one is taken.
func (w *writer) clockSays() {
	c := &w.clock
	switch {
	case c.start == 0:
		return
	case w.Past():
		w.words("clock.past")
		return
	case c.fit == timetable.Never:
		w.words("clock.never")
	case c.fit == timetable.Doubled:
		w.words("clock.twice")
	}
	if c.taken {
		if c.fit != timetable.Once {
			w.char(' ')
		}
		w.words("clock.from")
	}
}

// moment appends when the timetable is so many seconds old: on the clock, or counted from its start.
//
//go:noinline
func (w *writer) moment(seconds int) {
	if start := w.clock.start; start != 0 {
		w.when(start+timetable.Instant(seconds), start, false)
		return
	}
	w.char('+')
	w.hm(seconds)
}

// when appends what local clocks say at an instant: 09:55, with the day of the week if it is on another day than an instant before, and
// with the date if that is not in the week after it. The day is named always, or only then.
//
//go:noinline
func (w *writer) when(i, from timetable.Instant, always bool) {
	day, clock := w.Zone.Local(i)
	was, _ := w.Zone.Local(from)
	if always || day != was {
		n := day.Weekday()
		w.wordsOf("day.", "1234567"[n-1:n])
		w.char(' ')
		if day < was || day > was+6 {
			date := day.Date()
			w.int(date.Year)
			w.char('-')
			w.two(date.Month)
			w.char('-')
			w.two(date.Day)
			w.char(' ')
		}
	}
	w.hm(int(clock))
}

// hm appends hours and minutes.
//
//go:noinline
func (w *writer) hm(seconds int) {
	if seconds < 36000 {
		w.char('0')
	}
	w.int(seconds / 3600)
	w.char(':')
	w.two(seconds / 60 % 60)
}

// two appends a number below 100 in two digits.
//
//go:noinline
func (w *writer) two(n int) {
	w.char(byte('0' + n/10))
	w.char(byte('0' + n%10))
}

// doing appends what is done in a step, and with which load where there are several.
//
//go:noinline
func (w *writer) doing(s *timetable.Step) {
	w.wordsOf("do.", s.Do.Key())
	w.ofLoad(w.clock.steps, s)
}

// ofLoad appends with which load a step of some is done, where there are several. All wait for the preheat.
//
//go:noinline
func (w *writer) ofLoad(steps []timetable.Step, s *timetable.Step) {
	if s.Do != timetable.DoPreheat && timetable.Loads(steps) > 1 {
		w.words("clock.load")
		w.char(' ')
		w.int(s.Load)
	}
}
