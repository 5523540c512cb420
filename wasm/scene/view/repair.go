package view

import (
	"barkwright/core/answer"
	"barkwright/core/draw"
	"barkwright/core/geom"
	"barkwright/core/tally"
	"barkwright/core/units"
	"barkwright/wasm/scene"
)

// repairs draws the outline of each repair's patch where it lies, dashed where the boat hides it: from
// above the bottom is seen whole, from the side the port half is hidden.
func (p *pen) repairs(l layout) {
	for i, e := range p.View.Repairs {
		outline, closed := e.Outline, e.Closed
		text := scene.RepairName(i, e.Entry)
		port := e.Damage.Up >= 0 && e.Damage.Kind != tally.BrokenRib
		if l.hasTop {
			p.repair(i, text, closed, false, onPlate(l.top, outline, func(q geom.Vec3) geom.Vec2 { return geom.Vec2{X: q.X, Y: q.Y} }))
		}
		if l.hasSide {
			p.repair(i, text, closed, port, onPlate(l.side, outline, func(q geom.Vec3) geom.Vec2 { return geom.Vec2{X: q.X, Y: q.Z} }))
		}
	}
}

func onPlate(a scene.Plate, outline []geom.Vec3, onto func(geom.Vec3) geom.Vec2) []draw.Point {
	var out []geom.Vec2
	for _, q := range outline {
		out = append(out, onto(q))
	}
	return a.Place(out)
}

func (p *pen) repair(i int, text string, closed, hidden bool, points []draw.Point) {
	if closed {
		points = append(points, points[0])
	}
	if hidden {
		p.Dashed(draw.Warn, scene.StrongWidth, scene.ShortDash, points...)
	} else {
		p.Line(draw.Warn, scene.StrongWidth, points...)
	}
	p.Part(scene.RepairPart(i), closed, points)
	if p.View.Layer == scene.Plain {
		return
	}
	b := draw.BoxOf(points)
	at := draw.Point{X: (b.Left + b.Right) / 2, Y: (b.Top + b.Bottom) / 2}
	n := p.Say(scene.RankPart, text, draw.Warn, draw.Paper, scene.SpotAt(at.X, b.Top-p.Letter, draw.Middle),
		scene.SpotAt(at.X, b.Bottom+p.Letter, draw.Middle))
	n.Lead, n.Key = &at, "repair "+text
}

// ReadRepair returns one sentence about a repair in the picture. It is empty for a name that is
// not one.
func ReadRepair(repairs []answer.Mended, part string, dates tally.Dates, s units.System) string {
	for i, e := range repairs {
		if part == scene.RepairPart(i) {
			return "Mended " + dates.Written(e.When) + ": " + answer.DamageWords(e.Repair, s) + "."
		}
	}
	return ""
}
