package design

import (
	"barkwright/core/stage"
	"strconv"

	"barkwright/core/units"
)

// AverageMass is the assumed average weight per person, 185 lb, in kg. US Coast
// Guard, 46 CFR 170.090 as amended by Federal Register 14 December 2010, in force
// from 1 December 2011.
const AverageMass = 185 * units.Pound

const (
	// ModelStature is that of the segment model the crew's heights come from, 1.741 m:
	// de Leva, Journal of Biomechanics 29, 1996, as half an inch tells it.
	ModelStature = 68.5 * units.Inch
	// UsualSeat is the height of a seat where sitting on one is chosen, and leastSeat
	// the least that is a seat at all. Common practice, no published source.
	UsualSeat = 9 * units.Inch
	leastSeat = 3 * units.Inch
)

func crewRows() []Param {
	pounds := [2]float64{5 * units.Pound, 1}
	rows := []Param{
		row(stage.Choose, "paddlers", "Paddlers", "Everyone aboard, from bow to stern.").
			wholes(2, 0, MostPaddlers, func(d *Design) *int { return &d.Paddlers }),
		row(stage.Choose, "paddlerMass", "Weight of each",
			"With clothes. Each one's own is set at Pitch and first water.").
			quantity(units.Mass, AverageMass, 50*units.Pound, 350*units.Pound, pounds,
				func(d *Design) *float64 { return &d.PaddlerMass }),
		choices(row(stage.Choose, "posture", "Paddlers kneel or sit", "Kneeling is steadier: the weight is lower."),
			names(postures(), Posture.String),
			func(d *Design) *Posture { return &d.Posture }),
		row(stage.Choose, "stature", "Height of a paddler, standing", "It sets how high a paddler's weight lies.").
			quantity(units.Length, ModelStature, 48*units.Inch, 84*units.Inch, [2]float64{0.5 * units.Inch, 0.01},
				func(d *Design) *float64 { return &d.Stature }),
		row(stage.Choose, "seatHeight", "Height of the seat over the bottom", "0 for kneeling on the heels.").
			timber(0, 0, 14, func(d *Design) *float64 { return &d.SeatHeight }).
			follows(func(d Design) float64 {
				if d.Posture == SittingOnSeat {
					return UsualSeat
				}
				return 0
			}),
		row(stage.Choose, "cargo", "Cargo", "Packs, water, dog: all that is not a paddler.").
			quantity(units.Mass, 100*units.Pound, 0, 8000*units.Pound, pounds,
				func(d *Design) *float64 { return &d.Cargo }),
		row(stage.Choose, "cargoHeight", "Middle of the cargo over the bottom", "Half the height of the pile.").
			timber(6, 0, 36, func(d *Design) *float64 { return &d.CargoHeight }),
		cargoPosition(),
		row(stage.Pitch, "waterTemperature", "Water temperature",
			"The water's drag follows from it, a little. Cold water has a caution of its own.").
			quantity(units.Temperature, 15, 0, 30, [2]float64{5.0 / 9, 1},
				func(d *Design) *float64 { return &d.WaterTemperature }),
	}
	for i := range MostPaddlers {
		rows = append(rows, paddlerRows(i)...)
	}
	return rows
}

// paddlerRows are what one of the crew may have different from the others.
func paddlerRows(i int) []Param {
	n := strconv.Itoa(i + 1)
	one := func(key, label, help string) Param {
		p := row(stage.Pitch, "paddler"+n+key, "Paddler "+n+": "+label, help)
		p.Paddler = i + 1
		return p
	}
	place := one("Place", "forward of amidships", "Less than zero: aft.").
		hull(0, -180, 180, func(d *Design) *float64 { return &d.Aboard[i].X }).
		follows(func(d Design) float64 { return d.evenPlace(i) })
	place.Kind = units.Offset
	return []Param{
		place,
		one("Mass", "weight", "With clothes.").
			quantity(units.Mass, AverageMass, 50*units.Pound, 350*units.Pound, [2]float64{5 * units.Pound, 1},
				func(d *Design) *float64 { return &d.Aboard[i].Mass }).
			exactly(func(d Design) float64 { return d.PaddlerMass }),
		one("Seat", "height of the seat", "Over the bottom; 0 for kneeling on the heels.").
			timber(0, 0, 14, func(d *Design) *float64 { return &d.Aboard[i].SeatHeight }).
			exactly(func(d Design) float64 { return d.SeatHeight }),
	}
}

// crewReach is how far from amidships the outermost paddlers are placed, as a share
// of the way to the end thwarts: just inside them. Common practice, no published
// source.
const crewReach = 0.9

// evenPlace is where paddler i from the bow is unless moved: the crew spread evenly
// between the end thwarts, one alone amidships.
func (d Design) evenPlace(i int) float64 {
	if d.Paddlers < 2 || i >= d.Paddlers {
		return 0
	}
	end := crewReach * d.EndThwart() * d.HalfGunwale()
	return end * (1 - 2*float64(i)/float64(d.Paddlers-1))
}

func cargoPosition() Param {
	p := row(stage.Choose, "cargoPosition", "Cargo forward of amidships", "Less than zero: aft.").
		hull(0, -180, 180, func(d *Design) *float64 { return &d.CargoPosition })
	p.Kind = units.Offset
	return p
}
