package show

import (
	"math"

	"twistbench/calc"
)

// What the drawing of the circuit names.
const (
	wireIs      = iota + firstPlace // 0 where there is a current at all
	wireNone                        // 0 where there is none
	wireInRow                       // how many muscles are drawn
	wireRows                        // in how many rows
	wireLast                        // the last row
	wireVolts                       // 0 where it is known: the voltage of the supply
	wireFuse                        // the fuse
	wireFlows                       // the current
	wireTotal                       // ohms and power
	wireLeads                       // what the leads lose
	wireSeveral                     // 0 where there are several muscles
	wireMany                        // 0 where not all are drawn
	wireHas                         // 0 where there is a current and nothing is lacking
)

// The rails of the muscles in the drawing, and their first row.
const wireLeft, wireRight, wireFirst, wireApart = 130 * u, 300 * u, 68 * u, 26

var wireShapes = []Shape{
	{"draw.wire.leads", "path", "rule", "", []place{
		when, wireIs, stroke, 37 * u, 70 * u, 37 * u, 30 * u, line, 64 * u, 30 * u, stroke, 94 * u, 30 * u, wireLeft, 30 * u, line, wireLeft, wireLast,
		stroke, wireRight, wireFirst, wireRight, 176 * u, line, 37 * u, 176 * u, line, 37 * u, 118 * u,
	}, ""},
	{"draw.wire.supply", "path", "rule", "", []place{when, wireIs, box, 7 * u, 70 * u, 60 * u, 48 * u}, ""},
	{"draw.wire.fuse", "path", "rule", "", []place{when, wireIs, box, 64 * u, 25 * u, 30 * u, 10 * u, stroke, 64 * u, 30 * u, 94 * u, 30 * u}, ""},
	{"draw.wire.muscles", "path", "fibre", "", []place{when, wireIs, bank, wireLeft, wireRight, wireFirst, wireApart * u, wireInRow, wireRows}, ""},
	{"draw.wire.supply-label", "text", "label", "middle", []place{37 * u, 99 * u, 56 * u, wireVolts}, "draw.wire.supply"},
	{"draw.wire.fuse-label", "text", "label", "start", []place{56 * u, 17 * u, 106 * u, wireFuse}, "draw.wire.fuse"},
	{"draw.wire.total-label", "text", "label", "end", []place{316 * u, 17 * u, 150 * u, wireTotal}, "draw.wire.total"},
	{"draw.wire.wiring", "text", "label", "start", []place{wireLeft + 8*u, 50 * u, 178 * u, wireSeveral}, "draw.wire.wiring"},
	{"draw.wire.flows", "text", "label", "start", []place{48 * u, 170 * u, 246 * u, wireFlows}, "draw.wire.flows"},
	{"draw.wire.lost", "text", "label", "start", []place{7 * u, 194 * u, 0, wireLeads}, "draw.wire.leads"},
	{"draw.wire.note", "text", "label", "start", []place{7 * u, 211 * u, 0, wireHas, wireMany}, "draw.wire.note" + and + "draw.wire.many" + or + needs},
	{"draw.wire.none", "text", "label", "start", []place{7 * u, 24 * u, 0, wireNone}, "draw.wire.none"},
}

var wireSaid = []Shape{
	{":title", "", "", "", nil, "draw.wire.title"},
	{":desc", "", "", "", []place{wireNone, wireIs, wireHas, wireFuse}, "draw.wire.none" + or + "draw.wire.note" + and + "draw.wire.desc" + and + "draw.wire.desc-fuse" + and + needs},
}

// The most muscles that are drawn, in a row and rows.
const mostInRow, mostRows = 5, 4

// drawWire draws the circuit of the plan: the supply, the fuse, both leads, and the muscles between them as they are wired.
func drawWire(s *sketch) {
	p, o := &s.st.Plan.Wire, &s.st.Out
	var n numbers
	is := only(p.Route != calc.RouteNone)
	n[wireIs], n[wireNone] = is, only(p.Route == calc.RouteNone)
	inRow, rows := float64(p.InRow), float64(p.Rows)
	n[wireInRow], n[wireRows] = min(inRow, mostInRow), min(rows, mostRows)
	n[wireLast] = wireFirst/u + wireApart*(n[wireRows]-1)
	n[wireVolts] = is + 0*float64(p.SupplyVoltage)
	n[wireFlows] = is + 0*float64(p.Current)
	n[wireFuse] = n[wireFlows] + 0*float64(o.Fuse)
	n[wireTotal] = is + 0*float64(p.Total) + 0*float64(p.Power)
	n[wireLeads] = is + 0*float64(o.Drop)
	n[wireHas] = n[wireVolts] + n[wireTotal] + n[wireLeads]
	n[wireSeveral] = is + where(inRow*rows-1.5)
	n[wireMany] = n[wireHas] + only(inRow > mostInRow || rows > mostRows)
	if is == 0 && n[wireHas] != 0 {
		n[lacks] = float64(s.st.Needs(calc.WireDrop))
	}
	s.n = n
}

// bank draws muscles between two rails: from x to an end, the first row at the height y and others so far apart, so many in a row, and rows.
func (s *sketch) bank() {
	b := s.a
	long := (b[1] - b[0]) / b[4]
	for ; b[5] > 0; b[5]-- {
		for at := b[0]; at < b[1]-1; at += long {
			s.stroke(at, b[2], at+long, b[2])
			s.a = [8]float64{at + 0.1*long, b[2], 0.8 * long, 6, math.Floor(0.15 * long), bothSides}
			s.coil()
		}
		b[2] += b[3]
	}
}
