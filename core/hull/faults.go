package hull

import (
	"math"

	"barkwright/core/design"
	"barkwright/core/geom"
	"barkwright/core/units"
)

const (
	// sheerRun bounds how much of the rise from the gunwale's end to the head the
	// sheer may make at its own slope: the cubic beyond it then has no bump.
	sheerRun = 3
	// headClear is how far under the head the end curve's second handle stands at
	// least, as a share of the rise from heel to head.
	headClear = 0.1
	// mostTurnedIn is how far the sides of a bulging boat may lean in.
	mostTurnedIn = 60 * units.Degree
	// faultStations is the number of places along the half boat where the frame
	// and the sides are tried.
	faultStations = 60
)

// Faults returns what cannot be built about the shape of a design that design.Validate
// passes, or nil.
func (h *Hull) Faults() []design.Fault {
	var faults []design.Fault
	for _, find := range []func() (design.Fault, bool){
		h.tooBroad, h.turnedIn, h.frameOutside, h.headHandle, h.gunwaleOutside, h.sheerTooSteep,
	} {
		if f, wrong := find(); wrong {
			faults = append(faults, f)
		}
	}
	return faults
}

// tooBroad: no turn line gives the greatest breadth asked.
func (h *Hull) tooBroad() (design.Fault, bool) {
	if h.TurnReached || !h.Design.Bulges() {
		return design.Fault{}, false
	}
	f := design.NewFault("greatestBeam", "No section of this depth and turn of the bilge is %s broad.",
		design.Long(h.Design.GreatestBeam))
	return h.fitMost(f, "greatestBeam", func(t *Hull) bool { return t.TurnReached }), true
}

// turnedIn: the sides of a bulging boat lean in too far.
func (h *Hull) turnedIn() (design.Fault, bool) {
	fits := func(t *Hull) bool { return t.turnedInMost() <= mostTurnedIn }
	if !h.TurnReached || fits(h) {
		return design.Fault{}, false
	}
	f := design.NewFault("greatestBeam", "The sides would lean in by %s from upright; %s is the most.",
		design.Shown{Kind: units.Angle, Value: h.turnedInMost()}, design.Shown{Kind: units.Angle, Value: mostTurnedIn})
	return h.fitMost(f, "greatestBeam", fits), true
}

// turnedInMost is the largest angle from upright by which the side leans in.
func (h *Hull) turnedInMost() float64 {
	if h.bulge == 0 {
		return 0
	}
	most := 0.0
	for i := range faultStations {
		most = max(most, h.Column(2*float64(i)/faultStations).Section.Turning()-math.Pi/2)
	}
	return most
}

// frameOutside: the building frame stands outside the bark somewhere.
func (h *Hull) frameOutside() (design.Fault, bool) {
	if h.Design.BuiltOn != design.OnFrame {
		return design.Fault{}, false
	}
	x, out := h.frameOut()
	if out <= 0 {
		return design.Fault{}, false
	}
	fits := func(t *Hull) bool { _, out := t.frameOut(); return out <= 0 }
	sentence := "The building frame would stand %s outside the bark, %s from amidships."
	shown := []design.Shown{{Kind: units.SmallLength, Value: out}, design.Long(x)}
	f := h.fitMost(design.NewFault("frameWidth", sentence, shown...), "frameWidth", fits)
	if shorter := h.fitMost(design.NewFault("frameLength", sentence, shown...), "frameLength", fits); shorter.HasFit &&
		(!f.HasFit || x > 0.75*h.Design.FrameLength/2) {
		f = shorter
	}
	return f, true
}

// frameOut is by how much the frame stands outside the inner face of the bark
// where that is most, and where along x.
func (h *Hull) frameOut() (x, out float64) {
	out = math.Inf(-1)
	for i := range faultStations {
		at := h.Design.FrameLength / 2 * float64(i) / faultStations
		room := h.SkinHalfBreadth(at)
		if h.out > 0 {
			s := h.Column(h.ColumnAtEdge(at)).Section
			room = s.Breadth()
		}
		if o := h.FrameHalfBreadth(at) + h.Design.BarkThickness - room; o > out {
			x, out = at, o
		}
	}
	return x, out
}

// headHandle: so much rocker under so low a head that the end curve has no room.
func (h *Hull) headHandle() (design.Fault, bool) {
	fits := func(t *Hull) bool {
		return t.End.Bezier[3].Y-t.End.Bezier[2].Y >= headClear*(t.End.Bezier[3].Y-t.End.Bezier[0].Y)
	}
	if fits(h) {
		return design.Fault{}, false
	}
	f := design.NewFault("rocker", "The bottom rises so steeply at the heels that no end curve reaches the stem head "+
		"of %s.", design.Long(h.Design.EndHeight))
	return h.fitMost(f, "rocker", fits), true
}

// gunwaleOutside: the gunwale's end would stand outside the end's curve.
func (h *Hull) gunwaleOutside() (design.Fault, bool) {
	fits := func(t *Hull) bool { return t.gunwaleInside() >= 0 }
	if fits(h) {
		return design.Fault{}, false
	}
	f := design.NewFault("overhang", "The gunwale's end would stand just outside the curve of the end.")
	if out := -h.gunwaleInside(); out > units.Inch/16 {
		f = design.NewFault("overhang", "The gunwale's end would stand %s outside the curve of the end.",
			design.Shown{Kind: units.SmallLength, Value: out})
	}
	return h.fitLeast(f, "overhang", fits), true
}

// gunwaleInside is how far the end's curve stands forward of the gunwale's end at
// its height.
func (h *Hull) gunwaleInside() float64 {
	t, _ := geom.Bisect(func(t float64) float64 { return h.End.At(t).Y - h.Design.GunwaleEndHeight }, 0, 1, 1e-12)
	return h.End.At(t).X - h.GunwaleX
}

// sheerTooSteep: the sheer alone rises past what is left up to the stem head.
func (h *Hull) sheerTooSteep() (design.Fault, bool) {
	d := &h.Design
	rise := h.endSlope * (d.Overhang - d.HeadSetback)
	if rise <= sheerRun*(d.EndHeight-d.GunwaleEndHeight)+design.Rounding {
		return design.Fault{}, false
	}
	return design.NewFault("endHeight",
		"The sheer rises so steeply at the gunwale's end that its run to the stem head would rise over the head and come "+
			"down.").
		AtLeast(d.GunwaleEndHeight + rise/sheerRun), true
}

// fitMost and fitLeast add the value of a parameter nearest the design's, below or
// above it, at which fits holds and the design stays valid.
func (h *Hull) fitMost(f design.Fault, key string, fits func(*Hull) bool) design.Fault {
	p, _ := design.Lookup(key)
	limit := p.Min
	if p.NoneAtMin {
		limit = h.Design.OutsideBreadth() + p.StepInch
	}
	if v, ok := h.fit(p, limit, fits); ok {
		return f.AtMost(v)
	}
	return f
}

func (h *Hull) fitLeast(f design.Fault, key string, fits func(*Hull) bool) design.Fault {
	p, _ := design.Lookup(key)
	if v, ok := h.fit(p, p.Max, fits); ok {
		return f.AtLeast(v)
	}
	return f
}

// fit looks between the design's value and a limit, in steps and then by halves,
// for the nearest value that fits and stays within what design.Validate takes.
func (h *Hull) fit(p design.Param, limit float64, fits func(*Hull) bool) (float64, bool) {
	good := func(v float64) bool {
		d := p.Set(h.Design, v)
		if design.Validate(d) != nil {
			return false
		}
		return fits(New(d))
	}
	const parts, halvings = 24, 16
	bad := p.Get(&h.Design)
	for i := 1; i <= parts; i++ {
		v := p.Get(&h.Design) + (limit-p.Get(&h.Design))*float64(i)/parts
		if !good(v) {
			bad = v
			continue
		}
		for range halvings {
			if mid := (bad + v) / 2; good(mid) {
				v = mid
			} else {
				bad = mid
			}
		}
		return v, true
	}
	return 0, false
}
