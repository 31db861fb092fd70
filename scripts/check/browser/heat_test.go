package browser

import (
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// The oven, typed by hand. Each expected number is worked out beside it.
func TestHeatTyped(t *testing.T) {
	p := open(t, phone)
	for _, c := range []struct {
		name  string
		given []pair
		want  []pair
	}{
		{"start plan", nil, []pair{ // 180 + 10, 255 − 190; (350 − 20)/80 is 4 and (300 − 20)/200 is 1, of 2 pieces; 6 pieces; 1661 min
			{"heat.dial", "180 °C"}, {"heat.peak", "190 °C"}, {"heat.melt", "255 °C"}, {"heat.margin", "65.0 K"}, {"heat.per-load", "8"}, {"heat.loads", "1"}, {"heat.total", "27.7 h"},
		}},
		{"two readings", []pair{{"heat.dial-1", "150"}, {"heat.probe-1", "160"}, {"heat.dial-2", "200"}, {"heat.probe-2", "212"}},
			[]pair{{"heat.slope", "1.040"}, {"heat.dial", "169 °C"}, {"note.probe-falls", ""}, {"note.dial-one", ""}}}, // 175 + (180 − 186)/1.04
		{"readings that fall", []pair{{"heat.dial-1", "150"}, {"heat.probe-1", "180"}, {"heat.dial-2", "200"}, {"heat.probe-2", "160"}},
			[]pair{{"heat.dial", "–"}, {"note.probe-falls", says("note.probe-falls", "")}, {"heat.probe-1", "180 °C"}, {"heat.peak", "190 °C"}}}, // nothing is lost, the rest goes on
		{"one reading", []pair{{"heat.dial-1", "150"}, {"heat.probe-1", "178"}}, []pair{{"heat.dial", "152 °C"}}}, // 28 too hot
		{"in Fahrenheit", []pair{{"heat.set", "356 F"}, {"heat.overshoot", "18 °F"}}, []pair{{"heat.peak", "190 °C"}, {"heat.margin", "65.0 K"}}},
		{"above melting", []pair{{"heat.set", "260"}}, []pair{{"note.heat-over", says("note.heat-over", "", "255 °C")}, {"heat.set", "260 °C"}}},
		{"peak above melting", []pair{{"heat.set", "240"}, {"heat.overshoot", "20"}}, []pair{{"note.peak-over", says("note.peak-over", "", "260 °C", "255 °C")}}},
		{"times as they are said", []pair{{"heat.hold-1", "1 h 30"}, {"heat.rest", "2 days"}}, []pair{{"heat.total", "52.2 h"}}}, // 1661 + 30 + 1440 min
		{"times as a clock shows them", []pair{{"heat.hold-1", "1:30"}}, []pair{{"heat.total", "28.2 h"}, {"heat.hold-1:says", says("reading.decimal", "", "90 min")}, {"heat.hold-1:other", says("reading.other", "", "1 min 30")}}},
		{"one stage", []pair{{"clamp.stages", "one"}}, []pair{{"heat.total", "25.9 h"}}}, // 15 + 3 + 5 + 60 + 30 + 1440 = 1553 min
		{"too hot to be true", []pair{{"heat.set", "500"}}, []pair{{"heat.dial", "–"}, {"heat.set:says", says("problem.high", "heat.set", "400 °C")}}},
		{"a fibre without a name", []pair{{"fibre.polymer", "other"}}, []pair{{"note.heat-unknown", says("note.heat-unknown", "")}, {"heat.margin", "–"}, {"heat.margin:doubt", needs("heat.melt")}}},
		{"frame too large", []pair{{"heat.frame-length", "40 cm"}}, []pair{{"heat.per-load", "0"}, {"note.frame-large", says("note.frame-large", "")}}},
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

// Of one heat-set alone nothing of a second is in sight, in no section, but what was typed there comes back; and a second gap that everything
// else follows from stays.
func TestOneStage(t *testing.T) {
	p := open(t, phone)
	p.unfold()
	p.fill("heat.hold-2", "75")
	p.fill("clamp.second-stretch", "40")
	p.leave()
	const second = `[...document.querySelectorAll("main label, main .name, main a, .strip span, .big p, h3")].filter((e) => e.checkVisibility({contentVisibilityAuto: false}) && /second(?!s)|re-clamp/i.test(e.textContent) && !/^(Dial|Probe)/.test(e.textContent) && !e.closest("#clock")).map((e) => e.textContent)`
	assert.Greater(t, len(eval[[]string](p, second)), 15)
	p.choose("clamp.stages", "one")
	p.until(byID("page") + `.dataset.one === "1"`)
	assert.Empty(t, eval[[]string](p, second))
	assert.NotContains(t, p.text("heat.total"), "–")
	p.press("#clamp-bench")
	assert.Equal(t, 1, eval[int](p, `[...document.querySelectorAll("#clamp-big output")].filter((e) => e.checkVisibility()).length`))
	p.do(chromedp.KeyEvent(kb.Escape))
	p.choose("clamp.stages", "two")
	p.expect("heat.hold-2", "75 min")
	p.expect("clamp.second-stretch", "40 %")
	assert.True(t, eval[bool](p, byID("heat.hold-2")+`.checkVisibility()`))

	p.fill("clamp.second", "130")
	p.leave()
	p.choose("clamp.stages", "one")
	p.expect("clamp.coiled:mark", says("mark.change", "", says("name.clamp.stages", "")))
	assert.True(t, eval[bool](p, byID("clamp.second")+`.checkVisibility({contentVisibilityAuto: false})`))
}

// What the second heat-set needs is out of the way where there is one only; set retained leads to its one box; the bench view goes on.
func TestHeatSection(t *testing.T) {
	for _, s := range []screen{phone, desk} {
		t.Run(s.name, func(t *testing.T) {
			p := open(t, s)
			eval[bool](p, `(document.getElementById("heat").scrollIntoView({behavior: "instant"}), new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(() => done(true)))))`)
			p.shot("heat-" + s.name)
			p.reveal("heat.hold-2")
			assert.True(t, eval[bool](p, byID("heat.hold-2")+`.checkVisibility()`))
			p.choose("clamp.stages", "one")
			p.until(`!` + byID("heat.hold-2") + `.checkVisibility()`)
			p.choose("clamp.stages", "two")
			p.until(byID("heat.hold-2") + `.checkVisibility()`)

			p.press(`#heat a[href="#clamp.retained"]`)
			p.until(byID("clamp.retained") + `.checkVisibility() && ` + byID("clamp.retained") + `.getBoundingClientRect().top > 0 && ` + byID("clamp.retained") + `.getBoundingClientRect().bottom < innerHeight`)
			p.fill("clamp.retained", "70")
			p.leave()
			p.until(`[...document.querySelectorAll('[data-slot="n:clamp.retained"]')].some((e) => e.textContent === "70 %")`)

			p.press("#heat-bench")
			require.Equal(t, "heat", eval[string](p, `document.documentElement.dataset.bench`))
			assert.True(t, eval[bool](p, `[...document.querySelectorAll("#heat-big output, #heat .drawing")].every((e) => { const r = e.getBoundingClientRect(); return r.top >= 0 && r.bottom <= innerHeight && r.height > 20 })`))
			p.shot("heat-bench-" + s.name)
		})
	}
}
