package view

import (
	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/draw"
	"barkwright/core/frame"
	"barkwright/core/units"
	"barkwright/wasm/scene"
)

// sections fills the room that is left with sections: the touched rib or the middle one,
// and others toward the end.
func (p *pen) sections(c core.Canoe, l layout) {
	if l.sections == (draw.Box{}) {
		return
	}
	if p.View.State == scene.OnTheBed {
		p.bedSections(c, l)
		return
	}
	ribs := p.shownRibs(c)
	cuts := make([]cut, len(ribs))
	for i, r := range ribs {
		cuts[i] = cutAt(c, r)
	}
	n := p.sectionsThatFit(l, cuts)
	for i, a := range p.cutPlate(l.sections, cuts[:n]) {
		p.cutDrawn(c, ribs[i], cuts[i], a)
		p.sectionScale(cuts[i], a)
	}
}

// shownRibs are the ribs worth a section, the most telling first.
func (p *pen) shownRibs(c core.Canoe) []frame.Rib {
	ribs := c.Frame.Ribs
	last := len(ribs) - 1
	for last > 0 && ribs[last].Broken {
		last--
	}
	first := 0
	for i, r := range ribs {
		if answer.RibPart(r.Number) == p.View.Touched {
			first = i
		}
	}
	out := []frame.Rib{ribs[first]}
	for _, i := range []int{last / 2, last} {
		if i != first {
			out = append(out, ribs[i])
		}
	}
	return out
}

// clearWidth is the paper left round a section, in letters.
const clearWidth = 2

// readableSection is how broad the largest of several sections is at least, in letters: a
// section narrower than its lettering tells nothing. Chosen by eye.
const readableSection = 16

// sectionsThatFit returns how many sections have room: as many as can still be read.
func (p *pen) sectionsThatFit(l layout, cuts []cut) int {
	for n := len(cuts); n > 1; n-- {
		if k := p.cutPlate(l.sections, cuts[:n])[0].Scale; 2*cuts[0].top.X*k > readableSection*p.Letter {
			return n
		}
	}
	return 1
}

// cutPlate places sections in a room at one scale. They stand side by side on one base
// line, or one over another where that shows them larger.
func (p *pen) cutPlate(room draw.Box, cuts []cut) []scene.Plate {
	widest, high := 0.0, 0.0
	halves := make([]float64, len(cuts))
	for i, k := range cuts {
		for _, q := range k.bark {
			halves[i] = max(halves[i], q.X)
		}
		halves[i] += k.beside
		widest = max(widest, 2*halves[i])
		high = max(high, k.top.Y+k.over)
	}
	foot := (0.8 + 1.25*cuts[0].lines) * p.Letter
	air := clearWidth * p.Letter
	n := float64(len(cuts))
	out := make([]scene.Plate, len(cuts))
	row := p.rowScale(room, halves, (room.Height()-foot)/high)
	stack := max(1, min((room.Width()-air)/widest, (room.Height()/n-foot-air/2)/high))
	if stack > row {
		// The space that is left is shared over and under each section.
		slack := room.Height()/n - foot - stack*high
		for i := range cuts {
			y := room.Top + room.Height()*float64(i+1)/n - foot - slack/2
			out[i] = scene.Plate{Origin: draw.Point{X: (room.Left + room.Right) / 2, Y: y}, Scale: stack}
		}
		return out
	}
	slack := room.Width() / n
	for _, half := range halves {
		slack -= p.slot(half, row) / n
	}
	x := room.Left
	y := room.Bottom - foot - max(0, room.Height()-foot-high*row)/2
	for i, half := range halves {
		wide := p.slot(half, row) + slack
		out[i] = scene.Plate{Origin: draw.Point{X: x + wide/2, Y: y}, Scale: row}
		x += wide
	}
	return out
}

// sectionWords is the room that a section's lettering takes at least, in letters: about a
// length with the words before it. Chosen by eye.
const sectionWords = 13

// slot is the breadth that a section takes in a row, by its own and by its lettering's.
func (p *pen) slot(half, scale float64) float64 { return max(2*half*scale, sectionWords*p.Letter) }

// rowScale is the largest scale, up to a most, at which sections stand side by side.
func (p *pen) rowScale(room draw.Box, halves []float64, most float64) float64 {
	fits := func(k float64) bool {
		wide := float64(len(halves)) * clearWidth * p.Letter
		for _, half := range halves {
			wide += p.slot(half, k)
		}
		return wide <= room.Width()
	}
	low, high := 1.0, max(1, most)
	if fits(high) {
		return high
	}
	for range 40 {
		if k := (low + high) / 2; fits(k) {
			low = k
		} else {
			high = k
		}
	}
	return low
}

// sectionScale puts a scale bar under a section's lettering: its scale is its own.
func (p *pen) sectionScale(k cut, a scene.Plate) {
	at := a.At(0, 0)
	p.ScaleBar(draw.Point{X: at.X, Y: at.Y + (1.25*k.lines-0.2)*p.Letter}, a.Scale)
}

func (p *pen) cutDrawn(c core.Canoe, r frame.Rib, k cut, a scene.Plate) {
	d := c.Design
	bark := a.Place(scene.Between(scene.Mirrored(k.bark), scene.Mirrored(k.lining)))
	p.Fill(draw.Bark, bark)
	p.Part(answer.BarkPart, true, bark)
	p.Part(answer.SheathingPart, true, a.Place(scene.Between(scene.Mirrored(k.lining), scene.Mirrored(k.ribOuter))))
	rib := a.Place(scene.Between(scene.Mirrored(k.ribOuter), scene.Mirrored(k.ribInner)))
	p.Area(draw.Cedar, draw.Ink, p.Thin(a, r.Thickness, scene.TimberWidth), rib)
	p.hatchBend(hatchOf(r, d.RibStock), rib)
	p.Line(draw.Seam, scene.HairWidth, a.Place(scene.Mirrored(k.ribOuter))...)
	p.Line(draw.Ink, p.Outline(a), a.Place(scene.Mirrored(k.bark))...)
	p.cutGunwales(c, r.X, k, a)
	p.Part(answer.RibPart(r.Number), true, rib)
	if inner := c.Hull.HalfBeam(r.X); inner > 0 {
		y := k.top.Y - d.InwaleDepth/2
		n := p.Say(scene.RankPart, units.Length.Format(2*inner, p.View.System), draw.Ink, draw.Paper,
			scene.Spot{At: a.At(0, y), Anchor: draw.Middle})
		n.Key = ribName(r) + ", between the gunwales " + n.Text.Text
		n.With = p.Arrows(a.At(-inner, y), a.At(inner, y))
	}
	p.heldSection(r.Number, a, true)
	p.cutLabels(c, r, k, a)
}

// cutGunwales are inwale, outwale and cap on both sides, at a station.
func (p *pen) cutGunwales(c core.Canoe, x float64, k cut, a scene.Plate) {
	d := c.Design
	for _, side := range [2]float64{1, -1} {
		bar := func(name string, from, to, low, high float64) {
			p.timber(name, p.Thin(a, d.CapThickness*2, scene.TimberWidth),
				a.Place(scene.Rect(side*(from+to)/2, (to-from)/2, low, high)))
		}
		top := k.top
		inner, under := c.Hull.HalfBeam(x), frame.UnderInwale(c.Hull, x)-c.Hull.Sheer(x)
		outer := top.X + d.OutwaleThickness
		bar(answer.InwalePart, inner, max(inner, top.X-d.BarkThickness), top.Y+under, top.Y)
		bar(answer.OutwalePart, top.X, outer, top.Y-d.OutwaleDepth, top.Y)
		middle := (inner + outer) / 2
		bar(answer.CapPart, max(0, middle-d.CapWidth/2), middle+d.CapWidth/2, top.Y, top.Y+d.CapThickness)
	}
}

// cutLabels say which rib it is, where it bends most and what that means.
func (p *pen) cutLabels(c core.Canoe, r frame.Rib, k cut, a scene.Plate) {
	at := a.At(k.bend.X, k.bend.Y)
	foot := a.At(0, 0)
	name := p.Say(scene.RankTitle, ribName(r)+", finished "+units.Length.Format(r.Length, p.View.System),
		draw.Ink, draw.Paper, scene.SpotAt(foot.X, foot.Y+1.2*p.Letter, draw.Middle))
	name.Text.Bold = true
	state := answer.RibWord(c, r)
	if !r.Broken && !r.Bend.WillNotFit && r.Bend.Radius < straightRib {
		text := "radius " + units.SmallLength.Format(r.Bend.Radius, p.View.System)
		p.List.Add(draw.Stroke{Role: draw.Mark, Points: draw.Polygon(at, 5*p.Weight, 12, 0), Width: 1.6 * p.Weight,
			Closed: true})
		if half := 0.5 * draw.Lettered(text, p.Letter, false); at.X-foot.X > half+4*p.Letter {
			y := at.Y - 1.6*p.Letter
			n := p.Say(scene.RankPart, text, draw.Ink, draw.Paper, scene.SpotAt(foot.X, y, draw.Middle))
			n.Key = ribName(r) + ", " + text
			n.Lead = &draw.Point{X: at.X - 5*p.Weight, Y: at.Y - 2}
		} else {
			state = text + ", " + state
		}
	}
	p.Say(scene.RankPart, state, draw.Ink, draw.Paper, scene.SpotAt(foot.X, foot.Y+2.45*p.Letter, draw.Middle)).Key =
		ribName(r) + ": " + state
}

// straightRib is the radius, in metres, from which a rib is called straight.
const straightRib = 50
