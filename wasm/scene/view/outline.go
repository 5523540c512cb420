package view

import (
	"barkwright/core"
	"barkwright/core/draw"
	"barkwright/core/units"
	"barkwright/wasm/scene"
)

// Outlines draws each boat's outline from above and from the side, all of them at one scale and
// so many CSS pixels wide.
func Outlines(boats []core.Canoe, width float64, s units.System) []draw.List {
	const pad, gap = 6, 10
	var r reach
	for _, c := range boats {
		r = r.with(reachOf(c, scene.Finished))
	}
	if r.long == 0 {
		return nil
	}
	k := (width - 2*pad) / (2 * r.long)
	tall := 2*r.wide*k + (r.high-r.low)*k + gap + 2*pad
	out := make([]draw.List, len(boats))
	for i, c := range boats {
		size := draw.Size{Width: width, Height: tall, Letter: 11}
		p := pen{scene.NewPen(scene.View{State: scene.Finished, Zoom: 1, System: s}, size)}
		p.List.Title, p.List.Description = "Outline from above and from the side", describe(c, p.View)
		top := scene.Plate{Scale: k, Origin: draw.Point{X: width / 2, Y: pad + r.wide*k}}
		side := scene.Plate{Scale: k, Origin: draw.Point{X: width / 2, Y: tall - pad + r.low*k}}
		plan := skinPlan(c.Hull)
		p.Area(draw.Bark, draw.Ink, scene.TimberWidth, top.Place(scene.Between(plan, scene.Flipped(plan))))
		p.Area(draw.Bark, draw.Ink, scene.TimberWidth, side.Place(profile(c.Hull)))
		p.Line(draw.Ink, scene.FineWidth, side.Place(scene.Mirrored(edgeSide(c.Hull, 0)))...)
		out[i] = p.Done()
	}
	return out
}
