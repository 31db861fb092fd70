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
	Made  int     // Sum of the steps as it was started, however late it is by now; 0 where that is not known
	Gap   string  // the second, with its unit; empty where it is not known
	Oven  string  // what it is set to, as that is said; empty where it is not known
	Steps []Step  // in the order of their starts
	Off   bool    // stopped, and about to be forgotten
}

// Wait says whether a step waits for hands.
type Wait uint8

// The waits, the gravest last.
const (
	Nothing Wait = iota // no hands are needed, or not yet, or it was seen to
	Missed              // it came due long ago, and nobody said that it was seen to
	Due                 // it came due just now
)

// patience is how long a step that came due is said to be due (s). From then on it was missed, until it is seen to: also what came due while
// the page was away is then said.
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

// NextHands returns the first step still to come that needs hands, of whichever load; nil for none.
func (r *Run) NextHands(now Instant) *Step {
	for i := range r.Steps {
		if s := &r.Steps[i]; s.Do.Hands() && r.Start+Instant(s.Start) > now {
			return s
		}
	}
	return nil
}

// On reports whether a step is on. Several may be, with several loads; none while all wait for the oven.
func (r *Run) On(s *Step, now Instant) bool {
	t := int(now - r.Start)
	return s.Start <= t && t < s.End()
}

// Waits says whether a step waits for hands. Several may at once.
//
//go:noinline
func (r *Run) Waits(s *Step, now Instant) Wait {
	switch at := r.Start + Instant(s.Start); {
	case !s.Do.Hands() || at > now || at <= r.Seen:
		return Nothing
	case now-at < patience:
		return Due
	}
	return Missed
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

// Sum returns a number, never 0, that steps with anything else in them are not likely to have (FNV-1a, of numbers and not of bytes).
//
//go:noinline
func Sum(steps []Step) int {
	h, p := uint32(2166136261), uint32(16777619)
	for i := range steps {
		s := &steps[i]
		h = (((h^uint32(s.Do)<<8^uint32(s.Load))*p^uint32(s.Start))*p ^ uint32(s.Length)) * p
	}
	return int(h) + 1
}

// Text writes a run as it is kept on a device: 3, the start, how far was seen to, the sum, and of each step what is done, load, start and length, each
// with a blank behind it; then the gap, the oven and the name, each with = before it. The gap and the oven have no = in them.
func (r *Run) Text() string {
	var w intWriter
	w.int(3)
	w.int(int(r.Start))
	w.int(int(r.Seen))
	w.int(r.Made)
	for i := range r.Steps {
		s := &r.Steps[i]
		w.int(int(s.Do))
		w.int(s.Load)
		w.int(s.Start)
		w.int(s.Length)
	}
	return string(w) + "=" + r.Gap + "=" + r.Oven + "=" + r.Name
}

// intWriter writes whole numbers, each with a blank behind it.
type intWriter []byte

//go:noinline
func (w *intWriter) int(n int) { *w = append(strconv.AppendInt(*w, int64(n), 10), ' ') }

// latest is the last instant of the year 9998.
const latest = 253370764800 - 1

// Parse reads what Text wrote, or once wrote: 2, and no sum; 1, and no gap and oven either. It reports whether that is what the text is; if not, the run is none.
func (r *Run) Parse(text string) bool {
	*r = Run{}
	s := ints{text: text}
	version := s.next()
	ok := version >= 1 && version <= 3
	start, seen, made := s.next(), s.next(), 0
	if version == 3 {
		made = s.next()
	}
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
		if c := name[i]; c < ' ' && c != '\n' && c != '\t' || c == 0x7f { // what no box can hold
			return false
		}
	}
	gap, oven := "", ""
	if version > 1 {
		gap, name = quantity.Split(name, '=')
		oven, name = quantity.Split(name, '=')
	}
	*r = Run{Name: name, Start: Instant(start), Seen: Instant(seen), Made: made, Gap: gap, Oven: oven, Steps: steps}
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
