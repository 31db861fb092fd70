package browser

import (
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// The harness sees what it is there to see: each of these, done on purpose in
// an empty tab or on the page, is a problem.
func TestHarnessSees(t *testing.T) {
	for _, c := range []struct {
		name, do, problem string
		onPage            bool
	}{
		{"exception", `setTimeout(() => { throw new Error("on purpose") }); true`, "exception: Uncaught Error: on purpose", false},
		{"rejection", `Promise.reject(new Error("on purpose")); true`, "on purpose", false},
		{"console", `console.error("on", "purpose"); true`, "console: on purpose", false},
		{"request", `fetch("http://purpose.test/").catch(() => 0); true`, "a request to http://purpose.test/", false},
		{"secure request", `fetch("https://purpose.test/").catch(() => 0); true`, "a request to https://purpose.test/", false},
		{"policy, request", `fetch("http://purpose.test/").catch(() => 0); true`, "browser: ", true},
		{"policy, style", `document.body.setAttribute("style", "color: red"); true`, "browser: ", true},
		{"policy, script", `document.body.append(Object.assign(document.createElement("script"), {text: "1"})); true`, "browser: ", true},
	} {
		t.Run(c.name, func(t *testing.T) {
			h := newHost(t)
			p := h.blank(phone)
			if c.onPage {
				p.visit(h.url())
			}
			eval[bool](p, c.do)
			assert.Eventually(t, func() bool {
				p.mu.Lock()
				defer p.mu.Unlock()
				return slices.ContainsFunc(p.problems, func(got string) bool { return strings.Contains(got, c.problem) })
			}, patience, 25*time.Millisecond, c.problem)
			p.forgive("")
		})
	}
	// Both requests reached the listener that stands for other hosts.
	require.Eventually(t, func() bool { return slices.Contains(elsewhere.names(), "purpose.test") }, patience, 25*time.Millisecond)
	elsewhere.forget("purpose.test")
}
