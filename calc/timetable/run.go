package timetable

import (
	"strconv"

	"twistbench/calc/quantity"
)

// Run is a timetable that was started.
type Run struct {
	Name  string  // of the plan
	Start Instant // of the first step; it stays the same however late the run is
	Seen  Instant // what came due up to here was seen to
	Steps []Step  // in the order of their starts
	Off   bool    // stopped, and about to be forgotten
}

// patience is how long a step that came due is said to be due (s).
const patience = 600

// At returns the places of the step that began last and of the one that begins next, -1 where there is none: the time until then is counted
// down. Where loads are under way side by side, each may be of another load.
func (r *Run) At(now Instant) (on, next int) {
	on, next = -1, -1
	for i := range r.Steps {
		if r.Begins(i) > now {
			return on, i
		}
		on = i
	}
	return on, next
}

// Begins returns when step i begins.
func (r *Run) Begins(i int) Instant { return r.Start + Instant(r.Steps[i].Start) }

// NextHands returns the place of the first step still to come that needs hands, of whichever load; -1 for none.
func (r *Run) NextHands(now Instant) int {
	for i := range r.Steps {
		if r.Steps[i].Do.Hands() && r.Begins(i) > now {
			return i
		}
	}
	return -1
}

// On returns the step that is on with a load, nil where there is none: before its first, and while it waits for the oven.
func (r *Run) On(load int, now Instant) *Step {
	for i := range r.Steps {
		if s := &r.Steps[i]; s.Load == load && r.Begins(i) <= now && now < r.Start+Instant(s.End()) {
			return s
		}
	}
	return nil
}

// Due returns the place of the newest step that needs hands and was not seen to, for ten minutes; -1 for none.
func (r *Run) Due(now Instant) int {
	due := -1
	for i := range r.Steps {
		if r.Waits(i, now) {
			due = i
		}
	}
	return due
}

// Waits reports whether step i needs hands and was not seen to, for ten minutes. Several may at once, with several loads.
func (r *Run) Waits(i int, now Instant) bool {
	at := r.Begins(i)
	return r.Steps[i].Do.Hands() && at <= now && at > r.Seen && now-at < patience
}

// Late makes what is on longer by some seconds, and moves everything that is still to come; less than 0 makes up for it again, as far as
// nothing that is to come would have begun already. It reports whether anything moved.
func (r *Run) Late(now Instant, by int) bool {
	_, next := r.At(now)
	if next < 0 || r.Begins(next)+Instant(by) <= now || Total(r.Steps)+by > longestRun {
		return false
	}
	t := int(now - r.Start)
	for i := range r.Steps {
		if s := &r.Steps[i]; s.Start > t {
			s.Start += by
		} else if s.End() > t {
			s.Length += by
		}
	}
	return true
}

// longestRun is more than a run lasts (s).
const longestRun = int(NumDos) * MaxLoads * longest

// Text writes a run as it is kept on a device: 1, the start, how far was seen to, and of each step what is done, load, start and length, each
// with a blank behind it; then = and the name.
func (r *Run) Text() string {
	var w intWriter
	w.int(1)
	w.int(int(r.Start))
	w.int(int(r.Seen))
	for i := range r.Steps {
		s := &r.Steps[i]
		w.int(int(s.Do))
		w.int(s.Load)
		w.int(s.Start)
		w.int(s.Length)
	}
	return string(w) + "=" + r.Name
}

// intWriter writes whole numbers, each with a blank behind it.
type intWriter []byte

//go:noinline
func (w *intWriter) int(n int) { *w = append(strconv.AppendInt(*w, int64(n), 10), ' ') }

// latest is the last instant of the year 9998.
const latest = 253370764800 - 1

// Parse reads what Text wrote. It reports whether that is what the text is; if not, the run is none.
func (r *Run) Parse(text string) bool {
	*r = Run{}
	s := ints{text: text}
	ok := s.next() == 1
	start, seen := s.next(), s.next()
	var steps []Step
	last := 0
	for !s.bad && s.text != "" && s.text[0] != '=' && len(steps) < int(NumDos)*MaxLoads {
		do := s.next()
		step := Step{Do(do), s.next(), s.next(), s.next()}
		ok = ok && do < int(NumDos) && step.Load >= 1 && step.Load <= MaxLoads && step.Start >= last && step.Start <= longestRun && step.Length <= longestRun
		last = step.Start
		steps = append(steps, step)
	}
	name, named := quantity.CutPrefix(s.text, "=")
	if !ok || s.bad || steps == nil || !named || start > latest || seen > latest {
		return false
	}
	for i := range len(name) {
		if name[i] < ' ' || name[i] == 0x7f {
			return false
		}
	}
	*r = Run{Name: name, Start: Instant(start), Seen: Instant(seen), Steps: steps}
	return true
}

// ints reads whole numbers of up to twelve digits, each with a blank behind it.
type ints struct {
	text string // what is left
	bad  bool   // something else was there
}

//go:noinline
func (s *ints) next() (n int) {
	i := 0
	for ; i < len(s.text) && s.text[i] >= '0' && s.text[i] <= '9'; i++ {
		n = n*10 + int(s.text[i]-'0')
	}
	if i == 0 || i > 12 || i == len(s.text) || s.text[i] != ' ' {
		s.bad = true
		return 0
	}
	s.text = s.text[i+1:]
	return n
}
