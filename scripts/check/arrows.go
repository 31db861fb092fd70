package main

import (
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"
)

// An arrow is what one package may import, beside the standard library.
type arrow struct {
	from  string   // below the module
	to    []string // packages of ours
	tests []string // in its tests, packages of others, with all below them, and of ours; no other code of ours stands on any
}

const (
	modulePath = "twistbench"
	testify    = "github.com/stretchr/testify"
	proof      = modulePath + "/calc/internal/proof"
)

var core = []string{"calc/quantity", "calc/craft", "calc/trial", "calc", "calc/timetable", "calc/words", "calc/show"}

// builders are what a command may import.
var builders = slices.Concat(core, []string{"scripts/internal/site"})

// allowed is the whole picture; a package that is not in it is not allowed. A
// new one is made only where it guards an arrow.
var allowed = []arrow{
	{from: "calc/internal/proof"}, // for tests, which share no other code: of the equations that are shown, and of plans
	{from: "calc/quantity"},
	{from: "calc/craft", to: core[:1], tests: []string{proof}},
	{from: "calc/trial", to: core[:1]},
	{from: "calc", to: core[:3], tests: []string{proof}},
	{from: "calc/timetable", to: []string{"calc/quantity", "calc"}, tests: []string{"github.com/emersion/go-ical"}},
	{from: "calc/words", to: core[:5]},
	{from: "calc/show", to: core[:6], tests: []string{proof}},
	{from: "wasm", to: core},
	{from: "scripts/internal/site", to: core},
	{from: "scripts/build", to: builders},
	{from: "scripts/serve", to: builders},
	{from: "scripts/answer", to: builders},
	{from: "scripts/check", to: builders},
	{from: "scripts/check/kernel", to: core[:2]},
	{from: "scripts/check/browser", to: builders,
		tests: []string{"github.com/chromedp/chromedp", "github.com/chromedp/cdproto", "github.com/emersion/go-ical"}},
}

// notInCore are packages of the standard library that what is linked into the
// page does not import itself: they are large, slow or allocate.
var notInCore = []string{"fmt", "log", "reflect", "encoding/json", "html/template", "text/template", "math/rand", "net/url", "regexp"}

// notLinked are packages that must not reach the page even through others.
// fmt, and os and reflect with it, would be a ninth of the page, and syscall/js
// a twenty-fifth (wasm/edge.go is in its place); one call into time, a timer,
// would be a twentieth: the browser has timers. Packages strings and bytes bring
// unicode; calc/quantity cuts texts without.
var notLinked = []string{"fmt", "syscall/js", "unicode", "os", "reflect", "time", "text/template", "html/template", "regexp", "encoding/json", "net/url", "math/rand"}

// A listed package, as go list prints it.
type listed struct {
	ImportPath   string
	Standard     bool
	Imports      []string
	TestImports  []string
	XTestImports []string
}

func (j *job) list(env []string, args ...string) ([]listed, error) {
	out, err := j.golang(env, append([]string{"list", "-buildvcs=false", "-json=ImportPath,Standard,Imports,TestImports,XTestImports"}, args...)...)
	if err != nil {
		return nil, err
	}
	var all []listed
	for d := json.NewDecoder(strings.NewReader(out)); ; {
		var p listed
		switch err := d.Decode(&p); err {
		case nil:
			all = append(all, p)
		case io.EOF:
			return all, nil
		default:
			return nil, err
		}
	}
}

// arrows checks every import of ours, for both targets.
func arrows(j *job) (string, error) {
	native, err := j.list(nil, "./...")
	if err != nil {
		return "", err
	}
	js, err := j.list(forJS, coreJS...)
	if err != nil {
		return "", err
	}
	return "", broken(wrongArrows(append(native, js...), allowed))
}

// wrongArrows gives a sentence for each import that the table does not allow.
func wrongArrows(all []listed, table []arrow) []string {
	var wrong []string
	say := func(format string, args ...any) {
		if s := fmt.Sprintf(format, args...); !slices.Contains(wrong, s) {
			wrong = append(wrong, s)
		}
	}
	for _, p := range all {
		from := strings.TrimPrefix(p.ImportPath, modulePath+"/")
		i := slices.IndexFunc(table, func(a arrow) bool { return a.from == from })
		if i < 0 {
			say("%s is not in the table of arrows", from)
			continue
		}
		a := table[i]
		linkedIn := slices.Contains(core, from) || from == "wasm"
		judge := func(imports []string, inTests bool) {
			var third []string
			if inTests {
				third = append([]string{testify}, slices.DeleteFunc(slices.Clone(a.tests), func(t string) bool { return within(t, modulePath) })...)
			}
			for _, to := range imports {
				ours, isOurs := strings.CutPrefix(to, modulePath+"/")
				switch {
				case isOurs:
					if ours != from && !slices.Contains(a.to, ours) && !(inTests && slices.Contains(a.tests, to)) {
						say("%s imports %s; it may import %s", from, ours, either(a.to))
					}
				case to == "syscall/js":
					say("%s imports syscall/js; wasm/edge.go is the way to the browser", from)
				case isThird(to):
					if !slices.ContainsFunc(third, func(t string) bool { return within(to, t) }) {
						say("%s imports %s; of others it may import %s", from, to, either(third))
					}
				case linkedIn && !inTests && slices.Contains(notInCore, to):
					say("%s imports %s, which is too heavy for the page", from, to)
				}
			}
		}
		judge(p.Imports, false)
		judge(p.TestImports, true)
		judge(p.XTestImports, true)
	}
	return wrong
}

// linked checks what really reaches the page, through others too.
func linked(j *job) (string, error) {
	deps, err := j.list(forJS, "-deps", "./wasm")
	if err != nil {
		return "", err
	}
	return fmt.Sprintf("%d packages", len(deps)), broken(wronglyLinked(deps))
}

func wronglyLinked(deps []listed) []string {
	var wrong []string
	for _, p := range deps {
		if slices.Contains(notLinked, p.ImportPath) {
			wrong = append(wrong, fmt.Sprintf("%s is linked into the page, through %s", p.ImportPath, either(importers(deps, p.ImportPath))))
		}
		if p.Standard || p.ImportPath == modulePath || within(p.ImportPath, modulePath) {
			continue
		}
		wrong = append(wrong, fmt.Sprintf("%s is linked into the page, through %s; of others nothing may be", p.ImportPath, either(importers(deps, p.ImportPath))))
	}
	return wrong
}

func importers(all []listed, of string) []string {
	var out []string
	for _, p := range all {
		if slices.Contains(p.Imports, of) {
			out = append(out, p.ImportPath)
		}
	}
	return out
}

// isThird is true for a path that starts with a host's name.
func isThird(path string) bool {
	first, _, _ := strings.Cut(path, "/")
	return strings.Contains(first, ".")
}

func within(path, of string) bool { return path == of || strings.HasPrefix(path, of+"/") }

func either(names []string) string {
	if len(names) == 0 {
		return "nothing"
	}
	return strings.Join(names, ", ")
}

func broken(wrong []string) error {
	if len(wrong) == 0 {
		return nil
	}
	return errors.New(strings.Join(wrong, "\n"))
}
