package browser

import (
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"

	"twistbench/calc/words"
)

// A heater on a 5 V supply, typed by hand. 408 mm at 50 Ω/m are 20.4 Ω, two metres of 0.5 mm² 0.069 Ω.
func TestWireTyped(t *testing.T) {
	p := open(t, phone)
	heater := []pair{{"wire.route", "twisted"}, {"wire.per-length", "50"}, {"wire.supply-voltage", "5"}}
	changes := says("mark.change", "", says("name.wire.route", "")) // a choice that is made, and nothing follows from it
	and := func(more ...pair) []pair { return append(append([]pair(nil), heater...), more...) }
	for _, c := range []struct {
		name  string
		given []pair
		want  []pair
	}{
		{"warmed from outside", nil, []pair{{"draw.wire.none", says("draw.wire.none", "")}, {"wire.ohms", "–"}, {"wire.ohms:doubt", changes}, {"wire.fuse:doubt", changes}, {"wire.current:mark", changes}}},
		{"one choice, a port", []pair{{"wire.route", "twisted"}, {"wire.per-length", "50"}, {"wire.supply", "usb-c"}}, []pair{{"wire.supply-voltage", "5.000 V"}, {"wire.supply-voltage:mark", says("mark.book", "")}, {"wire.current", "0.2443 A"}, {"note.wire-over", ""}}},
		{"more volts than a port gives", and(pair{"wire.supply", "usb-c"}, pair{"wire.supply-voltage", "9"}), []pair{{"note.wire-over", says("note.wire-over", "", words.English.Say("word.usb-c"), "5.0 V", "9 V")}, {"wire.current", "0.4397 A"}}},                   // 9 over 20.469
		{"less power than a port's volts make", and(pair{"wire.supply", "usb-c"}, pair{"wire.power", "0.5"}), []pair{{"note.wire-under", says("note.wire-under", "", words.English.Say("word.usb-c"), "5.0 V", "3.205 V")}}},                                           // √(0.5 ÷ 20.4) through 20.469
		{"more than any small fuse", []pair{{"wire.route", "twisted"}, {"wire.per-length", "1"}, {"wire.supply-voltage", "5"}}, []pair{{"note.wire-fuse-none", says("note.wire-fuse-none", "", "10.48 A")}, {"wire.fuse", "–"}}},                                       // 5 over 0.408 and 0.06897
		{"which yarn for 2 W", and(pair{"wire.wanted-power", "2"}), []pair{{"wire.wanted-ohms", "12.50 Ω"}, {"wire.wanted-per-length", "30.64 Ω/m"}, {"wire.wanted-length", "250.0 mm"}, {"wire.wanted-strands", "2"}, {"wire.wanted-real", "2.45 W"}}},                // 25 over 2; 25 over 10.2
		{"far more than wanted", []pair{{"wire.route", "twisted"}, {"wire.per-length", "45"}, {"wire.supply-voltage", "12"}, {"wire.wanted-power", "3"}}, []pair{{"wire.wanted-real", "7.84 W"}, {"note.wire-wanted", says("note.wire-wanted", "", "7.84 W", "3 W")}}}, // 144 over 18.36
		{"as the trade names its wire", and(pair{"wire.gauge", "AWG 24"}), []pair{{"wire.lead-diameter", "0.511 mm"}}},                                                                                                                                                 // W02
		{"four noughts", and(pair{"wire.gauge", "4/0"}), []pair{{"wire.lead-diameter", "11.7 mm"}, {"wire.gauge:says", says("reading.echo", "wire.gauge", "-3 AWG")}}},                                                                                                 // 0.46 in
		{"by its own ohms", and(pair{"wire.coefficient", "0.2"}, pair{"wire.read-cold", "20"}, pair{"wire.read-hot", "21"}), []pair{{"wire.read-temperature", "45.0 °C"}}},                                                                                             // 5 % at 0.2 % a degree from 20 °C
		{"a heater", heater, []pair{{"wire.ohms", "20.40 Ω"}, {"wire.current", "0.2443 A"}, {"wire.power", "1.217 W"}, {"wire.fuse", "0.250 A"}, {"wire.of-precursor", "0.500 Ω/cm"}, {"draw.wire.none", ""}}},
		{"two side by side, half the time", and(pair{"wire.rows", "2"}, pair{"wire.duty", "50"}), []pair{{"wire.total", "10.20 Ω"}, {"wire.on-time", "10.0 s"}, {"wire.average-current", "0.243 A"}, {"wire.side-current", "0.490 A"}, {"wire.row-current", "0.123 A"}}}, // 5 V over 10.27 Ω
		{"watts that are too many", and(pair{"wire.average", "2"}), []pair{{"note.wire-average", says("note.wire-average", "", "1.217 W")}, {"wire.average", "2 W"}, {"wire.duty", "%"}}},
		{"a port that gives too little", and(pair{"wire.supply", "usb-2"}, pair{"wire.rows", "3"}), []pair{{"note.wire-most", says("note.wire-most", "", "0.7279 A", "0.500 A")}, {"wire.most:mark", says("mark.book", "")}}},                                 // 5 V over 6.869 Ω
		{"a power bank that switches off", and(pair{"wire.supply", "power-bank"}, pair{"wire.duty", "20"}), []pair{{"note.wire-pause", says("note.wire-pause", "", "16.0 s", "100 mA", "50.0 Ω")}, {"wire.dummy", "50.0 Ω"}, {"wire.dummy-power", "0.50 W"}}}, // 5 V over 0.1 A
		{"the hint's number as it stands there", and(pair{"wire.supply", "power-bank"}, pair{"wire.duty", "20"}, pair{"wire.least-current", "50"}), []pair{{"wire.dummy", "100 Ω"}}},                                                                          // 5 V over 0.05 A
		{"a least that is no least", and(pair{"wire.supply", "power-bank"}, pair{"wire.least-current", "3 A"}), []pair{{"note.wire-least-over", says("note.wire-least-over", "", "2.00 A")}, {"wire.dummy", "–"}, {"note.wire-least", ""}}},
		{"no ohms", []pair{{"wire.route", "twisted"}, {"wire.per-length", "0"}}, []pair{{"wire.per-length:says", says("problem.low", "wire.per-length", "0.001 Ω/m")}, {"wire.ohms", "–"}}},
		{"ohms below nothing", []pair{{"wire.route", "fibre"}, {"wire.before", "-3"}}, []pair{{"wire.before:says", says("problem.low", "wire.before", "0.001 Ω")}, {"wire.drift", "–"}}},
		{"a length below nothing", and(pair{"wire.lead-length", "-1"}), []pair{{"wire.lead-length:says", says("problem.low", "wire.lead-length", "0 m")}, {"wire.drop", "–"}, {"wire.ohms", "20.40 Ω"}}},
		{"the mains", []pair{{"wire.route", "fibre"}, {"wire.supply-voltage", "230"}}, []pair{{"wire.supply-voltage:says", says("problem.volts", "wire.supply-voltage", "60 V")}, {"wire.current", "A"}}},
		{"over 30 V", []pair{{"wire.route", "fibre"}, {"wire.supply-voltage", "48"}}, []pair{{"note.wire-volts", says("note.wire-volts", "")}}},
		{"a meter that reads its leads", []pair{{"wire.route", "fibre"}, {"wire.reading", "0.2"}, {"wire.reading-length", "500"}}, []pair{{"note.wire-leads", says("note.wire-leads", "")}, {"wire.per-length", "Ω/m"}}},
		{"a meter in feet", []pair{{"wire.route", "fibre"}, {"wire.reading", "14.3"}, {"wire.reading-length", "1 ft"}}, []pair{{"wire.per-length", "45.93 Ω/m"}}}, // 14 Ω/ft
	} {
		t.Run(c.name, func(t *testing.T) {
			p.again(t)
			p.enter(c.given)
			for _, w := range c.want {
				p.expect(w.id, w.text)
			}
		})
	}
}

// Rows as they are pasted: with a heading, commas and gaps, and one alone. Each is answered with a sentence, and no row is lost.
func TestLineTestPasted(t *testing.T) {
	p := open(t, phone)
	p.choose("wire.route", "twisted")
	paste := func(text string) {
		p.reveal("wire.test")
		eval[bool](p, `(e => { e.focus(); e.select(); return document.execCommand("insertText", false, `+strconv.Quote(text)+`) })(`+byID("wire.test")+`)`)
		p.leave()
	}
	paste("length (mm), ohms\n100, 5.4\n200, 10.4\n\ngap\n300, 15.4")
	p.expect("wire.test:says", says("reading.rows", "wire.test", "3")+" "+says("reading.left-out", "wire.test", "gap"))
	p.expect("wire.test-per-length", "50.00 Ω/m")
	p.expect("wire.test-contact", "0.400 Ω")
	assert.Equal(t, "length (mm), ohms\n100, 5.4\n200, 10.4\n\ngap\n300, 15.4", p.raw("wire.test", "value"))
	p.press(`[data-do="line"]`)
	p.expect("wire.per-length", "50.00 Ω/m")
	paste("100;5,4")
	p.expect("wire.test:says", says("problem.rows", "wire.test", ""))
	p.expect("wire.test-per-length", "–")
	assert.Equal(t, "100;5,4", p.raw("wire.test", "value"))
	p.reload()
	assert.Equal(t, "100;5,4", p.raw("wire.test", "value"))
}

// A few ohms by volts and amperes, taken over into the box with a tap.
func TestVoltsAndAmperes(t *testing.T) {
	p := open(t, phone)
	p.enter([]pair{{"wire.route", "twisted"}, {"wire.reading-length", "250"}, {"wire.reading-volts", "1.2"}, {"wire.reading-amperes", "0.1"}})
	p.expect("wire.reading-ohms", "12.00 Ω")
	p.expect("wire.reading-per-length", "48.00 Ω/m")
	p.press(`[data-do="volts"]`)
	p.expect("wire.per-length", "48.00 Ω/m")
}

// What the way of the current and the supply have no use for is out of sight, and nothing that was typed there is lost.
func TestWireAway(t *testing.T) {
	p := open(t, phone)
	shown := func(id string) bool {
		return eval[bool](p, `((e) => { for (; e; e = e.parentElement) if (getComputedStyle(e).display === "none") return false; return true })(`+byID(id)+`)`)
	}
	seen := func(want bool, ids ...string) {
		t.Helper()
		for _, id := range ids {
			assert.Equal(t, want, shown(id), id)
		}
	}
	seen(false, "wire.per-length", "wire.supply", "wire.fuse", "wire.wrap-pitch")
	seen(true, "wire.route")
	p.choose("wire.route", "wrapped")
	seen(true, "wire.per-length", "wire.supply", "wire.fuse", "wire.wrap-pitch", "wire.strands")
	seen(false, "wire.charge", "wire.own-voltage:row")
	p.enter([]pair{{"wire.wrap-pitch", "1.2"}, {"wire.supply", "battery"}})
	seen(true, "wire.charge", "wire.least-current")
	p.enter([]pair{{"wire.route", "none"}})
	seen(false, "wire.wrap-pitch", "wire.charge")
	p.reload()
	seen(false, "wire.wrap-pitch", "wire.charge")
	p.choose("wire.route", "wrapped")
	p.expect("wire.wrap-pitch", "1.2 mm")
}

// Volts that melt it say so where they are typed, at once, and in the bench view, where the caution is whole too. 12 V on 20.4 Ω are 7.0 W; 5 V are 1.2 W.
func TestWireMelts(t *testing.T) {
	for _, s := range []screen{phone, desk} {
		p := open(t, s)
		p.enter([]pair{{"wire.route", "twisted"}, {"wire.per-length", "50"}, {"wire.supply-voltage", "5"}})
		p.expect("note.wire-melts", "")
		p.fill("wire.supply-voltage", "12")
		p.expect("note.wire-melts", says("note.wire-melts", "", "350 °C", "255 °C", "11.0 s"))
		p.leave()
		p.press("#wire-bench")
		assert.Greater(t, eval[float64](p, byID("note.wire-melts")+`.getBoundingClientRect().height`), 0.0, s.name)
		assert.True(t, eval[bool](p, `(e => e.scrollHeight <= e.clientHeight + 1)(document.querySelector("#wire .caution summary span"))`), s.name)
	}
}

// Trouble says its numbers as they are in this plan, and nothing in the place of one that is not known; elsewhere there is a dash. 408 mm at 45 Ω/m are
// 18.36 Ω, at 12 V with leads of 0.06897 Ω.
func TestTroubleNumbers(t *testing.T) {
	p := open(t, phone)
	link := func(row, key string) string {
		return eval[string](p, `((e) => { e.closest("details").open = true; e.scrollIntoView({behavior: "instant"}); return e.innerText.replace(/\s+/g, " ").trim() })([...document.querySelectorAll("#trouble .seen")].find((e) => e.textContent.startsWith(`+strconv.Quote(words.EnglishPage.Say("trouble."+row))+`)).querySelector('a[href="#`+key+`"]'))`)
	}
	dash := func() string {
		return eval[string](p, `getComputedStyle(document.querySelector('.gaps [data-slot="n:wire.current"]'), "::before").content`)
	}
	assert.Equal(t, "Ohms of all muscles", link("cold", "wire.total"))
	assert.Equal(t, "Current while on", link("cold", "wire.current"))
	assert.Equal(t, "Resistor beside it", link("off", "wire.dummy"))
	assert.Equal(t, `"–"`, dash())
	p.enter([]pair{{"wire.route", "twisted"}, {"wire.per-length", "45"}, {"wire.supply", "power-bank"}, {"wire.supply-voltage", "12"}, {"wire.duty", "20"}})
	p.leave()
	for _, want := range [][3]string{
		{"cold", "wire.total", "Ohms of all muscles 18.36 Ω"},
		{"cold", "wire.current", "Current while on 0.6511 A"}, // 12 over 18.429
		{"cold", "wire.drop", "Voltage lost in the leads 0.0449 V"},
		{"off", "wire.most", "Most that the supply gives 2.00 A"},
		{"off", "wire.least-current", "Least that the supply must give 100 mA"},
		{"off", "wire.dummy", "Resistor beside it 120 Ω"},                 // 12 V over 0.1 A, in pauses of 16 s
		{"smoke", "wire.full-power", "Power in a muscle while on 7.78 W"}, // 0.6511² times 18.36
	} {
		assert.Equal(t, want[2], link(want[0], want[1]))
	}
	for _, key := range []string{"drive.hottest", "drive.stuck"} {
		assert.Regexp(t, ` \d+ °C$`, link("smoke", key))
	}
	assert.Equal(t, "none", dash())
}

// Nothing of the section is wider than the screen, with every number in it and all of it open.
func TestWireSection(t *testing.T) {
	for _, s := range []screen{phone, desk} {
		for _, looks := range [][]look{nil, {dark}} {
			name := s.name + map[bool]string{true: "-dark"}[looks != nil]
			t.Run(name, func(t *testing.T) {
				p := open(t, s, looks...)
				p.enter([]pair{{"wire.route", "wrapped"}, {"wire.per-length", "50"}, {"wire.wrap-diameter", "1.5"}, {"wire.wrap-pitch", "1.2"}, {"wire.supply-voltage", "12"}, {"wire.in-row", "2"}, {"wire.rows", "3"}, {"wire.most", "0.1"}, {"wire.supply", "battery"}, {"wire.charge", "2000"}})
				p.shot("wire-screen-" + name)
				p.unfold()
				p.leave()
				assert.LessOrEqual(t, eval[int](p, `document.documentElement.scrollWidth`), int(s.width))
				assert.Empty(t, eval[[]string](p, `[...document.querySelectorAll("#wire .answer")].filter((e) => e.scrollWidth > e.clientWidth + 1).map((e) => e.id)`))
				eval[bool](p, `(document.querySelectorAll("main > section:not(#wire), header.top").forEach((e) => { e.hidden = true; e.style.setProperty("display", "none") }), true)`)
				p.whole("wire-" + name)
			})
		}
	}
}
