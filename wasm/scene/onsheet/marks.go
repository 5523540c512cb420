package onsheet

import (
	"strconv"

	"barkwright/core/draw"
	"barkwright/core/frame"
	"barkwright/core/geom"
	"barkwright/core/sheet"
	"barkwright/core/units"
	"barkwright/wasm/scene"
)

// pen draws one figure.
type pen struct{ *scene.Pen }

// gunwaleMarks is half of a gunwale laid straight, from its middle to its end, with what is
// marked on it: thwarts, ribs with their numbers, and groups of lacing.
func gunwaleMarks(l looker) sheet.Figure {
	size := l.high(150)
	p := pen{scene.NewPen(l.View, size)}
	p.List.Title = "Half of the gunwale, laid straight"
	p.List.Description = "Thwarts, ribs and groups of lacing, from the middle to the end."
	f := l.Frame
	run := f.Gunwales.Run
	const margin, rail = 16.0, 0.055 // px; m of drawing, broader than the timber so that marks show
	a := scene.Plate{Origin: draw.Point{X: margin, Y: 0.5 * size.Height}, Scale: (size.Width - 2*margin) / run}
	low, high := -rail/2, rail/2
	p.Area(draw.Cedar, draw.Ink, scene.StrongWidth, a.Place(bar(0, run, low, high)))
	p.Dashed(draw.Faint, scene.FineWidth, scene.CentreDash, a.At(0, 3.2*low), a.At(0, 3.2*high))
	for _, g := range f.Lacing.Groups {
		half := l.lacingHalf(g)
		p.Fill(draw.Root, a.Place(bar(max(0, g.Run-half), min(run, g.Run+half), low, low+0.3*rail)))
	}
	for _, r := range f.Ribs {
		if r.Alone() {
			continue
		}
		at := a.At(r.Run, low)
		p.Line(draw.Ink, scene.FineWidth, a.At(r.Run, high), at)
		p.Line(draw.Ink, scene.FineWidth, at, draw.Point{X: at.X, Y: at.Y + 3})
		n := p.Say(scene.RankExtra, ribNumber(r.Number), draw.Ink, draw.Paper, scene.SpotAt(at.X, at.Y+0.95*p.Letter, draw.Middle))
		n.Spare = true
	}
	for i, t := range f.Thwarts {
		half := frame.ThwartWidth / 2
		p.Area(draw.Ground, draw.Ink, scene.StrongWidth, a.Place(bar(max(0, t.Run-half), t.Run+half, high, high+0.6*rail)))
		p.mark(l, a, t.Run, high+0.6*rail, frame.ThwartName(i, len(f.Thwarts)))
	}
	p.mark(l, a, run, high, "gunwale end")
	p.mark(l, a, f.Headboard.Run, high, "headboard")
	p.ScaleBar(a.At(0.5*run, -0.24), a.Scale)
	return sheet.Figure{Caption: "Half of the gunwale, laid straight: thwarts and their distances along it from the middle, ribs by " +
		"number, groups of lacing dark.", Drawing: p.Done()}
}

// bar is a rectangle from one place along the gunwale to another.
func bar(from, to, low, high float64) []geom.Vec2 {
	return []geom.Vec2{{X: from, Y: low}, {X: to, Y: low}, {X: to, Y: high}, {X: from, Y: high}}
}

// lacingHalf is half of what a group of lacing covers of the gunwale, m.
func (l looker) lacingHalf(g frame.Group) float64 {
	return (g.Holes[len(g.Holes)-1] - g.Holes[0] + l.Design.RootWidth) / 2
}

func ribNumber(n int) string {
	if n == 0 {
		return "middle"
	}
	return strconv.Itoa(n)
}

// mark names a place with its distance from the middle, over the gunwale.
func (p pen) mark(l looker, a scene.Plate, run, high float64, name string) {
	at := a.At(run, high)
	text := name + " " + units.Length.Format(run, l.System)
	if run == 0 {
		text = name
	}
	n := p.Say(scene.RankPart, text, draw.Ink, draw.Paper, scene.SpotAt(at.X, at.Y-p.Letter, draw.Middle),
		scene.SpotAt(at.X, at.Y-2.3*p.Letter, draw.Middle), scene.SpotAt(at.X, at.Y-p.Letter, draw.End),
		scene.SpotAt(at.X, at.Y-2.3*p.Letter, draw.End), scene.SpotAt(at.X-3, at.Y-p.Letter, draw.Start))
	n.Lead, n.Tied = &at, true
}
