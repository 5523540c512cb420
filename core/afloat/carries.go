package afloat

// Carried is the load that leaves a given freeboard.
type Carried struct {
	Possible  bool    // some load leaves it; the loads are zero otherwise
	Freeboard float64 // m, of the lowest point of the sheer
	Total     float64 // kg, all that the water carries
	Payload   float64 // kg, Total less the boat
}

// CarriesLevel returns the load that brings the boat, floated level, to a
// freeboard. With the boat alone already deeper, or the freeboard more than the
// depth, no load is possible.
func (b *Body) CarriesLevel(boat Load, water Water, freeboard float64) Carried {
	m := b.upright.immerse(b.LowestSheer()-freeboard, 0)
	return carried(freeboard, m.volume*water.Density, boat)
}

func carried(freeboard, total float64, boat Load) Carried {
	if !(total >= boat.Mass) {
		return Carried{Freeboard: freeboard}
	}
	return Carried{true, freeboard, total, total - boat.Mass}
}
