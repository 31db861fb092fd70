package calc

import (
	"encoding/csv"
	"os"
	"testing"

	"github.com/stretchr/testify/require"
)

// namedPlan is a plan that several tests work with.
type namedPlan struct{ name, text string }

// plans reads testdata/plans.csv.
func plans(t testing.TB) (all []namedPlan) {
	t.Helper()
	f, err := os.Open("testdata/plans.csv")
	require.NoError(t, err)
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	require.NoError(t, err)
	for _, r := range rows[1:] {
		all = append(all, namedPlan{r[0], r[1]})
	}
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
