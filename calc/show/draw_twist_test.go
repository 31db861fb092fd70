package show

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// way returns the direction of a curve at its end t, 0 or 1, or in its middle, 0.5.
func (c curve) way(t float64) point {
	at := func(a, b, c, d float64) float64 {
		return (1-t)*(1-t)*(b-a) + 2*(1-t)*t*(c-b) + t*t*(d-c)
	}
	return point{at(c[0].x, c[1].x, c[2].x, c[3].x), at(c[0].y, c[1].y, c[2].y, c[3].y)}
}

// Lines that ran along the fibre cross its middle at the bias angle, to the side of the hand, and are a surface helix apart.
func TestTwistProportions(t *testing.T) {
	for _, c := range []struct {
		text  string
		angle float64 // degrees: what is typed
		hand  float64
	}{
		{"", 40, 1}, {"twist.hand=s", 40, -1}, {"twist.bias=12 °", 12, 1}, {"twist.bias=25 °&twist.hand=s", 25, -1}, {"twist.bias=55 °", 55, 1}, {"twist.bias=69 °&twist.hand=s", 69, -1},
	} {
		_, at := draw(t, c.text)
		slope := math.Tan(c.angle * math.Pi / 180)
		for _, d := range []struct {
			id             string
			middle, radius float64
		}{{"draw.twist.marks d", 92, 24}, {"draw.thread.twist.slants d", 14, 8}} {
			crossings := 0
			for _, line := range follow(t, at[d.id]).curves {
				for i, end := range []point{line[0], line[3]} {
					assert.LessOrEqual(t, math.Abs(end.x-d.middle), d.radius+half, "%s in %q", d.id, c.text)
					if math.Abs(end.x-d.middle) > 0.05 {
						continue
					}
					crossings++
					way := line.way(float64(i))
					if length := math.Hypot(way.x, way.y); length > 4 { // where tenths are fine enough
						angle := math.Atan2(way.x*c.hand, -way.y) * 180 / math.Pi
						assert.InDelta(t, c.angle, angle, 6/length, "%s in %q", d.id, c.text)
					}
				}
			}
			assert.Positive(t, crossings, "%s in %q", d.id, c.text)
		}
		// The angle that is marked: the axis, and a line from where one of the lines crosses it.
		arm := follow(t, at["draw.twist.angle d"]).strokes[1]
		assert.Equal(t, 92.0, arm[0].x)
		assert.InDelta(t, slope, c.hand*(arm[1].x-arm[0].x)/(arm[0].y-arm[1].y), 0.01*(1+slope*slope), c.text)
		assert.Equal(t, map[float64]string{1: "Z", -1: "S"}[c.hand], at["draw.twist.hand t"])
		assert.Equal(t, map[float64]string{1: "lines rise to the right", -1: "lines rise to the left"}[c.hand], at["draw.twist.rises t"])
	}
}

// One turn of a surface helix is π × thickness ÷ tan of the bias angle long: with one line on the fibre, they are as far apart.
func TestSlantsPitch(t *testing.T) {
	s := sketch{writer: writer{st: start(t)}, hand: 1}
	for _, pitch := range []float64{20, 30, 41} {
		s.b, s.x, s.y = nil, 0, 0
		s.a = [8]float64{50, 0, 100, 20, pitch}
		s.slants()
		var at []float64
		for _, c := range follow(t, string(s.b)).curves {
			if math.Abs(c[3].x-50) < 0.05 {
				at = append(at, c[3].y)
			}
		}
		require.Greater(t, len(at), 1)
		for i := 1; i < len(at); i++ {
			assert.InDelta(t, pitch, at[i]-at[i-1], half)
		}
	}
}

// Along the line of turns every mark is at its count.
func TestTwistCounts(t *testing.T) {
	for _, text := range []string{"", "twist.counted=150", "twist.turns=90&twist.counted=120&twist.counted-precursor=300 mm", "twist.bias=60 °", "clamp.coiled=1 m"} {
		st, at := draw(t, text)
		p, o := &st.Plan, &st.Out
		line := follow(t, at["draw.twist.fibre d"]).strokes[3] // after both sides of the fibre and a mark at 0
		k := (line[1].x - line[0].x) / longest(float64(o.AllTurns), float64(p.Turns), float64(o.Onset[2]))
		marks := follow(t, at["draw.twist.marks d"])
		triangle := marks.strokes[1][1] // its lower corner
		assert.InDelta(t, float64(o.Slow)*k, triangle.x-line[0].x, half, "slow down in %q", text)
		band := marks.strokes[6] // after two triangles, the one of the legend too: the upper side of a box
		assert.InDelta(t, float64(o.Onset[1])*k, band[0].x-line[0].x, half, "the first coil at the earliest in %q", text)
		assert.InDelta(t, float64(o.Onset[2])*k, band[1].x-line[0].x, half, "and at the latest in %q", text)
		rings := marks.circles
		require.Len(t, rings, 10, text) // a ring and a disc of four, each in the legend too
		assert.InDelta(t, float64(p.Turns)*k, rings[0].x-line[0].x, half, "turns of twist in %q", text)
		assert.InDelta(t, float64(o.AllTurns)*k, rings[2].x-line[0].x, half, "full coiling in %q", text)
	}
}
