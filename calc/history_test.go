package calc

import (
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Emptying a box gives its place back to what had it before, and what was typed there is there again.
func TestRefill(t *testing.T) {
	type typed struct {
		id   ID
		text string
	}
	for _, c := range []struct {
		name  string
		typed []typed
		want  string // what the sheet is like: the same as after these, typed at once
	}{
		{"a count", []typed{{CoilCount, "1"}, {CoilCount, "140"}, {CoilCount, ""}}, ""},
		{"a pitch", []typed{{CoilPitch, "0.6"}, {CoilPitch, ""}}, ""},
		{"a count in place of a pitch", []typed{{CoilPitch, "0.6"}, {CoilCount, "140"}, {CoilCount, ""}}, "coil.pitch=0.6&coil.outside=1.30 mm&cut.precursor=408"}, // what gave way gives way first,
		{"and then the pitch", []typed{{CoilPitch, "0.6"}, {CoilCount, "140"}, {CoilCount, ""}, {CoilPitch, ""}}, ""},
		{"a count, and an index since", []typed{{CoilCount, "140"}, {CoilIndex, "1.4"}, {CoilCount, ""}}, "cut.ratio=4.8&coil.index=1.4"},
		{"a count, and what was cut typed since", []typed{{CoilCount, "140"}, {CutPrecursor, "410"}, {CoilCount, ""}}, "cut.precursor=410"},
		{"a count, and the load since", []typed{{CoilCount, "140"}, {HangMass, "300"}, {CoilCount, ""}}, "hang.mass=300"},
		{"a mass", []typed{{HangMass, "300"}, {HangMass, ""}}, ""},
		{"masses in turn", []typed{{HangMass, "300"}, {HangAdd, "200"}, {HangAdd, ""}}, "hang.mass=300"},
		{"what was the given from the start stays it, empty", []typed{{HangStress, ""}}, "hang.stress="},
		{"and what takes its place gives it back, empty", []typed{{HangStress, ""}, {HangMass, "300"}, {HangMass, ""}}, "hang.stress="},
		{"a worked-out box emptied", []typed{{CoilCount, ""}, {HangMass, ""}, {ClampFirst, ""}}, ""},
		{"turns, which keep the precursor", []typed{{CoilPitch, "0.6"}, {TwistTurns, "170"}, {TwistTurns, ""}}, "coil.outside=1.30 mm&coil.pitch=0.6&cut.precursor=408"},
		{"a length, and turns counted since", []typed{{CoilPitch, "0.6"}, {CutPrecursor, "410"}, {TwistTurns, "170"}, {CutPrecursor, ""}}, "coil.outside=1.30 mm&coil.pitch=0.6&cut.precursor=&twist.turns=170"}, // which nothing can take the place of
		{"a box of no group", []typed{{CutTail, "50"}, {CutTail, ""}}, "cut.tail="},
	} {
		t.Run(c.name, func(t *testing.T) {
			var h History
			var st State
			now := Start()
			for _, k := range c.typed {
				st.Work(&now)
				next := h.Refill(st.Type(now, k.id, k.text, Fields[k.id].Unit), k.id)
				h.Before(&now, k.id)
				now = next
				oneGiven(t, &now)
			}
			want := Start()
			if c.want != "" {
				want = sheetOf(t, c.want)
			}
			assert.Equal(t, PlanText(&want), PlanText(&now))
			link := Link(&now)
			got, faults := ParseLink(link)
			assert.Empty(t, faults)
			assert.Equal(t, now, got)
			st.Work(&now)
			if !strings.HasSuffix(c.want, "stress=") && !strings.Contains(c.want, "precursor=&") {
				assert.True(t, known(st.SI(CutPrecursor)) && known(st.SI(CoilTurns)), "no dashes")
			}
		})
	}

	// Without a memory of it, as after a reload, the empty box stays the given.
	s := sheetOf(t, "coil.outside=1.3 mm&coil.count=140&cut.precursor=408")
	var st State
	var h History
	st.Work(&s)
	s = h.Refill(st.Type(s, CoilCount, "", "coils"), CoilCount)
	assert.Equal(t, Givens{CoilOutside, CoilCount}, s.Given[ShapeGroup])
	assert.Empty(t, s.Text[CoilCount])
}

// A wish that no longer counts is remembered, as it was typed, until it counts again or the precursor is typed.
func TestWish(t *testing.T) {
	type typed struct {
		id   ID
		text string
	}
	finished := typed{ClampFinished, "100,5"}
	for _, c := range []struct {
		name  string
		typed []typed // None is an undo
		id    ID
		text  string
	}{
		{"nothing typed", nil, None, ""},
		{"a wish that counts", []typed{finished}, None, ""},
		{"a measured coil", []typed{finished, {ClampMeasured, "8"}, {ClampMeasured, "88"}}, ClampFinished, "100,5 mm"},
		{"the start plan's own", []typed{{ClampMeasured, "88"}}, ClampCoiled, "85 mm"},
		{"a count", []typed{finished, {CoilCount, "140"}}, ClampFinished, "100,5 mm"},
		{"turns counted", []typed{finished, {CoilPitch, "0.6"}, {TwistTurns, "170"}}, ClampFinished, "100,5 mm"},
		{"and other things since", []typed{finished, {ClampMeasured, "88"}, {HangMass, "300"}, {CutTail, "50"}}, ClampFinished, "100,5 mm"},
		{"a precursor typed by hand", []typed{finished, {CutPrecursor, "4"}, {CutPrecursor, "410"}}, None, ""},
		{"and then measured", []typed{finished, {CutPrecursor, "410"}, {ClampMeasured, "88"}}, None, ""},
		{"measured, and then a precursor typed by hand", []typed{finished, {ClampMeasured, "88"}, {CutPrecursor, "410"}}, None, ""},
		{"another wish since", []typed{finished, {ClampMeasured, "88"}, {ClampFirst, "100"}}, None, ""},
		{"the same wish again", []typed{finished, {ClampMeasured, "88"}, finished}, None, ""},
		{"undone", []typed{finished, {ClampMeasured, "88"}, {None, ""}}, None, ""},
		{"the precursor emptied", []typed{finished, {ClampMeasured, "88"}, {CutPrecursor, ""}}, None, ""},
		{"no wish at all", []typed{{ClampCoiled, ""}, {ClampMeasured, "88"}}, None, ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			var h History
			var st State
			now := Start()
			for _, k := range c.typed {
				if k.id == None {
					now, _ = h.Undo()
					continue
				}
				st.Work(&now)
				next := h.Refill(st.Type(now, k.id, k.text, Fields[k.id].Unit), k.id)
				h.Before(&now, k.id)
				now = next
			}
			id, text := h.Wish(&now)
			assert.Equal(t, c.id, id)
			assert.Equal(t, c.text, text)
			if id != None {
				assert.False(t, now.Given[LengthGroup].Has(id))
				for !now.Given[LengthGroup].Has(id) { // undo goes back to it
					var ok bool
					now, ok = h.Undo()
					require.True(t, ok)
				}
				assert.Equal(t, text, now.Text[id])
			}
		})
	}

	// Cleared, or a plan opened in its place: there is nothing to wish for.
	var h History
	var st State
	now := Start()
	st.Work(&now)
	next := st.Type(now, ClampMeasured, "88", "mm")
	h.Before(&now, ClampMeasured)
	h.Before(&next, None)
	now = next.Cleared()
	id, _ := h.Wish(&now)
	assert.Equal(t, None, id)
}

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
