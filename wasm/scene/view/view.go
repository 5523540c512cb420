package view

import (
	"barkwright/core"
	"barkwright/core/draw"
	"barkwright/core/units"
	"barkwright/wasm/scene"
	"barkwright/wasm/scene/flat"
	"barkwright/wasm/scene/raise"
)

// Draw draws the boat in the view's state.
func Draw(c core.Canoe, v scene.View, size draw.Size) draw.List {
	switch v.State {
	case scene.LaidFlat:
		return flat.Draw(c, v, size)
	case scene.SidesUp:
		return raise.Draw(c, v, size)
	}
	return TopAndSide(c, v, size)
}

// TopAndSide draws the top view over the side view at one scale, bow to the
// right, marks lined up, with sections of the boat where there is room.
func TopAndSide(c core.Canoe, v scene.View, size draw.Size) draw.List {
	p := pen{scene.NewPen(v, size)}
	l := fit(c, v, size)
	p.List.Title = "Top view and side view, " + v.State.String()
	p.List.Description = describe(c, v)
	p.tape(c, l)
	if v.State == scene.OnTheBed {
		p.topOnBed(c, l)
		p.sideOnBed(c, l)
	} else {
		p.topFinished(c, l)
		p.sideFinished(c, l)
	}
	p.measured(c, l)
	p.handles(Handles(c, v, size))
	p.sections(c, l)
	return p.Done()
}

// describe says in words what the picture shows.
func describe(c core.Canoe, v scene.View) string {
	d := c.Design
	length := func(m float64) string { return units.Length.Format(m, v.System) }
	boat := "A canoe " + length(d.Length) + " long, " + length(d.Beam) + " inside the gunwales and " + length(d.Depth) +
		" deep, bow to the right"
	count := func(n int, one, many string) string {
		if n == 1 {
			return "1 " + one
		}
		return units.Count.Format(float64(n), v.System) + " " + many
	}
	if v.State == scene.OnTheBed {
		return boat + ", on the building bed: from above the bark laid out flat with " + count(len(c.Bark.Gores), "gore", "gores") +
			" a side, the building frame weighted on it, " + count(c.Frame.Bed.StakeCount, "stake", "stakes") +
			", and from the side, with the sides turned up, the posts that hold the sheer."
	}
	return boat + ", finished, with " + count(d.Ribs, "rib", "ribs") + ", " + count(d.Thwarts, "thwart", "thwarts") +
		" and " + count(c.Frame.Lacing.Count, "group", "groups") + " of lacing."
}
