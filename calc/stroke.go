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
	Beside    quantity.Count
	Lever     quantity.Number // how many times as far the load moves
	Pulley    quantity.Length
	Own       quantity.Fraction // stroke, of Base
	Base      quantity.Word
	OwnCold   quantity.Stiffness
	OwnHot    quantity.Stiffness
	Masses    [2]quantity.Mass   // of the test of stiffness, the light one first
	ColdUnder [2]quantity.Length // lengths under them
	HotUnder  [2]quantity.Length
	Scale     [2]quantity.Mass // cold and hot
	Time      quantity.Time    // of the pull

	// How it came about, cold and hot: whether what pulls back is taut, and whether the length is as short or long as it can be; and
	// whether the muscle goes slack when it is held at its cold length.
	taut, limited [2]bool
	slackens      bool
}

// muscle returns the plan's finished muscle.
func muscle(p *Plan, r *Results, moduli *craft.Moduli) craft.Muscle {
	return craft.Muscle{
		Fibre: r.Straight, Thickness: p.Thickness, Length: r.ThisFinished, Solid: r.Solid, Coils: p.Count, Twist: p.Turns, Bias: p.Bias,
		Opposite: p.RodHand == RodOpposite, Moduli: moduli, Warming: craft.Warmings[p.Fibre.Polymer],
	}
}

// massesTell reports whether two masses and the lengths under them were typed.
func (t *Stroking) massesTell(under *[2]quantity.Length) bool {
	return known(t.Masses[0]+t.Masses[1]) && known(under[0]+under[1])
}

// ownRate returns the stiffness (N/m) of own trials, where there is one: typed, or from two masses and the lengths under them, NaN
// where those make no spring.
func (t *Stroking) ownRate(typed quantity.Stiffness, under *[2]quantity.Length) (k quantity.Stiffness, own bool) {
	if known(typed) {
		return typed, true
	}
	if !t.massesTell(under) {
		return k, false
	}
	if k = craft.RateOfMasses(t.Masses[1], t.Masses[0], under[1], under[0]); !(under[1] > under[0] && k > 0) {
		k = quantity.Stiffness(quantity.NaN)
	}
	return k, true
}

// pulling returns the band of the muscle's pulls from the room to a temperature, by the book but for own stiffnesses, and what share of the
// cold stiffness the book leaves in the usual of it.
func pulling(p *Plan, r *Results, hot quantity.Temperature) (band [3]craft.Pulls, usual quantity.Fraction) {
	moduli := moduli(p)
	m := muscle(p, r, &moduli)
	band = m.Pulls(p.Drive.Room, hot)
	t := &p.Stroke
	cold, ownCold := t.ownRate(t.OwnCold, &t.ColdUnder)
	warm, ownHot := t.ownRate(t.OwnHot, &t.HotUnder)
	for i := range band {
		e := &band[i]
		kept := craft.Kept(e.Hot.Rate, e.Cold.Rate)
		if i == 1 {
			usual = kept
		}
		if ownCold {
			e.Cold.Rate = cold
			e.Hot.Rate = craft.HotRate(cold, kept)
		}
		if ownHot {
			e.Hot.Rate = warm
		}
	}
	return band, usual
}

// slack returns the length (m) of the muscle at which what pulls back goes slack: where it only just begins to, unless that is typed.
func (t *Stroking) slack(finished quantity.Length) quantity.Length {
	if known(t.Slack) {
		return t.Slack
	}
	return finished
}

// against returns what the muscle pulls on at one end of its band.
func against(p *Plan, r *Results, e *craft.Pulls) craft.Opposing {
	a := craft.Opposing{Weight: r.StrokePull, Slack: p.Stroke.slack(r.ThisFinished)}
	switch p.Stroke.Against {
	case AgainstSpring:
		a.Spring = craft.SpringAtMuscle(p.Stroke.Spring, p.Stroke.Lever, p.Stroke.Beside)
	case AgainstMuscle:
		a.Spring = e.Cold.Rate
	}
	return a
}

// stroke works out how far and how hard the muscle pulls.
func stroke(p *Plan, r *Results) {
	t := &p.Stroke
	r.StrokePull = craft.MusclePull(t.Load, t.Lever, t.Beside)
	r.Along, r.Across = craft.Warmings[p.Fibre.Polymer].Strains(p.Drive.Room, p.Drive.Target)
	if r.FreeStroke = craft.FreeStroke(r.Straight, p.Turns, p.Count, r.Along-r.Across); p.RodHand == RodOpposite {
		r.FreeStroke = -r.FreeStroke
	}
	r.pulls, r.Kept = pulling(p, r, p.Drive.Target)

	var out [3]craft.Outcome
	for i := range r.pulls {
		e := &r.pulls[i]
		out[i] = e.Against(against(p, r, e), r.Solid, r.Straight)
		r.Strokes[i] = out[i].Stroke()
		r.Shares[i] = craft.StrokeShare(r.Strokes[i], out[i].Cold)
	}
	o, e := &out[1], &r.pulls[1]
	a := against(p, r, e)
	r.Back, r.SlackAt = a.Spring, a.Slack
	if known(t.Own) { // own trials go before
		base := o.Cold
		switch t.Base {
		case OfCoiled:
			base = r.Piece
		case OfFinished:
			base = r.ThisFinished
		}
		s := craft.StrokeOf(t.Own, base)
		o.Hot = craft.Contracted(o.Cold, s)
		o.HotPull = a.At(o.Hot)
		r.Strokes = [3]quantity.Length{s, s, s}
		share := craft.StrokeShare(s, o.Cold)
		r.Shares = [3]quantity.Fraction{share, share, share}
		e.Hot.Free = craft.UnloadedLength(o.Hot, o.HotPull, e.Hot.Rate)
		r.FreeStroke = craft.Stroke(r.ThisFinished, e.Hot.Free)
	}
	r.ColdRate, r.HotRate, r.HotFree = e.Cold.Rate, e.Hot.Rate, e.Hot.Free
	r.ColdLength, r.HotLength, r.ColdPull, r.HotPull = o.Cold, o.Hot, o.ColdPull, o.HotPull
	for i, l := range [2]quantity.Length{o.Cold, o.Hot} {
		t.taut[i] = a.Spring != 0 && !(l >= a.Slack)
		t.limited[i] = l == r.Solid || l == r.Straight
	}
	r.OfCoiled, r.OfFinished = craft.StrokeShare(r.Strokes[1], r.Piece), craft.StrokeShare(r.Strokes[1], r.ThisFinished)
	r.BlockedPull = craft.HeldForce(r.HotRate, r.ColdLength, r.HotFree)
	if t.slackens = r.BlockedPull < 0; t.slackens {
		r.BlockedPull = 0
	}
	r.ScalePull = craft.ScaleForce(t.Scale[0], t.Scale[1])
	r.Work = craft.SpringWork(r.ColdPull, r.HotPull, r.Strokes[1])
	r.SpecificWork = craft.SpecificWork(r.Work, r.FibreMass)
	r.WorkPower = craft.WorkPower(r.Work, t.Time)
	r.SpecificPower = craft.SpecificPower(r.WorkPower, r.FibreMass)
	r.LoadTravel = craft.LeverStroke(r.Strokes[1], t.Lever)
	r.PulleyTurn = craft.PulleyTurn(r.Strokes[1], t.Pulley)
	hot, cold := craft.Pair(e, e, a.Slack+r.ThisFinished, r.Solid, r.Solid)
	r.PairTravel = craft.Stroke(cold, hot)
}

// Pulls returns the muscle as it is used, cold and hot, and what it pulls on.
func (st *State) Pulls() (craft.Pulls, craft.Opposing) {
	e := &st.Out.pulls[1]
	return *e, against(&st.Plan, &st.Out, e)
}

// StrokesAt returns the strokes (m) that the book expects from the room to a temperature (K): least, usual and most.
func (st *State) StrokesAt(hot quantity.Temperature) (strokes [3]quantity.Length) {
	p, r := &st.Plan, &st.Out
	band, _ := pulling(p, r, hot)
	for i := range band {
		o := band[i].Against(against(p, r, &band[i]), r.Solid, r.Straight)
		strokes[i] = o.Stroke()
	}
	return strokes
}

var (
	warming      = Working{Method: "warming", Source: &craft.Memory, Terms: []ID{FibrePolymer, DriveRoom, DriveTarget}}
	freeOfTwist  = Working{Eq: &craft.FreeStrokeEq, Terms: []ID{TwistStraight, TwistTurns, StrokeAcross, StrokeAlong, CoilCount}}
	freeOpposite = Working{Eq: &craft.FreeStrokeEq, Terms: []ID{TwistStraight, TwistTurns, StrokeAlong, StrokeAcross, CoilCount}}
	freeOfOwn    = Working{Eq: &craft.StrokeEq, Terms: []ID{ClampThisFinished, StrokeHotFree}}
	hotFreeBook  = Working{Eq: &craft.ContractedEq, Terms: []ID{ClampThisFinished, StrokeFree}}
	hotFreeOwn   = Working{Eq: &craft.UnloadedLengthEq, Terms: []ID{StrokeHotLength, StrokeHotPull, StrokeHotRate}}

	rateTyped     = [2]Working{{Method: "own-rate", Source: &craft.Geometry, Terms: []ID{StrokeOwnCold}}, {Method: "own-rate", Source: &craft.Geometry, Terms: []ID{StrokeOwnHot}}}
	coldOfMasses  = Working{Eq: &craft.RateOfMassesEq, Terms: []ID{StrokeHeavy, StrokeLight, StrokeColdHeavy, StrokeColdLight}}
	hotOfMasses   = Working{Eq: &craft.RateOfMassesEq, Terms: []ID{StrokeHeavy, StrokeLight, StrokeHotHeavy, StrokeHotLight}}
	coldOfFibre   = Working{Method: "stiffness", Source: &craft.SteepSpring, Terms: []ID{TwistYoung, TwistShear, TwistThickness, TwistBias, TwistStraight, CoilCount, ClampThisFinished, DriveRoom, FibrePolymer}}
	hotOfCold     = Working{Eq: &craft.HotRateEq, Terms: []ID{StrokeColdRate, StrokeKept}}
	slackTyped    = Working{Method: "own-rate", Source: &craft.Geometry, Terms: []ID{StrokeSlack}}
	slackFinished = Working{Method: "just-taut", Source: &craft.Geometry, Terms: []ID{ClampThisFinished}}
	loadAlone     = Working{Method: "load-alone", Source: &craft.Geometry, Terms: []ID{StrokeAgainst}}
	springShared  = Working{Eq: &craft.SpringAtMuscleEq, Terms: []ID{StrokeSpring, StrokeLever, StrokeBeside}}
	otherMuscle   = Working{Method: "other-muscle", Source: &craft.Geometry, Terms: []ID{StrokeColdRate}}
	lengthLimited = Working{Method: "length-limit", Source: &craft.Geometry, Terms: []ID{CoilSolid, TwistStraight}}
	hotOfOwn      = Working{Eq: &craft.ContractedEq, Terms: []ID{StrokeColdLength, StrokeStroke}}

	// cold and hot
	lengthLoaded  = [2]Working{{Eq: &craft.LoadedLengthEq, Terms: []ID{ClampThisFinished, StrokePull, StrokeColdRate}}, {Eq: &craft.LoadedLengthEq, Terms: []ID{StrokeHotFree, StrokePull, StrokeHotRate}}}
	lengthSettled = [2]Working{
		{Eq: &craft.SettledEq, Terms: []ID{StrokeColdRate, ClampThisFinished, StrokePull, StrokeBack, StrokeSlackAt}},
		{Eq: &craft.SettledEq, Terms: []ID{StrokeHotRate, StrokeHotFree, StrokePull, StrokeBack, StrokeSlackAt}},
	}
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
		return either(known(t.OwnCold), &rateTyped[0], either(t.massesTell(&t.ColdUnder), &coldOfMasses, &coldOfFibre))
	case StrokeHotRate:
		return either(known(t.OwnHot), &rateTyped[1], either(t.massesTell(&t.HotUnder), &hotOfMasses, &hotOfCold))
	case StrokeBack:
		return either(t.Against == AgainstSpring, &springShared, either(t.Against == AgainstMuscle, &otherMuscle, &loadAlone))
	case StrokeSlackAt:
		return either(known(t.Slack), &slackTyped, &slackFinished)
	case StrokeStroke:
		return either(own, &strokeOwn[t.Base], &strokeOfLengths)
	case StrokeLeast, StrokeMost:
		return either(own, &strokeOwn[t.Base], &strokeBand)
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
	case id == StrokeHotLength && own:
		return &hotOfOwn
	case t.limited[hot]:
		return &lengthLimited
	}
	return either(t.taut[hot], &lengthSettled[hot], &lengthLoaded[hot])
}
