package quantity

// ratio reads how much longer the precursor is than its coil, over 1. Of a:b,
// a : b and a to b the larger is the precursor; a bare number or a percent
// under 1 is the coil over the precursor.
func (p *parser) ratio(r *Reading) {
	start := p.i
	a, b := p.number(true), 1.0
	p.space()
	if i := p.colon(); i > 0 {
		p.i = skipSpace(p.s, i)
		b = p.number(true)
	} else if r.Unit = p.match(KindFraction); r.Unit != nil {
		a = r.Unit.ToSI(a)
	}
	if !(a > 0 && b > 0) {
		p.fail(start, p.i, ErrNumber)
	}
	if a < b {
		a, b = b, a
	}
	r.SI = a / b
	if r.SI == 1 {
		p.fail(start, p.i, ErrOne)
	}
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
