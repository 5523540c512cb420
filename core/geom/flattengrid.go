package geom

import "slices"

// Grid is a structured patch of surface: Cols columns of Rows points each, the
// columns standing along a base line that joins the points of row 0. At holds
// the points column by column, point (c, r) at c*Rows + r.
type Grid struct {
	Cols, Rows int
	At         []Vec3
}

// NewGrid fills a grid of cols x rows points from at(column, row).
func NewGrid(cols, rows int, at func(c, r int) Vec3) Grid {
	g := Grid{Cols: cols, Rows: rows, At: make([]Vec3, 0, cols*rows)}
	for c := range cols {
		for r := range rows {
			g.At = append(g.At, at(c, r))
		}
	}
	return g
}

// Point returns the point of column c and row r.
func (g Grid) Point(c, r int) Vec3 { return g.At[c*g.Rows+r] }

// Slit is a cut along column Col from row Foot, which stays whole, to the last row.
type Slit struct{ Col, Foot int }

// Side names the two banks of a slit: Before is the one joined to the columns of
// smaller number, After the other. Away from a slit the two are the same point.
type Side int

const (
	Before Side = iota
	After
)

// collapsedShare is the spread of a column, as a share of the grid's own, below
// which its points count as one: far above rounding, far below any mesh width.
const collapsedShare = 1e-9

const (
	gridTooSmall   = "geom: grid under 2 x 2, or its points do not fill it"
	slitsNotInside = "geom: slits not in increasing columns inside the grid"
)

// slitMesh is a grid cut open: which vertex stands at either side of each grid
// point, and the triangles, counter-clockwise with columns to the right and
// rows upward. Vertices are numbered column by column and the two banks of a slit
// side by side, so that a triangle never joins numbers far apart.
type slitMesh struct {
	rows      int
	before    []int
	after     []int
	vertices  int
	triangles [][3]int
	corners   [][3]int // the same triangles by grid point
	first     []int    // by vertex, the least number it shares a triangle with
}

// newSlitMesh cuts g open. The diagonals of the cells alternate like the squares
// of a draughts board, which is its own mirror image in the middle column where
// the number of cells along the base is even. A column whose points all coincide,
// as at the tip of a pointed patch, is one vertex.
//
// The mesh of an earlier patch, which may be nil, is taken over where it is the same.
func newSlitMesh(g Grid, slits []Slit, earlier *slitMesh) slitMesh {
	if g.Cols < 2 || g.Rows < 2 || len(g.At) != g.Cols*g.Rows {
		panic(gridTooSmall)
	}
	foot := make([]int, g.Cols)
	for c := range foot {
		foot[c] = g.Rows
	}
	for i, s := range slits {
		if s.Col < 1 || s.Col > g.Cols-2 || s.Foot < 0 || s.Foot > g.Rows-2 || (i > 0 && s.Col <= slits[i-1].Col) {
			panic(slitsNotInside)
		}
		foot[s.Col] = s.Foot
	}
	m := slitMesh{rows: g.Rows, before: make([]int, len(g.At)), after: make([]int, len(g.At))}
	size := spread(g.At)
	for c := range g.Cols {
		one := spread(g.At[c*g.Rows:(c+1)*g.Rows]) <= collapsedShare*size
		for r := range g.Rows {
			if r == 0 || !one {
				m.vertices++
			}
			i := c*g.Rows + r
			m.before[i] = m.vertices - 1
			if r > foot[c] && !one {
				m.vertices++
			}
			m.after[i] = m.vertices - 1
		}
	}
	if earlier != nil && earlier.rows == m.rows && slices.Equal(earlier.before, m.before) &&
		slices.Equal(earlier.after, m.after) {
		return *earlier
	}
	m.triangulate(g)
	return m
}

// triangulate lists the triangles that have three vertices, and which numbers they join.
func (m *slitMesh) triangulate(g Grid) {
	cells := (g.Cols - 1) * (g.Rows - 1)
	m.triangles = make([][3]int, 0, 2*cells)
	m.corners = make([][3]int, 0, 2*cells)
	m.first = make([]int, m.vertices)
	for v := range m.first {
		m.first[v] = v
	}
	for c := range g.Cols - 1 {
		for r := range g.Rows - 1 {
			a := c*g.Rows + r
			b := a + g.Rows
			// The left column's points stand behind a slit there, the right column's before one.
			quad := [4]corner{{a, m.after[a]}, {b, m.before[b]}, {b + 1, m.before[b+1]}, {a + 1, m.after[a+1]}}
			first := (c + r) % 2
			m.add(quad[first], quad[first+1], quad[(first+2)%4])
			m.add(quad[first], quad[(first+2)%4], quad[(first+3)%4])
		}
	}
}

// corner is a corner of a triangle: a grid point and its vertex.
type corner struct{ point, vertex int }

// add appends a triangle.
func (m *slitMesh) add(a, b, c corner) {
	if a.vertex == b.vertex || b.vertex == c.vertex || c.vertex == a.vertex {
		return
	}
	v := [3]int{a.vertex, b.vertex, c.vertex}
	m.triangles = append(m.triangles, v)
	m.corners = append(m.corners, [3]int{a.point, b.point, c.point})
	least := min(v[0], v[1], v[2])
	for _, i := range v {
		m.first[i] = min(m.first[i], least)
	}
}

// vertex returns the number of the vertex at a side of a grid point.
func (m *slitMesh) vertex(c, r int, side Side) int {
	if side == After {
		return m.after[c*m.rows+r]
	}
	return m.before[c*m.rows+r]
}

// spread returns the largest distance of the points from the first.
func spread(points []Vec3) float64 {
	most := 0.0
	for _, p := range points {
		most = max(most, p.Sub(points[0]).Len())
	}
	return most
}
