package raise

import (
	"math"

	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/draw"
	"barkwright/core/geom"
	"barkwright/core/units"
	"barkwright/wasm/scene"
	"barkwright/wasm/scene/solid"
)

// Draw draws the boat on its way from the bark flat on the bed to the finished canoe, in three
// quarters view, at one scale from first to last.
func Draw(c core.Canoe, v scene.View, size draw.Size) draw.List {
	drawn := scene.NewPen(v, size)
	drawn.List.Title, drawn.List.Description = "The boat raised", describe(c, v)
	if f := v.Flat; drawn.ReadyFlat(f) {
		p := pen{solid.Solid{Pen: drawn}}
		all := extremes(c, f, v.System)
		if v.Held != nil {
			all = append(all, solid.Extremes(*v.Held)...)
		}
		p.Camera = solid.NewCamera(stand, c.Design.Length, all, solid.Room(drawn, size)).Zoomed(v, size)
		p.raised(c, f)
	}
	return drawn.Done()
}

// stand is from where the raising is seen: far enough round to the bow for the end to be seen,
// high enough to look over the near side into the boat. By eye.
var stand = scene.Stand{Round: 16 * math.Pi / 180, High: 30 * math.Pi / 180}

func (p *pen) raised(c core.Canoe, f *bark.Flat) {
	up := p.View.Up
	if up < 1 {
		p.List.Add(draw.Fill{Role: draw.Ground, Points: p.Place(bedCorners(c, f))})
	}
	p.GroundBar(c.Design.Length, bedHalf(f))
	if up < panelsFrom {
		s := newSheet(c.Hull, &f.Sheet, sidesAt(up))
		p.bark(&s)
		p.goreParts(f, s.raised)
	} else {
		p.Canoe(c, solid.NewSkin(c.Hull, between(up, endsFrom, liningFrom)), madeAt(c, up))
	}
	if up < endsFrom {
		p.frame(c)
		if up >= gunwalesFrom {
			p.posts(c)
		} else {
			p.gunwaleMarks(c)
		}
	}
	p.Paint()
	if p.View.Held != nil {
		p.Held(*p.View.Held)
	}
	p.labels(c)
}

// extremes are the outermost points of the flat sheet and of the finished boat: what the picture
// must hold at any share of the way.
func extremes(c core.Canoe, f *bark.Flat, system units.System) []geom.Vec3 {
	all := append(bedCorners(c, f), solid.Extremes(c)...)
	all = append(all, solid.GroundBarExtremes(c.Design.Length, bedHalf(f), system)...)
	for _, piece := range f.Pieces() {
		for _, q := range piece.Outline() {
			for _, m := range scene.Quarters {
				all = append(all, solid.InPlace(geom.Vec3{X: q.X, Y: q.Y}, m))
			}
		}
	}
	return all
}

// bedCorners are the ground under the bark: as long as the boat and as broad as the sheet.
func bedCorners(c core.Canoe, f *bark.Flat) []geom.Vec3 {
	half, wide := min(c.Design.BedLength/2, scene.BedShown(c)), bedHalf(f)
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

// labels say what is done now.
func (p *pen) labels(c core.Canoe) {
	n := p.Say(scene.RankMain, Words(c, p.View.Up), draw.Ink, draw.Paper,
		scene.SpotAt(0.8*p.Letter, 1.1*p.Letter, draw.Start), scene.SpotAt(0.8*p.Letter, p.List.Height-1.1*p.Letter, draw.Start))
	n.Text.Bold = true
	p.Say(scene.RankTitle, "bow →", draw.Ink, draw.Paper, scene.SpotAt(p.List.Width-0.8*p.Letter, 1.1*p.Letter, draw.End))
	p.NoScale()
	if p.View.Up < gunwalesFrom {
		top := p.Camera.At(geom.Vec3{Y: c.Hull.SkinHalfBreadth(0), Z: c.Hull.TopEdge(0)})
		p.Say(scene.RankExtra, "where the gunwale will stand", draw.Faint, draw.Paper,
			scene.SpotAt(top.X, top.Y-0.8*p.Letter, draw.Middle))
	}
}

// describe says in words how the boat stands.
func describe(c core.Canoe, v scene.View) string {
	return "The boat from the starboard bow, bow to the right. " + Words(c, v.Up) + "." +
		solid.GroundBarWords(c.Design.Length, v.System)
}
