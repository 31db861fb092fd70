package quantity

import "unsafe"

// Ref is a place that holds a quantity of some kind, for what treats all kinds alike. The zero Ref is no place.
type Ref struct {
	kind *Kind
	at   unsafe.Pointer
}

// RefTo returns the place at, which holds a quantity of kind k: a Word, List, Rows or RatioDoubt by its style, and else any of the types that
// are a float64.
func RefTo(k *Kind, at unsafe.Pointer) Ref { return Ref{k, at} }

// Is reports whether r is a place.
func (r Ref) Is() bool { return r.kind != nil }

// Kind is the kind of the quantity.
func (r Ref) Kind() *Kind { return r.kind }

// SI is the quantity's value in SI, NaN where it is unknown.
func (r Ref) SI() float64 {
	switch r.kind.Style {
	case StyleWord:
		return (*Word)(r.at).SI()
	case StyleList:
		return (*List)(r.at).SI()
	}
	return *(*float64)(r.at) // of a RatioDoubt its size, of Rows their number, which come first
}

// SetSI sets the quantity to a value in SI.
//
//go:noinline
func (r Ref) SetSI(x float64) {
	switch r.kind.Style {
	case StyleWord:
		(*Word)(r.at).SetSI(x)
	case StyleList:
		(*List)(r.at).SetSI(x)
	default:
		*(*float64)(r.at) = x
	}
}
