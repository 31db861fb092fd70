package browser

import (
	"net/url"
	"strconv"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/browser"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// shelf is all that is kept on the device, "key=text" sorted.
func (p *page) shelf() []string {
	p.t.Helper()
	return eval[[]string](p, `Object.entries(localStorage).map(([k, v]) => k + "=" + v).sort()`)
}

// plans are the names in the list of plans, and the chosen one.
func (p *page) plans() (names []string, chosen string) {
	p.t.Helper()
	return eval[[]string](p, `[...document.getElementById("plan-list").options].map(o => o.text)`),
		eval[string](p, `document.getElementById("plan-list").selectedOptions[0].text`)
}

// take chooses a plan by its name.
func (p *page) take(name string) {
	p.t.Helper()
	p.choose("plan-list", eval[string](p, `[...document.getElementById("plan-list").options].find(o => o.text === `+strconv.Quote(name)+`).value`))
}

// more taps a button under "More".
func (p *page) more(do string) {
	p.t.Helper()
	p.reveal("plan-name")
	p.press(`[data-do="` + do + `"]`)
}

// Undo goes back step by step: typing in one box is one step, whatever came before is there again, with nothing left over in the boxes.
func TestUndo(t *testing.T) {
	p := open(t, phone)
	assert.True(t, eval[bool](p, byID("undo")+`.disabled`))
	p.fill("fibre.diameter", "0.45")
	p.fill("hang.mass", "300 g")
	p.choose("clamp.stages", "one")
	p.choose("hang.stress:unit", "psi")

	p.press("#undo")
	p.expect("clamp.stages", "two")
	p.expect("hang.mass", "300 g")
	p.press("#undo")
	p.expect("hang.mass", "276 g") // 17 MPa × π/4 × 0.45² ÷ 9.80665 = 275.7 g
	p.expect("hang.stress:mark", says("mark.given", ""))
	p.press("#undo")
	p.expect("fibre.diameter", "0.52 mm")
	p.expect("hang.mass", "368 g")
	p.expect("status", says("say.undone", ""))
	assert.Empty(t, p.said(), "which is in sight")
	assert.True(t, eval[bool](p, byID("undo")+`.disabled`), "nothing left to undo")

	// Some browsers leave the focus in the box when a button is tapped.
	p.fill("cut.tail", "55")
	eval[bool](p, `(document.getElementById("undo").click(), document.activeElement.id === "cut.tail")`)
	p.expect("cut.tail", "40 mm")
	p.expect("cut.length", "488 mm")
}

// Clearing takes what was typed for this muscle and leaves the bench.
func TestClear(t *testing.T) {
	p := open(t, phone)
	p.fill("hang.hook", "41")
	p.fill("hang.stress", "abc")
	p.more("clear")
	p.expect("status", says("say.cleared", ""))
	for _, key := range []string{"fibre.diameter", "fibre.area", "hang.stress", "hang.mass", "cut.ratio", "cut.precursor", "clamp.coiled", "clamp.first-stretch"} {
		assert.Empty(t, p.value(key), key)
	}
	for key, text := range map[string]string{"hang.hook": "41 g", "hang.owned": "20x2, 50x2, 100, 200", "cut.tail": "40 mm", "fibre.diameter-doubt": "0.01 mm"} {
		p.expect(key, text)
	}
	p.expect("cut.length", "–")
	p.expect("hang.stress:says", "")
	p.whole("cleared-all")
	p.press("#undo")
	p.expect("hang.stress", "abc MPa")
	p.expect("cut.length", "488 mm")
}

// Several plans live side by side on the device; each change goes into the one that is open, and a reload brings that one.
func TestPlans(t *testing.T) {
	p := open(t, phone)
	assert.Empty(t, p.shelf(), "looking keeps nothing")
	names, chosen := p.plans()
	start := says("plan.start", "")
	assert.Equal(t, []string{start}, names)
	assert.Equal(t, start, chosen)
	assert.True(t, eval[bool](p, byID("delete")+`.disabled`), "the start plan can't be deleted")

	p.fill("fibre.diameter", "0.45")
	first := says("plan.unnamed", "", "1")
	names, chosen = p.plans()
	assert.Equal(t, []string{start, first}, names)
	assert.Equal(t, first, chosen)
	p.fill("plan-name", "Blind “a&b=c” 50 % +")
	p.more("new")
	p.fill("hang.stress", "21")
	p.fill("plan-name", "Second")
	p.leave()
	names, chosen = p.plans()
	assert.Equal(t, []string{start, "Blind “a&b=c” 50 % +", "Second"}, names)
	assert.Equal(t, "Second", chosen)

	p.take("Blind “a&b=c” 50 % +")
	p.expect("hang.stress", "17 MPa")
	p.expect("fibre.diameter", "0.45 mm")
	p.expect("plan-name", "Blind “a&b=c” 50 % +")
	assert.True(t, eval[bool](p, byID("undo")+`.disabled`), "undo does not cross plans")
	p.take(start)
	p.expect("fibre.diameter", "0.52 mm")
	p.take("Second")
	p.expect("fibre.diameter", "0.45 mm")
	p.expect("hang.stress", "21 MPa")

	kept := p.shelf()
	p.reload()
	p.expect("hang.stress", "21 MPa")
	p.expect("plan-name", "Second")
	assert.Equal(t, kept, p.shelf(), "a reload writes nothing")
	p.reveal("plan-name")
	p.shot("plans")

	p.press(`[data-do="delete"]`)
	p.expect("status", says("say.deleted", "", "Second"))
	p.expect("hang.stress", "17 MPa")
	names, chosen = p.plans()
	assert.Equal(t, []string{start, "Blind “a&b=c” 50 % +"}, names)
	assert.Equal(t, start, chosen)
	p.press("#undo")
	p.expect("hang.stress", "21 MPa")
	names, chosen = p.plans()
	assert.Equal(t, []string{start, "Blind “a&b=c” 50 % +", "Second"}, names, "it is kept again, under its name")
	assert.Equal(t, "Second", chosen)
	p.expect("plan-name", "Second")
}

// What another tab changes is announced, never merged, and each tab goes on with its own.
func TestTwoTabs(t *testing.T) {
	p := open(t, phone)
	p.fill("fibre.diameter", "0.45")
	p.leave()
	other := p.host.open(phone)
	other.expect("fibre.diameter", "0.45 mm")
	other.fill("fibre.diameter", "0.6")
	p.expect("status", says("say.elsewhere", ""))
	p.expect("fibre.diameter", "0.45 mm")
	p.expect("hang.mass", "276 g") // 17 MPa × π/4 × 0.45² ÷ 9.80665
	assert.Len(t, p.shelf(), 2)

	other.more("new")
	other.fill("plan-name", "Of the other tab")
	other.leave()
	p.until(`[...document.getElementById("plan-list").options].some((o) => o.text === "Of the other tab")`)
	_, chosen := p.plans()
	assert.Equal(t, says("plan.unnamed", "", "1"), chosen, "the list grows, the choice stays")

	other.take(says("plan.unnamed", "", "1"))
	other.expect("fibre.diameter", "0.6 mm")
	p.fill("hang.stress", "12")
	other.expect("status", says("say.elsewhere", ""))
	other.expect("hang.stress", "17 MPa")
	other.reload()
	other.expect("hang.stress", "12 MPa")
	other.expect("fibre.diameter", "0.45 mm")
}

// allow lets the page write to the clipboard and the test read it.
func (p *page) allow() {
	p.t.Helper()
	for _, name := range []string{"clipboard-write", "clipboard-read"} {
		_, err := chromedp.CallBrowser(p.ctx, browser.SetPermission, browser.SetPermissionParams{
			Permission: &browser.PermissionDescriptor{Name: name}, Setting: browser.PermissionSettingGranted,
			Origin: strings.TrimSuffix(p.host.url(), at), BrowserContextID: chromedp.FromContext(p.ctx).BrowserContextID})
		require.NoError(p.t, err)
	}
}

// A link carries every number; it opens as a plan that is not kept, and touches nothing that is.
func TestLink(t *testing.T) {
	p := open(t, phone)
	p.allow()
	p.fill("fibre.diameter", "0,45 mm")
	p.fill("hang.mass", "1 lb 4 oz")
	p.fill("fibre.density", "what?")
	p.more("link")
	p.expect("status", says("say.copied", ""))
	link := eval[string](p, `navigator.clipboard.readText()`)
	require.True(t, strings.HasPrefix(link, p.host.url()+"#v=1&"), link)
	kept := p.shelf()

	// The same tab, another tab, and another device.
	p.do(chromedp.Navigate(link))
	stranger := newHost(t)
	for _, q := range []*page{p, p.host.openAt(phone, link), stranger.openAt(phone, stranger.url()+"#"+strings.SplitN(link, "#", 2)[1])} {
		q.expect("status", says("say.linked", ""))
		q.expect("fibre.diameter", "0,45 mm")
		q.expect("hang.mass", "1 lb 4 oz oz")
		q.expect("fibre.density", "what? kg/m³")
		q.expect("fibre.density:says", says("problem.number", "", "what?"))
		_, chosen := q.plans()
		assert.Equal(t, says("plan.from-link", ""), chosen)
	}
	assert.Equal(t, kept, p.shelf(), "a link touches nothing that is kept")

	// The first change keeps it as a plan of its own, and takes the link out of the address.
	p.fill("hang.hook", "20")
	p.leave()
	assert.Equal(t, p.host.url(), eval[string](p, `location.href`))
	assert.Subset(t, p.shelf(), kept[1:], "what was kept is as it was")
	assert.Len(t, p.shelf(), len(kept)+1)
	p.reload()
	p.expect("hang.hook", "20 g")
	p.expect("fibre.diameter", "0,45 mm")
}

// What can't be read of a link is named, and the rest is taken.
func TestBrokenLink(t *testing.T) {
	for _, c := range []struct {
		name, link string
		status     string
		want       pair
	}{
		{"unknown key", "v=1&fibre.diameter=0.45%20mm&zebra=1", says("say.link-faults", "", "zebra"), pair{"fibre.diameter", "0.45 mm"}},
		{"two that say the same", "v=1&hang.mass=300%20g&hang.stress=17%20MPa", says("say.link-faults", "", "hang.stress"), pair{"hang.mass", "300 g"}},
		{"half a percent sign", "v=1&fibre.diameter=0.45%2&cut.tail=30%20mm", says("say.linked", ""), pair{"cut.tail", "30 mm"}},
		{"bytes that are no letters", "v=1&fibre.diameter=%ff%00%1e%1f&cut.tail=30%20mm", says("say.linked", ""), pair{"cut.tail", "30 mm"}},
		{"markup", "v=1&cut.tail=30%20mm&fibre.diameter=" + url.PathEscape(`<img src=x onerror=alert(1)>`), says("say.linked", ""), pair{"fibre.diameter", "<img src=x onerror=alert(1)> mm"}},
		{"nothing in it", "v=1", says("say.linked", ""), pair{"fibre.diameter", "0.52 mm"}},
		{"an anchor of the page", "cut", says("plan.example", ""), pair{"fibre.diameter", "0.52 mm"}},
		{"of a later page", "v=2&fibre.diameter=0.45", says("plan.example", ""), pair{"fibre.diameter", "0.52 mm"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			h := newHost(t)
			p := h.openAt(phone, h.url()+"#"+c.link)
			p.expect("status", c.status)
			p.expect(c.want.id, c.want.text)
			p.expect("hang.hook", "35 g")
			assert.Empty(t, p.shelf())
		})
	}
}

// Where the clipboard is closed the text is shown, to be copied by hand.
func TestCopyByHand(t *testing.T) {
	for name, script := range map[string]string{
		"no clipboard": `Object.defineProperty(Navigator.prototype, "clipboard", {get: () => undefined})`,
		"refused":      `Object.defineProperty(Navigator.prototype, "clipboard", {get: () => ({writeText: () => Promise.reject(new Error("no"))})})`,
		"throws":       `Object.defineProperty(Navigator.prototype, "clipboard", {get: () => ({writeText: () => { throw new Error("no") }})})`,
	} {
		t.Run(name, func(t *testing.T) {
			h := newHost(t)
			p := h.blank(phone)
			p.before(script)
			p.visit(h.url())
			p.more("summary")
			p.expect("status", says("say.not-copied", ""))
			text := p.value("copy-box")
			assert.Contains(t, text, "488 mm")
			assert.Contains(t, text, "368 g in all")
			assert.True(t, eval[bool](p, byID("copy-box")+`.checkVisibility()`))
			p.shot("copy-by-hand")
		})
	}
}

// Storage that is blocked, full or corrupt breaks nothing and loses nothing that is on the page.
func TestStorage(t *testing.T) {
	for _, c := range []struct {
		name, script string
		works        bool
	}{
		{"blocked", `Object.defineProperty(window, "localStorage", {get() { throw new DOMException("blocked", "SecurityError") }})`, false},
		{"missing", `Object.defineProperty(window, "localStorage", {get: () => null})`, false},
		{"reads nothing", `Storage.prototype.getItem = Storage.prototype.setItem = Storage.prototype.key = Storage.prototype.removeItem = () => { throw new DOMException("broken") }`, false},
		{"full", `Storage.prototype.setItem = () => { throw new DOMException("full", "QuotaExceededError") }`, false},
		{"corrupt plan", `if (!localStorage.length) { localStorage["twistbench/plan/1"] = "\u001e\u001f\uFFFF%%%=&&name=&fibre.diameter"; localStorage["twistbench/open"] = "twistbench/plan/1" }`, true},
		{"half a plan", `if (!localStorage.length) { localStorage["twistbench/plan/7"] = "name=x&v=1&fibre.dia"; localStorage["twistbench/open"] = "twistbench/plan/7" }`, true},
		{"open plan gone", `if (!localStorage.length) { localStorage["twistbench/open"] = "twistbench/plan/3" }`, true},
		{"of other programs", `if (!localStorage.length) { localStorage["twistbench/plan/x"] = "1"; localStorage["twistbench/units"] = "cubits"; localStorage["zebra"] = "1" }`, true},
	} {
		t.Run(c.name, func(t *testing.T) {
			h := newHost(t)
			p := h.blank(phone)
			p.before(c.script)
			p.visit(h.url())
			p.expect("cut.length", "488 mm")
			p.fill("fibre.diameter", "0.45")
			p.leave()
			p.expect("hang.mass", "276 g") // 17 MPa × π/4 × 0.45² ÷ 9.80665
			p.fill("hang.stress", "12")
			p.expect("fibre.diameter", "0.45 mm")
			p.press("#undo")
			p.expect("hang.stress", "17 MPa")
			if !c.works {
				p.fill("hang.hook", "30")
				p.expect("status", says("say.not-kept", ""))
				assert.Empty(t, p.said(), "it was said at the first keystroke")
				p.shot("storage-" + strings.ReplaceAll(c.name, " ", "-"))
				return
			}
			p.reload()
			p.expect("fibre.diameter", "0.45 mm")
		})
	}
}

// What is typed or chosen before the program is there is not lost, and counts when it is.
func TestTypedEarly(t *testing.T) {
	h := newHost(t)
	letGo := h.hold(".wasm")
	p := h.blank(phone)
	p.do(chromedp.Navigate(h.url()))
	assert.True(t, eval[bool](p, `document.querySelector(".loading").checkVisibility()`))
	p.fill("fibre.diameter", "0.45")
	p.choose("clamp.stages", "one")
	p.choose("cut.tail:unit", "in")
	p.choose("hang.force:unit", "cN")
	p.fill("coil.count", "140")
	p.fill("hang.mass", "30")
	assert.False(t, eval[bool](p, isReady))
	p.shot("typed-early")
	letGo()
	p.until(isReady)
	assert.Equal(t, "30", p.value("hang.mass"))
	assert.Equal(t, "hang.mass", eval[string](p, `document.activeElement.id`), "the focus stays")
	p.do(chromedp.KeyEvent("0"))
	p.expect("hang.mass", "300 g")
	p.expect("hang.stress", "18.50 MPa") // 0.3 × 9.80665 ÷ (π/4 × 0.45²)
	p.expect("fibre.diameter", "0.45 mm")
	p.expect("clamp.stages", "one")
	p.expect("cut.tail", "40 in")
	p.expect("cut.length", "2440 mm") // 408 + 2 × 1016
	p.expect("hang.force", "294.2 cN")
	p.expect("coil.count", "140 coils")
	p.expect("cut.precursor", "408 mm") // what was cut stays, as where the count is typed later
	p.expect("cut.precursor:mark", says("mark.cut", ""))
	assert.False(t, eval[bool](p, `document.querySelector(".loading").checkVisibility()`))
	p.reload()
	p.expect("fibre.diameter", "0.45 mm")
}

// A program that never comes is said, and the start plan's numbers stay.
func TestNoProgram(t *testing.T) {
	h := newHost(t)
	p := h.blank(phone)
	p.before(`WebAssembly.instantiateStreaming = WebAssembly.instantiate = () => Promise.reject(new Error("on purpose"))`)
	p.forgive("on purpose")
	p.do(chromedp.Navigate(h.url()))
	p.until(`document.documentElement.dataset.failed === "1"`)
	assert.True(t, eval[bool](p, `document.querySelector(".failed").checkVisibility()`))
	assert.False(t, eval[bool](p, `document.querySelector(".loading").checkVisibility()`))
	p.expect("hang.mass", "368 g")
	p.shot("no-program")
}

// A program that stops is said too, and what stands on the page stays: typing calls it no more.
func TestProgramStops(t *testing.T) {
	h := newHost(t)
	p := h.blank(phone)
	p.before(`let made; Object.defineProperty(window, "Go", {get: () => made, set(Go) { made = class extends Go { constructor() { super(); window.running = this } } }})`)
	p.forgive("the core has stopped")
	p.visit(h.url())
	p.fill("fibre.diameter", "0.45")
	p.expect("hang.mass", "276 g") // 17 MPa × π/4 × 0.45² ÷ 9.80665
	eval[bool](p, `(running.exit(2), true)`)
	p.until(`document.documentElement.dataset.failed === "1"`)
	p.fill("fibre.diameter", "0.52")
	p.leave()
	assert.Equal(t, "0.52", p.value("fibre.diameter"))
	p.expect("hang.mass", "276 g")
}
