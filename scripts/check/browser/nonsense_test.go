package browser

import (
	"strings"
	"testing"
	"time"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
)

// What can't be read, or can't be, gets one sentence at its box; nothing typed is lost, what hangs on it is a dash that says what it
// needs, and the other groups go on.
func TestNonsense(t *testing.T) {
	const (
		size   = "hang.add"   // hangs on the fibre's size
		length = "cut.length" // does not
	)
	p := open(t, phone)
	for _, c := range []struct {
		key, text, says string
		dash, goesOn    string
		needs           string
	}{
		{"fibre.diameter", "0", says("problem.low", "fibre.diameter", "0.001 mm"), size, length, needs("fibre.diameter")},
		{"fibre.diameter", "-0.5", says("problem.low", "fibre.diameter", "0.001 mm"), size, length, needs("fibre.diameter")},
		{"fibre.diameter", "50", says("problem.high", "fibre.diameter", "20 mm"), size, length, needs("fibre.diameter")},
		{"fibre.diameter", "abc", says("problem.number", "fibre.diameter", "abc"), size, length, needs("fibre.diameter")},
		{"fibre.diameter", "0,4,5", says("problem.number", "fibre.diameter", "0,4,5"), size, length, needs("fibre.diameter")},
		{"fibre.diameter", "NaN", says("problem.number", "fibre.diameter", "NaN"), size, length, needs("fibre.diameter")},
		{"fibre.diameter", "0.5 MPa", says("problem.unit", "fibre.diameter", "MPa", "mm, µm, cm, m, in, thou, ft, yd"), size, length, needs("fibre.diameter")},
		{"fibre.diameter", "1e999", says("problem.finite", "fibre.diameter"), size, length, needs("fibre.diameter")},
		{"fibre.linear-density", "470f34x", says("problem.number", "fibre.linear-density", "x"), size, length, needs("fibre.linear-density")},
		{"fibre.strands", "1.5", says("problem.whole", "fibre.strands"), size, length, needs("fibre.strands")},
		{"hang.stress", "0", says("problem.low", "hang.stress", "0.000001 MPa"), size, length, needs("hang.stress")},
		{"hang.owned", "20x2; zebra", says("problem.item", "hang.owned", "zebra"), "hang.under", length, needs("hang.owned")},
		{"cut.ratio", "1", says("problem.one", "cut.ratio"), "cut.precursor", "clamp.first", needs("cut.ratio")},
		{"cut.ratio", "-4", says("problem.number", "cut.ratio", "-4"), "cut.precursor", "clamp.first", needs("cut.ratio")},
		{"clamp.first-stretch", "-120", says("problem.low", "clamp.first-stretch", "-99 %"), "clamp.first", size, needs("clamp.first-stretch")},
		{"clamp.coiled", "0", says("problem.low", "clamp.coiled", "0.1 mm"), length, size, needs("clamp.coiled")},
	} {
		t.Run(c.key+" "+c.text, func(t *testing.T) {
			p.again(t)
			goesOn := p.shows(c.goesOn)
			p.fill(c.key, c.text)
			p.leave()
			assert.Equal(t, c.says, p.shows(c.key+":says"))
			assert.Equal(t, "true", eval[string](p, byID(c.key)+`.getAttribute("aria-invalid")`))
			assert.Equal(t, "stop", p.state(c.key+":box"))
			assert.Equal(t, c.text, p.value(c.key))
			if eval[bool](p, byID(c.dash)+`.tagName === "INPUT"`) {
				assert.Empty(t, p.value(c.dash), c.dash)
				assert.Equal(t, c.needs, p.shows(c.dash+":mark"))
			} else {
				assert.Equal(t, "–", p.shows(c.dash), c.dash)
			}
			assert.Equal(t, goesOn, p.shows(c.goesOn), "other groups go on")
			p.shot("nonsense-" + c.key + "-" + strings.NewReplacer(" ", "-", ",", "-").Replace(c.text))
		})
	}
	p.reload()
	assert.Equal(t, "0", p.value("clamp.coiled"), "it is kept too")
	assert.Equal(t, says("problem.low", "clamp.coiled", "0.1 mm"), p.shows("clamp.coiled:says"))
}

// What is possible but unusual is worked with, and gets advice.
func TestUnusual(t *testing.T) {
	p := open(t, phone)
	for _, c := range []struct {
		name  string
		given []pair
		want  []pair
	}{
		{"a stress that breaks fibres", []pair{{"hang.stress", "200"}}, []pair{
			{"hang.stress:says", says("advice.usual", "hang.stress", "5 MPa", "50 MPa")}, {"hang.stress:other", says("reading.other", "hang.stress", "20 MPa")},
			// 200 MPa × 0.212372 mm² ÷ 9.80665 = 4331.1 g
			{"hang.mass", "4331 g"}, {"note.stress-high", says("note.stress-high", "")}}},
		{"a ratio near one", []pair{{"cut.ratio", "1.2"}}, []pair{
			{"cut.ratio:says", says("reading.ratio", "", "120 mm") + " " + says("advice.usual", "cut.ratio", "2 : 1", "9 : 1")}, {"cut.precursor", "102.0 mm"}, // 85 × 1.2
			{"note.ratio-open", says("note.ratio-open", "")}}},
		{"a stretch of seven times", []pair{{"clamp.first-stretch", "600"}}, []pair{
			{"clamp.first-stretch:says", says("advice.usual", "clamp.first-stretch", "2 %", "150 %")}, {"clamp.first", "595.0 mm"}}}, // 85 × 7
		{"five kilograms on a thin line", []pair{{"fibre.diameter", "0.2"}, {"hang.mass", "5 kg"}}, []pair{
			// 5 × 9.80665 ÷ (π/4 × 0.2²) = 1560.8 MPa
			{"hang.stress", "1561 MPa"}, {"hang.stress:box", ""}, {"note.stress-break", says("note.stress-break", "")}}},
		{"second stretch smaller than the first", []pair{{"clamp.first-stretch", "50"}, {"clamp.second-stretch", "20"}}, []pair{
			{"clamp.second", "102.0 mm"}, {"clamp.second-stretch:says", says("reading.of", "", says("word.coiled", ""))}, // 85 × 1.2
			{"note.second-shorter", says("note.second-shorter", "")}}},
		{"the same, of the first gap", []pair{{"clamp.first-stretch", "50"}, {"clamp.second-stretch", "20"}, {"clamp.second-base", "first-gap"}}, []pair{
			{"clamp.second", "153.0 mm"}, {"clamp.second-stretch:says", says("reading.of", "", says("word.first-gap", ""))}}}, // 85 × 1.5 × 1.2
		{"no stretch", []pair{{"clamp.first-stretch", "0"}, {"clamp.second-stretch", "0"}}, []pair{
			{"clamp.second", "85.00 mm"}, {"clamp.travel-length", "0 mm"}, {"note.no-room", says("note.no-room", "")}}},
	} {
		t.Run(c.name, func(t *testing.T) {
			p.again(t)
			p.enter(c.given)
			for _, want := range c.want {
				if want.text == "" {
					assert.NotEqual(t, "stop", p.state(want.id), "not refused")
					continue
				}
				p.expect(want.id, want.text)
				assert.True(t, eval[bool](p, byID(want.id)+`.checkVisibility()`), want.id)
			}
			for _, g := range c.given {
				assert.NotEqual(t, "true", eval[string](p, byID(g.id)+`.getAttribute("aria-invalid") ?? ""`), g.id)
			}
			p.shot("unusual-" + strings.ReplaceAll(c.name, " ", "-"))
		})
	}
}

// A given that is taken away stays the given: its group shows dashes and what it needs, never the last number.
func TestCleared(t *testing.T) {
	p := open(t, phone)
	p.fill("fibre.diameter", "")
	p.leave()
	for _, key := range []string{"fibre.linear-density", "fibre.area", "hang.mass", "hang.add", "hang.force"} {
		assert.Empty(t, p.value(key), key)
		assert.Equal(t, needs("fibre.diameter"), p.shows(key+":mark"), key)
		assert.Equal(t, "unknown", p.state(key+":box"), key)
	}
	for _, id := range []string{"hang.under", "hang.drop-coiled", "cut.fibre-mass"} {
		p.reveal(id)
		p.expect(id, "–")
	}
	assert.Equal(t, `"–"`, eval[string](p, `(e => e.textContent + getComputedStyle(e, "::before").content)(document.querySelector("[data-slot='n:hang.add']"))`), "in the strip")
	p.expect("cut.length", "488 mm")
	assert.Empty(t, p.shows("fibre.diameter:says"), "nothing typed is no mistake")
	assert.Equal(t, "false", eval[string](p, byID("fibre.diameter")+`.getAttribute("aria-invalid")`))
	p.shot("cleared")
	p.fill("fibre.area", "0.2")
	p.expect("hang.force", "3.400 N") // 0.2 mm² × 17 MPa
	p.expect("fibre.area:mark", says("mark.given", ""))
}

// While a number is being typed nothing complains: what is wrong is said after a pause, or on leaving the box.
func TestSaidAfterPause(t *testing.T) {
	p := open(t, phone)
	p.fill("fibre.diameter", "0.")
	said := func() string {
		return p.text("fibre.diameter:says") + eval[string](p, byID("fibre.diameter")+`.getAttribute("aria-invalid")`)
	}
	p.fill("fibre.diameter", "x")
	start := time.Now()
	early := said()
	if time.Since(start) < 600*time.Millisecond { // else the machine was too busy to tell
		assert.Equal(t, "false", early, "not yet")
	}
	p.expect("fibre.diameter:says", says("problem.number", "fibre.diameter", "x"))
	assert.Equal(t, "fibre.diameter", eval[string](p, `document.activeElement.id`), "after a pause, still in the box")
	assert.Equal(t, p.text("fibre.diameter:says"), p.text("say"), "and read out once")

	p.do(chromedp.KeyEvent("\b0.5"))
	assert.Equal(t, "false", said(), "taken back at once when it is mended")
	p.do(chromedp.KeyEvent("y"))
	p.leave()
	assert.Contains(t, said(), "y")
	assert.Contains(t, said(), "true")
}

// A number pasted with its unit is taken.
func TestPasted(t *testing.T) {
	p := open(t, phone)
	p.fill("fibre.diameter", "")
	eval[bool](p, `document.execCommand("insertText", false, "  0.5 mm\n")`)
	p.expect("fibre.area", "0.1963 mm²") // π/4 × 0.5²
	p.leave()
	p.expect("fibre.diameter", "0.5 mm")
}
