package raise

import (
	"math"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/bark"
	"barkwright/core/draw"
	"barkwright/core/geom"
	"barkwright/wasm/scene"
	"barkwright/wasm/scene/solid"
)

// Boat is a boat at a share of its way from the bark flat on the bed to the finished canoe.
type Boat struct {
	core.Canoe
	flat *bark.Flat
	up   float64
	// sheet is the bark on the bed until panels are sewn on, skin what it is from then on.
	sheet *sheet
	skin  solid.Skin
}

// At is a boat at a share of its way, 0 to 1. Its bark lies flat as f says.
func At(c core.Canoe, f *bark.Flat, up float64) Boat {
	b := Boat{Canoe: c, flat: f, up: up}
	if up < panelsFrom {
		s := newSheet(c.Hull, &f.Sheet, sidesAt(up))
		b.sheet = &s
	} else {
		b.skin = solid.NewSkin(c.Hull, between(up, endsFrom, liningFrom))
	}
	return b
}

// Draw draws the boat on its way in three quarters view, at one scale from first to last.
func Draw(c core.Canoe, v scene.View, size draw.Size) draw.List {
	drawn := scene.NewPen(v, size)
	drawn.List.Title, drawn.List.Description = "The boat raised", describe(c, v)
	if drawn.ReadyFlat(v.Flat) {
		b := At(c, v.Flat, v.Up)
		room := solid.Room(drawn, size)
		b.InTheRound(drawn, v.Zoomed(room, size), true)
		b.Says(drawn, draw.Point{X: 0.8 * drawn.Letter, Y: 1.1 * drawn.Letter})
		solid.NoScale(drawn, draw.Point{X: 0.8 * drawn.Letter, Y: size.Height - 0.9*drawn.Letter})
		drawn.Say(scene.RankTitle, "bow →", draw.Ink, draw.Paper,
			scene.SpotAt(size.Width-0.8*drawn.Letter, 1.1*drawn.Letter, draw.End))
	}
	return drawn.Done()
}

// stand is from where the raising is seen: far enough round to the bow for the end to be seen,
// high enough to look over the near side into the boat. By eye.
var stand = scene.Stand{Round: 16 * math.Pi / 180, High: 30 * math.Pi / 180}

// InTheRound draws the boat in three quarters view, in a part of the picture, lettered and with
// a scale bar on the ground, or bare.
func (b Boat) InTheRound(drawn *scene.Pen, room draw.Box, lettered bool) {
	all := b.extremes()
	if lettered {
		all = append(all, solid.GroundBarExtremes(b.Design.Length, bedHalf(b.flat), drawn.View.System)...)
	}
	if held := drawn.View.Held; held != nil {
		all = append(all, solid.Extremes(*held)...)
	}
	p := pen{solid.Solid{Pen: drawn, Camera: solid.NewCamera(stand, b.Design.Length, all, room)}}
	if b.up < 1 {
		ground := p.Place(b.bedCorners(bedHalf(b.flat)))
		p.List.Add(draw.Fill{Role: draw.Ground, Points: ground})
		p.Pen.Surface(answer.BedPart, ground)
	}
	if lettered {
		p.GroundBar(b.Design.Length, bedHalf(b.flat))
	}
	p.put(b)
	if lettered {
		p.gunwaleSaid(b)
	}
}

// FromAbove draws the boat from above, in a drawing of that view, on ground that reaches so far from the
// centre line.
func (b Boat) FromAbove(drawn *scene.Pen, a scene.Plate, ground float64) {
	p := pen{solid.Solid{Pen: drawn, Camera: solid.PlanCamera(a)}}
	if b.up < 1 {
		corners := p.Place(b.bedCorners(ground))
		p.Fill(draw.Ground, corners)
		p.Pen.Surface(answer.BedPart, corners)
	}
	p.put(b)
	p.gunwaleSaid(b)
}

// FromTheSide draws the boat from its starboard side, in a drawing of that view.
func (b Boat) FromTheSide(drawn *scene.Pen, a scene.Plate) {
	p := pen{solid.Solid{Pen: drawn, Camera: solid.SideCamera(a), First: solid.Ribs}}
	if b.sheet == nil {
		p.First = solid.Outer // the near side stands before all that is in the boat
	}
	if b.up < 1 {
		half := min(b.Design.BedLength/2, scene.BedShown(b.Canoe))
		ground := a.Place(scene.Rect(0, half, -scene.GroundDepth, 0))
		p.Fill(draw.Ground, ground)
		p.Pen.Surface(answer.BedPart, ground)
		drawn.Line(draw.Frame, scene.TimberWidth, a.At(-half, 0), a.At(half, 0))
	}
	p.put(b)
}

// put draws the boat as its camera sees it, as far as it is made.
func (p *pen) put(b Boat) {
	// What stands in the boat comes first: the bark's outside hides it.
	if b.up < endsFrom {
		p.frame(b.Canoe)
		if b.up >= gunwalesFrom {
			p.posts(b.Canoe)
		} else {
			p.gunwaleMarks(b.Canoe)
		}
	}
	if b.sheet != nil {
		p.bark(b.sheet)
		p.goreParts(b.flat, b.sheet.raised)
	} else {
		p.Canoe(b.Canoe, b.skin, madeAt(b.Canoe, b.up))
	}
	p.Paint()
	if p.View.Held != nil {
		p.Held(*p.View.Held)
	}
}

// extremes are the outermost points of the flat sheet and of the finished boat: what a picture
// must hold at any share of the way.
func (b Boat) extremes() []geom.Vec3 {
	all := append(b.bedCorners(bedHalf(b.flat)), solid.Extremes(b.Canoe)...)
	for _, piece := range b.flat.Pieces() {
		for _, q := range piece.Outline() {
			for _, m := range scene.Quarters {
				all = append(all, solid.InPlace(geom.Vec3{X: q.X, Y: q.Y}, m))
			}
		}
	}
	return all
}

// bedCorners are the ground under the bark: as long as the boat, and so far out from the centre line.
func (b Boat) bedCorners(wide float64) []geom.Vec3 {
	half := min(b.Design.BedLength/2, scene.BedShown(b.Canoe))
	var corners []geom.Vec3
	for _, q := range scene.Rect(0, half, -wide, wide) {
		corners = append(corners, geom.Vec3{X: q.X, Y: q.Y, Z: -0.01})
	}
	return corners
}

// bedHalf is how far out the ground under the bark is drawn, m.
func bedHalf(f *bark.Flat) float64 { return f.Breadth/2 + 0.05 }

// goreParts lets each gore be touched along its after edge or that edge's mirror image.
func (p *pen) goreParts(f *bark.Flat, raised []geom.Vec3) {
	n, slits := len(f.Gores), f.Sheet.Slits()
	for i, g := range f.Gores {
		if g.X < 0 || len(g.After) == 0 {
			continue
		}
		col := 0
		if g.X > 0 {
			col, slits = slits[0].Col, slits[1:]
		}
		for _, m := range scene.Quarters {
			var line []draw.Point
			for r := f.Sheet.FootRow; r < f.Sheet.Rows; r++ {
				line = append(line, p.Camera.At(solid.InPlace(raised[f.Sheet.Vertex(col, r, geom.Before)], m)))
			}
			p.Part(scene.GoreName(i, n), false, line)
		}
	}
}

// Says letters what is done now, from a place on.
func (b Boat) Says(p *scene.Pen, at draw.Point) {
	n := p.Say(scene.RankMain, Words(b.Canoe, b.up), draw.Ink, draw.Paper, scene.SpotAt(at.X, at.Y, draw.Start),
		scene.SpotAt(0.8*p.Letter, p.List.Height-1.1*p.Letter, draw.Start))
	n.Text.Bold = true
}

// gunwaleSaid says what the dashed line over the bark is.
func (p *pen) gunwaleSaid(b Boat) {
	if b.up >= gunwalesFrom {
		return
	}
	top := p.Camera.At(geom.Vec3{Y: b.Hull.SkinHalfBreadth(0), Z: b.Hull.TopEdge(0)})
	p.Say(scene.RankExtra, "where the gunwale will stand", draw.Faint, draw.Paper,
		scene.SpotAt(top.X, top.Y-0.8*p.Letter, draw.Middle)).Still = true
}

// describe says in words how the boat stands.
func describe(c core.Canoe, v scene.View) string {
	return "The boat from the starboard bow, bow to the right. " + Words(c, v.Up) + "." +
		solid.GroundBarWords(c.Design.Length, v.System)
}
