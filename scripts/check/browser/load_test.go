package browser

import (
	"testing"

	"github.com/chromedp/cdproto/cdp"
	cdppage "github.com/chromedp/cdproto/page"
	"github.com/stretchr/testify/assert"
)

// The page comes up on every screen without a complaint of the browser and
// without a request to anywhere else (the harness fails the test for either).
func TestLoads(t *testing.T) {
	for _, s := range []screen{phone, small, desk} {
		for name, looks := range map[string][]look{"light": nil, "dark": {dark}, "still": {still}} {
			t.Run(s.name+" "+name, func(t *testing.T) {
				p := open(t, s, looks...)
				p.shot("load-" + s.name + "-" + name)
				assert.LessOrEqual(t, eval[int](p, `document.documentElement.scrollWidth`), int(s.width), "no sideways scroll")
				assert.Equal(t, int(s.width), eval[int](p, `innerWidth`), "the page takes the screen's width")
			})
		}
	}
}

// What the browser itself asks of a page before it offers a place on the home screen.
func TestInstallable(t *testing.T) {
	p := open(t, phone)
	p.kept()
	m := call(p, cdppage.GetAppManifest, cdppage.GetAppManifestParams{})
	assert.Empty(t, m.Errors)
	assert.Equal(t, p.host.url()+"manifest.webmanifest", m.URL)
	errors := call(p, cdppage.GetInstallabilityErrors, cdp.Empty{}).InstallabilityErrors
	for _, e := range errors {
		// A tab of a device that keeps nothing is what every test uses.
		if e.ErrorID != "in-incognito" {
			assert.Fail(t, e.ErrorID)
		}
	}
}
