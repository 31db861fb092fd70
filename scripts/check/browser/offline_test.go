package browser

import (
	"os"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// A repeat visit moves nothing but the question whether there is a new
// version; with the host stopped the page still comes up and answers.
func TestRepeatVisit(t *testing.T) {
	p := open(t, phone)
	p.kept()
	p.host.forget()
	p.reload()
	p.until(`navigator.serviceWorker.controller`)
	for _, request := range p.host.asked() {
		assert.Contains(t, request, "/sw.js ")
	}
	assert.LessOrEqual(t, p.host.sent.Load(), int64(2000), "bytes from the host: %q", p.host.asked())

	p.host.stop()
	p.host.forget()
	p.forgive("ERR_CONNECTION_REFUSED")
	p.forgive("Failed to update a ServiceWorker")
	p.reload()
	for _, address := range []string{"", "index.html", "?x=1", "index.html?x=1#fibre.diameter=0.5mm"} {
		p.visit(p.host.url() + address)
	}
	// 17 MPa on 0.45 mm: 17e6 × π/4 × 0.45e-3² ÷ 9.80665 = 0.27571 kg, by hand.
	p.fill("fibre.diameter", "0.45")
	p.until(byID("hang.mass") + `.value.startsWith("275.7") || ` + byID("hang.mass") + `.value === "276"`)
	assert.Empty(t, p.host.asked())
	p.shot("offline")
}

// The first visit fetches nothing twice that has a hash in its name.
func TestFirstVisit(t *testing.T) {
	p := open(t, phone)
	p.kept()
	whole := map[string]int{}
	for _, request := range p.host.asked() {
		if strings.HasSuffix(request, " 200") {
			whole[request]++
		}
	}
	for request, n := range whole {
		if strings.Contains(request, ".wasm ") {
			assert.Equal(t, 1, n, request)
		}
	}
	assert.NotEmpty(t, whole)
}

const title = `document.title`

// A new version waits until the person takes it: the old page stays whole,
// through reloads too, and then the new one comes whole.
func TestNewVersion(t *testing.T) {
	p := open(t, phone)
	p.kept()
	p.reload()
	old := eval[string](p, title)
	p.host.publish(next(t))
	p.reload()
	p.until(`navigator.serviceWorker.getRegistration().then(r => r.update().then(() => r.waiting && r.waiting.state === "installed"))`)
	p.reload()
	assert.Equal(t, old, eval[string](p, title), "never forced")
	assert.Len(t, caches(p), 2, "the old version is kept while it is in use")

	eval[bool](p, `navigator.serviceWorker.getRegistration().then(r => { r.waiting.postMessage({type: "take"}); return true })`)
	p.until(`navigator.serviceWorker.getRegistration().then(r => r && !r.waiting && r.active.state === "activated")`)
	p.reload()
	assert.Equal(t, old+" later", eval[string](p, title))
	p.until(`caches.keys().then(all => all.length === 1)`)
	assert.Contains(t, caches(p)[0], "@later")

	p.host.stop()
	p.forgive("ERR_CONNECTION_REFUSED")
	p.forgive("Failed to update a ServiceWorker")
	p.reload()
	assert.Equal(t, old+" later", eval[string](p, title), "and it is kept whole")
}

// The page offers a new version in a sentence with a button; taking it keeps what was typed.
func TestOffered(t *testing.T) {
	p := open(t, phone)
	p.kept()
	p.reload()
	old := eval[string](p, title)
	p.fill("fibre.diameter", "0.45")
	p.host.publish(next(t))
	eval[bool](p, `navigator.serviceWorker.getRegistration().then(r => r.update()).then(() => true)`)
	p.until(byID("offer") + `.checkVisibility()`)
	p.expect("offer-text", says("say.new-version", ""))
	assert.Equal(t, old, eval[string](p, title))
	p.shot("offered")
	p.press(`[data-do="take"]`)
	p.until(`document.title !== ` + strconv.Quote(old) + ` && ` + isReady)
	p.expect("fibre.diameter", "0.45 mm")
	assert.False(t, eval[bool](p, byID("offer")+`.checkVisibility()`))
}

// Another program's caches on the same host, and another copy of this page
// under another path, are not touched.
func TestOnlyOurCaches(t *testing.T) {
	p := open(t, phone)
	p.kept()
	p.reload()
	others := []string{"twistbench-/some/@1", "twistbench-/some/where/else/@1", "other"}
	for _, name := range others {
		eval[bool](p, `caches.open("`+name+`").then(() => true)`)
	}
	p.host.publish(next(t))
	p.until(`navigator.serviceWorker.getRegistration().then(r => r.update().then(() => r.waiting))`)
	eval[bool](p, `navigator.serviceWorker.getRegistration().then(r => { r.waiting.postMessage({type: "take"}); return true })`)
	p.until(`caches.keys().then(all => !all.some(name => name.startsWith("twistbench-/some/where/@") && !name.includes("@later")))`)
	assert.Subset(t, caches(p), others)
}

// An install that a dropped network cuts short leaves the old version in charge.
func TestBrokenInstall(t *testing.T) {
	p := open(t, phone)
	p.kept()
	p.reload()
	dir := next(t)
	icon := dir + "/icon.svg"
	require.NoError(t, os.Remove(icon))
	p.host.publish(dir)
	failed := `navigator.serviceWorker.getRegistration().then(r => r.update()).then(() => new Promise(done => setTimeout(() =>
		navigator.serviceWorker.getRegistration().then(r => done(!r.waiting && !r.installing && r.active.state === "activated")), 500)), () => true)`
	p.forgive("404")
	p.forgive("ServiceWorker")
	p.until(failed)
	p.host.stop()
	p.forgive("ERR_CONNECTION_REFUSED")
	p.reload()
	assert.NotContains(t, eval[string](p, title), "later")
}

func caches(p *page) []string {
	p.t.Helper()
	return eval[[]string](p, `caches.keys()`)
}
