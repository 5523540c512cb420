package afloat_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/afloat"
	"barkwright/core/design"
	"barkwright/core/geom"
	"barkwright/core/internal/bodies"
	"barkwright/core/internal/check"
)

// Righting arms with exact answers: testdata/computed/righting-arms.csv.
func TestRightingArms(t *testing.T) {
	all := exactBodies()
	for _, row := range check.Computed(t, "righting-arms") {
		t.Run(row["body"]+" "+row["heel"], func(t *testing.T) {
			e := all[row["body"]]
			a := e.body.At(e.load(), fresh, degrees(row.Float(t, "heel")))
			require.Contains(t, []afloat.State{afloat.Floats, afloat.Swamped}, a.State)
			assert.InDelta(t, row.Float(t, "arm"), a.Arm, row.Float(t, "tolerance"))
		})
	}
}

// The box swamps where its deck edge meets the water, atan(2 (D-T)/B), and until
// then its arm is the wall-sided formula's.
func TestBoxSwampsAtItsEdge(t *testing.T) {
	e := exactBodies()["box"]
	c := e.body.Righting(e.load(), fresh, 36)
	require.Equal(t, afloat.Floats, c.State)
	require.True(t, c.Swamps)
	assert.InDelta(t, degrees(14.03624347), c.Swamped.Waterplane.Heel, 1e-7)
	assert.InDelta(t, 0, c.Swamped.Freeboard, 1e-7)
	assert.Equal(t, c.Swamped, c.Most, "still rising there")
	assert.False(t, c.Vanishes)
	for _, p := range c.Points {
		assert.Equal(t, p.Waterplane.Heel < c.Swamped.Waterplane.Heel, p.Firm)
		if phi := p.Waterplane.Heel; p.Firm {
			tan := math.Tan(phi)
			assert.InDelta(t, (0.116666666667+0.266666666667/2*tan*tan)*math.Sin(phi), p.Arm, 1e-11)
		}
	}
}

// The ellipsoid with its mass 0.05 over its centre never swamps before its arm,
// (3/8)(b^2-c^2) sin cos / sqrt(b^2 sin^2 + c^2 cos^2) - OG sin, is gone.
func TestEllipsoidArmVanishes(t *testing.T) {
	e := exactBodies()["ellipsoid"]
	arm := func(phi float64) float64 {
		const b, c, og = 0.4, 0.15, 0.05
		sin, cos := math.Sincos(phi)
		return 0.375*(b*b-c*c)*sin*cos/math.Sqrt(b*b*sin*sin+c*c*cos*cos) - og*sin
	}
	most, at, vanish := 0.0, 0.0, 0.0
	for phi := 0.01; phi < 1.5; phi += 1e-5 {
		if a := arm(phi); a > most {
			most, at = a, phi
		}
		if arm(phi) > 0 {
			vanish = phi
		}
	}
	c := e.body.Righting(e.load(), fresh, 36)
	// Sections of 800 chords: 4e-6 of the arm as in the table; the top is flat, so its
	// place is loose: the parabola through points 2.5 degrees apart.
	assert.InDelta(t, most, c.Most.Arm, 1e-5)
	assert.InDelta(t, at, c.Most.Waterplane.Heel, degrees(0.5))
	require.True(t, c.Vanishes)
	assert.InDelta(t, vanish, c.VanishAt, 1e-4)
	assert.Greater(t, c.Swamped.Waterplane.Heel, c.VanishAt)
}

// Loll by the wall-sided formula, tan = sqrt(-2 GM / BM): a box with its mass at
// 0.40, deep enough to stay dry.
func TestLoll(t *testing.T) {
	body := newBody(bodies.Box(bodies.Even(4, 8), 0.8, 0.6))
	f := body.Float(afloat.Load{Mass: 0.64 * fresh.Density, Centre: geom.Vec3{Z: 0.40}}, fresh)
	require.Equal(t, afloat.CapsizesUpright, f.State)
	assert.InDelta(t, -0.0333333333333, f.GM, 1e-12)
	assert.Equal(t, afloat.Floats, f.Rest.State)
	assert.InDelta(t, degrees(26.5650511771), f.Rest.Waterplane.Heel, 1e-6)

	shallow := exactBodies()["box"].body.Float(afloat.Load{Mass: 0.64 * fresh.Density, Centre: geom.Vec3{Z: 0.40}}, fresh)
	assert.Equal(t, afloat.CapsizesUpright, shallow.State)
	assert.Equal(t, afloat.Swamped, shallow.Rest.State, "the edge goes under before the loll")
	assert.InDelta(t, degrees(14.03624347), shallow.Rest.Waterplane.Heel, 1e-7)
}

// Port mirrors starboard, and GM is the slope of the arm at upright.
func TestMirrorAndSlope(t *testing.T) {
	body := leaning()
	_, load := crewed()
	for _, heel := range []float64{3, 12, 40} {
		a, b := body.At(load, fresh, degrees(heel)), body.At(load, fresh, degrees(-heel))
		assert.InDelta(t, a.Arm, -b.Arm, 1e-12)
		assert.InDelta(t, a.Draught, b.Draught, 1e-12)
		assert.InDelta(t, a.FreeboardAt.Y, -b.FreeboardAt.Y, 1e-12)
	}
	f := body.Float(load, fresh)
	require.Equal(t, afloat.Floats, f.State)
	const small = 1e-4
	// Sections are polylines, so the slope has corners: 1e-4 of GM.
	assert.InEpsilon(t, f.GM, body.At(load, fresh, small).Arm/small, 1e-4)

	higher := body.Float(load.Moved(2*design.AverageMass, geom.Vec3{Z: afloat.CrewHeightStep}), fresh)
	assert.InDelta(t, higher.GM, f.GMWithRaised(2*design.AverageMass, afloat.CrewHeightStep), 1e-5)
	assert.Less(t, higher.GM, f.GM)
}

// A paddler who leans heels the boat to that side, and comes back.
func TestLeaning(t *testing.T) {
	body := leaning()
	_, load := crewed()
	port := body.Float(load.Moved(design.AverageMass, geom.Vec3{Y: 0.05}), fresh)
	require.Equal(t, afloat.Floats, port.State)
	assert.Less(t, port.Rest.Waterplane.Heel, 0.0)
	assert.InDelta(t, 0, port.Rest.Arm, 1e-7)
	over := body.Float(load.Moved(design.AverageMass, geom.Vec3{Y: 0.6}), fresh)
	assert.Equal(t, afloat.Swamped, over.State)
	assert.InDelta(t, 0, over.Rest.Freeboard, 1e-7)
}
