package site

import (
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"twistbench/calc"
	"twistbench/calc/show"
)

// What stands in a section can wait while that is out of sight, so that a number must stand where show.Home says, and nowhere else.
func TestHomes(t *testing.T) {
	root, err := Root()
	require.NoError(t, err)
	text, err := os.ReadFile(filepath.Join(root, "web", "page.html"))
	require.NoError(t, err)
	section := regexp.MustCompile(`<section class="step" id="(\w+)"`)
	slots := regexp.MustCompile(`{{(?:box|answer|notes) "([\w.-]+)"}}`)
	found := 0
	for part := range strings.SplitSeq(string(text), "</section>") {
		in := section.FindStringSubmatch(part)
		for _, m := range slots.FindAllStringSubmatch(part, -1) {
			require.NotNil(t, in, m[1])
			home := show.Home(calc.Find(m[1]))
			assert.True(t, home == "" || home == in[1], "%s stands in %s", m[1], in[1])
			found++
		}
		for _, m := range regexp.MustCompile(`{{(?:drawing|thread) "(\w+)"}}`).FindAllStringSubmatch(part, -1) {
			assert.Equal(t, in[1], m[1])
			found++
		}
	}
	assert.Greater(t, found, 200)
}
