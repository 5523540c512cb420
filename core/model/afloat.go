package model

import (
	"barkwright/core"
	"barkwright/core/afloat"
)

// Afloat is how a model lies when it carries what its boat does, at its scale.
type Afloat struct {
	// Mass is that of all of it, kg: model and what is put in.
	Mass float64
	// Freeboard is the height of the lowest place of the gunwale over the water, m of the model.
	Freeboard float64
}

// Afloat floats the model level, with the mass of the boat, its crew and its cargo at scale. It reports
// false where the boat itself does not float so.
func (b Boat) Afloat() (Afloat, bool) {
	of, faults := core.Try(b.Of)
	if len(faults) > 0 || of.Afloat.Floated.State == afloat.Overloaded {
		return Afloat{}, false
	}
	mass := of.Afloat.Load.Mass
	at := core.BodyOf(b.Hull).At(afloat.Load{Mass: mass}, of.Afloat.Water, 0)
	if at.State != afloat.Floats {
		return Afloat{}, false
	}
	return Afloat{b.AtScale(mass), b.OnModel(at.Freeboard)}, true
}

// AtScale is a mass of the boat on the model: masses go with the cube of sizes.
func (b Boat) AtScale(mass float64) float64 { return mass / (b.Scale * b.Scale * b.Scale) }
