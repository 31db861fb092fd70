package calc

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"twistbench/calc/quantity"
)

// What follows from what is typed, in SI.
func TestStroke(t *testing.T) {
	const g = 9.80665 // the 3rd General Conference on Weights and Measures, 1901
	for _, row := range []struct {
		plan string
		id   ID
		want float64
		rel  float64
	}{
		// by hand: the load, times as far as it moves, over the number of muscles
		{"stroke.load=200 g&stroke.lever=3&stroke.beside=2", StrokePull, 0.2 * g * 3 / 2, 1e-12},
		{"stroke.against=spring&stroke.spring=40 N/m&stroke.lever=3&stroke.beside=2", StrokeBack, 40 * 9 / 2.0, 1e-12},
		{"stroke.against=weight&stroke.spring=40 N/m", StrokeBack, 0, 0},
		// the craft notes: 150 and 250 g make 133 and 151 mm, 54.5 N/m; 1000 to 846 g are 1.510 N
		{"stroke.light=150&stroke.heavy=250&stroke.cold-light=133&stroke.cold-heavy=151", StrokeColdRate, 54.5, 5e-4},
		{"stroke.light=150&stroke.heavy=250&stroke.hot-light=133&stroke.hot-heavy=151", StrokeHotRate, 54.5, 5e-4},
		{"stroke.scale-cold=1000 g&stroke.scale-hot=846 g", StrokeScalePull, 1.510, 2e-4},
		// 15 % of 85 mm as coiled, and of the finished 85 + 0.85 × 35.7 mm
		{"stroke.own=15 %&stroke.base=coiled", StrokeStroke, 0.01275, 1e-12},
		{"stroke.own=15 %&stroke.base=finished", StrokeStroke, 0.15 * 0.115345, 1e-12},
		{"stroke.own=15 %&stroke.base=finished", StrokeOfFinished, 0.15, 1e-12},
		{"stroke.own=15 %", StrokeShare, 0.15, 1e-12},
		{"stroke.own=10 %&stroke.base=coiled&stroke.lever=4", StrokeLoadTravel, 0.034, 1e-12},
		{"stroke.own=10 %&stroke.base=coiled&stroke.pulley=8.5 mm", StrokeTurn, 1, 1e-12}, // a radian
		// own stroke without load and the book's moduli of no account: it would be as long as measured
		{"stroke.own=10 %&stroke.base=finished&stroke.load=0", StrokeHotFree, 0.9 * 0.115345, 1e-12},
		{"stroke.own=10 %&stroke.base=finished&stroke.load=0", StrokeFree, 0.1 * 0.115345, 1e-12},
		// an added 40 g, 0.392266 N, over 8 mm; two masses go before it
		{"stroke.added=40 g&stroke.change=8 mm", StrokeColdRate, 49.03325, 1e-12},
		{"stroke.added=40 g&stroke.change=8 mm&stroke.light=150&stroke.heavy=250&stroke.cold-light=133&stroke.cold-heavy=151", StrokeColdRate, 54.5, 5e-4},
		// by hand: 1 mm on 49.03325 N/m, of a third of 300 g
		{"stroke.added=40 g&stroke.change=8 mm&clamp.ruler-doubt=1 mm&stroke.load=300 g&stroke.beside=3", StrokeUnequal, 0.04903325 / (0.1 * g), 1e-12},
		// Bhandari, ex. 10.7: 5 mm of wire, 40 mm mean, 5 turns: 19.8657 N/mm; a typed stiffness goes before it
		{"stroke.against=spring&stroke.spring-wire=5 mm&stroke.spring-outside=45 mm&stroke.spring-turns=5", StrokeBack, 19865.7226562, 1e-9},
		{"stroke.against=spring&stroke.spring-wire=5 mm&stroke.spring-outside=45 mm&stroke.spring-turns=5&stroke.spring=30 N/m", StrokeBack, 30, 1e-12},
		// cold length as measured: 8 % of 120 mm, whatever the fibre
		{"fibre.polymer=polyester&stroke.own=8 %&stroke.loaded=120", StrokeStroke, 0.0096, 1e-12},
		{"fibre.polymer=polyester&stroke.own=8 %&stroke.loaded=120", StrokeShare, 0.08, 1e-12},
		{"fibre.polymer=polyester&stroke.own=8 %&stroke.loaded=120", StrokeHotLength, 0.1104, 1e-12},
		// by hand: 50 g, 0.490 N, on the 49.03325 N/m of an added mass are 10 mm; the spring is slack there
		{"stroke.loaded=120&stroke.added=40 g&stroke.change=8 mm", StrokeColdFree, 0.110, 1e-12},
		{"stroke.loaded=120&stroke.added=40 g&stroke.change=8 mm&stroke.against=spring&stroke.spring=30 N/m", StrokeColdFree, 0.110, 1e-12},
		{"stroke.loaded=120&stroke.added=40 g&stroke.change=8 mm&stroke.against=spring&stroke.spring=30 N/m", StrokeSlackAt, 0.110, 1e-12},
		// and 30 N/m by 8 mm of spring, 0.24 N: 0.730 N
		{"stroke.loaded=120&stroke.added=40 g&stroke.change=8 mm&stroke.against=spring&stroke.spring=30 N/m&stroke.slack=128", StrokeColdFree, 0.120 - (0.05*g+0.24)/49.03325, 1e-12},
		{"stroke.loaded=120&stroke.added=40 g&stroke.change=8 mm&stroke.against=spring&stroke.spring=30 N/m&stroke.slack=128", StrokeColdLength, 0.120, 1e-12},
		// slack where the other, 115.345 mm, ends
		{"stroke.against=muscle&stroke.apart=250 mm", StrokeSlackAt, 0.25 - 0.115345, 1e-12},
		{"stroke.against=muscle", StrokeSlackAt, 0.115345, 1e-12},
		// and its mean power on 98.78 mg of fibre
		{"stroke.load=100 g&stroke.own=10 %&stroke.base=coiled&stroke.time=2 s", StrokeSpecificPower, 0.1 * g * 8.5e-3 / 2 / 98.78e-6, 1e-4},
		// work of a load that stays: 100 g by 8.5 mm, on 98.78 mg of fibre (design, section 7), in 2 s
		{"stroke.load=100 g&stroke.own=10 %&stroke.base=coiled", StrokeWork, 0.1 * g * 8.5e-3, 1e-12},
		{"stroke.load=100 g&stroke.own=10 %&stroke.base=coiled", StrokeSpecificWork, 0.1 * g * 8.5e-3 / 98.78e-6, 1e-4},
		{"stroke.load=100 g&stroke.own=10 %&stroke.base=coiled&stroke.time=2 s", StrokePower, 0.1 * g * 8.5e-3 / 2, 1e-12},
		// strains at 160 °C from memory: −2.2 and 2.65 %; the solid length of the start plan is 84.82 mm (design, section 7)
		{"drive.target=160 °C", StrokeAlong, -0.022, 1e-12},
		{"drive.target=160 °C", StrokeAcross, 0.0265, 1e-12},
		{"drive.target=170 °C&stroke.load=1 g&clamp.stages=one&clamp.first-stretch=5 %", StrokeHotLength, 0.08482, 1e-4},
		// 354 mm of fibre in 147.5 coils hold 169.3 turns; 4.85 % of them undone
		{"drive.target=160 °C", StrokeFree, 0.354 * 169.3 / 147.5 * 0.0485, 1e-3},
	} {
		st := work(t, row.plan)
		if row.want == 0 {
			assert.Zero(t, st.SI(row.id), "%s of %s", row.id.Key(), row.plan)
			continue
		}
		assert.InEpsilon(t, row.want, st.SI(row.id), row.rel, "%s of %s", row.id.Key(), row.plan)
	}
}

// Lengths under two masses, cold and hot, are both lines of pull: the stroke under either mass is what was measured there, and between and beyond
// them on the line. By hand: 3 mm cold and 4 mm hot on 30 g, so 10 mm under 20 g, 9 under 50, and 7 under 110; and 116 mm cold without load.
func TestStrokeLengths(t *testing.T) {
	const lengths = "&stroke.light=20&stroke.heavy=50&stroke.cold-light=118&stroke.cold-heavy=121&stroke.hot-light=108&stroke.hot-heavy=112"
	for _, fibre := range []string{"", "fibre.polymer=polyester", "drive.target=200 °C", "stroke.lever=2&stroke.beside=2"} {
		for _, row := range []struct {
			load              string
			cold, hot, stroke float64
		}{{"20 g", 0.118, 0.108, 0.010}, {"50 g", 0.121, 0.112, 0.009}, {"110 g", 0.127, 0.120, 0.007}, {"0 g", 0.116, 0.316 / 3, 0.032 / 3}} {
			st := work(t, fibre+"&stroke.load="+row.load+lengths)
			r := &st.Out
			assert.InEpsilon(t, row.cold, float64(r.ColdLength), 1e-12, row.load)
			assert.InEpsilon(t, row.hot, float64(r.HotLength), 1e-12, row.load)
			assert.InEpsilon(t, row.stroke, float64(r.Strokes[1]), 1e-10, row.load)
			assert.False(t, known(r.Strokes[0]) || known(r.Shares[2]), "no estimate, and no band")
			assert.InEpsilon(t, 0.116, float64(r.ColdFree), 1e-12, row.load)
			assert.InEpsilon(t, 0.032/3, float64(r.FreeStroke), 1e-10, row.load)
		}
	}
	// Only one of the lines: the other is the book's, and goes from where the muscle was.
	r := &work(t, "stroke.light=20&stroke.heavy=50&stroke.cold-light=118&stroke.cold-heavy=121").Out
	book := &work(t, "").Out
	assert.InEpsilon(t, 0.121, float64(r.ColdLength), 1e-12)
	assert.InEpsilon(t, float64(book.FreeStroke), float64(r.ColdFree-r.HotFree), 1e-9)
	assert.True(t, known(r.Strokes[0]))
	// The own stroke goes before both.
	r = &work(t, "stroke.own=5 %"+lengths).Out
	assert.InEpsilon(t, 0.05*0.121, float64(r.Strokes[1]), 1e-12)
	// With the cold length under the load measured, the hot line alone is enough: 119 less 112 mm.
	r = &work(t, "fibre.polymer=pvdf&stroke.loaded=119&stroke.light=20&stroke.heavy=50&stroke.hot-light=108&stroke.hot-heavy=112").Out
	assert.InEpsilon(t, 0.007, float64(r.Strokes[1]), 1e-10)
	assert.False(t, known(r.Strokes[0]))
	// Of a pair it says nothing, as an equal one rests in the middle: half of 240 mm.
	r = &work(t, "stroke.loaded=119&stroke.load=0&stroke.against=muscle&stroke.apart=240").Out
	assert.InEpsilon(t, 0.120, float64(r.ColdLength), 1e-12)
}

// What stops the stroke: nothing of it is known hot, it is said why, and the box that would let it go is asked for.
func TestStrokeStopped(t *testing.T) {
	for _, row := range []struct {
		plan  string
		needs ID
		note  string
	}{
		{"drive.target=15 °C", DriveTarget, "stroke-cooler"},
		{"drive.target=20 °C", DriveTarget, "stroke-cooler"},
		{"drive.way=water&drive.target=150 °C", DriveTarget, "stroke-boils"},
		{"drive.way=water&drive.target=95 °C&drive.altitude=2000 m", DriveTarget, "stroke-boils"}, // it boils at 93 °C there
		{"stroke.against=muscle&stroke.load=0&stroke.apart=100 mm", StrokeApart, "stroke-apart"},  // the turns of each touch at 84.82 mm
		// each is straight at 354 mm, a hot one in 700 mm too
		{"stroke.against=muscle&stroke.load=0&stroke.apart=709 mm", StrokeApart, "stroke-straight-back"},
		{"stroke.against=muscle&stroke.load=0&stroke.apart=708 mm", StrokeApart, "stroke-straight-back"},
		{"stroke.against=muscle&stroke.load=0&stroke.apart=700 mm", StrokeApart, "stroke-straight-back"},
		{"stroke.against=spring&stroke.spring=10 N/m&stroke.load=3 kg", StrokeLoad, "stroke-straight-back"},
		{"stroke.against=spring&stroke.load=0&stroke.spring=10 N/mm&stroke.slack=400 mm", StrokeSlack, "stroke-straight-back"},
		{"stroke.load=3 kg", StrokeLoad, "stroke-straight"},
		{"stroke.loaded=360 mm", StrokeLoaded, "stroke-straight"},
	} {
		for _, own := range []string{"", "&stroke.own=5 %", "&stroke.own=5 %&stroke.base=finished", "&stroke.light=20&stroke.heavy=50&stroke.cold-light=118&stroke.cold-heavy=121&stroke.hot-light=108&stroke.hot-heavy=112"} {
			st := work(t, row.plan+own)
			for _, id := range []ID{StrokeStroke, StrokeLeast, StrokeMost, StrokeShare, StrokeHotLength, StrokeHotFree, StrokeBlocked, StrokeWork, StrokeLoadTravel, StrokeSwing, StrokeFree} {
				assert.False(t, known(st.SI(id)), "%s of %s", id.Key(), row.plan+own)
			}
			assert.Equal(t, row.needs, st.Needs(StrokeStroke), row.plan+own)
			assert.Equal(t, row.needs, st.Needs(StrokeBlocked), row.plan+own)
			said := false
			for i := range Notes {
				said = said || Notes[i].Key == row.note && Notes[i].When(st)
			}
			assert.True(t, said, row.plan+own)
		}
	}
	for _, plan := range []string{"drive.target=21 °C", "drive.way=water&drive.target=95 °C", "stroke.against=muscle&stroke.load=0&stroke.apart=170 mm"} {
		assert.True(t, known(work(t, plan).SI(StrokeStroke)), plan)
	}
}

// Wire that fills its coil is no spring: outside must be more than twice the wire.
func TestStrokeSpringFilled(t *testing.T) {
	for _, outside := range []string{"0.4", "0.5", "1"} {
		st := work(t, "stroke.against=spring&stroke.spring-turns=10&stroke.spring-wire=0.5&stroke.spring-outside="+outside)
		assert.False(t, known(st.SI(StrokeSpringRate)) || known(st.SI(StrokeStroke)), outside)
		assert.Equal(t, StrokeSpringOutside, st.Needs(StrokeStroke), outside)
	}
	assert.Positive(t, work(t, "stroke.spring-turns=10&stroke.spring-wire=0.5&stroke.spring-outside=1.01").SI(StrokeSpringRate))
}

// A coil is as stiff at a temperature whether that is the hot end or the cold one.
func TestStrokeRateOfTemperature(t *testing.T) {
	for _, at := range []string{"30", "60", "100"} {
		hot := work(t, "drive.room=20&drive.target="+at).Out.HotRate
		cold := work(t, "drive.target=180&drive.room="+at).Out.ColdRate
		assert.InEpsilon(t, float64(hot), float64(cold), 1e-12, at)
	}
}

// Each end of the band stays on its side, as does that of the share; own trials leave no band.
func TestStrokeBand(t *testing.T) {
	for _, plan := range []string{"", "drive.target=120 °C&stroke.load=100 g", "coil.rod-hand=opposite&drive.target=120 °C", "stroke.against=muscle&stroke.apart=240&drive.target=90", "stroke.against=spring&stroke.spring=30 N/m&drive.target=90"} {
		st := work(t, plan)
		r := &st.Out
		assert.Less(t, r.Strokes[0], r.Strokes[1], plan)
		assert.Less(t, r.Strokes[1], r.Strokes[2], plan)
		assert.Less(t, r.Shares[0], r.Shares[1], plan)
		assert.Less(t, r.Shares[1], r.Shares[2], plan)
		var at [3]quantity.Length
		st.StrokeAt(st.Plan.Drive.Target, &at)
		assert.Equal(t, r.Strokes, at, plan)
		st.StrokeAt(st.Plan.Drive.Room, &at)
		for _, s := range at {
			assert.InDelta(t, 0, float64(s), 1e-15, plan)
		}
	}
	r := &work(t, "stroke.own=8 %&drive.target=120 °C").Out
	assert.True(t, known(r.Strokes[1]) && known(r.Shares[1]))
	assert.False(t, known(r.Strokes[0]) || known(r.Strokes[2]) || known(r.Shares[0]) || known(r.Shares[2]))
}

// The band holds the usual, whatever stops its ends: the turns that touch, or the fibre drawn out.
func TestStrokeBandOrder(t *testing.T) {
	for _, hand := range []string{"same", "opposite"} {
		for _, target := range []string{"21", "50", "120", "180"} {
			for _, load := range []string{"0", "50", "400", "1000", "1400", "1600", "1800", "2000", "3000"} {
				plan := "coil.rod-hand=" + hand + "&drive.target=" + target + "&stroke.load=" + load + " g"
				st := work(t, plan)
				var at [3]quantity.Length
				st.StrokeAt(st.Plan.Drive.Target, &at)
				assert.LessOrEqual(t, at[0], at[1], plan)
				assert.LessOrEqual(t, at[1], at[2], plan)
				if st.Plan.Stroke.drawn {
					assert.False(t, known(st.Out.Strokes[1]), plan)
					assert.Equal(t, StrokeLoad, st.Needs(StrokeStroke), plan)
					continue
				}
				assert.Equal(t, st.Out.Strokes, at, plan)
				s := &st.Out.Shares
				assert.LessOrEqual(t, s[0], s[1], plan)
				assert.LessOrEqual(t, s[1], s[2], plan)
			}
		}
	}
}

// Own stroke ends where the turns touch, and all that follows from it does.
func TestStrokeOwnClipped(t *testing.T) {
	r := &work(t, "stroke.own=95 %").Out
	assert.Equal(t, r.Solid, r.HotLength)
	assert.Equal(t, r.ColdLength-r.Solid, r.Strokes[1])
	assert.InEpsilon(t, float64(r.ColdLength-r.Solid)*0.05*9.80665, float64(r.Work), 1e-9) // 50 g, by hand
}

// As the page says, two equal muscles without another load move twice the stroke, from one hot to the other.
func TestStrokePair(t *testing.T) {
	for _, plan := range []string{"drive.target=100&stroke.apart=240", "drive.target=120&stroke.apart=255", "drive.target=60&stroke.apart=233", "drive.target=60&stroke.own=4&stroke.apart=240"} {
		st := work(t, plan+"&stroke.load=0&stroke.against=muscle")
		r := &st.Out
		assert.InEpsilon(t, 2*float64(r.Strokes[1]), float64(r.Swing), 1e-9, plan)
		assert.InEpsilon(t, float64(st.Plan.Stroke.Apart), float64(r.OtherHot+r.HotLength), 1e-9, plan)
		assert.InEpsilon(t, float64(st.Plan.Stroke.Apart), 2*float64(r.ColdLength), 1e-9, plan)
		assert.InEpsilon(t, float64(r.BlockedPull-r.ColdPull), float64(r.HeldGain), 1e-12, plan)
	}
}

// Held where it rests cold, a muscle leaves for the load what nothing else takes back. By hand, of 98.0665 N/m and 116 mm cold, 73.549875 N/m and
// 316/3 mm hot.
func TestStrokeAtLoad(t *testing.T) {
	const lengths = "stroke.light=20&stroke.heavy=50&stroke.cold-light=118&stroke.cold-heavy=121&stroke.hot-light=108&stroke.hot-heavy=112"
	const hot, cold, free = 73.549875, 98.0665, 0.316 / 3
	for _, row := range []struct {
		load       string
		held, left float64
	}{
		{"stroke.load=50", (0.121 - free) * hot, (0.121 - free) * hot},                      // a weight takes nothing for itself
		{"stroke.load=100&stroke.beside=2", (0.121 - free) * hot, 2 * (0.121 - free) * hot}, // two, half of it each
		{"stroke.load=0&stroke.against=muscle&stroke.apart=240", (0.120 - free) * hot, (0.120-free)*hot - 0.004*cold},
		// half way between 116 and 130 mm, 7 mm from where either is slack
		{"stroke.load=0&stroke.against=spring&stroke.spring=98.0665 N/m&stroke.slack=130", (0.123 - free) * hot, (0.123-free)*hot - 0.007*cold},
		{"stroke.load=0&stroke.against=spring&stroke.spring=196.133 N/m&stroke.slack=130&stroke.beside=2", (0.123 - free) * hot, 2 * ((0.123-free)*hot - 0.007*cold)},
		// and 98.0665 N/m × 2 mm of weight besides: 20 g, 0.196 N, 1 mm further
		{"stroke.load=20&stroke.against=spring&stroke.spring=98.0665 N/m&stroke.slack=130", (0.124 - free) * hot, (0.124-free)*hot - 0.006*cold},
	} {
		st := work(t, row.load+"&"+lengths)
		assert.InEpsilon(t, row.held, st.SI(StrokeBlocked), 1e-9, row.load)
		assert.InEpsilon(t, row.left, st.SI(StrokeAtLoad), 1e-9, row.load)
	}
}

// What gets longer does no work, and it is said what would change that.
func TestStrokeLonger(t *testing.T) {
	for _, row := range []struct {
		plan  string
		needs ID
	}{
		{"stroke.own=-3 %", StrokeOwn},
		{"stroke.load=300 g", StrokeLoad},
		{"coil.rod-hand=opposite&drive.target=120 °C", CoilRodHand},
		{"stroke.own=-3 %&stroke.load=0&stroke.against=muscle&stroke.apart=240", StrokeOwn},
		{"drive.target=90 °C&stroke.load=0&stroke.against=muscle&stroke.apart=450", StrokeApart},
	} {
		st := work(t, row.plan+"&drive.power=6 W")
		assert.Negative(t, st.SI(StrokeStroke), row.plan)
		for _, id := range []ID{StrokeWork, StrokeSpecificWork, StrokePower, StrokeSpecificPower, DriveEfficiency} {
			assert.False(t, known(st.SI(id)), "%s of %s", id.Key(), row.plan)
			assert.Equal(t, row.needs, st.Needs(id), "%s of %s", id.Key(), row.plan)
		}
		said := false
		for i := range Notes {
			said = said || (Notes[i].Key == "stroke-longer" || Notes[i].Key == "stroke-opposite") && Notes[i].When(st)
		}
		assert.True(t, said, row.plan)
	}
}

// What two masses make of the length under the load, beside what was measured there. By hand: 80 g are 6.4 mm, so 50 g are 120.4 mm, and
// against a spring of 40 N/m that is slack at 150 mm, 10 mm of it at the 140 mm measured are 40.8 g more: 3.26 mm.
func TestStrokeByMasses(t *testing.T) {
	const lengths = "&stroke.light=20&stroke.heavy=100&stroke.cold-light=118&stroke.cold-heavy=124.4"
	assert.InDelta(t, 0.1204, work(t, lengths).SI(StrokeByMasses), 1e-12)
	assert.InDelta(t, 0.1204, work(t, "stroke.loaded=140"+lengths).SI(StrokeByMasses), 1e-12)
	assert.InDelta(t, 0.1204+0.4/9.80665*0.08, work(t, "stroke.loaded=140&stroke.against=spring&stroke.spring=40 N/m&stroke.slack=150"+lengths).SI(StrokeByMasses), 1e-12)
	assert.InDelta(t, work(t, lengths).SI(StrokeColdLength), work(t, lengths).SI(StrokeByMasses), 1e-12)
	assert.Equal(t, StrokeLight, work(t, "").Needs(StrokeByMasses))
}

// Masses that make no spring give no stiffness, and not the book's instead.
func TestStrokeMasses(t *testing.T) {
	for _, plan := range []string{
		"stroke.light=150&stroke.heavy=250&stroke.cold-light=151&stroke.cold-heavy=133", "stroke.light=250&stroke.heavy=150&stroke.cold-light=133&stroke.cold-heavy=151",
		"stroke.light=150&stroke.heavy=250&stroke.cold-light=133&stroke.cold-heavy=133",
	} {
		st := work(t, plan)
		assert.True(t, math.IsNaN(st.SI(StrokeColdRate)), plan)
		assert.True(t, math.IsNaN(st.SI(StrokeStroke)), plan)
	}
	assert.True(t, known(work(t, "stroke.light=150&stroke.heavy=250&stroke.cold-light=133").SI(StrokeColdRate)), "one length is no test yet")
}

// Where the book knows no strains, each number waits for the box of a trial that it has to come from, one after the other.
func TestStrokeNeedsTrial(t *testing.T) {
	const cold = "fibre.polymer=polyethylene&stroke.own=5 %&stroke.light=20&stroke.heavy=80"
	for _, row := range []struct {
		plan      string
		id, needs ID
	}{
		{"fibre.polymer=polyethylene", StrokeStroke, StrokeOwn},
		{"fibre.polymer=other&fibre.density=1100", StrokeMost, StrokeOwn},
		{"fibre.polymer=polyethylene", StrokeColdLength, StrokeLoaded},
		{"fibre.polymer=polyethylene&stroke.against=muscle", StrokeColdLength, StrokeLight},
		{"fibre.polymer=polyethylene&stroke.own=5 %", StrokeStroke, StrokeLoaded},
		{"fibre.polymer=polyethylene&stroke.own=5 %&stroke.loaded=120", StrokeStroke, None},
		{"fibre.polymer=polyethylene&stroke.light=20", StrokeColdLength, StrokeHeavy},
		{cold, StrokeColdLength, StrokeColdLight},
		{cold + "&stroke.cold-light=117", StrokeStroke, StrokeColdHeavy},
		{cold + "&stroke.cold-light=117&stroke.cold-heavy=124", StrokeStroke, None},
		{cold + "&stroke.cold-light=117&stroke.cold-heavy=124", StrokeBlocked, StrokeHotLight},
		{cold + "&stroke.cold-light=117&stroke.cold-heavy=124&stroke.hot-light=108", StrokeBlocked, StrokeHotHeavy},
		{cold + "&stroke.cold-light=117&stroke.cold-heavy=124&stroke.hot-light=108&stroke.hot-heavy=117", StrokeBlocked, None},
	} {
		assert.Equal(t, row.needs, work(t, row.plan).Needs(row.id), "%s of %s", row.id.Key(), row.plan)
	}
}

// All that is worked out of the stroke at a keystroke.
func BenchmarkStroke(b *testing.B) {
	st := work(b, "drive.target=120 °C")
	for b.Loop() {
		stroke(&st.Plan, &st.Out)
	}
}
