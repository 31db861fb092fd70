package main

import (
	"errors"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func pass(*job) (string, error) { return "seen", nil }
func fail(*job) (string, error) { return "", errors.New("one\ntwo\n") }

func TestAll(t *testing.T) {
	for _, c := range []struct {
		name    string
		checks  []check
		missing []string
		code    int
		last    string // the last line, exactly
		has     []string
	}{
		{"all pass", []check{{"a", pass}, {"b", pass}}, nil, 0, "2 passed, 0 failed", []string{"ok  seen"}},
		{"one fails", []check{{"a", pass}, {"b", fail}}, nil, 1, "1 passed, 1 failed", []string{"FAILED", "\n    one\n    two\n"}},
		{"many fail", []check{{"a", fail}, {"b", fail}}, nil, 1, "0 passed, 2 failed", nil},
		{"a library is missing", []check{{"a", pass}}, []string{"pint", "GNU Units"}, 0, "1 passed, 0 failed",
			[]string{"\nmissing, so not compared with: pint, GNU Units\n1 passed"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			var out strings.Builder
			j := &job{out: &out, missing: c.missing}
			assert.Equal(t, c.code, j.all(c.checks))
			lines := strings.Split(strings.TrimSuffix(out.String(), "\n"), "\n")
			assert.Equal(t, c.last, lines[len(lines)-1])
			for _, has := range c.has {
				assert.Contains(t, out.String(), has)
			}
		})
	}
}

func TestChoose(t *testing.T) {
	all, err := choose(checks, nil)
	require.NoError(t, err)
	assert.Len(t, all, len(checks))
	some, err := choose(checks, []string{"size", "house"})
	require.NoError(t, err)
	assert.Equal(t, []string{"size", "house"}, []string{some[0].name, some[1].name})
	_, err = choose(checks, []string{"house", "nothing"})
	assert.ErrorContains(t, err, `"nothing"`)
}

func TestNeeds(t *testing.T) {
	there, gone := func() bool { return true }, func() bool { return false }
	all := []need{
		{"Browser", "pkg-browser", must, gone}, {"Node", "pkg-node", must, there}, {"pint", "pkg-pint", reference, gone}, {"font", "pkg-font", nice, gone},
	}
	left := absent(all)
	assert.Equal(t, "apt-get update && apt-get install -y --no-install-recommends pkg-browser pkg-pint pkg-font", aptLine(left))
	for _, c := range []struct {
		ci            bool
		gone          []need
		stop, missing []string
	}{
		{false, left, []string{"Browser"}, []string{"pint"}},
		{true, left, []string{"Browser", "pint"}, nil},
		{false, left[1:], nil, []string{"pint"}},
		{true, left[1:], []string{"pint"}, nil},
		{true, left[2:], nil, nil},
		{true, nil, nil, nil},
	} {
		stop, missing := verdict(c.gone, c.ci)
		assert.Equal(t, c.stop, stop, "%v", c)
		assert.Equal(t, c.missing, missing, "%v", c)
	}
}

func TestNodeMajor(t *testing.T) {
	for text, want := range map[string]int{"v18.0.0": 18, "v20.20.2": 20, "v6.1": 6} {
		got, err := nodeMajor(text)
		require.NoError(t, err)
		assert.Equal(t, want, got)
	}
	for _, text := range []string{"", "20.1", "v", "node v20.1"} {
		_, err := nodeMajor(text)
		assert.Error(t, err, text)
	}
}

func TestSummary(t *testing.T) {
	note, err := summary("ok  \ta\t0.1s\n?   \tb\t[no test files]\nok  \tc\t(cached)\n", nil)
	require.NoError(t, err)
	assert.Equal(t, "2 packages", note)
	_, err = summary("?   \tb\t[no test files]\n", nil)
	assert.ErrorContains(t, err, "no package has tests", "a run without tests is not a success")
	_, err = summary("", errors.New("exit status 1"))
	assert.Error(t, err)
}

func TestCommand(t *testing.T) {
	j := &job{root: t.TempDir()}
	out, err := j.command(nil, "sh", "-c", "echo said; echo aside >&2")
	require.NoError(t, err)
	assert.Equal(t, "said\n", out)
	_, err = j.command(nil, "sh", "-c", "echo said; echo aside >&2; exit 3")
	assert.ErrorContains(t, err, "said\naside")
	assert.ErrorContains(t, err, "exit status 3")
}
