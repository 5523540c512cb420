package bark

import (
	"math"

	"barkwright/core/geom"
	"barkwright/core/hull"
	"barkwright/core/units"
)

// Flat is the bark of the forward port quarter laid flat: the sheet, and the side
// panels each by itself, lying where they were cut off.
type Flat struct {
	State  geom.FlattenState // the worst of the pieces'
	Sheet  Piece
	Panels []Piece
	Gores  []FlatGore // of the port side, from the after one forward, as in the layout

	// P95 and RMS are the stretch left in sheet and panels, as shares by area: the
	// 95th percentile of the larger principal stretch and the root mean square.
	P95, RMS float64
	// Where is the middle of the place on the sheet where it stretches most.
	Where geom.Vec2

	Length  float64 // overall, m
	Breadth float64 // overall without the bark left to trim, m
}

// Piece is one piece laid flat.
type Piece struct {
	geom.Flat
	Panel  int       // its number in the layout; -1 for the sheet
	Places []float64 // of its columns, as hull.Hull.Column takes them
	Curved geom.Grid // the same points on the hull
	Girths []float64 // of the same points, from the foot of their column, m
	Rows   int       // points in a column

	FootRow int // of the sheet, on which the feet of its gores lie
}

// FlatGore is the opening of a gore on the sheet.
type FlatGore struct {
	Gore
	Width float64 // at the edge, m; negative where bark must be let in
	Angle float64 // radians, signed like Width
	Cut   float64 // from the foot to the middle of the opening on the sheet, m
	// After and Fore are its edges, foot first; AfterLength and ForeLength their
	// lengths on the sheet, m.
	After, Fore             []geom.Vec2
	AfterLength, ForeLength float64
	Unequal                 bool // the edges differ by more than EdgesAlike
}

// EdgesAlike is how much the two edges of a gore may differ in length and still
// be sewn without easing one to the other, 1/8 in; a choice of this project.
const EdgesAlike = units.Inch / 8

// Flatten lays the bark flat. warm is an earlier result of a like boat at the same
// resolution, or nil; w is memory to work in, or nil. Where w's pause ends the work,
// only State is set, to geom.CutOff.
func Flatten(h *hull.Hull, l Layout, res Resolution, warm *Flat, w *geom.FlattenWorkspace) Flat {
	f := Flat{}
	slits := f.flattenSheet(h, l, res, warm, w)
	for i := range l.Panels {
		if f.State == geom.CutOff {
			break
		}
		f.flattenPanel(h, l, i, res, warm, w)
	}
	if f.State == geom.CutOff {
		return Flat{State: geom.CutOff}
	}
	f.open(l.Gores, slits)
	f.measure()
	return f
}

// add lays a strip flat as one more piece.
func (f *Flat) add(s *strip, p geom.FlattenProblem, w *geom.FlattenWorkspace) Piece {
	piece := Piece{Flat: geom.Flatten(p, w), Curved: p.Grid, Rows: p.Grid.Rows}
	piece.Places = make([]float64, 0, p.Grid.Cols)
	piece.Girths = make([]float64, 0, len(p.Grid.At))
	for c := range s.columns {
		piece.Places = append(piece.Places, s.columns[c].Place)
		for r := range piece.Rows {
			piece.Girths = append(piece.Girths, s.girth(c, r, piece.Rows-1))
		}
	}
	f.State = max(f.State, piece.State)
	return piece
}

// flattenSheet lays the sheet flat and returns the number of the slit of each
// gore forward of amidships, by the gore's index; the middle one is no slit.
func (f *Flat) flattenSheet(h *hull.Hull, l Layout, res Resolution, warm *Flat, w *geom.FlattenWorkspace) map[int]int {
	var pinned []float64
	for _, g := range forward(l.Gores) {
		pinned = append(pinned, h.ColumnAtEdge(g.X))
	}
	s := newStrip(h, spread(h, res.Columns, sheetEnd(h, l.SheetWidth), pinned),
		func(*column) float64 { return 0 },
		func(c *column) float64 { return sheetGirth(h, c, l.SheetWidth) })
	s.bendRows(h, res.Rows)
	p := geom.FlattenProblem{Grid: s.grid(res.Rows), Start: s.start(h, res.Rows)}
	middle := res.Rows
	numbers := map[int]int{}
	for i, g := range l.Gores {
		switch {
		case g.State != GoreCut || g.X < 0:
		case g.X == 0:
			middle = s.knuckleRow
		default:
			c := nearest(s.columns, h.ColumnAtEdge(g.X))
			numbers[i] = len(p.Slits)
			p.Slits = append(p.Slits, geom.Slit{Col: c, Foot: s.knuckleRow})
		}
	}
	p.Hold = func(c, r int) geom.Held {
		return geom.Held{X: c == 0 && r <= middle, Y: r == 0 && s.columns[c].Place <= 1}
	}
	if warm != nil {
		p.Warm = &warm.Sheet.Flat
	}
	f.Sheet = f.add(&s, p, w)
	f.Sheet.Panel = -1
	f.Sheet.FootRow = s.knuckleRow
	return numbers
}

// sheetEnd is the place where the edge of a sheet of a width meets the end profile.
func sheetEnd(h *hull.Hull, width float64) float64 {
	half := width / 2
	rise := func(v float64) float64 { return lifted(h, h.Foot(v)) - half }
	if rise(2) <= 0 {
		return 2
	}
	end, _ := geom.Bisect(rise, 1, 2, placeTolerance)
	return end
}

// sheetGirth is the girth of a column that a sheet of a width covers.
func sheetGirth(h *hull.Hull, l *column, width float64) float64 {
	if short(h, l, width) <= 0 {
		return l.girth
	}
	return l.girthAt(width / 2)
}

// forward returns the gores forward of amidships, the middle one left out.
func forward(all []Gore) []Gore {
	for i, g := range all {
		if g.X > 0 {
			return all[i:]
		}
	}
	return nil
}

// nearest is the number of the column nearest to a place.
func nearest(columns []column, place float64) int {
	best := 0
	for c, l := range columns {
		if math.Abs(l.Place-place) < math.Abs(columns[best].Place-place) {
			best = c
		}
	}
	return best
}
