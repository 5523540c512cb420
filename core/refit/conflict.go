package refit

import (
	"fmt"
	"math"

	"barkwright/core/design"
	"barkwright/core/record"
	"barkwright/core/units"
)

// Conflict is a contradiction in the record, or a measurement that nothing can
// be made of. Data are the places, in the record, of what it is about; the fit
// goes on without those in Aside until the record is put right.
type Conflict struct {
	Message     string
	Data, Aside []int
}

// read goes over the record once and sets aside what cannot stand.
func read(data []record.Datum, s units.System) *reading {
	r := &reading{system: s, data: data, aside: make([]bool, len(data))}
	for i := range data {
		r.checkAlone(i)
	}
	r.checkTwice()
	r.checkBeams()
	r.checkDepths()
	r.checkLengths()
	r.placeThwarts()
	for i, d := range data {
		if d.Placed() && !r.aside[i] {
			r.checkPlaced(i)
		}
	}
	return r
}

// conflict names a contradiction about some data and sets the last of them aside.
func (r *reading) conflict(message string, about ...int) {
	last := about[len(about)-1]
	r.aside[last] = true
	r.conflicts = append(r.conflicts, Conflict{Message: message, Data: about, Aside: []int{last}})
}

func (r *reading) length(v float64) string { return units.Length.Format(v, r.system) }

// checkAlone sets aside what no boat that can be drawn here has.
func (r *reading) checkAlone(i int) {
	d := r.data[i]
	if d.Kind < 0 || int(d.Kind) >= len(record.Kinds()) {
		panic("refit: no such kind of measurement")
	}
	finite := func(v float64) bool { return math.Abs(v) < 1e6 }
	switch {
	case i >= MostData:
		r.conflict(fmt.Sprintf("A record holds at most %d measurements; this one is left out.", MostData), i)
	case !finite(d.Value) || !finite(d.At.Distance) || !finite(d.Tolerance) || !finite(d.At.Height) || d.At.Distance < 0:
		r.conflict(d.Kind.String()+": this is not a measurement of a boat.", i)
	case d.Number > furthest && d.Kind != record.Bay || d.Number > furthest+1:
		r.conflict(fmt.Sprintf("%v: at most %d thwarts each side of the middle one are drawn.", d.Named(r.system), furthest), i)
	case d.Number == 0 && (d.Kind == record.ThwartPosition || d.Kind == record.Bay):
		r.conflict(d.Kind.String()+": say which, counted from the middle.", i)
	case d.Value <= 0 && d.Kind != record.BottomRise:
		r.conflict(d.Named(r.system)+": has to be more than nothing.", i)
	case d.AtHeight() && d.At.Height <= 0:
		r.conflict(d.Kind.String()+": say at what height.", i)
	case kindRows[d.Kind].key != "":
		p := parameter(kindRows[d.Kind].key)
		slack := d.Within()
		if d.Value < p.Min-slack || d.Value > p.Max+slack {
			r.conflict(fmt.Sprintf("%v: %s is outside what is drawn here, %s to %s.", d.Named(r.system),
				p.Kind.Format(d.Value, r.system), p.Kind.Format(p.Min, r.system), p.Kind.Format(p.Max, r.system)), i)
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
func (r *reading) checkTwice() {
	for j, b := range r.data[:min(record.MostData, len(r.data))] {
		for i, a := range r.data[:j] {
			if a.Kind != b.Kind || a.Number != b.Number || a.Aft() != b.Aft() || r.aside[i] || r.aside[j] {
				continue
			}
			if a.At.From != b.At.From || a.At.Height != b.At.Height || (a.Placed() && a.Number == 0 && a.At.Distance != b.At.Distance) {
				continue
			}
			if a.Kind != record.EndPoint && math.Abs(a.Value-b.Value) > a.Within()+b.Within() {
				r.conflict(fmt.Sprintf("%v is recorded twice, as %s and as %s; the first is used until one is struck out.", a.Named(r.system), a.Shown(r.system), b.Shown(r.system)), i, j)
			}
		}
	}
}

// checkOrder names two data of which the first should not be the larger.
func (r *reading) checkOrder(small, large record.Kind, why string) {
	a, i, okA := r.first(small)
	b, j, okB := r.first(large)
	if okA && okB && a.Value > b.Value+a.Within()+b.Within() {
		r.conflict(fmt.Sprintf("%v, %s, is more than %v, %s: %s", a.Named(r.system), a.Shown(r.system), b.Named(r.system), b.Shown(r.system), why), j, i)
	}
}

func (r *reading) checkBeams() {
	r.checkOrder(record.BeamInside, record.BeamOutside, "left out until one is put right.")
	r.checkOrder(record.BeamInside, record.GreatestBeam, "left out until one is put right.")
	in, i, okIn := r.first(record.BeamInside)
	out, j, okOut := r.first(record.BeamOutside)
	if okIn && okOut && out.Value-in.Value > 2*parameter("inwaleThickness").Max+in.Within()+out.Within() {
		r.conflict(fmt.Sprintf("Beam outside and inside would make each gunwale %s thick: left out. If the bark bulges beyond the gunwales, record the greatest breadth of bark.",
			r.length((out.Value-in.Value)/2)), i, j)
	}
	for k, d := range r.data {
		if okIn && d.Kind == record.ClearWidth && !r.aside[k] && d.Value > in.Value+in.Within()+d.Within() {
			r.conflict(fmt.Sprintf("%v, %s, is longer than the beam inside the gunwales, %s: left out until one is put right.", d.Named(r.system), r.length(d.Value), r.length(in.Value)), i, k)
		}
	}
}

func (r *reading) checkDepths() {
	r.checkOrder(record.DepthInwale, record.DepthRail, "left out until one is put right.")
	in, i, okIn := r.first(record.DepthInwale)
	rail, j, okRail := r.first(record.DepthRail)
	if okIn && okRail && rail.Value-in.Value > parameter("capThickness").Max+in.Within()+rail.Within() {
		r.conflict(fmt.Sprintf("Depth to the rail and to the gunwale would make the cap %s thick: the rail's is left out.", r.length(rail.Value-in.Value)), i, j)
	}
	end, e, ok := r.first(record.EndHeight)
	for k, d := range r.data {
		if ok && (d.Kind == record.SheerHeight || d.Kind == record.RailHeight) && !r.aside[k] && d.Value > end.Value+end.Within()+d.Within() {
			r.conflict(fmt.Sprintf("%v, %s, is higher than the stem head, %s: left out until one is put right.", d.Named(r.system), r.length(d.Value), r.length(end.Value)), e, k)
		}
	}
}

// checkPlaced sets aside what was taken where there is no boat, or nobody knows where.
func (r *reading) checkPlaced(i int) {
	d := r.data[i]
	x, known := r.where(d)
	limit := r.halfLength
	if d.Kind == record.ClearWidth || d.Kind == record.SheerHeight || d.Kind == record.RailHeight {
		limit = r.halfGunwale
	}
	switch {
	case !known && d.Number != 0:
		r.conflict(d.Named(r.system)+": where that thwart stands is not recorded.", i)
	case !known && r.halfLength == 0 && r.halfGunwale == 0:
		r.conflict(d.Named(r.system)+": counted from an end, but no length is recorded.", i)
	case !known:
		r.conflict(d.Named(r.system)+": lies past amidships, or the length it is counted from is not recorded.", i)
	case limit > 0 && x > limit+d.Within():
		r.conflict(fmt.Sprintf("%v: lies beyond the end, which is %s from the middle.", d.Named(r.system), r.length(limit)), i)
	}
}
