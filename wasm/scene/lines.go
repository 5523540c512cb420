package scene

import (
	"math"

	"barkwright/core"
	"barkwright/core/frame"
	"barkwright/core/geom"
)

// HalfSteps is the number of straight pieces that draw half the boat's length. The error
// is under half a pixel in a picture 1900 pixels wide.
const HalfSteps = 20

// Crowded returns n+1 places from 0 to end. They lie closer together toward the end,
// where plans turn fastest.
func Crowded(end float64, n int) []float64 {
	out := make([]float64, n+1)
	for i := range out {
		s := 1 - float64(i)/float64(n)
		out[i] = end * (1 - s*s)
	}
	return out
}

// Curve samples (x, f(x)) from amidships to end.
func Curve(f func(float64) float64, end float64) []geom.Vec2 {
	out := make([]geom.Vec2, 0, HalfSteps+1)
	for _, x := range Crowded(end, HalfSteps) {
		out = append(out, geom.Vec2{X: x, Y: f(x)})
	}
	return out
}

// Mirrored returns a line from amidships forward together with its mirror image aft, as
// one line that runs from aft forward.
func Mirrored(half []geom.Vec2) []geom.Vec2 {
	out := make([]geom.Vec2, 0, 2*len(half))
	for i := len(half) - 1; i > 0; i-- {
		out = append(out, geom.Vec2{X: -half[i].X, Y: half[i].Y})
	}
	if half[0].X > 0 {
		out = append(out, geom.Vec2{X: -half[0].X, Y: half[0].Y})
	}
	return append(out, half...)
}

// Between returns the outline between two lines that both run the same way.
func Between[P any](a, b []P) []P {
	out := append(make([]P, 0, len(a)+len(b)), a...)
	for i := len(b) - 1; i >= 0; i-- {
		out = append(out, b[i])
	}
	return out
}

// Flipped returns the line mirrored to the other side of the centre line.
func Flipped(a []geom.Vec2) []geom.Vec2 {
	out := make([]geom.Vec2, len(a))
	for i, q := range a {
		out[i] = geom.Vec2{X: q.X, Y: -q.Y}
	}
	return out
}

// Rect returns an upright rectangle of a half width about x, from low to high.
func Rect(x, half, low, high float64) []geom.Vec2 {
	return []geom.Vec2{{X: x - half, Y: low}, {X: x + half, Y: low}, {X: x + half, Y: high}, {X: x - half, Y: high}}
}

// BedShown returns half the length of bed that is drawn. The whole bed is drawn where
// that makes the boat only a little smaller.
func BedShown(c core.Canoe) float64 {
	d := c.Design
	return max(d.Length/2, min(d.BedLength/2, 1.04*d.Length/2))
}

// GroundDepth is how much ground is drawn under the bed from the side, metres.
const GroundDepth = 0.04

// GroupSpan returns the stations between which a group of lacing stands.
func GroupSpan(c core.Canoe, g frame.Group) (from, to float64) {
	h := c.Hull
	first, last := g.Holes[0]-c.Design.RootWidth/2, g.Holes[len(g.Holes)-1]+c.Design.RootWidth/2
	return math.Copysign(h.StationAt(math.Abs(first)), first), math.Copysign(h.StationAt(math.Abs(last)), last)
}
