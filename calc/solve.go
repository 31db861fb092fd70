package calc

import (
	"twistbench/calc/craft"
	"twistbench/calc/quantity"
)

// Solve works out the members of each group that were not given. A group whose given is unknown is all unknown.
func Solve(p *Plan) {
	for g := range Groups {
		solveGroup(p, GroupID(g))
	}
}

func solveGroup(p *Plan, g GroupID) {
	group := &Groups[g]
	if group.Before != nil {
		group.Before(p)
	}
	given := p.Given[g]
	for i := range group.Members {
		if m := &group.Members[i]; m.ID != given {
			p.Value(m.ID).SetSI(quantity.NaN)
		}
	}
	for i := range group.Members {
		if m := &group.Members[i]; m.ID == given && m.ToHub != nil {
			m.ToHub(p)
		}
	}
	for i := range group.Members {
		if m := &group.Members[i]; m.ID != given && m.FromHub != nil {
			m.FromHub(p)
		}
	}
	if group.After != nil {
		group.After(p)
	}
}

// loadArea works out the area under load: what stress is on.
func loadArea(p *Plan) {
	p.SolidArea = craft.SolidArea(p.Fibre.Strands, p.Fibre.Area, p.Yarn.Strands, p.Yarn.Area)
	if p.AreaBase == AreaAll {
		p.LoadArea = p.SolidArea
		return
	}
	p.LoadArea = craft.SolidArea(p.Fibre.Strands, p.Fibre.Area, 0, 0)
}

// grown returns how many times the as-coiled length the last planned gap is.
func grown(p *Plan) float64 {
	first, second := 1+float64(p.FirstStretch), 1+float64(p.SecondStretch)
	switch {
	case p.Stages == StagesOne:
		return first
	case p.SecondBase == BaseFirstGap:
		return first * second
	case p.SecondBase == BaseRelaxed:
		return (1 + float64(p.Retained)*float64(p.FirstStretch)) * second
	}
	return second
}

func coilOfSecond(p *Plan) {
	if p.Stages == StagesTwo {
		p.Coiled = p.Second / quantity.Length(grown(p))
	}
}

// second works out the second gap of the piece at hand, which needs the first.
func second(p *Plan) {
	p.Second = quantity.Length(quantity.NaN)
	if p.Stages == StagesTwo {
		p.Second = craft.Gap(p.Base(), p.SecondStretch)
	}
}

// jawsStay puts back jaws that were already set (see Doubts): what then moves is the stretch, not the gap.
func jawsStay(p *Plan) {
	if p.jaws.set {
		p.First, p.Second = p.jaws.first, p.jaws.second
		p.Finished = craft.Released(p.Piece(), p.LastGap(), fraction(p.Retained))
	}
}

func fraction(s quantity.Share) quantity.Fraction { return quantity.Fraction(s) }
