package show

var driveShapes = []Shape{
	{"draw.drive.note", "text", "label", "start", []place{4 * u, 20 * u}, "draw.drive.note"},
}

var driveSaid = []Shape{
	{":title", "", "", "", nil, "draw.drive.title"},
	{":desc", "", "", "", nil, "draw.drive.note"},
}

// drawDrive draws the drive section.
func drawDrive(s *sketch) {
	var n numbers
	s.n = n
}
