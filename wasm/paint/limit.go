package paint

import (
	"math"

	"barkwright/wasm/scene"
)

// imageEdge is by how many pixels Ebitengine's image for a picture may be larger than
// the picture.
const imageEdge = 2

// fits tells whether a view can be drawn as one image of a device whose textures have
// at most so many pixels a side: of those Ebitengine uses a power of 2. Density is in
// device pixels a CSS pixel.
func fits(size scene.Size, density float64, texture int) bool {
	usable := 1
	for 2*usable <= texture {
		usable *= 2
	}
	most := float64(usable - imageEdge)
	return math.Ceil(size.Width*density) <= most && math.Ceil(size.Height*density) <= most
}
