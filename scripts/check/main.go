// Command check runs everything that must hold before a change goes in: one
// line for each check, and one line of counts at the end.
//
//	go run ./scripts/check              all of it
//	go run ./scripts/check arrows size  only these
package main

import (
	"fmt"
	"io"
	"os"
	"slices"
	"strings"
	"time"

	"twistbench/scripts/internal/site"
)

// A check looks at one thing. Its note is shown when it passes.
type check struct {
	name string
	run  func(*job) (note string, err error)
}

var checks = []check{
	{"tools", tools},
	{"format", format},
	{"vet", vet},
	{"vet-js", vetJS},
	{"tests", tests},
	{"tests-js", testsJS},
	{"arrows", arrows},
	{"linked", linked},
	{"house", house},
	{"kernel", kernel},
	{"references", references},
	{"size", sizes},
	{"same-bytes", sameBytes},
	{"browser", browser},
}

// A job is one run of checks.
type job struct {
	root    string // the module's folder
	temp    string // removed at the end
	ci      bool
	out     io.Writer
	missing []string // reference libraries that were not found
	built   *site.Report
}

func main() { os.Exit(run(os.Stdout, os.Args[1:])) }

func run(out io.Writer, names []string) int {
	chosen, err := choose(checks, names)
	if err != nil {
		fmt.Fprintln(out, err)
		return 2
	}
	j := &job{out: out, ci: os.Getenv("CI") == "true"}
	if j.root, err = site.Root(); err == nil {
		j.temp, err = os.MkdirTemp("", "twistbench")
	}
	if err != nil {
		fmt.Fprintln(out, err)
		return 1
	}
	defer os.RemoveAll(j.temp)
	if !needs(j) {
		fmt.Fprintln(out, counts(0, 1))
		return 1
	}
	return j.all(chosen)
}

func choose(all []check, names []string) ([]check, error) {
	if len(names) == 0 {
		return all, nil
	}
	var chosen []check
	for _, name := range names {
		i := slices.IndexFunc(all, func(c check) bool { return c.name == name })
		if i < 0 {
			return nil, fmt.Errorf("there is no check %q", name)
		}
		chosen = append(chosen, all[i])
	}
	return chosen, nil
}

// all runs the checks and gives the exit status.
func (j *job) all(chosen []check) int {
	failed := 0
	for _, c := range chosen {
		start := time.Now()
		note, err := c.run(j)
		state := "ok"
		if err != nil {
			failed++
			state, note = "FAILED", "\n"+indent(err.Error())
		}
		fmt.Fprintln(j.out, strings.TrimRight(fmt.Sprintf("%-12s %6.1f s  %s  %s", c.name, time.Since(start).Seconds(), state, note), " "))
	}
	if len(j.missing) > 0 {
		fmt.Fprintln(j.out, "missing, so not compared with:", strings.Join(j.missing, ", "))
	}
	fmt.Fprintln(j.out, counts(len(chosen)-failed, failed))
	return min(failed, 1)
}

func counts(passed, failed int) string { return fmt.Sprintf("%d passed, %d failed", passed, failed) }

func indent(text string) string {
	return "    " + strings.ReplaceAll(strings.TrimRight(text, "\n"), "\n", "\n    ")
}
