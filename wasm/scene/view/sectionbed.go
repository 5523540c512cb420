package view

import (
	"math"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/draw"
	"barkwright/core/frame"
	"barkwright/core/geom"
	"barkwright/core/units"
	"barkwright/wasm/scene"
)

// bedSections cut the bed across at posts: ground, bark turned up between frame
// and stakes, and the post that holds the gunwales at their height.
func (p *pen) bedSections(c core.Canoe, l layout) {
	var posts []int
	for i, post := range c.Frame.Bed.Posts {
		if post.X < c.Hull.FrameEnd() {
			posts = append(posts, i)
		}
	}
	for i, name := range posts {
		if answer.PostPart(name) == p.View.Touched {
			posts[0], posts[i] = posts[i], posts[0]
		}
	}
	cuts := make([]cut, len(posts))
	for i, post := range posts {
		cuts[i] = bedCut(c, c.Frame.Bed.Posts[post].X)
	}
	n := p.sectionsThatFit(l, cuts)
	for i, a := range p.cutPlate(l.sections, cuts[:n]) {
		p.bedCutDrawn(c, posts[i], cuts[i], a)
		p.sectionScale(cuts[i], a)
	}
}

// bedCut is the bark as it stands on the bed: flat under the frame, turned up at its
// edge and leaning out to the gunwale. The builder's hands decide how it bows between
// the two. Here it is an easy curve.
func bedCut(c core.Canoe, x float64) cut {
	h := c.Hull
	bed, half := barkOnBed(h, x), h.FrameHalfBreadth(x)
	top := geom.Vec2{X: h.SkinHalfBreadth(x), Y: h.Sheer(x)}
	up := top.Sub(geom.Vec2{X: half, Y: bed})
	side := geom.Conic{A: geom.Vec2{X: half, Y: bed}, C: geom.Vec2{X: half + 0.6*up.X, Y: bed + 0.25*up.Y}, B: top, W: 1}
	points := []geom.Vec2{{X: 0, Y: bed}}
	for i := range bendSteps + 1 {
		points = append(points, side.At(float64(i)/bendSteps))
	}
	return cut{bark: points, top: top, over: stakeOver + 0.01, beside: 0.05, lines: 2.7}
}

func (p *pen) bedCutDrawn(c core.Canoe, index int, k cut, a scene.Plate) {
	h, d := c.Hull, c.Design
	post := c.Frame.Bed.Posts[index]
	bed := barkOnBed(h, post.X)
	half := h.FrameHalfBreadth(post.X)
	wide := k.top.X + 2*d.OutwaleThickness
	ground := a.Place(scene.Rect(0, wide, min(0, bed)-scene.GroundDepth/2, bed))
	p.Fill(draw.Ground, ground)
	p.Surface(answer.BedPart, ground)
	if p.Seen(ground) {
		p.Hatch(draw.Faint, 6, scene.HairWidth, -math.Pi/4, ground)
	}
	p.Line(draw.Frame, 1.4, ground[3], ground[2])
	p.stakesCut(c, post.X, k, a, half, bed)
	bark := a.Place(scene.Mirrored(k.bark))
	p.Line(draw.Ink, 2.2, bark...)
	p.Part(answer.BarkPart, false, bark)
	batten := p.frameCut(c, a, half, bed+d.BarkThickness)
	stand := half * 0.55
	top := frame.UnderInwale(h, post.X)
	thick, deep := frame.InwaleAt(h, h.RunTo(post.X))
	for _, y := range [2]float64{stand, -stand} {
		points := a.Place(scene.Rect(y, 0.02, top-post.Length, top))
		p.Area(draw.Ground, draw.Frame, scene.StrongWidth, points)
		p.Part(answer.PostPart(index), true, points)
	}
	inner := h.HalfBeam(post.X)
	y := top + deep/2
	p.Area(draw.Cedar, draw.Ink, scene.TimberWidth, a.Place(scene.Rect(0, inner, y-deep/3, y+deep/3)))
	for _, side := range [2]float64{1, -1} {
		inwale := a.Place(scene.Rect(side*(inner+thick/2), thick/2, top, top+deep))
		p.Area(draw.Cedar, draw.Ink, scene.StrongWidth, inwale)
		p.Part(answer.InwalePart, true, inwale)
	}
	p.bedCutLabels(c, post, a, top, bed+d.BarkThickness+batten)
}

// frameCut is a crosspiece between its battens, cut through, with its stones.
func (p *pen) frameCut(c core.Canoe, a scene.Plate, half, low float64) (batten float64) {
	for _, x := range c.Frame.Bed.Crosspieces {
		batten = max(batten, (x.OutToOut-x.Clear)/2)
	}
	for _, side := range [2]float64{1, -1} {
		cut := a.Place(scene.Rect(side*(half-batten/2), batten/2, low, low+batten))
		p.Area(draw.Cedar, draw.Frame, scene.TimberWidth, cut)
		p.Part(answer.FramePart, true, cut)
	}
	across := a.Place(scene.Rect(0, half-batten, low+batten/3, low+batten))
	p.Area(draw.Cedar, draw.Frame, scene.TimberWidth, across)
	p.Part(answer.FramePart, true, across)
	rest := stone(a, 0, (low+batten)+0.068)
	p.Area(draw.Ground, draw.Frame, scene.FineWidth, rest)
	return batten
}

// stakeOver is how far the stakes are drawn over the bark, metres.
const stakeOver = 0.06

// stakesCut are the stakes outside the bark, leaning with it: those that stand nearest to the cut.
func (p *pen) stakesCut(c core.Canoe, x float64, k cut, a scene.Plate, half, bed float64) {
	nearest := 0
	for i, s := range c.Frame.Bed.Stakes {
		if math.Abs(s.X-x) < math.Abs(c.Frame.Bed.Stakes[nearest].X-x) {
			nearest = i
		}
	}
	const thick, off = 0.025, 0.025 // m
	top := geom.Vec2{X: k.top.X + 0.012, Y: k.top.Y + stakeOver}
	foot := half + off
	for _, q := range k.bark {
		if q.Y > bed+0.01 {
			foot = max(foot, top.X+(q.X+0.008-top.X)*(top.Y-bed)/(top.Y-q.Y))
		}
	}
	for _, side := range [2]float64{1, -1} {
		stake := a.Place([]geom.Vec2{
			{X: side * foot, Y: bed}, {X: side * (foot + thick), Y: bed},
			{X: side * (top.X + thick), Y: top.Y}, {X: side * top.X, Y: top.Y},
		})
		p.Area(draw.Ground, draw.Frame, scene.TimberWidth, stake)
		p.Part(answer.StakePart(nearest), true, stake)
	}
}

func (p *pen) bedCutLabels(c core.Canoe, post frame.Post, a scene.Plate, top, low float64) {
	foot := a.At(0, 0)
	base := a.At(0, min(0, barkOnBed(c.Hull, post.X))-scene.GroundDepth/2).Y
	text := "post " + units.SmallLength.Format(post.Length, p.View.System)
	room := (1.1*c.Hull.FrameHalfBreadth(post.X) - 0.04) * a.Scale
	under := scene.SpotAt(foot.X, base+0.9*p.Letter, draw.Middle)
	if draw.Lettered(text, p.Letter, false) < room {
		p.Say(scene.RankPart, text, draw.Ink, draw.Paper, scene.SpotAt(foot.X, a.At(0, top-0.25*(top-low)).Y, draw.Middle))
		text = "at the " + post.Under
	} else {
		text = post.Under + ", " + text
	}
	name := p.Say(scene.RankTitle, text, draw.Ink, draw.Paper, under)
	name.Text.Bold = true
}
