package quantity

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Text read, in SI.
func TestTwistTexts(t *testing.T) {
	for _, c := range []struct {
		kind *Kind
		text string
		unit string // where none is typed
		want float64
		rel  float64
	}{
		{KindAngle, "40°", "", 40 * math.Pi / 180, 1e-15}, // a half turn is 180°, SI brochure, table 8
		{KindAngle, "40", "", 0.698131700797731831, 1e-15},
		{KindAngle, "57,5 deg", "", 57.5 * math.Pi / 180, 1e-15},
		{KindAngle, "0.7", "rad", 0.7, 1e-15},
		{KindAngle, "42 º", "", 42 * math.Pi / 180, 1e-15}, // the sign of an ordinal
		{KindTwist, "415", "", 415, 1e-15},
		{KindTwist, "415 tpm", "", 415, 1e-15},
		{KindTwist, "4.15 turns/cm", "", 415, 1e-15},
		{KindTwist, "10 tpi", "", 393.700787401575, 1e-14}, // 1000/25.4 = 39.37..., yard and pound agreement
		{KindTwist, "10 TPI", "", 393.700787401575, 1e-14},
		{KindTwist, "12 t/cm", "", 1200, 1e-15},
		// Handbook Y04: 800 turns/m at 36 tex; √36 × 800 = 4800.
		{KindTwistFactor, "4800", "", 800 * math.Sqrt(36e-6), 1e-14},
		// Handbook Y05: a multiplier of 1 is 956.734426937 in the tex system, to 1e-5 (textbooks print 957, from memory).
		{KindTwistFactor, "1 tpi/√Ne", "", 0.956734426937, 1e-5},
		{KindTwistFactor, "1 TM", "", math.Sqrt(pound/(840*yard)) / inch, 1e-15},
		{KindTurns, "147.5", "", 147.5, 1e-15},
		{KindTurns, "147,5 coils", "", 147.5, 1e-15},
		{KindTurns, "20 turns", "", 20, 1e-15},
		{KindRotation, "250", "", 250.0 / 60, 1e-15},
		{KindRotation, "250 RPM", "", 250.0 / 60, 1e-15},
		{KindRotation, "5 turns/s", "", 5, 1e-15},
		{KindTime, "67.5", "", 67.5, 1e-15},
		{KindTime, "1 h 30 min", "", 5400, 1e-15},
		{KindTime, "1 min 7.5 s", "", 67.5, 1e-15},
		{KindTime, "1½ h", "", 5400, 1e-15},
		{KindTime, "50 ms", "", 0.05, 1e-15},
		{KindTime, "90", "min", 5400, 1e-15},
		{KindTorque, "7.76", "", 7.76e-3, 1e-15},
		{KindTorque, "160 µN·m", "", 160e-6, 1e-15},
		{KindTorque, "160 uN m", "", 160e-6, 1e-15},
		{KindTorque, "0.01 N m", "", 0.01, 1e-15},
		{KindNumber, "1.329", "", 1.329, 1e-15},
	} {
		t.Run(c.kind.Name+" "+c.text, func(t *testing.T) {
			r, err := c.kind.Parse(c.text, c.unit)
			require.NoError(t, err)
			assert.InEpsilon(t, c.want, r.SI, c.rel)
		})
	}
}

// Another size is no other spelling, and a unit of another kind is none.
func TestTwistTextsRefused(t *testing.T) {
	for _, c := range []struct {
		kind *Kind
		text string
	}{
		{KindTorque, "5 MN·m"}, {KindTorque, "5 mN"}, {KindTime, "5 Ms"}, {KindTwist, "5 turns"}, {KindTurns, "5 turns/m"}, {KindRotation, "5 tpm"},
		{KindAngle, "5 °C"}, {KindNumber, "5 mm"},
	} {
		_, err := c.kind.Parse(c.text, "")
		assert.Error(t, err, "%s %q", c.kind.Name, c.text)
	}
}

func TestTwistDefaults(t *testing.T) {
	for k, want := range map[*Kind]string{
		KindAngle: "°", KindTwist: "turns/m", KindTwistFactor: "turns/m·√tex", KindTurns: "turns", KindRotation: "rpm", KindTime: "s",
		KindTorque: "mN·m", KindNumber: "",
	} {
		assert.Equal(t, want, k.Default().Symbol, k.Name)
	}
}
