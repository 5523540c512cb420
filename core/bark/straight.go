package bark

import (
	"math"

	"barkwright/core/geom"
)

// band is where a column crosses a panel laid flat: at the seam and at the top edge.
type band struct{ seam, top geom.Vec2 }

// bands are the columns of what one straight strip covers.
type bands []band

// extent is how far bands reach in the direction of an angle from the boat's length.
func (all bands) extent(angle float64) float64 {
	sin, cos := math.Sincos(angle)
	along := geom.Vec2{X: cos, Y: sin}
	low, high := math.Inf(1), math.Inf(-1)
	for _, b := range all {
		seam, top := along.Dot(b.seam), along.Dot(b.top)
		low, high = min(low, seam, top), max(high, seam, top)
	}
	return high - low
}

// breadth is how broad a straight strip must be for them that is turned by an angle.
func (all bands) breadth(angle float64) float64 { return all.extent(angle + math.Pi/2) }

// mostTurned is the greatest angle by which a strip is turned: beyond it, it would lie across the
// side rather than along it.
const mostTurned = math.Pi / 4

// least is the way they lie narrowest, and how broad they are so: a panel whose edges differ in
// length lies in a bow. While the two corners between which the breadth is taken stay the same, it grows to a
// turn and falls from there on: so it is least where a side of what holds them all lies along the strip,
// or at the greatest turn.
func (all bands) least() (angle, breadth float64) {
	points := make([]geom.Vec2, 0, 2*len(all))
	for _, b := range all {
		points = append(points, b.seam, b.top)
	}
	corners := geom.Convex(points)
	breadth = math.Inf(1)
	try := func(turn float64) {
		sin, cos := math.Sincos(turn)
		low, high := math.Inf(1), math.Inf(-1)
		for _, p := range corners {
			y := cos*p.Y - sin*p.X
			low, high = min(low, y), max(high, y)
		}
		if high-low < breadth {
			angle, breadth = turn, high-low
		}
	}
	for i, p := range corners {
		side := corners[(i+1)%len(corners)].Sub(p)
		// Those above run the other way.
		if math.Abs(side.Y) <= math.Abs(side.X) && side.X != 0 {
			try(math.Atan(side.Y / side.X))
		}
	}
	try(-mostTurned)
	try(mostTurned)
	return angle, breadth
}

func (all bands) leastBreadth() float64 {
	_, breadth := all.least()
	return breadth
}

// turnTolerance is how closely the angle of a strip is found, as a share of the greatest.
const turnTolerance = 1e-7

// lengthWithin is how long a straight strip must be for them that is so broad, lap and trim of a
// breadth beyond them included. It is turned no more than its breadth asks.
func (all bands) lengthWithin(width, beyond float64) float64 {
	turn := 0.0
	if over := func(angle float64) float64 { return all.breadth(angle) + beyond - width }; over(0) > 0 {
		turn, _ = all.least()
		if over(turn) < 0 {
			share, _ := geom.Bisect(func(share float64) float64 { return over(share * turn) }, 0, 1, turnTolerance)
			turn *= share
		}
	}
	return all.extent(turn) + beyond*math.Abs(math.Sin(turn))
}
