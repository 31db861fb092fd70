package craft

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"

	"twistbench/calc/quantity"
)

const deg = math.Pi / 180

var nan = quantity.NaN

func isNaN[T ~float64](t *testing.T, x T, what string, args ...any) {
	t.Helper()
	assert.True(t, math.IsNaN(float64(x)), append([]any{what}, args...)...)
}

func TestTwistRows(t *testing.T) {
	// Y01, Y02, Y03, Y07, Y08: Hearle, Grosberg & Backer 1969, from memory, computed for the handbook of outside figures; the contraction
	// also by quadrature of equally packed layers (scipy 1.10.1)
	for _, row := range []struct {
		name      string
		got, want float64
		abs       float64
	}{
		{"Y01 bias of 1000/m on 0.5 mm", float64(Bias(1000, 0.5*mm)) / deg, 57.5183634095, 1e-6},
		{"Y02 bias of 300/m on 0.8 mm", float64(Bias(300, 0.8*mm)) / deg, 37.0156445732, 1e-6},
		{"Y03 twist for 45° on 0.5 mm", float64(TwistForBias(45*deg, 0.5*mm)), 636.619772368, 636.6e-9},
		// tan a = π t √(4 tex/(π ρ))
		{"Y06 bias of 800/m on 36 tex at 1140 kg/m³", float64(Bias(800, Diameter(AreaOfTitre(36*tex, 1140)))) / deg, 26.7461533446, 1e-4},
		{"Y06 the same from the twist factor", float64(BiasOfFactor(FactorOfTwist(800, 36*tex), 1140)) / deg, 26.7461533446, 1e-4},
		{"Y07 contraction at 30°", float64(Contraction(30 * deg)), 1.07735026919, 1e-9},
		{"Y07b retraction at 30°", float64(Retraction(Contraction(30 * deg))), 0.0717967697245, 1e-9},
		{"Y08 contraction at 45°", float64(Contraction(45 * deg)), 1.20710678119, 1e-9},
		{"Y08b retraction at 45°", float64(Retraction(Contraction(45 * deg))), 0.171572875254, 1e-9},
		// Y04: K = t √tex. Y05: a multiplier of 1 tpi/√Ne, to 1e-5; textbooks print 957, from memory.
		{"Y04 twist factor of 800/m at 36 tex", quantity.KindTwistFactor.Unit("turns/m·√tex").FromSI(float64(FactorOfTwist(800, 36*tex))), 4800, 4800e-12},
		{"Y05 multiplier 1 in the tex system", quantity.KindTwistFactor.Unit("turns/m·√tex").FromSI(quantity.KindTwistFactor.Unit("tpi/√Ne").ToSI(1)), 956.734426937, 957e-5},
		// models M2 to M4 of coiled actuators, to the digits given
		{"M2 bias of 534.19/m on 0.5 mm", float64(Bias(534.19, 0.5*mm)) / deg, 40.00, 5e-3},
		{"M2 bias of 2400/m on 0.12 mm", float64(Bias(2400, 0.12*mm)) / deg, 42.14, 5e-3},
		{"M3 contraction at 40°", float64(Contraction(40 * deg)), 1.15270, 5e-6},
		{"M3 retraction at 40°", float64(Retraction(Contraction(40 * deg))), 0.1325, 5e-5},
		{"M4 shear of the surface at 40°", float64(SurfaceShear(40 * deg)), 0.839, 5e-4},
		// thickening at constant volume, √c, to the three decimals given
		{"thicker at 30°", float64(TwistedThickness(1, Contraction(30*deg))), 1.038, 5e-4},
		{"thicker at 35°", float64(TwistedThickness(1, Contraction(35*deg))), 1.054, 5e-4},
		{"thicker at 40°", float64(TwistedThickness(1, Contraction(40*deg))), 1.074, 5e-4},
		{"thicker at 45°", float64(TwistedThickness(1, Contraction(45*deg))), 1.099, 5e-4},
		// M7 at 40° on 0.5 mm, twist alone, per metre of precursor: 463.4 at its own thickness, 431.6 thickened
		{"M7 twist alone, 0.5 mm thick", float64(PrecursorTwist(40*deg, 0.5*mm)), 463.4, 0.05},
		{"M7 twist alone, thickened", float64(PrecursorTwistUntwisted(40*deg, 0.5*mm)), 431.6, 0.05},
		// by hand: 281.4 turns at 250 a minute; 20 turns in 5 s are 240 a minute
		{"time", float64(DrillTime(281.4, 250.0/60)), 67.536, 1e-9},
		{"speed", float64(DrillSpeed(20, 5)) * 60, 240, 1e-9},
	} {
		assert.InDelta(t, row.want, row.got, row.abs, row.name)
	}
}

// Each pair there and back, over angles and sizes.
func TestTwistPairs(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 1))
	for range 2000 {
		a := quantity.Angle((0.5 + 88*r.Float64()) * deg)
		d := quantity.Length((0.05 + 2*r.Float64()) * mm)
		c := Contraction(a)
		thick := TwistedThickness(d, c)
		rho := quantity.Density(900 + 900*r.Float64())
		k := quantity.Turns(1 + 1000*r.Float64())
		back := func(want, got float64, what string) {
			t.Helper()
			assert.InEpsilon(t, want, got, 1e-9, "%s at %g°, %g m", what, float64(a)/deg, float64(d))
		}
		back(float64(a), float64(Bias(TwistForBias(a, thick), thick)), "bias")
		back(float64(a), float64(BiasUntwisted(TwistForBias(a, thick), d)), "bias, from the diameter before twist")
		back(float64(a), float64(BiasOfPrecursorTwist(PrecursorTwist(a, thick), thick)), "bias of precursor twist")
		back(float64(PrecursorOfTwist(TwistForBias(a, thick), c)), float64(PrecursorTwist(a, thick)), "per metre of precursor")
		if a < SteepestBias-0.1*deg { // at the top itself a hair of twist is many of angle
			back(float64(a), float64(BiasOfPrecursorTwistUntwisted(PrecursorTwistUntwisted(a, d), d)), "bias of precursor twist, from the diameter before twist")
		}
		back(float64(a), float64(BiasOfFactor(FactorForBias(a, rho), rho)), "bias of a twist factor")
		n, titre := TwistForBias(a, thick), LinearDensity(Area(d), rho)
		back(float64(n), float64(TwistOfFactor(FactorOfTwist(n, titre), titre)), "twist factor")
		back(float64(a), float64(BiasOfFactor(FactorOfTwist(n, TwistedTitre(titre, c)), rho)), "the factor of a twisted fibre makes its bias")
		back(float64(d), float64(TwistedLength(d*quantity.Length(c), c)), "length")
		back(float64(Retraction(c)), math.Pow(math.Tan(float64(a)/2), 2), "retraction is tan²(a/2)")
		back(float64(a), float64(Bias(SameTightness(n, thick, 3*thick), 3*thick)), "same tightness")
		back(float64(k), float64(TurnsIn(TwistOfTurns(k, d), d)), "turns")
		back(float64(k), float64(DrillSpeed(k, DrillTime(k, 4))/4*quantity.Rotation(k)), "speed")
		assert.InEpsilon(t, float64(Area(d))*float64(c), float64(Area(thick)), 1e-12, "volume is kept")
	}
}

// All rise with the angle. Per metre of precursor the turns rise to 1/(π d) at acos(1/3), if the fibre thickens, and no angle has more.
func TestTwistRises(t *testing.T) {
	const d = 0.5 * mm
	assert.InDelta(t, math.Acos(1.0/3), SteepestBias, 1e-16)
	var c quantity.Number
	var n, m quantity.Twist
	var a, b quantity.Angle
	for i := 1; i < 700; i++ {
		x := quantity.Angle(float64(i) / 10 * deg)
		c0, n0, m0 := c, n, m
		c = Contraction(x)
		n = TwistForBias(x, TwistedThickness(d, c))
		m = PrecursorTwistUntwisted(x, d)
		assert.Greater(t, c, c0)
		assert.Greater(t, n, n0)
		assert.Greater(t, m, m0)
		a0, b0 := a, b
		a, b = BiasUntwisted(quantity.Twist(i), d), BiasOfPrecursorTwistUntwisted(quantity.Twist(i)*0.9, d)
		assert.Greater(t, a, a0)
		if float64(i)*0.9*math.Pi*d <= 1 {
			assert.Greater(t, b, b0)
		}
	}
	most := quantity.Twist(1 / (math.Pi * d))
	assert.InEpsilon(t, float64(most), float64(PrecursorTwistUntwisted(SteepestBias, d)), 1e-12)
	assert.InDelta(t, SteepestBias, float64(BiasOfPrecursorTwistUntwisted(most*(1-1e-12), d)), 1e-5)
	isNaN(t, BiasOfPrecursorTwistUntwisted(most*1.000001, d), "more turns than a metre takes up")
	isNaN(t, PrecursorTwistUntwisted(70.6*deg, d), "beyond the steepest bias")
	assert.Less(t, PrecursorTwist(75*deg, TwistedThickness(d, Contraction(75*deg))), most, "there it falls")
	isNaN(t, BiasOfPrecursorTwist(2/(math.Pi*d), d), "no angle has 2/(π t)")
}

func TestTwistUnknown(t *testing.T) {
	for _, a := range []quantity.Angle{quantity.Angle(nan), -0.1, math.Pi / 2, 2} {
		isNaN(t, Contraction(a), "contraction")
		isNaN(t, TwistForBias(a, 1), "twist")
		isNaN(t, PrecursorTwist(a, 1), "twist of precursor")
		isNaN(t, SurfaceShear(a), "shear")
		isNaN(t, FactorForBias(a, 1140), "factor")
	}
	isNaN(t, PrecursorTwistUntwisted(quantity.Angle(nan), 1), "twist of precursor")
	isNaN(t, Bias(quantity.Twist(nan), 1), "bias")
	isNaN(t, BiasUntwisted(1, quantity.Length(nan)), "bias")
	isNaN(t, BiasOfPrecursorTwist(quantity.Twist(nan), 1), "bias")
	isNaN(t, BiasOfPrecursorTwistUntwisted(quantity.Twist(nan), 1), "bias")
	for _, r := range []quantity.Rotation{0, -1, quantity.Rotation(nan)} {
		isNaN(t, DrillTime(20, r), "a drill that stands still")
	}
	for _, s := range []quantity.Time{0, -1, quantity.Time(nan)} {
		isNaN(t, DrillSpeed(20, s), "no time has passed")
	}
	assert.Equal(t, 1.0, float64(Contraction(0)))
	assert.Equal(t, 0.0, float64(Retraction(1)))
	assert.Equal(t, 0.0, float64(Bias(0, 1)))
	assert.Equal(t, 0.0, float64(BiasUntwisted(0, 1)))
	assert.Equal(t, 0.0, float64(BiasOfPrecursorTwistUntwisted(0, 1)))
}
