package geom_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/geom"
	"barkwright/core/internal/bodies"
)

// near is the tolerance, in metres, between two flattenings of one sheet by
// different ways: a few of the solver's last moves.
const near = 1e-5

func TestFlattenMirrorSymmetry(t *testing.T) {
	const columns, rows = 48, 12
	f := flatten(t, illustrativeCanoe{0.86}.problem(columns, rows, 5))
	for c := range columns + 1 {
		for r := range rows + 1 {
			a, b := f.At(c, r, geom.Before), f.At(columns-c, r, geom.After)
			require.InDelta(t, a.X-f.At(24, 0, geom.Before).X, f.At(24, 0, geom.Before).X-b.X, near, "column %d row %d", c, r)
			require.InDelta(t, a.Y, b.Y, near, "column %d row %d", c, r)
		}
	}
}

// A quarter held on its two lines of symmetry is half of the half skin, and the
// half gore on its first column half of the middle gore.
func TestFlattenQuarterIsHalfTheHalf(t *testing.T) {
	const columns, rows, foot = 24, 12, 5
	half := flatten(t, illustrativeCanoe{0.86}.problem(2*columns, rows, 5))
	quarter := flatten(t, geom.FlattenProblem{
		Grid:  illustrativeCanoe{0.86}.grid(0, columns, rows),
		Slits: []geom.Slit{{Col: 8, Foot: foot}, {Col: 16, Foot: foot}},
		Hold:  func(c, r int) geom.Held { return geom.Held{X: c == 0 && r <= foot, Y: r == 0} },
	})
	middle := half.At(columns, 0, geom.Before).X
	for c := range columns + 1 {
		for r := range rows + 1 {
			a, b := quarter.At(c, r, geom.After), half.At(columns+c, r, geom.After)
			require.InDelta(t, a.X, b.X-middle, near, "column %d row %d", c, r)
			require.InDelta(t, a.Y, b.Y, near, "column %d row %d", c, r)
		}
	}
	bank := quarter.Column(0, foot, geom.Before)
	other := make([]geom.Vec2, len(bank))
	for i, p := range bank {
		other[i] = geom.Vec2{X: -p.X, Y: p.Y}
	}
	assert.InDelta(t, half.Gore(2).Width, geom.NewGore(other, bank, 1).Width, 2*near)
	assert.InDelta(t, half.RMS, quarter.RMS, 1e-6)
}

func TestFlattenScales(t *testing.T) {
	p := illustrativeCanoe{0.86}.problem(24, 8, 3)
	f := flatten(t, p)
	for _, k := range []float64{1e-6, 1e6} {
		q := p
		q.Grid.At = make([]geom.Vec3, len(p.Grid.At))
		for i, at := range p.Grid.At {
			q.Grid.At[i] = at.Scale(k)
		}
		g := flatten(t, q)
		assert.Equal(t, f.Iterations, g.Iterations)
		assert.InEpsilon(t, f.P95, g.P95, 1e-9)
		assert.InEpsilon(t, f.Area*k*k, g.Area, 1e-12)
		for i := range p.Slits {
			assert.InEpsilon(t, k*f.Gore(i).Width, g.Gore(i).Width, 1e-9)
			assert.InEpsilon(t, f.Gore(i).Angle, g.Gore(i).Angle, 1e-9)
		}
	}
}

// A start laid out mirrored gives the mirrored sheet, not a false minimum, and its
// gores still open.
func TestFlattenKeepsTheTurningSense(t *testing.T) {
	p := illustrativeCanoe{0.86}.problem(24, 8, 3)
	f := flatten(t, p)
	for c := range p.Grid.Cols {
		for r := range p.Grid.Rows {
			q := f.At(c, r, geom.Before)
			p.Start = append(p.Start, geom.Vec2{X: q.X, Y: -q.Y})
		}
	}
	g := flatten(t, p)
	assert.InDelta(t, f.RMS, g.RMS, 1e-6)
	for i := range p.Slits {
		assert.InDelta(t, f.Gore(i).Width, g.Gore(i).Width, near)
		assert.Positive(t, g.Gore(i).Angle)
	}
}

// Adding slits to others cannot raise the energy. On one mesh it therefore cannot raise
// the rms, apart from the solver's last digit.
func TestMoreSlitsLeaveNoMoreStretch(t *testing.T) {
	rms := math.Inf(1)
	for _, gores := range []int{0, 1, 3, 7, 15} {
		f := flatten(t, illustrativeCanoe{0.86}.problem(48, 12, gores))
		assert.LessOrEqual(t, f.RMS, rms+1e-9, "%d gores", gores)
		rms = f.RMS
		_, crosses := selfCrossing(f.Outline())
		assert.False(t, crosses)
	}
}

// Halving the mesh moves the rms by under a tenth and a gore by under half a millimetre.
func TestFlattenGridError(t *testing.T) {
	coarse := flatten(t, illustrativeCanoe{0.86}.problem(48, 10, 5))
	fine := flatten(t, illustrativeCanoe{0.86}.problem(96, 20, 5))
	assert.InEpsilon(t, fine.RMS, coarse.RMS, 0.1)
	for i := range coarse.Slits() {
		assert.InDelta(t, fine.Gore(i).Width, coarse.Gore(i).Width, 0.5e-3)
	}
}

// A closed surface of waves up to about 30 degrees steep in both directions, its slits
// anywhere, its base held, held in part or free.
func TestFlattenRandomSmoothSurfaces(t *testing.T) {
	random := rand.New(rand.NewPCG(1, 1))
	for trial := range 60 {
		var wave [4][4]float64
		for i := range wave {
			wave[i] = [4]float64{0.05 * random.NormFloat64(), 4 * random.Float64(), 4 * random.Float64(), 7 * random.Float64()}
		}
		columns, rows := 10+random.IntN(30), 5+random.IntN(12)
		p := geom.FlattenProblem{Grid: geom.NewGrid(columns+1, rows+1, func(c, r int) geom.Vec3 {
			at := geom.Vec3{X: 2 * float64(c) / float64(columns), Y: float64(r) / float64(rows)}
			for _, w := range wave {
				at.Z += w[0] * math.Sin(w[1]*at.X+w[2]*at.Y+w[3])
			}
			return at
		})}
		for c := 1 + random.IntN(4); c < columns; c += 1 + random.IntN(columns) {
			p.Slits = append(p.Slits, geom.Slit{Col: c, Foot: 1 + random.IntN(rows-1)})
		}
		if end := random.IntN(columns + 1); trial%3 > 0 {
			p.Hold = func(c, r int) geom.Held {
				return geom.Held{X: c == 0 && r == 0, Y: r == 0 && (c <= end || trial%3 == 1)}
			}
			if end == 0 && trial%3 == 2 {
				p.Hold = nil
			}
		}
		f := flatten(t, p)
		for _, s := range f.Stretches {
			require.Positive(t, s.S2, "trial %d", trial)
		}
	}
}

// The outline encloses the sheet: its area by the shoelace is that of the triangles.
func TestOutlineEnclosesTheSheet(t *testing.T) {
	f := flatten(t, illustrativeCanoe{0.86}.problem(24, 8, 3))
	line := f.Outline()
	twice := 0.0
	for i, p := range line {
		twice += p.Cross(line[(i+1)%len(line)])
	}
	assert.InEpsilon(t, f.FlatArea, twice/2, 1e-12)
	assert.Len(t, line, 2*24+2*8+3*2*5)
}

// One workspace serves problems of any size in turn and changes none of their results.
func TestFlattenWorkspaceCarriesNothing(t *testing.T) {
	var w geom.FlattenWorkspace
	small, large := illustrativeCanoe{0.86}.problem(24, 8, 3), illustrativeCanoe{0.86}.problem(48, 12, 5)
	first := geom.Flatten(small, &w)
	geom.Flatten(large, &w)
	assert.Equal(t, first.Points, geom.Flatten(small, &w).Points)
	assert.Equal(t, first.Points, geom.Flatten(small, nil).Points)
}

// A patch that runs to a point in its last column: a cone's sector with the tip on it.
func TestFlattenCollapsedColumn(t *testing.T) {
	cone := bodies.Frustum{R1: 0, R2: 0.3, H: 0.4}
	g := geom.NewGrid(9, 13, func(c, r int) geom.Vec3 {
		return cone.At(math.Pi/2*float64(r)/12, 1-float64(c)/8)
	})
	f := flatten(t, geom.FlattenProblem{Grid: g, Tolerance: tight})
	assert.Less(t, worst(f), 1e-9, "a cone lies flat")
	assert.Equal(t, f.At(8, 0, geom.Before), f.At(8, 12, geom.Before))
	assert.Len(t, f.Outline(), 2*8+12)
}

// A slit in a surface that lies flat by itself stays shut, and every line keeps its length.
func TestFlattenDevelopableWithSlits(t *testing.T) {
	trough := bodies.EllipseCylinder{A: 0.45, B: 0.33}
	g := geom.NewGrid(9, 13, func(c, r int) geom.Vec3 { return trough.At(float64(c)/8, float64(r)/12) })
	f := flatten(t, geom.FlattenProblem{Grid: g, Slits: evenSlits(8, 4, 3), Hold: baseHeld, Tolerance: tight})
	for i := range f.Slits() {
		assert.InDelta(t, 0, f.Gore(i).Width, 1e-12)
	}
	assert.Len(t, f.Row(12), 4)
	row, column := rowLengths(f, g, 12), f.ColumnLengths(2, 4, geom.After)
	assert.InDelta(t, row.Surface, row.Flat, 1e-12)
	assert.InDelta(t, column.Surface, column.Flat, 1e-12)
	_, crosses := selfCrossing(f.Outline())
	assert.False(t, crosses, "shut banks touch")
}

// The search ends for a sheet that nothing holds, for pieces hinged at single points and
// for a tolerance finer than rounding.
func TestFlattenLooseAndFine(t *testing.T) {
	p := illustrativeCanoe{0.86}.problem(24, 8, 0)
	p.Hold = nil
	want := flatten(t, p)
	p.Hold = func(c, r int) geom.Held { return geom.Held{} }
	got := flatten(t, p)
	assert.InDelta(t, want.RMS, got.RMS, 1e-7)

	p.Slits = []geom.Slit{{Col: 12, Foot: 0}}
	hinged := flatten(t, p)
	assert.Less(t, hinged.RMS, got.RMS)

	p = illustrativeCanoe{0.86}.problem(24, 8, 3)
	p.Tolerance = 1e-18
	fine := flatten(t, p)
	assert.Less(t, fine.Iterations, geom.DefaultFlattenIterations)
}

func TestSelfCrossing(t *testing.T) {
	at, crosses := selfCrossing([]geom.Vec2{{X: 0, Y: 0}, {X: 2, Y: 2}, {X: 2, Y: 0}, {X: 0, Y: 2}})
	assert.True(t, crosses)
	assert.Equal(t, geom.Vec2{X: 1, Y: 1}, at)
	_, crosses = selfCrossing([]geom.Vec2{{X: 0, Y: 0}, {X: 2, Y: 0}, {X: 2, Y: 2}, {X: 1, Y: 2}, {X: 1, Y: 1},
		{X: 1, Y: 2}, {X: 0, Y: 2}})
	assert.False(t, crosses, "the closed banks of a slit touch")
}
