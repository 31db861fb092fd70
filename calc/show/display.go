package show

import (
	"twistbench/calc"
	"twistbench/calc/craft"
	"twistbench/calc/quantity"
	"twistbench/calc/timetable"
	"twistbench/calc/words"
)

// Display is how a person wants numbers shown. It belongs to the device and not to a plan.
type Display struct {
	Lang   *words.Language
	US     bool                        // US units where there is no other choice
	Units  [calc.NumIDs]*quantity.Unit // chosen at a box; nil where none was
	Typing calc.ID                     // the box being typed in: what is wrong with it is said after a pause
	Open   [calc.NumIDs]bool           // whose working is open
	Now    timetable.Instant           // 0 on a page that has no clock
	Zone   timetable.Zone              // local clocks
	Away   Away                        // what is out of sight and can wait
	Wish   calc.ID                     // what was typed and no longer counts: see calc.History.Wish
	Wished string                      // as it was typed

	typed [calc.NumFields]detached
	clock clock
	card  card
}

// Slots appends every slot of a worked plan, always the same ones in the same order.
func (d *Display) Slots(b []byte, st *calc.State) []byte {
	var p Page
	d.Page(&p, nil, st)
	return append(b, p.Slots...)
}

// Page makes p what the display shows of a worked plan. Where there is a last page, what stands in sections that are away stays as it is there.
func (d *Display) Page(p, last *Page, st *calc.State) {
	w := writer{Display: d, st: st}
	w.page(p, last)
}

// Append appends a number with its unit, as it stands in a sentence: with the digits that were typed where it was typed, else
// rounded to the digits of its row.
func (d *Display) Append(b []byte, st *calc.State, id calc.ID) []byte {
	w := writer{d, st, b}
	w.number(id)
	return w.b
}

// AppendNumber appends a number alone, as a box holds it.
func (d *Display) AppendNumber(b []byte, st *calc.State, id calc.ID) []byte {
	w := writer{d, st, b}
	w.alone(id, w.boxUnit(id))
	return w.b
}

// AppendDoubt appends the ± of a number with its unit, to two digits; nothing where there is none.
func (d *Display) AppendDoubt(b []byte, st *calc.State, id calc.ID) []byte {
	w := writer{d, st, b}
	w.doubt(id)
	return w.b
}

// AppendNote appends the sentence of a note.
func (d *Display) AppendNote(b []byte, st *calc.State, n *calc.Note) []byte {
	w := writer{d, st, b}
	w.noteSentence(n)
	return w.b
}

// AppendSays appends the line under a box.
func (d *Display) AppendSays(b []byte, st *calc.State, id calc.ID) []byte {
	w := writer{d, st, b}
	w.says(id)
	return w.b
}

// AppendProblem appends the sentence for a problem of a field.
func (d *Display) AppendProblem(b []byte, st *calc.State, id calc.ID, p calc.Problem) []byte {
	w := writer{d, st, b}
	w.problem(p.Reason, id, about{text: p.Part, limit: p.Limit})
	return w.b
}

// AppendFault appends the sentence for a fault of a plan text.
func (d *Display) AppendFault(b []byte, st *calc.State, f calc.Fault) []byte {
	w := writer{d, st, b}
	w.problem(f.Reason, calc.Find(f.Key), about{text: f.Part, other: f.With})
	return w.b
}

// Sentence appends the one sentence that is spoken after a pause in typing.
func (d *Display) Sentence(b []byte, st *calc.State) []byte {
	w := writer{d, st, b}
	if st.Plan.Stages == calc.StagesOne {
		w.words("say.strip-one")
	} else {
		w.words("say.strip")
	}
	return w.b
}

// Summary appends a plan as plain text for a lab notebook, a line for each step, under the plan's name.
func (d *Display) Summary(b []byte, st *calc.State, name string) []byte {
	w := writer{d, st, b}
	w.summary(name)
	return w.b
}

// Working appends how a number was worked out, line by line: each equation, the same with this plan's numbers, where it holds,
// its source and its grade.
func (d *Display) Working(b []byte, st *calc.State, id calc.ID) []byte {
	w := writer{d, st, b}
	w.working(id)
	return w.b
}

// EquationLine appends an equation in its symbols: "F = σ × A".
func (d *Display) EquationLine(b []byte, eq *craft.Equation) []byte {
	w := writer{Display: d, b: b}
	w.equationLine(eq)
	return w.b
}

// NumbersLine appends an equation with this plan's numbers in it: "F = 17 MPa × 0.2124 mm² = 3.610 N". Every term carries its unit,
// so that the line is true as it stands.
func (d *Display) NumbersLine(b []byte, st *calc.State, working *calc.Working, result calc.ID) []byte {
	w := writer{d, st, b}
	w.numbersLine(working, result)
	return w.b
}

// Other returns the text that one tap puts in place of the one typed: its other reading, or what was more likely meant. It is empty where
// there is neither.
func (d *Display) Other(st *calc.State, id calc.ID) string {
	w := writer{Display: d, st: st}
	return w.other(id)
}

// Say returns the words of a key; part stands for {part} in them.
func (d *Display) Say(key, part string) string {
	w := writer{Display: d}
	w.about(key, calc.None, about{text: part})
	return string(w.b)
}
