package bark

import (
	"math"
	"slices"

	"barkwright/core/geom"
)

// straight is how broad a straight strip must be for what the panels are between two places
// along, laid flat, without lap and trim: a panel whose edges differ in length lies in a bow.
// It is 0 as long as the panels have not been laid flat.
func (d *demand) straight(aft, bow float64) float64 {
	if d.flat == nil {
		return 0
	}
	most := 0.0
	for i := range d.flat.Panels {
		p := &d.flat.Panels[i]
		after, fore := d.bandsBetween(p, -1, aft, bow), d.bandsBetween(p, 1, aft, bow)
		slices.Reverse(after)
		if p.Places[0] == 0 {
			// It goes on into its mirror image.
			most = max(most, bandBreadth(append(after, fore...)))
		} else {
			most = max(most, bandBreadth(after), bandBreadth(fore))
		}
	}
	return most
}

// bandSlack is how far past the ends of a strip a column still counts as on it, m: the last ones
// stand on the ends.
const bandSlack = 1e-3

// band is where a column crosses a panel laid flat: at the seam and at the top edge.
type band struct{ seam, top geom.Vec2 }

// bandsBetween lists the columns of a panel between two places along, forward of amidships or,
// with a side of -1, mirrored aft of it, from amidships outward.
func (d *demand) bandsBetween(p *Piece, side, aft, bow float64) []band {
	var out []band
	for c, place := range p.Places {
		if along := side * d.alongOf(place); along < aft-bandSlack || along > bow+bandSlack {
			continue
		}
		at := func(row int) geom.Vec2 {
			q := p.Points[c*p.Rows+row]
			return geom.Vec2{X: side * q.X, Y: q.Y}
		}
		out = append(out, band{at(0), at(p.Rows - 1)})
	}
	return out
}

// bandBreadth is how broad bands are the way they lie narrowest.
func bandBreadth(all []band) float64 {
	if len(all) < 2 {
		return 0
	}
	_, least := geom.Least(func(angle float64) float64 {
		sin, cos := math.Sincos(angle)
		across := geom.Vec2{X: -sin, Y: cos}
		low, high := math.Inf(1), math.Inf(-1)
		for _, b := range all {
			seam, top := across.Dot(b.seam), across.Dot(b.top)
			low, high = min(low, seam, top), max(high, seam, top)
		}
		return high - low
	}, 0, math.Pi, 60)
	return least
}
