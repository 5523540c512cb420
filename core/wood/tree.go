package wood

import "math"

// BarkWidth is the width of the sheet a trunk gives, pi times its diameter outside
// the bark; the usable width is a little less. Metres in, metres out.
func BarkWidth(treeDiameter float64) float64 { return math.Pi * treeDiameter }

// TreeDiameter is the diameter outside the bark of the least trunk that gives a
// sheet of the width: BarkWidth the other way round.
func TreeDiameter(width float64) float64 { return width / math.Pi }
