package craft

import (
	"math"

	"twistbench/calc/quantity"
)

// HangingForce returns the weight (N) of a hanging mass m (kg) at standard gravity.
func HangingForce(m quantity.Mass) quantity.Force {
	return quantity.Force(float64(m) * StandardGravity)
}

var HangingForceEq = Equation{Symbol: "F", Expr: "m × g", Const: gravity, Holds: "static", Source: &Geometry}

// MassForForce returns the hanging mass (kg) whose weight is f (N).
func MassForForce(f quantity.Force) quantity.Mass { return quantity.Mass(float64(f) / StandardGravity) }

var MassForForceEq = Equation{Symbol: "m", Expr: "F ÷ g", Const: gravity, Holds: "static", Source: &Geometry}

// Stress returns the stress (Pa) of a force f (N) on an area a (m²).
func Stress(f quantity.Force, a quantity.Area) quantity.Stress {
	return quantity.Stress(float64(f) / float64(a))
}

var StressEq = Equation{Symbol: "σ", Expr: "F ÷ A", Holds: "before-twist", Source: &Geometry}

// ForceForStress returns the force (N) that puts a stress s (Pa) on an area a (m²).
func ForceForStress(s quantity.Stress, a quantity.Area) quantity.Force {
	return quantity.Force(float64(s) * float64(a))
}

var ForceForStressEq = Equation{Symbol: "F", Expr: "σ × A", Holds: "before-twist", Source: &Geometry}

// ForceForAdded returns the force (N) of a mass added to a hook.
func ForceForAdded(add, hook quantity.Mass) quantity.Force { return HangingForce(add + hook) }

var ForceForAddedEq = Equation{Symbol: "F", Expr: "(m + h) × g", Const: gravity, Holds: "static", Source: &Geometry}

// AddedMass returns what to add to a hook (kg) so that the whole weighs f (N). Negative when the hook alone is too heavy.
func AddedMass(f quantity.Force, hook quantity.Mass) quantity.Mass { return MassForForce(f) - hook }

var AddedMassEq = Equation{Symbol: "m", Expr: "F ÷ g − h", Const: gravity, Holds: "static", Source: &Geometry}

// TotalMass returns what hangs in all (kg): what was added, and the hook.
func TotalMass(add, hook quantity.Mass) quantity.Mass { return add + hook }

var TotalMassEq = Equation{Symbol: "M", Expr: "m + h", Holds: "static", Source: &Geometry}

// MassOnThickness returns the hanging mass (kg) that keeps the stress s (Pa) when one strand of n measures d (m) instead of having the
// area a (m²) that is part of the loaded area load (m²).
func MassOnThickness(s quantity.Stress, load quantity.Area, n quantity.Count, a quantity.Area, d quantity.Length) quantity.Mass {
	return MassForForce(ForceForStress(s, load+quantity.Area(n)*(Area(d)-a)))
}

var (
	MassOnThinnerEq = Equation{Symbol: "m", Expr: "σ × (A + n × (π × (d − u)² ÷ 4 − a)) ÷ g", Const: gravity, Holds: "caliper-alone", Source: &Geometry}
	MassOnThickerEq = Equation{Symbol: "m", Expr: "σ × (A + n × (π × (d + u)² ÷ 4 − a)) ÷ g", Const: gravity, Holds: "caliper-alone", Source: &Geometry}
)

// StressOfMass returns the stress (Pa) of a hanging mass m (kg) on an area a (m²).
func StressOfMass(m quantity.Mass, a quantity.Area) quantity.Stress {
	return Stress(HangingForce(m), a)
}

var StressOfMassEq = Equation{Symbol: "σ", Expr: "m × g ÷ A", Const: gravity, Holds: "before-twist", Source: &Geometry}

// StressOnRound returns the stress (Pa) of a hanging mass m (kg) on one solid round strand of diameter d (m).
func StressOnRound(m quantity.Mass, d quantity.Length) quantity.Stress {
	return StressOfMass(m, Area(d))
}

var StressOnRoundEq = Equation{Symbol: "σ", Expr: "4 × m × g ÷ (π × d²)", Const: gravity, Holds: "solid-round", Source: &Geometry}

// Rise returns how far (m) the hanging mass climbs while a precursor p (m) coils to c (m).
func Rise(p, c quantity.Length) quantity.Length { return p - c }

var RiseEq = Equation{Symbol: "h", Expr: "P − L", Holds: "tails-hang", Source: &Geometry}

// HookHeight returns how high (m) above the tray the upper hook must be: clearance under the stack, the stack of masses
// itself, and the cut length with its tails.
func HookHeight(clearance, stack, cut quantity.Length) quantity.Length {
	return clearance + stack + cut
}

var HookHeightEq = Equation{Symbol: "H", Expr: "c + s + l", Holds: "knots-take-length", Source: &Geometry}

// DropEnergy returns the energy (J) of a mass m (kg) that falls h (m).
func DropEnergy(m quantity.Mass, h quantity.Length) quantity.Energy {
	return quantity.Energy(float64(m) * StandardGravity * float64(h))
}

var (
	DropEnergyEq       = Equation{Symbol: "E", Expr: "m × g × c", Const: gravity, Holds: "free-fall", Source: &Geometry}
	DropEnergyCoiledEq = Equation{Symbol: "E", Expr: "m × g × (c + h)", Const: gravity, Holds: "free-fall", Source: &Geometry}
)

// SameStress returns the mass (kg) that gives a loaded area a (m²) the stress s (Pa) of somebody else's recipe.
func SameStress(s quantity.Stress, a quantity.Area) quantity.Mass {
	return MassForForce(ForceForStress(s, a))
}

var SameStressEq = Equation{Symbol: "m", Expr: "σ × A ÷ g", Const: gravity, Holds: "before-twist", Source: &Geometry}

// WaterDensity is that of tap water at room temperature, in kg/m³ (20 to 22 °C, from memory).
const WaterDensity = 998

// Water returns the volume (m³) of water that makes a bottle of mass b (kg) weigh add (kg) in all.
func Water(add, b quantity.Mass) quantity.Volume {
	return quantity.Volume(float64(add-b) / WaterDensity)
}

var WaterEq = Equation{Symbol: "V", Expr: "(m − b) ÷ w", Holds: "room-water", Source: &Memory,
	Const: []Constant{{Symbol: "w", SI: WaterDensity, Unit: quantity.KindDensity.Default(), Text: "998"}}}

// Share returns the share that a stress s is of another, t.
func Share(s, t quantity.Stress) quantity.Fraction { return quantity.Fraction(s / t) }

var ShareEq = Equation{Symbol: "q", Expr: "σ ÷ b", Holds: "label", Source: &Geometry}

// SideBySide returns how many equal muscles of solid area a (m²) must pull together to lift m (kg) with at most stress s (Pa) on
// each.
func SideBySide(m quantity.Mass, s quantity.Stress, a quantity.Area) quantity.Count {
	return quantity.Count(quantity.Ceil(float64(HangingForce(m)) / float64(ForceForStress(s, a))))
}

var SideBySideEq = Equation{Symbol: "N", Expr: "m × g ÷ (σ × A)", Const: gravity, RoundUp: 1, Holds: "equal-share", Source: &Geometry}

// MassShare returns the mass (kg) that each of n muscles carries.
func MassShare(m quantity.Mass, n quantity.Count) quantity.Mass {
	return quantity.Mass(float64(m) / float64(n))
}

var MassShareEq = Equation{Symbol: "m", Expr: "M ÷ N", Holds: "equal-share", Source: &Geometry}

// Unknown reports whether x is not known.
func unknown(x float64) bool { return math.IsNaN(x) }
