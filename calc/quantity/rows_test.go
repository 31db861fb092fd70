package quantity

import (
	"testing"
	"unsafe"

	"github.com/stretchr/testify/assert"
)

// A Ref finds the number of rows where it is, and leaves the text alone.
func TestRows(t *testing.T) {
	v := Rows{N: 3, Text: "1 2\n2 4\n3 6"}
	r := RefTo(KindRows, unsafe.Pointer(&v))
	assert.Equal(t, 3.0, r.SI())
	r.SetSI(NaN)
	assert.NotEqual(t, v.N, v.N)
	assert.Equal(t, "1 2\n2 4\n3 6", v.Text)
	v.SetSI(2)
	assert.Equal(t, 2.0, v.SI())
	assert.Same(t, KindRows, v.Kind())
}
