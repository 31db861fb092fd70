package calc

import (
	"math"
	"reflect"
	"regexp"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"twistbench/calc/quantity"
)

var (
	keyStyle  = regexp.MustCompile(`^[a-z]+\.[a-z]+(-[a-z0-9]+)*$`)
	wordStyle = regexp.MustCompile(`^[a-z]+(-[a-z0-9]+)*$`)
)

func TestKeys(t *testing.T) {
	seen := map[string]bool{}
	for id := None + 1; id < NumIDs; id++ {
		key := id.Key()
		assert.Regexp(t, keyStyle, key, "number %d", id)
		assert.False(t, seen[key], key)
		seen[key] = true
		assert.Equal(t, id, Find(key))
	}
	assert.Equal(t, None, Find(""))
	assert.Equal(t, None, Find("fibre"))
	assert.Equal(t, None, Find("fibre.Diameter"))
	assert.False(t, None.IsField())
	assert.True(t, FibrePolymer.IsField())
	assert.False(t, FibreSolidArea.IsField())
}

// Keys that are in links already: the ones the page was announced with.
func TestKeysForEver(t *testing.T) {
	for _, key := range []string{
		"fibre.diameter", "fibre.linear-density", "fibre.area", "fibre.density", "fibre.strands", "hang.stress", "hang.mass", "hang.hook",
		"hang.add", "hang.force", "hang.area", "cut.ratio", "cut.tail", "cut.precursor", "cut.length", "cut.pieces", "cut.spare", "cut.total",
		"clamp.coiled", "clamp.measured", "clamp.first-stretch", "clamp.second-stretch", "clamp.second-base", "clamp.relaxed", "clamp.first",
		"clamp.second", "clamp.retained", "clamp.finished", "clamp.travel", "fibre.diameter-doubt", "hang.mass-doubt", "cut.ratio-doubt",
		"clamp.ruler-doubt",
	} {
		assert.NotEqual(t, None, Find(key), key)
	}
	assert.Equal(t, []string{"coiled", "first-gap", "relaxed"}, Fields[ClampSecondBase].Words)
}

func TestFields(t *testing.T) {
	for id := None + 1; id < NumFields; id++ {
		f := &Fields[id]
		k := KindOf(id)
		if f.Words != nil {
			assert.Equal(t, quantity.KindWord, k, f.Key)
			assert.Contains(t, f.Words, f.Start, f.Key)
			for i, w := range f.Words {
				assert.Regexp(t, wordStyle, w)
				assert.Equal(t, i, slices.Index(f.Words, w), "%s has %s twice", f.Key, w)
			}
			continue
		}
		assert.NotEqual(t, quantity.KindWord, k, f.Key)
		if f.Unit != "" {
			require.NotNil(t, k.Unit(f.Unit), "%s: unit %s", f.Key, f.Unit)
			assert.Equal(t, f.Unit, k.Unit(f.Unit).Symbol, "%s: the unit's own symbol", f.Key)
		} else {
			assert.True(t, k.Default() == nil || k.Default().Symbol == "", "%s needs a unit", f.Key)
		}
		assert.Less(t, f.Low, f.High, f.Key)
		if !isList(k) && k != quantity.KindDay && k != quantity.KindClock {
			assert.Greater(t, f.Digits, 0, f.Key)
		}
		if f.Usual != [2]float64{} {
			assert.Less(t, f.Usual[0], f.Usual[1], f.Key)
			assert.GreaterOrEqual(t, f.Usual[0], f.Low, f.Key)
			assert.LessOrEqual(t, f.Usual[1], f.High, f.Key)
		}
		if f.Doubt != None {
			d := &Fields[f.Doubt]
			if k != quantity.KindRatio {
				assert.Equal(t, k, KindOf(f.Doubt), "%s and its ±", f.Key)
			}
			assert.Zero(t, d.Low, d.Key)
		}
	}
}

func TestStart(t *testing.T) {
	s := Start()
	var p Plan
	var notices [NumFields]Notice
	Read(&s, &p, &notices)
	for id := None + 1; id < NumFields; id++ {
		f := &Fields[id]
		assert.Empty(t, notices[id].Reason, f.Key)
		assert.Equal(t, f.Start, s.Text[id])
		si := p.Value(id).SI()
		switch {
		case id == FibreDensity || id == YarnDensity: // the book value
			assert.Equal(t, 1140.0, si, f.Key)
		case id == TwistYoung:
			assert.Equal(t, 2.5e9, si, f.Key)
		case id == TwistShear:
			assert.Equal(t, 0.42e9, si, f.Key)
		case id == StrokeBeside: // the rows of Wire
			assert.Equal(t, 1.0, si, f.Key)
		case id == HeatMelt: // of nylon 6,6
			assert.InDelta(t, 255+273.15, si, 1e-9, f.Key)
		case f.Start == "":
			assert.True(t, math.IsNaN(si), f.Key)
		case f.Words == nil && !isList(KindOf(id)):
			assert.True(t, si >= f.Low && si <= f.High, "%s starts at %g", f.Key, si)
			assert.Equal(t, f.Start, Attach(id, f.Start, f.Unit), "%s starts without its unit", f.Key)
			if f.Usual != [2]float64{} {
				assert.True(t, si >= f.Usual[0] && si <= f.Usual[1], "%s starts at the unusual %g", f.Key, si)
			}
		}
	}
}

// What one field is kept in, no other is, and so for answers.
func TestStorage(t *testing.T) {
	var st State
	all := func() (si [NumIDs]float64) {
		for id := None + 1; id < NumIDs; id++ {
			if v := st.Value(id); v.Is() && !math.IsNaN(v.SI()) {
				si[id] = v.SI()
			}
		}
		return si
	}
	for id := None + 1; id < NumIDs; id++ {
		v := st.Value(id)
		if !v.Is() {
			assert.Contains(t, []ID{HangUnderSet, HangOverSet}, id)
			continue
		}
		before := all()
		if isList(v.Kind()) {
			st.Plan.Owned = "20x2, 50"
		} else {
			v.SetSI(3)
		}
		after := all()
		assert.Equal(t, 3.0, after[id], id.Key())
		before[id] = 3
		assert.Equal(t, before, after, "%s moves another", id.Key())
		assert.Equal(t, v.Kind(), st.Value(id).Kind())
	}
}

// kindsAt adds the kind of every quantity in a struct by where it is.
func kindsAt(at map[uintptr]*quantity.Kind, typ reflect.Type, from uintptr) {
	if v, ok := reflect.New(typ).Interface().(quantity.Value); ok {
		at[from] = v.Kind()
		return
	}
	switch typ.Kind() {
	case reflect.Struct:
		for f := range typ.Fields() {
			kindsAt(at, f.Type, from+f.Offset)
		}
	case reflect.Array:
		for i := range typ.Len() {
			kindsAt(at, typ.Elem(), from+uintptr(i)*typ.Elem().Size())
		}
	}
}

// Every number is where a quantity of its kind is.
func TestPlaces(t *testing.T) {
	at := map[uintptr]*quantity.Kind{}
	kindsAt(at, reflect.TypeFor[State](), 0)
	for id := None + 1; id < NumIDs; id++ {
		if KindOf(id) != nil {
			assert.Equal(t, at[places[id].at], KindOf(id), id.Key())
		}
	}
	assert.Nil(t, KindOf(HangUnderSet))
	assert.Nil(t, KindOf(None))
}

// leaves counts the quantities of a struct.
func leaves(typ reflect.Type) (n int) {
	if reflect.PointerTo(typ).Implements(reflect.TypeFor[quantity.Value]()) {
		return 1
	}
	switch typ.Kind() {
	case reflect.Struct:
		for f := range typ.Fields() {
			if f.IsExported() {
				n += leaves(f.Type)
			}
		}
	case reflect.Array:
		n = typ.Len() * leaves(typ.Elem())
	}
	return n
}

func TestEveryQuantityHasARow(t *testing.T) {
	const workedOut = 8 // LoadArea, SolidArea, Before, Thickness, Contraction, Titre, and of the wire Total and LeadOhms: answers that are kept in the Plan
	assert.Equal(t, int(NumFields-None-1)+workedOut, leaves(reflect.TypeFor[Plan]()), "fields of Plan")
	const sets = 2 // under-set and over-set are text
	assert.Equal(t, int(NumAnswers)-sets-workedOut, leaves(reflect.TypeFor[Results]()), "fields of Results")
}

func TestAnswers(t *testing.T) {
	var st State
	for id := NumFields; id < NumIDs; id++ {
		a := &Answers[id-NumFields]
		assert.True(t, is(a.Working, choice(&st.Plan, id)), "%s has a working, or a choice of them", a.Key)
		v := st.Value(id)
		if !v.Is() {
			continue
		}
		k := v.Kind()
		if a.Unit == "" {
			assert.True(t, k.Default() == nil || k.Default().Symbol == "", "%s needs a unit", a.Key)
		} else {
			require.NotNil(t, k.Unit(a.Unit), "%s: unit %s", a.Key, a.Unit)
			assert.Equal(t, a.Unit, k.Unit(a.Unit).Symbol, a.Key)
		}
		assert.Greater(t, a.Digits, 0, a.Key)
	}
}

// Every working has a term for each symbol, or a method with a source.
func TestWorkings(t *testing.T) {
	for _, plan := range plans(t) {
		for _, st := range asGivens(t, plan.Text) {
			for id := None + 1; id < NumIDs; id++ {
				steps, n := st.Workings(id)
				if !id.IsField() {
					assert.Equal(t, 1, n, id.Key())
				}
				for _, w := range steps[:n] {
					if w.Eq == nil {
						assert.NotEmpty(t, w.Method, id.Key())
						assert.NotNil(t, w.Source, id.Key())
					} else {
						assert.Len(t, w.Terms, len(w.Eq.Symbols(nil)), "%s in %s", id.Key(), plan.Name)
						assert.Empty(t, w.Method)
					}
					for _, term := range w.Terms {
						assert.NotEqual(t, id, term, "%s is worked out from itself", id.Key())
					}
				}
				if g, ok := GroupOf(id); ok && st.Plan.Given[g][0] != None && !st.Plan.Given[g].Has(id) {
					assert.Greater(t, n, 0, "%s in %s", id.Key(), plan.Name)
				}
			}
		}
	}
}

// asGivens works a plan out once as it is, and once with every member of every group as the given, at the value it had.
func asGivens(t testing.TB, text string) (all []*State) {
	t.Helper()
	st := work(t, text)
	all = append(all, st)
	for id := None + 1; id < NumFields; id++ {
		if g, ok := GroupOf(id); ok && !st.Plan.Given[g].Has(id) && possible(st, id) {
			s := st.sheet.Type(id, exact(id, st.SI(id)), Fields[id].Unit)
			next := new(State)
			next.Work(&s)
			require.Empty(t, next.Notices[id].Reason, id.Key())
			all = append(all, next)
		}
	}
	return all
}
