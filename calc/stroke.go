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
	Loaded    quantity.Length // cold, as measured under the load; of a pair it is of no account
	Light     quantity.Mass   // of the test of stiffness
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

	clipped, straight bool // whether own stroke ends where the turns touch, and whether any of the band draws a coil out straight
	drawn             bool // whether what is usual does: no muscle then
	tried             bool // whether the stroke is that of own trials, and no estimate

	coldOwn, hotOwn bool // whether the lengths under two masses were measured
}

// ownPull returns the muscle as two masses and the lengths under them tell it, the heavy one stretching it more, and whether they were typed.
//
//go:noinline
func (t *Stroking) ownPull(under *[2]quantity.Length) (l craft.Pull, own bool) {
	if own = known(t.Light+t.Heavy) && known(under[0]+under[1]); own {
		if l.Rate = craft.RateOfMasses(t.Heavy, t.Light, under[1], under[0]); !(under[1] > under[0] && l.Rate > 0) {
			l.Rate = quantity.Stiffness(quantity.NaN)
		}
		l.Free = craft.FreeOfMass(under[0], t.Light, l.Rate)
	}
	return l, own
}

// loaded reports whether the cold length under the load was measured. Of a pair it says nothing: an equal one rests in the middle.
func (t *Stroking) loaded() bool { return known(t.Loaded) && t.Against != AgainstMuscle }

// stopped returns the box for which there is no stroke: the far ends of a pair that has no room, what draws a coil out straight, or what is hot,
// where that is no warmer than the room or water boils before; None where there may be one.
func stopped(p *Plan, r *Results) ID {
	d, t := &p.Drive, &p.Stroke
	switch {
	case t.Against == AgainstMuscle && (t.drawn && known(t.Apart) || t.Apart < 2*r.Solid):
		return StrokeApart
	case t.drawn && t.loaded():
		return StrokeLoaded
	case t.drawn && t.Against == AgainstSpring && known(t.Slack):
		return StrokeSlack
	case t.drawn:
		return StrokeLoad
	case d.Target <= d.Room || d.Way == WayWater && d.Target >= r.Boiling:
		return DriveTarget
	}
	return None
}

// strokeNeeds returns the box that an unknown number of the stroke waits for: the one that stops it, or, where the book does not know the fibre,
// of an own trial if one tells it; None where that is not what it waits for.
func strokeNeeds(p *Plan, r *Results, id ID) ID {
	t := &p.Stroke
	switch id {
	case StrokeSlackAt, StrokeStroke, StrokeFree, StrokeHotFree, StrokeHotLength, StrokeAlong, StrokeAcross:
		if box := stopped(p, r); box != None {
			return box
		}
	case StrokeWork:
		switch {
		case !(r.Strokes[1] < 0):
		case known(t.Own):
			return StrokeOwn
		case p.RodHand == RodOpposite:
			return CoilRodHand
		case t.Against == AgainstMuscle:
			return StrokeApart
		default:
			return StrokeLoad
		}
	case StrokeSpringRate:
		if t.Outside <= 2*t.Wire {
			return StrokeSpringOutside
		}
	}
	if id == StrokeByMasses && t.coldOwn || id != StrokeByMasses && craft.Warmings[p.Fibre.Polymer] != nil {
		return None
	}
	under, first := &t.ColdUnder, StrokeColdLight
	switch id {
	case StrokeAlong, StrokeAcross:
		return FibrePolymer // no trial tells them
	case StrokeStroke, StrokeFree:
		if known(t.Own) {
			return None
		}
		return StrokeOwn
	case StrokeColdLength:
		if known(t.Light) || t.Against == AgainstMuscle {
			return None
		}
		return StrokeLoaded
	case StrokeHotRate:
		under, first = &t.HotUnder, StrokeHotLight
	case StrokeColdRate, StrokeByMasses:
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

// against returns what a muscle pulls on, which is as cold says.
//
//go:noinline
func against(p *Plan, r *Results, cold craft.Pull) craft.Opposing {
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
		a.Spring, a.Slack = cold.Rate, craft.OtherSlack(t.Apart, cold.Free)
	}
	if !known(a.Slack) { // just taut
		a.Slack = cold.Free
	}
	if stopped(p, r) == StrokeApart {
		a.Slack = quantity.Length(quantity.NaN)
	}
	return a
}

// spread puts the least and the most of three, the usual one between them, at the ends: lengths that end where the turns touch or the fibre
// is straight may leave each in another place.
func spread[T quantity.Length | quantity.Fraction](v *[3]T) {
	v[0], v[2] = min(v[0], v[1], v[2]), max(v[0], v[1], v[2])
}

// outcomes works out what the finished muscle does from the room to a temperature with each end of what is in doubt, by the book but for what was
// measured cold and, if tried, hot. It returns the usual of it.
func outcomes(p *Plan, r *Results, hot quantity.Temperature, tried bool, out *[3]craft.Outcome) (usual craft.Pulls) {
	moduli := moduli(p)
	m := craft.Muscle{
		Fibre: r.Straight, Thickness: p.Thickness, Length: r.ThisFinished, Solid: r.Solid, Coils: p.Count, Twist: p.Turns, Bias: p.Bias,
		Opposite: p.RodHand == RodOpposite, Moduli: &moduli, Warming: craft.Warmings[p.Fibre.Polymer],
	}
	t := &p.Stroke
	cold, ownCold := t.ownPull(&t.ColdUnder)
	ownRate := ownCold
	if !ownCold && known(t.Added) && known(t.Change) {
		cold.Rate, ownRate = craft.RateOfAdded(t.Added, t.Change), true
	}
	warm, ownHot := t.ownPull(&t.HotUnder)
	band := m.Pulls(p.Drive.Room, hot)
	for i := range band {
		e := &band[i]
		kept := craft.Kept(e.Hot.Rate, e.Cold.Rate)
		if ownRate {
			e.Cold.Rate = cold.Rate
			e.Hot.Rate = craft.HotRate(cold.Rate, kept)
		}
		free := e.Cold.Free
		if ownCold {
			free = cold.Free
		}
		if t.loaded() {
			free = craft.UnloadedLength(t.Loaded, against(p, r, craft.Pull{Free: t.Loaded, Rate: e.Cold.Rate}).At(t.Loaded), e.Cold.Rate)
		}
		e.Hot.Free += free - e.Cold.Free
		if e.Cold.Free = free; ownHot && tried {
			e.Hot = warm
		}
		e.Hot.Free += 0 * quantity.Length(hot)
		a := against(p, r, e.Cold)
		least, most := room(p, r, a.Slack+e.Cold.Free)
		if out[i] = e.Against(a, least, most); t.loaded() {
			out[i].Cold, out[i].ColdPull = t.Loaded, a.At(t.Loaded)
		}
		if i == 1 {
			usual = *e
		}
	}
	return usual
}

// room returns how short and how long the muscle can be, the far ends of a pair being so far apart. That the other one is shut stops a hot one
// that pulls, and no cold one that lies loose.
//
//go:noinline
func room(p *Plan, r *Results, both quantity.Length) (least, most quantity.Length) {
	if p.Stroke.Against == AgainstMuscle {
		least, most = craft.PairRoom(both, r.Solid, r.Straight)
		return least, r.Straight + 0*most
	}
	return r.Solid, r.Straight
}

// stroke works out how far and how hard the muscle pulls; nothing of it where that draws a coil out straight.
func stroke(p *Plan, r *Results) {
	t := &p.Stroke
	t.drawn, t.straight = t.Against == AgainstMuscle && t.Apart > 2*r.Straight, false
	if strokes(p, r); t.drawn {
		t.straight = true
		strokes(p, r)
	}
}

// strokes works it out, and whether a coil is drawn out straight.
func strokes(p *Plan, r *Results) {
	t := &p.Stroke
	r.StrokePull = craft.MusclePull(t.Load, t.Lever, t.Beside)
	r.SpringRate = craft.SteelSpringRate(t.Wire, t.Outside, t.Turns)
	hot := p.Drive.Target
	if stopped(p, r) != None {
		hot = quantity.Temperature(quantity.NaN)
	}
	r.Along, r.Across = craft.Warmings[p.Fibre.Polymer].Strains(p.Drive.Room, hot)
	if r.FreeStroke = craft.FreeStroke(r.Straight, p.Turns, p.Count, r.Along-r.Across); p.RodHand == RodOpposite {
		r.FreeStroke = -r.FreeStroke
	}
	var out [3]craft.Outcome
	e := outcomes(p, r, hot, true, &out)
	o := &out[1]
	a := against(p, r, e.Cold)
	both := a.Slack + e.Cold.Free
	least, most := room(p, r, both)
	r.Back, r.SlackAt, r.ColdRate, r.HotRate, r.ColdFree, r.HotFree = a.Spring, a.Slack, e.Cold.Rate, e.Hot.Rate, e.Cold.Free, e.Hot.Free
	own := known(t.Own)
	line, coldOwn := t.ownPull(&t.ColdUnder)
	t.coldOwn = coldOwn
	_, t.hotOwn = t.ownPull(&t.HotUnder)
	t.clipped, t.tried = false, own || t.hotOwn && (t.coldOwn || t.loaded())
	if t.hotOwn && !own {
		r.FreeStroke = craft.Stroke(r.ColdFree, r.HotFree)
	}
	if own { // own trials go before
		base := o.Cold
		switch t.Base {
		case OfCoiled:
			base = r.Piece
		case OfFinished:
			base = r.ThisFinished
		}
		r.Strokes[1] = craft.StrokeOf(t.Own, base) + 0*quantity.Length(hot)
		o.Hot = craft.Contracted(o.Cold, r.Strokes[1])
		if t.clipped = o.Hot < least; t.clipped {
			o.Hot = least
			r.Strokes[1] = o.Stroke()
		}
		o.HotPull = a.At(o.Hot)
		r.HotFree = craft.UnloadedLength(o.Hot, o.HotPull, r.HotRate)
		r.FreeStroke = craft.Stroke(r.ColdFree, r.HotFree)
	}
	for i := range out {
		if own {
			r.Strokes[i] = r.Strokes[1]
			out[i].Cold, out[i].Hot = o.Cold, o.Hot
		} else {
			r.Strokes[i] = out[i].Stroke()
		}
		r.Shares[i] = craft.StrokeShare(r.Strokes[i], out[i].Cold)
		short, long := min(out[i].Cold, out[i].Hot), max(out[i].Cold, out[i].Hot)
		if long >= r.Straight || t.Against == AgainstMuscle && short <= both-r.Straight {
			t.straight, t.drawn = true, t.drawn || i == 1
		}
	}
	spread(&r.Strokes)
	spread(&r.Shares)
	if t.tried { // without an estimate's band
		nan := quantity.NaN
		r.Strokes[0], r.Strokes[2] = quantity.Length(nan), quantity.Length(nan)
		r.Shares[0], r.Shares[2] = quantity.Fraction(nan), quantity.Fraction(nan)
	}
	r.ColdLength, r.HotLength, r.ColdPull, r.HotPull = o.Cold, o.Hot, o.ColdPull, o.HotPull
	for i, l := range [2]quantity.Length{o.Cold, o.Hot} {
		t.taut[i] = a.Spring != 0 && !(l >= a.Slack)
		t.limited[i] = l == least || l == most
	}
	s := r.Strokes[1]
	r.ShareOfCoiled, r.ShareOfFinished = craft.StrokeShare(s, r.Piece), craft.StrokeShare(s, r.ThisFinished)
	r.BlockedPull = craft.HeldForce(r.HotRate, r.ColdLength, r.HotFree)
	if t.slackens = r.BlockedPull < 0; t.slackens {
		r.BlockedPull = 0
	}
	r.HeldGain = r.BlockedPull - r.ColdPull
	r.ByMasses, r.OtherHot = quantity.Length(quantity.NaN), quantity.Length(quantity.NaN)
	if coldOwn {
		r.ByMasses = craft.LengthOfMass(t.ColdUnder[0], r.ColdPull, t.Light, line.Rate)
	}
	if t.Against == AgainstMuscle {
		each := craft.Pulls{Cold: craft.Pull{Free: r.ColdFree, Rate: r.ColdRate}, Hot: craft.Pull{Free: r.HotFree, Rate: r.HotRate}}
		least, most := craft.PairRoom(both, r.Solid, r.Straight)
		_, r.OtherHot = craft.Pair(&each, &each, a.Weight, both, least, most)
		t.otherTaut, t.otherStopped = !(r.OtherHot >= both-r.HotFree), r.OtherHot == most || r.OtherHot == least || !known(r.Solid)
		if r.OtherHot >= r.Straight || r.OtherHot <= both-r.Straight {
			t.straight, t.drawn = true, true
		}
	}
	r.SpringPull = craft.SpringPull(r.HotPull, r.StrokePull, t.Beside, t.Lever)
	mean := t.Outside - t.Wire
	r.SpringStress = craft.SpringStress(craft.WahlFactor(quantity.Number(mean/t.Wire)), r.SpringPull, mean, t.Wire)
	r.SpringLimit = craft.MusicWire(t.Wire)
	r.Swing = craft.Stroke(r.OtherHot, r.HotLength)
	r.AtLoad = craft.PullAtLoad(r.BlockedPull, r.ColdPull, r.StrokePull, t.Beside, t.Lever)
	r.Unequal = craft.Unequal(r.ColdRate, p.RulerDoubt, r.StrokePull)
	r.ScalePull = craft.ScaleForce(t.ScaleCold, t.ScaleHot)
	if r.Work = craft.SpringWork(r.ColdPull, r.HotPull, s); s < 0 {
		r.Work = quantity.Energy(quantity.NaN) // it gets longer, and the load works on it
	}
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
	outcomes(&st.Plan, &st.Out, hot, false, &out)
	for i := range out {
		strokes[i] = out[i].Stroke()
	}
	spread(strokes)
}

var (
	warming      = Working{Method: "warming", Source: &craft.Memory, Terms: []ID{FibrePolymer, DriveRoom, DriveTarget}}
	freeOfTwist  = Working{Eq: &craft.FreeStrokeEq, Terms: []ID{TwistStraight, TwistTurns, StrokeAcross, StrokeAlong, CoilCount}}
	freeOpposite = Working{Eq: &craft.FreeStrokeEq, Terms: []ID{TwistStraight, TwistTurns, StrokeAlong, StrokeAcross, CoilCount}}
	freeOfOwn    = Working{Eq: &craft.StrokeEq, Terms: []ID{StrokeColdFree, StrokeHotFree}}
	hotFreeBook  = Working{Eq: &craft.ContractedEq, Terms: []ID{StrokeColdFree, StrokeFree}}
	hotFreeOwn   = Working{Eq: &craft.UnloadedLengthEq, Terms: []ID{StrokeHotLength, StrokeHotPull, StrokeHotRate}}
	freeFinished = Working{Method: "finished", Source: &craft.Geometry, Terms: []ID{ClampThisFinished}}
	freeOfLoaded = Working{Eq: &craft.UnloadedLengthEq, Terms: []ID{StrokeLoaded, StrokeColdPull, StrokeColdRate}}
	coldOfMass   = Working{Eq: &craft.FreeOfMassEq, Terms: []ID{StrokeColdLight, StrokeLight, StrokeColdRate}}
	hotOfMass    = Working{Eq: &craft.FreeOfMassEq, Terms: []ID{StrokeHotLight, StrokeLight, StrokeHotRate}}
	coldMeasured = Working{Method: "measured", Source: &craft.Geometry, Terms: []ID{StrokeLoaded}}

	coldOfMasses  = Working{Eq: &craft.RateOfMassesEq, Terms: []ID{StrokeHeavy, StrokeLight, StrokeColdHeavy, StrokeColdLight}}
	hotOfMasses   = Working{Eq: &craft.RateOfMassesEq, Terms: []ID{StrokeHeavy, StrokeLight, StrokeHotHeavy, StrokeHotLight}}
	coldOfAdded   = Working{Eq: &craft.RateOfAddedEq, Terms: []ID{StrokeAdded, StrokeChange}}
	coldOfFibre   = Working{Method: "stiffness", Source: &craft.SteepSpring, Terms: []ID{TwistYoung, TwistShear, TwistThickness, TwistBias, TwistStraight, CoilCount, ClampThisFinished, DriveRoom, FibrePolymer}}
	hotOfCold     = Working{Method: "hot-stiffness", Source: &craft.StrokeCurve, Terms: []ID{StrokeColdRate, TwistBias, ClampThisFinished, CoilCount, TwistYoung, TwistShear, StrokeAlong}}
	slackTyped    = Working{Method: "as-typed", Source: &craft.Geometry, Terms: []ID{StrokeSlack}}
	slackOfPair   = Working{Eq: &craft.OtherSlackEq, Terms: []ID{StrokeApart, StrokeColdFree}}
	slackFinished = Working{Method: "just-taut", Source: &craft.Geometry, Terms: []ID{StrokeColdFree}}
	loadAlone     = Working{Method: "load-alone", Source: &craft.Geometry, Terms: []ID{StrokeAgainst}}
	springShared  = Working{Eq: &craft.SpringAtMuscleEq, Terms: []ID{StrokeSpring, StrokeLever, StrokeBeside}}
	springOfWire  = Working{Eq: &craft.SpringAtMuscleEq, Terms: []ID{StrokeSpringRate, StrokeLever, StrokeBeside}}
	otherMuscle   = Working{Method: "other-muscle", Source: &craft.Geometry, Terms: []ID{StrokeColdRate}}
	lengthLimited = Working{Method: "length-limit", Source: &craft.Geometry, Terms: []ID{CoilSolid, TwistStraight}}
	hotOfOwn      = Working{Eq: &craft.ContractedEq, Terms: []ID{StrokeColdLength, StrokeStroke}}

	// cold and hot
	lengthLoaded  = [2]Working{{Eq: &craft.LoadedLengthEq, Terms: []ID{StrokeColdFree, StrokePull, StrokeColdRate}}, {Eq: &craft.LoadedLengthEq, Terms: []ID{StrokeHotFree, StrokePull, StrokeHotRate}}}
	lengthSettled = [2]Working{
		{Eq: &craft.SettledEq, Terms: []ID{StrokeColdRate, StrokeColdFree, StrokePull, StrokeBack, StrokeSlackAt}},
		{Eq: &craft.SettledEq, Terms: []ID{StrokeHotRate, StrokeHotFree, StrokePull, StrokeBack, StrokeSlackAt}},
	}
	otherSettled = Working{Eq: &craft.PairLengthEq, Terms: []ID{StrokeColdRate, StrokeColdFree, StrokePull, StrokeHotRate, StrokeSlackAt, StrokeHotFree}}
	otherShut    = Working{Method: "other-shut", Source: &craft.Geometry, Terms: []ID{StrokeSlackAt, StrokeColdFree, CoilSolid}}
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
		return either(own || t.hotOwn, &freeOfOwn, either(p.RodHand == RodOpposite, &freeOpposite, &freeOfTwist))
	case StrokeHotFree:
		return either(own, &hotFreeOwn, either(t.hotOwn, &hotOfMass, &hotFreeBook))
	case StrokeColdFree:
		return either(t.loaded(), &freeOfLoaded, either(t.coldOwn, &coldOfMass, &freeFinished))
	case StrokeColdRate:
		return either(t.coldOwn, &coldOfMasses, either(known(t.Added) && known(t.Change), &coldOfAdded, &coldOfFibre))
	case StrokeHotRate:
		return either(t.hotOwn, &hotOfMasses, &hotOfCold)
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
	case StrokeLeast, StrokeMost, StrokeShareLeast, StrokeShareMost:
		return &strokeBand
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
	case hot == 0 && t.loaded():
		return &coldMeasured
	case t.limited[hot]:
		return &lengthLimited
	}
	return either(t.taut[hot], &lengthSettled[hot], &lengthLoaded[hot])
}
