package answer

import (
	"barkwright/core/stage"
	"math"

	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/geom"
	"barkwright/core/units"
)

func goresTable(c core.Canoe) Table {
	t := Table{
		Key: "gores", Title: "Gores", Home: stage.Bark, Open: true, OnPaper: true,
		Note: "Each side, from the middle forward; the same aft. Slash first, straight from the edge in to the foot, " +
			"and turn the sides up; then about so much rides over at the edge. Trim it after turning up and fairing, " +
			"edge to edge or to a lap (" + fromAdney +
			", pp. 41, 46). Where under " + units.SmallLength.Both(bark.LeastGore) + " rides " +
			"over it stays a slit. Where a sheet joint stands, the joint takes the gore's place. Depth is along the " +
			"finished hull; what rides over, its angle and the two edges are on the bark laid flat.",
	}
	if c.Bark.Uneven() {
		t.Note += " The sheets on the bed differ in width. The slashes are given to the " +
			"edge of the narrowest: in a wider " +
			"sheet go on to its own edge, where more rides over than is said here."
	}
	var gores []goreRow
	for n, g := range c.Bark.Gores {
		if g.X >= 0 {
			gores = append(gores, newGoreRow(c, n))
		}
	}
	flat := func(of func(*bark.FlatGore) Cell) func(*goreRow) Cell {
		return func(g *goreRow) Cell { return when(g.opens, of(&g.flat)) }
	}
	return fill(t, refs(gores),
		ordinal[*goreRow]("gore", "Gore", 0),
		col("run", "Along the gunwale", units.Length, func(g *goreRow) Cell { return num(g.Run) }),
		col("station", "From amidships", units.Length, func(g *goreRow) Cell { return num(g.X) }).screenOnly(),
		col("foot", "Foot from the centre line", units.Length,
			func(g *goreRow) Cell { return num(g.FootGirth) }),
		col("depth", "Slash, how far in", units.Length, func(g *goreRow) Cell { return num(g.Depth) }),
		col("width", "Expect to ride over", units.SmallLength,
			flat(func(g *bark.FlatGore) Cell { return num(g.Width) })),
		col("angle", "Angle", units.Angle, flat(func(g *bark.FlatGore) Cell { return num(g.Angle) })).screenOnly(),
		col("after", "After edge", units.Length,
			flat(func(g *bark.FlatGore) Cell { return num(g.AfterLength) })).screenOnly(),
		col("fore", "Fore edge", units.Length,
			flat(func(g *bark.FlatGore) Cell { return num(g.ForeLength) })).screenOnly(),
		col("edges", "Edges", units.Words, flat(func(g *bark.FlatGore) Cell {
			return when(g.Unequal,
				words("unequal"))
		})),
		text("state", "State", func(g *goreRow) string { return g.state }),
	).parts(GorePart).orNone("none")
}

// goreRow is a gore as planned, and as cut on the bark laid flat where it opens there.
type goreRow struct {
	bark.Gore
	flat  bark.FlatGore
	opens bool
	state string
}

func newGoreRow(c core.Canoe, n int) goreRow {
	r := goreRow{Gore: c.Bark.Gores[n]}
	state := r.State
	if s := c.Skin; s != nil && s.Flat.State == geom.Converged {
		r.flat = s.Flat.Gores[n]
		state = r.flat.State
		r.opens = state == bark.GoreCut || state == bark.GoreLetIn
	}
	r.state = state.String()
	if ends := jointsOn(c.Bark, r.Gore); ends != "" {
		r.state += "; " + ends
	}
	return r
}

// samePlace is within what two places along the bark are one, m: they are found to under a micrometre.
const samePlace = 1e-6

// jointsOn says where a joint of the bed takes the place of a gore or of its mate aft.
func jointsOn(l bark.Layout, g bark.Gore) string {
	fore, aft := false, false
	for _, j := range l.Joints {
		if j.OnGore {
			fore = fore || math.Abs(j.Along-g.Along) < samePlace
			aft = aft || math.Abs(j.Along+g.Along) < samePlace
		}
	}
	switch {
	case fore && aft:
		return "a joint takes its place"
	case fore:
		return "a joint takes its place forward"
	case aft:
		return "a joint takes its place aft"
	}
	return ""
}
