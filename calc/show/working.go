package show

import (
	"math"

	"twistbench/calc"
	"twistbench/calc/craft"
	"twistbench/calc/quantity"
)

func (w *writer) working(id calc.ID) {
	steps, n := w.st.Workings(id)
	switch {
	case n == 0 && w.st.Text(id) == "":
		needs := w.st.Needs(id)
		w.about(w.lacking(needs), id, about{other: needs})
	case n == 0:
		w.words("working.given")
	}
	for i, step := range steps[:n] {
		if i > 0 {
			w.char('\n')
		}
		w.step(step, result(id, i, n))
	}
}

// result returns the number that step i of n gives on the way to id: the hub of its group, or id itself.
func result(id calc.ID, i, n int) calc.ID {
	if i < n-1 {
		if g, ok := calc.GroupOf(id); ok {
			group := &calc.Groups[g]
			return group.Facts[group.Fact(id)].Hub
		}
	}
	return id
}

func (w *writer) step(step *calc.Working, result calc.ID) {
	eq := step.Eq
	if eq == nil {
		w.wordsOf("method.", step.Method)
		w.char('\n')
		n := len(w.b)
		for _, t := range step.Terms {
			w.next(n, "; ")
			w.name(t)
			w.str(": ")
			w.number(t)
		}
		if len(step.Terms) > 0 {
			w.char('\n')
		}
		w.source(step.Source)
		return
	}
	w.equationLine(eq)
	w.char('\n')
	w.numbersLine(step, result)
	w.char('\n')
	n := len(w.b)
	var symbols [mostTerms]string
	for i, s := range eq.Symbols(symbols[:0]) {
		w.next(n, "; ")
		w.str(s)
		w.char(' ')
		w.name(step.Terms[i])
	}
	w.char('\n')
	w.words("working.holds")
	w.char(' ')
	w.wordsOf("holds.", eq.Holds)
	w.char('\n')
	w.source(eq.Source)
	w.str("; ")
	w.wordsOf("grade.", digit(uint8(eq.Grade)))
}

func (w *writer) source(s *craft.Source) {
	w.words("working.source")
	w.str(": ")
	w.wordsOf("source.", digit(uint8(s.Mark)))
	if s.Cite != "" {
		w.char(' ')
		w.str(s.Cite)
	}
}

// digit returns a number below ten as a text.
func digit(n uint8) string { return "0123456789"[n : n+1] }

// equationLine appends an equation in its symbols.
func (w *writer) equationLine(eq *craft.Equation) {
	w.str(eq.Symbol)
	w.str(" = ")
	w.str(eq.Expr)
	w.roundedUp(eq)
}

//go:noinline
func (w *writer) roundedUp(eq *craft.Equation) {
	if eq.RoundUp != 0 {
		w.str(", ")
		w.words("working.up")
	}
}

// numbersLine appends an equation with this plan's numbers in it.
func (w *writer) numbersLine(step *calc.Working, result calc.ID) {
	eq := step.Eq
	w.str(eq.Symbol)
	w.str(" = ")
	for rest := eq.Expr; rest != ""; {
		n, is := craft.Part(rest)
		symbol := rest[:n]
		rest = rest[n:]
		if !is {
			w.str(symbol)
			continue
		}
		_, squared := quantity.CutPrefix(rest, "²")
		if squared {
			w.char('(')
		}
		w.term(step, symbol)
		if squared {
			w.char(')')
		}
	}
	w.str(" = ")
	w.plain(result)
	w.roundedUp(eq)
}

// mostTerms is how many terms an equation is expected to have at most.
const mostTerms = 8

func (w *writer) term(step *calc.Working, symbol string) {
	var symbols [mostTerms]string
	if i := quantity.Place(step.Eq.Symbols(symbols[:0]), symbol); i >= 0 {
		w.bare(step.Terms[i])
		return
	}
	for _, c := range step.Eq.Const {
		if c.Symbol == symbol {
			w.str(c.Text)
			w.unit(c.Unit)
			return
		}
	}
	w.str(symbol)
}

// bare appends a number as a term of an equation: as in a sentence, but a ratio is a plain number.
func (w *writer) bare(id calc.ID) {
	if x := w.st.SI(id); w.shownIn(id) == nil && !math.IsNaN(x) {
		w.trimmed(x, nil, max(id.Digits(), 4))
	} else {
		w.plain(id)
	}
}

// plain appends a number that may have been typed in an odd way, as a plain number with its unit.
func (w *writer) plain(id calc.ID) {
	if w.st.Text(id) == "" || !w.odd(id) {
		w.number(id)
	} else {
		w.measure(w.st.SI(id), w.shownIn(id), 7)
	}
}
