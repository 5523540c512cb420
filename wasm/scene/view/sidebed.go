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

// sideOnBed draws the bed from the side: the crowned ground with its blocks, the
// bark on it, the building frame on the bark, and the posts that hold the
// gunwales at their sheer. What is not built yet is dashed.
func (p *pen) sideOnBed(c core.Canoe, l layout) {
	h, d, a := c.Hull, c.Design, l.side
	p.groundSide(c, a)
	p.barkSide(c, a)
	p.stakesSide(c, a)
	p.frameSide(c, a)
	p.posts(c, l)
	top := scene.Curve(h.Sheer, h.GunwaleX)
	under := scene.Curve(func(x float64) float64 { return frame.UnderInwale(h, x) }, h.GunwaleX)
	p.timber(answer.InwalePart, p.Thin(a, d.InwaleDepth, scene.StrongWidth),
		a.Place(scene.Between(scene.Mirrored(top), scene.Mirrored(under))))
	p.ghostSide(a)
	p.sideTitle(c, l)
	p.lengthOverall(c, l)
	p.stemHeight(c, a)
}

// groundSide is the bed, hatched as ground is in a cut, and the heels' blocks.
func (p *pen) groundSide(c core.Canoe, a scene.Plate) {
	half := min(c.Design.BedLength/2, scene.BedShown(c))
	top := scene.Mirrored(scene.Curve(func(x float64) float64 { return bedTop(c, x) }, half))
	low := bedTop(c, c.Design.BedLength/2) - scene.GroundDepth
	ground := a.Place(append(top, geom.Vec2{X: half, Y: low}, geom.Vec2{X: -half, Y: low}))
	p.Fill(draw.Ground, ground)
	p.Surface(answer.BedPart, ground)
	if p.Seen(ground) {
		p.Hatch(draw.Faint, 6, scene.HairWidth, -math.Pi/4, ground)
	}
	p.Line(draw.Frame, 1.4, a.Place(top)...)
	p.blocks(c, a)
}

// blocks lift the bark's ends off the bed, from the heels out under the last posts.
func (p *pen) blocks(c core.Canoe, a scene.Plate) {
	h := c.Hull
	if barkOnBed(h, h.HeelX)-bedTop(c, h.HeelX) <= 0 {
		return
	}
	const steps, past = 5, 0.05 // m inboard of the heel and outboard of the post
	from, to := h.HeelX-past, max(h.HeelX, h.GunwaleX)+past
	var upper, lower []geom.Vec2
	for i := range steps + 1 {
		x := from + (to-from)*float64(i)/steps
		upper = append(upper, geom.Vec2{X: x, Y: barkOnBed(h, x)})
		lower = append(lower, geom.Vec2{X: x, Y: bedTop(c, x)})
	}
	for _, points := range mates(a, scene.Between(upper, lower), false) {
		p.Area(draw.Cedar, draw.Frame, scene.TimberWidth, points)
		p.Part(answer.BlockPart, true, points)
	}
}

// barkSide is the bark turned up on the bed, its bottom lying on the bed as far as
// the heels; what is still to be cut and drawn in is dashed.
func (p *pen) barkSide(c core.Canoe, a scene.Plate) {
	h := c.Hull
	lying := scene.Curve(func(x float64) float64 { return barkOnBed(h, x) }, h.HeelX)
	outline := a.Place(scene.Between(scene.Mirrored(append(lying, endSide(h, 0)...)), scene.Mirrored(edgeSide(h, 0))))
	p.Fill(draw.Bark, outline)
	p.Surface(answer.BarkPart, outline)
	p.Dashed(draw.Faint, scene.TimberWidth, scene.ShortDash, append(outline, outline[0])...)
	p.Line(draw.Ink, p.Outline(a), a.Place(scene.Mirrored(lying))...)
}

// frameSide is the building frame on the bark.
func (p *pen) frameSide(c core.Canoe, a scene.Plate) {
	h, d := c.Hull, c.Design
	end := h.FrameEnd()
	batten := 0.0
	for _, x := range c.Frame.Bed.Crosspieces {
		batten = max(batten, (x.OutToOut-x.Clear)/2)
	}
	low := func(x float64) float64 { return barkOnBed(h, min(x, h.HeelX)) + d.BarkThickness }
	lower := scene.Mirrored(scene.Curve(low, end))
	upper := scene.Mirrored(scene.Curve(func(x float64) float64 { return low(x) + batten }, end))
	strip := a.Place(scene.Between(upper, lower))
	p.Area(draw.Cedar, draw.Frame, p.Thin(a, batten, scene.TimberWidth), strip)
	p.Part(answer.FramePart, true, strip)
	for i, x := range c.Frame.Bed.Crosspieces {
		z := low(x.X) + batten
		for k, points := range mates(a, scene.Rect(x.X, batten/2, z, z+batten), x.X == 0) {
			p.Area(draw.Cedar, draw.Frame, scene.TimberWidth, points)
			p.Part(answer.CrosspiecePart(i), true, points)
			if stonesOn(x.Clear) == nil {
				continue
			}
			at := stone(a, 0, 0)
			rest := a.At(x.X*(1-2*float64(k)), z+batten+0.06)
			for j := range at {
				at[j].X += rest.X - a.Origin.X
				at[j].Y += rest.Y - a.Origin.Y
			}
			p.Area(draw.Ground, draw.Frame, scene.FineWidth, at)
		}
	}
}

// stakesSide stand past the sheer, to be tied across in pairs.
func (p *pen) stakesSide(c core.Canoe, a scene.Plate) {
	const above = 0.1 // m over the inwale, as far as drawn; cut to suit on the bed
	h := c.Hull
	for i, s := range c.Frame.Bed.Stakes {
		if s.X > scene.BedShown(c) {
			continue
		}
		foot, top := bedTop(c, s.X), min(h.TopEdge(s.X)+above, c.Design.EndHeight)
		for _, points := range mates(a, scene.Rect(s.X, 0.011, foot, top), false) {
			p.Area(draw.Ground, draw.Frame, scene.HairWidth, points)
			p.Part(answer.StakePart(i), true, points)
		}
	}
}

// posts stand on the bark under the inwale, each with its length.
func (p *pen) posts(c core.Canoe, l layout) {
	h, a := c.Hull, l.side
	const half = 0.02 // m: a post about 1 1/2 in through
	for i, post := range c.Frame.Bed.Posts {
		// Past the heel the bed lies under the rising end of the bark. The post still stands on
		// the bed.
		foot := frame.UnderInwale(h, post.X) - post.Length
		for k, points := range mates(a, scene.Rect(post.X, half, foot, foot+post.Length), i == 0) {
			p.Area(draw.Frame, draw.Frame, scene.FineWidth, points)
			p.Part(answer.PostPart(i), true, points)
			if k == 1 || p.View.Layer != scene.Measures {
				continue
			}
			rank := scene.RankHeight
			text := units.SmallLength.Format(post.Length, p.View.System)
			if i == 0 {
				text, rank = "post "+text, scene.RankMain
			}
			p.heightText(a, post.X, h.Sheer(post.X), text, rank).Key = "post under the " + post.Under + " " +
				units.SmallLength.Format(post.Length, p.View.System)
		}
	}
}
