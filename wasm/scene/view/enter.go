package view

import (
	"slices"
	"strings"

	"barkwright/core"
	"barkwright/core/draw"
	"barkwright/core/stage"
	"barkwright/wasm/scene"
)

var drawingsOf = map[stage.Drawing]scene.Only{stage.Every: scene.Both, stage.Top: scene.TopOnly, stage.Side: scene.SideOnly,
	stage.Sections: scene.SectionsOnly}

// nearFills is how much of the picture is filled by the parts that it is near. By eye.
const nearFills = 0.85

// Enter returns the view with which a stage is come to. Parts that stand at both ends count at the bow.
func Enter(c core.Canoe, v scene.View, l stage.Look, size draw.Size) scene.View {
	v.Only, v.Zoom, v.PanX, v.PanY = drawingsOf[l.Drawing], 1, 0, 0
	v = v.In(scene.StateOf(string(l.State)))
	if len(l.Near) == 0 || size.Width <= 0 || size.Height <= 0 {
		return v
	}
	var near []draw.Point
	for _, part := range Draw(c, v, size).Parts {
		name, _, _ := strings.Cut(part.Name, ".")
		at := draw.BoxOf(part.Points)
		if slices.Contains(l.Near, name) && at.Left+at.Right >= size.Width-1 {
			near = append(near, part.Points...)
		}
	}
	if len(near) == 0 {
		return v
	}
	b := draw.BoxOf(near)
	v.Zoom = nearFills * min(size.Width/b.Width(), size.Height/b.Height())
	v = v.Clamp(size)
	v.PanX = v.Zoom * (size.Width - b.Left - b.Right) / 2
	v.PanY = v.Zoom * (size.Height - b.Top - b.Bottom) / 2
	return v.Clamp(size)
}
