package show

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"twistbench/calc"
)

// What is out of sight waits, and nothing else: what is in sight is the newest at each keystroke, and the rest when it comes into sight.
func TestAway(t *testing.T) {
	d := english()
	_, s := work(t, "")
	var st calc.State
	show := func(p, last *Page) map[string]string {
		d.Page(p, last, &st)
		values, _ := slots(t, p.Slots)
		return values
	}
	for _, away := range [][]string{nil, {"fibre"}, {"cut", "twist", "coil", "clamp"}, sections[1:]} {
		d.Away = Away{}
		var pages [2]Page
		typed := s
		st.Work(&typed)
		old := show(&pages[0], nil)
		d.Away = ParseAway(strings.Join(away, " "))
		typed = typed.Type(calc.FibreDiameter, "0.4", "mm").Type(calc.ClampStages, "one", "").Type(calc.HeatSet, "300", "°C")
		st.Work(&typed)
		var whole Page
		all, got := show(&whole, nil), show(&pages[1], &pages[0])
		var waits, differs int
		for part := range numParts {
			want := whole.part(part)
			if d.Away[homes[part]] {
				want = pages[0].part(part)
				waits++
			}
			assert.Equal(t, string(want), string(pages[1].part(part)), "part %d", part)
		}
		for key := range all {
			if got[key] != all[key] {
				assert.Equal(t, old[key], got[key], key)
				differs++
			}
		}
		assert.Equal(t, len(away) > 0, waits > 0 && differs > 0)
		assert.NotEqual(t, old["n:hang.add t"], got["n:hang.add t"], "the strip is always in sight")

		later := Page{}
		d.Away = Away{}
		require.Equal(t, all, show(&later, &pages[1]))
		changed, _ := slots(t, later.Changes(nil, &pages[1]))
		assert.Len(t, changed, differs, "the rest comes then, and nothing twice")
	}
}

// What a keystroke leaves for later shows in no other section than Drive and Stroke, but for two notes in Wire: with the answers of another plan there,
// all that is in sight is right.
func TestBegun(t *testing.T) {
	d := english()
	for _, other := range []string{"wire.per-length=45&wire.supply-voltage=5&drive.curve=0 100%0A", "fibre.polymer=pe&drive.way=water&drive.target=95 °C"} {
		all := plans(t)
		for _, p := range all {
			var st calc.State
			before, _ := calc.ParsePlan(other)
			st.Work(&before)
			s, _ := calc.ParsePlan(p.Text)
			st.Begin(&s)
			var begun, whole Page
			d.Page(&begun, nil, &st)
			st.Finish()
			d.Page(&whole, nil, &st)
			differs := false
			for part := range numParts {
				if home := homes[part]; home == driveSection || home == strokeSection {
					differs = differs || string(begun.part(part)) != string(whole.part(part))
				} else {
					was, _ := slots(t, begun.part(part))
					is, _ := slots(t, whole.part(part))
					for key, value := range is {
						melts := home == wireSection && (strings.HasPrefix(key, "note.wire-melts") || strings.HasPrefix(key, "note.wire-runs"))
						if !melts && !strings.HasPrefix(key, "n:drive.") && !strings.HasPrefix(key, "n:stroke.") { // repeated in their own sections
							assert.Equal(t, value, was[key], "%s: %s", p.Name, key)
						}
					}
					assert.Len(t, was, len(is))
				}
			}
			assert.True(t, differs, p.Name)
			var fresh Page
			st.Work(&s)
			d.Page(&fresh, nil, &st)
			assert.Equal(t, string(fresh.Slots), string(whole.Slots), p.Name)
		}
	}
	assert.Equal(t, "wire", sections[wireSection])
	assert.Equal(t, "drive", sections[driveSection])
	assert.Equal(t, "stroke", sections[strokeSection])
	away := ParseAway("drive wire")
	assert.False(t, away.Driven())
	away = ParseAway("drive stroke")
	assert.True(t, away.Driven(), "where Wire's volts melt it waits for the pause")
}

// A page that was never written differs in everything.
func TestPageChanges(t *testing.T) {
	d := english()
	st, _ := work(t, "")
	var p, none Page
	d.Page(&p, nil, st)
	assert.Equal(t, string(p.Slots), string(p.Changes(nil, &none)))
	assert.Empty(t, p.Changes(nil, &p))
	assert.Equal(t, string(d.Slots([]byte("x"), st)), "x"+string(p.Slots))
}

func TestSections(t *testing.T) {
	assert.Equal(t, Away{}, ParseAway(""))
	assert.Equal(t, Away{}, ParseAway(" page x "), "what is no section is never away")
	want := Away{}
	want[sectionOf("cut")], want[sectionOf("heat")] = true, true
	assert.Equal(t, want, ParseAway("cut x heat"))
	assert.Equal(t, "fibre", Home(calc.YarnDensity))
	assert.Equal(t, "heat", Home(calc.HeatDial))
	assert.Equal(t, "", Home(calc.ClampFirst))
	for i := range Drawings {
		key := strings.TrimPrefix(Drawings[i].Key, "thread.")
		assert.Equal(t, key, sections[homes[drawingsPart+i]])
	}
}
