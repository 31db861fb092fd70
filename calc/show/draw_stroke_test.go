package show

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Lengths and pulls are at one scale each, and the lines cross where the muscle comes to rest.
func TestStrokeLines(t *testing.T) {
	for _, text := range []string{"", "drive.target=120 °C&stroke.load=100 g", "drive.target=120 °C&stroke.load=30 g&coil.rod-hand=opposite", "stroke.own=9 %&drive.target=90"} {
		st, at := draw(t, text)
		o := &st.Out
		path := func(id string) trace { return follow(t, at["draw.stroke."+id+" d"]) }
		cold, hot := path("cold").strokes[0], path("hot").strokes[0]
		rests := path("rests").circles
		left := 64.0
		least := float64(min(o.Solid, o.HotLength, o.HotFree))
		x := (cold[0].x - left) / (float64(o.ThisFinished) - least) // units to the metre
		y := (240 - rests[0].y) / float64(o.BlockedPull)            // and to the newton
		if o.BlockedPull == 0 {
			y = (240 - rests[1].y) / float64(o.ColdPull)
		}
		is := func(length, pull float64, p point, what string) {
			assert.InDelta(t, left+(length-least)*x, p.x, 4*half, "%s in %q", what, text)
			assert.InDelta(t, 240-pull*y, p.y, 4*half, "%s in %q", what, text)
		}
		is(float64(o.ThisFinished), 0, cold[0], "unloaded, cold")
		is(float64(o.HotFree), 0, hot[0], "unloaded, hot")
		is(float64(o.ThisFinished)+104/y/float64(o.ColdRate), 104/y, cold[1], "the cold line's end")
		is(float64(o.HotFree)+104/y/float64(o.HotRate), 104/y, hot[1], "the hot line's end")
		is(float64(o.ColdLength), float64(o.BlockedPull), point{rests[0].x, rests[0].y}, "held")
		n := len(rests) / 2 // a disc is some circles in each other
		is(float64(o.ColdLength), float64(o.ColdPull), point{rests[1].x, rests[1].y}, "at rest, cold")
		is(float64(o.HotLength), float64(o.HotPull), point{rests[n+1].x, rests[n+1].y}, "at rest, hot")
	}
	// a spring pulls along a falling line, which both lines cross at rest
	st, at := draw(t, "drive.target=120 °C&stroke.load=10 g&stroke.against=spring&stroke.spring=40 N/m&stroke.slack=140 mm")
	load := follow(t, at["draw.stroke.load d"]).strokes
	rests := follow(t, at["draw.stroke.rests d"]).circles
	for _, r := range []round{rests[1], rests[len(rests)/2+1]} {
		a, b := load[0][0], load[0][1]
		assert.InDelta(t, a.y+(b.y-a.y)*(r.x-a.x)/(b.x-a.x), r.y, 4*half)
	}
	assert.Less(t, load[0][0].y, load[0][1].y)
	assert.Equal(t, load[1][0].y, load[1][1].y, "slack, the load alone")
	assert.Greater(t, float64(st.Out.HotPull), float64(st.Out.ColdPull))
}

// The curves go through the strokes that are said, and begin at none.
func TestStrokeGraph(t *testing.T) {
	st, at := draw(t, "drive.target=120 °C&stroke.load=20 g")
	o := &st.Out
	usual := follow(t, at["draw.stroke.graph d"]).points
	band := follow(t, at["draw.stroke.band d"]).points
	require.Len(t, usual, graphPoints)
	require.Len(t, band, 2*graphPoints)
	top := 288.0
	require.Equal(t, "50 mm", at["draw.stroke.upper t"])
	zero := usual[0].y
	k := (zero - top) / 0.05
	// from 20 to 180 °C in 16 steps of 10 K: 120 °C is the tenth
	for i, p := range []point{band[10], usual[10], band[graphPoints+10]} {
		assert.InDelta(t, zero-float64(o.Strokes[i])*k, p.y, 2*half)
		assert.InDelta(t, 64+242*10/16.0, p.x, 2*half)
	}
	bar := follow(t, at["draw.stroke.bar d"])
	assert.InDelta(t, usual[10].y, bar.circles[0].y, 2*half)
	assert.InDelta(t, usual[10].x, bar.circles[0].x, 2*half)
	assert.InDelta(t, band[10].y, bar.strokes[0][0].y, 2*half)
	assert.InDelta(t, band[graphPoints+10].y, bar.strokes[0][1].y, 2*half)
	for _, p := range []point{band[0], band[graphPoints]} {
		assert.InDelta(t, zero, p.y, half)
	}
}

// The coil contracts in the drawing as it does on the bench, and leans the other way when it is twisted the other way.
func TestStrokeCoils(t *testing.T) {
	for _, text := range []string{"drive.target=150 °C&stroke.load=0", "drive.target=150 °C&stroke.load=0&twist.hand=s", "drive.target=150 °C&coil.rod-hand=opposite"} {
		st, at := draw(t, text)
		near := follow(t, at["draw.stroke.near d"]).curves
		require.Len(t, near, 20)
		cold, hot := near[0][0].x-near[9][0].x, near[10][0].x-near[19][0].x
		assert.InDelta(t, float64(st.Out.HotLength/st.Out.ColdLength), hot/cold, 0.005, text)
		far := follow(t, at["draw.stroke.far d"]).curves
		require.Len(t, far, 20)
	}
	_, z := draw(t, "")
	_, s := draw(t, "twist.hand=s")
	rise := func(at map[string]string) float64 {
		c := follow(t, at["draw.stroke.near d"]).curves[0]
		return (c[3].y - c[0].y) * (c[3].x - c[0].x)
	}
	// seen from the side with its axis level, a Z rises to the left: it is the Z of an upright coil laid on its side
	assert.Greater(t, rise(z), 0.0)
	assert.Less(t, rise(s), 0.0)
}

// What is said of it, in numbers of the start plan.
func TestStrokeWords(t *testing.T) {
	for _, c := range []struct {
		text string
		says map[string]string
	}{
		{"", map[string]string{"cold-label": "cold, 20 °C: 120.8 mm", "solid": "turns touch, 84.82 mm", "left": "hot", "right": "cold", "pull": "0.490 N", "note": "To scale; a few of the turns.", "moves": "1.81 mm", "target": "hot, 50 °C", "last": "180 °C"}},
		{"stroke.load=", map[string]string{"cold-label": "", "left": "", "note": "needs load in all"}},
		{"drive.target=200", map[string]string{"cold-label": "", "left": "", "title": "", "note": "The book knows no stroke of these."}},
		{"drive.target=180", map[string]string{"target": "hot, 180 °C", "last": "180 °C"}},
		{"fibre.polymer=pvdf", map[string]string{"note": "needs own stroke", "upper": "", "zero": ""}},
		{"fibre.polymer=pvdf&stroke.own=5 %&stroke.base=coiled", map[string]string{"note": "needs loaded, cold length as measured", "cold-label": ""}},
		{"fibre.polymer=pvdf&stroke.own=5 %&stroke.loaded=120", map[string]string{"note": "To scale; a few of the turns.", "cold-label": "cold, 20 °C: 120.0 mm", "moves": "6.00 mm", "upper": ""}},
		{"drive.target=20", map[string]string{"note": "needs a change of temperature when hot", "cold-label": "", "moves": ""}},
		{"drive.way=water&drive.target=120", map[string]string{"note": "needs a change of temperature when hot", "cold-label": "", "title": "", "moves": ""}},
		{"stroke.against=spring&stroke.spring-wire=0.5&stroke.spring-outside=0.4&stroke.spring-turns=9", map[string]string{"note": "needs a change of outside of the spring"}},
		{"stroke.against=muscle&stroke.apart=100", map[string]string{"note": "needs a change of distance of the far ends", "cold-label": ""}},
		{"coil.rod-hand=opposite&drive.target=120 °C", map[string]string{"blocked": "", "upper": ""}},
	} {
		_, at := draw(t, c.text)
		for id, want := range c.says {
			assert.Equal(t, want, at["draw.stroke."+id+" t"], "%s in %q", id, c.text)
		}
	}
	_, at := draw(t, "drive.target=200")
	assert.Equal(t, "The book knows no stroke of these.", at["draw.stroke:desc t"])
	_, at = draw(t, "")
	assert.Contains(t, at["draw.stroke:desc t"], "Cold, at 20 °C, it is 120.8 mm long and pulls 0.490 N; hot, at 50 °C, ")
	assert.Contains(t, at["draw.stroke:desc t"], "The estimate is between 0.32 mm and 3.0 mm.")
	_, at = draw(t, "stroke.own=8 %")
	assert.NotContains(t, at["draw.stroke:desc t"], "between", "own trials leave no band")
}
