package calc

import (
	"twistbench/calc/craft"
	"twistbench/calc/quantity"
)

// Solve works out the members of each group that were not given. A group whose given is unknown is all unknown.
//
// The lengths are worked out twice: what their given alone says comes before twist and shape, which may be told by turns and coils counted on
// the whole length; what needs the ratio comes after.
func Solve(p *Plan) {
	if !p.Given[ShapeGroup].Has(CutRatio) {
		p.Ratio = quantity.Ratio(quantity.NaN)
	}
	for _, g := range [...]GroupID{SizeGroup, YarnSizeGroup, HangGroup, LengthGroup, TwistGroup, ShapeGroup, LengthGroup} {
		solveGroup(p, g)
	}
}

func solveGroup(p *Plan, g GroupID) {
	switch g {
	case HangGroup:
		loadArea(p)
	case TwistGroup:
		untwisted(p)
	}
	pass(p, g, forget)
	pass(p, g, inward)
	switch g {
	case TwistGroup:
		twisted(p)
	case ShapeGroup:
		third(p)
	}
	pass(p, g, outward)
	if g == LengthGroup {
		jawsStay(p)
		counted(p)
	}
}

// The passes over the members of a group.
const (
	forget  = iota // what is not given
	inward         // from the givens to the hubs
	outward        // from the hubs to what is not given
)

func pass(p *Plan, g GroupID, what int) {
	given := p.Given[g]
	for i := range Groups[g].Facts {
		members := Groups[g].Facts[i].Members
		for j := range members {
			id := members[j].ID
			switch has := given.Has(id); {
			case what == inward && has:
				toHub(p, id)
			case what == forget && !has:
				p.Value(id).SetSI(quantity.NaN)
			case what == outward && !has:
				fromHub(p, id)
			}
		}
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

// jawsStay puts back jaws that were already set (see doubts): what then moves is the stretch, not the gap.
func jawsStay(p *Plan) {
	if p.jaws.set {
		p.First, p.Second = p.jaws.first, p.jaws.second
		p.Finished = craft.Released(p.Piece(), p.LastGap(), fraction(p.Retained))
	}
}

func fraction(s quantity.Share) quantity.Fraction { return quantity.Fraction(s) }
