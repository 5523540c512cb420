package core

import (
	"math"

	"barkwright/core/afloat"
	"barkwright/core/geom"
	"barkwright/core/units"
)

// Water is what takes too long to follow a slider: the curves of the boat on the
// water as loaded, and what is read off them.
type Water struct {
	Righting afloat.RightingCurve
	// Lean is how the boat lies with the heaviest paddler leaning out by LeanDistance
	// to starboard, and LeanMost how far out that one's middle may go, m, before
	// water comes over or the boat goes over dry; at most to the gunwale, and then ToGunwale
	// says so. They hold where there is a paddler.
	Lean      afloat.Floated
	LeanMost  float64
	ToGunwale bool
	Carries   []afloat.Carried // from zero freeboard upward, by carryStep
	Moving    Moving
}

// Moving is what it costs to move. State is Floats where the boat floats upright
// with its gunwales dry; the rest holds then alone, Day where there is a paddler.
type Moving struct {
	State afloat.State
	Curve []afloat.Resistance
	Pace  afloat.Resistance // at Pace
	Day   afloat.Day
}

const (
	// LeanDistance is how far a leaning paddler's middle moves out, m: the shoulders
	// two or three times as far. A choice of this project.
	LeanDistance = 1 * units.Inch
	// Pace is the speed that the push is stated for, m/s. A choice of this project.
	Pace = afloat.CommonPace

	// The push is worked out from slowest upward, pushSpeeds times 5 % more each:
	// 0.8 to 3.1 m/s, from slower to faster than a crew holds for a day.
	slowest    = 0.8
	pushSpeeds = 29
	heelSteps  = 36 // 2 1/2 degrees each
	carryStep  = units.Inch
)

// OnWater works the curves out. Nothing of it is needed for the shape of the boat.
func OnWater(c Canoe) Water {
	a := c.Afloat
	w := Water{Righting: a.Body.Righting(a.Load, a.Water, heelSteps)}
	if heaviest := a.Heaviest(); heaviest.Mass > 0 {
		w.Lean = a.Body.Float(a.Load.Moved(heaviest.Mass, geom.Vec3{Y: -LeanDistance}), a.Water)
		w.LeanMost = mostLean(w.Righting) * a.Load.Mass / heaviest.Mass
		if most := c.Hull.HalfBeam(heaviest.At.X); w.LeanMost >= most {
			w.LeanMost, w.ToGunwale = most, true
		}
	}
	for f := 0.0; f < c.Design.Depth; f += carryStep {
		w.Carries = append(w.Carries, a.Body.CarriesLevel(a.Boat, a.Water, f))
	}
	w.Moving.State = a.Floated.State
	if up := a.Floated.Upright; up.State == afloat.Floats && up.Volume > 0 {
		w.Moving = moving(a, len(a.Crew))
	}
	return w
}

func moving(a Afloat, crew int) Moving {
	towed := a.Body.Towed(a.Floated.Upright, a.Water, afloat.LiveGrid())
	m := Moving{State: afloat.Floats, Curve: towed.Curve(slowest, pushSpeeds), Pace: towed.At(Pace)}
	if crew > 0 {
		m.Day = afloat.DayOn(m.Curve, afloat.Paddling{Paddlers: crew, Least: afloat.LeastPower, Power: afloat.TouringPower,
			Most: afloat.BriskPower})
	}
	return m
}

// Heaviest is the heaviest paddler, the one nearest the bow where several are; one of
// no mass for no crew.
func (a Afloat) Heaviest() afloat.Item {
	var most afloat.Item
	for _, p := range a.Crew {
		if p.Mass > most.Mass {
			most = p
		}
	}
	return most
}

// mostLean is how far the middle of the whole load may move to the side: at each
// heel by the arm over the heel's cosine, so the most of that while the boat is dry.
func mostLean(r afloat.RightingCurve) float64 {
	most := 0.0
	lean := func(a afloat.Attitude) { most = max(most, a.Arm/math.Cos(a.Waterplane.Heel)) }
	for _, p := range r.Points {
		// At 90 degrees a load moved to the side moves up: that has no moment.
		if p.Firm && p.Waterplane.Heel < math.Pi/2-heelSlack {
			lean(p.Attitude)
		}
	}
	if r.Swamps && r.State == afloat.Floats && r.Swamped.Waterplane.Heel < math.Pi/2-heelSlack {
		lean(r.Swamped)
	}
	return most
}

// heelSlack keeps off the last bits of a right angle.
const heelSlack = 1e-6
