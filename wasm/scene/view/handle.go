package view

import (
	"math"

	"barkwright/core"
	"barkwright/core/draw"
	"barkwright/core/units"
	"barkwright/wasm/scene"
)

// Handle is a place on the drawing that can be dragged to set a parameter.
type Handle struct {
	// Key is that of the parameter.
	Key string
	At  draw.Point
	// Axis is the unit direction, CSS pixels, in which the value grows.
	Axis draw.Point
	// PerPixel is the change of the value for one CSS pixel along Axis, metres.
	PerPixel float64
	// Reach is how near to At, in CSS pixels, a finger has to come down.
	Reach float64
}

// handleReach makes a target of 44 CSS pixels.
const handleReach = 22

// Value returns the parameter after a drag from one point to another. start is its value
// when the drag began, in metres.
func (h Handle) Value(start float64, from, to draw.Point) float64 {
	return start + h.PerPixel*((to.X-from.X)*h.Axis.X+(to.Y-from.Y)*h.Axis.Y)
}

// finestFinger is the largest change per pixel of a finger's path, in metres. A finger
// is steady to a pixel or two, so it can set a value to half an inch.
const finestFinger = units.Inch / 4

// ForFinger returns the handle as a finger drags it. It may move more slowly than the
// finger.
func (h Handle) ForFinger() Handle {
	h.PerPixel = min(h.PerPixel, finestFinger)
	return h
}

// Handles returns the handles of Draw for the same view. Only the states with top and
// side views have any. Rocker and the place of the heel act at the same point: rocker is
// taken at the after heel and the heel's place at the forward one.
func Handles(c core.Canoe, v scene.View, size draw.Size) []Handle {
	if !v.State.Plain() || v.Only > scene.SideOnly {
		return nil
	}
	return handlesIn(c, v, fit(c, v, size))
}

// handlesIn returns the handles of a picture laid out.
func handlesIn(c core.Canoe, v scene.View, l layout) []Handle {
	h, d := c.Hull, c.Design
	up := draw.Point{X: 0, Y: -1}
	scale := 1 / l.side.Scale
	var handles []Handle
	if l.hasTop {
		handles = append(handles, Handle{Key: "beam", At: l.top.At(0, d.Beam/2), Axis: up, PerPixel: 2 / l.top.Scale, Reach: handleReach})
	}
	if l.hasSide {
		handles = append(handles,
			Handle{Key: "depth", At: l.side.At(0, d.Depth), Axis: up, PerPixel: scale, Reach: handleReach},
			Handle{Key: "endHeight", At: l.side.At(h.HeadX, d.EndHeight), Axis: up, PerPixel: scale, Reach: handleReach},
			Handle{Key: "rocker", At: l.side.At(-h.HeelX, d.Rocker), Axis: up, PerPixel: scale, Reach: handleReach},
			Handle{Key: "heelLength", At: l.side.At(h.HeelX, d.Rocker), Axis: draw.Point{X: -1, Y: 0}, PerPixel: scale,
				Reach: handleReach})
	}
	if v.State == scene.Finished {
		handles = append(handles, crewHandles(c, l, handles)...)
	}
	return handles
}

// HandleAt returns the nearest handle within reach of p, and false where there is none.
func HandleAt(handles []Handle, p draw.Point) (Handle, bool) {
	var best Handle
	near := math.Inf(1)
	for _, h := range handles {
		if d := math.Hypot(p.X-h.At.X, p.Y-h.At.Y); d <= h.Reach && d < near {
			best, near = h, d
		}
	}
	return best, !math.IsInf(near, 1)
}

// handles draws each as a lozenge with a point toward both ways it goes.
func (p *pen) handles(handles []Handle) {
	for _, h := range handles {
		x, y := h.Axis.X, h.Axis.Y
		at := func(along, across float64) draw.Point {
			along, across = along*p.Weight, across*p.Weight
			return draw.Point{X: h.At.X + along*x - across*y, Y: h.At.Y + along*y + across*x}
		}
		body := []draw.Point{at(9, 0), at(3, 5), at(-3, 5), at(-9, 0), at(-3, -5), at(3, -5)}
		if !p.Seen(body) {
			continue
		}
		p.Marks = append(p.Marks,
			draw.Fill{Role: draw.Paper, Points: body},
			draw.Stroke{Role: draw.Mark, Points: body, Width: 2 * p.Weight, Closed: true},
			draw.Stroke{Role: draw.Mark, Points: []draw.Point{at(0, -2.5), at(0, 2.5)}, Width: 1.5 * p.Weight})
		r := 10 * p.Weight
		p.KeepOff(draw.Box{Left: h.At.X - r, Top: h.At.Y - r, Right: h.At.X + r, Bottom: h.At.Y + r})
	}
}
