package design

import (
	"math"
	"strconv"

	"barkwright/core/units"
)

// Room that parts need of each other, metres. Choices of this project.
const (
	// frameRoom is by how much the building frame is shorter than the gunwales: one
	// published frame is 156 in under gunwales of 158. Adney and Chapelle 1964, fig. 103.
	frameRoom = 2 * units.Inch
	// headRoom is how far the end reaches at least beyond a head set back.
	headRoom = 1 * units.Inch
)

// leastApart is how far apart the stations of the table of offsets stand at least, metres: 74 in the
// longest boat.
const leastApart = 3 * units.Inch

// headBackShare is the most of the heel's length that the head may be set back.
const headBackShare = 0.6

// OutsideBreadth is the breadth of the bark's outer face amidships at the top
// edge: over the inwales and the bark.
func (d Design) OutsideBreadth() float64 {
	return d.Beam + 2*(d.InwaleThickness+d.BarkThickness)
}

// relationFaults checks what parameters in range ask of each other.
func relationFaults(d Design) []Fault {
	var faults []Fault
	add := func(f Fault) { faults = append(faults, f) }
	gunwales := 2 * d.HalfGunwale()
	outside := d.OutsideBreadth()

	if d.Bulges() && d.GreatestBeam <= outside {
		add(NewFault("greatestBeam", "The greatest breadth of the bark, %s, is not over the %s outside the gunwales: choose "+
			"none, or more.",
			Long(d.GreatestBeam), Long(outside)).AtLeast(outside + 0.25*units.Inch))
	}
	if d.StationsApart > 0 && d.StationsApart < leastApart-Rounding {
		add(NewFault("stationsApart", "Stations nearer than %s would make a longer table than is of use: choose none, or more.",
			Small(leastApart)).AtLeast(leastApart))
	}
	if d.GunwaleEndHeight < d.Depth-Rounding {
		add(NewFault("gunwaleEndHeight", "The gunwale would be lower at its ends than the depth of %s amidships.",
			Long(d.Depth)).AtLeast(d.Depth))
	}
	if d.Rocker > d.Depth/2+Rounding {
		add(NewFault("rocker", "The bottom would rise to more than half the depth of %s.",
			Long(d.Depth)).AtMost(d.Depth / 2))
	}
	onFrame := d.BuiltOn == OnFrame
	if onFrame && d.FrameLength > gunwales-frameRoom+Rounding {
		add(NewFault("frameLength", "The building frame has to be %s shorter than the gunwales, which are %s from end to end.",
			Small(frameRoom), Long(gunwales)).AtMost(gunwales - frameRoom))
	}
	if onFrame && d.FrameLength > d.BedLength+Rounding {
		add(NewFault("bedLength", "The bed is shorter than the building frame of %s.",
			Long(d.FrameLength)).AtLeast(d.FrameLength))
	}
	if !onFrame && gunwales > d.BedLength+Rounding {
		add(NewFault("bedLength", "The bed is shorter than the gunwales of %s, on which the boat is built.",
			Long(gunwales)).AtLeast(gunwales))
	}
	if d.TurnSet() && d.TurnWidth > MostTurn*outside+Rounding {
		add(NewFault("turnWidth", "The turn line of a boat built on a frame is at most %s of the %s outside the gunwales; for "+
			"sides that bulge more, set a greatest breadth of bark or build on the gunwale frame.",
			Shown{units.Percent, MostTurn}, Long(outside)).AtMost(MostTurn * outside))
	}
	if f, wrong := d.girthFault(); wrong {
		faults = append(faults, f)
	}
	faults = append(append(faults, endFaults(d)...), timberFaults(d)...)
	return append(append(faults, crewFaults(d)...), correctionFaults(d)...)
}

// crewFaults keeps paddlers and cargo between the gunwales' ends, and seats off the
// bottom.
func crewFaults(d Design) []Fault {
	faults := seatFaults(d)
	end := d.HalfGunwale()
	if d.Cargo > 0 && math.Abs(d.CargoPosition) > end+Rounding {
		fault := NewFault("cargoPosition", "The cargo would be beyond the end of the gunwales, %s from amidships.",
			Long(end))
		if d.CargoPosition > 0 {
			faults = append(faults, fault.AtMost(end))
		} else {
			faults = append(faults, fault.AtLeast(-end))
		}
	}
	for i, p := range d.Aboard[:max(0, min(MostPaddlers, d.Paddlers))] {
		if math.Abs(p.X) <= end+Rounding {
			continue
		}
		fault := NewFault("paddler"+strconv.Itoa(i+1)+"Place",
			"Paddler %s would be beyond the end of the gunwales, %s from amidships.",
			Shown{units.Count, float64(i + 1)}, Long(end))
		if p.X > 0 {
			faults = append(faults, fault.AtMost(end))
		} else {
			faults = append(faults, fault.AtLeast(-end))
		}
	}
	return faults
}

// seatFaults names seats too low to be seats, at the control that set them.
func seatFaults(d Design) []Fault {
	if d.Posture != SittingOnSeat {
		return nil
	}
	var faults []Fault
	low := func(key string, height float64) bool {
		if height >= leastSeat-Rounding {
			return false
		}
		faults = append(faults, NewFault(key, "A seat this low is none: sit on the bottom, or set a seat of %s or more.",
			Small(leastSeat)).AtLeast(leastSeat))
		return true
	}
	all := low("seatHeight", d.SeatHeight)
	for i, p := range d.Aboard[:max(0, min(MostPaddlers, d.Paddlers))] {
		if !all || p.SeatHeight != d.SeatHeight {
			low(paddlerSeat(i), p.SeatHeight)
		}
	}
	return faults
}

// paddlerSeat is the key of the seat of paddler i from the bow.
func paddlerSeat(i int) string { return "paddler" + strconv.Itoa(i+1) + "Seat" }

// Seated is d with the usual seat in place of any of no height: a boat kept before
// seats had a least height opens with one.
func Seated(d Design) Design {
	if d.Posture != SittingOnSeat {
		return d
	}
	keys := []string{"seatHeight"}
	for i := range d.Aboard {
		keys = append(keys, paddlerSeat(i))
	}
	for _, key := range keys {
		if p, _ := Lookup(key); p.get(&d) == 0 {
			p.Release(&d)
		}
	}
	return Follow(d)
}

func endFaults(d Design) []Fault {
	var faults []Fault
	if least := d.GunwaleEndHeight + d.CapThickness; d.EndHeight < least-Rounding {
		faults = append(faults, NewFault("endHeight",
			"The stem head has to stand over the gunwale's end and its cap, %s high.",
			Long(least)).AtLeast(least))
	}
	if most := d.mostSetback(); d.HeadSetback > most+Rounding {
		faults = append(faults, NewFault("headSetback",
			"The stem head is set back too far: it has to stand %s or more beyond the gunwale's end, and its setback is at "+
				"most %s of the way back to the heel.",
			Small(headRoom), Shown{units.Percent, headBackShare}).AtMost(most))
	}
	// The heel at least half-way from the middle to the gunwale's end.
	if most := d.Length/2 - d.HalfGunwale()/2; d.HeelLength > most+Rounding {
		fault := NewFault("heelLength",
			"The heel would stand less than half-way from the middle to the gunwale's end.").AtMost(most)
		if heel, _ := Lookup("heelLength"); !heel.Owned(d) {
			// Nobody set it: it stands where the headboard does.
			fault.Key = "headboard"
			g := d.Gunwale()
			path := g.Path()
			fault = fault.AtMost(path.Length() - path.RunTo(d.Length/2-most+HeelInboard))
		}
		faults = append(faults, fault)
	}
	return faults
}

func (d Design) mostSetback() float64 {
	return max(0, min(d.Overhang-headRoom, headBackShare*d.HeelLength))
}

func timberFaults(d Design) []Fault {
	var faults []Fault
	if d.StemWidth > 2*d.InwaleThickness+Rounding {
		faults = append(faults, NewFault("stemWidth",
			"The stem-piece is broader than the two inwales, %s each, that meet on it.",
			Small(d.InwaleThickness)).AtMost(2*d.InwaleThickness))
	}
	if d.RibTuck > d.InwaleDepth+Rounding {
		faults = append(faults, NewFault("ribTuck",
			"The ribs' tips would end below the inwale, which is %s deep: it has to hold them.",
			Small(d.InwaleDepth)).AtMost(d.InwaleDepth))
	}
	if narrowest := min(d.RibWidthMid, d.RibWidthEnd); d.RibTipWidth > narrowest+Rounding {
		faults = append(faults, NewFault("ribTipWidth",
			"The ribs' tips are broader than the ribs, %s at the narrowest.",
			Small(narrowest)).AtMost(narrowest))
	}
	return faults
}
