package show

import (
	"twistbench/calc"
	"twistbench/calc/words"
)

// Summary appends a plan as plain text for a lab notebook, a line for each step, under the plan's name.
func (d *Display) Summary(b []byte, st *calc.State, name string) []byte {
	line := func(key string) {
		b = d.about(b, key, calc.None, st, about{text: name})
		b = append(b, '\n')
	}
	line("summary.title")
	line("summary.fibre")
	if st.Plan.Yarn.Strands > 0 {
		line("summary.yarn")
	}
	line("summary.hang")
	line("summary.cut")
	line("summary.twist")
	line("summary.coil")
	if st.Text(calc.ClampMeasured) != "" {
		line("summary.measured")
	}
	if st.Plan.Stages == calc.StagesOne {
		line("summary.clamp-one")
	} else {
		line("summary.clamp")
	}
	line("summary.travel")
	line("summary.local")
	return b
}

// Say returns the words of a key; part stands for {part} in them.
func (d *Display) Say(key, part string) string {
	return string(words.Expand(nil, d.Lang.Say(key), func(b []byte, _ string) []byte { return append(b, part...) }))
}
