package flat

import (
	"math"

	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/draw"
	"barkwright/core/geom"
	"barkwright/wasm/scene"
)

// lineKinds are the kinds of lines on the sheet.
var lineKinds = []scene.LineKind{
	{Name: "edge to cut", Role: draw.Ink, Width: scene.OutlineWidth},
	{Name: "bark to trim", Role: draw.Seam, Width: scene.FineWidth, Dash: scene.ShortDash},
	{Name: "edge of a sheet, joint", Role: draw.Seam, Width: scene.TimberWidth, Dash: scene.SheetDash},
	{Name: "building frame", Role: draw.Frame, Width: scene.TimberWidth, Dash: scene.LongDash},
	{Name: "centre line", Role: draw.Faint, Width: scene.HairWidth, Dash: scene.CentreDash},
}

// names letters the parts round the sheet, with a line to each.
func (p *pen) names(c core.Canoe, l flatLayout) {
	if l.kinds {
		p.LineKinds(lineKinds...)
	}
	reach := flatReach(c, p.View.Flat)
	p.Call(l.sheet, append(namesFlat(c, p.View.Flat), p.namesOfPanel(c)...), reach, -reach)
}

func namesFlat(c core.Canoe, f *bark.Flat) []scene.Called {
	h := c.Hull
	at := func(x, y float64) geom.Vec2 { return geom.Vec2{X: x, Y: y} }
	x := func(share float64) float64 { return share * h.FrameEnd() }
	top := f.Sheet.Rows - 1
	heel := c.Design.HeelX()
	out := []scene.Called{
		{Name: "bark", At: at(x(-0.35), 0.4*h.FrameHalfBreadth(0))},
		{Name: "building frame", At: at(x(-0.5), -h.FrameHalfBreadth(x(0.5)))},
		{Name: "centre line", At: at(x(0.6), 0)},
		{Name: "heel", At: at(-heel, 0)},
		{Name: "edge of the bark", At: at(x(-0.7), -rowAt(f, top, x(0.7)))},
	}
	if end := outermost(f.Sheet.Outline()); end.X > heel {
		middle := (heel + end.X) / 2
		out = append(out, scene.Called{Name: "end of the bark", At: end},
			scene.Called{Name: "edges sewn together", At: at(-middle, -rowAt(f, 0, middle))})
	}
	if trim := c.Design.GunwaleTurn; trim > 0 && len(c.Bark.Panels) == 0 {
		out = append(out, scene.Called{Name: "bark to trim", At: at(x(-0.9), rowAt(f, top, x(0.9))+trim/2)})
	}
	return append(append(out, namesOfGores(f)...), namesOfSheets(c)...)
}

// namesOfGores are the parts of the first two gores that are cut forward of the middle.
func namesOfGores(f *bark.Flat) []scene.Called {
	var out []scene.Called
	for _, g := range f.Gores {
		if g.X <= 0 || g.State != bark.GoreCut || len(g.After) < 2 || len(g.Fore) < 2 {
			continue
		}
		tip := g.After[len(g.After)-1].Lerp(g.Fore[len(g.Fore)-1], 0.5)
		if out == nil {
			out = append(out, scene.Called{Name: "gore", At: g.After[0].Lerp(tip, 0.7)})
			continue
		}
		return append(out, scene.Called{Name: "foot of a gore", At: geom.Vec2{X: g.After[0].X, Y: -g.After[0].Y}})
	}
	return out
}

// namesOfSheets are the parts of the sheets on the bed and of the pieces beside them.
func namesOfSheets(c core.Canoe) []scene.Called {
	var out []scene.Called
	for i, s := range sheetsLaid(c) {
		if i == 0 {
			along := s.Aft + 0.15*(s.Bow-s.Aft)
			out = append(out, scene.Called{Name: "edge of a sheet", At: geom.Vec2{X: along, Y: s.Width / 2}})
			continue
		}
		out = append(out, scene.Called{Name: "joint of two sheets", At: geom.Vec2{X: s.Bow, Y: -0.3 * s.Width}})
		break
	}
	return out
}

// namesOfPanel are the parts of the first side panel that is sewn on.
func (p *pen) namesOfPanel(c core.Canoe) []scene.Called {
	for _, piece := range p.View.Flat.Pieces() {
		if piece.Panel < 0 {
			continue
		}
		for _, part := range panelParts(c, piece, [2]float64{1, 1}) {
			if part.out == 0 {
				continue
			}
			i := 7 * len(part.low) / 10
			low, high := part.low[i], part.high[min(i, len(part.high)-1)]
			off := geom.Vec2{Y: part.out}
			seam := part.low[len(part.low)/4].Add(off)
			return []scene.Called{{Name: "side panel", At: low.Lerp(high, 0.6).Add(off)},
				{Name: "edge sewn to the sheet", At: geom.Vec2{X: seam.X, Y: -seam.Y}}}
		}
	}
	return nil
}

// outermost is the point of an outline that is farthest forward.
func outermost(outline []geom.Vec2) geom.Vec2 {
	best := geom.Vec2{X: math.Inf(-1)}
	for _, q := range outline {
		if q.X > best.X {
			best = q
		}
	}
	return best
}
