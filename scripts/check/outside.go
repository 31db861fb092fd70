package main

import (
	"bytes"
	"encoding/json"
	"fmt"
	"math"
	"os/exec"
	"path/filepath"
	"slices"
	"strconv"
	"strings"

	"twistbench/calc/craft"
	"twistbench/calc/quantity"
)

// An outside row is one number of ours beside expressions that GNU Units and
// pint work out. An empty expression means that the library has no such unit.
type outside struct {
	name string
	ours float64
	gnu  string
	pint string
	to   string // the unit both answer in
}

// near is how far ours may lie from theirs, relative: GNU Units prints 15 digits.
const near = 1e-9

// A spelling is one unit as the two libraries write it.
type spelling struct{ gnu, pint string }

// spellings name every unit of every kind in the libraries' words. A count
// (length per mass) is asked for as what one of it weighs.
var spellings = []struct {
	kind  *quantity.Kind
	si    string
	units map[string]spelling
}{
	{quantity.KindLength, "m", map[string]spelling{
		"mm": {"mm", "mm"}, "µm": {"micron", "micrometer"}, "cm": {"cm", "cm"}, "m": {"m", "m"}, "in": {"inch", "inch"},
		"thou": {"thou", "thou"}, "ft": {"ft", "ft"}, "yd": {"yd", "yd"},
	}},
	{quantity.KindMass, "kg", map[string]spelling{
		"g": {"g", "g"}, "kg": {"kg", "kg"}, "mg": {"mg", "mg"}, "lb": {"lb", "lb"}, "oz": {"oz", "oz"},
	}},
	{quantity.KindForce, "N", map[string]spelling{
		"N": {"N", "N"}, "mN": {"mN", "mN"}, "cN": {"cN", "cN"}, "gf": {"g force", "gram_force"}, "kgf": {"kg force", "kgf"},
		"lbf": {"lbf", "lbf"}, "ozf": {"oz force", "ounce_force"},
	}},
	{quantity.KindStress, "Pa", map[string]spelling{
		"MPa": {"MPa", "MPa"}, "N/mm²": {"N/mm^2", "N/mm^2"}, "kPa": {"kPa", "kPa"}, "GPa": {"GPa", "GPa"}, "Pa": {"Pa", "Pa"},
		"psi": {"psi", "psi"}, "ksi": {"ksi", "ksi"},
	}},
	{quantity.KindArea, "m^2", map[string]spelling{
		"mm²": {"mm^2", "mm^2"}, "µm²": {"micron^2", "micrometer^2"}, "cm²": {"cm^2", "cm^2"}, "m²": {"m^2", "m^2"}, "in²": {"in^2", "inch^2"},
	}},
	{quantity.KindVolume, "m^3", map[string]spelling{
		"ml": {"ml", "ml"}, "l": {"l", "l"}, "cm³": {"cm^3", "cm^3"}, "m³": {"m^3", "m^3"}, "fl oz": {"usfloz", "fluid_ounce"},
	}},
	{quantity.KindLinearDensity, "kg/m", map[string]spelling{
		"tex": {"tex", "tex"}, "dtex": {"dtex", "dtex"}, "den": {"denier", "denier"}, "g/m": {"g/m", "g/m"}, "mg/m": {"mg/m", "mg/m"},
		"g/km": {"g/km", "g/km"}, "ktex": {"ktex", "ktex"},
		"Ne": {"1/cottonyarncount", "1/number_english"}, "Nm": {"1/metricyarncount", ""},
		"tkt": {"3/metricyarncount", ""}, "cotton tkt": {"3/cottonyarncount", "3/number_english"},
	}},
	{quantity.KindDensity, "kg/m^3", map[string]spelling{
		"kg/m³": {"kg/m^3", "kg/m^3"}, "g/cm³": {"g/cm^3", "g/cm^3"}, "lb/ft³": {"lb/ft^3", "lb/ft^3"},
	}},
	{quantity.KindEnergy, "J", map[string]spelling{
		"J": {"J", "J"}, "mJ": {"mJ", "mJ"}, "Wh": {"W hr", "W*hour"}, "ft·lbf": {"ft lbf", "ft*lbf"},
	}},
	{quantity.KindAcceleration, "m/s^2", map[string]spelling{
		"m/s²": {"m/s^2", "m/s^2"}, "ft/s²": {"ft/s^2", "ft/s^2"},
	}},
	{quantity.KindTemperatureDifference, "K", map[string]spelling{
		"K": {"K", "kelvin"}, "°C": {"degC", "delta_degC"}, "°F": {"degF", "delta_degF"},
	}},
	{quantity.KindTemperature, "K", map[string]spelling{ // 1 of each
		"°C": {"tempC(1)", "degC"}, "°F": {"tempF(1)", "degF"}, "K": {"K", "kelvin"},
	}},
	{quantity.KindFraction, "1", map[string]spelling{
		"%": {"percent", ""},
	}},
	{quantity.KindAngle, "radian", map[string]spelling{
		"°": {"degree", "degree"}, "rad": {"radian", "radian"},
	}},
	{quantity.KindTwist, "1/m", map[string]spelling{
		"turns/m": {"1/m", "m^-1"}, "turns/cm": {"1/cm", "cm^-1"}, "tpi": {"1/inch", "inch^-1"},
	}},
	{quantity.KindTwistFactor, "1/m", map[string]spelling{ // over √(kg/m), which neither writes alone
		"turns/m·√tex": {"sqrt(tex/(kg/m))/m", "(tex*m/kg)**0.5/m"},
		"tpi/√Ne":      {"sqrt(1/cottonyarncount/(kg/m))/inch", "(m/kg/number_english)**0.5/inch"},
	}},
	{quantity.KindRotation, "1/s", map[string]spelling{ // theirs turn through an angle
		"rpm": {"rpm/revolution", "rpm/turn"}, "turns/s": {"1/s", "s^-1"},
	}},
	{quantity.KindTime, "s", map[string]spelling{
		"s": {"s", "s"}, "min": {"min", "minute"}, "h": {"hr", "hour"}, "ms": {"ms", "ms"}, "days": {"day", "day"},
	}},
	{quantity.KindTorque, "N m", map[string]spelling{
		"mN·m": {"mN m", "mN*m"}, "µN·m": {"microN m", "uN*m"}, "N·m": {"N m", "N*m"}, "lbf·in": {"lbf inch", "lbf*inch"},
	}},
	{quantity.KindResistance, "ohm", map[string]spelling{
		"Ω": {"ohm", "ohm"}, "kΩ": {"kohm", "kohm"},
	}},
	{quantity.KindResistancePerLength, "ohm/m", map[string]spelling{
		"Ω/m": {"ohm/m", "ohm/m"}, "Ω/cm": {"ohm/cm", "ohm/cm"}, "kΩ/m": {"kohm/m", "kohm/m"}, "Ω/km": {"ohm/km", "ohm/km"},
		"Ω/ft": {"ohm/ft", "ohm/ft"}, "Ω/in": {"ohm/inch", "ohm/inch"},
	}},
	{quantity.KindResistivity, "ohm m", map[string]spelling{
		"Ω·mm²/m": {"ohm mm^2/m", "ohm*mm^2/m"}, "Ω·m": {"ohm m", "ohm*m"},
	}},
	{quantity.KindTemperatureCoefficient, "1/K", map[string]spelling{
		"%/K": {"percent/K", "0.01/kelvin"}, "ppm/K": {"ppm/K", "1e-6/kelvin"},
	}},
	{quantity.KindVoltage, "V", map[string]spelling{
		"V": {"V", "V"}, "mV": {"mV", "mV"},
	}},
	{quantity.KindCurrent, "A", map[string]spelling{
		"A": {"A", "A"}, "mA": {"mA", "mA"},
	}},
	{quantity.KindPower, "W", map[string]spelling{ // pint's Btu is another, 2e-7 apart
		"W": {"W", "W"}, "mW": {"mW", "mW"}, "kW": {"kW", "kW"}, "Btu/h": {"btu/hr", ""},
	}},
	{quantity.KindPowerPerLength, "W/m", map[string]spelling{
		"W/cm": {"W/cm", "W/cm"}, "W/m": {"W/m", "W/m"}, "W/in": {"W/inch", "W/inch"},
	}},
	{quantity.KindCharge, "C", map[string]spelling{
		"mAh": {"mA hr", "mA*hour"}, "Ah": {"A hr", "A*hour"},
	}},
	{quantity.KindStiffness, "N/m", map[string]spelling{
		"N/m": {"N/m", "N/m"}, "N/mm": {"N/mm", "N/mm"}, "gf/mm": {"g force/mm", "gram_force/mm"}, "lbf/in": {"lbf/inch", "lbf/inch"},
	}},
	{quantity.KindSpecificEnergy, "J/kg", map[string]spelling{
		"J/kg": {"J/kg", "J/kg"}, "kJ/kg": {"kJ/kg", "kJ/kg"},
	}},
	{quantity.KindSpecificPower, "W/kg", map[string]spelling{
		"W/kg": {"W/kg", "W/kg"}, "kW/kg": {"kW/kg", "kW/kg"},
	}},
	{quantity.KindSpeed, "m/s", map[string]spelling{
		"m/s": {"m/s", "m/s"}, "km/h": {"km/hr", "km/hour"}, "ft/min": {"ft/min", "ft/minute"}, "mph": {"mph", "mph"},
	}},
	{quantity.KindHeatLoss, "W/K", map[string]spelling{
		"mW/K": {"mW/K", "mW/kelvin"}, "W/K": {"W/K", "W/kelvin"},
	}},
	{quantity.KindHeatCapacity, "J/K", map[string]spelling{
		"mJ/K": {"mJ/K", "mJ/kelvin"}, "J/K": {"J/K", "J/kelvin"},
	}},
	{quantity.KindSpecificHeat, "J/(kg K)", map[string]spelling{
		"J/(kg·K)": {"J/kg K", "J/kg/kelvin"}, "kJ/(kg·K)": {"kJ/kg K", "kJ/kg/kelvin"}, "cal/(g·K)": {"4.184 J/g K", "4.184*J/g/kelvin"},
	}},
}

// unitRows has a row for every unit that the core knows. One that nobody gave
// a spelling is an error, so that a new unit cannot go unchecked.
func unitRows() ([]outside, error) {
	var rows []outside
	for _, s := range spellings {
		for _, u := range s.kind.Units {
			name, found := s.units[u.Symbol]
			if !found {
				return nil, fmt.Errorf("the %s unit %s has no outside spelling", s.kind.Name, u.Symbol)
			}
			row := outside{name: s.kind.Name + " " + u.Symbol, ours: u.ToSI(1), gnu: name.gnu, pint: name.pint, to: s.si}
			if !u.Inverse && row.pint != "" {
				row.pint = "1 " + row.pint
			}
			rows = append(rows, row)
		}
	}
	return rows, nil
}

// craftRows are hanging masses and their stress on a round fibre (handbook
// checks U21 to U23), as the libraries work them out from the same words.
func craftRows() []outside {
	area := craft.Area
	hang := func(m quantity.Mass, d quantity.Length) float64 {
		return float64(craft.Stress(craft.HangingForce(m), area(d)))
	}
	return []outside{
		{name: "U21 stress of 50 g on 0.127 mm", ours: hang(0.050, 0.127e-3), to: "Pa",
			gnu: "(50 g * gravity) / ((pi/4) * (0.127 mm)^2)", pint: "50 g * standard_gravity / (pi/4 * (0.127 mm)**2)"},
		{name: "U22 stress of 250 g on 0.5 mm", ours: hang(0.250, 0.5e-3), to: "Pa",
			gnu: "(250 g * gravity) / ((pi/4) * (0.5 mm)^2)", pint: "250 g * standard_gravity / (pi/4 * (0.5 mm)**2)"},
		{name: "U23 mass for 30 MPa on 0.127 mm", ours: float64(craft.MassForForce(craft.ForceForStress(30e6, area(0.127e-3)))), to: "kg",
			gnu: "(30 MPa * (pi/4) * (0.127 mm)^2) / gravity", pint: "30 MPa * (pi/4 * (0.127 mm)**2) / standard_gravity"},
	}
}

// A question as reference.py takes it.
type question struct {
	Ask  string                `json:"ask"`
	From string                `json:"from,omitempty"`
	To   string                `json:"to,omitempty"`
	Of   string                `json:"of,omitempty"`
	With map[string][2]float64 `json:"with,omitempty"`
}

// differs says in words that ours is not near theirs.
func differs(row outside, library string, theirs float64) string {
	if math.Abs(row.ours-theirs) <= near*math.Abs(theirs) {
		return ""
	}
	return fmt.Sprintf("%s: ours %.15g, %s says %.15g %s", row.name, row.ours, library, theirs, row.to)
}

// references compares the core with GNU Units, pint and uncertainties.
func references(j *job) (string, error) {
	rows, err := unitRows()
	if err != nil {
		return "", err
	}
	rows = append(rows, craftRows()...)
	compared := 0
	var wrong []string
	judge := func(library string, row outside, theirs float64) {
		compared++
		if s := differs(row, library, theirs); s != "" {
			wrong = append(wrong, s)
		}
	}
	if !slices.Contains(j.missing, "GNU Units") {
		for _, row := range rows {
			if row.gnu == "" {
				continue
			}
			theirs, err := askUnits(row.gnu, row.to)
			if err != nil {
				return "", fmt.Errorf("%s: %w", row.name, err)
			}
			judge("GNU Units", row, theirs)
		}
	}
	if !slices.Contains(j.missing, "pint") {
		var asked []outside
		var questions []question
		for _, row := range rows {
			if row.pint != "" {
				asked = append(asked, row)
				questions = append(questions, question{Ask: "pint", From: row.pint, To: row.to})
			}
		}
		var theirs []float64
		if err := j.askPython("pint", questions, &theirs); err != nil {
			return "", err
		}
		for i, row := range asked {
			judge("pint", row, theirs[i])
		}
	}
	if !slices.Contains(j.missing, "uncertainties") {
		more, err := j.doubts()
		if err != nil {
			return "", err
		}
		wrong = append(wrong, more...)
		compared++
	}
	return fmt.Sprintf("%d numbers", compared), broken(wrong)
}

// doubts compares how the doubt of a mass and a diameter flows into stress:
// 50 ± 0.1 g on 0.127 ± 0.002 mm (handbook check M06). Ours is the core's own
// stress moved a little either way, combined in quadrature.
func (j *job) doubts() ([]string, error) {
	const m, um, d, ud = 0.050, 0.1e-3, 0.127e-3, 0.002e-3
	stress := func(m, d float64) float64 {
		return float64(craft.Stress(craft.HangingForce(quantity.Mass(m)), craft.Area(quantity.Length(d))))
	}
	const little = 1e-3 // of each doubt: the slope, free of the curve
	dm := (stress(m+little*um, d) - stress(m-little*um, d)) / (2 * little)
	dd := (stress(m, d+little*ud) - stress(m, d-little*ud)) / (2 * little)
	ours := [2]float64{stress(m, d), math.Hypot(dm, dd)}
	var theirs [][2]float64
	err := j.askPython("uncertainties", []question{{
		Ask: "uncertainties", Of: "m * g / (pi / 4 * d**2)",
		With: map[string][2]float64{"m": {m, um}, "d": {d, ud}, "g": {craft.StandardGravity, 0}},
	}}, &theirs)
	if err != nil {
		return nil, err
	}
	var wrong []string
	for i, what := range []string{"stress", "its doubt"} {
		if !(math.Abs(ours[i]-theirs[0][i]) <= 1e-6*theirs[0][i]) {
			wrong = append(wrong, fmt.Sprintf("M06 %s: ours %.12g, uncertainties says %.12g Pa", what, ours[i], theirs[0][i]))
		}
	}
	return wrong, nil
}

// askUnits lets GNU Units work out an expression in a unit.
func askUnits(from, to string) (float64, error) {
	out, err := exec.Command("units", "--terse", "--strict", "--digits", "15", from, to).CombinedOutput()
	text := strings.TrimSpace(string(out))
	if err != nil {
		return 0, fmt.Errorf("units: %w: %s", err, text)
	}
	return strconv.ParseFloat(text, 64)
}

// askPython puts questions to the Python that has the library.
func (j *job) askPython(library string, questions []question, answers any) error {
	in, err := json.Marshal(questions)
	if err != nil {
		return err
	}
	cmd := exec.Command(pythonWith(library), filepath.Join(j.root, "scripts", "check", "reference.py"))
	cmd.Stdin = bytes.NewReader(in)
	var all bytes.Buffer
	cmd.Stderr = &all
	out, err := cmd.Output()
	if err != nil {
		return fmt.Errorf("reference.py: %w\n%s", err, all.String())
	}
	return json.Unmarshal(out, answers)
}
