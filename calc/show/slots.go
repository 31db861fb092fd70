package show

import "bytes"

// The marks between the parts of a record and between records.
const (
	Part   = '\x1f'
	Record = '\x1e'
)

// What a slot is of.
const (
	Text   = "t"
	Value  = "v"
	State  = "s"
	Hidden = "h"
)

// open begins the record of a slot whose id is made of two pieces; its value is appended behind, and then close.
func open(b []byte, id, suffix, what string) []byte {
	b = append(b, id...)
	b = append(b, suffix...)
	b = append(b, Part)
	b = append(b, what...)
	return append(b, Part)
}

func shut(b []byte) []byte { return append(b, Record) }

func put(b []byte, id, suffix, what, value string) []byte {
	return shut(append(open(b, id, suffix, what), value...))
}

func hidden(b []byte, id, suffix string, hide bool) []byte {
	if hide {
		return put(b, id, suffix, Hidden, "1")
	}
	return put(b, id, suffix, Hidden, "")
}

// Changes appends to out the records of next that differ from those of last, slot by slot. With last empty, all of them.
func Changes(out, last, next []byte) []byte {
	for len(next) > 0 {
		i := bytes.IndexByte(next, Record) + 1
		j := bytes.IndexByte(last, Record) + 1
		if !bytes.Equal(next[:i], last[:j]) {
			out = append(out, next[:i]...)
		}
		next, last = next[i:], last[j:]
	}
	return out
}
