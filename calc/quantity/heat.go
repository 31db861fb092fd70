package quantity

// The quantities of heating and cooling, each in its SI unit, NaN where it is unknown.
type (
	Speed        float64 // metre per second
	HeatLoss     float64 // watt per kelvin
	HeatCapacity float64 // joule per kelvin
	SpecificHeat float64 // joule per kilogram and kelvin
)

// The kinds of heating and cooling.
var (
	KindSpeed        = &Kind{Name: "speed", Units: speedUnits}
	KindHeatLoss     = &Kind{Name: "heat-loss", Units: heatLossUnits}
	KindHeatCapacity = &Kind{Name: "heat-capacity", Units: heatCapacityUnits}
	KindSpecificHeat = &Kind{Name: "specific-heat", Units: specificHeatUnits}
)

func (*Speed) Kind() *Kind        { return KindSpeed }
func (*HeatLoss) Kind() *Kind     { return KindHeatLoss }
func (*HeatCapacity) Kind() *Kind { return KindHeatCapacity }
func (*SpecificHeat) Kind() *Kind { return KindSpecificHeat }

func (v *Speed) SI() float64        { return float64(*v) }
func (v *HeatLoss) SI() float64     { return float64(*v) }
func (v *HeatCapacity) SI() float64 { return float64(*v) }
func (v *SpecificHeat) SI() float64 { return float64(*v) }

func (v *Speed) SetSI(x float64)        { *v = Speed(x) }
func (v *HeatLoss) SetSI(x float64)     { *v = HeatLoss(x) }
func (v *HeatCapacity) SetSI(x float64) { *v = HeatCapacity(x) }
func (v *SpecificHeat) SetSI(x float64) { *v = SpecificHeat(x) }

var speedUnits = []Unit{
	{Symbol: "m/s", Factor: 1, US: "ft/min", Aliases: []string{"m s-1"}},
	{Symbol: "km/h", Factor: 1 / 3.6, Aliases: []string{"kph"}},
	{Symbol: "ft/min", Factor: foot / 60, Aliases: []string{"fpm"}},
	{Symbol: "mph", Factor: 5280 * foot / 3600},
}

var heatLossUnits = []Unit{
	{Symbol: "mW/K", Factor: 1e-3},
	{Symbol: "W/K", Factor: 1},
}

var heatCapacityUnits = []Unit{
	{Symbol: "mJ/K", Factor: 1e-3},
	{Symbol: "J/K", Factor: 1},
}

// A calorie is the thermochemical one, 4.184 J by definition.
var specificHeatUnits = []Unit{
	{Symbol: "J/(kg·K)", Factor: 1, Aliases: []string{"J/kg/K", "J/kgK", "J/(kg K)", "J/kg·K"}},
	{Symbol: "kJ/(kg·K)", Factor: 1e3, Aliases: []string{"kJ/kg/K", "kJ/kgK", "kJ/(kg K)", "kJ/kg·K", "J/(g·K)", "J/g/K", "J/gK"}},
	{Symbol: "cal/(g·K)", Factor: 4184, Aliases: []string{"cal/g/K", "cal/gK", "cal/(g·°C)"}},
}
