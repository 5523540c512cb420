// Package core is the one ordered pass from a design to everything known of the
// canoe. It holds no state: the same design gives the same canoe.
package core

import (
	"barkwright/core/afloat"
	"barkwright/core/bark"
	"barkwright/core/crew"
	"barkwright/core/design"
	"barkwright/core/frame"
	"barkwright/core/gather"
	"barkwright/core/hull"
)

// Canoe is a design worked out. It does not change once made.
type Canoe struct {
	Design design.Design
	Hull   *hull.Hull
	Frame  frame.Frame
	Bark   bark.Layout
	Gather gather.List
	Afloat Afloat
	// Skin is the bark laid flat, nil until it is asked for.
	Skin *Skin
}

// Validate finds everything that keeps a design from being built, each fault by
// the key of its parameter.
func Validate(d design.Design) []design.Fault {
	_, faults := validated(d)
	return faults
}

// validated is the hull of a design too, where its numbers allow one.
func validated(d design.Design) (*hull.Hull, []design.Fault) {
	if faults := design.Validate(d); len(faults) > 0 {
		return nil, faults
	}
	h := hull.New(d)
	return h, append(h.Faults(), frame.Faults(h)...)
}

// Try is Validate and, where there is no fault, Evaluate, for less than the two of
// them cost apart. With faults the canoe is empty.
func Try(d design.Design) (Canoe, []design.Fault) {
	h, faults := validated(d)
	if len(faults) > 0 {
		return Canoe{}, faults
	}
	return evaluate(h), nil
}

// Evaluate works out a design that Validate finds no fault in. The bark laid flat
// and the curves on the water take longer and are asked for apart.
func Evaluate(d design.Design) Canoe { return evaluate(hull.New(d)) }

func evaluate(h *hull.Hull) Canoe {
	c := Canoe{Design: h.Design, Hull: h, Frame: frame.Build(h), Bark: bark.Plan(h)}
	c.Gather = gather.Gather(h, c.Frame, c.Bark)
	c.Afloat = newAfloat(c)
	return c
}

// Afloat is how the boat lies with its crew and cargo as placed.
type Afloat struct {
	Body    *afloat.Body
	Water   afloat.Water
	Boat    afloat.Load // the boat alone
	Crew    []afloat.Item
	Cargo   afloat.Item
	Load    afloat.Load // everything
	Floated afloat.Floated
	// GMCrewHigher and GMCrewLower are the stiffness with the crew raised and lowered by
	// afloat.CrewHeightStep.
	GMCrewHigher, GMCrewLower float64
	// GMLow and GMHigh bound the stiffness by what is not known of the section and of
	// the crew's height. They hold where the boat floats upright.
	GMLow, GMHigh float64
	// Carries is the load at each of the marked freeboards.
	Carries []afloat.Carried
}

const (
	// stations and girthPoints are how finely a hull is cut for floating:
	// displacement is then within 0.1 % of eight times as fine.
	stations    = 61
	girthPoints = 32
)

// BodyOf is a hull cut for floating.
func BodyOf(h *hull.Hull) *afloat.Body { return afloat.NewBody(h.Stations(stations, girthPoints)) }

func newAfloat(c Canoe) Afloat {
	d := c.Design
	a := Afloat{
		Body:  BodyOf(c.Hull),
		Water: afloat.WaterAt(d.WaterTemperature),
	}
	a.Boat = afloat.Total(afloat.Item{Mass: c.Gather.Weight.Typical, At: c.Gather.Centre})
	a.Crew, a.Cargo = crew.Aboard(c.Hull)
	a.Load = a.Boat.With(a.Cargo)
	people := 0.0
	for _, p := range a.Crew {
		a.Load = a.Load.With(p)
		people += p.Mass
	}
	a.Floated = a.Body.Float(a.Load, a.Water)
	a.GMCrewHigher = a.Floated.GMWithRaised(people, afloat.CrewHeightStep)
	a.GMCrewLower = a.Floated.GMWithRaised(people, -afloat.CrewHeightStep)
	a.steady(c.Hull, people)
	for _, f := range afloat.MarkedFreeboards() {
		a.Carries = append(a.Carries, a.Body.CarriesLevel(a.Boat, a.Water, f))
	}
	return a
}
