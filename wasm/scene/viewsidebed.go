package scene

import (
	"math"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/geom"
	"barkwright/core/units"
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
	top := curve(h.Sheer, h.GunwaleX)
	under := curve(func(x float64) float64 { return h.Sheer(x) - d.InwaleDepth }, h.GunwaleX)
	p.area(Cedar, Ink, p.thin(a, d.InwaleDepth, 1.3), a.place(between(mirrored(top), mirrored(under))))
	p.ghostSide(a)
	p.sideTitle(c, l)
	p.lengthOverall(c, l)
	p.stemHeight(c, a)
}

// groundSide is the bed, hatched as ground is in a cut, and the heels' blocks.
func (p *pen) groundSide(c core.Canoe, a plate) {
	half := min(c.Design.BedLength/2, bedShown(c))
	top := mirrored(curve(func(x float64) float64 { return bedTop(c, x) }, half))
	low := bedTop(c, c.Design.BedLength/2) - groundDepth
	ground := a.place(append(top, geom.Vec2{X: half, Y: low}, geom.Vec2{X: -half, Y: low}))
	p.fill(Ground, ground)
	if p.seen(ground) {
		p.list.Add(Hatch{Role: Faint, Points: ground, Spacing: 6 * p.weight, Width: hairWidth * p.weight, Angle: -math.Pi / 4})
	}
	p.line(Frame, 1.4, a.place(top)...)
	p.blocks(c, a)
}

// blocks lift the bark's ends off the bed, from the heels out under the last posts.
func (p *pen) blocks(c core.Canoe, a plate) {
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
	for _, points := range mates(a, between(upper, lower), false) {
		p.area(Cedar, Frame, timberWidth, points)
	}
}

// barkSide is the bark turned up on the bed, its bottom lying on the bed as far as
// the heels; what is still to be cut and drawn in is dashed.
func (p *pen) barkSide(c core.Canoe, a plate) {
	h := c.Hull
	lying := curve(func(x float64) float64 { return barkOnBed(h, x) }, h.HeelX)
	outline := a.place(between(mirrored(append(lying, endSide(h, 0)...)), mirrored(edgeSide(h, 0))))
	p.fill(Bark, outline)
	p.dashed(Faint, timberWidth, shortDash, append(outline, outline[0])...)
	p.line(Ink, p.outline(a), a.place(mirrored(lying))...)
}

// frameSide is the building frame on the bark.
func (p *pen) frameSide(c core.Canoe, a plate) {
	h, d := c.Hull, c.Design
	end := h.FrameEnd()
	batten := 0.0
	for _, x := range c.Frame.Bed.Crosspieces {
		batten = max(batten, (x.OutToOut-x.Clear)/2)
	}
	low := func(x float64) float64 { return barkOnBed(h, min(x, h.HeelX)) + d.BarkThickness }
	lower := mirrored(curve(low, end))
	upper := mirrored(curve(func(x float64) float64 { return low(x) + batten }, end))
	p.area(Cedar, Frame, p.thin(a, batten, timberWidth), a.place(between(upper, lower)))
	for i, x := range c.Frame.Bed.Crosspieces {
		z := low(x.X) + batten
		for k, points := range mates(a, rect(x.X, batten/2, z, z+batten), x.X == 0) {
			p.area(Cedar, Frame, timberWidth, points)
			p.part(answer.CrosspiecePart(i), true, points)
			if stonesOn(x.Clear) == nil {
				continue
			}
			at := stone(a, 0, 0)
			rest := a.at(x.X*(1-2*float64(k)), z+batten+0.06)
			for j := range at {
				at[j].X += rest.X - a.Origin.X
				at[j].Y += rest.Y - a.Origin.Y
			}
			p.area(Ground, Frame, fineWidth, at)
		}
	}
}

// stakesSide stand past the sheer, to be tied across in pairs.
func (p *pen) stakesSide(c core.Canoe, a plate) {
	const above = 0.1 // m over the inwale, as far as drawn; cut to suit on the bed
	h := c.Hull
	for i, s := range c.Frame.Bed.Stakes {
		if s.X > bedShown(c) {
			continue
		}
		foot, top := bedTop(c, s.X), min(h.TopEdge(s.X)+above, c.Design.EndHeight)
		for _, points := range mates(a, rect(s.X, 0.011, foot, top), false) {
			p.area(Ground, Frame, hairWidth, points)
			p.part(answer.StakePart(i), true, points)
		}
	}
}

// posts stand on the bark under the inwale, each with its length.
func (p *pen) posts(c core.Canoe, l layout) {
	h, d, a := c.Hull, c.Design, l.side
	const half = 0.02 // m: a post about 1 1/2 in through
	for i, post := range c.Frame.Bed.Posts {
		// Past the heel the bed lies under the bark's rising end, and the post
		// stands on it all the same.
		foot := h.Sheer(post.X) - d.InwaleDepth - post.Length
		for k, points := range mates(a, rect(post.X, half, foot, foot+post.Length), i == 0) {
			p.area(Frame, Frame, fineWidth, points)
			p.part(answer.PostPart(i), true, points)
			x, rank := post.X, rankHeight
			if k == 1 {
				x, rank = -x, rankPart
			}
			text := units.SmallLength.Format(post.Length, p.view.System)
			if i == 0 {
				text, rank = "post "+text, rankMain
			}
			p.heightText(a, x, h.Sheer(post.X), text, rank)
		}
	}
}
