package site

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestLean(t *testing.T) {
	for source, want := range map[string]string{
		"":                           "",
		"a\n\n\t b\n":                "a\nb\n",
		"a;  // why\n// a note\n\tb": "a;  // why\nb",
		"/* all of it */\n.a { }\n/* half */ .b { }\n":        ".a { }\n/* half */ .b { }\n",
		"// Copyright 1\n// and terms\n\n// a note\nlet a;\n": "// Copyright 1\n// and terms\nlet a;\n",
		"let a = `\n\n  b`;\n":                                "let a = `\n\n  b`;\n",
		"let a = ` b`;\n  c\n":                                "let a = ` b`;\nc\n",
	} {
		assert.Equal(t, want, string(lean([]byte(source))))
	}
}

func TestLeanPage(t *testing.T) {
	for page, want := range map[string]string{
		`<p id="a.b:c" class="d e">f="g"</p>`: `<p id=a.b:c class="d e">f="g"</p>`,
		`<a href="#x" hidden title="">`:       `<a href="#x" hidden title="">`,
		"<select>\n  <option value=\"1\" selected>one</option><option value=\"mm²\">two</option></select>":                                                                                                                     "<select>\n<option value=1 selected>one<option value=\"mm²\">two</select>",
		`<div class="box" id="a.b:box"><b class="mark" id="a.b:mark">m</b><p class="says" id="a.b:says"></p></div><div class="load" id="c:row"><i class="doubt" id="c:doubt">d</i><i class="doubt" id="c-d:doubt">e</i></div>`: `<div class=box id=a.b:box><b class=mark>m</b><p class=says id=a.b:says></p></div><div class=load id=c:row><i class=doubt>d</i><i class=doubt id=c-d:doubt>e</i></div>`,
	} {
		assert.Equal(t, want, string(leanPage([]byte(page))))
	}
	page, err := Page(Names{})
	require.NoError(t, err)
	assert.NotContains(t, string(page), "/>")
	assert.NotRegexp(t, `>[^<]* [a-z-]+="[\w.:-]+"`, string(page), "a text that looks like an attribute")
}

// A file that lean leaves as it is would be downloaded with its comments.
func TestSourcesAreLean(t *testing.T) {
	root, err := Root()
	require.NoError(t, err)
	p, err := read(root, false)
	require.NoError(t, err)
	for name, built := range map[string][]byte{"boot.js": p.boot, "style.css": p.style, "sw.js": p.worker} {
		source, err := os.ReadFile(filepath.Join(root, "web", name))
		require.NoError(t, err)
		assert.Less(t, len(built), len(source)*19/20, name)
		assert.Equal(t, string(built), string(lean(built)), name)
	}
	assert.Contains(t, string(p.exec), "Copyright")
}
