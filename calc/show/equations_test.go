package show

import (
	"go/ast"
	"go/parser"
	"go/token"
	"math"
	"os"
	"path/filepath"
	"reflect"
	"runtime"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"twistbench/calc/craft"
	"twistbench/calc/quantity"
)

// steps are the files of craft whose equations are on the page. A file joins them with the section that shows it.
var steps = []string{"fibre.go", "hang.go", "cut.go", "clamp.go", "masses.go"}

// equations reads the equations of craft from its source, those of the steps on the page or all the others: the right-hand side of each
// by its name.
func equations(t testing.TB, onPage bool) map[string]string {
	t.Helper()
	all := map[string]string{}
	files, err := filepath.Glob("../craft/*.go")
	require.NoError(t, err)
	for _, name := range files {
		if slices.Contains(steps, filepath.Base(name)) != onPage || strings.HasSuffix(name, "_test.go") {
			continue
		}
		src, err := os.ReadFile(name)
		require.NoError(t, err)
		tree, err := parser.ParseFile(token.NewFileSet(), name, src, 0)
		require.NoError(t, err)
		literals := 0
		ast.Inspect(tree, func(node ast.Node) bool {
			switch node := node.(type) {
			case *ast.CompositeLit:
				if isEquation(node) {
					literals++
				}
			case *ast.ValueSpec:
				for i, value := range node.Values {
					if lit, ok := value.(*ast.CompositeLit); ok && isEquation(lit) {
						all[node.Names[i].Name] = exprOf(t, lit)
						literals--
					}
				}
			}
			return true
		})
		require.Zero(t, literals, "%s: an equation without a name", name)
	}
	return all
}

func isEquation(lit *ast.CompositeLit) bool {
	typ, ok := lit.Type.(*ast.Ident)
	return ok && typ.Name == "Equation"
}

func exprOf(t testing.TB, lit *ast.CompositeLit) string {
	t.Helper()
	for _, e := range lit.Elts {
		if kv := e.(*ast.KeyValueExpr); kv.Key.(*ast.Ident).Name == "Expr" {
			s, err := strconv.Unquote(kv.Value.(*ast.BasicLit).Value)
			require.NoError(t, err)
			return s
		}
	}
	require.Fail(t, "an equation without a right-hand side")
	return ""
}

// roundedUp is a result as its equation gives it.
func roundedUp(eq *craft.Equation, x float64) float64 {
	if eq.RoundUp != 0 {
		return quantity.CeilTo(x, eq.RoundUp)
	}
	return x
}

// proofs are the equations that no step on the page shows yet, each with its function, the symbols in the order of the function's
// parameters, and sets of values (SI) within the range of both. All have a function, and none stands for a range.
var proofs = []struct {
	eq   *craft.Equation
	f    any
	args string
	at   [][]float64
}{
	{&craft.ContractionEq, craft.Contraction, "a", [][]float64{{0.3}, {0.8}, {1.3}}},
	{&craft.RetractionEq, craft.Retraction, "c", [][]float64{{1.1}, {1.7}}},
	{&craft.TwistedLengthEq, craft.TwistedLength, "P c", [][]float64{{0.5, 1.2}, {1.1, 1.6}}},
	{&craft.TwistedThicknessEq, craft.TwistedThickness, "d c", [][]float64{{0.2e-3, 1.2}, {0.48e-3, 1.5}}},
	{&craft.TwistedTitreEq, craft.TwistedTitre, "u c", [][]float64{{36e-6, 1.2}, {206e-6, 1.5}}},
	{&craft.BiasEq, craft.Bias, "n t", [][]float64{{1500, 0.22e-3}, {400, 0.5e-3}}},
	{&craft.TwistForBiasEq, craft.TwistForBias, "a t", [][]float64{{0.4, 0.22e-3}, {1.1, 0.5e-3}}},
	{&craft.BiasUntwistedEq, craft.BiasUntwisted, "n d", [][]float64{{1500, 0.2e-3}, {400, 0.48e-3}}},
	{&craft.PrecursorTwistEq, craft.PrecursorTwist, "a t", [][]float64{{0.4, 0.22e-3}, {1.1, 0.5e-3}}},
	{&craft.BiasOfPrecursorTwistEq, craft.BiasOfPrecursorTwist, "n t", [][]float64{{1500, 0.22e-3}, {400, 0.5e-3}}},
	{&craft.BiasOfPrecursorTwistUntwistedEq, craft.BiasOfPrecursorTwistUntwisted, "n d", [][]float64{{1500, 0.2e-3}, {400, 0.48e-3}, {600, 0.5e-3}}},
	{&craft.TurnsInEq, craft.TurnsIn, "n P", [][]float64{{1500, 0.5}, {400, 1.1}}},
	{&craft.TwistOfTurnsEq, craft.TwistOfTurns, "N P", [][]float64{{700, 0.5}, {430, 1.1}}},
	{&craft.FactorOfTwistEq, craft.FactorOfTwist, "n T", [][]float64{{1500, 43e-6}, {400, 250e-6}}},
	{&craft.TwistOfFactorEq, craft.TwistOfFactor, "K T", [][]float64{{9.5, 43e-6}, {6.2, 250e-6}}},
	{&craft.BiasOfFactorEq, craft.BiasOfFactor, "K ρ", [][]float64{{9.5, 1140}, {6.2, 960}}},
	{&craft.FactorForBiasEq, craft.FactorForBias, "a ρ", [][]float64{{0.4, 1140}, {1.1, 960}}},
	{&craft.SameTightnessEq, craft.SameTightness, "n t u", [][]float64{{1500, 0.22e-3, 0.5e-3}, {400, 0.5e-3, 0.3e-3}}},
	{&craft.SurfaceShearEq, craft.SurfaceShear, "a", [][]float64{{0.4}, {1.1}}},
	{&craft.DrillTimeEq, craft.DrillTime, "N r", [][]float64{{700, 5}, {430, 12.5}}},
	{&craft.DrillSpeedEq, craft.DrillSpeed, "N t", [][]float64{{700, 140}, {430, 34.4}}},

	{&craft.OnsetBiasEq, craft.OnsetBias, "E G σ", [][]float64{{2.5e9, 0.42e9, 20e6}, {1.5e9, 0.5e9, 35e6}}},

	{&craft.MeanDiameterEq, craft.MeanDiameter, "O t", [][]float64{{0.9e-3, 0.22e-3}, {2.1e-3, 0.5e-3}}},
	{&craft.OuterDiameterEq, craft.OuterDiameter, "D t", [][]float64{{0.7e-3, 0.22e-3}, {1.6e-3, 0.5e-3}}},
	{&craft.IndexEq, craft.Index, "D t", [][]float64{{0.7e-3, 0.22e-3}, {1.6e-3, 0.5e-3}}},
	{&craft.TurnLengthEq, craft.TurnLength, "D p", [][]float64{{0.7e-3, 0.25e-3}, {1.6e-3, 0.9e-3}}},
	{&craft.FibreInCoilsEq, craft.FibreInCoils, "N l", [][]float64{{240, 2.2e-3}, {85.5, 5.1e-3}}},
	{&craft.PitchAngleEq, craft.PitchAngle, "D p", [][]float64{{0.7e-3, 0.25e-3}, {1.6e-3, 0.9e-3}}},
	{&craft.PitchEq, craft.Pitch, "L N", [][]float64{{0.06, 240}, {0.11, 85.5}}},
	{&craft.CoilsEq, craft.Coils, "L p", [][]float64{{0.06, 0.25e-3}, {0.11, 0.9e-3}}},
	{&craft.CoilLengthEq, craft.CoilLength, "N p", [][]float64{{240, 0.25e-3}, {85.5, 0.9e-3}}},
	{&craft.CoilsPerLengthEq, craft.CoilsPerLength, "p", [][]float64{{0.25e-3}, {0.9e-3}}},
	{&craft.RatioOfShapeEq, craft.RatioOfShape, "D p c", [][]float64{{0.7e-3, 0.25e-3, 1.2}, {1.6e-3, 0.9e-3, 1.5}}},
	{&craft.PitchOfRatioEq, craft.PitchOfRatio, "D r c", [][]float64{{0.7e-3, 4.8, 1.2}, {1.6e-3, 3, 1.5}}},
	{&craft.DiameterOfRatioEq, craft.DiameterOfRatio, "p r c", [][]float64{{0.25e-3, 4.8, 1.2}, {0.9e-3, 3, 1.5}}},
	{&craft.WritheEq, craft.Writhe, "N b", [][]float64{{240, 0.11}, {85.5, 0.3}}},
	{&craft.LinkEq, craft.Link, "T W", [][]float64{{460, 240}, {310, 85.5}}},
	{&craft.FullCoilingEq, craft.FullCoiling, "n b l c", [][]float64{{1500, 0.11, 2.2e-3, 1.2}, {400, 0.3, 5.1e-3, 1.5}}},
	{&craft.ClearanceEq, craft.Clearance, "p b t", [][]float64{{0.35e-3, 0.11, 0.22e-3}, {0.9e-3, 0.3, 0.5e-3}}},
	{&craft.NearSolidPitchEq, craft.NearSolidPitch, "t b", [][]float64{{0.22e-3, 0.11}, {0.5e-3, 0.3}}},
	{&craft.IndexAtLoadEq, craft.IndexAtLoad, "E σ", [][]float64{{0.46e9, 10e6}, {0.68e9, 35e6}}},
	{&craft.OnRodEq, craft.OnRod, "R t", [][]float64{{1e-3, 0.22e-3}, {3e-3, 0.5e-3}}},
	{&craft.RodFibreEq, craft.RodFibre, "L D p", [][]float64{{0.06, 0.7e-3, 0.25e-3}, {0.11, 1.6e-3, 0.9e-3}}},
	{&craft.DialEq, craft.Dial, "T D P b", [][]float64{{453, 448, 459, 1.04}, {300, 290, 310, 0.7}}},
	{&craft.AtDialEq, craft.AtDial, "d D P b", [][]float64{{453, 448, 459, 1.04}, {300, 290, 310, 0.7}}},
	{&craft.PeakEq, craft.Peak, "T o", [][]float64{{453, 10}, {300, -3}}},
	{&craft.MarginEq, craft.Margin, "m P", [][]float64{{528, 463}, {383, 403}}},
	{&craft.PerLoadEq, craft.PerLoad, "f n", [][]float64{{4, 4}, {6, 1}}},
	{&craft.LoadsEq, craft.Loads, "n N", [][]float64{{32, 16}, {33, 16}}},
	{&craft.OneStageTimeEq, craft.OneStageTime, "p l r a b s", [][]float64{{900, 180, 300, 3600, 1800, 86400}, {1, 2, 3, 4, 5, 6}}},
	{&craft.TwoStageTimeEq, craft.TwoStageTime, "p l r a b k c d s", [][]float64{{900, 180, 300, 3600, 1800, 600, 3000, 1700, 86400}, {1, 2, 3, 4, 5, 6, 7, 8, 9}}},

	{&craft.ClosingLimitEq, craft.ClosingLimit, "p s", [][]float64{{0.35e-3, 0.23e-3}, {0.9e-3, 0.55e-3}}},
}

// What an equation says is what the function beside it works out; those that the page shows are proved by TestWorkingIsTrue.
func TestEquationsAreTrue(t *testing.T) {
	source := equations(t, false)
	proved := map[string]bool{}
	for _, p := range proofs {
		f := reflect.ValueOf(p.f)
		_, name, _ := strings.Cut(runtime.FuncForPC(f.Pointer()).Name(), "/craft.")
		t.Run(name, func(t *testing.T) {
			expr, ok := source[name+"Eq"]
			require.True(t, ok, "no such equation in the source")
			require.Equal(t, expr, p.eq.Expr, "the equation of another function")
			proved[name+"Eq"] = true

			args := strings.Fields(p.args)
			require.ElementsMatch(t, p.eq.Symbols, args)
			require.Len(t, args, f.Type().NumIn())
			require.GreaterOrEqual(t, len(p.at), 2)
			for _, values := range p.at {
				require.Len(t, values, len(args))
				in := make([]reflect.Value, len(args))
				for i, x := range values {
					in[i] = reflect.ValueOf(x).Convert(f.Type().In(i))
				}
				want := f.Call(in)[0].Float()
				require.False(t, math.IsNaN(want) || math.IsInf(want, 0) || want == 0, "%v gives %g", values, want)
				got := roundedUp(p.eq, evaluate(t, p.eq.Expr, func(symbol string) float64 {
					if i := slices.Index(args, symbol); i >= 0 {
						return values[i]
					}
					for _, c := range p.eq.Const {
						if c.Symbol == symbol {
							return c.SI
						}
					}
					require.Fail(t, "no such symbol", "%s in %s", symbol, p.eq.Expr)
					return 0
				}))
				assert.InEpsilon(t, want, got, 1e-12, "%s = %s at %v", p.eq.Symbol, p.eq.Expr, values)
			}
		})
	}
	for name := range source {
		assert.True(t, proved[name], "nothing proves %s", name)
	}
}
