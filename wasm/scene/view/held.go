package view

import (
	"barkwright/core/draw"
	"barkwright/core/frame"
	"barkwright/core/geom"
	"barkwright/wasm/scene"
)

// heldLines draws lines of the boat that is held, and says whose they are once in a view.
func (p *pen) heldLines(a scene.Plate, lines [][]geom.Vec2) {
	for i, line := range lines {
		placed := a.Place(line)
		p.HeldLine(placed...)
		if i == 0 {
			p.sayHeld(placed)
		}
	}
}

// sayHeld names the held boat's line, near a third of its way.
func (p *pen) sayHeld(line []draw.Point) {
	at := line[len(line)/3]
	spots := make([]scene.Spot, 0, 4)
	for _, up := range []float64{0.8, -0.8, 1.6, -1.6} {
		spots = append(spots, scene.Spot{At: draw.Point{X: at.X, Y: at.Y - up*p.Letter}, Anchor: draw.Middle})
	}
	n := p.Say(scene.RankPart, "held", draw.Ink, draw.Paper, spots...)
	n.Lead = &at
}

// heldRib is the rib of the held boat with a number, and whether there is one.
func (p *pen) heldRib(number int) (frame.Rib, bool) {
	if p.View.Held != nil {
		for _, r := range p.View.Held.Frame.Ribs {
			if r.Number == number {
				return r, true
			}
		}
	}
	return frame.Rib{}, false
}

// heldSection draws the held boat's section at the rib of the same number, where it has one.
func (p *pen) heldSection(number int, a scene.Plate, say bool) {
	r, ok := p.heldRib(number)
	if !ok {
		return
	}
	section := r.Cut(p.View.Held.Hull)
	line := a.Place(scene.Mirrored(halfSection(section.Section, section.Foot.Y)))
	p.HeldLine(line...)
	if say {
		p.sayHeld(line)
	}
}
