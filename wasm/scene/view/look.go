package view

import (
	"barkwright/core"
	"barkwright/core/draw"
	"barkwright/wasm/scene"
)

// Look zooms or moves the picture by a named step, as scene.View.Look does. The first step
// nearer to a whole picture of both views goes toward the side view: in the picture's middle
// lies the tape between them.
func Look(c core.Canoe, v scene.View, step string, size draw.Size) scene.View {
	next := v.Look(step, size)
	if step != "in" || v.Zoom > 1 || !v.State.Plain() || v.Only != scene.Both {
		return next
	}
	side := fit(c, v, size).side.At(0, c.Design.Depth/2)
	return v.ZoomAt(side, next.Zoom/max(1, v.Zoom), size)
}
