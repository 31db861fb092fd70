//go:build js && wasm

package main

import (
	"twistbench/calc"
	"twistbench/calc/quantity"
	"twistbench/calc/show"
)

// page is what was last written to the browser's page, and what is to be written next.
type page struct {
	display show.Display
	plan    *show.Page // as it was last written
	next    *show.Page // room for the next
	hurried bool       // what is out of sight waits for a pause in typing
	waits   bool       // some of it does
	said    bool       // the strip holds what was told
	out     []byte
}

// What a record is of, besides attributes; boot.js says more.
const (
	text         = show.Text
	value        = show.Value
	hidden       = show.Hidden
	disabled     = "disabled"
	focus        = "f"
	options      = "o"
	chosenOption = "c" // also while the list has the focus
)

// put adds a record to what is to be written. Inlined in its many callers it would take more of the page's program than all else here.
//
//go:noinline
func (p *page) put(id, what, value string) { p.out = show.Put(p.out, id, what, value) }

// focus moves the focus.
//
//go:noinline
func (p *page) focus(id string) { p.put(id, focus, "") }

// set writes an attribute that is there or not.
//
//go:noinline
func (p *page) set(id, attribute string, there bool) {
	v := ""
	if there {
		v = "1"
	}
	p.put(id, attribute, v)
}

// tell puts a sentence where it is seen and read out.
//
//go:noinline
func (p *page) tell(key, part string) { p.told(p.say(key, part)) }

// told does the same with a sentence that is made: where the status line is out of sight the strip shows it, until the next keystroke or tap.
//
//go:noinline
func (p *page) told(sentence string) {
	p.put("status", text, sentence)
	p.put("said", text, sentence)
	p.said = true
}

// hush takes it out of the strip.
func (p *page) hush() {
	if p.said {
		p.put("said", text, "")
		p.said = false
	}
}

//go:noinline
func (p *page) say(key, part string) string { return p.display.Say(key, part) }

// assume takes it that the page shows the state, as the build made it.
func (p *page) assume(st *calc.State) {
	p.plan, p.next = &show.Page{}, &show.Page{}
	p.display.Page(p.plan, nil, st)
}

// slots adds what the state changes on the page.
func (p *page) slots(st *calc.State) {
	last := p.plan
	if !p.hurried {
		last = nil
		st.Finish()
	}
	p.display.Page(p.next, last, st)
	p.out = p.next.Changes(p.out, p.plan)
	p.plan, p.next, p.waits = p.next, p.plan, p.hurried
}

// flush writes what is to be written.
func (p *page) flush() {
	if len(p.out) > 0 {
		apply(string(p.out))
		p.out = p.out[:0]
	}
}

// happening is an event and the box that it happened in, or at the start every box.
type happening struct {
	kind, id, do, key, value, href, now, away string
	boxes                                     string

	text, unit string // of the box that was found, and the unit beside it
}

// read takes apart what boot.js gathered.
func (h *happening) read(gathered string) {
	var first string
	first, h.boxes = quantity.Split(gathered, show.Record)
	for _, part := range [...]*string{&h.kind, &h.id, &h.do, &h.key, &h.value, &h.href, &h.now, &h.away} {
		*part, first = quantity.Split(first, show.Part)
	}
}

// box finds the box of a key.
//
//go:noinline
func (h *happening) box(key string) bool {
	for rest := h.boxes; rest != ""; {
		var box, id string
		box, rest = quantity.Split(rest, show.Record)
		id, box = quantity.Split(box, show.Part)
		h.text, h.unit = quantity.Split(box, show.Part)
		if id == key {
			return true
		}
	}
	return false
}

// early takes what was typed while the program was loading: the boxes that no longer hold what the build put in them, or, before them, those
// beside which another unit was chosen.
func (a *app) early(h *happening, units bool) {
	var typed string
	for rest := string(a.plan.Slots); rest != ""; {
		var record, box, what string
		record, rest = quantity.Split(rest, show.Record)
		box, record = quantity.Split(record, show.Part)
		what, built := quantity.Split(record, show.Part)
		key, isUnit := quantity.CutSuffix(box, ":unit")
		if what != value || !h.box(key) {
			continue
		}
		id := calc.Find(key)
		take := false
		switch {
		case isUnit && units && h.unit != built:
			a.put(box, value, built) // what is written next is what differs from that
			switch held := a.state.Text(id); {
			case typed == key:
			case h.text == "" || held == "":
				a.showIn(id, h.unit)
			default:
				take = held == a.sheet.Text[id] // and not that of another plan
			}
		case !isUnit && h.text != built:
			typed = key
			take = !units
		}
		if take {
			if !units {
				a.state.Work(&a.sheet)
			}
			a.sheet = a.state.Type(a.sheet, id, h.text, h.unit)
		}
	}
}
