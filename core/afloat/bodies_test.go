package afloat_test

import (
	"math"
	"sync"

	"barkwright/core/afloat"
	"barkwright/core/design"
	"barkwright/core/geom"
	"barkwright/core/hull"
	"barkwright/core/internal/bodies"
)

// fresh is the water the exact answers are stated for, 15 C.
var fresh = afloat.WaterAt(15)

const (
	chords   = 400 // to a half section
	stations = 160 // cells
)

func newBody(sections []bodies.Section) *afloat.Body {
	out := make([]hull.Station, len(sections))
	for i, s := range sections {
		out[i] = hull.Station(s)
	}
	return afloat.NewBody(out)
}

// exact is a body with exact answers, the volume it carries and where its mass is.
type exact struct {
	body    *afloat.Body
	volume  float64
	draught float64
	kg, lcb float64
}

func (e exact) load() afloat.Load {
	return afloat.Load{Mass: e.volume * fresh.Density, Centre: geom.Vec3{X: e.lcb, Z: e.kg}}
}

var exactBodies = sync.OnceValue(func() map[string]exact {
	even, few := bodies.Even(5, stations), bodies.Even(4, 8)
	return map[string]exact{
		"parabolic": {body: newBody(bodies.Parabolic(0.5, 0.3125).Sections(even, 0.2, chords)),
			volume: 4.0 / 9 * 5 * 0.5 * 0.3125, draught: 0.3125, kg: 0.2},
		"power": {body: newBody(
			bodies.Power{Beam: 0.9, Draught: 0.25, Forward: 2.5, Aft: 2.5, Down: 4}.Sections(even, 0.2, chords)),
			volume: 5 * 0.9 * 0.25 * 2.5 * 4 / (3.5 * 5), draught: 0.25, kg: 0.2},
		"asymmetric": {body: newBody(
			bodies.Power{Beam: 0.9, Draught: 0.25, Forward: 2, Aft: 3, Down: 4}.Sections(even, 0.2, chords)),
			volume: 0.6375, draught: 0.25, kg: 0.2, lcb: -0.0882352941176},
		"box":      {body: newBody(bodies.Box(few, 0.8, 0.3)), volume: 0.64, draught: 0.2, kg: 0.25},
		"prism":    {body: newBody(bodies.Prism(few, 1, 2)), volume: 0.64, draught: 0.4, kg: 0.35},
		"cylinder": {body: newBody(bodies.Cylinder(few, 0.4, 2*chords)), volume: 0.536809758859, draught: 0.25, kg: 0.30},
		"ellipsoid": {body: newBody(bodies.Ellipsoid(bodies.Crowded(5, stations), 0.4, 0.15, 2*chords)),
			volume: 2.0 / 3 * math.Pi * 2.5 * 0.4 * 0.15, draught: 0.15, kg: 0.2},
		"trough": {body: newBody(bodies.Trough(few, 0.8, 0.3, 1, 2*chords)), volume: 2.0 / 3 * 0.8 * 0.3 * 4,
			draught: 0.3, kg: 0.25},
	}
})

// leaning is an invented open boat with leaning ends, for laws without closed forms.
func leaning() *afloat.Body { return newBody(leaningSections()) }

func leaningSections() []bodies.Section {
	return bodies.Leaning{Beam: 0.86, Depth: 0.31, SheerRise: 0.25, Rocker: 0.04}.
		Sections(bodies.Crowded(4.9, 80), 40)
}

// crewed is an invented load for it: boat, two kneeling and a pack.
func crewed() (boat, all afloat.Load) {
	hull := afloat.Item{Mass: 30, At: geom.Vec3{Z: 0.2}}
	boat = afloat.Total(hull)
	all = afloat.Total(hull,
		afloat.Item{Mass: design.AverageMass, At: geom.Vec3{X: 1.2, Z: 0.4}},
		afloat.Item{Mass: design.AverageMass, At: geom.Vec3{X: -1.4, Z: 0.4}},
		afloat.Item{Mass: 45, At: geom.Vec3{X: 0.1, Z: 0.17}})
	return boat, all
}

func degrees(d float64) float64 { return d * math.Pi / 180 }
