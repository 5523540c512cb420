package frame

import (
	"math"

	"barkwright/core/hull"
	"barkwright/core/units"
)

// Sheathing is the lining between ribs and bark, in regions along the boat whose
// strips lap one another.
type Sheathing struct {
	Regions []SheathingRegion
	// Strips and Area are for the whole boat, laps included.
	Strips int
	Area   float64
}

// SheathingRegion is the strips that stand side by side over one length.
type SheathingRegion struct {
	From, To float64 // along x
	Length   float64 // of one strip, laps included
	Strips   int
}

// longestStrip is how long a strip of sheathing is split: to 9 ft. Adney and
// Chapelle 1964, pp. 50-51.
const longestStrip = 9 * units.Foot

func newSheathing(h *hull.Hull) Sheathing {
	d := &h.Design
	end := h.HeadboardX()
	n := int(math.Ceil(2 * end / (longestStrip - d.SheathingLap)))
	n += 1 - n%2 // an odd number has a region amidships and its joints off it
	var s Sheathing
	for i := range n {
		r := SheathingRegion{From: end * (2*float64(i)/float64(n) - 1), To: end * (2*float64(i+1)/float64(n) - 1)}
		r.Length = r.To - r.From
		if i > 0 {
			r.Length += d.SheathingLap
		}
		r.Strips = int(math.Ceil(greatestGirth(h, r.From, r.To) / d.SheathingWidth))
		s.Strips += r.Strips
		s.Area += float64(r.Strips) * d.SheathingWidth * r.Length
		s.Regions = append(s.Regions, r)
	}
	return s
}

// greatestGirth is the greatest girth of the skin between two stations: toward high ends it
// grows again.
func greatestGirth(h *hull.Hull, from, to float64) float64 {
	const pieces = 4
	most := 0.0
	for i := range pieces + 1 {
		x := math.Abs(from + (to-from)*float64(i)/pieces)
		most = max(most, 2*h.Column(h.ColumnAtEdge(x)).Section.HalfGirth())
	}
	return most
}
