package main

import (
	"os"
	"path/filepath"
	"regexp"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestHouseRules(t *testing.T) {
	later := "TO" + "DO"
	file := func(text string) *fstest.MapFile { return &fstest.MapFile{Data: []byte(text)} }
	for _, c := range []struct {
		name string
		dir  fstest.MapFS
		want []string
	}{
		{"clean", fstest.MapFS{"README.md": file("x"), ".ci/run": file("x"), "web/page.html": file(`<p class="x">`), "calc/a.go": file("style := 1")}, nil},
		{"top", fstest.MapFS{"notes.txt": file("x"), "src/a.go": file("x")}, []string{"notes.txt does not", "src does not"}},
		{"later", fstest.MapFS{"calc/a.go": file("a\n// " + later + ": b\n")}, []string{"calc/a.go:2: " + later}},
		{"later in dots", fstest.MapFS{".ci/run": file(later)}, []string{".ci/run:1: "}},
		{"part of a word", fstest.MapFS{"calc/a.go": file("x" + later + "s")}, nil},
		{"not ours", fstest.MapFS{"dist/a.js": file(later), ".git/x": file(later), "go.sum": file(later)}, nil},
		{"style", fstest.MapFS{"web/page.html": file("<p style=\"color:red\">")}, []string{"web/page.html:1: a style attribute"}},
		{"style in code", fstest.MapFS{"calc/show/a.go": file(`"<p style=\"x\">"`)}, []string{"calc/show/a.go:1: a style attribute"}},
		{"style in a command", fstest.MapFS{"scripts/a.go": file("<p style=\"x\">")}, nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			got, err := houseRules(c.dir)
			require.NoError(t, err)
			require.Len(t, got, len(c.want), "%q", got)
			for i := range got {
				assert.Contains(t, filepath.ToSlash(got[i]), c.want[i])
			}
		})
	}
}

func TestSameFolders(t *testing.T) {
	folder := func(files map[string]string) string {
		dir := t.TempDir()
		for name, text := range files {
			require.NoError(t, os.WriteFile(filepath.Join(dir, name), []byte(text), 0o644))
		}
		return dir
	}
	a := folder(map[string]string{"x": "1", "y": "2"})
	assert.NoError(t, sameFolders(a, folder(map[string]string{"x": "1", "y": "2"})))
	assert.EqualError(t, sameFolders(a, folder(map[string]string{"x": "1", "y": "3"})), "y differs")
	assert.EqualError(t, sameFolders(a, folder(map[string]string{"x": "1", "z": "2"})), "y is in the first build alone\nz is in the second build alone")
	assert.Error(t, sameFolders(a, filepath.Join(a, "missing")))
}

func TestWithout(t *testing.T) {
	env := []string{"GOFLAGS=-a", "PATH=/bin", "GOFLAGSX=1", "GOTOOLCHAIN=local"}
	assert.Equal(t, []string{"PATH=/bin", "GOFLAGSX=1"}, without(env, "GOFLAGS", "GOTOOLCHAIN"))
	assert.Len(t, env, 4)
}

// A file that a document names is there, under its whole path.
func TestNamedFilesAreThere(t *testing.T) {
	named := regexp.MustCompile("`([\\w./-]+\\.(?:go|js|css|html|csv|txt))`")
	root := filepath.Join("..", "..")
	for _, doc := range []string{"README.md", "DEVELOPERS.md"} {
		text, err := os.ReadFile(filepath.Join(root, doc))
		require.NoError(t, err)
		files := named.FindAllSubmatch(text, -1)
		if doc == "DEVELOPERS.md" {
			assert.Greater(t, len(files), 30)
		}
		for _, f := range files {
			assert.FileExists(t, filepath.Join(root, string(f[1])), doc)
		}
	}
}
