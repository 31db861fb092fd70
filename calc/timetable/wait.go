package timetable

import "twistbench/calc/quantity"

// AppendWait appends a length of time as it is counted down: 9:05, or 1:09:05 from an hour on.
func AppendWait(b []byte, seconds int) []byte {
	if seconds < 3600 {
		b = quantity.AppendPadded(b, seconds/60, 1)
	} else {
		b = quantity.AppendPadded(b, seconds/3600, 1)
		b = append(b, ':')
		b = quantity.AppendPadded(b, seconds/60%60, 2)
	}
	b = append(b, ':')
	return quantity.AppendPadded(b, seconds%60, 2)
}
