package show

import (
	"go/ast"
	"go/parser"
	"go/token"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"twistbench/calc/craft"
	"twistbench/calc/quantity"
)

// equations reads the equations of craft from its source: the right-hand side of each by its name.
func equations(t testing.TB) map[string]string {
	t.Helper()
	all := map[string]string{}
	files, err := filepath.Glob("../craft/*.go")
	require.NoError(t, err)
	for _, name := range files {
		if strings.HasSuffix(name, "_test.go") {
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

// namedInCalc reads the equations that a working in calc names. One that none names yet is proved in craft alone.
func namedInCalc(t testing.TB) map[string]string {
	t.Helper()
	files, err := filepath.Glob("../*.go")
	require.NoError(t, err)
	var named []byte
	for _, name := range files {
		src, err := os.ReadFile(name)
		require.NoError(t, err)
		named = append(named, src...)
	}
	all := equations(t)
	for name := range all {
		if !regexp.MustCompile(`\bcraft\.` + name + `\b`).Match(named) {
			delete(all, name)
		}
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
