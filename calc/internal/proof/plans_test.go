package proof

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestPlans(t *testing.T) {
	all, err := Plans("../../testdata/plans.csv")
	require.NoError(t, err)
	assert.Greater(t, len(all), 10)
	assert.Equal(t, "start", all[0].Name)
	assert.Empty(t, all[0].Text, "nothing typed")
	names := map[string]bool{}
	for _, p := range all {
		assert.NotEmpty(t, p.Name)
		names[p.Name] = true
	}
	assert.Len(t, names, len(all), "a name for each")

	_, err = Plans("nowhere.csv")
	assert.Error(t, err)
	for text, why := range map[string]string{"": "no plans", "name,plan\n": "no plans", "name\na\n": "no plans", "name,plan\na\n": "wrong number of fields"} {
		path := filepath.Join(t.TempDir(), "plans.csv")
		require.NoError(t, os.WriteFile(path, []byte(text), 0o600))
		_, err := Plans(path)
		assert.ErrorContains(t, err, why)
	}
}
