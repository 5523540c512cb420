package geom

import "math"

// FlattenProblem is a patch of surface to be laid flat with as little stretch as
// it will bear.
type FlattenProblem struct {
	Grid  Grid
	Slits []Slit // in increasing columns, none in the first or the last

	// Hold says which coordinates of the point at (c, r), on both sides of a
	// slit, stay where the start puts them; nil holds none. A line of symmetry is
	// a row held in Y or a column held in X, a rigid piece is held in both.
	Hold func(c, r int) Held

	// Start is where the search begins: one point for each grid point, in the
	// order of Grid.At, or the Points of an earlier Flat with the same columns,
	// rows and slits (and collapsed columns). Nil means the base laid straight
	// along X by its chords and each column square to it. The turning sense of the
	// start, by its total area, is kept: a start laid out mirrored gives the
	// mirrored sheet.
	Start []Vec2

	MaxIterations int     // 0 means DefaultFlattenIterations
	Tolerance     float64 // largest last move over the root of the area; 0 means DefaultFlattenTolerance
}

// Held says which coordinates of a point are fixed.
type Held struct{ X, Y bool }

// DefaultFlattenIterations is several times what smooth patches were seen to need.
const DefaultFlattenIterations = 60

// DefaultFlattenTolerance is the largest move of the last iteration, as a share
// of the square root of the area: 1.5 micrometres on a patch of 2.3 square metres.
const DefaultFlattenTolerance = 1e-6

// FlattenState says how a flattening ended.
type FlattenState int

const (
	Converged    FlattenState = iota // the last move is under the tolerance
	NotConverged                     // the iterations ran out, or no downhill step was left
	Flipped                          // the start had triangles turned over and some stayed so
	NoShape                          // a triangle of the grid has no area, or a point is no number
)

func (s FlattenState) String() string {
	return [...]string{"converged", "not converged", "flipped", "no shape"}[s]
}

// FlattenWorkspace is memory that flattenings of like size share, so that a
// warm one allocates little more than its result. The zero value is ready; it
// carries nothing from one result to the next and serves one call at a time.
type FlattenWorkspace struct {
	rest        []restTriangle
	held        []bool
	down, move  []float64
	band        []float64
	stride      int
	trialPoints []Vec2
}

const startNotGrid = "geom: start has neither one point for each grid point nor one for each vertex"

// Flatten lays the patch flat: it minimises the area-weighted
// as-rigid-as-possible energy of the triangles by projected Newton steps, banded
// Cholesky and a halving line search that lets the energy only fall and turns no
// triangle over. w may be nil.
func Flatten(p FlattenProblem, w *FlattenWorkspace) Flat {
	if w == nil {
		w = &FlattenWorkspace{}
	}
	mesh := newSlitMesh(p.Grid, p.Slits)
	f := Flat{grid: p.Grid, slits: p.Slits, mesh: mesh, Points: startPoints(p, &mesh)}
	area, ok := w.prepare(p, &mesh, f.Points)
	if !ok {
		f.State = NoShape
		return f
	}
	w.descend(p, &f, math.Sqrt(area))
	f.measure(w.rest)
	return f
}

// prepare sizes the workspace and lays each triangle out, in the turning sense of
// the start. It returns the area of the surface, and false where a triangle has none.
func (w *FlattenWorkspace) prepare(p FlattenProblem, m *slitMesh, start []Vec2) (area float64, ok bool) {
	sense := 0.0
	for _, v := range m.triangles {
		sense += start[v[1]].Sub(start[v[0]]).Cross(start[v[2]].Sub(start[v[0]]))
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
	w.stride = 2*m.band + 2
	w.down, w.move = resized(w.down, n), resized(w.move, n)
	w.band = resized(w.band, n*w.stride)
	w.trialPoints = resized(w.trialPoints, m.vertices)
	w.held = resized(w.held, n)
	clear(w.held)
	for i := range p.Grid.At {
		if p.Hold == nil {
			break
		}
		h := p.Hold(i/m.rows, i%m.rows)
		for _, v := range [2]int{m.before[i], m.after[i]} {
			w.held[2*v] = w.held[2*v] || h.X
			w.held[2*v+1] = w.held[2*v+1] || h.Y
		}
	}
	return area, true
}

// descend moves f.Points to the least energy; size is the root of the area.
func (w *FlattenWorkspace) descend(p FlattenProblem, f *Flat, size float64) {
	most, tolerance := p.MaxIterations, p.Tolerance
	if most == 0 {
		most = DefaultFlattenIterations
	}
	if tolerance == 0 {
		tolerance = DefaultFlattenTolerance
	}
	energy, flipped := w.energy(&f.mesh, f.Points)
	f.State = NotConverged
	for f.Iterations = 0; f.Iterations < most; {
		promise, ok := w.step(&f.mesh, f.Points)
		if !ok {
			break
		}
		f.Iterations++
		var share float64
		share, energy, flipped = w.search(f, energy, flipped)
		if share == 0 {
			if promise <= roundingEnergy*(energy+roundingEnergy*size*size) {
				f.State = Converged
			}
			break
		}
		if share*w.longest() <= tolerance*size {
			f.State = Converged
			break
		}
	}
	if flipped > 0 {
		f.State = Flipped
	}
}

// roundingEnergy is the share of the energy, and its square the share of the
// area, below which a promised fall is lost in rounding.
const roundingEnergy = 1e-12

// maxHalvings ends the line search at a millionth of the Newton step.
const maxHalvings = 20

// search moves f.Points along w.move by 1, 1/2, 1/4 ... of it, the first share
// at which the energy falls and no more triangles than before are turned over.
// It returns the share, 0 where none will do, and the energy and the number
// turned over there.
func (w *FlattenWorkspace) search(f *Flat, energy float64, flipped int) (float64, float64, int) {
	share := 1.0
	for range maxHalvings {
		for v, p := range f.Points {
			w.trialPoints[v] = Vec2{p.X + share*w.move[2*v], p.Y + share*w.move[2*v+1]}
		}
		if e, n := w.energy(&f.mesh, w.trialPoints); e < energy && n <= flipped {
			copy(f.Points, w.trialPoints)
			return share, e, n
		}
		share /= 2
	}
	return 0, energy, flipped
}

// longest returns the largest coordinate of the Newton step.
func (w *FlattenWorkspace) longest() float64 {
	most := 0.0
	for _, d := range w.move {
		most = max(most, math.Abs(d))
	}
	return most
}

// resized returns s with length n, in the same memory if it is large enough.
func resized[T any](s []T, n int) []T {
	if cap(s) < n {
		return make([]T, n)
	}
	return s[:n]
}

// startPoints returns a fresh copy of the start, one point for each vertex.
func startPoints(p FlattenProblem, m *slitMesh) []Vec2 {
	points := make([]Vec2, m.vertices)
	if len(p.Start) == m.vertices {
		copy(points, p.Start)
		return points
	}
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
