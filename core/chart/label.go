package chart

import (
	"math"

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
	wide, high := broad(text), 1.15*chartLetter
	if bold {
		wide *= 1.08
	}
	// A label beside its point clears the point's mark.
	const clear = 0.7 * chartLetter
	room := rect{p.area.left + 2, 0.1 * chartLetter, p.width - 2, p.area.bottom - 2}
	for _, offLines := range []bool{true, false} {
		for _, b := range around {
			x := at.X + b.across*wide + clear*(1+2*b.across)
			y := at.Y - b.up*high
			box := rect{x, y - high/2, x + wide, y + high/2}
			if !box.within(room) || !p.free(box) || offLines && p.crossed(box) {
				continue
			}
			p.taken = append(p.taken, rect{box.left - 3, box.top - 1, box.right + 3, box.bottom + 1})
			p.leader(at, box)
			p.text(geom.Vec2{X: x, Y: y}, "start", text, bold)
			return
		}
	}
}

// leader ties a label that stands away from its point to it.
func (p *plot) leader(at geom.Vec2, box rect) {
	near := geom.Vec2{X: max(box.left, min(box.right, at.X)), Y: max(box.top+2, min(box.bottom-2, at.Y))}
	if near.Sub(at).Len() > 1.1*chartLetter {
		p.line([]geom.Vec2{at.Lerp(near, markRadius/near.Sub(at).Len()), near}, p.colours.Faint, 1, "")
	}
}

func (p *plot) free(box rect) bool {
	// The vertical axis is named in the chart's upper left corner.
	if box.meets(rect{0, 0, broad(p.Y.title())*1.08 + chartLetter, 1.7 * chartLetter}) {
		return false
	}
	for _, o := range p.taken {
		if box.meets(o) {
			return false
		}
	}
	return true
}

// crossed tells whether a line of the chart runs through a box.
func (p *plot) crossed(box rect) bool {
	for _, l := range p.Lines {
		points := p.placed(l.Points)
		for i := 1; i < len(points); i++ {
			a, b := points[i-1], points[i]
			n := int(math.Hypot(b.X-a.X, b.Y-a.Y)/4) + 1
			for j := 0; j <= n; j++ {
				q := a.Lerp(b, float64(j)/float64(n))
				if q.X > box.left && q.X < box.right && q.Y > box.top && q.Y < box.bottom {
					return true
				}
			}
		}
	}
	return false
}
