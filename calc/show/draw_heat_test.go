package show

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"twistbench/calc"
	"twistbench/calc/words"
)

// Every temperature is as far along the bar as it is from the cold room, 20 °C, at its left end.
func TestHeatProportions(t *testing.T) {
	for _, c := range []struct {
		text                     string
		set, peak, melt          float64 // °C
		glass, usual, usualUntil float64
	}{
		// nylon 6,6, polyester and nylon 6: the reference table of coiled-fibre actuators, 1.2
		{"", 180, 190, 255, 50, 120, 210},
		{"fibre.polymer=polyester&heat.set=200 °C&heat.overshoot=0 K", 200, 200, 250, 70, 160, 220},
		{"fibre.polymer=nylon-6&heat.set=338 °F&heat.overshoot=25", 170, 195, 220, 50, 140, 180},
		{"heat.set=150&heat.melt=215&heat.overshoot=50", 150, 200, 215, 50, 120, 210},
	} {
		_, at := draw(t, c.text)
		box, end := follow(t, at["draw.heat.bar d"]).box()
		left := box.x
		set := follow(t, at["draw.heat.marks d"]).strokes[0][0].x
		k := (set - left) / (c.set - 20) // units to the kelvin
		require.Greater(t, k, 0.5, c.text)
		assert.InDelta(t, 306, end.x, half)

		along := func(id string) (from, to float64) {
			a, b := follow(t, at["draw.heat."+id+" d"]).box()
			return a.x, b.x
		}
		is := func(want, x float64, what string) {
			assert.InDelta(t, left+(want-20)*k, x, 2*half, "%s in %q", what, c.text)
		}
		from, to := along("margin")
		is(c.peak, from, "peak")
		is(c.melt, to, "melting")
		from, _ = along("melting")
		is(c.melt, from, "where it is hatched")
		if c.peak > c.set {
			from, to = along("over")
			is(c.set, from, "set")
			is(c.peak, to, "peak")
		} else {
			assert.Empty(t, at["draw.heat.over d"])
		}
		from, _ = along("glass")
		is(c.glass, from, "glass transition")
		from, to = along("usual")
		is(c.usual, from, "usual")
		is(c.usualUntil, to, "usual, until")
	}
}

// What is said of it, in numbers of the start plan (design, section 7, does not reach this far: 180 + 10, and 255 − 190).
func TestHeatWords(t *testing.T) {
	for _, c := range []struct {
		text string
		us   bool
		says map[string]string
	}{
		{"", false, map[string]string{
			"set-label": "set 180 °C, peak 190 °C", "margin-label": "65.0 K to melting", "melt-label": "melts from 255 °C",
			"glass-label": "Glass transition 50 °C to 70 °C", "usual-label": "Usual 120 °C to 210 °C", "frame-label": "",
		}},
		{"heat.frame-limit=230 °C", false, map[string]string{"frame-label": "frame stands 230 °C"}},
		{"heat.frame-limit=600 °C", false, map[string]string{"frame-label": ""}}, // far off the bar
		{"heat.set=", false, map[string]string{"set-label": "", "margin-label": "", "melt-label": "melts from 255 °C"}},
		{"heat.dial-1=150&heat.probe-1=178", false, map[string]string{"set-label": "dial 152 °C for 180 °C, peak 190 °C"}},
		{"heat.overshoot=", false, map[string]string{"set-label": "", "margin-label": ""}},
		{"fibre.polymer=other", false, map[string]string{"melt-label": "needs melting point", "margin-label": "", "glass-label": "", "usual-label": ""}},
		{"fibre.polymer=pvdf&heat.set=120", false, map[string]string{"usual-label": "", "glass-label": ""}},    // no setting is known, and its transition is in the cold
		{"heat.set=250", false, map[string]string{"set-label": "set 250 °C, peak 260 °C", "margin-label": ""}}, // past melting
		{"heat.set=356 °F", true, map[string]string{"set-label": "set 356 °F, peak 374 °F", "margin-label": "117 °F to melting", "melt-label": "melts from 491 °F"}},
	} {
		s, faults := calc.ParsePlan(c.text)
		require.Empty(t, faults)
		var st calc.State
		st.Work(&s)
		_, at := drawn(&Display{Lang: &words.English, US: c.us}, &st)
		for id, want := range c.says {
			assert.Equal(t, want, at["draw.heat."+id+" t"], "%s in %q", id, c.text)
		}
	}
	_, at := draw(t, "")
	assert.Equal(t, "The oven is set to 180 °C and reaches 190 °C at its hottest. The fibre melts from 255 °C: 65.0 K above that.", at["draw.heat:desc t"])
	_, at = draw(t, "heat.melt=")
	assert.Contains(t, at["draw.heat.melting d"], "v", "an empty melting point is the book's")
	_, at = draw(t, "fibre.polymer=other")
	assert.Empty(t, at["draw.heat.melting d"])
}

// Ovens from the freezing to the hottest that is typed, and labels that would run into each other.
func TestHeatOfAnyPlan(t *testing.T) {
	for _, text := range []string{
		"heat.set=0", "heat.set=400", "heat.set=400&heat.overshoot=200", "heat.set=20&heat.overshoot=1", "heat.set=32 F&heat.overshoot=0", "heat.set=254.99&heat.overshoot=0.01 K",
		"heat.melt=0", "heat.melt=400&heat.set=399", "heat.melt=30&heat.set=25", "fibre.polymer=polyethylene&heat.set=100", "fibre.polymer=pvdf&heat.set=140",
		"fibre.polymer=nylon-6&heat.set=180&heat.frame-limit=21", "heat.frame-limit=260", "heat.set=&heat.melt=", "heat.set=180.123456 °C&heat.overshoot=10.98765 K",
		"heat.set=1 K", "yarn.strands=1&yarn.polymer=polyethylene", "yarn.strands=1&yarn.polymer=other",
	} {
		s, _ := calc.ParsePlan(text) // 1 K is too little
		var st calc.State
		st.Work(&s)
		inside(t, english(), &st, text)
		inside(t, &Display{Lang: &words.English, US: true}, &st, text+" (US)")
	}
}
