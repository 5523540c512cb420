package view

import (
	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/draw"
	"barkwright/core/frame"
	"barkwright/core/geom"
	"barkwright/core/units"
	"barkwright/wasm/scene"
)

// inboardShown is how far inboard of the end's own pieces it is drawn, m.
const inboardShown = 4 * units.Inch

// endDetail draws the bow end from its side, the starboard bark taken off: the stem-piece with its
// laminations, the headboard that stands on its heel, the bark's edge with its stitches and the
// lashings of the rails.
func (p *pen) endDetail(c core.Canoe, room draw.Box) {
	h, d, f := c.Hull, c.Design, c.Frame
	k, b, stem := f.Closing, f.Headboard, f.Stem
	end := d.Length / 2
	from := min(b.Stands.X, b.Top.X, stem.SolidFrom, k.Lashings[len(k.Lashings)-1].X) - inboardShown
	a := p.detailPlate(room, geom.Vec2{X: from, Y: h.Bottom(from) - k.Leave},
		geom.Vec2{X: end + k.Leave, Y: d.EndHeight + d.CapThickness}, 10, 2.2)
	past := func(line []geom.Vec2) []geom.Vec2 {
		var out []geom.Vec2
		for i, q := range line {
			if i > 0 && line[i-1].X < from && q.X > from {
				out = append(out, line[i-1].Lerp(q, (from-line[i-1].X)/(q.X-line[i-1].X)))
			}
			if q.X >= from {
				out = append(out, q)
			}
		}
		return out
	}
	keel, edge := past(keelSide(h)), past(edgeSide(h, 0))
	skin := a.Place(scene.Between(edge, keel))
	p.Fill(draw.Bark, skin)
	p.Surface(answer.BarkPart, skin)
	p.Dashed(draw.Seam, scene.FineWidth, scene.ShortDash, a.Place(geom.Offset(k.Trim.Points, -k.Leave))...)
	p.stemAlone(c, a)
	p.boardAlone(c, a)
	p.timber(answer.OutwalePart, scene.TimberWidth, a.Place(scene.Between(edge, past(edgeSide(h, -d.OutwaleDepth)))))
	p.timber(answer.CapPart, scene.TimberWidth, a.Place(scene.Between(edge, past(edgeSide(h, d.CapThickness)))))
	p.Line(draw.Ink, p.Outline(a), a.Place(keel)...)
	p.edgeStitches(c, a)
	for _, l := range k.Lashings {
		y := h.TopEdge(l.X)
		p.Line(draw.Root, 3, a.At(l.X, y+d.CapThickness), a.At(l.X, y-d.OutwaleDepth))
	}
	p.detailTitle(room, "The end, its near side taken off")
	length := func(v float64) string { return units.Length.Format(v, p.View.System) }
	thick := func(v float64) string { return units.Thickness.Format(v, p.View.System) }
	small := func(v float64) string { return units.SmallLength.Format(v, p.View.System) }
	count := func(n int) string { return units.Count.Format(float64(n), p.View.System) }
	laminated := stem.Profile.At(stem.Solid + 0.6*(stem.Curve-stem.Solid))
	middle := b.Stands.Lerp(b.Top, 0.55)
	hole, _ := k.HoleAt(k.Stitches() / 2)
	lash := k.Lashings[len(k.Lashings)-1]
	all := []callout{
		{"gunwale's end", "gunwale's end", geom.Vec2{X: h.GunwaleX, Y: h.TopEdge(h.GunwaleX)}, true},
		{"lashing of the outwales", "outwales lashed here and twice farther out", geom.Vec2{X: lash.X, Y: h.TopEdge(lash.X)}, true},
		{"headboard", "headboard, " + length(b.Height) + " high", middle, true},
		{"headboard's foot", "stands on the stem-piece", b.Stands, true},
		{"end of the laminations", "solid to here, " + small(stem.Solid), stem.Profile.At(stem.Solid), true},
		{"stem head", "stem head, " + length(d.EndHeight) + " over the bottom", geom.Vec2{X: h.HeadX, Y: d.EndHeight}, false},
		{"laminations of the stem-piece", count(d.StemLaminations) + " laminations of " + thick(stem.Lamination), laminated, false},
		{"stitches of the end", count(k.Stitches()) + " stitches, " + small(k.Spacing) + " apart", hole, false},
		{"bark left to trim", "bark left until the stem is tried, " + small(k.Leave), k.Trim.At(0.3 * k.Trim.Length()), false},
		{"heel", "heel", geom.Vec2{X: h.HeelX, Y: h.Bottom(h.HeelX)}, false},
	}
	inboard, rail := 0.4*from+0.6*h.GunwaleX, 0.75*from+0.25*h.GunwaleX
	all = append(all,
		callout{"cap", "", geom.Vec2{X: rail, Y: h.TopEdge(rail) + d.CapThickness/2}, true},
		callout{"outwale", "", geom.Vec2{X: inboard, Y: h.TopEdge(inboard) - d.OutwaleDepth/2}, true},
		callout{"bark of the far side", "", geom.Vec2{X: rail, Y: h.Sheer(rail) / 2}, true},
		callout{"bottom", "", geom.Vec2{X: rail, Y: h.Bottom(rail)}, true})
	p.callouts(a, room, all)
	if p.View.Layer == scene.Names {
		p.ScaleBar(draw.Point{X: room.Right - 6*p.Letter, Y: room.Bottom - 1.4*p.Letter}, a.Scale)
		return
	}
	y := min(room.Bottom-1.4*p.Letter, a.At(0, h.Bottom(from)-k.Leave).Y+1.2*p.Letter)
	p.span(a, y, h.HeelX, end, "heel", 0)
	p.ScaleBar(draw.Point{X: room.Right - 6*p.Letter, Y: y}, a.Scale)
}

// stemAlone draws one stem-piece with all its laminations.
func (p *pen) stemAlone(c core.Canoe, a scene.Plate) {
	d, stem := c.Design, c.Frame.Stem
	outer, inner := stemSide(stem, d.BarkThickness, 0), stemSide(stem, d.BarkThickness+d.StemDepth, 0)
	p.timber(answer.StemPart, scene.StrongWidth, a.Place(scene.Between(outer, inner)))
	for i := 1; i < d.StemLaminations; i++ {
		depth := d.BarkThickness + d.StemDepth*float64(i)/float64(d.StemLaminations)
		p.Line(draw.Ink, scene.HairWidth, a.Place(stemSide(stem, depth, stem.Solid))...)
	}
}

// boardAlone draws one headboard by its thickness.
func (p *pen) boardAlone(c core.Canoe, a scene.Plate) {
	line := boardSide(c)
	p.timber(answer.HeadboardPart, scene.StrongWidth,
		a.Place(scene.Between(line, geom.Offset(line, frame.HeadboardThickness))))
}

// edgeStitches draws each stitch of one end from its hole out over the bark's edge.
func (p *pen) edgeStitches(c core.Canoe, a scene.Plate) {
	k := c.Frame.Closing
	for i := range k.Stitches() {
		at, along := k.HoleAt(i)
		edge := at.Sub(along.Left().Scale(k.HoleIn))
		p.Line(draw.Root, scene.StrongWidth, a.At(at.X, at.Y), a.At(edge.X, edge.Y))
		p.Fill(draw.Ink, draw.Polygon(a.At(at.X, at.Y), max(1, 0.0015*a.Scale), 6, 0))
	}
}
