package craft

import "twistbench/calc/quantity"

// Grade says how far a worked-out number can be trusted. The page shows it in words.
type Grade uint8

const (
	Arithmetic Grade = iota // exact, given the inputs
	Handbook                // handbook physics, within the stated range
	Estimate                // wide band: calibrate with own trials
)

// Equation is one relation as it is shown: what it gives, the right-hand side, the symbols in it, where it holds and where
// it is from.
//
// Expr is written with × ÷ − + ² √ π ( ), the functions sin cos tan asin acos atan, and the symbols, each one letter; Symbols lists them in
// the order of their first appearance. A function stands before a symbol or a parenthesis: tan a, atan(π × t × n).
// A result that hands need whole is rounded up to a multiple of RoundUp (SI).
type Equation struct {
	Symbol  string
	Expr    string
	Symbols []string
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
