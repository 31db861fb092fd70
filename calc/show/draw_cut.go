package show

import (
	"twistbench/calc"
)

const (
	cutPrecursor = iota
	cutEnds
	cutCoiled
	cutFirst
	cutSecond
	cutFinished
	cutTicks
	cutWorked
	cutGiven
	cutLetters
	cutLabels   = cutLetters + cutRows
	cutCutLabel = cutLabels + cutRows
	cutNote     = cutCutLabel + 1
)

// cutRows is how many lengths there are: precursor, as coiled, first gap, second gap, finished.
const cutRows = 5

var cutShapes = [...]Shape{
	cutPrecursor:   {"draw.cut.precursor", "path", "fibre", "", nil, ""},
	cutEnds:        {"draw.cut.ends", "path", "cut", "", nil, ""},
	cutCoiled:      {"draw.cut.coiled", "path", "fibre", "", nil, ""},
	cutFirst:       {"draw.cut.first", "path", "fibre", "", nil, ""},
	cutSecond:      {"draw.cut.second", "path", "fibre", "", nil, ""},
	cutFinished:    {"draw.cut.finished", "path", "fibre", "", nil, ""},
	cutTicks:       {"draw.cut.ticks", "path", "dim", "", nil, ""},
	cutWorked:      {"draw.cut.worked", "path", "dim", "", nil, ""},
	cutGiven:       {"draw.cut.given", "path", "given", "", nil, ""},
	cutLetters:     {"draw.cut.letter-precursor", "text", "letter", "middle", nil, ""},
	cutLetters + 1: {"draw.cut.letter-coiled", "text", "letter", "middle", nil, ""},
	cutLetters + 2: {"draw.cut.letter-first", "text", "letter", "middle", nil, ""},
	cutLetters + 3: {"draw.cut.letter-second", "text", "letter", "middle", nil, ""},
	cutLetters + 4: {"draw.cut.letter-finished", "text", "letter", "middle", nil, ""},
	cutLabels:      {"draw.cut.label-precursor", "text", "label", "start", nil, ""},
	cutLabels + 1:  {"draw.cut.label-coiled", "text", "label", "start", nil, ""},
	cutLabels + 2:  {"draw.cut.label-first", "text", "label", "start", nil, ""},
	cutLabels + 3:  {"draw.cut.label-second", "text", "label", "start", nil, ""},
	cutLabels + 4:  {"draw.cut.label-finished", "text", "label", "start", nil, ""},
	cutCutLabel:    {"draw.cut.cut-label", "text", "label", "end", nil, ""},
	cutNote:        {"draw.cut.note", "text", "label", "start", nil, ""},
}

// drawCut draws the five lengths below one another, at one scale and from one zero, the left tie.
func drawCut(s *sketch) {
	const (
		left, right = 8.0, 312.0
		apart       = 46.0 // rows
		first       = 19.0 // baseline of the first row's words
		below       = 17.0 // from them to the length itself
		radius      = 7.0
	)
	p, o := &s.st.Plan, &s.st.Out
	measured := known(float64(p.Measured))
	rows := [cutRows]struct {
		id     calc.ID
		length float64
		letter string
		key    string
	}{
		{calc.CutPrecursor, float64(p.Precursor), "P", "draw.cut.tie-to-tie"},
		{calc.ClampCoiled, float64(p.Piece()), "L", "draw.cut.as-coiled"},
		{calc.ClampFirst, float64(p.First), "1", "draw.cut.first-gap"},
		{calc.ClampSecond, float64(p.Second), "2", "draw.cut.second-gap"},
		{calc.ClampFinished, float64(p.Finished), "f", "draw.cut.released"},
	}
	if measured {
		rows[1].key = "draw.cut.measured"
	}
	hidden := -1
	if p.Stages == calc.StagesOne {
		hidden = 3
		rows[2].key = "draw.cut.only-gap"
	}

	tail := float64(p.Tail)
	tails := known(tail)
	if !tails {
		tail = 0
	}
	reach := longest(float64(p.Precursor)+tail, rows[1].length, rows[2].length, rows[3].length, rows[4].length)
	zero, k := left, 0.0
	if reach > 0 {
		k = (right - left) / (tail + reach)
		zero += tail * k
	}
	var y [cutRows]float64 // of the baselines
	for i, at := 0, first; i < cutRows; i++ {
		y[i] = at
		if i != hidden {
			at += apart
		}
	}
	shown := func(i int) bool { return i != hidden && known(rows[i].length) && rows[i].length > 0 }
	n := turns(float64(p.Piece())*k, 10) // the same turns in every row, drawn apart

	s.path(cutPrecursor)
	if at := y[0] + below; shown(0) {
		s.stroke(zero-tail*k, at, zero+(rows[0].length+tail)*k, at)
		s.disc(zero, at, 2.6)
		s.disc(zero+rows[0].length*k, at, 2.6)
	}
	s.end()
	s.path(cutEnds)
	if at := y[0] + below; shown(0) && tails {
		for _, x := range [2]float64{zero - tail*k, zero + (rows[0].length+tail)*k} {
			s.stroke(x, at-9, x, at+9)
		}
	}
	s.end()
	for i := 1; i < cutRows; i++ {
		s.path(cutCoiled - 1 + i)
		if shown(i) {
			s.coil(zero, y[i]+below, rows[i].length*k, radius, n, nearSide)
		}
		s.end()
	}
	s.path(cutTicks)
	for i := range cutRows {
		if shown(i) {
			for _, x := range [2]float64{zero, zero + rows[i].length*k} {
				s.stroke(x, y[i]+below-11, x, y[i]+below+11)
			}
		}
	}
	s.end()
	typed := func(i int) bool { return p.Given[calc.LengthGroup].Has(rows[i].id) || i == 1 && measured }
	s.path(cutWorked)
	for i := range cutRows {
		if shown(i) && !typed(i) {
			s.circle(9, y[i]-5, 4)
		}
	}
	s.end()
	s.path(cutGiven)
	for i := range cutRows {
		if shown(i) && typed(i) {
			s.disc(9, y[i]-5, 4)
		}
	}
	s.end()

	for i := range cutRows {
		from := s.text(cutLetters + i)
		if i != hidden {
			s.str(rows[i].letter)
		}
		s.place(cutLetters+i, from, 25, y[i], 20)
	}
	used := 0.0
	for i := range cutRows {
		w := s.label(cutLabels+i, 38, y[i], s.w-40, shown(i), rows[i].key)
		if i == 0 {
			used = w
		}
	}
	s.label(cutCutLabel, s.w-4, y[0], s.w-4-38-used-8, known(float64(o.Length)), "draw.cut.cut")
	if reach > 0 {
		s.label(cutNote, 4, y[4]+below+32, s.w, true, "draw.cut.note")
	} else {
		s.needs(cutNote, 4, y[4]+below+32, calc.ClampCoiled)
	}

	s.sayOld("draw.cut:title", "draw.cut.title")
	s.desc("draw.cut:desc", "draw.cut.desc")
	s.also(measured, "draw.cut.desc-measured")
	s.also(!measured, "draw.cut.desc-coiled")
	s.also(hidden < 0, "draw.cut.desc-gaps")
	s.also(hidden >= 0, "draw.cut.desc-gap")
	s.end()
}
