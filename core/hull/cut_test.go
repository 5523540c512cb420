package hull_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/geom"
	"barkwright/core/hull"
	"barkwright/core/internal/check"
	"barkwright/core/units"
)

// The cut of a leaning plane against the skin's own columns, each row of them searched
// for the place where it passes through the plane: within 1/12 in of it and its girth
// within 1/32, so that a rib read to a sixteenth stands.
func TestCutAgainstTheColumns(t *testing.T) {
	const in = units.Inch
	for _, d := range append(design.Starting(), design.Default(), check.With(t, "greatestBeam", 38*in)) {
		h := hull.New(d)
		board := d.HeadboardX()
		for _, at := range [][2]float64{
			{board, board}, {board + 2*in, board}, {board - 2.5*in, board - 4*in}, {board - 9*in, board - 10*in},
			{h.HeelX / 2, h.HeelX / 2},
		} {
			c := h.CutAt(at[0], at[1])
			points := searched(t, h, c, at[1], 32)
			cut := c.Sample(2000)
			for _, p := range points {
				near := math.Inf(1)
				for _, q := range cut {
					near = min(near, q.Sub(p).Len())
				}
				assert.Less(t, near, in/12, "%s, foot %.2f top %.2f", d.Name, at[0]/in, at[1]/in)
			}
			// Chords at full and at half step give the length without their leading error.
			var every []geom.Vec2
			for i := 0; i < len(points); i += 2 {
				every = append(every, points[i])
			}
			girth := (4*geom.NewPolyline(points).Length() - geom.NewPolyline(every).Length()) / 3
			assert.InDelta(t, girth, c.HalfGirth(), in/32, "%s, foot %.2f top %.2f", d.Name, at[0]/in, at[1]/in)
		}
	}
}

// searched are the points where rows of the columns pass through the cut's plane.
func searched(t *testing.T, h *hull.Hull, c hull.Cut, top float64, n int) []geom.Vec2 {
	across := geom.Vec2{X: c.Up.Y, Y: -c.Up.X}
	side := func(p geom.Vec3) float64 { return geom.Vec2{X: p.X, Y: p.Z}.Sub(c.Foot).Dot(across) }
	high := h.ColumnAtEdge(top)
	out := make([]geom.Vec2, n+1)
	for i := range out {
		v, ok := geom.Bisect(func(v float64) float64 { return side(h.Column(v).Points(n)[i]) }, max(0, high-0.5),
			min(2, high+0.5), 1e-9)
		require.True(t, ok)
		p := h.Column(v).Points(n)[i]
		out[i] = geom.Vec2{X: p.Y, Y: geom.Vec2{X: p.X, Y: p.Z}.Sub(c.Foot).Dot(c.Up)}
	}
	return out
}

// A plumb cut as far as the heel is the section there, and every cut stands on the
// floor and ends on the top edge.
func TestCutMeetsFloorAndEdge(t *testing.T) {
	for _, d := range []design.Design{design.Default(), check.With(t, "greatestBeam", 38*units.Inch)} {
		h := hull.New(d)
		for _, x := range []float64{0, 0.5, 1.2, h.HeelX} {
			c, s := h.CutAt(x, x), h.Section(x)
			assert.InDelta(t, s.HalfGirth(), c.HalfGirth(), 1e-9)
			assert.InDelta(t, s.Turning(), c.Turning(), 1e-9)
		}
		for _, foot := range []float64{1.9, 2.0, 2.15} {
			c := h.CutAt(foot, 2.05)
			assert.InDelta(t, foot, c.Foot.X, 1e-9)
			assert.InDelta(t, h.Floor(foot), c.Foot.Y, 1e-9)
			top := c.Lift(c.P)
			assert.InDelta(t, 2.05, top.X, 1e-9)
			assert.InDelta(t, h.TopEdge(2.05), top.Z, 1e-9)
			assert.InDelta(t, h.SkinHalfBreadth(2.05), top.Y, 1e-9)
		}
	}
}

// The profile's tables are read both ways, and its tightest place on a piece of it is
// that of a fine search.
func TestProfileByRunAndParameter(t *testing.T) {
	h := hull.New(design.Default())
	e := h.End
	for _, s := range []float64{0, 0.013, 0.4, 0.77, 1} {
		assert.InDelta(t, s, e.ParameterAt(e.RunAt(s)), 1e-9)
		assert.InDelta(t, 0, e.Path.At(e.RunAt(s)).Sub(e.At(s)).Len(), 1e-4)
	}
	for _, x := range []float64{h.HeelX - 1, h.HeelX, h.HeelX + 0.05, h.Foremost() - 0.01} {
		assert.InDelta(t, max(x, h.HeelX), e.Path.At(e.RunTo(x)).X, 1e-9)
	}
	for _, from := range []float64{0, 0.3, 0.8} {
		_, radius := e.TightestFrom(from)
		least := math.Inf(1)
		for i := range 4001 {
			least = min(least, 1/math.Abs(e.Curvature(from+(1-from)*float64(i)/4000)))
		}
		// A search misses the least by the square of its step.
		assert.InEpsilon(t, least, radius, 1e-6)
		assert.InEpsilon(t, least, e.TightestBetween(from, 1), 1e-6)
	}
}

// The slope of the bottom by differences, held at the heel's past it.
func TestBottomSlope(t *testing.T) {
	h := hull.New(check.With(t, "rocker", 3*units.Inch))
	for _, x := range []float64{0.1, 1, 2} {
		assert.InDelta(t, geom.Slope(h.Bottom, x, 1e-4), h.BottomSlope(x), 1e-9)
	}
	assert.Equal(t, h.BottomSlope(h.HeelX), h.BottomSlope(h.HeelX+0.2))
}
