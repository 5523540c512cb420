package core

import (
	"barkwright/core/afloat"
	"barkwright/core/geom"
)

// crewReach is how far from amidships the outermost paddlers are placed, as a share
// of the way to the end thwarts: just inside them. Common practice, no published
// source.
const crewReach = 0.9

// carried places the paddlers evenly between the end thwarts and the cargo where
// the design has it, both on the inside of the bottom.
func carried(c Canoe) (crew []afloat.Item, cargo afloat.Item) {
	d := c.Design
	last := c.Frame.Thwarts[len(c.Frame.Thwarts)-1].X * crewReach
	inside := d.BarkThickness + d.SheathingThickness + d.RibThickness
	height := inside + afloat.CentreHeight(afloat.Posture(d.Posture), d.SeatHeight)
	for i := range d.Paddlers {
		x := 0.0
		if d.Paddlers > 1 {
			x = last * (2*float64(i)/float64(d.Paddlers-1) - 1)
		}
		crew = append(crew, afloat.Item{Mass: d.PaddlerMass, At: geom.Vec3{X: x, Z: height}})
	}
	return crew, afloat.Item{Mass: d.Cargo, At: geom.Vec3{X: d.CargoPosition, Z: inside + d.CargoHeight}}
}
