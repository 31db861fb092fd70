package show

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"twistbench/calc"
)

// shown works out a plan, also one with problems, and gives its slots.
func shown(t *testing.T, d *Display, plan string) map[string]string {
	t.Helper()
	s, _ := calc.ParsePlan(plan)
	var st calc.State
	st.Work(&s)
	values, _ := slots(t, d.Slots(nil, &st))
	return values
}

// What stands in and about a box.
func TestBoxes(t *testing.T) {
	const mains = "That is too much for voltage of the supply: 60 V or less is accepted. Never straight from mains: use a battery, or a supply of extra-low voltage."
	for _, row := range []struct {
		name, plan, slot, want string
	}{
		{"a typed number, without its unit", "", "hang.stress v", "17"},
		{"its unit", "", "hang.stress:unit v", "MPa"},
		{"is given", "", "hang.stress:box s", "given"},
		{"and says so", "", "hang.stress:mark t", "you set this"},
		{"a worked-out number", "", "hang.mass v", "368"},
		{"is worked out", "", "hang.mass:box s", "worked"},
		{"and says so", "", "hang.mass:mark t", "worked out"},
		{"with a doubt", "", "hang.mass:doubt t", "± 14 g"},
		{"a number of no group", "", "cut.tail:box s", "plain"},
		{"has no mark", "", "cut.tail:mark t", ""},
		{"a book value", "", "fibre.density:mark t", "book value"},
		{"stands in its box", "", "fibre.density v", "1140"},
		{"a typed one stays when the polymer changes", "fibre.density=1150&fibre.polymer=polyester", "fibre.density v", "1150"},
		{"an empty one follows the polymer", "fibre.polymer=polyester", "fibre.density v", "1390"},
		{"of a polymer without a book value it is needed", "fibre.polymer=other&fibre.linear-density=100 tex", "hang.mass:mark t", "needs density of the fibre"},
		{"another unit", "fibre.diameter=22 thou", "fibre.diameter v", "22"},
		{"stays in the box", "fibre.diameter=22 thou", "fibre.diameter:unit v", "thou"},
		{"and is echoed", "fibre.diameter=22 thou", "fibre.diameter:says t", "That is 0.5588 mm."}, // 22 × 0.0254
		{"a typed text is left alone", "fibre.linear-density=470 dtex x2", "fibre.linear-density v", "470 dtex x2"},
		{"a unit that stands beside the box does not stand in it too", "wire.gauge=AWG 24", "wire.gauge v", "24"},
		{"nor is it echoed", "drive.target=60C", "drive.target:says t", ""},
		{"plies are echoed", "fibre.linear-density=470 dtex x2", "fibre.linear-density:says t", "That is 94 tex."},
		{"a plain number is not", "", "fibre.diameter:says t", ""},
		{"a share is", "clamp.retained=0.8", "clamp.retained:says t", "That is 80 %."},
		{"a word", "", "clamp.second-base v", "coiled"},
		{"a list", "", "hang.owned v", "20x2, 50x2, 100, 200"},
		{"an unknown number", "", "fibre.bundle v", ""},
		{"is unknown", "hang.stress=", "hang.mass:box s", "unknown"},
		{"and says what it needs", "hang.stress=", "hang.mass:mark t", "needs stress"},
		{"a cleared given waits for a number", "hang.stress=", "hang.stress:box s", "unknown"},
		{"and says so", "hang.stress=", "hang.stress:mark t", "type a number"},
		{"a problem", "fibre.diameter=abc", "fibre.diameter:box s", "stop"},
		{"is said", "fibre.diameter=abc", "fibre.diameter:says t", "“abc” is not a number I can read. Type it like 0.52 or 0,52, with a unit behind it if you like."},
		{"and marked for screen readers", "fibre.diameter=abc", "fibre.diameter aria-invalid", "true"},
		{"no problem", "", "fibre.diameter aria-invalid", "false"},
		{"the text at fault stays", "fibre.diameter=abc", "fibre.diameter v", "abc"},
		{"a limit is named with its unit", "fibre.diameter=0", "fibre.diameter:says t", "That is too little for fibre diameter: 0.001 mm or more is accepted."},
		{"in a list too", "hang.owned=2000 kg", "hang.owned:says t", "That is too much for masses you own: 1000000 g or less is accepted."},
		// over 60 V (see craft.VoltageStop)
		{"mains is called that", "wire.supply-voltage=230", "wire.supply-voltage:says t", mains},
		{"where it follows from the current too", "wire.route=twisted&wire.per-length=50&wire.current=12", "wire.supply-voltage:says t", mains}, // 12 A × 20.5 Ω
		{"but not too few volts", "wire.supply-voltage=0", "wire.supply-voltage:says t", "That is too little for voltage of the supply: 0.001 V or more is accepted."},
		{"a line that is no row", "drive.curve=time temp\n0 80\n5 56\n10 42", "drive.curve:says t", "3 rows read. “time temp” is left out."},
		{"more of them", "drive.curve=time temp\n0 80\n5 56\n10 42\n15\nend", "drive.curve:says t", "3 rows read. 3 lines are left out, the first is “time temp”."},
		{"of a line test too", "wire.test=100 5.2\n200 gap\n300 15\nend", "wire.test:says t", "2 rows read. 2 lines are left out, the first is “200 gap”."},
		{"unusual", "fibre.diameter=5", "fibre.diameter:box s", "care"},
		{"is accepted with advice", "fibre.diameter=5", "fibre.diameter:says t", "That is unusual for fibre diameter: most are 0.03 mm to 2 mm."},
		{"and a tap away from what was meant", "fibre.diameter=5", "fibre.diameter:other t", "I meant 0.5 mm"},
		{"which is shown", "fibre.diameter=5", "fibre.diameter:other h", ""},
		{"or hidden", "", "fibre.diameter:other h", "1"},
		{"two readings", "cut.tail=1.234", "cut.tail:says t", "Read as 1.234 mm."},
		{"the other one", "cut.tail=1.234", "cut.tail:other t", "I meant 1234 mm"},
		{"a ratio in words", "", "cut.ratio:says t", "100 mm of coil uses 480 mm of fibre."},
		{"a worked-out number that can't be", "hang.hook=400 g", "hang.add:box s", "stop"},
		{"says so", "hang.hook=400 g", "hang.add:says t", "This works out beyond what is possible for mass to add to the hook. Check what you set."},
		{"a precursor that was typed", "cut.precursor=408", "cut.precursor:mark t", "you set this"},
		{"one that is cut, by the piece's length", "cut.precursor=408&clamp.measured=86", "cut.precursor:mark t", "kept: it is already cut"},
		{"and by its shape", "cut.precursor=408&coil.outside=1.3 mm&coil.count=140", "cut.precursor:mark t", "kept: it is already cut"},
		// D = 1.3 − 0.55829 mm and p = 86 ÷ 145 mm make 1.15270 × √((π D)² + p²) ÷ p = 4.67306, and 408 ÷ that 87.309 mm
		{"two lengths of one piece", "cut.precursor=408&clamp.measured=86&coil.outside=1.3 mm&coil.count=145", "note.measured-shape t", "Your 86 mm is what is used. What was cut and the shape under Coil make it 87.31 mm, 1.309 mm off."},
		{"one length", "cut.precursor=408&clamp.measured=86", "note.measured-shape:row h", "1"},
		{"one stage has no second gap", "clamp.stages=one", "clamp.second:mark t", "no second heat-set"},
		{"nothing follows from what is given", "drive.target=15", "drive.heat-most:doubt t", "needs a change of temperature when hot"},
		{"nor does the strip", "clamp.stages=one", "page data-one", "1"},
		{"two have", "", "page data-one", ""},
		{"the strip", "", "n:hang.add t", "333 g"},
		{"unknown, in several places", "", "n:wire.current t", ""},
		{"known", "wire.route=twisted&wire.per-length=50&wire.supply-voltage=5", "n:wire.current t", "0.2443 A"}, // 5 over 20.469
	} {
		got, ok := shown(t, english(), row.plan)[row.slot]
		assert.True(t, ok, "%s: no slot %s", row.name, row.slot)
		assert.Equal(t, row.want, got, "%s: %s of %s", row.name, row.slot, row.plan)
	}
}

// While a box is being typed in nothing is said against it yet.
func TestTyping(t *testing.T) {
	d := english()
	d.Typing = calc.FibreDiameter
	v := shown(t, d, "fibre.diameter=0.5x&hang.stress=y")
	assert.Equal(t, "", v["fibre.diameter:says t"])
	assert.NotEqual(t, "stop", v["fibre.diameter:box s"])
	assert.Equal(t, "stop", v["hang.stress:box s"], "another box is told at once")
	assert.Equal(t, "–", v["hang.load-area t"], "but no number that is gone is kept")
}

func TestAnswersShown(t *testing.T) {
	v := shown(t, english(), "")
	assert.Equal(t, "16.39 MPa", v["hang.under-stress t"])
	assert.Equal(t, "plain", v["hang.under-stress:row s"])
	assert.Equal(t, "± 0.63 MPa mostly from fibre diameter", v["hang.under-stress:doubt t"])
	assert.Equal(t, "–", v["fibre.packing t"])
	assert.Equal(t, "unknown", v["fibre.packing:row s"])
	assert.Equal(t, "needs what that length weighs", v["fibre.packing:doubt t"])
	assert.Equal(t, "6", v["cut.all-pieces t"])
}

func TestNotesShown(t *testing.T) {
	v := shown(t, english(), "")
	for i := range calc.Notes {
		key := "note." + calc.Notes[i].Key
		assert.Equal(t, "", v[key+" t"])
		assert.Equal(t, "1", v[key+":row h"], "%s is hidden", key)
	}
	v = shown(t, english(), "fibre.polymer=nylon-6&fibre.weighed-length=10 m&fibre.weighed-mass=2.95 g&cut.trial-precursor=300 mm&cut.trial-coiled=60 mm")
	assert.Equal(t, "Weighed as solid it would have 1389 kg/m³, which is nearer to polyester than to nylon 6. Is it another polymer?", v["note.weighed-polymer t"])
	assert.Equal(t, "", v["note.weighed-polymer:row h"])
}

// No sentence names a key, an unknown placeholder or a dash: a note is said only where the numbers in it are known.
func TestSentencesAreWhole(t *testing.T) {
	for _, plan := range plans(t) {
		for key, value := range shown(t, english(), plan.Text) {
			assert.NotContains(t, value, "{", key)
			for _, prefix := range []string{"name.", "note.", "problem.", "word.", "mark.", "holds.", "method.", "reading.", "advice."} {
				assert.False(t, strings.HasPrefix(value, prefix), "%s: %s", key, value)
			}
			if strings.HasPrefix(key, "note.") {
				assert.NotContains(t, value, "–", "%s in %s", key, plan.Name)
			}
		}
	}
}

// A closed working is not rendered; an open one has its equation, its numbers, what its symbols are, where it holds and its source.
func TestWorkingShown(t *testing.T) {
	d := english()
	assert.Equal(t, "", shown(t, d, "")["hang.mass:working t"])
	for id := range d.Open {
		d.Open[id] = true
	}
	v := shown(t, d, "")
	assert.Equal(t, strings.Join([]string{
		"F = σ × A",
		"F = 17 MPa × 0.2124 mm² = 3.610 N",
		"σ stress; A area under load",
		"Holds on the area before twisting, mass at rest",
		"Source: a definition or plain geometry; arithmetic: exact, given the inputs",
		"m = F ÷ g",
		"m = 3.610 N ÷ 9.80665 m/s² = 368 g",
		"F force",
		"Holds for a mass at rest; gravity differs by at most 0.27 % from place to place",
		"Source: a definition or plain geometry; arithmetic: exact, given the inputs",
	}, "\n"), v["hang.mass:working t"])
	assert.Equal(t, "You typed this.", v["hang.stress:working t"])
	assert.Equal(t, "needs cross-section of one strand of the companion yarn", v["yarn.area:working t"])
	assert.Contains(t, v["cut.length:working t"], "l = 408.0 mm + 2 × 40 mm = 488 mm, rounded up")
	assert.Contains(t, v["hang.under:working t"], "mass to add to the hook: 333 g; masses you own: 20x2, 50x2, 100, 200")
	assert.Contains(t, v["fibre.density:working t"], "Physical Properties of Textile Fibres")
	for key, value := range v {
		if strings.HasSuffix(key, ":working t") {
			assert.NotEmpty(t, value, key)
			assert.NotRegexp(t, `\b(holds|method|source|grade|working|name)\.`, value, key)
		}
	}
}

// A wish that no longer counts is said at its number.
func TestWishIsSaid(t *testing.T) {
	st, _ := work(t, "cut.precursor=408 mm&clamp.measured=88 mm")
	d := english()
	d.Wish, d.Wished = calc.ClampFinished, "100,5 mm"
	assert.Contains(t, string(d.Slots(nil, st)), "clamp.finished:says\x1ft\x1fYour wish of 100.5 mm no longer counts: what is cut is cut, and the finished length after release follows from it. Undo goes back.\x1e")
	assert.Contains(t, string(d.Slots(nil, st)), "clamp.first:says\x1ft\x1f\x1e")
	d.Wish = calc.None
	assert.NotContains(t, string(d.Slots(nil, st)), "no longer counts")

	st, _ = work(t, "clamp.finished=100 mm")
	d.Wish = calc.ClampFinished
	assert.NotContains(t, string(d.Slots(nil, st)), "no longer counts", "it is the given")
}
