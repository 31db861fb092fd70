//go:build js && wasm

package safejs

import (
	"strings"
	"testing"
)

// What is thrown comes back as an error, with its message, and the program goes on.
func TestThrown(t *testing.T) {
	object, err := Global().Get("Object")
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		name string
		call func() error
		want string
	}{
		{"bad argument", func() error { _, err := Global().Call("Array", -1); return err }, "Invalid array length"},
		{"property of undefined", func() error { _, err := Undefined().Get("x"); return err }, "syscall/js"},
		{"not a function", func() error { _, err := Global().Call("nothingOfThatName"); return err }, "not a function"},
		{"no string", func() error { _, err := Null().Int(); return err }, "Value.Int"},
		{"instanceof no function", func() error { _, err := Global().InstanceOf(Null()); return err }, "null"},
		{"not convertible", func() error { _, err := ValueOf(struct{}{}); return err }, "invalid value"},
	} {
		if err := c.call(); err == nil || !strings.Contains(err.Error(), c.want) {
			t.Errorf("%s: %v, want an error that says %q", c.name, err, c.want)
		}
	}
	if is, err := object.InstanceOf(object); err != nil || !is {
		t.Errorf("Object is an instance of Object: %v, %v", is, err)
	}
}

// A value goes to JavaScript and back.
func TestRoundTrip(t *testing.T) {
	v, err := ValueOf(map[string]any{"text": "0,45 mm", "list": []any{1, 2.5, true, nil}})
	if err != nil {
		t.Fatal(err)
	}
	text, err := v.Get("text")
	if err != nil {
		t.Fatal(err)
	}
	if s, err := text.String(); err != nil || s != "0,45 mm" {
		t.Errorf("got %q, %v", s, err)
	}
	list, err := v.Get("list")
	if err != nil {
		t.Fatal(err)
	}
	if n, err := list.Length(); err != nil || n != 4 {
		t.Errorf("got length %d, %v", n, err)
	}
}
