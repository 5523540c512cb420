package afloat

import "barkwright/core/geom"

// Item is one thing carried, the boat herself among them.
type Item struct {
	Mass float64   // kg
	At   geom.Vec3 // its centre of mass, m, in the boat's axes
}

// Load is everything the water carries: total mass and its centre.
type Load struct {
	Mass   float64   // kg
	Centre geom.Vec3 // m
}

// Total adds items up. No items, or no mass, give the zero Load.
func Total(items ...Item) Load {
	var l Load
	for _, i := range items {
		l = l.With(i)
	}
	return l
}

// With returns the load with one more item.
func (l Load) With(i Item) Load {
	mass := l.Mass + i.Mass
	if mass == 0 {
		return Load{}
	}
	return Load{mass, l.Centre.Scale(l.Mass / mass).Add(i.At.Scale(i.Mass / mass))}
}

// Moved returns the load with a part of it, of the given mass, moved: a paddler
// leaning, or the whole crew standing higher.
func (l Load) Moved(mass float64, by geom.Vec3) Load {
	l.Centre = l.Centre.Add(by.Scale(mass / l.Mass))
	return l
}

// mustWeigh panics on a load that is not positive.
func (l Load) mustWeigh() {
	if !(l.Mass > 0) {
		panic(noLoad)
	}
}
