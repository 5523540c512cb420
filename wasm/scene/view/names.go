package view

import (
	"math"

	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/draw"
	"barkwright/core/frame"
	"barkwright/core/geom"
	"barkwright/wasm/scene"
)

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
		p.Call(l.top, parts, reach, -reach)
	}
	if l.hasSide {
		parts := namesSide(c, p.View.Load)
		if bed {
			parts = namesSideOnBed(c)
		}
		p.Call(l.side, parts, c.Hull.Sheer(0), reachOf(c, p.View.State).low)
	}
}

// lineKinds says what the kinds of lines stand for.
func (p *pen) lineKinds(bed bool) {
	joint := scene.LineKind{Name: "joint of sheets", Role: draw.Seam, Width: scene.StrongWidth}
	if bed {
		joint.Dash = scene.SheetDash
	}
	kinds := []scene.LineKind{
		{Name: "edge of the bark", Role: draw.Ink, Width: scene.OutlineWidth},
		{Name: "seam", Role: draw.Seam, Width: scene.TimberWidth, Dash: scene.ShortDash},
		joint,
		{Name: "centre line", Role: draw.Faint, Width: scene.HairWidth, Dash: scene.CentreDash},
	}
	if bed {
		kinds = append(kinds,
			scene.LineKind{Name: "not built yet", Role: draw.Faint, Width: scene.TimberWidth, Dash: scene.ShortDash})
	}
	p.LineKinds(kinds...)
}

func namesTop(c core.Canoe) []scene.Called {
	h, d := c.Hull, c.Design
	rib := c.Frame.Ribs[len(c.Frame.Ribs)/3]
	last := c.Frame.Thwarts[len(c.Frame.Thwarts)-1]
	at := func(x, y float64) geom.Vec2 { return geom.Vec2{X: x, Y: y} }
	x := func(share float64) float64 { return share * h.GunwaleX }
	out := []scene.Called{
		{Name: "inwale", At: at(x(-0.55), h.HalfBeam(x(0.55))+d.InwaleThickness/2)},
		{Name: "outwale", At: at(x(-0.3), h.SkinHalfBreadth(x(0.3))+d.OutwaleThickness/2)},
		{Name: "cap", At: at(x(-0.4), -(h.HalfBeam(x(0.4))+h.SkinHalfBreadth(x(0.4)))/2)},
		{Name: "rib", At: at(-rib.FootX, -0.5*h.HalfBeam(rib.X))},
		{Name: "thwart", At: at(last.X, -0.6*h.HalfBeam(last.X))},
		{Name: "middle thwart", At: at(0, -0.6*h.HalfBeam(0))},
		{Name: "headboard", At: at(c.Frame.Headboard.X, 0)},
		{Name: "stem-piece", At: at((c.Frame.Stem.SolidFrom+h.HeadX)/2, 0)},
		{Name: "sheathing", At: at(x(0.35), 0.24*h.HalfBeam(x(0.35)))},
	}
	if groups := c.Frame.Lacing.Groups; len(groups) > 2 {
		g := groups[len(groups)/3]
		out = append(out, scene.Called{Name: "lacing", At: at(g.X, h.HalfBeam(g.X)+d.InwaleThickness)})
	}
	for _, g := range c.Frame.Lacing.Groups {
		if g.Pegged {
			out = append(out, scene.Called{Name: "peg", At: at(g.X, h.HalfBeam(math.Abs(g.X))+d.InwaleThickness)})
			break
		}
	}
	return append(out, scene.Called{Name: "gunwale's end", At: at(-h.GunwaleX, 0)})
}

func namesTopOnBed(c core.Canoe) []scene.Called {
	h, bed := c.Hull, c.Frame.Bed
	at := func(x, y float64) geom.Vec2 { return geom.Vec2{X: x, Y: y} }
	x := 0.45 * h.GunwaleX
	cross := bed.Crosspieces[min(1, len(bed.Crosspieces)-1)]
	out := []scene.Called{
		{Name: "bark", At: at(-0.2*h.GunwaleX, 0.85*h.FrameHalfBreadth(0))},
		{Name: "building frame", At: at(x, -h.FrameHalfBreadth(x))},
		{Name: "crosspiece", At: at(-cross.X, -0.1*cross.Clear)},
		{Name: "where the gunwale will stand", At: at(-x, h.HalfBeam(x))},
		{Name: "bed", At: at(0.98*scene.BedShown(c), 0.5*sheetReach(h))},
		{Name: "end of the bark", At: at(c.Design.HeelX()+0.6*c.Design.HeelLength, 0.7*sheetReach(h))},
	}
	for i, y := range stonesOn(cross.Clear) {
		if i == 0 {
			out = append(out, scene.Called{Name: "stone", At: at(cross.X, y)})
		}
	}
	if n := len(bed.Stakes); n > 0 {
		s := bed.Stakes[n/3]
		out = append(out, scene.Called{Name: "stake", At: at(s.X, -s.Y)})
	}
	for _, g := range c.Bark.Gores {
		if g.State == bark.GoreCut && g.X > 0 {
			out = append(out, scene.Called{Name: "gore", At: at(g.X, (g.FootGirth+g.EndGirth)/2)})
			break
		}
	}
	for _, b := range c.Bark.Beside {
		half := c.Bark.Bed[b.Piece].Width / 2
		out = append(out, scene.Called{Name: "side panel", At: at((b.Aft+b.Bow)/2, -half)})
		break
	}
	for _, j := range c.Bark.Joints {
		foot, _ := flatColumn(h, j.Place)
		out = append(out, scene.Called{Name: "sheet joint", At: at(math.Copysign(foot.X, j.Along), 0)})
		break
	}
	return out
}

func namesSide(c core.Canoe, load *scene.Load) []scene.Called {
	h, d := c.Hull, c.Design
	at := func(x, y float64) geom.Vec2 { return geom.Vec2{X: x, Y: y} }
	x := func(share float64) float64 { return share * h.GunwaleX }
	stem := endSide(h, d.StemDepth/2)[endSteps/2]
	out := []scene.Called{
		{Name: "cap", At: at(x(-0.5), h.Sheer(x(0.5))+d.CapThickness/2)},
		{Name: "outwale", At: at(x(-0.3), h.Sheer(x(0.3))-d.OutwaleDepth/2)},
		{Name: "stem-piece", At: at(stem.X, stem.Y)},
		{Name: "stem head", At: at(-h.HeadX, d.EndHeight)},
		{Name: "heel", At: at(h.HeelX, h.Bottom(h.HeelX))},
		{Name: "headboard", At: at(-c.Frame.Headboard.X, h.Sheer(c.Frame.Headboard.X)/2)},
		{Name: "bottom", At: at(x(-0.2), h.Bottom(x(0.2)))},
		{Name: "gunwale's end", At: at(h.GunwaleX, h.Sheer(h.GunwaleX))},
	}
	if groups := c.Frame.Lacing.Groups; len(groups) > 2 {
		g := groups[len(groups)/3]
		out = append(out, scene.Called{Name: "lacing", At: at(g.X, h.Sheer(g.X)-d.OutwaleDepth/2)})
	}
	for _, g := range c.Bark.Gores {
		if g.State == bark.GoreCut && g.X > 0 {
			section := h.Column(h.ColumnAtEdge(g.X)).Section
			out = append(out, scene.Called{Name: "gore, sewn", At: at(g.X, section.At((g.FootGirth+g.EndGirth)/2).Y)})
			break
		}
	}
	for _, b := range c.Bark.Beside {
		q := b.Path[len(b.Path)/2]
		out = append(out, scene.Called{Name: "seam of a side panel", At: at(q.X, q.Z)})
		break
	}
	for _, j := range c.Bark.Joints {
		points := h.Column(j.Place).Points(1)
		q := points[0].Lerp(points[1], 0.4)
		out = append(out, scene.Called{Name: "joint of two sheets", At: at(math.Copysign(q.X, j.Along), q.Z)})
		break
	}
	if load != nil {
		along := -0.1 * d.Length
		out = append(out, scene.Called{Name: "water line, loaded", At: at(along, load.Height+along*load.Slope)})
	}
	return out
}

func namesSideOnBed(c core.Canoe) []scene.Called {
	h, d, bed := c.Hull, c.Design, c.Frame.Bed
	at := func(x, y float64) geom.Vec2 { return geom.Vec2{X: x, Y: y} }
	half := 0.5 * h.GunwaleX
	out := []scene.Called{
		{Name: "gunwale", At: at(-0.3*h.GunwaleX, h.Sheer(0.3*h.GunwaleX)-d.InwaleDepth/2)},
		{Name: "bark, turned up", At: at(half, (barkOnBed(h, min(half, h.HeelX))+h.Sheer(half))/2)},
		{Name: "building frame", At: at(-0.2*h.FrameEnd(), barkOnBed(h, 0.2*h.FrameEnd())+0.02)},
		{Name: "bed", At: at(0.2*h.GunwaleX, bedTop(c, 0.2*h.GunwaleX)-0.01)},
		{Name: "end, to be cut", At: at(h.End.At(0.5).X, h.End.At(0.5).Y)},
	}
	if n := len(bed.Posts); n > 1 {
		post := bed.Posts[1]
		out = append(out, scene.Called{Name: "post", At: at(post.X, frame.UnderInwale(h, post.X)-post.Length/2)})
	}
	if n := len(bed.Stakes); n > 0 {
		s := bed.Stakes[n/3]
		out = append(out, scene.Called{Name: "stake", At: at(-s.X, h.Sheer(s.X)+0.05)})
	}
	if x := (h.HeelX + max(h.HeelX, h.GunwaleX)) / 2; barkOnBed(h, h.HeelX) > bedTop(c, h.HeelX) {
		out = append(out, scene.Called{Name: "block", At: at(-x, (barkOnBed(h, x)+bedTop(c, x))/2)})
	}
	for _, x := range bed.Crosspieces[1:] {
		if stonesOn(x.Clear) != nil {
			out = append(out, scene.Called{Name: "stone", At: at(-x.X, barkOnBed(h, min(x.X, h.HeelX))+0.13)})
			break
		}
	}
	return out
}
