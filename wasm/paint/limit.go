package paint

import (
	"math"

	"barkwright/core/draw"
)

// imageEdge is how many pixels larger than the picture Ebitengine's image for it may be.
const imageEdge = 2

// mostPixels returns the most pixels a side that a picture may have on a device with
// textures of at most a size. Ebitengine uses textures whose size is a power of 2.
func mostPixels(texture int) int {
	usable := 1
	for 2*usable <= texture {
		usable *= 2
	}
	return usable - imageEdge
}

// fits reports whether a view can be drawn as one image on a device with textures of a
// size. Density is in device pixels per CSS pixel.
func fits(size draw.Size, density float64, texture int) bool {
	most := float64(mostPixels(texture))
	return math.Ceil(size.Width*density) <= most && math.Ceil(size.Height*density) <= most
}
