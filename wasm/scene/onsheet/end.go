package onsheet

import (
	"barkwright/core/draw"
	"barkwright/core/frame"
	"barkwright/core/geom"
	"barkwright/core/sheet"
	"barkwright/core/units"
	"barkwright/wasm/scene"
)

// end is the bow cut down its middle: the bark's edge, the stem-piece with its layers, the
// headboard over its heel, and the holes of the stitches.
func end(l looker) sheet.Figure {
	size := high(270)
	p := pen{scene.NewPen(l.View, size)}
	p.List.Title = "The end, cut down its middle"
	p.List.Description = "The stem-piece inside the bark's edge, with the headboard that stands over its heel."
	h, s := l.Hull, l.Frame.Stem
	from := min(l.Frame.Headboard.Stands.X, l.Frame.Headboard.Top.X, s.Profile.Points[0].X) - 0.12
	const margin = 3.0 // letters
	room := draw.Size{Width: size.Width - 2*margin*p.Letter, Height: size.Height - 2*margin*p.Letter}
	scale := min(room.Width/(h.Foremost()-from), room.Height/l.Design.EndHeight)
	left := (size.Width - scale*(h.Foremost()-from)) / 2
	a := scene.Plate{Origin: draw.Point{X: left - from*scale, Y: size.Height - margin*p.Letter}, Scale: scale}
	p.endBark(l, a, from)
	p.endStem(l, a)
	p.endBoard(l, a)
	p.ScaleBar(draw.Point{X: size.Width / 2, Y: size.Height - 1.6*p.Letter}, scale)
	return sheet.Figure{Caption: "The end, cut down its middle: the stem-piece inside the bark's edge, and the headboard.",
		Drawing: p.Done()}
}

// endBark is the bark's edge with its stitches, the bottom inboard of it, and the top edge.
func (p pen) endBark(l looker, a scene.Plate, from float64) {
	const pieces = 40
	c := l.Frame.Closing
	var bottom, top []geom.Vec2
	for i := range pieces + 1 {
		t := float64(i) / pieces
		x := from + t*(l.Hull.HeelX-from)
		bottom = append(bottom, geom.Vec2{X: x, Y: l.Hull.Bottom(x)})
		x = from + t*(l.Hull.HeadX-from)
		top = append(top, geom.Vec2{X: x, Y: l.Hull.TopEdge(x)})
	}
	p.Line(draw.Ink, scene.OutlineWidth, a.Place(append(bottom, c.Trim.Points...))...)
	p.Line(draw.Ink, scene.StrongWidth, a.Place(top)...)
	for k := range c.Stitches() {
		at, _ := c.HoleAt(k)
		p.Ring(draw.Root, scene.FineWidth, draw.Polygon(a.At(at.X, at.Y), 1.1, 6, 0))
	}
	heel := a.At(c.Trim.Points[0].X, c.Trim.Points[0].Y)
	p.name("heel: the bark leaves the bottom", heel, -1, 1.1)
	middle := a.Place([]geom.Vec2{c.Trim.At(0.62 * c.Trim.Length())})[0]
	p.name("trim line, "+units.Length.Format(c.Trim.Length(), l.System), middle, 1, 0)
	for _, q := range c.Lashings {
		p.Line(draw.Root, 2.2, a.At(q.X, l.Hull.TopEdge(q.X)-0.012), a.At(q.X, l.Hull.TopEdge(q.X)+0.012))
	}
	last := c.Lashings[len(c.Lashings)-1]
	p.name("lashings of the outwales", a.At(last.X, l.Hull.TopEdge(last.X)+0.012), -1, -1.4)
}

// endStem is the stem-piece with the lines between its layers, where it bends at all.
func (p pen) endStem(l looker, a scene.Plate) {
	d, s := l.Design, l.Frame.Stem
	outer := geom.Offset(s.Profile.Points, d.BarkThickness)
	inner := geom.Offset(s.Profile.Points, d.BarkThickness+d.StemDepth)
	if min(s.Radius, s.SolidRadius) > d.BarkThickness+d.StemDepth {
		p.Area(draw.Cedar, draw.Ink, scene.TimberWidth, a.Place(scene.Between(outer, inner)))
		for i := 1; i < d.StemLaminations; i++ {
			p.Line(draw.Ink, scene.HairWidth, a.Place(geom.Offset(outer, float64(i)*s.Lamination)[s.Point:])...)
		}
		solid := a.Place([]geom.Vec2{outer[s.Point].Lerp(inner[s.Point], 1)})[0]
		p.name("solid to here, split from here", solid, -1, -1.3)
	}
	head := a.Place(outer[len(outer)-1:])[0]
	p.name("stem head, "+units.Length.Format(d.EndHeight, l.System)+" high", head, 1, -0.9)
}

// endBoard is the headboard, seen from the edge.
func (p pen) endBoard(l looker, a scene.Plate) {
	b := l.Frame.Headboard
	across := b.Top.Sub(b.Stands).Unit().Left().Scale(-frame.HeadboardThickness)
	p.Area(draw.Cedar, draw.Ink, scene.TimberWidth, a.Place([]geom.Vec2{b.Stands, b.Top, b.Top.Add(across),
		b.Stands.Add(across)}))
	p.name("headboard, "+units.SmallLength.Format(b.Height, l.System)+" standing", a.Place([]geom.Vec2{b.Stands.Lerp(b.Top, 0.55)})[0],
		-1, 0)
}

// name letters a part, away from it to one side and so many letters down.
func (p pen) name(text string, at draw.Point, side, down float64) {
	const away = 2.2
	anchor := draw.Start
	if side < 0 {
		anchor = draw.End
	}
	n := p.Say(scene.RankPart, text, draw.Ink, draw.Paper,
		scene.SpotAt(at.X+side*away*p.Letter, at.Y+down*p.Letter, anchor))
	n.Lead, n.Tied = &at, true
}
