package site

import (
	"bytes"
	"encoding/binary"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Values and bytes of 624485 and -123456 are the usual examples of the format
// (DWARF 4, appendix C, and WebAssembly core specification 1, section 5.2.2,
// define it); the others follow from its definition.
func TestSigned(t *testing.T) {
	for _, c := range []struct {
		v     int64
		bytes string
	}{
		{0, "\x00"}, {2, "\x02"}, {-2, "\x7e"}, {63, "\x3f"}, {64, "\xc0\x00"}, {-64, "\x40"}, {-65, "\xbf\x7f"},
		{127, "\xff\x00"}, {-127, "\x81\x7f"}, {128, "\x80\x01"}, {-128, "\x80\x7f"}, {624485, "\xe5\x8e\x26"}, {-123456, "\xc0\xbb\x78"},
	} {
		assert.Equal(t, c.bytes, string(appendSigned(nil, c.v)), c.v)
		r := reader(c.bytes + "after")
		assert.Equal(t, c.v, r.signed())
		assert.Equal(t, "after", string(r))
	}
	short := reader("\x80")
	assert.Zero(t, short.signed())
	assert.Empty(t, short)
}

// module is a program with a section of data, one piece after the other.
func module(pieces ...string) []byte {
	body := []byte{byte(len(pieces) / 2)}
	for i := 0; i < len(pieces); i += 2 {
		body = append(body, 0, 0x41)
		body = append(body, pieces[i]...)
		body = append(body, 0x0b, byte(len(pieces[i+1])))
		body = append(body, pieces[i+1]...)
	}
	out := append([]byte(wasmHead), 0, 2, 'x', 'y') // a section that stays as it is
	out = append(out, dataSection)
	out = append(binary.AppendUvarint(out, uint64(len(body))), body...)
	return append(out, 0, 1, 'z')
}

func TestPackJoinsPieces(t *testing.T) {
	// At 8, at 12 after two zeros, and at 0x400, too far to join.
	packed, err := pack(module("\x08", "ab", "\x0c", "c", "\x80\x08", "far"), "", true)
	require.NoError(t, err)
	assert.Equal(t, string(module("\x08", "ab\x00\x00c", "\x80\x08", "far")), string(packed))

	again, err := pack(packed, "", true)
	require.NoError(t, err)
	assert.Equal(t, packed, again)

	_, err = pack([]byte("\x7fELF"), "", true)
	assert.ErrorContains(t, err, "no WebAssembly")
	packed, err = pack(module("\x0c", "c", "\x08", "ab"), "", true)
	require.NoError(t, err)
	assert.Equal(t, string(module("\x08", "ab\x00\x00c")), string(packed), "pieces in any order")
	_, err = pack(module("\x08", "ab", "\x7f", "below"), "", true)
	assert.ErrorContains(t, err, "piece 1", "an address under 0")
	_, err = pack(module("\x08", "ab"), tracedRelease+".1", false)
	assert.ErrorIs(t, err, errTables, "no tables of functions")
	_, err = pack(module("\x08", "ab"), "go1.99", false)
	assert.NoError(t, err, "of another release the tables are left as they are")
}

// stress does what needs the tables that stay: it collects memory under deep
// stacks that grow, in several goroutines, recovers from a panic, and panics.
const stress = `package main

import "runtime"

type tree struct {
	left, right *tree
	text        []byte
}

func grow(n int) *tree {
	if n == 0 {
		return &tree{text: make([]byte, 90)}
	}
	return &tree{grow(n - 1), grow(n - 1), make([]byte, n)}
}

func deep(n int, t *tree) int {
	if n == 0 {
		runtime.GC()
		return len(t.text)
	}
	var room [64]byte
	room[n%64] = 1
	return deep(n-1, t) + int(room[n%64])
}

func caught(i int) (out int) {
	defer func() {
		if recover() != nil {
			out = 7
		}
	}()
	var none []int
	return none[i]
}

func main() {
	sum := 0
	for range 8 {
		t := grow(11)
		sum += deep(4000, t) + caught(3)
		done := make(chan int)
		go func() { done <- deep(300, t) }()
		sum += <-done + len(t.left.right.text)
	}
	println("sum", sum)
	var none map[string]int
	none["x"] = sum
}
`

// A packed program does what it did: it prints the same, stops with the same
// panic, and is much smaller.
func TestPackedProgramRuns(t *testing.T) {
	root, err := Root()
	require.NoError(t, err)
	source := filepath.Join(t.TempDir(), "main.go")
	require.NoError(t, os.WriteFile(source, []byte(stress), 0o644))
	plain, err := compile(root, source)
	require.NoError(t, err)
	release, err := goEnv("GOVERSION")
	require.NoError(t, err)
	require.True(t, strings.HasPrefix(release, tracedRelease), "this is %s: read how it writes its tables, see traces.go, and what may go", release)
	goroot, err := goEnv("GOROOT")
	require.NoError(t, err)
	run := func(program []byte) string {
		file := filepath.Join(t.TempDir(), "main.wasm")
		require.NoError(t, os.WriteFile(file, program, 0o644))
		node := exec.Command("node", "--stack-size=8000", filepath.Join(goroot, "lib", "wasm", "wasm_exec_node.js"), file)
		node.Env = []string{"PATH=" + os.Getenv("PATH"), "HOME=" + os.Getenv("HOME")}
		out, err := node.CombinedOutput()
		var stopped *exec.ExitError
		require.ErrorAs(t, err, &stopped, "Node runs it: %s", out)
		require.Equal(t, 2, stopped.ExitCode(), "%s", out)
		return string(out)
	}
	said := run(plain)
	require.Contains(t, said, "main.main()")
	told, _, _ := strings.Cut(said, "\ngoroutine")
	require.Contains(t, told, "panic: assignment to entry in nil map")

	traced, err := pack(plain, release, true)
	require.NoError(t, err)
	assert.Equal(t, said, run(traced), "with traces, line for line")
	bare, err := pack(plain, release, false)
	require.NoError(t, err)
	got := run(bare)
	now, _, _ := strings.Cut(got, "\ngoroutine")
	assert.Equal(t, told, now)
	assert.NotContains(t, got, "main.main")

	a, b, c := len(squeeze(plain)), len(squeeze(traced)), len(squeeze(bare))
	assert.Less(t, float64(b), 0.97*float64(a))
	assert.Less(t, float64(c), 0.80*float64(a))
	assert.False(t, bytes.Contains(bare, []byte("main.deep")))
}

// What breaks a table is an error, never a program that fails later.
func TestTracesRefuseTornTables(t *testing.T) {
	root, err := Root()
	require.NoError(t, err)
	plain, err := compileEmpty(root)
	require.NoError(t, err)
	var memory []byte
	for rest := reader(plain[len(wasmHead):]); len(rest) > 0; {
		kind := rest.take(1)[0]
		body := rest.take(rest.unsigned())
		if kind == dataSection {
			_, memory, err = unpackData(body)
			require.NoError(t, err)
		}
	}
	head := bytes.Index(memory, []byte(pcMagic))
	require.Positive(t, head)
	rows := head + int(binary.LittleEndian.Uint64(memory[head+pcRows:]))
	row := rows + int(binary.LittleEndian.Uint32(memory[rows+8*5+4:]))
	names := uint64(head) + binary.LittleEndian.Uint64(memory[head+pcNames:])
	module := bytes.Index(memory, binary.LittleEndian.AppendUint64(binary.LittleEndian.AppendUint64(nil, uint64(head)), names))
	require.Positive(t, module)
	for name, tear := range map[string]func(m []byte){
		"no head":          func(m []byte) { m[head] = 0 },
		"names after rows": func(m []byte) { m[head+pcNames+3] = 1 },
		"no function":      func(m []byte) { binary.LittleEndian.PutUint64(m[head+pcFunctions:], 0) },
		"no record":        func(m []byte) { m[head+pcNames]++ },
		"facts far away":   func(m []byte) { m[module+moduleFacts+3] = 1 },
		"row far away":     func(m []byte) { m[rows+8*5+7] = 0x40 },
		"many tables":      func(m []byte) { m[row+rowPlaces] = 200 },
		"many facts":       func(m []byte) { m[row+rowFacts] = 200 },
		"stack far away":   func(m []byte) { m[row+rowStack+3] = 1 },
		"name far away":    func(m []byte) { m[row+rowName+3] = 1 },
	} {
		torn := bytes.Clone(memory)
		tear(torn)
		assert.ErrorIs(t, dropTraces(torn), errTables, name)
	}
	assert.NoError(t, dropTraces(bytes.Clone(memory)))
}
