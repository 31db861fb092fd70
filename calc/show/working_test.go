package show

import (
	"go/ast"
	"go/parser"
	"go/token"
	"math"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"twistbench/calc"
	"twistbench/calc/craft"
	"twistbench/calc/quantity"
)

// goSpelling turns the signs of a displayed equation into Go's: a square becomes a selector, which binds as tightly.
var goSpelling = strings.NewReplacer("×", "*", "÷", "/", "−", "-", "²", ".squared", "√", "sqrt")

// ofSymbol is a function of the symbol right behind it, without parentheses: tan a.
var ofSymbol = regexp.MustCompile(`\b([a-z]{2,}) (\pL)`)

// functions are those that an equation may name.
var functions = map[string]func(float64) float64{
	"sqrt": math.Sqrt, "sin": math.Sin, "cos": math.Cos, "tan": math.Tan, "atan": math.Atan, "acos": math.Acos, "asin": math.Asin,
}

// evaluate works out a displayed right-hand side.
func evaluate(t testing.TB, expr string, value func(symbol string) float64) float64 {
	t.Helper()
	tree, err := parser.ParseExpr(ofSymbol.ReplaceAllString(goSpelling.Replace(expr), "$1($2)"))
	require.NoError(t, err, expr)
	var eval func(ast.Expr) float64
	eval = func(e ast.Expr) float64 {
		switch e := e.(type) {
		case *ast.ParenExpr:
			return eval(e.X)
		case *ast.BasicLit:
			x, err := strconv.ParseFloat(e.Value, 64)
			require.NoError(t, err)
			return x
		case *ast.Ident:
			if e.Name == "π" {
				return math.Pi
			}
			return value(e.Name)
		case *ast.SelectorExpr:
			require.Equal(t, "squared", e.Sel.Name)
			x := eval(e.X)
			return x * x
		case *ast.CallExpr:
			f := functions[e.Fun.(*ast.Ident).Name]
			require.NotNil(t, f, expr)
			require.Len(t, e.Args, 1, expr)
			return f(eval(e.Args[0]))
		case *ast.BinaryExpr:
			x, y := eval(e.X), eval(e.Y)
			switch e.Op {
			case token.ADD:
				return x + y
			case token.SUB:
				return x - y
			case token.MUL:
				return x * y
			case token.QUO:
				return x / y
			}
		}
		require.Fail(t, "a sign that is not read", "%s: %T", expr, e)
		return 0
	}
	return eval(tree)
}

func TestEvaluate(t *testing.T) {
	two := func(string) float64 { return 2 }
	for expr, want := range map[string]float64{
		"π × d² ÷ 4": math.Pi, "√(4 × A ÷ π)": math.Sqrt(8 / math.Pi), "8 − (d + 1)² ÷ 3": 5, "1 ÷ d ÷ d": 0.25,
		"(1 + 1 ÷ cos a) ÷ 2": (1 + 1/math.Cos(2)) / 2, "2 × tan(a ÷ 2)": 2 * math.Tan(1), "n × (1 − sin b)": 2 * (1 - math.Sin(2)),
		"atan(π × t × n)": math.Atan(4 * math.Pi), "acos(1 ÷ a) + asin(1 ÷ a)": math.Pi / 2, "(cos a)²": math.Cos(2) * math.Cos(2),
	} {
		assert.InDelta(t, want, evaluate(t, expr, two), 1e-15, expr)
	}
}

// A term is one number of a displayed line.
type term struct {
	symbol string
	si     float64 // as displayed
	half   float64 // half of what its last place is worth, SI; 0 where it is exact
}

// readTerm reads a number of a displayed line back. True is what it stands for: a number that was not displayed in full must be it
// rounded.
func readTerm(t testing.TB, k *quantity.Kind, text string, truth float64) term {
	t.Helper()
	var x term
	unit := (*quantity.Unit)(nil)
	if k.Style == quantity.StyleRatio && !strings.Contains(text, ":") {
		var err error
		x.si, err = strconv.ParseFloat(text, 64)
		require.NoError(t, err, text)
	} else {
		r, err := k.Parse(text, "")
		require.NoError(t, err, "%s %q", k.Name, text)
		require.False(t, r.Bare, "%q has no unit", text)
		x.si, unit = r.SI, r.Unit
	}
	if math.Abs(x.si-truth) <= 1e-12*math.Abs(truth) {
		return x
	}
	number, _, _ := strings.Cut(text, " ")
	decimals := 0
	if _, after, ok := strings.Cut(number, "."); ok {
		decimals = len(after)
	}
	place := math.Pow10(-decimals)
	if unit != nil {
		require.False(t, unit.Inverse)
		place *= unit.Factor
	}
	x.half = place / 2
	require.LessOrEqual(t, math.Abs(x.si-truth), x.half*(1+1e-6), "%q stands for %g", text, truth)
	return x
}

// readLine takes a numbers line apart along the equation it was made from, and gives its terms and its result as displayed.
func readLine(t testing.TB, line string, st *calc.State, w *calc.Working, result calc.ID) (terms []term, shown term) {
	t.Helper()
	eq := w.Eq
	rest, ok := strings.CutPrefix(line, eq.Symbol+" = ")
	require.True(t, ok, line)
	if eq.RoundUp != 0 {
		rest, ok = strings.CutSuffix(rest, ", rounded up")
		require.True(t, ok, line)
	}
	i := strings.LastIndex(rest, " = ")
	require.Greater(t, i, 0, line)
	right := rest[i+len(" = "):]
	rest = rest[:i]

	var literals, symbols []string
	literal := ""
	for expr := eq.Expr; expr != ""; {
		n, is := craft.Part(expr)
		symbol := expr[:n]
		expr = expr[n:]
		switch {
		case !is:
			literal += symbol
		case strings.HasPrefix(expr, "²"):
			literals, symbols, literal = append(literals, literal+"("), append(symbols, symbol), ")"
		default:
			literals, symbols, literal = append(literals, literal), append(symbols, symbol), ""
		}
	}
	for n, before := range literals {
		rest, ok = strings.CutPrefix(rest, before)
		require.True(t, ok, "%q before %s in %s", before, symbols[n], line)
		next := literal
		if n+1 < len(literals) {
			next = literals[n+1]
		}
		end := len(rest)
		if next != "" {
			end = strings.Index(rest, next)
			if n+1 == len(literals) {
				end = len(rest) - len(next)
			}
		}
		require.Greater(t, end, 0, "%s in %s", symbols[n], line)
		text := rest[:end]
		rest = rest[end:]
		k, truth := quantity.KindRatio, math.NaN()
		for i, s := range eq.Symbols(nil) {
			if s == symbols[n] {
				k, truth = st.Value(w.Terms[i]).Kind(), st.SI(w.Terms[i])
			}
		}
		for _, c := range eq.Const {
			if c.Symbol == symbols[n] {
				truth = c.SI
				for _, kind := range []*quantity.Kind{quantity.KindAcceleration, quantity.KindDensity, quantity.KindResistivity, quantity.KindStress} {
					if kind.Unit(c.Unit.Symbol) != nil {
						k = kind
					}
				}
			}
		}
		x := readTerm(t, k, text, truth)
		x.symbol = symbols[n]
		terms = append(terms, x)
	}
	require.Equal(t, literal, rest, line)
	return terms, readTerm(t, st.Value(result).Kind(), right, st.SI(result))
}

// lineHolds proves a line of working twice: its equation with the unrounded terms, and the line itself as it is displayed.
func lineHolds(t testing.TB, d *Display, st *calc.State, w *calc.Working, result calc.ID) {
	t.Helper()
	exact := roundedUp(w.Eq, evaluate(t, w.Eq.Expr, func(symbol string) float64 {
		for i, s := range w.Eq.Symbols(nil) {
			if s == symbol {
				return st.SI(w.Terms[i])
			}
		}
		for _, c := range w.Eq.Const {
			if c.Symbol == symbol {
				return c.SI
			}
		}
		require.Fail(t, "no such symbol", "%s in %s", symbol, w.Eq.Expr)
		return 0
	}))
	truth := st.SI(result)
	scale := math.Abs(truth)
	for _, id := range w.Terms {
		if st.Value(id).Kind() == st.Value(result).Kind() {
			scale = max(scale, math.Abs(st.SI(id))) // a difference of two terms is as sure as they are
		}
	}
	require.LessOrEqual(t, math.Abs(exact-truth), 1e-12*scale, "%s = %s: the equation gives %.15g, the plan says %.15g", w.Eq.Symbol, w.Eq.Expr, exact, truth)

	line := string(d.NumbersLine(nil, st, w, result))
	terms, shown := readLine(t, line, st, w, result)
	low, high := math.Inf(1), math.Inf(-1)
	for corner := range 1 << len(terms) {
		x := evaluate(t, w.Eq.Expr, func(symbol string) float64 {
			for i := range terms {
				if terms[i].symbol != symbol {
					continue
				}
				if corner>>i&1 == 0 {
					return terms[i].si - terms[i].half
				}
				return terms[i].si + terms[i].half
			}
			return math.NaN()
		})
		x = roundedUp(w.Eq, x)
		low, high = min(low, x), max(high, x)
	}
	slack := shown.half + 1e-12*scale
	require.True(t, shown.si >= low-slack && shown.si <= high+slack, "%s: its numbers give %.8g to %.8g", line, low, high)
}

// Every line of working of every number, in every plan, with every member of every group as the given, in both systems of units.
func TestWorkingIsTrue(t *testing.T) {
	reached := map[*craft.Equation]bool{}
	methods := map[string]bool{}
	lines := 0
	for _, plan := range plans(t) {
		t.Run(plan.name, func(t *testing.T) {
			for _, st := range asGivens(t, plan.text) {
				for id := calc.None + 1; id < calc.NumIDs; id++ {
					steps, n := st.Workings(id)
					for i, w := range steps[:n] {
						if w.Eq == nil {
							methods[w.Method] = true
							continue
						}
						res := result(id, i, n)
						complete := !math.IsNaN(st.SI(res))
						for _, term := range w.Terms {
							complete = complete && !math.IsNaN(st.SI(term))
						}
						if !complete {
							continue
						}
						reached[w.Eq] = true
						for _, us := range []bool{false, true} {
							d := english()
							d.US = us
							lineHolds(t, d, st, w, res)
							lines++
						}
					}
				}
			}
		})
	}
	all := namedInCalc(t)
	assert.Len(t, reached, len(all), "a plan in plans.csv for every equation")
	for eq := range reached {
		for name, expr := range all {
			if expr == eq.Expr {
				delete(all, name)
			}
		}
	}
	assert.Empty(t, all, "not reached")
	assert.Len(t, methods, len(methodKeys(t)), "and for every method")
	assert.Greater(t, lines, 10000)
}

// methodKeys lists the methods in the source of calc.
func methodKeys(t *testing.T) map[string]bool {
	keys := map[string]bool{}
	files, err := filepath.Glob("../*.go")
	require.NoError(t, err)
	for _, name := range files {
		src, err := os.ReadFile(name)
		require.NoError(t, err)
		for _, m := range methodKey.FindAllSubmatch(src, -1) {
			keys[string(m[1])] = true
		}
	}
	return keys
}

var methodKey = regexp.MustCompile(`Method: "([a-z-]+)"`)
