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
	angle, breadth = mostTurned, all.breadth(mostTurned)
	if other := all.breadth(-mostTurned); other < breadth {
		angle, breadth = -mostTurned, other
	}
	// The corner farthest from a side moves on around them as the side does.
	far, n := 0, len(corners)
	for i, p := range corners {
		side := corners[(i+1)%n].Sub(p)
		from := func(k int) float64 { return side.Cross(corners[k%n].Sub(p)) }
		for far = max(far, i+1); far < i+n && from(far+1) > from(far); far++ {
		}
		// Those above run the other way, at the same turn.
		if width := from(far) / side.Len(); math.Abs(side.Y) <= math.Abs(side.X) && side.X != 0 && width < breadth {
			angle, breadth = math.Atan(side.Y/side.X), width
		}
	}
	return angle, breadth
}

// turnTolerance is how closely the angle of a strip is found, as a share of the greatest.
const turnTolerance = 1e-7

// within is how broad and how long a straight strip must be for them: at least so broad, lap and trim of a
// breadth beyond them included, and turned no more than its breadth asks.
func (all bands) within(width, beyond float64) (_, length float64) {
	turn := 0.0
	if all.breadth(0)+beyond > width {
		var least float64
		turn, least = all.least()
		width = max(width, least+beyond)
		if over := func(share float64) float64 { return all.breadth(share*turn) + beyond - width }; over(1) < 0 {
			share, _ := geom.Bisect(over, 0, 1, turnTolerance)
			turn *= share
		}
	}
	return width, all.extent(turn) + beyond*math.Abs(math.Sin(turn))
}
