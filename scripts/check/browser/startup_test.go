package browser

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// observe watches every change of the page from the moment it is parsed, before any script of its own has run, but of the ids that boot.js fills
// in, which nobody sees.
const observe = `addEventListener("readystatechange", () => {
	if (document.readyState !== "interactive" || globalThis.changes) return;
	const path = (n) => n.nodeType === 3 ? path(n.parentNode) : n.id ? "#" + n.id : n.parentNode?.tagName ? path(n.parentNode) + " " + n.localName : n.localName;
	globalThis.changes = [];
	globalThis.held = [...document.querySelectorAll("main input, main select")].map((e) => [e.id, e.value]);
	globalThis.shifts = 0;
	new MutationObserver((all) => {
		for (const m of all) if (m.attributeName !== "id") changes.push(path(m.target) + (m.attributeName ? " @" + m.attributeName : ""));
	}).observe(document, {subtree: true, childList: true, characterData: true, attributes: true});
	new PerformanceObserver((list) => {
		for (const e of list.getEntries()) globalThis.shifts += e.value;
	}).observe({type: "layout-shift", buffered: true});
}, true);`

// What the build rendered is what the program works out: when it takes over, no answer, no drawing and no box changes, and nothing moves.
func TestStartUpChangesNothing(t *testing.T) {
	for _, s := range []screen{phone, desk} {
		t.Run(s.name, func(t *testing.T) {
			h := newHost(t)
			p := h.blank(s)
			p.before(observe)
			p.visit(h.url())
			p.kept()
			// What may change: that the program is there, and the list of plans, which are on the device; the button that deletes one stays as it was; and
			// where jumps stop, which moves nothing.
			for _, change := range eval[[]string](p, `[...new Set(changes)]`) {
				assert.Contains(t, []string{"#page @data-ready", "#plan-list", "#delete @disabled", "#page @style"}, change)
			}
			assert.NotEmpty(t, eval[[]string](p, `changes`), "the observer sees what it is there to see")
			assert.Empty(t, eval[[]string](p, `held.filter(([id, v]) => document.getElementById(id).value !== v).map(([id]) => id)`))
			assert.Less(t, eval[float64](p, `shifts`), 0.01, "nothing moves")
			t.Logf("layout shift %.4f", eval[float64](p, `shifts`))
		})
	}
}
