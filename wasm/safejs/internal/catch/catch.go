//go:build js && wasm

// Package catch runs functions and returns panic values as errors instead.
package catch

import (
	"errors"
	"syscall/js"
)

// Try runs fn. If fn panicked, the panic value is returned as an error.
func Try(fn func()) (err error) {
	defer recoverErr(&err)
	fn()
	return
}

func recoverErr(err *error) {
	value := recover()
	valueErr := recoverValueToError(value)
	if valueErr != nil {
		*err = valueErr
	}
}

func recoverValueToError(value any) error {
	if value == nil {
		return nil
	}
	switch value := value.(type) {
	case error:
		return value
	case js.Value:
		return js.Error{Value: value}
	case string:
		return errors.New(value)
	default:
		return errors.New("a panic that is no error, string or JavaScript value")
	}
}
