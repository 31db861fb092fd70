package craft

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"twistbench/calc/internal/proof"
	"twistbench/calc/quantity"
)

// worth works out the shown right-hand side of an equation.
func worth(t *testing.T, eq *Equation, given values) float64 {
	t.Helper()
	side, err := proof.Read(eq.Expr)
	require.NoError(t, err)
	used := map[string]bool{}
	x, err := side.Worth(func(symbol string) (float64, bool) {
		for _, c := range eq.Const {
			if c.Symbol == symbol {
				return c.SI, true
			}
		}
		used[symbol] = true
		x, ok := given[symbol]
		return x, ok
	})
	require.NoError(t, err)
	assert.Len(t, used, len(given), "%s: a value that is not in it", eq.Expr)
	if eq.RoundUp != 0 {
		x = quantity.CeilTo(x, eq.RoundUp)
	}
	return x
}

type values map[string]float64

// The equations of wire, supply, stroke and force as they are shown are what the functions beside them compute.
func TestDriveEquations(t *testing.T) {
	for _, row := range []struct {
		eq     *Equation
		got    float64
		values values
	}{
		{&YarnPerLengthEq, float64(YarnPerLength(23.4, 0.4, 0.5)), values{"R": 23.4, "q": 0.4, "l": 0.5}},
		{&WrapLengthEq, float64(WrapLength(96*mm, 1.5*mm, 1.2*mm)), values{"L": 96e-3, "w": 1.5e-3, "p": 1.2e-3}},
		{&CopperOhmsEq, float64(LeadOhms(WirePerLength(CopperResistivity, 0.2e-6), 1.5)), values{"l": 1.5, "A": 0.2e-6}},
		{&YarnOhmsEq, float64(YarnOhms(46, 0.48, 2)), values{"r": 46, "y": 0.48, "n": 2}},
		{&ShuntedOhmsEq, float64(ShuntedOhms(22, 0.1, 0.48)), values{"R": 22, "L": 0.1, "y": 0.48}},
		{&OhmsPerEq, float64(OhmsPer(22, 0.1)), values{"R": 22, "l": 0.1}},
		{&WiredEq, float64(Wired(22, 3, 2)), values{"R": 22, "s": 3, "p": 2}},
		{&MeterReadingEq, float64(MeterReading(46, 0.5, 0.4)), values{"r": 46, "l": 0.5, "q": 0.4}},
		{&ThroughLeadsEq, float64(ThroughLeads(5, 22, 0.3)), values{"U": 5, "R": 22, "q": 0.3}},
		{&SupplyOfCurrentEq, float64(SupplyOfCurrent(0.3, 22, 0.3)), values{"I": 0.3, "R": 22, "q": 0.3}},
		{&PowerOfCurrentEq, float64(PowerOfCurrent(0.3, 22)), values{"I": 0.3, "R": 22}},
		{&CurrentOfPowerEq, float64(CurrentOfPower(1.2, 22)), values{"P": 1.2, "R": 22}},
		{&RowCurrentEq, float64(RowCurrent(5, 22, 3, 2)), values{"U": 5, "R": 22, "s": 3, "p": 2}},
		{&SideCurrentEq, float64(SideCurrent(5, 22, 3, 2)), values{"U": 5, "R": 22, "s": 3, "p": 2}},
		{&BatteryBesideEq, float64(BatteryTime(26640, 0.3+0.5)), values{"E": 26640, "a": 0.3, "b": 0.5}},
		{&BatteryCyclesEq, float64(BatteryCycles(53280, 20)), values{"t": 53280, "p": 20}},
		{&LeadDropEq, float64(LeadDrop(0.3, 0.2)), values{"I": 0.3, "q": 0.2}},
		{&DutyOfTimeEq, float64(DutyOfTime(6, 20)), values{"s": 6, "t": 20}},
		{&MusclePowerEq, float64(MusclePower(6, 3, 2)), values{"P": 6, "s": 3, "p": 2}},
		{&PowerPerEq, float64(PowerPer(6, 0.1)), values{"P": 6, "l": 0.1}},
		{&OhmsAtEq, float64(OhmsAt(10, 0.00393, 80+ice, 20+ice)), values{"R": 10, "k": 0.00393, "T": 80 + ice, "U": 20 + ice}},
		{&OhmsDriftEq, float64(OhmsDrift(20, 23)), values{"a": 20, "b": 23}},

		{&LeadHeatEq, float64(LeadHeat(0.3, 0.2)), values{"I": 0.3, "q": 0.2}},
		{&DutyEq, float64(Duty(0.4, 1.2)), values{"a": 0.4, "P": 1.2}},
		{&AveragePowerEq, float64(AveragePower(0.3, 1.2)), values{"d": 0.3, "P": 1.2}},
		{&AverageCurrentEq, float64(AverageCurrent(0.3, 1.2)), values{"d": 0.3, "I": 1.2}},
		{&OnTimeEq, float64(OnTime(0.3, 20)), values{"d": 0.3, "t": 20}},

		{&CloseRateEq, float64(CloseRate(0.4e9, 0.5*mm, 0.7*mm, 100)), values{"G": 0.4e9, "t": 0.5e-3, "D": 0.7e-3, "N": 100}},
		{&SteepRateEq, float64(SteepRate(0.4e9, 1e9, 0.5*mm, 0.3, 0.25, 0.8*mm)), values{"G": 0.4e9, "E": 1e9, "t": 0.5e-3, "b": 0.3, "l": 0.25, "D": 0.8e-3}},
		{&TwistedYoungEq, float64(TwistedYoung(2.5e9, 0.7)), values{"Y": 2.5e9, "a": 0.7}},
		{&HotRateEq, float64(HotRate(80, 0.4)), values{"k": 80, "q": 0.4}},
		{&RateOfMassesEq, float64(RateOfMasses(0.25, 0.15, 0.151, 0.133)), values{"m": 0.25, "n": 0.15, "L": 0.151, "K": 0.133}},
		{&LengthOfMassEq, float64(LengthOfMass(0.118, 0.5, 0.02, 80)), values{"K": 0.118, "F": 0.5, "n": 0.02, "k": 80}},
		{&RateOfAddedEq, float64(RateOfAdded(0.04, 8*mm)), values{"m": 0.04, "x": 8e-3}},
		{&UnequalEq, float64(Unequal(100, 2*mm, 1.8)), values{"k": 100, "u": 2e-3, "F": 1.8}},

		{&FreeStrokeEq, float64(FreeStroke(0.35, 165, 147, -0.02-0.03)), values{"l": 0.35, "T": 165, "N": 147, "f": 0.03, "e": -0.02}},
		{&StrokeEq, float64(Stroke(0.14, 0.12)), values{"c": 0.14, "h": 0.12}},
		{&StrokeShareEq, float64(StrokeShare(0.02, 0.14)), values{"s": 0.02, "L": 0.14}},
		{&StrokeOfEq, float64(StrokeOf(0.15, 0.14)), values{"q": 0.15, "L": 0.14}},

		{&HeldForceEq, float64(HeldForce(80, 0.14, 0.12)), values{"k": 80, "L": 0.14, "f": 0.12}},
		{&LoadedLengthEq, float64(LoadedLength(0.12, 1.1, 80)), values{"f": 0.12, "F": 1.1, "k": 80}},
		{&SettledEq, float64(Settled(80, 0.12, 1.1, 40, 0.16)), values{"k": 80, "f": 0.12, "F": 1.1, "s": 40, "e": 0.16}},
		{&SteelSpringRateEq, float64(SteelSpringRate(0.5*mm, 5*mm, 20)), values{"t": 0.5e-3, "O": 5e-3, "N": 20}},
		{&SpringStressEq, float64(SpringStress(WahlFactor(9), 2, 4.5*mm, 0.5*mm)), values{"F": 2, "O": 5e-3, "t": 0.5e-3}},
		{&SpringPullEq, float64(SpringPull(1.7, 0.5, 3, 5)), values{"F": 1.7, "w": 0.5, "n": 3, "i": 5}},
		{&OtherSlackEq, float64(OtherSlack(0.26, 0.12)), values{"B": 0.26, "f": 0.12}},
		{&PairLengthEq, float64(PairLength(80, 0.12, 1.1, 60, 0.14, 0.1)), values{"k": 80, "f": 0.12, "F": 1.1, "K": 60, "e": 0.14, "h": 0.1}},
		{&HeldGainEq, float64(HeldGain(1.7, 1.1)), values{"F": 1.7, "c": 1.1}},
		{&PullAtLoadEq, float64(PullAtLoad(1.7, 1.3, 0.5, 3, 5)), values{"F": 1.7, "c": 1.3, "w": 0.5, "n": 3, "i": 5}},
		{&SpringWorkEq, float64(SpringWork(1.1, 1.9, 0.02)), values{"F": 1.1, "G": 1.9, "s": 0.02}},
		{&SpecificWorkEq, float64(SpecificWork(0.02, 1e-4)), values{"W": 0.02, "m": 1e-4}},
		{&WorkPowerEq, float64(WorkPower(0.02, 3)), values{"W": 0.02, "t": 3}},
		{&SpecificPowerEq, float64(SpecificPower(0.02, 1e-4)), values{"P": 0.02, "m": 1e-4}},
		{&MusclePullEq, float64(MusclePull(0.2, 3, 2)), values{"m": 0.2, "i": 3, "n": 2}},
		{&SpringAtMuscleEq, float64(SpringAtMuscle(40, 3, 2)), values{"k": 40, "i": 3, "n": 2}},
		{&LoadPullEq, float64(LoadPull(1.1, 40, 0.16, 0.14)), values{"w": 1.1, "s": 40, "e": 0.16, "L": 0.14}},
		{&UnloadedLengthEq, float64(UnloadedLength(0.14, 1.1, 80)), values{"L": 0.14, "F": 1.1, "k": 80}},
		{&ContractedEq, float64(Contracted(0.14, 0.02)), values{"L": 0.14, "s": 0.02}},
		{&LeverPullEq, float64(LeverPull(1.1, 5)), values{"F": 1.1, "i": 5}},
		{&LeverStrokeEq, float64(LeverStroke(0.02, 5)), values{"s": 0.02, "i": 5}},
		{&LeverRateEq, float64(LeverRate(40, 5)), values{"k": 40, "i": 5}},
		{&PulleyTurnEq, float64(PulleyTurn(0.02, 0.015)), values{"s": 0.02, "r": 0.015}},
		{&ScaleForceEq, float64(ScaleForce(1, 0.846)), values{"a": 1, "b": 0.846}},
	} {
		assert.InEpsilon(t, worth(t, row.eq, row.values), row.got, 1e-12, "%s = %s", row.eq.Symbol, row.eq.Expr)
	}
}
