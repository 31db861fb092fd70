package site

import (
	"bytes"
	"encoding/binary"
	"errors"
)

// tracedRelease is the Go release whose tables dropTraces knows: package
// runtime, files symtab.go (pcHeader, moduledata) and runtime2.go (_func).
const tracedRelease = "go1.26"

// The head of the table of functions (runtime.pcHeader), and where numbers
// stand in it, eight bytes each.
const (
	pcMagic     = "\xf1\xff\xff\xff\x00\x00\x01\x08" // Go 1.20 on; instructions of one byte, addresses of eight
	pcFunctions = 8                                  // how many functions
	pcNames     = 32                                 // from here on where its parts begin: names, then
	pcFiles     = 40                                 // units of compilation and their files,
	pcPlaces    = 56                                 // tables of places in the code,
	pcRows      = 64                                 // rows of functions
)

// Where numbers stand in the row of a function (runtime._func), four bytes
// each but for the last.
const (
	rowName      = 4
	rowStack     = 16 // its table of stack depths
	rowFile      = 20 // its tables of files and lines
	rowLine      = 24
	rowPlaces    = 28 // how many further tables of places it has
	rowUnit      = 32
	rowStartLine = 36
	rowFacts     = 43 // how many facts follow those, in one byte
	rowEnd       = 44
)

// Of the further tables of places, that of stack maps is needed when memory is
// collected, and what follows the known ones is kept. The others say where a
// goroutine may be interrupted, which in WebAssembly none is, and what was
// inlined and which arguments are alive where a traceback is printed.
var placesNeeded = [...]bool{false, true, false, false}

// Facts about a function that only tracebacks ask for: what was inlined in it, its
// arguments, and which are alive.
var factsForTraces = [...]int{factInlined, 5, 6}

const (
	factInlined = 3
	noFact      = 1<<32 - 1

	tableInlined = 2
	inlinedSize  = 16 // bytes of what was inlined once (runtime.inlinedCall)

	moduleFacts = 40 * 8 // in runtime.moduledata, where facts begin
	moduleEnd   = 41 * 8 // and where all of these tables end
)

var errTables = errors.New("the program's tables of functions are not as this Go release should write them: see scripts/internal/site/traces.go")

// dropTraces puts zeros in the place of all that only a traceback needs: names
// of functions, files and lines, and what was inlined where. A panic still
// says what it is about, and code that asks for its own name or line gets none.
func dropTraces(memory []byte) error {
	head := bytes.Index(memory, []byte(pcMagic))
	if head < 0 || head+pcRows+8 > len(memory) {
		return errTables
	}
	number := func(at int) int { return int(binary.LittleEndian.Uint64(memory[at:])) }
	part := func(at int) int { return head + number(head+at) }
	functions, names, files, places, rows := number(head+pcFunctions), part(pcNames), part(pcFiles), part(pcPlaces), part(pcRows)
	if !(head < names && names < files && files < places && places < rows && functions > 0 && rows+8*functions < len(memory)) {
		return errTables
	}
	// The module's own record begins with the addresses of this head and of the names.
	record := binary.LittleEndian.AppendUint64(binary.LittleEndian.AppendUint64(nil, uint64(head)), uint64(names))
	module := bytes.Index(memory, record)
	if module < 0 || module+moduleEnd+8 > len(memory) {
		return errTables
	}
	facts, end := number(module+moduleFacts), number(module+moduleEnd)
	if !(rows < facts && facts < end && end <= len(memory)) {
		return errTables
	}

	keep := make([]bool, rows-places)
	for i := range functions {
		row := rows + int(binary.LittleEndian.Uint32(memory[rows+8*i+4:]))
		if row+rowEnd > len(memory) {
			return errTables
		}
		at := func(offset int) []byte { return memory[row+offset : row+offset+4] }
		get := func(offset int) int { return int(binary.LittleEndian.Uint32(at(offset))) }
		tables, known := get(rowPlaces), int(memory[row+rowFacts])
		fact := func(n int) int { return rowEnd + 4*(tables+n) }
		if tables > 16 || known > 16 || row+fact(known) > len(memory) || get(rowName) >= files-names {
			return errTables
		}
		for _, offset := range []int{rowName, rowFile, rowLine, rowUnit, rowStartLine} {
			clear(at(offset))
		}
		needed := []int{get(rowStack)}
		for n := range tables {
			if offset := rowEnd + 4*n; n >= len(placesNeeded) || placesNeeded[n] {
				needed = append(needed, get(offset))
			} else {
				if table := get(offset); n == tableInlined && table > 0 && known > factInlined && get(fact(factInlined)) != noFact {
					if table >= len(keep) {
						return errTables
					}
					_, most := placeTable(memory[places+table : rows])
					from := facts + get(fact(factInlined))
					if from+inlinedSize*(most+1) > end {
						return errTables
					}
					clear(memory[from : from+inlinedSize*(most+1)])
				}
				clear(at(offset))
			}
		}
		for _, n := range factsForTraces {
			if n < known {
				binary.LittleEndian.PutUint32(at(fact(n)), noFact)
			}
		}
		for _, table := range needed {
			if table >= len(keep) {
				return errTables
			}
			if table > 0 { // 0 is no table
				size, _ := placeTable(memory[places+table : rows])
				for j := range size {
					keep[table+j] = true
				}
			}
		}
	}
	for i, kept := range keep {
		if !kept {
			memory[places+i] = 0
		}
	}
	clear(memory[names:places])
	return nil
}

// placeTable reads a table of places, which is a row of steps: how much a value
// changes, from -1 on, and for how many instructions it stays; a change of zero, not the
// first, ends it. It returns the table's bytes and the largest value.
func placeTable(table reader) (size, most int) {
	whole := len(table)
	for value, first := -1, true; len(table) > 0; first = false {
		change := table.unsigned()
		if change == 0 && !first {
			break
		}
		value += int(change>>1) ^ -int(change&1)
		most = max(most, value)
		table.unsigned()
	}
	return whole - len(table), most
}
