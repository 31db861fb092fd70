package calc

import (
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestHistory(t *testing.T) {
	var h History
	_, ok := h.Undo()
	assert.False(t, ok)
	assert.True(t, h.Empty())

	start := Start()
	now := start
	typed := func(id ID, text string) {
		h.Before(&now, id)
		now = now.Type(id, text, Fields[id].Unit)
	}
	undo := func() {
		s, ok := h.Undo()
		require.True(t, ok)
		now = s
	}
	typed(HangStress, "1")
	typed(HangStress, "12")
	typed(HangStress, "12.5") // typing on is one step
	half := now
	typed(HangMass, "3")
	typed(HangMass, "30")
	typed(HangStress, "9") // back in the first box: a step of its own
	assert.Equal(t, "9 MPa", now.Text[HangStress])
	undo()
	assert.Equal(t, "30 g", now.Text[HangMass])
	undo()
	assert.Equal(t, half, now)
	undo()
	assert.Equal(t, start, now)
	assert.True(t, h.Empty())

	typed(HangStress, "1")
	h.Pause()
	first := now
	typed(HangStress, "12")
	undo()
	assert.Equal(t, first, now, "after a pause typing on is a new step")
	typed(HangStress, "13")
	undo()
	assert.Equal(t, first, now, "and so it is after an undo")

	h.Before(&now, None)
	now = now.Cleared()
	h.Before(&now, None)
	now = Start()
	undo()
	assert.Equal(t, first.Cleared(), now, "what is not typing is a step each time")
	undo()
	assert.Equal(t, first, now)
}

func TestHistoryForgetsTheOldest(t *testing.T) {
	var h History
	s := Start()
	for i := range longest + 50 {
		h.Before(&s, None)
		s = s.Type(CutPieces, strconv.Itoa(i+1), "")
	}
	n := 0
	for !h.Empty() {
		s, _ = h.Undo()
		n++
	}
	assert.Equal(t, longest, n)
	assert.Equal(t, "50", s.Text[CutPieces])
}
