package core

import (
	"barkwright/core/afloat"
	"barkwright/core/geom"
)

// carried places the paddlers and the cargo where the design has them, on the
// inside of the bottom.
func carried(c Canoe) (crew []afloat.Item, cargo afloat.Item) {
	d := c.Design
	inside := d.BarkThickness + d.SheathingThickness + d.RibThickness
	floor := func(x float64) float64 { return c.Hull.Floor(x) + inside }
	for _, p := range d.Aboard[:d.Paddlers] {
		crew = append(crew, afloat.Item{Mass: p.Mass, At: geom.Vec3{X: p.X, Z: floor(p.X) + afloat.CentreHeight(d.Posture, p.SeatHeight, d.Stature)}})
	}
	return crew, afloat.Item{Mass: d.Cargo, At: geom.Vec3{X: d.CargoPosition, Z: floor(d.CargoPosition) + d.CargoHeight}}
}
