package quantity

import (
	"errors"
	"math"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Any bytes are read or refused; what is read can be written and read again.
func FuzzParse(f *testing.F) {
	for i, s := range []string{"0,45 mm", "1 1/4 in", "1¼\"", "5'3\"", "1 lb 4 oz", "470 dtex x2", "2x470 dtex", "235 dtex f34 x2", "Ne 40/2",
		"1 234,5", "1'234'567", "1.234,5", "1.234 mm", "4:1", "1 to 4", "25 %", "1e-3", "\u22125", "5 ft-lbf", "9e307 kg", "-40 °F", "1 h 30", "0 C", "\xff\x00", "1e-320 Ne", "^"} {
		f.Add(s, byte(i))
	}
	f.Fuzz(func(t *testing.T, text string, n byte) {
		k := kinds[int(n)%len(kinds)]
		r, err := k.Parse(text, "")
		if err != nil {
			checkError(t, text, err)
			assert.True(t, math.IsNaN(r.SI))
			return
		}
		require.False(t, math.IsNaN(r.SI) || math.IsInf(r.SI, 0))
		roundTrip(t, k, r)
		if r.Other != "" {
			other, err := k.Parse(r.Other, "")
			require.NoError(t, err)
			assert.Empty(t, other.Other)
		}
		if k.Style == StyleRatio {
			assert.Greater(t, r.SI, 1.0)
		}
		if k.Style == StyleCount {
			assert.Equal(t, r.SI, math.Trunc(r.SI))
		}
	})
}

func FuzzParseList(f *testing.F) {
	for _, s := range []string{"10x5; 20x2; 50", "20x2, 50x2, 100", "6,2x11", "100 g x2", "2 x 100", "1 lb 4 oz, 8 oz x2", "20x2,50", "20,50,100",
		";;,\n", "5 fl\noz", "1/4 oz×4", "\xff"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, text string) {
		items, err := ParseList(KindList, text, "")
		if err != nil {
			checkError(t, text, err)
			return
		}
		require.NotEmpty(t, items)
		require.LessOrEqual(t, len(items), 40)
		var b []byte
		for _, it := range items {
			require.Greater(t, it.Each, 0.0)
			require.False(t, math.IsInf(it.Each, 0))
			require.True(t, it.Count >= 1 && it.Count <= 999)
			b = Append(b, it.Each, nil, 17, ',')
			b = append(b, " kg x"...)
			b = strconv.AppendInt(b, int64(it.Count), 10)
			b = append(b, ',')
		}
		again, err := ParseList(KindList, string(b), "")
		require.NoError(t, err, "%s", b)
		require.Len(t, again, len(items))
		for i, it := range items {
			assert.Equal(t, it.Count, again[i].Count)
			assert.InDelta(t, it.Each, again[i].Each, 1e-12*it.Each+1e-300)
		}
	})
}

func checkError(t *testing.T, text string, err error) {
	t.Helper()
	var e *ParseError
	require.True(t, errors.As(err, &e))
	require.NotNil(t, e.Err)
	assert.Equal(t, text, e.Text)
	assert.True(t, strings.Contains(text, e.Part))
	if e.Part == "" {
		assert.ErrorIs(t, err, ErrEmpty)
	}
}
