package scene

import (
	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/record"
	"barkwright/core/units"
)

// State is which half of the work a view shows.
type State int

// The states, in the order of the work.
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
	Measured []record.Row
	// Flat is the bark laid flat, for the states that show it; nil while it is
	// being worked out.
	Flat *bark.Flat
	// Up is how far the sides are turned up, from 0 on the bed to 1 finished.
	Up     float64
	System units.System
	// Handles tells whether the handles are drawn.
	Handles bool
}

// Draw draws the boat in the view's state.
func Draw(c core.Canoe, v View, size Size) List {
	switch v.State {
	case LaidFlat:
		p := newPen(v, size)
		p.list.Title, p.list.Description = "Bark laid flat", describeFlat(c, v)
		p.flatLaid(c)
		return p.done()
	case SidesUp:
		p := newPen(v, size)
		p.list.Title, p.list.Description = "Sides turned up", describeRaised(c, v)
		p.raised(c)
		return p.done()
	}
	return TopAndSide(c, v, size)
}

// TopAndSide draws the top view over the side view at one scale, bow to the
// right, marks lined up, with sections of the boat where there is room.
func TopAndSide(c core.Canoe, v View, size Size) List {
	p := newPen(v, size)
	l := fit(c, v, size)
	p.list.Title = "Top view and side view, " + v.State.String()
	p.list.Description = describe(c, v)
	p.tape(c, l)
	if v.State == OnTheBed {
		p.topOnBed(c, l)
		p.sideOnBed(c, l)
	} else {
		p.topFinished(c, l)
		p.sideFinished(c, l)
	}
	p.measured(c, l)
	p.handles(Handles(c, v, size))
	p.sections(c, l)
	return p.done()
}

// describe says in words what the picture shows.
func describe(c core.Canoe, v View) string {
	d := c.Design
	length := func(m float64) string { return units.Length.Format(m, v.System) }
	boat := "A canoe " + length(d.Length) + " long, " + length(d.Beam) + " inside the gunwales and " + length(d.Depth) + " deep, bow to the right"
	count := func(n int, one, many string) string {
		if n == 1 {
			return "1 " + one
		}
		return units.Count.Format(float64(n), v.System) + " " + many
	}
	if v.State == OnTheBed {
		return boat + ", on the building bed: the bark laid out with " + count(len(c.Bark.Gores), "gore", "gores") +
			" a side, the building frame weighted on it, " + count(c.Frame.Bed.StakeCount, "stake", "stakes") + " and the posts that hold the sheer."
	}
	return boat + ", finished, with " + count(d.Ribs, "rib", "ribs") + ", " + count(d.Thwarts, "thwart", "thwarts") +
		" and " + count(c.Frame.Lacing.Count, "group", "groups") + " of lacing."
}

// MostZoom is how far a view can be brought near: a rib of a long boat is then
// a thumb wide on a phone.
const MostZoom = 8

// Clamp holds the zoom between 1 and MostZoom and the pan so that the picture
// keeps covering its cell.
func (v View) Clamp(size Size) View {
	v.Zoom = max(1, min(MostZoom, v.Zoom))
	x, y := (v.Zoom-1)*size.Width/2, (v.Zoom-1)*size.Height/2
	v.PanX = max(-x, min(x, v.PanX))
	v.PanY = max(-y, min(y, v.PanY))
	return v
}

// ZoomAt changes the zoom by a factor and keeps what is at p where it is, as far
// as Clamp lets it.
func (v View) ZoomAt(p Point, factor float64, size Size) View {
	v = v.Clamp(size)
	near := max(1, min(MostZoom, v.Zoom*factor))
	ratio := near / v.Zoom
	cx, cy := p.X-size.Width/2, p.Y-size.Height/2
	v.PanX, v.PanY = cx-ratio*(cx-v.PanX), cy-ratio*(cy-v.PanY)
	v.Zoom = near
	return v.Clamp(size)
}
