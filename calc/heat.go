package calc

import (
	"twistbench/calc/craft"
	"twistbench/calc/quantity"
	"twistbench/calc/trial"
)

// Heating is what was typed for the oven, in SI; NaN where a number is unknown.
type Heating struct {
	_ [0]func() // these are not compared

	Set                               quantity.Temperature // the true temperature wanted
	Overshoot                         quantity.TemperatureDifference
	Melt                              quantity.Temperature                             // typed, or else the book's
	FrameLimit                        quantity.Temperature                             // what frame, glue and yarn stand
	Readings                          [HeatProbe3 - HeatDial1 + 1]quantity.Temperature // dial and probe by turns, from HeatDial1 on
	Times                             [HeatRest - HeatPreheat + 1]quantity.Time        // from HeatPreheat on; in one stage those of the second count for nothing
	OvenWidth, OvenDepth              quantity.Length
	FrameLength, FrameWidth, FrameGap quantity.Length
	Shelves, FramePieces              quantity.Count
}

// firstToMelt returns the place in craft.Polymers of whichever of fibre and companion yarn melts first, or of the one that is not known.
func firstToMelt(p *Plan) quantity.Word {
	fibre, yarn := p.Fibre.Polymer, p.Yarn.Polymer
	if melt := craft.Heatings[fibre].Melt.Low; p.Yarn.Strands > 0 && known(melt) && !(craft.Heatings[yarn].Melt.Low >= melt) {
		return yarn
	}
	return fibre
}

// oven returns the line through the readings of the oven, probe over dial.
func oven(h *Heating) trial.Line {
	var dial, probe [len(h.Readings) / 2]float64
	for i := range dial {
		dial[i], probe[i] = float64(h.Readings[2*i]), float64(h.Readings[2*i+1])
	}
	return trial.Fit(dial[:], probe[:])
}

// heat works out the answers of the oven.
func heat(p *Plan, r *Results) {
	h := &p.Heat
	r.oven = oven(h)
	line := &r.oven
	r.MeanDial, r.MeanProbe, r.Slope = quantity.Temperature(line.MeanX), quantity.Temperature(line.MeanY), quantity.Number(line.Slope)
	if line.N > 0 && !known(r.Slope) {
		r.Slope = 1 // one reading, or several at one dial
	}
	r.Dial = craft.Dial(h.Set, r.MeanDial, r.MeanProbe, r.Slope)
	switch {
	case line.N == 0:
		r.Dial = h.Set
	case !(r.Slope > 0):
		r.Dial = quantity.Temperature(quantity.NaN)
	}
	r.Peak = craft.Peak(h.Set, h.Overshoot)
	r.Margin = craft.Margin(h.Melt, r.Peak)

	r.Frames = craft.Frames(h.OvenWidth, h.OvenDepth, h.Shelves, h.FrameLength, h.FrameWidth, h.FrameGap)
	r.PerLoad = craft.PerLoad(r.Frames, h.FramePieces)
	r.Loads = craft.Loads(r.AllPieces, r.PerLoad)
	t := func(id ID) quantity.Time { return h.Times[id-HeatPreheat] }
	if p.Stages == StagesOne {
		r.HeatTime = craft.OneStageTime(t(HeatPreheat), t(HeatLoad), t(HeatRecovery), t(HeatHold1), t(HeatCool1), t(HeatRest))
	} else {
		r.HeatTime = craft.TwoStageTime(t(HeatPreheat), t(HeatLoad), t(HeatRecovery), t(HeatHold1), t(HeatCool1), t(HeatReclamp), t(HeatHold2), t(HeatCool2), t(HeatRest))
	}
}

var (
	dialOfLine   = Working{Eq: &craft.DialEq, Terms: []ID{HeatMeanDial, HeatSet, HeatMeanProbe, HeatSlope}}
	dialAsWanted = Working{Method: "dial-as-wanted", Source: &craft.Common, Terms: []ID{HeatSet}}
	oneReading   = Working{Method: "one-reading", Source: &craft.Common, Terms: ovenReadings}
	lineFit      = Working{Method: "line-fit", Source: &craft.LeastSquares, Terms: ovenReadings}
	oneStaged    = Working{Eq: &craft.OneStageTimeEq, Terms: []ID{HeatPreheat, HeatLoad, HeatRecovery, HeatHold1, HeatCool1, HeatRest}}
	twoStaged    = Working{Eq: &craft.TwoStageTimeEq, Terms: []ID{HeatPreheat, HeatLoad, HeatRecovery, HeatHold1, HeatCool1, HeatReclamp, HeatHold2, HeatCool2, HeatRest}}

	ovenReadings = []ID{HeatDial1, HeatProbe1, HeatDial2, HeatProbe2, HeatDial3, HeatProbe3}

	// where the melting point of each polymer is from
	bookMelts = [...]Working{
		{Method: "book-value", Source: &craft.MeltTable},
		{Method: "book-value", Source: &craft.Memory},
		{Method: "book-value", Source: &craft.Memory},
		{Method: "book-value", Source: &craft.Memory},
		{Method: "book-value", Source: &craft.Memory},
		{Method: "book-value", Source: &craft.Memory},
	}
)
