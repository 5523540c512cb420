package wood

import "math"

// TreeDiameter is the diameter outside the bark of the least trunk that gives a
// sheet of the width, which goes once round it; the usable width is a little less.
// Metres in, metres out.
func TreeDiameter(width float64) float64 { return width / math.Pi }
