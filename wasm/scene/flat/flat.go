package flat

import (
	"math"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/bark"
	"barkwright/core/draw"
	"barkwright/core/geom"
	"barkwright/wasm/scene"
)

// Draw draws the bark laid flat, to scale, with everything to be marked on it.
func Draw(c core.Canoe, v scene.View, size draw.Size) draw.List {
	if v.Only == scene.BySheet {
		return Sheets(c, v, size)
	}
	p := pen{Pen: scene.NewPen(v, size)}
	p.List.Title, p.List.Description = "Bark laid flat", describe(c, v)
	p.laid(c)
	return p.Done()
}

func (p *pen) laid(c core.Canoe) {
	f := p.View.Flat
	if !p.ReadyFlat(f) {
		return
	}
	p.layRepairs(c)
	l := p.flatLayout(c)
	a := l.sheet
	p.sheetsUnder(c, a)
	for _, piece := range f.Pieces() {
		p.flatPiece(c, piece, a)
	}
	p.stretchHatch(c, a)
	for _, piece := range f.Pieces() {
		p.flatEdges(c, piece, a)
	}
	p.frameOver(c, a)
	p.heldOver(a)
	p.Dashed(draw.Faint, scene.HairWidth, scene.CentreDash, a.At(-f.Length/2, 0), a.At(f.Length/2, 0))
	p.jointsOver(c, a)
	p.stripsOver(c, a)
	p.flatGores(c, a)
	p.repairsOver(a)
	p.flatTitle(l)
	switch p.View.Layer {
	case scene.Measures:
		p.flatLabels(c, l)
	case scene.Names:
		p.names(c, l)
	}
	p.stretchLegend(c, l)
	p.ScaleBar(a.At(0.3*f.Length, 0), a.Scale)
}

func (p *pen) flatPiece(c core.Canoe, piece *bark.Piece, a scene.Plate) {
	for _, q := range scene.Quarters {
		if piece.Panel < 0 {
			points := a.InQuarter(q, 0, scene.Smooth(piece.Outline()))
			p.Fill(draw.Bark, points)
			p.Surface(answer.BarkPart, points)
			continue
		}
		for _, part := range panelParts(c, piece, q) {
			points := a.InQuarter(q, part.out, scene.Between(part.low, part.high))
			p.Fill(draw.Bark, points)
			p.keepOffPanel(piece, part, q, a)
			p.Part(answer.PanelPart(piece.Panel), true, points)
		}
	}
}

// cutLines returns the edges of an outline that are not its mirror lines.
func cutLines(outline []geom.Vec2) [][]geom.Vec2 {
	mirror := func(i int) bool {
		a, b := outline[i], outline[(i+1)%len(outline)]
		return max(math.Abs(a.X), math.Abs(b.X)) < scene.OnAxis || max(math.Abs(a.Y), math.Abs(b.Y)) < scene.OnAxis
	}
	// Begin after a mirror line, so that no edge is broken in two.
	n, first := len(outline), 0
	for i := range n {
		if mirror(i) && !mirror((i+1)%n) {
			first = (i + 1) % n
			break
		}
	}
	var lines [][]geom.Vec2
	open := false
	for k := range n {
		i := (first + k) % n
		if mirror(i) {
			open = false
			continue
		}
		if !open {
			lines = append(lines, []geom.Vec2{outline[i]})
			open = true
		}
		lines[len(lines)-1] = append(lines[len(lines)-1], outline[(i+1)%n])
	}
	return lines
}

// flatEdges draws where a piece is cut and, outside its top edge, the bark left to trim.
func (p *pen) flatEdges(c core.Canoe, piece *bark.Piece, a scene.Plate) {
	if piece.Panel >= 0 {
		p.panelEdges(c, piece, a)
		return
	}
	lines := cutLines(piece.Outline())
	for i := range lines {
		lines[i] = scene.Smooth(lines[i])
	}
	trim := c.Design.GunwaleTurn
	var outside [][]geom.Vec2
	if trim > 0 && len(c.Bark.Panels) == 0 {
		for _, run := range piece.Row(piece.Rows - 1) {
			outside = append(outside, scene.Smooth(geom.Offset(run, trim)))
		}
	}
	for _, q := range scene.Quarters {
		for _, line := range outside {
			p.Dashed(draw.Seam, scene.FineWidth, scene.ShortDash, a.InQuarter(q, 0, line)...)
		}
		for _, line := range lines {
			p.Line(draw.Ink, p.Outline(a), a.InQuarter(q, 0, line)...)
		}
	}
}

// frameOver is the building frame's outline where it is set on the bark.
func (p *pen) frameOver(c core.Canoe, a scene.Plate) {
	outer := scene.Mirrored(scene.Curve(c.Hull.FrameHalfBreadth, c.Hull.FrameEnd()))
	p.Dashed(draw.Frame, scene.TimberWidth, scene.LongDash, a.Place(outer)...)
	p.Dashed(draw.Frame, scene.TimberWidth, scene.LongDash, a.Place(scene.Flipped(outer))...)
}

// flatGores makes every opening a part that can be touched. Its width stands beside its
// edge on the port side.
func (p *pen) flatGores(c core.Canoe, a scene.Plate) {
	f := p.View.Flat
	n := len(f.Gores)
	for i, g := range f.Gores {
		if len(g.After) == 0 {
			continue
		}
		name := scene.GoreName(i, n)
		opening := append([]geom.Vec2(nil), g.After...)
		for k := len(g.Fore) - 1; k >= 0; k-- {
			opening = append(opening, g.Fore[k])
		}
		for _, side := range [2]float64{1, -1} {
			points := a.InQuarter([2]float64{1, side}, 0, opening)
			if g.State == bark.GoreLetIn {
				p.Hatch(draw.Warn, 3, scene.FineWidth, math.Pi/4, points)
			}
			p.Part(name, true, points)
		}
	}
	if p.View.Layer != scene.Measures {
		return
	}
	// The highest labels come first: the lower ones then stand on the lines that lead to
	// those.
	tiers := p.flatLayout(c).tiers
	for tier := tiers - 1; tier >= 0; tier-- {
		for i, g := range f.Gores {
			if i%tiers == tier && len(g.After) > 0 {
				p.goreLabel(c, i, a.At(g.After[0].X, g.After[0].Y),
					a.Place([]geom.Vec2{g.After[len(g.After)-1], g.Fore[len(g.Fore)-1]}))
			}
		}
	}
	if p.roomy(a) {
		p.slashes(a)
	}
	p.goreRuns(c)
}

// sheetsLaid returns the sheets on the bed, or none until it is known how they lie.
func sheetsLaid(c core.Canoe) []bark.Laid {
	if c.Skin == nil {
		return nil
	}
	return c.Bark.Bed
}

// sheetsUnder draws the edges of the sheets that the bark is cut from.
func (p *pen) sheetsUnder(c core.Canoe, a scene.Plate) {
	for _, s := range sheetsLaid(c) {
		x, half := (s.Aft+s.Bow)/2, (s.Bow-s.Aft)/2
		points := a.Place(scene.Rect(x, half, -s.Width/2, s.Width/2))
		p.Fill(draw.Ground, points)
		p.List.Add(draw.Stroke{Role: draw.Seam, Points: points, Width: scene.FineWidth * p.Weight,
			Dash: scene.SheetDash, Closed: true})
	}
}

// jointsOver draws the forward edges of the sheets that lap under the ones ahead of
// them.
func (p *pen) jointsOver(c core.Canoe, a scene.Plate) {
	joint := func(i int, points ...draw.Point) {
		p.Dashed(draw.Seam, scene.TimberWidth, scene.SheetDash, points...)
		p.Part(answer.JointPart(i), false, points)
	}
	for i, s := range sheetsLaid(c) {
		if i == 0 {
			continue
		}
		if inner := p.innerEdge(math.Abs(s.Bow)); inner > 0 {
			// Past the heel the bark is in two horns with open ground between.
			joint(i-1, a.At(s.Bow, -s.Width/2), a.At(s.Bow, -inner))
			joint(i-1, a.At(s.Bow, inner), a.At(s.Bow, s.Width/2))
			continue
		}
		joint(i-1, a.At(s.Bow, -s.Width/2), a.At(s.Bow, s.Width/2))
	}
}

// innerEdge is how far from the centre line the bark begins, so far from amidships. It is 0
// as far as the heel.
func (p *pen) innerEdge(x float64) float64 { return rowAt(p.View.Flat, 0, x) }

// rowAt is how far out a row of the sheet's grid is at x from amidships, or 0 past its end.
func rowAt(f *bark.Flat, row int, x float64) float64 {
	for _, run := range f.Sheet.Row(row) {
		for i := 1; i < len(run); i++ {
			if from, to := run[i-1], run[i]; from.X <= x && x <= to.X && to.X > from.X {
				return from.Lerp(to, (x-from.X)/(to.X-from.X)).Y
			}
		}
	}
	return 0
}
