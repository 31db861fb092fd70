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
			Fields[m.ID].Get(p).SetSI(quantity.NaN)
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

// bookDensity fills an unknown density with the book value of the polymer.
func bookDensity(s *Strand) {
	if !known(s.Density) {
		s.Density = craft.Polymers[s.Polymer].Density
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

func coiledOfSecond(p *Plan) {
	if p.Stages == StagesTwo {
		p.Coiled = p.Second / quantity.Length(grown(p))
	}
}

func coiledOfFinished(p *Plan) {
	p.Coiled = craft.OfReleased(p.Finished, grown(p), fraction(p.Retained))
}

// second works out the second gap of the piece at hand.
func second(p *Plan) {
	switch {
	case p.Stages == StagesOne:
		p.Second = quantity.Length(quantity.NaN)
	case p.SecondBase == BaseFirstGap:
		p.Second = craft.Gap(craft.Gap(p.Piece(), p.FirstStretch), p.SecondStretch)
	case p.SecondBase == BaseRelaxed && known(p.Relaxed):
		p.Second = craft.Gap(p.Relaxed, p.SecondStretch)
	default:
		p.Second = p.Piece() * quantity.Length(grown(p))
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
