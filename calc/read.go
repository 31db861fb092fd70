package calc

import (
	"twistbench/calc/craft"
	"twistbench/calc/quantity"
)

// Reason says why a text was not taken. It is the key of a sentence: "problem." + Reason.
type Reason string

const (
	NotANumber   Reason = "number"
	BadUnit      Reason = "unit"
	TooLow       Reason = "low"
	TooHigh      Reason = "high"
	NotWhole     Reason = "whole"
	RatioOfOne   Reason = "one"
	NotAWord     Reason = "word"
	BadItem      Reason = "item"
	BadPlies     Reason = "plies"
	NotFinite    Reason = "finite"
	UnknownKey   Reason = "key"
	SaidTwice    Reason = "twice"
	NotADay      Reason = "day"
	NotATime     Reason = "clock"
	SaidAlready  Reason = "already"
	TooFewRows   Reason = "rows"
	NotRising    Reason = "rising"
	TooFewTimes  Reason = "times"
	TooManyVolts Reason = "volts"
)

// Problem is a text that was not taken, and why. The zero Problem is none.
type Problem struct {
	_ [0]func() // problems are not compared

	Reason Reason
	Part   string  // the part of the text that is to blame
	Limit  float64 // SI; the limit that was passed, for TooLow, TooHigh and TooManyVolts
}

// Notice is what is worth saying of each text that was read: a problem, or another reading that is possible.
type Notice struct {
	_ [0]func() // notices are not compared

	Problem
	Lines int    // of pasted rows that are left out; the first is Part
	Other string // the whole text as it would be for the other reading
	Unit  string // symbol of the unit the text was read in
}

// Read makes a plan of the texts of a sheet. What is empty or unreadable is unknown in the plan; notices has a problem for each
// text that was not taken.
func Read(s *Sheet, p *Plan, notices *[NumFields]Notice) {
	*p = Plan{Given: s.Given}
	*notices = [NumFields]Notice{}
	for id := None + 1; id < NumFields; id++ {
		f := &Fields[id]
		v := p.Value(id)
		v.SetSI(quantity.NaN)
		n := &notices[id]
		switch text := s.Text[id]; {
		case f.Words != nil:
			readWord(f, text, v, n)
		case id == WireTest:
			p.Wire.readTest(text, n)
		case text == "" || id == DriveCurve: // see readCurve
		case isList(KindOf(id)):
			readList(f, text, &p.Owned, n)
		default:
			readNumber(f, text, v, n)
			if id == CutRatioDoubt && n.Unit != "" {
				p.RatioDoubt.SetUnit(KindOf(id).Unit(n.Unit))
			}
		}
	}
	// What has a book value takes that of the polymer where it is empty; where it is unreadable it is unknown.
	if s.Text[FibreDensity] == "" {
		p.Fibre.Density = craft.Polymers[p.Fibre.Polymer].Density
	}
	book := craft.DrawnModuli[p.Fibre.Polymer]
	if s.Text[TwistYoung] == "" {
		p.Young = book.Young.Typical
	}
	if s.Text[TwistShear] == "" {
		p.Shear = book.Shear.Typical
	}
	if s.Text[YarnDensity] == "" {
		p.Yarn.Density = craft.Polymers[p.Yarn.Polymer].Density
	}
	empty := &p.Drive.empty
	for id, e := range [...]*bool{&empty.power, &empty.on, &empty.off} {
		*e = s.Text[DrivePower+ID(id)] == ""
	}
	empty.heat = s.Text[DriveSpecificHeat] == ""
	// An empty melting point takes the book's.
	if s.Text[HeatMelt] == "" {
		p.Heat.Melt = craft.Heatings[firstToMelt(p)].Melt.Low
	}
	w := &p.Wire
	w.book(s, &p.Given[SupplyGroup])
	if s.Text[StrokeBeside] == "" {
		p.Stroke.Beside = w.Rows
	}
	w.bookRating = s.Text[WireLeadRating] == ""
}

func readWord(f *Field, text string, v quantity.Ref, n *Notice) {
	i := quantity.Place(f.Words, text)
	if i < 0 && text != "" {
		n.Reason, n.Part = NotAWord, text
	}
	v.SetSI(float64(max(i, 0)))
}

func readList(f *Field, text string, list *quantity.List, n *Notice) {
	items, err := quantity.ParseList(quantity.KindMass, text, f.Unit)
	if err != nil {
		n.refuse(err)
		if n.Reason == NotANumber {
			n.Reason = BadItem
		}
		return
	}
	for _, it := range items {
		if !n.within(f, it.Each) {
			return
		}
	}
	*list = quantity.List(text)
}

func readNumber(f *Field, text string, v quantity.Ref, n *Notice) {
	r, err := v.Kind().Parse(text, f.Unit)
	if err != nil {
		n.refuse(err)
		return
	}
	n.Other = r.Other
	if r.Unit != nil {
		n.Unit = r.Unit.Symbol
	}
	if n.within(f, r.SI) {
		v.SetSI(r.SI)
	} else if n.Reason == TooHigh && v.Kind() == quantity.KindVoltage {
		n.Reason = TooManyVolts
	}
}

// within reports whether what was typed is possible, and says so where it isn't.
//
//go:noinline
func (n *Notice) within(f *Field, si float64) bool {
	switch {
	case si < f.Low:
		n.Reason, n.Limit = TooLow, f.Low
	case si > f.High:
		n.Reason, n.Limit = TooHigh, f.High
	}
	return n.Reason == ""
}

var reasons = []struct {
	err    *error
	reason Reason
}{
	{&quantity.ErrUnit, BadUnit},
	{&quantity.ErrOne, RatioOfOne},
	{&quantity.ErrWhole, NotWhole},
	{&quantity.ErrPlies, BadPlies},
	{&quantity.ErrItem, BadItem},
	{&quantity.ErrPieces, BadItem},
	{&quantity.ErrMany, BadItem},
	{&quantity.ErrNotFinite, NotFinite},
	{&quantity.ErrDay, NotADay},
	{&quantity.ErrClock, NotATime},
}

// refuse says what is wrong with a text.
//
//go:noinline
func (n *Notice) refuse(err error) {
	n.Reason = NotANumber
	if e, ok := err.(*quantity.ParseError); ok { // that is all that quantity returns
		n.Part = e.Part
		for _, r := range reasons {
			if e.Err == *r.err {
				n.Reason = r.reason
			}
		}
	}
}
