package answer

import (
	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/geom"
	"barkwright/core/known"
	"barkwright/core/stage"
	"barkwright/core/units"
)

const (
	fromFlattening = "the finished skin laid flat with the least stretch, after the energy of L. Liu and others, A " +
		"Local/Global Approach to Mesh Parameterization, Computer Graphics Forum 27, 2008"
	fromNoLimit = "estimate: no published strain limit of birch bark was found; the limit is what you set"
	// notYet stands for a number that follows when the slider rests.
	notYet = "being worked out"
)

// NotYet tells whether a number is still being worked out.
func (n Number) NotYet() bool { return n.awaited }

// later says that a number follows when the slider rests.
func (n *Number) later() *Number {
	n = n.absent(notYet)
	n.awaited = true
	return n
}

// skinNumbers come with the bark laid flat; without it they are not there yet.
func skinNumbers(c core.Canoe) []*Number {
	s := c.Skin
	if s == nil {
		s = &core.Skin{}
	}
	f := s.Flat
	laid := func(key, label string, k units.Kind, v float64, how func(units.System) string) *Number {
		n := number(stage.Bark, key, label, k, v, fromFlattening, how)
		switch {
		case c.Skin == nil:
			return n.later()
		case f.State != geom.Converged:
			return n.absent("the bark does not lie flat: " + f.State.String())
		}
		return n
	}
	wide, cut, letIn := 0.0, 0, 0
	for _, g := range f.Gores {
		switch g.State {
		case bark.GoreCut:
			wide, cut = wide+g.Width, cut+1
		case bark.GoreLetIn:
			letIn++
		}
	}
	gores := laid("bark.goresCut", "Gores that are cut, each side", units.Count, float64(cut),
		working("# asked for; the table says why where there is none", count(len(f.Gores)))).short("Gores cut")
	if letIn > 0 && !gores.Absent {
		gores = gores.in(units.Count.Format(float64(cut), units.Metric) + " cut, bark to be let in at " +
			units.Count.Format(float64(letIn), units.Metric))
	}
	return []*Number{
		gores,
		laid("bark.stretch", "Stretch left in the bark", units.Strain, f.P95,
			working("with # cut each side, over 95 % of the skin the bark stretches or gathers less than this; "+
				"the limit you set is #", many(cut, "gore", "gores"), strain(c.Design.StretchLimit))).by(known.Estimate),
		laid("bark.stretchMean", "Stretch left, on the whole", units.Strain, f.RMS,
			working("the root of the mean square over all of the skin, along and across, with # cut each side",
				many(cut, "gore", "gores"))).by(known.Estimate),
		laid("bark.stretchAt", "Where the bark is stretched most, from amidships", units.Length, f.Where.X,
			working("# along the bed and # out from its centre line, in all four quarters alike", length(f.Where.X),
				length(f.Where.Y))),
		laid("bark.flatLength", "Bark on the bed, length", units.Length, f.Length,
			working("laid flat from tip to tip, for a boat # overall", length(c.Design.Length))),
		laid("bark.flatOver", "Bark on the bed, longer than the boat by", units.Length, f.Length-c.Design.Length,
			working("# on the bed less # overall", length(f.Length), length(c.Design.Length))),
		laid("bark.goresWidth", "Total width of the gores on one side", units.SmallLength, wide,
			working("#, each measured at the edge", many(cut, "opening", "openings"))),
		fewestNumber(c, s),
	}
}

func fewestNumber(c core.Canoe, s *core.Skin) *Number {
	limit := c.Design.StretchLimit
	least, ok := bark.Fewest(s.Curve, limit)
	n := number(stage.Bark, "bark.fewestGores", "Fewest gores a side within the limit", units.Count, float64(least),
		fromNoLimit,
		working("standing evenly between the end thwarts, the first number that leaves # or less",
			strain(limit))).by(known.Estimate)
	switch {
	case len(s.Curve) == 0:
		return n.later()
	case !ok:
		n.Working = working("none of 0 to # leaves # or less", count(len(s.Curve)-1), strain(limit))
		return n.absent("more than " + units.Count.Format(float64(len(s.Curve)-1), units.Metric))
	}
	return n
}

// stretchTable is the curve of stretch against number of gores.
func stretchTable(c core.Canoe) Table {
	t := Table{
		Key: "stretch", Title: "Stretch left, by number of gores", Home: stage.Bark,
		Note: "Gores each side standing evenly between the end thwarts; the rule this page starts with puts them elsewhere. " +
			"Good to about a tenth of a percent. The root mean square is of the stretch along and across together " +
			"and the few worst places weigh most in it, so it can be the larger of the two. No published strain " +
			"limit of birch bark was found: the limit is yours to set.",
	}
	var curve []bark.CurvePoint
	if c.Skin != nil {
		curve = c.Skin.Curve
	}
	flat := func(p *bark.CurvePoint) bool { return p.State == geom.Converged }
	limit := c.Design.StretchLimit
	return fill(t, refs(curve),
		col("gores", "Gores each side", units.Count, func(p *bark.CurvePoint) Cell { return whole(p.Gores) }),
		col("p95", "Stretch, over 95 %", units.Strain, func(p *bark.CurvePoint) Cell {
			return when(flat(p),
				num(p.P95))
		}),
		col("rms", "Root mean square", units.Strain, func(p *bark.CurvePoint) Cell { return when(flat(p), num(p.RMS)) }),
		text("limit", "Against the limit", func(p *bark.CurvePoint) string {
			switch {
			case !flat(p):
				return p.State.String()
			case bark.WithinLimit(p.P95, limit):
				return "within " + units.Strain.Format(limit, units.Metric)
			}
			return "over " + units.Strain.Format(limit, units.Metric)
		}),
	).orNone(notYet)
}

// StretchWords compares a stretch with the limit.
func StretchWords(stretch, limit float64, s units.System) string {
	text := units.Strain.Format(stretch, s) + " or less over 95 % of the skin, "
	if bark.WithinLimit(stretch, limit) {
		return text + "within the limit of " + units.Strain.Format(limit, s)
	}
	return text + "over the limit of " + units.Strain.Format(limit, s)
}
