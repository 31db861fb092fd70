package calc

import "twistbench/calc/quantity"

// State is everything that follows from a sheet. It is large and meant to be kept and worked again: Work allocates next to nothing.
type State struct {
	_ [0]func() // states are not compared

	solved
	Notices [NumFields]Notice
	Doubt   [NumIDs]float64 // SI; NaN where none is known
	Mostly  [NumIDs]ID      // where the doubt mostly comes from
	Set     []quantity.Item // the masses owned

	sheet  Sheet         // what was worked
	asRead Plan          // the plan before Solve
	owned  quantity.List // what Set was read from
	pieces float64       // in Set; NaN for none
	base   Plan          // the plan from which readings are moved
	moved  solved        // with one reading moved by its doubt
	begun  bool          // and not finished
}

// solved is a plan and the answers to it.
type solved struct {
	Plan Plan
	Out  Results
}

// Work reads a sheet and works out everything that follows.
func (st *State) Work(s *Sheet) {
	st.Begin(s)
	st.Finish()
}

// Begin reads a sheet and works out what follows, but for how hot the muscle gets and how far it moves: that takes longer than all else, and
// Finish does it. Until then those answers are of the sheet before, and nothing else is.
func (st *State) Begin(s *Sheet) {
	st.begun = true
	st.sheet = *s
	Read(s, &st.Plan, &st.Notices)
	st.readCurve()
	st.asRead = st.Plan
	Solve(&st.Plan)
	st.choose()
	results(&st.Plan, &st.Out)
	rest(&st.Plan, &st.Out)
	st.doubts()
	if by := st.Plan.Wire.lineDoubt; known(by) {
		st.Doubt[WireTestPerLength], st.Mostly[WireTestPerLength] = by, WireTest
	}
}

// Finish works out what Begin left, if anything.
func (st *State) Finish() {
	if st.begun {
		last(&st.Plan, &st.Out)
	}
	st.begun = false
}

// Text returns what was typed into a field; empty for what was worked out.
//
//go:noinline
func (st *State) Text(id ID) string {
	if !id.IsField() {
		return ""
	}
	return st.sheet.Text[id]
}

// Type returns sheet s, which the state was worked from, with text typed into field id, so that what was done stays done.
//
// Once a piece is coiled, what was cut is cut: a measured coil, and a count or pitch that takes the ratio's place among the givens, make the
// precursor the given length, as it was worked out: see give. Turns counted on the whole precursor need it or the ratio as a given too: typing them
// makes it one, and where another length takes its place, the turns per metre take theirs.
//
// An empty text gives nothing: a worked-out number stays one.
func (st *State) Type(s Sheet, id ID, text, unit string) Sheet {
	if g, ok := GroupOf(id); ok && text == "" && !s.Given[g].Has(id) {
		return s
	}
	next := s.Type(id, text, unit)
	released := s.Given[ShapeGroup].Has(CutRatio) && !next.Given[ShapeGroup].Has(CutRatio)
	if id == ClampMeasured && text != "" || released || id == TwistTurns && next.looped() {
		return st.give(s, CutPrecursor).Type(id, text, unit)
	}
	if next.looped() {
		return st.give(next, TwistPerPrecursor)
	}
	return next
}

// looped reports whether the turns are given on a precursor that follows from them: through the shape of the coil, which needs the twist.
func (s *Sheet) looped() bool {
	return s.Given[TwistGroup].Has(TwistTurns) && !s.Given[ShapeGroup].Has(CutRatio) && !s.Given[LengthGroup].Has(CutPrecursor)
}

// give returns the sheet with a worked-out member of a group as its given: as round as it is shown, or with up to 7 digits, as many as it takes
// to move no number that is shown.
func (st *State) give(s Sheet, id ID) Sheet {
	x := st.SI(id)
	g, _ := GroupOf(id)
	if s.Given[g].Has(id) || !known(x) {
		return s
	}
	st.Finish() // to compare with
	u := KindOf(id).Unit(id.Unit())
	for digits := id.Digits(); ; digits++ {
		text := string(quantity.AppendTrimmed(nil, x, u, digits, '.'))
		next := s.Type(id, text, u.Symbol)
		if digits >= 7 || st.stays(id, text, next.Given[g]) {
			return next
		}
	}
}

// stays reports whether every number is shown as it is now, in its first unit, with text for the number id in its group.
func (st *State) stays(id ID, text string, given Givens) bool {
	st.Finish()
	m := &st.moved
	m.Plan = st.asRead
	g, _ := GroupOf(id)
	m.Plan.Given[g] = given
	r, _ := KindOf(id).Parse(text, id.Unit())
	m.Plan.Value(id).SetSI(r.SI)
	m.Out.Under, m.Out.Over = st.Out.Under, st.Out.Over
	m.solve()
	rest(&m.Plan, &m.Out)
	last(&m.Plan, &m.Out)
	var now, then [64]byte
	for id := None + 1; id < NumIDs; id++ {
		v := st.Value(id)
		if !v.Is() {
			continue
		}
		u := v.Kind().Unit(id.Unit())
		if string(quantity.Append(now[:0], v.SI(), u, id.Digits(), '.')) != string(quantity.Append(then[:0], m.Value(id).SI(), u, id.Digits(), '.')) {
			return false
		}
	}
	return true
}

// SI returns the value of a number in SI, NaN while it is unknown. A word's is its place in the list.
func (st *State) SI(id ID) float64 {
	if id == HangOwned {
		return st.pieces
	}
	if v := st.Value(id); v.Is() {
		return v.SI()
	}
	return quantity.NaN
}

// Worked reports whether the number was worked out, and not typed: an answer, a member of a group that is not its given, or an empty
// field that has a book value.
func (st *State) Worked(id ID) bool {
	if !id.IsField() {
		return true
	}
	if g, ok := GroupOf(id); ok {
		return !st.Plan.Given[g].Has(id) || id == WireSupplyVoltage && st.Plan.Wire.bookVoltage
	}
	return HasBook(id) && st.sheet.Text[id] == ""
}

// HasBook reports whether an empty field takes a book value: of its polymer, of the supply, or of the leads; or is worked out, or as typed elsewhere.
func HasBook(id ID) bool {
	switch id {
	case FibreDensity, YarnDensity, TwistYoung, TwistShear, HeatMelt, WireMost, WireLeast, WireLeadRating, DrivePower, DriveOn, DriveOff, DriveSpecificHeat, StrokeBeside:
		return true
	}
	return false
}

// Workings returns how a number was worked out, one or two steps; none for what was typed.
func (st *State) Workings(id ID) (steps [2]*Working, n int) {
	add := func(w *Working) {
		if w != nil {
			steps[n] = w
			n++
		}
	}
	switch {
	case !id.IsField():
		w := Answers[id-NumFields].Working
		if w == nil {
			w = choice(&st.Plan, id)
		}
		add(w)
	case !st.Worked(id):
	case id == TwistYoung || id == TwistShear:
		add(&bookModuli)
	case id == HeatMelt:
		add(&bookMelts[firstToMelt(&st.Plan)])
	case id == WireLeadRating:
		add(&bookRating)
	case id == WireMost || id == WireLeast || id == WireSupplyVoltage && st.Plan.Wire.bookVoltage:
		add(supplyBook(&st.Plan))
	case id == StrokeBeside:
		add(&besideOfRows)
	case id == DrivePower && st.Plan.Drive.fast:
		add(&ofFastWire)
	case (id == DriveOn || id == DriveOff) && st.Plan.Drive.wired:
		add(&ofWire[id-DriveOn])
	case id >= DrivePower && id <= DriveOff:
		add(&emptied[id-DrivePower])
	case id == DriveSpecificHeat:
		add(&bookHeats[st.Plan.Fibre.Polymer])
	case HasBook(id):
		add(&bookDensities[strandOf(&st.Plan, id).Polymer])
	default:
		in, out := workings(&st.Plan, id)
		add(in)
		add(out)
	}
	return steps, n
}

// Needs returns the field that must be given before the number id can be known; None when it is known, or when all that it is worked out from
// is there and yet it has no value.
func (st *State) Needs(id ID) ID {
	field, asked := id, id
	for range NumIDs {
		if known(st.SI(id)) {
			return None
		}
		g, grouped := GroupOf(id)
		if st.Plan.Stages == StagesOne && (id == ClampSecond || g == LengthGroup && st.Plan.Given[g].Has(ClampSecond)) {
			return ClampStages
		}
		if id == CoilRodLimit && st.Plan.RodHand == RodOpposite {
			return CoilRodHand
		}
		if id == WireOwnVoltage {
			return WireSupply
		}
		if st.Out.warmth.surrounds && (id == DriveStuck || id == DriveMargin || id == DriveMeltTime || id == DriveSetTime || id == DriveHoldLeast || id == DriveHoldMost || id == DriveEfficiency || id == DriveEnergy) {
			return WireRoute
		}
		if id == DriveEfficiency && st.Out.Peaks[1] < st.Plan.Drive.Target-1 {
			return DrivePower
		}
		if d := &st.Plan.Drive; id >= DriveHottest && id < DriveBiot && (d.Target <= d.Room || d.Way == WayWater && max(d.Room, d.Target) >= st.Out.Boiling) {
			return DriveTarget
		}
		if id >= DriveHeatLeast && id < DriveBiot && st.Plan.Drive.CoolTo >= st.Plan.Drive.Target {
			return DriveCoolTo
		}
		if id == DriveTrialLoss && st.Plan.Drive.TrialHot <= st.Plan.Drive.Room {
			return DriveTrialHot
		}
		if id == DrivePower && st.Plan.Drive.Target <= st.Plan.Drive.Room {
			return DriveTarget
		}
		if (id == WireLength || id == WireOhms || id == WireCurrent || id == DrivePower) && st.Plan.Wire.Route == RouteNone {
			return WireRoute
		}
		if id == StrokeOther && st.Plan.Stroke.Against != AgainstMuscle {
			return StrokeAgainst
		}
		if box := strokeNeeds(&st.Plan, &st.Out, id); box != None {
			return box
		}
		if !st.Worked(id) {
			return id
		}
		if grouped && st.Plan.Given[g].open(&Groups[g], id) {
			return id
		}
		next := None
		steps, n := st.Workings(id)
		for _, w := range steps[:n] {
			for _, t := range w.Terms {
				if next == None && !known(st.SI(t)) {
					next = t
				}
			}
		}
		if next == None && n > 0 && steps[n-1].Method != "" && len(steps[n-1].Terms) > 0 {
			next = steps[n-1].Terms[len(steps[n-1].Terms)-1] // all is known and yet there is none: more of what was searched
		}
		if next == None || next == id {
			if id == asked && grouped || id == WireDummy { // none is needed
				id = None
			}
			return id
		}
		if id = next; id.IsField() {
			field = id
		}
	}
	return field // of those that need one another
}

func strandOf(p *Plan, density ID) *Strand {
	if density == YarnDensity {
		return &p.Yarn
	}
	return &p.Fibre
}
