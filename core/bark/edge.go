package bark

import (
	"math"
	"sort"

	"barkwright/core/geom"
)

// edge is the edge of bark half wide out from the centre line, on the hull. It ends on the
// end profile, and is the same fore and aft.
type edge struct {
	*demand
	half   float64
	points []geom.Vec3 // at the columns that stand on the bark
	// inner has the points between a column and the one before it, once they have been
	// asked for.
	inner [][]geom.Vec3
}

func (d *demand) edge(half float64) *edge {
	n := len(d.columns)
	e := &edge{demand: d, half: half, points: make([]geom.Vec3, n), inner: make([][]geom.Vec3, n)}
	for i := range d.columns {
		if c := &d.columns[i]; e.on(c) {
			e.points[i] = e.point(c)
		}
	}
	return e
}

// on tells whether a column stands on the bark.
func (e *edge) on(c *column) bool { return c.lifted <= e.half }

func (e *edge) point(c *column) geom.Vec3 { return c.At(c.girthAt(e.half)) }

func (e *edge) pointAlong(along float64) geom.Vec3 {
	c := e.columnAlong(along)
	return e.point(&c)
}

// path is the edge between two places along, from the after one forward.
func (e *edge) path(aft, bow float64) []geom.Vec3 {
	places := e.between(aft, bow)
	out := make([]geom.Vec3, 0, pastPieces*len(places))
	add := func(along float64, q geom.Vec3) {
		q.X = math.Copysign(q.X, along)
		out = append(out, q)
	}
	last, lastOn := -1, false
	for i, x := range places {
		// Those between the first and the last are the columns' own.
		k, on := -1, false
		var q geom.Vec3
		if i > 0 && i < len(places)-1 {
			k = e.column(x)
		}
		if k >= 0 {
			q, on = e.points[k], e.on(&e.columns[k])
		} else {
			c := e.columnAlong(x)
			if on = e.on(&c); on {
				q = e.point(&c)
			}
		}
		if i > 0 {
			inside := e.inside(places[i-1], x, lastOn, on, last, k)
			for j := range inside {
				if x <= 0 {
					add(-1, inside[len(inside)-1-j])
				} else {
					add(1, inside[j])
				}
			}
		}
		if on {
			add(x, q)
		}
		last, lastOn = k, on
	}
	return out
}

// column is the number of the column that stands so far along, or -1.
func (e *edge) column(along float64) int {
	x := math.Abs(along)
	if k := sort.SearchFloat64s(e.along, x); k < len(e.along) && e.along[k] == x {
		return k
	}
	return -1
}

// inside are the points between two places on one side of amidships, from the inner
// outward, worked out once where both are columns.
func (e *edge) inside(aft, bow float64, aftOn, bowOn bool, aftColumn, bowColumn int) []geom.Vec3 {
	in, out, inOn, outOn := aft, bow, aftOn, bowOn
	if bow <= 0 {
		in, out, inOn, outOn = -bow, -aft, bowOn, aftOn
	}
	if aftColumn < 0 || bowColumn < 0 {
		return e.cross(in, out, inOn, outOn)
	}
	k := max(aftColumn, bowColumn)
	if e.inner[k] == nil {
		e.inner[k] = e.cross(in, out, inOn, outOn)
	}
	return e.inner[k]
}

// cross are the points between two distances from amidships: closer together toward the
// end profile, where the edge runs ever steeper.
func (e *edge) cross(in, out float64, inOn, outOn bool) []geom.Vec3 {
	points := []geom.Vec3{}
	if inOn && outOn {
		if in >= e.bottom.heel()-samePlace {
			for k := 1; k < pastPieces; k++ {
				points = append(points, e.pointAlong(in+(out-in)*float64(k)/pastPieces))
			}
		}
		return points
	}
	if inOn == outOn {
		return points
	}
	end, ok := geom.Bisect(func(along float64) float64 { return e.liftedAlong(along) - e.half }, in, out, placeTolerance)
	if !ok {
		return points
	}
	on := in
	if outOn {
		on = out
		points = append(points, e.pointAlong(end))
	}
	for k := 1; k < endPieces; k++ {
		t := float64(k) / endPieces
		if inOn {
			t = 1 - t
		}
		points = append(points, e.pointAlong(end+(on-end)*t*t))
	}
	if inOn {
		points = append(points, e.pointAlong(end))
	}
	return points
}
