package calc

import (
	"testing"

	"github.com/stretchr/testify/require"

	"twistbench/calc/internal/proof"
)

// plans reads testdata/plans.csv.
func plans(t testing.TB) []proof.Plan {
	t.Helper()
	all, err := proof.Plans("testdata/plans.csv")
	require.NoError(t, err)
	require.Greater(t, len(all), 10)
	return all
}

// sheetOf reads a plan text in which nothing is wrong.
func sheetOf(t testing.TB, text string) Sheet {
	t.Helper()
	s, faults := ParsePlan(text)
	require.Empty(t, faults, text)
	return s
}

// work works out a plan text in which nothing is wrong.
func work(t testing.TB, text string) *State {
	t.Helper()
	s := sheetOf(t, text)
	st := new(State)
	st.Work(&s)
	for id := None + 1; id < NumFields; id++ {
		require.Empty(t, st.Notices[id].Reason, "%s in %s", id.Key(), text)
	}
	return st
}
