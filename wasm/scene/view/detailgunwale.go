package view

import (
	"math"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/draw"
	"barkwright/core/frame"
	"barkwright/core/geom"
	"barkwright/core/units"
	"barkwright/wasm/scene"
)

// gunwaleBelow is how far under the deeper rail the bark and the rib are drawn, m.
const gunwaleBelow = 1.5 * units.Inch

// gunwaleCut draws the gunwale cut across amidships: inwale with its bevel,
// bark, outwale and cap with their pegs, the turns of root, and the rib whose tip goes up under the
// bevel. Y is up from the rails' tops and x outboard from the inwale's inner face, m.
func (p *pen) gunwaleCut(c core.Canoe, room draw.Box) {
	d, j := c.Design, frame.NewJoinery(c.Design)
	inwale, outer := d.InwaleThickness, d.InwaleThickness+d.BarkThickness+d.OutwaleThickness
	bark := [2]float64{inwale, inwale + d.BarkThickness}
	deep := max(d.InwaleDepth, d.OutwaleDepth)
	low := deep + gunwaleBelow
	middle := outer / 2
	rib := c.Frame.Ribs[0]
	// Down to the rails' lower edge the bark stands upright between them; from there it leans as the
	// side does.
	lean := sideLean(c)
	out := func(y float64) float64 { return min(0, y+deep) * lean }
	reachX := max(d.CapWidth/2, outer/2) + 0.01
	a := p.detailPlate(room, geom.Vec2{X: middle - reachX - low*max(0, lean)/2, Y: -low},
		geom.Vec2{X: middle + reachX, Y: d.CapThickness}, 9, 2.2)
	at := func(x, y float64) geom.Vec2 { return geom.Vec2{X: x, Y: y} }
	area := func(fill, line draw.Role, name string, points ...geom.Vec2) {
		placed := a.Place(points)
		p.Area(fill, line, scene.StrongWidth, placed)
		if name != "" {
			p.Part(name, true, placed)
		}
	}
	// The rib's outer face lies on the sheathing, whose edge under the rails is shaved thin.
	face := func(y float64) float64 {
		return bark[0] + out(y) - d.SheathingThickness*min(1, max(0, (-deep-y)/(low-deep)))
	}
	tip := -d.RibTuck
	var outside, inside []geom.Vec2
	for i := range 9 {
		y := tip + (-low-tip)*float64(i)/8
		outside = append(outside, at(face(y), y))
		inside = append(inside, at(face(y)-rib.Thickness, min(y, tip-rib.Thickness)))
	}
	area(draw.Cedar, draw.Ink, answer.RibPart(rib.Number), scene.Between(outside, inside)...)
	area(draw.Cedar, draw.Seam, answer.SheathingPart, at(bark[0]+out(-low)-d.SheathingThickness, -low),
		at(bark[0]+out(-low), -low), at(bark[0], -deep))
	area(draw.Bark, draw.Ink, answer.BarkPart, at(bark[0], 0), at(bark[0], -deep), at(bark[0]+out(-low), -low),
		at(bark[1]+out(-low), -low), at(bark[1], -deep), at(bark[1], 0))
	area(draw.Cedar, draw.Ink, answer.InwalePart, at(0, 0), at(inwale, 0), at(inwale, j.Bevel-d.InwaleDepth),
		at(inwale-j.Bevel, -d.InwaleDepth), at(0, -d.InwaleDepth))
	area(draw.Cedar, draw.Ink, answer.OutwalePart, at(bark[1], 0), at(outer, 0), at(outer, -d.OutwaleDepth),
		at(bark[1], -d.OutwaleDepth))
	area(draw.Cedar, draw.Ink, answer.CapPart, at(middle-d.CapWidth/2, 0), at(middle+d.CapWidth/2, 0),
		at(middle+d.CapWidth/2, d.CapThickness), at(middle-d.CapWidth/2, d.CapThickness))
	peg := -min(d.InwaleDepth, d.OutwaleDepth) / 2
	area(draw.Ground, draw.Ink, "", at(0, peg-j.PegStock/2), at(outer, peg-j.PegStock/2), at(outer, peg+j.PegStock/2),
		at(0, peg+j.PegStock/2))
	into := -0.45 * d.InwaleDepth
	area(draw.Ground, draw.Ink, "", at(inwale/2-j.PegStock/2, into), at(inwale/2+j.PegStock/2, into),
		at(inwale/2+j.PegStock/2, d.CapThickness), at(inwale/2-j.PegStock/2, d.CapThickness))
	hole := -deep - frame.HoleBelow
	half := d.RootWidth * frame.RootThickness / 2
	turn := []geom.Vec2{at(-half, hole), at(-half, half), at(outer+half, half), at(outer+half, hole)}
	p.Ring(draw.Root, max(2, 2*half*a.Scale/p.Weight), a.Place(turn))
	p.detailTitle(room, "The gunwale, cut across amidships")
	length := func(v float64) string { return units.SmallLength.Format(v, p.View.System) }
	thick := func(v float64) string { return units.Thickness.Format(v, p.View.System) }
	by := func(wide, high float64) string { return length(wide) + " by " + length(high) }
	p.callouts(a, room, []callout{
		{"cap", "cap " + by(d.CapWidth, d.CapThickness), at(middle-d.CapWidth/2, d.CapThickness/2), true},
		{"peg of the cap", "peg of the cap, " + length(j.PegStock) + " square", at(inwale/2, into/2), true},
		{"inwale", "inwale " + by(d.InwaleThickness, d.InwaleDepth), at(0, -0.6*d.InwaleDepth), true},
		{"bevel of the inwale", "bevel " + length(j.Bevel) + ", at 45°", at(inwale-j.Bevel/2, -d.InwaleDepth+j.Bevel/2), true},
		{"rib", "rib " + length(rib.Thickness) + ", its tip " + length(d.RibTuck) + " down",
			at(face(-low+0.004)-rib.Thickness, -low+0.01), true},
		{"root of the lacing", "root " + length(d.RootWidth) + " wide, turns a hole: " +
			units.Count.Format(float64(d.Passes), p.View.System),
			at(outer+half, -0.15*deep), false},
		{"peg", "peg " + length(j.PegStock) + " square", at(outer, peg), false},
		{"outwale", "outwale " + by(d.OutwaleThickness, d.OutwaleDepth), at(outer, -0.85*d.OutwaleDepth), false},
		{"hole for the root", "hole " + length(frame.HoleBelow) + " under", at(bark[1], hole), false},
		{"bark", "bark " + thick(d.BarkThickness), at(bark[1]+out(-deep-0.015), -deep-0.015), false},
		{"sheathing", "sheathing " + thick(d.SheathingThickness), at(bark[0]+out(-low+0.004)-d.SheathingThickness/2, -low+0.004), false},
	})
	p.ScaleBar(draw.Point{X: a.At(middle, 0).X, Y: min(room.Bottom-1.2*p.Letter, a.At(0, -low).Y+1.6*p.Letter)}, a.Scale)
}

// sideLean is how far in the side goes for each metre down under the rails amidships.
func sideLean(c core.Canoe) float64 {
	s := c.Hull.Section(0)
	girth := s.HalfGirth()
	top, under := s.At(girth), s.At(max(0, girth-2*gunwaleBelow))
	if top.Y-under.Y < 1e-6 {
		return 0
	}
	return math.Max(-1, math.Min(1, (top.X-under.X)/(top.Y-under.Y)))
}
