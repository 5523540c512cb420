package bark

import (
	"math"
	"sort"

	"barkwright/core/hull"
)

// demand is the breadth of bark asked for along the flat bark. The boat is the same
// fore and aft, so places are asked for by their distance from amidships.
type demand struct {
	hull    *hull.Hull
	columns []column
	bottom  bottomLine
	whole   float64   // length of the flat bark, m
	along   []float64 // of the columns from amidships, m
	full    []float64 // breadth to cover all, the bark to trim included, m
	bed     []float64 // least breadth of the bark on the bed, m
	// side is what lies beside the sheet, laid flat, from amidships outward; empty before it is.
	side []sideBand
}

// newDemand asks for the sides' reach and the bark left to trim. The sheet on the
// bed must at least come out to the gores' feet, since no seam lies on the bottom
// (Adney and Chapelle 1964, p. 29, of the centre line).
func newDemand(h *hull.Hull, columns []column, bottom bottomLine, whole float64) demand {
	n := len(columns)
	d := demand{hull: h, columns: columns, bottom: bottom, whole: whole,
		along: make([]float64, n), full: make([]float64, n), bed: make([]float64, n)}
	for i := range columns {
		c := &columns[i]
		d.along[i] = d.alongOf(c.Place)
		d.full[i] = 2 * toCover(h, c)
		d.bed[i] = 2 * (c.frame + h.Design.GoreFoot)
	}
	return d
}

// toCover is how far out from the bed's centre line bark is wanted at a column, with
// what is left to trim: all that sheets and panels are measured by.
func toCover(h *hull.Hull, l *column) float64 { return l.reach() + h.Design.GunwaleTurn }

// alongOf is where the column at a place has its foot on the flat bark, m from
// amidships.
func (d *demand) alongOf(place float64) float64 {
	run := d.bottom.at(place)
	if place > 1 {
		run += (d.whole/2 - d.bottom.heel()) * (place - 1)
	}
	return run
}

// columnAlong is the column whose foot lies so far along the flat bark.
func (d *demand) columnAlong(along float64) column {
	return newColumn(d.hull, placeAlong(d.bottom, math.Abs(along), d.whole))
}

// liftedAlong is how far out that foot lies.
func (d *demand) liftedAlong(along float64) float64 {
	v := placeAlong(d.bottom, math.Abs(along), d.whole)
	if v <= 1 {
		return 0
	}
	return lifted(d.hull, d.hull.Foot(v))
}

// at is a breadth so far along.
func (d *demand) at(values []float64, along float64) float64 {
	x := math.Abs(along)
	i := sort.SearchFloat64s(d.along, x)
	switch {
	case i == 0:
		return values[0]
	case i == len(d.along):
		return values[i-1]
	}
	t := (x - d.along[i-1]) / (d.along[i] - d.along[i-1])
	return values[i-1] + t*(values[i]-values[i-1])
}

// most is the greatest breadth between two places along.
func (d *demand) most(values []float64, aft, bow float64) float64 {
	most := max(d.at(values, aft), d.at(values, bow))
	for i, x := range d.along {
		if (x >= aft && x <= bow) || (-x >= aft && -x <= bow) {
			most = max(most, values[i])
		}
	}
	return most
}

// bedAt is the greatest breadth the bed asks for between two places. The frame is
// widest amidships and only grows narrower, so the innermost place decides.
func (d *demand) bedAt(aft, bow float64) float64 {
	return d.at(d.bed, max(0, aft, -bow))
}

// between lists the columns' places along from aft to bow, both of these included.
func (d *demand) between(aft, bow float64) []float64 {
	out := append(make([]float64, 0, 2*len(d.along)+1), aft)
	for i := len(d.along) - 1; i > 0; i-- {
		if x := -d.along[i]; x > aft && x < bow {
			out = append(out, x)
		}
	}
	for _, x := range d.along {
		if x > aft && x < bow {
			out = append(out, x)
		}
	}
	return append(out, bow)
}

// placeAlong is the place of the column whose foot lies a length from amidships on the
// flat bark, which is whole long over both ends.
func placeAlong(bottom bottomLine, run, whole float64) float64 {
	if run <= bottom.heel() {
		return bottom.placeAt(run)
	}
	return 1 + min(1, (run-bottom.heel())/(whole/2-bottom.heel()))
}

// plainFlatLength is the length of the bark on the bed before it is worked out.
func plainFlatLength(h *hull.Hull, bottom bottomLine) float64 {
	return 2 * (bottom.heel() + h.FlatPastHeel())
}
