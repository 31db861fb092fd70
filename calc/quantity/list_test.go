package quantity

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// The expected pieces are those written, in grams, then how many.
func TestParseList(t *testing.T) {
	type g struct {
		grams float64
		n     int
	}
	for _, c := range []struct {
		text string
		want []g
	}{
		{"10x5; 20x2; 50", []g{{10, 5}, {20, 2}, {50, 1}}},
		{"20x2, 50x2, 100, 200", []g{{20, 2}, {50, 2}, {100, 1}, {200, 1}}},
		{"20x2,50x2,100", []g{{20, 2}, {50, 2}, {100, 1}}},
		{"6,2x11", []g{{6.2, 11}}},
		{"6.2x11", []g{{6.2, 11}}},
		{"6,2x11, 6,5x3", []g{{6.2, 11}, {6.5, 3}}},
		{"6,2x11,6,5x3", []g{{6.2, 11}, {6.5, 3}}},
		{"20,50", []g{{20.5, 1}}}, // bare, and no space: a decimal mark
		{"20, 50", []g{{20, 1}, {50, 1}}},
		{"20,\u00a050", []g{{20, 1}, {50, 1}}},
		{"20x2,5", []g{{20, 2}, {5, 1}}},
		{"100 g x2", []g{{100, 2}}},
		{"100gx2", []g{{100, 2}}},
		{"100 g × 2", []g{{100, 2}}},
		{"100 g,200 g", []g{{100, 1}, {200, 1}}},
		{"2 x 100", []g{{2, 100}}}, // a mass of 2, a hundred times
		{"10X5\n20*2\r\n50×3", []g{{10, 5}, {20, 2}, {50, 3}}},
		{"1/4 oz x4", []g{{7.08738078125, 4}}},                         // a quarter of 28.349523125 g
		{"1 lb 4 oz, 8 oz x2", []g{{566.9904625, 1}, {226.796185, 2}}}, // 20 and 8 oz
		{"1.5 kg; 1e3 mg", []g{{1500, 1}, {1, 1}}},
		{";; 20 ;\n;, 50,", []g{{20, 1}, {50, 1}}},
		{"1.234; 5", []g{{1.234, 1}, {5, 1}}},
		{"5x999", []g{{5, 999}}},
		{strings.Repeat("5;", 40), repeat(g{5, 1}, 40)},
	} {
		t.Run(c.text, func(t *testing.T) {
			items, err := ParseList(KindList, c.text, "")
			require.NoError(t, err)
			require.Len(t, items, len(c.want))
			pieces := 0
			for i, w := range c.want {
				assert.InEpsilon(t, w.grams/1000, items[i].Each, 1e-14)
				assert.Equal(t, w.n, items[i].Count)
				pieces += w.n
			}
			l := List(c.text)
			assert.Equal(t, float64(pieces), l.SI())
		})
	}
	items, err := ParseList(KindMass, "4; 8x2", "oz")
	require.NoError(t, err)
	assert.InEpsilon(t, 0.11339809250, items[0].Each, 1e-12) // 4 of 28.349523125 g
}

func repeat[T any](x T, n int) []T {
	s := make([]T, n)
	for i := range s {
		s[i] = x
	}
	return s
}

func TestParseListFails(t *testing.T) {
	for _, c := range []struct {
		text string
		err  error
		part string
	}{
		{"", ErrEmpty, ""},
		{" ;, \n", ErrEmpty, ";,"},
		{"20; many", ErrNumber, "many"},
		{"20,50,100", ErrNumber, "20,50,100"}, // a list or thousands: refused
		{"1,234.5", ErrNumber, "1,234.5"},
		{"20; ,5", ErrNumber, ",5"},
		{"20 50", ErrItem, "20 50"},
		{"100 200 500; 5", ErrItem, "100 200 500"},
		{"20x2 50x2", ErrItem, "20x2 50x2"},
		{"2x100 g", ErrItem, "2x100 g"},
		{"20x2x3, 5", ErrItem, "20x2x3"},
		{"20x", ErrUnit, "x"},
		{"20x\n5", ErrUnit, "x"},
		{"20 mm", ErrUnit, "mm"},
		{"20 g 30 g", ErrTrailing, "30 g"},
		{"20x0", ErrPieces, "x0"},
		{"20x1000", ErrPieces, "x1000"},
		{"20x1.5", ErrPieces, "x1.5"},
		{"0; 5", ErrItem, "0"},
		{"-5", ErrItem, "-5"},
		{"1e999", ErrNotFinite, "1e999"},
		{"1e308 kg 1e308 g; 5e-324 g", ErrItem, "5e-324 g"}, // too small: nothing is left of it
		{strings.Repeat("5;", 40) + "7", ErrMany, "7"},
	} {
		t.Run(c.text, func(t *testing.T) {
			items, err := ParseList(KindList, c.text, "")
			require.ErrorIs(t, err, c.err)
			var e *ParseError
			require.ErrorAs(t, err, &e)
			assert.Equal(t, c.part, e.Part)
			assert.Equal(t, c.text, e.Text)
			assert.Empty(t, items)
		})
	}
	_, err := ParseList(KindList, "5", "mm")
	require.ErrorIs(t, err, ErrUnit)
}
