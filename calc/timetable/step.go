package timetable

// Do is what is done, or happens, in a step.
type Do uint8

// What is done, in the order of the work.
const (
	DoPreheat   Do = iota // the oven heats up
	DoLoad1               // the load goes in
	DoRecovery1           // the oven gets back to its temperature
	DoHold1
	DoCool1 // the load comes out and cools
	DoReclamp
	DoLoad2
	DoRecovery2
	DoHold2
	DoCool2
	DoRest  // released
	DoReady // to test, from here on

	NumDos
)

// dos says of each its key, the part of the making that it is as long as, and whether hands are needed as it begins.
var dos = [NumDos]struct {
	key   string
	part  Part // NumParts for no length
	hands bool
}{
	DoPreheat:   {"preheat", Preheat, true},
	DoLoad1:     {"load-1", Load, true},
	DoRecovery1: {"recovery-1", Recovery, false},
	DoHold1:     {"hold-1", Hold1, false},
	DoCool1:     {"cool-1", Cool1, true},
	DoReclamp:   {"reclamp", Reclamp, true},
	DoLoad2:     {"load-2", Load, true},
	DoRecovery2: {"recovery-2", Recovery, false},
	DoHold2:     {"hold-2", Hold2, false},
	DoCool2:     {"cool-2", Cool2, true},
	DoRest:      {"rest", Rest, true},
	DoReady:     {"ready", NumParts, true},
}

// Key returns the key of what is done.
func (d Do) Key() string { return dos[d].key }

// Hands reports whether somebody is needed as the step begins.
func (d Do) Hands() bool { return dos[d].hands }

// Oven reports whether the oven is in use.
func (d Do) Oven() bool { return d <= DoHold1 || d >= DoLoad2 && d <= DoHold2 }

// Holds reports whether it is a hold.
func (d Do) Holds() bool { return d == DoHold1 || d == DoHold2 }

// Cools reports whether it is a cooling.
func (d Do) Cools() bool { return d == DoCool1 || d == DoCool2 }

// loads reports whether a step needs a free oven to begin.
func (d Do) loads() bool { return d == DoLoad1 || d == DoLoad2 }

// frees reports whether the oven is free when a step ends.
func (d Do) frees() bool { return d == DoPreheat || d.Holds() }

// Step is one thing that is done with one load.
type Step struct {
	Do            Do
	Load          int // 1 for the first; heating the oven up counts to the first
	Start, Length int // s, the start from the timetable's
}

// End returns when a step ends (s from the timetable's start).
func (s *Step) End() int { return s.Start + s.Length }

// Steps appends the steps of the making to none, in the order of their starts. All loads share one oven: one goes in when the one before it is
// out and its own pieces are ready, all of them for the first heat-set and then all for the second; what is done outside goes on beside. A
// preheat or recovery of no length is left out: the oven is hot. Release stays, however short the rest. A part that is
// unknown, or lasts more than a year, gives no steps, and is returned; NumParts stands for none. More loads than MaxLoads give no steps either.
func Steps(none []Step, t *Times) ([]Step, Part) {
	m := maker{steps: none}
	for p := range NumParts {
		n, ok := t.seconds(p)
		if !ok && !(t.Stages == 1 && p >= Reclamp && p <= Cool2) {
			return none, p
		}
		m.length[p] = n
	}
	loads := max(t.Loads, 1)
	if loads > MaxLoads {
		return none, NumParts
	}
	m.add(DoPreheat, 1)
	for load := 1; load <= loads; load++ {
		for do := DoLoad1; do <= DoCool1; do++ {
			m.add(do, load)
		}
	}
	for load := 1; load <= loads; load++ {
		if t.Stages != 1 {
			for do := DoReclamp; do <= DoCool2; do++ {
				m.add(do, load)
			}
		}
		m.add(DoRest, load)
		m.add(DoReady, load)
	}
	inOrder(m.steps)
	return m.steps, NumParts
}

// maker puts steps one behind the other.
type maker struct {
	steps  []Step
	length [NumParts]int
	after
}

func (m *maker) add(do Do, load int) {
	s := Step{Do: do, Load: load}
	if p := dos[do].part; p < NumParts {
		s.Length = m.length[p]
	}
	s.Start = m.earliest(&s)
	m.note(&s)
	switch do {
	case DoPreheat, DoRecovery1, DoRecovery2:
		if s.Length == 0 {
			return
		}
	}
	m.steps = append(m.steps, s)
}

// after says from when on things can be done (s from the timetable's start).
type after struct {
	load [MaxLoads + 1]int // with each load
	oven int               // in the oven
}

// earliest returns the earliest start of a step.
func (a *after) earliest(s *Step) int {
	if s.Do.loads() {
		return max(a.load[s.Load], a.oven)
	}
	return a.load[s.Load]
}

// note notes a step.
func (a *after) note(s *Step) {
	a.load[s.Load] = s.End()
	if s.Do.frees() {
		a.oven = s.End()
	}
}

// inOrder sorts steps by their starts; what starts together stays as it was.
func inOrder(steps []Step) {
	for i := 1; i < len(steps); i++ {
		for j := i; j > 0 && steps[j-1].Start > steps[j].Start; j-- {
			steps[j-1], steps[j] = steps[j], steps[j-1]
		}
	}
}

// Loads returns how many loads there are.
func Loads(steps []Step) int {
	n := 0
	for i := range steps {
		n = max(n, steps[i].Load)
	}
	return n
}

// Total returns how long all the steps take together (s).
func Total(steps []Step) int {
	most := 0
	for i := range steps {
		most = max(most, steps[i].End())
	}
	return most
}
