package bench

import (
	"strings"

	"barkwright/core/lines"
	"barkwright/core/units"
	"barkwright/wasm/work"
)

// View is what the bench shows.
type View struct {
	Lists []string // of the stage, by name
	List  string
	At    string // "9 of 44, 8 done"
	Line  Row
	Also  []string
	From  string
	Parts []Part // of the figure
	// Before and Then are the lines beside it, empty at either end.
	Before, Then string
	Rows         []Row
	// Tapes tells that the figure is a length that a tape reads.
	Tapes bool
	Said  Said
}

// Row is a line in the list of all of them.
type Row struct {
	What, Figure string
	Here, Done   bool
	Day          string
}

// Part is a piece of a figure that is never broken, and whether it is a fraction or a unit,
// which stand smaller.
type Part struct {
	Text  string
	Small bool
}

// View is what the bench shows of a boat; it reports false where there is nothing, as
// where another boat has no such list.
func (b *Bench) View(w *work.Work) (View, bool) {
	p, ok := b.current(w)
	if !ok {
		return View{}, false
	}
	v := View{List: b.list, From: p.line().From, Also: p.line().Also, Said: b.said, Tapes: taped(p.line()),
		Parts: parts(p.line().Figure)}
	for _, l := range lines.Lists(w.Canoe(), b.stage, w.System) {
		v.Lists = append(v.Lists, l.Name)
	}
	done := 0
	for i, line := range p.Lines {
		r := Row{What: line.What, Figure: line.Figure, Here: i == p.at}
		if r.Day, r.Done = w.Notebook.Log.Done(p.Step, line.Key); r.Done {
			done++
			r.Day = w.Dates.Written(r.Day)
		}
		v.Rows = append(v.Rows, r)
	}
	v.Line = v.Rows[p.at]
	beside := func(i int) string {
		if i < 0 || i >= len(v.Rows) {
			return ""
		}
		return v.Rows[i].What + " " + v.Rows[i].Figure
	}
	v.Before, v.Then = beside(p.at-1), beside(p.at+1)
	count := func(n int) string { return units.Count.Format(float64(n), w.System) }
	v.At = count(p.at+1) + " of " + count(len(v.Rows)) + ", " + count(done) + " done"
	return v, true
}

// parts split a figure where it may break: between feet, inches and a fraction.
func parts(figure string) []Part {
	var out []Part
	for i, text := range strings.Fields(figure) {
		unit := !strings.ContainsAny(text, "0123456789") && i > 0
		out = append(out, Part{text, strings.Contains(text, "/") && i > 0 || unit})
	}
	return out
}

// taped tells whether a reading of the line can be set on the wheels.
func taped(l lines.Line) bool { return l.Taped() && l.Value > 0 }

// Swiped is by how many lines a finger's way steps, CSS pixels: one on for a way to the
// left, one back to the right, none for one that is short or steep.
func Swiped(dx, dy float64) int {
	const shortest, slope = 48, 0.577 // px; the tangent of 30 degrees
	switch {
	case dx > -shortest && dx < shortest || dy > slope*max(dx, -dx) || dy < -slope*max(dx, -dx):
		return 0
	case dx < 0:
		return 1
	}
	return -1
}
