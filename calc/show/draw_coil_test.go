package show

import (
	"math"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"twistbench/calc"
)

func start(t testing.TB) *calc.State {
	st, _ := draw(t, "")
	return st
}

// width reads how wide the stroke of a path is.
func width(t testing.TB, at map[string]string, id string) float64 {
	t.Helper()
	w, err := strconv.ParseFloat(at[id+" stroke-width"], 64)
	require.NoError(t, err, id)
	return w
}

// Mean diameter, thickness and pitch are true to one another, in each state, and all states to one scale; the strands slant as the hand says.
func TestCoilProportions(t *testing.T) {
	for _, c := range []struct {
		text string
		n    int
	}{
		{"", 6}, {"twist.hand=s", 6}, {"coil.outside=3.2 mm&coil.pitch=0.9 mm&twist.hand=s", 6}, {"coil.index=12&coil.pitch=2 mm", 6}, {"coil.pitch=1.2 mm&coil.index=2", 6},
		{"clamp.stages=one", 6}, {"clamp.measured=92 mm&coil.count=150", 6}, {"coil.pitch=0.4 mm", 6}, {"coil.index=3&coil.count=4&clamp.coiled=3 mm", 4}, {"fibre.diameter=1 mm&coil.outside=2.4 mm", 6},
	} {
		st, at := draw(t, c.text)
		p, o := &st.Plan, &st.Out
		states := [...]struct{ mean, pitch float64 }{
			{float64(p.Mean), float64(p.Pitch)}, {float64(o.LastMean), float64(o.LastPitch)}, {float64(o.SolidMean), float64(o.SolidPitch)},
		}
		near, far := follow(t, at["draw.coil.near d"]).curves, follow(t, at["draw.coil.far d"]).curves
		ends := follow(t, at["draw.coil.ends d"]).circles
		require.Len(t, near, 3*c.n, c.text)
		require.Len(t, far, 3*c.n, c.text)
		require.Len(t, ends, 6, c.text)
		require.Equal(t, follow(t, at["draw.coil.near d"]).curves, follow(t, at["draw.coil.near-inside d"]).curves)
		thick := (width(t, at, "draw.coil.near") + width(t, at, "draw.coil.near-inside")) / 2
		assert.InDelta(t, 2*outline, width(t, at, "draw.coil.near")-width(t, at, "draw.coil.near-inside"), half)
		assert.Equal(t, width(t, at, "draw.coil.far"), width(t, at, "draw.coil.near"))
		k := thick / float64(p.Thickness)
		slack := func(x float64) float64 { return half + x*half/thick } // k is only as sure as a width of whole tenths
		for i, state := range states {
			strands, behind := near[i*c.n:(i+1)*c.n], far[i*c.n:(i+1)*c.n]
			for j, s := range strands {
				across := s[3].x - s[0].x
				assert.InDelta(t, state.mean*k, math.Abs(across), slack(state.mean*k), "mean diameter, state %d of %q", i, c.text)
				assert.Equal(t, p.Hand == calc.HandZ, across > 0, "Z rises to the right, S to the left: %q", c.text)
				assert.InDelta(t, state.pitch*k/2, s[0].y-s[3].y, slack(state.pitch*k), "half a turn, state %d of %q", i, c.text)
				assert.Equal(t, s[3], behind[j][0], "the far strand goes on where the near one turns")
				if j > 0 {
					assert.InDelta(t, state.pitch*k, strands[j-1][0].y-s[0].y, slack(state.pitch*k), "pitch, state %d of %q", i, c.text)
					assert.Equal(t, behind[j-1][3], s[0], "and the near one where the far one does")
				}
				// As steep in the middle as the helix seen from the side, p ÷ (π D), and upright where it turns.
				way := s.way(0.5)
				assert.InDelta(t, state.pitch/(math.Pi*state.mean), -way.y/math.Abs(way.x), 0.4/math.Abs(way.x), "slope, state %d of %q", i, c.text)
				assert.Zero(t, s.way(0).x)
				assert.Zero(t, s.way(1).x)
			}
			whole := strands[0][0].y - behind[c.n-1][3].y
			assert.InDelta(t, float64(c.n)*state.pitch*k, whole, slack(whole), "turns drawn, state %d of %q", i, c.text)
			for _, e := range ends[2*i : 2*i+2] {
				assert.InDelta(t, thick/2, e.r, half, "the cut end of %q", c.text)
				assert.InDelta(t, strands[0][0].x, e.x, half)
			}
		}
		// From the first strands at the top of each coil: they hang at one height.
		assert.InDelta(t, far[c.n-1][3].y, far[2*c.n-1][3].y, half)
		assert.InDelta(t, far[c.n-1][3].y, far[3*c.n-1][3].y, half)
	}
}

// The one curve from turn to turn is within a hundredth of the radius of the helix seen from the side.
func TestCrossingIsAHelix(t *testing.T) {
	s := sketch{writer: writer{st: start(t)}, hand: 1, turns: 1}
	s.crossings(&helix{0, 0, 10000, 4000}, 0)
	c := follow(t, string(s.b)).curves[0]
	for u := 0.0; u <= 1; u += 0.01 {
		v := 1 - u
		x := v*v*v*c[0].x + 3*v*v*u*c[1].x + 3*v*u*u*c[2].x + u*u*u*c[3].x
		y := v*v*v*c[0].y + 3*v*v*u*c[1].y + 3*v*u*u*c[2].y + u*u*u*c[3].y
		turned := -y/4000*2*math.Pi - math.Pi/2
		assert.InDelta(t, 10000*math.Sin(turned), x, 100, "%g of the way", u)
	}
}

// The gap that is marked is the one between the outlines of two strands.
func TestCoilGap(t *testing.T) {
	for _, text := range []string{"", "twist.hand=s", "coil.outside=3.2 mm&coil.pitch=0.9 mm", "coil.index=4&coil.pitch=1.5 mm&twist.hand=s"} {
		st, at := draw(t, text)
		k := (width(t, at, "draw.coil.near") + width(t, at, "draw.coil.near-inside")) / 2 / float64(st.Plan.Thickness)
		var tips []point
		for _, s := range follow(t, at["draw.coil.dims d"]).strokes {
			if math.Abs(math.Hypot(s[1].x-s[0].x, s[1].y-s[0].y)-9) < 0.15 {
				tips = append(tips, s[1])
			}
		}
		require.Len(t, tips, 2, text)
		assert.InEpsilon(t, float64(st.Out.LastGap)*k, math.Hypot(tips[1].x-tips[0].x, tips[1].y-tips[0].y), 0.05, text)
		assert.Equal(t, "p", at["draw.coil.pitch-letter t"])
		assert.Equal(t, "g", at["draw.coil.gap-letter t"])
	}
}

// Turns that would lie in each other are drawn through each other, and said to be.
func TestCoilClash(t *testing.T) {
	for _, c := range []struct {
		text         string
		coiled, last bool
	}{{"", false, false}, {"coil.pitch=0.3 mm", true, true}, {"coil.pitch=0.5 mm", true, false}} {
		_, at := draw(t, c.text)
		n := 0
		for id, yes := range map[string]bool{"draw.coil.gap-coiled t": c.coiled, "draw.coil.gap-last t": c.last} {
			if yes {
				n += 12
				assert.Equal(t, "overlap", at[id], c.text)
			} else {
				assert.Contains(t, at[id], " mm", c.text)
			}
		}
		assert.Len(t, follow(t, at["draw.coil.clash d"]).curves, n, "both edges of six turns, in %q", c.text)
		if c.coiled {
			assert.Contains(t, at["draw.coil:desc t"], "inside each other")
		} else {
			assert.NotContains(t, at["draw.coil:desc t"], "inside each other")
		}
	}
}

// On the thread the coil has the index and the pitch of the plan.
func TestThreadCoil(t *testing.T) {
	for _, text := range []string{"", "twist.hand=s", "coil.index=3&coil.pitch=0.9 mm"} {
		st, at := draw(t, text)
		p := &st.Plan
		near := follow(t, at["draw.thread.coil.near d"]).curves
		thick := (width(t, at, "draw.thread.coil.near") + width(t, at, "draw.thread.coil.near-inside")) / 2
		require.Greater(t, len(near), 2)
		across := near[0][3].x - near[0][0].x
		assert.InDelta(t, float64(p.Index), math.Abs(across)/thick, 2*half/thick*float64(p.Index), text)
		assert.Equal(t, p.Hand == calc.HandZ, across > 0, text)
		assert.InDelta(t, float64(p.Pitch/p.Thickness), (near[0][0].y-near[2][0].y)/2/thick, 2*half/thick, text)
	}
}

// Coils drawn as a line have the hand of the twist too: upright, the near strands of Z rise to the right; on its side they fall.
func TestLineCoilsHaveTheHand(t *testing.T) {
	for text, z := range map[string]bool{"": true, "twist.hand=s": false} {
		_, at := draw(t, text)
		for _, id := range []string{"draw.cut.coiled d", "draw.clamp.first-coil d"} {
			s := follow(t, at[id]).strokes[0]
			assert.Equal(t, z, (s[1].x > s[0].x) == (s[1].y > s[0].y), "%s in %q", id, text)
		}
		for _, id := range []string{"draw.hang.coil d", "draw.thread.clamp.coil d"} {
			strokes := follow(t, at[id]).strokes
			s := strokes[0]
			if s[0].x == s[1].x {
				s = strokes[1]
			}
			assert.Equal(t, z, (s[1].x > s[0].x) != (s[1].y > s[0].y), "%s in %q", id, text)
		}
	}
}

// What the drawing of a coil costs, and how long its slots are.
func BenchmarkCoil(b *testing.B) {
	for _, text := range []string{"", "coil.index=5&coil.pitch=1.2 mm", "coil.pitch=0.3 mm"} {
		b.Run(text, func(b *testing.B) {
			st, _ := draw(b, text)
			w := writer{english(), st, make([]byte, 0, 1<<16)}
			b.ReportAllocs()
			for b.Loop() {
				w.b = w.b[:0]
				w.drawing(coilDrawing)
			}
			b.ReportMetric(float64(len(w.b)), "bytes")
		})
	}
}
