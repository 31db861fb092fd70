package calc

import (
	"twistbench/calc/quantity"
)

// A plan text is key=text&key=text. A link is the same with the texts percent-encoded, beginning v=1. An absent key takes its start
// text; a key with nothing behind it is empty. Of a group only the members named count, its start givens go.

// Fault is a problem of one entry of a plan text.
type Fault struct {
	Key string
	Problem
	With ID // the field that says the same thing, for SaidTwice
}

// ParsePlan reads a plan text as it is typed on a command line, where nothing is percent-encoded. It returns a fault for every entry
// that names no field, names one twice, or gives a group more than it needs; what else is in the text is in the sheet, also where a
// text can't be read: Read tells.
func ParsePlan(text string) (Sheet, []Fault) { return parsePlan(text, false) }

// ParseLink reads the part of a link behind the #.
func ParseLink(link string) (Sheet, []Fault) { return parsePlan(link, true) }

func parsePlan(text string, encoded bool) (Sheet, []Fault) {
	s := Start()
	var faults []Fault
	var named [NumFields]bool
	for text != "" {
		entry, rest := quantity.Split(text, '&')
		text = rest
		key, value := quantity.Split(entry, '=')
		if encoded {
			key, value = unescape(key), unescape(value)
		}
		key = quantity.Trim(Clean(key))
		if key == "" || key == "v" {
			continue
		}
		id := Find(key)
		if !id.IsField() {
			faults = append(faults, Fault{Key: key, Problem: Problem{Reason: UnknownKey, Part: key}})
			continue
		}
		if named[id] {
			faults = append(faults, Fault{Key: key, Problem: Problem{Reason: SaidTwice}, With: id})
			continue
		}
		value = Attach(id, value, Fields[id].Unit)
		if other, reason := s.said(id, &named); other != None && (value == "" || s.Text[other] != "") {
			if value != "" {
				faults = append(faults, Fault{Key: key, Problem: Problem{Reason: reason}, With: other})
			}
			continue
		} else if other != None {
			g, _ := GroupOf(id)
			s.Given[g].let(other)
		}
		named[id] = true
		s.give(id)
		s.Text[id] = value
	}
	return s, faults
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
	b := append(appendEscaped([]byte("name="), name), "&v=1"...)
	return string(appendPlan(b, s, true))
}

// ParseKept reads what Kept wrote.
func ParseKept(text string) (name string, s Sheet, faults []Fault) {
	head, rest := quantity.Split(text, '&')
	name, _ = quantity.CutPrefix(head, "name=")
	s, faults = ParseLink(rest)
	return Clean(unescape(name)), s, faults
}

// PlanText writes the sheet as a plan text: every text that is not empty, and every one that is empty but would not start so.
func PlanText(s *Sheet) string { return string(appendPlan(nil, s, false)) }

// Link writes the sheet as the part of a link behind the #.
func Link(s *Sheet) string { return string(appendPlan([]byte("v=1"), s, true)) }

func appendPlan(b []byte, s *Sheet, encoded bool) []byte {
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
		text := s.Text[id]
		if len(b) > 0 {
			b = append(b, '&')
		}
		b = append(b, Fields[id].Key...)
		b = append(b, '=')
		if encoded {
			b = appendEscaped(b, text)
		} else {
			b = append(b, text...)
		}
	}
	return b
}

// appendEscaped percent-encodes all but the unreserved characters (RFC 3986, 2.3).
func appendEscaped(b []byte, s string) []byte {
	const hex = "0123456789ABCDEF"
	for i := 0; i < len(s); i++ {
		switch c := s[i]; {
		case 'a' <= c && c <= 'z', 'A' <= c && c <= 'Z', '0' <= c && c <= '9', c == '-', c == '.', c == '_', c == '~':
			b = append(b, c)
		default:
			b = append(b, '%', hex[c>>4], hex[c&15])
		}
	}
	return b
}

// unescape undoes appendEscaped. A % with no two hexadecimal digits behind it stands for itself.
func unescape(s string) string {
	if quantity.Index(s, '%') < 0 {
		return s
	}
	b := make([]byte, 0, len(s))
	for i := 0; i < len(s); i++ {
		if s[i] == '%' && i+2 < len(s) {
			if hi, lo := digit(s[i+1]), digit(s[i+2]); hi < 16 && lo < 16 {
				b = append(b, hi<<4|lo)
				i += 2
				continue
			}
		}
		b = append(b, s[i])
	}
	return string(b)
}

func digit(c byte) byte {
	switch {
	case '0' <= c && c <= '9':
		return c - '0'
	case 'a' <= c && c <= 'f':
		return c - 'a' + 10
	case 'A' <= c && c <= 'F':
		return c - 'A' + 10
	}
	return 16
}
