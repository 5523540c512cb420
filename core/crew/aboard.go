package crew

import (
	"barkwright/core/afloat"
	"barkwright/core/geom"
	"barkwright/core/hull"
)

// Aboard returns the paddlers and the cargo as loads where the design places them, on
// the inside of the bottom.
func Aboard(h *hull.Hull) (paddlers []afloat.Item, cargo afloat.Item) {
	d := &h.Design
	inside := d.BarkThickness + d.SheathingThickness + d.RibThickness
	at := func(x, height float64) geom.Vec3 { return geom.Vec3{X: x, Z: h.Floor(x) + inside + height} }
	for _, p := range d.Aboard[:d.Paddlers] {
		paddlers = append(paddlers, afloat.Item{Mass: p.Mass, At: at(p.X, CentreHeight(d.Posture, p.SeatHeight, d.Stature))})
	}
	return paddlers, afloat.Item{Mass: d.Cargo, At: at(d.CargoPosition, d.CargoHeight)}
}
