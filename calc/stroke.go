package calc

import (
	"twistbench/calc/craft"
	"twistbench/calc/quantity"
)

// The words of StrokeAgainst: what pulls back besides the load.
const (
	AgainstWeight quantity.Word = iota
	AgainstSpring
	AgainstMuscle
)

// The words of StrokeBase.
const (
	OfLoaded quantity.Word = iota
	OfCoiled
	OfFinished
)

// Stroking is what was typed for the load and of own trials, in SI; NaN where a number is unknown.
type Stroking struct {
	_ [0]func() // these are not compared

	Load      quantity.Mass // of all muscles together
	Against   quantity.Word
	Spring    quantity.Stiffness // at the load
	Slack     quantity.Length    // of the muscle, when what pulls back goes slack
	Apart     quantity.Length    // the far ends of a pair
	Wire      quantity.Length    // of the spring
	Outside   quantity.Length
	Turns     quantity.Turns
	Beside    quantity.Count
	Lever     quantity.Number // how many times as far the load moves
	Pulley    quantity.Length
	Own       quantity.Fraction // stroke, of Base
	Base      quantity.Word
	Light     quantity.Mass // of the test of stiffness
	Heavy     quantity.Mass
	ColdUnder [2]quantity.Length // lengths under them
	HotUnder  [2]quantity.Length
	Added     quantity.Mass // and by how much more it hangs under it, cold
	Change    quantity.Length
	ScaleCold quantity.Mass
	ScaleHot  quantity.Mass
	Time      quantity.Time // of the pull

	// How it came about, cold and hot: whether what pulls back is taut, and whether the length is as short or long as it can be; and
	// whether the muscle goes slack when it is held at its cold length.
	taut, limited [2]bool
	slackens      bool

	// Of a pair, when the other one is hot.
	otherTaut, otherStopped bool

	driven bool // the time of the pull is that of Drive

	clipped, straight bool // whether own stroke ends where the turns touch, and whether any of the band draws the coil out straight
}

// ownRate returns the stiffness (N/m) that two masses and the lengths under them tell, the heavy one stretching it more, and whether they were
// typed.
//
//go:noinline
func (t *Stroking) ownRate(under *[2]quantity.Length) (k quantity.Stiffness, own bool) {
	if own = known(t.Light+t.Heavy) && known(under[0]+under[1]); own {
		if k = craft.RateOfMasses(t.Heavy, t.Light, under[1], under[0]); !(under[1] > under[0] && k > 0) {
			k = quantity.Stiffness(quantity.NaN)
		}
	}
	return k, own
}

// needs returns the box that an unknown number of the stroke waits for where the book does not know the fibre, of an own trial if one tells it;
// None where that is not what it waits for.
func (t *Stroking) needs(id ID) ID {
	under, first := &t.ColdUnder, StrokeColdLight
	switch id {
	case StrokeAlong, StrokeAcross:
		return FibrePolymer // no trial tells them
	case StrokeStroke, StrokeFree:
		if known(t.Own) {
			return None
		}
		return StrokeOwn
	case StrokeHotRate:
		under, first = &t.HotUnder, StrokeHotLight
	case StrokeColdRate:
	default:
		return None
	}
	switch {
	case !known(t.Light):
		return StrokeLight
	case !known(t.Heavy):
		return StrokeHeavy
	case !known(under[0]):
		return first
	}
	return first + 1
}

// against returns what the muscle pulls on, whose cold stiffness is k.
//
//go:noinline
func against(p *Plan, r *Results, k quantity.Stiffness) craft.Opposing {
	t := &p.Stroke
	a := craft.Opposing{Weight: r.StrokePull, Slack: t.Slack}
	switch t.Against {
	case AgainstSpring:
		spring := t.Spring
		if !known(spring) {
			spring = r.SpringRate
		}
		a.Spring = craft.SpringAtMuscle(spring, t.Lever, t.Beside)
	case AgainstMuscle:
		a.Spring, a.Slack = k, craft.OtherSlack(t.Apart, r.ThisFinished)
	}
	if !known(a.Slack) { // just taut
		a.Slack = r.ThisFinished
	}
	return a
}

// spread puts the least and the most of three, the usual one between them, at the ends: lengths that end where the turns touch or the fibre
// is straight may leave each in another place.
func spread[T quantity.Length | quantity.Fraction](v *[3]T) {
	v[0], v[2] = min(v[0], v[1], v[2]), max(v[0], v[1], v[2])
}

// outcomes works out what the finished muscle does from the room to a temperature with each end of what is in doubt, by the book but for own
// stiffnesses. It returns the usual of it.
func outcomes(p *Plan, r *Results, hot quantity.Temperature, out *[3]craft.Outcome) (usual craft.Pulls) {
	moduli := moduli(p)
	m := craft.Muscle{
		Fibre: r.Straight, Thickness: p.Thickness, Length: r.ThisFinished, Solid: r.Solid, Coils: p.Count, Twist: p.Turns, Bias: p.Bias,
		Opposite: p.RodHand == RodOpposite, Moduli: &moduli, Warming: craft.Warmings[p.Fibre.Polymer],
	}
	t := &p.Stroke
	cold, ownCold := t.ownRate(&t.ColdUnder)
	if !ownCold && known(t.Added) && known(t.Change) {
		cold, ownCold = craft.RateOfAdded(t.Added, t.Change), true
	}
	warm, ownHot := t.ownRate(&t.HotUnder)
	band := m.Pulls(p.Drive.Room, hot)
	for i := range band {
		e := &band[i]
		kept := craft.Kept(e.Hot.Rate, e.Cold.Rate)
		if ownCold {
			e.Cold.Rate = cold
			e.Hot.Rate = craft.HotRate(cold, kept)
		}
		if ownHot {
			e.Hot.Rate = warm
		}
		out[i] = e.Against(against(p, r, e.Cold.Rate), r.Solid, r.Straight)
		if i == 1 {
			usual = *e
		}
	}
	return usual
}

// stroke works out how far and how hard the muscle pulls.
func stroke(p *Plan, r *Results) {
	t := &p.Stroke
	r.StrokePull = craft.MusclePull(t.Load, t.Lever, t.Beside)
	r.SpringRate = craft.SteelSpringRate(t.Wire, t.Outside, t.Turns)
	r.Along, r.Across = craft.Warmings[p.Fibre.Polymer].Strains(p.Drive.Room, p.Drive.Target)
	if r.FreeStroke = craft.FreeStroke(r.Straight, p.Turns, p.Count, r.Along-r.Across); p.RodHand == RodOpposite {
		r.FreeStroke = -r.FreeStroke
	}
	var out [3]craft.Outcome
	e := outcomes(p, r, p.Drive.Target, &out)
	o := &out[1]
	a := against(p, r, e.Cold.Rate)
	r.Back, r.SlackAt, r.ColdRate, r.HotRate, r.HotFree = a.Spring, a.Slack, e.Cold.Rate, e.Hot.Rate, e.Hot.Free
	own := known(t.Own)
	t.clipped, t.straight = false, false
	if own { // own trials go before
		base := o.Cold
		switch t.Base {
		case OfCoiled:
			base = r.Piece
		case OfFinished:
			base = r.ThisFinished
		}
		r.Strokes[1] = craft.StrokeOf(t.Own, base)
		o.Hot = craft.Contracted(o.Cold, r.Strokes[1])
		if t.clipped = o.Hot < r.Solid; t.clipped {
			o.Hot = r.Solid
			r.Strokes[1] = o.Stroke()
		}
		o.HotPull = a.At(o.Hot)
		r.HotFree = craft.UnloadedLength(o.Hot, o.HotPull, r.HotRate)
		r.FreeStroke = craft.Stroke(r.ThisFinished, r.HotFree)
	}
	for i := range out {
		if own {
			r.Strokes[i] = r.Strokes[1]
			out[i].Cold, out[i].Hot = o.Cold, o.Hot
		} else {
			r.Strokes[i] = out[i].Stroke()
		}
		r.Shares[i] = craft.StrokeShare(r.Strokes[i], out[i].Cold)
		t.straight = t.straight || max(out[i].Cold, out[i].Hot) >= r.Straight
	}
	spread(&r.Strokes)
	spread(&r.Shares)
	r.ColdLength, r.HotLength, r.ColdPull, r.HotPull = o.Cold, o.Hot, o.ColdPull, o.HotPull
	for i, l := range [2]quantity.Length{o.Cold, o.Hot} {
		t.taut[i] = a.Spring != 0 && !(l >= a.Slack)
		t.limited[i] = l == r.Solid || l == r.Straight
	}
	s := r.Strokes[1]
	r.ShareOfCoiled, r.ShareOfFinished = craft.StrokeShare(s, r.Piece), craft.StrokeShare(s, r.ThisFinished)
	r.BlockedPull = craft.HeldForce(r.HotRate, r.ColdLength, r.HotFree)
	if t.slackens = r.BlockedPull < 0; t.slackens {
		r.BlockedPull = 0
	}
	r.HeldGain = r.BlockedPull - r.ColdPull
	r.OtherHot = quantity.Length(quantity.NaN)
	if t.Against == AgainstMuscle {
		each := craft.Pulls{Cold: craft.Pull{Free: r.ThisFinished, Rate: r.ColdRate}, Hot: craft.Pull{Free: r.HotFree, Rate: r.HotRate}}
		both := a.Slack + r.ThisFinished
		_, r.OtherHot = craft.Pair(&each, &each, a.Weight, both, r.Solid, r.Solid)
		t.otherTaut, t.otherStopped = !(r.OtherHot >= both-r.HotFree), r.OtherHot == both-r.Solid || !known(r.Solid)
	}
	r.SpringPull = craft.SpringPull(r.HotPull, r.StrokePull, t.Beside, t.Lever)
	mean := t.Outside - t.Wire
	r.SpringStress = craft.SpringStress(craft.WahlFactor(quantity.Number(mean/t.Wire)), r.SpringPull, mean, t.Wire)
	r.SpringLimit = craft.MusicWire(t.Wire)
	r.Swing = craft.Stroke(r.OtherHot, r.HotLength)
	r.AtLoad = craft.PullAtLoad(r.BlockedPull, t.Beside, t.Lever)
	r.Unequal = craft.Unequal(r.ColdRate, p.RulerDoubt, r.StrokePull)
	r.ScalePull = craft.ScaleForce(t.ScaleCold, t.ScaleHot)
	r.Work = craft.SpringWork(r.ColdPull, r.HotPull, s)
	r.SpecificWork = craft.SpecificWork(r.Work, r.FibreMass)
	time := t.Time
	if t.driven = !known(time) && r.Heats[1] < Never; t.driven {
		time = r.Heats[1]
	}
	r.WorkPower = craft.WorkPower(r.Work, time)
	r.SpecificPower = craft.SpecificPower(r.WorkPower, r.FibreMass)
	r.LoadTravel = craft.LeverStroke(s, t.Lever)
	r.PulleyTurn = craft.PulleyTurn(s, t.Pulley)
}

// StrokeAt returns the strokes (m) that the book expects from the room to a temperature (K): least, usual and most.
func (st *State) StrokeAt(hot quantity.Temperature, strokes *[3]quantity.Length) {
	var out [3]craft.Outcome
	outcomes(&st.Plan, &st.Out, hot, &out)
	for i := range out {
		strokes[i] = out[i].Stroke()
	}
	spread(strokes)
}

var (
	warming      = Working{Method: "warming", Source: &craft.Memory, Terms: []ID{FibrePolymer, DriveRoom, DriveTarget}}
	freeOfTwist  = Working{Eq: &craft.FreeStrokeEq, Terms: []ID{TwistStraight, TwistTurns, StrokeAcross, StrokeAlong, CoilCount}}
	freeOpposite = Working{Eq: &craft.FreeStrokeEq, Terms: []ID{TwistStraight, TwistTurns, StrokeAlong, StrokeAcross, CoilCount}}
	freeOfOwn    = Working{Eq: &craft.StrokeEq, Terms: []ID{ClampThisFinished, StrokeHotFree}}
	hotFreeBook  = Working{Eq: &craft.ContractedEq, Terms: []ID{ClampThisFinished, StrokeFree}}
	hotFreeOwn   = Working{Eq: &craft.UnloadedLengthEq, Terms: []ID{StrokeHotLength, StrokeHotPull, StrokeHotRate}}

	coldOfMasses  = Working{Eq: &craft.RateOfMassesEq, Terms: []ID{StrokeHeavy, StrokeLight, StrokeColdHeavy, StrokeColdLight}}
	hotOfMasses   = Working{Eq: &craft.RateOfMassesEq, Terms: []ID{StrokeHeavy, StrokeLight, StrokeHotHeavy, StrokeHotLight}}
	coldOfAdded   = Working{Eq: &craft.RateOfAddedEq, Terms: []ID{StrokeAdded, StrokeChange}}
	coldOfFibre   = Working{Method: "stiffness", Source: &craft.SteepSpring, Terms: []ID{TwistYoung, TwistShear, TwistThickness, TwistBias, TwistStraight, CoilCount, ClampThisFinished, DriveRoom, FibrePolymer}}
	hotOfCold     = Working{Method: "hot-stiffness", Source: &craft.StrokeCurve, Terms: []ID{StrokeColdRate, TwistBias, ClampThisFinished, CoilCount, TwistYoung, TwistShear, StrokeAlong}}
	slackTyped    = Working{Method: "as-typed", Source: &craft.Geometry, Terms: []ID{StrokeSlack}}
	slackOfPair   = Working{Eq: &craft.OtherSlackEq, Terms: []ID{StrokeApart, ClampThisFinished}}
	slackFinished = Working{Method: "just-taut", Source: &craft.Geometry, Terms: []ID{ClampThisFinished}}
	loadAlone     = Working{Method: "load-alone", Source: &craft.Geometry, Terms: []ID{StrokeAgainst}}
	springShared  = Working{Eq: &craft.SpringAtMuscleEq, Terms: []ID{StrokeSpring, StrokeLever, StrokeBeside}}
	springOfWire  = Working{Eq: &craft.SpringAtMuscleEq, Terms: []ID{StrokeSpringRate, StrokeLever, StrokeBeside}}
	otherMuscle   = Working{Method: "other-muscle", Source: &craft.Geometry, Terms: []ID{StrokeColdRate}}
	lengthLimited = Working{Method: "length-limit", Source: &craft.Geometry, Terms: []ID{CoilSolid, TwistStraight}}
	hotOfOwn      = Working{Eq: &craft.ContractedEq, Terms: []ID{StrokeColdLength, StrokeStroke}}

	// cold and hot
	lengthLoaded  = [2]Working{{Eq: &craft.LoadedLengthEq, Terms: []ID{ClampThisFinished, StrokePull, StrokeColdRate}}, {Eq: &craft.LoadedLengthEq, Terms: []ID{StrokeHotFree, StrokePull, StrokeHotRate}}}
	lengthSettled = [2]Working{
		{Eq: &craft.SettledEq, Terms: []ID{StrokeColdRate, ClampThisFinished, StrokePull, StrokeBack, StrokeSlackAt}},
		{Eq: &craft.SettledEq, Terms: []ID{StrokeHotRate, StrokeHotFree, StrokePull, StrokeBack, StrokeSlackAt}},
	}
	otherSettled = Working{Eq: &craft.PairLengthEq, Terms: []ID{StrokeColdRate, ClampThisFinished, StrokePull, StrokeHotRate, StrokeSlackAt, StrokeHotFree}}
	otherShut    = Working{Method: "other-shut", Source: &craft.Geometry, Terms: []ID{StrokeSlackAt, ClampThisFinished, CoilSolid}}
	powerOfTime  = Working{Eq: &craft.WorkPowerEq, Terms: []ID{StrokeWork, StrokeTime}}
	powerOfDrive = Working{Eq: &craft.WorkPowerEq, Terms: []ID{StrokeWork, DriveHeatMost}}

	pullLoose       = Working{Method: "load-pulls", Source: &craft.Geometry, Terms: []ID{StrokePull}}
	pullTaut        = [2]Working{{Eq: &craft.LoadPullEq, Terms: []ID{StrokePull, StrokeBack, StrokeSlackAt, StrokeColdLength}}, {Eq: &craft.LoadPullEq, Terms: []ID{StrokePull, StrokeBack, StrokeSlackAt, StrokeHotLength}}}
	strokeOfLengths = Working{Eq: &craft.StrokeEq, Terms: []ID{StrokeColdLength, StrokeHotLength}}
	strokeBand      = Working{Method: "stroke-band", Source: &craft.Worked, Terms: []ID{StrokeStroke}}
	strokeOwn       = [...]Working{
		OfLoaded:   {Eq: &craft.StrokeOfEq, Terms: []ID{StrokeOwn, StrokeColdLength}},
		OfCoiled:   {Eq: &craft.StrokeOfEq, Terms: []ID{StrokeOwn, ClampPiece}},
		OfFinished: {Eq: &craft.StrokeOfEq, Terms: []ID{StrokeOwn, ClampThisFinished}},
	}
	shareOfCold = Working{Eq: &craft.StrokeShareEq, Terms: []ID{StrokeStroke, StrokeColdLength}}
	blockedPull = Working{Eq: &craft.HeldForceEq, Terms: []ID{StrokeHotRate, StrokeColdLength, StrokeHotFree}}
	blockedNot  = Working{Method: "goes-slack", Source: &craft.Geometry, Terms: []ID{StrokeHotFree, StrokeColdLength}}
)

// strokeChoice is choice for the answers of the stroke.
func strokeChoice(p *Plan, id ID) *Working {
	t := &p.Stroke
	own, hot := known(t.Own), 0
	switch id {
	case StrokeFree:
		return either(own, &freeOfOwn, either(p.RodHand == RodOpposite, &freeOpposite, &freeOfTwist))
	case StrokeHotFree:
		return either(own, &hotFreeOwn, &hotFreeBook)
	case StrokeColdRate:
		_, own = t.ownRate(&t.ColdUnder)
		return either(own, &coldOfMasses, either(known(t.Added) && known(t.Change), &coldOfAdded, &coldOfFibre))
	case StrokeHotRate:
		_, own = t.ownRate(&t.HotUnder)
		return either(own, &hotOfMasses, &hotOfCold)
	case StrokeBack:
		return either(t.Against == AgainstSpring, either(!known(t.Spring) && known(t.Wire+t.Outside), &springOfWire, &springShared), either(t.Against == AgainstMuscle, &otherMuscle, &loadAlone))
	case StrokeSlackAt:
		if t.Against == AgainstMuscle {
			return either(known(t.Apart), &slackOfPair, &slackFinished)
		}
		return either(known(t.Slack), &slackTyped, &slackFinished)
	case StrokeOther:
		return either(t.otherStopped, &otherShut, either(t.otherTaut, &otherSettled, &lengthLoaded[0]))
	case StrokePower:
		return either(t.driven, &powerOfDrive, &powerOfTime)
	case StrokeStroke:
		return either(t.clipped || !own, &strokeOfLengths, &strokeOwn[t.Base])
	case StrokeLeast, StrokeMost:
		return either(t.clipped, &strokeOfLengths, either(own, &strokeOwn[t.Base], &strokeBand))
	case StrokeShareLeast, StrokeShareMost:
		return either(own, &shareOfCold, &strokeBand)
	case StrokeBlocked:
		return either(t.slackens, &blockedNot, &blockedPull)
	case StrokeHotLength, StrokeHotPull:
		hot = 1
	}
	switch {
	case id == StrokeColdPull || id == StrokeHotPull:
		return either(t.taut[hot], &pullTaut[hot], &pullLoose)
	case id == StrokeHotLength && own && !t.clipped:
		return &hotOfOwn
	case t.limited[hot]:
		return &lengthLimited
	}
	return either(t.taut[hot], &lengthSettled[hot], &lengthLoaded[hot])
}
