package scene

import (
	"math"

	"barkwright/core"
	"barkwright/core/frame"
	"barkwright/core/geom"
	"barkwright/core/units"
)

// tape draws the measure between the views, from amidships both ways, with the
// stations of the thwarts drawn through both.
func (p *pen) tape(c core.Canoe, l layout) {
	a := plate{Point{l.top.Origin.X, l.tapeY}, l.top.Scale}
	end := c.Design.Length / 2
	for i, t := range c.Frame.Thwarts {
		for _, x := range [2]float64{t.X, -t.X} {
			top := l.top.at(x, c.Hull.HalfBeam(t.X))
			p.dashed(Faint, hairWidth, centreDash, top, Point{top.X, l.side.at(x, c.Hull.Sheer(t.X)).Y})
			if i == 0 {
				break
			}
		}
	}
	p.line(Faint, fineWidth, a.at(-end, 0), a.at(end, 0))
	step, name := units.Foot, func(i int) string { return units.Count.Format(float64(i), p.view.System) + "'" }
	if p.view.System == units.Metric {
		step = 0.5
		name = func(i int) string { return units.Run.Format(float64(i)*step, p.view.System) }
	}
	every := 1
	for float64(every)*step*a.Scale < 4.5*p.letter {
		every++
	}
	for i := 0; float64(i)*step <= end; i++ {
		high := 3.0
		if i%every == 0 {
			high = 5
		}
		for _, x := range [2]float64{float64(i) * step, -float64(i) * step} {
			at := a.at(x, 0)
			p.line(Faint, fineWidth, Point{at.X, at.Y - high*p.weight}, Point{at.X, at.Y + high*p.weight})
			if l.titled && i%every == 0 {
				n := p.say(rankExtra, name(i), Faint, Paper, spot{Point{at.X, at.Y + 1.0*p.letter}, Middle})
				n.text.Size = max(11, 0.9*p.letter)
			}
			if i == 0 {
				break
			}
		}
	}
}

// centreLine runs along the top view.
func (p *pen) centreLine(c core.Canoe, l layout) {
	end := c.Design.Length / 2
	p.dashed(Faint, hairWidth, centreDash, l.top.at(-end, 0), l.top.at(end, 0))
}

// topTitle names the top view and which way the boat points, and measures the beam.
func (p *pen) topTitle(c core.Canoe, l layout) {
	a := l.top
	end := c.Design.Length / 2
	if l.titled {
		edge := a.at(-end, 0)
		y := 0.6*p.letter + 0.5*p.letter
		n := p.say(rankTitle, "Top view, "+p.view.State.String(), Ink, Paper, spot{Point{max(edge.X, 4), y}, Start})
		n.text.Bold = true
		p.say(rankTitle, "bow →", Ink, Paper, spot{Point{a.at(end, 0).X, y}, End})
	}
	if p.view.State == OnTheBed {
		p.beamOnBed(c, a)
		p.frameWidth(c, a)
		return
	}
	p.beam(c, a)
}

// beam is measured amidships, inside the gunwales: lettered along the middle
// thwart where that is broad enough, beside it where it is not.
func (p *pen) beam(c core.Canoe, a plate) {
	half := c.Design.Beam / 2
	low, high := a.at(0, -half), a.at(0, half)
	text := "beam " + units.Length.Format(2*half, p.view.System)
	if frame.ThwartWidth*a.Scale < 1.1*p.letter {
		beside := a.at(-0.5*c.Frame.Thwarts[1].X, 0.35*half)
		n := p.say(rankMain, text, Ink, Cedar, spot{beside, Middle})
		n.text.Bold = true
		n.with = p.measure(low, high, 0)
		return
	}
	n := p.say(rankMain, text, Ink, "", spot{a.at(0, 0), Middle})
	n.text.Bold, n.text.Angle = true, -math.Pi/2
	n.with = p.measure(low, high, n.text.bounds().height()+p.letter)
}

// beamOnBed stands beside the dashed line of the gunwale.
func (p *pen) beamOnBed(c core.Canoe, a plate) {
	at := a.at(0, c.Design.Beam/2)
	n := p.say(rankMain, "beam "+units.Length.Format(c.Design.Beam, p.view.System), Ink, Bark, spot{Point{at.X + 1.1*p.letter, at.Y}, Start})
	n.text.Bold = true
}

// frameWidth is measured along the middle crosspiece.
func (p *pen) frameWidth(c core.Canoe, a plate) {
	half := c.Frame.Bed.Crosspieces[0].OutToOut / 2
	at := a.at(0.5*c.Frame.Thwarts[1].X, 0)
	n := p.say(rankPart, "frame "+units.Length.Format(2*half, p.view.System), Frame, Bark, spot{Point{at.X, at.Y - 0.9*p.letter}, Middle}, spot{Point{at.X, at.Y + 0.9*p.letter}, Middle})
	n.text.Bold = true
}

// measure is a dimension line with slanted ticks at its ends, broken at its
// middle by half the given gap each way.
func (p *pen) measure(from, to Point, gap float64) []Op {
	w := fineWidth * p.weight
	share := max(0, 0.5-gap/2/math.Hypot(to.X-from.X, to.Y-from.Y))
	mid := func(s float64) Point { return Point{from.X + s*(to.X-from.X), from.Y + s*(to.Y-from.Y)} }
	ops := []Op{
		Stroke{Role: Ink, Points: []Point{from, mid(share)}, Width: w},
		Stroke{Role: Ink, Points: []Point{mid(1 - share), to}, Width: w},
	}
	const tick = 3.5
	for _, q := range [2]Point{from, to} {
		ops = append(ops, Stroke{Role: Ink, Points: []Point{{q.X - tick, q.Y + tick}, {q.X + tick, q.Y - tick}}, Width: 1.4 * p.weight})
	}
	return ops
}

// sideTitle names the side view in the hollow over the sheer.
func (p *pen) sideTitle(c core.Canoe, l layout) {
	if !l.titled {
		return
	}
	h, a := c.Hull, l.side
	x := -0.93 * h.GunwaleX
	at := a.at(x, h.Sheer(0.9*h.GunwaleX))
	y := min(at.Y, l.tapeY+2.2*p.letter)
	n := p.say(rankTitle, "Side view", Ink, Paper, spot{Point{at.X + 1.5*p.letter, y}, Start}, spot{Point{at.X + 3*p.letter, y + p.letter}, Start})
	n.text.Bold = true
}

// lengthOverall is measured under the side view.
func (p *pen) lengthOverall(c core.Canoe, l layout) {
	end := c.Design.Length / 2
	text := "length overall " + units.Length.Format(2*end, p.view.System)
	if l.dimensionY == 0 {
		at := l.side.at(0, 0)
		n := p.say(rankMain, units.Length.Format(2*end, p.view.System), Ink, Paper,
			spot{Point{at.X, min(at.Y+0.9*p.letter, p.list.Height-0.7*p.letter)}, Middle})
		n.text.Bold = true
		return
	}
	from, to := l.side.at(-end, 0), l.side.at(end, 0)
	from.Y, to.Y = l.dimensionY, l.dimensionY
	n := p.say(rankMain, text, Ink, Paper, spot{Point{(from.X + to.X) / 2, l.dimensionY}, Middle})
	n.text.Bold = true
	n.with = p.measure(from, to, n.text.bounds().width()+p.letter)
}

// stemHeight is measured at the bow, from the bottom amidships up to the head.
func (p *pen) stemHeight(c core.Canoe, a plate) {
	d, h := c.Design, c.Hull
	p.heightText(a, -h.HeadX, d.EndHeight, units.Length.Format(d.EndHeight, p.view.System), rankMain)
}

// height asks for the height of the sheer at x.
func (p *pen) height(a plate, x, from, value float64, rank int) {
	p.heightText(a, x, from, units.Length.Format(value, p.view.System), rank)
}

// heightText stands over the sheer on a short line up from it; near the ends,
// where the sheer climbs, inboard of it.
func (p *pen) heightText(a plate, x, from float64, text string, rank int) {
	foot := a.at(x, from)
	up := func(by float64) Point { return Point{foot.X, foot.Y - by*p.letter} }
	inboard := Start
	step := 0.5 * p.letter
	if x > 0 {
		inboard, step = End, -step
	}
	spots := []spot{{up(1.7), Middle}, {Point{foot.X + step, up(1.7).Y}, inboard}, {up(2.6), Middle}}
	n := p.say(rank, text, Ink, Paper, spots...)
	n.with = []Op{Stroke{Role: Ink, Points: []Point{foot, up(1)}, Width: fineWidth * p.weight}}
}

// ghostTop and ghostSide draw the boat as it was when the slider was taken up.
func (p *pen) ghostTop(a plate, lines func(core.Canoe) [][]geom.Vec2) {
	if p.view.Ghost == nil {
		return
	}
	for _, line := range lines(*p.view.Ghost) {
		p.dashed(Pinned, 1.4, longDash, a.place(line)...)
	}
}

func (p *pen) ghostSide(a plate) {
	if p.view.Ghost == nil {
		return
	}
	outline := a.place(profile(p.view.Ghost.Hull))
	p.dashed(Pinned, 1.4, longDash, append(outline, outline[0])...)
}
