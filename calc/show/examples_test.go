package show

import (
	"flag"
	"math"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"twistbench/calc"
)

var update = flag.Bool("update", false, "write the page part of the worked examples anew")

const pageMark = "-- page --\n"

// Worked examples; their form is told in testdata/README.md.
func TestExamples(t *testing.T) {
	files, err := filepath.Glob("../testdata/*.txt")
	require.NoError(t, err)
	require.GreaterOrEqual(t, len(files), 6)
	for _, name := range files {
		t.Run(strings.TrimSuffix(filepath.Base(name), ".txt"), func(t *testing.T) { example(t, name) })
	}
}

func example(t *testing.T, name string) {
	data, err := os.ReadFile(name)
	require.NoError(t, err)
	body, page, ok := strings.Cut(string(data), pageMark)
	require.True(t, ok, "no page part")
	note, body, ok := strings.Cut(body, "-- given --\n")
	require.True(t, ok, "no given part")
	require.NotEmpty(t, note, "say where the example is from")
	given, answers, ok := strings.Cut(body, "-- answers --\n")
	require.True(t, ok, "no answers part")

	var entries []string
	for line := range uncommented(given) {
		entries = append(entries, line)
	}
	st, _ := work(t, strings.Join(entries, "&"))
	d := english()
	checked := 0
	for line := range uncommented(answers) {
		checked++
		word := strings.Fields(line)
		require.GreaterOrEqual(t, len(word), 3, line)
		id := calc.Find(word[0])
		require.NotEqual(t, calc.None, id, line)
		switch word[1] {
		case "=":
			assert.Equal(t, strings.Join(word[2:], " "), string(d.Append(nil, st, id)), line)
		case "~":
			n := len(word) - 1
			near(t, id, st, st.SI(id), word[2:n], word[n], line)
		case "±":
			n := len(word) - 2
			near(t, id, st, st.Doubt[id], word[2:n], word[n], line)
			assert.Equal(t, calc.Find(word[n+1]), st.Mostly[id], line)
		default:
			require.Fail(t, "not a line of answers", line)
		}
	}
	require.Greater(t, checked, 4)

	summary := string(d.Summary(nil, st, strings.TrimSuffix(filepath.Base(name), ".txt")))
	if *update {
		require.NoError(t, os.WriteFile(name, []byte(strings.TrimSuffix(string(data), page)+summary), 0o644))
		return
	}
	assert.Equal(t, summary, page)
}

// near compares a number of a state with an outside value, whose tolerance is in its own unit.
func near(t *testing.T, id calc.ID, st *calc.State, si float64, value []string, tolerance, line string) {
	t.Helper()
	r, err := st.Value(id).Kind().Parse(strings.Join(value, " "), "")
	require.NoError(t, err, line)
	by, err := strconv.ParseFloat(tolerance, 64)
	require.NoError(t, err, line)
	if r.Unit != nil {
		by *= r.Unit.Factor
	}
	assert.LessOrEqual(t, math.Abs(si-r.SI), by+1e-12*math.Abs(r.SI), "%s: ours is %.8g in SI", line, si)
}

func uncommented(part string) func(yield func(string) bool) {
	return func(yield func(string) bool) {
		for line := range strings.Lines(part) {
			line, _, _ = strings.Cut(line, "#")
			if line = strings.TrimSpace(line); line != "" && !yield(line) {
				return
			}
		}
	}
}
