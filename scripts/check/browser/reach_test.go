package browser

import (
	"encoding/json"
	"slices"
	"strconv"
	"testing"

	"github.com/chromedp/cdproto/accessibility"
	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// A node is one thing that a screen reader names.
type node struct{ role, name string }

// reader lists what a screen reader finds, in its order.
func (p *page) reader() []node {
	p.t.Helper()
	text := func(v *accessibility.Value) (s string) {
		if v != nil {
			require.NoError(p.t, json.Unmarshal(v.Value, &s))
		}
		return s
	}
	var all []node
	for _, n := range call(p, accessibility.GetFullAXTree, accessibility.GetFullAXTreeParams{}).Nodes {
		if !n.Ignored {
			all = append(all, node{text(n.Role), text(n.Name)})
		}
	}
	return all
}

// Everything that can be used has a name of its own, and a number's name says its unit in words.
func TestNames(t *testing.T) {
	p := open(t, phone)
	p.unfold()
	p.unroll()
	all := p.reader()
	named := map[string]int{}
	for _, n := range all {
		switch n.role {
		case "textbox", "combobox", "button", "link", "DisclosureTriangle", "image", "img", "navigation", "region":
			assert.NotEmpty(t, n.name, n.role)
		}
		if n.role == "textbox" || n.role == "combobox" {
			named[n.role+" "+n.name]++
		}
	}
	for name, n := range named {
		assert.Equal(t, 1, n, "%s: another has the same name", name)
	}
	assert.Greater(t, len(named), 100)
	for key, want := range map[string]string{
		"fibre.diameter":       "textbox Diameter millimetres",
		"fibre.diameter-doubt": "textbox ± of the diameter, millimetres",
		"hang.stress":          "textbox Stress megapascals",
		"clamp.first-stretch":  "textbox Stretch, first heat-set percent",
		"fibre.strands":        "textbox Strands",
		"clamp.coiled":         "textbox L As coiled millimetres",
	} {
		assert.Contains(t, named, want, key)
	}

	// The name follows the unit.
	p.choose("fibre.diameter:unit", "thou")
	assert.Contains(t, p.reader(), node{"textbox", "Diameter thou"})
}

// unroll has the browser lay out what is out of sight too.
func (p *page) unroll() {
	p.t.Helper()
	eval[bool](p, `(document.styleSheets[0].insertRule(".boxes, .after, .answers, .drawing { content-visibility: visible !important }", document.styleSheets[0].cssRules.length), new Promise((done) => requestAnimationFrame(() => done(true))))`)
}

// The page's own structure: ids are unique and what refers to one finds it; one heading of the page and below it one for each part, in
// order; landmarks around all of it.
func TestStructure(t *testing.T) {
	p := open(t, phone)
	assert.Empty(t, eval[[]string](p, `(() => {
		const ids = [...document.querySelectorAll("[id]")].map((e) => e.id);
		return ids.filter((id, i) => ids.indexOf(id) !== i);
	})()`), "ids that are not unique")
	assert.Empty(t, eval[[]string](p, `[...document.querySelectorAll("[aria-labelledby], [aria-describedby], [for], [aria-controls]")].flatMap((e) =>
		["aria-labelledby", "aria-describedby", "for", "aria-controls"].flatMap((a) => (e.getAttribute(a) ?? "").split(" ").filter((id) => id && !document.getElementById(id))))`), "references to nothing")
	assert.Empty(t, eval[[]string](p, `[...document.querySelectorAll("a[href^='#']")].map((a) => a.getAttribute("href")).filter((h) => !document.getElementById(h.slice(1)))`), "links to nothing")
	levels := eval[[]int](p, `[...document.querySelectorAll("h1, h2, h3, h4")].map((h) => +h.localName[1])`)
	assert.Equal(t, 1, levels[0])
	assert.Equal(t, 1, eval[int](p, `document.querySelectorAll("h1").length`))
	assert.Zero(t, eval[int](p, `document.querySelectorAll("fieldset:not(:has(> legend:first-child)), details:not(:has(> summary:first-child))").length`), "each group has a name")
	for i := 1; i < len(levels); i++ {
		assert.LessOrEqual(t, levels[i], levels[i-1]+1, "heading %d skips a level", i)
	}
	sections := append(slices.Clone(steps), "trouble")
	assert.Equal(t, sections, eval[[]string](p, `[...document.querySelectorAll("main > section")].map((s) => s.id)`), "in the order of the work")
	assert.Equal(t, "en", eval[string](p, `document.documentElement.lang`))
	assert.NotEmpty(t, eval[string](p, title))
	for _, mark := range []string{"header", "nav[aria-label]", "main", "footer"} {
		assert.Equal(t, 1, eval[int](p, `document.querySelectorAll("body > `+mark+`").length`), mark)
	}
	// What is outside of them is out of the way: the link past the top and what is spoken.
	assert.Empty(t, eval[[]string](p, `[...document.body.children].filter((e) => !e.matches("header, nav, main, footer, .skip, .spoken, script")).map((e) => e.outerHTML.slice(0, 60))`))
}

// With the keyboard alone: Tab goes through everything that can be used, once, in the order of the page, and what has the focus is seen.
func TestKeyboard(t *testing.T) {
	p := open(t, desk, still)
	const focusable = `[...document.querySelectorAll("a[href], button, input, select, textarea, summary")].filter((e) => !e.disabled && e.checkVisibility({contentVisibilityAuto: false}))`
	want := eval[int](p, focusable+`.length`)
	eval[bool](p, `(document.body.focus(), globalThis.reached = [], true)`)
	// A box for a day or a time has a stop for each part of it, four at most.
	stops := want + 3*eval[int](p, `document.querySelectorAll("input[type=date], input[type=time]").length`)
	for range stops {
		p.do(chromedp.KeyEvent(kb.Tab))
		eval[bool](p, `(reached.at(-1) === document.activeElement || reached.length === `+strconv.Itoa(want)+` || reached.push(document.activeElement), true)`)
	}
	assert.Equal(t, want, eval[int](p, `new Set(reached).size`), "all are reached")
	assert.Equal(t, "", eval[string](p, `(() => {
		const all = `+focusable+`;
		const i = reached.findIndex((e, i) => e !== all[i]);
		return i < 0 ? "" : (reached[i]?.outerHTML ?? "nothing").slice(0, 80) + " instead of " + all[i].outerHTML.slice(0, 80);
	})()`), "in the order of the page")

	// Back through the boxes of a step: each is in sight, not under the strip, and has a ring around it.
	for range 60 {
		p.do(chromedp.KeyEvent(kb.Tab, chromedp.KeyModifiers(chromedp.ModifierShift)))
		hidden := eval[string](p, `(() => {
			const e = document.activeElement, r = e.getBoundingClientRect(), strip = document.querySelector(".strip");
			if (strip.contains(e) || !document.querySelector("main").contains(e)) return "";
			if (r.top < strip.getBoundingClientRect().bottom - 1 || r.bottom > innerHeight + 1) return "out of sight: " + (e.id || e.outerHTML.slice(0, 80));
			if (getComputedStyle(e).outlineStyle === "none") return "no ring: " + (e.id || e.outerHTML.slice(0, 80));
			return "";
		})()`)
		assert.Empty(t, hidden)
	}

	// Details open and close, the bench view opens, goes on and is left, and the link past the top works.
	focus := func(selector string) {
		eval[bool](p, `(document.querySelector(`+"`"+selector+"`"+`).focus(), true)`)
	}
	focus("#hang .finer > summary")
	p.do(chromedp.KeyEvent(kb.Enter))
	assert.True(t, eval[bool](p, `document.querySelector("#hang .finer").open`))
	focus(`[id="hang.force:why"] summary`)
	p.do(chromedp.KeyEvent(" "))
	p.until(byID("hang.force:working") + `.textContent.includes("3.610 N")`)
	focus("#cut-bench")
	p.do(chromedp.KeyEvent(kb.Enter))
	assert.Equal(t, "cut", eval[string](p, `document.documentElement.dataset.bench`))
	p.do(chromedp.KeyEvent(kb.Enter))
	assert.Equal(t, "twist", eval[string](p, `document.documentElement.dataset.bench`))
	p.do(chromedp.KeyEvent(kb.Escape))
	assert.Equal(t, "twist-bench", eval[string](p, `document.activeElement.id`))
	focus(".skip")
	p.do(chromedp.KeyEvent(kb.Enter))
	p.do(chromedp.KeyEvent(kb.Tab))
	assert.True(t, eval[bool](p, `document.activeElement.closest("#fibre") !== null`))
}

// After a pause one polite sentence says the numbers for the bench; while keys are struck nothing is said.
func TestSpoken(t *testing.T) {
	p := open(t, phone)
	assert.Empty(t, p.text("say"))
	eval[bool](p, `(globalThis.said = [], new MutationObserver(() => said.push(document.getElementById("say").textContent)).observe(document.getElementById("say"), {childList: true, characterData: true, subtree: true}), true)`)
	p.fill("fibre.diameter", "0.45")
	p.until(`said.some((s) => s !== "")`)
	// 17 MPa × π/4 × 0.45² ÷ 9.80665 = 275.7 g, less 35 g
	assert.Equal(t, says("say.strip", "", "241 g", "35 g", "488 mm", "100.3 mm", "120.7 mm"), p.text("say"))
	assert.LessOrEqual(t, len(eval[[]string](p, `said`)), 2, "once, not for each key")
	live := slices.DeleteFunc(eval[[]string](p, `[...document.querySelectorAll("[aria-live], [role=status], [role=alert], output:not([aria-live=off])")].filter((e) => e.getAttribute("aria-live") !== "off").map((e) => e.id)`),
		func(id string) bool { return id == "say" || id == "status" })
	assert.Empty(t, live, "nothing else speaks")
	p.choose("clamp.stages", "one")
	want := says("say.strip-one", "", "241 g", "35 g", "488 mm", "100.3 mm")
	p.until(byID("say") + `.textContent === "` + want + `"`)
	require.Equal(t, want, p.text("say"))
}
