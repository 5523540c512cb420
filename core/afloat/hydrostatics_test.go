package afloat_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/afloat"
	"barkwright/core/geom"
	"barkwright/core/internal/bodies"
	"barkwright/core/internal/check"
)

// Closed forms: testdata/computed/hydrostatic-closed-forms.csv.
func TestClosedForms(t *testing.T) {
	all := exactBodies()
	for _, row := range check.Computed(t, "hydrostatic-closed-forms") {
		t.Run(row["body"]+" "+row["quantity"], func(t *testing.T) {
			e, ok := all[row["body"]]
			require.True(t, ok)
			a := e.body.At(e.load(), fresh, 0)
			require.Equal(t, afloat.Floats, a.State)
			f := e.body.Hydrostatics(a)
			got, ok := map[string]float64{
				"draught": f.Draught, "volume": levelVolume(e),
				"waterplane": f.WaterplaneArea, "section": f.LargestSection, "block": f.BlockCoefficient,
				"sectionCoefficient": f.SectionCoefficient, "prismatic": f.PrismaticCoefficient,
				"planeCoefficient": f.WaterplaneCoefficient,
				"kb":               f.Buoyancy.Z, "lcb": f.Buoyancy.X, "lcf": f.CentreOfFlotation, "beam": f.Beam,
				"bmAcross": f.TransverseBM, "bmAlong": f.LongitudinalBM,
				"gm": e.body.Float(e.load(), fresh).GM, "surface": f.WettedSurface,
			}[row["quantity"]]
			require.True(t, ok)
			assert.InDelta(t, row.Float(t, "value"), got, row.Float(t, "tolerance"))
		})
	}
}

// levelVolume returns the volume up to the draught the closed form is stated for:
// the solved attitude has the right volume whatever the shape.
func levelVolume(e exact) float64 {
	freeboard := e.body.LowestSheer() - e.draught
	return e.body.CarriesLevel(afloat.Load{}, fresh, freeboard).Total / fresh.Density
}

// Equilibrium cases in fresh water, computed in closed form for this project.
func TestDraughtOfBoxAndPrism(t *testing.T) {
	box := newBody(bodies.Box(bodies.Even(4, 8), 0.8, 0.3))
	load := func(mass float64) afloat.Load { return afloat.Load{Mass: mass, Centre: geom.Vec3{Z: 0.1}} }
	// The answers are for a density of 999.1026, four decimals: 5e-8 of it.
	assert.InDelta(t, 0.156390344695, box.At(load(500), fresh, 0).Draught, 1e-8)
	perMillimetre := box.CarriesLevel(load(1), fresh, 0.1).Total - box.CarriesLevel(load(1), fresh, 0.101).Total
	assert.InDelta(t, 3.19712832, perMillimetre, 2e-7)

	prism := newBody(bodies.Prism(bodies.Even(4, 8), 1, 2))
	for mass, draught := range map[float64]float64{100: 0.158184876493, 200: 0.223707197699, 300: 0.273984243076} {
		assert.InDelta(t, draught, prism.At(load(mass), fresh, 0).Draught, 1e-8)
	}
}

// A shifted weight on the box of the closed forms, 639.425664 kg: 20 kg a metre aft
// trims it, 20 kg a tenth to one side heels it. Exact by the wall-sided formula.
func TestShiftedWeights(t *testing.T) {
	e := exactBodies()["box"]
	load := e.load()
	load.Mass = 639.425664
	fresh := afloat.Water{Density: 999.1026} // as stated, not as computed

	aft := e.body.At(load.Moved(20, geom.Vec3{X: -1}), fresh, 0)
	assert.InDelta(t, -0.00479964711719, aft.Waterplane.Slope, 1e-13)
	assert.InDelta(t, 9.59929423e-3, -2*aft.Waterplane.Slope, 5e-12)
	assert.Less(t, aft.FreeboardAt.X, 0.0, "the stern is the lower end")

	aside := e.body.Float(load.Moved(20, geom.Vec3{Y: -0.1}), fresh)
	require.Equal(t, afloat.Floats, aside.State)
	assert.InDelta(t, degrees(1.53446118739), aside.Rest.Waterplane.Heel, 1e-7) // arms are searched to 1e-8 m
	assert.Less(t, aside.Rest.FreeboardAt.Y, 0.0, "the starboard side is the lower")
	port := e.body.Float(load.Moved(20, geom.Vec3{Y: 0.1}), fresh)
	assert.InDelta(t, -aside.Rest.Waterplane.Heel, port.Rest.Waterplane.Heel, 1e-12)
}

// Volume two ways: by stations, and by the areas of level waterplane summed
// upward by Simpson's rule.
func TestVolumeByStationsIsVolumeByWaterPlanes(t *testing.T) {
	for name, body := range map[string]*afloat.Body{"leaning": leaning(), "parabolic": exactBodies()["parabolic"].body} {
		t.Run(name, func(t *testing.T) {
			nothing := afloat.Load{}
			const cells, draught = 400, 0.2
			sheer := body.LowestSheer()
			volume := func(z float64) float64 { return body.CarriesLevel(nothing, fresh, sheer-z).Total / fresh.Density }
			area := func(z float64) float64 {
				load := afloat.Load{Mass: volume(z) * fresh.Density}
				a := body.At(load, fresh, 0)
				// Draughts are solved far inside 0.1 mm (doc.go).
				require.InDelta(t, z, a.Waterplane.Height, 1e-7)
				return body.Hydrostatics(a).WaterplaneArea
			}
			const bottom = 0.02
			sum := 0.0
			for i := range cells + 1 {
				weight := 2.0 + 2*float64(i%2)
				if i == 0 || i == cells {
					weight = 1
				}
				sum += weight * area(bottom+(draught-bottom)*float64(i)/cells)
			}
			sum *= (draught - bottom) / cells / 3
			// Areas have corners where a station's points pass the surface, so the rule
			// is of the second order: about (1/cells)^2.
			assert.InEpsilon(t, volume(draught)-volume(bottom), sum, 2e-5)
		})
	}
}

// Twice as long, wide and deep carries eight times as much.
func TestScale(t *testing.T) {
	small := newBody(bodies.Leaning{Beam: 0.86, Depth: 0.31, SheerRise: 0.25, Rocker: 0.04}.
		Sections(bodies.Crowded(4.9, 80), 40))
	large := newBody(bodies.Leaning{Beam: 1.72, Depth: 0.62, SheerRise: 0.5, Rocker: 0.08}.
		Sections(bodies.Crowded(9.8, 80), 40))
	_, load := crewed()
	eight := afloat.Load{Mass: 8 * load.Mass, Centre: load.Centre.Scale(2)}
	for _, heel := range []float64{0, 7, 20} {
		a, b := small.At(load, fresh, degrees(heel)), large.At(eight, fresh, degrees(heel))
		assert.InDelta(t, 2*a.Draught, b.Draught, 1e-9)
		assert.InDelta(t, 2*a.Arm, b.Arm, 1e-9)
		assert.InDelta(t, a.Trim, b.Trim, 1e-9)
	}
	assert.InEpsilon(t, 4*small.WettedSurface(afloat.Waterplane{Height: 0.1}),
		large.WettedSurface(afloat.Waterplane{Height: 0.2}), 1e-12)
}

// More load never means less draught, wherever it is put (within reach of a crew).
func TestMoreLoadMoreDraught(t *testing.T) {
	body := leaning()
	for _, x := range []float64{0, 0.1, -0.4} {
		last := 0.0
		for mass := 20.0; mass < 420; mass += 20 {
			a := body.At(afloat.Load{Mass: mass, Centre: geom.Vec3{X: x, Z: 0.3}}, fresh, 0)
			require.NotEqual(t, afloat.NotConverged, a.State)
			assert.Greater(t, a.Waterplane.Height, last)
			last = a.Waterplane.Height
			// Draught and trim are solved far inside 0.1 mm (doc.go).
			assert.InEpsilon(t, mass, a.Volume*fresh.Density, 1e-6)
			assert.InDelta(t, x, a.Buoyancy.X+math.Tan(a.Trim)*(a.Buoyancy.Z-0.3), 1e-7, "centres in line")
		}
	}
}

// How good the station count is: the invented boat against itself much finer. What
// doc.go promises of a shape whose waterplane meets raked ends between stations.
func TestStationCount(t *testing.T) {
	shape := bodies.Leaning{Beam: 0.86, Depth: 0.31, SheerRise: 0.25, Rocker: 0.04}
	_, load := crewed()
	fine := newBody(shape.Sections(bodies.Crowded(4.9, 1000), 1000))
	want := fine.Float(load, fresh)
	figures := fine.Hydrostatics(want.Upright)
	for _, c := range []struct {
		name string
		body *afloat.Body
	}{
		{"even 80", newBody(shape.Sections(bodies.Even(4.9, 80), 40))},
		{"crowded 80", newBody(shape.Sections(bodies.Crowded(4.9, 80), 40))},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := c.body.Float(load, fresh)
			f := c.body.Hydrostatics(got.Upright)
			assert.InDelta(t, want.Upright.Draught, got.Upright.Draught, 1e-4)
			assert.InDelta(t, want.Upright.Freeboard, got.Upright.Freeboard, 1e-4)
			assert.InDelta(t, want.GM, got.GM, 5e-4)
			assert.InDelta(t, want.Upright.Trim, got.Upright.Trim, 5e-5)
			assert.InEpsilon(t, figures.WettedSurface, f.WettedSurface, 1e-3)
			assert.InDelta(t, figures.Length, f.Length, 5e-3)
		})
	}
}
