package calc

import (
	"math"

	"twistbench/calc/craft"
	"twistbench/calc/quantity"
)

// Level is how much a note matters. Each has a word and a shape of its own on the page.
type Level uint8

const (
	Fine Level = iota // good to know
	Care              // accepted, with advice
	Stop              // impossible, or past a limit
)

// Note is a sentence that some plans call for. Its words are "note." + Key; they name the numbers they need.
type Note struct {
	Key   string
	At    ID // the number it stands under
	Level Level
}

// Notes is the table of notes, in the order in which they are shown.
var Notes = [...]Note{
	{"weighed-agrees", FibreWeighed, Fine},
	{"weighed-twice", FibreWeighed, Care},
	{"weighed-polymer", FibreWeighed, Care},
	{"weighed-light", FibreWeighed, Care},
	{"weighed-heavy", FibreWeighed, Care},
	{"label-off", FibreLabelStress, Care},
	{"bundle", FibreThick, Care},
	{"bundle-off", FibreThick, Care},
	{"yarn-size", YarnStrands, Care},
	{"yarn-density", YarnDensity, Care},
	{"yarn-agrees", YarnWeighed, Fine},
	{"yarn-off", YarnWeighed, Care},

	{"hook-heavy", HangAdd, Stop},
	{"hook-nothing", HangHook, Care},
	{"stress-low", HangStress, Care},
	{"stress-high", HangStress, Care},
	{"stress-break", HangStress, Stop},
	{"over-label", HangStress, Stop},
	{"all-area", HangArea, Care},
	{"no-load", HangUnder, Care},
	{"bottle-full", HangWater, Stop},

	{"ratio-guess", CutRatio, Care},
	{"ratio-open", CutRatio, Care},
	{"trial-off", CutTrialRatio, Care},
	{"trial-shorter", CutTrialRatio, Stop},

	{"twist-most", TwistBias, Stop},
	{"twist-hand-own", TwistHand, Care},
	{"onset-early", TwistBias, Care},

	{"coil-thin", CoilOutside, Stop},
	{"coil-overlap", CoilOutside, Stop},
	{"coil-unlike", CoilOutside, Care},
	{"coil-open", CoilOutside, Fine},
	{"coil-counted", CoilCount, Care},
	{"coil-lengths", CoilOutside, Care},
	{"coil-unknown", CoilOutside, Stop},
	{"coil-past", CoilTravel, Stop},
	{"rod-same", CoilRodHand, Fine},
	{"rod-opposite", CoilRodHand, Care},
	{"rod-overlap", CoilRodHand, Stop},

	{"measured", ClampMeasured, Fine},
	{"measured-shape", ClampMeasured, Fine},
	{"measured-long", ClampMeasured, Stop},
	{"measured-relaxed", ClampMeasured, Care},
	{"first-wish", ClampFirst, Care},
	{"finished-wish", ClampFinished, Care},
	{"second-wish", ClampSecond, Care},
	{"relaxed-guess", ClampRelaxed, Care},
	{"second-shorter", ClampSecond, Care},
	{"no-room", ClampTravel, Stop},
	{"travel-least", ClampTravel, Care},

	{"heat-unknown", HeatSet, Stop},
	{"heat-over", HeatSet, Stop},
	{"heat-cold", HeatSet, Care},
	{"heat-loop", HeatSet, Care},
	{"heat-unusual", HeatSet, Care},
	{"peak-over", HeatPeak, Stop},
	{"peak-near", HeatPeak, Care},
	{"frame-limit", HeatPeak, Stop},
	{"probe-falls", HeatDial, Stop},
	{"dial-one", HeatDial, Care},
	{"dial-beyond", HeatDial, Care},
	{"frame-large", HeatPerLoad, Stop},
	{"less-hook", TroubleLessAdd, Care},
	{"broke-early", TroubleBrokeShare, Care},
	{"broke-late", TroubleBrokeShare, Care},
}

// When reports whether a plan calls for the note. (A function in each row would take more than twice of the page's program.)
func (n *Note) When(s *State) bool {
	p, r := &s.Plan, &s.Out
	switch n.Key {
	case "weighed-agrees":
		return !off(s, 0) && known(r.Packing[0])
	case "weighed-twice":
		return multiple(s, 0)
	case "weighed-polymer":
		return off(s, 0) && !multiple(s, 0) && other(s, 0)
	case "weighed-light":
		return off(s, 0) && r.Packing[0] < 1 && !other(s, 0)
	case "weighed-heavy":
		return off(s, 0) && r.Packing[0] > 1 && !multiple(s, 0) && !other(s, 0)
	case "label-off":
		return r.LabelStress < 200e6 || r.LabelStress > strongest
	case "bundle":
		return bundled(p) && !known(p.Bundle) && r.Thick > 0
	case "bundle-off":
		grown := quantity.Length(math.Sqrt(float64(p.Contraction)))
		return p.Bundle < r.Thin*0.95 || p.Bundle > r.Thick*grown*1.1
	case "yarn-size":
		return p.Yarn.Strands > 0 && !known(p.Yarn.Area)
	case "yarn-density":
		return p.Yarn.Strands > 0 && s.Worked(YarnDensity)
	case "yarn-agrees":
		return !off(s, 1) && known(r.Packing[1])
	case "yarn-off":
		return off(s, 1)
	case "hook-heavy":
		return p.Add < 0
	case "hook-nothing":
		return p.Hook == 0
	case "stress-low":
		return p.Stress < 8e6
	case "stress-high":
		return p.Stress > 40e6 && p.Stress <= strongest && !(r.OfLabel > 1)
	case "stress-break":
		return p.Stress > strongest
	case "over-label":
		return r.OfLabel > 1
	case "all-area":
		return p.AreaBase == AreaAll && p.Yarn.Strands > 0
	case "no-load":
		return p.Owned != "" && p.Add > 0 && !known(r.Over.Sum)
	case "bottle-full":
		return r.Water < 0 && p.Add >= 0
	case "ratio-guess":
		return !known(p.RatioDoubt.Size) && known(p.Ratio)
	case "ratio-open":
		return p.Ratio < craft.ClosedRatio
	case "trial-off":
		d := float64(r.TrialRatio - p.Ratio)
		return d*d > ratioDoubt(p)*ratioDoubt(p)
	case "trial-shorter":
		return r.TrialRatio <= 1
	case "twist-most":
		return p.PerPrecursor > r.MostTwist
	case "twist-hand-own":
		return p.YarnHand != YarnHandNone && p.YarnHand-1 != p.Hand
	case "onset-early":
		return p.Turns > r.Onset[2]
	case "coil-thin":
		return narrow(p)
	case "coil-overlap":
		return !narrow(p) && r.CoilGap < -overlap(s)
	case "coil-unlike":
		i := p.Index
		return i >= 1 && (i < r.LoadIndex[1]*0.8 || i > r.LoadIndex[2]*1.2)
	case "coil-open":
		return r.CoilGap > overlap(s)
	case "coil-counted":
		return p.Given[ShapeGroup].Has(CoilCount) && p.Given[LengthGroup].Has(CutPrecursor) && !known(p.Measured) && known(p.Pitch)
	case "coil-lengths":
		d := float64(r.ShapeRatio / r.ThisRatio)
		return !p.Given[ShapeGroup].Has(CutRatio) && (d < 0.93 || d > 1.07)
	case "coil-unknown":
		given := p.Given[ShapeGroup]
		return known(s.SI(given[0])) && known(s.SI(given[1])) && known(p.Contraction) && !narrow(p) && (!known(p.Pitch) || !known(p.Mean))
	case "coil-past":
		return r.CoilTravelLength < 0
	case "rod-same":
		return known(r.RodMean) && p.RodHand == RodSame
	case "rod-opposite":
		return known(r.RodMean) && p.RodHand == RodOpposite
	case "rod-overlap":
		return r.RodGap < 0
	case "measured":
		return known(r.ThisRatio) && r.ThisRatio > 1
	case "measured-shape":
		return !p.Given[ShapeGroup].Has(CutRatio) && s.Apart() > float64(p.RulerDoubt)
	case "measured-long":
		return r.ThisRatio <= 1
	case "measured-relaxed":
		return known(p.Measured) && p.MeasuredState == StateRelaxed
	case "first-wish":
		return known(p.Measured) && p.Given[LengthGroup].Has(ClampFirst)
	case "finished-wish":
		return known(p.Measured) && p.Given[LengthGroup].Has(ClampFinished)
	case "second-wish":
		return known(p.Measured) && p.Given[LengthGroup].Has(ClampSecond)
	case "relaxed-guess":
		return p.Stages == StagesTwo && p.SecondBase == BaseRelaxed && !known(p.Relaxed)
	case "second-shorter":
		return p.Second < p.First
	case "no-room":
		return r.TravelLength <= 0
	case "travel-least":
		return r.TravelLength > 0 && ratioNow(p, r) < craft.ClosedRatio
	case "heat-unknown":
		return s.Worked(HeatMelt) && !known(p.Heat.Melt)
	case "heat-over":
		return p.Heat.Set >= p.Heat.Melt
	case "heat-cold":
		return tooCold(s)
	case "heat-loop":
		return looseLoop(s)
	case "heat-unusual":
		usual := &s.Heating().Setting
		return (p.Heat.Set < usual.Low || p.Heat.Set > usual.High) && !(p.Heat.Set >= p.Heat.Melt) && !tooCold(s) && !looseLoop(s)
	case "peak-over":
		return r.Peak >= p.Heat.Melt && !(p.Heat.Set >= p.Heat.Melt)
	case "peak-near":
		return r.Margin > 0 && r.Margin < craft.KeepUnderMelting
	case "frame-limit":
		return r.Peak > p.Heat.FrameLimit
	case "probe-falls":
		return r.Slope <= 0
	case "dial-one":
		return r.oven.N > 0 && !known(r.oven.Slope)
	case "dial-beyond":
		return r.oven.Slope > 0 && known(r.Dial) && !r.oven.Within(float64(r.Dial))
	case "frame-large":
		return r.Frames == 0
	case "less-hook":
		return r.LessAdd < 0
	case "broke-early":
		return p.Broke < r.Onset[1]
	case "broke-late":
		return p.Broke >= r.Onset[1]
	}
	return false
}

// Heating returns what is known of the fibre in the oven.
func (st *State) Heating() *craft.Heating { return &craft.Heatings[st.Plan.Fibre.Polymer] }

// Apart returns by how much (m) the length measured on the piece is another than what was cut and the shape of its coil make.
func (st *State) Apart() float64 { return math.Abs(float64(st.Plan.Coiled - st.Plan.Measured)) }

// tooCold reports whether the oven stays under the glass transition.
func tooCold(s *State) bool { return s.Plan.Heat.Set < s.Heating().Glass.High }

// looseLoop reports whether nylon is set so cool that it may spring open. Set below 150 °C is well below the 160 °C and more of most makers
// (loops given 93 °C for 10 minutes hardly set; both from makers' notes).
func looseLoop(s *State) bool {
	return s.Plan.Fibre.Polymer <= PolymerNylon66 && s.Plan.Heat.Set < 150+273.15 && !tooCold(s)
}

// strongest is more than the fibres in Polymers hold before they are twisted (Pa; 450 to 1000 MPa for nylon line and drawn nylon, from memory).
const strongest = 1300e6

// off reports whether scale and caliper disagree by more than the caliper's doubt and 5 % for the scale, the ruler and the polymer's
// own spread.
func off(s *State, i int) bool {
	p := float64(s.Out.Packing[i])
	id := FibrePacking
	if i == 1 {
		id = YarnPacking
	}
	slack := 0.05
	if d := s.Doubt[id]; known(d) {
		slack += d
	}
	return p < 1-slack || p > 1+slack
}

// overlap returns the gap between turns (m) that is within what was measured: its own ± and a hundredth of the thickness.
func overlap(s *State) quantity.Length {
	slack := s.Plan.Thickness / 100
	if d := s.Doubt[CoilGap]; known(d) {
		slack += quantity.Length(d)
	}
	return slack
}

// multiple reports whether the strand weighs a whole number of times what its size says: the plies on the label were forgotten.
func multiple(s *State, i int) bool {
	p := float64(s.Out.Packing[i])
	for n := 2.0; n <= 4; n++ {
		if p > n*0.93 && p < n*1.07 {
			return true
		}
	}
	return false
}

// other reports whether the weighed strand is as dense as a polymer other than the one chosen, though it was measured as solid.
func other(s *State, i int) bool {
	strand := &s.Plan.Fibre
	if i == 1 {
		strand = &s.Plan.Yarn
	}
	n := craft.Nearest(s.Out.Implied[i])
	return n >= 0 && n != int(strand.Polymer) && craft.Polymers[n].Density != craft.Polymers[strand.Polymer].Density
}

// bundled reports whether more than one strand is twisted together, so that thickness is a range.
func bundled(p *Plan) bool { return p.Fibre.Strands > 1 || p.Yarn.Strands > 0 }

// ratioNow returns the ratio of the piece at hand: as measured, or else as planned.
func ratioNow(p *Plan, r *Results) float64 {
	if known(p.Measured) {
		return float64(r.ThisRatio)
	}
	return float64(p.Ratio)
}
