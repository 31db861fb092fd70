package browser

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

// pair is a box or an answer and what is typed into it, chosen from it or read from it.
type pair struct{ id, text string }

// enter types or chooses each, as a person would.
func (p *page) enter(all []pair) {
	p.t.Helper()
	for _, e := range all {
		if eval[bool](p, byID(e.id)+`.tagName === "SELECT"`) {
			p.choose(e.id, e.text)
		} else {
			p.fill(e.id, e.text)
		}
	}
	p.leave()
}

// Plans typed by hand on a phone. Each expected number is worked out beside it or in the worked example named there.
func TestTyped(t *testing.T) {
	p := open(t, phone)
	for _, c := range []struct {
		name  string
		given []pair
		want  []pair
	}{
		{"start plan", nil, []pair{ // design, section 7; calc/testdata/cold-frame-vent.txt
			{"fibre.area", "0.2124 mm²"}, {"fibre.linear-density", "242.1 tex"}, {"hang.force", "3.610 N"}, {"hang.mass", "368 g"}, {"hang.add", "333 g"},
			{"hang.under", "320 g"}, {"hang.under-total", "355 g"}, {"hang.under-stress", "16.39 MPa"},
			{"hang.over", "340 g"}, {"hang.over-total", "375 g"}, {"hang.over-stress", "17.32 MPa"},
			{"hang.mass-least", "354.1 g"}, {"hang.mass-most", "382.4 g"}, {"hang.rise", "323.0 mm"}, {"hang.hook-height", "638.0 mm"},
			{"hang.drop-start", "0.1083 J"}, {"hang.drop-coiled", "1.274 J"},
			{"cut.precursor", "408.0 mm"}, {"cut.precursor:doubt", "± 17 mm"}, {"cut.length", "488 mm"}, {"cut.all-pieces", "6"}, {"cut.total", "2.928 m"}, {"cut.fibre-mass", "0.09878 g"},
			{"clamp.first", "100.3 mm"}, {"clamp.first-move", "15.30 mm"}, {"clamp.second", "120.7 mm"}, {"clamp.second-move", "20.40 mm"}, {"clamp.second-of-first", "20.34 %"},
			{"clamp.finished", "115.3 mm"}, {"clamp.travel-length", "35.70 mm"}, {"clamp.travel", "29.58 %"}, {"clamp.finished-travel", "26.31 %"},
			{"twist.per-twisted", "478.4 turns/m"}, {"twist.per-precursor", "415.0 turns/m"}, {"twist.turns", "169.3 turns"}, {"twist.thickness", "0.5583 mm"}, {"twist.time", "67.5 s"},
			{"coil.index", "1.329"}, {"coil.count", "147.5 coils"}, {"coil.pitch", "0.5764 mm"}, {"coil.gap", "0.001 mm"}, {"coil.turns", "281.4 turns"}, {"coil.solid", "84.82 mm"}, {"coil.travel", "29.73 %"},
		}},
		{"turns in all",
			[]pair{{"twist.turns", "150"}},
			// 150 ÷ 0.408 m = 367.65 per metre; with q = π × 0.52 mm × that = 0.60060 and s = √(1 − q²), cos a = (1 + s)/(3 − s): 35.134°.
			[]pair{{"twist.per-precursor", "367.6 turns/m"}, {"twist.bias", "35.13 °"}, {"twist.thickness", "0.5482 mm"}, {"coil.count", "151.2 coils"}, {"coil.turns", "266.2 turns"}, {"twist.turns:mark", says("mark.given", "")}}},
		{"turns per inch",
			[]pair{{"twist.per-precursor", "10 tpi"}},
			[]pair{{"twist.turns", "160.6 turns"}, {"twist.per-precursor:says", says("reading.echo", "", "393.7 turns/m")}}},
		{"own count and another drill",
			[]pair{{"twist.counted", "160"}, {"twist.speed", "5 turns/s"}},
			// four fifths of 160; 281.4 ÷ 5
			[]pair{{"twist.onset", "160 turns"}, {"twist.slow", "128 turns"}, {"twist.slow-time", "25.6 s"}, {"twist.time", "56.3 s"}}},
		{"an index in place of the outside diameter",
			[]pair{{"coil.index", "1.5"}},
			// D = 1.5 × 0.5583 = 0.8374 mm; π D ÷ √((4.8 ÷ 1.1527)² − 1) = 0.6508 mm
			[]pair{{"coil.outside", "1.396 mm"}, {"coil.pitch", "0.6508 mm"}, {"coil.count", "130.6 coils"}, {"coil.outside:mark", says("mark.worked", "")}}},
		{"coils counted on the piece",
			[]pair{{"coil.count", "140"}},
			// what was cut stays; 408 ÷ 1.1527 ÷ 140 = 2.5282 mm in each coil, p = √(2.5282² − (π × 0.7417)²) = 0.981 mm
			[]pair{{"cut.precursor", "408 mm"}, {"cut.length", "488 mm"}, {"coil.turn-length", "2.528 mm"}, {"coil.pitch", "0.9810 mm"}, {"cut.ratio", "2.971"}, {"clamp.coiled", "137.3 mm"}}},
		{"coils counted and length measured",
			[]pair{{"clamp.measured", "86"}, {"coil.count", "145"}},
			[]pair{{"coil.pitch", "0.5931 mm"}, {"cut.precursor", "408 mm"}, {"clamp.this-ratio", "4.744 : 1"}, {"coil.shape-ratio", "4.673 : 1"}}},
		{"another fibre and stress",
			[]pair{{"fibre.diameter", "0.50"}, {"hang.stress", "16"}},
			// π/4 × 0.50² = 0.19635 mm², × 1140 kg/m³ = 223.84 tex, × 16 MPa = 3.1416 N, ÷ 9.80665 = 320.35 g, less the hook of 35 g;
			// from 20x2, 50x2, 100, 200 the sums next to 285.35 g are 200+50+20 and 200+50+2×20.
			[]pair{{"fibre.area", "0.1963 mm²"}, {"fibre.linear-density", "223.8 tex"}, {"hang.force", "3.142 N"}, {"hang.mass", "320 g"}, {"hang.add", "285 g"},
				{"hang.under", "270 g"}, {"hang.over", "290 g"}, {"cut.length", "488 mm"}}},
		{"school, two each", // calc/testdata/school-two-each.txt
			[]pair{{"fibre.polymer", "nylon-6"}, {"fibre.diameter", "0.40 mm"}, {"hang.stress", "15"}, {"hang.hook", "30"}, {"clamp.coiled", "60"}, {"cut.ratio", "0.20"},
				{"cut.tail", "50"}, {"cut.pieces", "25"}, {"cut.spare", "25 %"}, {"hang.stack", "200"}},
			[]pair{{"hang.force", "1.885 N"}, {"hang.mass", "192 g"}, {"hang.add", "162 g"}, {"cut.precursor", "300.0 mm"}, {"cut.length", "400 mm"}, {"cut.all-pieces", "32"},
				{"cut.total", "12.80 m"}, {"hang.rise", "240.0 mm"}, {"hang.hook-height", "630.0 mm"}, {"cut.ratio:says", says("reading.ratio", "", "500 mm")}}},
		{"side by side, one heat-set", // calc/testdata/side-by-side.txt
			[]pair{{"fibre.diameter", "0.70"}, {"hang.stress", "15"}, {"clamp.coiled", "100"}, {"cut.ratio", "1:4"}, {"cut.pieces", "11"}, {"cut.spare", "0"}, {"cut.lift", "2"},
				{"cut.lift-stress", "5"}, {"clamp.first-stretch", "20"}, {"clamp.stages", "one"}},
			[]pair{{"cut.muscles", "11"}, {"cut.muscle-stress", "4.633 MPa"}, {"cut.muscle-force", "1.783 N"}, {"cut.muscle-share", "181.8 g"}, {"cut.length", "480 mm"},
				{"cut.total", "5.280 m"}, {"hang.mass", "589 g"}, {"cut.fibre-mass", "0.1755 g"}, {"clamp.first", "120.0 mm"}, {"clamp.second-move", "–"}}},
		{"decimal commas", // calc/testdata/decimal-comma.txt
			[]pair{{"fibre.diameter", "0,45"}, {"fibre.diameter-doubt", "0,01"}, {"hang.stress", "14"}, {"hang.hook", "31"}},
			[]pair{{"fibre.diameter", "0,45 mm"}, {"fibre.area", "0.1590 mm²"}, {"hang.force", "2.227 N"}, {"hang.mass", "227 g"}, {"hang.add", "196 g"}, {"hang.water", "196 ml"}}},
		{"both decimal marks", // 85.5 × 4.8; the list is echoed with the page's mark, and so is what was typed, but in its own box
			[]pair{{"hang.owned", "62,5x2; 31.25"}, {"hang.hook", "35,5"}, {"clamp.coiled", "85,5"}, {"cut.tail", "40.5"}},
			[]pair{{"hang.owned:says", says("reading.list", "", "62.5 g × 2, 31.25 g", "156.3 g")}, {"hang.hook", "35,5 g"}, {"cut.precursor", "410.4 mm"}, {"cut.length", "492 mm"}}},
		{"load from the hook's side",
			[]pair{{"hang.add", "250"}},
			// 285 g × 9.80665 = 2.7949 N, ÷ 0.212372 mm² = 13.160 MPa.
			[]pair{{"hang.mass", "285 g"}, {"hang.force", "2.795 N"}, {"hang.stress", "13.16 MPa"}, {"hang.add:mark", says("mark.given", "")}, {"hang.stress:mark", says("mark.worked", "")}}},
		{"stress last, then force",
			[]pair{{"hang.mass", "400"}, {"hang.stress", "10"}, {"hang.force", "3"}},
			// 3 N ÷ 9.80665 = 305.91 g; ÷ 0.212372 mm² = 14.126 MPa.
			[]pair{{"hang.mass", "306 g"}, {"hang.stress", "14.13 MPa"}, {"hang.add", "271 g"}}},
		{"a gap first",
			[]pair{{"clamp.second", "130"}},
			// 130 ÷ 1.42 = 91.549 as coiled; × 4.8 = 439.44, + 80 = 519.44, up; × 1.18 = 108.03; 91.549 + 0.85 × 38.451 = 124.23.
			[]pair{{"clamp.coiled", "91.55 mm"}, {"cut.precursor", "439.4 mm"}, {"cut.length", "520 mm"}, {"clamp.first", "108.0 mm"}, {"clamp.finished", "124.2 mm"}}},
		{"a finished length first",
			[]pair{{"clamp.finished", "100"}},
			// L + 0.85 × 0.42 L = 100: L = 100 ÷ 1.357 = 73.692; × 4.8 = 353.72, + 80, up.
			[]pair{{"clamp.coiled", "73.69 mm"}, {"cut.length", "434 mm"}, {"clamp.finished:mark", says("mark.given", "")}}},
		{"a measured coil",
			[]pair{{"clamp.measured", "88"}},
			// what was cut is the given from here on; 88 × 1.18 = 103.84, 88 × 1.42 = 124.96, 408 ÷ 88 = 4.6364.
			[]pair{{"cut.precursor", "408 mm"}, {"cut.length", "488 mm"}, {"clamp.this-ratio", "4.636 : 1"}, {"clamp.first", "103.8 mm"}, {"clamp.second", "125.0 mm"}, {"clamp.coiled", "85.00 mm"}}},
		{"second stretch of the first gap",
			[]pair{{"clamp.first-stretch", "10"}, {"clamp.second-stretch", "33"}, {"clamp.second-base", "first-gap"}},
			// 85 × 1.1 = 93.5; × 1.33 = 124.36.
			[]pair{{"clamp.first", "93.50 mm"}, {"clamp.second", "124.4 mm"}, {"clamp.second-of-first", "33.00 %"}, {"clamp.second-stretch:says", says("reading.of", "", says("word.first-gap", ""))}}},
		{"second stretch of the relaxed length",
			[]pair{{"clamp.second-base", "relaxed"}, {"clamp.relaxed", "97"}},
			[]pair{{"clamp.second", "137.7 mm"}}}, // 97 × 1.42 = 137.74
		{"companion yarn",
			[]pair{{"yarn.strands", "1"}, {"yarn.linear-density", "235"}, {"yarn.density", "1390"}, {"hang.area", "all"}},
			// 23.5 mg/m ÷ 1390 kg/m³ = 0.016906 mm², + 0.212372 = 0.229278 mm², × 17 MPa = 3.8977 N = 397.46 g.
			[]pair{{"yarn.area", "0.01691 mm²"}, {"hang.force", "3.898 N"}, {"hang.mass", "397 g"}, {"hang.stress:says", says("reading.on", "", says("word.all", ""))}, {"cut.yarn-total", "2.928 m"}}},
		{"plies on the label",
			[]pair{{"fibre.linear-density", "470 dtex x2"}},
			// 94 mg/m ÷ 1140 kg/m³ = 0.082456 mm², √(4A/π) = 0.32402 mm; × 17 MPa = 1.4018 N = 142.94 g.
			[]pair{{"fibre.area", "0.08246 mm²"}, {"fibre.diameter", "0.3240 mm"}, {"hang.mass", "143 g"}, {"fibre.linear-density:says", says("reading.echo", "", "94 tex")}}},
		{"thou behind the number",
			[]pair{{"fibre.diameter", "22 thou"}},
			// 22 × 25.4 µm = 0.5588 mm; π/4 × 0.5588² = 0.24525 mm².
			[]pair{{"fibre.diameter:says", says("reading.echo", "", "0.5588 mm")}, {"fibre.area", "0.2452 mm²"}, {"fibre.diameter:unit", "thou"}}},
		{"a fraction of an inch",
			[]pair{{"cut.tail", "1/4 in"}},
			// 6.35 mm at each end: 408 + 12.7 = 420.7, up.
			[]pair{{"cut.tail:says", says("reading.echo", "", "6.35 mm")}, {"cut.length", "421 mm"}}},
		{"a mixed fraction",
			[]pair{{"clamp.coiled", "3 1/4 in"}},
			// 82.55 mm × 4.8 = 396.24
			[]pair{{"clamp.coiled:says", says("reading.echo", "", "82.55 mm")}, {"cut.precursor", "396.2 mm"}}},
	} {
		t.Run(c.name, func(t *testing.T) {
			p.again(t)
			p.enter(c.given)
			for _, want := range c.want {
				p.reveal(want.id)
				p.expect(want.id, want.text)
			}
			for _, typed := range c.given {
				assert.True(t, strings.HasPrefix(typed.text, p.value(typed.id)) || p.state(typed.id+":box") == "worked", "%s: what was typed stays, maybe without its unit: %q", typed.id, p.value(typed.id))
			}
			p.shot("typed-" + strings.ReplaceAll(c.name, " ", "-"))
		})
	}
}

// A wish that what was cut takes the place of is said at its number, and one tap goes back to it.
func TestWishGone(t *testing.T) {
	p := open(t, phone)
	p.fill("clamp.finished", "100,5")
	p.leave()
	assert.Empty(t, p.text("clamp.finished:says"))
	p.fill("coil.count", "120")
	p.leave()
	gone := says("reading.wish", "clamp.finished", "100.5 mm")
	p.expect("status", gone) // after a pause
	assert.Equal(t, gone, p.said(), "on the strip, for the box is far from the wish")
	p.shot("said")
	p.expect("clamp.finished:says", gone)
	p.expect("clamp.finished:mark", says("mark.worked", ""))
	p.reveal("clamp.finished")
	p.press(`#clamp\.finished`)
	p.leave()
	p.shot("wish")
	p.press("#undo")
	p.expect("clamp.finished", "100,5 mm")
	p.expect("clamp.finished:mark", says("mark.given", ""))
	assert.Empty(t, p.text("clamp.finished:says"))
}

// Emptying a box gives its place back to what had it before; a worked-out box that was emptied is filled in again when it is left.
func TestEmptied(t *testing.T) {
	p := open(t, phone)
	p.fill("coil.count", "140")
	p.leave()
	p.expect("cut.ratio", "2.971")
	p.fill("coil.count", "")
	p.expect("cut.ratio", "4.8")
	p.expect("clamp.coiled", "85 mm")
	p.expect("cut.ratio:mark", says("mark.given", ""))
	p.leave()
	p.expect("coil.count", "147.5 coils")

	p.fill("hang.mass", "")
	p.expect("hang.stress", "17 MPa")
	p.leave()
	p.expect("hang.mass", "368 g")
	p.expect("hang.mass:mark", says("mark.worked", ""))

	p.fill("hang.stress", "") // which nothing had the place of before
	p.leave()
	p.expect("hang.stress:mark", says("mark.empty", ""))
	p.press("#undo")
	p.expect("hang.stress", "17 MPa")
}
