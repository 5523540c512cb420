package geom

import "math"

// FlattenProblem is a patch of surface to be laid flat with as little stretch as
// it will bear.
type FlattenProblem struct {
	Grid  Grid
	Slits []Slit // in increasing columns, none in the first or the last

	// Hold says which coordinates of the point at (c, r), on both sides of a
	// slit, stay where the start puts them. A line of symmetry is a row held in Y
	// or a column held in X, a rigid piece is held in both. Nil holds just enough
	// to keep a free sheet from drifting: its first vertex, and the direction from
	// there to the one farthest off.
	Hold func(c, r int) Held

	// Start is where the search begins: one point for each grid point, in the
	// order of Grid.At. Nil means the base laid straight along X by its chords and
	// each column square to it. The turning sense of the start, by its total area,
	// is kept: a start laid out mirrored gives the mirrored sheet.
	Start []Vec2

	// Warm is an earlier result to begin from instead, held coordinates apart. It
	// is passed over where its columns, rows, slits or turning sense are others.
	Warm *Flat

	MaxIterations int     // 0 means DefaultFlattenIterations
	Tolerance     float64 // largest last move over the root of the area; 0 means DefaultFlattenTolerance
}

// Held says which coordinates of a point are fixed.
type Held struct{ X, Y bool }

// DefaultFlattenIterations is many times what smooth patches need, 5 to 20. A strip with a waist
// of a few millimetres, about which its end swings as on a hinge, took 125.
const DefaultFlattenIterations = 160

// DefaultFlattenTolerance is the largest move of the last iteration, as a share
// of the square root of the area: 1.5 micrometres on a patch of 2.3 square metres.
const DefaultFlattenTolerance = 1e-6

// FlattenState says how a flattening ended.
type FlattenState int

const (
	Converged    FlattenState = iota // the last Newton step is under the tolerance
	NotConverged                     // the iterations ran out, or no downhill step was left
	Flipped                          // some triangles are turned over at the end
	NoShape                          // a triangle of the grid has no area, or a point is NaN or infinite
	CutOff                           // FlattenWorkspace.Pause ended it
)

func (s FlattenState) String() string {
	return [...]string{"converged", "not converged", "flipped", "no shape", "cut off"}[s]
}

// FlattenWorkspace is memory that flattenings of like size share, so that a
// warm one allocates little more than its result. The zero value is ready; it
// carries nothing from one result to the next and serves one call at a time.
type FlattenWorkspace struct {
	// Pause, where it is set, is called between small pieces of the work, each of
	// pauseWork multiplications or less. It returns whether to go on; where it
	// returns false the flattening ends at once in the state CutOff.
	Pause func() bool

	rest        []restTriangle
	held        []bool
	down, move  []float64
	hessian     envelope
	trialPoints []Vec2
}

// Flatten lays the patch flat: it minimises the area-weighted
// as-rigid-as-possible energy of the triangles by projected Newton steps, an
// envelope Cholesky and a halving line search that lets the energy only fall and
// turns no triangle over. Only where every such step is barred, as from a crumpled
// start, may triangles turn over on the way; a sheet that ends with one is Flipped.
// w may be nil.
func Flatten(p FlattenProblem, w *FlattenWorkspace) Flat {
	if w == nil {
		w = &FlattenWorkspace{}
	}
	var earlier *slitMesh
	if p.Warm != nil {
		earlier = &p.Warm.mesh
	}
	mesh := newSlitMesh(p.Grid, p.Slits, earlier)
	f := Flat{grid: p.Grid, slits: p.Slits, mesh: mesh, Points: startPoints(p, &mesh)}
	area, ok := w.prepare(p, &f)
	if !ok {
		f.State = NoShape
		return f
	}
	w.descend(p, &f, math.Sqrt(area))
	if f.State != CutOff {
		f.measure(w.rest)
	}
	return f
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
		promise, solved := w.step(&f.mesh, f.Points)
		if solved == stopped {
			f.State = CutOff
			return
		}
		if solved == singular {
			break
		}
		f.Iterations++
		moved := false
		for _, allowed := range [2]int{flipped, len(f.mesh.triangles)} {
			if moved, energy, flipped = w.search(f, energy, flipped, allowed); moved {
				break
			}
		}
		lost := promise <= roundingEnergy*(energy+roundingEnergy*size*size)
		if w.longest() <= tolerance*size || !moved && lost {
			f.State = Converged
		}
		if f.State == Converged || !moved {
			break
		}
	}
	if flipped > 0 {
		f.State = Flipped
	}
}

// roundingEnergy is the share of the energy, and its square the share of the
// area (a strain of 1e-10), below which a promised fall is lost in rounding.
const roundingEnergy = 1e-10

// maxHalvings ends the line search at a thousandth of the Newton step.
const maxHalvings = 10

// search moves f.Points along w.move by 1, 1/2, 1/4 ... of it, the first share at
// which the energy falls and no more than the allowed number of triangles are
// turned over. It returns whether one was found, and the energy and the number
// turned over where the points now are.
func (w *FlattenWorkspace) search(f *Flat, energy float64, flipped, allowed int) (bool, float64, int) {
	share := 1.0
	for range maxHalvings {
		for v, p := range f.Points {
			w.trialPoints[v] = Vec2{p.X + share*w.move[2*v], p.Y + share*w.move[2*v+1]}
		}
		if e, n := w.energy(&f.mesh, w.trialPoints); e < energy && n <= allowed {
			copy(f.Points, w.trialPoints)
			return true, e, n
		}
		share /= 2
	}
	return false, energy, flipped
}

// longest returns the largest coordinate of the Newton step.
func (w *FlattenWorkspace) longest() float64 {
	most := 0.0
	for _, d := range w.move {
		// max is a call in a browser.
		if d = math.Abs(d); d > most {
			most = d
		}
	}
	return most
}
