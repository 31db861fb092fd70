package main

import (
	"bytes"
	"encoding/csv"
	"encoding/json"
	"fmt"
	"io"
	"math"
	"strconv"
	"strings"
	"text/tabwriter"

	"twistbench/calc"
	"twistbench/calc/quantity"
	"twistbench/calc/show"
	"twistbench/calc/words"
)

// plan is a worked plan and how its numbers are shown.
type plan struct {
	state   calc.State
	display show.Display
}

// work works out a plan text. It returns a sentence for each problem in it.
func work(text string) (*plan, []string) {
	p := &plan{display: show.Display{Lang: words.Languages[0]}}
	sheet, faults := parse(text)
	p.state.Work(&sheet)
	var problems []string
	for _, f := range faults {
		problems = append(problems, f.Key+": "+string(p.display.AppendFault(nil, &p.state, f)))
	}
	for id := calc.None + 1; id < calc.NumFields; id++ {
		if n := p.state.Notices[id]; n.Reason != "" {
			problems = append(problems, id.Key()+": "+string(p.display.AppendProblem(nil, &p.state, id, n.Problem)))
		}
	}
	return p, problems
}

// parse reads a plan as it is typed, or a link of the page, whole or from its v=1 on.
func parse(text string) (calc.Sheet, []calc.Fault) {
	if _, link, ok := strings.Cut(text, "#"); ok {
		text = link
	}
	if strings.HasPrefix(text, "v=1&") {
		return calc.ParseLink(text)
	}
	return calc.ParsePlan(text)
}

// entry is a number as it is printed.
type entry struct {
	SI     *number  `json:"si,omitempty"`
	Text   string   `json:"text"`
	Unit   string   `json:"unit,omitempty"`
	Given  *bool    `json:"given,omitempty"`
	Doubt  *float64 `json:"doubt,omitempty"`
	Mostly string   `json:"mostly,omitempty"`
	Needs  string   `json:"needs,omitempty"`
}

// number is a float64 that is null while it is unknown.
type number float64

func (n number) MarshalJSON() ([]byte, error) {
	if math.IsNaN(float64(n)) {
		return []byte("null"), nil
	}
	return json.Marshal(float64(n))
}

func (p *plan) entry(id calc.ID) entry {
	st, d := &p.state, &p.display
	if id.IsField() && calc.Fields[id].Words != nil {
		return entry{Text: calc.Fields[id].Words[int(st.SI(id))]}
	}
	e := entry{Text: string(d.Append(nil, st, id))}
	v := st.Value(id)
	if !v.Is() {
		return e
	}
	si := number(v.SI())
	e.SI = &si
	if u := d.Unit(st, id); u != nil {
		e.Unit = u.Symbol
	}
	if id.IsField() {
		given := !st.Worked(id) && st.Text(id) != ""
		e.Given = &given
	}
	if by := st.Doubt[id]; !math.IsNaN(by) {
		e.Doubt, e.Mostly = &by, st.Mostly[id].Key()
	}
	if math.IsNaN(v.SI()) {
		if needs := st.Needs(id); needs != calc.None {
			e.Needs = needs.Key()
		}
	}
	return e
}

// json prints an object by key, in the order of the work.
func (p *plan) json(w io.Writer) error {
	var b bytes.Buffer
	b.WriteString("{\n")
	for i, id := range ids() {
		var line bytes.Buffer
		enc := json.NewEncoder(&line)
		enc.SetEscapeHTML(false)
		if err := enc.Encode(p.entry(id)); err != nil {
			return err
		}
		fmt.Fprintf(&b, "  %q: %s", id.Key(), bytes.TrimSpace(line.Bytes()))
		if i < len(ids())-1 {
			b.WriteByte(',')
		}
		b.WriteByte('\n')
	}
	b.WriteString("}\n")
	_, err := w.Write(b.Bytes())
	return err
}

// ids lists every number, fields first.
func ids() (all []calc.ID) {
	for id := calc.None + 1; id < calc.NumIDs; id++ {
		all = append(all, id)
	}
	return all
}

func (p *plan) table(w io.Writer) error {
	t := tabwriter.NewWriter(w, 0, 0, 2, ' ', 0)
	for _, id := range ids() {
		e := p.entry(id)
		more := ""
		switch {
		case e.Needs != "":
			more = "needs " + e.Needs
		case e.Doubt != nil:
			more = string(p.display.AppendDoubt(nil, &p.state, id)) + ", mostly " + e.Mostly
		}
		mark := ""
		if e.Given != nil && *e.Given {
			mark = "given"
		}
		fmt.Fprintf(t, "%s\t%s\t%s\t%s\t%s\n", id.Key(), e.Text, mark, more, meaning(id))
	}
	for i := range calc.Notes {
		if n := &calc.Notes[i]; n.When(&p.state) {
			fmt.Fprintf(t, "%s: %s\n", n.At.Key(), p.display.AppendNote(nil, &p.state, n))
		}
	}
	return t.Flush()
}

func (p *plan) csv(w io.Writer) error {
	c := csv.NewWriter(w)
	c.UseCRLF = true
	rows := [][]string{{"key", "meaning", "si", "text", "unit", "given", "doubt_si", "mostly", "needs"}}
	for _, id := range ids() {
		e := p.entry(id)
		row := []string{id.Key(), meaning(id), "", e.Text, e.Unit, "", "", e.Mostly, e.Needs}
		if e.SI != nil && !math.IsNaN(float64(*e.SI)) {
			row[2] = strconv.FormatFloat(float64(*e.SI), 'g', -1, 64)
		}
		if e.Given != nil {
			row[5] = strconv.FormatBool(*e.Given)
		}
		if e.Doubt != nil {
			row[6] = strconv.FormatFloat(*e.Doubt, 'g', -1, 64)
		}
		rows = append(rows, row)
	}
	for _, row := range rows[1:] {
		for i := range row {
			row[i] = harmless(row[i])
		}
	}
	return c.WriteAll(rows)
}

// harmless keeps a spreadsheet from taking a cell for a formula.
func harmless(cell string) string {
	if cell != "" && (cell[0] == '=' || cell[0] == '+' || cell[0] == '@' || cell[0] == '-' && len(cell) > 1 && (cell[1] < '0' || cell[1] > '9')) {
		return "'" + cell
	}
	return cell
}

func meaning(id calc.ID) string { return words.Languages[0].Say("name." + id.Key()) }

// printKeys lists every field and answer.
func printKeys(w io.Writer) error {
	t := tabwriter.NewWriter(w, 0, 0, 2, ' ', 0)
	var st calc.State
	start := calc.Start()
	st.Work(&start)
	fmt.Fprintln(t, "KEY\tKIND\tUNIT\tFROM\tTO\tSTART\tMEANING")
	for _, id := range ids() {
		kind, unit, low, high, first := "text", "", "", "", ""
		v := st.Value(id)
		if v.Is() {
			kind = v.Kind().Name
		}
		if id.IsField() {
			f := &calc.Fields[id]
			unit, first = f.Unit, f.Start
			switch {
			case f.Words != nil:
				low = fmt.Sprint(f.Words)
			default:
				u := v.Kind().Unit(f.Unit)
				low, high = bound(f.Low, u), bound(f.High, u)
			}
		} else {
			unit = calc.Answers[id-calc.NumFields].Unit
		}
		fmt.Fprintf(t, "%s\t%s\t%s\t%s\t%s\t%s\t%s\n", id.Key(), kind, unit, low, high, first, meaning(id))
	}
	return t.Flush()
}

func bound(si float64, u *quantity.Unit) string {
	if u != nil {
		si = u.FromSI(si)
	}
	return strconv.FormatFloat(si, 'g', 6, 64)
}
