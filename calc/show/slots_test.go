package show

import (
	"bytes"
	"math/rand/v2"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"twistbench/calc"
)

// slots takes slots apart: id and what, to value, and the order.
func slots(t testing.TB, b []byte) (values map[string]string, order []string) {
	t.Helper()
	values = map[string]string{}
	if len(b) == 0 {
		return values, nil
	}
	require.Equal(t, byte(Record), b[len(b)-1])
	for record := range strings.SplitSeq(string(b[:len(b)-1]), string(rune(Record))) {
		parts := strings.Split(record, string(rune(Part)))
		require.Len(t, parts, 3, "%q", record)
		key := parts[0] + " " + parts[1]
		_, twice := values[key]
		require.False(t, twice, "%s comes twice", key)
		require.NotEmpty(t, parts[0])
		require.NotEmpty(t, parts[1])
		values[key] = parts[2]
		order = append(order, key)
	}
	return values, order
}

// Always the same slots in the same order, whatever is typed: that is what Changes goes by.
func TestSameSlots(t *testing.T) {
	d := english()
	st, start := work(t, "")
	_, want := slots(t, d.Slots(nil, st))
	r := rand.New(rand.NewPCG(7, 8))
	texts := []string{"", "1", "0.5", "abc", "1,234", "one", "relaxed", "20x2", "-5", "1e9", "a\x1eb\x1fc", "\xff", "“", "5 %", "0", "all"}
	s := start
	for i := range 400 {
		id := calc.ID(1 + r.IntN(int(calc.NumFields)-1))
		s = s.Type(id, texts[r.IntN(len(texts))], calc.Fields[id].Unit)
		st.Work(&s)
		d.US = i%3 == 0
		d.Typing = calc.ID(r.IntN(int(calc.NumFields)))
		for id := range d.Open {
			d.Open[id] = i%5 == 0
		}
		_, got := slots(t, d.Slots(nil, st))
		require.Equal(t, want, got, "%s", calc.PlanText(&s))
		if i%40 == 39 {
			s = start
		}
	}
}

func TestChanges(t *testing.T) {
	record := func(id, value string) []byte { return Put(nil, id, Text, value) }
	cat := func(all ...[]byte) []byte { return bytes.Join(all, nil) }
	a, b, c := record("a", "1"), record("b", "2"), record("c", "")
	for name, row := range map[string]struct{ last, next, want []byte }{
		"nothing":         {nil, nil, nil},
		"all are new":     {nil, cat(a, b), cat(a, b)},
		"none":            {cat(a, b), cat(a, b), nil},
		"the first":       {cat(a, b, c), cat(record("a", "11"), b, c), record("a", "11")},
		"the last":        {cat(a, b, c), cat(a, b, record("c", "3")), record("c", "3")},
		"an emptied one":  {cat(a, b, c), cat(a, record("b", ""), c), record("b", "")},
		"several":         {cat(a, b, c), cat(record("a", "x"), b, record("c", "y")), cat(record("a", "x"), record("c", "y"))},
		"a longer prefix": {cat(a, b), cat(record("a", "1"), record("b", "22")), record("b", "22")},
	} {
		assert.Equal(t, string(row.want), string(Changes(nil, row.last, row.next)), name)
	}
	assert.Equal(t, "x"+string(a), string(Changes([]byte("x"), nil, a)), "appended")
}

// Applied one after another, the changes give the slots of the newest plan.
func TestChangesAddUp(t *testing.T) {
	_, s := work(t, "")
	k := &keyboard{display: english()}
	page := map[string]string{}
	for _, step := range []struct {
		id   calc.ID
		text string
	}{
		{calc.FibreDiameter, "0.5"}, {calc.FibreDiameter, "0.5x"}, {calc.HangMass, "300"}, {calc.ClampMeasured, "88"},
		{calc.ClampStages, "one"}, {calc.ClampMeasured, ""}, {calc.FibreStrands, "2"}, {calc.HangMass, ""},
	} {
		k.press(&s, step.id, step.text)
		s = s.Type(step.id, step.text, calc.Fields[step.id].Unit)
		changed, _ := slots(t, k.diff)
		assert.NotEmpty(t, changed)
		for key, value := range changed {
			page[key] = value
		}
		all, _ := slots(t, k.last.Slots)
		require.Equal(t, all, page)
	}
}
