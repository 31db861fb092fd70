package quantity

// ratio reads how much longer the precursor is than its coil, over 1. Of a:b,
// a : b and a to b the larger is the precursor; a bare number or a percent
// under 1 is the coil over the precursor.
func (p *parser) ratio() (float64, *Unit, error) {
	start := p.i
	a, err := p.number(true)
	if err != nil {
		return 0, nil, err
	}
	b := 1.0
	var u *Unit
	p.space()
	if i := p.colon(); i > 0 {
		p.i = skipSpace(p.s, i)
		if b, err = p.number(true); err != nil {
			return 0, nil, err
		}
	} else if v, end := KindFraction.match(p.s, p.i); v != nil {
		u, p.i = v, end
		a = v.ToSI(a)
	}
	if !(a > 0 && b > 0) {
		return 0, nil, p.fail(start, p.i, ErrNumber)
	}
	if a < b {
		a, b = b, a
	}
	x := a / b
	if x == 1 {
		return 0, nil, p.fail(start, p.i, ErrOne)
	}
	return x, u, nil
}

// colon is the end of : or to, 0 if neither is written here.
func (p *parser) colon() int {
	switch r, n := p.peek(p.i); r {
	case ':', '∶', '：':
		return p.i + n
	}
	if end := matchName(p.s, p.i, "to", true, false); end > 0 {
		return end
	}
	return 0
}
