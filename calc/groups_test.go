package calc

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// is reports whether a number has a working, or else a choice of them.
func is(w, choice *Working) bool { return w != nil != (choice != nil) }

// moves reports whether a function works out a number (-1 says that it does not) where all that a plan holds is small.
func moves(id ID, f func(p *Plan, id ID), from ID) bool {
	var p Plan
	for id := range places {
		if at := places[id].at; at >= inPlan && at < inOut && KindOf(ID(id)) != nil {
			p.Value(ID(id)).SetSI(0.01)
		}
	}
	p.Value(id).SetSI(-1)
	f(&p, from)
	return p.Value(id).SI() != -1
}

func TestGroupOf(t *testing.T) {
	var p Plan
	members := map[ID]GroupID{}
	waits := []ID{TwistBias, TwistTurns, CoilCount} // their way back is not the group's alone
	for g := range Groups {
		group := &Groups[g]
		assert.Contains(t, []int{1, 3}, len(group.Facts))
		for f := range group.Facts {
			fact := &group.Facts[f]
			hub := false
			assert.Equal(t, len(group.Facts) > 1, is(fact.Third, choiceIn(&p, fact.Hub)), fact.Hub.Key())
			for i := range fact.Members {
				m := &fact.Members[i]
				_, twice := members[m.ID]
				assert.False(t, twice, "%s is in two groups", m.ID.Key())
				members[m.ID] = GroupID(g)
				assert.Equal(t, f, group.Fact(m.ID))
				if m.ID == fact.Hub {
					hub = true
					assert.True(t, !moves(fact.Hub, toHub, m.ID) && !moves(m.ID, fromHub, m.ID) && m.In == nil && m.Out == nil, "the hub %s needs no way", m.ID.Key())
				} else {
					assert.True(t, moves(fact.Hub, toHub, m.ID) && is(m.In, choiceIn(&p, m.ID)) && is(m.Out, choice(&p, m.ID)), m.ID.Key())
					assert.Equal(t, in(waits, m.ID), !moves(m.ID, fromHub, m.ID), m.ID.Key())
				}
			}
			assert.True(t, hub, "the hub %s is a member", fact.Hub.Key())
		}
		assert.Equal(t, -1, group.Fact(None))
	}
	for id := None; id < NumIDs; id++ {
		g, ok := GroupOf(id)
		want, member := members[id]
		assert.Equal(t, member, ok, "%d", id)
		if member {
			assert.Equal(t, want, g, id.Key())
		} else {
			assert.Equal(t, NumGroups, g)
		}
	}
}

// exact writes a value in a field's own unit so that it is read as the same value again, or as near as the unit's factor allows.
func exact(id ID, si float64) string {
	x := KindOf(id).Unit(Fields[id].Unit).FromSI(si)
	return strconv.FormatFloat(x, 'f', -1, 64)
}

// looseMembers are the members of the lengths that a measurement has cut loose from the coil as planned: they follow the piece at
// hand, so that typing one is a wish for the next coil and moves what is planned.
func looseMembers(p *Plan) []ID {
	switch {
	case known(p.Measured):
		return []ID{ClampFirst, ClampSecond, ClampFinished}
	case p.SecondBase == BaseRelaxed && known(p.Relaxed):
		return []ID{ClampSecond, ClampFinished}
	}
	return nil
}

// Both ways of every group: give one member, then give another the value that it got: nothing moves.
func TestGroupsBothWays(t *testing.T) {
	pairs := 0
	for _, plan := range plans(t) {
		t.Run(plan.Name, func(t *testing.T) {
			start := work(t, plan.Text)
			loose := looseMembers(&start.Plan)
			for g := range Groups {
				for _, a := range membersOf(GroupID(g)) {
					if !possible(start, a.ID) || in(loose, a.ID) {
						continue
					}
					sa := start.sheet.Type(a.ID, exact(a.ID, start.SI(a.ID)), Fields[a.ID].Unit)
					var first State
					first.Work(&sa)
					require.True(t, first.Plan.Given[g].Has(a.ID))
					for _, b := range membersOf(GroupID(g)) {
						if b.ID == a.ID || !possible(&first, b.ID) || in(loose, b.ID) {
							continue
						}
						sb := sa.Type(b.ID, exact(b.ID, first.SI(b.ID)), Fields[b.ID].Unit)
						if sa.looped() || sb.looped() {
							continue // see TestTypeKeepsTurns
						}
						if sb.Text[CutRatio] != sa.Text[CutRatio] && known(start.Plan.Measured) {
							continue // the ratio of this piece takes the place of the planned one
						}
						pairs++
						alike := Groups[g].Fact(a.ID) == Groups[g].Fact(b.ID)
						assert.Equal(t, alike, sb.Text[a.ID] == "", "%s, %s", a.ID.Key(), b.ID.Key())
						var second State
						second.Work(&sb)
						require.Empty(t, second.Notices[b.ID].Reason)
						for id := None + 1; id < NumIDs; id++ {
							if GroupID(g) == SupplyGroup && (a.ID == WireCurrent || b.ID == WireCurrent) && known(start.Plan.Wire.Coefficient) && strings.HasPrefix(id.Key(), "drive.") {
								continue // what is kept while the ohms change is another: see TestKeptCurrent
							}
							same(t, first.SI(id), second.SI(id), "%s moved as %s took over from %s", id.Key(), b.ID.Key(), a.ID.Key())
						}
					}
				}
			}
		})
	}
	assert.Greater(t, pairs, 600)
}

// A measured coil: typing a gap that the piece already has is a wish for a coil, and no gap of the piece moves.
func TestMeasuredGapsStay(t *testing.T) {
	for _, plan := range plans(t) {
		start := work(t, plan.Text)
		if !known(start.Plan.Measured) {
			continue
		}
		piece := []ID{ClampFirst, ClampSecond, ClampFinished, ClampFirstReal, ClampSecondReal, ClampTravel, ClampFinishedTravel}
		for _, id := range piece[:3] {
			if !known(start.SI(id)) {
				continue
			}
			s := start.sheet.Type(id, exact(id, start.SI(id)), "mm")
			var st State
			st.Work(&s)
			for _, other := range piece {
				same(t, start.SI(other), st.SI(other), "%s moved as %s was typed in %s", other.Key(), id.Key(), plan.Name)
			}
		}
		s := start.sheet.Type(ClampMeasured, "80 mm", "mm")
		var st State
		st.Work(&s)
		for _, done := range []ID{CutPrecursor, CutLength, CutTotal, ClampCoiled} {
			if done == ClampCoiled && !start.Plan.Given[ShapeGroup].Has(CutRatio) {
				continue // the shape of this piece says what is planned
			}
			same(t, start.SI(done), st.SI(done), "%s was done already in %s", done.Key(), plan.Name)
		}
	}
}

// possible reports whether a number is known and could be typed.
func possible(st *State, id ID) bool {
	x := st.SI(id)
	return x >= Fields[id].Low && x <= Fields[id].High
}

// membersOf returns the members of all facts of a group.
func membersOf(g GroupID) (all []Member) {
	for _, f := range Groups[g].Facts {
		all = append(all, f.Members...)
	}
	return all
}

func same(t *testing.T, want, got float64, format string, args ...any) {
	t.Helper()
	switch {
	case math.IsNaN(want):
		assert.True(t, math.IsNaN(got), append([]any{format}, args...)...)
	case want == 0:
		assert.InDelta(t, want, got, 1e-15, append([]any{format}, args...)...)
	case len(args) > 0 && strings.HasPrefix(fmt.Sprint(args[0]), "stroke."): // a small difference of two lengths
		assert.InEpsilon(t, want, got, 1e-10, append([]any{format}, args...)...)
	default:
		assert.InEpsilon(t, want, got, 1e-12, append([]any{format}, args...)...)
	}
}

func in(ids []ID, id ID) bool {
	for _, i := range ids {
		if i == id {
			return true
		}
	}
	return false
}

// Typing into every field of a group leaves as many givens as are free, of different facts.
func TestGivens(t *testing.T) {
	s := Start()
	for id := None + 1; id < NumFields; id++ {
		g, ok := GroupOf(id)
		if !ok {
			continue
		}
		before := s.Given[g]
		s = s.Type(id, "1", Fields[id].Unit)
		assert.True(t, s.Given[g].Has(id))
		typed := 0
		for _, m := range membersOf(g) {
			if s.Text[m.ID] != "" {
				typed++
				assert.True(t, s.Given[g].Has(m.ID))
			}
		}
		assert.Equal(t, Groups[g].Free(), max(typed, 1), "%v", before)
	}
}

// A cleared given stays the given, and its group is unknown.
func TestClearedGiven(t *testing.T) {
	for _, plan := range plans(t) {
		start := work(t, plan.Text)
		for g := range Groups {
			given := start.Plan.Given[g][0]
			if given == None || Groups[g].Free() > 1 {
				continue
			}
			if GroupID(g) == SupplyGroup && start.Plan.Wire.limits() != nil {
				continue // see TestSupplyVoltageOfItsOwn
			}
			s := start.sheet.Type(given, "", "")
			assert.Equal(t, Givens{given}, s.Given[g])
			var st State
			st.Work(&s)
			for _, m := range membersOf(GroupID(g)) {
				if in(looseMembers(&start.Plan), m.ID) {
					continue
				}
				assert.True(t, math.IsNaN(st.SI(m.ID)), "%s in %s", m.ID.Key(), plan.Name)
				needs := given
				if m.ID == ClampSecond && st.Plan.Stages == StagesOne {
					needs = ClampStages
				}
				assert.Equal(t, needs, st.Needs(m.ID), "%s in %s", m.ID.Key(), plan.Name)
			}
		}
	}
}
