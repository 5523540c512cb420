package bark

import "math"

// Joint is a seam right across, where one sheet ends and the next goes on. The
// forward sheet lies outside, so that the lap faces the stern (Adney and Chapelle
// 1964, p. 147).
type Joint struct {
	Along  float64 // on the flat sheet, m forward of amidships
	Place  float64 // of the column it follows, aft or forward, as hull.Hull.Column takes it
	X      float64 // of that column's foot, m forward of amidships
	Length float64 // from edge to edge round the bottom on the hull, m
	OnGore bool    // it takes the place of the gores there
}

func (d *demand) joint(along float64, m *marks) Joint {
	l := d.columnAlong(along)
	_, on := clear(along, m.gores)
	return Joint{Along: along, Place: l.Place, X: math.Copysign(l.Foot.X, along), Length: 2 * l.girth, OnGore: on}
}
