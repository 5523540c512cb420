package view

import (
	"math"

	"barkwright/core"
	"barkwright/core/draw"
	"barkwright/core/frame"
	"barkwright/core/geom"
	"barkwright/core/units"
	"barkwright/wasm/scene"
)

// centreLine runs along the top view.
func (p *pen) centreLine(c core.Canoe, l layout) {
	end := c.Design.Length / 2
	p.Dashed(draw.Faint, scene.HairWidth, scene.CentreDash, l.top.At(-end, 0), l.top.At(end, 0))
}

// topTitle names the top view and which way the boat points, and measures the beam.
func (p *pen) topTitle(c core.Canoe, l layout) {
	a := l.top
	end := c.Design.Length / 2
	if l.titled {
		edge := a.At(-end, 0)
		y := 0.6*p.Letter + 0.5*p.Letter
		title := "Top view, " + p.View.State.String()
		if p.View.State == scene.OnTheBed {
			title += ", the bark flat"
		}
		n := p.Say(scene.RankTitle, title, draw.Ink, draw.Paper,
			scene.SpotAt(max(edge.X, 4), y, draw.Start))
		n.Text.Bold = true
		p.Say(scene.RankTitle, "bow →", draw.Ink, draw.Paper, scene.SpotAt(a.At(end, 0).X, y, draw.End))
	}
	if p.View.State == scene.OnTheBed {
		p.flatAndRaised(c, l)
	}
	if p.View.Layer != scene.Measures {
		return
	}
	if p.View.State == scene.OnTheBed {
		p.beamOnBed(c, a)
		p.frameWidth(c, a)
		p.goreMarks(c, a)
		p.goreSpacing(c, l)
		p.afterHalf(l, c.Hull.FrameEnd(), "half the frame "+units.Length.Format(c.Hull.FrameEnd(), p.View.System))
		return
	}
	p.beam(c, a)
	p.thwartMeasures(c, l)
	p.afterHalf(l, c.Hull.GunwaleX, "half the gunwale, along it "+units.Length.Format(c.Frame.Gunwales.Run, p.View.System))
	p.ribNumbers(c, l)
	p.groupMarks(c, l)
}

// beam letters the beam inside the gunwales amidships. The text stands on the middle
// thwart where that is broad enough, otherwise beside it.
func (p *pen) beam(c core.Canoe, a scene.Plate) {
	half := c.Design.Beam / 2
	low, high := a.At(0, -half), a.At(0, half)
	text := "beam " + units.Length.Format(2*half, p.View.System)
	if frame.ThwartWidth*a.Scale < 1.9*p.Letter {
		beside := a.At(-0.5*c.Frame.Thwarts[1].X, 0.35*half)
		n := p.Say(scene.RankMain, text, draw.Ink, draw.Cedar, scene.Spot{At: beside, Anchor: draw.Middle})
		n.Text.Bold = true
		n.With = p.Arrows(low, high)
		return
	}
	n := p.Say(scene.RankMain, text, draw.Ink, "", scene.Spot{At: a.At(0, 0), Anchor: draw.Middle})
	n.Text.Bold, n.Text.Angle = true, -math.Pi/2
	n.With = p.Arrows(low, high)
}

// flatAndRaised says what the view from above shows and that from the side does not: bark still
// flat, laid to the boat's own length. Laid flat by itself it is longer.
func (p *pen) flatAndRaised(c core.Canoe, l layout) {
	wide, low := l.top.At(0, -l.wide), l.side.At(0, 0)
	if !l.titled && l.hasSide {
		n := p.Say(scene.RankExtra, "bark flat", draw.Ink, draw.Bark,
			scene.SpotAt(l.top.Origin.X-4*p.Letter, wide.Y-0.8*p.Letter, draw.End))
		n.Key = "from above the bark lies flat, from the side its sides are turned up"
		n.Lead = &low
		return
	}
	more := c.Bark.FlatLength - c.Design.Length
	if !l.titled || more < units.Inch/2 || p.View.Layer != scene.Measures {
		return
	}
	text := "drawn to the boat's length; laid flat " + units.Length.Rough(more, p.View.System) + " longer"
	// The bark is narrowest inboard of its ends, and there is the most ground beside it.
	neck := l.top.At(0.72*c.Design.Length/2, l.wide)
	n := p.Say(scene.RankExtra, text, draw.Ink, draw.Ground, scene.SpotAt(neck.X, neck.Y+1.3*p.Letter, draw.Middle),
		scene.SpotAt(neck.X, wide.Y-1.3*p.Letter, draw.Middle),
		scene.SpotAt(2*l.top.Origin.X-neck.X, wide.Y-1.3*p.Letter, draw.Middle))
	n.Lead = &draw.Point{X: neck.X, Y: l.top.At(0, 0).Y}
}

// beamOnBed stands beside the dashed line of the gunwale.
func (p *pen) beamOnBed(c core.Canoe, a scene.Plate) {
	at := a.At(0, c.Design.Beam/2)
	n := p.Say(scene.RankMain, "beam "+units.Length.Format(c.Design.Beam, p.View.System), draw.Ink, draw.Bark,
		scene.SpotAt(at.X+1.1*p.Letter, at.Y, draw.Start))
	n.Text.Bold = true
}

// frameWidth is measured along the middle crosspiece.
func (p *pen) frameWidth(c core.Canoe, a scene.Plate) {
	half := c.Frame.Bed.Crosspieces[0].OutToOut / 2
	at := a.At(0.5*c.Frame.Thwarts[1].X, 0)
	n := p.Say(scene.RankPart, "frame "+units.Length.Format(2*half, p.View.System), draw.Frame, draw.Bark,
		scene.SpotAt(at.X, at.Y-0.9*p.Letter, draw.Middle), scene.SpotAt(at.X, at.Y+0.9*p.Letter, draw.Middle))
	n.Text.Bold = true
}

// sideTitle names the side view in the hollow over the sheer.
func (p *pen) sideTitle(c core.Canoe, l layout) {
	if !l.titled {
		return
	}
	h, a := c.Hull, l.side
	x := -0.93 * h.GunwaleX
	at := a.At(x, h.Sheer(0.9*h.GunwaleX))
	y := min(at.Y, l.tapeY+2.2*p.Letter)
	title := "Side view"
	if p.View.State == scene.OnTheBed {
		title += ", sides up"
	}
	n := p.Say(scene.RankTitle, title, draw.Ink, draw.Paper, scene.SpotAt(at.X+1.5*p.Letter, y, draw.Start),
		scene.SpotAt(at.X+3*p.Letter, y+p.Letter, draw.Start))
	n.Text.Bold = true
}

// lengthOverall is measured under the side view.
func (p *pen) lengthOverall(c core.Canoe, l layout) {
	if p.View.Layer != scene.Measures {
		return
	}
	end := c.Design.Length / 2
	text := "length overall " + units.Length.Format(2*end, p.View.System)
	if l.dimensionY == 0 {
		at := l.side.At(0, 0)
		n := p.Say(scene.RankMain, units.Length.Format(2*end, p.View.System), draw.Ink, draw.Paper,
			scene.SpotAt(at.X, min(at.Y+0.9*p.Letter, p.List.Height-0.7*p.Letter), draw.Middle))
		n.Text.Bold, n.Key = true, text
		return
	}
	from, to := l.side.At(-end, 0), l.side.At(end, 0)
	from.Y, to.Y = l.dimensionY, l.dimensionY
	n := p.Say(scene.RankMain, text, draw.Ink, draw.Paper, scene.SpotAt((from.X+to.X)/2, l.dimensionY, draw.Middle))
	n.Text.Bold = true
	n.With = p.Arrows(from, to)
	p.ends(c, l)
}

// stemHeight is measured at the bow, from the bottom amidships up to the head.
func (p *pen) stemHeight(c core.Canoe, a scene.Plate) {
	if p.View.Layer != scene.Measures {
		return
	}
	d, h := c.Design, c.Hull
	text := units.Length.Format(d.EndHeight, p.View.System)
	n := p.heightText(a, -h.HeadX, d.EndHeight, text, scene.RankMain)
	n.Key = "stem head over the bottom " + text
	if p.roomFor(a) && p.View.State != scene.OnTheBed {
		n.With = p.Arrows(a.At(-h.HeadX, 0), a.At(-h.HeadX, d.EndHeight))
	}
}

// height letters the height of the sheer at x.
func (p *pen) height(a scene.Plate, x, from, value float64, name string, rank int) {
	text := units.Length.Format(value, p.View.System)
	n := p.heightText(a, x, from, text, rank)
	n.Key = "height at the " + name + " " + text
	if p.roomFor(a) {
		n.With = p.Arrows(a.At(x, 0), a.At(x, value))
	}
}

// roomFor reports whether a drawing is large enough for the arrows of dimension lines inside
// the boat.
func (p *pen) roomFor(a scene.Plate) bool { return a.Scale > 9*p.Letter }

// heightText stands over the sheer on a short line up from it; near the ends,
// where the sheer climbs, inboard of it.
func (p *pen) heightText(a scene.Plate, x, from float64, text string, rank int) *scene.Note {
	foot := a.At(x, from)
	up := func(by float64) draw.Point { return draw.Point{X: foot.X, Y: foot.Y - by*p.Letter} }
	inboard := draw.Start
	step := 0.5 * p.Letter
	if x > 0 {
		inboard, step = draw.End, -step
	}
	spots := []scene.Spot{{At: up(1.7), Anchor: draw.Middle},
		{At: draw.Point{X: foot.X + step, Y: up(1.7).Y}, Anchor: inboard}, {At: up(2.6), Anchor: draw.Middle}}
	n := p.Say(rank, text, draw.Ink, draw.Paper, spots...)
	n.Lead, n.Tied = &foot, true
	return n
}

// ghostTop and ghostSide draw the boat as it was when the slider was taken up, and the one held.
func (p *pen) ghostTop(a scene.Plate, lines func(core.Canoe) [][]geom.Vec2) {
	if p.View.Held != nil {
		p.heldLines(a, lines(*p.View.Held))
	}
	if p.View.Ghost == nil {
		return
	}
	for _, line := range lines(*p.View.Ghost) {
		p.Dashed(draw.Pinned, 1.4, scene.LongDash, a.Place(line)...)
	}
}

func (p *pen) ghostSide(a scene.Plate) {
	if p.View.Held != nil {
		outline := profile(p.View.Held.Hull)
		p.heldLines(a, [][]geom.Vec2{append(outline, outline[0])})
	}
	if p.View.Ghost == nil {
		return
	}
	outline := a.Place(profile(p.View.Ghost.Hull))
	p.Dashed(draw.Pinned, 1.4, scene.LongDash, append(outline, outline[0])...)
}
