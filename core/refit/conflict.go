package refit

import (
	"fmt"
	"math"

	"barkwright/core/design"
	"barkwright/core/record"
	"barkwright/core/units"
)

// Conflict is a contradiction in the record, or a measurement that cannot be used.
// Data are the indices, in the record, of the measurements it is about. The fit goes on
// without those in Aside until the record is put right.
type Conflict struct {
	Message     string
	Data, Aside []int
}

// read goes over the record once and sets aside what cannot stand.
func read(data []record.Datum, s units.System) *evidence {
	ev := &evidence{system: s, data: data, aside: make([]bool, len(data))}
	for i := range data {
		ev.checkAlone(i)
	}
	ev.checkTwice()
	ev.checkBeams()
	ev.checkDepths()
	ev.checkLengths()
	ev.placeThwarts()
	for i, d := range data {
		if d.Placed() && !ev.aside[i] {
			ev.checkPlaced(i)
		}
	}
	return ev
}

// conflict names a contradiction about some data and sets the last of them aside.
func (ev *evidence) conflict(message string, about ...int) {
	last := about[len(about)-1]
	ev.aside[last] = true
	ev.conflicts = append(ev.conflicts, Conflict{Message: message, Data: about, Aside: []int{last}})
}

func (ev *evidence) length(v float64) string { return units.Length.Format(v, ev.system) }

// checkAlone sets aside what no boat that can be drawn here has.
func (ev *evidence) checkAlone(i int) {
	d := ev.data[i]
	if d.Kind < 0 || int(d.Kind) >= len(record.Kinds()) {
		panic("refit: no such kind of measurement")
	}
	finite := func(v float64) bool { return math.Abs(v) < 1e6 }
	switch {
	case i >= record.MostData:
		ev.conflict(fmt.Sprintf("A record holds at most %d measurements; this one is left out.", record.MostData), i)
	case !finite(d.Value) || !finite(d.At.Distance) || !finite(d.Tolerance) || !finite(d.At.Height) || d.At.Distance < 0:
		ev.conflict(d.Kind.String()+": this is not a measurement of a boat.", i)
	case d.Number > furthest && d.Kind != record.Bay || d.Number > furthest+1:
		ev.conflict(fmt.Sprintf("%v: at most %d thwarts each side of the middle one are drawn.", d.Named(ev.system),
			furthest), i)
	case d.Number == 0 && (d.Kind == record.ThwartPosition || d.Kind == record.Bay):
		ev.conflict(d.Kind.String()+": say which, counted from the middle.", i)
	case d.Value <= 0 && d.Kind != record.BottomRise:
		ev.conflict(d.Named(ev.system)+": has to be more than zero.", i)
	case d.AtHeight() && d.At.Height <= 0:
		ev.conflict(d.Kind.String()+": say at what height.", i)
	case d.Kind.Parameter() != "":
		p := parameter(d.Kind.Parameter())
		slack := d.Within()
		if d.Value < p.Min-slack || d.Value > p.Max+slack {
			ev.conflict(fmt.Sprintf("%v: %s is outside what is drawn here, %s to %s.", d.Named(ev.system),
				p.Kind.Format(d.Value, ev.system), p.Kind.Format(p.Min, ev.system), p.Kind.Format(p.Max, ev.system)), i)
		}
	}
}

func parameter(key string) design.Param {
	p, ok := design.Lookup(key)
	if !ok {
		panic("refit: no such parameter")
	}
	return p
}

// checkTwice sets aside what is recorded a second time and differently.
func (ev *evidence) checkTwice() {
	for j, b := range ev.data[:min(record.MostData, len(ev.data))] {
		for i, a := range ev.data[:j] {
			if a.Kind != b.Kind || a.Number != b.Number || a.Aft() != b.Aft() || ev.aside[i] || ev.aside[j] {
				continue
			}
			elsewhere := a.Placed() && a.Number == 0 && a.At.Distance != b.At.Distance
			if elsewhere || a.At.From != b.At.From || a.At.Height != b.At.Height {
				continue
			}
			if a.Kind != record.EndPoint && math.Abs(a.Value-b.Value) > a.Within()+b.Within() {
				ev.conflict(fmt.Sprintf("%v is recorded twice, as %s and as %s; the first is used until one is removed.",
					a.Named(ev.system), a.Shown(ev.system), b.Shown(ev.system)), i, j)
			}
		}
	}
}

// checkOrder leaves two measurements out where the first is the larger and should not be.
func (ev *evidence) checkOrder(small, large record.Kind) {
	a, i, okA := ev.first(small)
	b, j, okB := ev.first(large)
	if okA && okB && a.Value > b.Value+a.Within()+b.Within() {
		ev.conflict(fmt.Sprintf("%v, %s, is more than %v, %s: left out until one is put right.", a.Named(ev.system),
			a.Shown(ev.system), b.Named(ev.system), b.Shown(ev.system)), j, i)
	}
}

func (ev *evidence) checkBeams() {
	ev.checkOrder(record.BeamInside, record.BeamOutside)
	ev.checkOrder(record.BeamInside, record.GreatestBeam)
	in, i, okIn := ev.first(record.BeamInside)
	out, j, okOut := ev.first(record.BeamOutside)
	if okIn && okOut && out.Value-in.Value > 2*parameter("inwaleThickness").Max+in.Within()+out.Within() {
		ev.conflict(fmt.Sprintf("Beam outside and inside would make each gunwale %s thick: left out. If the bark bulges "+
			"beyond the gunwales, record the greatest breadth of bark.",
			ev.length((out.Value-in.Value)/2)), i, j)
	}
	for k, d := range ev.data {
		if okIn && d.Kind == record.ClearWidth && !ev.aside[k] && d.Value > in.Value+in.Within()+d.Within() {
			ev.conflict(fmt.Sprintf("%v, %s, is longer than the beam inside the gunwales, %s: left out until one is put "+
				"right.", d.Named(ev.system), ev.length(d.Value), ev.length(in.Value)), i, k)
		}
	}
}

func (ev *evidence) checkDepths() {
	ev.checkOrder(record.DepthInwale, record.DepthRail)
	in, i, okIn := ev.first(record.DepthInwale)
	rail, j, okRail := ev.first(record.DepthRail)
	if okIn && okRail && rail.Value-in.Value > parameter("capThickness").Max+in.Within()+rail.Within() {
		ev.conflict(fmt.Sprintf("Depth to the cap top and to the inwale would make the cap %s thick: the cap top's is left out.",
			ev.length(rail.Value-in.Value)), i, j)
	}
	end, e, ok := ev.first(record.EndHeight)
	for k, d := range ev.data {
		if ok && (d.Kind == record.SheerHeight || d.Kind == record.RailHeight) && !ev.aside[k] &&
			d.Value > end.Value+end.Within()+d.Within() {
			ev.conflict(fmt.Sprintf("%v, %s, is higher than the stem head, %s: left out until one is put right.",
				d.Named(ev.system), ev.length(d.Value), ev.length(end.Value)), e, k)
		}
	}
}

// checkPlaced sets aside what was taken beyond the boat's end or at an unknown place.
func (ev *evidence) checkPlaced(i int) {
	d := ev.data[i]
	x, known := ev.stations.where(d)
	limit, whole := ev.stations.halfLength, record.LengthOverall
	if d.Kind == record.ClearWidth || d.Kind == record.SheerHeight || d.Kind == record.RailHeight {
		limit, whole = ev.stations.halfGunwale, record.LengthOverGunwales
	}
	// The end is known no better than the length is.
	end, _, _ := ev.first(whole)
	switch {
	case !known && d.Number != 0:
		ev.conflict(d.Named(ev.system)+": where that thwart stands is not recorded.", i)
	case !known && !ev.stations.halfLength.known && !ev.stations.halfGunwale.known:
		ev.conflict(d.Named(ev.system)+": counted from an end, but no length is recorded.", i)
	case !known:
		ev.conflict(d.Named(ev.system)+": lies past amidships, or the length it is counted from is not recorded.", i)
	case limit.known && x > limit.x+d.Within()+end.Within()/2:
		ev.conflict(fmt.Sprintf("%v: lies beyond the end, which is %s from the middle.", d.Named(ev.system),
			ev.length(limit.x)), i)
	}
}
