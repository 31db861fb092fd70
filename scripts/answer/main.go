// Answer works out a plan and prints every field and answer, with no page and no browser.
//
//	go run ./scripts/answer 'fibre.diameter=0.45mm&hang.stress=14MPa'
//
// The plan is key=text&key=text, or a link of the page; a bare number takes the field's own unit, an absent key its start text. It prints JSON, or a table for
// people (-table), or CSV for spreadsheets (-csv); -keys lists what can be typed and what is answered. Bad input is one sentence per
// problem on standard error, exit status 2, and nothing on standard output.
package main

import (
	"flag"
	"fmt"
	"io"
	"os"
)

func main() { os.Exit(run(os.Args[1:], os.Stdout, os.Stderr)) }

func run(args []string, stdout, stderr io.Writer) int {
	flags := flag.NewFlagSet("answer", flag.ContinueOnError)
	flags.SetOutput(stderr)
	table := flags.Bool("table", false, "print a table for people")
	csv := flags.Bool("csv", false, "print CSV (RFC 4180)")
	keys := flags.Bool("keys", false, "list every field and answer with kind, unit, range and meaning")
	flags.Usage = func() {
		fmt.Fprintln(stderr, "usage: answer [-table | -csv | -keys] ['key=text&key=text']")
		flags.PrintDefaults()
	}
	if err := flags.Parse(args); err != nil {
		return 2
	}
	if flags.NArg() > 1 || (*table && *csv) {
		flags.Usage()
		return 2
	}
	if *keys {
		return done(stderr, printKeys(stdout))
	}
	p, problems := work(flags.Arg(0))
	if len(problems) > 0 {
		for _, s := range problems {
			fmt.Fprintln(stderr, s)
		}
		return 2
	}
	switch {
	case *table:
		return done(stderr, p.table(stdout))
	case *csv:
		return done(stderr, p.csv(stdout))
	}
	return done(stderr, p.json(stdout))
}

func done(stderr io.Writer, err error) int {
	if err != nil {
		fmt.Fprintln(stderr, err)
		return 1
	}
	return 0
}
