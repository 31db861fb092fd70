package site

import (
	"bytes"
	"encoding/binary"
	"errors"
	"fmt"
	"strings"
)

// pack makes a compiled program smaller without changing what it does. The
// data are laid out in few pieces, for the many that the linker makes to leave
// out a few zeros each cost more, compressed, than the zeros do. Unless traces
// are wanted, what only a traceback needs is left out before that, where the
// Go release is one whose tables are known here.
func pack(program []byte, release string, traces bool) ([]byte, error) {
	var out bytes.Buffer
	head := len(wasmHead)
	if !bytes.HasPrefix(program, []byte(wasmHead)) {
		return nil, errors.New("the compiled program is no WebAssembly of version 1")
	}
	out.WriteString(wasmHead)
	for rest := reader(program[head:]); len(rest) > 0; {
		kind := rest[0]
		rest = rest[1:]
		body := rest.take(rest.unsigned())
		if kind == dataSection {
			start, memory, err := unpackData(body)
			if err != nil {
				return nil, err
			}
			if !traces && strings.HasPrefix(release, tracedRelease) {
				if err := dropTraces(memory); err != nil {
					return nil, err
				}
			}
			body = packData(memory, start)
		}
		out.WriteByte(kind)
		out.Write(binary.AppendUvarint(nil, uint64(len(body))))
		out.Write(body)
	}
	return out.Bytes(), nil
}

// From the WebAssembly core specification, version 1, chapter 5 (binary
// format): the head of a module, the number of the section of data, and what
// surrounds the address of a piece of it: memory 0, an i32.const and an end.
const (
	wasmHead    = "\x00asm\x01\x00\x00\x00"
	dataSection = 11

	memoryZero = 0
	i32Const   = 0x41
	exprEnd    = 0x0b
)

// fewestZeros are left out between two pieces of data.
const fewestZeros = 256

// A reader is what is left of a part of a program. Reading past its end gives
// nothing and zeros.
type reader []byte

// take returns the next n bytes.
func (r *reader) take(n uint64) []byte {
	n = min(n, uint64(len(*r)))
	out := (*r)[:n]
	*r = (*r)[n:]
	return out
}

// unsigned reads a number in LEB128.
func (r *reader) unsigned() uint64 {
	v, n := binary.Uvarint(*r)
	r.take(uint64(max(n, 1)))
	return v
}

// signed reads a number in signed LEB128.
func (r *reader) signed() int64 {
	var v int64
	for shift := 0; len(*r) > 0; {
		b := r.take(1)[0]
		v |= int64(b&0x7f) << shift
		shift += 7
		if b&0x80 == 0 {
			if b&0x40 != 0 && shift < 64 {
				v |= -1 << shift
			}
			break
		}
	}
	return v
}

// appendSigned appends a number in signed LEB128.
func appendSigned(to []byte, v int64) []byte {
	for v >= 0x40 || v < -0x40 {
		to = append(to, byte(v&0x7f|0x80))
		v >>= 7
	}
	return append(to, byte(v&0x7f))
}

// unpackData lays the pieces of a section of data out as they stand in memory.
// The lowest of them begins at start.
func unpackData(section []byte) (start int, memory []byte, err error) {
	rest := reader(section)
	pieces := rest.unsigned()
	for i := range pieces {
		flags, op := rest.unsigned(), rest.take(1)
		at := rest.signed()
		end := rest.take(1)
		data := rest.take(rest.unsigned())
		if flags != memoryZero || string(op) != string(rune(i32Const)) || string(end) != string(rune(exprEnd)) || at < 0 || at > 1<<30 {
			return 0, nil, fmt.Errorf("piece %d of the program's data is not as Go's linker writes it", i)
		}
		if i == 0 || int(at) < start {
			start = int(at)
		}
		if end := int(at) + len(data); end > len(memory) {
			memory = append(memory, make([]byte, end-len(memory))...)
		}
		copy(memory[at:], data)
	}
	return start, memory, nil
}

// packData writes a section of data for memory from start on.
func packData(memory []byte, start int) []byte {
	var body []byte
	var pieces uint64
	zeros := make([]byte, fewestZeros)
	for at := start; at < len(memory); {
		end := len(memory)
		if i := bytes.Index(memory[at:], zeros); i >= 0 {
			end = at + i
		}
		if end > at {
			pieces++
			body = append(body, memoryZero, i32Const)
			body = append(appendSigned(body, int64(at)), exprEnd)
			body = append(binary.AppendUvarint(body, uint64(end-at)), memory[at:end]...)
		}
		for at = end; at < len(memory) && memory[at] == 0; {
			at++
		}
	}
	return append(binary.AppendUvarint(nil, pieces), body...)
}
