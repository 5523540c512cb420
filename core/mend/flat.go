package mend

import (
	"math"

	"barkwright/core/bark"
	"barkwright/core/geom"
	"barkwright/core/hull"
	"barkwright/core/tally"
)

// Laid is a part of a repair on the bark laid flat. The bark is laid flat as its forward port quarter;
// Quarter says by the signs of x and y in which of the four the part lies.
type Laid struct {
	Quarter [2]float64
	// Panel is the number of the side panel it lies on, -1 for the sheet; Strip is the name of the strip that
	// the panel is cut from there, empty where it is cut with a sheet on the bed.
	Panel int
	Strip string
	// Outline is closed round a patch, its first point not repeated; open along a rib.
	Outline []geom.Vec2
	Closed  bool
	// Piece counts what hangs together, from 0: parts that meet at a centre line have the same.
	Piece int
}

// OnFlat is where a repair lies on the bark laid flat, which is cut at the gores, at the seams of side
// panels and at the butts of their strips: a part for each piece of bark it touches in each quarter.
func OnFlat(h *hull.Hull, l *bark.Layout, f *bark.Flat, r Repair) []Laid {
	var out []Laid
	along, round := spans(h, r)
	for _, q := range [4][2]float64{{1, 1}, {-1, 1}, {1, -1}, {-1, -1}} {
		from, to, fore := inHalf(along, q[0])
		low, high, port := inHalf(round, q[1])
		if !fore || !port {
			continue
		}
		place := func(run float64) float64 { return h.ColumnAtEdge(h.StationAt(min(run, h.Gunwale.Length()))) }
		region := bark.Region{From: place(from), To: place(to), Low: low, High: high}
		for _, p := range f.Pieces() {
			if r.Damage.Kind == tally.BrokenRib {
				if line := p.Upright(region.From, low, high); line != nil {
					out = append(out, onStrips(l, p, Laid{Quarter: q, Panel: p.Panel, Outline: line})...)
				}
				continue
			}
			for _, outline := range p.Lay(region) {
				out = append(out, onStrips(l, p, Laid{Quarter: q, Panel: p.Panel, Outline: outline, Closed: true})...)
			}
		}
	}
	join(out)
	return out
}

// spans are how far a repair reaches along the gunwale and round the bark from the centre line, with the
// signs of its place. A rib runs round from gunwale to gunwale.
func spans(h *hull.Hull, r Repair) (along, round [2]float64) {
	d := r.Damage
	if d.Kind == tally.BrokenRib {
		_, girth := Column(h, d.At)
		return [2]float64{d.At, d.At}, [2]float64{-girth, girth}
	}
	up := middleRound(h, r)
	return [2]float64{d.At - r.PatchAlong/2, d.At + r.PatchAlong/2}, [2]float64{up - r.PatchRound/2, up + r.PatchRound/2}
}

// inHalf is what of a span lies on one side of its origin, counted from there; none where it has no more
// than a point of it. A span that is a point lies on the side that its sign says.
func inHalf(span [2]float64, sign float64) (from, to float64, some bool) {
	if from, to = sign*span[0], sign*span[1]; from > to {
		from, to = to, from
	}
	if from == to {
		return from, to, from > 0 || from == 0 && sign > 0
	}
	from = max(0, from)
	return from, to, from < to
}

// onAxis is how near to a centre line a point of the flat bark lies on it, m.
const onAxis = 1e-9

// join counts the pieces: parts of one sheet, panel or strip are one piece where both run along the same centre
// line. Of a patch no more than one part in a quarter does.
func join(parts []Laid) {
	next := 0
	for i := range parts {
		parts[i].Piece = next
		for k := range parts[:i] {
			if parts[k].Panel == parts[i].Panel && parts[k].Strip == parts[i].Strip && meet(parts[k], parts[i]) {
				parts[i].Piece = parts[k].Piece
			}
		}
		if parts[i].Piece == next {
			next++
		}
	}
}

func meet(a, b Laid) bool {
	acrossX := a.Quarter[0] != b.Quarter[0] && a.Quarter[1] == b.Quarter[1]
	acrossY := a.Quarter[1] != b.Quarter[1] && a.Quarter[0] == b.Quarter[0]
	return acrossX && a.along(byX) && b.along(byX) || acrossY && a.along(byY) && b.along(byY)
}

func byX(q geom.Vec2) float64 { return q.X }
func byY(q geom.Vec2) float64 { return q.Y }

// along reports whether a part runs along a centre line, or for a rib ends there.
func (l Laid) along(line func(geom.Vec2) float64) bool {
	n := 0
	for _, q := range l.Outline {
		if math.Abs(line(q)) < onAxis {
			n++
		}
	}
	return n > 1 || n > 0 && !l.Closed
}
