package tracing

import (
	"math"

	"barkwright/core/draw"
	"barkwright/core/geom"
	"barkwright/core/record"
	"barkwright/core/refit"
	"barkwright/core/trace"
	"barkwright/core/units"
	"barkwright/wasm/work"
)

// over draws what was pressed in the view, and the fitted boat, over the picture.
type over struct {
	draw.List
	look
	t        *Tracing
	w        *work.Work
	lettered []draw.Point // where differences stand
}

// Draw is what lies over the picture, in CSS pixels of its place.
func (t *Tracing) Draw(w *work.Work) draw.List {
	o := over{look: t.look(w), t: t, w: w}
	o.Width, o.Height = t.size.Width, t.size.Height
	o.Title, o.Description = "What was pressed on the picture", t.Describe(w)
	if !t.shown {
		return o.List
	}
	marks := t.inView(o.Tracing)
	f, fitted := t.fits(w)
	if fitted {
		plane, refused := o.Tracing.Read().Plane(t.View)
		if fitted = refused == nil; fitted {
			for _, line := range Outlines(f.hull, t.View, places(f.hull, marks)) {
				o.line(plane, line)
			}
		}
	}
	for _, m := range marks {
		o.mark(m)
	}
	if fitted {
		for _, m := range marks {
			o.differences(f, m)
		}
	}
	if t.byKeys && t.Task != "" && t.held == 0 {
		o.crossed(draw.Point(t.cross), draw.Warn, 14)
	}
	return o.List
}

// line draws a line of the fitted boat as far as the plane shows it.
func (o *over) line(plane *trace.Plane, line []geom.Vec2) {
	var points []draw.Point
	for _, p := range line {
		if q, ok := plane.Pixel(p); ok {
			points = append(points, draw.Point(o.on(q)))
		}
	}
	if len(points) > 1 {
		o.Add(draw.Stroke{Role: draw.Paper, Points: points, Width: 4},
			draw.Stroke{Role: draw.Frame, Points: points, Width: 2, Dash: []float64{8, 4}})
	}
}

// mark draws a mark's points and what joins them.
func (o *over) mark(m record.Mark) {
	p, _ := record.LookupPress(m.What)
	role := draw.Water
	if !p.Reads() {
		role = draw.Root
	}
	var points []draw.Point
	for _, q := range m.Points {
		points = append(points, draw.Point(o.on(q.At)))
	}
	if len(points) > 1 {
		closed := m.What == record.KnownRectangle && len(points) == 4
		o.Add(draw.Stroke{Role: draw.Paper, Points: points, Width: 3.5, Closed: closed},
			draw.Stroke{Role: role, Points: points, Width: 1.5, Closed: closed})
	}
	for k, at := range points {
		if m.Points[k].ID == o.t.held {
			o.Add(draw.Stroke{Role: draw.Paper, Points: draw.Polygon(at, 11, 16, 0), Width: 5, Closed: true},
				draw.Stroke{Role: draw.Mark, Points: draw.Polygon(at, 11, 16, 0), Width: 2.5, Closed: true})
			o.crossed(at, draw.Mark, 5)
			continue
		}
		o.crossed(at, role, 7)
	}
	if m.What == record.LetteredSize && len(points) == 2 && m.Length > 0 {
		o.letter(draw.Point{X: (points[0].X + points[1].X) / 2, Y: (points[0].Y+points[1].Y)/2 - 12},
			units.Length.Format(m.Length, o.w.System), draw.Root)
	}
}

// crossed draws a cross that the place under it is seen through.
func (o *over) crossed(at draw.Point, role draw.Role, reach float64) {
	for _, way := range []draw.Point{{X: 1}, {X: -1}, {Y: 1}, {Y: -1}} {
		arm := []draw.Point{{X: at.X + 1.5*way.X, Y: at.Y + 1.5*way.Y}, {X: at.X + reach*way.X, Y: at.Y + reach*way.Y}}
		o.Add(draw.Stroke{Role: draw.Paper, Points: arm, Width: 4})
		o.Add(draw.Stroke{Role: role, Points: arm, Width: 2})
	}
}

func (o *over) letter(at draw.Point, text string, role draw.Role) {
	o.Add(draw.Text{Role: role, Text: text, At: at, Anchor: draw.Middle, Size: 13, Bold: true, Halo: draw.Paper})
}

// differences letters at each point of a mark by how much the fitted boat measures other
// than was read there.
func (o *over) differences(f fit, m record.Mark) {
	for _, q := range m.Points {
		row, ok := f.differs(o.w, q.ID)
		if !ok {
			continue
		}
		at := draw.Point(o.on(q.At))
		at.Y += 16
		if !o.free(at) {
			continue
		}
		o.lettered = append(o.lettered, at)
		role := draw.Frame
		if row.State == refit.OutsideTolerance {
			role = draw.Warn
		}
		o.letter(at, signed(row.Difference, o.w.System), role)
	}
}

// free tells whether a difference can be read at a place. One that cannot comes as the picture
// does nearer, and stands in the list meanwhile.
func (o *over) free(at draw.Point) bool {
	const wide, high = 44, 15 // CSS pixels
	for _, p := range o.lettered {
		if math.Abs(p.X-at.X) < wide && math.Abs(p.Y-at.Y) < high {
			return false
		}
	}
	return true
}

// signed is a difference with its sign, in the boat's own measure.
func signed(v float64, s units.System) string {
	text := units.Offset.Format(v, s)
	if units.Offset.Shown(v, s) > 0 {
		text = "+" + text
	}
	return text
}
