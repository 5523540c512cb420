package bark

import (
	"math"

	"barkwright/core/geom"
	"barkwright/core/hull"
)

// Resolution is the number of cells of a quarter of the skin, along and up.
type Resolution struct{ Columns, Rows int }

// The resolutions.
var (
	// ForFigures puts every gore within 1/32 in and the stretch within 0.03 of a percent of
	// a mesh twice as fine, on the default, the starting and the measured boats.
	ForFigures = Resolution{176, 36}
	// ForCurve is for one point of many, good to a tenth of a percent of stretch.
	ForCurve = Resolution{96, 24}
	// ForPicture follows a slider.
	ForPicture = Resolution{48, 12}
)

// spread returns n+1 places of columns from 0 to end, evenly along the boat before
// and past the heel but for the pinned places (in increasing order, inside), each
// of which gets the column nearest to it.
func spread(h *hull.Hull, n int, end float64, pinned []float64) []float64 {
	places := insertSorted(pinned, 1, end)
	run := columnRun(h)
	perColumn := run(end) / float64(n)
	index := make([]int, len(places))
	for i, v := range places {
		index[i] = int(math.Round(run(v) / perColumn))
	}
	last := len(places) - 1
	for i := 1; i < last; i++ {
		index[i] = max(index[i], index[i-1]+1)
	}
	for i := last - 1; i > 0; i-- {
		index[i] = min(index[i], index[i+1]-1)
	}
	out := make([]float64, n+1)
	for i := 1; i <= last; i++ {
		for k := index[i-1]; k <= index[i]; k++ {
			t := float64(k-index[i-1]) / float64(index[i]-index[i-1])
			out[k] = places[i-1] + t*(places[i]-places[i-1])
		}
	}
	return out
}

// endFineness is how much closer columns stand outside the end thwarts, where the
// bark is pinched most, than between them. With it the gore at the end thwart of the
// measured boats needs half as many columns.
const endFineness = 3

// columnRun returns the length by which columns are spread, as a function of the
// place: along the boat before and past the heel, the part outside the end thwart
// endFineness times.
func columnRun(h *hull.Hull) func(place float64) float64 {
	along := func(v float64) float64 { return h.HeelX*min(1, v) + h.Edge.Length()*max(0, v-1) }
	thwart := endThwart(h)
	return func(v float64) float64 {
		return along(v) + (endFineness-1)*max(0, along(v)-along(thwart))
	}
}

// insertSorted returns 0, the pinned places, the heel if it lies inside and apart
// from them, and the end.
func insertSorted(pinned []float64, heel, end float64) []float64 {
	out := []float64{0}
	for _, v := range pinned {
		if heel > out[len(out)-1]+placeTolerance && heel < v-placeTolerance {
			out = append(out, heel)
		}
		out = append(out, v)
	}
	if heel > out[len(out)-1]+placeTolerance && heel < end-placeTolerance {
		out = append(out, heel)
	}
	return append(out, end)
}

// strip is a piece of bark on the hull: columns and the girths it covers of each.
type strip struct {
	columns   []column
	low, high []float64
	// knuckleRow of each column lies at the girth knuckle. The rows below it are even, and
	// so are those above it. With a knuckleRow of 0 all rows are even.
	knuckleRow int
	knuckle    []float64
}

// newStrip covers columns at the places from low to high, which are asked of each.
func newStrip(h *hull.Hull, places []float64, low, high func(*column) float64) strip {
	n := len(places)
	s := strip{columns: make([]column, n), low: make([]float64, n), high: make([]float64, n)}
	for i, v := range places {
		c := &s.columns[i]
		c.set(h, v)
		s.low[i], s.high[i] = low(c), high(c)
	}
	return s
}

// girth is the girth of row r of rows in column c.
func (s *strip) girth(c, r, rows int) float64 {
	if s.knuckleRow > 0 {
		if r <= s.knuckleRow {
			return s.low[c] + (s.knuckle[c]-s.low[c])*float64(r)/float64(s.knuckleRow)
		}
		return s.knuckle[c] + (s.high[c]-s.knuckle[c])*float64(r-s.knuckleRow)/float64(rows-s.knuckleRow)
	}
	return s.low[c] + (s.high[c]-s.low[c])*float64(r)/float64(rows)
}

// grid is the strip's points on the hull.
func (s *strip) grid(rows int) geom.Grid {
	return geom.NewGrid(len(s.columns), rows+1, func(c, r int) geom.Vec3 {
		return s.columns[c].At(s.girth(c, r, rows))
	})
}

// start lays the strip out: straight along the bottom as far as the heel with the
// columns square to it, and as seen from the side past it.
func (s *strip) start(h *hull.Hull, rows int) []geom.Vec2 {
	out := make([]geom.Vec2, 0, len(s.columns)*(rows+1))
	run := bottomRun(h)
	for c := range s.columns {
		l := &s.columns[c]
		foot := geom.Vec2{X: run.at(l.Place), Y: l.lifted}
		if l.Place > 1 {
			foot.X += l.Foot.X - h.HeelX
		}
		for r := range rows + 1 {
			out = append(out, foot.Add(l.Up.Scale(s.girth(c, r, rows))))
		}
	}
	return out
}
