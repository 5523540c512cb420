package bark

import (
	"math"

	"barkwright/core/geom"
	"barkwright/core/units"
)

// open reads the gores' openings off the sheet: those forward of amidships from
// its slits, the middle one from the edge that is its own mirror image, the after
// ones as mirror images.
func (f *Flat) open(gores []Gore, slits map[int]int) {
	f.Gores = make([]FlatGore, len(gores))
	for i := len(gores) - 1; i >= 0; i-- {
		g := FlatGore{Gore: gores[i]}
		slit, cut := slits[i]
		switch {
		case g.State != GoreCut:
		case g.X < 0:
			g = f.Gores[len(gores)-1-i].mirrored()
		case cut:
			s := f.Sheet.Slits()[slit]
			g.fill(f.Sheet.Flat.Gore(slit))
			g.AfterLength = f.Sheet.ColumnLengths(s.Col, s.Foot, geom.Before).Flat
			g.ForeLength = f.Sheet.ColumnLengths(s.Col, s.Foot, geom.After).Flat
		default:
			foot := f.Sheet.FootRow
			fore := f.Sheet.Column(0, foot, geom.After)
			g.fill(geom.NewGore(acrossMiddle(fore), fore, 1))
			g.ForeLength = f.Sheet.ColumnLengths(0, foot, geom.After).Flat
			g.AfterLength = g.ForeLength
		}
		g.Unequal = math.Abs(g.AfterLength-g.ForeLength) > EdgesAlike
		f.Gores[i] = g
	}
}

// LeastGore is the narrowest opening that is trimmed, 1/8 in: a slash that opens or
// laps by less stays a slit. A choice of this project.
const LeastGore = units.Inch / 8

// fill takes over an opening and says what it comes to. The width is taken square
// to the gore's middle line, so that edges of unequal length do not widen it.
func (g *FlatGore) fill(o geom.Gore) {
	g.Angle, g.Cut, g.After, g.Fore = o.Angle, o.Depth, o.Before, o.After
	foot, after, fore := o.Before[0], o.Before[len(o.Before)-1], o.After[len(o.After)-1]
	g.Width = -fore.Sub(after).Dot(after.Lerp(fore, 0.5).Sub(foot).Unit().Left())
	switch {
	case g.Width < -LeastGore:
		g.State = GoreLetIn
	case g.Width < LeastGore:
		g.State = GoreNotNeeded
	}
}

// mirrored is the same gore as far aft of amidships.
func (g FlatGore) mirrored() FlatGore {
	g.X, g.Run, g.Along = -g.X, -g.Run, -g.Along
	g.After, g.Fore = acrossMiddle(g.Fore), acrossMiddle(g.After)
	g.AfterLength, g.ForeLength = g.ForeLength, g.AfterLength
	return g
}

// acrossMiddle mirrors a line in the thwartships line amidships.
func acrossMiddle(line []geom.Vec2) []geom.Vec2 {
	out := make([]geom.Vec2, len(line))
	for i, p := range line {
		out[i] = geom.Vec2{X: -p.X, Y: p.Y}
	}
	return out
}
