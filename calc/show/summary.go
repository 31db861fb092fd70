package show

import "twistbench/calc"

func (w *writer) summary(name string) {
	w.about("summary.title", calc.None, about{text: name})
	w.line("summary.fibre")
	if w.st.Plan.Yarn.Strands > 0 {
		w.line("summary.yarn")
	}
	w.line("summary.hang")
	w.line("summary.cut")
	w.line("summary.twist")
	w.line("summary.coil")
	if w.st.Text(calc.ClampMeasured) != "" {
		w.line("summary.measured")
	}
	if w.st.Plan.Stages == calc.StagesOne {
		w.line("summary.clamp-one")
	} else {
		w.line("summary.clamp")
	}
	w.line("summary.travel")
	w.line("summary.heat")
	if w.st.Plan.Wire.Route != calc.RouteNone {
		w.line("summary.wire")
	}
	w.line("summary.drive")
	if x := w.st.SI(calc.DriveStuck); x == x {
		w.line("summary.stuck")
	}
	if x := w.st.SI(calc.StrokeLeast); x == x {
		w.line("summary.stroke")
	} else {
		w.line("summary.stroke-own")
	}
	w.line("summary.local")
	w.char('\n')
}

// line appends the words of a key on a line of their own.
//
//go:noinline
func (w *writer) line(key string) {
	w.char('\n')
	w.words(key)
}
