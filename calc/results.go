package calc

import (
	"twistbench/calc/craft"
	"twistbench/calc/quantity"
)

// results works out the answers of a solved plan but the choice of masses, which choose makes, and the rest.
func results(p *Plan, r *Results) {
	piece := p.Piece()
	strands := [2]*Strand{&p.Fibre, &p.Yarn}

	r.Thin = craft.BundleDiameter(p.SolidArea)
	r.Thick = craft.BundleEnvelope(p.Fibre.Strands, p.Fibre.Diameter, p.Yarn.Strands, p.Yarn.Diameter)
	for i, s := range strands {
		r.Weighed[i] = craft.WeighedTitre(s.WeighedMass, s.WeighedLength)
		r.Implied[i] = craft.ImpliedDensity(r.Weighed[i], s.Area)
		r.Packing[i] = craft.Packing(r.Weighed[i], s.Density, s.Area)
	}
	r.LabelStress = craft.StressOfMass(p.LabelStrength, p.Fibre.Area)

	r.Low = craft.MassOnThickness(p.Stress, p.LoadArea, p.Fibre.Strands, p.Fibre.Area, p.Fibre.Diameter-p.DiameterDoubt)
	r.High = craft.MassOnThickness(p.Stress, p.LoadArea, p.Fibre.Strands, p.Fibre.Area, p.Fibre.Diameter+p.DiameterDoubt)
	r.UnderTotal, r.OverTotal = craft.TotalMass(r.Under.Sum, p.Hook), craft.TotalMass(r.Over.Sum, p.Hook)
	r.UnderStress, r.OverStress = craft.StressOfMass(r.UnderTotal, p.LoadArea), craft.StressOfMass(r.OverTotal, p.LoadArea)
	r.Water = craft.Water(p.Add, p.Bottle)
	r.Rise = craft.Rise(p.Precursor, p.Coiled)
	r.Length = craft.CutLength(p.Precursor, p.Tail)
	r.HookHeight = craft.HookHeight(p.Clearance, p.Stack, r.Length)
	r.DropStart = craft.DropEnergy(p.Mass, p.Clearance)
	r.DropCoiled = craft.DropEnergy(p.Mass, p.Clearance+r.Rise)
	r.TheirStress = craft.StressOnRound(p.TheirMass, p.TheirDiameter)
	r.SameMass = craft.SameStress(r.TheirStress, p.LoadArea)
	r.OfLabel = craft.Share(p.Stress, r.LabelStress)

	r.AllPieces = craft.Pieces(p.Pieces, p.Spare)
	r.Total = craft.TotalLine(r.AllPieces, p.Fibre.Strands, r.Length)
	r.YarnTotal = craft.TotalLine(r.AllPieces, p.Yarn.Strands, r.Length)
	r.FibreMass = craft.FibreMass(p.Fibre.Area, p.Fibre.Density, p.Fibre.Strands, p.Precursor)
	r.TrialRatio = craft.RatioOf(p.TrialPrecursor, p.TrialCoiled)
	r.Muscles = craft.SideBySide(p.Lift, p.LiftStress, p.LoadArea)
	r.MuscleShare = craft.MassShare(p.Lift, r.Muscles)
	r.MuscleForce = craft.HangingForce(r.MuscleShare)
	r.MuscleStress = craft.Stress(r.MuscleForce, p.LoadArea)

	r.Piece, r.Base, r.Last = piece, p.Base(), p.LastGap()
	r.ThisFinished = craft.Released(piece, r.Last, fraction(p.Retained))
	r.OtherTwist = craft.SameTightness(p.PerPrecursor, p.Before, p.OtherDiameter)
	coilResults(p, r)
	r.ThisRatio = craft.RatioOf(p.Precursor, p.Measured)
	r.Move = [2]quantity.Length{craft.Move(piece, p.First), craft.Move(p.First, p.Second)}
	r.SecondOfOne = craft.Stretch(p.Second, p.First)
	r.Real = [2]quantity.Fraction{craft.Stretch(p.First, piece), craft.Stretch(p.Second, r.Base)}
	r.TravelLength, r.Travel = craft.Travel(r.Last, piece), craft.TravelShare(r.Last, piece)
	r.FinTravelLen, r.FinTravel = craft.Travel(r.ThisFinished, piece), craft.TravelShare(r.ThisFinished, piece)
	for i, gap := range [2]quantity.Length{p.First, p.Second} {
		r.Position[i] = craft.Position(p.Zero, gap)
		r.Hole[i] = craft.Hole(gap, p.HolePitch, p.HoleOffset)
		r.HoleGap[i] = craft.HoleGap(r.Hole[i], p.HolePitch, p.HoleOffset)
	}
	base := r.Base
	if p.SecondBase == BaseFirstGap {
		base = r.HoleGap[0]
	}
	r.HoleStretch = [2]quantity.Fraction{craft.Stretch(r.HoleGap[0], piece), craft.Stretch(r.HoleGap[1], base)}

	r.LessMass, r.MoreMass = craft.LessMass(p.Mass), craft.MoreMass(p.Mass)
	r.LessAdd, r.MoreAdd = craft.OnHook(r.LessMass, p.Hook), craft.OnHook(r.MoreMass, p.Hook)
}

// rest works out the answers that no ± is asked of: once for a plan, and not again for every reading that is moved by its ±.
func rest(p *Plan, r *Results) {
	twistRest(p, r)
	coilRest(p, r)
	heat(p, r)
	wire(p, r)
	r.BrokeShare = craft.TurnsShare(p.Broke, r.Onset[0])
}

// last works out the answers that the heat balance is needed for.
func last(p *Plan, r *Results) {
	drive(p, r)
	stroke(p, r)
	r.Efficiency = craft.Efficiency(r.Work, r.CycleEnergy)
	if r.Peaks[1] < p.Drive.Target-1 {
		r.Efficiency = quantity.Fraction(quantity.NaN) // the work is that of the whole stroke
	}
}

// choose finds the two loads nearest to what must be added, from the masses owned.
func (st *State) choose() {
	if st.owned != st.Plan.Owned {
		st.owned = st.Plan.Owned
		st.Set, _ = quantity.ParseList(quantity.KindMass, string(st.owned), Fields[HangOwned].Unit)
	}
	st.pieces = quantity.NaN
	for i := range st.Set {
		if i == 0 {
			st.pieces = 0
		}
		st.pieces += float64(st.Set[i].Count)
	}
	st.Out.Under, st.Out.Over = craft.NearestLoads(st.Set, st.Plan.Add)
}
