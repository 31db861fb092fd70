package calc

import (
	"math"

	"twistbench/calc/quantity"
)

// Doubt flows from what the hand measures to what results. Two questions are asked of each plan.
//
// "To get what I typed, how far could this be from what I need?": the givens stay as typed and each reading that goes into them is
// moved by its ±. So the mass for a wanted stress has the caliper's doubt, and the precursor for a wanted coil the ratio's.
//
// "Having hung, cut and clamped these, what did I really get?": the thickness, the mass hung, the ratio, the precursor and the jaw gaps are
// taken as the givens, whichever was typed, and each is moved by its ±. So stress, coiled length, stretch and travel have a doubt too.
//
// The caliper has a part in it where the diameter is what was typed: a label's or a scale's linear density owes it nothing.
//
// Each move is a small difference, scaled up to the whole ±: the first order of JCGM 100:2008, 5.1.2, in which moves are independent and
// combine in quadrature.

// move is one reading of the hand that is moved by its ±.
type move struct {
	id    ID
	by    ID   // the field of its ±; None where size knows it
	given bool // only where it was typed: it, and not another member of its group
}

// between moves what strands side by side measure, while nobody has.
var between = move{id: FibreBundle}

// size returns the ± of a move in SI, NaN where the reading has no part in the question.
func (m *move) size(p *Plan) float64 {
	g, _ := GroupOf(m.id)
	if m.given && !p.Given[g].Has(m.id) && !(m.id == HangMass && p.Given[g].Has(HangAdd)) {
		return quantity.NaN
	}
	switch m.id {
	case CutRatio:
		return ratioDoubt(p)
	case CoilCount:
		return 1
	}
	if m.by == None {
		return unmeasured(p)
	}
	return p.Value(m.by).SI()
}

// apply moves a reading of a plan by d (SI). The gaps are moved where the jaws really are.
func (m *move) apply(p *Plan, d float64) {
	switch m.id {
	case ClampFirst:
		p.jaws.first += quantity.Length(d)
		return
	case ClampSecond:
		p.jaws.second += quantity.Length(d)
		return
	case HangMass:
		p.Add += quantity.Mass(d)
	case FibreBundle:
		if m.by == None {
			p.between += d
			return
		}
	}
	v := p.Value(m.id)
	v.SetSI(v.SI() + d)
}

// unmeasured returns 1, the whole way from the middle to either end of what strands side by side may measure, while that is not measured.
func unmeasured(p *Plan) float64 {
	if bundled(p) && !known(p.Bundle) {
		return 1
	}
	return quantity.NaN
}

// UntriedRatio is the share of a ratio that is doubted as long as no ± is typed for it: it starts at 10 % until own trials exist.
const UntriedRatio = 0.1

func ratioDoubt(p *Plan) float64 {
	if !known(p.RatioDoubt.Size) {
		return UntriedRatio * float64(p.Ratio)
	}
	return p.RatioDoubt.Of(p.Ratio)
}

// step is the part of its ± that a reading is really moved by: so small that nothing but the first order is left, so large that eight digits
// of the difference are, and a power of two.
const step = 1.0 / (1 << 20)

// question is one of the two: the readings moved, and the numbers that are asked about.
type question struct {
	moves []move
	asked []ID
}

var questions = [2]question{
	{
		moves: []move{
			{FibreDiameter, FibreDiameterDoubt, true}, {FibreBundle, FibreDiameterDoubt, false}, between,
			{CoilOutside, FibreDiameterDoubt, true}, {CoilCount, None, true}, {HangMass, HangMassDoubt, true}, {CutRatio, None, false},
			{CutPrecursor, ClampRulerDoubt, true}, {ClampMeasured, ClampRulerDoubt, false}, {ClampRelaxed, ClampRulerDoubt, false},
		},
		asked: []ID{
			FibreLinearDensity, FibreArea, FibreSolidArea, HangLoadArea, HangMass, HangAdd, HangForce, HangSameMass, HangWater, TroubleLess, TroubleLessAdd, TroubleMore, TroubleMoreAdd,
			CutPrecursor, CutFibreMass, ClampFirst, ClampSecond, ClampFirstMove, ClampSecondMove, ClampFirstPosition, ClampSecondPosition,
			TwistThickness, TwistPerTwisted, TwistPerPrecursor, TwistBias, TwistTurns, TwistTime, TwistOther,
		},
	},
	{
		moves: []move{
			{FibreDiameter, FibreDiameterDoubt, true}, {FibreBundle, FibreDiameterDoubt, false}, between,
			{CoilOutside, FibreDiameterDoubt, true}, {CoilCount, None, true}, {HangMass, HangMassDoubt, false}, {CutRatio, None, false},
			{CutPrecursor, ClampRulerDoubt, false}, {ClampMeasured, ClampRulerDoubt, false}, {ClampRelaxed, ClampRulerDoubt, false},
			{ClampFirst, ClampRulerDoubt, false}, {ClampSecond, ClampRulerDoubt, false},
		},
		asked: []ID{
			FibreImplied, FibrePacking, FibreLabelStress, HangStress, HangUnderStress, HangOverStress, HangOfLabel, HangRise,
			ClampCoiled, ClampFinished, ClampThisFinished, ClampFirstReal, ClampSecondReal, ClampSecondOfFirst, ClampThisRatio,
			ClampTravelLength, ClampTravel, ClampFinishedTravelLength, ClampFinishedTravel,
			CoilOutside, CoilMean, CoilIndex, CoilPitch, CoilCount, CoilPerLength, CutRatio, CoilAngle, CoilTurnLength, CoilGap, CoilWrithe, CoilTurns, CoilSolid, CoilTravelLength,
			CoilTravel, CoilFinishedTravel, CoilLastGap, CoilShapeRatio,
		},
	},
}

// Gets reports whether the ± of a number says what was really got; else it says what is needed.
func Gets(id ID) bool {
	for _, asked := range questions[1].asked {
		if asked == id {
			return true
		}
	}
	return false
}

// doubts fills in Doubt and Mostly.
func (st *State) doubts() {
	m := &st.moved
	for id := range st.Doubt {
		st.Doubt[id], st.Mostly[id] = quantity.NaN, None
	}
	var unmoved, sum, most [NumIDs]float64
	for q := range questions {
		asked := questions[q].asked
		if q == 0 {
			st.base = st.asRead
		} else { // what was hung, cut and clamped is what was given
			st.base = st.Plan
			p := &st.base
			p.Given[HangGroup], p.Given[LengthGroup] = Givens{HangMass}, Givens{CutPrecursor}
			p.jaws.set, p.jaws.first, p.jaws.second = true, p.First, p.Second
		}
		for _, id := range asked {
			sum[id], most[id] = 0, 0
		}
		m.Out.Under, m.Out.Over = st.Out.Under, st.Out.Over
		m.Plan = st.base
		m.solve()
		for _, id := range asked {
			unmoved[id] = m.Value(id).SI()
		}
		for i := range questions[q].moves {
			mv := &questions[q].moves[i]
			by := mv.size(&st.base)
			if !(by > 0) {
				continue
			}
			m.Plan = st.base
			mv.apply(&m.Plan, by*step)
			m.solve()
			for _, id := range asked {
				d := (m.Value(id).SI() - unmoved[id]) / step
				if d *= d; d > 0 {
					sum[id] += d
					if d > most[id] {
						most[id], st.Mostly[id] = d, mv.id
					}
				}
			}
		}
		for _, id := range asked {
			if sum[id] > 0 && known(st.SI(id)) {
				st.Doubt[id] = math.Sqrt(sum[id])
			}
		}
	}
	// A stretch that was typed is as sure as the stretch that the jaws really give.
	for _, s := range [2][2]ID{{ClampFirstStretch, ClampFirstReal}, {ClampSecondStretch, ClampSecondReal}} {
		st.Doubt[s[0]], st.Mostly[s[0]] = st.Doubt[s[1]], st.Mostly[s[1]]
	}
	// What was typed with a ± keeps it.
	for id := None + 1; id < NumFields; id++ {
		if f := &Fields[id]; f.Doubt != None && !known(st.Doubt[id]) && !st.Worked(id) && known(st.SI(id)) {
			by := st.SI(f.Doubt)
			if f.Doubt == CutRatioDoubt {
				by = ratioDoubt(&st.Plan)
			}
			if by > 0 {
				st.Doubt[id], st.Mostly[id] = by, id
			}
		}
	}
}

// solve works out the plan, whose loads are chosen already.
func (w *solved) solve() {
	Solve(&w.Plan)
	results(&w.Plan, &w.Out)
}
