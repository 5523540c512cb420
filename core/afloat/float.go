package afloat

import (
	"math"

	"barkwright/core/geom"
)

// Attitude is the boat at rest at a given heel, free to sink and trim.
//
// With State Floats or Swamped every number holds; Swamped means the sheer is
// under water somewhere, so the numbers are those of a boat decked at the sheer
// and are not to be shown as firm. With other states only Heel is set.
type Attitude struct {
	State       State
	Waterplane  Waterplane
	Volume      float64   // m^3
	Buoyancy    geom.Vec3 // centre of the volume, m
	Draught     float64   // m, of the lowest point of the bark
	Trim        float64   // rad, positive by the bow
	Arm         float64   // m, righting arm: positive turns the boat back from starboard
	Freeboard   float64   // m, of the lowest point of the sheer
	FreeboardAt geom.Vec3 // m, where that is
}

const noLoad = "afloat: load without mass"

// At returns the attitude of the body under a load in water at a given heel. It
// panics on a load that is not positive.
func (b *Body) At(load Load, water Water, heel float64) Attitude {
	t := b.upright
	if heel != 0 {
		t = b.tilt(heel)
	}
	a, _ := t.attitude(load, water, t.level(load, water))
	return a
}

// startTolerance is how near the plane without trim is found, m: Newton's steps go on
// from it.
const startTolerance = 1e-3

// level returns the plane without trim that carries the load, as a start.
func (t *tilted) level(load Load, water Water) Waterplane {
	load.mustWeigh()
	h, _, _ := t.height(load.Mass/water.Density, 0, startTolerance)
	return Waterplane{t.heel, h, 0}
}

// attitude is the attitude at this heel, with what is immersed then.
func (t *tilted) attitude(load Load, water Water, start Waterplane) (Attitude, immersion) {
	start.Heel = t.heel
	p, m, ok := t.balance(load.Mass/water.Density, load, start)
	if !ok {
		return Attitude{State: NotConverged, Waterplane: Waterplane{Heel: t.heel}}, m
	}
	a := Attitude{Waterplane: p, Volume: m.volume, Buoyancy: t.centre(m), Trim: math.Atan(p.Slope)}
	a.Arm = (load.Centre.Y-a.Buoyancy.Y)*t.cos + (a.Buoyancy.Z-load.Centre.Z)*t.sin
	low, _ := t.extent(p.Slope)
	a.Draught = (p.Height - low) * math.Cos(a.Trim)
	a.Freeboard, a.FreeboardAt = t.body.freeboard(p)
	if a.Freeboard <= 0 {
		a.State = Swamped
	}
	return a, m
}

// Floated is how the boat lies under a load.
//
//   - Floats: Upright and Rest both hold. Rest is upright unless the load lies to
//     one side.
//   - Overloaded: only Excess holds, the mass beyond what brings the lowest sheer to
//     the water floated level.
//   - Swamped: Upright holds where its own state is Floats; Rest is the attitude at
//     which water comes over.
//   - CapsizesUpright: Upright and GM hold; Rest is the angle of loll if its state
//     is Floats; if Swamped, water comes over first, and the boat goes over.
//   - NotConverged: no field holds.
type Floated struct {
	State   State
	Mass    float64  // kg
	Excess  float64  // kg
	Upright Attitude // at no heel
	Rest    Attitude // at the heel where the boat comes to rest
	GM      float64  // m, slope of the righting arm upright; negative is not stiff
}

// Float returns how the body lies in water under a load.
func (b *Body) Float(load Load, water Water) Floated {
	load.mustWeigh()
	t := b.upright
	f := Floated{Mass: load.Mass}
	sheer := b.LowestSheer()
	brim := t.immerse(sheer, 0)
	if most := brim.volume * water.Density; load.Mass > most {
		f.State, f.Excess = Overloaded, load.Mass-most
		return f
	}
	low, _ := t.extent(0)
	start := Waterplane{Height: low + towards(brim, sheer-low, load.Mass/water.Density)}
	var m immersion
	f.Upright, m = t.attitude(load, water, start)
	f.Rest = f.Upright
	if f.State = f.Upright.State; f.State != Floats {
		return f
	}
	f.GM = t.stiffness(m, load)
	if f.GM >= 0 && load.Centre.Y == 0 {
		return f
	}
	f.Rest = b.settle(load, water, f.Upright)
	f.State = f.Rest.State
	if f.GM < 0 {
		f.State = CapsizesUpright
	}
	return f
}

// stiffness returns GM = I/V + (z of buoyancy - z of mass), the derivative of the
// righting arm by heel upright, I the moment of inertia of the waterplane about the
// middle line.
func (t *tilted) stiffness(m immersion, load Load) float64 {
	return m.areaInertiaAcross/m.volume + t.centre(m).Z - load.Centre.Z
}

// LevelStiffness returns GM with the body floated level under a load: what trim adds is
// of the second order. It reports false where the body is smaller than the load.
func (b *Body) LevelStiffness(load Load, water Water) (float64, bool) {
	t := b.upright
	_, m, ok := t.height(load.Mass/water.Density, 0, stepTolerance)
	if !ok || !(m.volume > 0) {
		return 0, false
	}
	return t.stiffness(m, load), true
}

// GMWithRaised returns GM with a part of the load, of the given mass, raised by dz.
// It leaves out the change of trim, which is of second order in the trim.
func (f Floated) GMWithRaised(mass, dz float64) float64 {
	return f.GM - mass*dz/f.Mass
}
