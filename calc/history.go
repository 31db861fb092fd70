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
		h.past = h.past[:copy(h.past, h.past[1:])]
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

// Refill returns a sheet as it is after the box of field id was emptied. If it was a given, what it had taken the place of is a given again, as it was typed,
// and so is the length that the precursor was kept instead of, unless that was typed over since. Where this is not known any more, the empty box
// stays the given.
func (h *History) Refill(s Sheet, id ID) Sheet {
	g, ok := GroupOf(id)
	if !ok || s.Text[id] != "" || !s.Given[g].Has(id) {
		return s
	}
	given := &s.Given[g]
	cut := s.Text[CutPrecursor] // right after id became a given
	for i := len(h.past) - 1; i >= 0; i-- {
		was := &h.past[i]
		if was.Given[g].Has(id) {
			cut = was.Text[CutPrecursor]
			continue
		}
		given.let(id)
		if s.looped() { // turns were counted on it
			given[0] = id
			break
		}
		for _, old := range was.Given[g] {
			if old != None && s.released(g, old) == None {
				*given = Givens{old, given[0]} // the oldest
				s.Text[old] = was.Text[old]
			}
		}
		if cut != "" && cut == s.Text[CutPrecursor] && was.Text[CutPrecursor] == "" {
			old := was.Given[LengthGroup][0]
			s.Given[LengthGroup] = Givens{old}
			s.Text[CutPrecursor], s.Text[old] = "", was.Text[old]
		}
		break
	}
	return s
}

// Wish returns the length that was typed and that the precursor was kept instead of, in the sheet s that came of it, as it was typed; None where
// there was none, or where the precursor was typed since.
func (h *History) Wish(s *Sheet) (id ID, text string) {
	kept := s.Text[CutPrecursor]
	then := s
	for i := len(h.past) - 1; i >= 0 && kept != "" && then.Text[CutPrecursor] == kept; i-- {
		was := &h.past[i]
		if was.Given[LengthGroup].Has(CutPrecursor) {
			then = was
			continue
		}
		id = was.Given[LengthGroup][0]
		for other := None + 1; other < NumFields; other++ {
			if other != id && other != CutPrecursor && was.Text[other] != then.Text[other] { // and not the precursor itself was typed
				return id, was.Text[id]
			}
		}
		break
	}
	return None, ""
}

// Empty reports whether there is nothing to undo.
func (h *History) Empty() bool { return len(h.past) == 0 }
