package craft

import (
	"math"

	"twistbench/calc/quantity"
)

// Stroke: a drawn fibre that warms shortens along and thickens across. In one that is twisted both turn it back, and in a coil whose ends cannot
// turn each turn that the fibre loses is taken up by the coil: it gets flatter when it is wound the way it is twisted, and steeper when it
// is wound the other way. All of it rests on strains from memory and is an estimate: own trials go before.

// Warming is what warming from 20 °C does to a drawn fibre: strains along and across it, and what is left of its moduli along and in shear,
// at 20, 40 … 180 °C.
type Warming struct {
	Axial, Radial, Young, Shear [9]float64
	Source                      *Source
}

// Warmings has a row for each of Polymers, in their order, nil where nothing is known that would stand: what was found for polyethylene
// gives half of the strokes that are published of it. Nylon: dry drawn fibre, from memory; strokes that follow from it are within a tenth
// of a curve that was read.
var Warmings = [...]*Warming{&nylonWarming, &nylonWarming, nil, nil, nil, nil}

var nylonWarming = Warming{
	Axial:  [9]float64{0, -0.001, -0.003, -0.006, -0.009, -0.013, -0.0175, -0.022, -0.027},
	Radial: [9]float64{0, 0.002, 0.005, 0.0085, 0.0125, 0.017, 0.0215, 0.0265, 0.032},
	Young:  [9]float64{1, 0.90, 0.74, 0.56, 0.44, 0.37, 0.32, 0.28, 0.24},
	Shear:  [9]float64{1, 0.80, 0.58, 0.42, 0.33, 0.28, 0.24, 0.21, 0.18},
	Source: &Memory,
}

// ColdestWarm and HottestWarm are the temperatures (K) between which Warmings are read: under 20 °C the first step goes on.
const ColdestWarm, HottestWarm = 0 + ice, 180 + ice

// warm reads a column of Warming at a temperature (K), straight between its rows; NaN beyond ColdestWarm and HottestWarm.
//
//go:noinline
func warm(column *[9]float64, at quantity.Temperature) float64 {
	if !(at >= ColdestWarm && at <= HottestWarm) {
		return quantity.NaN
	}
	x := float64(at-(20+ice)) / 20
	i := min(max(int(x), 0), 7)
	return column[i] + (x-float64(i))*(column[i+1]-column[i])
}

// Strains returns how much longer along and thicker across a fibre is at a temperature hot than at cold (both K), as shares.
func (w *Warming) Strains(cold, hot quantity.Temperature) (along, across quantity.Fraction) {
	if w == nil {
		return quantity.Fraction(quantity.NaN), quantity.Fraction(quantity.NaN)
	}
	return quantity.Fraction(warm(&w.Axial, hot) - warm(&w.Axial, cold)), quantity.Fraction(warm(&w.Radial, hot) - warm(&w.Radial, cold))
}

// StrainDoubt is the share by which the strains may be off either way. A judgement: no source gives one.
const StrainDoubt = 0.3

// FreeStroke returns how far (m) a coil with l (m) of fibre in n coils, wound the way it is twisted, shortens when its ends cannot turn and the
// twist of t turns in it grows by the share x: x is negative and the stroke is positive where it untwists. What the fibre loses in turns
// the pitch angle makes up for, and the length of fibre in a coil counts as unchanged. It does not depend on how far the coil is open.
func FreeStroke(l quantity.Length, t, n quantity.Turns, x quantity.Fraction) quantity.Length {
	return -l * quantity.Length(float64(t/n)*float64(x))
}

// FreeStrokeEq is for a fibre that shortens as much along its axis as along its surface helix: then the twist grows by the strain along less
// the strain across, whatever the bias angle.
var FreeStrokeEq = Equation{Symbol: "s", Expr: "l × T × (f − e) ÷ N", Holds: "same-hand-held", Source: &LinkTheorem, Grade: Estimate}

// Stroke returns how far (m) a muscle shortens from a cold to a hot length (both m).
func Stroke(cold, hot quantity.Length) quantity.Length { return cold - hot }

var StrokeEq = Equation{Symbol: "s", Expr: "c − h", Holds: "same-load", Source: &Geometry, Grade: Estimate}

// Contracted returns the hot length (m) of a muscle that shortens by s from l (both m).
func Contracted(l, s quantity.Length) quantity.Length { return l - s }

var ContractedEq = Equation{Symbol: "h", Expr: "L − s", Holds: "same-load", Source: &Geometry}

// StrokeShare returns what share a stroke s is of a base (both m): the cold length under its load, which papers mostly mean, or the length as
// it came off, or the finished length. The base is always said.
//
//go:noinline
func StrokeShare(s, base quantity.Length) quantity.Fraction {
	return quantity.Fraction(float64(s) / positive(float64(base)))
}

var StrokeShareEq = Equation{Symbol: "q", Expr: "s ÷ L", Holds: "that-length", Source: &Geometry}

// StrokeOf returns the stroke (m) of a share q of a base (m): from one's own trials.
func StrokeOf(q quantity.Fraction, base quantity.Length) quantity.Length {
	return quantity.Length(q) * base
}

var StrokeOfEq = Equation{Symbol: "s", Expr: "q × L", Holds: "own-stroke", Source: &Geometry}

// LargestStroke is the largest stroke, as a share, that was read of a nylon coil that goes there and back (LoadStudy). One-way strokes of a
// shape memory are larger.
const LargestStroke = 0.526

// Muscle is a finished coil: its twisted fibre, how thick that is, its length unloaded and cold and its solid length (m), its coils and the
// turns of twist left in its fibre, its bias angle (rad), whether it is wound against its twist, and what its polymer does when warm, nil
// where that is not known.
type Muscle struct {
	Fibre, Thickness, Length, Solid quantity.Length
	Coils, Twist                    quantity.Turns
	Bias                            quantity.Angle
	Opposite                        bool
	Moduli                          *Moduli
	Warming                         *Warming
}

// Pulls are one end of a band: the muscle cold and hot.
type Pulls struct{ Cold, Hot Pull }

// Pulls returns the muscle at a temperature cold and a hotter one hot (both K) at the lower end of its band of stroke, as usual, and at the upper
// end, each the end of all that is in doubt: strains, stiffness, and how much of it is left when warm.
func (m *Muscle) Pulls(cold, hot quantity.Temperature) (band [3]Pulls) {
	along, across := m.Warming.Strains(cold, hot)
	free := FreeStroke(m.Fibre, m.Twist, m.Coils, along-across)
	if m.Opposite {
		free = -free
	}
	for i := range band {
		e, g := m.Moduli.end(i)
		k := m.rate(e, g, 20+ice)
		off := StrainDoubt * math.Abs(float64(free)) * float64(i-1)
		band[i] = Pulls{
			Pull{m.Length, HotRate(k, KeptRate(i, Kept(m.rate(e, g, cold), k)))},
			Pull{m.Length - free - quantity.Length(off), HotRate(k, KeptRate(i, Kept(m.rate(e, g, hot), k)))},
		}
	}
	return band
}

// Kept returns what share of a cold stiffness is left in a hot one (both N/m).
func Kept(hot, cold quantity.Stiffness) quantity.Fraction { return quantity.Fraction(hot / cold) }

// HotRate returns the stiffness (N/m) warm of a muscle that keeps a share q of its stiffness k (N/m) when it is colder.
func HotRate(k quantity.Stiffness, q quantity.Fraction) quantity.Stiffness {
	return k * quantity.Stiffness(q)
}

var HotRateEq = Equation{Symbol: "K", Expr: "k × q", Holds: "straight-line", Source: &StrokeCurve, Grade: Estimate}

// KeptRate returns what share of the stiffness at 20 °C, where the moduli are known, counts as left at an end of the band, 0 to 2, when the book
// leaves q: half of the loss, a quarter of it, and none. A judgement: with all of it a muscle would lengthen under the loads at which strokes like the free ones were
// read, and a load was read to change the stroke little (StrokeCurve).
func KeptRate(end int, q quantity.Fraction) quantity.Fraction {
	return 1 - (1-q)*quantity.Fraction(2-end)/4
}

// rate returns the stiffness (N/m) of the muscle as it stands unloaded, of moduli e and g (Pa) at 20 °C before twist, at a temperature (K).
func (m *Muscle) rate(e, g quantity.Stress, at quantity.Temperature) quantity.Stiffness {
	if m.Warming == nil {
		return quantity.Stiffness(quantity.NaN)
	}
	p := Pitch(m.Length, m.Coils)
	d := MeanOfTurn(m.Fibre/quantity.Length(m.Coils), p)
	e = TwistedYoung(e, m.Bias) * quantity.Stress(warm(&m.Warming.Young, at))
	g *= quantity.Stress(warm(&m.Warming.Shear, at))
	return SteepRate(g, e, m.Thickness, PitchAngle(d, p), m.Fibre, d)
}

// end returns the moduli (Pa) at an end of their bands, 0 to 2.
func (m *Moduli) end(i int) (e, g quantity.Stress) {
	switch i {
	case 0:
		return m.Young.Low, m.Shear.Low
	case 1:
		return m.Young.Typical, m.Shear.Typical
	}
	return m.Young.High, m.Shear.High
}
