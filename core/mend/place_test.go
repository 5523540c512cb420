package mend_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core"
	"barkwright/core/design"
	"barkwright/core/geom"
	"barkwright/core/mend"
	"barkwright/core/tally"
)

// A patch laid on the bottom amidships has its own area there, and stands where it was said to, fore
// and aft, port and starboard alike. The bottom is all but flat there and the gunwale all but straight: the
// area is the product of the sides. On a bottom of 2 ft radius, which is rounder than it is, 3 in along the
// bark lie 0.008 in nearer the centre line, and a patch's shadow is 1 % less than it: the tolerances.
func TestPatchLiesWhereItWasSaid(t *testing.T) {
	b, h := boat(), core.Evaluate(design.Default()).Hull
	for _, at := range []float64{-6 * in, 6 * in} {
		for _, up := range []float64{-3 * in, 3 * in} {
			r := mend.Make(b, tally.Damage{Kind: tally.Hole, At: at, Up: up, Along: 2 * in, Round: 2 * in})
			points, closed := mend.Outline(h, r)
			assert.True(t, closed)
			area, mean := 0.0, geom.Vec3{}
			for i, p := range points {
				q := points[(i+1)%len(points)]
				area += (p.X*q.Y - q.X*p.Y) / 2
				mean.X += p.X / float64(len(points))
				mean.Y += p.Y / float64(len(points))
			}
			assert.InEpsilon(t, r.PatchAlong*r.PatchRound, area, 0.01)
			assert.Equal(t, math.Signbit(at), math.Signbit(mean.X))
			assert.InDelta(t, up, mean.Y, 0.01*in)
		}
	}
}

// Whatever is entered, its outline is of finite points on the boat, none past its edge.
func TestOutlineKeepsToTheBoat(t *testing.T) {
	b, h := boat(), core.Evaluate(design.Default()).Hull
	for k := tally.Crack; k < tally.DamageKinds; k++ {
		for _, at := range []float64{-tally.MostDamage, -1, 0, h.Gunwale.Length(), tally.MostDamage} {
			for _, up := range []float64{-tally.MostDamage, 0, 0.3, tally.MostDamage} {
				points, _ := mend.Outline(h, mend.Make(b, tally.Damage{Kind: k, At: at, Up: up, Along: 0.2, Round: 0.2, Groups: 3}))
				assert.NotEmpty(t, points)
				for _, p := range points {
					assert.LessOrEqual(t, math.Abs(p.X), b.Design.Length/2)
					assert.LessOrEqual(t, p.Z, b.Design.EndHeight)
					assert.False(t, math.IsNaN(p.X+p.Y+p.Z))
				}
			}
		}
	}
}
