package view

import (
	"math"
	"strconv"
	"strings"

	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/draw"
	"barkwright/core/frame"
	"barkwright/core/units"
	"barkwright/wasm/scene"
)

// baseLine is what heights are measured from: level with the bottom amidships.
func (p *pen) baseLine(c core.Canoe, a scene.Plate) {
	end := c.Design.Length / 2
	p.Line(draw.Faint, scene.FineWidth, a.At(-end, 0), a.At(end, 0))
	if !p.roomFor(a) {
		return
	}
	at := a.At(0.8*c.Hull.HeelX, 0)
	n := p.Say(scene.RankExtra, "base line", draw.Faint, draw.Paper, scene.SpotAt(at.X, at.Y+0.7*p.Letter, draw.Middle),
		scene.SpotAt(2*a.Origin.X-at.X, at.Y+0.7*p.Letter, draw.Middle))
	n.Lead = &at
}

// ends measures the overhang and the heel in a row under the side view.
func (p *pen) ends(c core.Canoe, l layout) {
	if l.chainY == 0 {
		return
	}
	h, end := c.Hull, c.Design.Length/2
	p.span(l.side, l.chainY, -end, -h.GunwaleX, "overhang", c.Design.EndHeight/2)
	p.span(l.side, l.chainY, h.HeelX, end, "heel", 0)
}

// afterHalf measures something from the middle to its after end, in the row over the view.
func (p *pen) afterHalf(l layout, end float64, text string) {
	if l.spacingY == 0 {
		return
	}
	from, to := l.top.At(-end, 0), l.top.At(0, 0)
	from.Y, to.Y = l.spacingY, l.spacingY
	p.Line(draw.Faint, scene.HairWidth, draw.Point{X: from.X, Y: from.Y - 3}, draw.Point{X: from.X, Y: from.Y + 4})
	n := p.Say(scene.RankPart, text, draw.Ink, draw.Paper, scene.SpotAt((from.X+to.X)/2, l.spacingY, draw.Middle))
	n.With = p.Arrows(from, to)
	n.Lead = &draw.Point{X: (from.X + to.X) / 2, Y: l.spacingY}
}

// span is a dimension line in a row at y between two places along the boat, with fine lines
// down to it from a height of the drawing.
func (p *pen) span(a scene.Plate, y, from, to float64, name string, height float64) {
	u, v := draw.Point{X: a.At(from, 0).X, Y: y}, draw.Point{X: a.At(to, 0).X, Y: y}
	for _, q := range [2]draw.Point{u, v} {
		p.Line(draw.Faint, scene.HairWidth, draw.Point{X: q.X, Y: a.At(0, height).Y}, draw.Point{X: q.X, Y: y + 3})
	}
	measure := units.Length.Format(math.Abs(to-from), p.View.System)
	text := name + " " + measure
	spots := []scene.Spot{scene.SpotAt((u.X+v.X)/2, y, draw.Middle),
		scene.SpotAt(max(u.X, v.X)+0.5*p.Letter, y, draw.Start), scene.SpotAt(min(u.X, v.X)-0.5*p.Letter, y, draw.End)}
	if draw.Lettered(text, p.Letter, false)+3*p.Letter > math.Abs(v.X-u.X) {
		spots = spots[1:]
	}
	n := p.Say(scene.RankPart, text, draw.Ink, draw.Paper, spots...)
	n.With = p.Arrows(u, v)
	n.Lead = &draw.Point{X: (u.X + v.X) / 2, Y: y}
}

// thwartMeasures letters how long the thwarts are between their shoulders, and in a row over
// the view how far apart they stand along the gunwale.
func (p *pen) thwartMeasures(c core.Canoe, l layout) {
	thwarts := c.Frame.Thwarts
	a := l.top
	for i := 1; i < len(thwarts); i++ {
		t := thwarts[i]
		text := units.Length.Format(t.Shoulder, p.View.System)
		name := frame.ThwartName(i, len(thwarts))
		at := a.At(t.X+frame.ThwartWidth/2, 0)
		n := p.Say(scene.RankHeight, text, draw.Ink, draw.Cedar, scene.SpotAt(at.X+0.4*p.Letter, at.Y, draw.Start))
		n.Key, n.Lead = name+", between the shoulders "+text, &at
	}
	if l.spacingY == 0 {
		return
	}
	places, names, spans := []float64{0}, []string{frame.ThwartName(0, len(thwarts))}, []float64(nil)
	for i := 1; i < len(thwarts); i++ {
		places, names = append(places, thwarts[i].X), append(names, frame.ThwartName(i, len(thwarts)))
		spans = append(spans, thwarts[i].Run-thwarts[i-1].Run)
	}
	p.chain(l, places, spans, "thwarts apart along the gunwale")
}

// goreSpacing measures how far apart the gores are along the gunwale, from amidships to the
// bow, in a row over the view.
func (p *pen) goreSpacing(c core.Canoe, l layout) {
	if l.spacingY == 0 {
		return
	}
	places, runs := []float64{0}, []float64{0}
	for _, g := range c.Bark.Gores {
		if g.State == bark.GoreCut && g.X > 1e-6 {
			places, runs = append(places, g.X), append(runs, g.Run)
		}
	}
	if len(runs) < 2 {
		return
	}
	spans := make([]float64, len(runs)-1)
	for i := range spans {
		spans[i] = runs[i+1] - runs[i]
	}
	p.chain(l, places, spans, "gores apart along the gunwale, from the middle")
}

// chain is a row of dimension lines between neighbouring places along the boat. Where one of
// them is shorter than its figures, all of them go into the key as one line.
func (p *pen) chain(l layout, places, spans []float64, name string) {
	texts := make([]string, len(spans))
	fits := true
	x := func(i int) float64 { return l.top.At(places[i], 0).X }
	for i, v := range spans {
		texts[i] = units.Length.Format(v, p.View.System)
		fits = fits && draw.Lettered(texts[i], p.Letter, false)+2*p.Letter < x(i+1)-x(i)
	}
	for i := range places {
		p.Line(draw.Faint, scene.HairWidth, draw.Point{X: x(i), Y: l.spacingY - 3}, draw.Point{X: x(i), Y: l.spacingY + 4})
	}
	last := len(places) - 1
	if !fits {
		text := name + ": " + strings.Join(texts, ", ")
		middle := draw.Point{X: (x(0) + x(last)) / 2, Y: l.spacingY}
		n := p.Say(scene.RankPart, text, draw.Ink, draw.Paper, scene.SpotAt(middle.X, middle.Y, draw.Middle))
		n.Still = true
		p.Line(draw.Ink, scene.DimensionWidth, draw.Point{X: x(0), Y: l.spacingY + 4},
			draw.Point{X: x(last), Y: l.spacingY + 4})
		return
	}
	for i, text := range texts {
		n := p.Say(scene.RankPart, text, draw.Ink, draw.Paper, scene.SpotAt((x(i)+x(i+1))/2, l.spacingY, draw.Middle))
		n.With = p.Arrows(draw.Point{X: x(i), Y: l.spacingY}, draw.Point{X: x(i + 1), Y: l.spacingY})
		n.Key = name + " " + text
	}
}

// ribStep is every which rib is numbered.
const ribStep = 5

// numberRoom is how far apart numbered ribs stand at least, in letters: two figures, which
// take 1.3, and half as much again between them. Chosen by eye.
const numberRoom = 1.9

// ribNumbers numbers ribs outside the starboard gunwale, more of them the nearer they are.
func (p *pen) ribNumbers(c core.Canoe, l layout) {
	if !l.titled {
		return
	}
	step := ribStep
	if p.View.Zoom > 2 {
		step = 1
	}
	// Where ribs stand close, fewer are numbered.
	if ribs := c.Frame.Ribs; len(ribs) > 1 {
		apart := (ribs[1].X - ribs[0].X) * l.top.Scale
		for float64(step)*apart < numberRoom*p.Letter && step < len(ribs) {
			step *= 2
		}
	}
	for _, r := range c.Frame.Ribs {
		if r.Number != 1 && r.Number%step != 0 || r.Alone() {
			continue
		}
		text := strconv.Itoa(r.Number)
		if r.Number == 1 {
			text = "rib 1"
		}
		at := l.top.At(r.X, -skinBreadth(c.Hull, r.X)-c.Design.OutwaleThickness)
		n := p.Say(scene.RankExtra, text, draw.Faint, draw.Paper, scene.SpotAt(at.X, at.Y+0.8*p.Letter, draw.Middle),
			scene.SpotAt(at.X, at.Y+1.2*p.Letter, draw.Middle), scene.SpotAt(at.X, at.Y+1.6*p.Letter, draw.Middle))
		n.Text.Size, n.Spare = max(11, 0.9*p.Letter), true
		if p.View.Zoom >= nearBy {
			n.Text.Text += ": " + units.Length.Format(r.Length, p.View.System)
			if at.Y > p.List.Height {
				p.ribItself(c, l, r)
			}
		}
	}
}
