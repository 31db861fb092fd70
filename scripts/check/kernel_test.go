package main

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestKernelNote(t *testing.T) {
	for _, c := range []struct{ out, note, wrong string }{
		{"260.0 200.0 40648.4 40648.4\n", "260 µs, in plain JavaScript 200 µs: 1.30 times (wanted: 1.3)", ""},
		{"520 200 40648.4 40648.4", "", "2.60 times"},
		{"200 200 40648.4 40649.4", "", "works out"},
		{"200 NaN 1 1", "", "at most"},
		{"200 200 1", "", "printed"},
		{"fast 200 1 1", "", "invalid syntax"},
	} {
		note, err := kernelNote(c.out)
		assert.Equal(t, c.note, note, c.out)
		if c.wrong == "" {
			assert.NoError(t, err)
		} else {
			assert.ErrorContains(t, err, c.wrong)
		}
	}
}
