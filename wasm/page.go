//go:build js && wasm

package main

import (
	"twistbench/calc"
	"twistbench/calc/quantity"
	"twistbench/calc/show"

	"github.com/hack-pad/safejs"
)

// page is the browser's window, what was last written to it, and what is to be written next.
type page struct {
	window, document safejs.Value
	edge             safejs.Value // boot.js: gather and apply

	display         show.Display
	last, next, out []byte
}

// What a record is of, besides attributes; boot.js says more.
const (
	text         = show.Text
	value        = show.Value
	hidden       = show.Hidden
	focus        = "f"
	options      = "o"
	chosenOption = "c" // also while the list has the focus
)

func (p *page) attach() (err error) {
	if p.document, err = p.window.Get("document"); err != nil {
		return err
	}
	p.edge, err = p.window.Get("twistbench")
	return err
}

// report is where every error of the browser ends.
func (p *page) report(err error) {
	if err == nil {
		return
	}
	if console, failed := p.window.Get("console"); failed == nil {
		_, _ = console.Call("error", err.Error())
	}
}

// put adds a record to what is to be written. Inlined in its many callers it would take more of the page's program than all else here.
//
//go:noinline
func (p *page) put(id, what, value string) { p.out = show.Put(p.out, id, what, value) }

// tell puts a sentence where it is seen and read out.
//
//go:noinline
func (p *page) tell(key, part string) { p.put("status", text, p.say(key, part)) }

//go:noinline
func (p *page) say(key, part string) string { return p.display.Say(key, part) }

// assume takes it that the page shows the state, as the build made it.
func (p *page) assume(st *calc.State) { p.last = p.display.Slots(p.last[:0], st) }

// slots adds what the state changes on the page.
func (p *page) slots(st *calc.State) {
	p.next = p.display.Slots(p.next[:0], st)
	p.out = show.Changes(p.out, p.last, p.next)
	p.last, p.next = p.next, p.last
}

// flush writes what is to be written.
func (p *page) flush() error {
	if len(p.out) == 0 {
		return nil
	}
	_, err := p.edge.Call("apply", string(p.out))
	p.out = p.out[:0]
	return err
}

// happening is an event and every box as it is then.
type happening struct {
	kind, id, do, key, value, href, now string
	boxes                               string
}

// gather reads an event, or with none just the page.
func (p *page) gather(event ...any) (h happening, err error) {
	v, err := p.edge.Call("gather", event...)
	if err != nil {
		return h, err
	}
	all, err := v.String()
	first, rest := quantity.Split(all, show.Record)
	for _, part := range [...]*string{&h.kind, &h.id, &h.do, &h.key, &h.value, &h.href, &h.now} {
		*part, first = quantity.Split(first, show.Part)
	}
	h.boxes = rest
	return h, err
}

// box is a box of the page: its field's key, its text, and the unit beside it.
type box struct{ key, text, unit string }

// nextBox cuts the first box off.
func nextBox(boxes string) (b box, rest string) {
	record, rest := quantity.Split(boxes, show.Record)
	b.key, record = quantity.Split(record, show.Part)
	b.text, b.unit = quantity.Split(record, show.Part)
	return b, rest
}

// box returns the box of a key.
func (h *happening) box(key string) (b box, ok bool) {
	for rest := h.boxes; rest != ""; {
		if b, rest = nextBox(rest); b.key == key {
			return b, true
		}
	}
	return b, false
}

// early returns the boxes that no longer hold what the build put in them, and those beside which another unit was chosen: that was done
// while the program was loading.
func (p *page) early(h happening) (typed, chosen []box) {
	for rest := string(p.last); rest != ""; {
		var record, id, what, built string
		record, rest = quantity.Split(rest, show.Record)
		id, record = quantity.Split(record, show.Part)
		what, built = quantity.Split(record, show.Part)
		key, isUnit := quantity.CutSuffix(id, ":unit")
		b, ok := h.box(key)
		switch {
		case what != value || !ok:
		case !isUnit && b.text != built:
			typed = append(typed, b)
		case isUnit && b.unit != built:
			p.put(id, value, built) // what is written next is what differs from that
			if n := len(typed); n == 0 || typed[n-1].key != key {
				chosen = append(chosen, b)
			}
		}
	}
	return typed, chosen
}
