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
	When  func(*State) bool
}

// Notes is the table of notes, in the order in which they are shown.
var Notes = [...]Note{
	{"weighed-agrees", FibreWeighed, Fine, func(s *State) bool { return !off(s, 0) && known(s.Out.Packing[0]) }},
	{"weighed-twice", FibreWeighed, Care, func(s *State) bool { return multiple(s, 0) }},
	{"weighed-polymer", FibreWeighed, Care, func(s *State) bool { return off(s, 0) && !multiple(s, 0) && other(s, 0) }},
	{"weighed-light", FibreWeighed, Care, func(s *State) bool { return off(s, 0) && s.Out.Packing[0] < 1 && !other(s, 0) }},
	{"weighed-heavy", FibreWeighed, Care, func(s *State) bool {
		return off(s, 0) && s.Out.Packing[0] > 1 && !multiple(s, 0) && !other(s, 0)
	}},
	{"label-off", FibreLabelStress, Care, func(s *State) bool { return s.Out.LabelStress < 200e6 || s.Out.LabelStress > strongest }},
	{"bundle", FibreThick, Care, func(s *State) bool {
		return bundled(&s.Plan) && !known(s.Plan.Bundle) && s.Out.Thick > 0
	}},
	{"bundle-off", FibreThick, Care, func(s *State) bool {
		grown := quantity.Length(math.Sqrt(float64(s.Plan.Contraction)))
		return s.Plan.Bundle < s.Out.Thin*0.95 || s.Plan.Bundle > s.Out.Thick*grown*1.1
	}},
	{"yarn-size", YarnStrands, Care, func(s *State) bool { return s.Plan.Yarn.Strands > 0 && !known(s.Plan.Yarn.Area) }},
	{"yarn-density", YarnDensity, Care, func(s *State) bool { return s.Plan.Yarn.Strands > 0 && s.Worked(YarnDensity) }},
	{"yarn-agrees", YarnWeighed, Fine, func(s *State) bool { return !off(s, 1) && known(s.Out.Packing[1]) }},
	{"yarn-off", YarnWeighed, Care, func(s *State) bool { return off(s, 1) }},

	{"hook-heavy", HangAdd, Stop, func(s *State) bool { return s.Plan.Add < 0 }},
	{"hook-nothing", HangHook, Care, func(s *State) bool { return s.Plan.Hook == 0 }},
	{"stress-low", HangStress, Care, func(s *State) bool { return s.Plan.Stress < 8e6 }},
	{"stress-high", HangStress, Care, func(s *State) bool {
		return s.Plan.Stress > 40e6 && s.Plan.Stress <= strongest && !(s.Out.OfLabel > 1)
	}},
	{"stress-break", HangStress, Stop, func(s *State) bool { return s.Plan.Stress > strongest }},
	{"over-label", HangStress, Stop, func(s *State) bool { return s.Out.OfLabel > 1 }},
	{"all-area", HangArea, Care, func(s *State) bool { return s.Plan.AreaBase == AreaAll && s.Plan.Yarn.Strands > 0 }},
	{"no-load", HangUnder, Care, func(s *State) bool {
		return s.Plan.Owned != "" && s.Plan.Add > 0 && !known(s.Out.Over.Sum)
	}},
	{"bottle-full", HangWater, Stop, func(s *State) bool { return s.Out.Water < 0 && s.Plan.Add >= 0 }},

	{"ratio-guess", CutRatio, Care, func(s *State) bool { return !known(s.Plan.RatioDoubt.Size) && known(s.Plan.Ratio) }},
	{"ratio-open", CutRatio, Care, func(s *State) bool { return s.Plan.Ratio < craft.ClosedRatio }},
	{"trial-off", CutTrialRatio, Care, func(s *State) bool {
		d := float64(s.Out.TrialRatio - s.Plan.Ratio)
		return d*d > ratioDoubt(&s.Plan)*ratioDoubt(&s.Plan)
	}},
	{"trial-shorter", CutTrialRatio, Stop, func(s *State) bool { return s.Out.TrialRatio <= 1 }},

	{"twist-most", TwistBias, Stop, func(s *State) bool { return s.Plan.PerPrecursor > s.Out.MostTwist }},
	{"twist-hand-own", TwistHand, Care, func(s *State) bool {
		return s.Plan.YarnHand != YarnHandNone && s.Plan.YarnHand-1 != s.Plan.Hand
	}},
	{"onset-early", TwistBias, Care, func(s *State) bool { return s.Plan.Turns > s.Out.Onset[2] }},
	{"coil-thin", CoilOutside, Stop, func(s *State) bool { return s.Plan.Mean < s.Plan.Thickness*(1-1e-9) }},
	{"coil-overlap", CoilOutside, Stop, func(s *State) bool {
		return s.Plan.Mean >= s.Plan.Thickness*(1-1e-9) && s.Out.CoilGap < -overlap(s)
	}},
	{"coil-unlike", CoilOutside, Care, func(s *State) bool {
		i := s.Plan.Index
		return i >= 1 && (i < s.Out.LoadIndex[1]*0.8 || i > s.Out.LoadIndex[2]*1.2)
	}},
	{"coil-open", CoilOutside, Fine, func(s *State) bool { return s.Out.CoilGap > overlap(s) }},
	{"coil-lengths", CoilOutside, Care, func(s *State) bool {
		d := float64(s.Out.ShapeRatio / s.Out.ThisRatio)
		return !s.Plan.Given[ShapeGroup].Has(CutRatio) && (d < 0.93 || d > 1.07)
	}},
	{"coil-unknown", CoilOutside, Stop, func(s *State) bool {
		given := s.Plan.Given[ShapeGroup]
		return known(s.SI(given[0])) && known(s.SI(given[1])) && known(s.Plan.Contraction) && (!known(s.Plan.Pitch) || !known(s.Plan.Mean))
	}},
	{"coil-past", CoilTravel, Stop, func(s *State) bool { return s.Out.CoilTravelLength < 0 }},
	{"rod-same", CoilRodHand, Fine, func(s *State) bool { return known(s.Out.RodMean) && s.Plan.RodHand == RodSame }},
	{"rod-opposite", CoilRodHand, Care, func(s *State) bool { return known(s.Out.RodMean) && s.Plan.RodHand == RodOpposite }},
	{"rod-overlap", CoilRodHand, Stop, func(s *State) bool { return s.Out.RodGap < 0 }},

	{"measured", ClampMeasured, Fine, func(s *State) bool { return known(s.Out.ThisRatio) && s.Out.ThisRatio > 1 }},
	{"measured-long", ClampMeasured, Stop, func(s *State) bool { return s.Out.ThisRatio <= 1 }},
	{"measured-relaxed", ClampMeasured, Care, func(s *State) bool {
		return known(s.Plan.Measured) && s.Plan.MeasuredState == StateRelaxed
	}},
	{"first-wish", ClampFirst, Care, func(s *State) bool { return known(s.Plan.Measured) && s.Plan.Given[LengthGroup].Has(ClampFirst) }},
	{"finished-wish", ClampFinished, Care, func(s *State) bool {
		return known(s.Plan.Measured) && s.Plan.Given[LengthGroup].Has(ClampFinished)
	}},
	{"second-wish", ClampSecond, Care, func(s *State) bool {
		return known(s.Plan.Measured) && s.Plan.Given[LengthGroup].Has(ClampSecond)
	}},
	{"relaxed-guess", ClampRelaxed, Care, func(s *State) bool {
		return s.Plan.Stages == StagesTwo && s.Plan.SecondBase == BaseRelaxed && !known(s.Plan.Relaxed)
	}},
	{"second-shorter", ClampSecond, Care, func(s *State) bool { return s.Plan.Second < s.Plan.First }},
	{"no-room", ClampTravel, Stop, func(s *State) bool { return s.Out.TravelLength <= 0 }},
	{"travel-least", ClampTravel, Care, func(s *State) bool {
		return s.Out.TravelLength > 0 && ratioNow(&s.Plan, &s.Out) < craft.ClosedRatio
	}},

	{"heat-unknown", HeatSet, Stop, func(s *State) bool { return s.Worked(HeatMelt) && !known(s.Plan.Heat.Melt) }},
	{"heat-over", HeatSet, Stop, func(s *State) bool { return s.Plan.Heat.Set >= s.Plan.Heat.Melt }},
	{"heat-cold", HeatSet, Care, tooCold},
	{"heat-loop", HeatSet, Care, looseLoop},
	{"heat-unusual", HeatSet, Care, func(s *State) bool {
		set, usual := s.Plan.Heat.Set, &s.Heating().Setting
		return (set < usual.Low || set > usual.High) && !(set >= s.Plan.Heat.Melt) && !tooCold(s) && !looseLoop(s)
	}},
	{"peak-over", HeatPeak, Stop, func(s *State) bool {
		return s.Out.Peak >= s.Plan.Heat.Melt && !(s.Plan.Heat.Set >= s.Plan.Heat.Melt)
	}},
	{"peak-near", HeatPeak, Care, func(s *State) bool { return s.Out.Margin > 0 && s.Out.Margin < craft.KeepUnderMelting }},
	{"frame-limit", HeatPeak, Stop, func(s *State) bool { return s.Out.Peak > s.Plan.Heat.FrameLimit }},
	{"probe-falls", HeatDial, Stop, func(s *State) bool { return s.Out.Slope <= 0 }},
	{"dial-one", HeatDial, Care, func(s *State) bool { return s.Out.oven.N > 0 && !known(s.Out.oven.Slope) }},
	{"dial-beyond", HeatDial, Care, func(s *State) bool {
		return s.Out.oven.Slope > 0 && known(s.Out.Dial) && !s.Out.oven.Within(float64(s.Out.Dial))
	}},
	{"frame-large", HeatPerLoad, Stop, func(s *State) bool { return s.Out.Frames == 0 }},
}

// Heating returns what is known of the fibre in the oven.
func (st *State) Heating() *craft.Heating { return &craft.Heatings[st.Plan.Fibre.Polymer] }

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
