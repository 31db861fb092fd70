package calc

import (
	"twistbench/calc/craft"
	"twistbench/calc/quantity"
)

// Field is a number that can be typed. A field of a group is worked out while another member is the given.
type Field struct {
	Key    string
	Get    func(*Plan) quantity.Value // where the Plan keeps it
	Unit   string                     // unit of a bare number; "" where the kind has none
	Digits int                        // significant digits shown when worked out
	Start  string                     // text of the start plan
	Low    float64                    // least and most that is possible, SI; both inclusive
	High   float64
	Usual  [2]float64 // SI; outside is accepted with advice; {0, 0} where anything possible is usual
	Words  []string   // what a word field may say, the first is the default
	Doubt  ID         // the field that holds this one's ±
}

// Fields is the table of everything that can be typed. A key is for ever, once it has been in a link.
var Fields = [NumFields]Field{
	FibrePolymer:       {Key: "fibre.polymer", Get: func(p *Plan) quantity.Value { return &p.Fibre.Polymer }, Start: "nylon-66", Words: polymers},
	FibreDiameter:      {Key: "fibre.diameter", Get: func(p *Plan) quantity.Value { return &p.Fibre.Diameter }, Unit: "mm", Digits: 4, Start: "0.52 mm", Low: 1e-6, High: 0.02, Usual: [2]float64{30e-6, 2e-3}, Doubt: FibreDiameterDoubt},
	FibreDiameterDoubt: {Key: "fibre.diameter-doubt", Get: func(p *Plan) quantity.Value { return &p.DiameterDoubt }, Unit: "mm", Digits: 2, Start: "0.01 mm", Low: 0, High: 5e-3},
	FibreLinearDensity: {Key: "fibre.linear-density", Get: func(p *Plan) quantity.Value { return &p.Fibre.LinearDensity }, Unit: "tex", Digits: 4, Low: 1e-9, High: 1},
	FibreArea:          {Key: "fibre.area", Get: func(p *Plan) quantity.Value { return &p.Fibre.Area }, Unit: "mm²", Digits: 4, Low: 1e-13, High: 4e-4},
	FibreDensity:       {Key: "fibre.density", Get: func(p *Plan) quantity.Value { return &p.Fibre.Density }, Unit: "kg/m³", Digits: 4, Low: 100, High: 22000, Usual: [2]float64{850, 2300}},
	FibreStrands:       {Key: "fibre.strands", Get: func(p *Plan) quantity.Value { return &p.Fibre.Strands }, Start: "1", Digits: 1, Low: 1, High: 1000},
	FibreWeighedLength: {Key: "fibre.weighed-length", Get: func(p *Plan) quantity.Value { return &p.Fibre.WeighedLength }, Unit: "m", Digits: 4, Low: 1e-3, High: 1e5},
	FibreWeighedMass:   {Key: "fibre.weighed-mass", Get: func(p *Plan) quantity.Value { return &p.Fibre.WeighedMass }, Unit: "g", Digits: 4, Low: 1e-9, High: 100},
	FibreLabelStrength: {Key: "fibre.label-strength", Get: func(p *Plan) quantity.Value { return &p.LabelStrength }, Unit: "kg", Digits: 3, Low: 1e-3, High: 1000},
	FibreBundle:        {Key: "fibre.bundle", Get: func(p *Plan) quantity.Value { return &p.Bundle }, Unit: "mm", Digits: 4, Low: 1e-6, High: 0.05},
	YarnStrands:        {Key: "yarn.strands", Get: func(p *Plan) quantity.Value { return &p.Yarn.Strands }, Start: "0", Digits: 1, Low: 0, High: 1000},
	YarnPolymer:        {Key: "yarn.polymer", Get: func(p *Plan) quantity.Value { return &p.Yarn.Polymer }, Start: "nylon-66", Words: polymers},
	YarnDiameter:       {Key: "yarn.diameter", Get: func(p *Plan) quantity.Value { return &p.Yarn.Diameter }, Unit: "mm", Digits: 4, Low: 1e-6, High: 0.02, Usual: [2]float64{20e-6, 2e-3}},
	YarnLinearDensity:  {Key: "yarn.linear-density", Get: func(p *Plan) quantity.Value { return &p.Yarn.LinearDensity }, Unit: "dtex", Digits: 4, Low: 1e-9, High: 1},
	YarnArea:           {Key: "yarn.area", Get: func(p *Plan) quantity.Value { return &p.Yarn.Area }, Unit: "mm²", Digits: 4, Low: 1e-13, High: 4e-4},
	YarnDensity:        {Key: "yarn.density", Get: func(p *Plan) quantity.Value { return &p.Yarn.Density }, Unit: "kg/m³", Digits: 4, Low: 100, High: 22000, Usual: [2]float64{850, 9000}},
	YarnWeighedLength:  {Key: "yarn.weighed-length", Get: func(p *Plan) quantity.Value { return &p.Yarn.WeighedLength }, Unit: "m", Digits: 4, Low: 1e-3, High: 1e5},
	YarnWeighedMass:    {Key: "yarn.weighed-mass", Get: func(p *Plan) quantity.Value { return &p.Yarn.WeighedMass }, Unit: "g", Digits: 4, Low: 1e-9, High: 100},

	HangStress:        {Key: "hang.stress", Get: func(p *Plan) quantity.Value { return &p.Stress }, Unit: "MPa", Digits: 4, Start: "17 MPa", Low: 1, High: 5e9, Usual: [2]float64{5e6, 50e6}},
	HangMass:          {Key: "hang.mass", Get: func(p *Plan) quantity.Value { return &p.Mass }, Unit: "g", Digits: 3, Low: 1e-6, High: 1000, Usual: [2]float64{2e-3, 10}, Doubt: HangMassDoubt},
	HangAdd:           {Key: "hang.add", Get: func(p *Plan) quantity.Value { return &p.Add }, Unit: "g", Digits: 3, Low: 0, High: 1000},
	HangForce:         {Key: "hang.force", Get: func(p *Plan) quantity.Value { return &p.Force }, Unit: "N", Digits: 4, Low: 1e-5, High: 1e4},
	HangHook:          {Key: "hang.hook", Get: func(p *Plan) quantity.Value { return &p.Hook }, Unit: "g", Digits: 3, Start: "35 g", Low: 0, High: 100},
	HangArea:          {Key: "hang.area", Get: func(p *Plan) quantity.Value { return &p.AreaBase }, Start: "main", Words: []string{"main", "all"}},
	HangMassDoubt:     {Key: "hang.mass-doubt", Get: func(p *Plan) quantity.Value { return &p.MassDoubt }, Unit: "g", Digits: 2, Start: "1 g", Low: 0, High: 100},
	HangOwned:         {Key: "hang.owned", Get: func(p *Plan) quantity.Value { return &p.Owned }, Unit: "g", Start: "20x2, 50x2, 100, 200", Low: 1e-6, High: 1000},
	HangBottle:        {Key: "hang.bottle", Get: func(p *Plan) quantity.Value { return &p.Bottle }, Unit: "g", Digits: 3, Start: "0 g", Low: 0, High: 100},
	HangClearance:     {Key: "hang.clearance", Get: func(p *Plan) quantity.Value { return &p.Clearance }, Unit: "mm", Digits: 4, Start: "30 mm", Low: 0, High: 10, Usual: [2]float64{0.005, 0.3}},
	HangStack:         {Key: "hang.stack", Get: func(p *Plan) quantity.Value { return &p.Stack }, Unit: "mm", Digits: 4, Start: "120 mm", Low: 0, High: 10},
	HangTheirMass:     {Key: "hang.their-mass", Get: func(p *Plan) quantity.Value { return &p.TheirMass }, Unit: "g", Digits: 3, Low: 1e-6, High: 1000},
	HangTheirDiameter: {Key: "hang.their-diameter", Get: func(p *Plan) quantity.Value { return &p.TheirDiameter }, Unit: "mm", Digits: 4, Low: 1e-6, High: 0.02},

	CutRatio:          {Key: "cut.ratio", Get: func(p *Plan) quantity.Value { return &p.Ratio }, Digits: 4, Start: "4.8", Low: 1.0000001, High: 100, Usual: [2]float64{2, 9}, Doubt: CutRatioDoubt},
	CutRatioDoubt:     {Key: "cut.ratio-doubt", Get: func(p *Plan) quantity.Value { return &p.RatioDoubt }, Digits: 2, Start: "0.2", Low: 0, High: 50},
	CutPrecursor:      {Key: "cut.precursor", Get: func(p *Plan) quantity.Value { return &p.Precursor }, Unit: "mm", Digits: 4, Low: 1e-3, High: 100, Doubt: ClampRulerDoubt},
	CutTail:           {Key: "cut.tail", Get: func(p *Plan) quantity.Value { return &p.Tail }, Unit: "mm", Digits: 4, Start: "40 mm", Low: 0, High: 10},
	CutPieces:         {Key: "cut.pieces", Get: func(p *Plan) quantity.Value { return &p.Pieces }, Digits: 1, Start: "5", Low: 1, High: 1e6},
	CutSpare:          {Key: "cut.spare", Get: func(p *Plan) quantity.Value { return &p.Spare }, Unit: "%", Digits: 3, Start: "20 %", Low: 0, High: 10},
	CutTrialPrecursor: {Key: "cut.trial-precursor", Get: func(p *Plan) quantity.Value { return &p.TrialPrecursor }, Unit: "mm", Digits: 4, Low: 1e-3, High: 100},
	CutTrialCoiled:    {Key: "cut.trial-coiled", Get: func(p *Plan) quantity.Value { return &p.TrialCoiled }, Unit: "mm", Digits: 4, Low: 1e-3, High: 100},
	CutLift:           {Key: "cut.lift", Get: func(p *Plan) quantity.Value { return &p.Lift }, Unit: "kg", Digits: 4, Low: 1e-4, High: 1e5},
	CutLiftStress:     {Key: "cut.lift-stress", Get: func(p *Plan) quantity.Value { return &p.LiftStress }, Unit: "MPa", Digits: 4, Low: 1, High: 5e9, Usual: [2]float64{1e5, 50e6}},

	ClampCoiled:        {Key: "clamp.coiled", Get: func(p *Plan) quantity.Value { return &p.Coiled }, Unit: "mm", Digits: 4, Start: "85 mm", Low: 1e-4, High: 100},
	ClampMeasured:      {Key: "clamp.measured", Get: func(p *Plan) quantity.Value { return &p.Measured }, Unit: "mm", Digits: 4, Low: 1e-4, High: 100, Doubt: ClampRulerDoubt},
	ClampMeasuredState: {Key: "clamp.measured-state", Get: func(p *Plan) quantity.Value { return &p.MeasuredState }, Start: "held", Words: []string{"held", "relaxed"}},
	ClampStages:        {Key: "clamp.stages", Get: func(p *Plan) quantity.Value { return &p.Stages }, Start: "two", Words: []string{"two", "one"}},
	ClampFirstStretch:  {Key: "clamp.first-stretch", Get: func(p *Plan) quantity.Value { return &p.FirstStretch }, Unit: "%", Digits: 4, Start: "18 %", Low: -0.99, High: 20, Usual: [2]float64{0, 1.5}},
	ClampSecondStretch: {Key: "clamp.second-stretch", Get: func(p *Plan) quantity.Value { return &p.SecondStretch }, Unit: "%", Digits: 4, Start: "42 %", Low: -0.99, High: 20, Usual: [2]float64{0, 1.5}},
	ClampSecondBase:    {Key: "clamp.second-base", Get: func(p *Plan) quantity.Value { return &p.SecondBase }, Start: "coiled", Words: []string{"coiled", "first-gap", "relaxed"}},
	ClampRelaxed:       {Key: "clamp.relaxed", Get: func(p *Plan) quantity.Value { return &p.Relaxed }, Unit: "mm", Digits: 4, Low: 1e-4, High: 100, Doubt: ClampRulerDoubt},
	ClampFirst:         {Key: "clamp.first", Get: func(p *Plan) quantity.Value { return &p.First }, Unit: "mm", Digits: 4, Low: 1e-4, High: 100},
	ClampSecond:        {Key: "clamp.second", Get: func(p *Plan) quantity.Value { return &p.Second }, Unit: "mm", Digits: 4, Low: 1e-4, High: 100},
	ClampRetained:      {Key: "clamp.retained", Get: func(p *Plan) quantity.Value { return &p.Retained }, Unit: "%", Digits: 3, Start: "85 %", Low: 0, High: 1, Usual: [2]float64{0.3, 1}},
	ClampFinished:      {Key: "clamp.finished", Get: func(p *Plan) quantity.Value { return &p.Finished }, Unit: "mm", Digits: 4, Low: 1e-4, High: 100},
	ClampRulerDoubt:    {Key: "clamp.ruler-doubt", Get: func(p *Plan) quantity.Value { return &p.RulerDoubt }, Unit: "mm", Digits: 2, Start: "1 mm", Low: 0, High: 0.1},
	ClampZero:          {Key: "clamp.zero", Get: func(p *Plan) quantity.Value { return &p.Zero }, Unit: "mm", Digits: 4, Start: "0 mm", Low: 0, High: 10},
	ClampHolePitch:     {Key: "clamp.hole-pitch", Get: func(p *Plan) quantity.Value { return &p.HolePitch }, Unit: "mm", Digits: 4, Low: 1e-4, High: 1},
	ClampHoleOffset:    {Key: "clamp.hole-offset", Get: func(p *Plan) quantity.Value { return &p.HoleOffset }, Unit: "mm", Digits: 4, Start: "0 mm", Low: -1, High: 1},
}

var polymers = func() (keys []string) {
	for i := range craft.Polymers {
		keys = append(keys, craft.Polymers[i].Key)
	}
	return keys
}()
