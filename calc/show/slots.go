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

// These few are not inlined: in their hundred callers they would take more of the page's program than all else that shows.

// str appends a string.
//
//go:noinline
func str(b []byte, s string) []byte { return append(b, s...) }

// open begins the record of a slot whose id is made of two pieces; its value is appended behind, and then shut.
//
//go:noinline
func open(b []byte, id, suffix, what string) []byte {
	b = append(b, id...)
	b = append(b, suffix...)
	b = append(b, Part)
	b = append(b, what...)
	return append(b, Part)
}

//go:noinline
func shut(b []byte) []byte { return append(b, Record) }

//go:noinline
func put(b []byte, id, suffix, what, value string) []byte {
	return shut(append(open(b, id, suffix, what), value...))
}

//go:noinline
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
