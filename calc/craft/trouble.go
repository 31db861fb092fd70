package craft

import "twistbench/calc/quantity"

// What to try when a fibre breaks or snarls: a fifth less or more stress, which is a step that shows and still coils (common practice).

// LessMass returns the hanging mass (kg) for a fifth less stress than m (kg) makes on the same area.
func LessMass(m quantity.Mass) quantity.Mass { return 4 * m / 5 }

var LessMassEq = Equation{Symbol: "m", Expr: "4 × M ÷ 5", Holds: "fifth", Source: &Common}

// MoreMass returns the hanging mass (kg) for a fifth more stress.
func MoreMass(m quantity.Mass) quantity.Mass { return 6 * m / 5 }

var MoreMassEq = Equation{Symbol: "m", Expr: "6 × M ÷ 5", Holds: "fifth", Source: &Common}

// OnHook returns what to put on a hook (kg) so that m (kg) hangs in all: the way back from TotalMass. Negative when the hook alone is heavier.
func OnHook(m, hook quantity.Mass) quantity.Mass { return m - hook }

var OnHookEq = Equation{Symbol: "a", Expr: "m − h", Holds: "static", Source: &Geometry}

// TurnsShare returns the share that k turns are of n.
func TurnsShare(k, n quantity.Turns) quantity.Fraction { return quantity.Fraction(k / n) }

var TurnsShareEq = Equation{Symbol: "q", Expr: "k ÷ n", Holds: "own-count", Source: &Geometry}
