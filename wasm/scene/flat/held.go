package flat

import (
	"barkwright/core/draw"
	"barkwright/wasm/scene"
)

// heldOver draws the edges of the held boat's bark on the bed, where it is laid flat.
func (p *pen) heldOver(a scene.Plate) {
	held := p.View.Held
	if held == nil || held.Skin == nil {
		return
	}
	for _, piece := range held.Skin.Flat.Pieces() {
		if piece.Panel >= 0 {
			continue
		}
		for n, line := range cutLines(piece.Outline()) {
			for i, q := range scene.Quarters {
				placed := a.InQuarter(q, 0, line)
				p.HeldLine(placed...)
				if n == 0 && i == 0 {
					at := placed[len(placed)/3]
					p.Say(scene.RankPart, "held", draw.Ink, draw.Paper, scene.Spot{At: draw.Point{X: at.X, Y: at.Y - p.Letter},
						Anchor: draw.Middle}).Lead = &at
				}
			}
		}
	}
}
