//go:build js && wasm

// Package safejs is github.com/hack-pad/safejs v0.1.0 (Apache License 2.0, see LICENSE), which wraps syscall/js so that whatever the
// browser throws comes back as an error.
//
// Changed here, as that licence asks to be said: messages are put together without package fmt, errors carry no stack trace, and one
// function, not one for each type of result, catches what is thrown. fmt brings os and reflect with it, and they would be a ninth of all
// that the page downloads. go.mod puts this copy in place of
// the published module; delete this folder and that line to go back to it.
package safejs
