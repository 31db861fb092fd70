package browser

import (
	"fmt"
	"slices"
	"strconv"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/assert"

	"twistbench/calc/words"
)

var (
	zoomed = screen{"zoomed", 640, 400, 2, false} // the desk at 200 %
	forced = look{"forced-colors", "active"}

	steps = []string{"fibre", "hang", "cut", "twist", "coil", "clamp", "heat", "clock", "wire", "drive", "stroke"}
)

// unfold opens everything that can be opened.
func (p *page) unfold() {
	p.t.Helper()
	eval[bool](p, `(document.querySelectorAll("details").forEach((d) => { d.open = true }), new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(() => done(true)))))`)
}

// wide is how far the page reaches to the right: what is out of sight is laid out for that too.
const wide = `Math.max(document.documentElement.scrollWidth, ...[...document.querySelectorAll("body *")].filter((e) => e.checkVisibility({contentVisibilityAuto: false}) &&
		!e.closest("svg, .spoken, .quiet, .skip, .thread")).map((e) => e.getBoundingClientRect().right))`

// On every screen, with all of it unfolded, nothing reaches over the edge.
func TestNoSidewaysScroll(t *testing.T) {
	for _, s := range []screen{small, phone, zoomed, desk} {
		t.Run(s.name, func(t *testing.T) {
			p := open(t, s)
			p.unfold()
			// A long number, a long text and a problem in a narrow box.
			p.fill("fibre.diameter", "0.123456789012345678901234567890 thousand million")
			p.fill("hang.stress", "1e-999999")
			p.fill("plan-name", "A name of sixty letters that says it all, and then some more")
			p.leave()
			for _, step := range steps {
				eval[bool](p, `(document.getElementById("`+step+`").scrollIntoView({behavior: "instant"}), new Promise((done) => requestAnimationFrame(() => done(true))))`)
				assert.LessOrEqual(t, eval[float64](p, wide), float64(s.width)+0.5, step)
			}
			eval[bool](p, `(document.getElementById("clamp").scrollIntoView({behavior: "instant"}), scrollBy({left: 500, behavior: "instant"}), true)`)
			assert.Zero(t, eval[float64](p, `scrollX`))
			p.whole("unfolded-" + s.name)
		})
	}
}

// faint lists the texts whose contrast with what is behind them is too little (WCAG 2.2, 1.4.3 and 1.4.6, with its relative luminance):
// 7 for numbers, 4.5 for all else.
const faint = `(() => {
	const lum = (c) => c.slice(0, 3).map((v) => (v /= 255) <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4).reduce((s, v, i) => s + v * [0.2126, 0.7152, 0.0722][i], 0);
	const rgba = (s) => { const m = s.match(/[\d.]+/g).map(Number); return m.length === 3 ? [...m, 1] : m };
	const over = (a, b) => [0, 1, 2].map((i) => a[i] * a[3] + b[i] * (1 - a[3])).concat(1);
	const behind = (e) => {
		if (!e) return [255, 255, 255, 1];
		const c = rgba(getComputedStyle(e).backgroundColor);
		return c[3] === 1 ? c : over(c, behind(e.parentElement));
	};
	const bad = new Set();
	let seen = 0;
	const look = (e, text, number) => {
		if (!text.trim() || !e.checkVisibility({visibilityProperty: true, opacityProperty: true}) || e.closest(".quiet, .spoken, .skip, desc, title")) return;
		const style = getComputedStyle(e);
		const back = behind(e.closest("svg") ? e.closest("svg").parentElement : e);
		const ink = over(rgba(e.closest("svg") ? style.fill : style.color), back);
		const [a, b] = [lum(ink), lum(back)].sort((x, y) => y - x);
		const ratio = (a + 0.05) / (b + 0.05);
		seen++;
		if (ratio < (number ? 7 : 4.5)) bad.add(ratio.toFixed(2) + " " + (e.id || e.className?.baseVal || e.className || e.localName) + ": " + text.trim().slice(0, 40));
	};
	for (const e of document.querySelectorAll("input, select, textarea")) look(e, e.value, e.localName === "input");
	const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
	for (let n; n = walk.nextNode();) {
		const e = n.parentElement;
		if (!e.closest("option, select, textarea, script, noscript")) look(e, n.data, e.matches("output, .strip b, .gaps a, svg text") && /\d/.test(n.data));
	}
	return [String(seen), ...bad];
})()`

// Every text is dark enough on its ground, in every light and in each state.
func TestContrast(t *testing.T) {
	for _, looks := range [][]look{nil, {dark}} {
		name := fmt.Sprint("light", looks)
		t.Run(name, func(t *testing.T) {
			p := open(t, phone, looks...)
			p.enter([]pair{{"fibre.diameter", "5"}, {"hang.stress", "zebra"}, {"clamp.measured", "88"}, {"clamp.first-stretch", "0"}, {"clamp.second-stretch", "0"}})
			p.unfold()
			p.choose("clamp.stages", "two")
			judge := func(view string) {
				t.Helper()
				got := eval[[]string](p, faint)
				n, err := strconv.Atoi(got[0])
				assert.NoError(t, err)
				assert.Greater(t, n, 5, "texts were found")
				assert.Empty(t, got[1:], view)
			}
			judge("page")
			for _, step := range append(steps[:8:8], "trouble") {
				p.press("#" + step + "-bench")
				judge(step + ", bench view")
				p.press("#" + step + "-big [data-do=invert]")
				judge(step + ", bench view, inverted")
				p.press("#" + step + "-big [data-do=invert]")
				p.do(chromedp.KeyEvent(kb.Escape))
			}
		})
	}
}

// narrow lists what is to be tapped and is smaller than 48 px, or is covered within reach of a finger.
const narrow = `(async () => {
	const bad = new Set();
	let seen = 0;
	for (const e of document.querySelectorAll("button, input, select, textarea, summary, a[href]:not(.skip)")) {
		if (!e.checkVisibility() || e.disabled) continue;
		seen++;
		e.scrollIntoView({block: "center", behavior: "instant"});
		await new Promise(requestAnimationFrame);
		e.scrollIntoView({block: "center", behavior: "instant"});
		const r = e.getBoundingClientRect();
		const name = e.id || e.dataset.do || e.closest("[id]").id + " " + e.localName;
		if (r.width < 47.5 || r.height < 47.5) bad.add(name + " " + r.width.toFixed(0) + " x " + r.height.toFixed(0));
		const x = r.x + r.width / 2, y = r.y + r.height / 2;
		for (const [dx, dy] of [[0, 0], [-20, 0], [20, 0], [0, -20], [0, 20]]) {
			const top = document.elementFromPoint(x + dx, y + dy);
			if (!top || !(e.contains(top) || top.contains(e) && !top.matches("button, summary, input, select, a"))) bad.add(name + " is covered at " + dx + ", " + dy + " by " + (top?.id || top?.className || top?.localName));
		}
	}
	return [String(seen), ...bad];
})()`

// Everything that is tapped is 48 px wide and high, with nothing else in reach of the finger.
func TestTouchTargets(t *testing.T) {
	for _, s := range []screen{phone, small} {
		t.Run(s.name, func(t *testing.T) {
			p := open(t, s)
			p.unfold()
			p.fill("cut.precursor", "1.234")
			p.leave()
			got := eval[[]string](p, narrow)
			n, err := strconv.Atoi(got[0])
			assert.NoError(t, err)
			assert.Greater(t, n, 150, "targets were found")
			assert.Empty(t, got[1:])
			for _, step := range steps {
				p.press("#" + step + "-bench")
				assert.Empty(t, eval[[]string](p, narrow)[1:], step)
				p.do(chromedp.KeyEvent(kb.Escape))
			}
		})
	}
}

// The bench view shows one step's picture and its numbers, large, with the next step one tap away, and fits the screen.
func TestBench(t *testing.T) {
	for _, s := range []screen{phone, desk} {
		for _, l := range [][]look{nil, {dark}} {
			name := fmt.Sprint(s.name, l)
			t.Run(name, func(t *testing.T) {
				p := open(t, s, l...)
				p.press("#fibre-bench")
				for i, step := range steps {
					assert.True(t, eval[bool](p, byID(step)+`.checkVisibility()`), step)
					assert.Equal(t, 1, eval[int](p, `[...document.querySelectorAll(".step")].filter((e) => e.checkVisibility()).length`))
					assert.LessOrEqual(t, eval[float64](p, `document.documentElement.scrollHeight - innerHeight`), 0.0, "%s: it fits the screen", step)
					assert.GreaterOrEqual(t, eval[float64](p, `Math.min(...[...document.querySelectorAll("#`+step+`-big output")].map((e) => parseFloat(getComputedStyle(e).fontSize)))`), 40.0, "%s: large", step)
					assert.Greater(t, eval[float64](p, `document.querySelector("#`+step+` .drawing svg").getBoundingClientRect().height`), 100.0, "%s: the picture has room", step)
					assert.Equal(t, step+"-next", eval[string](p, `document.activeElement.id`), "the next step is where the keyboard is")
					p.shot("bench-" + s.name + "-" + step + map[bool]string{true: "-dark"}[l != nil])
					p.press("#" + steps[i] + "-next")
				}
				p.do(chromedp.KeyEvent(kb.Escape))
				assert.False(t, eval[bool](p, `document.documentElement.hasAttribute("data-bench")`))
				assert.Equal(t, "trouble-bench", eval[string](p, `document.activeElement.id`), "the last step's next; the focus is back at its button")
				for _, step := range steps {
					eval[bool](p, `(document.getElementById("`+step+`").scrollIntoView({behavior: "instant"}), new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(() => done(true)))))`)
					p.shot("step-" + s.name + "-" + step + map[bool]string{true: "-dark"}[l != nil])
				}
				eval[bool](p, `(scrollTo({top: 0, behavior: "instant"}), true)`)
				p.shot("top-" + s.name + map[bool]string{true: "-dark"}[l != nil])
			})
		}
	}
}

// A caution stands right under its step's heading, its first words in sight and the rest one tap away, with the rules of the place once; and in
// the bench view too, as does advice.
func TestCautions(t *testing.T) {
	for _, s := range []screen{phone, desk} {
		t.Run(s.name, func(t *testing.T) {
			p := open(t, s)
			p.enter([]pair{{"heat.set", "250"}, {"coil.count", "140"}, {"coil.outside", "1.9"}})
			for _, step := range append(slices.Delete(slices.Clone(steps), 7, 8), "trouble") {
				for range 3 { // what is on the way takes its height only then
					eval[bool](p, `(document.getElementById("`+step+`").scrollIntoView({behavior: "instant"}), new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(() => done(true)))))`)
				}
				assert.Equal(t, 1, eval[int](p, `document.getElementById("`+step+`").textContent.split(`+strconv.Quote(words.EnglishPage.Say("caution.local"))+`).length - 1`), "%s: the rules of the place once", step)
				assert.True(t, eval[bool](p, `(() => {
					const step = document.getElementById("`+step+`"), caution = step.querySelector(".caution");
					const c = caution.getBoundingClientRect(), h = step.querySelector(".head").getBoundingClientRect();
					return c.top >= h.bottom - 1 && c.top < h.bottom + 16 && c.bottom < innerHeight && (caution.querySelector("summary") ?? caution).textContent.length > 20;
				})()`), "%s: right under the heading", step)
				p.press("#" + step + "-bench")
				assert.True(t, eval[bool](p, `(() => { const r = document.querySelector("#`+step+` .caution").getBoundingClientRect(); return r.height > 20 && r.top >= 0 && r.bottom <= innerHeight })()`), "%s: in the bench view", step)
				assert.Zero(t, eval[float64](p, `document.getElementById("`+step+`").scrollTop`), "%s: seen from its heading on", step)
				assert.True(t, eval[bool](p, `((e) => e === null || e.innerText.trim().endsWith(".") && e.getBoundingClientRect().height < 60)(document.querySelector("#`+step+` .caution summary span"))`), "%s: a whole sentence, on two lines at most", step)
				assert.Empty(t, eval[[]string](p, `[...document.querySelectorAll("#`+step+` :is(.note, .caution span)")].filter((e) => e.checkVisibility() && e.scrollHeight > e.clientHeight + 1).map((e) => e.innerText)`), "%s: nothing is cut off", step)
				if step == "heat" {
					assert.True(t, eval[bool](p, byID("note.heat-unusual:row")+`.checkVisibility() && `+byID("note.peak-near:row")+`.checkVisibility() === !`+byID("note.peak-near:row")+`.hidden`), "and advice")
				}
				p.do(chromedp.KeyEvent(kb.Escape))
			}
		})
	}
}

// What one sees and what to try then fills the screen too: one tap from every step's bench view, opened with a thumb, large.
func TestTroubleBench(t *testing.T) {
	for _, s := range []screen{phone, desk} {
		t.Run(s.name, func(t *testing.T) {
			p := open(t, s)
			p.press("#twist-bench")
			p.press(`#twist-big [data-key="trouble"]`)
			p.until(`document.documentElement.dataset.bench === "trouble"`)
			assert.Equal(t, "trouble-next", eval[string](p, `document.activeElement.id`))
			p.press("#trouble .seen summary")
			assert.True(t, eval[bool](p, `[...document.querySelectorAll("#trouble .seen:first-of-type p")].every((e) => e.checkVisibility() && parseFloat(getComputedStyle(e).fontSize) >= 20)`))
			assert.Equal(t, "17 MPa", eval[string](p, `document.querySelector('#trouble .seen [data-slot="n:hang.stress"]').textContent`), "with this plan's numbers")
			assert.Empty(t, eval[[]string](p, `[...document.querySelectorAll("#trouble .seen summary")].filter((e) => e.getBoundingClientRect().height < 56).map((e) => e.textContent)`))
			assert.LessOrEqual(t, eval[float64](p, `document.documentElement.scrollHeight - innerHeight`), 0.0, "the page stays, the list moves")
			assert.True(t, eval[bool](p, `[...document.querySelectorAll("#trouble-big button")].every((e) => e.getBoundingClientRect().bottom <= innerHeight && e.getBoundingClientRect().top > innerHeight / 2)`), "under the thumb")
			p.shot("bench-" + s.name + "-trouble")
			p.press("#trouble-next")
			assert.Equal(t, "hang", eval[string](p, `document.documentElement.dataset.bench`))
		})
	}
}

// With reduced motion nothing moves; without it nothing that a keystroke changes does either.
func TestMotion(t *testing.T) {
	p := open(t, phone, still)
	assert.Equal(t, "auto", eval[string](p, `getComputedStyle(document.documentElement).scrollBehavior`))
	const moving = `document.getAnimations().length + [...document.querySelectorAll("*")].filter((e) => parseFloat(getComputedStyle(e).transitionDuration) > 0 || getComputedStyle(e).animationName !== "none").length`
	assert.Zero(t, eval[int](p, moving))
	p.fill("clamp.second", "150")
	assert.Zero(t, eval[int](p, `document.getAnimations().length`))
}

// On a phone every choice is whole in its box, and what opens the working stands on the line of the name that it belongs to.
func TestWholeOnPhone(t *testing.T) {
	p := open(t, phone)
	p.choose("wire.route", "twisted")
	p.fill("wire.per-length", "50")
	p.fill("wire.supply-voltage", "5")
	p.choose("stroke.against", "muscle")
	p.unfold()
	p.leave()
	assert.Empty(t, eval[[]string](p, `(() => {
		const pen = document.createElement("canvas").getContext("2d");
		return [...document.querySelectorAll("main select.word")].filter((e) => e.checkVisibility()).flatMap((e) => {
			const style = getComputedStyle(e);
			pen.font = style.fontSize + " " + style.fontFamily;
			const room = e.clientWidth - parseFloat(style.paddingLeft) - parseFloat(style.paddingRight) - 20; // and the arrow
			return [...e.options].map((o) => o.text).filter((text) => pen.measureText(text).width > room);
		});
	})()`))
	const lines = `[...document.querySelectorAll("main .box .why summary")].filter((e) => e.checkVisibility()).map((e) => {
		const line = (node) => { const r = document.createRange(); r.selectNodeContents(node); return r.getClientRects()[0] };
		const box = e.closest(".box"), label = box.querySelector("label");
		return [box.id, line(e.firstChild).bottom - line(label.lastChild).bottom];
	})`
	assert.Greater(t, eval[int](p, lines+`.length`), 20)
	assert.Empty(t, eval[[]string](p, lines+`.filter((l) => Math.abs(l[1]) > 3).map((l) => l.join(" "))`))
}

// In forced colours what a box is, is said in words, and the drawings keep their ink.
func TestForcedColours(t *testing.T) {
	p := open(t, phone, forced)
	p.fill("hang.mass", "300")
	p.fill("fibre.diameter", "x")
	p.leave()
	p.unfold()
	assert.True(t, eval[bool](p, `matchMedia("(forced-colors: active)").matches`))
	assert.Empty(t, eval[[]string](p, faint)[1:])
	assert.Empty(t, eval[[]string](p, `[...document.querySelectorAll("main input:not([type=range])")].filter((e) => e.checkVisibility() && getComputedStyle(e).borderTopWidth === "0px").map((e) => e.id)`), "a box has an edge of its own")
	p.whole("forced")
}
