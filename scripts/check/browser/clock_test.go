package browser

import (
	"fmt"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"
	"github.com/emersion/go-ical"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"twistbench/calc/words"
)

// The clock that a test sets: it goes on from there, also over a reload, and jumps when it is told to.
const setClock = `(() => {
	const now = Date.now.bind(Date);
	sessionStorage.base ??= %d - now();
	globalThis.jump = (s) => { sessionStorage.jumped = +(sessionStorage.jumped ?? 0) + s * 1000; return true };
	Date.now = () => now() + +sessionStorage.base + +(sessionStorage.jumped ?? 0);
})();
(() => { // what is asked of the browser; a page that is asleep, as behind another, gets no ticks
	const every = setInterval;
	globalThis.setInterval = (f, ms) => every(() => globalThis.asleep || f(), ms);
	globalThis.asked = [];
	const lock = () => { const l = {released: false, release: async () => { l.released = true; asked.push("let go") }}; return l };
	Object.defineProperty(navigator, "wakeLock", {value: {request: async (what) => { asked.push("keep " + what); return globalThis.lock = lock() }}});
	navigator.vibrate = () => asked.push("shake");
	const start = OscillatorNode.prototype.start;
	OscillatorNode.prototype.start = function () { asked.push("ring"); start.call(this) };
	const click = HTMLAnchorElement.prototype.click;
	const made = URL.createObjectURL;
	URL.createObjectURL = (blob) => { blob.text().then((text) => globalThis.file = text); globalThis.kind = blob.type; return made(blob) };
	HTMLAnchorElement.prototype.click = function () { asked.push(this.download); click.call(this) };
})()`

// openClock opens the page in a place, at a time of its local clocks.
func openClock(t *testing.T, s screen, place, local string, looks ...look) *page {
	t.Helper()
	l, err := time.LoadLocation(place)
	require.NoError(t, err)
	at, err := time.ParseInLocation("2006-01-02 15:04:05", local, l)
	require.NoError(t, err)
	h := newHost(t)
	p := h.blank(s, looks...)
	call(p, emulation.SetTimezoneOverride, emulation.SetTimezoneOverrideParams{TimezoneID: place})
	p.before(fmt.Sprintf(setClock, at.UnixMilli()))
	p.visit(h.url())
	return p
}

// set puts a text into a box whose keys are the browser's own affair.
func (p *page) set(key, text string) {
	p.t.Helper()
	eval[bool](p, `(e => { e.focus(); e.value = `+strconv.Quote(text)+`; e.dispatchEvent(new Event("input", {bubbles: true})); e.blur(); return true })(`+byID(key)+`)`)
}

// sleep puts the page behind another, or back.
func (p *page) sleep(asleep bool) {
	p.t.Helper()
	eval[bool](p, fmt.Sprintf(`(globalThis.asleep = %t, Object.defineProperty(document, "visibilityState", {configurable: true, value: asleep ? "hidden" : "visible"}), document.dispatchEvent(new Event("visibilitychange")), true)`, asleep))
}

// sight scrolls to an element.
func (p *page) sight(id string) {
	p.t.Helper()
	for range 4 {
		eval[bool](p, `(`+byID(id)+`.scrollIntoView({behavior: "instant"}), new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(() => done(true)))))`)
	}
}

// jump lets so many seconds pass that the page did not see.
func (p *page) jump(seconds int) {
	p.t.Helper()
	eval[bool](p, fmt.Sprintf(`jump(%d)`, seconds))
}

// table is what the clock's table says, row by row.
func (p *page) table() []string {
	p.t.Helper()
	return eval[[]string](p, `[...document.getElementById("clock.table").rows].map((r) => [...r.cells].map((c) => c.textContent).join(" | "))`)
}

// left is how many seconds a card counts.
func (p *page) left(card string) int {
	p.t.Helper()
	n := 0
	for part := range strings.SplitSeq(p.text(card+":left"), ":") {
		by, err := strconv.Atoi(part)
		require.NoError(p.t, err)
		n = n*60 + by
	}
	return n
}

// card waits until a card shows what needs hands next and a number of seconds left, give or take two for the machine.
func (p *page) card(id, next string, left int) {
	p.t.Helper()
	p.expect(id+":on", says("clock.due", "", next))
	got := p.left(id)
	for end := time.Now().Add(3 * time.Second); (got > left+1 || got < left-3) && time.Now().Before(end); got = p.left(id) {
		time.Sleep(50 * time.Millisecond)
	}
	assert.InDelta(p.t, left-1, got, 2, "%s: %s", id, next)
}

// 15 + 2 × (3 + 5 + 60 + 30) + 10 = 221 min, then 24 h of rest: the start plan's, common practice.
func TestClockTimes(t *testing.T) {
	p := openClock(t, phone, "Europe/Berlin", "2026-10-24 20:00:00")
	assert.Equal(t, []string{
		"+00:00 ● | Heat up the oven | 00:15", "+00:15 ● | Put it in | 00:03", "+00:18 | Oven heats up again | 00:05", "+00:23 | Hold | 01:00",
		"+01:23 ● | Take it out to cool | 00:30", "+01:53 ● | Clamp at the second gap | 00:10", "+02:03 ● | Put it in again | 00:03",
		"+02:06 | Oven heats up again | 00:05", "+02:11 | Second hold | 01:00", "+03:11 ● | Take it out to cool | 00:30",
		"+03:41 ● | Release, let it rest | 24:00", "+27:41 ● | Ready to test | ",
	}, p.table())
	p.expect("clock.ready", "Ready to test 27:41 h after the start.")

	// Over midnight, and on over the end of summer time, which makes that night an hour longer.
	p.set("clock.time", "22:10")
	p.expect("clock.ready", "Start Sat 22:10, ready to test Mon 00:51.")
	p.expect("clock.time:says", "Start Sat 22:10, ready to test Mon 00:51.")
	rows := p.table()
	assert.Equal(t, "Sat 22:10 ● | Heat up the oven | 00:15", rows[0])
	assert.Equal(t, "23:33 ● | Take it out to cool | 00:30", rows[4])
	assert.Equal(t, "Sun 00:03 ● | Clamp at the second gap | 00:10", rows[5])
	assert.Equal(t, "Sun 01:51 ● | Release, let it rest | 24:00", rows[10])
	assert.Equal(t, "Mon 00:51 ● | Ready to test | ", rows[11])
	p.sight("clock")
	p.shot("clock-phone-times")
	p.sight("clock.time")
	p.shot("clock-phone-boxes")
	p.sight("clock.ready")
	p.shot("clock-phone-table")

	// Backwards from when it is to be ready.
	p.choose("clock.mode", "ready")
	p.set("clock.day", "2026-10-26")
	p.set("clock.time", "09:00")
	p.expect("clock.ready", "Start Sun 05:19, ready to test Mon 09:00.")
	p.expect("clock.time:says", "")
	assert.Equal(t, "Mon 09:00 ● | Ready to test | ", p.table()[11])

	// What can't be: each has its sentence, and nothing typed is lost.
	p.set("clock.time", "08:00")
	p.set("clock.day", "2026-10-25")
	p.expect("clock.time:says", says("clock.past", "", "Sat 05:19"))
	assert.Equal(t, "08:00", p.value("clock.time"))
	for _, do := range []string{"start-at", "calendar"} {
		p.fill("plan-name", do) // another sentence stands there
		p.leave()
		eval[bool](p, `(asked.length = 0, document.getElementById("status").textContent = "", true)`)
		p.press(`[data-do="` + do + `"]`)
		p.expect("status", says("clock.past", "", "Sat 05:19"))
		assert.Equal(t, "08:00", p.value("clock.time"))
		assert.Equal(t, "clock.time", eval[string](p, `document.activeElement.id`))
		assert.Empty(t, eval[[]string](p, `asked`), "no file")
	}
	assert.Zero(t, eval[int](p, `Object.keys(localStorage).filter((k) => k.startsWith("twistbench/run/")).length`), "nothing was started")
	assert.Empty(t, p.state("run.1"))
	p.choose("clock.mode", "start")
	p.set("clock.time", "02:30")
	p.expect("clock.time:says", says("clock.twice", ""))
	p.set("clock.day", "2027-03-28")
	p.expect("clock.time:says", says("clock.never", ""))
	assert.Equal(t, "Sun 2027-03-28 03:30 ● | Heat up the oven | 00:15", p.table()[0])
	p.expect("clock.ready", "Start Sun 2027-03-28 03:30, ready to test Mon 2027-03-29 07:11.")
	p.press("#undo")
	p.expect("clock.day", "2026-10-25")

	p.fill("heat.hold-1", "soon")
	p.leave()
	p.expect("clock.ready", needs("heat.hold-1"))
	assert.Equal(t, []string{""}, p.table())
}

// What the clock can't do is said before it starts, together with what is hot then, and each once.
func TestClockCautions(t *testing.T) {
	p := open(t, phone)
	assert.Equal(t, 1, eval[int](p, `document.querySelectorAll("#clock .caution").length`))
	text := p.raw("clock", "textContent")
	for _, key := range []string{"caution.clock.1", "caution.clock.2", "caution.clock.3", "caution.local"} {
		assert.Equal(t, 1, strings.Count(text, words.EnglishPage.Say(key)), key)
	}
	p.press("#clock .caution summary")
	assert.True(t, eval[bool](p, `(() => {
		const start = document.querySelector('#clock [data-do="start"]').getBoundingClientRect();
		return [...document.querySelectorAll("#clock .caution :is(span, li)")].every((e) => e.checkVisibility() && e.getBoundingClientRect().bottom < start.top)
	})()`), "above the button that starts it")
}

// One heat-set of a lesson's two loads that share an oven: out at 63 and 96 min, where the first goes in at 30.
func TestClockLoads(t *testing.T) {
	h := newHost(t)
	p := h.openAt(desk, h.url()+"#v=1&clamp.stages=one&heat.preheat=30%20min&heat.load=3%20min&heat.recovery=5%20min&heat.hold-1=25%20min&heat.cool-1=10%20min&heat.rest=0%20h&cut.pieces=25&cut.spare=25%20%25&heat.frame-pieces=4&heat.oven-width=440%20mm&heat.oven-depth=240%20mm&heat.frame-length=180%20mm&heat.frame-width=80%20mm")
	require.Equal(t, "2", p.shows("heat.loads"))
	rows := p.table()
	assert.Contains(t, rows, "+01:03 ● | Put it in, load 2 | 00:03")
	assert.Contains(t, rows, "+01:13 ● | Ready to test, load 1 | ")
	assert.Contains(t, rows, "+01:36 ● | Take it out to cool, load 2 | 00:10")
	assert.Equal(t, "+01:46 ● | Ready to test, load 2 | ", rows[len(rows)-1])
	p.sight("clock")
	p.shot("clock-desk-loads")
}

// A started timetable counts down by the clock: after a jump, a frozen tab and a reload it is where the clock is.
func TestCountdown(t *testing.T) {
	for _, s := range []screen{phone, desk} {
		t.Run(s.name, func(t *testing.T) {
			p := openClock(t, s, "America/New_York", "2026-11-25 23:30:00")
			assert.False(t, eval[bool](p, byID("strip.clock")+`.checkVisibility()`))
			p.press(`[data-do="start"]`)
			p.until(`document.documentElement.dataset.bench === "clock"`)
			p.card("run.1", "Put it in (180 °C)", 15*60)
			p.expect("run.1:rest", says("clock.on", "", "23:45", "Heat up the oven (180 °C)", says("plan.start", "")))
			p.until(`asked.includes("keep screen")`)
			p.until(`document.documentElement.hasAttribute("data-awake")`)
			assert.LessOrEqual(t, eval[float64](p, `document.documentElement.scrollHeight - innerHeight`), 0.0, "it fits the screen")
			assert.GreaterOrEqual(t, eval[float64](p, `parseFloat(getComputedStyle(document.getElementById("run.1:left")).fontSize)`), 56.0)
			p.shot("clock-" + s.name + "-runs")

			// Half an hour goes by behind another page, without a tick: to the first hold, which ends on another day.
			p.sleep(true)
			p.jump(30 * 60)
			time.Sleep(700 * time.Millisecond)
			p.card("run.1", "Put it in (180 °C)", 15*60)
			eval[bool](p, `(asked.length = 0, lock.released = true)`)
			p.sleep(false)
			p.card("run.1", "Take it out to cool", 53*60)
			p.expect("run.1:rest", says("clock.on", "", "00:53", "Hold (180 °C)", says("plan.start", "")))
			p.until(`asked.includes("keep screen")`) // it was let go behind the other page

			// What came due meanwhile is not passed over: it is said, shakes and rings once, and stands there until it is seen to.
			missed := says("clock.missed", "", "Wed 2026-11-25 23:45 Put it in (180 °C)")
			p.expect("run.1:missed", missed)
			p.expect("say", missed)
			p.until(`asked.includes("ring") && asked.includes("shake")`)
			assert.Equal(t, "missed", p.state("run.1"))
			assert.Equal(t, "missed", p.state("strip.clock"))
			assert.True(t, eval[bool](p, `document.querySelector("#run\\.1 .sign em").checkVisibility() && !document.querySelector("#run\\.1 .sign strong").checkVisibility()`))
			p.shot("clock-" + s.name + "-missed")
			p.press(`#run\.1 [data-do="seen"]`)
			p.until(byID("run.1") + `.dataset.state === "on"`)
			p.expect("run.1:missed", "")
			assert.Equal(t, 1, eval[int](p, `asked.filter((x) => x === "ring").length`))

			// Late, and not that late.
			p.press(`#run\.1 [data-do="late-15"]`)
			p.card("run.1", "Take it out to cool", 68*60)
			p.press(`#run\.1 [data-do="early-5"]`)
			p.card("run.1", "Take it out to cool", 63*60)

			// A reload brings it back, and the strip says so outside of its own view.
			kept := p.shelf()
			assert.Len(t, kept, 1)
			p.reload()
			assert.Equal(t, kept, p.shelf())
			assert.Equal(t, "on", p.state("strip.clock"))
			p.shot("clock-" + s.name + "-strip")
			p.press(`#strip\.clock`)
			p.card("run.1", "Take it out to cool", 63*60)

			// The next step is due: a word, a shape, a sound and a shake, until it is seen to.
			eval[bool](p, `(asked.length = 0, true)`)
			p.jump(63 * 60)
			p.until(byID("run.1") + `.dataset.state === "due"`)
			p.until(`asked.includes("ring") && asked.includes("shake")`)
			p.expect("run.1:on", "Take it out to cool"+says("clock.since", "", "01:03", "0"))
			p.expect("run.1:then", says("clock.then", "", "Clamp at the second gap (120.7 mm)"))
			p.expect("say", "Take it out to cool")
			assert.True(t, eval[bool](p, `document.querySelector("#run\\.1 .hot").checkVisibility()`))
			between := eval[float64](p, byID("run.1:left")+`.getBoundingClientRect().top - `+byID("run.1:then")+`.getBoundingClientRect().bottom`)
			assert.InDelta(t, 0, between, 8, "right above the digits")
			assert.LessOrEqual(t, eval[float64](p, `document.documentElement.scrollHeight - innerHeight`), 0.0, "it fits the screen")
			assert.True(t, eval[bool](p, `document.querySelector("#run\\.1 .sign strong").checkVisibility()`))
			p.shot("clock-" + s.name + "-due")

			// Another comes due while it waits, long since: it is said anew.
			p.jump(30*60 + 1)
			both := says("clock.missed", "", "01:03 Take it out to cool")
			p.expect("say", both+". Clamp at the second gap (120.7 mm)")
			p.expect("run.1:missed", both)
			p.expect("run.1:on", "Clamp at the second gap (120.7 mm)"+says("clock.since", "", "01:33", "0"))
			p.shot("clock-" + s.name + "-due-again")
			p.press(`#run\.1 [data-do="seen"]`)
			p.until(byID("run.1") + `.dataset.state === "on"`)
			p.until(byID("strip.clock") + `.dataset.state === "on"`)

			// Stopped, and on again; stopped, and gone at the next visit.
			p.press(`#run\.1 [data-do="stop"]`)
			p.until(byID("run.1") + `.dataset.state === "off"`)
			assert.Empty(t, p.shelf())
			p.shot("clock-" + s.name + "-stopped")
			p.press(`#run\.1 [data-do="stop"]`)
			p.until(byID("run.1") + `.dataset.state === "on"`)
			assert.Len(t, p.shelf(), 1)
			p.press(`#run\.1 [data-do="stop"]`)
			p.until(byID("run.1") + `.dataset.state === "off"`)
			p.reload()
			assert.Empty(t, p.state("strip.clock"))
			assert.Empty(t, p.state("run.1"))
		})
	}
}

// Several at once, each under its plan's name; another tab's are shown too; there is a last one.
func TestSeveralRuns(t *testing.T) {
	p := openClock(t, phone, "UTC", "2026-12-31 23:50:00")
	p.press(`[data-do="start"]`)
	p.card("run.1", "Put it in (180 °C)", 15*60)
	p.press(`#clock-big [data-do="unbench"]`)
	p.fill("plan-name", "Blind “a=b”; 2")
	p.leave()
	p.set("clock.day", "2027-01-01")
	p.set("clock.time", "00:10")
	p.press(`[data-do="start-at"]`)
	p.card("run.1", "Put it in (180 °C)", 15*60)
	p.card("run.2", "Heat up the oven (180 °C)", 20*60)
	p.expect("run.2:rest", says("clock.next", "", "Fri 00:10", "Blind “a=b”; 2"))
	p.shot("clock-phone-two")
	other := p.host.blank(phone)
	call(other, emulation.SetTimezoneOverride, emulation.SetTimezoneOverrideParams{TimezoneID: "UTC"})
	other.before(fmt.Sprintf(setClock, time.Date(2026, 12, 31, 23, 50, 0, 0, time.UTC).UnixMilli()))
	other.visit(p.host.url())
	assert.Equal(t, "on", other.state("strip.clock"))
	other.press(`#strip\.clock`)
	other.until(`document.documentElement.hasAttribute("data-awake")`) // a line goes, and the cards have more room
	other.press(`#run\.2 [data-do="stop"]`)
	p.until(byID("run.2") + `.dataset.state === ""`)
	for range 5 {
		p.press(`#clock-big [data-do="unbench"]`)
		p.until(`!document.documentElement.dataset.bench`)
		p.press(`[data-do="start"]`)
		p.until(`document.documentElement.dataset.bench`)
	}
	p.shot("clock-phone-six")
	p.press(`#clock-big [data-do="unbench"]`)
	p.press(`[data-do="start"]`)
	assert.Len(t, eval[[]string](p, `Object.keys(localStorage).filter((k) => k.startsWith("twistbench/run/"))`), 6)
	p.expect("status", says("clock.full", ""))
}

// While one step waits, another that comes due is said, shakes and rings at once, and takes the screen from another step's bench view.
func TestAnotherDue(t *testing.T) {
	p := openClock(t, phone, "UTC", "2026-11-25 06:00:00")
	p.fill("heat.cool-1", "5 min")
	p.leave()
	p.press(`[data-do="start"]`)
	p.jump(83 * 60) // out of the oven; it was put in at 15 min
	p.expect("run.1:on", "Take it out to cool"+says("clock.since", "", "07:23", "0"))
	p.expect("say", says("clock.missed", "", "06:15 Put it in (180 °C)")+". Take it out to cool")
	p.press(`#clock-next`)
	p.until(`document.documentElement.dataset.bench === "wire"`)
	p.until(`asked.includes("ring")`)
	eval[bool](p, `(asked.length = 0, true)`)
	p.jump(5*60 - 2)
	p.until(`asked.includes("ring")`) // again, as the first still waits
	assert.Equal(t, "wire", eval[string](p, `document.documentElement.dataset.bench`))
	p.until(`document.documentElement.dataset.bench === "clock"`)
	p.expect("say", says("clock.missed", "", "06:15 Put it in (180 °C)")+". Take it out to cool + Clamp at the second gap (120.7 mm)")
	assert.Equal(t, 2, eval[int](p, `new Promise((done) => setTimeout(() => done(asked.filter((x) => x === "ring").length), 700))`), "not only four seconds after the last")
	p.press(`#run\.1 [data-do="seen"]`)
	p.until(byID("run.1") + `.dataset.state === "on"`)
	p.expect("say", "")
}

// A run that was kept before it had a gap and a dial opens, and a page that was closed for long says all that came due.
func TestOldRun(t *testing.T) {
	p := openClock(t, phone, "UTC", "2026-11-25 12:00:00")
	eval[bool](p, `(localStorage["twistbench/run/0"] = "1 1795608000 1795608000 0 1 0 1800 1 1 1800 180 2 1 1980 300 3 1 2280 1500 4 1 3780 600 11 1 4380 0 =Lesson", true)`)
	p.jump(62 * 60)
	p.reload()
	p.press(`#strip\.clock`)
	p.card("run.1", "Take it out to cool", 60)
	p.expect("run.1:missed", says("clock.missed", "", "12:30 Put it in"))
	p.jump(3600)
	p.expect("run.1:missed", says("clock.missed", "", "12:30 Put it in; 13:03 Take it out to cool; 13:13 Ready to test"))
	p.expect("run.1:rest", says("clock.done", "", "13:13", "Lesson"))
	assert.Equal(t, []string{"file", "stop"}, eval[[]string](p, `[...document.querySelectorAll("#run\\.1 .late > *")].filter((e) => e.checkVisibility()).map((e) => e.dataset.do ?? e.textContent)`), "all is over: nobody is late")
	assert.False(t, eval[bool](p, `document.querySelector("#run\\.1 .hot").checkVisibility()`))
}

// What stops the plan in the oven stands above the buttons and on every step in it; of too many loads nothing is started; of how many is not
// known, the table says that it is of one.
func TestClockHalts(t *testing.T) {
	p := openClock(t, phone, "UTC", "2026-11-25 06:00:00")
	p.unfold()
	sees := func(class string) bool {
		t.Helper()
		return eval[bool](p, `document.querySelector("#clock .`+class+`").checkVisibility({contentVisibilityAuto: false})`)
	}
	for _, c := range []struct {
		given           []pair
		halted, oneLoad bool
		refused         bool
	}{
		{nil, false, false, false},
		{[]pair{{"heat.set", "260"}}, true, false, false},
		{[]pair{{"heat.set", "180"}, {"cut.pieces", "97"}}, true, false, true}, // and a quarter more to spare, 8 in a load
		{[]pair{{"cut.pieces", ""}}, false, true, false},
		{[]pair{{"cut.pieces", "5"}, {"heat.frame-length", "400 mm"}}, true, true, false},
	} {
		p.enter(c.given)
		assert.Equal(t, c.halted, sees("halted"), "%v", c.given)
		assert.Equal(t, c.oneLoad, sees("one-load"), "%v", c.given)
		if c.refused {
			p.expect("clock.ready", says("note.loads-many", ""))
			for _, do := range []string{"start", "calendar"} {
				eval[bool](p, `(asked.length = 0, document.getElementById("status").textContent = "", true)`)
				p.press(`[data-do="` + do + `"]`)
				p.expect("status", says("note.loads-many", ""))
				assert.Empty(t, eval[[]string](p, `asked`), "no file")
			}
			assert.Empty(t, p.state("run.1"))
		}
	}
	p.sight("clock.mode")
	p.shot("clock-phone-halted")
	p.enter([]pair{{"heat.frame-length", "200 mm"}, {"heat.set", "260"}})
	p.press(`[data-do="start"]`)
	p.expect("run.1:on", says("clock.due", "", "Put it in (260 °C: "+says("clock.halt", "")+")"))
	assert.False(t, sees("halted"), "the card says it of its own plan")
}

// A plan that has other times by now, and one that is started a second time.
func TestClockChanged(t *testing.T) {
	p := openClock(t, phone, "UTC", "2026-11-25 06:00:00")
	p.fill("heat.hold-1", "50 min")
	p.leave()
	p.press(`[data-do="start"]`)
	on := says("clock.on", "", "06:15", "Heat up the oven (180 °C)", p.value("plan-name"))
	p.expect("run.1:rest", on)
	p.press(`#clock-big [data-do="unbench"]`)
	p.fill("heat.hold-1", "90 min")
	p.leave()
	p.expect("run.1:rest", on+says("clock.changed", ""))
	p.reload()
	p.expect("run.1:rest", on+says("clock.changed", ""))
	p.press(`[data-do="start"]`)
	p.expect("status", says("clock.again", ""))
	p.expect("run.2:rest", on)
	p.shot("clock-phone-changed")
	p.press(`#clock-big [data-do="unbench"]`)
	p.fill("heat.hold-1", "50 min")
	p.leave()
	p.expect("run.1:rest", on)
	p.expect("run.2:rest", on+says("clock.changed", ""))
}

// A page that stood until the start was past takes no other day unasked.
func TestStandingPage(t *testing.T) {
	p := openClock(t, phone, "UTC", "2026-11-25 06:00:00")
	p.set("clock.time", "06:10")
	p.expect("clock.time:says", "Start Wed 06:10, ready to test Thu 09:51.")
	p.jump(12 * 60)
	p.press(`[data-do="start-at"]`)
	p.expect("status", says("clock.past", "", "Wed 06:10"))
	p.expect("clock.time:says", "Start Thu 06:10, ready to test Fri 09:51.")
	assert.Empty(t, p.state("run.1"))
	p.press(`[data-do="start-at"]`)
	p.expect("run.1:rest", says("clock.next", "", "Thu 06:10", p.value("plan-name")))
}

// The calendar file: RFC 5545, with the plan's name on it, and the same names in it when it is made again.
func TestCalendarFile(t *testing.T) {
	p := openClock(t, phone, "Europe/Berlin", "2026-11-25 06:00:00")
	p.press(`[data-do="calendar"]`)
	p.expect("status", says("clock.missing", "", says("name.clock.time", "")))
	assert.Equal(t, says("clock.missing", "", says("name.clock.time", "")), p.said())
	assert.Equal(t, "clock.time", eval[string](p, `document.activeElement.id`))
	assert.True(t, eval[bool](p, byID("clock.time:box")+`.getBoundingClientRect().top >= `+byID("said")+`.getBoundingClientRect().bottom`), "and what is to be given is under it")
	p.set("clock.time", "07:30")
	take := func() []ical.Event {
		t.Helper()
		eval[bool](p, `(globalThis.file = undefined, true)`)
		p.press(`[data-do="calendar"]`)
		p.until(`globalThis.file !== undefined`)
		c, err := ical.NewDecoder(strings.NewReader(eval[string](p, `file`))).Decode()
		require.NoError(t, err)
		return c.Events()
	}
	events := take()
	assert.Equal(t, "text/calendar", eval[string](p, `kind`))
	assert.Contains(t, eval[[]string](p, `asked`), p.value("plan-name")+".ics")
	require.Len(t, events, 8, "one for each time at which hands are needed")
	var got []string
	for _, e := range events {
		at, err := e.DateTimeStart(nil)
		require.NoError(t, err)
		title, err := e.Props.Text(ical.PropSummary)
		require.NoError(t, err)
		got = append(got, at.Format("02 15:04 ")+title)
		assert.Len(t, e.Children, 2)
	}
	assert.Equal(t, []string{"25 06:30 Heat up the oven (180 °C)", "25 06:45 Put it in (180 °C)", "25 07:53 Take it out to cool", "25 08:23 Clamp at the second gap (120.7 mm)", "25 08:33 Put it in again (180 °C)",
		"25 09:41 Take it out to cool", "25 10:11 Release, let it rest", "26 10:11 Ready to test"}, got, "UTC, an hour behind")
	uid := events[0].Props.Get(ical.PropUID).Value
	p.jump(60)
	assert.Equal(t, uid, take()[0].Props.Get(ical.PropUID).Value)
	p.set("clock.time", "07:31")
	assert.NotEqual(t, uid, take()[0].Props.Get(ical.PropUID).Value)

	// The file of one that is under way is at the times it has by now.
	p.press(`[data-do="start-at"]`)
	p.press(`#run\.1 [data-do="late-15"]`)
	eval[bool](p, `(globalThis.file = undefined, true)`)
	p.press(`#run\.1 [data-do="file"]`)
	p.until(`globalThis.file !== undefined`)
	c, err := ical.NewDecoder(strings.NewReader(eval[string](p, `file`))).Decode()
	require.NoError(t, err)
	at, err := c.Events()[1].DateTimeStart(nil)
	require.NoError(t, err)
	assert.Equal(t, "07:01", at.Format("15:04"))
}

// With reduced motion the sign stands still; it is the same sign.
func TestSignStandsStill(t *testing.T) {
	for name, looks := range map[string][]look{"none": {still}, "due": nil} {
		p := openClock(t, phone, "UTC", "2026-11-25 06:00:00", looks...)
		p.press(`[data-do="start"]`)
		p.jump(15 * 60)
		p.until(byID("run.1") + `.dataset.state === "due"`)
		assert.Equal(t, name, eval[string](p, `getComputedStyle(document.getElementById("run.1")).animationName`))
		p.do(chromedp.KeyEvent("\x1b"))
	}
}

// Without sound, without a lock of the screen, and with storage that is blocked or holds nonsense, it counts all the same.
func TestClockWithout(t *testing.T) {
	for name, script := range map[string]string{
		"sound":   `globalThis.AudioContext = undefined`,
		"lock":    `Object.defineProperty(navigator, "wakeLock", {value: undefined})`,
		"refused": `Object.defineProperty(navigator, "wakeLock", {value: {request: () => Promise.reject(new Error("no"))}})`,
		"storage": `Object.defineProperty(window, "localStorage", {get() { throw new DOMException("blocked", "SecurityError") }})`,
		"sense":   `localStorage["twistbench/run/0"] = "1 2 3"; localStorage["twistbench/run/1"] = "\u001e"; localStorage["twistbench/run/x"] = "1"`,
	} {
		t.Run(name, func(t *testing.T) {
			h := newHost(t)
			p := h.blank(phone)
			p.before(script)
			p.visit(h.url())
			p.press(`[data-do="start"]`)
			p.card("run.1", "Put it in (180 °C)", 15*60)
			if name == "lock" || name == "refused" {
				assert.True(t, eval[bool](p, `document.querySelector(".sleeps").checkVisibility()`))
			}
			if name == "storage" {
				p.expect("status", says("say.not-kept", ""))
			}
		})
	}
}
