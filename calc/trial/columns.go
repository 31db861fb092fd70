package trial

import "twistbench/calc/quantity"

// Columns reads a text of two columns into two lists, a row to a line: times in seconds and temperatures in kelvin, a bare number being s and
// °C. Cells may carry a unit. They are parted by a tab, a semicolon, spaces or a comma; a comma that parts nothing is a decimal mark, and no
// mark is one of thousands. A first line that is no row is a heading. Empty lines are passed over.
//
// It returns how many rows were read, at most as many as the lists hold, how many lines were no rows, and the number of the first of those,
// from 1, 0 if there was none.
func Columns(text string, times, temperatures []float64) (rows, bad, first int) {
	return Pairs(text, quantity.KindTime, quantity.KindTemperature, times, temperatures)
}

// Pairs does the same with columns of the kinds kx and ky, to SI.
func Pairs(text string, kx, ky *quantity.Kind, xs, ys []float64) (rows, bad, first int) {
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
		x, y, ok := pair(row, kx, ky)
		switch {
		case !ok && line == 1: // a heading
		case !ok:
			bad++
			if first == 0 {
				first = line
			}
		case rows < min(len(xs), len(ys)):
			xs[rows], ys[rows] = x, y
			rows++
		}
	}
	return rows, bad, first
}

// pair reads the two cells of a row.
func pair(row string, kx, ky *quantity.Kind) (x, y float64, ok bool) {
	for _, mark := range [...]byte{'\t', ';', ' ', ','} {
		for i := range len(row) {
			if row[i] != mark {
				continue
			}
			var xok, yok bool
			x, xok = cell(row[:i], kx)
			y, yok = cell(row[i+1:], ky)
			if xok && yok {
				return x, y, true
			}
		}
	}
	return 0, 0, false
}

// cell reads a number and its unit, the default one if there is none, to SI.
func cell(s string, k *quantity.Kind) (si float64, ok bool) {
	r, err := k.Parse(s, "")
	return r.SI, err == nil
}
