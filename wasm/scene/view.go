package scene

import (
	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/draw"
	"barkwright/core/refit"
	"barkwright/core/units"
)

// State is what a view shows.
type State int

// The states.
const (
	OnTheBed State = iota
	Finished
	LaidFlat
	SidesUp
)

// String is the state as the page names it.
func (s State) String() string {
	return [...]string{"on the bed", "finished", "bark laid flat", "sides turned up"}[s]
}

// Load is the water line of the loaded boat.
type Load struct {
	// Height of the water amidships over the bottom there, metres.
	Height float64
	// Slope is the water's rise per metre forward, seen from the boat.
	Slope float64
}

// View is how the boat is looked at.
type View struct {
	State State
	// Zoom is at least 1; PanX and PanY move the picture right and down, CSS
	// pixels. Clamp keeps them where there is something to see.
	Zoom, PanX, PanY float64
	// Touched is the name of the part to mark, or empty.
	Touched string
	// Ghost is the boat as it was when the slider was taken up, or nil. While
	// there is one the scale stays, so that what moves is the boat.
	Ghost *core.Canoe
	// Load gives the water line of the finished boat, or nil.
	Load *Load
	// Measured is what a record says of the boat, drawn over both views; nil for none.
	Measured []refit.Row
	// Flat is the bark laid flat, for the states that show it; nil while it is
	// being worked out.
	Flat *bark.Flat
	// Up is how far the sides are turned up, from 0 on the bed to 1 finished.
	Up     float64
	System units.System
	// Handles tells whether the handles are drawn.
	Handles bool
}

// MostZoom is how far a view can be brought near: a rib of a long boat is then
// a thumb wide on a phone.
const MostZoom = 8

// Clamp holds the zoom between 1 and MostZoom and the pan so that the picture
// keeps covering its cell.
func (v View) Clamp(size draw.Size) View {
	v.Zoom = max(1, min(MostZoom, v.Zoom))
	x, y := (v.Zoom-1)*size.Width/2, (v.Zoom-1)*size.Height/2
	v.PanX = max(-x, min(x, v.PanX))
	v.PanY = max(-y, min(y, v.PanY))
	return v
}

// ZoomAt changes the zoom by a factor and keeps what is at p where it is, as far
// as Clamp lets it.
func (v View) ZoomAt(p draw.Point, factor float64, size draw.Size) View {
	v = v.Clamp(size)
	near := max(1, min(MostZoom, v.Zoom*factor))
	ratio := near / v.Zoom
	cx, cy := p.X-size.Width/2, p.Y-size.Height/2
	v.PanX, v.PanY = cx-ratio*(cx-v.PanX), cy-ratio*(cy-v.PanY)
	v.Zoom = near
	return v.Clamp(size)
}
