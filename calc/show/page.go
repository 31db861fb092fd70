package show

import (
	"twistbench/calc"
	"twistbench/calc/quantity"
)

// Page is every slot of a plan, always the same ones in the same order, and where each part of them ends.
type Page struct {
	Slots []byte
	ends  [numParts]int
}

// The parts of a page: the numbers that stand in several places, then each number, each note, the timetable, and each drawing.
const (
	repeatedPart  = 0 // in the place of calc.None
	notesPart     = int(calc.NumIDs)
	timetablePart = notesPart + len(calc.Notes)
	drawingsPart  = timetablePart + 1
	numParts      = drawingsPart + len(Drawings)
)

// write appends the slots of a part.
func (w *writer) write(part int) {
	switch {
	case part == repeatedPart:
		w.repeated()
	case part < int(calc.NumFields):
		w.box(calc.ID(part))
	case part < notesPart:
		w.answer(calc.ID(part))
	case part < timetablePart:
		w.note(&calc.Notes[part-notesPart])
	case part == timetablePart:
		w.timetable()
	default:
		w.drawing(part - drawingsPart)
	}
}

// page makes p what the display shows of the plan. The parts of sections that are away are taken over from last, if there is one.
func (w *writer) page(p, last *Page) {
	w.plan()
	w.b = p.Slots[:0]
	for i := range p.ends {
		if last != nil && w.Away[homes[i]] {
			w.b = append(w.b, last.part(i)...)
		} else {
			w.write(i)
		}
		p.ends[i] = len(w.b)
	}
	p.Slots = w.b
}

// part returns the slots of a part; none on a page that was never written.
func (p *Page) part(i int) []byte {
	from := 0
	if i > 0 {
		from = p.ends[i-1]
	}
	return p.Slots[from:p.ends[i]]
}

// Changes appends to out the records that differ from those of last. With last never written, all of them.
func (p *Page) Changes(out []byte, last *Page) []byte {
	for i := range p.ends {
		if is, was := p.part(i), last.part(i); string(is) != string(was) {
			out = Changes(out, was, is)
		}
	}
	return out
}

// The sections of the page by the names of their elements, in its order; "" for what stands in several.
var sections = [...]string{"", "fibre", "hang", "cut", "twist", "coil", "clamp", "heat", "clock", "wire", "drive", "stroke", "trouble"}

// Where some stand in sections.
const (
	heatSection   = 7
	wireSection   = 9
	driveSection  = 10
	strokeSection = 11
)

// Away says which sections are out of sight, so that what is in them can wait.
type Away [len(sections)]bool

// ParseAway reads the names of the sections that are out of sight, with spaces between them; other names say nothing.
func ParseAway(names string) (a Away) {
	for names != "" {
		var name string
		name, names = quantity.Split(names, ' ')
		a[sectionOf(name)] = true
	}
	a[0] = false
	return a
}

// Driven reports whether all that shows how hot the muscle gets and how far it moves is out of sight: what calc.State.Finish works out. Where
// Wire's volts melt it is said in Wire too, and there waits for the same pause in typing.
func (a *Away) Driven() bool { return a[driveSection] && a[strokeSection] }

// homes are the sections in which the parts stand.
var homes = func() (at [numParts]uint8) {
	for id := calc.None + 1; id < calc.NumIDs; id++ {
		at[id] = sectionOf(id.Key())
	}
	for _, id := range [...]calc.ID{calc.FibreBundle, calc.ClampCoiled, calc.ClampFirst, calc.ClampSecond, calc.ClampFinished, calc.CoilTurns} {
		at[id] = 0 // it stands in another section than the one it is named after
	}
	for i := range calc.Notes {
		at[notesPart+i] = at[calc.Notes[i].At]
	}
	at[timetablePart] = sectionOf("clock")
	for i := range Drawings {
		key, _ := quantity.CutPrefix(Drawings[i].Key, "thread.")
		at[drawingsPart+i] = sectionOf(key)
	}
	return at
}()

// sectionOf returns the section that a key is named after, 0 where there is none. A yarn's is the fibre's.
//
//go:noinline
func sectionOf(key string) uint8 {
	if i := quantity.Index(key, '.'); i >= 0 {
		key = key[:i]
	}
	if key == "yarn" {
		key = "fibre"
	}
	return uint8(max(quantity.Place(sections[:], key), 0))
}

// Home returns the name of the section in which a number and its notes stand, "" where they stand in several.
func Home(id calc.ID) string { return sections[homes[id]] }
