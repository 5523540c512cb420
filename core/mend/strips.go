package mend

import (
	"cmp"
	"math"
	"slices"

	"barkwright/core/bark"
	"barkwright/core/geom"
	"barkwright/core/units"
)

// span is the part of a quarter's side from one distance from amidships to another, m, that a strip covers, or
// with no name one that is cut with a sheet on the bed.
type span struct {
	strip    string
	from, to float64
}

// nearEnd is within what a strip that ends short of its panel goes on to the panel's end, m: the bark laid flat
// for the picture is a little longer than what the strips were measured by.
const nearEnd = 1 * units.Inch

// stripSpans are those of a quarter on a panel that ends so far from amidships, in order, with no gap.
func stripSpans(l *bark.Layout, quarter [2]float64, end float64) []span {
	strips := l.Port
	if quarter[1] < 0 {
		strips = l.Star
	}
	var own []span
	for _, s := range strips {
		from, to := l.Reach(s)
		if quarter[0] < 0 {
			from, to = -to, -from
		}
		if from <= 0 {
			from = math.Inf(-1)
		}
		if to >= end-nearEnd {
			to = math.Inf(1)
		}
		if to > 0 {
			own = append(own, span{s.Name, from, to})
		}
	}
	slices.SortFunc(own, func(a, b span) int { return cmp.Compare(a.from, b.from) })
	var out []span
	last := math.Inf(-1)
	for _, s := range append(own, span{"", math.Inf(1), math.Inf(1)}) {
		if s.from > last {
			out = append(out, span{"", last, s.from})
		}
		if s.strip != "" {
			out = append(out, s)
		}
		last = s.to
	}
	return out
}

// onStrips parts what lies on a piece of the flat bark by the strips that its panel is cut from, and says on
// which each part lies. A rib's line lies on the one where its middle is.
func onStrips(l *bark.Layout, p *bark.Piece, whole Laid) []Laid {
	if p.Panel < 0 {
		return []Laid{whole}
	}
	edge := p.Row(0)[0]
	middle := (whole.Outline[0].X + whole.Outline[len(whole.Outline)-1].X) / 2
	var out []Laid
	for _, s := range stripSpans(l, whole.Quarter, edge[len(edge)-1].X) {
		part := whole
		part.Strip = s.strip
		switch {
		case whole.Closed:
			part.Outline = band(whole.Outline, s.from, s.to)
		case middle < s.from || middle >= s.to:
			continue
		}
		if len(part.Outline) > 0 {
			out = append(out, part)
		}
	}
	return out
}

// leastPart is the area that counts as none, m2: rounding leaves such at a line along an edge.
const leastPart = 1e-9

// band is what of a closed outline lies between two lines across; nil where that has no area.
func band(outline []geom.Vec2, from, to float64) []geom.Vec2 {
	out := beyond(beyond(outline, from, 1), to, -1)
	if math.Abs(geom.SignedArea(out)) < leastPart {
		return nil
	}
	return out
}

// beyond is what of a closed outline lies past a line across, on the side of the sign (I. E. Sutherland and
// G. W. Hodgman, 1974).
func beyond(outline []geom.Vec2, at, sign float64) []geom.Vec2 {
	if math.IsInf(at, 0) {
		return outline
	}
	var out []geom.Vec2
	for i, q := range outline {
		last := outline[(i+len(outline)-1)%len(outline)]
		was, is := sign*(last.X-at), sign*(q.X-at)
		if was < 0 != (is < 0) {
			cross := last.Lerp(q, was/(was-is))
			out = append(out, geom.Vec2{X: at, Y: cross.Y})
		}
		if is >= 0 {
			out = append(out, q)
		}
	}
	return out
}
