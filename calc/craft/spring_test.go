package craft

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"twistbench/calc/quantity"
)

const (
	inches = 0.0254              // m, by definition
	psi    = 6894.75729316836134 // Pa: handbook U08 with more of its digits
	lbf    = 4.4482216152605     // N, by definition
)

// freeRate is SteepRate with ends that are free to turn, and freeTurn how far they turn then (rad) per newton: S09, S09c, S10 and
// S10c, which SteepRate is checked beside.
func freeRate(g, e quantity.Stress, t quantity.Length, b quantity.Angle, l, d quantity.Length) quantity.Stiffness {
	sin, cos := math.Sincos(float64(b))
	return quantity.Stiffness(4 / (float64(l) * float64(d*d) * (cos*cos/(2*bending(g, t)) + sin*sin/bending(e, t))))
}

func freeTurn(g, e quantity.Stress, t quantity.Length, b quantity.Angle, l, d quantity.Length) float64 {
	sin, cos := math.Sincos(float64(b))
	return float64(l*d) / 2 * sin * cos * (1/(2*bending(g, t)) - 1/bending(e, t))
}

// lowIndex returns what a close-wound rate is divided by at a low index c and a pitch angle b (rad), with a Poisson's ratio v. It was
// recalled and does not agree with SteepRate, which is used instead: it says how far off both may be (M10).
func lowIndex(c quantity.Number, b quantity.Angle, v quantity.Number) quantity.Number {
	tan := quantity.Number(math.Tan(float64(b)))
	return 1 - 3/(16*c*c) + (3+v)/(2*(1+v))*tan*tan
}

// bergstrasserFactor is another factor like WahlFactor, up to 2 % under the first from an index of 3 on, which that is checked beside (S08).
func bergstrasserFactor(c quantity.Number) quantity.Number { return (4*c + 2) / (4*c - 3) }

// springForce is the way back from SpringStress, for S08: the pull (N) at a stress s (Pa).
func springForce(k quantity.Number, s quantity.Stress, d, t quantity.Length) quantity.Force {
	return quantity.Force(math.Pi * float64(t*t*t) * float64(s) / (8 * float64(k) * float64(d)))
}

// springWire returns the wire (m) of a spring of index c that carries f (N) at a stress s (Pa), with a factor k for its index (S05).
func springWire(k quantity.Number, f quantity.Force, c quantity.Number, s quantity.Stress) quantity.Length {
	return quantity.Length(math.Sqrt(8 * float64(k) * float64(f) * float64(c) / (math.Pi * float64(s))))
}

func TestSpringRows(t *testing.T) {
	// S09, S10: 20 turns of 0.5 mm at a radius of 0.6 mm, E 2240 and G 800 MPa, at 10° and 30°
	fibre := func(b quantity.Angle) quantity.Length {
		return quantity.Length(2 * math.Pi * 0.6 * mm * 20 / math.Cos(float64(b)))
	}
	held := func(b quantity.Angle) float64 {
		return float64(SteepRate(800*mPa, 2240*mPa, 0.5*mm, b, fibre(b), 1.2*mm)) / 1000
	}
	free := func(b quantity.Angle) float64 {
		return float64(freeRate(800*mPa, 2240*mPa, 0.5*mm, b, fibre(b), 1.2*mm)) / 1000
	}
	turn := func(b quantity.Angle) float64 {
		return freeTurn(800*mPa, 2240*mPa, 0.5*mm, b, fibre(b), 1.2*mm)
	}
	// S08: yield in shear is 0.45 of a strength of 201 ksi over the 0.145th power of the wire in inches
	yield := quantity.Stress(0.45 * 201e3 / math.Pow(0.037, 0.145) * psi)
	for _, row := range []struct {
		name      string
		got, want float64
		rel       float64
	}{
		// handbook S01 to S03: Wahl 1963
		{"S01", float64(WahlFactor(6)), 1.2525, 1e-9},
		{"S02", float64(WahlFactor(8)), 1.18401785714, 1e-11},
		{"S03", float64(WahlFactor(3)), 1.58, 1e-9},
		// Bhandari, Design of Machine Elements, ex. 10.7: 19.8657 N/mm; ex. 10.1: 6.625 mm and, by its free length, 30.338 mm
		{"S04 rate", float64(CloseRate(81370*mPa, 5*mm, 40*mm, 5)) / 1000, 19.8657226562, 1e-11},
		{"S05 wire", float64(springWire(WahlFactor(6), 1250, 6, 545*mPa)) / mm, 6.6250827167, 1e-10},
		{"S06 deflection", 1250 / float64(CloseRate(81370*mPa, 7*mm, 42*mm, 8)) / mm, 30.3376112642, 1e-11},
		// Shigley, Mechanical Engineering Design, ex. 10-1, from memory: 4.13 lbf/in, 6.46 lbf with rounded steps, recomputed 6.453
		{"S07 rate in lbf/in", float64(CloseRate(11.85e6*psi, 0.037*inches, 0.4*inches, 10.5)) / (lbf / inches), 4.13110265067, 1e-9},
		{"S08 load at yield in lbf", float64(springForce(bergstrasserFactor(0.4/0.037), yield, 0.4*inches, 0.037*inches)) / lbf, 6.45302922347, 1e-9},
		{"S08 of the page", float64(springForce(bergstrasserFactor(0.4/0.037), MusicWire(0.037*inches), 0.4*inches, 0.037*inches)) / lbf, 6.45302922347, 1e-9},
		{"S04 of the page", float64(SteelSpringRate(5*mm, 45*mm, 5)) / 1000, 19.8657226562, 1e-11},
		{"S08 as printed", float64(springForce(bergstrasserFactor(0.4/0.037), yield, 0.4*inches, 0.037*inches)) / lbf, 6.46, 0.03 / 6.46},
		// handbook S09 to S10c, by the compliances of a helix (Love 1927; Timoshenko), N/mm and rad/N
		{"S09 free", free(10 * deg), 0.179645171116, 1e-10},
		{"S09b held", held(10 * deg), 0.180245585202, 1e-10},
		{"S09c turn", turn(10 * deg), 0.45724045868, 1e-10},
		{"S10 free", free(30 * deg), 0.168663690418, 1e-10},
		{"S10b held", held(30 * deg), 0.172277912356, 1e-10},
		{"S10c turn", turn(30 * deg), 1.31657142857, 1e-10},
		{"S09b close", float64(CloseRate(800*mPa, 0.5*mm, 1.2*mm, 20)) / 1000, 0.180845, 3e-6},
		// model M10 of coiled actuators: to the digits given; its low index is that of D 0.7 and p 0.9, 22.26°
		{"M10 rate", float64(CloseRate(0.4e9, 0.5*mm, 0.7*mm, 100)), 91.11, 5e-5},
		{"M10 stress factor", float64(WahlFactor(5)), 1.3105, 1e-9},
		{"M10 low index", float64(lowIndex(1.4, PitchAngle(0.7*mm, 0.9*mm), 0.4)), 1.1077, 5e-5},
		// craft, test of stiffness: 150 to 250 g gave 133 to 151 mm, 54.5 N/m
		{"two masses", float64(RateOfMasses(250*g, 150*g, 151*mm, 133*mm)), 54.5, 5e-4},
		// by hand: 150 g on 49.03325 N/m are 30 mm
		{"a length without its mass", float64(FreeOfMass(133*mm, 150*g, 49.03325)) / mm, 103, 1e-12},
		// by hand: 40 g are 0.392266 N, over 8 mm
		{"an added mass", float64(RateOfAdded(40*g, 8*mm)), 49.03325, 1e-12},
		// scenario S5: 2 mm at 0.10 N/mm are 0.20 N, 11 % of 1.783 N
		{"S5 unequal length", float64(Unequal(100, 2*mm, 1.783)), 0.11, 0.02},
		// actuators 1.3: 0.4 to 0.6 at 40°, and cos⁴ as a lower guide, 0.34
		{"modulus after twist", float64(TwistedYoung(1, 40*deg)), 0.5, 0.1},
		{"the lower guide", math.Pow(math.Cos(40*deg), 4), 0.34, 0.015},
	} {
		assert.InEpsilon(t, row.want, row.got, row.rel, row.name)
	}
	isNaN(t, WahlFactor(1), "wire that fills its coil")
	isNaN(t, SteelSpringRate(0.5*mm, 1*mm, 10), "wire that fills its coil")
	isNaN(t, SteelSpringRate(0.5*mm, 0.4*mm, 10), "wire wider than its coil")
	for c := quantity.Number(3); c < 20; c++ {
		assert.InDelta(t, 0.99, float64(bergstrasserFactor(c)/WahlFactor(c)), 0.01, "the two factors")
	}
	assert.InEpsilon(t, 545*mPa, float64(SpringStress(WahlFactor(6), 1250, 6*6.6250827167*mm, 6.6250827167*mm)), 1e-9, "S05 the other way")
}

// The steep rate is what a helix has when its two by two compliance is inverted with no turn of its ends. It lies between that with free ends
// and, for a fibre that is softer in bending than in shear, the close one; all three are the same in a flat coil.
func TestSteepRateOfCompliances(t *testing.T) {
	for _, b := range []quantity.Angle{0.01, 0.1, 0.3, 0.6, 1.2} {
		for _, e := range []quantity.Stress{0.5e9, 1.25e9, 5e9} {
			const shear, thick, fibre, mean = 0.42e9, 0.56e-3, 0.354, 0.74e-3
			gj, ei := shear*math.Pi*math.Pow(thick, 4)/32, float64(e)*math.Pi*math.Pow(thick, 4)/64
			sin, cos := math.Sincos(float64(b))
			pull := fibre * mean * mean / 4 * (cos*cos/gj + sin*sin/ei)
			both := fibre * mean / 2 * sin * cos * (1/gj - 1/ei)
			turn := fibre * (sin*sin/gj + cos*cos/ei)
			held := float64(SteepRate(shear, e, thick, b, fibre, mean))
			assert.InEpsilon(t, 1/(pull-both*both/turn), held, 1e-12)
			assert.InEpsilon(t, 1/pull, float64(freeRate(shear, e, thick, b, fibre, mean)), 1e-12)
			assert.InDelta(t, both, freeTurn(shear, e, thick, b, fibre, mean), 1e-12*(math.Abs(both)+1))
			assert.GreaterOrEqual(t, held*(1+1e-12), float64(freeRate(shear, e, thick, b, fibre, mean)))
		}
	}
	turns := quantity.Turns(0.354 / (math.Pi * 0.74e-3))
	assert.InEpsilon(t, float64(CloseRate(0.42e9, 0.56*mm, 0.74*mm, turns)), float64(SteepRate(0.42e9, 1e9, 0.56*mm, 0, 0.354, 0.74*mm)), 1e-12)
}
