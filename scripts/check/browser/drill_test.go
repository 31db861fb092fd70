package browser

import (
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// A second person taps at every 20 turns: the mean time between taps is typed, and the speed that it makes can be used.
func TestDrillByTaps(t *testing.T) {
	p := open(t, phone)
	p.unfold()
	const tap = `button[data-do=tap]`
	p.press(tap)
	p.expect("status", says("say.tap", ""))
	assert.Equal(t, says("say.tap", ""), p.said(), "the hand is far from the status line")
	assert.Empty(t, p.value("twist.timed"))
	began := eval[float64](p, `performance.now()`)
	eval[bool](p, `new Promise((done) => setTimeout(() => done(true), 700))`)
	p.press(tap)
	assert.Empty(t, p.said(), "until the next tap")
	once, err := strconv.ParseFloat(p.value("twist.timed"), 64)
	require.NoError(t, err)
	most := (eval[float64](p, `performance.now()`) - began) / 1000
	assert.GreaterOrEqual(t, once, 0.69)
	assert.LessOrEqual(t, once, most+1) // the first tap was before
	eval[bool](p, `new Promise((done) => setTimeout(() => done(true), 300))`)
	p.press(tap)
	mean, err := strconv.ParseFloat(p.value("twist.timed"), 64)
	require.NoError(t, err)
	assert.Greater(t, mean, once/2, "the mean of two intervals")

	speed := p.text("twist.timed-speed")
	p.press(`button[data-do=speed]`)
	p.expect("twist.speed", speed)
	assert.Equal(t, "0", p.refused("twist.speed", "0 rpm"))
}

// refused types what can't be, and returns the text as it stays.
func (p *page) refused(key, text string) string {
	p.fill(key, text)
	p.leave()
	assert.Equal(p.t, "stop", p.state(key+":box"))
	assert.NotEmpty(p.t, p.text(key+":says"))
	return p.value(key)
}

// A button takes over a number that is known, and nothing else: not the estimate in place of a count that can't be read, nor a dash.
func TestNothingToTakeOver(t *testing.T) {
	p := open(t, phone)
	p.unfold()
	p.fill("twist.counted", "19o")
	for _, row := range [...]struct{ do, key string }{{"count", "twist.turns"}, {"speed", "twist.speed"}, {"trial", "cut.ratio"}} {
		was := p.shows(row.key)
		p.press(`button[data-do=` + row.do + `]`)
		assert.Equal(t, was, p.shows(row.key), row.do)
	}
	p.fill("twist.counted", "190")
	p.press(`button[data-do=count]`)
	p.expect("twist.turns", "190 turns")
}
