package chart

import (
	"math"

	"barkwright/core/draw"
	"barkwright/core/geom"
)

// labels places the marks' names, then the lines', each where it covers nothing:
// off other labels and marks, and off the lines where there is such a place.
func (p *plot) labels() {
	for _, m := range p.Marks {
		p.label(p.at(m.At), m.Label, m.Shape == Here)
	}
	for _, l := range p.Lines {
		if l.Label != "" && len(l.Points) > 0 {
			p.label(p.at(l.Points[len(l.Points)-1]), l.Label, false)
		}
	}
}

// around are the places tried about a point, as shares of the label's breadth to
// the left and lines of lettering up, the nearest first.
var around = makeAround()

type beside struct{ across, up float64 }

func makeAround() []beside {
	var out []beside
	for _, up := range []float64{0.9, -0.9, 1.7, -1.7, 2.6, -2.6, 3.5, -3.5, 4.5, -4.5, 6, -6, 7.5, -7.5} {
		for _, across := range []float64{0, -1, -0.5, -0.25, -0.75} {
			out = append(out, beside{across, up})
		}
	}
	return append([]beside{{0, 0}, {-1, 0}}, out...)
}

func (p *plot) label(at geom.Vec2, text string, bold bool) {
	t := lettered(0, 0, draw.Start, text)
	t.Bold = bold
	wide, high := t.Bounds().Width(), t.Bounds().Height()
	// A label beside its point clears the point's mark.
	const clear = 0.7 * chartLetter
	room := draw.Box{Left: p.area.Left + 2, Top: 0.1 * chartLetter, Right: p.list.Width - 2, Bottom: p.area.Bottom - 2}
	for _, offLines := range []bool{true, false} {
		for _, b := range around {
			t.At = draw.Point{X: at.X + b.across*wide + clear*(1+2*b.across), Y: at.Y - b.up*high}
			box := t.Bounds()
			if !box.Within(room) || !p.free(box) || offLines && p.crossed(box) {
				continue
			}
			p.taken = append(p.taken, draw.Box{Left: box.Left - 3, Top: box.Top - 1, Right: box.Right + 3,
				Bottom: box.Bottom + 1})
			p.leader(at, box)
			p.list.Add(t)
			return
		}
	}
}

// leader ties a label that stands away from its point to it.
func (p *plot) leader(at geom.Vec2, box draw.Box) {
	near := geom.Vec2{X: max(box.Left, min(box.Right, at.X)), Y: max(box.Top+2, min(box.Bottom-2, at.Y))}
	if near.Sub(at).Len() > 1.1*chartLetter {
		p.line(draw.Faint, 1, at.Lerp(near, markRadius/near.Sub(at).Len()), near)
	}
}

func (p *plot) free(box draw.Box) bool {
	if box.Meets(p.yTitle().Bounds()) {
		return false
	}
	for _, o := range p.taken {
		if box.Meets(o) {
			return false
		}
	}
	return true
}

// crossed tells whether a line of the chart runs through a box.
func (p *plot) crossed(box draw.Box) bool {
	for _, l := range p.Lines {
		points := p.placed(l.Points)
		for i := 1; i < len(points); i++ {
			a, b := points[i-1], points[i]
			n := int(math.Hypot(b.X-a.X, b.Y-a.Y)/4) + 1
			for j := 0; j <= n; j++ {
				q := a.Lerp(b, float64(j)/float64(n))
				if q.X > box.Left && q.X < box.Right && q.Y > box.Top && q.Y < box.Bottom {
					return true
				}
			}
		}
	}
	return false
}
