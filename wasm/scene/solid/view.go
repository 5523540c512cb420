package solid

import (
	"barkwright/core"
	"barkwright/core/draw"
	"barkwright/core/geom"
	"barkwright/core/units"
	"barkwright/wasm/scene"
)

// Draw draws the finished canoe in three-quarter view.
func Draw(c core.Canoe, v scene.View, size draw.Size) draw.List {
	p := scene.NewPen(v, size)
	p.List.Title, p.List.Description = "The canoe in the round", describe(c, v)
	// While a slider is in hand the boat keeps its scale, so that it is seen to grow.
	fitted := c
	if v.Ghost != nil {
		fitted = *v.Ghost
	}
	all := Extremes(fitted)
	all = append(all, GroundBarExtremes(fitted.Design.Length, broadest(all), v.System)...)
	if v.Held != nil {
		all = append(all, Extremes(*v.Held)...)
	}
	s := Solid{Pen: p, Camera: NewCamera(v.Stand(), fitted.Design.Length, all, v.Zoomed(Room(p, size), size))}
	if v.Layer != scene.Plain {
		s.GroundBar(c.Design.Length, broadest(Extremes(c)))
	}
	s.Canoe(c, NewSkin(c.Hull, 1), Done(c))
	s.Paint()
	if v.Held != nil {
		s.Held(*v.Held)
	}
	if v.Layer != scene.Plain {
		s.labels(c)
	}
	return p.Done()
}

// Room is the part of a picture that the boat may fill, under its title.
func Room(p *scene.Pen, size draw.Size) draw.Box {
	room := draw.Box{Left: 0.8 * p.Letter, Top: 2.2 * p.Letter, Right: size.Width - 0.8*p.Letter,
		Bottom: size.Height - 0.8*p.Letter}
	if size.Height < 15*p.Letter {
		room.Top = 1.9 * p.Letter
	}
	return room
}

// broadest is how far out any of the points stands, m.
func broadest(points []geom.Vec3) float64 {
	out := 0.0
	for _, q := range points {
		out = max(out, q.Y)
	}
	return out
}

// labels name the boat, from where it is seen, and its bow.
func (p *Solid) labels(c core.Canoe) {
	n := p.Say(scene.RankMain, "The canoe "+words(p.View), draw.Ink, draw.Paper,
		scene.SpotAt(0.8*p.Letter, 1.1*p.Letter, draw.Start), scene.SpotAt(p.List.Width-0.8*p.Letter, 1.1*p.Letter, draw.End),
		scene.SpotAt(0.8*p.Letter, p.List.Height-1.1*p.Letter, draw.Start))
	n.Text.Bold = true
	bow := p.Camera.At(geom.Vec3{X: c.Hull.HeadX, Z: c.Design.EndHeight})
	m := p.Say(scene.RankTitle, "bow", draw.Ink, draw.Paper, scene.SpotAt(bow.X, bow.Y-1.1*p.Letter, draw.Middle),
		scene.SpotAt(bow.X+1.6*p.Letter, bow.Y, draw.Start), scene.SpotAt(bow.X-1.6*p.Letter, bow.Y, draw.End))
	m.Lead = &bow
	NoScale(p.Pen, draw.Point{X: 0.8 * p.Letter, Y: p.List.Height - 0.9*p.Letter})
}

// words say from where the boat is seen.
func words(v scene.View) string {
	if v.Turned != 0 {
		return "turned round"
	}
	return v.From.String()
}

// describe says in words what the picture shows.
func describe(c core.Canoe, v scene.View) string {
	length := func(m float64) string { return units.Length.Format(m, v.System) }
	bar := ""
	if v.Layer != scene.Plain {
		bar = GroundBarWords(c.Design.Length, v.System)
	}
	return "The finished canoe " + words(v) + ", " + length(c.Design.Length) + " long: gunwales with their caps and lacing, " +
		"thwarts, ribs over the sheathing, headboards, ends sewn." + bar
}

// NoScale says, from a place on, that a picture in the round has no one scale, and that the bar has
// the boat's perspective.
func NoScale(p *scene.Pen, at draw.Point) {
	p.Say(scene.RankExtra, "no one scale: what is nearer is larger, on the bar too", draw.Faint, draw.Paper,
		scene.SpotAt(at.X, at.Y, draw.Start))
}
