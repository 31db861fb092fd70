package words

import (
	"go/ast"
	"go/parser"
	"go/token"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"twistbench/calc"
	"twistbench/calc/craft"
	"twistbench/calc/timetable"
)

// ingredients are the values of an identifier in the source of a package: of a member of composite literals, or of typed constants.
func ingredients(t *testing.T, dir string, of func(ast.Node) ast.Expr) (all []string) {
	t.Helper()
	files, err := filepath.Glob(dir + "/*.go")
	require.NoError(t, err)
	for _, name := range files {
		if strings.HasSuffix(name, "_test.go") {
			continue
		}
		src, err := os.ReadFile(name)
		require.NoError(t, err)
		tree, err := parser.ParseFile(token.NewFileSet(), name, src, 0)
		require.NoError(t, err)
		ast.Inspect(tree, func(node ast.Node) bool {
			if node == nil {
				return true
			}
			if lit, ok := of(node).(*ast.BasicLit); ok {
				s, err := strconv.Unquote(lit.Value)
				require.NoError(t, err)
				if !slices.Contains(all, s) {
					all = append(all, s)
				}
			}
			return true
		})
	}
	require.NotEmpty(t, all, dir)
	return all
}

// member gives the value of a member of a literal.
func member(name string) func(ast.Node) ast.Expr {
	return func(node ast.Node) ast.Expr {
		if kv, ok := node.(*ast.KeyValueExpr); ok {
			if id, ok := kv.Key.(*ast.Ident); ok && id.Name == name {
				return kv.Value
			}
		}
		return nil
	}
}

// constant gives the value of a constant of a type.
func constant(typ string) func(ast.Node) ast.Expr {
	return func(node ast.Node) ast.Expr {
		if v, ok := node.(*ast.ValueSpec); ok && len(v.Values) == 1 {
			if id, ok := v.Type.(*ast.Ident); ok && id.Name == typ {
				return v.Values[0]
			}
		}
		return nil
	}
}

// built are the keys that code puts together from tables.
func built(t *testing.T) (keys []string) {
	add := func(prefix string, names ...string) {
		for _, n := range names {
			keys = append(keys, prefix+n)
		}
	}
	for id := calc.None + 1; id < calc.NumIDs; id++ {
		add("name.", id.Key())
		if id.IsField() {
			add("word.", calc.Fields[id].Words...)
		}
	}
	add("do.", "cools", "rests")
	for i := range calc.Notes {
		add("note.", calc.Notes[i].Key)
	}
	add("day.", "1", "2", "3", "4", "5", "6", "7")
	for do := range timetable.NumDos {
		add("do.", do.Key())
	}
	for i := range craft.Polymers {
		add("word.", craft.Polymers[i].Key)
	}
	add("problem.", ingredients(t, "..", constant("Reason"))...)
	add("holds.", ingredients(t, "../craft", member("Holds"))...)
	add("method.", ingredients(t, "..", member("Method"))...)
	for g := craft.Arithmetic; g <= craft.Estimate; g++ {
		add("grade.", strconv.Itoa(int(g)))
	}
	for m := craft.Defined; m <= craft.Derived; m++ {
		add("source.", strconv.Itoa(int(m)))
	}
	return keys
}

// builtForPage are the keys that the page's template puts together from tables; the build fails where it needs one that is not there.
func builtForPage() (keys []string) {
	for id := calc.None + 1; id < calc.NumIDs; id++ {
		for _, prefix := range []string{"label.", "hint.", "letter."} {
			keys = append(keys, prefix+id.Key())
		}
		if !id.IsField() {
			continue
		}
		f := &calc.Fields[id]
		for _, w := range f.Words {
			keys = append(keys, "option."+w, "option."+f.Key+"."+w)
		}
		var p calc.Plan
		for _, u := range p.Value(id).Kind().Units {
			keys = append(keys, "unit."+u.Symbol)
		}
	}
	return keys
}

var equationLine = regexp.MustCompile(`(?m)^\s*(?:var )?([A-Za-z]+)\s*= Equation\{.*Holds: "([a-z0-9-]+)"`)

// unshown are the keys of where equations hold that no working in calc names yet: they need no words before.
func unshown(t *testing.T) map[string]bool {
	read := func(pattern string) (all []byte) {
		files, err := filepath.Glob(pattern)
		require.NoError(t, err)
		for _, name := range files {
			src, err := os.ReadFile(name)
			require.NoError(t, err)
			all = append(all, src...)
		}
		return all
	}
	named, keys, shown := read("../*.go"), map[string]bool{}, map[string]bool{}
	for _, m := range equationLine.FindAllSubmatch(read("../craft/*.go"), -1) {
		key := "holds." + string(m[2])
		keys[key] = true
		if regexp.MustCompile(`\bcraft\.` + string(m[1]) + `\b`).Match(named) {
			shown[key] = true
		}
	}
	for key := range shown {
		delete(keys, key)
	}
	return keys
}

func TestEveryKeyHasWords(t *testing.T) {
	later := unshown(t)
	for _, l := range Languages {
		for _, key := range built(t) {
			if later[key] {
				continue
			}
			assert.True(t, l.Has(key), "%s: %s", l.Tag, key)
		}
	}
	for id := calc.None + 1; id < calc.NumFields; id++ {
		f := &calc.Fields[id]
		for _, w := range f.Words {
			assert.True(t, EnglishPage.Has("option."+w) || EnglishPage.Has("option."+f.Key+"."+w), "option %s of %s", w, f.Key)
		}
		var p calc.Plan
		if f.Unit == "" {
			continue
		}
		for _, u := range p.Value(id).Kind().Units {
			assert.True(t, EnglishPage.Has("unit."+u.Symbol), "unit %s", u.Symbol)
		}
	}
}

var quoted = regexp.MustCompile("[\"'`]([a-z]+(?:\\.[a-z0-9%-]+)+)[\"'`]")

// literals are the keys that stand as they are in the page, in what shows it and in what builds it.
func literals(t *testing.T) map[string]bool {
	all := map[string]bool{}
	for _, pattern := range []string{"../show/*.go", "../../wasm/*.go", "../../scripts/internal/site/*.go", "../../scripts/answer/*.go", "../../web/*.html", "../../web/*.js", "../../web/*.webmanifest"} {
		files, err := filepath.Glob(pattern)
		require.NoError(t, err)
		for _, name := range files {
			if strings.HasSuffix(name, "_test.go") {
				continue
			}
			src, err := os.ReadFile(name)
			require.NoError(t, err)
			for _, m := range quoted.FindAllSubmatch(src, -1) {
				all[string(m[1])] = true
			}
		}
	}
	require.NotEmpty(t, all)
	return all
}

// The head of a section, the steps, the drawings and the bench views are asked for by a key of which the page names a part.
var asked = regexp.MustCompile(`^(fibre|hang|cut|twist|coil|clamp|heat|clock|wire|drive|stroke|trouble)\.(heading|question)$|^trouble\.[a-z]+-(first|likely|try)$|^bench\.(hang\.under-set|coil\.travel|drive\.(heat|cool)-most)$|^volts\.`)

func TestNoWordIsUnused(t *testing.T) {
	used := literals(t)
	for _, key := range append(built(t), builtForPage()...) {
		used[key] = true
	}
	for _, list := range [][]entry{entries(englishLive), entries(englishPage)} {
		for _, e := range list {
			assert.True(t, used[e.key] || asked.MatchString(e.key), "nobody says %s", e.key)
		}
	}
}

// Every key that is asked for as it stands has words.
func TestLiteralsHaveWords(t *testing.T) {
	prefixes := map[string]bool{}
	for _, list := range [][]entry{entries(englishLive), entries(englishPage)} {
		for _, e := range list {
			prefix, _, _ := strings.Cut(e.key, ".")
			prefixes[prefix] = true
		}
	}
	ids := regexp.MustCompile(`^(strip\.clock|clock\.(table|at|ready|first)|run\.\d|sw\.js|page\.html)$`) // elements and files, not words
	for key := range literals(t) {
		prefix, _, _ := strings.Cut(key, ".")
		if prefixes[prefix] && calc.Find(key) == calc.None && !ids.MatchString(key) && !strings.HasPrefix(key, "draw.") {
			assert.True(t, EnglishPage.Has(key), key)
		}
	}
}

// named are the placeholders that are no number of the plan; they are told in the package comment.
var named = []string{"name", "part", "limit", "other", "near", "units", "own", "masses", "start", "end", "lasts", "missed", "count", "ends", "next", "on", "plan"}

func TestSentences(t *testing.T) {
	doc, err := os.ReadFile("words.go")
	require.NoError(t, err)
	for _, n := range named {
		assert.Contains(t, string(doc), "{"+n+"}", "the package comment")
	}
	for _, list := range [][]entry{entries(englishLive), entries(englishPage)} {
		seen := map[string]bool{}
		for _, e := range list {
			assert.NotEmpty(t, e.text, e.key)
			assert.True(t, utf8.ValidString(e.text), e.key)
			assert.Equal(t, strings.TrimSpace(e.text), e.text, e.key)
			assert.NotContains(t, e.text, "  ", e.key)
			assert.False(t, strings.ContainsFunc(e.text, func(r rune) bool { return r < ' ' }), "%s: control characters part slots", e.key)
			assert.False(t, seen[e.key], "%s has words twice", e.key)
			seen[e.key] = true
			for rest := e.text; rest != ""; {
				var name string
				_, name, rest = Next(rest)
				assert.True(t, name == "" || calc.Find(name) != calc.None || slices.Contains(named, name), "%s names {%s}", e.key, name)
			}
			assert.Equal(t, strings.Count(e.text, "{"), strings.Count(e.text, "}"), e.key)
		}
	}
	for _, e := range entries(englishPage) {
		assert.False(t, English.Has(e.key), "%s is said twice", e.key)
		assert.NotContains(t, e.text, "{", "%s: what stands still names no number", e.key)
	}
}

func TestSay(t *testing.T) {
	assert.Equal(t, "stress", English.Say("name.hang.stress"))
	assert.Equal(t, "no.such", English.Say("no.such"), "a key without words says itself")
	assert.False(t, English.Has("no.such"))
	assert.False(t, English.Has("label.hang.stress"), "what stands still is not in the live words")
	assert.Equal(t, "Stress", EnglishPage.Say("label.hang.stress"))
	assert.Equal(t, "stress", EnglishPage.Say("name.hang.stress"))
	assert.Equal(t, "no.such", EnglishPage.Say("no.such"))
	assert.Same(t, &English, EnglishPage.Language())
	for _, l := range Languages {
		assert.NotEmpty(t, l.Tag)
		assert.Contains(t, ".,", string(l.Mark))
	}
}

func TestNext(t *testing.T) {
	for sentence, want := range map[string][3]string{
		"":                      {},
		"plain":                 {"plain"},
		"{a}":                   {"", "a", ""},
		"Add {hang.add} to {b}": {"Add ", "hang.add", " to {b}"},
		"{a}{b}":                {"", "a", "{b}"},
		"an open { brace":       {"an open { brace"},
		"a closed } brace":      {"a closed } brace"},
	} {
		before, name, behind := Next(sentence)
		assert.Equal(t, want, [3]string{before, name, behind})
	}
}

// entry is a key with its words, as it stands in the file of a language.
type entry struct{ key, text string }

func entries(text string) (all []entry) {
	for line := range strings.Lines(text) {
		if key, words, ok := strings.Cut(strings.TrimSuffix(line, "\n"), " = "); ok && line[0] != '#' {
			all = append(all, entry{key, words})
		}
	}
	return all
}

func TestRead(t *testing.T) {
	l := read("\n# no = words\nc = three\nb = two = 2 # it is\n\na.b = one")
	assert.Equal(t, []string{"three", "two = 2 # it is", "one"}, l.texts)
	for key, want := range map[string]string{"a.b": "one", "b": "two = 2 # it is", "c": "three"} {
		text, ok := l.find("", key)
		assert.True(t, ok)
		assert.Equal(t, want, text)
	}
	_, ok := l.find("# ", "no")
	assert.False(t, ok)
	assert.Empty(t, read("").texts)
	for _, text := range []string{englishLive, englishPage} {
		l := read(text)
		for _, e := range entries(text) {
			words, ok := l.find("", e.key)
			assert.True(t, ok, e.key)
			assert.Equal(t, e.text, words)
		}
		assert.Len(t, l.texts, len(entries(text)))
	}
}
