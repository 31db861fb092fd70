package timetable

import (
	"strconv"
	"strings"

	"twistbench/calc/quantity"
)

// Run is a timetable that was started.
type Run struct {
	Name  string  // of the plan
	Start Instant // of the first step; it stays the same however late the run is
	Seen  Instant // what came due up to here was seen to
	Steps []Step  // in the order of their starts
}

// patience is how long a step that came due is said to be due (s).
const patience = 600

// At returns the places of the step that is on with a load and of the one after it; -1 where there is none. Between two steps, and before the
// first, none is on: the load waits for the next. The last of a load, from which on it is ready to test, stays on.
func (r *Run) At(now Instant, load int) (on, next int) {
	on, next = -1, -1
	t := int(now - r.Start)
	for i := range r.Steps {
		s := &r.Steps[i]
		switch {
		case s.Load != load:
		case s.Start > t:
			return on, i
		case s.End() > t || s.Do == DoReady:
			on = i
		}
	}
	return on, next
}

// Ends returns when the step that is on with a load ends, or, where none is on, the next one starts; ok is false when no more is to come.
func (r *Run) Ends(now Instant, load int) (i Instant, ok bool) {
	on, next := r.At(now, load)
	switch {
	case next < 0:
		return 0, false
	case on < 0:
		return r.Start + Instant(r.Steps[next].Start), true
	}
	return r.Start + Instant(r.Steps[on].End()), true
}

// Due returns the place of the step that came due with a load and was not seen to, -1 for none: the newest that needs hands, for ten minutes.
func (r *Run) Due(now Instant, load int) int {
	due := -1
	for i := range r.Steps {
		s := &r.Steps[i]
		if at := r.Start + Instant(s.Start); s.Load == load && s.Do.Hands() && at <= now && at > r.Seen && now-at < patience {
			due = i
		}
	}
	return due
}

// Loads returns how many loads a run has.
func (r *Run) Loads() int {
	n := 0
	for i := range r.Steps {
		n = max(n, r.Steps[i].Load)
	}
	return n
}

// Over returns when all is done.
func (r *Run) Over() Instant { return r.Start + Instant(Total(r.Steps)) }

// Late makes the step that is on with a load longer by some seconds, or puts off the next one where none is on. Whatever had to wait for
// it moves: the rest of the load, and loads that need the oven. It reports whether there was anything left to be late with.
func (r *Run) Late(now Instant, load, by int) bool {
	on, next := r.At(now, load)
	switch {
	case by <= 0 || next < 0 || Total(r.Steps)+by > longestRun:
		return false
	case on >= 0:
		r.Steps[on].Length += by
	default:
		r.Steps[next].Start += by
	}
	var a after
	for i := range r.Steps {
		s := &r.Steps[i]
		s.Start = max(s.Start, a.earliest(s))
		a.note(s)
	}
	inOrder(r.Steps)
	return true
}

// longestRun is more than a run lasts (s).
const longestRun = int(NumDos) * MaxLoads * longest

// Text writes a run as it is kept on a device: "1", the start and how far was seen to, the steps, each as what is done, load, start and
// length, and the name.
func (r *Run) Text() string {
	b := []byte("1 ")
	b = strconv.AppendInt(b, int64(r.Start), 10)
	b = append(b, ' ')
	b = strconv.AppendInt(b, int64(r.Seen), 10)
	for i := range r.Steps {
		s := &r.Steps[i]
		mark := byte(' ')
		for _, n := range [...]int{int(s.Do), s.Load, s.Start, s.Length} {
			b = append(b, mark)
			b = strconv.AppendInt(b, int64(n), 10)
			mark = '.'
		}
	}
	b = append(b, " ="...)
	return string(append(b, r.Name...))
}

// latest is the last instant of the year 9998.
const latest = 253370764800 - 1

// ParseRun reads what Text wrote. Anything else is refused: ok is false.
func ParseRun(text string) (r Run, ok bool) {
	head, name, ok := strings.Cut(text, " =")
	if !ok || !plain(name) {
		return r, false
	}
	version, head, _ := strings.Cut(head, " ")
	start, head, _ := strings.Cut(head, " ")
	seen, head, _ := strings.Cut(head, " ")
	began, good := quantity.Digits(start)
	saw, fine := quantity.Digits(seen)
	if version != "1" || !good || !fine || began > latest || saw > latest {
		return r, false
	}
	r = Run{Name: name, Start: Instant(began), Seen: Instant(saw)}
	for more := true; more; {
		var word string
		word, head, more = strings.Cut(head, " ")
		s, ok := parseStep(word)
		if n := len(r.Steps); !ok || n > 0 && s.Start < r.Steps[n-1].Start || n >= int(NumDos)*MaxLoads {
			return Run{}, false
		}
		r.Steps = append(r.Steps, s)
	}
	return r, true
}

func parseStep(word string) (s Step, ok bool) {
	var n [4]int
	for i := range n {
		part := word
		if i < len(n)-1 {
			part, word, _ = strings.Cut(word, ".")
		}
		if n[i], ok = quantity.Digits(part); !ok {
			return s, false
		}
	}
	s = Step{Do(min(n[0], int(NumDos))), n[1], n[2], n[3]}
	return s, s.Do < NumDos && s.Load >= 1 && s.Load <= MaxLoads && s.Start <= longestRun && s.Length <= longestRun
}

// plain reports whether a text has no control characters.
func plain(text string) bool {
	for i := range len(text) {
		if text[i] < ' ' || text[i] == 0x7f {
			return false
		}
	}
	return true
}
