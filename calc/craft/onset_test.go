package craft

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"twistbench/calc/quantity"
)

func TestOnsetRows(t *testing.T) {
	const ei = 7.66990393943e-06                      // N·m² of B02 and B04: that of 2.5 GPa at 0.5 mm
	shear := quantity.Stress(2.5e9 / (2 * (1 + 0.4))) // of B01b alone: no function here makes one of Poisson's ratio
	assert.InEpsilon(t, ei, bending(2.5e9, 0.5*mm), 1e-11)
	for _, row := range []struct {
		name      string
		got, want float64
		rel       float64
	}{
		// Greenhill 1883 and Love 1927, art. 272, from memory, computed for the handbook of outside figures
		{"B01 torque of a long rod, 200 g", float64(OnsetTorque(2.5e9, 0.5*mm, HangingForce(200*g))), 7757.11613772e-6, 1e-9},
		{"B01b twist at that torque", float64(ElasticTwist(OnsetTorque(2.5e9, 0.5*mm, HangingForce(200*g)), shear, 0.5*mm)), 225.350505311, 1e-9},
		{"B02 no pull, 0.3 m", float64(SlackTorque(2.5e9, 0.5*mm, 0.3)), 160.638092466e-6, 1e-9},
		{"B04 1.96133 N, 0.3 m", float64(OnsetTorquePinned(2.5e9, 0.5*mm, 1.96133, 0.3)), 7758.77924488e-6, 1e-9},
		// model M11 of coiled actuators: E 2.5, G 0.5 GPa, 20 MPa on 0.5 mm, to the digits given
		{"M11 angle", float64(OnsetBias(2.5e9, 0.5e9, 20*mPa)) / deg, 41.81, 2e-4},
		{"M11 twist", float64(TwistForBias(OnsetBias(2.5e9, 0.5e9, 20*mPa), 0.5*mm)), 569.4, 1e-4},
		{"M11 torque", float64(OnsetTorque(2.5e9, 0.5*mm, ForceForStress(20*mPa, Area(0.5*mm)))), 10.98e-3, 5e-4},
		// the same with a shear modulus made of Poisson's ratio 0.4, which the caveat warns of: E/G = 2.8 instead of 5
		{"what not to do", float64(OnsetBias(2.5e9, shear, 20*mPa)) / deg, 26.6, 2e-3},
	} {
		assert.InEpsilon(t, row.want, row.got, row.rel, row.name)
	}
}

// The angle at onset is where the torque of the twist reaches the critical one, whatever the size.
func TestOnsetIsWhereTorquesMeet(t *testing.T) {
	for _, d := range []quantity.Length{0.1 * mm, 0.52 * mm, 2 * mm} {
		for _, s := range []quantity.Stress{5 * mPa, 17 * mPa, 50 * mPa} {
			n := TwistForBias(OnsetBias(2.5e9, 0.42e9, s), d)
			f := ForceForStress(s, Area(d))
			assert.InEpsilon(t, float64(OnsetTorque(2.5e9, d, f)), float64(ElasticTorque(n, 0.42e9, d)), 1e-12)
			assert.InEpsilon(t, float64(n), float64(ElasticTwist(ElasticTorque(n, 0.42e9, d), 0.42e9, d)), 1e-12)
			// a short rod holds out longer, and the pull counts for less in it
			long := OnsetTorquePinned(2.5e9, d, f, 1000)
			assert.InEpsilon(t, float64(OnsetTorque(2.5e9, d, f)), float64(long), 1e-9)
			assert.Greater(t, OnsetTorquePinned(2.5e9, d, f, 0.01), long)
			assert.Greater(t, OnsetTorquePinned(2.5e9, d, f, 0.01), SlackTorque(2.5e9, d, 0.01))
			assert.InEpsilon(t, float64(SlackTorque(2.5e9, d, 0.3)), float64(OnsetTorquePinned(2.5e9, d, 0, 0.3)), 1e-12)
		}
	}
}

// More mass, more twist needed; torque goes as d² √m. The band holds the usual 35° to 45° at which nylon line coils under the usual 15 to
// 25 MPa, from memory.
func TestOnsetBand(t *testing.T) {
	for i := range DrawnModuli {
		m := DrawnModuli[i]
		var last [3]quantity.Angle
		for _, s := range []quantity.Stress{5 * mPa, 10 * mPa, 15 * mPa, 17 * mPa, 25 * mPa, 50 * mPa} {
			low, typical, high := m.Onset(s)
			if Polymers[i].Key != "nylon-6" && Polymers[i].Key != "nylon-66" {
				isNaN(t, low, Polymers[i].Key)
				isNaN(t, typical, Polymers[i].Key)
				isNaN(t, high, Polymers[i].Key)
				continue
			}
			assert.Less(t, low, typical)
			assert.Less(t, typical, high)
			for k, a := range []quantity.Angle{low, typical, high} {
				assert.Greater(t, a, last[k])
				last[k] = a
			}
			if s >= 15*mPa && s <= 25*mPa {
				assert.Less(t, float64(low), 40*deg)
				assert.Greater(t, float64(high), 45*deg)
			}
		}
	}
	assert.Len(t, DrawnModuli, len(Polymers))
	assert.InEpsilon(t, 4*math.Sqrt(2), float64(OnsetTorque(1, 2, 2)/OnsetTorque(1, 1, 1)), 1e-12)
	isNaN(t, OnsetBias(1, 1, quantity.Stress(nan)), "no stress")
	isNaN(t, OnsetTorque(quantity.Stress(nan), 1, 1), "no modulus")
}
