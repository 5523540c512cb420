package scene

import (
	"slices"

	"barkwright/core/draw"
	"barkwright/core/geom"
)

// Called is a part with a place on it in a drawing, m.
type Called struct {
	Name string
	At   geom.Vec2
}

// Call letters parts of a view over its height high, or under its height low: whichever is
// nearer. A line leads to each. One called in another view already is left out where it has no room.
func (p *Pen) Call(a Plate, parts []Called, high, low float64) {
	for _, part := range parts {
		at := a.At(part.At.X, part.At.Y)
		over := SpotAt(at.X, a.At(0, high).Y-1.2*p.Letter, draw.Middle)
		under := SpotAt(at.X, a.At(0, low).Y+1.2*p.Letter, draw.Middle)
		spots := []Spot{over, under}
		if part.At.Y < (high+low)/2 {
			spots = []Spot{under, over}
		}
		again := slices.ContainsFunc(p.notes, func(n Note) bool { return n.Text.Text == part.Name })
		n := p.Say(RankPart, part.Name, draw.Ink, draw.Paper, spots...)
		n.Lead, n.Tied, n.Spare = &at, true, again
	}
}

// LineKind is a kind of line with what it stands for. Its width is at plain lettering.
type LineKind struct {
	Name  string
	Role  draw.Role
	Width float64
	Dash  []float64
}

// LineKinds says in a row at the foot of the picture what the kinds of lines stand for.
func (p *Pen) LineKinds(kinds ...LineKind) {
	sample := 2.4 * p.Letter
	x, y := p.Letter, p.List.Height-0.8*p.Letter
	for _, kind := range kinds {
		n := p.Say(RankTitle, kind.Name, draw.Ink, draw.Paper, SpotAt(x+sample+0.4*p.Letter, y, draw.Start))
		n.Spare = true
		n.With = func(label draw.Box) []draw.Op {
			right := label.Left - 0.4*p.Letter
			return []draw.Op{draw.Stroke{Role: kind.Role, Width: kind.Width * p.Weight, Dash: kind.Dash,
				Points: []draw.Point{{X: right - sample, Y: y}, {X: right, Y: y}}}}
		}
		x += sample + draw.Lettered(kind.Name, p.Letter, false) + 2*p.Letter
	}
}
