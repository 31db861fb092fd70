package show

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

// Changes appends to out the records of next that differ from those of last. With last empty, all of them.
func Changes(out, last, next []byte) []byte {
	for len(next) > 0 {
		i, j := until(next), until(last)
		if string(next[:i]) != string(last[:j]) {
			out = append(out, next[:i]...)
		}
		next, last = next[i:], last[j:]
	}
	return out
}

// until returns how long the slots are until the end of the first.
func until(slots []byte) int {
	for i, c := range slots {
		if c == Record {
			return i + 1
		}
	}
	return len(slots)
}
