package view

import (
	"barkwright/core"
	"barkwright/core/draw"
	"barkwright/core/units"
	"barkwright/wasm/scene"
	"barkwright/wasm/scene/flat"
	"barkwright/wasm/scene/raise"
	"barkwright/wasm/scene/solid"
)

// Draw draws the boat in the view's state.
func Draw(c core.Canoe, v scene.View, size draw.Size) draw.List {
	switch v.State {
	case scene.LaidFlat:
		return flat.Draw(c, v, size)
	case scene.SidesUp:
		if v.Only == scene.RoundOnly {
			return raise.Draw(c, v, size)
		}
		return raised(c, v, size)
	case scene.InTheRound:
		return solid.Draw(c, v, size)
	}
	return TopAndSide(c, v, size)
}

// TopAndSide draws the top view over the side view at one scale, bow to the
// right, marks lined up, with sections of the boat where there is room.
func TopAndSide(c core.Canoe, v scene.View, size draw.Size) draw.List {
	p := pen{scene.NewPen(v, size)}
	p.List.Title = titles[v.Only] + ", " + v.State.String()
	p.List.Description = describe(c, v)
	switch v.Only {
	case scene.BodyPlan:
		p.bodyPlan(c, size)
		return p.Done()
	case scene.Details:
		p.details(c, size)
		return p.Done()
	case scene.RibBlanks:
		p.ribStrip(c, size)
		return p.Done()
	}
	l := fit(c, v, size)
	if v.Only == scene.SectionsOnly {
		p.sections(c, l)
		return p.Done()
	}
	p.tape(c, l)
	p.scaleNearBy(l)
	bed := v.State == scene.OnTheBed
	switch {
	case l.hasTop && bed:
		p.topOnBed(c, l)
	case l.hasTop:
		p.topFinished(c, l)
	}
	switch {
	case l.hasSide && bed:
		p.sideOnBed(c, l)
	case l.hasSide:
		p.sideFinished(c, l)
	}
	if v.Layer == scene.Names {
		p.names(c, l)
	}
	p.measured(c, l)
	if !bed {
		p.repairs(l)
	}
	if v.Handles {
		p.handles(handlesIn(c, v, l))
	}
	p.sections(c, l)
	return p.Done()
}

// titles name what is shown.
var titles = [...]string{scene.Both: "Top view and side view", scene.TopOnly: "Top view", scene.SideOnly: "Side view",
	scene.SectionsOnly: "Sections", scene.BodyPlan: "Body plan", scene.Details: "Gunwale and end at large scale",
	scene.RibBlanks: "Ribs as straight blanks"}

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
