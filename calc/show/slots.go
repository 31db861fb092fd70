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
	Rows   = "r" // of a table
)

// The marks between the rows of a table and between the cells of a row.
const (
	Row  = '\x1d'
	Cell = '\x1c'
)

// Put appends the record of a slot.
func Put(b []byte, id, what, value string) []byte {
	w := writer{b: b}
	w.put(id, "", what, value)
	return w.b
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
