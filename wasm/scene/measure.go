package scene

import (
	"math"
	"strings"

	"barkwright/core/bark"
	"barkwright/core/draw"
	"barkwright/core/geom"
	"barkwright/core/units"
)

// Arrows returns what draws a dimension line between arrows, broken where its label
// stands in it.
func (p *Pen) Arrows(from, to draw.Point) func(draw.Box) []draw.Op {
	return func(label draw.Box) []draw.Op {
		w := DimensionWidth * p.Weight
		long := math.Hypot(to.X-from.X, to.Y-from.Y)
		var ops []draw.Op
		for _, piece := range apart(from, to, grown(label, 0.35*p.Letter)) {
			ops = append(ops, draw.Stroke{Role: draw.Ink, Points: piece, Width: w})
		}
		if long < 1 {
			return ops
		}
		// On a short line the arrows are small.
		head := min(6*p.Weight, 0.35*long)
		ux, uy := (to.X-from.X)/long, (to.Y-from.Y)/long
		for _, end := range [2]struct {
			at   draw.Point
			sign float64
		}{{from, 1}, {to, -1}} {
			x, y := end.at.X+end.sign*ux*head, end.at.Y+end.sign*uy*head
			ops = append(ops, draw.Fill{Role: draw.Ink, Points: []draw.Point{end.at,
				{X: x - 0.3*uy*head, Y: y + 0.3*ux*head}, {X: x + 0.3*uy*head, Y: y - 0.3*ux*head}}})
		}
		return ops
	}
}

func grown(b draw.Box, by float64) draw.Box {
	return draw.Box{Left: b.Left - by, Top: b.Top - by/2, Right: b.Right + by, Bottom: b.Bottom + by/2}
}

// apart returns what a box leaves of a straight line.
func apart(from, to draw.Point, b draw.Box) [][]draw.Point {
	first, last, ok := b.Crossed(from, to)
	if !ok || first == last {
		return [][]draw.Point{{from, to}}
	}
	var out [][]draw.Point
	if first > 0 {
		out = append(out, []draw.Point{from, from.Toward(to, first)})
	}
	if last < 1 {
		out = append(out, []draw.Point{from.Toward(to, last), to})
	}
	return out
}

// Running measures places in a row from the first of them, each over its mark. Where two of them
// have no room for their figures side by side, all go into the key as one line.
func (p *Pen) Running(y float64, places []float64, texts []string, name string) {
	last := len(places) - 1
	p.Line(draw.Ink, DimensionWidth, draw.Point{X: places[0], Y: y}, draw.Point{X: places[last], Y: y})
	fits := true
	for i, x := range places {
		p.Line(draw.Ink, DimensionWidth, draw.Point{X: x, Y: y - 3*p.Weight}, draw.Point{X: x, Y: y + 3*p.Weight})
		if i > 0 {
			room := 0.5 * (draw.Lettered(texts[i], p.Letter, false) + draw.Lettered(texts[i-1], p.Letter, false))
			fits = fits && math.Abs(x-places[i-1]) > room+0.6*p.Letter
		}
	}
	if !fits {
		n := p.Say(RankPart, name+": "+strings.Join(texts, ", "), draw.Ink, draw.Paper,
			SpotAt((places[0]+places[last])/2, y, draw.Middle))
		n.Still = true
		return
	}
	for i, x := range places {
		n := p.Say(RankPart, texts[i], draw.Ink, draw.Paper, SpotAt(x, y+1.25*p.Letter, draw.Middle))
		n.Key = name + " " + texts[i]
	}
}

// ScaleBar draws a bar of a round length with its words, near a place in a drawing of a scale, CSS
// pixels per metre.
func (p *Pen) ScaleBar(at draw.Point, scale float64) {
	steps := []float64{1.0 / 12, 0.25, 0.5, 1, 2, 5, 10}
	unit := units.Foot
	if p.View.System == units.Metric {
		steps, unit = []float64{0.02, 0.05, 0.1, 0.2, 0.5, 1, 2}, 1
	}
	long := steps[0] * unit
	for _, s := range steps {
		if s*unit*scale < 7*p.Letter {
			long = s * unit
		}
	}
	n := p.Say(RankTitle, units.Length.Format(long, p.View.System), draw.Ink, draw.Paper,
		SpotAt(at.X, at.Y, draw.Middle), SpotAt(at.X, at.Y-1.5*p.Letter, draw.Middle),
		SpotAt(at.X, at.Y+1.5*p.Letter, draw.Middle))
	n.Key = "scale bar " + n.Text.Text
	half := long * scale / 2
	n.With = func(label draw.Box) []draw.Op {
		middle, y := (label.Left+label.Right)/2, label.Bottom+1.5
		var ops []draw.Op
		for i := range 4 {
			role := draw.Role(draw.Ink)
			if i%2 == 1 {
				role = draw.Paper
			}
			from := middle - half + float64(i)*half/2
			ops = append(ops, draw.Stroke{Role: role, Width: 3 * p.Weight,
				Points: []draw.Point{{X: from, Y: y}, {X: from + half/2, Y: y}}})
		}
		return append(ops, draw.Stroke{Role: draw.Ink, Width: HairWidth * p.Weight, Closed: true,
			Points: []draw.Point{{X: middle - half, Y: y - 1.5*p.Weight}, {X: middle + half, Y: y - 1.5*p.Weight},
				{X: middle + half, Y: y + 1.5*p.Weight}, {X: middle - half, Y: y + 1.5*p.Weight}}})
	}
}

// ReadyFlat reports whether there is a flat sheet to draw. Where there is none, it says
// why in the picture.
func (p *Pen) ReadyFlat(f *bark.Flat) bool {
	text := "The bark is being laid flat."
	if f != nil {
		if f.State == geom.Converged || f.State == geom.NotConverged {
			return true
		}
		text = "This bark does not lie flat: " + f.State.String() + "."
	}
	p.Say(RankMain, text, draw.Ink, draw.Paper, SpotAt(p.List.Width/2, p.List.Height/2, draw.Middle))
	return false
}

// Wanting hatches a piece that the bark on hand does not cover.
func (p *Pen) Wanting(points []draw.Point) {
	p.Hatch(draw.Warn, 5, FineWidth, math.Pi/4, points)
}
