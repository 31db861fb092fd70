package craft

import (
	"go/ast"
	"go/parser"
	"go/token"
	"math"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"twistbench/calc/quantity"
)

const mm, g, mPa, tex = 1e-3, 1e-3, 1e6, 1e-6

// Rows from outside: each with what it is checked against.
func TestRows(t *testing.T) {
	for _, row := range []struct {
		name      string
		got, want float64
		rel       float64
	}{
		// handbook U21 to U23, computed with pint 0.19.2
		{"U21 stress of 50 g on 0.127 mm", float64(StressOnRound(50*g, 0.127*mm)), 38.707342617 * mPa, 1e-9},
		{"U22 stress of 250 g on 0.5 mm", float64(StressOfMass(250*g, Area(0.5*mm))), 12.4862145814 * mPa, 1e-9},
		{"U23 mass for 30 MPa on 0.127 mm", float64(SameStress(30*mPa, Area(0.127*mm))), 38.7523373755 * g, 1e-9},
		// handbook T09, T10: d = √(4 T / (π ρ)), computed with pint 0.19.2
		{"T09 diameter of 70 tex at 1140 kg/m³", float64(Diameter(AreaOfTitre(70*tex, 1140))), 0.279609326658 * mm, 1e-6},
		{"T10 diameter of 23.3333333333 tex at 1140 kg/m³", float64(Diameter(AreaOfTitre(23.3333333333*tex, 1140))), 0.161432520014 * mm, 1e-6},
		// model M1 of coiled actuators: m = s (π d²/4)/g with g 9.80665, to the four digits given
		{"M1 force of 20 MPa on 0.5 mm", float64(ForceForStress(20*mPa, Area(0.5*mm))), 3.927, 5e-5},
		{"M1 mass of 20 MPa on 0.5 mm", float64(MassForForce(ForceForStress(20*mPa, Area(0.5*mm)))), 0.4004, 2e-4},
		// model M5: tex = 1e6 ρ π d²/4
		{"M5 tex of 0.5 mm at 1140 kg/m³", float64(LinearDensity(Area(0.5*mm), 1140)), 223.8 * tex, 3e-4},
		{"M5 diameter of 940 dtex at 1140 kg/m³", float64(Diameter(AreaOfTitre(94*tex, 1140))), 0.324 * mm, 2e-3},
		// model M18: after release L = L0 (1 + r st)
		{"M18 gap of 120 mm and 25 %", float64(Gap(120*mm, 0.25)), 150 * mm, 1e-12},
		{"M18 released, 0.8 kept", float64(Released(120*mm, 150*mm, 0.8)), 144 * mm, 1e-12},
		{"M18 backwards", float64(OfReleased(144*mm, 1.25, 0.8)), 120 * mm, 1e-12},
	} {
		assert.InEpsilon(t, row.want, row.got, row.rel, row.name)
	}
}

// Handbook G06: standard gravity against that of the equator, 9.7803253359 m/s² (the normal gravity of the 1984 world geodetic
// system), differs by 0.269159390878 %, to 1e-4. The words promise 0.27 %.
func TestGravityOfTheEquator(t *testing.T) {
	const equator = 9.7803253359
	off := 100 * (StandardGravity/equator - 1)
	assert.InDelta(t, 0.269159390878, off, 1e-4)
	assert.Less(t, off, 0.27)
	assert.Equal(t, "9.80665", gravity[0].Text)
}

// The circle around n equal circles of diameter 1. Two to four and seven by hand; five 1 + 1/sin(36°) and six 1 + 1/sin(30°) from the
// polygon of their centres. Beyond, rings of six more each: 19 in two rings are 5 across, 37 in three are 7.
func TestEnvelope(t *testing.T) {
	for n, want := range map[quantity.Count]float64{
		0: 0, 1: 1, 2: 2, 3: 1 + 2/math.Sqrt(3), 4: 1 + math.Sqrt2, 5: 1 + 1/math.Sin(math.Pi/5), 6: 3, 7: 3,
		8: 5, 19: 5, 20: 7, 37: 7, 38: 9,
	} {
		assert.InDelta(t, want, float64(Envelope(n, 1)), 1e-15, "%g strands", float64(n))
	}
	assert.True(t, math.IsNaN(float64(Envelope(quantity.Count(quantity.NaN), 1))))
	assert.InDelta(t, 2*0.3+0.1, float64(BundleEnvelope(2, 0.3, 1, 0.1)), 1e-15)
	assert.InDelta(t, 0.6, float64(BundleEnvelope(2, 0.3, 0, quantity.Length(quantity.NaN))), 1e-15, "no companion, no need of its size")
}

func TestSolidArea(t *testing.T) {
	assert.InDelta(t, 3*0.2+2*0.05, float64(SolidArea(3, 0.2, 2, 0.05)), 1e-15)
	assert.InDelta(t, 0.6, float64(SolidArea(3, 0.2, 0, quantity.Area(quantity.NaN))), 1e-15)
	assert.True(t, math.IsNaN(float64(SolidArea(3, 0.2, 1, quantity.Area(quantity.NaN)))))
}

// Rounding up for hands: what lies on a step by any sum stays on it. 0.07 × 4 + 2 × 0.04 is 0.36000000000000004 in float64.
func TestRoundedUp(t *testing.T) {
	p := 0.07 * quantity.Length(4)
	assert.Equal(t, 0.36, float64(CutLength(p, 0.04)))
	assert.Equal(t, 0.361, float64(CutLength(p+1e-6, 0.04)))
	assert.Equal(t, 6.0, float64(Pieces(5, 0.2))) // 6 and a hair in float64 arithmetic
	assert.Equal(t, 7.0, float64(Pieces(5, 0.21)))
	assert.Equal(t, 5.0, float64(Pieces(5, 0)))
	// 2 kg at 5 MPa on 0.70 mm: 10.19 (scenario S5)
	assert.Equal(t, 11.0, float64(SideBySide(2, 5*mPa, Area(0.7*mm))))
}

func TestHole(t *testing.T) {
	for _, row := range []struct{ gap, pitch, offset, hole float64 }{
		{100, 10, 0, 10}, {104.9, 10, 0, 10}, {105.1, 10, 0, 11},
		{104.9, 10, 3, 10}, {108.1, 10, 3, 11}, // gaps of 103 and 113
		{2, 10, 0, 1}, {10, 10, 30, 1}, // never below the first hole
		{100, 10, -5, 11}, // 105
	} {
		got := Hole(quantity.Length(row.gap*mm), quantity.Length(row.pitch*mm), quantity.Length(row.offset*mm))
		assert.Equal(t, row.hole, float64(got), "%v", row)
		gap := HoleGap(got, quantity.Length(row.pitch*mm), quantity.Length(row.offset*mm))
		assert.InDelta(t, row.hole*row.pitch+row.offset, float64(gap)/mm, 1e-9)
	}
	assert.True(t, math.IsNaN(float64(Hole(quantity.Length(quantity.NaN), 0.01, 0))))
	assert.True(t, math.IsNaN(float64(Hole(0.1, quantity.Length(quantity.NaN), 0))))
}

// The bottle: 194 g on a bottle of 31 g is 163.3 ml of water at 0.998 g/ml.
func TestWater(t *testing.T) {
	assert.InEpsilon(t, 163e-6/0.998, float64(Water(194*g, 31*g)), 1e-12)
}

func TestNearest(t *testing.T) {
	for _, row := range []struct {
		density quantity.Density
		polymer string
	}{
		{1140, "nylon-66"}, {1090, "nylon-66"}, {950, "polyethylene"}, {970, "polyethylene"}, {1390, "polyester"}, {1760, "pvdf"},
		{1050, ""}, {500, ""}, {2500, ""}, {quantity.Density(quantity.NaN), ""},
	} {
		i, got := Nearest(row.density), ""
		if i >= 0 {
			got = Polymers[i].Key
		}
		assert.Equal(t, row.polymer, got, "%g", float64(row.density))
	}
}

func TestPolymers(t *testing.T) {
	for i, p := range Polymers {
		require.NotNil(t, p.Source, p.Key)
		if i == len(Polymers)-1 {
			assert.True(t, math.IsNaN(float64(p.Density)), "the last one has no book value")
			continue
		}
		assert.True(t, p.Density > 850 && p.Density < 2000, p.Key)
	}
}

func TestSources(t *testing.T) {
	for _, s := range []*Source{&Geometry, &Common, &Memory, &Worked} {
		assert.Empty(t, s.Cite)
	}
	for _, s := range []*Source{&LinearUnits, &FibreTables, &SetRetention, &IdealYarn, &LinkTheorem, &RodTheory, &TorsionTables, &SelfCoil} {
		assert.NotEmpty(t, s.Cite)
		assert.Contains(t, []Mark{Read, FromMemory}, s.Mark)
	}
}

// Every equation in the source is written with signs that the page knows, and says where it holds and where it is from; its symbols are found
// in the order of their first appearance.
func TestEquations(t *testing.T) {
	files, err := filepath.Glob("*.go")
	require.NoError(t, err)
	n := 0
	for _, name := range files {
		src, err := os.ReadFile(name)
		require.NoError(t, err)
		tree, err := parser.ParseFile(token.NewFileSet(), name, src, 0)
		require.NoError(t, err)
		ast.Inspect(tree, func(node ast.Node) bool {
			if lit, ok := node.(*ast.CompositeLit); ok {
				if typ, ok := lit.Type.(*ast.Ident); ok && typ.Name == "Equation" {
					n++
					equation(t, lit)
				}
			}
			return true
		})
	}
	assert.Greater(t, n, 40)
}

// function is the name of a function before what it is of.
var function = regexp.MustCompile(`\b(sin|cos|tan|asin|acos|atan)( ?[\pL(])`)

func equation(t *testing.T, lit *ast.CompositeLit) {
	t.Helper()
	parts := map[string]ast.Expr{}
	for _, e := range lit.Elts {
		kv := e.(*ast.KeyValueExpr)
		parts[kv.Key.(*ast.Ident).Name] = kv.Value
	}
	text := func(e ast.Expr) string {
		s, err := strconv.Unquote(e.(*ast.BasicLit).Value)
		require.NoError(t, err)
		return s
	}
	expr := text(parts["Expr"])
	var eq Equation
	eq.Expr, eq.Const = expr, nil
	constants := map[string]bool{}
	switch c := parts["Const"].(type) {
	case *ast.Ident:
		eq.Const = map[string][]Constant{"gravity": gravity, "copper": copper, "steel": steel}[c.Name]
		require.Len(t, eq.Const, 1, c.Name)
		constants[eq.Const[0].Symbol] = true
	case *ast.CompositeLit:
		constants[WaterEq.Const[0].Symbol] = true
		eq.Const = WaterEq.Const
	}
	symbols := eq.Symbols(nil)
	var found []string
	assert.NotRegexp(t, `(sin|cos|tan) .²`, expr, "of the symbol or of its square?")
	for _, r := range function.ReplaceAllString(expr, "$2") {
		s := string(r)
		switch {
		case r == 'π', !('a' <= r && r <= 'z' || 'A' <= r && r <= 'Z' || 'α' <= r && r <= 'ω'):
			assert.Contains(t, "π ×÷−+²√()0123456789", s, "%s: a sign that the page has no meaning for", expr)
		case constants[s]:
			delete(constants, s)
		case !slices.Contains(found, s):
			found = append(found, s)
		}
	}
	assert.Equal(t, found, symbols, expr)
	assert.Empty(t, constants, "%s: a constant that is not in it", expr)
	assert.NotContains(t, symbols, text(parts["Symbol"]), expr)
	assert.NotEmpty(t, text(parts["Holds"]), expr)
	assert.NotNil(t, parts["Source"], expr)
}
