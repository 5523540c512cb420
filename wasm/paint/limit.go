package paint

import (
	"math"

	"barkwright/core/draw"
)

// imageEdge is by how many pixels Ebitengine's image for a picture may be larger than
// the picture.
const imageEdge = 2

// mostPixels is how many pixels a side a picture may have on a device whose textures
// have at most so many: of those Ebitengine uses a power of 2.
func mostPixels(texture int) int {
	usable := 1
	for 2*usable <= texture {
		usable *= 2
	}
	return usable - imageEdge
}

// fits tells whether a view can be drawn as one image of a device with such textures.
// Density is in device pixels a CSS pixel.
func fits(size draw.Size, density float64, texture int) bool {
	most := float64(mostPixels(texture))
	return math.Ceil(size.Width*density) <= most && math.Ceil(size.Height*density) <= most
}
