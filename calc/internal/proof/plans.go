package proof

import (
	"encoding/csv"
	"fmt"
	"os"
)

// Plan is a plan that several tests work with: its text is as calc.ParsePlan reads it.
type Plan struct{ Name, Text string }

// Plans reads the plans of calc/testdata/plans.csv; it is told where that is.
func Plans(path string) (all []Plan, err error) {
	f, err := os.Open(path)
	if err != nil {
		return nil, err
	}
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	if err != nil {
		return nil, fmt.Errorf("%s: %w", path, err)
	}
	if len(rows) < 2 || len(rows[0]) != 2 {
		return nil, fmt.Errorf("%s: no plans: it has a heading, and then a name and a plan in each row", path)
	}
	for _, r := range rows[1:] {
		all = append(all, Plan{r[0], r[1]})
	}
	return all, nil
}
