package hull

import "barkwright/core/geom"

// Station is one transverse section of the bark's outer face at X, for the port
// half: points (y, z) with y >= 0 from the lowest point on the centre line up to
// the sheer, in metres. Forward of the stem head, where the end leans out
// beyond its head, the outline ends on the centre line instead.
type Station struct {
	X       float64
	Outline []geom.Vec2
}
