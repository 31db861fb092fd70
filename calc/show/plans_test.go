package show

import (
	"strconv"
	"testing"

	"github.com/stretchr/testify/require"

	"twistbench/calc"
	"twistbench/calc/internal/proof"
	"twistbench/calc/words"
)

// plans reads the plans that the tests of calc work with too.
func plans(t testing.TB) []proof.Plan {
	t.Helper()
	all, err := proof.Plans("../testdata/plans.csv")
	require.NoError(t, err)
	require.Greater(t, len(all), 10)
	return all
}

// work works out a plan text in which nothing is wrong.
func work(t testing.TB, text string) (*calc.State, calc.Sheet) {
	t.Helper()
	s, faults := calc.ParsePlan(text)
	require.Empty(t, faults, text)
	st := new(calc.State)
	st.Work(&s)
	for id := calc.None + 1; id < calc.NumFields; id++ {
		require.Empty(t, st.Notices[id].Reason, "%s in %s", id.Key(), text)
	}
	return st, s
}

// asGivens works a plan out once as it is, and once with every member of every group as the given, at the value it had.
func asGivens(t testing.TB, text string) (all []*calc.State) {
	t.Helper()
	st, sheet := work(t, text)
	all = append(all, st)
	for id := calc.None + 1; id < calc.NumFields; id++ {
		if _, ok := calc.GroupOf(id); !ok || st.SI(id) != st.SI(id) || !st.Worked(id) {
			continue
		}
		x := st.Value(id).Kind().Unit(calc.Fields[id].Unit).FromSI(st.SI(id))
		s := sheet.Type(id, strconv.FormatFloat(x, 'f', -1, 64), calc.Fields[id].Unit)
		next := new(calc.State)
		next.Work(&s)
		require.Empty(t, next.Notices[id].Reason, id.Key())
		all = append(all, next)
	}
	return all
}

func english() *Display { return &Display{Lang: &words.English} }
