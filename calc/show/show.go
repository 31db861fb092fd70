package show

import (
	"math"

	"twistbench/calc"
	"twistbench/calc/quantity"
)

// box appends the slots of a field: what it holds, its unit, whose number it is, its ± and what there is to say of it.
func (w *writer) box(id calc.ID) {
	f := &calc.Fields[id]

	w.open(f.Key, "", Value)
	unit := ""
	if f.Words != nil {
		w.str(f.Words[int(w.st.SI(id))])
	} else {
		unit = w.held(id)
	}
	w.shut()
	if f.Unit != "" {
		w.put(f.Key, ":unit", Value, unit)
	}
	if f.Words == nil {
		state, mark := w.boxState(id)
		w.put(f.Key, ":box", State, state)
		w.text(f.Key, ":mark")
		w.about(mark, id, about{other: w.st.Needs(id)})
		w.shut()
		w.text(f.Key, ":doubt")
		w.doubt(id)
		w.shut()
	}
	w.text(f.Key, ":says")
	w.says(id)
	w.shut()
	bad := "false"
	if w.wrong(id) {
		bad = "true"
	}
	w.put(f.Key, "", "aria-invalid", bad)
	if f.Words == nil {
		other := w.other(id)
		w.text(f.Key, ":other")
		if other != "" {
			w.about("reading.other", id, about{text: other})
		}
		w.shut()
		w.hidden(f.Key, ":other", other == "")
	}
	if HasWorking(id) {
		w.workingSlot(id)
	}
	if id == calc.DriveAt {
		w.slide("max", float64(w.st.Out.Shown))
		w.slide(Value, w.st.SI(id))
	}
}

// slide appends a slot of the slider beside the marker's box, a number in the box's unit; 0 where it is not known.
func (w *writer) slide(what string, x float64) {
	w.open("drive.at:slide", "", what)
	if !known(x) {
		x = 0
	}
	w.trimmed(x, w.boxUnit(calc.DriveAt), 4)
	w.shut()
}

// held appends what the box of a number holds, and returns the unit that stands beside it.
func (w *writer) held(id calc.ID) (unit string) {
	text := ""
	u := w.boxUnit(id)
	if w.st.Worked(id) {
		w.alone(id, u)
	} else {
		text, unit = w.detach(id, w.st.Text(id))
		w.str(text)
	}
	if text == "" && u != nil {
		unit = u.Symbol
	}
	return unit
}

// wrong reports whether there is a problem with a field that is not being typed in.
func (w *writer) wrong(id calc.ID) bool {
	return w.st.Notices[id].Reason != "" && id != w.Typing
}

// detached is a typed text taken apart: what its box shows, and the unit beside it.
type detached struct {
	_                 [0]func() // these are not compared
	text, shown, unit string
}

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
func (w *writer) workingSlot(id calc.ID) {
	w.text(id.Key(), ":working")
	if w.Open[id] {
		w.working(id)
	}
	w.shut()
}

// boxState returns the state of a box and the key of its mark.
func (w *writer) boxState(id calc.ID) (state, mark string) {
	st := w.st
	worked := st.Worked(id)
	g, grouped := calc.GroupOf(id)
	switch {
	case w.wrong(id):
		return "stop", ""
	case worked && math.IsNaN(st.SI(id)):
		needs := st.Needs(id)
		switch {
		case needs == id, needs == calc.None:
			return "unknown", ""
		case id == calc.ClampSecond && needs == calc.ClampStages:
			return "unknown", "mark.one-stage"
		}
		return "unknown", w.lacking(needs)
	case grouped && !worked && st.Text(id) == "":
		return "unknown", "mark.empty"
	case worked && w.impossible(id):
		return "stop", "mark.worked"
	case worked && (grouped && !st.Plan.Given[g].Has(id) || id >= calc.DrivePower && id <= calc.DriveOff || id == calc.StrokeBeside):
		return "worked", "mark.worked"
	case worked:
		return "worked", "mark.book"
	case grouped:
		mark = "mark.given"
		if id == calc.CutPrecursor && (st.Worked(calc.CutRatio) || st.Text(calc.ClampMeasured) != "") {
			mark = "mark.cut" // it is coiled already: its length was measured, or its shape says the ratio
		}
		state = "given"
	default:
		state = "plain"
	}
	if w.unusual(id) {
		state = "care"
	}
	return state, mark
}

// impossible reports whether a worked-out number lies outside what is possible.
func (w *writer) impossible(id calc.ID) bool {
	f := &calc.Fields[id]
	x := w.st.SI(id)
	return x < f.Low || x > f.High
}

// unusual reports whether a number lies outside what is usual.
//
//go:noinline
func (w *writer) unusual(id calc.ID) bool {
	f := &calc.Fields[id]
	x := w.st.SI(id)
	return f.Usual != [2]float64{} && (x < f.Usual[0] || x > f.Usual[1])
}

// says appends the line under a box: a problem, how the text was read, or advice. What the box means stands on the page.
func (w *writer) says(id calc.ID) {
	f := &calc.Fields[id]
	notice := &w.st.Notices[id]
	x := w.st.SI(id)
	worked := w.st.Worked(id)
	style := w.kind(id).Style
	switch {
	case notice.Reason != "":
		if w.wrong(id) {
			w.problem(notice.Reason, id, about{text: notice.Part, limit: notice.Limit})
		}
		return
	case worked && id == w.Wish:
		r, _ := w.kind(id).Parse(w.Wished, f.Unit)
		w.about("reading.wish", id, about{limit: r.SI})
		return
	case f.Words != nil || math.IsNaN(x):
		return
	case id == calc.ClockTime:
		w.clockSays()
		return
	case style == quantity.StyleList:
		w.list(id)
		return
	case style == quantity.StyleRows:
		w.about("reading.rows", id, about{limit: x})
		if notice.Part != "" {
			w.char(' ')
			key := "reading.left-out"
			if notice.Lines > 1 {
				key = "reading.lines-out"
			}
			w.about(key, id, about{text: notice.Part, limit: float64(notice.Lines)})
		}
		return
	case notice.Other != "":
		w.about("reading.decimal", id, about{limit: x})
		return
	case worked && w.impossible(id):
		if x > f.High && w.kind(id) == quantity.KindVoltage {
			w.problem(calc.TooManyVolts, id, about{limit: f.High})
			return
		}
		w.about("advice.impossible", id, about{})
		return
	}
	n := len(w.b)
	if style == quantity.StyleRatio {
		w.about("reading.ratio", calc.CutPrecursor, about{limit: 0.1 * x}) // how much fibre 100 mm of coil uses
	}
	key := ""
	switch {
	case w.unusual(id):
		w.next(n, " ")
		w.about("advice.usual", id, about{limit: f.Usual[0], high: f.Usual[1]})
	case style == quantity.StyleRatio:
	case !worked && w.commercial(id):
		key = "reading.about"
	case !worked && w.odd(id):
		key = "reading.echo"
	case id == calc.HangStress:
		key = "reading.on"
	case id == calc.ClampSecondStretch:
		key = "reading.of"
	}
	w.about(key, id, about{limit: x})
}

// list appends how many masses a list has, and what they weigh together.
func (w *writer) list(id calc.ID) {
	sum := 0.0
	for i := range w.st.Set {
		it := &w.st.Set[i]
		sum += it.Each * float64(it.Count)
	}
	w.about("reading.list", id, about{limit: sum})
}

// commercial reports whether a number was typed in a commercial unit, which the trade rounds.
func (w *writer) commercial(id calc.ID) bool {
	u := w.kind(id).Unit(w.st.Notices[id].Unit)
	return u != nil && u.About
}

// odd reports whether a typed text is worth echoing in the unit that stands outside the box: plies, fractions, sums, other units.
func (w *writer) odd(id calc.ID) bool {
	f := &calc.Fields[id]
	if f.Unit == "" {
		return false
	}
	text := w.st.Text(id)
	shown, unit := w.detach(id, text)
	if unit != w.shownIn(id).Symbol {
		return true
	}
	for i := range len(shown) {
		if c := shown[i]; (c < '0' || c > '9') && c != '.' && c != ',' && c != '-' {
			return true
		}
	}
	return w.kind(id).Style == quantity.StyleShare && text == shown
}

// other returns the text that one tap puts in place of the one typed; it is empty where there is none.
func (w *writer) other(id calc.ID) string {
	if other := w.st.Notices[id].Other; other != "" {
		return other
	}
	n := len(w.b)
	w.likely(id)
	return w.cut(n)
}

// likely appends a text that was more likely meant than the one typed: ten or a hundred times less or more, where that is usual.
func (w *writer) likely(id calc.ID) {
	f := &calc.Fields[id]
	if w.st.Worked(id) || !w.unusual(id) || f.Unit == "" {
		return
	}
	usual := func(x float64) bool { return x >= f.Usual[0] && x <= f.Usual[1] }
	x := w.st.SI(id)
	u := w.boxUnit(id)
	k := w.kind(id)
	if own := k.Unit(f.Unit); own != u { // the unit stayed from a number before
		if meant := own.ToSI(u.FromSI(x)); usual(meant) {
			w.measure(meant, own, 6)
			return
		}
	}
	for i, by := range [...]float64{100, 0.1, 10, 0.01, 100, 0.001, 1000} {
		if i == 0 && k.Style != quantity.StylePercent {
			continue // 0.42 for 42 % is the likelier slip
		}
		if usual(x * by) {
			w.measure(x*by, u, 6)
			return
		}
	}
}

// problem appends the sentence for what is wrong with a field.
func (w *writer) problem(r calc.Reason, id calc.ID, a about) {
	w.sentence(w.Lang.SayOf("problem.", string(r)), id, a)
}

// answer appends the slots of an answer.
func (w *writer) answer(id calc.ID) {
	key := id.Key()
	w.text(key, "")
	w.number(id)
	w.shut()
	v := w.st.Value(id)
	unknown := v.Is() && math.IsNaN(v.SI())
	state := "plain"
	if unknown {
		state = "unknown"
	}
	w.put(key, ":row", State, state)
	w.text(key, ":doubt")
	if unknown {
		if needs := w.st.Needs(id); needs != id {
			w.needing(needs)
		}
	} else if !math.IsNaN(w.st.Doubt[id]) {
		w.doubt(id)
		w.char(' ')
		w.about("mark.mostly", id, about{other: w.st.Mostly[id]})
	}
	w.shut()
	w.workingSlot(id)
}

// needing appends which number must be given first, if there is one.
//
//go:noinline
func (w *writer) needing(id calc.ID) {
	if id != calc.None {
		w.about(w.lacking(id), calc.None, about{other: id})
	}
}

// lacking returns the key of what says that a number must be given first, or another where nothing follows from the one that is.
//
//go:noinline
func (w *writer) lacking(id calc.ID) string {
	if known(w.st.SI(id)) {
		return "mark.change"
	}
	return "mark.unknown"
}

// note appends the slots of a note.
func (w *writer) note(n *calc.Note) {
	says := n.When(w.st)
	w.text("note.", n.Key)
	if says {
		w.noteSentence(n)
	}
	w.shut()
	w.str("note.")
	w.hidden(n.Key, ":row", !says)
}

func (w *writer) noteSentence(n *calc.Note) {
	w.sentence(w.Lang.SayOf("note.", n.Key), calc.ClampPiece, about{limit: w.st.Apart()})
}

// Repeated are the numbers that stand in more than one place: in the strip, the bench views, Trouble and beside the boxes. Their slot is "n:" + key,
// and it is empty while the number is unknown: the page shows a dash, or in Trouble nothing.
var Repeated = [...]calc.ID{
	calc.FibreDiameter, calc.FibreArea,
	calc.HangAdd, calc.HangHook, calc.HangMass, calc.HangUnderSet,
	calc.CutLength, calc.CutPrecursor, calc.CutAllPieces,
	calc.TwistSlow, calc.CoilTurns, calc.TwistTime,
	calc.CutRatio, calc.CoilGap, calc.CoilSolid, calc.CoilTravel,
	calc.ClampFirst, calc.ClampSecond,
	calc.ClampRetained, calc.HeatSet, calc.HeatDial, calc.HeatHold1, calc.HeatHold2,
	calc.HangStress, calc.TroubleLessAdd, calc.TroubleMoreAdd,
	calc.CutMuscles, calc.TwistHand, calc.ClampFirstStretch, calc.ClampSecondStretch, calc.ClampFinished, calc.HeatPeak,
	calc.WireSupplyVoltage, calc.WireCurrent, calc.WirePower, calc.WireFuse,
	calc.WireTotal, calc.WireDrop, calc.WireMost, calc.WireLeast, calc.WireDummy, calc.WireAverageCurrent, calc.WireFullPower,
	calc.WireOhms, calc.WireLeastOhms, calc.WireTestContact, calc.WireDrift,
	calc.DriveTarget, calc.DriveHigh, calc.DriveHeatMost, calc.DriveCoolMost, calc.DriveHottest, calc.DriveStuck, calc.DriveRoom,
	calc.StrokeLoad, calc.StrokeStroke, calc.StrokeAtLoad, calc.StrokeColdLength,
}

// repeated appends the slots of the numbers that stand in more than one place, and whether there is one heat-set alone, the way of
// the current and the supply: what does not belong to them is out of sight.
func (w *writer) repeated() {
	for _, id := range Repeated {
		w.text("n:", id.Key())
		n := len(w.b)
		w.number(id)
		if string(w.b[n:]) == quantity.Unknown || id.IsField() && w.st.Worked(id) && w.impossible(id) { // its box says why
			w.b = w.b[:n]
		}
		w.shut()
	}
	one := ""
	if w.st.Plan.Stages == calc.StagesOne {
		one = "1"
	}
	w.put("page", "", "data-one", one)
}
