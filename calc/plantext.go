package calc

import (
	"twistbench/calc/quantity"
)

// A plan text is key=text&key=text. A link is the same with the texts percent-encoded, beginning v=1. An absent key takes its start
// text; a key with nothing behind it is empty. Of a group only the members named count, its start givens go.

// Fault is a problem of one entry of a plan text.
type Fault struct {
	_ [0]func() // faults are not compared

	Key string
	Problem
	With ID // the field that says the same thing, for SaidTwice
}

// ParsePlan reads a plan text as it is typed on a command line, where nothing is percent-encoded. It returns a fault for every entry
// that names no field, names one twice, or gives a group more than it needs; what else is in the text is in the sheet, also where a
// text can't be read: Read tells.
func ParsePlan(text string) (s Sheet, faults []Fault) {
	faults = s.parse(text, false)
	return s, faults
}

// ParseLink reads the part of a link behind the #.
func ParseLink(link string) (s Sheet, faults []Fault) {
	faults = s.parse(link, true)
	return s, faults
}

func (s *Sheet) parse(text string, encoded bool) (faults []Fault) {
	*s = Start()
	var named [NumFields]bool
	for text != "" {
		var key, value string
		key, text = quantity.Split(text, '&')
		key, value = quantity.Split(key, '=')
		if encoded {
			key, value = unescape(key), unescape(value)
		}
		key = quantity.Trim(Clean(key))
		if key == "" || key == "v" {
			continue
		}
		f := Fault{Key: key}
		switch id := Find(key); {
		case !id.IsField():
			f.Reason, f.Part = UnknownKey, key
		case named[id]:
			f.Reason, f.With = SaidTwice, id
		default:
			value = Attach(id, value, Fields[id].Unit)
			f.With, f.Reason = s.said(id, &named)
			switch {
			case f.With == None:
			case value == "":
				continue
			case s.Text[f.With] == "":
				g, _ := GroupOf(id)
				s.Given[g].let(f.With)
				f.Reason = ""
			}
			if f.Reason == "" {
				named[id] = true
				s.give(id)
				s.Text[id] = value
			}
		}
		if f.Reason != "" {
			faults = append(faults, f)
		}
	}
	return faults
}

// said returns the field already named that leaves no room for id in its group, and why; None where there is room.
func (s *Sheet) said(id ID, named *[NumFields]bool) (ID, Reason) {
	g, ok := GroupOf(id)
	if !ok {
		return None, ""
	}
	group, n := &Groups[g], 0
	for _, old := range s.Given[g] {
		if old == None || !named[old] {
			continue
		}
		if group.Fact(old) == group.Fact(id) {
			return old, SaidTwice
		}
		n++
	}
	if n == group.Free() {
		return s.Given[g][0], SaidAlready
	}
	return None, ""
}

// Kept writes a plan as it is kept on a device: its name and its link.
func Kept(name string, s *Sheet) string {
	w := planWriter{encoded: true}
	w.str("name=")
	w.text(name)
	w.str("&v=1")
	return w.plan(s)
}

// ParseKept reads what Kept wrote.
func ParseKept(text string) (name string, s Sheet, faults []Fault) {
	head, rest := quantity.Split(text, '&')
	name, _ = quantity.CutPrefix(head, "name=")
	faults = s.parse(rest, true)
	return Clean(unescape(name)), s, faults
}

// PlanText writes the sheet as a plan text: every text that is not empty, and every one that is empty but would not start so.
func PlanText(s *Sheet) string {
	w := planWriter{}
	return w.plan(s)
}

// Link writes the sheet as the part of a link behind the #.
func Link(s *Sheet) string {
	w := planWriter{encoded: true}
	w.str("v=1")
	return w.plan(s)
}

// planWriter appends to a plan text or link.
type planWriter struct {
	b       []byte
	encoded bool
}

//go:noinline
func (w *planWriter) char(c byte) { w.b = append(w.b, c) }

//go:noinline
func (w *planWriter) str(s string) { w.b = append(w.b, s...) }

func (w *planWriter) plan(s *Sheet) string {
	var written [NumGroups]int // givens of each group
	for at := None + 1; at < NumFields; at++ {
		id := at
		g, grouped := GroupOf(id)
		switch {
		case grouped && !s.Given[g].Has(id):
			continue
		case grouped: // oldest first, that they are read in the same order
			id = s.Given[g][written[g]]
			written[g]++
		case s.Text[id] == "" && Fields[id].Start == "":
			continue
		}
		if len(w.b) > 0 {
			w.char('&')
		}
		w.str(Fields[id].Key)
		w.char('=')
		w.text(s.Text[id])
	}
	return string(w.b)
}

// text percent-encodes, in a link, all but the unreserved characters (RFC 3986, 2.3).
func (w *planWriter) text(s string) {
	const hex = "0123456789ABCDEF"
	if !w.encoded {
		w.str(s)
		return
	}
	for i := range len(s) {
		switch c := s[i]; {
		case 'a' <= c|0x20 && c|0x20 <= 'z', '0' <= c && c <= '9', c == '-', c == '.', c == '_', c == '~':
			w.char(c)
		default:
			w.char('%')
			w.char(hex[c>>4])
			w.char(hex[c&15])
		}
	}
}

// unescape undoes text. A % with no two hexadecimal digits behind it stands for itself.
func unescape(s string) string {
	if quantity.Index(s, '%') < 0 {
		return s
	}
	b := make([]byte, 0, len(s))
	for i := 0; i < len(s); i++ {
		c := s[i]
		if c == '%' && i+2 < len(s) {
			if hi, lo := digit(s[i+1]), digit(s[i+2]); hi < 16 && lo < 16 {
				c = hi<<4 | lo
				i += 2
			}
		}
		b = append(b, c)
	}
	return string(b)
}

//go:noinline
func digit(c byte) byte {
	switch l := c | 0x20; {
	case '0' <= c && c <= '9':
		return c - '0'
	case 'a' <= l && l <= 'f':
		return l - 'a' + 10
	}
	return 16
}
