package craft

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// The letters of a function's name are no symbols.
func TestPart(t *testing.T) {
	for expr, want := range map[string]string{
		"σ × A":              "[σ] × [A]",
		"π × d² ÷ 4":         "π × [d]² ÷ 4",
		"tan a ÷ (π × t)":    "tan [a] ÷ (π × [t])",
		"acos(n ÷ s) − cos":  "acos([n] ÷ [s]) − cos",
		"√(t) + atan(a) × σ": "√([t]) + atan([a]) × [σ]",
		"":                   "",
	} {
		got := ""
		for rest := expr; rest != ""; {
			n, symbol := Part(rest)
			require.Positive(t, n)
			if symbol {
				got += "[" + rest[:n] + "]"
			} else {
				got += rest[:n]
			}
			rest = rest[n:]
		}
		assert.Equal(t, want, got)
	}
}

func TestSymbols(t *testing.T) {
	for expr, want := range map[string][]string{
		"σ × A":                  {"σ", "A"},
		"π × d² ÷ 4":             {"d"},
		"√(t) + atan(a) × t ÷ a": {"t", "a"},
		"σ × (A + n × (π × (d − u)² ÷ 4 − a)) ÷ g": {"σ", "A", "n", "d", "u", "a"}, // g is a constant
		"1": nil,
	} {
		var eq Equation
		eq.Expr, eq.Const = expr, gravity
		assert.Equal(t, want, eq.Symbols(nil), expr)
	}
}
