package craft

import (
	"unicode/utf8"

	"twistbench/calc/quantity"
)

// Grade says how far a worked-out number can be trusted. The page shows it in words.
type Grade uint8

const (
	Arithmetic Grade = iota // exact, given the inputs
	Handbook                // handbook physics, within the stated range
	Estimate                // wide band: calibrate with own trials
)

// Equation is one relation as it is shown: what it gives, the right-hand side, where it holds and where it is from.
//
// Expr is written with × ÷ − + ² √ π ( ), the functions sin cos tan asin acos atan, and the symbols, each one letter. A function stands before a symbol or a parenthesis: tan a, atan(π × t × n).
// A result that hands need whole is rounded up to a multiple of RoundUp (SI).
type Equation struct {
	Symbol  string
	Expr    string
	Const   []Constant
	RoundUp float64
	Holds   string // key of a sentence: "holds." + Holds
	Source  *Source
	Grade   Grade
}

// Constant is a fixed quantity in an equation, with its value in SI and the unit it is shown in.
type Constant struct {
	Symbol string
	SI     float64
	Unit   *quantity.Unit
	Text   string // as it is shown, without unit
}

// StandardGravity is the standard acceleration of free fall, in m/s², exact by definition (3rd CGPM, 1901). The real one
// lies within 0.27 % of it everywhere on the ground.
const StandardGravity = 9.80665

var gravity = []Constant{{Symbol: "g", SI: StandardGravity, Unit: quantity.KindAcceleration.Default(), Text: "9.80665"}}

// Symbols appends the symbols of an equation that stand for numbers of a plan, in the order of their first appearance in Expr.
func (eq *Equation) Symbols(list []string) []string {
	for rest := eq.Expr; rest != ""; {
		n, symbol := Part(rest)
		if symbol && !eq.has(rest[:n], list) {
			list = append(list, rest[:n])
		}
		rest = rest[n:]
	}
	return list
}

// has reports whether a symbol is one of a list or a constant.
func (eq *Equation) has(symbol string, list []string) bool {
	for _, s := range list {
		if s == symbol {
			return true
		}
	}
	for i := range eq.Const {
		if eq.Const[i].Symbol == symbol {
			return true
		}
	}
	return false
}

// Part returns the width of what stands first in an expression, and whether it is a symbol: a lone letter. Letters together are the name of
// a function.
func Part(expr string) (width int, symbol bool) {
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
