package craft

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"

	"twistbench/calc/quantity"
)

func TestCoilRows(t *testing.T) {
	c40 := Contraction(40 * deg)
	// M6: mean diameter 0.7, pitch 0.5, 300 mm of fibre; M7: index 1.4 at a pitch of one thickness, 40° on 0.5 mm
	l6, b6 := TurnLength(0.7*mm, 0.5*mm), PitchAngle(0.7*mm, 0.5*mm)
	full := func(thick quantity.Length, ratio quantity.Length) float64 {
		l, b := TurnLength(ratio*thick, thick), PitchAngle(ratio*thick, thick)
		return float64(FullCoiling(TwistForBias(40*deg, thick), b, l, c40))
	}
	for _, row := range []struct {
		name      string
		got, want float64
		rel       float64
	}{
		// helix geometry, computed for the handbook of outside figures, curvature and torsion also with sympy 1.11.1
		{"X01a fibre, radius 0.5, pitch 1, 100 turns", float64(FibreInCoils(100, TurnLength(1*mm, 1*mm))) / mm, 329.690830948, 1e-9},
		{"X01b curvature", Curvature(1*mm, PitchAngle(1*mm, 1*mm)) * mm, 1.8160006633, 1e-9},
		{"X01c torsion", Torsion(1*mm, PitchAngle(1*mm, 1*mm)) * mm, 0.578050964444, 1e-9},
		{"X01d pitch angle", float64(PitchAngle(1*mm, 1*mm)) / deg, 17.6567871514, 1e-7 / 17.7},
		{"X02a fibre, radius 1, pitch 0.9, 200 turns", float64(FibreInCoils(200, TurnLength(2*mm, 0.9*mm))) / mm, 1269.46315589, 1e-9},
		{"X02b curvature", Curvature(2*mm, PitchAngle(2*mm, 0.9*mm)) * mm, 0.979894966143, 1e-9},
		{"X02c torsion", Torsion(2*mm, PitchAngle(2*mm, 0.9*mm)) * mm, 0.140359614815, 1e-9},
		{"X02d pitch angle", float64(PitchAngle(2*mm, 0.9*mm)) / deg, 8.15156762997, 1e-7 / 8.2},
		// Fuller 1971, from memory: 1 − sin of the pitch angle in each coil
		{"X03 writhe per coil", float64(Writhe(1, PitchAngle(2*mm, 2.28689242819*mm))), 0.657979856674, 1e-9},
		{"X04 writhe per coil", float64(Writhe(1, PitchAngle(1*mm, 1*mm))), 0.696685528947, 1e-9},
		{"X05 60 turns in, 40 coils at 20°", float64(TwistLeft(60, Writhe(40, 20*deg))), 33.680805733, 1e-6 / 33.7},
		// models M6, M7 and M12 of coiled actuators, to the digits given
		{"M6 turn", float64(l6) / mm, 2.25524, 3e-6},
		{"M6 coils", float64(0.3 / l6), 133.02, 5e-5},
		{"M6 length", float64(CoilLength(quantity.Turns(0.3/l6), 0.5*mm)) / mm, 66.51, 1e-4},
		{"M6 pitch angle", float64(b6) / deg, 12.81, 5e-4},
		{"M6 curvature", Curvature(0.7*mm, b6), 2716.7, 3e-5},
		{"M6 torsion", Torsion(0.7*mm, b6), 617.7, 1e-4},
		{"M6 ratio, index 1.4, 40°, a pitch of one thickness", float64(RatioOfShape(1.4, 1, c40)), 5.199, 2e-4},
		{"M7 writhe per metre", float64(Writhe(1, PitchAngle(0.7*mm, 0.5*mm))) / float64(l6), 345.1, 2e-4},
		{"M7 turns to full coiling, its own thickness", full(0.5*mm, 1.4), 762.8, 1e-4},
		{"M7 the same, thickened", full(TwistedThickness(0.5*mm, c40), 1.4), 710.5, 1e-4},
		{"M12 index at 20 MPa", float64(IndexAtLoad(SelfCoilModulus.Typical, 20*mPa)), 1.31, 4e-3},
		{"M12 index at 10 MPa", float64(IndexAtLoad(SelfCoilModulus.Typical, 10*mPa)), 1.85, 3e-3},
		{"M12 fitted to 1.7 at 10 MPa", float64(IndexAtLoad(SelfCoilModulus.Low, 10*mPa)), 1.7, 5e-3},
		{"M12 fitted to 1.1 at 35 MPa", float64(IndexAtLoad(SelfCoilModulus.High, 35*mPa)), 1.1, 5e-3},
		// the turns of a closed coil: pitch over thickness, to the three decimals given
		{"closed pitch at index 1.1", float64(ClosedPitch(1.1, 1)), 1.046, 5e-4},
		{"closed pitch at index 1.3", float64(ClosedPitch(1.3, 1)), 1.032, 5e-4},
		{"closed pitch at index 1.4", float64(ClosedPitch(1.4, 1)), 1.027, 5e-4},
		{"closed pitch at index 5", float64(ClosedPitch(5, 1)), 1.002, 5e-4},
		// M8's coil, 300 mm of fibre in 126.254 coils, is solid at 64.66 mm with its own thickness, at 69.70 mm thickened at 40°
		{"solid length of M8", float64(CoilLength(126.254, SolidPitch(0.3/126.254, 0.5*mm))) / mm, 64.66, 1e-4},
		{"solid length of M8, thickened", float64(CoilLength(126.254, SolidPitch(0.3/126.254, TwistedThickness(0.5*mm, c40)))) / mm, 69.70, 1e-4},
		// the ratio of a closed coil at 40°: 3.80 at an index of 1.05, 4.34 at 1.2, 5.07 at 1.4; 3.29 with no shortening at all
		{"closed ratio at 1.05", float64(RatioOfShape(1.05, ClosedPitch(1.05, 1), c40)), ClosedRatio, 1.5e-3},
		{"closed ratio at 1.2", float64(RatioOfShape(1.2, ClosedPitch(1.2, 1), c40)), 4.34, 1.2e-3},
		{"closed ratio at 1.4", float64(RatioOfShape(1.4, ClosedPitch(1.4, 1), c40)), 5.07, 1e-3},
		{"closed ratio at 1.05, not shortened", float64(RatioOfShape(1.05, ClosedPitch(1.05, 1), 1)), OpenRatio, 1.5e-3},
	} {
		assert.InEpsilon(t, row.want, row.got, row.rel, row.name)
	}
}

// The start plan with 40° bias, outside diameter 1.30 mm and 250 a minute, as the design gives it: nylon line of 0.52 mm, 85 mm as coiled,
// 4.8 : 1, second gap 120.7 mm.
func TestStartPlanCoil(t *testing.T) {
	const precursor = 0.085 * 4.8
	c := Contraction(40 * deg)
	thick := TwistedThickness(0.52*mm, c)
	d := MeanDiameter(1.30*mm, thick)
	p := PitchOfRatio(d, 4.8, c)
	b := PitchAngle(d, p)
	n := Coils(85*mm, p)
	twist := TurnsIn(PrecursorTwistUntwisted(40*deg, 0.52*mm), precursor)
	writhe := Writhe(n, b)
	solid := CoilLength(n, SolidPitch(TurnLength(d, p), thick))
	for _, row := range []struct {
		name      string
		got, want float64
		half      float64 // of the last place given
	}{
		{"twisted thickness", float64(thick) / mm, 0.5583, 5e-5},
		{"turns per metre twisted", float64(TwistForBias(40*deg, thick)), 478.4, 0.05},
		{"turns per metre of precursor", float64(PrecursorTwistUntwisted(40*deg, 0.52*mm)), 415.0, 0.05},
		{"mean diameter", float64(d) / mm, 0.7417, 5e-5},
		{"index", float64(Index(d, thick)), 1.329, 5e-4},
		{"pitch angle", float64(b) / deg, 13.90, 5e-3},
		{"coils", float64(n), 147.5, 0.05},
		{"pitch", float64(p) / mm, 0.5764, 5e-5},
		{"gap", float64(Clearance(p, b, thick)) / mm, 0.001, 5e-4},
		{"gap, exactly", float64(TurnsApart(d, p)-thick) / mm, 0.001, 5e-4},
		{"twist", float64(twist), 169.3, 0.05},
		{"writhe", float64(writhe), 112.0, 0.05},
		{"turns", float64(Link(twist, writhe)), 281.4, 0.05},
		{"turns, from those per metre", float64(TurnsIn(FullCoiling(TwistForBias(40*deg, thick), b, TurnLength(d, p), c), precursor)), 281.4, 0.05},
		{"drill", float64(DrillTime(Link(twist, writhe), 250.0/60)), 67.5, 0.05},
		{"solid length", float64(solid) / mm, 84.82, 5e-3},
		{"travel", float64(TravelShare(120.7*mm, solid)), 0.2973, 5e-5},
	} {
		assert.InDelta(t, row.want, row.got, row.half, row.name)
	}
	assert.False(t, Overlaps(p, b, thick))
}

// Scenario S10: rod 2.0 mm, fibre 0.50, pitch 1.20, coil length 60.
func TestRodWound(t *testing.T) {
	d := OnRod(2*mm, 0.5*mm)
	assert.InDelta(t, 2.5*mm, float64(d), 1e-15)
	assert.InDelta(t, 5.0, float64(Index(d, 0.5*mm)), 1e-12)
	assert.InDelta(t, 50, float64(Coils(60*mm, 1.2*mm)), 1e-9)
	assert.InDelta(t, 7.9451, float64(TurnLength(d, 1.2*mm))/mm, 5e-5)
	assert.InDelta(t, 397.3, float64(RodFibre(60*mm, d, 1.2*mm))/mm, 0.05)
	assert.InDelta(t, 8.7, float64(PitchAngle(d, 1.2*mm))/deg, 0.05)
	// pitch less thickness is 0.70 along the axis; across the fibre it is 0.70 × cos 8.7° less 0.5 × (1 − cos 8.7°)
	assert.InDelta(t, 0.70-1.2*(1-math.Cos(8.7*deg)), float64(Clearance(1.2*mm, PitchAngle(d, 1.2*mm), 0.5*mm))/mm, 5e-4)
	// 1 − 0.5/1.2 is 58.33 %; turns touch a little sooner, at 1.002 thicknesses
	assert.InDelta(t, 0.583, float64(ClosingLimit(1.2*mm, SolidPitch(TurnLength(d, 1.2*mm), 0.5*mm))), 1e-3)
	assert.InEpsilon(t, 1-0.5/1.2, float64(ClosingLimit(1.2*mm, 0.5*mm)), 1e-12)
}

// Writhe by its definition: Gauss's double integral over an open helix, as the exact sum over pairs of straight segments (Klenin & Langowski
// 2000, from memory). An open helix lacks an end term that does not grow with its coils, so the slope per coil is compared, to 3e-3.
func TestWritheByGaussIntegral(t *testing.T) {
	for _, row := range []struct {
		name          string
		radius, pitch float64
	}{{"X03", 1, 2.28689242819}, {"X04", 0.5, 1}} {
		const few, many, segments = 12, 24, 48
		slope := (gauss(row.radius, row.pitch, many, segments) - gauss(row.radius, row.pitch, few, segments)) / (many - few)
		b := PitchAngle(quantity.Length(2*row.radius), quantity.Length(row.pitch))
		assert.InDelta(t, float64(Writhe(1, b)), slope, 3e-3, row.name)
	}
}

type point [3]float64

func (a point) minus(b point) point { return point{a[0] - b[0], a[1] - b[1], a[2] - b[2]} }
func (a point) dot(b point) float64 { return a[0]*b[0] + a[1]*b[1] + a[2]*b[2] }
func (a point) cross(b point) point {
	return point{a[1]*b[2] - a[2]*b[1], a[2]*b[0] - a[0]*b[2], a[0]*b[1] - a[1]*b[0]}
}
func (a point) unit() point {
	n := math.Sqrt(a.dot(a))
	if n == 0 {
		return a
	}
	return point{a[0] / n, a[1] / n, a[2] / n}
}

// gauss is the writhe of an open helix of so many coils with so many straight segments in each.
func gauss(radius, pitch float64, coils, segments int) float64 {
	line := make([]point, coils*segments+1)
	for i := range line {
		turn := float64(i) / float64(segments)
		sin, cos := math.Sincos(2 * math.Pi * turn)
		line[i] = point{radius * cos, radius * sin, pitch * turn}
	}
	asin := func(x float64) float64 { return math.Asin(max(-1, min(1, x))) }
	sum := 0.0
	for i := 0; i+1 < len(line); i++ {
		for j := i + 2; j+1 < len(line); j++ { // neighbours lie in a plane
			r13, r14 := line[j].minus(line[i]), line[j+1].minus(line[i])
			r23, r24 := line[j].minus(line[i+1]), line[j+1].minus(line[i+1])
			n1, n2, n3, n4 := r13.cross(r14).unit(), r14.cross(r24).unit(), r24.cross(r23).unit(), r23.cross(r13).unit()
			solid := asin(n1.dot(n2)) + asin(n2.dot(n3)) + asin(n3.dot(n4)) + asin(n4.dot(n1))
			hand := line[j+1].minus(line[j]).cross(line[i+1].minus(line[i])).dot(r13)
			sum += math.Copysign(solid, hand)
		}
	}
	return sum / (2 * math.Pi)
}

// The distance between turns is the least over a whole turn, tried point by point.
func TestTurnsApart(t *testing.T) {
	for _, row := range [][2]float64{{1.05, 1.051}, {1.4, 1.03}, {1.4, 1.6}, {2.5, 1.2}, {5, 1.002}, {5, 4}, {20, 1}} {
		d, p := row[0], row[1]
		least := math.Inf(1)
		for x := math.Pi; x < 3*math.Pi; x += 1e-5 {
			least = min(least, math.Hypot(d*math.Sin(x/2), p*x/(2*math.Pi)))
		}
		got := TurnsApart(quantity.Length(d), quantity.Length(p))
		assert.InEpsilon(t, least, float64(got), 1e-9, "%v", row)
	}
	for p := quantity.Length(1.5); p < 20; p += 0.01 {
		isNaN(t, TurnsApart(1, p), "too steep: %g", float64(p))
	}
	// and not a little before: tan² b = 0.21 is under, 0.22 over the last for which sin x + k (2π + x) reaches 0
	assert.False(t, math.IsNaN(float64(TurnsApart(1, quantity.Length(math.Pi*math.Sqrt(0.21))))))
	isNaN(t, TurnsApart(1, quantity.Length(math.Pi*math.Sqrt(0.22))), "too steep")
	isNaN(t, TurnsApart(0, 1), "no diameter")
	isNaN(t, TurnsApart(quantity.Length(nan), 1), "unknown")
	isNaN(t, TurnsApart(1, quantity.Length(nan)), "unknown")
}

// A solid coil: its turns are one thickness apart, it keeps its fibre, and the short way to it is under it by 0.2 % at most.
func TestSolidPitch(t *testing.T) {
	var last quantity.Length
	for i := range 400 {
		c := 1 + quantity.Length(i)/100 // index when closed
		p := ClosedPitch(c, 1)
		assert.InEpsilon(t, 1, float64(TurnsApart(c, p)), 1e-12, "index %g", float64(c))
		l := TurnLength(c, p)
		assert.InEpsilon(t, float64(p), float64(SolidPitch(l, 1)), 1e-9, "index %g", float64(c))
		near := NearSolidPitch(1, PitchAngle(c, p))
		assert.Less(t, near, p)
		assert.Greater(t, near, 0.998*p)
		assert.Greater(t, l, last, "more fibre in a wider coil")
		last = l
		assert.True(t, Overlaps(0.998*near, PitchAngle(c, 0.998*near), 1), "index %g", float64(c))
		assert.False(t, Overlaps(p, PitchAngle(c, p), 1), "index %g", float64(c))
		assert.InEpsilon(t, float64(0.3*p), float64(ClosedPitch(0.3*c, 0.3)), 1e-9, "any size")
		for pull := 1.0; pull < 1.4; pull += 0.05 { // of the opening coil
			open := p * quantity.Length(pull)
			if apart := TurnsApart(c, open); apart == apart {
				over := Clearance(open, PitchAngle(c, open), 1) - (apart - 1)
				most := quantity.Length(0.02)
				if pull == 1 {
					most = 0.002
				}
				assert.True(t, over >= -1e-12 && over < most, "index %g opened %g times: %g", float64(c), pull, float64(over))
			}
		}
	}
	isNaN(t, ClosedPitch(0.99, 1), "the turns would meet across the axis")
	isNaN(t, SolidPitch(3.1, 1), "too little fibre for a turn")
	isNaN(t, SolidPitch(0.5, 1), "less than a thickness of it")
	isNaN(t, SolidPitch(quantity.Length(nan), 1), "unknown")
	isNaN(t, SolidPitch(1, quantity.Length(nan)), "unknown")
	isNaN(t, ClosedPitch(quantity.Length(nan), 1), "unknown")
}

// Mean diameter, pitch and ratio: any two give the third.
func TestCoilPairs(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 2))
	for range 2000 {
		d := quantity.Length((0.1 + 5*r.Float64()) * mm)
		p := quantity.Length((0.05 + 3*r.Float64()) * mm)
		c := Contraction(quantity.Angle(60 * r.Float64() * deg))
		n := quantity.Turns(1 + 300*r.Float64())
		ratio := RatioOfShape(d, p, c)
		back := func(want, got quantity.Length, what string) {
			t.Helper()
			assert.InEpsilon(t, float64(want), float64(got), 1e-9, "%s: %g, %g, %g", what, float64(d), float64(p), float64(c))
		}
		back(p, PitchOfRatio(d, ratio, c), "pitch")
		back(d, DiameterOfRatio(p, ratio, c), "mean diameter")
		back(d, MeanDiameter(OuterDiameter(d, 0.5*mm), 0.5*mm), "outside")
		back(p, Pitch(CoilLength(n, p), n), "pitch of a count")
		assert.InEpsilon(t, float64(n), float64(Coils(CoilLength(n, p), p)), 1e-12)
		b, l := PitchAngle(d, p), TurnLength(d, p)
		assert.InEpsilon(t, math.Sin(float64(b)), float64(p/l), 1e-12)
		assert.InEpsilon(t, math.Cos(float64(b)), math.Pi*float64(d/l), 1e-12)
		// curvature and torsion of a helix of radius R and rise h per radian: R/(R²+h²) and h/(R²+h²)
		radius, rise := float64(d)/2, float64(p)/(2*math.Pi)
		assert.InEpsilon(t, radius/(radius*radius+rise*rise), Curvature(d, b), 1e-12)
		assert.InEpsilon(t, rise/(radius*radius+rise*rise), Torsion(d, b), 1e-12)
		back(l*quantity.Length(n), RodFibre(CoilLength(n, p), d, p), "fibre")
		assert.InEpsilon(t, float64(n), float64(CoilsPerLength(p))*float64(CoilLength(n, p)), 1e-12)
		w := Writhe(n, b)
		assert.InEpsilon(t, 7.5, float64(TwistLeft(Link(7.5, w), w)), 1e-9)
		assert.True(t, w > 0 && w < n)
	}
}

// A longer pitch means a steeper angle and a smaller ratio; more load a smaller index, down to 1.
func TestCoilRises(t *testing.T) {
	c := Contraction(40 * deg)
	for i := 1; i < 300; i++ {
		p, q := quantity.Length(i)*0.01*mm, quantity.Length(i+1)*0.01*mm
		assert.Less(t, PitchAngle(1*mm, p), PitchAngle(1*mm, q))
		assert.Greater(t, RatioOfShape(1*mm, p, c), RatioOfShape(1*mm, q, c))
		assert.Less(t, RatioOfShape(1*mm, p, c), RatioOfShape(1.01*mm, p, c))
		assert.Greater(t, Writhe(1, PitchAngle(1*mm, p)), Writhe(1, PitchAngle(1*mm, q)))
	}
	for s := quantity.Stress(1 * mPa); s < 34*mPa; s += 1 * mPa {
		assert.Greater(t, IndexAtLoad(0.55e9, s), IndexAtLoad(0.55e9, s+1*mPa))
	}
	assert.Equal(t, 1.0, float64(IndexAtLoad(0.55e9, 40*mPa)))
	isNaN(t, IndexAtLoad(0.55e9, quantity.Stress(nan)), "unknown")
	for _, r := range []quantity.Ratio{1, 1.15, quantity.Ratio(c), quantity.Ratio(nan)} {
		isNaN(t, PitchOfRatio(1*mm, r, c), "a ratio that twist alone makes")
		isNaN(t, DiameterOfRatio(1*mm, r, c), "a ratio that twist alone makes")
	}
}
