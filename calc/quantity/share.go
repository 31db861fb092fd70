package quantity

// Share is the part of a whole that is left or kept; SI is the fraction. Unlike
// a Fraction it can't be over the whole, so a bare number up to 1 is the
// fraction itself (0.85), and one over 1 is percent (85).
type Share float64

// KindShare is the kind of Share.
var KindShare = &Kind{Name: "share", Style: StyleShare, Units: fractionUnits}

func (*Share) Kind() *Kind       { return KindShare }
func (v *Share) SI() float64     { return float64(*v) }
func (v *Share) SetSI(x float64) { *v = Share(x) }

// share makes the fraction of a bare number up to 1, which was read as percent.
func share(r *Reading) {
	if x := r.SI * 100; r.Bare && x <= 1 {
		r.SI = x
	}
}
