package craft

import "twistbench/calc/quantity"

// Temperatures are thermodynamic (K): differences and sums with a difference come out alike in every scale.

// Span is the least and the most of a temperature (K), NaN where nothing is known.
type Span struct{ Low, High quantity.Temperature }

// Heating is what is known of a polymer in the oven: where it melts, where its glass transition is (dry), and between which temperatures
// it is usually heat-set, each with its source.
type Heating struct {
	Melt, Glass, Setting                   Span
	MeltSource, GlassSource, SettingSource *Source
}

const ice = 273.15 // K: 0 °C, by definition

// Heatings has a row for each of Polymers, in their order. What melts over a range is counted from the lowest end of it. The glass
// transition of nylon falls as it takes up water, to about 0 °C when wet; the book values here are for a dry fibre, as it is in an oven.
var Heatings = [...]Heating{
	{ // nylon 6: settings studied at 140, 160 and 180 °C
		Melt: Span{220 + ice, 220 + ice}, MeltSource: &MeltTable,
		Glass: Span{50 + ice, 70 + ice}, GlassSource: &Memory,
		Setting: Span{140 + ice, 180 + ice}, SettingSource: &DrySetting,
	},
	{ // nylon 6,6
		Melt: Span{255 + ice, 265 + ice}, MeltSource: &Memory,
		Glass: Span{50 + ice, 70 + ice}, GlassSource: &Memory,
		Setting: Span{120 + ice, 210 + ice}, SettingSource: &Memory,
	},
	{ // polyethylene, of low and high density and drawn
		Melt: Span{110 + ice, 145 + ice}, MeltSource: &Memory,
		Glass: Span{-130 + ice, -80 + ice}, GlassSource: &Memory,
		Setting: Span{80 + ice, 125 + ice}, SettingSource: &Memory,
	},
	{ // polyester (PET): a melting peak was read at about 250 °C
		Melt: Span{250 + ice, 265 + ice}, MeltSource: &Memory,
		Glass: Span{70 + ice, 80 + ice}, GlassSource: &Memory,
		Setting: Span{160 + ice, 220 + ice}, SettingSource: &Memory,
	},
	{ // PVDF
		Melt: Span{165 + ice, 175 + ice}, MeltSource: &Memory,
		Glass: Span{-40 + ice, -30 + ice}, GlassSource: &Memory,
		Setting: nowhere, SettingSource: &Memory,
	},
	{Melt: nowhere, Glass: nowhere, Setting: nowhere, MeltSource: &Memory, GlassSource: &Memory, SettingSource: &Memory},
}

var nowhere = Span{quantity.Temperature(quantity.NaN), quantity.Temperature(quantity.NaN)}

// KeepUnderMelting is how far (K) the oven at its hottest should stay under the lowest melting point. A judgement, no source: ovens,
// dials and melting points are all sure to some kelvin only, and a fibre under stress gives way before it melts.
const KeepUnderMelting = 40

// Dial returns what to set (K) on an oven for a true temperature want, when readings of the dial with a mean of dials went with true ones of
// a mean of probes (all K), and a step of the dial makes slope times that step. With one reading the slope is unknown: 1 moves the dial by
// as much as the oven was off.
func Dial(want, dials, probes quantity.Temperature, slope quantity.Number) quantity.Temperature {
	return dials + (want-probes)/quantity.Temperature(slope)
}

var DialEq = Equation{Symbol: "d", Expr: "D + (T − P) ÷ b", Holds: "oven-line", Source: &LeastSquares}

// Peak returns the hottest (K) that an oven set to a true temperature set gets, when it runs over by o (K) before it settles.
func Peak(set quantity.Temperature, o quantity.TemperatureDifference) quantity.Temperature {
	return set + quantity.Temperature(o)
}

var PeakEq = Equation{Symbol: "P", Expr: "T + o", Holds: "own-oven", Source: &Geometry}

// Margin returns how far (K) a peak stays under a melting point, both K; negative above it.
func Margin(melt, peak quantity.Temperature) quantity.TemperatureDifference {
	return quantity.TemperatureDifference(melt - peak)
}

var MarginEq = Equation{Symbol: "M", Expr: "m − P", Holds: "lowest-melting", Source: &Geometry}

// Frames returns how many frames of length l and width w fit on so many shelves of width and depth at once, lying flat in straight rows, all
// along the width or all along the depth, with a gap g between them and to the walls (all m); 0 where not one fits. Frames that stand or lie
// both ways may fit better: that is for the hands to find.
func Frames(width, depth quantity.Length, shelves quantity.Count, l, w, g quantity.Length) quantity.Count {
	if unknown(float64(width+depth+l+w+g) + float64(shelves)) {
		return quantity.Count(quantity.NaN)
	}
	return shelves * max(row(width, l, g)*row(depth, w, g), row(width, w, g)*row(depth, l, g))
}

// row returns how many pieces of length l fit in a space with a gap g between them and at both ends (all m).
func row(space, l, g quantity.Length) quantity.Count {
	return quantity.Count(max(0, quantity.Floor(float64((space-g)/(l+g)))))
}

// PerLoad returns how many pieces go into the oven at once: so many frames with so many pieces in each.
func PerLoad(frames, pieces quantity.Count) quantity.Count { return frames * pieces }

var PerLoadEq = Equation{Symbol: "N", Expr: "f × n", Holds: "whole-pieces", Source: &Geometry}

// Loads returns how often the oven is filled for n pieces with per of them in each load, rounded up; NaN where none goes in.
func Loads(n, per quantity.Count) quantity.Count {
	if !(per > 0) {
		return quantity.Count(quantity.NaN)
	}
	return quantity.Count(quantity.Ceil(float64(n / per)))
}

var LoadsEq = Equation{Symbol: "k", Expr: "n ÷ N", RoundUp: 1, Holds: "whole-pieces", Source: &Geometry}

// OneStageTime returns how long (s) one load takes from switching on the oven to ready for test, in one stage: preheat p, loading l, recovery
// r, hold a, cooling b, rest s.
func OneStageTime(p, l, r, a, b, s quantity.Time) quantity.Time { return p + l + r + a + b + s }

var OneStageTimeEq = Equation{Symbol: "t", Expr: "p + l + r + a + b + s", Holds: "one-load", Source: &Geometry}

// TwoStageTime returns the same in two stages: the oven stays on, and a second loading and recovery, hold c and cooling d follow the
// re-clamping k.
func TwoStageTime(p, l, r, a, b, k, c, d, s quantity.Time) quantity.Time {
	return p + 2*(l+r) + a + b + k + c + d + s
}

var TwoStageTimeEq = Equation{Symbol: "t", Expr: "p + 2 × (l + r) + a + b + k + c + d + s", Holds: "one-load", Source: &Geometry}
