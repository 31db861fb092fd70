package browser

import (
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// The stroke, typed by hand. Each expected number is worked out beside it.
func TestStrokeTyped(t *testing.T) {
	p := open(t, phone)
	for _, c := range []struct {
		name  string
		given []pair
		want  []pair
	}{
		// 50 g are 0.4903 N; 0.4903 N/90.31 N/m is 5.43 mm beyond the finished 115.3; the estimates are the core's own
		{"start plan", nil, []pair{{"stroke.pull", "0.490 N"}, {"stroke.cold-length", "120.8 mm"}, {"stroke.least", "0.32 mm"}, {"note.stroke-least", ""}}},
		{"own trial", []pair{{"stroke.own", "10"}, {"stroke.base", "finished"}, {"stroke.load", "100"}}, // a tenth of 115.345 mm
			[]pair{{"stroke.stroke", "11.5 mm"}, {"stroke.of-finished", "10.0 %"}, {"stroke.least", "–"}, {"note.stroke-own", says("note.stroke-own", "")}}},
		{"lever and pulley", []pair{{"stroke.lever", "5"}, {"stroke.beside", "2"}, {"stroke.own", "10"}, {"stroke.base", "coiled"}, {"stroke.pulley", "8.5"}},
			[]pair{{"stroke.pull", "1.23 N"}, {"stroke.load-travel", "42.5 mm"}, {"stroke.turn", "57.3 °"}}}, // 0.4903 × 5 ÷ 2; 8.5 × 5; a radian
		{"two masses", []pair{{"stroke.light", "150"}, {"stroke.heavy", "250"}, {"stroke.cold-light", "133"}, {"stroke.cold-heavy", "151"}},
			[]pair{{"stroke.cold-rate", "54.5 N/m"}}}, // 0.1 × 9.80665 ÷ 0.018
		{"masses swapped", []pair{{"stroke.light", "250"}, {"stroke.heavy", "150"}, {"stroke.cold-light", "133"}, {"stroke.cold-heavy", "151"}},
			[]pair{{"stroke.cold-rate", "–"}, {"note.stroke-masses", says("note.stroke-masses", "")}, {"stroke.light", "250 g"}}},
		// 9 mm were measured under these 50 g, cold and hot
		{"own lengths", []pair{{"stroke.light", "20"}, {"stroke.heavy", "50"}, {"stroke.cold-light", "118"}, {"stroke.cold-heavy", "121"}, {"stroke.hot-light", "108"}, {"stroke.hot-heavy", "112"}},
			[]pair{{"stroke.stroke", "9.00 mm"}, {"stroke.cold-length", "121.0 mm"}, {"stroke.hot-length", "112.0 mm"}, {"note.stroke-lengths", says("note.stroke-lengths", "")}, {"note.stroke-least", ""}}},
		// 8 % of the 120 mm that were measured
		{"own share of an unknown fibre", []pair{{"fibre.polymer", "polyester"}, {"stroke.own", "8"}, {"stroke.loaded", "120"}}, []pair{{"stroke.stroke", "9.60 mm"}, {"stroke.share", "8.00 %"}}},
		{"too short under a load", []pair{{"stroke.loaded", "80"}}, []pair{{"note.stroke-loaded", says("note.stroke-loaded", "", "84.82 mm")}}},
		{"kitchen scale", []pair{{"stroke.scale-cold", "1000"}, {"stroke.scale-hot", "846"}}, []pair{{"stroke.scale-pull", "1.510 N"}}},
		{"a spring without a number", []pair{{"stroke.against", "spring"}}, []pair{{"stroke.stroke", "–"}, {"stroke.stroke:doubt", needs("stroke.spring")}}},
		{"a negative length", []pair{{"stroke.against", "spring"}, {"stroke.slack", "-5"}}, []pair{{"stroke.slack:says", says("problem.low", "stroke.slack", "0.1 mm")}, {"stroke.slack", "-5 mm"}}},
		{"no stiffness", []pair{{"stroke.against", "spring"}, {"stroke.spring", "0"}}, []pair{{"stroke.spring:says", says("problem.low", "stroke.spring", "0.001 N/m")}, {"stroke.stroke", "–"}}},
		{"half a muscle", []pair{{"stroke.beside", "1.5"}}, []pair{{"stroke.beside:says", says("problem.whole", "stroke.beside")}}},
		{"more than all", []pair{{"stroke.own", "120 %"}}, []pair{{"stroke.own:says", says("problem.high", "stroke.own", "95 %")}, {"stroke.own", "120 %"}}},
		{"too heavy", []pair{{"stroke.load", "5 kg"}}, []pair{{"note.stroke-straight", says("note.stroke-straight", "")}}},
		{"a polymer nobody knows", []pair{{"fibre.polymer", "pvdf"}}, []pair{{"stroke.stroke", "–"}, {"stroke.stroke:doubt", needs("stroke.own")}, {"note.stroke-polymer", says("note.stroke-polymer", "")}}},
		{"a pair", []pair{{"stroke.load", "0"}, {"stroke.against", "muscle"}, {"stroke.apart", "240"}, {"stroke.own", "5"}}, // half of 240; 5 % of 120, and twice that
			[]pair{{"stroke.cold-length", "120.0 mm"}, {"stroke.stroke", "6.00 mm"}, {"stroke.other", "126.0 mm"}, {"stroke.swing", "12.0 mm"}, {"note.stroke-slack", ""}}},
		{"a pair that pulls", []pair{{"stroke.load", "0"}, {"stroke.against", "muscle"}, {"stroke.apart", "250"}}, // 0.996 less the 0.872 N of the cold one
			[]pair{{"stroke.blocked", "0.996 N"}, {"stroke.cold-pull", "0.872 N"}, {"stroke.at-load", "0.124 N"}}},
		{"a pair drawn straight", []pair{{"stroke.load", "0"}, {"stroke.against", "muscle"}, {"stroke.apart", "700"}}, // twice 354 mm of fibre, less 8
			[]pair{{"stroke.stroke", "–"}, {"stroke.other", "–"}, {"stroke.stroke:doubt", change("stroke.apart")}, {"note.stroke-straight-back", says("note.stroke-straight-back", "", "354.0 mm")}, {"note.stroke-load", ""}}},
		{"a pair without a load", []pair{{"stroke.load", "0"}, {"stroke.against", "muscle"}, {"stroke.apart", "320"}},
			[]pair{{"note.stroke-load-back", says("note.stroke-load-back", "", "368 g")}, {"note.stroke-least-back", says("note.stroke-least-back", "")}, {"note.stroke-load", ""}, {"note.stroke-least", ""}}},
		{"a pair in one row", []pair{{"wire.route", "twisted"}, {"wire.in-row", "2"}, {"stroke.against", "muscle"}}, []pair{{"note.stroke-in-row", says("note.stroke-in-row", "", "2")}}},
		{"lengths that disagree", []pair{{"stroke.light", "20"}, {"stroke.heavy", "100"}, {"stroke.cold-light", "118"}, {"stroke.cold-heavy", "124.4"}, {"stroke.loaded", "140"}}, // 0.08 mm more for each gram: 50 g
			[]pair{{"stroke.by-masses", "120.4 mm"}, {"note.stroke-disagree", says("note.stroke-disagree", "", "140 mm", "120.4 mm")}}},
		{"longer when hot", []pair{{"stroke.own", "-3"}}, // of 120.8 mm
			[]pair{{"stroke.stroke", "-3.62 mm"}, {"note.stroke-longer", says("note.stroke-longer", "")}, {"stroke.work", "–"}, {"stroke.work:doubt", change("stroke.own")}, {"drive.efficiency", "–"}}},
		{"a loose pair", []pair{{"stroke.against", "muscle"}, {"stroke.apart", "200"}}, // 200 less 115.345 mm
			[]pair{{"note.stroke-slack", says("note.stroke-slack", "", "84.66 mm", "120.8 mm", "119.0 mm")}}},
		{"a spring that never pulls", []pair{{"stroke.against", "spring"}, {"stroke.spring", "349"}}, []pair{{"note.stroke-slack", says("note.stroke-slack", "", "115.3 mm", "120.8 mm", "119.0 mm")}}},
		{"a pair without room", []pair{{"stroke.load", "0"}, {"stroke.against", "muscle"}, {"stroke.apart", "100"}},
			[]pair{{"stroke.stroke", "–"}, {"stroke.stroke:doubt", change("stroke.apart")}, {"note.stroke-apart", says("note.stroke-apart", "", "84.82 mm")}}},
		{"two rows against two", []pair{{"wire.route", "twisted"}, {"wire.rows", "2"}, {"stroke.against", "muscle"}}, []pair{{"note.stroke-rows", says("note.stroke-rows", "", "2")}}},
		{"wire that fills its spring", []pair{{"stroke.against", "spring"}, {"stroke.spring-wire", "0.5"}, {"stroke.spring-outside", "0.4"}, {"stroke.spring-turns", "10"}},
			[]pair{{"stroke.spring-rate", "–"}, {"stroke.stroke:doubt", change("stroke.spring-outside")}, {"note.stroke-outside", says("note.stroke-outside", "")}}},
		{"no warmer than the room", []pair{{"drive.target", "15"}}, []pair{{"stroke.stroke", "–"}, {"stroke.stroke:doubt", change("drive.target")}, {"note.stroke-cooler", says("note.stroke-cooler", "", "20 °C")}}},
		{"water that boils", []pair{{"drive.way", "water"}, {"drive.target", "150"}}, []pair{{"stroke.stroke", "–"}, {"note.stroke-boils", says("note.stroke-boils", "", "100 °C", "150 °C")}}},
		{"a spring by its wire", []pair{{"stroke.against", "spring"}, {"stroke.spring-wire", "0.5"}, {"stroke.spring-outside", "4.5"}, {"stroke.spring-turns", "5"}},
			[]pair{{"stroke.spring-rate", "1987 N/m"}, {"stroke.back", "1987 N/m"}}}, // 19.8657 N/mm for ten times its size (Bhandari, ex. 10.7)
		{"one added mass", []pair{{"stroke.added", "40"}, {"stroke.change", "8"}}, []pair{{"stroke.cold-rate", "49.0 N/m"}}}, // 0.392266 N ÷ 8 mm
		{"hotter than the book", []pair{{"drive.target", "200"}}, []pair{{"stroke.stroke", "–"}, {"note.stroke-warm", says("note.stroke-warm", "")}}},
	} {
		t.Run(c.name, func(t *testing.T) {
			p.again(t)
			p.enter(c.given)
			for _, w := range c.want {
				p.expect(w.id, w.text)
			}
		})
	}
}

// change is what is said of a number that nothing follows from while the field is as it is.
func change(field string) string { return says("mark.change", "", says("name."+field, "")) }

// Only what applies to the chosen load is in sight, and a drawing of nothing takes no room.
func TestStrokeInSight(t *testing.T) {
	p := open(t, phone)
	seen := func(id string) bool { return eval[bool](p, byID(id)+`.getClientRects().length > 0`) }
	for load, want := range map[string][3]bool{"weight": {}, "spring": {true, true, false}, "muscle": {true, false, true}} {
		p.choose("stroke.against", load)
		assert.Equal(t, want, [3]bool{seen("stroke.slack-at"), seen("stroke.spring"), seen("stroke.apart")}, load)
	}
	p.again(t)
	height := func() float64 {
		return eval[float64](p, `(document.querySelector("#stroke .drawing").scrollIntoView({behavior: "instant"}), document.querySelector("#stroke .drawing").getBoundingClientRect().height)`)
	}
	assert.Greater(t, height(), 300.0)
	assert.True(t, seen("note.stroke-own:row") == false && eval[bool](p, `document.querySelector("#stroke .estimate").getClientRects().length > 0`))
	p.enter([]pair{{"stroke.own", "8"}})
	assert.False(t, eval[bool](p, `document.querySelector("#stroke .estimate").getClientRects().length > 0`) || seen("stroke.least"), "own stroke is no estimate")
	p.enter([]pair{{"stroke.own", ""}, {"fibre.polymer", "polyethylene"}})
	p.catchUp()
	assert.Less(t, height(), 60.0)
}

// The section as it is seen, and its bench view.
func TestStrokeSection(t *testing.T) {
	for _, s := range []screen{phone, desk} {
		for _, looks := range [][]look{nil, {dark}} {
			name := s.name + map[bool]string{true: "-dark"}[looks != nil]
			t.Run(name, func(t *testing.T) {
				p := open(t, s, looks...)
				p.enter([]pair{{"drive.target", "120"}, {"stroke.load", "100"}})
				eval[bool](p, `(document.getElementById("stroke").scrollIntoView({behavior: "instant"}), new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(() => done(true)))))`)
				p.shot("stroke-" + name)
				eval[bool](p, `(document.querySelector("#stroke .drawing").scrollIntoView({behavior: "instant"}), new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(() => done(true)))))`)
				p.shot("stroke-drawing-" + name)
				p.press("#stroke-bench")
				require.Equal(t, "stroke", eval[string](p, `document.documentElement.dataset.bench`))
				assert.Equal(t, p.shows("stroke.at-load"), eval[string](p, `document.querySelector("#stroke-big p:nth-child(3) output").textContent`))
				assert.True(t, eval[bool](p, `[...document.querySelectorAll("#stroke-big output, #stroke .drawing")].every((e) => { const r = e.getBoundingClientRect(); return r.top >= 0 && r.bottom <= innerHeight && r.height > 20 })`))
				p.shot("stroke-bench-" + name)
				p.do(chromedp.KeyEvent(kb.Escape))
			})
		}
	}
}
