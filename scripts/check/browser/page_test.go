package browser

import (
	"context"
	"fmt"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/cdproto/log"
	"github.com/chromedp/cdproto/network"
	cdppage "github.com/chromedp/cdproto/page"
	"github.com/chromedp/cdproto/runtime"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"twistbench/calc/words"
)

// patience is how long anything may take on a busy machine.
const patience = 60 * time.Second

// A screen is what the page is seen on.
type screen struct {
	name   string
	width  int64 // CSS pixels
	height int64
	scale  float64
	touch  bool
}

var (
	phone = screen{"phone", 360, 640, 2, true}
	small = screen{"small", 320, 568, 2, true}
	desk  = screen{"desk", 1280, 800, 1, false}
)

// A look is a preference of the person's device: a media feature and its value.
type look struct{ feature, value string }

var (
	dark  = look{"prefers-color-scheme", "dark"}
	still = look{"prefers-reduced-motion", "reduce"}
)

// A page is one tab with the page open. What goes wrong in it fails the test.
type page struct {
	t      *testing.T
	ctx    context.Context
	host   *host
	screen screen

	mu       sync.Mutex
	problems []string
	forgiven []string
}

// open opens the page on a new host and waits until the core is up.
func open(t *testing.T, s screen, looks ...look) *page {
	t.Helper()
	return newHost(t).open(s, looks...)
}

// open opens the page in a new tab and waits until the core is up.
func (h *host) open(s screen, looks ...look) *page {
	h.t.Helper()
	p := h.blank(s, looks...)
	p.visit(h.url())
	return p
}

// blank is a new tab before anything is opened.
func (h *host) blank(s screen, looks ...look) *page {
	h.t.Helper()
	p := &page{t: h.t, ctx: h.tab(), host: h, screen: s}
	require.NoError(p.t, chromedp.Do(p.ctx))
	require.NoError(p.t, chromedp.Listen(p.ctx, p.watch))
	p.size(s)
	call(p, emulation.SetTouchEmulationEnabled, emulation.SetTouchEmulationEnabledParams{Enabled: s.touch})
	var features []*emulation.MediaFeature
	for _, l := range looks {
		features = append(features, &emulation.MediaFeature{Name: l.feature, Value: l.value})
	}
	call(p, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{Features: features})
	p.t.Cleanup(p.check)
	return p
}

// watch remembers what must not happen.
func (p *page) watch(event any) {
	switch e := event.(type) {
	case *network.EventRequestWillBeSent:
		if url := e.Request.URL; !strings.HasPrefix(url, p.host.url()) && !strings.HasPrefix(url, "data:") { // the browser's own signs in its boxes for dates
			p.problem("a request to " + url)
		}
	case *runtime.EventExceptionThrown:
		text := e.ExceptionDetails.Text
		if x := e.ExceptionDetails.Exception; x != nil {
			text += " " + x.Description
		}
		p.problem("exception: " + text)
	case *runtime.EventConsoleAPICalled:
		if e.Type == runtime.ConsoleAPICalledTypeError || e.Type == runtime.ConsoleAPICalledTypeAssert {
			var parts []string
			for _, a := range e.Args {
				parts = append(parts, strings.Trim(string(a.Value)+" "+a.Description, ` "`))
			}
			p.problem("console: " + strings.Join(parts, " "))
		}
	case *log.EventEntryAdded: // the browser's own complaints, the page's policy among them
		if e.Entry.Level == log.EntryLevelError || e.Entry.Source == log.EntrySourceSecurity {
			p.problem(fmt.Sprintf("browser: %s %s", e.Entry.Text, e.Entry.URL))
		}
	}
}

func (p *page) problem(text string) {
	p.mu.Lock()
	defer p.mu.Unlock()
	p.problems = append(p.problems, text)
}

// forgive lets problems pass that contain the text: with the host stopped the
// browser complains of requests that could not be sent.
func (p *page) forgive(text string) {
	p.mu.Lock()
	defer p.mu.Unlock()
	p.forgiven = append(p.forgiven, text)
}

// check fails the test for each problem that was not forgiven.
func (p *page) check() {
	p.mu.Lock()
	defer p.mu.Unlock()
next:
	for _, problem := range p.problems {
		for _, f := range p.forgiven {
			if strings.Contains(problem, f) {
				continue next
			}
		}
		assert.Fail(p.t, problem)
	}
	p.problems = nil
}

// again makes the page a subtest's for its time, on the start plan.
func (p *page) again(t *testing.T) {
	t.Helper()
	was := p.t
	p.t = t
	t.Cleanup(func() {
		p.check()
		p.t = was
	})
	p.choose("plan-list", "")
}

// call sends a command of the browser's protocol.
func call[P, R any](p *page, command cdp.Command[P, R], params P) R {
	p.t.Helper()
	ctx, cancel := context.WithTimeout(p.ctx, patience)
	defer cancel()
	r, err := chromedp.Call(ctx, command, params)
	require.NoError(p.t, err)
	return r
}

// do runs steps of chromedp.
func (p *page) do(steps ...chromedp.Action[chromedp.Void]) {
	p.t.Helper()
	ctx, cancel := context.WithTimeout(p.ctx, patience)
	defer cancel()
	require.NoError(p.t, chromedp.Do(ctx, steps...))
}

// eval gives the value of an expression; a promise is awaited.
func eval[T any](p *page, expression string) T {
	p.t.Helper()
	ctx, cancel := context.WithTimeout(p.ctx, patience)
	defer cancel()
	v, err := chromedp.Run(ctx, chromedp.Evaluate[T](expression, chromedp.EvalAwaitPromise))
	require.NoError(p.t, err, expression)
	return v
}

// until waits for an expression, or what it promises, to be true. While a page gives way to another,
// the browser may know neither: that is passed over.
func (p *page) until(expression string) {
	p.t.Helper()
	ctx, cancel := context.WithTimeout(p.ctx, patience)
	defer cancel()
	for {
		ok, err := chromedp.Run(ctx, chromedp.Evaluate[bool]("Promise.resolve("+expression+").then(Boolean)", chromedp.EvalAwaitPromise))
		if ok {
			return
		}
		select {
		case <-ctx.Done():
			require.Fail(p.t, "never came true: "+expression, "%v; problems: %q", err, p.problems)
		case <-time.After(25 * time.Millisecond):
		}
	}
}

// before runs a script in every document of the tab before the page's own.
func (p *page) before(script string) {
	p.t.Helper()
	call(p, cdppage.AddScriptToEvaluateOnNewDocument, cdppage.AddScriptToEvaluateOnNewDocumentParams{Source: script})
}

const isReady = `document.documentElement.dataset.ready === "1"`

// visit opens an address and waits until the core is up.
func (p *page) visit(url string) {
	p.t.Helper()
	p.do(chromedp.Navigate(url))
	p.until(isReady)
}

func (p *page) reload() {
	p.t.Helper()
	p.do(chromedp.Reload())
	p.until(isReady)
}

// byID is the expression for an element; it throws if there is none.
func byID(id string) string {
	quoted := strconv.Quote(id)
	return `(document.getElementById(` + quoted + `) ?? (() => { throw new Error("no element " + ` + quoted + `) })())`
}

// reveal taps open what is closed around an element.
func (p *page) reveal(id string) {
	p.t.Helper()
	for {
		closed := eval[string](p, `(e => {
			for (let d = e.closest("details:not([open])"), next; d; d = next) {
				next = d.parentElement.closest("details:not([open])");
				if (next || d.querySelector("summary").contains(e)) continue;
				document.querySelector("[data-tapped]")?.removeAttribute("data-tapped");
				d.querySelector("summary").dataset.tapped = "1";
				return "[data-tapped]";
			}
			return "";
		})(`+byID(id)+`)`)
		if closed == "" {
			return
		}
		p.press(closed)
	}
}

// fill types a text into a box in place of what it held, as a person would: a
// tap, and then key by key. After each key the box holds what was typed and no
// other character.
func (p *page) fill(key, text string) {
	p.t.Helper()
	p.reveal(key)
	p.press("#" + strings.ReplaceAll(key, ".", `\.`))
	eval[bool](p, `(e => { e.select(); return document.activeElement === e || (() => { throw new Error("not in the box") })() })(`+byID(key)+`)`)
	p.do(chromedp.KeyEvent("\b"))
	typed := ""
	for _, next := range text {
		p.do(chromedp.KeyEvent(string(next)))
		typed += string(next)
		require.Equal(p.t, typed, p.raw(key, "value"), "%s while it is typed", key)
	}
}

// leave takes the focus out of a box.
func (p *page) leave() {
	p.t.Helper()
	eval[bool](p, `(document.activeElement.blur(), true)`)
}

// catchUp lets the page write what waits out of sight, as it does for print.
func (p *page) catchUp() {
	p.t.Helper()
	eval[bool](p, `dispatchEvent(new Event("beforeprint"))`)
}

// raw is what stands on the page now, and may wait.
func (p *page) raw(id, property string) string {
	p.t.Helper()
	return eval[string](p, byID(id)+"."+property)
}

// shows is what a person reads in a box, with the unit beside it, or in an answer.
func (p *page) shows(id string) string {
	p.t.Helper()
	p.catchUp()
	return eval[string](p, `(e => {
		if (!["INPUT", "SELECT", "TEXTAREA"].includes(e.tagName)) return e.textContent.trim();
		const unit = document.getElementById(e.id + ":unit");
		return (e.value + " " + (unit ? unit.value ?? unit.textContent : "")).trim();
	})(`+byID(id)+`)`)
}

// says is the sentence of a key, said of a field and with its parts put in, in the order in which they stand.
func says(key, field string, parts ...string) (all string) {
	for rest := words.EnglishPage.Say(key); rest != ""; {
		var before, name string
		before, name, rest = words.Next(rest)
		all += before
		switch name {
		case "":
		case "name":
			all += words.English.Say("name." + field)
		default:
			all += parts[0]
			parts = parts[1:]
		}
	}
	return all
}

// needs is what stands at a number that waits for another.
func needs(field string) string { return says("mark.unknown", "", says("name."+field, "")) }

// expect waits a moment for an element to show a text, and fails the test if it never does.
func (p *page) expect(id, want string) {
	p.t.Helper()
	got := p.shows(id)
	for end := time.Now().Add(3 * time.Second); got != want && time.Now().Before(end); got = p.shows(id) {
		time.Sleep(25 * time.Millisecond)
	}
	assert.Equal(p.t, want, got, id)
}

// choose takes an option of a list of words or units by its value.
func (p *page) choose(id, value string) {
	p.t.Helper()
	p.reveal(id)
	got := eval[string](p, `(e => { e.focus(); e.value = `+strconv.Quote(value)+`;
		for (const kind of ["input", "change"]) e.dispatchEvent(new Event(kind, {bubbles: true}));
		return e.value })(`+byID(id)+`)`)
	require.Equal(p.t, value, got, "%s has no such option", id)
}

// press taps or clicks the first element that a selector finds, where a finger
// would: it must be in sight with nothing over it.
func (p *page) press(selector string) {
	p.t.Helper()
	spot := eval[struct {
		X, Y float64
		Over string
	}](p, `(async e => {
		if (!e) throw new Error("no element");
		let r, before;
		do { // what comes into sight may only then take its height
			before = r?.y;
			e.scrollIntoView({block: "center", behavior: "instant"});
			for (let i = 0; i < 3; i++) await new Promise(requestAnimationFrame);
			r = e.getBoundingClientRect();
		} while (r.y !== before);
		const x = r.x + r.width / 2, y = r.y + r.height / 2;
		const top = document.elementFromPoint(x, y);
		return {X: x, Y: y, Over: top && (e.contains(top) || top.contains(e)) ? "" : top ? top.outerHTML.slice(0, 80) : "nothing"};
	})(document.querySelector(`+strconv.Quote(selector)+`))`)
	require.Empty(p.t, spot.Over, "%s is covered", selector)
	if p.screen.touch {
		p.do(chromedp.TapXY(spot.X, spot.Y))
		return
	}
	p.do(chromedp.MouseClickXY(spot.X, spot.Y))
}

// value is what a box holds.
func (p *page) value(key string) string {
	p.t.Helper()
	p.catchUp()
	return p.raw(key, "value")
}

// text is what an element says.
func (p *page) text(id string) string {
	p.t.Helper()
	p.catchUp()
	return p.raw(id, "textContent.trim()")
}

// said is what the strip says was just done, "" where it can't be seen.
func (p *page) said() string {
	p.t.Helper()
	return eval[string](p, `(e => e.checkVisibility() && e.getBoundingClientRect().top >= 0 && e.getBoundingClientRect().bottom <= innerHeight ? e.textContent : "")(document.getElementById("said"))`)
}

// state is an element's data-state, "" without.
func (p *page) state(id string) string {
	p.t.Helper()
	p.catchUp()
	return p.raw(id, `dataset.state ?? ""`)
}

// shot writes a picture of what is in sight, if pictures are wanted.
func (p *page) shot(name string) {
	p.t.Helper()
	p.picture(name, chromedp.CaptureScreenshot())
}

// whole writes a picture of the page from top to bottom, or of as much as goes into one: on a screen that high, for what is out of sight
// is not drawn.
func (p *page) whole(name string) {
	p.t.Helper()
	if os.Getenv("TWISTBENCH_SHOTS") == "" {
		return
	}
	s := p.screen
	s.height = min(16000/int64(s.scale), eval[int64](p, `document.documentElement.scrollHeight`))
	p.size(s)
	for range 5 {
		eval[bool](p, `(scrollTo({top: 0, behavior: "instant"}), new Promise((done) => requestAnimationFrame(() => done(true))))`)
	}
	p.shot(name)
	p.size(p.screen)
}

// size gives the tab a screen's size.
func (p *page) size(s screen) {
	p.t.Helper()
	call(p, emulation.SetDeviceMetricsOverride, emulation.SetDeviceMetricsOverrideParams{
		Width: s.width, Height: s.height, DeviceScaleFactor: s.scale, Mobile: s.touch})
}

func (p *page) picture(name string, take chromedp.Action[[]byte]) {
	p.t.Helper()
	dir := os.Getenv("TWISTBENCH_SHOTS")
	if dir == "" {
		return
	}
	require.NoError(p.t, os.MkdirAll(dir, 0o755))
	ctx, cancel := context.WithTimeout(p.ctx, patience)
	defer cancel()
	data, err := chromedp.Run(ctx, take)
	require.NoError(p.t, err)
	require.NoError(p.t, os.WriteFile(filepath.Join(dir, name+".png"), data, 0o644))
}

// slow makes the processor slower by a factor; 1 is as it is.
func (p *page) slow(factor float64) {
	p.t.Helper()
	call(p, emulation.SetCPUThrottlingRate, emulation.SetCPUThrottlingRateParams{Rate: factor})
}

// kept waits until the service worker has everything and is in charge of later visits.
func (p *page) kept() {
	p.t.Helper()
	p.until(`navigator.serviceWorker.getRegistration().then(r => r && r.active && r.active.state === "activated" && !r.installing)`)
}
