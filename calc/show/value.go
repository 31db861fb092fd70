package show

import (
	"math"

	"twistbench/calc"
	"twistbench/calc/quantity"
)

// Unit returns the unit a number is shown in wherever it stands outside its box, so that no drawing or sentence mixes two of a kind: that of its
// row, or its US counterpart; nil where its kind has none.
func (d *Display) Unit(st *calc.State, id calc.ID) *quantity.Unit {
	v := st.Value(id)
	if !v.Is() {
		return quantity.KindMass.Default()
	}
	k := v.Kind()
	u := k.Unit(id.Unit())
	if u != nil && d.US && u.US != "" {
		return k.Unit(u.US)
	}
	return u
}

// BoxUnit returns the unit a number has in its box: the one chosen there or typed, and else Unit.
func (d *Display) BoxUnit(st *calc.State, id calc.ID) *quantity.Unit {
	w := writer{d, st, nil}
	return w.boxUnit(id)
}

func (w *writer) boxUnit(id calc.ID) *quantity.Unit {
	if w.Units[id] != nil {
		return w.Units[id]
	}
	if id.IsField() && !w.st.Worked(id) {
		if u := w.kind(id).Unit(w.st.Notices[id].Unit); u != nil {
			return u
		}
	}
	return w.shownIn(id)
}

// shownIn is Unit of the state at hand.
//
//go:noinline
func (w *writer) shownIn(id calc.ID) *quantity.Unit { return w.Unit(w.st, id) }

// linear returns the unit in which a difference or a limit is shown at a box: that of the box, but for a count of length per mass, whose ± would
// be another at either end.
func (w *writer) linear(id calc.ID) *quantity.Unit {
	u := w.boxUnit(id)
	if u != nil && u.Inverse {
		return w.kind(id).Default()
	}
	return u
}

//go:noinline
func (w *writer) kind(id calc.ID) *quantity.Kind { return w.st.Value(id).Kind() }

// mark makes the decimal mark of a text that was appended since the buffer was n long the page's. Two marks say themselves which is which.
func (w *writer) mark(n int) {
	at := -1
	for i := n; i < len(w.b); i++ {
		if c := w.b[i]; c == '.' || c == ',' {
			if at >= 0 {
				return
			}
			at = i
		}
	}
	if at >= 0 {
		w.b[at] = w.Lang.Mark
	}
}

// number appends a number with its unit, as it stands in a sentence.
//
//go:noinline
func (w *writer) number(id calc.ID) {
	v := w.st.Value(id)
	if !v.Is() {
		w.load(id)
		return
	}
	x := w.st.SI(id)
	text := w.st.Text(id)
	u := w.shownIn(id)
	switch style := v.Kind().Style; {
	case style == quantity.StyleWord:
		w.wordsOf("word.", calc.Fields[id].Words[int(x)])
	case math.IsNaN(x):
		w.str(quantity.Unknown)
	case math.IsInf(x, 1):
		w.words("mark.away")
	case x == float64(calc.Never):
		w.words("mark.never")
	case style == quantity.StyleRatio:
		w.alone(id, nil)
		w.str(" : 1")
	case style == quantity.StyleCount:
		w.digits(x, nil, 1)
	case style == quantity.StyleList, text != "" && w.st.Notices[id].Other == "" && (u == nil || u.Symbol == w.st.Notices[id].Unit):
		n := len(w.b)
		shown, _ := w.detach(id, text)
		w.str(shown)
		if style < quantity.StyleList {
			w.mark(n)
		}
		if shown != text {
			w.unit(u)
		}
	case text != "", id == calc.CutLength: // whole millimetres, in other units as close as they can be measured
		w.measure(x, u, max(id.Digits(), 4))
	default:
		w.alone(id, u)
		w.unit(u)
	}
}

// forgive moves a worked-out number by less than anyone can measure, so that a half that arithmetic missed by a hair is rounded like a half.
func forgive(x float64) float64 { return x + x*1e-12 }

// alone appends a number alone, in a unit.
//
//go:noinline
func (w *writer) alone(id calc.ID, u *quantity.Unit) {
	x := w.st.SI(id)
	switch {
	case math.IsNaN(x):
	case w.kind(id).Style == quantity.StyleRatio:
		w.trimmed(x, nil, id.Digits())
	case math.Abs(x) < w.st.Doubt[id]: // what its ± leaves open
		w.digits(x, u, 1)
	default:
		w.digits(outward(id, forgive(x), u), u, id.Digits())
	}
}

// outward returns what to show of an end of the stroke's band, in SI: rounded away from the other end, so that the stroke is between the two with
// as many digits as it may have; all else as it is.
//
//go:noinline
func outward(id calc.ID, x float64, u *quantity.Unit) float64 {
	sign := 1.0
	switch id {
	case calc.StrokeLeast, calc.StrokeShareLeast:
		sign = -1
	case calc.StrokeMost, calc.StrokeShareMost:
	default:
		return x
	}
	shown := u.FromSI(x)
	about := shown
	if sign*shown < 0 {
		about *= 0.95 // 9.96 goes to 9.9, and 10.4, which is shown as 10, to that
	}
	step := math.Pow10(-quantity.Decimals(about, id.Digits()))
	return u.ToSI(sign * quantity.CeilTo(sign*shown, step))
}

// doubt appends the ± of a number with its unit, to two digits; nothing where there is none.
//
//go:noinline
func (w *writer) doubt(id calc.ID) {
	by := w.st.Doubt[id]
	if math.IsNaN(by) {
		return
	}
	u := w.linear(id)
	w.str("± ")
	w.digits(by, u, 2)
	if w.kind(id) == quantity.KindFraction {
		w.char(' ')
		w.words("unit.points")
	} else {
		w.unit(u)
	}
}

// at appends a value x, in SI, in the unit of number id, to at most the digits of its row.
//
//go:noinline
func (w *writer) at(id calc.ID, x float64) {
	u := w.linear(id)
	w.trimmed(x, u, max(id.Digits(), 4))
	if w.kind(id).Style == quantity.StyleRatio {
		w.str(" : 1")
	} else {
		w.unit(u)
	}
}

// load appends which masses make a nearest load, the heaviest first: "200 + 50×2 + 20 g".
func (w *writer) load(id calc.ID) {
	load := &w.st.Out.Under
	if id == calc.HangOverSet {
		load = &w.st.Out.Over
	}
	if math.IsNaN(float64(load.Sum)) {
		w.str(quantity.Unknown)
		return
	}
	set := w.st.Set
	u := w.shownIn(id)
	n := len(w.b)
	var done [40]bool
	for range set {
		best := -1
		for i := range set {
			if !done[i] && load.Count[i] > 0 && (best < 0 || set[i].Each > set[best].Each) {
				best = i
			}
		}
		if best < 0 {
			break
		}
		done[best] = true
		w.next(n, " + ")
		w.trimmed(set[best].Each, u, 4)
		if c := load.Count[best]; c > 1 {
			w.str("×")
			w.int(int(c))
		}
	}
	if len(w.b) == n {
		w.char('0')
	}
	w.unit(u)
}
