package trial

import "twistbench/calc/quantity"

// Columns reads a text of two columns into two lists, a row to a line: times in seconds and temperatures in kelvin, a bare number being s and
// °C. Cells may carry a unit. They are parted by a tab, a semicolon, spaces or a comma; a comma that parts nothing is a decimal mark, and no
// mark is one of thousands. A heading above the rows that ends both its cells with a unit, as "time (min); °F" does, says what bare numbers
// below are in; any other is a line that is no row. Empty lines are passed over.
//
// It returns how many rows were read, at most as many as the lists hold, how many lines were no rows, and the number of the first of those,
// from 1, 0 if there was none.
func Columns(text string, times, temperatures []float64) (rows, bad, first int) {
	return Pairs(text, quantity.KindTime, quantity.KindTemperature, times, temperatures)
}

// Pairs does the same with columns of the kinds kx and ky, to SI.
func Pairs(text string, kx, ky *quantity.Kind, xs, ys []float64) (rows, bad, first int) {
	c := columns{kinds: [2]*quantity.Kind{kx, ky}}
	line := 0
	for text != "" {
		row := text
		if i := quantity.Index(text, '\n'); i >= 0 {
			row, text = text[:i], text[i+1:]
		} else {
			text = ""
		}
		line++
		row = quantity.Trim(row)
		if row == "" {
			continue
		}
		c.heading = false
		if c.read(row) {
			if rows < min(len(xs), len(ys)) {
				xs[rows], ys[rows] = c.si[0], c.si[1]
				rows++
			}
			continue
		}
		units := c.units
		c.heading = rows == 0
		if c.heading && c.read(row) {
			continue
		}
		c.units = units
		bad++
		if first == 0 {
			first = line
		}
	}
	return rows, bad, first
}

// columns are two of numbers.
type columns struct {
	kinds   [2]*quantity.Kind
	units   [2]string // of bare numbers, "" for the default
	si      [2]float64
	heading bool // it is one that is read
}

// read reads the two cells of a row, or of a heading. Spaces part that only where it is two words: the "in" of "length in cm" is no inch.
func (c *columns) read(row string) bool {
	for _, mark := range [...]byte{'\t', ';', ' ', ','} {
		for i := range len(row) {
			if row[i] == ' ' && c.heading && mark == ' ' && quantity.Index(quantity.Trim(row[i:]), ' ') >= 0 {
				break
			}
			if row[i] == mark && c.cell(0, row[:i]) && c.cell(1, row[i+1:]) {
				return true
			}
		}
	}
	return false
}

// cell reads a number and its unit, or the unit that a heading ends with.
func (c *columns) cell(n int, s string) bool {
	if c.heading {
		u := c.kinds[n].Named(s)
		if u != nil {
			c.units[n] = u.Symbol
		}
		return u != nil
	}
	r, err := c.kinds[n].Parse(s, c.units[n])
	c.si[n] = r.SI
	return err == nil
}
