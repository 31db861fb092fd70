package site

import (
	"html"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"twistbench/calc"
	"twistbench/calc/show"
	"twistbench/calc/words"
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

// A row that goes on from the one above it has its whole name for who hears it alone; one that says all has none besides.
func TestWholeNames(t *testing.T) {
	page, err := Page(Names{})
	require.NoError(t, err)
	row := func(key string) string {
		_, tag, found := strings.Cut(string(page), `<div class="answer" id="`+key+`:row"`)
		require.True(t, found, key)
		tag, _, _ = strings.Cut(tag, ">")
		return html.UnescapeString(tag)
	}
	for _, key := range []string{"stroke.least", "stroke.share-most", "stroke.specific-work", "drive.heat-most", "twist.onset-least"} {
		assert.Contains(t, row(key), `role="group" aria-label="`+words.English.Say("name."+key)+`"`)
	}
	assert.NotContains(t, row("stroke.stroke"), "aria-label")
}

// Where looking closer can hurt, what comes first stands before what is likely; and a link from there has words that need no group around them.
func TestSeen(t *testing.T) {
	page, err := Page(Names{})
	require.NoError(t, err)
	said := words.EnglishPage.Say
	rows := strings.Split(string(page), `<details class="seen">`)[1:]
	first := 0
	for _, key := range []string{"snaps", "snarls", "idle", "end", "over", "unwinds", "flat", "cold", "spot", "off", "smoke", "still", "longer", "once", "back", "slow", "days"} {
		require.NotEmpty(t, rows, key)
		row, _, _ := strings.Cut(rows[0], "</details>")
		rows = rows[1:]
		row = html.UnescapeString(row)
		at := strings.Index(row, said("trouble."+key))
		for _, part := range []string{"-first", "-likely", "-try"} {
			if part == "-first" && !words.EnglishPage.Has("trouble."+key+part) {
				continue
			}
			next := strings.Index(row, said("trouble."+key+part))
			assert.Greater(t, next, at, key+part)
			at = next
			if part == "-first" {
				first++
				assert.Contains(t, row, `<p class="caution">`)
			}
		}
		assert.Contains(t, row[at:], `<a href="#`, key)
		if key == "back" {
			assert.Contains(t, row, `<a href="#drive.cool-most">Most cooling time`, "its label is only: at most")
		}
		if key == "spot" { // it says which box takes what is measured, and there is a link to each
			for _, box := range []string{"wire.test", "wire.test-contact", "wire.before", "wire.after"} {
				assert.Contains(t, said("trouble.spot-try"), words.English.Say("name."+box))
				assert.Contains(t, row[at:], `<a href="#`+box+`">`)
			}
		}
	}
	assert.Empty(t, rows)
	assert.Equal(t, 5, first, "with current on, and a muscle that may be on")
}
