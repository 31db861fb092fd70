package calc

import (
	"twistbench/calc/craft"
	"twistbench/calc/quantity"
	"twistbench/calc/trial"
)

// Heating is what was typed for the oven, in SI; NaN where a number is unknown. A pair of dial and probe is one reading of the oven. Of the
// times with two, the first is of the first heat-set; in one stage the second ones and Reclamp count for nothing.
type Heating struct {
	Set                     quantity.Temperature // the true temperature wanted
	Overshoot               quantity.TemperatureDifference
	Melt                    quantity.Temperature // typed, or else the book's
	FrameLimit              quantity.Temperature // what frame, glue and yarn stand
	Dial, Probe             [3]quantity.Temperature
	Preheat, Load, Recovery quantity.Time
	Hold, Cool              [2]quantity.Time
	Reclamp, Rest           quantity.Time
	OvenWidth, OvenDepth    quantity.Length
	Shelves                 quantity.Count
	FrameLength, FrameWidth quantity.Length
	FrameGap                quantity.Length
	FramePieces             quantity.Count
}

// firstToMelt returns the place in craft.Polymers of whichever of fibre and companion yarn melts first, or of the one that is not known.
func firstToMelt(p *Plan) quantity.Word {
	fibre, yarn := p.Fibre.Polymer, p.Yarn.Polymer
	if p.Yarn.Strands > 0 && !(craft.Heatings[yarn].Melt.Low >= craft.Heatings[fibre].Melt.Low) && known(craft.Heatings[fibre].Melt.Low) {
		return yarn
	}
	return fibre
}

// oven returns the line through the readings of the oven, probe over dial.
func oven(p *Plan) trial.Line {
	var dial, probe [len(p.Heat.Dial)]float64
	for i := range dial {
		dial[i], probe[i] = float64(p.Heat.Dial[i]), float64(p.Heat.Probe[i])
	}
	return trial.Fit(dial[:], probe[:])
}

// heat works out the answers of the oven.
func heat(p *Plan, r *Results) {
	h := &p.Heat
	line := oven(p)
	r.MeanDial, r.MeanProbe, r.Slope = quantity.Temperature(line.MeanX), quantity.Temperature(line.MeanY), quantity.Number(line.Slope)
	if line.N > 0 && !known(r.Slope) {
		r.Slope = 1 // one reading, or several at one dial
	}
	r.AtSet = craft.AtDial(h.Set, r.MeanDial, r.MeanProbe, r.Slope)
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
	if p.Stages == StagesOne {
		r.HeatTime = craft.OneStageTime(h.Preheat, h.Load, h.Recovery, h.Hold[0], h.Cool[0], h.Rest)
	} else {
		r.HeatTime = craft.TwoStageTime(h.Preheat, h.Load, h.Recovery, h.Hold[0], h.Cool[0], h.Reclamp, h.Hold[1], h.Cool[1], h.Rest)
	}
}

var (
	dialOfLine   = Working{Eq: &craft.DialEq, Terms: []ID{HeatMeanDial, HeatSet, HeatMeanProbe, HeatSlope}}
	dialAsWanted = Working{Method: "dial-as-wanted", Source: &craft.Common, Terms: []ID{HeatSet}}

	// by which pair it is
	oneReading = [...]Working{
		{Method: "one-reading", Source: &craft.Common, Terms: []ID{HeatDial1, HeatProbe1}},
		{Method: "one-reading", Source: &craft.Common, Terms: []ID{HeatDial2, HeatProbe2}},
		{Method: "one-reading", Source: &craft.Common, Terms: []ID{HeatDial3, HeatProbe3}},
	}
	lineFit   = Working{Method: "line-fit", Source: &craft.LeastSquares, Terms: ovenReadings}
	middle    = Working{Method: "middle", Source: &craft.LeastSquares, Terms: ovenReadings}
	oneDial   = Working{Method: "one-dial", Source: &craft.Common, Terms: ovenReadings}
	oneStaged = Working{Eq: &craft.OneStageTimeEq, Terms: []ID{HeatPreheat, HeatLoad, HeatRecovery, HeatHold1, HeatCool1, HeatRest}}
	twoStaged = Working{Eq: &craft.TwoStageTimeEq, Terms: []ID{HeatPreheat, HeatLoad, HeatRecovery, HeatHold1, HeatCool1, HeatReclamp, HeatHold2, HeatCool2, HeatRest}}

	ovenReadings = []ID{HeatDial1, HeatProbe1, HeatDial2, HeatProbe2, HeatDial3, HeatProbe3}

	// where the melting point of each polymer is from
	bookMelts = func() (w [len(craft.Heatings)]Working) {
		for i := range w {
			w[i] = Working{Method: "book-value", Source: craft.Heatings[i].MeltSource}
		}
		return w
	}()
)

func dialWorking(p *Plan) *Working {
	if oven(p).N == 0 {
		return &dialAsWanted
	}
	return &dialOfLine
}

// meanWorking says where the middle of the readings is from.
func meanWorking(p *Plan) *Working {
	if oven(p).N < 2 {
		return reading(p)
	}
	return &middle
}

// slopeWorking says how the oven's step to a step of its dial was found.
func slopeWorking(p *Plan) *Working {
	line := oven(p)
	switch {
	case line.N < 2:
		return reading(p)
	case !known(line.Slope):
		return &oneDial
	}
	return &lineFit
}

// reading is the working of what a single reading gives.
func reading(p *Plan) *Working {
	for i := range oneReading {
		if known(p.Heat.Dial[i] + p.Heat.Probe[i]) {
			return &oneReading[i]
		}
	}
	return &oneReading[0]
}

func heatTimeWorking(p *Plan) *Working {
	if p.Stages == StagesOne {
		return &oneStaged
	}
	return &twoStaged
}
