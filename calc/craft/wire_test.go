package craft

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"twistbench/calc/quantity"
)

const footOhms = quantity.ResistancePerLength(14 / 0.3048) // silver-coated nylon yarn, four plies of 234 dtex: 14 Ω/ft, a trade data sheet

func TestWireRows(t *testing.T) {
	perKilometre := func(n quantity.Gauge) float64 {
		return float64(WirePerLength(CopperResistivity, Area(GaugeDiameter(n)))) * 1000
	}
	for _, row := range []struct {
		name      string
		got, want float64
		rel       float64
	}{
		// handbook W01 to W03: ASTM B258's formula, computed with GNU Units 2.22
		{"W01 gauge 36", float64(GaugeDiameter(36)) / mm, 0.127, 1e-12},
		{"W02 gauge 24", float64(GaugeDiameter(24)) / mm, 0.510559227063, 1e-11},
		{"W03 gauge 30", float64(GaugeDiameter(30)) / mm, 0.254639002977, 1e-11},
		{"gauge 4/0", float64(GaugeDiameter(-3)) / mm, 0.46 * 25.4, 1e-12}, // 0.46 in, by ASTM B258
		// W04, W05: IEC 60028 with that, and 2.567 and 10.32 Ω per 100 ft of a wire table, to its 3e-3
		{"W04 gauge 24, Ω/km", perKilometre(24), 84.2150801529, 1e-10},
		{"W05 gauge 30, Ω/km", perKilometre(30), 338.557371889, 1e-10},
		{"W04 by the table", perKilometre(24), 2.567 / 0.03048, 3e-3},
		{"W05 by the table", perKilometre(30), 10.32 / 0.03048, 3e-3},
		// W06 to W08: IEC 60028's coefficient
		{"W06 10 Ω at 80 °C", float64(OhmsAt(10, CopperCoefficient, 80+ice, CopperTemperature)), 12.358, 1e-9},
		{"W07 84.2 Ω at 5 °C", float64(OhmsAt(84.2, CopperCoefficient, 5+ice, CopperTemperature)), 79.23641, 1e-9},
		{"W08 10 Ω become 13.93", float64(TemperatureOfOhms(10, 13.93, CopperCoefficient, CopperTemperature) - ice), 120, 1e-9},
		// model M13 of coiled actuators, to the digits given: 45.93 Ω/m, 0.5 m, 12 V
		{"M13 ohms", float64(YarnOhms(45.93, 0.5, 1)), 22.97, 3e-4},
		{"M13 current", float64(Current(12, YarnOhms(45.93, 0.5, 1))), 0.5225, 1e-4},
		{"M13 power", float64(Watts(12, YarnOhms(45.93, 0.5, 1))), 6.27, 1e-4},
		// the same table: 14 Ω/ft is 45.9 Ω/m, and 5.2 times that per metre of coil, 2.4 Ω/cm, is the most
		{"trade yarn", float64(footOhms), 45.9, 1e-3},
		{"per cm of coil, no turns touching", float64(OhmsPer(YarnOhms(footOhms, 0.52, 1), 0.1)) / 100, 2.39, 1e-3},
		// by hand: 5.2 times as long and five times as thin as the bar of its volume
		{"per cm of coil, all shunted", float64(OhmsPer(ShuntedOhms(YarnOhms(footOhms, 0.52, 1), 0.1, 0.52), 0.1)) / 100, 14 / 30.48 / 5.2, 1e-12},
		// craft, errors of readings: 0.4 Ω of leads on 3.5 Ω are 11 %
		{"leads taken off", 3.5/float64(YarnPerLength(3.5, 0.4, 1)) - 1, 0.129, 2e-3},
		{"leads, as a share of the reading", 1 - float64(YarnPerLength(3.5, 0.4, 1))/3.5, 0.114, 3e-3},
		// by hand: five turns of 10 mm around and 30 mm along
		{"wrapped", float64(WrapLength(150*mm, 10*mm/math.Pi, 30*mm)), 5 * math.Sqrt(1000) * mm, 1e-12},
		{"strands at most 10 Ω: 22.08 over 10", float64(StrandsForOhms(46, 0.48, 10)), 3, 1e-12},
		{"two strands of 0.8 m for 20 Ω, each 40 Ω", float64(PerLengthForOhms(20, 2, 0.8)), 50, 1e-12},
		{"yarn for 20 Ω in two strands", float64(YarnForOhms(20, 2, 50)), 0.8, 1e-12},
		{"three muscles in each of two rows", float64(Wired(20, 3, 2)), 30, 1e-12},
		{"the meter reads", float64(MeterReading(50, 0.4, 0.3)), 20.3, 1e-12},
		{"leads there and back", float64(LeadOhms(0.0842, 2)), 0.3368, 1e-12},
		{"20 Ω became 23", float64(OhmsDrift(20, 23)), 0.15, 1e-12},
		{"rating of 0.5 mm²", float64(LeadRating(0.5e-6)), 3, 1e-12},
	} {
		assert.InEpsilon(t, row.want, row.got, row.rel, row.name)
	}
	// Reported coils of silver-coated yarn, 0.3 to 1.5 Ω/cm (actuators 3, weak), lie between no shunt and all of it.
	most := OhmsPer(YarnOhms(footOhms, 0.52, 1), 0.1) / 100
	least := OhmsPer(ShuntedOhms(YarnOhms(footOhms, 0.52, 1), 0.1, 0.52), 0.1) / 100
	assert.Less(t, float64(least), 0.3)
	assert.Greater(t, float64(most), 1.5)
}

// There and back, over all gauges; each three thinner halve the section, nearly: 92^(6/39) is 2.005.
func TestGauges(t *testing.T) {
	for n := quantity.Gauge(thickestGauge); n <= thinnestGauge; n++ {
		assert.InDelta(t, float64(n), float64(GaugeOf(GaugeDiameter(n))), 1e-12)
		if n+3 <= thinnestGauge {
			assert.InEpsilon(t, 2.005, float64(Area(GaugeDiameter(n))/Area(GaugeDiameter(n+3))), 1e-4)
		}
	}
	isNaN(t, GaugeDiameter(-4), "thicker than 4/0")
	isNaN(t, GaugeDiameter(51), "thinner than 50")
	isNaN(t, GaugeDiameter(quantity.Gauge(nan)), "unknown")
	assert.InDelta(t, math.Log(92)/39, gaugeStep, 1e-16)
}

// A coil whose turns touch, as a net of equal resistors: eight to a turn, each node joined to the next along the yarn and to the one a turn on,
// where they touch, by as much or more. That is a conductor that fills its volume evenly at best. It has no less than the bound, no more
// than the yarn alone, and the more the better the turns touch.
func TestShuntIsBound(t *testing.T) {
	const turns, around = 6, 8
	last := 0.0
	for _, contact := range []float64{1, 1.5, 3, 10, 100, 1e6} {
		nodes := turns*around + 1
		g := make([][]float64, nodes)
		for i := range g {
			g[i] = make([]float64, nodes)
		}
		join := func(i, j int, r float64) {
			g[i][i] += 1 / r
			g[j][j] += 1 / r
			g[i][j] -= 1 / r
			g[j][i] -= 1 / r
		}
		for i := 0; i+1 < nodes; i++ {
			join(i, i+1, 1)
			if i+around < nodes {
				join(i, i+around, contact)
			}
		}
		yarn := float64(nodes - 1)
		r := between(g)
		assert.LessOrEqual(t, r, yarn)
		assert.Greater(t, r, last)
		assert.GreaterOrEqual(t, r, float64(ShuntedOhms(quantity.Resistance(yarn), 1, around)))
		last = r
	}
	assert.InEpsilon(t, turns*around, last, 1e-3, "hardly touching")
	assert.InDelta(t, 22, float64(ShuntedOhms(22, 0.1, 0.1)), 1e-12, "a straight yarn has nothing to shunt")
}

// between returns the resistance between the first and the last node of a net of conductances, by elimination with the last one held at 0.
func between(g [][]float64) float64 {
	n := len(g) - 1
	b := make([]float64, n)
	b[0] = 1
	for i := range n {
		for j := i + 1; j < n; j++ {
			f := g[j][i] / g[i][i]
			for k := i; k < n; k++ {
				g[j][k] -= f * g[i][k]
			}
			b[j] -= f * b[i]
		}
	}
	for i := n - 1; i >= 0; i-- {
		for k := i + 1; k < n; k++ {
			b[i] -= g[i][k] * b[k]
		}
		b[i] /= g[i][i]
	}
	return b[0]
}

func TestWireUnknown(t *testing.T) {
	isNaN(t, YarnPerLength(0.4, 0.4, 1), "all of it leads")
	isNaN(t, YarnPerLength(0.3, 0.4, 1), "less than the leads")
	isNaN(t, YarnPerLength(10, 0.4, 0), "no length")
	isNaN(t, YarnPerLength(10, 0.4, -1), "a negative length")
	isNaN(t, YarnForOhms(10, 1, 0), "a yarn of 0 Ω/m")
	isNaN(t, StrandsForOhms(46, 0.5, 0), "0 Ω wanted")
	isNaN(t, OhmsPer(10, 0), "no length")
	isNaN(t, TemperatureOfOhms(10, 12, 0, 300), "no coefficient")
	isNaN(t, TemperatureOfOhms(10, 1, 0.002, 293), "colder than there is")
	isNaN(t, WirePerLength(CopperResistivity, 0), "no section")
}
