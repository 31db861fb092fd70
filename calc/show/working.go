package show

import (
	"math"
	"strings"
	"unicode/utf8"

	"twistbench/calc"
	"twistbench/calc/craft"
)

// Working appends how a number was worked out, line by line: each equation, the same with this plan's numbers, where it holds,
// its source and its grade.
func (d *Display) Working(b []byte, st *calc.State, id calc.ID) []byte {
	steps, n := st.Workings(id)
	switch {
	case n == 0 && st.Text(id) == "":
		return d.about(b, "mark.unknown", id, st, about{other: st.Needs(id)})
	case n == 0:
		return str(b, d.Lang.Say("working.given"))
	}
	for i, w := range steps[:n] {
		if i > 0 {
			b = append(b, '\n')
		}
		b = d.step(b, st, w, result(st, id, i, n))
	}
	return b
}

// result returns the number that step i of n gives on the way to id: the hub of its group, or id itself.
func result(st *calc.State, id calc.ID, i, n int) calc.ID {
	if i < n-1 {
		if g, ok := calc.GroupOf(id); ok {
			group := &calc.Groups[g]
			return group.Facts[group.Fact(id)].Hub
		}
	}
	return id
}

func (d *Display) step(b []byte, st *calc.State, w *calc.Working, result calc.ID) []byte {
	if w.Eq == nil {
		b = str(b, d.Lang.SayOf("method.", w.Method))
		for i, t := range w.Terms {
			if i == 0 {
				b = append(b, '\n')
			} else {
				b = str(b, "; ")
			}
			b = d.name(b, t)
			b = str(b, ": ")
			b = d.Append(b, st, t)
		}
		return d.source(b, w.Source)
	}
	b = d.EquationLine(b, w.Eq)
	b = append(b, '\n')
	b = d.NumbersLine(b, st, w, result)
	b = append(b, '\n')
	for i, s := range w.Eq.Symbols {
		if i > 0 {
			b = str(b, "; ")
		}
		b = str(b, s)
		b = append(b, ' ')
		b = d.name(b, w.Terms[i])
	}
	b = append(b, '\n')
	b = str(b, d.Lang.Say("working.holds"))
	b = append(b, ' ')
	b = str(b, d.Lang.SayOf("holds.", w.Eq.Holds))
	b = d.source(b, w.Eq.Source)
	b = str(b, "; ")
	return append(b, d.Lang.Say("grade."+string('0'+rune(w.Eq.Grade)))...)
}

func (d *Display) source(b []byte, s *craft.Source) []byte {
	b = append(b, '\n')
	b = str(b, d.Lang.Say("working.source"))
	b = str(b, ": ")
	b = append(b, d.Lang.Say("source."+string('0'+rune(s.Mark)))...)
	if s.Cite != "" {
		b = append(b, ' ')
		b = str(b, s.Cite)
	}
	return b
}

// EquationLine appends an equation in its symbols: "F = σ × A".
func (d *Display) EquationLine(b []byte, eq *craft.Equation) []byte {
	b = str(b, eq.Symbol)
	b = str(b, " = ")
	b = str(b, eq.Expr)
	return d.roundedUp(b, eq)
}

func (d *Display) roundedUp(b []byte, eq *craft.Equation) []byte {
	if eq.RoundUp == 0 {
		return b
	}
	b = str(b, ", ")
	return str(b, d.Lang.Say("working.up"))
}

// NumbersLine appends an equation with this plan's numbers in it: "F = 17 MPa × 0.2124 mm² = 3.610 N". Every term carries its unit,
// so that the line is true as it stands.
func (d *Display) NumbersLine(b []byte, st *calc.State, w *calc.Working, result calc.ID) []byte {
	b = str(b, w.Eq.Symbol)
	b = str(b, " = ")
	for rest := w.Eq.Expr; rest != ""; {
		n, is := part(rest)
		symbol := rest[:n]
		rest = rest[n:]
		if !is {
			b = str(b, symbol)
			continue
		}
		squared := strings.HasPrefix(rest, "²")
		if squared {
			b = append(b, '(')
		}
		b = d.term(b, st, w, symbol)
		if squared {
			b = append(b, ')')
		}
	}
	b = str(b, " = ")
	b = d.rounded(b, st, result)
	return d.roundedUp(b, w.Eq)
}

// part returns the width of what stands first in an equation, and whether it is the symbol of a term: a lone letter. Letters together are
// the name of a function.
func part(expr string) (width int, symbol bool) {
	letters := 0
	for width < len(expr) {
		r, n := utf8.DecodeRuneInString(expr[width:])
		if !isLetter(r) {
			if letters == 0 {
				return n, false
			}
			break
		}
		letters++
		width += n
	}
	return width, letters == 1
}

// isLetter reports whether r is a letter other than π.
func isLetter(r rune) bool {
	return r != 'π' && ('a' <= r && r <= 'z' || 'A' <= r && r <= 'Z' || 'α' <= r && r <= 'ω')
}

func (d *Display) term(b []byte, st *calc.State, w *calc.Working, symbol string) []byte {
	for i, s := range w.Eq.Symbols {
		if s == symbol {
			return d.bare(b, st, w.Terms[i])
		}
	}
	for _, c := range w.Eq.Const {
		if c.Symbol == symbol {
			b = str(b, c.Text)
			return appendUnit(b, c.Unit)
		}
	}
	return str(b, symbol)
}

// bare appends a number as a term of an equation: like Append, but a ratio is a plain number.
func (d *Display) bare(b []byte, st *calc.State, id calc.ID) []byte {
	if u := d.Unit(st, id); u == nil && !math.IsNaN(st.SI(id)) {
		return appendTrimmed(b, st.SI(id), max(digitsOf(id), 4), d.Lang.Mark)
	}
	return d.rounded(b, st, id)
}

// rounded appends a number that may have been typed in an odd way, as a plain number with its unit.
func (d *Display) rounded(b []byte, st *calc.State, id calc.ID) []byte {
	if st.Text(id) == "" || !d.odd(st, id) {
		return d.Append(b, st, id)
	}
	u := d.Unit(st, id)
	return appendUnit(appendTrimmedUnit(b, st.SI(id), u, 7, d.Lang.Mark), u)
}
