package afloat

import "math"

// Carried is the load that leaves a given freeboard.
type Carried struct {
	State     State   // Floats, NoSuchLoad or NotConverged; the loads hold with Floats alone
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

// CarriesTrimmed returns the load that brings the boat, free to trim, to a
// freeboard when it is put in with its centre where payload has it. The mass of
// payload does not matter. The state is NoSuchLoad as in CarriesLevel, NotConverged where no trim
// balances.
//
// The plane that leaves the freeboard is found for each slope, the mass follows
// from the volume, and the slope is stepped by the secant rule until the mass
// balances.
func (b *Body) CarriesTrimmed(boat, payload Load, water Water, freeboard float64) Carried {
	t := b.upright
	try := func(slope float64) (total, moment float64) {
		p := Plane{Slope: slope}
		above, _ := b.freeboard(p)
		p.Height = (above - freeboard) * math.Sqrt(1+slope*slope)
		m := t.immerse(p.Height, p.Slope)
		total = m.volume * water.Density
		together := boat.With(Item{total - boat.Mass, payload.Centre})
		moment, _, _ = t.moment(m, together, p)
		return total, moment
	}
	none := Carried{State: NotConverged, Freeboard: freeboard}
	half := b.halfLength()
	s0, s1 := 0.0, 0.01/half
	total, f0 := try(s0)
	if total < boat.Mass {
		return Carried{State: NoSuchLoad, Freeboard: freeboard}
	}
	if f0 == 0 {
		return carried(freeboard, total, boat)
	}
	total, f1 := try(s1)
	for range newtonSteps {
		if f1 == f0 {
			return none
		}
		next := s1 - f1*(s1-s0)/(f1-f0)
		if !(math.Abs(next) <= steepestSlope) {
			return none
		}
		s0, f0, s1 = s1, f1, next
		total, f1 = try(s1)
		if math.Abs(s1-s0)*half < stepTolerance {
			return carried(freeboard, total, boat)
		}
	}
	return none
}
