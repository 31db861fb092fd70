package quantity

import (
	"math"
	"unicode/utf8"
)

// parser reads one text from left to right. It holds the first thing that is wrong with it, and what is read after that counts for nothing.
type parser struct {
	kind  *Kind
	s     string
	i     int    // where it has got to
	list  bool   // in a list a comma may end a number, and thousands are not grouped
	err   error  // the first
	part  string // what it is about
	other string // the text in its other reading
	cut   int    // bytes that other is shorter than s
}

// fail says that a part of the text is wrong, unless something before it was.
//
//go:noinline
func (p *parser) fail(from, to int, err error) {
	if p.err == nil {
		p.err, p.part = err, Trim(p.s[from:to])
	}
}

// word is the end of the run of characters without a space at i.
func (p *parser) word(i int) int {
	for i < len(p.s) {
		r, n := utf8.DecodeRuneInString(p.s[i:])
		if isSpace(r) || p.list && r == ';' {
			break
		}
		i += n
	}
	return i
}

func (p *parser) peek(i int) (rune, int) { return utf8.DecodeRuneInString(p.s[i:]) }

// space skips spaces; in a list a new line is not one.
func (p *parser) space() {
	for p.i < len(p.s) {
		r, n := p.peek(p.i)
		if !isSpace(r) || p.list && isLine(r) {
			return
		}
		p.i += n
	}
}

//go:noinline
func isLine(r rune) bool { return r == '\n' || r == '\r' || r == '\v' || r == '\f' }

// startsNumber says whether an unsigned number is written at i.
func (p *parser) startsNumber(i int) bool {
	if i >= len(p.s) {
		return false
	}
	switch c := p.s[i]; {
	case isDigit(rune(c)):
		return true
	case c == '.', c == ',' && !p.list:
		return nextDigit(p.s, i+1)
	}
	_, n := vulgar(p.s, i)
	return n > 0
}

// body is what the marks of a number say.
type body struct {
	end     int  // where the digits and marks end
	mark    int  // where the decimal mark is, -1 if there is none
	first   int  // digits before the first mark or group
	after   int  // digits after the last mark or group
	marks   int  // points and commas
	grouped bool // thousands are grouped by a space or an apostrophe
	valid   bool
}

// scan finds the end of the digits at i and which of their marks is the
// decimal one.
func (p *parser) scan(i int, b *body) {
	start := i
	b.mark = -1
	points, commas := 0, 0
	threes := true // every group between the first and the last has 3 digits
	segment, run, digits := 0, 0, 0
	last, separator := -1, rune(0)
	next := func() {
		if segment == 0 {
			b.first = run
		} else {
			threes = threes && run == 3
		}
		segment++
		run = 0
	}
scan:
	for i < len(p.s) {
		r, n := p.peek(i)
		switch {
		case isDigit(r):
			run++
			digits++
		case r == '.' || r == ',' && (!p.list || nextDigit(p.s, i+1)):
			next()
			last = i
			if r == '.' {
				points++
			} else {
				commas++
			}
		case !p.list && points+commas == 0 && isGroup(r) && (separator == 0 || r == separator) && p.thousand(i+n) &&
			(segment > 0 || run > 0 && run <= 3 && p.s[start] != '0'):
			next()
			separator = r
		default:
			break scan
		}
		i += n
	}
	b.end, b.marks, b.after, b.grouped = i, points+commas, run, separator != 0
	if segment == 0 {
		b.first = run
	}
	thousands := threes && b.first > 0 && b.first <= 3 && p.s[start] != '0'
	switch {
	case digits == 0:
	case b.marks == 0:
		b.valid = true
	case b.marks == 1:
		b.mark, b.valid = last, threes
		// A group before the mark is already known to be of threes.
	case p.list || b.grouped:
	case points > 0 && commas > 0:
		// The last mark is the decimal one, and the only one of its sort.
		b.mark = last
		b.valid = thousands && (p.s[last] == '.' && points == 1 || p.s[last] == ',' && commas == 1)
	default:
		b.valid = thousands && b.after == 3
	}
}

// isGroup says whether thousands may be grouped by r.
func isGroup(r rune) bool {
	switch r {
	case ' ', '\u00a0', '\u2007', '\u2009', '\u202f', '\'', '’':
		return true
	}
	return false
}

// thousand says whether a group of exactly three digits is written at i, and
// not the upper half of a fraction.
func (p *parser) thousand(i int) bool {
	for n := range 3 {
		if !nextDigit(p.s, i+n) {
			return false
		}
	}
	r, _ := p.peek(i + 3)
	return !isDigit(r) && !isSlash(r)
}

//go:noinline
func isSlash(r rune) bool { return r == '/' || r == '\u2044' || r == '\u2215' }

// number reads a number: a sign if allowed, digits with their marks, then an
// exponent or a fraction. It leaves the parser behind it.
func (p *parser) number(signed bool) float64 {
	start, negative := p.i, false
	if signed {
		negative, p.i = p.sign(p.i)
	}
	x := p.unsigned(start)
	if negative {
		x = -x
	}
	return x
}

// sign reads a sign, if one is written at i: whether it is a minus, and where it ends.
//
//go:noinline
func (p *parser) sign(i int) (negative bool, end int) {
	switch r, n := p.peek(i); r {
	case '-', minus:
		return true, i + n
	case '+':
		return false, i + n
	}
	return false, i
}

func (p *parser) unsigned(start int) float64 {
	if x, n := vulgar(p.s, p.i); n > 0 {
		p.i += n
		return x
	}
	from := p.i
	if !p.startsNumber(from) {
		p.fail(start, max(p.word(start), from), ErrNumber)
		return 0
	}
	var b body
	p.scan(from, &b)
	if !b.valid {
		p.fail(start, b.end, ErrNumber)
		return 0
	}
	digits, power := uint64(0), 0
	for i := from; i < b.end; i++ {
		if !nextDigit(p.s, i) {
			continue
		}
		behind, full := b.mark >= 0 && i > b.mark, digits >= fullDigits
		if !full {
			digits = digits*10 + uint64(p.s[i]-'0')
		}
		if behind && !full {
			power--
		} else if !behind && full {
			power++
		}
	}
	p.i = b.end
	e, exponent := p.exponent()
	whole := b.marks == 0 && !exponent
	if whole {
		// The upper half of 1/4; with plies a slash says how many plies there are.
		if r, n := p.peek(p.i); !p.kind.Plies && !b.grouped && isSlash(r) && nextDigit(p.s, p.i+n) {
			x, end, ok := p.quotient(from)
			p.i = end
			if !ok {
				p.fail(start, end, ErrNumber)
			}
			return x
		}
	}
	x := tenfold(float64(digits), power+e)
	if math.IsInf(x, 0) {
		p.fail(start, p.i, ErrNotFinite)
	}
	if b.marks == 1 && b.after == 3 && b.first > 0 && b.first <= 3 && p.s[from] != '0' && !exponent && !b.grouped {
		p.without(b.mark)
	}
	if whole {
		x += p.mixed()
	}
	return x
}

// without takes the mark at i out of the other reading.
//
//go:noinline
func (p *parser) without(i int) {
	if p.cut == 0 {
		p.other = p.s
	}
	i -= p.cut
	p.other = p.other[:i] + p.other[i+1:]
	p.cut++
}

// fullDigits is where further digits say nothing that a float64 could hold.
const fullDigits = 1e18

// tenfold is x times ten to the power e. With at most 15 digits and an e of at
// most 22 either way it is the float64 that is nearest, for both are exact; of
// more it can be the one beside that.
func tenfold(x float64, e int) float64 {
	const most = len(tens) - 1
	for ; e > most; e -= most {
		x *= tens[most]
	}
	for ; e < -most; e += most {
		x /= tens[most]
	}
	if e < 0 {
		return x / tens[-e]
	}
	return x * tens[e]
}

// tens are the powers of ten that are exact in float64.
var tens = [...]float64{1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11,
	1e12, 1e13, 1e14, 1e15, 1e16, 1e17, 1e18, 1e19, 1e20, 1e21, 1e22}

// exponent reads e and a whole number, if they are written here.
func (p *parser) exponent() (e int, ok bool) {
	i := p.i
	if i >= len(p.s) || p.s[i]|0x20 != 'e' {
		return 0, false
	}
	negative, i := p.sign(i + 1)
	if !nextDigit(p.s, i) {
		return 0, false
	}
	for ; nextDigit(p.s, i); i++ {
		e = min(e*10+int(p.s[i]-'0'), mostExponent)
	}
	p.i = i
	if negative {
		e = -e
	}
	return e, true
}

// mostExponent is what stands for any exponent beyond it.
const mostExponent = 1e5

// quotient reads digits, a slash and digits at i, at most 6 of each, the lower
// half over 0.
func (p *parser) quotient(i int) (x float64, end int, ok bool) {
	upper, i, ok := p.whole(i)
	r, n := p.peek(i)
	if !isSlash(r) {
		return 0, i, false
	}
	lower, i, fits := p.whole(i + n)
	if !ok || !fits || lower == 0 {
		return 0, i, false
	}
	return float64(upper) / float64(lower), i, true
}

// whole reads 1 to 6 digits at i.
func (p *parser) whole(i int) (x, end int, ok bool) {
	for end = i; nextDigit(p.s, end); end++ {
		if end-i < 6 {
			x = x*10 + int(p.s[end]-'0')
		}
	}
	return x, end, end > i && end-i <= 6
}

// mixed reads the fraction of 1 1/4, 1-1/4, 1¼ or 1 ¼ behind its whole number,
// 0 if there is none.
func (p *parser) mixed() float64 {
	i := p.i
	p.space()
	j := p.i
	p.i = i
	if x, n := vulgar(p.s, j); n > 0 {
		p.i = j + n
		return x
	}
	if j == i {
		if p.kind.Plies || i == len(p.s) || p.s[i] != '-' {
			return 0
		}
		j++
	}
	if p.kind.Plies {
		return 0
	}
	x, end, ok := p.quotient(j)
	if !ok || x >= 1 {
		return 0
	}
	p.i = end
	return x
}

// vulgar reads a fraction that is one character at i; the width is 0 if there
// is none.
func vulgar(s string, i int) (float64, int) {
	if i >= len(s) || s[i] < utf8.RuneSelf {
		return 0, 0
	}
	r, n := utf8.DecodeRuneInString(s[i:])
	for _, v := range vulgars {
		if v.r == r {
			return v.upper / v.lower, n
		}
	}
	return 0, 0
}

var vulgars = [...]struct {
	r            rune
	upper, lower float64
}{
	{'¼', 1, 4}, {'½', 1, 2}, {'¾', 3, 4}, {'⅛', 1, 8}, {'⅜', 3, 8}, {'⅝', 5, 8}, {'⅞', 7, 8},
	{'⅓', 1, 3}, {'⅔', 2, 3}, {'⅕', 1, 5}, {'⅖', 2, 5}, {'⅗', 3, 5}, {'⅘', 4, 5},
	{'⅙', 1, 6}, {'⅚', 5, 6}, {'⅐', 1, 7}, {'⅑', 1, 9}, {'⅒', 1, 10},
}
