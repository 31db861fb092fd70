package show

import (
	"strconv"

	"twistbench/calc"
	"twistbench/calc/craft"
	"twistbench/calc/quantity"
	"twistbench/calc/timetable"
	"twistbench/calc/words"
)

// writer writes what a display shows of a state: each of its methods appends to b. They are many, short and call one another, and handing
// the buffer on from one to the next would take more of the page's program than what they write. For the same reason those that are
// called in many places are not inlined.
type writer struct {
	*Display
	st *calc.State
	b  []byte
}

// str appends a string.
//
//go:noinline
func (w *writer) str(s string) { w.b = append(w.b, s...) }

//go:noinline
func (w *writer) char(c byte) { w.b = append(w.b, c) }

//go:noinline
func (w *writer) int(n int) { w.b = strconv.AppendInt(w.b, int64(n), 10) }

// open begins the record of a slot whose id is made of two pieces; its value is appended behind, and then shut.
//
//go:noinline
func (w *writer) open(id, suffix, what string) {
	w.str(id)
	w.str(suffix)
	w.char(Part)
	w.str(what)
	w.char(Part)
}

// text begins the record of a slot that is a text.
//
//go:noinline
func (w *writer) text(id, suffix string) { w.open(id, suffix, Text) }

//go:noinline
func (w *writer) shut() { w.char(Record) }

//go:noinline
func (w *writer) put(id, suffix, what, value string) {
	w.open(id, suffix, what)
	w.str(value)
	w.shut()
}

//go:noinline
func (w *writer) hidden(id, suffix string, hide bool) {
	value := ""
	if hide {
		value = "1"
	}
	w.put(id, suffix, Hidden, value)
}

// digits appends a value x, in SI, in a unit, to so many digits, without the unit.
//
//go:noinline
func (w *writer) digits(x float64, u *quantity.Unit, digits int) {
	w.b = quantity.Append(w.b, x, u, digits, w.Lang.Mark)
}

// trimmed does the same without zeros behind the last digit.
//
//go:noinline
func (w *writer) trimmed(x float64, u *quantity.Unit, digits int) {
	w.b = quantity.AppendTrimmed(w.b, x, u, digits, w.Lang.Mark)
}

// unit appends a unit behind a number.
//
//go:noinline
func (w *writer) unit(u *quantity.Unit) {
	if u != nil && u.Symbol != "" {
		w.char(' ')
		w.str(u.Symbol)
	}
}

// measure appends a value x, in SI, in a unit and with it, without zeros behind the last digit.
//
//go:noinline
func (w *writer) measure(x float64, u *quantity.Unit, digits int) {
	w.trimmed(x, u, digits)
	w.unit(u)
}

// cut takes off what was appended since the buffer was n long, and returns it.
func (w *writer) cut(n int) string {
	s := string(w.b[n:])
	w.b = w.b[:n]
	return s
}

// about is what a sentence may name besides numbers of the plan.
type about struct {
	text        string
	limit, high float64
	other       calc.ID
}

// words appends the words of a key.
//
//go:noinline
func (w *writer) words(key string) { w.about(key, calc.None, about{}) }

// wordsOf appends the words of the key that is kind and key together, which name nothing.
//
//go:noinline
func (w *writer) wordsOf(kind, key string) { w.str(w.Lang.SayOf(kind, key)) }

// about appends the words of a key, said of a number. An empty key says nothing.
//
//go:noinline
func (w *writer) about(key string, id calc.ID, a about) {
	if key != "" {
		w.sentence(w.Lang.Say(key), id, a)
	}
}

// What a sentence may name besides numbers of the plan: package words says what each is.
const (
	saysName = iota
	saysPart
	saysLimit
	saysOther
	saysOwn
	saysUnits
	saysMasses
	saysNear

	saysStart // of the plan's timetable
	saysEnd
	saysLasts

	saysMissed // of the card's run
	saysEnds
	saysNext
	saysOn
	saysCount
	saysPlan
)

var sayable = [...]string{
	saysName:   "name",
	saysPart:   "part",
	saysLimit:  "limit",
	saysOther:  "other",
	saysOwn:    "own",
	saysUnits:  "units",
	saysMasses: "masses",
	saysNear:   "near",
	saysStart:  "start",
	saysEnd:    "end",
	saysLasts:  "lasts",
	saysMissed: "missed",
	saysEnds:   "ends",
	saysNext:   "next",
	saysOn:     "on",
	saysCount:  "count",
	saysPlan:   "plan",
}

// sentence appends a sentence, said of a number, with what it names.
//
//go:noinline
func (w *writer) sentence(s string, id calc.ID, a about) {
	for s != "" {
		var before, name string
		before, name, s = words.Next(s)
		w.str(before)
		clock, card := &w.clock, &w.card
		switch quantity.Place(sayable[:], name) {
		case saysName:
			w.name(id)
		case saysPart:
			w.str(a.text)
		case saysLimit:
			w.at(id, a.limit)
		case saysOwn:
			w.own(id, a.limit)
		case saysUnits:
			w.units(id)
		case saysMasses:
			w.masses(id)
		case saysNear:
			w.nearest()
		case saysStart:
			w.when(clock.start, w.Now, true)
		case saysEnd:
			w.when(clock.start+timetable.Instant(clock.total), w.Now, true)
		case saysLasts:
			w.hm(clock.total)
		case saysMissed:
			w.which(listMissed)
		case saysEnds:
			w.when(card.at, w.Now, false)
		case saysNext:
			w.which(listNext)
		case saysOn:
			w.which(listOn)
		case saysCount:
			w.int(card.count)
		case saysPlan:
			w.str(card.run.Name)
		case saysOther:
			switch {
			case a.other != calc.None:
				w.name(a.other)
			case a.text != "":
				w.str(a.text)
			default:
				w.at(id, a.high)
			}
		default:
			if number := calc.Find(name); number != calc.None {
				w.number(number)
			} else {
				w.str(name)
			}
		}
	}
}

// name appends what a number is called.
//
//go:noinline
func (w *writer) name(id calc.ID) {
	if id != calc.None {
		w.wordsOf("name.", id.Key())
	}
}

// units appends the units or the words that a field takes.
func (w *writer) units(id calc.ID) {
	n := len(w.b)
	for _, word := range calc.Fields[id].Words {
		w.next(n, ", ")
		w.str(word)
	}
	if len(w.b) > n {
		return
	}
	for _, u := range w.kind(id).Units {
		if u.Symbol != "" {
			w.next(n, ", ")
			w.str(u.Symbol)
		}
	}
}

// next appends what stands before the next item of a list that begins at n; nothing before the first.
//
//go:noinline
func (w *writer) next(n int, between string) {
	if len(w.b) > n {
		w.str(between)
	}
}

// masses appends the masses of a list, each in the unit of number id.
func (w *writer) masses(id calc.ID) {
	u := w.linear(id)
	n := len(w.b)
	for i := range w.st.Set {
		it := &w.st.Set[i]
		w.next(n, ", ")
		w.measure(it.Each, u, 6)
		if it.Count > 1 {
			w.str(" × ")
			w.int(it.Count)
		}
	}
}

// nearest appends the polymer whose density is nearest to the one that the fibre's weight implies.
func (w *writer) nearest() {
	if i := craft.Nearest(w.st.Out.Implied[0]); i >= 0 {
		w.wordsOf("word.", craft.Polymers[i].Key)
	}
}

// own appends a value in the unit that its number has outside its box.
func (w *writer) own(id calc.ID, x float64) {
	w.measure(x, w.shownIn(id), max(id.Digits(), 4))
}
