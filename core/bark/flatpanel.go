package bark

import (
	"barkwright/core/geom"
	"barkwright/core/hull"
)

// sliver is the narrowest a panel is gridded, m: a quarter of an inch of it beside
// the bark left to trim has no shape worth finding.
const sliver = 0.006

// flattenPanel lays a panel flat, as far as it reaches on to the finished hull.
// Where it is only bark left to trim it has no shape to find and gives no piece.
func (f *Flat) flattenPanel(h *hull.Hull, l Layout, number int, res Resolution, warm *Flat, w *geom.FlattenWorkspace) {
	low := panelFoot(h, l.SheetWidth)
	for _, span := range panelSpans(h, l.Panels[number], low) {
		columns := max(6, int(float64(res.Columns)*(span.to-span.from)/2))
		rows := max(3, res.Rows/2)
		places := make([]float64, columns+1)
		for i := range places {
			places[i] = span.from + (span.to-span.from)*float64(i)/float64(columns)
		}
		s := newStrip(h, places, low, func(c *column) float64 { return c.girth })
		p := geom.FlattenProblem{Grid: s.grid(rows), Start: s.start(h, rows)}
		if span.from == 0 {
			p.Hold = func(c, r int) geom.Held { return geom.Held{X: c == 0, Y: c == 0 && r == 0} }
		}
		if warm != nil && len(f.Panels) < len(warm.Panels) {
			p.Warm = &warm.Panels[len(f.Panels)].Flat
		}
		piece := f.add(&s, p, w)
		if f.State == geom.CutOff {
			return
		}
		piece.Panel = number
		f.Panels = append(f.Panels, piece)
	}
}

// panelFoot gives the girth at which a panel starts: the sheet's edge and, past the
// place where that meets the end profile, the edge of the stem's face, round which
// bark is not wrapped.
func panelFoot(h *hull.Hull, width float64) func(*column) float64 {
	half, stem := width/2, h.Design.StemWidth/2
	return func(c *column) float64 { return max(c.girthAt(half), min(stem, c.girth/2)) }
}

// span is a stretch of columns, by place.
type span struct{ from, to float64 }

// spanSteps is in how many places a panel's width is looked at.
const spanSteps = 24

// panelSpans returns the stretches of a panel that are more than a sliver wide on
// the finished hull.
func panelSpans(h *hull.Hull, p Panel, low func(*column) float64) []span {
	wide := func(v float64) float64 {
		l := newColumn(h, v)
		return l.girth - low(&l) - sliver
	}
	var out []span
	open := false
	last := p.From
	for i := 0; i <= spanSteps; i++ {
		v := p.From + (p.To-p.From)*float64(i)/spanSteps
		if over := wide(v) > 0; over != open {
			edge := v
			if i > 0 {
				edge, _ = geom.Bisect(wide, last, v, placeTolerance)
			}
			if open = over; open {
				out = append(out, span{from: edge})
			}
			out[len(out)-1].to = edge
		}
		if open {
			out[len(out)-1].to = v
		}
		last = v
	}
	return out
}
