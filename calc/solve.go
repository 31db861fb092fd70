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
	group, given := &Groups[g], p.Given[g]
	if group.Before != nil {
		group.Before(p)
	}
	for i := range group.Facts {
		for j := range group.Facts[i].Members {
			if m := &group.Facts[i].Members[j]; !given.Has(m.ID) {
				p.Value(m.ID).SetSI(quantity.NaN)
			}
		}
	}
	for i := range group.Facts {
		for j := range group.Facts[i].Members {
			if m := &group.Facts[i].Members[j]; given.Has(m.ID) && m.ToHub != nil {
				m.ToHub(p)
			}
		}
	}
	if group.Between != nil {
		group.Between(p)
	}
	for i := range group.Facts {
		for j := range group.Facts[i].Members {
			if m := &group.Facts[i].Members[j]; !given.Has(m.ID) && m.FromHub != nil {
				m.FromHub(p)
			}
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

// lengthsKnown does what waits for the lengths.
func lengthsKnown(p *Plan) {
	jawsStay(p)
	counted(p)
}

// jawsStay puts back jaws that were already set (see Doubts): what then moves is the stretch, not the gap.
func jawsStay(p *Plan) {
	if p.jaws.set {
		p.First, p.Second = p.jaws.first, p.jaws.second
		p.Finished = craft.Released(p.Piece(), p.LastGap(), fraction(p.Retained))
	}
}

func fraction(s quantity.Share) quantity.Fraction { return quantity.Fraction(s) }
