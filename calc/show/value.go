package show

import (
	"math"
	"strconv"

	"twistbench/calc"
	"twistbench/calc/quantity"
	"twistbench/calc/words"
)

// Display is how a person wants numbers shown. It belongs to the device and not to a plan.
type Display struct {
	Lang   *words.Language
	US     bool                        // US units where there is no other choice
	Units  [calc.NumIDs]*quantity.Unit // chosen at a box; nil where none was
	Typing calc.ID                     // the box being typed in: what is wrong with it is said after a pause
	Open   [calc.NumIDs]bool           // whose working is open

	typed [calc.NumFields]detached
}

// Unit returns the unit a number is shown in; nil where its kind has none.
func (d *Display) Unit(st *calc.State, id calc.ID) *quantity.Unit {
	v := st.Value(id)
	if v == nil {
		return quantity.KindMass.Default()
	}
	if d.Units[id] != nil {
		return d.Units[id]
	}
	k := v.Kind()
	if id.IsField() && !st.Worked(id) {
		if u := k.Unit(st.Notices[id].Unit); u != nil { // what was typed stays in its unit
			return u
		}
	}
	return d.usual(k, id)
}

// usual returns the unit of a number's row, or its US counterpart.
func (d *Display) usual(k *quantity.Kind, id calc.ID) *quantity.Unit {
	u := k.Unit(unitOf(id))
	if u != nil && d.US && u.US != "" {
		return k.Unit(u.US)
	}
	return u
}

// linear returns the unit in which a difference or a limit is shown: that of the number, but for a count of length per mass, whose ± would
// be another at either end.
func (d *Display) linear(st *calc.State, id calc.ID) *quantity.Unit {
	u := d.Unit(st, id)
	if u != nil && u.Inverse {
		return st.Value(id).Kind().Default()
	}
	return u
}

func unitOf(id calc.ID) string {
	if id.IsField() {
		return calc.Fields[id].Unit
	}
	return calc.Answers[id-calc.NumFields].Unit
}

func digitsOf(id calc.ID) int {
	if id.IsField() {
		return calc.Fields[id].Digits
	}
	return calc.Answers[id-calc.NumFields].Digits
}

// Append appends a number with its unit, as it stands in a sentence: as it was typed where it was typed, else rounded to the digits of
// its row.
func (d *Display) Append(b []byte, st *calc.State, id calc.ID) []byte {
	v := st.Value(id)
	if v == nil {
		return d.appendLoad(b, st, id)
	}
	if words := wordsOf(id); words != nil {
		return str(b, d.Lang.SayOf("word.", words[int(v.SI())]))
	}
	if math.IsNaN(v.SI()) {
		return str(b, quantity.Unknown)
	}
	switch v.Kind().Style {
	case quantity.StyleRatio:
		return append(appendTrimmed(b, v.SI(), digitsOf(id), d.Lang.Mark), " : 1"...)
	case quantity.StyleCount:
		return quantity.Append(b, v.SI(), nil, 1, d.Lang.Mark)
	case quantity.StyleList:
		return str(b, st.Text(id))
	}
	if text := st.Text(id); text != "" && st.Notices[id].Other == "" {
		return str(b, text)
	}
	u := d.Unit(st, id)
	if id == calc.CutLength { // whole millimetres, in other units as close as they can be measured
		return appendUnit(appendTrimmedUnit(b, v.SI(), u, digitsOf(id), d.Lang.Mark), u)
	}
	return appendUnit(quantity.Append(b, forgive(v.SI()), u, digitsOf(id), d.Lang.Mark), u)
}

// forgive moves a worked-out number by less than anyone can measure, so that a half that arithmetic missed by a hair is rounded like a half.
func forgive(x float64) float64 { return x + x*1e-12 }

// AppendNumber appends a number alone, as a box holds it.
func (d *Display) AppendNumber(b []byte, st *calc.State, id calc.ID) []byte {
	v := st.Value(id)
	switch {
	case math.IsNaN(v.SI()):
		return b
	case v.Kind().Style == quantity.StyleRatio:
		return appendTrimmed(b, v.SI(), digitsOf(id), d.Lang.Mark)
	}
	return quantity.Append(b, forgive(v.SI()), d.Unit(st, id), digitsOf(id), d.Lang.Mark)
}

// AppendDoubt appends the ± of a number with its unit, to two digits; nothing where there is none.
func (d *Display) AppendDoubt(b []byte, st *calc.State, id calc.ID) []byte {
	by := st.Doubt[id]
	if math.IsNaN(by) {
		return b
	}
	u := d.linear(st, id)
	b = str(b, "± ")
	if st.Value(id).Kind() == quantity.KindFraction {
		b = quantity.Append(b, by, u, 2, d.Lang.Mark)
		b = append(b, ' ')
		return str(b, d.Lang.Say("unit.points"))
	}
	return appendUnit(quantity.Append(b, by, u, 2, d.Lang.Mark), u)
}

// appendAt appends a value x, in SI, in the unit of number id, to at most the digits of its row.
func (d *Display) appendAt(b []byte, st *calc.State, id calc.ID, x float64) []byte {
	u := d.linear(st, id)
	v := st.Value(id)
	b = appendTrimmedUnit(b, x, u, max(digitsOf(id), 4), d.Lang.Mark)
	if v.Kind().Style == quantity.StyleRatio {
		return str(b, " : 1")
	}
	return appendUnit(b, u)
}

// appendLoad appends which masses make a nearest load, the heaviest first: "200 + 50×2 + 20 g".
func (d *Display) appendLoad(b []byte, st *calc.State, id calc.ID) []byte {
	load := &st.Out.Under
	if id == calc.HangOverSet {
		load = &st.Out.Over
	}
	if math.IsNaN(float64(load.Sum)) {
		return str(b, quantity.Unknown)
	}
	set := st.Set
	u := d.Unit(st, id)
	n := len(b)
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
		if len(b) > n {
			b = str(b, " + ")
		}
		b = appendTrimmedUnit(b, set[best].Each, u, 4, d.Lang.Mark)
		if c := load.Count[best]; c > 1 {
			b = str(b, "×")
			b = strconv.AppendInt(b, int64(c), 10)
		}
	}
	if len(b) == n {
		b = append(b, '0')
	}
	return appendUnit(b, u)
}

func appendUnit(b []byte, u *quantity.Unit) []byte {
	if u == nil || u.Symbol == "" {
		return b
	}
	b = append(b, ' ')
	return str(b, u.Symbol)
}

func appendTrimmed(b []byte, x float64, digits int, mark byte) []byte {
	return appendTrimmedUnit(b, x, nil, digits, mark)
}

// appendTrimmedUnit appends x without zeros behind its last digit.
func appendTrimmedUnit(b []byte, x float64, u *quantity.Unit, digits int, mark byte) []byte {
	n := len(b)
	b = quantity.Append(b, x, u, digits, mark)
	for i := n; i < len(b); i++ {
		if b[i] == mark {
			for b[len(b)-1] == '0' {
				b = b[:len(b)-1]
			}
			if b[len(b)-1] == mark {
				b = b[:len(b)-1]
			}
			break
		}
	}
	return b
}

func wordsOf(id calc.ID) []string {
	if id.IsField() {
		return calc.Fields[id].Words
	}
	return nil
}
