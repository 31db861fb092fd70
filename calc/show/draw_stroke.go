package show

var strokeShapes = []Shape{
	{"draw.stroke.note", "text", "label", "start", []place{4 * u, 20 * u}, "draw.stroke.note"},
}

var strokeSaid = []Shape{
	{":title", "", "", "", nil, "draw.stroke.title"},
	{":desc", "", "", "", nil, "draw.stroke.note"},
}

// drawStroke draws the stroke section.
func drawStroke(s *sketch) {
	var n numbers
	s.n = n
}
