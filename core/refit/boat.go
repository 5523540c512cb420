package refit

import (
	"math"

	"barkwright/core/design"
	"barkwright/core/hull"
	"barkwright/core/record"
	"barkwright/core/units"
)

// boat is a design as it is put together from evidence.
type boat struct {
	ev      *evidence
	design  design.Design
	settled map[string]bool
	groups  []group
	// begun are the designs each block began from.
	begun []design.Design
}

// build works out the design: first what is stated outright, then what the plan,
// the sheer, the bottom and the ends decide, each by least squares, last what is
// read off the finished lines.
func build(ev *evidence) *boat {
	b := &boat{ev: ev, design: design.Default(), settled: map[string]bool{}}
	b.state()
	for i, next := range []func() group{b.plan, b.sheer, b.ends, b.section} {
		if i == 2 {
			b.headboard()
		}
		k := next()
		b.groups, b.begun = append(b.groups, k), append(b.begun, b.design)
		b.design, _ = k.solve(b.design, nil)
		for _, l := range k.free {
			b.settled[l.key] = true
		}
	}
	b.splitBeams()
	b.readOff()
	return b
}

func (b *boat) set(key string, v float64) {
	p := parameter(key)
	b.design = p.Set(b.design, max(p.Min, min(p.Max, v)))
	b.settled[key] = true
}

// state sets what the record states outright and the rules for what it does not.
func (b *boat) state() {
	for _, k := range record.Kinds() {
		if key := k.Parameter(); key != "" && k != record.GreatestBeam {
			if v, ok := b.mean(k); ok {
				b.set(key, v)
			}
		}
	}
	gunwale := b.ev.stations.halfGunwale
	if !b.ev.stations.halfLength.known && gunwale.known {
		b.set("length", 2*gunwale.x/(1-2*overhangShare))
	}
	if gunwale.known {
		b.set("overhang", b.design.Length/2-gunwale.x)
	} else {
		b.design = hold(b.design, "overhang")
	}
	b.stateBeam()
	if rail, _, ok := b.ev.first(record.DepthRail); ok && !b.settled["depth"] {
		b.set("depth", rail.Value-b.design.CapThickness)
	} else if !b.settled["depth"] {
		b.design = hold(b.design, "depth")
	}
	n := 0
	for k := 1; k <= furthest; k++ {
		if b.ev.stations.thwart(k).known {
			n = k
		}
	}
	if n > 0 {
		b.set("thwarts", float64(2*n+1))
	}
}

// mean returns the weighted mean of what the record says of a kind: of both ends
// where they are recorded apart. A position is turned into one from amidships.
func (b *boat) mean(k record.Kind) (v float64, ok bool) {
	sum, weights := 0.0, 0.0
	for i, d := range b.ev.data {
		if d.Kind != k || b.ev.aside[i] {
			continue
		}
		v, known := d.Value, true
		if k == record.HeadboardPosition {
			v, known = b.ev.stations.from(d.At.From, d.Value)
		}
		if known {
			w := weight(d) * weight(d)
			sum, weights = sum+w*v, weights+w
		}
	}
	return sum / max(weights, math.SmallestNonzeroFloat64), weights > 0
}

func (b *boat) plan() group {
	k := group{data: b.samples(record.ClearWidth)}
	if len(k.data) == 0 {
		return k
	}
	if inside := b.amidships(map[record.Kind]record.Kind{record.BeamInside: record.ClearWidth}, 0); len(inside) > 0 {
		k.data = append(k.data, inside...)
	} else {
		k.data = append(k.data, b.amidships(map[record.Kind]record.Kind{record.BeamOutside: record.ClearWidth},
			2*b.design.InwaleThickness)...)
	}
	k.free = append(k.free, freed("beam", func(d *design.Design) *float64 { return &d.Beam }))
	if offMiddle(k.data) {
		k.free = append(k.free,
			freed("beamFull", func(d *design.Design) *float64 { return &d.BeamFull }),
			freed("beamFine", func(d *design.Design) *float64 { return &d.BeamFine }))
	}
	return k
}

func (b *boat) sheer() group {
	k := group{data: b.samples(record.SheerHeight, record.RailHeight)}
	if len(k.data) == 0 {
		return k
	}
	k.data = append(k.data, b.amidships(map[record.Kind]record.Kind{record.DepthInwale: record.SheerHeight,
		record.DepthRail: record.RailHeight}, 0)...)
	k.free = append(k.free, freed("depth", func(d *design.Design) *float64 { return &d.Depth }))
	if !offMiddle(k.data) {
		return k
	}
	end := freed("gunwaleEndHeight", func(d *design.Design) *float64 { return &d.GunwaleEndHeight })
	headRise := func(d design.Design) float64 { return b.design.EndHeight - d.GunwaleEndHeight }
	if b.settled["endHeight"] {
		end = end.within(0, b.design.EndHeight-b.design.CapThickness)
	} else {
		// The head follows the gunwale's end.
		over := b.design.EndHeight - b.design.GunwaleEndHeight
		headRise = func(design.Design) float64 { return over }
	}
	k.free = append(k.free, end, freed("sheerSweep", func(d *design.Design) *float64 { return &d.SheerSweep }))
	// The gunwales end no lower than amidships, and the bark's edge goes on from
	// their slope to the head without a hump: design.Faults asks for both.
	k.constraints = 2
	k.constraint = func(h *hull.Hull, over []float64) {
		d := h.Design
		const step = units.Millimetre
		slope := (h.Sheer(h.GunwaleX) - h.Sheer(h.GunwaleX-step)) / step
		over[0] = d.Depth - d.GunwaleEndHeight
		over[1] = slope*(d.Overhang-d.HeadSetback) - 3*headRise(d)
	}
	return k
}

// ends is the bottom and the end's profile, which take over one from the other at
// the heel.
func (b *boat) ends() group {
	points := b.samples(record.EndPoint)
	k := group{data: append(b.samples(record.BottomRise), points...)}
	if len(k.data) == 0 {
		return k
	}
	d := b.design
	k.free = []free{
		freed("rocker", func(d *design.Design) *float64 { return &d.Rocker }).within(0, d.Depth/2),
		freed("rockerSpread", func(d *design.Design) *float64 { return &d.RockerSpread }),
	}
	k.curve = len(points) > 0
	for _, s := range k.data {
		k.curve = k.curve || s.x > d.HeelX()
	}
	if len(points) == 0 {
		return k
	}
	// Points of the end tell how far in the heel lies; else it stands by the headboard.
	k.free = append(k.free, freed("heelLength", func(d *design.Design) *float64 { return &d.HeelLength }).within(0,
		d.Length/2-d.HalfGunwale()/2))
	// A head far inboard of a short heel leaves no room for the end's curve.
	k.constraints = 1
	k.constraint = func(h *hull.Hull, over []float64) { over[0] = h.Design.HeadSetback - 0.6*h.Design.HeelLength }
	heights, lengths := b.samples(record.EndHeight), b.samples(record.LengthOverall)
	k.data = append(append(k.data, heights...), lengths...)
	if len(heights) > 0 || !b.settled["endHeight"] {
		k.free = append(k.free, freed("endHeight", func(d *design.Design) *float64 { return &d.EndHeight }).
			within(d.GunwaleEndHeight+d.CapThickness, math.Inf(1)))
	}
	if len(lengths) > 0 {
		// A foremost point that lies elsewhere moves the bark's end and not the gunwale's.
		k.free = append(k.free, freed("overhang", func(d *design.Design) *float64 { return &d.Overhang }))
		k.halfGunwale = at(d.HalfGunwale())
	}
	k.free = append(k.free,
		freed("headSetback", func(d *design.Design) *float64 { return &d.HeadSetback }).within(0,
			max(0, d.Overhang-units.Inch)),
		freed("endFull", func(d *design.Design) *float64 { return &d.EndFull }))
	return k
}

// headboard sets where the headboard stands, once plan and sheer are known. The heel
// and so the bottom depend on it.
func (b *boat) headboard() {
	if x, ok := b.mean(record.HeadboardPosition); ok {
		h := finished(b.design)
		b.set("headboard", h.Gunwale.Length()-h.RunTo(x))
	}
}

// readOff sets what is measured along the gunwale of the finished lines.
func (b *boat) readOff() {
	h := finished(b.design)
	length := h.Gunwale.Length()
	for n := 1; n <= furthest; n++ {
		if thwart := b.ev.stations.thwart(n); thwart.known {
			b.set(thwartKey(n), h.RunTo(thwart.x)/length)
		}
	}
	if d, _, ok := b.ev.first(record.RibSpacing); ok && !b.settled["ribs"] {
		b.set("ribs", 2*length/d.Value)
	}
}
