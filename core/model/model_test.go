package model_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/design"
	"barkwright/core/geom"
	"barkwright/core/hull"
	"barkwright/core/internal/check"
	"barkwright/core/model"
	"barkwright/core/units"
)

// under is what of a section lies under a height, half of it, m2: the outline is cut there.
func under(s hull.Station, height float64) float64 {
	var path []geom.Vec2
	for i, q := range s.Outline {
		if i > 0 {
			p := s.Outline[i-1]
			if (p.Y-height)*(q.Y-height) < 0 {
				path = append(path, p.Lerp(q, (height-p.Y)/(q.Y-p.Y)))
			}
		}
		if q.Y <= height {
			path = append(path, q)
		}
	}
	if len(path) < 2 {
		return 0
	}
	// Closed along the water to the middle.
	path = append(path, geom.Vec2{Y: path[len(path)-1].Y}, geom.Vec2{Y: path[0].Y})
	return max(check.Area(path), -check.Area(path))
}

// A model floats by what Archimedes says: the water that it pushes aside under its freeboard weighs as
// much as model and load. The sections are cut and added up here anew, finer than in the program.
// Displacement is within 0.1 % there; half a percent leaves as much again for this sum's chords.
func TestFreeboardDisplacesTheMass(t *testing.T) {
	for _, d := range []design.Design{design.Default(), design.Starting()[0], design.Starting()[2]} {
		b := model.New(d, 8, false)
		got, ok := b.Afloat()
		require.True(t, ok, d.Name)
		assert.InDelta(t, core.Evaluate(d).Afloat.Load.Mass/512, got.Mass, 1e-12)
		stations := b.Hull.Stations(241, 96)
		lowest := b.Hull.Sheer(0)
		for _, s := range stations {
			lowest = min(lowest, s.Outline[len(s.Outline)-1].Y)
		}
		volume := 0.0
		for i := 1; i < len(stations); i++ {
			a, c := stations[i-1], stations[i]
			level := lowest - b.Scale*got.Freeboard
			volume += (c.X - a.X) * (under(a, level) + under(c, level))
		}
		const water = 998.2 // kg/m3 at 20 degrees C, from memory
		assert.InEpsilon(t, b.Scale*b.Scale*b.Scale*got.Mass, water*max(volume, -volume), 0.005, d.Name)
	}
}

// Masses go with the cube of sizes: a paddler of 185 lb is 164 g at 1:8.
func TestMassAtScale(t *testing.T) {
	assert.InDelta(t, 0.164, model.Boat{Scale: 8}.AtScale(185*units.Pound), 0.0005)
}
