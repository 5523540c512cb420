package view

import (
	"math"

	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/draw"
	"barkwright/core/geom"
	"barkwright/wasm/scene"
)

// called is a part with a place on it in a drawing.
type called struct {
	name string
	at   geom.Vec2
}

// names letters the parts round each view, with a line to each.
func (p *pen) names(c core.Canoe, l layout) {
	bed := p.View.State == scene.OnTheBed
	if l.titled {
		p.lineKinds(bed)
	}
	if l.hasTop {
		parts, reach := namesTop(c), 0.0
		if bed {
			parts = namesTopOnBed(c)
		}
		reach = reachOf(c, p.View.State).wide
		p.call(l.top, parts, reach, -reach)
	}
	if l.hasSide {
		parts := namesSide(c, p.View.Load)
		if bed {
			parts = namesSideOnBed(c)
		}
		p.call(l.side, parts, c.Hull.Sheer(0), reachOf(c, p.View.State).low)
	}
}

// lineKinds says in a row at the foot what the kinds of lines stand for.
func (p *pen) lineKinds(bed bool) {
	kinds := []struct {
		name  string
		role  draw.Role
		width float64
		dash  []float64
	}{
		{"edge of the bark", draw.Ink, scene.OutlineWidth, nil},
		{"seam", draw.Seam, scene.TimberWidth, scene.ShortDash},
		{"joint of sheets", draw.Seam, scene.StrongWidth, scene.SheetDash},
		{"centre line", draw.Faint, scene.HairWidth, scene.CentreDash},
	}
	if bed {
		kinds = append(kinds, struct {
			name  string
			role  draw.Role
			width float64
			dash  []float64
		}{"not built yet", draw.Faint, scene.TimberWidth, scene.ShortDash})
	} else {
		kinds[2].dash = nil
	}
	sample := 2.4 * p.Letter
	x, y := p.Letter, p.List.Height-0.8*p.Letter
	for _, kind := range kinds {
		n := p.Say(scene.RankExtra, kind.name, draw.Ink, draw.Paper, scene.SpotAt(x+sample+0.4*p.Letter, y, draw.Start))
		n.Spare = true
		n.With = func(label draw.Box) []draw.Op {
			right := label.Left - 0.4*p.Letter
			return []draw.Op{draw.Stroke{Role: kind.role, Width: kind.width * p.Weight, Dash: kind.dash,
				Points: []draw.Point{{X: right - sample, Y: y}, {X: right, Y: y}}}}
		}
		x += sample + draw.Lettered(kind.name, p.Letter, false) + 2*p.Letter
	}
}

// call letters parts of a view over its height high, or under its height low: whichever is
// nearer.
func (p *pen) call(a scene.Plate, parts []called, high, low float64) {
	for _, part := range parts {
		at := a.At(part.at.X, part.at.Y)
		over := scene.SpotAt(at.X, a.At(0, high).Y-1.2*p.Letter, draw.Middle)
		under := scene.SpotAt(at.X, a.At(0, low).Y+1.2*p.Letter, draw.Middle)
		spots := []scene.Spot{over, under}
		if part.at.Y < (high+low)/2 {
			spots = []scene.Spot{under, over}
		}
		n := p.Say(scene.RankPart, part.name, draw.Ink, draw.Paper, spots...)
		n.Lead, n.Tied = &at, true
	}
}

func namesTop(c core.Canoe) []called {
	h, d := c.Hull, c.Design
	rib := c.Frame.Ribs[len(c.Frame.Ribs)/3]
	last := c.Frame.Thwarts[len(c.Frame.Thwarts)-1]
	at := func(x, y float64) geom.Vec2 { return geom.Vec2{X: x, Y: y} }
	x := func(share float64) float64 { return share * h.GunwaleX }
	out := []called{
		{"inwale", at(x(-0.55), h.HalfBeam(x(0.55))+d.InwaleThickness/2)},
		{"outwale", at(x(-0.3), h.SkinHalfBreadth(x(0.3))+d.OutwaleThickness/2)},
		{"cap", at(x(-0.4), -(h.HalfBeam(x(0.4))+h.SkinHalfBreadth(x(0.4)))/2)},
		{"rib", at(-rib.FootX, -0.5*h.HalfBeam(rib.X))},
		{"thwart", at(last.X, -0.6*h.HalfBeam(last.X))},
		{"middle thwart", at(0, -0.6*h.HalfBeam(0))},
		{"headboard", at(c.Frame.Headboard.X, 0)},
		{"stem-piece", at((c.Frame.Stem.SolidFrom+h.HeadX)/2, 0)},
		{"sheathing", at(x(0.35), 0.24*h.HalfBeam(x(0.35)))},
	}
	if groups := c.Frame.Lacing.Groups; len(groups) > 2 {
		g := groups[len(groups)/3]
		out = append(out, called{"lacing", at(g.X, h.HalfBeam(g.X)+d.InwaleThickness)})
	}
	for _, g := range c.Frame.Lacing.Groups {
		if g.Pegged {
			out = append(out, called{"peg", at(g.X, h.HalfBeam(math.Abs(g.X))+d.InwaleThickness)})
			break
		}
	}
	return append(out, called{"gunwale's end", at(-h.GunwaleX, 0)})
}

func namesTopOnBed(c core.Canoe) []called {
	h, bed := c.Hull, c.Frame.Bed
	at := func(x, y float64) geom.Vec2 { return geom.Vec2{X: x, Y: y} }
	x := 0.45 * h.GunwaleX
	cross := bed.Crosspieces[min(1, len(bed.Crosspieces)-1)]
	out := []called{
		{"bark", at(-0.2*h.GunwaleX, 0.85*h.FrameHalfBreadth(0))},
		{"building frame", at(x, -h.FrameHalfBreadth(x))},
		{"crosspiece", at(-cross.X, -0.1*cross.Clear)},
		{"where the gunwale will stand", at(-x, h.HalfBeam(x))},
		{"bed", at(0.98*scene.BedShown(c), 0.5*sheetReach(h))},
		{"end of the bark", at(c.Design.HeelX()+0.6*c.Design.HeelLength, 0.7*sheetReach(h))},
	}
	for i, y := range stonesOn(cross.Clear) {
		if i == 0 {
			out = append(out, called{"stone", at(cross.X, y)})
		}
	}
	if n := len(bed.Stakes); n > 0 {
		s := bed.Stakes[n/3]
		out = append(out, called{"stake", at(s.X, -s.Y)})
	}
	for _, g := range c.Bark.Gores {
		if g.State == bark.GoreCut && g.X > 0 {
			out = append(out, called{"gore", at(g.X, (g.FootGirth+g.EndGirth)/2)})
			break
		}
	}
	for _, b := range c.Bark.Beside {
		half := c.Bark.Bed[b.Piece].Width / 2
		out = append(out, called{"side panel", at((b.Aft+b.Bow)/2, -half)})
		break
	}
	for _, j := range c.Bark.Joints {
		foot, _ := flatColumn(h, j.Place)
		out = append(out, called{"sheet joint", at(math.Copysign(foot.X, j.Along), 0)})
		break
	}
	return out
}

func namesSide(c core.Canoe, load *scene.Load) []called {
	h, d := c.Hull, c.Design
	at := func(x, y float64) geom.Vec2 { return geom.Vec2{X: x, Y: y} }
	x := func(share float64) float64 { return share * h.GunwaleX }
	stem := endSide(h, d.StemDepth/2)[endSteps/2]
	out := []called{
		{"cap", at(x(-0.5), h.Sheer(x(0.5))+d.CapThickness/2)},
		{"outwale", at(x(-0.3), h.Sheer(x(0.3))-d.OutwaleDepth/2)},
		{"stem-piece", at(stem.X, stem.Y)},
		{"stem head", at(-h.HeadX, d.EndHeight)},
		{"heel", at(h.HeelX, h.Bottom(h.HeelX))},
		{"headboard", at(-c.Frame.Headboard.X, h.Sheer(c.Frame.Headboard.X)/2)},
		{"bottom", at(x(-0.2), h.Bottom(x(0.2)))},
		{"gunwale's end", at(h.GunwaleX, h.Sheer(h.GunwaleX))},
	}
	if groups := c.Frame.Lacing.Groups; len(groups) > 2 {
		g := groups[len(groups)/3]
		out = append(out, called{"lacing", at(g.X, h.Sheer(g.X)-d.OutwaleDepth/2)})
	}
	for _, g := range c.Bark.Gores {
		if g.State == bark.GoreCut && g.X > 0 {
			section := h.Column(h.ColumnAtEdge(g.X)).Section
			out = append(out, called{"gore, sewn", at(g.X, section.At((g.FootGirth+g.EndGirth)/2).Y)})
			break
		}
	}
	for _, b := range c.Bark.Beside {
		q := b.Path[len(b.Path)/2]
		out = append(out, called{"seam of a side panel", at(q.X, q.Z)})
		break
	}
	for _, j := range c.Bark.Joints {
		points := h.Column(j.Place).Points(1)
		q := points[0].Lerp(points[1], 0.4)
		out = append(out, called{"joint of two sheets", at(math.Copysign(q.X, j.Along), q.Z)})
		break
	}
	if load != nil {
		out = append(out, called{"water line, loaded", at(-0.1*d.Length, load.Height-0.1*d.Length*load.Slope)})
	}
	return out
}

func namesSideOnBed(c core.Canoe) []called {
	h, d, bed := c.Hull, c.Design, c.Frame.Bed
	at := func(x, y float64) geom.Vec2 { return geom.Vec2{X: x, Y: y} }
	out := []called{
		{"gunwale", at(-0.3*h.GunwaleX, h.Sheer(0.3*h.GunwaleX)-d.InwaleDepth/2)},
		{"bark, turned up", at(0.5*h.GunwaleX, (barkOnBed(h, min(0.5*h.GunwaleX, h.HeelX))+h.Sheer(0.5*h.GunwaleX))/2)},
		{"building frame", at(-0.2*h.FrameEnd(), barkOnBed(h, 0.2*h.FrameEnd())+0.02)},
		{"bed", at(0.2*h.GunwaleX, bedTop(c, 0.2*h.GunwaleX)-0.01)},
		{"end, to be cut", at(h.End.At(0.5).X, h.End.At(0.5).Y)},
	}
	if n := len(bed.Posts); n > 1 {
		post := bed.Posts[1]
		out = append(out, called{"post", at(post.X, h.Sheer(post.X)-d.InwaleDepth-post.Length/2)})
	}
	if n := len(bed.Stakes); n > 0 {
		s := bed.Stakes[n/3]
		out = append(out, called{"stake", at(-s.X, h.Sheer(s.X)+0.05)})
	}
	if x := (h.HeelX + max(h.HeelX, h.GunwaleX)) / 2; barkOnBed(h, h.HeelX) > bedTop(c, h.HeelX) {
		out = append(out, called{"block", at(-x, (barkOnBed(h, x)+bedTop(c, x))/2)})
	}
	for _, x := range bed.Crosspieces[1:] {
		if stonesOn(x.Clear) != nil {
			out = append(out, called{"stone", at(-x.X, barkOnBed(h, min(x.X, h.HeelX))+0.13)})
			break
		}
	}
	return out
}
