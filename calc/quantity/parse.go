package quantity

import (
	"errors"
	"math"
	"unicode/utf8"
)

// What can be wrong with a text. The texts of these errors are keys.
var (
	ErrEmpty     = errors.New("empty")      // nothing was typed
	ErrNumber    = errors.New("number")     // not a number, or not one that can be
	ErrUnit      = errors.New("unit")       // not a unit of the kind
	ErrTrailing  = errors.New("trailing")   // something is left over
	ErrPlies     = errors.New("plies")      // plies that are not whole, not 1 to 999, over 12 after a slash, or given twice
	ErrOne       = errors.New("one")        // a ratio of 1
	ErrWhole     = errors.New("whole")      // a count that is not whole
	ErrNotFinite = errors.New("not-finite") // too large for a number
	ErrItem      = errors.New("item")       // a piece of a list that is not a mass, or a mass times a number of pieces
	ErrPieces    = errors.New("pieces")     // a number of pieces that is not whole, or not 1 to 999
	ErrMany      = errors.New("many")       // more than 40 pieces in a list
	ErrDay       = errors.New("day")        // not a date, or one that is not in the calendar
	ErrClock     = errors.New("clock")      // not a time of the day
)

// ParseError says which part of a text can't be read, and why.
type ParseError struct {
	_ [0]func() // these are not compared

	Kind *Kind
	Text string // the whole text
	Part string // the part that is wrong
	Err  error  // one of the sentinels
}

// Error is the key of the reason and the part.
func (e *ParseError) Error() string { return e.Err.Error() + ": " + e.Part }

// Unwrap is the sentinel.
func (e *ParseError) Unwrap() error { return e.Err }

// Reading is what a text says.
type Reading struct {
	SI    float64
	Unit  *Unit  // as typed (the last of a compound), or the default; nil for a count, and for a ratio unless %
	Bare  bool   // no unit was typed, the default was taken; false where the default has no symbol to type
	Other string // the whole text rewritten to its other possible reading, "" if there is none
}

// Parse reads a text of the kind, in the unit with that symbol ("" for the
// kind's first) where none is typed. It does not serve words and lists. An
// error is a *ParseError. Ranges are not checked: a negative number is read.
//
// A text is a number and a unit, and for the same kind in falling units also
// several (1 lb 4 oz; of times the last may be bare: 1 h 30; or 1:30, see first). Either mark, point or comma, is the decimal one; where
// both are used the last is, and the other groups thousands. A lone mark with
// three digits behind it is decimal, with the whole number as Other.
//
// With plies it is [unit] number [unit] [f filaments], and once in it the
// plies: 470 dtex x2, 470x2 dtex, 2x470 dtex, 470/2 dtex, 470 dtex 2-ply.
// Plies multiply the linear density in every unit. Filaments say nothing of it
// (ISO 1139) and are passed over.
func (k *Kind) Parse(text, unit string) (Reading, error) {
	var r Reading
	p := parser{kind: k, s: text}
	p.reading(&r, unit)
	r.SI += 0 // no negative zero
	if n := r.Unit.FromSI(r.SI); math.IsNaN(n) || math.IsInf(n, 0) || math.IsInf(r.SI, 0) {
		p.fail(0, len(text), ErrNotFinite)
	}
	if p.err != nil {
		return Reading{SI: NaN}, p.wrong()
	}
	if p.other != "" {
		if _, err := k.Parse(p.other, unit); err == nil {
			r.Other = p.other
		}
	}
	return r, nil
}

// wrong is the error with its text, and with the part, at worst all of it.
//
//go:noinline
func (p *parser) wrong() error {
	if p.part == "" {
		p.part = Trim(p.s)
	}
	return &ParseError{Kind: p.kind, Text: p.s, Part: p.part, Err: p.err}
}

func (p *parser) reading(r *Reading, unit string) {
	p.space()
	if p.i == len(p.s) {
		p.err = ErrEmpty
		return
	}
	switch p.kind.Style {
	case StyleRatio:
		p.ratio(r)
	case StyleCount:
		p.count(r)
	case StyleDay, StyleClock:
		p.civil(r)
	case StyleGauge:
		p.gauge(r)
	case StylePlain, StylePercent, StyleShare:
		if r.Unit = p.unit(unit); r.Unit == nil {
			return
		}
		if p.kind.Plies {
			p.titre(r)
		} else {
			p.amount(r)
		}
		if p.kind.Style == StyleShare {
			share(r)
		}
	default:
		p.fail(0, len(p.s), ErrNumber)
	}
	p.done()
}

// done says whether only spaces are left.
func (p *parser) done() {
	p.space()
	if p.i < len(p.s) {
		p.fail(p.i, len(p.s), ErrTrailing)
	}
}

// unit is the default unit.
func (p *parser) unit(symbol string) *Unit {
	u := p.kind.Default()
	if symbol != "" {
		u = p.kind.Unit(symbol)
	}
	if u == nil {
		p.err, p.part = ErrUnit, symbol
	}
	return u
}

func (p *parser) count(r *Reading) {
	start := p.i
	r.SI = p.number(true)
	if r.SI != math.Trunc(r.SI) {
		p.fail(start, p.i, ErrWhole)
	}
}

// amount reads a number with its unit, and more of them in falling units. r
// comes with the default unit.
func (p *parser) amount(r *Reading) {
	start := p.i
	n := p.number(true)
	u := p.first(r.Unit)
	clock := u != nil
	if !clock {
		u = p.typed()
	}
	if u == nil {
		r.Bare = r.Unit.Symbol != ""
		r.SI = r.Unit.ToSI(n)
		return
	}
	r.SI, r.Unit = u.ToSI(n), u
	negative, _ := p.sign(start)
	for p.err == nil && !u.Inverse && u.Offset == 0 {
		unitEnd := p.i
		p.space()
		if clock && p.i < len(p.s) && p.s[p.i] == ':' {
			p.i++
		} else if clock || !p.startsNumber(p.i) {
			return
		}
		from := p.i
		n := p.number(false)
		if u = nil; !clock {
			u = p.typed()
		} else if n >= 60 {
			p.fail(0, len(p.s), ErrClock)
		}
		if u == nil {
			u = p.kind.below(r.Unit)
		}
		if u == nil && from == unitEnd {
			// A digit that is stuck to the unit: a unit of another kind (mm2).
			for from > 0 && p.s[from-1] != ' ' && !isDigit(rune(p.s[from-1])) {
				from--
			}
			p.fail(from, p.word(from), ErrUnit)
			return
		}
		if u == nil || u.Offset != 0 || u.Factor >= r.Unit.Factor {
			p.fail(from, p.word(p.i), ErrTrailing)
			return
		}
		if negative {
			n = -n
		}
		r.SI, r.Unit = r.SI+u.ToSI(n), u
	}
}

// typed reads a unit behind a number, nil if none is written there. A word
// that is no unit is an error, if the kind has units to choose from.
func (p *parser) typed() *Unit {
	number := p.i
	p.space()
	if p.i == len(p.s) {
		return nil
	}
	r, _ := p.peek(p.i)
	if !isQuote(r) || p.i == number {
		if u := p.match(p.kind); u != nil {
			return u
		}
	}
	if p.times(p.i) == 0 && !isSpace(r) && (isLetter(r) || isQuote(r) || r == '%' || r == '°' || r >= utf8.RuneSelf) {
		p.fail(p.i, p.word(p.i), ErrUnit)
	}
	return nil
}

// match reads a unit of a kind, nil if none is written here.
//
//go:noinline
func (p *parser) match(k *Kind) *Unit {
	u, end := k.match(p.s, p.i)
	p.i = end
	return u
}

// isQuote: the signs of feet and inches, which stand right behind a number.
//
//go:noinline
func isQuote(r rune) bool {
	switch r {
	case '"', '″', '”', '\'', '′', '’':
		return true
	}
	return false
}

// times is where the digits start if a sign of multiplication is written at i,
// else 0.
func (p *parser) times(i int) int {
	r, n := p.peek(i)
	if !isTimes(r) {
		return 0
	}
	here := p.i
	p.i = i + n
	p.space()
	i, p.i = p.i, here
	if !nextDigit(p.s, i) {
		return 0
	}
	return i
}

// titre reads a linear density or a count with its plies.
func (p *parser) titre(r *Reading) {
	if u := p.match(p.kind); u != nil { // Ne 40/2
		r.Unit = u
		p.space()
	} else {
		r.Bare = true
	}
	n := p.number(true)
	plies := 0.0
	p.space()
	if i := p.times(p.i); i > 0 { // 470x2 or 2x470
		from := p.i
		p.i = i
		plies = p.number(false)
		// The plies are the one that is whole, of two the smaller.
		wholeN, whole := n == math.Trunc(n), plies == math.Trunc(plies)
		if wholeN && (!whole || n < plies) {
			n, plies = plies, n
		}
		if !wholeN && !whole || plies < 1 || plies > mostPlies {
			p.fail(from, p.i, ErrPlies)
		}
	} else { // 470/2
		p.plies(&plies)
	}
	if r.Bare {
		// Filaments and plies may stand where the unit would.
		if p.space(); p.filament() == 0 {
			if u := p.typed(); u != nil {
				r.Unit, r.Bare = u, false
			}
		}
	}
	p.space()
	if i := p.filament(); i > 0 {
		_, p.i, _ = p.whole(i)
	}
	p.plies(&plies)
	if plies == 0 {
		plies = 1
	}
	if r.Unit.Inverse {
		n /= plies
	} else {
		n *= plies
	}
	r.SI = r.Unit.ToSI(n)
}

// filament is where the digits of f34 start if it is written here, else 0.
func (p *parser) filament() int {
	if r, _ := p.peek(p.i); lower(r) == 'f' {
		if i := skipSpace(p.s, p.i+1); nextDigit(p.s, i) {
			return i
		}
	}
	return 0
}

// The most plies that are read, and the most behind a slash: a larger number
// there is one of filaments.
const (
	mostPlies      = 999
	mostSlashPlies = 12
)

// plies reads x2, /2, 2-ply or 2 ply, if one of them is written here.
func (p *parser) plies(plies *float64) {
	p.space()
	from, most := p.i, mostPlies
	i := p.times(from)
	if r, n := p.peek(from); isSlash(r) {
		i, most = skipSpace(p.s, from+n), mostSlashPlies
		if !nextDigit(p.s, i) {
			return
		}
	}
	bare := i == 0
	if bare {
		i = from
	}
	x, end, ok := p.whole(i)
	if bare {
		if end == i {
			return
		}
		if end = p.plyWord(end); end == 0 {
			return
		}
	} else if end+1 < len(p.s) && (p.s[end] == '.' || p.s[end] == ',') && nextDigit(p.s, end+1) {
		_, end, _ = p.whole(end + 1)
		ok = false
	}
	if !ok || x < 1 || x > most || *plies != 0 {
		p.fail(from, end, ErrPlies)
	}
	*plies, p.i = float64(x), end
}

// plyWord is the end of -ply or ply at i, 0 if it is not there.
func (p *parser) plyWord(i int) int {
	i = skipSpace(p.s, i)
	if i < len(p.s) && p.s[i] == '-' {
		i = skipSpace(p.s, i+1)
	}
	end := matchName(p.s, i, "ply", true, false)
	if end < 0 {
		return 0
	}
	return end
}
