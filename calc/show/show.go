package show

import (
	"math"
	"strconv"

	"twistbench/calc"
	"twistbench/calc/craft"
	"twistbench/calc/quantity"
	"twistbench/calc/words"
)

// Slots appends every slot of a worked plan, always the same ones in the same order.
func (d *Display) Slots(b []byte, st *calc.State) []byte {
	for id := calc.None + 1; id < calc.NumFields; id++ {
		b = d.box(b, st, id)
	}
	for id := calc.NumFields; id < calc.NumIDs; id++ {
		b = d.answer(b, st, id)
	}
	for i := range calc.Notes {
		b = d.note(b, st, &calc.Notes[i])
	}
	b = d.repeated(b, st)
	return d.drawings(b, st)
}

// box appends the slots of a field: what it holds, its unit, whose number it is, its ± and what there is to say of it.
func (d *Display) box(b []byte, st *calc.State, id calc.ID) []byte {
	f := &calc.Fields[id]
	n := &st.Notices[id]
	worked := st.Worked(id)

	b = open(b, f.Key, "", Value)
	unit := ""
	switch {
	case f.Words != nil:
		b = str(b, f.Words[int(st.SI(id))])
	case worked:
		b = d.AppendNumber(b, st, id)
		if u := d.Unit(st, id); u != nil {
			unit = u.Symbol
		}
	default:
		text := ""
		text, unit = d.detach(id, st.Text(id))
		if text == "" {
			if u := d.Unit(st, id); u != nil {
				unit = u.Symbol
			}
		}
		b = str(b, text)
	}
	b = shut(b)
	if f.Unit != "" {
		b = put(b, f.Key, ":unit", Value, unit)
	}
	if f.Words == nil {
		state, mark := d.boxState(st, id, worked)
		b = put(b, f.Key, ":box", State, state)
		b = open(b, f.Key, ":mark", Text)
		b = shut(d.about(b, mark, id, st, about{other: st.Needs(id)}))
		b = open(b, f.Key, ":doubt", Text)
		b = shut(d.AppendDoubt(b, st, id))
	}
	b = open(b, f.Key, ":says", Text)
	b = shut(d.says(b, st, id))
	bad := "false"
	if n.Reason != "" && id != d.Typing {
		bad = "true"
	}
	b = put(b, f.Key, "", "aria-invalid", bad)
	if f.Words == nil {
		other := d.Other(st, id)
		b = open(b, f.Key, ":other", Text)
		if other != "" {
			b = d.about(b, "reading.other", id, st, about{text: other})
		}
		b = shut(b)
		b = hidden(b, f.Key, ":other", other == "")
	}
	if HasWorking(id) {
		b = d.workingSlot(b, st, id)
	}
	return b
}

// detached is a typed text taken apart: what its box shows, and the unit beside it.
type detached struct{ text, shown, unit string }

// detach takes a typed text apart, and remembers: at a keystroke one text changes and the others stay.
func (d *Display) detach(id calc.ID, text string) (shown, unit string) {
	was := &d.typed[id]
	if was.unit == "" || was.text != text {
		was.text = text
		was.shown, was.unit = calc.Detach(id, text)
	}
	return was.shown, was.unit
}

// HasWorking reports whether a number can have been worked out, so that the page offers its working.
func HasWorking(id calc.ID) bool {
	_, grouped := calc.GroupOf(id)
	return grouped || !id.IsField() || calc.HasBook(id)
}

// workingSlot appends the working of a number while it is open; one that is closed is not rendered.
func (d *Display) workingSlot(b []byte, st *calc.State, id calc.ID) []byte {
	b = open(b, id.Key(), ":working", Text)
	if d.Open[id] {
		b = d.Working(b, st, id)
	}
	return shut(b)
}

// boxState returns the state of a box and the key of its mark.
func (d *Display) boxState(st *calc.State, id calc.ID, worked bool) (state, mark string) {
	_, grouped := calc.GroupOf(id)
	switch {
	case st.Notices[id].Reason != "" && id != d.Typing:
		return "stop", ""
	case worked && math.IsNaN(st.SI(id)):
		switch st.Needs(id) {
		case id:
			return "unknown", ""
		case calc.ClampStages:
			return "unknown", "mark.one-stage"
		}
		return "unknown", "mark.unknown"
	case grouped && !worked && st.Text(id) == "":
		return "unknown", "mark.empty"
	case worked && impossible(st, id):
		return "stop", "mark.worked"
	case worked && grouped:
		return "worked", "mark.worked"
	case worked:
		return "worked", "mark.book"
	case unusual(st, id):
		return "care", given(grouped)
	case grouped:
		return "given", "mark.given"
	}
	return "plain", ""
}

func given(grouped bool) string {
	if grouped {
		return "mark.given"
	}
	return ""
}

// impossible reports whether a worked-out number lies outside what is possible.
func impossible(st *calc.State, id calc.ID) bool {
	f := &calc.Fields[id]
	x := st.SI(id)
	return x < f.Low || x > f.High
}

// unusual reports whether a number lies outside what is usual.
func unusual(st *calc.State, id calc.ID) bool {
	f := &calc.Fields[id]
	x := st.SI(id)
	return f.Usual != [2]float64{} && (x < f.Usual[0] || x > f.Usual[1])
}

// says appends the line under a box: a problem, how the text was read, or advice. What the box means stands on the page.
func (d *Display) says(b []byte, st *calc.State, id calc.ID) []byte {
	f := &calc.Fields[id]
	n := &st.Notices[id]
	x := st.SI(id)
	switch {
	case n.Reason != "":
		if id == d.Typing {
			return b
		}
		return d.AppendProblem(b, st, id, n.Problem)
	case f.Words != nil || math.IsNaN(x):
		return b
	case st.Value(id).Kind().Style == quantity.StyleList:
		return d.list(b, st, id)
	case n.Other != "":
		return d.about(b, "reading.decimal", id, st, about{limit: x})
	case st.Worked(id) && impossible(st, id):
		return d.about(b, "advice.impossible", id, st, about{})
	case st.Value(id).Kind().Style == quantity.StyleRatio:
		b = d.ratio(b, st, x)
		if !unusual(st, id) {
			return b
		}
		b = append(b, ' ')
		return d.about(b, "advice.usual", id, st, about{limit: f.Usual[0], high: f.Usual[1]})
	case unusual(st, id):
		return d.about(b, "advice.usual", id, st, about{limit: f.Usual[0], high: f.Usual[1]})
	case !st.Worked(id) && commercial(st, id):
		return d.about(b, "reading.about", id, st, about{text: d.own(st, id, x)})
	case !st.Worked(id) && d.odd(st, id):
		return d.about(b, "reading.echo", id, st, about{text: d.own(st, id, x)})
	case id == calc.HangStress:
		return d.about(b, "reading.on", id, st, about{})
	case id == calc.ClampSecondStretch:
		return d.about(b, "reading.of", id, st, about{})
	}
	return b
}

// commercial reports whether a number was typed in a commercial unit, which the trade rounds.
func commercial(st *calc.State, id calc.ID) bool {
	u := st.Value(id).Kind().Unit(st.Notices[id].Unit)
	return u != nil && u.About
}

// own returns a value in the unit of the field's row, or its US counterpart, whatever was typed.
func (d *Display) own(st *calc.State, id calc.ID, x float64) string {
	u := d.usual(st.Value(id).Kind(), id)
	return string(appendUnit(appendTrimmedUnit(nil, x, u, max(digitsOf(id), 4), d.Lang.Mark), u))
}

// list appends how many masses a list has, and what they weigh together.
func (d *Display) list(b []byte, st *calc.State, id calc.ID) []byte {
	u := d.Unit(st, id)
	return words.Expand(b, d.Lang.Say("reading.list"), func(b []byte, name string) []byte {
		sum := 0.0
		for i := range st.Set {
			it := &st.Set[i]
			sum += it.Each * float64(it.Count)
			if name != "part" {
				continue
			}
			if i > 0 {
				b = str(b, ", ")
			}
			if it.Count > 1 {
				b = strconv.AppendInt(b, int64(it.Count), 10)
				b = str(b, " × ")
			}
			b = appendUnit(appendTrimmedUnit(b, it.Each, u, 6, d.Lang.Mark), u)
		}
		if name == "part" {
			return b
		}
		return d.appendAt(b, st, id, sum)
	})
}

// ratio appends a ratio as a sentence: how much fibre 100 mm of coil uses.
func (d *Display) ratio(b []byte, st *calc.State, x float64) []byte {
	return d.about(b, "reading.ratio", calc.CutPrecursor, st, about{limit: 0.1 * x})
}

// odd reports whether a typed text is worth echoing in the box's own unit: plies, fractions, sums, other units.
func (d *Display) odd(st *calc.State, id calc.ID) bool {
	f := &calc.Fields[id]
	if f.Unit == "" {
		return false
	}
	text := st.Text(id)
	shown, unit := d.detach(id, text)
	if unit != unitOf(id) {
		return true
	}
	for i := range len(shown) {
		if c := shown[i]; (c < '0' || c > '9') && c != '.' && c != ',' && c != '-' {
			return true
		}
	}
	return st.Value(id).Kind().Style == quantity.StyleShare && text == shown
}

// Other returns the text that one tap puts in place of the one typed: its other reading, or what was more likely meant. It is empty where
// there is neither.
func (d *Display) Other(st *calc.State, id calc.ID) string {
	if other := st.Notices[id].Other; other != "" {
		return other
	}
	return d.near(st, id)
}

// near returns a text that was more likely meant than the one typed: ten or a hundred times less or more, where that is usual.
func (d *Display) near(st *calc.State, id calc.ID) string {
	f := &calc.Fields[id]
	if st.Worked(id) || !unusual(st, id) || f.Unit == "" {
		return ""
	}
	u := d.Unit(st, id)
	if own := st.Value(id).Kind().Unit(f.Unit); own != u { // the unit stayed from a number before
		if x := own.ToSI(u.FromSI(st.SI(id))); x >= f.Usual[0] && x <= f.Usual[1] {
			return string(appendUnit(appendTrimmedUnit(nil, x, own, 6, d.Lang.Mark), own))
		}
	}
	for i, by := range [...]float64{100, 0.1, 10, 0.01, 100, 0.001, 1000} {
		if i == 0 && st.Value(id).Kind().Style != quantity.StylePercent {
			continue // 0.42 for 42 % is the likelier slip
		}
		if x := st.SI(id) * by; x >= f.Usual[0] && x <= f.Usual[1] {
			return string(appendUnit(appendTrimmedUnit(nil, x, u, 6, d.Lang.Mark), u))
		}
	}
	return ""
}

// AppendProblem appends the sentence for a problem of a field.
func (d *Display) AppendProblem(b []byte, st *calc.State, id calc.ID, p calc.Problem) []byte {
	return d.about(b, "problem."+string(p.Reason), id, st, about{text: p.Part, limit: p.Limit})
}

// AppendFault appends the sentence for a fault of a plan text.
func (d *Display) AppendFault(b []byte, st *calc.State, f calc.Fault) []byte {
	return d.about(b, "problem."+string(f.Reason), calc.Find(f.Key), st, about{text: f.Part, other: f.With})
}

// about is what a sentence may name besides numbers of the plan.
type about struct {
	text        string
	limit, high float64
	other       calc.ID
}

// about appends the words of a key, said of a number. An empty key says nothing.
func (d *Display) about(b []byte, key string, id calc.ID, st *calc.State, a about) []byte {
	if key == "" {
		return b
	}
	return words.Expand(b, d.Lang.Say(key), func(b []byte, name string) []byte {
		switch name {
		case "name":
			return d.name(b, id)
		case "part":
			return str(b, a.text)
		case "limit":
			return d.appendAt(b, st, id, a.limit)
		case "units":
			return d.units(b, id)
		case "other":
			switch {
			case a.other != calc.None:
				return d.name(b, a.other)
			case a.text != "":
				return str(b, a.text)
			}
			return d.appendAt(b, st, id, a.high)
		}
		return d.named(b, st, name)
	})
}

func (d *Display) name(b []byte, id calc.ID) []byte {
	if id == calc.None {
		return b
	}
	return str(b, d.Lang.SayOf("name.", id.Key()))
}

// named appends the number of a key.
func (d *Display) named(b []byte, st *calc.State, key string) []byte {
	if id := calc.Find(key); id != calc.None {
		return d.Append(b, st, id)
	}
	return str(b, key)
}

// units appends the units or the words that a field takes.
func (d *Display) units(b []byte, id calc.ID) []byte {
	f := &calc.Fields[id]
	n := len(b)
	add := func(s string) {
		if len(b) > n {
			b = str(b, ", ")
		}
		b = str(b, s)
	}
	for _, w := range f.Words {
		add(w)
	}
	if f.Words == nil {
		var p calc.Plan
		for _, u := range p.Value(id).Kind().Units {
			if u.Symbol != "" {
				add(u.Symbol)
			}
		}
	}
	return b
}

// answer appends the slots of an answer.
func (d *Display) answer(b []byte, st *calc.State, id calc.ID) []byte {
	key := id.Key()
	b = open(b, key, "", Text)
	b = shut(d.Append(b, st, id))
	v := st.Value(id)
	unknown := v != nil && math.IsNaN(v.SI())
	state := "plain"
	if unknown {
		state = "unknown"
	}
	b = put(b, key, ":row", State, state)
	b = open(b, key, ":doubt", Text)
	if unknown {
		if needs := st.Needs(id); needs != calc.None && needs != id {
			b = d.about(b, "mark.unknown", id, st, about{other: needs})
		}
	} else if by := st.Doubt[id]; !math.IsNaN(by) {
		b = d.AppendDoubt(b, st, id)
		b = append(b, ' ')
		b = d.about(b, "mark.mostly", id, st, about{other: st.Mostly[id]})
	}
	return d.workingSlot(shut(b), st, id)
}

// note appends the slots of a note.
func (d *Display) note(b []byte, st *calc.State, n *calc.Note) []byte {
	says := n.When(st)
	b = open(b, "note.", n.Key, Text)
	if says {
		b = d.AppendNote(b, st, n)
	}
	b = shut(b)
	b = append(append(str(b, "note."), n.Key...), ":row"...)
	b = append(append(append(b, Part), Hidden...), Part)
	if !says {
		b = append(b, '1')
	}
	return shut(b)
}

// AppendNote appends the sentence of a note.
func (d *Display) AppendNote(b []byte, st *calc.State, n *calc.Note) []byte {
	return words.Expand(b, d.Lang.SayOf("note.", n.Key), func(b []byte, name string) []byte {
		switch name {
		case "limit":
			if n.At == calc.HeatPeak {
				return d.appendAt(b, st, calc.HeatMargin, craft.KeepUnderMelting)
			}
			return d.appendAt(b, st, n.At, float64(st.Heating().Setting.Low))
		case "other":
			return d.appendAt(b, st, n.At, float64(st.Heating().Setting.High))
		case "near":
			if i := craft.Nearest(st.Out.Implied[0]); i >= 0 {
				return str(b, d.Lang.SayOf("word.", craft.Polymers[i].Key))
			}
		}
		return d.named(b, st, name)
	})
}

// Repeated are the numbers that stand in more than one place: in the strip, the bench views and beside the boxes. Their slot is "n:" + key.
var Repeated = [...]calc.ID{
	calc.FibreDiameter, calc.FibreArea,
	calc.HangAdd, calc.HangHook, calc.HangMass, calc.HangUnderSet,
	calc.CutLength, calc.CutPrecursor, calc.CutAllPieces,
	calc.TwistSlow, calc.CoilTurns, calc.TwistTime,
	calc.CutRatio, calc.CoilGap, calc.CoilSolid, calc.CoilTravel,
	calc.ClampFirst, calc.ClampSecond,
}

// repeated appends the slots of the numbers that stand in more than one place, and whether there is a second gap at all.
func (d *Display) repeated(b []byte, st *calc.State) []byte {
	for _, id := range Repeated {
		b = open(b, "n:", id.Key(), Text)
		if id.IsField() && st.Worked(id) && impossible(st, id) {
			b = str(b, quantity.Unknown) // its box says why
		} else {
			b = d.Append(b, st, id)
		}
		b = shut(b)
	}
	return hidden(b, "strip.then", "", st.Plan.Stages == calc.StagesOne)
}

// Sentence appends the one sentence that is spoken after a pause in typing.
func (d *Display) Sentence(b []byte, st *calc.State) []byte {
	key := "say.strip"
	if st.Plan.Stages == calc.StagesOne {
		key = "say.strip-one"
	}
	return d.about(b, key, calc.None, st, about{})
}
