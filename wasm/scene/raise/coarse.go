package raise

import (
	"math"
	"slices"

	"barkwright/core/geom"
)

// The strides at which a raising is eased before it is eased edge by edge, and the
// rounds at each. Choices of this project: with half the rounds, one of the starting
// boats is not settled when the rounds of the edges run out.
var raiseStrides = [...]int{8, 4, 2}

const raiseRounds = 200

// atHeel is how near to the heel's place a column stands at it.
const atHeel = 1e-7

// coarse is a raising reduced to fewer columns and rows. Errors that extend over the
// length of the boat are eased there. From edge to edge they would take thousands of
// rounds.
type coarse struct {
	*raising
	columns, rows []int
}

// coarsened keeps every stride-th column and row. It also keeps the last ones, those of
// the slits and their feet, and the heel, where the bark is folded.
func (r *raising) coarsened(stride int) coarse {
	keep := []int{r.Curved.Cols - 1}
	for _, s := range r.Slits() {
		keep = append(keep, s.Col)
	}
	for c, place := range r.Places {
		if math.Abs(place-1) < atHeel {
			keep = append(keep, c)
		}
	}
	pick := func(n int, keep ...int) (out []int) {
		for i := range n {
			if i%stride == 0 || slices.Contains(keep, i) {
				out = append(out, i)
			}
		}
		return out
	}
	return coarse{r, pick(r.Curved.Cols, keep...), pick(r.Rows, r.FootRow, r.Rows-1)}
}

// ease eases the edges of the coarse cells and carries over to the points between
// what that moved, in proportion to where they lie.
func (k coarse) ease() {
	start, fine := slices.Clone(k.out), k.edges
	k.edges = k.cellEdges()
	for range raiseRounds {
		k.raising.ease()
	}
	k.edges = fine
	moved := make([]geom.Vec3, len(start))
	for i := range moved {
		moved[i] = k.out[i].Sub(start[i])
	}
	neighbours(k.columns, func(left, right int) {
		neighbours(k.rows, func(low, high int) {
			at := func(row int, u float64) geom.Vec3 {
				return moved[k.Vertex(left, row, geom.After)].Lerp(moved[k.Vertex(right, row, geom.Before)], u)
			}
			for c := left; c <= right; c++ {
				side, u := geom.After, float64(c-left)/float64(right-left)
				if c == right {
					side = geom.Before
				}
				lower, upper := at(low, u), at(high, u)
				for row := low; row <= high; row++ {
					v := k.Vertex(c, row, side)
					k.out[v] = start[v].Add(lower.Lerp(upper, float64(row-low)/float64(high-low)))
				}
			}
		})
	})
}

// cellEdges lists the sides and one diagonal of each coarse cell; a side that two
// cells share is in it twice.
func (k coarse) cellEdges() (edges []raisedEdge) {
	neighbours(k.columns, func(left, right int) {
		neighbours(k.rows, func(low, high int) {
			at := func(c, row int) raisedPoint {
				side := geom.After
				if c == right {
					side = geom.Before
				}
				return raisedPoint{k.Vertex(c, row, side), k.Curved.Point(c, row)}
			}
			a, b, c, d := at(left, low), at(right, low), at(right, high), at(left, high)
			edges = append(edges, k.edge(a, b), k.edge(b, c), k.edge(c, d), k.edge(d, a), k.edge(a, c))
		})
	})
	return edges
}

// neighbours calls f with each two that follow one another in a list.
func neighbours(list []int, f func(low, high int)) {
	for i := 1; i < len(list); i++ {
		f(list[i-1], list[i])
	}
}
