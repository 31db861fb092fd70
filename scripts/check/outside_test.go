package main

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"twistbench/calc/quantity"
)

// Every unit has a row, and both libraries are asked about nearly all.
func TestUnitRows(t *testing.T) {
	rows, err := unitRows()
	require.NoError(t, err)
	units, gnu, pint := 0, 0, 0
	for _, s := range spellings {
		units += len(s.kind.Units)
		assert.Len(t, s.units, len(s.kind.Units), "%s: a spelling for each unit and no more", s.kind.Name)
	}
	for _, r := range rows {
		if r.gnu != "" {
			gnu++
		}
		if r.pint != "" {
			pint++
		}
	}
	assert.Len(t, rows, units)
	assert.Equal(t, units, gnu, "GNU Units knows them all")
	assert.Greater(t, pint, units-5)

	spellings[0].kind = &quantity.Kind{Name: "length", Units: []quantity.Unit{{Symbol: "ell"}}}
	defer func() { spellings[0].kind = quantity.KindLength }()
	_, err = unitRows()
	assert.EqualError(t, err, "the length unit ell has no outside spelling")
}

// Handbook U21 to U23, computed with pint 0.19.2 from the definitions.
func TestCraftRows(t *testing.T) {
	want := []float64{38.707342617e6, 12.4862145814e6, 38.7523373755e-3}
	for i, r := range craftRows() {
		assert.InEpsilon(t, want[i], r.ours, 1e-9, r.name)
	}
}

func TestDiffers(t *testing.T) {
	row := outside{name: "length in", ours: 0.0254, to: "m"}
	assert.Empty(t, differs(row, "pint", 0.0254*(1+1e-10)))
	assert.Equal(t, "length in: ours 0.0254, pint says 0.0255 m", differs(row, "pint", 0.0255))
	row.ours = quantity.NaN
	assert.NotEmpty(t, differs(row, "pint", 0.0254), "an unknown is not near anything")
}
