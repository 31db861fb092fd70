package craft

import "twistbench/calc/quantity"

// What can hurt: hot surfaces by how long they are touched, and voltages. Nothing here says that anything is safe.

// Surface is what is touched.
type Surface uint8

const (
	Metal   Surface = iota
	Ceramic         // glass, ceramic, stone
	Plastic         // plastics, wood
	surfaces
)

// Touch is a row of thresholds: up to these temperatures (K), for each Surface, skin that touches it for Time (s) is not expected to burn.
// Those of short touches are to be stayed under, not met; 0 is none known.
type Touch struct {
	Time   quantity.Time
	Most   [surfaces]quantity.Temperature
	Under  bool
	Source *Source
}

// Touches are the thresholds of healthy adult skin over a small part of the body, the longest touch first. For a touch of 1 s figures between
// 65 and 70 °C for bare metal and 85 and 93 °C for plastics are recalled, to 3 K: the lower ones stand here. Thresholds for a touch so short on
// glass are not known here.
var Touches = [...]Touch{
	{8 * 3600, [...]quantity.Temperature{43 + ice, 43 + ice, 43 + ice}, false, &TouchLong},
	{600, [...]quantity.Temperature{48 + ice, 48 + ice, 48 + ice}, false, &TouchLong},
	{60, [...]quantity.Temperature{51 + ice, 56 + ice, 60 + ice}, false, &TouchLong},
	{1, [...]quantity.Temperature{65 + ice, 0, 85 + ice}, true, &TouchLong},
	{0.5, [...]quantity.Temperature{65 + ice, 0, 0}, true, &TouchBrief},
}

// TouchTime returns the longest touch (s) of those in Touches for which a surface at t (K) is not expected to burn skin; 0 where it may at
// once, NaN where the temperature is unknown.
func TouchTime(s Surface, t quantity.Temperature) quantity.Time {
	if unknown(float64(t)) {
		return quantity.Time(quantity.NaN)
	}
	for i := range Touches {
		row := &Touches[i]
		if most := row.Most[s]; t < most || t == most && !row.Under {
			return row.Time
		}
	}
	return 0
}

// VoltageLimit is a row of limits (V) of extra-low voltage: alternating, and direct without ripple. NaN where none is known.
type VoltageLimit struct {
	Key    string // what it is the limit of
	AC, DC quantity.Voltage
	Source *Source
}

// Voltages are the limits, the highest first. Direct voltage counts as without ripple up to a tenth of it, peaks of a 60 V supply up to 70 V.
// Of wet skin only a direct one was quoted; in water there is none but 0.
var Voltages = [...]VoltageLimit{
	{"extra-low", 50, 120, &LowVoltage},                   // safety extra-low voltage
	{"touchable", 25, 60, &LowVoltage},                    // bare parts in dry, normal use
	{"wet", quantity.Voltage(quantity.NaN), 35, &WetSkin}, // wet skin
	{"immersed", 0, 0, &WetSkin},                          // in the water with them
}

// Direct voltages (V) over which a plan is warned, below that of wet skin, and not taken at all. Our own judgement.
const (
	VoltageCare = 30
	VoltageStop = 60
)
