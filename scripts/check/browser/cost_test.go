package browser

import (
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"testing"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/network"
	"github.com/chromedp/cdproto/performance"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"twistbench/scripts/internal/site"
)

// Times on a shared machine say little alone, so each is compared with a control in the same run, both by turns and as medians. A test
// fails only far beyond its target: slack times it.
const slack = 1.5

// cost is what one keystroke takes of the page's main thread, in milliseconds.
type cost struct{ script, layout, all float64 }

// costs reads the browser's own counters: script, style and layout, all tasks.
func (p *page) costs() (c cost) {
	p.t.Helper()
	for _, m := range call(p, performance.GetMetrics, cdp.Empty{}).Metrics {
		switch m.Name {
		case "ScriptDuration":
			c.script += m.Value * 1e3
		case "LayoutDuration", "RecalcStyleDuration":
			c.layout += m.Value * 1e3
		case "TaskDuration":
			c.all += m.Value * 1e3
		}
	}
	return c
}

// strike types a key into the box that has the focus and waits until it is painted.
func (p *page) strike(key string) cost {
	p.t.Helper()
	const painted = `new Promise((done) => requestAnimationFrame(() => setTimeout(() => done(true))))`
	eval[bool](p, painted)
	was := p.costs()
	p.do(chromedp.KeyEvent(key))
	eval[bool](p, painted)
	is := p.costs()
	return cost{is.script - was.script, is.layout - was.layout, is.all - was.all}
}

func median(xs []float64) float64 {
	xs = slices.Sorted(slices.Values(xs))
	n := len(xs)
	return (xs[(n-1)/2] + xs[n/2]) / 2
}

func medians(costs []cost) cost {
	pick := func(f func(cost) float64) float64 {
		var xs []float64
		for _, c := range costs {
			xs = append(xs, f(c))
		}
		return median(xs)
	}
	return cost{pick(func(c cost) float64 { return c.script }), pick(func(c cost) float64 { return c.layout }), pick(func(c cost) float64 { return c.all })}
}

// probe puts a box on the page that the program is not told of: a keystroke in it is an empty one.
const probe = `(() => {
	const box = Object.assign(document.createElement("input"), {id: "probe"});
	document.querySelector("#fibre .boxes").prepend(box);
	for (const kind of ["input", "keydown", "focusout"]) addEventListener(kind, (e) => { if (e.target === box) e.stopImmediatePropagation() }, true);
	return true;
})()`

// A keystroke's script, style and layout, beside those of a keystroke that nothing follows from, on the same page; and with what is out of
// sight laid out too.
func TestKeystrokeCost(t *testing.T) {
	p := open(t, phone, still)
	call(p, performance.Enable, performance.EnableParams{})
	eval[bool](p, probe)
	focus := func(id string) {
		eval[bool](p, `(document.getElementById("`+id+`").focus({preventScroll: true}), true)`)
	}
	round := func(rate float64, n int) (ours, empty cost) {
		p.slow(rate)
		defer p.slow(1)
		var a, b []cost
		for i := range n {
			key := string("46"[i%2]) // 0.5 then 0.54, 0.5, 0.56, ...: every number of the first three steps follows
			focus("fibre.diameter")
			eval[bool](p, `(document.activeElement.setSelectionRange(3, 9), true)`)
			a = append(a, p.strike(key))
			focus("probe")
			eval[bool](p, `(document.activeElement.setSelectionRange(3, 9), true)`)
			b = append(b, p.strike(key))
		}
		return medians(a), medians(b)
	}
	p.fill("fibre.diameter", "0.52")
	focus("probe")
	p.do(chromedp.KeyEvent("0.52"))
	eval[bool](p, `(scrollTo({top: 0, behavior: "instant"}), true)`)
	round(1, 10) // warm

	for _, rate := range []float64{1, 6} {
		ours, empty := round(rate, 25)
		t.Logf("at %v x: script %.2f ms, style and layout %.2f ms, all tasks %.2f ms; empty %.2f, %.2f, %.2f ms; all tasks %.2f times the empty keystroke's, script %.0f %% of them, style and layout %.0f %%",
			rate, ours.script, ours.layout, ours.all, empty.script, empty.layout, empty.all, ours.all/empty.all, 100*ours.script/ours.all, 100*ours.layout/ours.all)
		assert.Less(t, ours.all/empty.all, 2*slack, "all tasks over an empty keystroke's at %v x", rate)
	}

}

// What changes out of sight costs no layout: the top of the page is in sight, and numbers change three steps below.
func TestOutOfSight(t *testing.T) {
	p := open(t, phone, still)
	call(p, performance.Enable, performance.EnableParams{})
	change := func() float64 {
		was := p.costs()
		eval[bool](p, `(async (e) => {
			for (let i = 0; i < 60; i++) {
				e.value = 20 + 10 * (i % 10);
				e.dispatchEvent(new InputEvent("input", {bubbles: true}));
				await new Promise(requestAnimationFrame);
			}
			return true;
		})(`+byID("cut.spare")+`)`)
		return p.costs().layout - was.layout
	}
	change() // warm
	in := change()
	require.NotEqual(t, "6", p.text("cut.all-pieces"), "something did change")
	p.unroll()
	out := change()
	t.Logf("60 changes: style and layout %.2f ms, and %.2f ms with all steps laid out: %.2f", in, out, in/out)
	assert.Less(t, in/out, 0.35*slack)
}

// slowNetwork is a slow mobile network: 1.6 Mbit/s down, 0.75 up, 150 ms.
func (p *page) slowNetwork() {
	p.t.Helper()
	call(p, network.EmulateNetworkConditionsByRule, network.EmulateNetworkConditionsByRuleParams{MatchedNetworkConditions: []*network.Conditions{
		{Latency: 150, DownloadThroughput: 1.6e6 / 8, UploadThroughput: 0.75e6 / 8}}})
}

const readyAt = `new MutationObserver(() => { globalThis.readyAt ??= performance.now() }).observe(document, {subtree: true, attributes: true, attributeFilter: ["data-ready"]})`

// first visits a folder as someone new would, on a slow network with a slow processor, and gives the milliseconds to the first paint of
// text and, if there is a program, until it is ready.
func first(t *testing.T, dir string, program bool) (painted, ready float64) {
	t.Helper()
	h := newHost(t)
	h.publish(dir)
	p := h.blank(phone)
	p.before(readyAt)
	p.slowNetwork()
	p.slow(4)
	p.do(chromedp.Navigate(h.url()))
	if program {
		p.until(`globalThis.readyAt`)
		ready = eval[float64](p, `readyAt`)
	}
	p.until(`performance.getEntriesByName("first-contentful-paint").length`)
	painted = eval[float64](p, `performance.getEntriesByName("first-contentful-paint")[0].startTime`)
	require.NoError(t, chromedp.Cancel(p.ctx))
	return painted, ready
}

// folder writes a folder to be served.
func folder(t *testing.T, files map[string]string) string {
	t.Helper()
	dir := t.TempDir()
	for name, text := range files {
		require.NoError(t, os.WriteFile(filepath.Join(dir, name), []byte(text), 0o644))
	}
	return dir
}

// scripts are the page's script elements and what else is there for them.
var scripts = regexp.MustCompile(`(?s)<script\b.*?</script>\n?|<link rel="?(?:modulepreload|preload)\b[^>]*>\n?`)

// The first visit on a slow network: the page is read as soon as the same page without its scripts is, and the program answers in a time
// that is in proportion to that of a Go program which does nothing.
func TestFirstVisitCost(t *testing.T) {
	page, err := os.ReadFile(filepath.Join(built, "index.html"))
	require.NoError(t, err)
	bare := scripts.ReplaceAllString(string(page), "")
	require.NotContains(t, bare, "<script")
	require.Less(t, len(bare), len(page))
	files := map[string]string{"index.html": bare}
	for _, pattern := range []string{"style.*.css", "icon*", "*.webmanifest"} {
		names, err := filepath.Glob(filepath.Join(built, pattern))
		require.NoError(t, err)
		for _, name := range names {
			data, err := os.ReadFile(name)
			require.NoError(t, err)
			files[filepath.Base(name)] = string(data)
		}
	}
	withoutScripts := folder(t, files)

	empty, err := site.Empty()
	require.NoError(t, err)
	exec, err := filepath.Glob(filepath.Join(built, "wasm_exec.*.js"))
	require.NoError(t, err)
	require.Len(t, exec, 1)
	glue, err := os.ReadFile(exec[0])
	require.NoError(t, err)
	doesNothing := folder(t, map[string]string{
		"index.html": `<!doctype html><title>empty</title><link rel="icon" href="data:,"><script src="wasm_exec.js" defer></script><script src="boot.js" defer></script><p>Nothing.`,
		"boot.js": `const go = new Go();
WebAssembly.instantiateStreaming(fetch("empty.wasm"), go.importObject).then((got) => go.run(got.instance)).then(() => { document.documentElement.dataset.ready = "1" });`,
		"wasm_exec.js": string(glue),
		"empty.wasm":   string(empty),
	})

	var paint, ready []float64
	for range 5 {
		painted, ours := first(t, built, true)
		plain, _ := first(t, withoutScripts, false)
		_, theirs := first(t, doesNothing, true)
		t.Logf("first text after %.0f ms, without scripts %.0f: %.3f; ready after %.0f ms, the empty program %.0f: %.3f", painted, plain, painted/plain, ours, theirs, ours/theirs)
		paint, ready = append(paint, painted/plain), append(ready, ours/theirs)
	}
	t.Logf("medians: first text %.3f, ready %.3f", median(paint), median(ready))
	assert.Less(t, median(paint), 1.15*slack)
	assert.Less(t, median(ready), 1.55*slack)
}
