package site

import (
	"bytes"
	"compress/gzip"
	"encoding/json"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"twistbench/calc/words"
)

// some are parts with every file but a real core.
func some(t *testing.T) parts {
	t.Helper()
	root, err := Root()
	require.NoError(t, err)
	p := parts{
		wasm: []byte("core"), exec: []byte("glue"), boot: []byte("boot"), style: []byte("style"),
		page: func(n Names) ([]byte, error) {
			return []byte(strings.Join([]string{n.Wasm, n.Exec, n.Boot, n.Style, n.Manifest, n.Icon, n.Touch}, "\n")), nil
		},
	}
	p.manifest, err = os.ReadFile(filepath.Join(root, "web", "manifest.webmanifest"))
	require.NoError(t, err)
	p.worker, err = os.ReadFile(filepath.Join(root, "web", "sw.js"))
	require.NoError(t, err)
	p.icons, err = drawIcons()
	require.NoError(t, err)
	return p
}

func built(t *testing.T, p parts) (map[string]string, string) {
	t.Helper()
	files, version, err := assemble(p)
	require.NoError(t, err)
	all := map[string]string{}
	for _, f := range files {
		all[f.Name] = string(f.Data)
	}
	require.Len(t, all, len(files), "no name twice")
	return all, version
}

// listed is the first line of the built worker as a list.
func listed(t *testing.T, worker string) []string {
	t.Helper()
	line, _, _ := strings.Cut(worker, "\n")
	var names []string
	require.NoError(t, json.Unmarshal([]byte(strings.TrimSuffix(strings.TrimPrefix(line, "const FILES="), ";")), &names))
	return names
}

func TestAssemble(t *testing.T) {
	all, version := built(t, some(t))
	worker := all["sw.js"]
	assert.Contains(t, worker, "\nconst VERSION=\""+version+"\";\n")

	want := []string{"./"}
	for name := range all {
		if name != "index.html" && name != "sw.js" {
			want = append(want, name)
		}
	}
	assert.ElementsMatch(t, want, listed(t, worker), "the worker keeps everything but itself")
	for name := range strings.SplitSeq(all["index.html"], "\n") {
		assert.Contains(t, all, name, "the page names files that exist")
	}
}

// Each input that changes must change the version, and only the name of its own file.
func TestAssembleFollowsContent(t *testing.T) {
	before, version := built(t, some(t))
	for _, c := range []struct {
		name   string
		change func(*parts)
		gone   string // the name that must disappear, by its stem
	}{
		{"core", func(p *parts) { p.wasm = []byte("other") }, "twistbench."},
		{"glue", func(p *parts) { p.exec = []byte("other") }, "wasm_exec."},
		{"boot", func(p *parts) { p.boot = []byte("other") }, "boot."},
		{"style", func(p *parts) { p.style = []byte("other") }, "style."},
		{"worker", func(p *parts) { p.worker = append(p.worker, '\n') }, ""},
		{"manifest", func(p *parts) { p.manifest = append(p.manifest, '\n') }, ""},
		{"icon", func(p *parts) { p.icons[0].Data = []byte("other") }, ""},
		{"page", func(p *parts) { p.page = func(Names) ([]byte, error) { return []byte("other"), nil } }, ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := some(t)
			c.change(&p)
			after, changed := built(t, p)
			assert.NotEqual(t, version, changed)
			for name := range before {
				_, still := after[name]
				assert.Equal(t, c.gone == "" || !strings.HasPrefix(name, c.gone), still, name)
			}
		})
	}
}

func TestAssembleRefuses(t *testing.T) {
	for _, manifest := range []string{
		``, `{`, `{"icons":[]}`, `{"icons":[{"src":"missing.png"}]}`,
	} {
		p := some(t)
		p.manifest = []byte(manifest)
		_, _, err := assemble(p)
		assert.ErrorContains(t, err, "manifest", manifest)
	}
}

func TestManifestIsRelative(t *testing.T) {
	var m struct {
		ID, Scope string
		StartURL  string `json:"start_url"`
		Icons     []struct{ Src string }
	}
	require.NoError(t, json.Unmarshal(some(t).manifest, &m))
	assert.Equal(t, "./", m.StartURL)
	assert.Equal(t, "./", m.Scope)
	assert.Equal(t, "./", m.ID)
	for _, icon := range m.Icons {
		assert.NotContains(t, icon.Src, "/")
	}
}

func TestHash(t *testing.T) {
	// FIPS 180-2, appendix B.1: SHA-256 of "abc" begins ba7816bf 8f01cfea.
	assert.Equal(t, "style.ba7816bf8f01.css", hashed("style", ".css", []byte("abc")))
	a := versionOf([]File{{"a", []byte("bc")}})
	assert.NotEqual(t, a, versionOf([]File{{"ab", []byte("c")}}), "a name's end is not the content's start")
	assert.Len(t, a, 16)
}

func TestSqueeze(t *testing.T) {
	text := bytes.Repeat([]byte("turn after turn "), 100)
	z := squeeze(text)
	assert.Less(t, len(z), len(text)/4)
	assert.Equal(t, z, squeeze(text))
	r, err := gzip.NewReader(bytes.NewReader(z))
	require.NoError(t, err)
	back, err := io.ReadAll(r)
	require.NoError(t, err)
	assert.Equal(t, text, back)
}

func TestWrite(t *testing.T) {
	one := []File{{"index.html", []byte("1")}, {"sw.js", []byte("const FILES=[];")}, {"old.js", nil}}
	two := []File{{"index.html", []byte("2")}, {"sw.js", []byte("const FILES=[];")}}
	dir := filepath.Join(t.TempDir(), "a", "b")
	require.NoError(t, write(dir, one), "made with its parents")
	require.NoError(t, write(dir, two), "an earlier build is replaced")
	entries, err := os.ReadDir(dir)
	require.NoError(t, err)
	assert.Len(t, entries, 2, "nothing of the earlier build stays")

	for name, make := range map[string]func(dir string) error{
		"papers":       func(d string) error { return os.WriteFile(filepath.Join(d, "thesis.txt"), []byte("mine"), 0o644) },
		"other worker": func(d string) error { return os.WriteFile(filepath.Join(d, "sw.js"), []byte("mine"), 0o644) },
		"build and more": func(d string) error {
			return os.WriteFile(filepath.Join(d, "sw.js"), []byte("const FILES=[];"), 0o644)
		},
		"build and hidden": func(d string) error {
			return os.WriteFile(filepath.Join(d, ".keep"), nil, 0o644)
		},
	} {
		t.Run(name, func(t *testing.T) {
			dir := t.TempDir()
			require.NoError(t, make(dir))
			if strings.HasPrefix(name, "build") {
				require.NoError(t, os.WriteFile(filepath.Join(dir, "sw.js"), []byte("const FILES=[];"), 0o644))
				require.NoError(t, os.MkdirAll(filepath.Join(dir, "folder"), 0o755))
			}
			assert.ErrorContains(t, write(dir, two), "name another folder")
			entries, err := os.ReadDir(dir)
			require.NoError(t, err)
			assert.NotEmpty(t, entries, "left alone")
		})
	}
}

// A temporary program is compiled from two folders: same source, same bytes,
// whatever flags the person keeps.
func TestCompile(t *testing.T) {
	root, err := Root()
	require.NoError(t, err)
	program := func() string {
		file := filepath.Join(t.TempDir(), "main.go")
		require.NoError(t, os.WriteFile(file, []byte("package main\n\nfunc main() { println(\"warm\") }\n"), 0o644))
		return file
	}
	one, err := compile(root, program())
	require.NoError(t, err)
	t.Setenv("GOFLAGS", "-tags=other -gcflags=-l")
	two, err := compile(root, program())
	require.NoError(t, err)
	assert.True(t, bytes.Equal(one, two))
	assert.Equal(t, "\x00asm", string(one[:4]))

	empty, err := compileEmpty(root)
	require.NoError(t, err)
	assert.Less(t, len(empty), len(one)+1)

	broken := filepath.Join(t.TempDir(), "main.go")
	require.NoError(t, os.WriteFile(broken, []byte("package main\n\nfunc main() { nothing() }\n"), 0o644))
	_, err = compile(root, broken)
	assert.ErrorContains(t, err, "undefined: nothing", "the compiler's own words come through")
}

// What only the build says is in the page and not in its program too.
func TestPageWordsAreNotLinked(t *testing.T) {
	root, err := Root()
	require.NoError(t, err)
	core, err := compile(root, "./wasm")
	require.NoError(t, err)
	assert.True(t, bytes.Contains(core, []byte(words.English.Say("say.cleared"))))
	if bytes.Contains(core, []byte(words.EnglishPage.Say("page.noscript"))) {
		t.Error("the words of the page are linked into its program")
	}
}

func TestRatio(t *testing.T) {
	r := report("d", "v", []File{{"a", bytes.Repeat([]byte{0}, 1000)}, {"b", []byte("b")}}, []byte("b"))
	assert.Equal(t, 1001, r.Raw)
	assert.Equal(t, r.Files[0].Gzip+r.Files[1].Gzip, r.Gzip)
	assert.Equal(t, float64(r.Gzip)/float64(r.Empty.Gzip), r.Ratio())
	assert.Greater(t, r.Ratio(), 1.0)
}
