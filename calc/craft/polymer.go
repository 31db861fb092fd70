package craft

import "twistbench/calc/quantity"

// Polymer is a row of book values for a fibre.
type Polymer struct {
	Key     string // as it is written in a plan
	Density quantity.Density
	Source  *Source
}

// Polymers lists the fibres a maker may choose from. The last one has no book value: it asks for a typed density.
// Densities at about 20 °C and 65 % relative humidity.
var Polymers = []Polymer{
	{"nylon-6", 1140, &FibreTables},
	{"nylon-66", 1140, &FibreTables},
	{"polyethylene", 950, &FibreTables},
	{"polyester", 1390, &FibreTables},
	{"pvdf", 1780, &Memory},
	{"other", quantity.Density(quantity.NaN), &Memory},
}

// Nearest returns the index of the polymer whose book density is closest to rho (kg/m³), or -1 when rho is unknown or more
// than 6 % away from all of them.
func Nearest(rho quantity.Density) int {
	best, off := -1, 0.06
	for i := range Polymers {
		d := float64(rho/Polymers[i].Density) - 1
		if d < 0 {
			d = -d
		}
		if d <= off {
			best, off = i, d
		}
	}
	return best
}
