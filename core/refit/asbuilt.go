package refit

import (
	"math"

	"barkwright/core/design"
	"barkwright/core/record"
	"barkwright/core/units"
)

// Change is a parameter that a refit moved, in its SI unit.
type Change struct {
	Key           string
	Before, After float64
}

// Rebuilt is a design brought to what the boat measures as it stands.
type Rebuilt struct {
	Design design.Design
	// Moved are the parameters that changed, in the order of the design's table, and
	// Corrected what changed of a curve in one place.
	Moved     []Change
	Corrected []Corrected
	// Rows stand in the order of the readings.
	Rows      []Row
	Conflicts []Conflict
}

// AsBuilt brings a design to tape readings taken during the work: length overall,
// the width inside the gunwales at a thwart or a station, heights of the sheer, the
// rail, the bottom and the stem head. A width or a height of the sheer changes the boat
// where it was read, dying out by the next thwart that was made and not read; the
// change is kept with the design as a correction. The bottom and the end's profile are
// brought to theirs by their own numbers. The gunwales keep their ends, the building
// frame, the bed and the stem-pieces their sizes. What is still to be made, ribs,
// headboards, lacing, follows from the new lines.
//
// Gunwales spread by half an inch draw their ends in by well under a sixteenth; that
// is left out. Messages show lengths in the system.
func AsBuilt(d design.Design, readings []record.Datum, s units.System) Rebuilt {
	ev := &evidence{system: s, data: make([]record.Datum, len(readings)), aside: make([]bool, len(readings))}
	for i, a := range readings {
		a.Kind, a.Locked = plainKind(a.Kind), true
		ev.data[i] = a
		ev.checkAlone(i)
	}
	ev.checkTwice()
	ev.stations.halfLength, ev.stations.halfGunwale = at(d.Length/2), at(d.HalfGunwale())
	b := &boat{ev: ev, design: d, settled: map[string]bool{"endHeight": true}}
	b.standThwarts()
	if l, _, ok := b.ev.first(record.LengthOverall); ok {
		b.set("length", l.Value)
		b.set("overhang", l.Value/2-d.HalfGunwale())
		ev.stations.halfLength = at(b.design.Length / 2)
	}
	if e, _, ok := b.ev.first(record.EndHeight); ok {
		b.set("endHeight", e.Value)
	}
	for i, a := range ev.data {
		if !ev.aside[i] && a.Placed() {
			ev.checkPlaced(i)
		}
	}
	corrected := append(b.correct(planCurve), b.correct(sheerCurve)...)
	// The one moves the thwarts along the other a little.
	for range correctionRounds {
		b.correct(planCurve)
		b.correct(sheerCurve)
	}
	corrected = append(corrected, b.correct(girthCurve)...)
	b.design, _ = b.ends().solve(b.design, nil)
	b.design = keepMade(d, b.design, ev)
	out := Rebuilt{Design: b.design, Conflicts: ev.conflicts, Rows: b.rows(), Moved: moved(d, b.design),
		Corrected: corrected}
	for i := range out.Rows {
		out.Rows[i].Datum = readings[i]
	}
	return out
}

// plainKind is the placed kind that a measurement amidships is one of.
func plainKind(k record.Kind) record.Kind {
	switch k {
	case record.BeamInside:
		return record.ClearWidth
	case record.DepthInwale:
		return record.SheerHeight
	case record.DepthRail:
		return record.RailHeight
	}
	return k
}

// keepMade puts back the parameters that would follow the new lines but are made.
func keepMade(before, after design.Design, ev *evidence) design.Design {
	read := map[string]bool{}
	for i, a := range ev.data {
		if !ev.aside[i] {
			read[a.Kind.Parameter()] = true
		}
	}
	for _, p := range design.Params() {
		if p.Follows() && !p.Owned(after) && !read[p.Key] && p.Get(&after) != p.Get(&before) {
			after = p.Set(after, p.Get(&before))
		}
	}
	return after
}

// moved lists what changed by more than the search settles to.
func moved(before, after design.Design) []Change {
	var list []Change
	for _, p := range design.Params() {
		if was, is := p.Get(&before), p.Get(&after); math.Abs(is-was) > 1e-6*(p.Max-p.Min) {
			list = append(list, Change{p.Key, was, is})
		}
	}
	return list
}
