package solid

import (
	"math"

	"barkwright/core/draw"
	"barkwright/core/geom"
	"barkwright/wasm/scene"
)

// Camera looks at the boat from its starboard side and above, so that the bow is to the
// right, or from where it has been turned to.
type Camera struct {
	toward, right, up geom.Vec3 // unit directions: to the eye, right and up in the picture
	near              float64   // 1 over the distance of the eye from the middle of the boat, 1/m; 0 in a plan
	origin            draw.Point
	scale             float64 // CSS pixels a metre at the middle of the boat
}

// eyeLengths is the eye's distance in lengths of the boat: near enough for the bow to look
// nearer. By eye.
const eyeLengths = 2.4

// NewCamera fits points into a box. It depends on nothing else, so a picture whose points
// stay keeps its scale.
func NewCamera(from scene.Stand, length float64, points []geom.Vec3, room draw.Box) Camera {
	sinRound, cosRound := math.Sincos(from.Round)
	sinHigh, cosHigh := math.Sincos(from.High)
	k := Camera{
		toward: geom.Vec3{X: sinRound * cosHigh, Y: -cosRound * cosHigh, Z: sinHigh},
		right:  geom.Vec3{X: cosRound, Y: sinRound},
		up:     geom.Vec3{X: -sinRound * sinHigh, Y: cosRound * sinHigh, Z: cosHigh},
		near:   1 / (eyeLengths * length), scale: 1,
	}
	seen := make([]draw.Point, len(points))
	for i, q := range points {
		seen[i] = k.At(q)
	}
	b := draw.BoxOf(seen)
	k.scale = min(room.Width()/b.Width(), room.Height()/b.Height())
	k.origin = draw.Point{
		X: (room.Left+room.Right)/2 - k.scale*(b.Left+b.Right)/2,
		Y: (room.Top+room.Bottom)/2 - k.scale*(b.Top+b.Bottom)/2,
	}
	return k
}

// PlanCamera looks straight down, and SideCamera straight at the starboard side: without perspective,
// at the scale of a plate and where the plate's origin stands.
func PlanCamera(a scene.Plate) Camera {
	return Camera{toward: geom.Vec3{Z: 1}, right: geom.Vec3{X: 1}, up: geom.Vec3{Y: 1}, origin: a.Origin, scale: a.Scale}
}

func SideCamera(a scene.Plate) Camera {
	return Camera{toward: geom.Vec3{Y: -1}, right: geom.Vec3{X: 1}, up: geom.Vec3{Z: 1}, origin: a.Origin, scale: a.Scale}
}

// At is where a point stands in the picture.
func (k Camera) At(q geom.Vec3) draw.Point {
	s := k.scale / (1 - k.near*q.Dot(k.toward))
	return draw.Point{X: k.origin.X + s*q.Dot(k.right), Y: k.origin.Y - s*q.Dot(k.up)}
}

// depth grows toward the eye.
func (k Camera) depth(q geom.Vec3) float64 { return q.Dot(k.toward) }

// Faces tells whether a face with a normal at q is seen from its front.
func (k Camera) Faces(q, normal geom.Vec3) bool {
	return normal.Dot(k.toward.Sub(q.Scale(k.near))) > 0
}
