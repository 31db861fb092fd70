package main

import (
	"bytes"
	"encoding/csv"
	"encoding/json"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"twistbench/calc"
)

// answer runs the command.
func answer(args ...string) (stdout, stderr string, status int) {
	var out, bad bytes.Buffer
	status = run(args, &out, &bad)
	return out.String(), bad.String(), status
}

// good runs the command with arguments in which nothing is wrong.
func good(t *testing.T, args ...string) string {
	t.Helper()
	out, bad, status := answer(args...)
	require.Zero(t, status, bad)
	require.Empty(t, bad)
	return out
}

func TestJSON(t *testing.T) {
	out := good(t, "fibre.diameter=0.45mm&hang.stress=14MPa&yarn.strands=1")
	var all map[string]map[string]any
	require.NoError(t, json.Unmarshal([]byte(out), &all))
	assert.Len(t, all, int(calc.NumIDs)-1)

	// 14 MPa on 0.45 mm: 227.05 g (scenario S8)
	mass := all["hang.mass"]
	assert.InDelta(t, 0.22705, mass["si"], 0.00001)
	assert.Equal(t, "227 g", mass["text"])
	assert.Equal(t, "g", mass["unit"])
	assert.Equal(t, false, mass["given"])
	assert.Equal(t, "fibre.diameter", mass["mostly"])
	assert.InDelta(t, 0.01009, mass["doubt"], 0.0001) // 2 × 0.01/0.45 of it
	assert.NotContains(t, mass, "needs")

	assert.Equal(t, map[string]any{"text": "coiled"}, all["clamp.second-base"], "a word")
	assert.Equal(t, map[string]any{"si": nil, "text": "–", "unit": "mm", "given": false, "needs": "yarn.diameter"}, all["yarn.diameter"], "unknown")
	assert.Equal(t, "yarn.area", all["yarn.area"]["needs"])
	assert.Nil(t, all["yarn.packing"]["si"])
	assert.Equal(t, "yarn.weighed-mass", all["yarn.packing"]["needs"])
	assert.Equal(t, map[string]any{"text": "100 + 50 + 20×2 g"}, all["hang.under-set"])
	assert.Equal(t, true, all["hang.stress"]["given"])
	assert.Equal(t, false, all["fibre.density"]["given"], "a book value")
	assert.NotContains(t, all["cut.total"], "given", "an answer can't be")
	assert.Equal(t, "4.8 : 1", all["cut.ratio"]["text"])

	for key, e := range all {
		_, known := e["si"].(float64)
		_, has := e["si"]
		if has && !known {
			needs, _ := e["needs"].(string)
			assert.True(t, calc.Find(needs).IsField(), "%s needs %q", key, needs)
		}
		if d, ok := e["doubt"]; ok {
			assert.Greater(t, d, 0.0, key)
			assert.True(t, calc.Find(e["mostly"].(string)).IsField(), key)
		}
	}
}

// The keys come in the order of the work, each once.
func TestJSONOrder(t *testing.T) {
	d := json.NewDecoder(strings.NewReader(good(t)))
	_, err := d.Token()
	require.NoError(t, err)
	for _, id := range ids() {
		key, err := d.Token()
		require.NoError(t, err)
		assert.Equal(t, id.Key(), key)
		var e any
		require.NoError(t, d.Decode(&e))
	}
}

func TestCSV(t *testing.T) {
	out := good(t, "-csv", "clamp.first-stretch=-10")
	assert.Equal(t, strings.Count(out, "\n"), strings.Count(out, "\r\n"), "RFC 4180 ends a line with CR LF")
	rows, err := csv.NewReader(strings.NewReader(out)).ReadAll()
	require.NoError(t, err)
	require.Len(t, rows, int(calc.NumIDs)) // with a heading
	assert.Equal(t, []string{"key", "meaning", "si", "text", "unit", "given", "doubt_si", "mostly", "needs"}, rows[0])
	byKey := map[string][]string{}
	for i, r := range rows[1:] {
		assert.Equal(t, ids()[i].Key(), r[0])
		assert.NotEmpty(t, r[1], r[0])
		byKey[r[0]] = r
		for _, cell := range r {
			if cell != "" {
				assert.NotContains(t, "=+@", cell[:1], "%s: %s would be a formula", r[0], cell)
			}
		}
	}
	assert.Equal(t, []string{"hang.stress", "stress", "1.7e+07", "17 MPa", "MPa", "true"}, byKey["hang.stress"][:6])
	assert.Equal(t, []string{"fibre.bundle", "thickness of the twisted bundle", "", "–", "mm", "false", "", "", "fibre.bundle"}, byKey["fibre.bundle"])
	assert.Equal(t, "-10 %", byKey["clamp.first-stretch"][3])
	assert.Equal(t, "nylon-66", byKey["fibre.polymer"][3])
}

func TestHarmless(t *testing.T) {
	for cell, want := range map[string]string{"": "", "-5": "-5", "5": "5", "=1+1": "'=1+1", "+1": "'+1", "@a": "'@a", "-a": "'-a", "-": "-", "±": "±"} {
		assert.Equal(t, want, harmless(cell))
	}
}

func TestTable(t *testing.T) {
	out := good(t, "-table")
	lines := strings.Split(strings.TrimSuffix(out, "\n"), "\n")
	assert.Len(t, lines, int(calc.NumIDs)-1)
	for i, id := range ids() {
		assert.Equal(t, id.Key(), strings.Fields(lines[i])[0])
	}
	assert.Regexp(t, `(?m)^hang\.mass +368 g +± 14 g, mostly fibre\.diameter( |$)`, out)
	assert.Regexp(t, `(?m)^hang\.stress +17 MPa +given +± `, out)
	assert.Regexp(t, `(?m)^fibre\.bundle +– +needs fibre\.bundle( |$)`, out)
}

func TestListOfKeys(t *testing.T) {
	out := good(t, "-keys")
	lines := strings.Split(strings.TrimSuffix(out, "\n"), "\n")
	require.Len(t, lines, int(calc.NumIDs))
	assert.Equal(t, []string{"KEY", "KIND", "UNIT", "FROM", "TO", "START", "MEANING"}, strings.Fields(lines[0]))
	for i, id := range ids() {
		assert.Equal(t, id.Key(), strings.Fields(lines[i+1])[0])
		assert.NotContains(t, lines[i+1], "name.")
	}
	assert.Regexp(t, `(?m)^fibre\.diameter +length +mm +0\.001 +20 +0\.52 mm +fibre diameter( |$)`, out)
	assert.Regexp(t, `(?m)^clamp\.second-base +word +\[coiled first-gap relaxed\] +coiled +what`, out)
	assert.Regexp(t, `(?m)^cut\.total +length +m +line for all pieces( |$)`, out)
}

// A bare number takes the field's own unit; either mark is the decimal one.
func TestBareNumbers(t *testing.T) {
	for plan, want := range map[string]struct {
		key  string
		si   float64
		text string
	}{
		"clamp.first-stretch=20":     {"clamp.first-stretch", 0.20, "20 %"},
		"clamp.first-stretch=0":      {"clamp.first-stretch", 0, "0 %"}, // is fine
		"fibre.diameter=0,45":        {"fibre.diameter", 0.45e-3, "0.45 mm"},
		"hang.mass=320":              {"hang.mass", 0.320, "320 g"},
		"cut.lift=2":                 {"cut.lift", 2, "2 kg"},
		"fibre.linear-density=470/2": {"fibre.linear-density", 940e-6, "470/2 tex"},
		"clamp.retained=0.85":        {"clamp.retained", 0.85, "0.85"},
		"cut.ratio=0.25":             {"cut.ratio", 4, "4 : 1"},
	} {
		var all map[string]struct {
			SI   float64
			Text string
		}
		require.NoError(t, json.Unmarshal([]byte(good(t, plan)), &all))
		assert.InDelta(t, want.si, all[want.key].SI, 1e-12*math.Abs(want.si), plan)
		assert.Equal(t, want.text, all[want.key].Text, plan)
	}
}

// Bad input: one sentence for each problem on standard error, exit status 2, nothing on standard output.
func TestBadInput(t *testing.T) {
	for _, row := range []struct {
		plan string
		says []string // of each sentence the beginning
	}{
		{"fibre.diametre=0.5", []string{"fibre.diametre: There is no “fibre.diametre” here."}},
		{"hang.under=320 g", []string{"hang.under: There is no"}},
		{"fibre.diameter=abc", []string{"fibre.diameter: “abc” is not a number"}},
		{"fibre.diameter=0.5.2", []string{"fibre.diameter: “0.5.2” is not a number"}},
		{"fibre.diameter=0.5 kg", []string{"fibre.diameter: I don't know the unit “kg” here. You can use mm, µm"}},
		{"hang.stress=NaN", []string{"hang.stress: “NaN” is not a number"}},
		{"hang.stress=Inf", []string{"hang.stress: “Inf” is not a number"}},
		{"hang.stress=1e999", []string{"hang.stress: That number is too large"}},
		{"fibre.diameter=0", []string{"fibre.diameter: That is too little for fibre diameter: 0.001 mm or more"}},
		{"fibre.diameter=-0.5", []string{"fibre.diameter: That is too little for"}},
		{"fibre.area=0", []string{"fibre.area: That is too little for"}},
		{"fibre.linear-density=-1", []string{"fibre.linear-density: That is too little for"}},
		{"fibre.density=0", []string{"fibre.density: That is too little for"}},
		{"fibre.strands=0", []string{"fibre.strands: That is too little for strands of the fibre: 1 or more"}},
		{"fibre.strands=1.5", []string{"fibre.strands: Type a whole number"}},
		{"hang.mass=0", []string{"hang.mass: That is too little for"}},
		{"clamp.coiled=0", []string{"clamp.coiled: That is too little for"}},
		{"hang.mass=320&hang.stress=17", []string{"hang.stress: total hanging mass, hook included and stress say the same thing: give one."}},
		{"cut.pieces=5&cut.pieces=6", []string{"cut.pieces: "}},
		{"cut.ratio=1", []string{"cut.ratio: A ratio of 1 means it did not coil."}},
		{"cut.ratio=100 %", []string{"cut.ratio: A ratio of 1"}},
		{"cut.ratio=0", []string{"cut.ratio: “0” is not a number"}},
		{"clamp.first-stretch=-101", []string{"clamp.first-stretch: That is too little for stretch for the first heat-set: -99 % or more"}},
		{"clamp.second-stretch=-100", []string{"clamp.second-stretch: That is too little for"}},
		{"clamp.retained=120", []string{"clamp.retained: That is too much for set retained: 100 % or less"}},
		{"fibre.polymer=silk", []string{"fibre.polymer: “silk” is not one of the choices: nylon-6, nylon-66"}},
		{"hang.owned=20x2; foo", []string{"hang.owned: I can't read “foo” as masses."}},
		{"hang.owned=0", []string{"hang.owned: I can't read “0” as masses."}},
		{"fibre.diameter=abc&hang.stress=x&what=1", []string{"what: There is no", "fibre.diameter: “abc”", "hang.stress: “x”"}},
	} {
		out, bad, status := answer(row.plan)
		assert.Equal(t, 2, status, row.plan)
		assert.Empty(t, out, row.plan)
		lines := strings.Split(strings.TrimSuffix(bad, "\n"), "\n")
		if assert.Len(t, lines, len(row.says), "%s: %s", row.plan, bad) {
			for i, says := range row.says {
				assert.True(t, strings.HasPrefix(lines[i], says), "%s: %s", row.plan, lines[i])
				assert.Regexp(t, `[.?]$`, lines[i], row.plan)
				assert.NotContains(t, lines[i], "problem.", row.plan)
				assert.NotContains(t, lines[i], "{", row.plan)
			}
		}
	}
}

func TestUsage(t *testing.T) {
	for _, args := range [][]string{{"-what"}, {"a=1", "b=2"}, {"-csv", "-table"}, {"-h"}} {
		out, bad, status := answer(args...)
		assert.Equal(t, 2, status, "%v", args)
		assert.Empty(t, out)
		assert.Contains(t, bad, "usage: answer", "%v", args)
	}
}

// What is wrong in any format is wrong in each.
func TestBadInputInEveryFormat(t *testing.T) {
	for _, format := range []string{"-csv", "-table"} {
		out, bad, status := answer(format, "cut.ratio=1")
		assert.Equal(t, 2, status)
		assert.Empty(t, out)
		assert.Equal(t, 1, strings.Count(bad, "\n"))
	}
}

// A link of the page is a plan too, and a table also says what the page would say of the plan.
func TestLinkAndNotes(t *testing.T) {
	out, bad, status := answer("-table", "https://example.org/#v=1&fibre.diameter=0%2C2%20mm&hang.mass=5%20kg")
	assert.Equal(t, 0, status, bad)
	assert.Regexp(t, `(?m)^fibre\.diameter +0\.2 mm +given `, out)
	assert.Regexp(t, `(?m)^hang\.stress: No fibre listed here holds that`, out)
}
