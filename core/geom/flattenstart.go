package geom

import (
	"math"
	"slices"
)

const startNotGrid = "geom: start has not one point for each grid point"

// prepare sizes the workspace, lays each triangle out in the turning sense of the
// start in f.Points and puts the warm start there if it will do. It returns the
// area of the surface, and false where a triangle has none.
func (w *FlattenWorkspace) prepare(p FlattenProblem, f *Flat) (area float64, ok bool) {
	m := &f.mesh
	sense := 0.0
	for _, v := range m.triangles {
		sense += turning(f.Points, v)
	}
	if math.IsNaN(sense) || math.IsInf(sense, 0) {
		return 0, false
	}
	w.rest = resized(w.rest, len(m.triangles))
	for i, c := range m.corners {
		w.rest[i] = newRestTriangle(p.Grid.At[c[0]], p.Grid.At[c[1]], p.Grid.At[c[2]], math.Copysign(1, sense))
		if w.rest[i].area == 0 {
			return 0, false
		}
		area += w.rest[i].area
	}
	n := 2 * m.vertices
	w.down, w.move = resized(w.down, n), resized(w.move, n)
	w.trialPoints = resized(w.trialPoints, m.vertices)
	w.held = resized(w.held, n)
	w.hold(p, m, f.Points)
	w.warm(p.Warm, f, sense)
	return area, true
}

// hold marks the coordinates that stay where the start has them.
func (w *FlattenWorkspace) hold(p FlattenProblem, m *slitMesh, start []Vec2) {
	clear(w.held)
	if p.Hold == nil {
		far := Vec2{}
		at := 0
		for v, q := range start {
			if d := q.Sub(start[0]); d.Dot(d) > far.Dot(far) {
				far, at = d, v
			}
		}
		w.held[0], w.held[1] = true, true
		w.held[2*at] = math.Abs(far.X) < math.Abs(far.Y)
		w.held[2*at+1] = !w.held[2*at]
		return
	}
	for i, c, r := 0, 0, 0; i < len(p.Grid.At); i++ {
		h := p.Hold(c, r)
		if r++; r == m.rows {
			c, r = c+1, 0
		}
		for _, v := range [2]int{m.before[i], m.after[i]} {
			w.held[2*v] = w.held[2*v] || h.X
			w.held[2*v+1] = w.held[2*v+1] || h.Y
		}
	}
}

// resized returns s with length n, in the same memory if it is large enough.
func resized[T any](s []T, n int) []T {
	if cap(s) < n {
		return make([]T, n)
	}
	return s[:n]
}

// warm moves f.Points, but for held coordinates, to those of an earlier result cut
// alike, unless a triangle would then be turned over.
func (w *FlattenWorkspace) warm(earlier *Flat, f *Flat, sense float64) {
	if earlier == nil || earlier.grid.Cols != f.grid.Cols || earlier.grid.Rows != f.grid.Rows ||
		!slices.Equal(earlier.mesh.after, f.mesh.after) {
		return
	}
	for v, q := range earlier.Points {
		w.trialPoints[v] = q
		if w.held[2*v] {
			w.trialPoints[v].X = f.Points[v].X
		}
		if w.held[2*v+1] {
			w.trialPoints[v].Y = f.Points[v].Y
		}
	}
	for _, v := range f.mesh.triangles {
		if !(turning(w.trialPoints, v)*sense > 0) {
			return
		}
	}
	copy(f.Points, w.trialPoints)
}

// turning returns twice the area of a triangle, negative if it turns clockwise.
func turning(points []Vec2, v [3]int) float64 {
	p := points[v[0]]
	return points[v[1]].Sub(p).Cross(points[v[2]].Sub(p))
}

// startPoints returns a fresh copy of the start, one point for each vertex.
func startPoints(p FlattenProblem, m *slitMesh) []Vec2 {
	points := make([]Vec2, m.vertices)
	start := p.Start
	if start == nil {
		start = squareStart(p.Grid)
	}
	if len(start) != len(p.Grid.At) {
		panic(startNotGrid)
	}
	for i, q := range start {
		points[m.before[i]], points[m.after[i]] = q, q
	}
	return points
}

// squareStart lays row 0 straight along X by its chords and the chords of each
// column square to it.
func squareStart(g Grid) []Vec2 {
	start := make([]Vec2, len(g.At))
	x := 0.0
	for c := range g.Cols {
		if c > 0 {
			x += g.Point(c, 0).Sub(g.Point(c-1, 0)).Len()
		}
		y := 0.0
		for r := range g.Rows {
			if r > 0 {
				y += g.Point(c, r).Sub(g.Point(c, r-1)).Len()
			}
			start[c*g.Rows+r] = Vec2{x, y}
		}
	}
	return start
}
