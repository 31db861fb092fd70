package browser

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// Where a number has two readings the page says which it took and offers the other, which takes one tap.
func TestTwoReadings(t *testing.T) {
	p := open(t, phone)
	for _, c := range []struct {
		name, key, text string
		says, offers    string
		before, after   pair
		then            string // what the box holds after the tap
	}{
		// ÷ 4.8: 1.234 ÷ 4.8 = 0.25708; 1234 ÷ 4.8 = 257.08.
		{"point", "cut.precursor", "1.234", says("reading.decimal", "", "1.234 mm"), says("reading.other", "", "1234 mm"), pair{"clamp.coiled", "0.2571 mm"}, pair{"clamp.coiled", "257.1 mm"}, "1234"},
		{"comma", "cut.precursor", "1,234", says("reading.decimal", "", "1.234 mm"), says("reading.other", "", "1234 mm"), pair{"clamp.coiled", "0.2571 mm"}, pair{"clamp.coiled", "257.1 mm"}, "1234"},
		// 1.234 m is in reach of a ruler: 1234 ÷ 4.8 again, and a thousand times as much.
		{"with a unit", "cut.precursor", "1.234 m", says("reading.decimal", "", "1.234 m"), says("reading.other", "", "1234 m"), pair{"clamp.coiled", "257.1 mm"}, pair{"cut.precursor", "1234 m"}, "1234"},
		// 1,234 kg hung: 1234 - 35; what was meant may be 1234 kg, which is more than can be.
		{"mass", "hang.mass", "1,250", says("reading.decimal", "", "1.25 g"), says("reading.other", "", "1250 g"), pair{"hang.force", "0.01226 N"}, pair{"hang.force", "12.26 N"}, "1250"},
		// Ten times too thick: 5 mm is unusual, and 0.5 mm is meant.
		{"ten times too much", "fibre.diameter", "5", says("advice.usual", "fibre.diameter", "0.03 mm", "2 mm"), says("reading.other", "", "0.5 mm"), pair{"fibre.area", "19.63 mm²"}, pair{"fibre.area", "0.1963 mm²"}, "0.5"},
	} {
		t.Run(c.name, func(t *testing.T) {
			p.again(t)
			p.fill(c.key, c.text)
			p.expect(c.key+":says", c.says)
			p.expect(c.key+":other", c.offers)
			p.expect(c.before.id, c.before.text)
			assert.Equal(t, c.text, p.value(c.key))
			p.shot("reading-" + c.name)
			p.press("[id='" + c.key + ":other']")
			if c.after.text != "" {
				p.expect(c.after.id, c.after.text)
			}
			assert.Equal(t, c.then, p.value(c.key))
			assert.Equal(t, c.key, eval[string](p, `document.activeElement.id`), "the focus is in the box, not lost with the button")
			assert.True(t, eval[bool](p, byID(c.key+":other")+`.hidden`))
			p.press("#undo")
			p.expect(c.before.id, c.before.text)
		})
	}
}

// A unit chosen beside a number that was typed changes what the number means; beside a worked-out one, how it is shown.
func TestUnitChosen(t *testing.T) {
	p := open(t, phone)
	p.fill("fibre.diameter", "22")
	p.leave()
	p.choose("fibre.diameter:unit", "thou")
	p.expect("fibre.diameter", "22 thou")
	p.expect("fibre.diameter:says", says("reading.echo", "", "0.5588 mm"))
	p.expect("fibre.area", "0.2452 mm²") // π/4 × 0.5588²

	p.choose("hang.mass:unit", "oz")
	p.expect("hang.stress", "17 MPa")
	p.expect("hang.mass", "15.0 oz") // 0.245246 mm² × 17 MPa ÷ 9.80665 = 425.14 g, ÷ 28.349523
	p.expect("hang.mass:mark", says("mark.worked", ""))

	// What is typed beside the chosen unit is in it.
	p.fill("hang.mass", "16")
	p.expect("hang.mass", "16 oz")
	p.expect("hang.force", "4.448 N") // one pound: 0.45359237 × 9.80665

	// A unit typed behind the number counts before the one beside it, and one chosen later takes its place.
	p.fill("clamp.coiled", "3 in")
	p.leave()
	p.expect("clamp.coiled", "3 in")
	p.expect("cut.precursor", "365.8 mm") // 76.2 × 4.8 = 365.76
	p.choose("clamp.coiled:unit", "cm")
	p.expect("clamp.coiled", "3 cm")
	p.expect("cut.precursor", "144.0 mm") // 30 × 4.8

	p.choose("fibre.density:unit", "g/cm³")
	p.expect("fibre.density", "1.140 g/cm³")
}

// The switch to US units changes what is shown, never what was typed, and stays with the device and not with the plan. What was typed in
// another unit has it in its own box alone.
func TestUS(t *testing.T) {
	p := open(t, phone)
	p.fill("fibre.diameter", "0.50")
	p.leave()
	p.choose("units", "us")
	p.expect("fibre.diameter", "0.50 mm")
	p.expect("hang.stress", "17 MPa")
	p.expect("hang.stress:says", says("reading.echo", "", "2466 psi")) // 17 MPa ÷ 6894.757 Pa
	p.expect("fibre.area", "0.0003043 in²")                            // 0.19635 mm² ÷ 645.16
	p.expect("hang.mass", "12.0 oz")                                   // 0.19635 × 17 ÷ 9.80665 = 340.38 g, ÷ 28.349523 = 12.006
	p.expect("cut.precursor", "16.06 in")                              // 408 ÷ 25.4
	p.expect("cut.length", "19.21 in")                                 // 488 ÷ 25.4 = 19.213
	p.whole("us")
	p.reload()
	p.expect("hang.mass", "12.0 oz")
	p.expect("fibre.diameter", "0.50 mm")
	p.fill("hang.mass", "12")
	p.expect("hang.mass", "12 oz") // the unit beside it when it was typed
	p.leave()
	p.choose("units", "metric")
	p.expect("hang.mass", "12 oz")
	p.expect("cut.length", "488 mm")
}
