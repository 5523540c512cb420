package scene

import (
	"barkwright/core"
	"barkwright/core/afloat"
	"barkwright/core/answer"
	"barkwright/core/bark"
	"barkwright/core/draw"
	"barkwright/core/refit"
	"barkwright/core/units"
)

// State says which stage of the boat a view shows.
type State int

// The states.
const (
	OnTheBed State = iota
	Finished
	LaidFlat
	SidesUp
	InTheRound
)

var states = [...]struct {
	id, name string
	// plain says that it is drawn from above and from the side, with handles.
	plain bool
}{
	OnTheBed:   {"bed", "on the bed", true},
	Finished:   {"finished", "finished", true},
	LaidFlat:   {id: "flat", name: "bark laid flat"},
	SidesUp:    {id: "up", name: "sides turned up"},
	InTheRound: {id: "round", name: "in the round"},
}

// String returns the state's name in words.
func (s State) String() string { return states[s].name }

// Plain reports whether the state is drawn from above and from the side, with handles.
func (s State) Plain() bool { return states[s].plain }

// ID returns the id of the state, as a button of the page names it.
func (s State) ID() string { return states[s].id }

// StateOf returns the state that a button of the page names by its id. It panics for an
// id that no state has.
func StateOf(id string) State {
	for s, row := range states {
		if row.id == id {
			return State(s)
		}
	}
	panic("scene: no state " + id)
}

// Only says which of a state's drawings is shown.
type Only int

// What is shown. Both is the view from above over that from the side, with sections where
// there is room; of the bark laid flat it is all of it as it lies. Beside the views of the boat
// being raised stands the boat in the round.
const (
	Both Only = iota
	TopOnly
	SideOnly
	SectionsOnly
	BodyPlan
	BySheet
	Details
	RibBlanks
	RoundOnly
)

// Layer says what a picture is lettered with.
type Layer int

// The layers.
const (
	Measures Layer = iota
	Names
	Plain
)

var layerNames = [...]string{"Measures", "Names", "No lettering"}

// drawings are those of a state, in the order in which the button shows them.
var drawings = [...][]drawing{
	OnTheBed: {{Both, "Top and side"}, {TopOnly, "Top"}, {SideOnly, "Side"}, {SectionsOnly, "Sections"},
		{BodyPlan, "Body plan"}},
	Finished: {{Both, "Top and side"}, {TopOnly, "Top"}, {SideOnly, "Side"}, {SectionsOnly, "Sections"},
		{BodyPlan, "Body plan"}, {Details, "Details"}, {RibBlanks, "Ribs, straight"}},
	LaidFlat:   {{Both, "As it lies"}, {BySheet, "By the sheet"}},
	SidesUp:    {{Both, "Top and side"}, {RoundOnly, "In the round"}, {TopOnly, "Top"}, {SideOnly, "Side"}},
	InTheRound: {{Both, "All of it"}},
}

type drawing struct {
	only Only
	name string
}

// drawing is the one that a view shows, and its number: the first where the state has none of that
// sort.
func (v View) drawing() (n int, d drawing) {
	for i, d := range drawings[v.State] {
		if d.only == v.Only {
			return i, d
		}
	}
	return 0, drawings[v.State][0]
}

// OnlyName is what is shown in words, as a button says it.
func (v View) OnlyName() string {
	_, d := v.drawing()
	return d.name
}

// Choice reports whether the view's state has more than one drawing.
func (v View) Choice() bool { return len(drawings[v.State]) > 1 }

// NextOnly is the view with the drawing that the button shows next.
func (v View) NextOnly() View {
	n, _ := v.drawing()
	v.Only = drawings[v.State][(n+1)%len(drawings[v.State])].only
	return v
}

// In is the view in a state, with the drawing that it shows where the state has it too.
func (v View) In(s State) View {
	v.State = s
	_, d := v.drawing()
	v.Only = d.only
	return v
}

// As is the view looking at the boat as another does: its state, drawing, place and side.
func (v View) As(w View) View {
	v.State, v.Only, v.Zoom, v.PanX, v.PanY = w.State, w.Only, w.Zoom, w.PanX, w.PanY
	v.Up, v.From, v.Turned = w.Up, w.From, w.Turned
	return v
}

// Stays reports whether a view has the state, the drawing and the place of another.
func (v View) Stays(w View) bool {
	return v.State == w.State && v.Only == w.Only && v.Zoom == w.Zoom && v.PanX == w.PanX && v.PanY == w.PanY
}

// String returns the layer in words, as a button says it.
func (l Layer) String() string { return layerNames[l] }

// Next returns the layer that the button shows next.
func (l Layer) Next() Layer { return (l + 1) % Layer(len(layerNames)) }

// Load is the water line with the load aboard.
type Load struct {
	// Height is that of the water amidships over the bottom there, in metres.
	Height float64
	// Slope is how far the water rises per metre forward, seen from the boat.
	Slope float64
}

// View is how the boat is looked at.
type View struct {
	State State
	// Only is one of the state's drawings. Layer applies to all but the sheets one by one and the boat
	// being raised, which are always lettered.
	Only  Only
	Layer Layer
	// Zoom is at least 1. PanX and PanY move the picture right and down, in CSS pixels.
	// Clamp keeps all three where there is something to see.
	Zoom, PanX, PanY float64
	// Touched is the name of the part to mark, or empty.
	Touched string
	// Ghost is the boat as it was when the slider was taken up, or nil. While it is set the
	// scale stays the same, so that the boat is seen to move.
	Ghost *core.Canoe
	// Held is the boat that this one is held against, or nil. Its outlines are drawn dashed over
	// the boat, and the picture is laid out for both.
	Held *core.Canoe
	// Load is the water line of the finished boat, or nil.
	Load *Load
	// Measured lists what a record says of the boat, drawn over both views, or is nil.
	Measured []refit.Row
	// Repairs are those that the log holds, marked on the finished boat.
	Repairs []answer.Mended
	// Flat is the bark laid flat, for the states that show it. It is nil until it is worked
	// out.
	Flat *bark.Flat
	// Up is how far the boat is raised: 0 flat on the bed, 1 finished.
	Up float64
	// From is where the boat is looked at from in the round, and Turned how far it has been
	// turned from there, in whole turns.
	From   From
	Turned float64
	System units.System
	// Handles says whether handles are drawn.
	Handles bool
}

// MostZoom is the largest zoom. At it a rib of a long boat is as wide as a thumb on a
// phone.
const MostZoom = 8

// Clamp returns the view with its zoom between 1 and MostZoom, and its pan such that the
// picture still covers its cell.
func (v View) Clamp(size draw.Size) View {
	v.Zoom = max(1, min(MostZoom, v.Zoom))
	x, y := (v.Zoom-1)*size.Width/2, (v.Zoom-1)*size.Height/2
	v.PanX = max(-x, min(x, v.PanX))
	v.PanY = max(-y, min(y, v.PanY))
	return v
}

// Zoomed is where a part of the whole picture stands as the view's zoom and pan have it.
func (v View) Zoomed(b draw.Box, size draw.Size) draw.Box {
	v = v.Clamp(size)
	x := func(u float64) float64 { return size.Width/2 + (u-size.Width/2)*v.Zoom + v.PanX }
	y := func(u float64) float64 { return size.Height/2 + (u-size.Height/2)*v.Zoom + v.PanY }
	return draw.Box{Left: x(b.Left), Top: y(b.Top), Right: x(b.Right), Bottom: y(b.Bottom)}
}

// ZoomAt returns the view zoomed by a factor. What is at p stays there as far as Clamp
// allows.
func (v View) ZoomAt(p draw.Point, factor float64, size draw.Size) View {
	v = v.Clamp(size)
	near := max(1, min(MostZoom, v.Zoom*factor))
	ratio := near / v.Zoom
	cx, cy := p.X-size.Width/2, p.Y-size.Height/2
	v.PanX, v.PanY = cx-ratio*(cx-v.PanX), cy-ratio*(cy-v.PanY)
	v.Zoom = near
	return v.Clamp(size)
}

// LoadOf is the water line of a boat with its load; nil where it does not float.
func LoadOf(c core.Canoe) *Load {
	f := c.Afloat.Floated
	if f.State != afloat.Floats {
		return nil
	}
	return &Load{Height: f.Upright.Waterplane.Height, Slope: f.Upright.Waterplane.Slope}
}
