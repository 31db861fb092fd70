package calc

import (
	"math/rand/v2"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestAttach(t *testing.T) {
	for _, row := range []struct {
		id               ID
		text, unit, want string
	}{
		{FibreDiameter, "0.52", "mm", "0.52 mm"},
		{FibreDiameter, " 0,52 ", "mm", "0,52 mm"},
		{FibreDiameter, "22", "thou", "22 thou"},
		{FibreDiameter, "0.022 in", "mm", "0.022 in"},
		{FibreDiameter, ".022in", "mm", ".022in"},
		{FibreDiameter, "0.52", "kg", "0.52 mm"}, // no unit of a length: the box's own
		{FibreDiameter, "0.52", "", "0.52 mm"},
		{FibreDiameter, "", "mm", ""},
		{FibreDiameter, "   ", "mm", ""},
		{FibreDiameter, "abc", "mm", "abc"},
		{FibreDiameter, "0.5.2", "mm", "0.5.2"},
		{CutTail, "1 1/4", "in", "1 1/4 in"},
		{FibreLinearDensity, "470x2", "dtex", "470x2 dtex"},
		{FibreLinearDensity, "470/2", "dtex", "470/2 dtex"},
		{FibreLinearDensity, "470 f34", "dtex", "dtex 470 f34"},
		{ClampFirstStretch, "18", "%", "18 %"},
		{ClampFirstStretch, "0", "%", "0 %"},
		{ClampRetained, "85", "%", "85 %"},
		{ClampRetained, "0.85", "%", "0.85"}, // the share itself: with a % it would be another
		{CutRatio, "4.8", "", "4.8"},
		{CutRatioDoubt, "0.2", "", "0.2"},
		{CutPieces, "5", "", "5"},
		{HangOwned, "20x2; 50", "g", "20x2; 50"},
		{FibrePolymer, "nylon-6", "", "nylon-6"},
	} {
		got := Attach(row.id, row.text, row.unit)
		assert.Equal(t, row.want, got, "%q", row.text)
		assert.Equal(t, got, Attach(row.id, got, row.unit), "again")
	}
}

func TestDetach(t *testing.T) {
	for _, row := range []struct {
		id                ID
		text, shown, unit string
	}{
		{FibreDiameter, "0.52 mm", "0.52", "mm"},
		{FibreDiameter, "22 thou", "22", "thou"},
		{FibreDiameter, "0.022in", "0.022", "in"}, // the unit beside the box says it
		{FibreDiameter, "0.022 inch", "0.022", "in"},
		{FibreDiameter, "1/50\"", "1/50", "in"},
		{HeatSet, "60C", "60", "°C"},
		{HeatSet, "140 deg F", "140", "°F"},
		{WireGauge, "AWG 24", "24", "AWG"},
		{WireGauge, "#4/0", "4/0", "AWG"},
		{FibreDiameter, "", "", "mm"},
		{FibreDiameter, "abc", "abc", "mm"},
		{HangMass, "1 lb 4 oz", "1 lb 4 oz", "oz"}, // without oz it would be another number
		{FibreLinearDensity, "470x2 dtex", "470x2", "dtex"},
		{FibreLinearDensity, "470 dtex x2", "470 dtex x2", "dtex"},
		{FibreLinearDensity, "dtex 470 f34", "470 f34", "dtex"},
		{ClampFirstStretch, "18 %", "18", "%"},
		{ClampRetained, "85 %", "85", "%"},
		{ClampRetained, "0.85", "0.85", "%"},
		{ClampRetained, "0.5 %", "0.5 %", "%"}, // 0.5 alone would be a half
		{CutRatio, "25 %", "25 %", ""},
		{CutPieces, "5", "5", ""},
		{HangOwned, "20x2; 50", "20x2; 50", "g"},
		{HeatHold1, "1:30", "1:30", "min"},
		{TwistTimed, "1:07", "1:07", "s"},
		{FibrePolymer, "nylon-6", "nylon-6", ""},
	} {
		shown, unit := Detach(row.id, row.text)
		assert.Equal(t, row.shown, shown, "%q", row.text)
		assert.Equal(t, row.unit, unit, "%q", row.text)
		assertSame(t, row.id, row.text, Attach(row.id, shown, unit))
	}
}

// assertSame fails where two texts do not say the same number in the same unit; those that say none must be the same.
func assertSame(t *testing.T, id ID, text, again string) {
	t.Helper()
	if isList(KindOf(id)) || Fields[id].Words != nil {
		require.Equal(t, text, again)
		return
	}
	r, err := KindOf(id).Parse(text, Fields[id].Unit)
	if err != nil {
		require.Equal(t, text, again)
		return
	}
	got, err := KindOf(id).Parse(again, Fields[id].Unit)
	require.NoError(t, err, again)
	require.Equal(t, r.SI, got.SI, again)
	require.Equal(t, r.Unit, got.Unit, again)
}

// texts are what people and others type, into any box.
var texts = []string{"", "0", "1", "5", "0.52", "0,52", ".022", "22 thou", "1 1/4 in", "1¼\"", "85 mm", "17", "17 MPa", "368 g", "1 lb 4 oz", "470 dtex x2",
	"40/2 Ne", "4.8", "4:1", "1:4", "25 %", "18 %", "0.85", "20x2, 50x2, 100", "6,2x11", "two", "one", "relaxed", "nylon-6", "polyester", "all", "abc",
	"NaN", "inf", "-5", "1e999", "1e-999", "0.5.2", "a=b", "%41", "%", "50%", "ä ö", "\u202f", "1 234", "1.234", "1,234", "+", "?", "#", "x2", "‰", "1:30", "1:75", "1:30:15", "0:30 min", "60C", "AWG 24"}

// reach makes a sheet by typing this and that.
func reach(r *rand.Rand) Sheet {
	s := Start()
	units := []string{"", "mm", "in", "g", "oz", "MPa", "dtex", "%", "kg/m³"}
	for range r.IntN(12) {
		id := ID(1 + r.IntN(int(NumFields)-1))
		s = s.Type(id, texts[r.IntN(len(texts))], units[r.IntN(len(units))])
		if r.IntN(20) == 0 {
			s = s.Cleared()
		}
	}
	return s
}

// Whatever was typed, it survives the way through a plan text, a link and what is kept on the device.
func TestRoundTrips(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 6))
	for range 3000 {
		s := reach(r)
		link := Link(&s)
		require.True(t, strings.HasPrefix(link, "v=1"))
		assertPlain(t, link)
		got, faults := ParseLink(link)
		require.Empty(t, faults, link)
		require.Equal(t, s, got, link)

		text := PlanText(&s)
		got, faults = ParsePlan(text)
		require.Empty(t, faults, text)
		require.Equal(t, s, got, text)

		for _, name := range []string{"", "Cold frame", "a & b = c # 50 %", "v=1", "Ä"} {
			n, got, faults := ParseKept(Kept(name, &s))
			require.Empty(t, faults)
			require.Equal(t, name, n)
			require.Equal(t, s, got)
		}
	}
}

// assertPlain checks that a link is made of unreserved characters, = & and % alone (RFC 3986).
func assertPlain(t *testing.T, link string) {
	t.Helper()
	for _, c := range link {
		require.True(t, 'a' <= c && c <= 'z' || 'A' <= c && c <= 'Z' || '0' <= c && c <= '9' || strings.ContainsRune("-._~=&%", c), "%q in %s", c, link)
	}
}

// A link holds every text with its unit, so that it means the same when a start value changes.
func TestLinkStandsAlone(t *testing.T) {
	s := Start().Type(HangMass, "320", "g").Type(CutSpare, "", "")
	link := Link(&s)
	for id := None + 1; id < NumFields; id++ {
		if s.Text[id] != "" {
			assert.Contains(t, link, Fields[id].Key+"=")
		}
	}
	assert.Contains(t, link, "&hang.mass=320%20g")
	assert.Contains(t, link, "&cut.spare=&", "emptied, though it starts with a text")
	assert.NotContains(t, link, "hang.stress")
	assert.True(t, strings.HasPrefix(link, "v=1&fibre.polymer=nylon-66&fibre.diameter=0.52%20mm&"), link)
}

func TestParsePlan(t *testing.T) {
	type given map[ID]string
	for _, row := range []struct {
		name, text string
		want       given
	}{
		{"nothing", "", nil},
		{"only separators", "&&v=1&", nil},
		{"a bare number gets the field's unit", "clamp.first-stretch=20&fibre.diameter=0.45", given{ClampFirstStretch: "20 %", FibreDiameter: "0.45 mm"}},
		{"another member of a group", "hang.mass=320", given{HangMass: "320 g", HangStress: ""}},
		{"a hub", "clamp.coiled=90 mm", given{ClampCoiled: "90 mm"}},
		{"an emptied field", "cut.spare=", given{CutSpare: ""}},
		{"a cleared given", "hang.stress=", given{HangStress: ""}},
		{"an empty member beside a given", "hang.mass=320&hang.stress=", given{HangMass: "320 g", HangStress: ""}},
		{"and before it", "hang.stress=&hang.mass=320", given{HangMass: "320 g", HangStress: ""}},
		{"spaces around", " hang.mass = 320 & cut.pieces = 6 ", given{HangMass: "320 g", HangStress: "", CutPieces: "6"}},
		{"an = in the text", "fibre.polymer=a=b", given{FibrePolymer: "a=b"}},
		{"what can't be read is kept", "fibre.diameter=abc", given{FibreDiameter: "abc"}},
		{"no =", "cut.spare", given{CutSpare: ""}},
		{"not percent-decoded", "fibre.diameter=0.5%20mm", given{FibreDiameter: "0.5%20mm"}},
	} {
		s, faults := ParsePlan(row.text)
		assert.Empty(t, faults, row.name)
		want := Start()
		for id, text := range row.want {
			want.Text[id] = text
		}
		for id, text := range row.want {
			if g, ok := GroupOf(id); ok && g != ShapeGroup && (text != "" || want.Given[g].Has(id) && len(row.want) == 1) {
				want.Given[g] = Givens{id}
			}
		}
		assert.Equal(t, want, s, row.name)
	}
}

func TestFaults(t *testing.T) {
	for _, row := range []struct {
		text   string
		key    string
		reason Reason
		with   ID
	}{
		{"fibre.diametre=0.5", "fibre.diametre", UnknownKey, None},
		{"hang.over=340 g", "hang.over", UnknownKey, None}, // an answer can't be typed
		{"hang.mass=320&hang.stress=17", "hang.stress", SaidTwice, HangMass},
		{"fibre.area=0.2&fibre.diameter=0.5", "fibre.diameter", SaidTwice, FibreArea},
		{"clamp.coiled=85&clamp.first=100", "clamp.first", SaidTwice, ClampCoiled},
		{"cut.pieces=5&cut.pieces=6", "cut.pieces", SaidTwice, CutPieces},
	} {
		s, faults := ParsePlan(row.text)
		if assert.Len(t, faults, 1, row.text) {
			assert.Equal(t, row.key, faults[0].Key)
			assert.Equal(t, row.reason, faults[0].Reason)
			assert.Equal(t, row.with, faults[0].With)
		}
		oneGiven(t, &s)
	}
}

// oneGiven checks that a sheet has a text in no member of a group but its given.
func oneGiven(t *testing.T, s *Sheet) {
	t.Helper()
	for id := None + 1; id < NumFields; id++ {
		if g, ok := GroupOf(id); ok && !s.Given[g].Has(id) {
			require.Empty(t, s.Text[id], id.Key())
		}
	}
	require.Empty(t, s.Text[None])
}

func TestCleared(t *testing.T) {
	s := Start().Type(HangMass, "320", "g").Type(ClampSecondBase, "relaxed", "").Cleared()
	assert.Equal(t, Givens{HangMass}, s.Given[HangGroup])
	assert.Empty(t, s.Text[HangMass])
	assert.Empty(t, s.Text[FibreDiameter])
	assert.Equal(t, "35 g", s.Text[HangHook], "the hook is the bench's")
	assert.Equal(t, "20x2, 50x2, 100, 200", s.Text[HangOwned])
	assert.Equal(t, "relaxed", s.Text[ClampSecondBase])
}

// Nothing that is typed or comes in a link can end a slot or begin one: the marks between slots are control characters.
func TestNoControlCharacters(t *testing.T) {
	for c := rune(0); c < ' '; c++ {
		if c == '\n' || c == '\t' {
			continue
		}
		bad := string(c)
		s := Start().Type(FibreDiameter, "0.5"+bad+"x", "mm")
		assert.NotContains(t, s.Text[FibreDiameter], bad)
		link, faults := ParseLink("v=1&fibre.diameter=0.5" + escaped(bad) + "x&k" + escaped(bad) + "k=3")
		assert.NotContains(t, link.Text[FibreDiameter], bad)
		for _, f := range faults {
			assert.NotContains(t, f.Key, bad)
			assert.NotContains(t, f.Part, bad)
		}
		name, _, _ := ParseKept("name=a" + escaped(bad) + "b&v=1")
		assert.NotContains(t, name, bad)
	}
}

func FuzzParseLink(f *testing.F) {
	start := Start()
	for _, s := range []string{Link(&start), "", "v=1", "v=1&fibre.diameter=0%2C45%20mm", "hang.mass=320%20g&hang.stress=1", "%", "%zz=%4", "cut.spare=&&", "fibre.polymer=%FF", "\xff=\xff", "fibre.diameter=1%1E2"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, link string) {
		s, _ := ParseLink(link)
		oneGiven(t, &s)
		again, faults := ParseLink(Link(&s))
		require.Empty(t, faults)
		require.Equal(t, s, again)
		var st State
		st.Work(&s)
	})
}

func FuzzParsePlan(f *testing.F) {
	start := Start()
	for _, s := range []string{PlanText(&start), "", "fibre.diameter=0.45mm&hang.stress=14MPa", "hang.mass=1&hang.add=2", "clamp.second-base=relaxed", "cut.ratio=1e-300", "hang.owned=1x999"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, text string) {
		s, _ := ParsePlan(text)
		oneGiven(t, &s)
		again, faults := ParsePlan(PlanText(&s))
		require.Empty(t, faults)
		require.Equal(t, s, again)
		again, faults = ParseLink(Link(&s))
		require.Empty(t, faults)
		require.Equal(t, s, again)
	})
}

// Any bytes in any box: no panic, a number within what is possible or a problem, and the text survives.
func FuzzRead(f *testing.F) {
	for i, text := range texts {
		f.Add(text, uint8(i+1))
	}
	f.Fuzz(func(t *testing.T, text string, n uint8) {
		id := None + 1 + ID(n)%(NumFields-1)
		s := Start().Type(id, text, Fields[id].Unit)
		var st State
		st.Work(&s)
		fl := &Fields[id]
		if si := st.SI(id); fl.Words == nil && known(si) && !isList(KindOf(id)) && st.Text(id) != "" {
			require.True(t, si >= fl.Low && si <= fl.High, "%g", si)
			require.Empty(t, st.Notices[id].Reason)
			require.True(t, fl.Digits > 0)
		}
		shown, unit := Detach(id, s.Text[id])
		assertSame(t, id, s.Text[id], Attach(id, shown, unit))
		for other := None + 1; other < NumIDs; other++ {
			if st.Value(other).Is() && known(st.SI(other)) {
				require.False(t, st.SI(other)-st.SI(other) != 0, "%s has no end", other.Key())
			}
		}
		again, faults := ParseLink(Link(&s))
		require.Empty(t, faults)
		require.Equal(t, s, again)
	})
}

// What was cut is done: with the precursor frozen, no wish and no stretch moves it any more, and a new muscle forgets what was measured.
func TestDoneAndAnew(t *testing.T) {
	s := sheetOf(t, "clamp.finished=60 mm&cut.ratio=4&clamp.first-stretch=25&clamp.second-stretch=50")
	var st State
	st.Work(&s)
	cut := st.SI(CutPrecursor) // 60 ÷ (1 + 0.85 × 0.5) × 4 = 168.42 mm
	assert.InDelta(t, 0.16842, cut, 1e-5)
	s = st.Type(s, ClampMeasured, "47", "mm")
	assert.Equal(t, Givens{CutPrecursor}, s.Given[LengthGroup])
	for _, change := range []struct {
		id   ID
		text string
	}{{ClampStages, "one"}, {ClampRetained, "60 %"}, {ClampFirstStretch, "30 %"}, {CutRatio, "5"}} {
		next := s.Type(change.id, change.text, Fields[change.id].Unit)
		st.Work(&next)
		assert.InDelta(t, cut, st.SI(CutPrecursor), 5e-6, change.text)
		assert.InDelta(t, cut/0.047, st.SI(ClampThisRatio), 1e-3, change.text)
	}
	assert.Equal(t, s, st.Type(s, ClampMeasured, "47", "mm"), "done is done")
	assert.Empty(t, s.Anew().Text[ClampMeasured])
	assert.Equal(t, s.Text[CutPrecursor], s.Anew().Text[CutPrecursor])
}

// Turns counted on the whole precursor keep it, and give way to turns per metre where it is no longer given.
func TestTypeKeepsTurns(t *testing.T) {
	s := sheetOf(t, "coil.outside=1.3 mm&coil.pitch=0.6 mm")
	var st State
	st.Work(&s)
	cut := st.SI(CutPrecursor)
	next := st.Type(s, TwistTurns, "170", "turns")
	assert.Equal(t, Givens{TwistTurns}, next.Given[TwistGroup])
	assert.Equal(t, Givens{CutPrecursor}, next.Given[LengthGroup])
	st.Work(&next)
	assert.InEpsilon(t, cut, st.SI(CutPrecursor), 5e-5) // to the 4 digits that are shown, or more
	assert.InDelta(t, 170, st.SI(TwistTurns), 1e-9)
	turns := st.SI(TwistPerPrecursor)
	last := st.Type(next, ClampCoiled, "90", "mm")
	assert.Equal(t, Givens{TwistPerPrecursor}, last.Given[TwistGroup])
	st.Work(&last)
	assert.InEpsilon(t, turns, st.SI(TwistPerPrecursor), 1e-6)
	assert.InDelta(t, 0.09, st.SI(ClampCoiled), 1e-12)

	// as a plan text it is possible; then the turns need the ratio, and nothing goes round in circles
	s = sheetOf(t, "twist.turns=170&coil.outside=1.3 mm&coil.pitch=0.6 mm")
	st.Work(&s)
	assert.False(t, known(st.SI(TwistBias)))
}

// A count takes the ratio's place: what was cut stays.
func TestTypeKeepsCut(t *testing.T) {
	s := Start()
	var st State
	st.Work(&s)
	s = st.Type(s, CoilCount, "", "coils") // its box is emptied first
	st.Work(&s)
	s = st.Type(s, CoilCount, "140", "coils")
	assert.Equal(t, Givens{CutPrecursor}, s.Given[LengthGroup])
	assert.Equal(t, "408 mm", s.Text[CutPrecursor]) // 85 × 4.8, as it is shown
	assert.Equal(t, Givens{CoilOutside, CoilCount}, s.Given[ShapeGroup])
	st.Work(&s)
	assert.InEpsilon(t, 0.408, st.SI(CutPrecursor), 1e-7)
	assert.InEpsilon(t, 0.408, float64(st.Plan.Contraction)*140*st.SI(CoilTurnLength), 1e-7) // all of it is in the coils
	assert.InEpsilon(t, st.SI(CutRatio), st.SI(CoilShapeRatio), 1e-12)
}

// escaped writes a text as it stands in a link.
func escaped(text string) string {
	w := planWriter{encoded: true}
	w.text(text)
	return string(w.b)
}
