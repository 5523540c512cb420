package bark

import (
	"math"

	"barkwright/core/geom"
	"barkwright/core/hull"
)

// sideBand is where a column of the side crosses what lies beside the sheet, all panels of the
// quarter laid in one plane.
type sideBand struct {
	along float64 // of the column's foot on the flat bark, m forward of amidships
	// edge tells that no panel is there: the sheet reaches as far as the finished boat.
	edge bool
	band
}

// Between panels the sheet reaches the edge of the bark, and what holds the one panel to the other is the
// bark along that edge: a ribbon ribbonDepth deep, in as many pieces between two panels. So narrow,
// it lies flat without stretch.
const (
	ribbonDepth  = 0.005
	ribbonPieces = 16
)

// laySide places the panels laid flat of the forward quarter in one plane, in which the after quarter's
// are their mirror image.
func (d *demand) laySide(f *Flat) {
	for i := range f.Panels {
		p := &f.Panels[i]
		next := bandsOf(p)
		if i > 0 || p.Places[0] > 0 {
			next = d.link(f, i, next)
		}
		for c, b := range next {
			d.side = append(d.side, sideBand{d.alongOf(p.Places[c]), false, b})
		}
	}
}

// bandsOf lists a panel's columns where they lie.
func bandsOf(p *Piece) bands {
	out := make(bands, len(p.Places))
	for c := range out {
		out[c] = band{p.Points[c*p.Rows], p.Points[c*p.Rows+p.Rows-1]}
	}
	return out
}

// link moves the columns of panel i to where they lie in the plane of what comes before, and adds the
// edge of the bark in between: from the last columns of the panel before or, where there is none, from
// amidships, whose column lies across the boat.
func (d *demand) link(f *Flat, i int, next bands) bands {
	p := &f.Panels[i]
	from, places := 0.0, []float64{0}
	if i > 0 {
		last := f.Panels[i-1].Places
		from = last[len(last)-1]
		places = []float64{last[len(last)-2], from}
	}
	before := len(places)
	for k := 1; k <= ribbonPieces; k++ {
		places = append(places, from+(p.Places[0]-from)*float64(k)/ribbonPieces)
	}
	first := len(places) - 1
	ribbon := unfold(d.hull, append(places, p.Places[1]))
	if n := len(d.side); i > 0 {
		ribbon.move(matching(ribbon[0].top, ribbon[1].top, d.side[n-2].top, d.side[n-1].top))
	} else {
		before = 0
	}
	next.move(matching(next[0].top, next[1].top, ribbon[first].top, ribbon[first+1].top))
	for k := before; k < first; k++ {
		edge := ribbon[k].top
		d.side = append(d.side, sideBand{d.alongOf(places[k]), true, band{edge, edge}})
	}
	return next
}

// unfold lays the ribbon along the bark's edge flat, triangle by triangle: the first column across the
// boat, up from it.
func unfold(h *hull.Hull, places []float64) bands {
	var out bands
	var lastLow, lastTop geom.Vec3
	for i, place := range places {
		c := newColumn(h, place)
		low, top := c.At(max(0, c.girth-ribbonDepth)), c.At(c.girth)
		if i == 0 {
			out = append(out, band{seam: geom.Vec2{}, top: geom.Vec2{Y: top.Sub(low).Len()}})
		} else {
			last := out[i-1]
			at := ahead(last.seam, last.top, top.Sub(lastLow).Len(), top.Sub(lastTop).Len())
			out = append(out, band{ahead(last.seam, at, low.Sub(lastLow).Len(), low.Sub(top).Len()), at})
		}
		lastLow, lastTop = low, top
	}
	return out
}

// ahead is the point at two distances from two others, on the right of the way from the first to the second.
func ahead(a, b geom.Vec2, fromA, fromB float64) geom.Vec2 {
	way := b.Sub(a)
	length := way.Len()
	run := (fromA*fromA - fromB*fromB + length*length) / (2 * length)
	off := math.Sqrt(max(0, fromA*fromA-run*run))
	unit := way.Scale(1 / length)
	return a.Add(unit.Scale(run)).Sub(unit.Left().Scale(off))
}

// motion turns by a unit complex number and then shifts.
type motion struct{ turn, shift geom.Vec2 }

func (m motion) of(p geom.Vec2) geom.Vec2 {
	return geom.Vec2{X: m.turn.X*p.X - m.turn.Y*p.Y, Y: m.turn.X*p.Y + m.turn.Y*p.X}.Add(m.shift)
}

// matching lays the middle of a to b on that of c to d, and its direction on theirs.
func matching(a, b, c, d geom.Vec2) motion {
	from, to := b.Sub(a).Unit(), d.Sub(c).Unit()
	m := motion{turn: geom.Vec2{X: from.Dot(to), Y: from.Cross(to)}}
	m.shift = c.Lerp(d, 0.5).Sub(m.of(a.Lerp(b, 0.5)))
	return m
}

func (all bands) move(m motion) {
	for i, b := range all {
		all[i] = band{m.of(b.seam), m.of(b.top)}
	}
}

// sideBetween lists the columns of the side between two places along the flat bark, those at the places
// themselves included, from its first panel there to its last: past these a strip is only bark to trim.
func (d *demand) sideBetween(aft, bow float64) bands {
	var out bands
	panels := 0 // how many of them lie as far as the last panel
	add := func(b sideBand) {
		if len(out) == 0 && b.edge {
			return
		}
		out = append(out, b.band)
		if !b.edge {
			panels = len(out)
		}
	}
	for i := range 2*len(d.side) - 1 {
		at := d.mirrored(i)
		if i > 0 {
			last := d.mirrored(i - 1)
			for _, x := range [2]float64{aft, bow} {
				if last.along < x && x < at.along {
					add(last.toward(at, x))
				}
			}
		}
		if at.along >= aft-samePlace && at.along <= bow+samePlace {
			add(at)
		}
	}
	return out[:panels]
}

// mirrored is column i of both quarters' from aft forward, the one amidships counted once.
func (d *demand) mirrored(i int) sideBand {
	i -= len(d.side) - 1
	if i >= 0 {
		return d.side[i]
	}
	at := d.side[-i]
	at.along, at.seam.X, at.top.X = -at.along, -at.seam.X, -at.top.X
	return at
}

// toward is what lies at a place between two columns.
func (s sideBand) toward(o sideBand, along float64) sideBand {
	t := (along - s.along) / (o.along - s.along)
	return sideBand{along, s.edge || o.edge, band{s.seam.Lerp(o.seam, t), s.top.Lerp(o.top, t)}}
}
