//go:build js && wasm

package main

// What the page's own script, web/boot.js, does for the core; nothing of it throws. A text comes back in two steps: what asks for it returns its
// length in bytes, less than 0 where there is none, and answer then fills them in. Package syscall/js would be a twenty-fifth of all that the
// page downloads.

//go:wasmimport page answer
func answer(into *byte)

// apply writes records to the page.
//
//go:wasmimport page apply
func apply(slots string)

// kept asks for a text that the device keeps.
//
//go:wasmimport page kept
func kept(key string) (length int32)

// keyAt asks for the key of one of all texts that it keeps.
//
//go:wasmimport page keyAt
func keyAt(i int32) (length int32)

// keep keeps a text; it reports whether it is kept.
//
//go:wasmimport page keep
func keep(key, text string) bool

//go:wasmimport page drop
func drop(key string)

// wait lets paused happen after so many milliseconds without another call of it. Package time would be a tenth of all that the page downloads.
//
//go:wasmimport page wait
func wait(ms int32)

// copyText copies a text; copied or uncopied happens then.
//
//go:wasmimport page copy
func copyText(text string)

// forget takes the link out of the page's address.
//
//go:wasmimport page forget
func forget()

// takeOver lets the version that waits take the place of this one.
//
//go:wasmimport page takeOver
func takeOver()

// elapsed is the time since the page was opened, in milliseconds.
//
//go:wasmimport page elapsed
func elapsed() float64

// received returns the text of so many bytes that is ready.
//
//go:noinline
func received(length int32) (text string, ok bool) {
	if length <= 0 {
		return "", length == 0
	}
	b := make([]byte, length)
	answer(&b[0])
	return string(b), true
}

// happened is called with everything that happens: so many bytes that say what, and which boxes there are.
//
//go:wasmexport happened
func happened(length int32) {
	said, _ := received(length)
	var h happening
	h.read(said)
	core.event(&h)
	core.flush()
}
