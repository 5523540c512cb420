package scene

import (
	"math"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/bark"
	"barkwright/core/geom"
)

// flatLaid draws the bark laid flat, to scale, with everything to be marked on it.
func (p *pen) flatLaid(c core.Canoe) {
	f := p.view.Flat
	if !p.readyFlat(f) {
		return
	}
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
	p.dashed(Faint, hairWidth, centreDash, a.at(-f.Length/2, 0), a.at(f.Length/2, 0))
	p.jointsOver(c, a)
	p.stripsOver(c, a)
	p.flatGores(c, a)
	p.flatLabels(c, l)
	p.stretchLegend(c, l)
}

// readyFlat tells whether there is a flat sheet to be drawn, and says why not.
func (p *pen) readyFlat(f *bark.Flat) bool {
	text := "The bark is being laid flat."
	if f != nil {
		if f.State == geom.Converged || f.State == geom.NotConverged {
			return true
		}
		text = "This bark does not lie flat: " + f.State.String() + "."
	}
	p.say(rankMain, text, Ink, Paper, spot{Point{p.list.Width / 2, p.list.Height / 2}, Middle})
	return false
}

// inQuarter puts points of the forward port quarter in one of the four, out from
// the centre line by out where they are a panel's.
func (a plate) inQuarter(q [2]float64, out float64, points []geom.Vec2) []Point {
	placed := make([]Point, len(points))
	for i, v := range points {
		placed[i] = a.at(q[0]*v.X, q[1]*(v.Y+out))
	}
	return placed
}

func (p *pen) flatPiece(c core.Canoe, piece *bark.Piece, a plate) {
	for _, q := range quarters {
		if piece.Panel < 0 {
			p.fill(Bark, a.inQuarter(q, 0, piece.Outline()))
			continue
		}
		for _, part := range panelParts(c, piece, q) {
			points := a.inQuarter(q, part.out, between(part.low, part.high))
			p.fill(Bark, points)
			p.keepOff(boxOf(points))
			p.part(answer.PanelPart(piece.Panel), true, points)
		}
	}
}

// onAxis is how near to a centre line a point lies that is joined to its mirror
// image, m.
const onAxis = 1e-9

// cutLines are the edges of a piece that are not its mirror lines.
func cutLines(piece *bark.Piece) [][]geom.Vec2 {
	outline := piece.Outline()
	mirror := func(i int) bool {
		a, b := outline[i], outline[(i+1)%len(outline)]
		return math.Abs(a.X) < onAxis && math.Abs(b.X) < onAxis || math.Abs(a.Y) < onAxis && math.Abs(b.Y) < onAxis
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

// flatEdges draws where a piece is cut, and the bark left to trim outside its top
// edge.
func (p *pen) flatEdges(c core.Canoe, piece *bark.Piece, a plate) {
	if piece.Panel >= 0 {
		p.panelEdges(c, piece, a)
		return
	}
	lines := cutLines(piece)
	trim := c.Design.GunwaleTurn
	var outside [][]geom.Vec2
	if trim > 0 && len(c.Bark.Panels) == 0 {
		for _, run := range piece.Row(piece.Rows - 1) {
			outside = append(outside, offset(run, trim))
		}
	}
	for _, q := range quarters {
		for _, line := range outside {
			p.dashed(Seam, fineWidth, shortDash, a.inQuarter(q, 0, line)...)
		}
		for _, line := range lines {
			p.line(Ink, p.outline(a), a.inQuarter(q, 0, line)...)
		}
	}
}

// offset moves a line that runs forward out to port of itself.
func offset(line []geom.Vec2, by float64) []geom.Vec2 {
	out := make([]geom.Vec2, len(line))
	for i, q := range line {
		along := line[min(i+1, len(line)-1)].Sub(line[max(i-1, 0)])
		out[i] = q.Add(along.Unit().Left().Scale(by))
	}
	return out
}

// frameOver is the building frame's outline where it is set on the bark.
func (p *pen) frameOver(c core.Canoe, a plate) {
	outer := mirrored(curve(c.Hull.FrameHalfBreadth, c.Hull.FrameEnd()))
	p.dashed(Frame, timberWidth, longDash, a.place(outer)...)
	p.dashed(Frame, timberWidth, longDash, a.place(flipped(outer))...)
}

// flatGores makes every opening a part that can be touched, with its width beside
// its edge on the port side.
func (p *pen) flatGores(c core.Canoe, a plate) {
	f := p.view.Flat
	n := len(f.Gores)
	for i, g := range f.Gores {
		if len(g.After) == 0 {
			continue
		}
		name := goreName(i, n)
		opening := append([]geom.Vec2(nil), g.After...)
		for k := len(g.Fore) - 1; k >= 0; k-- {
			opening = append(opening, g.Fore[k])
		}
		for _, side := range [2]float64{1, -1} {
			points := a.inQuarter([2]float64{1, side}, 0, opening)
			if g.State == bark.GoreLetIn {
				p.list.Add(Hatch{Role: Warn, Points: points, Spacing: 3 * p.weight, Width: fineWidth * p.weight, Angle: math.Pi / 4})
			}
			p.part(name, true, points)
		}
	}
	// The highest labels first, so that the lower ones stand on the lines to those.
	tiers := p.flatLayout(c).tiers
	for tier := tiers - 1; tier >= 0; tier-- {
		for i, g := range f.Gores {
			if i%tiers == tier && len(g.After) > 0 {
				p.goreLabel(c, i, a.at(g.After[0].X, g.After[0].Y), a.place([]geom.Vec2{g.After[len(g.After)-1], g.Fore[len(g.Fore)-1]}))
			}
		}
	}
}

// sheetsLaid are the sheets on the bed, once it is known how they lie.
func sheetsLaid(c core.Canoe) []bark.Laid {
	if c.Skin == nil {
		return nil
	}
	return c.Bark.Bed
}

// sheetsUnder are the edges of the sheets that the bark is cut from.
func (p *pen) sheetsUnder(c core.Canoe, a plate) {
	for _, s := range sheetsLaid(c) {
		x, half := (s.Aft+s.Bow)/2, (s.Bow-s.Aft)/2
		points := a.place(rect(x, half, -s.Width/2, s.Width/2))
		p.fill(Ground, points)
		p.list.Add(Stroke{Role: Seam, Points: points, Width: fineWidth * p.weight, Dash: []float64{7, 2, 2, 2}, Closed: true})
	}
}

// jointsOver are the forward edges of the sheets that lap under the ones before them.
func (p *pen) jointsOver(c core.Canoe, a plate) {
	for i, s := range sheetsLaid(c) {
		if i > 0 {
			p.dashed(Seam, timberWidth, []float64{7, 2, 2, 2}, a.at(s.Bow, -s.Width/2), a.at(s.Bow, s.Width/2))
		}
	}
}
