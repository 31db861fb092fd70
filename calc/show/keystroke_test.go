package show

import (
	"bytes"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"twistbench/calc"
)

// keyboard is what a page keeps between keystrokes.
type keyboard struct {
	display    *Display
	state      calc.State
	pages      [2]Page
	last, next *Page
	diff       []byte
	away       bool // what is out of sight waits
}

// press types a text into a field and works out which slots change.
func (k *keyboard) press(s *calc.Sheet, id calc.ID, text string) {
	typed := s.Type(id, text, calc.Fields[id].Unit)
	k.state.Begin(&typed)
	if !k.away || !k.display.Away.Driven() {
		k.state.Finish()
	}
	if k.next == nil {
		k.last, k.next = &k.pages[0], &k.pages[1]
	}
	var last *Page
	if k.away {
		last = k.last
	}
	k.display.Page(k.next, last, &k.state)
	k.diff = k.next.Changes(k.diff[:0], k.last)
	k.last, k.next = k.next, k.last
}

type keystroke struct {
	name  string
	plan  string
	id    calc.ID
	texts [2]string
	most  float64 // allocations, the figure that was measured
}

// keystrokes are typed in turn, so that something changes at each.
var keystrokes = []keystroke{
	{"diameter", "", calc.FibreDiameter, [2]string{"0.52", "0.5"}, 5},
	{"stress", "", calc.HangStress, [2]string{"17", "1"}, 6},
	{"second stretch", "", calc.ClampSecondStretch, [2]string{"42", "4"}, 5},
	{"masses", "", calc.HangOwned, [2]string{"20x2, 50x2, 100, 200", "20x2, 50x2, 100, 20"}, 5},
	{"unreadable", "", calc.FibreDiameter, [2]string{"0.5", "0.5x"}, 5},
	{"everything filled in", "fibre.strands=2&fibre.weighed-length=10 m&fibre.weighed-mass=2.45 g&yarn.strands=1&yarn.diameter=0.2 mm&clamp.measured=88 mm&cut.lift=2 kg&cut.lift-stress=5 MPa&clamp.hole-pitch=10 mm", calc.FibreDiameter, [2]string{"0.52", "0.5"}, 5},
}

func BenchmarkKeystroke(b *testing.B) {
	for _, row := range keystrokes {
		b.Run(row.name, func(b *testing.B) { benchmark(b, row, "") })
	}
	b.Run("on a phone", func(b *testing.B) {
		benchmark(b, keystrokes[0], "cut twist coil clamp heat clock wire drive stroke trouble")
	})
}

func benchmark(b *testing.B, row keystroke, away string) {
	_, sheet := work(b, row.plan)
	k := &keyboard{display: english(), away: away != ""}
	k.display.Away = ParseAway(away)
	for i := range 4 {
		k.press(&sheet, row.id, row.texts[i&1])
	}
	b.ReportAllocs()
	b.ResetTimer()
	for i := range b.N {
		k.press(&sheet, row.id, row.texts[i&1])
	}
	b.ReportMetric(float64(bytes.Count(k.diff, []byte{Record})), "slots/op")
}

// A keystroke makes next to no garbage: what was measured and a tenth, and never more than one allocation for each slot that changes.
func TestKeystrokeAllocations(t *testing.T) {
	for _, row := range keystrokes {
		t.Run(row.name, func(t *testing.T) {
			_, sheet := work(t, row.plan)
			k := &keyboard{display: english()}
			i := 0
			least := 1 << 30
			press := func() {
				k.press(&sheet, row.id, row.texts[i&1])
				i++
				if i > 4 {
					least = min(least, bytes.Count(k.diff, []byte{Record}))
				}
			}
			for range 4 {
				press()
			}
			got := testing.AllocsPerRun(50, press)
			require.Greater(t, least, 2, "something changes")
			t.Logf("%g allocations, at least %d slots", got, least)
			assert.LessOrEqual(t, got, float64(least))
			assert.LessOrEqual(t, got, row.most*1.1)
		})
	}
}
