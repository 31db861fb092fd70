package site

import (
	"bytes"
	"fmt"
	"html/template"
	"math"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"twistbench/calc"
	"twistbench/calc/craft"
	"twistbench/calc/quantity"
	"twistbench/calc/show"
	"twistbench/calc/words"
)

// Page renders the page with the start plan worked out, complete before any script runs.
func Page(n Names) ([]byte, error) {
	root, err := Root()
	if err != nil {
		return nil, err
	}
	source, err := os.ReadFile(filepath.Join(root, "web", "page.html"))
	if err != nil {
		return nil, err
	}
	r := newRenderer(&words.EnglishPage)
	t, err := template.New("page.html").Funcs(r.funcs()).Parse(string(source))
	if err != nil {
		return nil, err
	}
	r.template = t
	var b bytes.Buffer
	if err := t.ExecuteTemplate(&b, "page", n); err != nil {
		return nil, err
	}
	return b.Bytes(), nil
}

// renderer fills the page's parts from the slots of the start plan: the same that the page's program would write.
type renderer struct {
	words    *words.Page
	template *template.Template
	state    calc.State
	display  show.Display
	slots    map[string]string // id + what -> value
}

func newRenderer(page *words.Page) *renderer {
	r := &renderer{words: page, slots: map[string]string{}}
	r.display.Lang = page.Language()
	start := calc.Start()
	r.state.Work(&start)
	for record := range strings.SplitSeq(string(r.display.Slots(nil, &r.state)), string(show.Record)) {
		if part := strings.SplitN(record, string(show.Part), 3); len(part) == 3 {
			r.slots[part[0]+" "+part[1]] = part[2]
		}
	}
	return r
}

func (r *renderer) funcs() template.FuncMap {
	return template.FuncMap{
		"tag":      func() string { return r.words.Language().Tag },
		"words":    r.say,
		"slot":     r.slot,
		"number":   r.number,
		"box":      r.box,
		"answer":   r.answer,
		"load":     func(key string) (template.HTML, error) { return r.part("load", struct{ Key string }{key}) },
		"head":     func(key string) (template.HTML, error) { return r.part("head", struct{ Key string }{key}) },
		"caution":  r.caution,
		"notes":    r.notes,
		"polymers": r.polymers,
		"volts":    r.volts,
		"touches":  r.touches,
		"bench":    r.bench,
		"rows":     r.rows,
		"cards":    cards,
		"minutes":  func() []int { return []int{1, 5, 15} },
		"drawing":  func(key string) (template.HTML, error) { return r.drawing("drawing", key) },
		"thread":   func(key string) (template.HTML, error) { return r.drawing("thread", "thread."+key) },
		"shapes":   r.shapes,
		"title":    func(key string) string { return r.slots["draw."+key+":title t"] },
		"desc":     func(key string) string { return r.slots["draw."+key+":desc t"] },
		"seen":     r.seen,
	}
}

func (r *renderer) say(key string) (string, error) {
	if !r.words.Has(key) {
		return "", fmt.Errorf("no words for %q", key)
	}
	return r.words.Say(key), nil
}

// maybe returns the words of a key, empty where there are none.
func (r *renderer) maybe(key string) string {
	if !r.words.Has(key) {
		return ""
	}
	return r.words.Say(key)
}

func (r *renderer) slot(id, what string) (string, error) {
	v, ok := r.slots[id+" "+what]
	if !ok {
		return "", fmt.Errorf("no slot %s %s", id, what)
	}
	return v, nil
}

func (r *renderer) part(name string, data any) (template.HTML, error) {
	var b bytes.Buffer
	err := r.template.ExecuteTemplate(&b, name, data)
	return template.HTML(b.String()), err
}

// number is a number that also stands elsewhere.
func (r *renderer) number(key string) (template.HTML, error) {
	v, err := r.slot("n:"+key, show.Text)
	return template.HTML(`<output data-slot="n:` + template.HTMLEscapeString(key) + `" aria-live="off">` + template.HTMLEscapeString(v) + `</output>`), err
}

type option struct {
	Value, Words string
	Selected     bool
}

// box is what the template needs to know of a field.
type box struct {
	Key, Label, Name, Letter, Hint, Mode, About string
	Value, State, Mark, Says, Other, Sure       string
	Unit, UnitWords, Type                       string
	List, Why, Rows                             bool
	Asked                                       string // what the ± is of
	Units, Options                              []option
	Doubt                                       *box
}

// box renders the box of a field, with the box of its ± in it where doubt names one.
func (r *renderer) box(key string, doubt ...string) (template.HTML, error) {
	b, err := r.field(key)
	if err != nil {
		return "", err
	}
	if len(doubt) == 1 {
		if b.Doubt, err = r.field(doubt[0]); err != nil {
			return "", err
		}
	}
	return r.part("box", b)
}

func (r *renderer) field(key string) (*box, error) {
	id := calc.Find(key)
	if !id.IsField() {
		return nil, fmt.Errorf("no field %q", key)
	}
	f := &calc.Fields[id]
	label, err := r.say("label." + key)
	if err != nil {
		return nil, err
	}
	at := func(suffix, what string) string { return r.slots[key+suffix+" "+what] }
	b := &box{
		Key: key, Label: label, Name: r.maybe("name." + key), Letter: r.maybe("letter." + key), Hint: r.maybe("hint." + key), Type: "text", Mode: "decimal",
		Value: at("", show.Value), State: at(":box", show.State), Mark: at(":mark", show.Text), Says: at(":says", show.Text), Other: at(":other", show.Text), Sure: at(":doubt", show.Text),
		Why: show.HasWorking(id),
	}
	if _, grouped := calc.GroupOf(id); grouped {
		b.Asked = "doubt.need"
		if calc.Gets(id) {
			b.Asked = "doubt.get"
		}
	}
	b.About = key + ":says"
	if b.Hint != "" {
		b.About = key + ":hint " + b.About
	}
	k := r.state.Value(id).Kind()
	for _, w := range f.Words {
		text := r.maybe("option." + key + "." + w)
		if text == "" {
			if text, err = r.say("option." + w); err != nil {
				return nil, err
			}
		}
		b.Options = append(b.Options, option{w, text, w == b.Value})
	}
	switch k.Style {
	case quantity.StyleList:
		b.List, b.Mode = true, "text"
	case quantity.StyleRows:
		b.Rows = true
	case quantity.StyleCount:
		b.Mode = "numeric"
	case quantity.StyleRatio:
		b.Mode = "text"
	case quantity.StyleDay:
		b.Type, b.Mode = "date", ""
	case quantity.StyleClock:
		b.Type, b.Mode = "time", ""
	}
	if f.Unit != "" && !b.List && f.Words == nil {
		b.Unit = at(":unit", show.Value)
		for _, u := range k.Units {
			text, err := r.say("unit." + u.Symbol)
			if err != nil {
				return nil, err
			}
			b.Units = append(b.Units, option{u.Symbol, text, u.Symbol == b.Unit})
			if u.Symbol == b.Unit {
				b.UnitWords = text
			}
		}
	}
	return b, nil
}

func (r *renderer) answer(key string) (template.HTML, error) {
	label, err := r.say("label." + key)
	if err != nil {
		return "", err
	}
	value, err := r.slot(key, show.Text)
	if err != nil {
		return "", err
	}
	whole, name := "", r.maybe("name."+key)
	if label[0] >= 'a' && label[0] <= 'z' { // it goes on from the line above, which who hears it may not have heard
		whole = name
	}
	return r.part("answer", struct{ Key, Label, Name, Whole, Value, State, Sure string }{
		key, label, name, whole, value, r.slots[key+":row s"], r.slots[key+":doubt t"],
	})
}

// notes renders the notes that stand at a number.
func (r *renderer) notes(key string) (template.HTML, error) {
	var all template.HTML
	for _, n := range calc.Notes {
		if n.At.Key() != key {
			continue
		}
		word, err := r.say(levels[n.Level].words)
		if err != nil {
			return "", err
		}
		one, err := r.part("note", struct {
			Key, Level, Word, Text string
			Hidden                 bool
		}{n.Key, levels[n.Level].state, word, r.slots["note."+n.Key+" t"], r.slots["note."+n.Key+":row h"] != ""})
		if err != nil {
			return "", err
		}
		all += one
	}
	if all == "" {
		return "", fmt.Errorf("no note stands at %q", key)
	}
	return all, nil
}

// polymers renders the table of what each polymer stands, in °C, each figure with its source: a number that the line below the table explains,
// or the words for a figure from memory.
func (r *renderer) polymers() (template.HTML, error) {
	var rows []bookRow
	var notes sources
	celsius := quantity.KindTemperature.Default()
	for i := range craft.Heatings[:calc.PolymerOther] {
		h := &craft.Heatings[i]
		one := bookRow{Name: r.maybe("option." + craft.Polymers[i].Key)}
		for _, c := range []struct {
			craft.Span
			from *craft.Source
		}{{h.Melt, h.MeltSource}, {h.Glass, h.GlassSource}, {h.Setting, h.SettingSource}} {
			if math.IsNaN(float64(c.Low)) {
				one.Cells = append(one.Cells, bookCell{Span: quantity.Unknown})
				continue
			}
			span := quantity.Append(nil, float64(c.Low), celsius, 1, r.display.Lang.Mark)
			if c.High != c.Low {
				span = append(span, "\u00a0… "...)
				span = quantity.Append(span, float64(c.High), celsius, 1, r.display.Lang.Mark)
			}
			one.Cells = append(one.Cells, bookCell{string(span), notes.mark(r, c.from)})
		}
		rows = append(rows, one)
	}
	return r.part("polymers", book{rows, notes.lines})
}

// book is a table of book values.
type book struct {
	Rows    []bookRow
	Sources []string
}

type bookRow struct {
	Name  string
	Cells []bookCell
}

type bookCell struct{ Span, Source string }

// sources are what the figures of a table were read in, each with its number, in the order in which they are named.
type sources struct {
	all   []*craft.Source
	lines []string
}

// mark returns what stands beside a figure: the number of what it was read in, or that it is from memory.
func (s *sources) mark(r *renderer, from *craft.Source) string {
	if from.Mark != craft.Read {
		return r.words.Say("heat.memory")
	}
	i := slices.Index(s.all, from)
	if i < 0 {
		i = len(s.all)
		s.all = append(s.all, from)
		s.lines = append(s.lines, fmt.Sprintf("(%d) %s %s", i+1, r.words.Say("heat.read"), from.Cite))
	}
	return fmt.Sprintf("(%d)", i+1)
}

// touches renders the table of how hot a surface may be that is touched for how long, in °C, each row with its source as in polymers.
func (r *renderer) touches() (template.HTML, error) {
	celsius, seconds := quantity.KindTemperature.Default(), quantity.KindTime
	var rows []bookRow
	var notes sources
	for i := range craft.Touches {
		t := &craft.Touches[i]
		unit := seconds.Default()
		switch {
		case t.Time >= 3600:
			unit = seconds.Unit("h")
		case t.Time >= 60:
			unit = seconds.Unit("min")
		}
		one := bookRow{Name: string(quantity.AppendTrimmed(nil, float64(t.Time), unit, 2, r.display.Lang.Mark)) + "\u00a0" + unit.Symbol}
		for _, most := range t.Most {
			if most == 0 {
				one.Cells = append(one.Cells, bookCell{Span: quantity.Unknown})
				continue
			}
			span := string(quantity.Append(nil, float64(most), celsius, 1, r.display.Lang.Mark))
			if t.Under {
				span = "<\u00a0" + span
			}
			one.Cells = append(one.Cells, bookCell{span, notes.mark(r, t.Source)})
		}
		rows = append(rows, one)
	}
	return r.part("touches", book{rows, notes.lines})
}

// volts renders the table of voltages that can hurt, in V, with where each is from.
func (r *renderer) volts() (template.HTML, error) {
	type row struct{ Name, Source, DC, AC string }
	var data struct {
		Rows    []row
		Sources []string
	}
	number := map[*craft.Source]string{}
	for _, v := range craft.Voltages {
		name, err := r.say("volts." + v.Key)
		if err != nil {
			return "", err
		}
		if number[v.Source] == "" {
			number[v.Source] = fmt.Sprintf("(%d)", len(number)+1)
			data.Sources = append(data.Sources, number[v.Source]+" "+r.words.Say("heat.read")+" "+v.Source.Cite)
		}
		volts := func(x quantity.Voltage) string {
			return string(quantity.Append(nil, float64(x), quantity.KindVoltage.Default(), 1, r.display.Lang.Mark))
		}
		data.Rows = append(data.Rows, row{name, number[v.Source], volts(v.DC), volts(v.AC)})
	}
	return r.part("volts", data)
}

var levels = [...]struct{ state, words string }{
	calc.Fine: {"fine", "state.fine"},
	calc.Care: {"care", "state.care"},
	calc.Stop: {"stop", "state.stop"},
}

// bench renders the numbers that a section's bench view shows, and the way to the next one.
func (r *renderer) bench(key, next string, keys ...string) (template.HTML, error) {
	type number struct {
		Key, Label, Value string
		Long              bool // a choice of masses
	}
	data := struct {
		Key, Next string
		Numbers   []number
	}{Key: key, Next: next}
	for _, k := range keys {
		v, err := r.slot("n:"+k, show.Text)
		if err != nil {
			return "", err
		}
		label := r.maybe("bench." + k)
		if label == "" {
			if label, err = r.say("label." + k); err != nil {
				return "", err
			}
		}
		data.Numbers = append(data.Numbers, number{k, label, v, !r.state.Value(calc.Find(k)).Is()})
	}
	return r.part("bench", data)
}

// rows renders the rows of a table.
func (r *renderer) rows(id string) (template.HTML, error) {
	v, err := r.slot(id, show.Rows)
	var b strings.Builder
	for row := range strings.SplitSeq(v, string(rune(show.Row))) {
		b.WriteString("<tr>")
		for cell := range strings.SplitSeq(row, string(rune(show.Cell))) {
			b.WriteString("<td>" + template.HTMLEscapeString(cell) + "</td>")
		}
		b.WriteString("</tr>")
	}
	return template.HTML(b.String()), err
}

// card is a place for one load of a timetable that was started.
type card struct {
	ID string
	N  int
}

func cards() (all []card) {
	for n, id := range show.CardIDs {
		all = append(all, card{id, n})
	}
	return all
}

// seen renders a row of what one may see and what to try then, with what comes before where it can hurt, and links to numbers to look at; some of
// them show the number.
func (r *renderer) seen(key string, keys ...string) (template.HTML, error) {
	type link struct {
		Key, Label string
		Number     template.HTML
	}
	data := struct {
		Key, First string
		At         []link
	}{Key: key, First: r.maybe(key + "-first")}
	for _, k := range keys {
		name, err := r.say("name." + k) // a label may need the group around it
		if err != nil {
			return "", err
		}
		at := link{Key: k, Label: strings.ToUpper(name[:1]) + name[1:]}
		if _, repeated := r.slots["n:"+k+" "+show.Text]; repeated {
			if at.Number, err = r.number(k); err != nil {
				return "", err
			}
		}
		data.At = append(data.At, at)
	}
	return r.part("seen", data)
}

// caution renders what stands in sight of a folded caution: its first sentence, which the bench view shows alone, and what else it says.
func (r *renderer) caution(key string) (template.HTML, error) {
	text, err := r.say(key)
	if err != nil {
		return "", err
	}
	var data struct{ First, Rest string }
	data.First, data.Rest, _ = strings.Cut(text, ". ")
	if data.Rest != "" {
		data.First += "."
	}
	return r.part("caution", data)
}

func (r *renderer) drawing(name, key string) (template.HTML, error) {
	for _, d := range show.Drawings {
		if d.Key == key {
			return r.part(name, d)
		}
	}
	return "", fmt.Errorf("no drawing %q", key)
}

// shapes renders the shapes of a drawing, each with its attributes or its text from the slots.
func (r *renderer) shapes(key string) (template.HTML, error) {
	var b strings.Builder
	for _, d := range show.Drawings {
		if d.Key != key {
			continue
		}
		for _, s := range d.Shapes {
			fmt.Fprintf(&b, `<%s id="%s" class="%s"`, s.Tag, s.ID, s.Class)
			if s.Anchor != "" {
				fmt.Fprintf(&b, ` text-anchor="%s"`, s.Anchor)
			}
			for _, attribute := range [...]string{"d", "x", "y", "transform", "stroke-width"} {
				if v, ok := r.slots[s.ID+" "+attribute]; ok {
					fmt.Fprintf(&b, ` %s="%s"`, attribute, template.HTMLEscapeString(v))
				}
			}
			fmt.Fprintf(&b, `>%s</%s>`, template.HTMLEscapeString(r.slots[s.ID+" t"]), s.Tag)
		}
	}
	return template.HTML(b.String()), nil
}
