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

// A file that lean leaves as it is would be downloaded with its comments.
func TestSourcesAreLean(t *testing.T) {
	root, err := Root()
	require.NoError(t, err)
	p, err := read(root)
	require.NoError(t, err)
	for name, built := range map[string][]byte{"boot.js": p.boot, "style.css": p.style, "sw.js": p.worker} {
		source, err := os.ReadFile(filepath.Join(root, "web", name))
		require.NoError(t, err)
		assert.Less(t, len(built), len(source)*19/20, name)
		assert.Equal(t, string(built), string(lean(built)), name)
	}
	assert.Contains(t, string(p.exec), "Copyright")
}
