package geom_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/geom"
	"barkwright/core/internal/bodies"
)

const degree = math.Pi / 180

// The printed values here and in the pan's and the illustrative canoe's tests are
// check values computed apart from this program by quadrature and by another
// implementation of the same energy; no published table of them is known. The
// closed forms they tend to are named at each.

// tight is a tolerance for tests that compare beyond the default's digits.
const tight = 1e-10

// flatten lays p flat and fails the test unless it converged.
func flatten(t testing.TB, p geom.FlattenProblem) geom.Flat {
	t.Helper()
	f := geom.Flatten(p, nil)
	require.Equal(t, geom.Converged, f.State, "state %v after %d iterations", f.State, f.Iterations)
	return f
}

func worst(f geom.Flat) float64 {
	most := 0.0
	for _, s := range f.Stretches {
		most = max(most, s.Worst())
	}
	return most
}

func frustumGrid(f bodies.Frustum, angle float64) geom.Grid {
	return geom.NewGrid(17, 9, func(c, r int) geom.Vec3 { return f.At(angle*float64(c)/16, float64(r)/8) })
}

// Source: closed form, flat radii r s/(r2-r1) and sector angle 2 pi (r2-r1)/s. The
// chords of a polyhedral cone develop exactly, so only rounding is allowed.
func TestFlattenFrustum(t *testing.T) {
	for _, test := range []struct {
		frustum       bodies.Frustum
		outer, sector float64 // as printed, 12 digits after the point
	}{
		{bodies.Frustum{R1: 0.30, R2: 0.45, H: 0.25}, 0.874642784227, 3.232672171108},
		{bodies.Frustum{R1: 0.35, R2: 0.40, H: 0.30}, 2.433105012119, 1.032949301552},
		{bodies.Frustum{R1: 1, R2: 2, H: 1}, 2.828427124746, 4.442882938158},
	} {
		_, outer := test.frustum.FlatRadii()
		assert.InDelta(t, test.outer, outer, 0.5e-12)
		assert.InDelta(t, test.sector, test.frustum.FlatAngle(2*math.Pi), 0.5e-12)

		f := flatten(t, geom.FlattenProblem{Grid: frustumGrid(test.frustum, math.Pi/2), Tolerance: tight})
		assert.Less(t, worst(f), 1e-9)
		assert.InEpsilon(t, f.Area, f.FlatArea, 1e-12, "a developable patch keeps its area")
		a, b, c := f.At(0, 8, geom.Before), f.At(8, 8, geom.Before), f.At(16, 8, geom.Before)
		assert.InEpsilon(t, test.outer, circumradius(a, b, c), 1e-11)
		_, crosses := selfCrossing(f.Outline())
		assert.False(t, crosses)
	}
}

// circumradius returns the radius of the circle through three points.
func circumradius(a, b, c geom.Vec2) float64 {
	u, v := b.Sub(a), c.Sub(a)
	return u.Len() * v.Len() * b.Sub(c).Len() / (2 * math.Abs(u.Cross(v)))
}

// Source: closed form of the quarter ellipse .45 x .33 by E(k), 0.616240876376,
// and the chord sums printed beside it.
func TestFlattenEllipseCylinder(t *testing.T) {
	const exact = 0.616240876376
	short := 0.0
	for _, test := range []struct {
		chords int
		girth  float64
	}{{12, 0.615752}, {24, 0.616119}, {48, 0.616210}} {
		trough := bodies.EllipseCylinder{A: 0.45, B: 0.33}
		g := geom.NewGrid(9, test.chords+1, func(c, r int) geom.Vec3 {
			return trough.At(float64(c)/8, float64(r)/float64(test.chords))
		})
		f := flatten(t, geom.FlattenProblem{Grid: g, Hold: baseHeld, Tolerance: tight})
		assert.Less(t, worst(f), 1e-13, "printed as 1e-14 with one digit")
		assert.InDelta(t, test.girth, f.ColumnLengths(4, 0, geom.Before).Flat, 0.5e-6)
		before := short
		short = exact - f.At(4, test.chords, geom.Before).Y
		if before != 0 {
			assert.InDelta(t, 4, before/short, 0.04, "the chord sum's error falls as the square of the chords")
		}
	}
}

// baseHeld keeps row 0 on its line and one of its points in place.
func baseHeld(c, r int) geom.Held { return geom.Held{X: c == 0 && r == 0, Y: r == 0} }

func sphereGrid(z bodies.SphereZone, width float64) geom.Grid {
	return geom.NewGrid(17, 33, func(c, r int) geom.Vec3 {
		return z.At(width*(float64(c)/16-0.5), float64(r)/32)
	})
}

// Panels of the zone 0 to 30 degrees of a unit sphere, with nothing held.
func TestFlattenSphereZone(t *testing.T) {
	zone := bodies.SphereZone{High: 30 * degree}
	for _, test := range []struct{ width, rms, p95, defects, inset float64 }{
		{60, 0.008606, 0.015450, 0.475806, 0.475870},
		{30, 0.005379, 0.009753, 0.237927, 0.237935},
		{15, 0.001969, 0.003378, 0.118966, 0.118967},
		{7.5, 0.000577, 0.000956, 0.059484, 0.059484},
	} {
		width := test.width * degree
		f := flatten(t, geom.FlattenProblem{Grid: sphereGrid(zone, width), Tolerance: 1e-9})
		assert.InDelta(t, test.rms, f.RMS, 0.5e-6)
		assert.InDelta(t, test.p95, f.P95, 0.5e-6)

		interior, boundary := angleDefects(sphereGrid(zone, width), f)
		assert.InDelta(t, test.defects, interior, 0.5e-6)
		assert.InDelta(t, 2*math.Pi, interior+boundary, 1e-12, "Gauss-Bonnet holds for any mesh")
		half := zone.High / 64
		inset := bodies.SphereZone{Low: half, High: zone.High - half}
		assert.InDelta(t, test.inset, inset.Curvature(width*15/16), 0.5e-6)
	}
	// Closed form, Gauss-Bonnet: width (sin b - sin a).
	for _, test := range []struct{ low, high, want float64 }{
		{0, 30, 3.141592653590}, {0, 45, 4.442882938158}, {30, 60, 2.299805439113},
	} {
		zone := bodies.SphereZone{Low: test.low * degree, High: test.high * degree}
		assert.InDelta(t, test.want, zone.Curvature(2*math.Pi), 0.5e-12)
	}
}

// angleDefects returns, from the corner angles on the surface of the triangles
// that were flattened, the sum of 2 pi less the angles round each inner vertex
// and of pi less those at each vertex of the edge. g has no slit.
func angleDefects(g geom.Grid, f geom.Flat) (interior, boundary float64) {
	around := make([]float64, len(g.At))
	for _, s := range f.Stretches {
		for i := range 3 {
			at := g.At[s.Corners[i]]
			u, v := g.At[s.Corners[(i+1)%3]].Sub(at), g.At[s.Corners[(i+2)%3]].Sub(at)
			around[s.Corners[i]] += math.Atan2(u.Cross(v).Len(), u.Dot(v))
		}
	}
	for i, sum := range around {
		c, r := i/g.Rows, i%g.Rows
		if c == 0 || r == 0 || c == g.Cols-1 || r == g.Rows-1 {
			boundary += math.Pi - sum
		} else {
			interior += 2*math.Pi - sum
		}
	}
	return interior, boundary
}

// A flat margin folded up along a curved bottom edge: the wall of a
// frustum is a margin of plan curvature 1/r1 folded by phi, and what must come
// out of the rim is 2 pi slant (1 - cos phi). Source: closed form, exact for a
// planar crease of constant curvature; r1 = .35 printed as 1.596796942513.
func TestFoldFormula(t *testing.T) {
	frustum := bodies.Frustum{R1: 0.35, R2: 0.40, H: 0.30}
	cosine := (frustum.R2 - frustum.R1) / frustum.Slant()
	excess := 2 * math.Pi * frustum.Slant() * (1 - cosine)
	assert.InDelta(t, 1.596796942513, excess, 0.5e-12)

	// The disc held rigid and the wall cut at every column leaves strips so narrow
	// that each stands straight: their gaps are the formula's, short only of what
	// the facets of the rim take, a share under (pi/128)^2/6 each.
	const columns, gores = 128, 127
	g := frustumGridOn(frustum, columns)
	var slits []geom.Slit
	for c := 1; c <= gores; c++ {
		slits = append(slits, geom.Slit{Col: c})
	}
	f := flatten(t, geom.FlattenProblem{
		Grid: g, Slits: slits, Start: flatRing(frustum, columns),
		Hold: func(c, r int) geom.Held { return geom.Held{X: r == 0, Y: r == 0} },
	})
	for i := range slits {
		gore := f.Gore(i)
		assert.InEpsilon(t, excess/4/columns, gore.Width, 2e-3)
		assert.InEpsilon(t, (1-cosine)/0.35*(2*math.Pi*0.35/4/columns), gore.Angle, 2e-3)
		assert.InEpsilon(t, frustum.Slant(), gore.Depth, 1e-3)
	}
}

func frustumGridOn(f bodies.Frustum, columns int) geom.Grid {
	return geom.NewGrid(columns+1, 5, func(c, r int) geom.Vec3 {
		return f.At(math.Pi/2*(1-float64(c)/float64(columns)), float64(r)/4)
	})
}

// flatRing is the frustum's wall folded down level, before anything is cut out.
func flatRing(f bodies.Frustum, columns int) []geom.Vec2 {
	var start []geom.Vec2
	for c := range columns + 1 {
		for r := range 5 {
			sin, cos := math.Sincos(math.Pi / 2 * (1 - float64(c)/float64(columns)))
			start = append(start, geom.Vec2{X: cos, Y: sin}.Scale(f.R1+f.Slant()*float64(r)/4))
		}
	}
	return start
}
