package scene

import (
	"math"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/frame"
	"barkwright/core/units"
)

// sections fills what room is left: the touched rib or the middle one, and others
// on the way to the end.
func (p *pen) sections(c core.Canoe, l layout) {
	if l.sections == (box{}) {
		return
	}
	if p.view.State == OnTheBed {
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
		if answer.RibPart(r.Number) == p.view.Touched {
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

// sectionsThatFit is how many sections cover most of their room.
func (p *pen) sectionsThatFit(l layout, cuts []cut) int {
	best, most := 1, 0.0
	for n := 1; n <= len(cuts); n++ {
		k := p.cutPlate(l.sections, cuts[:n])[0].Scale
		if area := float64(n) * k * k; area > most {
			best, most = n, area
		}
	}
	return best
}

// cutPlate stands sections in a room at one scale: side by side on one base line,
// or one over another where that shows them larger.
func (p *pen) cutPlate(room box, cuts []cut) []plate {
	widest, wide, high := 0.0, 0.0, 0.0
	halves := make([]float64, len(cuts))
	for i, k := range cuts {
		for _, q := range k.bark {
			halves[i] = max(halves[i], q.X)
		}
		halves[i] += k.beside
		widest = max(widest, 2*halves[i])
		wide += 2 * halves[i]
		high = max(high, k.top.Y+k.over)
	}
	foot := (0.8 + 1.25*cuts[0].lines) * p.letter
	air := clearWidth * p.letter
	n := float64(len(cuts))
	out := make([]plate, len(cuts))
	row := max(1, min((room.width()-n*air)/wide, (room.height()-foot)/high))
	stack := max(1, min((room.width()-air)/widest, (room.height()/n-foot-air/4)/high))
	if stack > row {
		// What the sections leave is shared over and under each.
		slack := room.height()/n - foot - stack*high
		for i := range cuts {
			out[i] = plate{Point{(room.Left + room.Right) / 2, room.Top + room.height()*float64(i+1)/n - foot - slack/2}, stack}
		}
		return out
	}
	slack := (room.width() - wide*row) / n
	x := room.Left
	y := room.Bottom - foot - max(0, room.height()-foot-high*row)/2
	for i, half := range halves {
		x += slack/2 + half*row
		out[i] = plate{Point{x, y}, row}
		x += half*row + slack/2
	}
	return out
}

func (p *pen) cutDrawn(c core.Canoe, r frame.Rib, k cut, a plate) {
	d := c.Design
	p.fill(Bark, a.place(between(mirrored(k.bark), mirrored(k.lining))))
	rib := a.place(between(mirrored(k.ribOuter), mirrored(k.ribInner)))
	p.area(Cedar, Ink, p.thin(a, r.Thickness, timberWidth), rib)
	if spacing, ok := bendHatch(r, d.RibStock); ok && p.seen(rib) {
		p.list.Add(Hatch{Role: Warn, Points: rib, Spacing: spacing * p.weight, Width: hairWidth * p.weight, Angle: -math.Pi / 4})
	}
	p.line(Seam, hairWidth, a.place(mirrored(k.ribOuter))...)
	p.line(Ink, p.outline(a), a.place(mirrored(k.bark))...)
	p.cutGunwales(c, k, a)
	p.part(answer.RibPart(r.Number), true, rib)
	inner := k.top.X - d.BarkThickness - d.InwaleThickness
	if inner > 0 {
		y := k.top.Y - d.InwaleDepth/2
		n := p.say(rankPart, units.Length.Format(2*inner, p.view.System), Ink, Paper, spot{a.at(0, y), Middle})
		gap := n.text.bounds().width() + p.letter
		if 2*inner*a.Scale < gap+p.letter {
			n.at = nil // no room for the line and its words between the gunwales
		}
		n.with = p.measure(a.at(-inner, y), a.at(inner, y), gap)
	}
	p.cutLabels(c, r, k, a)
}

// cutGunwales are inwale, outwale and cap on both sides.
func (p *pen) cutGunwales(c core.Canoe, k cut, a plate) {
	d := c.Design
	for _, side := range [2]float64{1, -1} {
		bar := func(from, to, low, high float64) {
			p.area(Cedar, Ink, p.thin(a, d.CapThickness*2, timberWidth), a.place(rect(side*(from+to)/2, (to-from)/2, low, high)))
		}
		top := k.top
		inner := max(0, top.X-d.BarkThickness-d.InwaleThickness)
		outer := top.X + d.OutwaleThickness
		bar(inner, max(inner, top.X-d.BarkThickness), top.Y-d.InwaleDepth, top.Y)
		bar(top.X, outer, top.Y-d.OutwaleDepth, top.Y)
		middle := (inner + outer) / 2
		bar(max(0, middle-d.CapWidth/2), middle+d.CapWidth/2, top.Y, top.Y+d.CapThickness)
	}
}

// cutLabels say which rib it is, where it bends most and what that means.
func (p *pen) cutLabels(c core.Canoe, r frame.Rib, k cut, a plate) {
	at := a.at(k.bend.X, k.bend.Y)
	foot := a.at(0, 0)
	name := p.say(rankTitle, ribName(r)+", finished "+units.Length.Format(r.Length, p.view.System), Ink, Paper, spot{Point{foot.X, foot.Y + 1.2*p.letter}, Middle})
	name.text.Bold = true
	state := answer.RibWord(c, r)
	if !r.Broken && !r.Bend.WillNotFit && r.Bend.Radius < straightRib {
		text := "radius " + units.SmallLength.Format(r.Bend.Radius, p.view.System)
		p.list.Add(Stroke{Role: Mark, Points: ring(at, 5*p.weight), Width: 1.6 * p.weight, Closed: true})
		if half := 0.5 * glyphWidth * p.letter * float64(len(text)); at.X-foot.X > half+4*p.letter {
			y := at.Y - 1.6*p.letter
			n := p.say(rankPart, text, Ink, Paper, spot{Point{foot.X, y}, Middle})
			n.with = []Op{Stroke{Role: Mark, Points: []Point{{at.X - 5*p.weight, at.Y - 2}, {foot.X + half + 6, y + 2}}, Width: fineWidth * p.weight}}
		} else {
			state = text + ", " + state
		}
	}
	p.say(rankPart, state, Ink, Paper, spot{Point{foot.X, foot.Y + 2.45*p.letter}, Middle})
}

// straightRib is the radius from which a rib is as good as straight, metres.
const straightRib = 50

// ring is a small circle.
func ring(at Point, radius float64) []Point {
	const sides = 12
	out := make([]Point, sides)
	for i := range out {
		sin, cos := math.Sincos(2 * math.Pi * float64(i) / sides)
		out[i] = Point{at.X + radius*cos, at.Y + radius*sin}
	}
	return out
}
