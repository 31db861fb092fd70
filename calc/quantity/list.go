package quantity

import "math"

// Item is some pieces of one mass (or of another kind).
type Item struct {
	Each  float64 // SI
	Count int     // 1 to 999
}

// mostItems is the most that a list holds, mostPieces the most of one item.
const (
	mostItems  = 40
	mostPieces = 999
)

// ParseList reads a list of pieces of kind k, in the unit with that symbol
// where none is typed: 10x5; 20x2; 50. An error is a *ParseError, whose Part
// is the piece or its part.
//
// Pieces are parted by a semicolon, a new line, a comma before a space, or a
// comma behind a piece that has a unit or a number of pieces: in 6,2x11 the
// comma is a decimal mark, in 20x2,50x2 it parts. Each piece is a quantity
// over 0, then if there are several, x and how many: 2 x 100 is 2 g a hundred
// times, and 2x100 g is refused. Thousands are not grouped in a list. Empty
// pieces are passed over.
func ParseList(k *Kind, text, unit string) ([]Item, error) {
	p := parser{kind: k, s: text, list: true}
	items := p.items(unit)
	if p.err != nil {
		return nil, p.wrong()
	}
	return items, nil
}

func (p *parser) items(unit string) (items []Item) {
	u := p.unit(unit)
	for p.err == nil {
		p.separators()
		if p.i == len(p.s) {
			if len(items) == 0 {
				p.err = ErrEmpty
			}
			break
		}
		start := p.i
		it := Item{Count: 1}
		p.item(&it, u)
		if len(items) == mostItems {
			p.fail(start, p.i, ErrMany)
		}
		items = append(items, it)
	}
	return items
}

// separators skips what parts two pieces, several times over.
func (p *parser) separators() {
	for p.i < len(p.s) {
		r, n := p.peek(p.i)
		if !isSpace(r) && r != ';' && (r != ',' || nextDigit(p.s, p.i+1)) {
			return
		}
		p.i += n
	}
}

func (p *parser) item(it *Item, u *Unit) {
	start := p.i
	r := Reading{Unit: u}
	p.amount(&r)
	it.Each = r.SI
	p.space()
	if i := p.times(p.i); i > 0 {
		from := p.i
		n, end, ok := p.whole(i)
		p.i = end
		if end < len(p.s) && p.s[end] == '.' && nextDigit(p.s, end+1) {
			ok = false
			_, p.i, _ = p.whole(end + 1)
		}
		if !ok || n < 1 || n > mostPieces {
			p.fail(from, p.i, ErrPieces)
		}
		it.Count = n
		p.space()
	}
	if p.i < len(p.s) {
		switch r, n := p.peek(p.i); {
		case r == ',':
			p.i += n
		case r == ';', isLine(r):
		default:
			p.fail(start, p.endOfItem(), ErrItem)
		}
	}
	if !(it.Each > 0) {
		p.fail(start, p.i, ErrItem)
	}
	if math.IsInf(it.Each, 0) {
		p.fail(start, p.i, ErrNotFinite)
	}
}

// endOfItem is where the next separator that is one beyond doubt stands.
func (p *parser) endOfItem() int {
	i := p.i
	for i < len(p.s) {
		r, n := p.peek(i)
		if r == ';' || isLine(r) || r == ',' && !nextDigit(p.s, i+1) {
			break
		}
		i += n
	}
	return i
}
