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

// Empty reports whether there is nothing to undo.
func (h *History) Empty() bool { return len(h.past) == 0 }
