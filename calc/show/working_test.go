package show

import (
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
	"twistbench/calc/internal/proof"
	"twistbench/calc/quantity"
)

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
	side, err := proof.Read(w.Eq.Expr)
	require.NoError(t, err)
	exact, err := side.Worth(func(symbol string) (float64, bool) {
		for i, s := range w.Eq.Symbols(nil) {
			if s == symbol {
				return st.SI(w.Terms[i]), true
			}
		}
		for _, c := range w.Eq.Const {
			if c.Symbol == symbol {
				return c.SI, true
			}
		}
		return 0, false
	})
	require.NoError(t, err)
	exact = roundedUp(w.Eq, exact)
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
		x, err := side.Worth(func(symbol string) (float64, bool) {
			for i := range terms {
				if terms[i].symbol != symbol {
					continue
				}
				if corner>>i&1 == 0 {
					return terms[i].si - terms[i].half, true
				}
				return terms[i].si + terms[i].half, true
			}
			return 0, false
		})
		require.NoError(t, err)
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
		t.Run(plan.Name, func(t *testing.T) {
			for _, st := range asGivens(t, plan.Text) {
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
