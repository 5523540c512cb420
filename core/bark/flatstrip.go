package bark

import (
	"math"

	"barkwright/core/geom"
	"barkwright/core/hull"
)

// Between is the part of a panel laid flat that lies between two places along the bark
// forward of amidships: its lower and its upper edge, each from the after end forward;
// empty where no more than a point of it does.
func (p *Piece) Between(aft, bow float64) (low, high []geom.Vec2) {
	low, high = clipped(p.Row(0)[0], aft, bow), clipped(p.Row(p.Rows - 1)[0], aft, bow)
	if len(low) < 2 || len(high) < 2 {
		return nil, nil
	}
	return low, high
}

// clipped is the part of a line that runs forward between two places along.
func clipped(line []geom.Vec2, aft, bow float64) []geom.Vec2 {
	var out []geom.Vec2
	for i, q := range line {
		if i > 0 {
			last := line[i-1]
			for _, x := range [2]float64{aft, bow} {
				if last.X < x && x < q.X {
					out = append(out, last.Lerp(q, (x-last.X)/(q.X-last.X)))
				}
			}
		}
		if q.X >= aft && q.X <= bow {
			out = append(out, q)
		}
	}
	return out
}

// Halves are the parts of a piece forward and aft of amidships, each by its distances
// from there; a part that it has none of is empty.
func (l Laid) Halves() [2]struct{ From, To, Sign float64 } {
	type half = struct{ From, To, Sign float64 }
	return [2]half{{max(0, l.Aft), max(0, l.Bow), 1}, {max(0, -l.Bow), max(0, -l.Aft), -1}}
}

// PlaceAt is the place of the column at a distance from amidships along the flat bark,
// forward or aft, as hull.Hull.Column takes it.
func (l *Layout) PlaceAt(h *hull.Hull, along float64) float64 {
	return placeAlong(bottomRun(h), math.Abs(along), l.FlatLength)
}
