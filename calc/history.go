package calc

// History is the sheets that were, for undo. Typing on in one field is one step.
type History struct {
	past []Sheet
	last ID // the field that the newest step began with; None for anything else
}

// longest is how many steps are kept.
const longest = 200

// Before notes that a sheet is about to change, by typing in field id, or by something else (None).
//
//go:noinline
func (h *History) Before(s *Sheet, id ID) {
	if id != None && id == h.last && len(h.past) > 0 {
		return
	}
	h.last = id
	if len(h.past) == longest {
		h.past = append(h.past[:0], h.past[1:]...)
	}
	h.past = append(h.past, *s)
}

// Pause ends a step: typing on in the same field begins a new one.
func (h *History) Pause() { h.last = None }

// Undo returns the sheet before the newest step; ok is false where there is none.
func (h *History) Undo() (s Sheet, ok bool) {
	n := len(h.past)
	if n == 0 {
		return s, false
	}
	s, h.past = h.past[n-1], h.past[:n-1]
	h.last = None
	return s, true
}

// Refilled returns a sheet after the box of field id was emptied: if it was a given, what it had taken the place of is a given again, as it was
// typed, and so is what was kept instead of it in other groups, unless that was typed over since. Where that is not known any more, the empty
// box stays the given.
func (h *History) Refilled(s Sheet, id ID) Sheet {
	g, ok := GroupOf(id)
	if !ok || s.Text[id] != "" || !s.Given[g].Has(id) {
		return s
	}
	after := &s
	for i := len(h.past) - 1; i >= 0; i-- {
		was := &h.past[i]
		if was.Given[g].Has(id) {
			after = was
			continue
		}
		next := s
		next.Given[g].let(id)
		for _, old := range was.Given[g] {
			if old != None && next.Given[g].open(&Groups[g], old) {
				next.Given[g] = Givens{old, next.Given[g][0]} // the oldest
				next.Text[old] = was.Text[old]
			}
		}
		for other := range NumGroups {
			if other != g && s.sameGroup(after, other) {
				next.copyGroup(was, other)
			}
		}
		if next.Given[g][0] == None || next.looped() {
			return s
		}
		return next
	}
	return s
}

// sameGroup reports whether two sheets say the same in a group.
func (s *Sheet) sameGroup(other *Sheet, g GroupID) bool {
	for id := None + 1; id < NumFields; id++ {
		if groupOf[id] == g && s.Text[id] != other.Text[id] {
			return false
		}
	}
	return s.Given[g] == other.Given[g]
}

// copyGroup says in a group what another sheet does.
func (s *Sheet) copyGroup(other *Sheet, g GroupID) {
	for id := None + 1; id < NumFields; id++ {
		if groupOf[id] == g {
			s.Text[id] = other.Text[id]
		}
	}
	s.Given[g] = other.Given[g]
}

// Empty reports whether there is nothing to undo.
func (h *History) Empty() bool { return len(h.past) == 0 }
