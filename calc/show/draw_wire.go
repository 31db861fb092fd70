package show

var wireShapes = []Shape{
	{"draw.wire.note", "text", "label", "start", []place{4 * u, 20 * u}, "draw.wire.note"},
}

var wireSaid = []Shape{
	{":title", "", "", "", nil, "draw.wire.title"},
	{":desc", "", "", "", nil, "draw.wire.note"},
}

// drawWire draws the wire section.
func drawWire(s *sketch) {
	var n numbers
	s.n = n
}
