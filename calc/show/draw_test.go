package show

import (
	"math"
	"math/rand/v2"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"twistbench/calc"
	"twistbench/calc/craft"
	"twistbench/calc/quantity"
	"twistbench/calc/words"
)

// extremes are plans at the ends of what is possible, and some that are merely awkward.
var extremes = []string{
	"",
	"fibre.strands=2&yarn.strands=1&yarn.diameter=0.25 mm",
	"fibre.strands=19&yarn.strands=12&yarn.diameter=0.3 mm&hang.mass=12 kg",
	"fibre.strands=1000&yarn.strands=1000&yarn.diameter=20 mm&fibre.diameter=1 µm",
	"fibre.strands=1000&yarn.strands=1&yarn.diameter=1 µm&fibre.diameter=20 mm",
	"fibre.strands=6&fibre.bundle=50 mm", "fibre.strands=3&fibre.bundle=1.1 mm",
	"yarn.strands=2", "fibre.diameter=1 µm", "fibre.diameter=20 mm",
	"fibre.diameter=0.1 mm&hang.mass=5 g&hang.hook=1 g", "hang.mass=1000 kg", "hang.mass=1 mg&hang.hook=0 g", "hang.mass=20 g",
	"hang.clearance=0 mm&hang.stack=0 mm&cut.tail=0 mm", "hang.clearance=10 m&cut.tail=10 m&hang.stack=10 m", "hang.stack=10 m&clamp.coiled=1 mm",
	"clamp.coiled=100 m", "clamp.coiled=0.1 mm", "clamp.coiled=1 m&clamp.hole-pitch=25 mm", "cut.ratio=100", "cut.ratio=1.001", "cut.precursor=10 m",
	"clamp.first-stretch=0&clamp.second-stretch=0", "clamp.first-stretch=-99&clamp.second-stretch=2000", "clamp.first-stretch=2000&clamp.second-stretch=-99",
	"clamp.first-stretch=60&clamp.second-stretch=-30&fibre.strands=5&cut.ratio=1.2", "clamp.first-stretch=-50&clamp.second-stretch=-20",
	"clamp.zero=10 m", "clamp.zero=150 mm&clamp.hole-pitch=10 mm&clamp.hole-offset=2 mm&clamp.measured=92 mm", "clamp.zero=10000 mm&clamp.coiled=0.1 mm",
	"clamp.hole-pitch=0.1 mm", "clamp.hole-pitch=1 m", "clamp.hole-pitch=20 mm&clamp.hole-offset=-1 m", "clamp.hole-pitch=20 mm&clamp.hole-offset=1 m",
	"heat.preheat=0&heat.load=0&heat.recovery=0&heat.hold-1=0&heat.cool-1=0&heat.reclamp=0&heat.hold-2=0&heat.cool-2=0&heat.rest=0", "heat.preheat=90 days&heat.hold-1=90 days&heat.cool-1=0 s",
	"cut.pieces=1000&heat.hold-1=1 s", "cut.pieces=60&clamp.stages=one", "heat.rest=0&heat.recovery=0", "heat.cool-2=", "heat.rest=90 days&heat.preheat=90 days",
	"clamp.stages=one", "clamp.stages=one&clamp.hole-pitch=5 mm&cut.precursor=600 mm", "clamp.stages=one&clamp.measured=70 mm",
	"clamp.measured=10 m", "clamp.measured=0.1 mm&clamp.second-base=first-gap", "clamp.second-base=relaxed&clamp.relaxed=100 m",
	"clamp.coiled=&fibre.diameter=", "clamp.coiled=", "cut.ratio=", "cut.tail=", "clamp.second-stretch=", "clamp.first-stretch=", "clamp.zero=", "hang.stress=", "hang.hook=", "hang.hook=2 kg", "fibre.strands=", "yarn.strands=", "clamp.retained=", "hang.stack=", "hang.clearance=",
	"fibre.diameter=0.52000000000000000000000000000000000001 mm&clamp.coiled=85.0000000000000000000000000000000001 mm&clamp.zero=5 1/4 in&hang.mass=1 lb 4 oz",
	"twist.hand=s", "twist.hand=s&coil.pitch=0.8 mm&coil.index=5", "twist.bias=0.6 °&twist.hand=s", "twist.bias=70 °", "twist.turns=0.1", "twist.turns=1e7", "fibre.bundle=0.6 mm&twist.turns=430",
	"twist.counted=1", "twist.counted=1e7", "twist.counted=150&twist.counted-precursor=1 mm", "fibre.polymer=other", "twist.bias=", "twist.bias=40.0000000000000000000000001 °",
	"coil.pitch=0.3 mm", "coil.pitch=0.3 mm&twist.hand=s", "coil.pitch=50 mm", "coil.index=100", "coil.index=100&coil.pitch=1 µm", "coil.index=100&coil.pitch=500 mm", "coil.outside=0.2 mm", "coil.outside=500 mm&coil.pitch=500 mm",
	"coil.outside=", "coil.count=0.5", "coil.count=3", "coil.count=1e6", "coil.per-length=1", "clamp.second=1 m", "clamp.second-stretch=400", "clamp.first-stretch=2000&clamp.stages=one", "clamp.measured=40 mm", "coil.mean=0.5 mm&coil.pitch=3 mm&clamp.measured=90 mm",
	"wire.route=twisted&wire.per-length=50&wire.supply-voltage=5", "wire.route=wrapped&wire.per-length=50&wire.wrap-diameter=1.5 mm&wire.wrap-pitch=1.2 mm&wire.current=0.3 A&wire.in-row=3&wire.rows=2",
	"wire.route=fibre&wire.per-length=0.001&wire.power=100 kW&wire.in-row=1000&wire.rows=1000", "wire.route=wrapped&wire.wrap-pitch=1 µm", "wire.route=wrapped&wire.wrap-pitch=500 mm&twist.hand=s", "wire.route=twisted", "wire.route=twisted&wire.in-row=&wire.rows=",
	"wire.route=twisted&wire.per-length=1e6&wire.supply-voltage=5.00000000000000000000000000001 V&wire.lead-length=1000 m&wire.gauge=50", "wire.route=twisted&wire.per-length=50&wire.supply-voltage=60&wire.rows=30",
	"stroke.load=0", "stroke.load=0&drive.target=20", "stroke.load=100 g&drive.target=120", "stroke.load=100 g&drive.target=120&coil.rod-hand=opposite", "stroke.load=1000 kg", "drive.target=0 °C", "drive.target=180", "drive.room=179.5&drive.target=180", "drive.room=200", "drive.target=400",
	"stroke.own=95", "stroke.own=-100", "stroke.own=30&fibre.polymer=polyester", "fibre.polymer=polyester&stroke.own=20&stroke.base=coiled&stroke.light=50&stroke.heavy=150&stroke.cold-light=133 mm&stroke.cold-heavy=151 mm&stroke.hot-light=120 mm&stroke.hot-heavy=144 mm", "stroke.light=0&stroke.heavy=1 mg&stroke.cold-light=1 mm&stroke.cold-heavy=100 m", "stroke.light=0&stroke.heavy=1000 kg&stroke.cold-light=1 m&stroke.cold-heavy=1.0001 m&stroke.hot-light=1 mm&stroke.hot-heavy=100 m", "stroke.load=", "drive.target=",
	"stroke.against=spring&stroke.spring=40&stroke.slack=140 mm&drive.target=150", "stroke.against=spring&stroke.spring=1e6&stroke.slack=10 m", "stroke.against=spring", "stroke.against=spring&stroke.spring=0.001&stroke.load=0&stroke.slack=1 mm", "stroke.against=muscle&stroke.slack=125&stroke.load=0&drive.target=100",
	"stroke.beside=1000&stroke.lever=100&stroke.load=2 kg", "stroke.lever=0.01&drive.target=180&stroke.load=400 g&twist.hand=s", "clamp.first-stretch=0&clamp.second-stretch=0&drive.target=160&stroke.load=1 g", "stroke.load=0.123456789 g&drive.target=120.123456789 °C&drive.room=20.987654321 °C",
	"clamp.coiled=85000 µm", "fibre.diameter=.022 in&clamp.coiled=3 1/4 in", "clamp.coiled=3346.456 thou&clamp.zero=2 in",
}

// record is a slot of a drawing.
type record struct{ id, what, value string }

func drawings(d *Display, b []byte, st *calc.State) []byte {
	w := writer{d, st, b}
	w.plan()
	for i := range Drawings {
		w.drawing(i)
	}
	return w.b
}

func drawn(d *Display, st *calc.State) (all []record, at map[string]string) {
	at = map[string]string{}
	for r := range strings.SplitSeq(strings.TrimSuffix(string(drawings(d, nil, st)), string(Record)), string(Record)) {
		part := strings.Split(r, string(Part))
		all = append(all, record{part[0], part[1], part[2]})
		at[part[0]+" "+part[1]] = part[2]
	}
	return all, at
}

func draw(t testing.TB, text string) (*calc.State, map[string]string) {
	t.Helper()
	s, faults := calc.ParsePlan(text)
	require.Empty(t, faults, text)
	st := new(calc.State)
	st.Work(&s)
	_, at := drawn(english(), st)
	return st, at
}

type point struct{ x, y float64 }

// round is a circle of a path.
type round struct{ x, y, r float64 }

// trace is where a path goes.
type trace struct {
	points  []point
	circles []round
	strokes [][2]point
	curves  []curve
}

// curve is a cubic one: where it begins and ends, and the control points between.
type curve [4]point

// box returns the corners of all that a trace touches.
func (tr trace) box() (low, high point) {
	low, high = point{math.Inf(1), math.Inf(1)}, point{math.Inf(-1), math.Inf(-1)}
	add := func(x, y float64) {
		low = point{math.Min(low.x, x), math.Min(low.y, y)}
		high = point{math.Max(high.x, x), math.Max(high.y, y)}
	}
	for _, p := range tr.points {
		add(p.x, p.y)
	}
	for _, c := range tr.circles {
		add(c.x-c.r, c.y-c.r)
		add(c.x+c.r, c.y+c.r)
	}
	return low, high
}

// follow reads a path: relative moves and lines, arcs all the way round, and curves of one control point and of two (SVG 1.1, chapter 8).
func follow(t testing.TB, d string) (tr trace) {
	t.Helper()
	var at, start point
	i := 0
	number := func() float64 {
		for i < len(d) && d[i] == ' ' {
			i++
		}
		from, dots := i, 0
		for i < len(d) && (d[i] >= '0' && d[i] <= '9' || d[i] == '.' && dots == 0 || d[i] == '-' && i == from) {
			if d[i] == '.' {
				dots++
			}
			i++
		}
		text := d[from:i]
		x, err := strconv.ParseFloat(text, 64)
		require.NoError(t, err, d)
		if _, behind, ok := strings.Cut(text, "."); ok {
			require.Len(t, behind, 1, "more than one decimal in %s", d)
		}
		return x
	}
	tenth := func(x float64) float64 { return math.Round(x*10) / 10 }
	to := func(x, y float64) {
		x, y = tenth(x), tenth(y)
		tr.strokes = append(tr.strokes, [2]point{at, {x, y}})
		at = point{x, y}
		tr.points = append(tr.points, at)
	}
	for i < len(d) {
		command := d[i]
		i++
		for again := true; again; again = i < len(d) && (d[i] == ' ' || d[i] == '-' || d[i] >= '0' && d[i] <= '9') {
			switch command {
			case 'm':
				x := number()
				at = point{tenth(at.x + x), tenth(at.y + number())}
				start = at
				tr.points = append(tr.points, at)
			case 'l':
				x := at.x + number()
				to(x, at.y+number())
			case 'h':
				to(at.x+number(), at.y)
			case 'v':
				to(at.x, at.y+number())
			case 'q':
				x := at.x + number()
				y := at.y + number()
				tr.points = append(tr.points, point{x, (at.y + y) / 2}) // the highest of the curve, halfway to its control point
				x = at.x + number()
				to(x, at.y+number())
			case 'c':
				c := curve{at}
				for i := range 3 {
					x := at.x + number()
					c[i+1] = point{tenth(x), tenth(at.y + number())}
				}
				at = c[3]
				tr.curves = append(tr.curves, c)
				tr.points = append(tr.points, c[1], c[2], at) // it lies within the four
			case 'a':
				r := number()
				require.Equal(t, r, number(), d)
				require.Equal(t, []float64{0, 1, 1, 0, 0.1}, []float64{number(), number(), number(), number(), number()}, d)
				tr.circles = append(tr.circles, round{at.x + r, at.y, r})
			case 'z':
				at = start
			default:
				require.Fail(t, "unknown command", "%c in %s", command, d)
			}
		}
	}
	return tr
}

// allPaths is how many bytes all paths may have together.
const allPaths = 27000

// inside checks what is true of every drawing of every plan.
func inside(t testing.TB, d *Display, st *calc.State, name string) {
	t.Helper()
	all, at := drawn(d, st)
	next, paths := 0, 0
	take := func(id, what string) string {
		require.Less(t, next, len(all), name)
		r := all[next]
		next++
		require.Equal(t, id+" "+what, r.id+" "+r.what, name)
		return r.value
	}
	for i := range Drawings {
		g := &Drawings[i]
		type words struct{ x, end, y float64 }
		var said []words
		for _, s := range g.Shapes {
			if s.Tag == "path" {
				path := take(s.ID, "d")
				paths += len(path)
				half := 0.0 // of a stroke that is as wide as the plan says
				if next < len(all) && all[next].what == "stroke-width" {
					width, err := strconv.ParseFloat(take(s.ID, "stroke-width"), 64)
					require.NoError(t, err)
					require.True(t, width >= 0, "%s is %g wide in %q", s.ID, width, name)
					half = width / 2
				}
				if path == "" {
					continue
				}
				tr := follow(t, path)
				low, high := tr.box()
				require.True(t, low.x-half > -1e-6 && low.y-half > -1e-6 && high.x+half < g.W+1e-6 && high.y+half < g.H+1e-6, "%s leaves %s: %v to %v in %q: %s", s.ID, g.Key, low, high, name, path)
				continue
			}
			text := take(s.ID, Text)
			x, err := strconv.ParseFloat(take(s.ID, "x"), 64)
			require.NoError(t, err)
			y, err := strconv.ParseFloat(take(s.ID, "y"), 64)
			require.NoError(t, err)
			require.NotContains(t, text, "NaN", name)
			require.NotContains(t, text, "Inf", name)
			if next < len(all) && all[next].what == "transform" {
				take(s.ID, "transform")
				continue
			}
			require.NotContains(t, text, quantity.Unknown, "%s in %q", s.ID, name)
			if text == "" {
				continue
			}
			w := wide([]byte(text))
			switch s.Anchor {
			case "middle":
				x -= w / 2
			case "end":
				x -= w
			default:
				require.Equal(t, "start", s.Anchor)
			}
			require.True(t, x >= 0 && x+w <= g.W && y >= 11 && y <= g.H-2, "%s leaves %s: %q at %g, %g in %q", s.ID, g.Key, text, x, y, name)
			for _, o := range said {
				require.False(t, x < o.end && o.x < x+w && math.Abs(y-o.y) < 13, "%s %q stands on another label in %q", s.ID, text, name)
			}
			said = append(said, words{x, x + w, y})
		}
		if !strings.HasPrefix(g.Key, "thread.") {
			require.NotEmpty(t, take("draw."+g.Key+":title", Text))
			require.NotEmpty(t, take("draw."+g.Key+":desc", Text))
		}
	}
	require.Equal(t, len(all), next, "no slot more than the shapes have")
	require.LessOrEqual(t, paths, allPaths, name)
	for id, value := range at {
		require.NotContains(t, value, "NaN", "%s in %q", id, name)
	}
}

// Whatever units the numbers were typed in, drawings and sentences speak in those of the page.
func TestOneUnitOfAKind(t *testing.T) {
	for _, c := range []struct {
		plan  string
		us    bool
		never *regexp.Regexp
	}{
		{"fibre.diameter=20 thou&hang.add=12 oz&cut.ratio=4.8&cut.tail=1 1/2 in&clamp.coiled=3 1/4 in&clamp.zero=1 in&coil.outside=0.05 in&heat.set=356 °F&heat.melt=490 F&heat.frame-limit=420 F&twist.per-precursor=10 tpi&hang.clearance=1 in&stroke.load=2 oz&stroke.slack=5 in&stroke.against=spring&stroke.spring=0.2 lbf/in&drive.target=200 °F&drive.room=70 °F", false,
			regexp.MustCompile(`\d (in|ft|thou|oz|lb|lbf|psi|°F|tpi)\b`)},
		{"hang.mass=368 g&heat.melt=255&heat.frame-limit=230 °C&heat.dial-1=150&heat.probe-1=170&stroke.load=60 g&drive.target=90 °C", true, regexp.MustCompile(`\d (mm|cm|m|g|kg|N|MPa|°C|K|turns/m)\b`)},
	} {
		s, faults := calc.ParsePlan(c.plan)
		require.Empty(t, faults)
		var st calc.State
		st.Work(&s)
		_, at := drawn(&Display{Lang: &words.English, US: c.us}, &st)
		said := 0
		for id, text := range at {
			if strings.HasSuffix(id, " "+Text) {
				assert.NotRegexp(t, c.never, text, id)
				said++
			}
		}
		assert.Greater(t, said, 50)
	}
}

func TestDrawingsOfAnyPlan(t *testing.T) {
	texts := append([]string(nil), extremes...)
	for _, p := range plans(t) {
		texts = append(texts, p.Text)
	}
	for _, text := range texts {
		s, faults := calc.ParsePlan(text)
		require.Empty(t, faults, text)
		var st calc.State
		st.Work(&s)
		inside(t, english(), &st, text)
		inside(t, &Display{Lang: &words.English, US: true}, &st, text+" (US)")
		other := english()
		for id := calc.None + 1; id < calc.NumIDs; id++ {
			if v := st.Value(id); v.Is() && v.Kind() == quantity.KindLength {
				other.Units[id] = quantity.KindLength.Unit("µm")
			}
		}
		inside(t, other, &st, text+" (µm)")
	}
}

// Sheets typed at random, from the least to the most that each box takes.
func TestDrawingsOfRandomSheets(t *testing.T) {
	random := rand.New(rand.NewPCG(1, 2))
	var st calc.State
	for range 1000 {
		s := calc.Start()
		for id := calc.None + 1; id < calc.NumFields; id++ {
			f := &calc.Fields[id]
			k := st.Value(id).Kind()
			switch n := random.IntN(8); {
			case n > 3 || k.Style == quantity.StyleList:
			case n == 0:
				s = s.Type(id, "", "")
			case f.Words != nil:
				s = s.Type(id, f.Words[random.IntN(len(f.Words))], "")
			default:
				low := math.Max(f.Low, 1e-7)
				x := low * math.Pow(math.Max(f.High, low)/low, random.Float64())
				if k.Style == quantity.StyleCount {
					x = math.Ceil(x)
				}
				s = s.Type(id, strconv.FormatFloat(k.Unit(f.Unit).FromSI(x), 'g', 1+random.IntN(8), 64), f.Unit)
			}
		}
		st.Work(&s)
		inside(t, &Display{Lang: &words.English, US: random.IntN(4) == 0}, &st, calc.PlanText(&s))
	}
}

func FuzzDrawings(f *testing.F) {
	for _, text := range extremes {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		s, _ := calc.ParsePlan(text)
		var st calc.State
		st.Work(&s)
		inside(t, english(), &st, text)
	})
}

func TestDrawingsTable(t *testing.T) {
	seen := map[string]bool{}
	for _, g := range Drawings {
		assert.NotEmpty(t, g.Shapes, g.Key)
		for _, s := range g.Shapes {
			assert.False(t, seen[s.ID], "%s twice", s.ID)
			seen[s.ID] = true
			assert.True(t, strings.HasPrefix(s.ID, "draw."+g.Key+"."), s.ID)
			assert.Contains(t, []string{"path", "text"}, s.Tag, s.ID)
			assert.Equal(t, s.Tag == "text", s.Anchor != "", s.ID)
			assert.NotEmpty(t, s.Class, s.ID)
		}
	}
}

// Behind every step of a path are as many places as it takes, and a text has a place and a key for each that is said at times.
func TestDrawingSteps(t *testing.T) {
	keys := func(s *Shape) int {
		return 1 + strings.Count(s.says, or) + strings.Count(s.says, and) + strings.Count(s.says, semi)
	}
	for _, g := range Drawings {
		for i := range g.Shapes {
			s := &g.Shapes[i]
			if s.Tag == "text" {
				assert.GreaterOrEqual(t, len(s.at), 2, s.ID)
				assert.LessOrEqual(t, len(s.at)-3, keys(s), s.ID)
				assert.NotEmpty(t, s.says, s.ID)
				continue
			}
			assert.NotEmpty(t, string(s.says)+strings.Repeat("x", len(s.at)), s.ID)
			for at := s.at; len(at) > 0; {
				require.True(t, at[0] >= 0 && at[0] < numSteps, "step %d of %s", at[0], s.ID)
				n := int(places[at[0]])
				require.Greater(t, len(at), n, "%s is short of places", s.ID)
				at = at[1+n:]
			}
		}
		for i := range g.said {
			assert.LessOrEqual(t, len(g.said[i].at), keys(&g.said[i]), g.Key)
		}
	}
	assert.LessOrEqual(t, numSteps, len(places))
}

// A place is a number and what is added to it, in tenths.
func TestPlace(t *testing.T) {
	s := sketch{n: numbers{3: 100, 5: math.NaN(), mostPlaces - 1: -7.5}}
	for _, c := range []struct {
		place place
		want  float64
	}{
		{0, 0}, {14 * u, 14}, {2.6 * u, 2.6}, {-3 * u, -3}, {3, 100}, {3 + 14*u, 114}, {3 - 14*u, 86}, {3 - 0.1*u, 99.9}, {3 + 2400*u, 2500}, {mostPlaces - 1, -7.5}, {mostPlaces - 1 - 0.5*u, -8},
	} {
		assert.InDelta(t, c.want, s.at(c.place), 1e-9, "%d", c.place)
	}
	assert.True(t, math.IsNaN(s.at(5+u)))
}

func TestDrawingsAllocateNothing(t *testing.T) {
	for _, c := range []struct {
		text  string
		names float64 // of numbers that are needed: the key of a name is put together
	}{
		{"", 0}, {extremes[2], 0}, {"clamp.hole-pitch=5 mm&clamp.measured=88 mm", 0}, {"fibre.diameter=", 1}, {"clamp.coiled=", 3},
	} {
		st, _ := draw(t, c.text)
		d, b := english(), make([]byte, 0, 1<<16)
		assert.LessOrEqual(t, testing.AllocsPerRun(20, func() { b = drawings(d, b[:0], st) }), c.names, c.text)
	}
}

func BenchmarkDrawings(b *testing.B) {
	st, _ := draw(b, "")
	d, out := english(), make([]byte, 0, 1<<16)
	b.ReportAllocs()
	for b.Loop() {
		out = drawings(d, out[:0], st)
	}
}

// half is how far a place in a drawing may be off: two ends, each rounded to a tenth.
const half = 0.101

// Strands are in proportion, touch but never overlap, and lie in the circle that holds them.
func TestFibreProportions(t *testing.T) {
	for _, c := range []struct {
		text      string
		n, others int // circles
	}{
		{"", 1, 0},
		{"fibre.strands=2&yarn.strands=1&yarn.diameter=0.25 mm", 2, 1},
		{"fibre.strands=3", 3, 0}, {"fibre.strands=4", 4, 0}, {"fibre.strands=5", 5, 0}, {"fibre.strands=6", 6, 0}, {"fibre.strands=7", 7, 0},
		{"fibre.strands=13&yarn.strands=4&yarn.diameter=0.3 mm", 13, 4},
		{"fibre.strands=19", 19, 0},
		{"fibre.strands=50&yarn.strands=30&yarn.diameter=0.6 mm", 19, 19},
		{"yarn.strands=2", 1, 0}, // the companion's size is unknown
	} {
		st, at := draw(t, c.text)
		p := &st.Plan
		fibre, yarn := follow(t, at["draw.fibre.strands d"]).circles, follow(t, at["draw.fibre.yarn d"]).circles
		require.Len(t, fibre, c.n, c.text)
		require.Len(t, yarn, c.others, c.text)
		all := append(append([]round(nil), fibre...), yarn...)
		for i, a := range all {
			for _, b := range all[:i] {
				assert.GreaterOrEqual(t, math.Hypot(a.x-b.x, a.y-b.y), a.r+b.r-2*half, c.text)
			}
		}
		k := fibre[0].r / float64(p.Fibre.Diameter)
		if c.others > 0 {
			assert.InDelta(t, float64(p.Yarn.Diameter)*k, yarn[0].r, half+half*float64(p.Yarn.Diameter/p.Fibre.Diameter), c.text)
		}
		around := follow(t, at["draw.fibre.envelope d"]).circles
		if len(all) == 1 {
			assert.Empty(t, around, "one strand is its own circle")
			continue
		}
		require.Len(t, around, 1, c.text)
		if most := float64(st.Out.Thick); c.others > 0 || p.Yarn.Strands == 0 {
			assert.InEpsilon(t, most/float64(p.Fibre.Diameter), around[0].r/fibre[0].r, half/fibre[0].r, c.text)
		}
		for _, a := range all {
			assert.LessOrEqual(t, math.Hypot(a.x-around[0].x, a.y-around[0].y)+a.r, around[0].r+2*half, c.text)
		}
	}
}

// The bar under the fibre is as long as it says, at the fibre's scale.
func TestFibreScale(t *testing.T) {
	for _, text := range []string{"", "fibre.diameter=1 µm", "fibre.diameter=3 mm", "fibre.diameter=.022 in&fibre.strands=3"} {
		st, at := draw(t, text)
		r, err := quantity.KindLength.Parse(at["draw.fibre.scale-label t"], "mm")
		require.NoError(t, err, text)
		k := 2 * follow(t, at["draw.fibre.strands d"]).circles[0].r / float64(st.Plan.Fibre.Diameter)
		length := 0.0
		for _, s := range follow(t, at["draw.fibre.dims d"]).strokes {
			if math.Abs(s[0].x-8) < 1e-6 && s[0].y == s[1].y {
				length = s[1].x - s[0].x
			}
		}
		assert.InEpsilon(t, r.SI*k, length, 0.02, text)
		assert.Greater(t, length, 20.0, text)
	}
}

// Every height is as the plan's, from the tray to the hook.
func TestHangProportions(t *testing.T) {
	for _, text := range []string{"", "cut.ratio=1.2", "hang.stack=0&cut.tail=0", "clamp.coiled=1 m", "clamp.coiled=20 mm&hang.clearance=200 mm", "hang.mass=20 g"} {
		st, at := draw(t, text)
		p, o := &st.Plan, &st.Out
		fibre, coil := follow(t, at["draw.hang.fibre d"]), follow(t, at["draw.hang.coil d"])
		mass, ghost := follow(t, at["draw.hang.mass d"]), follow(t, at["draw.hang.ghost d"])
		_, tray := follow(t, at["draw.hang.beam d"]).box()
		hook := tray.y
		foot := follow(t, at["draw.hang.tray d"]).points[0].y
		k := (foot - hook) / float64(o.HookHeight)

		assert.InDelta(t, hook, fibre.strokes[0][0].y, half)
		assert.InDelta(t, float64(o.Length)*k, fibre.strokes[0][1].y-hook, half, "cut length in %q", text)
		require.Len(t, fibre.circles, 4, "a tie at each end")
		assert.InDelta(t, float64(o.Length-2*p.Tail)*k, fibre.circles[2].y-fibre.circles[0].y, half, "between the ties in %q", text)
		_, low := mass.box()
		assert.InDelta(t, float64(p.Clearance)*k, foot-low.y, half, "clearance in %q", text)
		assert.InDelta(t, float64(p.Stack)*k, low.y-fibre.strokes[0][1].y, 2*half, "stack in %q", text)
		_, risen := ghost.box()
		assert.InDelta(t, float64(o.Rise)*k, low.y-risen.y, half, "rise in %q", text)
		turns := coil.strokes[1 : len(coil.strokes)-1]
		assert.InDelta(t, float64(p.Coiled)*k, turns[len(turns)-1][1].y-turns[0][0].y, half, "coil in %q", text)
	}
}

// The block's volume is as the mass, whatever its shape.
func TestMassBlock(t *testing.T) {
	for _, id := range []string{"draw.hang.mass", "draw.thread.hang.mass"} {
		volume := func(text string) float64 {
			_, at := draw(t, text)
			tr := follow(t, at[id+" d"])
			low, high := tr.box()
			return (high.x - low.x) * (high.x - low.x) * (high.y - low.y)
		}
		of := volume("hang.mass=200 g")
		for _, c := range []struct {
			text  string
			times float64
		}{
			{"hang.mass=100 g", 0.5}, {"hang.mass=400 g", 2}, {"hang.mass=1600 g", 8}, {"hang.mass=50 g", 0.25},
			{"hang.mass=200 g&hang.stack=10 mm", 1},
		} {
			assert.InEpsilon(t, c.times, volume(c.text)/of, 0.06, "%s in %q", id, c.text)
		}
	}
}

// The five lengths are at one scale and from one zero, and the given one has the mark.
func TestCutProportions(t *testing.T) {
	ids := [...]string{"precursor", "coiled", "first", "second", "finished"}
	for _, c := range []struct {
		text  string
		given int
	}{
		{"", 1}, {"cut.precursor=600 mm", 0}, {"clamp.first=90 mm&cut.ratio=1.5", 2}, {"clamp.second=150 mm&cut.tail=0", 3}, {"clamp.finished=110 mm&clamp.second-stretch=-30", 4},
		{"clamp.measured=92 mm", 1}, {"clamp.stages=one", 1}, {"clamp.coiled=1 m&cut.ratio=100", 1},
	} {
		st, at := draw(t, c.text)
		p := &st.Plan
		lengths := [...]float64{float64(p.Precursor), float64(p.Piece()), float64(p.First), float64(p.Second), float64(p.Finished)}
		ties := follow(t, at["draw.cut.precursor d"])
		require.Len(t, ties.circles, 4, c.text)
		zero := ties.circles[0].x
		k := (ties.circles[2].x - zero) / lengths[0]
		end := ties.strokes[0]
		assert.InDelta(t, float64(p.Precursor+2*p.Tail)*k, end[1].x-end[0].x, 2*half, "with tails in %q", c.text)
		given := follow(t, at["draw.cut.given d"])
		y, err := strconv.ParseFloat(at["draw.cut.letter-"+ids[c.given]+" y"], 64)
		require.NoError(t, err)
		require.NotEmpty(t, given.circles, c.text)
		assert.InDelta(t, y-5, given.circles[0].y, half, "the given one in %q", c.text)
		shown := 1
		for i := 1; i < len(ids); i++ {
			path := at["draw.cut."+ids[i]+" d"]
			label := at["draw.cut.label-"+ids[i]+" t"]
			if !(lengths[i] > 0) {
				assert.Empty(t, path+label+at["draw.cut.letter-"+ids[i]+" t"], "%s in %q", ids[i], c.text)
				continue
			}
			shown++
			assert.NotEmpty(t, label)
			tr := follow(t, path)
			// Each stroke is the near half of a turn: the coil ends as far behind the last one as that is long.
			last := tr.strokes[len(tr.strokes)-1]
			assert.InDelta(t, zero, tr.strokes[0][0].x, half, c.text)
			assert.InDelta(t, lengths[i]*k, 2*last[1].x-last[0].x-zero, 3*half+lengths[i]*half/lengths[0], "%s in %q", ids[i], c.text)
		}
		assert.Len(t, follow(t, at["draw.cut.worked d"]).circles, shown-1, c.text)
	}
}

// Jaws, moves, holes and the numbers of the rule are all at the scale of the gaps.
func TestClampProportions(t *testing.T) {
	for _, text := range []string{
		"", "clamp.zero=150 mm", "clamp.first-stretch=60&clamp.second-stretch=-30", "clamp.stages=one", "clamp.measured=92 mm&clamp.zero=12 mm",
		"clamp.hole-pitch=10 mm&clamp.hole-offset=2 mm", "clamp.hole-pitch=10 mm&clamp.stages=one", "clamp.coiled=3 1/4 in&clamp.zero=1 in", "clamp.coiled=100 m", "clamp.coiled=0.1 mm",
	} {
		st, at := draw(t, text)
		p, o := &st.Plan, &st.Out
		gaps := []float64{float64(p.First), float64(p.Second)}
		if p.Stages == calc.StagesOne {
			gaps = gaps[:1]
			for _, id := range []string{"second d", "second-coil d", "letter-second t", "second-label t", "second-move t"} {
				assert.Empty(t, at["draw.clamp."+id], "%s in %q", id, text)
			}
		}
		fixed := follow(t, at["draw.clamp.fixed d"])
		_, face := fixed.box()
		most := longest(append(gaps, float64(p.Piece()))...)
		k := 250 / most // from the fixed jaw's face to that of the farthest
		names := [...]string{"first", "second"}
		from := float64(p.Piece())
		moves := follow(t, at["draw.clamp.moves d"])
		for i, gap := range gaps {
			jaw := follow(t, at["draw.clamp."+names[i]+" d"])
			low, _ := jaw.box()
			assert.InDelta(t, gap*k, low.x-face.x, half, "%s jaw in %q", names[i], text)
			coil := follow(t, at["draw.clamp."+names[i]+"-coil d"])
			last := coil.strokes[len(coil.strokes)-1]
			assert.InDelta(t, gap*k, 2*last[1].x-last[0].x-face.x, 4*half, "%s coil in %q", names[i], text)
			move := moves.strokes[4*i+1] // a tick, the shaft, and two of the head
			assert.InDelta(t, (gap-from)*k, move[1].x-move[0].x, half, "%s move in %q", names[i], text)
			from = gap
		}
		nearest := follow(t, at["draw.clamp.nearest d"])
		if p.HolePitch > 0 {
			for i := range gaps {
				c := nearest.circles[i*len(nearest.circles)/len(gaps)]
				assert.InDelta(t, float64(o.HoleGap[i])*k, c.x-face.x, half, "hole in %q", text)
			}
		} else {
			assert.Empty(t, nearest.circles)
			assert.Empty(t, at["draw.clamp.holes d"]+at["draw.clamp.holes-label t"])
		}
		unit, numbers := english().Unit(st, calc.ClampFirst), 0
		if text == "clamp.coiled=3 1/4 in&clamp.zero=1 in" {
			assert.Equal(t, "mm", unit.Symbol, "the rule keeps to the unit of the gaps")
		}
		for i := range mostNumbers {
			id := "draw.clamp.number-" + strconv.Itoa(i+1)
			if at[id+" t"] == "" {
				continue
			}
			numbers++
			n, err := strconv.ParseFloat(at[id+" t"], 64)
			require.NoError(t, err)
			x, err := strconv.ParseFloat(at[id+" x"], 64)
			require.NoError(t, err)
			assert.InDelta(t, (unit.ToSI(n)-float64(p.Zero))*k, x-face.x, half, "number %g in %q", n, text)
		}
		assert.GreaterOrEqual(t, numbers, 3, "numbers along the rule in %q", text)
	}
}

// What is not known is not drawn, and the drawing says what it needs.
func TestUnknownIsNotDrawn(t *testing.T) {
	for _, c := range []struct {
		text  string
		empty []string
		says  map[string]string
	}{
		{"fibre.diameter=",
			[]string{"fibre.strands d", "fibre.dims d", "fibre.envelope d", "fibre.scale-label t", "hang.mass d", "hang.mass-label t", "hang.add-label t", "thread.hang.mass d"},
			map[string]string{"fibre.strand-label t": "needs fibre diameter", "hang.cut-label t": "488 mm"}},
		{"clamp.coiled=",
			[]string{"hang.fibre d", "hang.mass d", "hang.ghost d", "hang.coil d", "hang.dims d", "hang.cut-label t", "hang.height-label t", "cut.precursor d", "cut.coiled d", "cut.given d", "cut.worked d", "cut.label-coiled t",
				"clamp.rule d", "clamp.first d", "clamp.fixed d", "clamp.moves d", "clamp.first-label t", "clamp.number-1 t", "thread.cut.ends d", "thread.cut.label t", "thread.clamp.jaws d"},
			map[string]string{"hang.note t": "needs length as coiled", "cut.note t": "needs length as coiled", "clamp.note t": "needs length as coiled", "hang.mass-label t": "368 g in all"}},
		{"cut.ratio=",
			[]string{"cut.precursor d", "cut.label-precursor t", "cut.ends d", "cut.cut-label t", "hang.fibre d", "hang.coil d"},
			map[string]string{"cut.label-coiled t": "85 mm as coiled", "hang.note t": "needs ratio of precursor to coil"}},
		{"clamp.second-stretch=",
			[]string{"cut.second d", "cut.finished d", "cut.label-second t", "cut.label-finished t", "clamp.second d", "clamp.second-coil d", "clamp.second-label t", "clamp.second-move t"},
			map[string]string{"clamp.first-label t": "100.3 mm jaw to jaw", "clamp.first-move t": "+15.30 mm"}},
		{"hang.stack=", []string{"hang.fibre d", "hang.dims d"}, map[string]string{"hang.note t": "needs height of the hanging stack", "hang.mass-label t": "368 g in all"}},
		{"hang.stress=", []string{"hang.mass d", "hang.mass-label t", "thread.hang.mass d"}, map[string]string{"hang.cut-label t": "488 mm"}},
		{"clamp.zero=", []string{"clamp.rule d", "clamp.number-1 t"}, map[string]string{"clamp.first-label t": "100.3 mm jaw to jaw"}},
		{"twist.bias=", []string{"twist.angle d", "twist.hand t", "twist.bias t", "twist.turns t", "twist.full t", "coil.far d", "coil.near d", "coil.ends d", "coil.hand t", "coil.head-coiled t", "coil.pitch-last t", "thread.twist.slants d", "thread.coil.near d"},
			map[string]string{"twist.note t": "needs bias angle", "coil.note t": "needs bias angle", "twist.slow t": "slow down from 140 turns", "twist:desc t": "needs bias angle; slow down from 140 turns; first coil 140 turns to 225 turns.", "coil:desc t": "needs bias angle"}},
		{"coil.outside=", []string{"coil.near d", "coil.dims d", "coil.travel t", "twist.full t", "thread.coil.near d"},
			map[string]string{"coil.note t": "needs outside diameter of the coil", "twist.note t": "needs outside diameter of the coil", "twist.turns t": "169.3 turns of twist"}},
		{"fibre.polymer=other", []string{"twist.slow t", "twist.onset t"}, map[string]string{"twist.full t": "281.4 turns to full coiling"}},
		{"coil.outside=0.2 mm", []string{"coil.near d", "coil.gap-solid t"}, map[string]string{"coil.note t": "No coil has these numbers.", "coil:desc t": "No coil has these numbers."}},
		{"coil.index=2&coil.pitch=4 mm", []string{"coil.head-last t", "coil.travel t"}, map[string]string{"coil.pitch-last t": "too long", "coil.length-last t": "120.7 mm"}},
		{"yarn.strands=2", []string{"fibre.yarn d", "fibre.yarn-label t", "fibre.envelope d"}, map[string]string{"fibre.strand-label t": "0.52 mm"}},
	} {
		_, at := draw(t, c.text)
		for _, id := range c.empty {
			value, ok := at["draw."+id]
			assert.True(t, ok, id)
			assert.Empty(t, value, "%s in %q", id, c.text)
		}
		for id, want := range c.says {
			assert.Equal(t, want, at["draw."+id], "%s in %q", id, c.text)
		}
	}
}

// The words of the start plan, whose numbers are those of the project's worked example.
func TestStartDrawings(t *testing.T) {
	_, at := draw(t, "")
	for id, want := range map[string]string{
		"fibre.strand-label": "0.52 mm", "fibre.yarn-label": "", "fibre.bundle-label": "",
		"hang.height-label": "hook 638.0 mm above the tray", "hang.cut-label": "488 mm", "hang.coil-label": "85 mm", "hang.rise-label": "rises 323.0 mm",
		"hang.clear-label": "30 mm", "hang.add-label": "add 333 g to the 35 g hook", "hang.mass-label": "368 g in all",
		"cut.letter-precursor": "P", "cut.letter-coiled": "L", "cut.letter-first": "1", "cut.letter-second": "2", "cut.letter-finished": "f",
		"cut.label-precursor": "408.0 mm tie to tie", "cut.cut-label": "cut 488 mm", "cut.label-coiled": "85 mm as coiled", "cut.label-first": "100.3 mm first gap",
		"cut.label-second": "120.7 mm second gap", "cut.label-finished": "115.3 mm finished, released",
		"clamp.first-label": "100.3 mm jaw to jaw", "clamp.first-move": "+15.30 mm", "clamp.second-label": "120.7 mm jaw to jaw", "clamp.second-move": "+20.40 mm",
		"clamp.number-1": "0", "clamp.number-2": "20", "clamp.number-7": "120", "clamp.number-8": "", "clamp.holes-label": "",
		"thread.cut.label": "488 mm",
		"twist.hand":       "Z", "twist.bias": "40 °", "twist.thick": "0.5583 mm thick", "twist.rises": "lines rise to the right",
		"twist.slow": "slow down from 140 turns", "twist.onset": "first coil 140 turns to 225 turns", "twist.turns": "169.3 turns of twist",
		"twist.full": "281.4 turns to full coiling", "twist.note": "Slant and turns to scale.",
		"coil.hand": "Z", "coil.head-coiled": "as coiled", "coil.head-last": "last gap", "coil.head-solid": "closed",
		"coil.length-coiled": "85.00 mm", "coil.length-last": "120.7 mm", "coil.length-solid": "84.82 mm", "coil.pitch-coiled": "0.5764 mm",
		"coil.pitch-last": "0.8186 mm", "coil.pitch-solid": "0.5752 mm", "coil.gap-last": "0.211 mm", "coil.gap-solid": "turns touch",
		"coil.travel": "29.73 %", "coil.note": "Outside 1.30 mm, index 1.329. To scale.",
	} {
		assert.Equal(t, want, at["draw."+id+" t"], id)
	}
	assert.Contains(t, at["draw.hang:desc t"], "638.0 mm")
	assert.Contains(t, at["draw.cut:desc t"], "cut to 488 mm")
	assert.Contains(t, at["draw.clamp:desc t"], "a gap of 120.7 mm")
	assert.Equal(t, "A fibre 0.5583 mm thick; lines that ran straight along it stand at 40 ° to its axis, direction Z; slow down from 140 turns; "+
		"first coil 140 turns to 225 turns; 169.3 turns of twist; 281.4 turns to full coiling.", at["draw.twist:desc t"])
	assert.Contains(t, at["draw.coil:desc t"], "At the last gap: length 120.7 mm, pitch 0.8186 mm, gap 0.211 mm.")
	assert.Contains(t, at["draw.coil:desc t"], "contract by 29.73 %")
}

// The thread enters at the top of each drawing and leaves at its foot at the same place.
func TestThreadGoesOn(t *testing.T) {
	for _, text := range extremes {
		_, at := draw(t, text)
		for _, id := range []string{"fibre", "hang", "cut", "twist", "coil", "clamp", "heat"} {
			tr := follow(t, at["draw.thread."+id+".line d"])
			starts, ends := false, false
			for _, s := range tr.strokes {
				starts = starts || s[0] == point{14, 0}
				ends = ends || s[1] == point{14, 2400}
			}
			assert.True(t, starts && ends, "%s in %q", id, text)
		}
	}
}

// A bundle of strands fits in the circle that the craft's own envelope says, and up to seven fill it.
func TestBundleFitsItsEnvelope(t *testing.T) {
	for n := 1; n <= mostStrands; n++ {
		var u bundle
		u.add(n, 1, 0, 0)
		require.Equal(t, n, u.n)
		most := 0.0
		for i := range n {
			most = math.Max(most, math.Hypot(u.x[i], u.y[i])+u.r[i])
			for j := range i {
				assert.GreaterOrEqual(t, math.Hypot(u.x[i]-u.x[j], u.y[i]-u.y[j]), 1-1e-12, "strands %d and %d of %d", i, j, n)
			}
		}
		envelope := float64(craft.Envelope(quantity.Count(n), 1))
		assert.LessOrEqual(t, 2*most, envelope+1e-12, "%d strands", n)
		if n <= 7 {
			assert.InDelta(t, envelope, 2*most, 1e-12, "%d strands", n)
		}
	}
}

// From a milligram to a thousand tons, as the library has it.
func TestCubeRoot(t *testing.T) {
	for _, x := range []float64{1e-6, 1e-3, 0.2, 0.368, 1, 8, 12, 1000, 1e6} {
		assert.InEpsilon(t, math.Cbrt(x), cubeRoot(x), 1e-14, "%g", x)
	}
	assert.True(t, math.IsNaN(cubeRoot(math.NaN())))
}

func TestAbove(t *testing.T) {
	for _, c := range []struct {
		x, want float64
		leading int
	}{
		{1, 1, 1}, {1.1, 2, 2}, {2, 2, 2}, {2.01, 5, 5}, {5, 5, 5}, {7, 10, 1}, {10, 10, 1}, {0.03, 0.05, 5}, {0.1, 0.1, 1}, {1234, 2000, 2}, {4e-7, 5e-7, 5}, {0.2, 0.2, 2}, {1e9, 1e9, 1},
	} {
		got, leading := above(c.x)
		assert.InEpsilon(t, c.want, got, 1e-9, "above %g", c.x)
		assert.Equal(t, c.leading, leading, "above %g", c.x)
	}
}
