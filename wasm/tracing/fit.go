package tracing

import (
	"slices"

	"barkwright/core/design"
	"barkwright/core/geom"
	"barkwright/core/hull"
	"barkwright/core/record"
	"barkwright/core/refit"
	"barkwright/wasm/work"
)

// fit is the boat that the record gives, and of which notebook.
type fit struct {
	of   *record.Notebook
	hull *hull.Hull
	rows []refit.Row
}

// Fit works out the boat that the record gives, to be drawn over the picture; a fit takes a
// while. It tells whether that is another than before.
func (t *Tracing) Fit(w *work.Work) bool {
	if !t.open || !t.Over || t.fit.of == w.Notebook {
		return false
	}
	t.fit = fit{of: w.Notebook}
	if len(w.Notebook.Record.Data) > 0 {
		f := w.Fitted()
		t.fit.hull, t.fit.rows = hull.New(f.Design), f.Rows
	}
	return true
}

// fits is the boat that is known of what the record says now.
func (t *Tracing) fits(w *work.Work) (fit, bool) {
	return t.fit, t.Over && t.fit.of == w.Notebook && t.fit.hull != nil
}

// differs is by how much the fitted boat measures other than the row that goes by a number.
func (f fit) differs(w *work.Work, number int) (refit.Row, bool) {
	for i, d := range w.Notebook.Record.Data {
		if d.Mark == number && i < len(f.rows) && f.rows[i].State != refit.SetAside {
			return f.rows[i], true
		}
	}
	return refit.Row{}, false
}

// outlinePieces is how many chords stand for each of the boat's lines.
const outlinePieces = 40

// Outlines are the lines of a boat in a view, metres along and up, both ends or both sides of
// each. places are where the sections of a picture were taken.
func Outlines(h *hull.Hull, v record.View, places []float64) [][]geom.Vec2 {
	var lines [][]geom.Vec2
	both := func(line []geom.Vec2) {
		other := make([]geom.Vec2, len(line))
		for i, p := range line {
			other[i] = geom.Vec2{X: -p.X, Y: p.Y}
		}
		lines = append(lines, line, other)
	}
	along := func(to float64, y func(float64) float64) []geom.Vec2 {
		line := make([]geom.Vec2, outlinePieces+1)
		for i := range line {
			x := to * float64(i) / outlinePieces
			line[i] = geom.Vec2{X: x, Y: y(x)}
		}
		return line
	}
	switch v {
	case record.FromSide:
		both(along(h.HeadX, h.TopEdge))
		both(along(h.HeelX, h.Bottom))
		var end []geom.Vec2
		for i := range outlinePieces + 1 {
			end = append(end, h.End.At(float64(i)/outlinePieces))
		}
		both(end)
	case record.FromAbove:
		both(along(h.GunwaleX, h.HalfBeam))
		both(along(h.GunwaleX, func(x float64) float64 { return -h.HalfBeam(x) }))
	case record.InSection:
		for _, x := range places {
			section := h.Section(min(x, h.HeelX))
			both(section.Sample(outlinePieces))
		}
	}
	return lines
}

// places are where the sections of a picture stand on a boat, metres from the middle.
func places(h *hull.Hull, marks []record.Mark) []float64 {
	list := []float64{}
	for _, m := range marks {
		if p, ok := record.LookupPress(m.What); !ok || !p.Reads() {
			continue
		}
		x := m.At.Distance
		switch {
		case m.Number > 0 && m.Number <= len(design.Design{}.ThwartAt):
			x = h.StationAt(h.Design.ThwartAt[m.Number-1] * h.Gunwale.Length())
		case m.At.From == record.FromGunwaleEnd:
			x = h.GunwaleX - x
		case m.At.From == record.FromEnd:
			x = h.Design.Length/2 - x
		}
		if x >= 0 && !slices.Contains(list, x) {
			list = append(list, x)
		}
	}
	return list
}
