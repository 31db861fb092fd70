package quantity

// There is one gauge for copper wire in the trade's American numbers. The wire gauges of elsewhere are others, and not taken for it.
var gaugeUnits = []Unit{{Symbol: "AWG", Factor: 1, Aliases: []string{"ga", "ga.", "gauge", "#"}}}

// gauge reads a wire gauge, its name before or behind it or left out: AWG 24, 24 ga, #24, and of those thicker than 0 how many zeros there are,
// 4/0 or 0000. The number of these is 1 less that of the zeros, so that 0 is 0.
func (p *parser) gauge(r *Reading) {
	r.Unit = p.kind.Default()
	named := p.match(p.kind) != nil
	p.space()
	zeros, after := 0, p.i
	for after < len(p.s) && p.s[after] == '0' {
		zeros++
		after++
	}
	switch n, end, whole := p.whole(p.i); {
	case zeros > 0 && !nextDigit(p.s, after) && (after == len(p.s) || p.s[after] != '.' && p.s[after] != ','):
		r.SI, p.i = float64(1-zeros), after
	case whole && n > 0 && end+1 < len(p.s) && p.s[end] == '/' && p.s[end+1] == '0' && !nextDigit(p.s, end+2):
		r.SI, p.i = float64(1-n), end+2
	default:
		r.SI = p.number(true)
	}
	r.Bare = !named
	if !named && p.typed() != nil {
		r.Bare = false
	}
}
