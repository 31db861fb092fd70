package proof

import (
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"math"
	"regexp"
	"strconv"
	"strings"
)

// Side is the right-hand side of an equation as it is displayed, read: what its signs say, and not what the code beside it computes.
type Side struct {
	shown string
	tree  ast.Expr
}

// goSpelling turns the signs of a displayed equation into Go's: a square becomes a selector, which binds as tightly.
var goSpelling = strings.NewReplacer("×", "*", "÷", "/", "−", "-", "²", ".squared", "√", "sqrt")

// ofSymbol is a function of the symbol right behind it, without parentheses: tan a.
var ofSymbol = regexp.MustCompile(`\b([a-z]{2,}) (\pL)`)

// functions are those that an equation may name.
var functions = map[string]func(float64) float64{
	"sqrt": math.Sqrt, "sin": math.Sin, "cos": math.Cos, "tan": math.Tan, "atan": math.Atan, "acos": math.Acos, "asin": math.Asin,
}

// Read reads a displayed right-hand side, like "π × d² ÷ 4".
func Read(shown string) (*Side, error) {
	tree, err := parser.ParseExpr(ofSymbol.ReplaceAllString(goSpelling.Replace(shown), "$1($2)"))
	if err != nil {
		return nil, fmt.Errorf("%s: %w", shown, err)
	}
	return &Side{shown, tree}, nil
}

// Worth works it out. Value gives what a symbol stands for, and whether there is such a symbol.
func (s *Side) Worth(value func(symbol string) (x float64, ok bool)) (float64, error) {
	return s.worth(s.tree, value)
}

func (s *Side) worth(e ast.Expr, value func(symbol string) (float64, bool)) (float64, error) {
	switch e := e.(type) {
	case *ast.ParenExpr:
		return s.worth(e.X, value)
	case *ast.BasicLit:
		return strconv.ParseFloat(e.Value, 64)
	case *ast.Ident:
		if e.Name == "π" {
			return math.Pi, nil
		}
		x, ok := value(e.Name)
		if !ok {
			return 0, fmt.Errorf("%s: no such symbol as %s", s.shown, e.Name)
		}
		return x, nil
	case *ast.SelectorExpr:
		if e.Sel.Name != "squared" {
			return 0, s.unread(e)
		}
		x, err := s.worth(e.X, value)
		return x * x, err
	case *ast.CallExpr:
		name, ok := e.Fun.(*ast.Ident)
		if !ok || functions[name.Name] == nil || len(e.Args) != 1 {
			return 0, s.unread(e)
		}
		x, err := s.worth(e.Args[0], value)
		return functions[name.Name](x), err
	case *ast.BinaryExpr:
		x, err := s.worth(e.X, value)
		if err != nil {
			return 0, err
		}
		y, err := s.worth(e.Y, value)
		switch e.Op {
		case token.ADD:
			return x + y, err
		case token.SUB:
			return x - y, err
		case token.MUL:
			return x * y, err
		case token.QUO:
			return x / y, err
		}
	}
	return 0, s.unread(e)
}

func (s *Side) unread(e ast.Expr) error {
	return fmt.Errorf("%s: a sign that is not read: %T", s.shown, e)
}
