package browser

import (
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/assert"
)

// paste puts a text into a box at once, as from a clipboard.
func (p *page) paste(key, text string) {
	p.t.Helper()
	p.reveal(key)
	eval[bool](p, `(e => { e.focus(); e.select(); return document.execCommand("insertText", false, `+quote(text)+`) })(`+byID(key)+`)`)
}

// quote writes a text as a literal of JavaScript.
func quote(text string) string {
	out := `"`
	for _, r := range text {
		switch r {
		case '\n':
			out += `\n`
		case '\t':
			out += `\t`
		case '"', '\\':
			out += `\` + string(r)
		default:
			out += string(r)
		}
	}
	return out + `"`
}

// What can't be, where it warms and cools: a sentence at its box, what hangs on it is a dash, and nothing typed is lost.
func TestDriveNonsense(t *testing.T) {
	p := open(t, phone)
	for _, c := range []struct{ key, text, says, dash string }{
		{"drive.speed", "100", says("problem.high", "drive.speed", "30 m/s"), ""}, // a fan
		{"drive.target", "-300", says("problem.low", "drive.target", "-30 °C"), "drive.high"},
		{"drive.room", "warm", says("problem.number", "drive.room", "warm"), "drive.heat-most"},
		{"drive.power", "0", says("problem.low", "drive.power", "0.000001 W"), "drive.hottest"},
		{"drive.power", "2 A", says("problem.unit", "drive.power", "A", "W, mW, kW, Btu/h"), "drive.energy"},
		{"drive.on", "-1", says("problem.low", "drive.on", "0.001 s"), "drive.high"},
		{"drive.emissivity", "150", says("problem.high", "drive.emissivity", "100 %"), "drive.heat-most"},
		{"drive.specific-heat", "2 J", says("problem.unit", "drive.specific-heat", "J", "J/(kg·K), kJ/(kg·K), cal/(g·K)"), "drive.heat-most"},
	} {
		t.Run(c.key+" "+c.text, func(t *testing.T) {
			p.again(t)
			p.choose("drive.way", "fan") // else its speed is out of sight
			p.fill(c.key, c.text)
			p.leave()
			p.expect(c.key+":says", c.says)
			assert.Equal(t, "stop", p.state(c.key+":box"))
			assert.Equal(t, c.text, p.value(c.key))
			if c.dash != "" {
				p.expect(c.dash, "–")
			}
		})
	}
}

// A bath that boils, and a muscle that must get as cold as the room.
func TestBath(t *testing.T) {
	p := open(t, phone)
	p.choose("drive.way", "water")
	p.fill("drive.target", "150")
	p.leave()
	p.expect("note.water-boils", says("note.water-boils", "", "100 °C", "0 m"))
	p.expect("drive.high", "–")
	assert.Equal(t, "150", p.value("drive.target"))
	p.fill("drive.target", "80")
	p.fill("drive.cool-to", "20")
	p.leave()
	p.expect("note.drive-cold", says("note.drive-cold", "", "20 °C"))
	p.expect("drive.cool-most", "never")
	p.expect("note.lumped-range", says("note.lumped-range", "", p.text("drive.biot"), p.text("drive.inner")))
}

// A cooling curve as a logger or a sheet gives it: with a heading, decimal commas and gaps; one row is too few; what was pasted stays.
func TestCurve(t *testing.T) {
	p := open(t, phone)
	book := p.text("drive.cool-most")
	const good = "time s;temp °C\n0;80,0\n5;56,4\n10;42,1\n20;28,1"
	p.paste("drive.curve", good)
	p.leave()
	p.expect("drive.curve:says", says("reading.rows", "", "4"))
	p.expect("drive.constant", "10.0 s") // 60 × exp(−t/10) over a room of 20 °C
	p.expect("note.curve-used", says("note.curve-used", ""))
	assert.NotEqual(t, book, p.text("drive.cool-most"))
	assert.Equal(t, good, p.value("drive.curve"))
	p.reload()
	assert.Equal(t, good, p.value("drive.curve"), "it is kept")
	p.expect("drive.constant", "10.0 s")

	const gaps = "0\t80\n5\t\n10\t42.1\n20\t28.1\n"
	p.paste("drive.curve", gaps)
	p.expect("drive.curve:says", says("reading.rows", "", "3")+" "+says("reading.left-out", "", "5\t"))
	p.expect("drive.constant", "10.0 s")

	p.paste("drive.curve", "0 15\n5 18\n\nbreak\n10 19\nend")
	p.expect("drive.curve:says", says("reading.rows", "", "3")+" "+says("reading.lines-out", "", "2", "break"))
	p.expect("note.curve-colder", says("note.curve-colder", "", "20 °C"))

	p.paste("drive.curve", "0 80")
	p.leave()
	p.expect("drive.curve:says", says("problem.times", ""))
	assert.Equal(t, "stop", p.state("drive.curve:box"))
	assert.Equal(t, "0 80", p.value("drive.curve"))
	p.expect("drive.constant", "–")
	p.expect("drive.cool-most", book)

	p.paste("drive.curve", "0 40\n5 50\n10 60")
	p.expect("note.curve-straight", says("note.curve-straight", "", "20 °C"))
}

// The slider and the box beside it say one moment, in the unit of the box, and the marker stands there.
func TestSlider(t *testing.T) {
	for _, s := range []screen{phone, desk} {
		t.Run(s.name, func(t *testing.T) {
			p := open(t, s)
			const slide = `document.getElementById("drive.at:slide")`
			shown := eval[float64](p, `+`+slide+`.max`)
			assert.Greater(t, shown, 10.0)
			p.fill("drive.at", "30")
			p.leave()
			assert.Equal(t, 30.0, eval[float64](p, `+`+slide+`.value`))
			before := p.text("drive.at-most")
			assert.NotContains(t, before, "–")
			assert.NotEmpty(t, eval[string](p, byID("draw.drive.mark")+`.getAttribute("d")`))
			assert.Contains(t, p.text("draw.drive.mark-label"), before)
			p.shot("drive-" + s.name)

			eval[bool](p, `(`+slide+`.focus(), true)`)
			p.do(chromedp.KeyEvent(kb.End))
			p.until(`+` + byID("drive.at") + `.value > 30`)
			assert.InEpsilon(t, shown, eval[float64](p, `+`+byID("drive.at")+`.value`), 0.005)
			p.until(byID("drive.at-most") + `.textContent !== ` + quote(before))
			p.do(chromedp.KeyEvent(kb.Home))
			p.expect("drive.at-most", "20.0 °C")
			p.press("#undo")
			p.fill("drive.at", "1 h")
			p.leave()
			p.expect("note.at-beyond", says("note.at-beyond", "", p.text("drive.shown")))
			p.expect("drive.at-most", "–")
		})
	}
}

// A fan-cooled heater and a hot-water muscle, as they are typed, looked at in every light.
func TestDriveSection(t *testing.T) {
	for _, s := range []screen{phone, desk} {
		for name, looks := range map[string][]look{"": nil, "-dark": {dark}} {
			t.Run(s.name+name, func(t *testing.T) {
				p := open(t, s, looks...)
				p.fill("drive.target", "100")
				p.fill("drive.power", "6")
				p.fill("drive.cool-to", "40")
				p.choose("drive.way", "hanging")
				p.fill("drive.at", "8")
				p.leave()
				p.shot("drive-heater-" + s.name + name)
				p.expect("note.drive-melts", says("note.drive-melts", "", p.text("drive.stuck"), "255 °C", p.text("drive.melt-time")))
				eval[bool](p, byID("drive.way")+`.closest(".step").scrollIntoView({behavior: "instant"}) === undefined`)
				p.shot("drive-top-" + s.name + name)
				p.choose("drive.way", "fan")
				p.reveal("drive.biot")
				eval[bool](p, byID("draw.drive.frame")+`.closest("figure").scrollIntoView({behavior: "instant"}) === undefined`)
				p.shot("drive-fan-" + s.name + name)
				p.choose("drive.way", "water")
				p.fill("drive.power", "")
				p.fill("drive.target", "80")
				p.leave()
				eval[bool](p, byID("draw.drive.frame")+`.closest("figure").scrollIntoView({behavior: "instant"}) === undefined`)
				p.shot("drive-water-" + s.name + name)
				eval[bool](p, `(document.querySelector(".touches").closest("details").open = true, document.querySelector(".touches").scrollIntoView({behavior: "instant", block: "center"}), true)`)
				p.shot("drive-touch-" + s.name + name)
				p.press("#drive-bench")
				p.shot("drive-bench-" + s.name + name)
			})
		}
	}
}
