package show

import (
	"twistbench/calc"
)

// cutRows is how many lengths there are: precursor, as coiled, first gap, second gap, finished.
const cutRows = 5

// What the drawing of the cut names, from cutY on once for each length.
const (
	cutZero  = iota + firstPlace // the left tie
	cutTurns                     // of each coil
	cutFrom                      // the ends of the tails
	cutTo
	cutTails    // 0 where the tails are known
	cutWhole    // and where what is cut is
	cutMeasured // 0 where the coil was measured, and 1 where it was not
	cutOne      // 0 where there is one gap, and 1 where there are two
	cutTwo      // 0 where there are two
	cutLast     // the baseline of the last row
	cutY        // the baselines of those that are known
	cutLong     = cutY + cutRows
	cutEnd      = cutLong + cutRows
	cutGiven    = cutEnd + cutRows   // the baselines again, of those that are typed
	cutWorked   = cutGiven + cutRows // and of those that are worked out
)

var cutShapes = []Shape{
	{"draw.cut.precursor", "path", "fibre", "", []place{
		stroke, cutFrom, cutY + 17*u, cutTo, cutY + 17*u, disc, cutZero, cutY + 17*u, 2.6 * u, disc, cutEnd, cutY + 17*u, 2.6 * u,
	}, ""},
	{"draw.cut.ends", "path", "cut", "", []place{when, cutTails, ends, cutFrom, cutTo, cutY + 17*u, 9 * u}, ""},
	{"draw.cut.coiled", "path", "fibre", "", []place{coil, cutZero, cutY + 1 + 17*u, cutLong + 1, 7 * u, cutTurns, nearSide * u}, ""},
	{"draw.cut.first", "path", "fibre", "", []place{coil, cutZero, cutY + 2 + 17*u, cutLong + 2, 7 * u, cutTurns, nearSide * u}, ""},
	{"draw.cut.second", "path", "fibre", "", []place{coil, cutZero, cutY + 3 + 17*u, cutLong + 3, 7 * u, cutTurns, nearSide * u}, ""},
	{"draw.cut.finished", "path", "fibre", "", []place{coil, cutZero, cutY + 4 + 17*u, cutLong + 4, 7 * u, cutTurns, nearSide * u}, ""},
	{"draw.cut.ticks", "path", "dim", "", []place{
		ends, cutZero, cutEnd, cutY + 17*u, 11 * u, ends, cutZero, cutEnd + 1, cutY + 1 + 17*u, 11 * u, ends, cutZero, cutEnd + 2, cutY + 2 + 17*u, 11 * u,
		ends, cutZero, cutEnd + 3, cutY + 3 + 17*u, 11 * u, ends, cutZero, cutEnd + 4, cutY + 4 + 17*u, 11 * u,
	}, ""},
	{"draw.cut.worked", "path", "dim", "", []place{
		circle, 9 * u, cutWorked - 5*u, 4 * u, circle, 9 * u, cutWorked + 1 - 5*u, 4 * u, circle, 9 * u, cutWorked + 2 - 5*u, 4 * u,
		circle, 9 * u, cutWorked + 3 - 5*u, 4 * u, circle, 9 * u, cutWorked + 4 - 5*u, 4 * u,
	}, ""},
	{"draw.cut.given", "path", "given", "", []place{
		disc, 9 * u, cutGiven - 5*u, 4 * u, disc, 9 * u, cutGiven + 1 - 5*u, 4 * u, disc, 9 * u, cutGiven + 2 - 5*u, 4 * u,
		disc, 9 * u, cutGiven + 3 - 5*u, 4 * u, disc, 9 * u, cutGiven + 4 - 5*u, 4 * u,
	}, ""},
	{"draw.cut.letter-precursor", "text", "letter", "middle", []place{25 * u, 19 * u}, "P"},
	{"draw.cut.letter-coiled", "text", "letter", "middle", []place{25 * u, 65 * u}, "L"},
	{"draw.cut.letter-first", "text", "letter", "middle", []place{25 * u, 111 * u}, "1"},
	{"draw.cut.letter-second", "text", "letter", "middle", []place{25 * u, 157 * u, 0, cutTwo}, "2"},
	{"draw.cut.letter-finished", "text", "letter", "middle", []place{25 * u, cutLast}, "f"},
	{"draw.cut.label-precursor", "text", "label", "start", []place{38 * u, cutY, 280 * u}, "draw.cut.tie-to-tie"},
	{"draw.cut.cut-label", "text", "label", "end", []place{316 * u, 19 * u, beside - 12*u, cutWhole}, "draw.cut.cut"},
	{"draw.cut.label-coiled", "text", "label", "start", []place{38 * u, cutY + 1, 280 * u, cutMeasured, cutMeasured - 1*u}, "draw.cut.measured" + or + "draw.cut.as-coiled"},
	{"draw.cut.label-first", "text", "label", "start", []place{38 * u, cutY + 2, 280 * u, cutOne, cutOne - 1*u}, "draw.cut.only-gap" + or + "draw.cut.first-gap"},
	{"draw.cut.label-second", "text", "label", "start", []place{38 * u, cutY + 3, 280 * u}, "draw.cut.second-gap"},
	{"draw.cut.label-finished", "text", "label", "start", []place{38 * u, cutY + 4, 280 * u}, "draw.cut.released"},
	{"draw.cut.note", "text", "label", "start", []place{4 * u, cutLast + 49*u, 0, lacks}, "draw.cut.note" + or + needs},
}

var cutSaid = []Shape{
	{":title", "", "", "", nil, "draw.cut.title"},
	{
		":desc", "", "", "", []place{zero, cutMeasured, cutMeasured - 1*u, cutOne, cutOne - 1*u},
		"draw.cut.desc" + and + "draw.cut.desc-measured" + and + "draw.cut.desc-coiled" + and + "draw.cut.desc-gap" + and + "draw.cut.desc-gaps",
	},
}

var cutIDs = [cutRows]calc.ID{calc.CutPrecursor, calc.ClampCoiled, calc.ClampFirst, calc.ClampSecond, calc.ClampFinished}

// drawCut draws the five lengths below one another, at one scale and from one zero, the left tie.
func drawCut(s *sketch) {
	const left, right, first, apart = 8, 312, 19, 46
	p := &s.st.Plan
	var n numbers
	n[cutMeasured] = 1
	if known(float64(p.Measured)) {
		n[cutMeasured] = 0
	}
	n[cutOne] = 1
	if p.Stages == calc.StagesOne {
		n[cutOne] = 0
	}
	tail := float64(p.Tail)
	n[cutTails] = 0 * tail
	if tail != tail {
		tail = 0
	}
	lengths := [cutRows]float64{float64(p.Precursor), float64(p.Piece()), float64(p.First), float64(p.Second), float64(p.Finished)}
	reach := longest(lengths[0]+tail, lengths[1], lengths[2], lengths[3], lengths[4])
	if reach == 0 {
		n[lacks] = float64(s.st.Needs(calc.ClampCoiled))
	}
	k := (right-left)/(tail+reach) + only(reach > 0) // units to the metre
	from := left + tail*k
	n[cutZero], n[cutFrom], n[cutTo] = from, left, from+(lengths[0]+tail)*k
	n[cutTurns] = float64(turns(lengths[1]*k, 10)) // the same in every row, drawn apart
	n[cutWhole] = 0 * float64(s.st.Out.Length)
	n[cutTwo] = only(n[cutOne] != 0)
	y := first + 0.0
	for i, length := range lengths {
		hidden := i == 3 && n[cutOne] == 0
		shown := only(length > 0 && !hidden)
		typed := p.Given[calc.LengthGroup].Has(cutIDs[i]) || i == 1 && n[cutMeasured] == 0
		n[cutY+i], n[cutLong+i], n[cutEnd+i] = y+shown, length*k, from+length*k
		n[cutGiven+i], n[cutWorked+i] = y+shown+only(typed), y+shown+only(!typed)
		n[cutLast] = y
		if !hidden {
			y += apart
		}
	}
	s.n = n
}
