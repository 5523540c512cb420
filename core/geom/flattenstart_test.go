package geom_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/geom"
)

func TestFlattenWarmStart(t *testing.T) {
	first := flatten(t, illustrativeCanoe{0.86}.problem(48, 12, 5))
	again := illustrativeCanoe{0.86}.problem(48, 12, 5)
	again.Warm = &first
	assert.Equal(t, 1, flatten(t, again).Iterations)

	next := illustrativeCanoe{0.865}.problem(48, 12, 5)
	cold := flatten(t, next)
	next.Warm = &first
	warm := flatten(t, next)
	assert.LessOrEqual(t, warm.Iterations, 3)
	for i := range warm.Points {
		require.InDelta(t, cold.Points[i].X, warm.Points[i].X, near)
		require.InDelta(t, cold.Points[i].Y, warm.Points[i].Y, near)
	}

	other := illustrativeCanoe{0.86}.problem(48, 12, 3)
	want := flatten(t, other)
	other.Warm = &first
	assert.Equal(t, want.Points, flatten(t, other).Points, "a result cut otherwise is passed over")
}

// Held coordinates are those of the start, not of the earlier result. An earlier result
// that is turned over is not used.
func TestFlattenWarmStartKeepsTheHold(t *testing.T) {
	p := illustrativeCanoe{0.86}.problem(24, 8, 3)
	first := flatten(t, p)
	mirrored, moved := p, p
	for c := range p.Grid.Cols {
		for r := range p.Grid.Rows {
			q := first.At(c, r, geom.Before)
			mirrored.Start = append(mirrored.Start, geom.Vec2{X: q.X, Y: -q.Y})
			moved.Start = append(moved.Start, geom.Vec2{X: q.X + 0.01, Y: q.Y})
		}
	}
	moved.Warm = &first
	assert.InDelta(t, first.At(0, 3, geom.Before).X+0.01, flattenAt(t, moved, 0, 3).X, near)
	mirrored.Warm = &first
	assert.InDelta(t, -first.At(0, 3, geom.Before).Y, flattenAt(t, mirrored, 0, 3).Y, near)
}

func flattenAt(t *testing.T, p geom.FlattenProblem, c, r int) geom.Vec2 {
	f := flatten(t, p)
	return f.At(c, r, geom.Before)
}

// A start that is crumpled in both directions, far from any right sheet, ends at the
// same sheet.
func TestFlattenFromARoughStart(t *testing.T) {
	const columns, rows = 24, 8
	p := illustrativeCanoe{0.86}.problem(columns, rows, 3)
	want := flatten(t, p)
	random := rand.New(rand.NewPCG(3, 3))
	for range 20 {
		p.Start = nil
		squash := geom.Vec2{X: 0.3 + random.Float64(), Y: 0.3 + random.Float64()}
		lean := 2 * random.NormFloat64()
		for c := range columns + 1 {
			for r := range rows + 1 {
				q := want.At(c, r, geom.Before)
				if q.Y < 1e-9 {
					q.Y = 0
				}
				q = geom.Vec2{X: squash.X*q.X + lean*q.Y, Y: squash.Y * q.Y}
				if r > 0 {
					q.X += 0.02 * (random.Float64() - 0.5)
					q.Y += 0.01 * (random.Float64() - 0.5)
				}
				p.Start = append(p.Start, q)
			}
		}
		got := flatten(t, p)
		assert.InDelta(t, want.RMS, got.RMS, 1e-7)
		for i := range p.Slits {
			assert.InDelta(t, want.Gore(i).Width, got.Gore(i).Width, near)
		}
	}
}

func TestFlattenNamesItsFailures(t *testing.T) {
	flat := geom.NewGrid(3, 3, func(c, r int) geom.Vec3 { return geom.Vec3{X: float64(c), Y: float64(r)} })

	folded := flat
	folded.At = append([]geom.Vec3(nil), flat.At...)
	folded.At[4] = folded.At[3]
	assert.Equal(t, geom.NoShape, geom.Flatten(geom.FlattenProblem{Grid: folded}, nil).State)
	folded.At[4].X = math.NaN()
	assert.Equal(t, geom.NoShape, geom.Flatten(geom.FlattenProblem{Grid: folded}, nil).State)

	held := geom.FlattenProblem{Grid: flat, Hold: func(c, r int) geom.Held { return geom.Held{X: true, Y: true} }}
	for i, p := range flat.At {
		held.Start = append(held.Start, geom.Vec2{X: p.X, Y: p.Y})
		if i == 4 {
			held.Start[i] = geom.Vec2{X: 2.5, Y: 2.5}
		}
	}
	assert.Equal(t, geom.Flipped, geom.Flatten(held, nil).State)

	hard := illustrativeCanoe{0.86}.problem(24, 8, 3)
	hard.MaxIterations = 1
	assert.Equal(t, geom.NotConverged, geom.Flatten(hard, nil).State)

	for _, bad := range []geom.FlattenProblem{
		{Grid: geom.Grid{Cols: 3, Rows: 3}},
		{Grid: flat, Slits: []geom.Slit{{Col: 0}}},
		{Grid: flat, Slits: []geom.Slit{{Col: 1, Foot: 2}}},
		{Grid: flat, Start: make([]geom.Vec2, 2)},
	} {
		assert.Panics(t, func() { geom.Flatten(bad, nil) })
	}
}
