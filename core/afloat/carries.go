package afloat

// Carried is the load that leaves a given freeboard.
type Carried struct {
	State     State   // Floats or NoSuchLoad; the loads hold with Floats alone
	Freeboard float64 // m, of the lowest point of the sheer
	Total     float64 // kg, all that the water carries
	Payload   float64 // kg, Total less the boat
}

// CarriesLevel returns the load that brings the boat, floated level, to a
// freeboard. With the boat alone already deeper, or the freeboard more than the
// depth, the state is NoSuchLoad and no load is given.
func (b *Body) CarriesLevel(boat Load, water Water, freeboard float64) Carried {
	m := b.upright.immerse(b.LowestSheer()-freeboard, 0)
	return carried(freeboard, m.volume*water.Density, boat)
}

func carried(freeboard, total float64, boat Load) Carried {
	if !(total >= boat.Mass) {
		return Carried{State: NoSuchLoad, Freeboard: freeboard}
	}
	return Carried{Floats, freeboard, total, total - boat.Mass}
}
