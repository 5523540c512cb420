package flat

import (
	"math"
	"sort"

	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/draw"
	"barkwright/core/geom"
	"barkwright/wasm/scene"
)

// panelPart is a part of a panel laid flat in one quarter. It is either cut as strips
// and drawn off the sheet, or part of a sheet on the bed that is wide enough there.
type panelPart struct {
	from, to  float64 // m from amidships
	out       float64 // how far it is drawn off its place, m
	low, high []geom.Vec2
}

// height is how high a part is at its highest, m.
func (s panelPart) height() float64 {
	most := 0.0
	for i := range min(len(s.low), len(s.high)) {
		most = max(most, s.high[i].Sub(s.low[i]).Len())
	}
	return most
}

// panelParts returns the parts of a panel in a quarter, from amidships outward. The
// panel is measured from the narrowest sheet on the bed. Beside a wider sheet it may not
// be needed.
func panelParts(c core.Canoe, piece *bark.Piece, q [2]float64) []panelPart {
	var parts []panelPart
	for _, part := range panelSpans(c, q) {
		part.low, part.high = piece.Between(part.from, part.to)
		if last := len(part.low) - 1; last >= 0 && !scant(c, q[0]*part.low[0].X, q[0]*part.low[last].X) {
			parts = append(parts, part)
		}
	}
	return parts
}

// scant reports whether a stretch of the edge is one that no piece is cut for.
func scant(c core.Canoe, from, to float64) bool {
	for _, s := range c.Bark.Scant {
		if middle := (from + to) / 2; middle >= s.Aft && middle <= s.Bow {
			return true
		}
	}
	return false
}

// keepOffPanel keeps labels off a part of a panel. It follows the bend of the part, so
// that labels may stand beside its ends.
func (p *pen) keepOffPanel(piece *bark.Piece, part panelPart, q [2]float64, a scene.Plate) {
	const pieces = 8
	from, to := part.low[0].X, part.low[len(part.low)-1].X
	for i := range pieces {
		step := (to - from) / pieces
		if low, high := piece.Between(from+step*float64(i), from+step*float64(i+1)); len(low) > 0 {
			p.KeepOff(draw.BoxOf(a.InQuarter(q, part.out, scene.Between(low, high))))
		}
	}
}

// panelSpans are where panels of a quarter are strips and where they are not, all along.
func panelSpans(c core.Canoe, q [2]float64) []panelPart {
	end, strips := 0, c.Bark.Port
	if q[0] < 0 {
		end = 1
	}
	if q[1] < 0 {
		strips = c.Bark.Star
	}
	var spans []panelPart
	for _, s := range c.Bark.Bed {
		half := s.Halves()[end]
		if half.From >= half.To {
			continue
		}
		if s.Width <= c.Bark.SheetWidth+scene.OnAxis {
			spans = append(spans, panelPart{from: half.From, to: half.To, out: panelGap})
			continue
		}
		places := []float64{half.From, half.To}
		for _, strip := range strips {
			for _, x := range [2]float64{strip.Halves()[end].From, strip.Halves()[end].To} {
				if x > half.From && x < half.To {
					places = append(places, x)
				}
			}
		}
		sort.Float64s(places)
		for i := 1; i < len(places); i++ {
			part := panelPart{from: places[i-1], to: places[i]}
			if beside(strips, q[0]*(part.from+part.to)/2) {
				part.out = panelGap
			}
			spans = append(spans, part)
		}
	}
	sort.Slice(spans, func(i, k int) bool { return spans[i].from < spans[k].from })
	var merged []panelPart
	for _, s := range spans {
		if n := len(merged); n > 0 && merged[n-1].out == s.out {
			merged[n-1].to = max(merged[n-1].to, s.to)
			continue
		}
		merged = append(merged, s)
	}
	if n := len(merged); n > 0 {
		// Laid flat for the picture the bark may be a little longer than it is laid out.
		merged[0].from, merged[n-1].to = 0, math.Inf(1)
	}
	return merged
}

// beside tells whether a strip is sewn on at a place along.
func beside(strips []bark.Laid, along float64) bool {
	for _, s := range strips {
		if along >= s.Aft && along <= s.Bow {
			return true
		}
	}
	return false
}

// rubOut removes the sheet's edge where a wider sheet continues into the panel.
func (p *pen) rubOut(a scene.Plate, q [2]float64, part panelPart) {
	sheet := &p.View.Flat.Sheet
	for _, run := range append(sheet.Row(sheet.Rows-1), part.low) {
		var inside []geom.Vec2
		for _, v := range run {
			if v.X >= part.from && v.X <= part.to {
				inside = append(inside, v)
			}
		}
		if len(inside) > 1 {
			p.Line(draw.Bark, p.Outline(a)+1, a.InQuarter(q, 0, inside)...)
		}
	}
}

// panelEdges draws where a panel is cut, and the bark left to trim outside it.
func (p *pen) panelEdges(c core.Canoe, piece *bark.Piece, a scene.Plate) {
	for _, q := range scene.Quarters {
		for _, part := range panelParts(c, piece, q) {
			if trim := c.Design.GunwaleTurn; trim > 0 {
				p.Dashed(draw.Seam, scene.FineWidth, scene.ShortDash, a.InQuarter(q, part.out, geom.Offset(part.high, trim))...)
			}
			wide := p.Thin(a, part.height(), p.Outline(a))
			put := func(role draw.Role, line ...geom.Vec2) {
				p.Line(role, wide, a.InQuarter(q, part.out, scene.Smooth(line))...)
			}
			put(draw.Ink, part.high...)
			if part.out == 0 {
				p.rubOut(a, q, part)
				continue
			}
			put(draw.Ink, part.low...)
			for _, i := range [2]int{0, -1} {
				low, high := part.low[0], part.high[0]
				if i < 0 {
					low, high = part.low[len(part.low)-1], part.high[len(part.high)-1]
				}
				if low.X > scene.OnAxis && low.Sub(high).Len() > scene.OnAxis {
					put(draw.Ink, low, high)
				}
			}
		}
	}
}
