package main

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestWrongArrows(t *testing.T) {
	for _, c := range []struct {
		name string
		p    listed
		want []string
	}{
		{"left", listed{ImportPath: "twistbench/calc", Imports: []string{"twistbench/calc/quantity", "twistbench/calc/trial", "math"}}, nil},
		{"right", listed{ImportPath: "twistbench/calc/craft", Imports: []string{"twistbench/calc"}},
			[]string{"calc/craft imports calc; it may import calc/quantity"}},
		{"sideways", listed{ImportPath: "twistbench/calc/trial", Imports: []string{"twistbench/calc/craft"}},
			[]string{"calc/trial imports calc/craft; it may import calc/quantity"}},
		{"lowest", listed{ImportPath: "twistbench/calc/quantity", Imports: []string{"twistbench/calc/words"}},
			[]string{"calc/quantity imports calc/words; it may import nothing"}},
		{"from a test", listed{ImportPath: "twistbench/calc/quantity", XTestImports: []string{"twistbench/calc/quantity", "twistbench/calc/craft"}},
			[]string{"calc/quantity imports calc/craft; it may import nothing"}},
		{"what is for tests", listed{ImportPath: "twistbench/calc/craft", TestImports: []string{"twistbench/calc/internal/proof"}}, nil},
		{"what is for tests elsewhere", listed{ImportPath: "twistbench/calc/trial", TestImports: []string{"twistbench/calc/internal/proof"}},
			[]string{"calc/trial imports calc/internal/proof; it may import calc/quantity"}},
		{"what is for tests, outside one", listed{ImportPath: "twistbench/calc/craft", Imports: []string{"twistbench/calc/internal/proof"}},
			[]string{"calc/craft imports calc/internal/proof; it may import calc/quantity"}},
		{"what is for tests stands on nothing", listed{ImportPath: "twistbench/calc/internal/proof", Imports: []string{"twistbench/calc/craft", "fmt", "go/parser"}},
			[]string{"calc/internal/proof imports calc/craft; it may import nothing"}},
		{"another's in a test with one of ours", listed{ImportPath: "twistbench/calc/craft", TestImports: []string{"example.org/x"}},
			[]string{"calc/craft imports example.org/x; of others it may import github.com/stretchr/testify"}},
		{"core to command", listed{ImportPath: "twistbench/calc/show", Imports: []string{"twistbench/scripts/internal/site"}},
			[]string{"calc/show imports scripts/internal/site; it may import calc/quantity, calc/craft, calc/trial, calc, calc/timetable, calc/words"}},
		{"command to wasm", listed{ImportPath: "twistbench/scripts/serve", Imports: []string{"twistbench/wasm"}},
			[]string{"scripts/serve imports wasm; it may import calc/quantity, calc/craft, calc/trial, calc, calc/timetable, calc/words, calc/show, scripts/internal/site"}},
		{"unknown package", listed{ImportPath: "twistbench/calc/util"}, []string{"calc/util is not in the table of arrows"}},
		{"another's in the page", listed{ImportPath: "twistbench/wasm", Imports: []string{"github.com/hack-pad/safejs"}},
			[]string{"wasm imports github.com/hack-pad/safejs; of others it may import nothing"}},
		{"another's in the core", listed{ImportPath: "twistbench/calc/show", Imports: []string{"github.com/hack-pad/safejs"}},
			[]string{"calc/show imports github.com/hack-pad/safejs; of others it may import nothing"}},
		{"a name that only starts alike", listed{ImportPath: "twistbench/calc/timetable", TestImports: []string{"github.com/emersion/go-icalendar"}},
			[]string{"calc/timetable imports github.com/emersion/go-icalendar; of others it may import github.com/stretchr/testify, github.com/emersion/go-ical"}},
		{"raw", listed{ImportPath: "twistbench/wasm", Imports: []string{"syscall/js"}},
			[]string{"wasm imports syscall/js; wasm/edge.go is the way to the browser"}},
		{"raw in a test", listed{ImportPath: "twistbench/wasm", TestImports: []string{"syscall/js"}},
			[]string{"wasm imports syscall/js; wasm/edge.go is the way to the browser"}},
		{"testify in a test", listed{ImportPath: "twistbench/calc", TestImports: []string{"github.com/stretchr/testify/assert", "fmt", "encoding/json"}}, nil},
		{"testify outside one", listed{ImportPath: "twistbench/calc", Imports: []string{"github.com/stretchr/testify/assert"}},
			[]string{"calc imports github.com/stretchr/testify/assert; of others it may import nothing"}},
		{"heavy", listed{ImportPath: "twistbench/calc", Imports: []string{"fmt", "strconv", "math/rand/v2"}}, []string{"calc imports fmt, which is too heavy for the page"}},
		{"heavy in a command", listed{ImportPath: "twistbench/scripts/build", Imports: []string{"fmt", "html/template"}}, nil},
		{"browser driver", listed{ImportPath: "twistbench/scripts/check/browser", XTestImports: []string{"github.com/chromedp/chromedp", "github.com/chromedp/cdproto/page"}}, nil},
		{"browser driver elsewhere", listed{ImportPath: "twistbench/scripts/check", Imports: []string{"github.com/chromedp/chromedp"}},
			[]string{"scripts/check imports github.com/chromedp/chromedp; of others it may import nothing"}},
	} {
		t.Run(c.name, func(t *testing.T) { assert.Equal(t, c.want, wrongArrows([]listed{c.p}, allowed)) })
	}
	twice := listed{ImportPath: "twistbench/calc", Imports: []string{"fmt"}}
	assert.Len(t, wrongArrows([]listed{twice, twice}, allowed), 1, "both targets list a package: its fault is told once")
}

func TestWronglyLinked(t *testing.T) {
	std := func(path string, imports ...string) listed {
		return listed{ImportPath: path, Standard: true, Imports: imports}
	}
	wasm := listed{ImportPath: "twistbench/wasm", Imports: []string{"twistbench/calc"}}
	good := []listed{wasm, {ImportPath: "twistbench/calc", Imports: []string{"math/rand/v2"}}, std("strconv"), std("math/rand/v2")}
	assert.Empty(t, wronglyLinked(good))
	for _, c := range []struct {
		name string
		more listed
		want string
	}{
		{"printing", std("fmt"), "fmt is linked into the page, through twistbench/calc/words"},
		{"heavy", std("regexp"), "regexp is linked into the page, through twistbench/calc/words"},
		{"old dice", std("math/rand"), "math/rand is linked into the page, through nothing"},
		{"another's", listed{ImportPath: "example.org/x"}, "example.org/x is linked into the page, through nothing; of others nothing may be"},
		{"raw", std("syscall/js"), "syscall/js is linked into the page, through twistbench/calc/words"},
	} {
		t.Run(c.name, func(t *testing.T) {
			through := listed{ImportPath: "twistbench/calc/words", Imports: []string{"regexp", "fmt", "syscall/js"}}
			assert.Equal(t, []string{c.want}, wronglyLinked(append(append([]listed{}, good...), through, c.more)))
		})
	}
}
