package browser

import (
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
)

// While keys are struck, what is out of sight waits: until a pause, until it comes into sight, or until the page is printed. What is in sight
// and the strip never do.
func TestOutOfSightWaits(t *testing.T) {
	p := open(t, phone, still)
	const near, strip, far = "fibre.area", "n:hang.add", "trouble.less-add"
	read := func() [3]string {
		return [3]string{p.raw(near, "value"), eval[string](p, `document.querySelector('[data-slot="n:hang.add"]').textContent`), p.raw(far, "textContent")}
	}
	start := read()
	type1 := func(text string) (now [3]string) {
		p.fill("fibre.diameter", text)
		now = read()
		assert.NotEqual(t, start[0], now[0], "in sight")
		assert.NotEqual(t, start[1], now[1], "the strip")
		assert.Equal(t, start[2], now[2], "out of sight")
		return now
	}
	after := func(wait string, then func()) {
		then()
		p.until(`document.getElementById("` + far + `").textContent !== ` + strconv.Quote(start[2]))
		start = read()
	}
	type1("0.6")
	after("a pause", func() {})
	type1("0.7")
	after("print", p.catchUp)
	type1("0.8")
	after("sight", func() { eval[bool](p, `(`+byID(far)+`.scrollIntoView({behavior: "instant"}), true)`) })
}
