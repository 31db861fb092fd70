package calc

import (
	"unicode/utf8"

	"twistbench/calc/quantity"
)

// Sheet is what is kept, undone, saved and shared: the text of each field as it was typed, with its unit, empty for worked-out
// members of a group; and the givens of each group, oldest first. Two equal sheets are the same plan.
type Sheet struct {
	Text  [NumFields]string
	Given [NumGroups]Givens
}

// Start returns the sheet that the page opens on.
func Start() Sheet {
	var s Sheet
	for id := None + 1; id < NumFields; id++ {
		s.Text[id] = Fields[id].Start
		if s.Text[id] != "" {
			s.give(id)
		}
	}
	return s
}

// Cleared returns the sheet with nothing typed in it but what belongs to the bench and not to a muscle: hook, masses, tails, doubts, the
// frame, and the choices among words. The givens stay the givens, empty.
func (s Sheet) Cleared() Sheet {
	for id := range s.Text {
		if f := &Fields[id]; !f.Bench && f.Words == nil {
			s.Text[id] = ""
		}
	}
	return s
}

// Anew returns the sheet for another muscle from the same numbers: without what was measured on the last one.
func (s Sheet) Anew() Sheet {
	s.Text[ClampMeasured], s.Text[ClampRelaxed], s.Text[DriveCurve] = "", "", ""
	return s
}

// Type returns the sheet with text typed into field id. A bare number gets unit, the box's own, at once, so that it keeps its meaning; a
// text that can't be read is kept as it is. A member of a group becomes a given: see give.
func (s Sheet) Type(id ID, text, unit string) Sheet {
	s.Text[id] = Attach(id, text, unit)
	s.give(id)
	return s
}

// give makes a member of a group a given, the newest. The given that says the same fact is let go, and else the oldest where there is no
// room for one more.
func (s *Sheet) give(id ID) {
	g, ok := GroupOf(id)
	if !ok {
		return
	}
	if gone := s.released(g, id); gone != None {
		if gone != id {
			s.Text[gone] = ""
		}
		s.Given[g].let(gone)
	}
	if s.Given[g][0] == None {
		s.Given[g][0] = id
	} else {
		s.Given[g][1] = id
	}
}

// let takes out a given.
func (g *Givens) let(id ID) {
	if g[0] == id {
		g[0] = g[1]
	}
	g[1] = None
}

// released returns the given of group g whose place id takes, itself if it is one; None where there is room for both.
func (s *Sheet) released(g GroupID, id ID) ID {
	group, given := &Groups[g], s.Given[g]
	for _, old := range given {
		if old != None && group.Fact(old) == group.Fact(id) {
			return old
		}
	}
	if group.Free() > 1 && given[1] == None {
		return None
	}
	return given[0]
}

// Attach returns text with unit behind it where the text is a bare number of a kind that has units.
func Attach(id ID, text, unit string) string {
	text = quantity.Trim(Clean(text))
	f := &Fields[id]
	if text == "" || f.Words != nil || f.Unit == "" {
		return text
	}
	k := KindOf(id)
	if k.Unit(unit) == nil {
		unit = f.Unit
	}
	if isList(k) {
		return text
	}
	if r, err := k.Parse(text, unit); err == nil && r.Bare && unit != "" {
		if with := text + " " + unit; says(k, with, unit, r.SI, false) {
			return with
		}
		if with := unit + " " + text; says(k, with, unit, r.SI, false) { // 470 f34
			return with
		}
	}
	return text
}

// says reports whether a text, bare or with its unit, says a value.
//
//go:noinline
func says(k *quantity.Kind, text, unit string, si float64, bare bool) bool {
	r, err := k.Parse(text, unit)
	return err == nil && r.SI == si && r.Bare == bare
}

// Clean takes out of a text what no box can hold: control characters, which would be taken for the end of a slot, and bytes that are no
// character.
func Clean(text string) string {
	clean := true
	for _, r := range text {
		clean = clean && r != utf8.RuneError && !isControl(r)
	}
	if clean {
		return text
	}
	var b []byte
	for _, r := range text {
		if !isControl(r) {
			b = utf8.AppendRune(b, r)
		}
	}
	return string(b)
}

//go:noinline
func isControl(r rune) bool { return r < ' ' && r != '\n' && r != '\t' || r == 0x7f }

// Detach splits a kept text into what its box shows and the unit beside it: the number alone where the unit, in whichever way it was typed, says
// no more than that beside it. Attach makes a text of them that says the same.
func Detach(id ID, text string) (shown, unit string) {
	f := &Fields[id]
	if text == "" || f.Words != nil || f.Unit == "" || isList(KindOf(id)) {
		return text, f.Unit
	}
	k := KindOf(id)
	r, err := k.Parse(text, f.Unit)
	if err != nil || r.Unit == nil {
		return text, f.Unit
	}
	unit = r.Unit.Symbol
	for i := 1; i < len(text) && unit != ""; i++ {
		number, name := quantity.Trim(text[:i]), quantity.Trim(text[i:])
		for range 2 { // the unit behind the number, or before it
			if name != "" && k.Unit(name) == r.Unit && says(k, number, unit, r.SI, true) {
				return number, unit
			}
			number, name = name, number
		}
	}
	return text, unit
}

func isList(k *quantity.Kind) bool { return k.Style == quantity.StyleList }
