package trace_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/mat"

	"barkwright/core/geom"
	"barkwright/core/internal/check"
	"barkwright/core/trace"
)

type vec = geom.Vec2

// solved is the projective map that takes each of four points to another, by gonum's solution
// of the eight linear equations that say so with the last number taken as 1.
func solved(t testing.TB, from, to [4]vec) func(vec) vec {
	t.Helper()
	a, b := mat.NewDense(8, 8, nil), mat.NewVecDense(8, nil)
	for i, p := range from {
		q := to[i]
		a.SetRow(2*i, []float64{p.X, p.Y, 1, 0, 0, 0, -q.X * p.X, -q.X * p.Y})
		a.SetRow(2*i+1, []float64{0, 0, 0, p.X, p.Y, 1, -q.Y * p.X, -q.Y * p.Y})
		b.SetVec(2*i, q.X)
		b.SetVec(2*i+1, q.Y)
	}
	var h mat.VecDense
	require.NoError(t, h.SolveVec(a, b))
	at := h.AtVec
	return func(p vec) vec {
		w := at(6)*p.X + at(7)*p.Y + 1
		return vec{X: (at(0)*p.X + at(1)*p.Y + at(2)) / w, Y: (at(3)*p.X + at(4)*p.Y + at(5)) / w}
	}
}

// Random pictures of a rectangle, mirrored ones too, are set square as gonum's solution sets
// them, and lead back.
func TestSquareIsTheProjectiveMap(t *testing.T) {
	r := rand.New(rand.NewPCG(17, 1))
	for n := range 300 {
		wide, high := 0.5+4*check.Share(r), 0.5+4*check.Share(r)
		corners := [4]vec{{X: 100, Y: 900}, {X: 1100, Y: 900}, {X: 1100, Y: 100}, {X: 100, Y: 100}}
		for i := range corners {
			corners[i] = corners[i].Add(vec{X: 300 * (check.Share(r) - 0.5), Y: 300 * (check.Share(r) - 0.5)})
			if n%2 == 1 {
				corners[i].X = 1200 - corners[i].X
			}
		}
		s, err := trace.SquareOf(corners, wide, high)
		require.NoError(t, err)
		want := solved(t, corners, [4]vec{{}, {X: wide}, {X: wide, Y: high}, {Y: high}})
		for range 20 {
			p := corners[0].Lerp(corners[1], check.Share(r)).Lerp(corners[3].Lerp(corners[2], check.Share(r)), check.Share(r))
			got, ok := s.At(p)
			require.True(t, ok)
			assert.InDelta(t, 0, got.Sub(want(p)).Len(), 1e-9)
			back, ok := s.Back(got)
			require.True(t, ok)
			assert.InDelta(t, 0, back.Sub(p).Len(), 1e-9)
		}
	}
}

// camera is a pinhole camera, the closed form of a perspective view: it stands at a place in
// front of the plane z = 0 and looks at a point of it.
type camera struct{ from, at geom.Vec3 }

func (c camera) pixel(p vec) vec {
	ahead := c.at.Sub(c.from)
	ahead = ahead.Scale(1 / ahead.Len())
	right := geom.Vec3{X: 1}.Sub(ahead.Scale(ahead.X))
	right = right.Scale(1 / right.Len())
	down := ahead.Cross(right)
	d := geom.Vec3{X: p.X, Y: p.Y}.Sub(c.from)
	const focal = 1500
	return vec{X: 1000 + focal*d.Dot(right)/d.Dot(ahead), Y: 800 + focal*d.Dot(down)/d.Dot(ahead)}
}

// A grid in a plane, seen askew, is set square by a rectangle's corners pressed to whole
// pixels: every point of the grid inside it within a pixel of where the camera has it.
func TestGridIsSetSquare(t *testing.T) {
	for _, c := range []camera{
		{geom.Vec3{X: -1.5, Y: 1, Z: 4}, geom.Vec3{X: 0.3, Y: 0.4}},
		{geom.Vec3{X: 2, Y: 2, Z: 3.5}, geom.Vec3{Y: 0.5}},
		{geom.Vec3{Y: -1, Z: 5}, geom.Vec3{Y: 0.5}},
	} {
		const wide, high = 2.4, 1.2
		var corners [4]vec
		for i, p := range [4]vec{{}, {X: wide}, {X: wide, Y: high}, {Y: high}} {
			q := c.pixel(p)
			corners[i] = vec{X: math.Round(q.X), Y: math.Round(q.Y)}
		}
		s, err := trace.SquareOf(corners, wide, high)
		require.NoError(t, err)
		for i := range 25 {
			for j := range 13 {
				at := vec{X: 0.1 * float64(i), Y: 0.1 * float64(j)}
				got, ok := s.Back(at)
				require.True(t, ok)
				assert.Less(t, got.Sub(c.pixel(at)).Len(), 1.0, "%v seen from %v", at, c.from)
			}
		}
	}
}

// What is no picture of a rectangle is refused by name, and a point past the horizon of its
// plane is not read.
func TestWhatIsNoRectangle(t *testing.T) {
	for name, corners := range map[string][4]vec{
		"crossed":       {{}, {X: 100}, {Y: 100}, {X: 100, Y: 100}},
		"in a line":     {{}, {X: 100}, {X: 200}, {Y: 100}},
		"one point":     {},
		"hollow":        {{}, {X: 100}, {X: 20, Y: 20}, {Y: 100}},
		"nearly a line": {{}, {X: 1000}, {X: 1000, Y: 4}, {Y: 4}},
	} {
		_, err := trace.SquareOf(corners, 1, 1)
		if name == "nearly a line" {
			// A long low rectangle is one: its corners are square.
			assert.NoError(t, err, name)
			continue
		}
		assert.ErrorIs(t, err, trace.BadCorners, name)
	}
	_, err := trace.SquareOf([4]vec{{}, {X: 100}, {X: 100, Y: 100}, {Y: 100}}, 0, 1)
	assert.ErrorIs(t, err, trace.NoSides)
	// Its sides meet at (150, -500): the horizon runs through there.
	s, err := trace.SquareOf([4]vec{{X: 0, Y: 100}, {X: 300, Y: 100}, {X: 250, Y: -100}, {X: 50, Y: -100}}, 1, 1)
	require.NoError(t, err)
	_, ok := s.At(vec{X: 150, Y: -499})
	assert.True(t, ok)
	_, ok = s.At(vec{X: 150, Y: -501})
	assert.False(t, ok)
}
