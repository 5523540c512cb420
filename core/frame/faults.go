package frame

import (
	"strconv"

	"barkwright/core/design"
	"barkwright/core/hull"
	"barkwright/core/units"
)

// Room that parts need of each other, metres. Choices of this project.
const (
	thwartRoom    = 6 * units.Inch // between two thwarts along the gunwale
	headboardRoom = 2 * units.Inch // from the last thwart to the headboard
	leastPost     = 1 * units.Inch
	// leastBoard is the height of a headboard under its neck: a notch, a neck and wood
	// between them.
	leastBoard = 2 * units.Inch
)

// Faults finds what keeps the timbers from going into a hull that is itself
// without fault, and what would fit.
func Faults(h *hull.Hull) []design.Fault {
	thwarts := newThwarts(h)
	faults := thwartFaults(h, thwarts)
	if faults == nil {
		faults = ribFaults(h, bays(h, thwarts))
	}
	return append(append(faults, postFaults(h, thwarts)...), boardFaults(h)...)
}

// boardFaults finds a headboard set so far out that the end's curve leaves it no height.
func boardFaults(h *hull.Hull) []design.Fault {
	if boardHeight(h) >= leastBoard-design.Rounding {
		return nil
	}
	fault := design.NewFault("headboard",
		"The end's curve leaves the headboard less than %s under its neck: set it farther in.", design.Small(leastBoard))
	p, _ := design.Lookup("headboard")
	short := func(v float64) bool {
		d := p.Set(h.Design, v)
		return design.Validate(d) != nil || boardHeight(hull.New(d)) < leastBoard
	}
	const halvings = 16
	for v := h.Design.Headboard + p.StepInch; v <= p.Max; v += p.StepInch {
		if short(v) {
			continue
		}
		bad := v - p.StepInch
		for range halvings {
			if mid := (bad + v) / 2; short(mid) {
				bad = mid
			} else {
				v = mid
			}
		}
		return []design.Fault{fault.AtLeast(v)}
	}
	return []design.Fault{fault}
}

// boardHeight is how high a headboard stands under the inwale.
func boardHeight(h *hull.Hull) float64 {
	return UnderInwale(h, h.HeadboardX()) - h.Floor(headboardFoot(h)) - footOver(h)
}

// thwartFaults checks the places along the gunwale that the ribs are dealt
// between.
func thwartFaults(h *hull.Hull, thwarts []Thwart) []design.Fault {
	length := h.Gunwale.Length()
	var faults []design.Fault
	last := 0.0
	for i, t := range thwarts[1:] {
		if t.Run < last+thwartRoom-design.Rounding {
			faults = append(faults, design.NewFault("thwart"+strconv.Itoa(i+1),
				"The thwart stands under %s along the gunwale from the one inboard of it.",
				design.Small(thwartRoom)).AtLeast((last+thwartRoom)/length))
		}
		last = max(last, t.Run)
	}
	if HeadboardRun(h) < last+headboardRoom-design.Rounding {
		faults = append(faults, design.NewFault("headboard",
			"The headboard has to stand %s or more outside the last thwart, which is %s inside the gunwale's end.",
			design.Small(headboardRoom), design.Small(length-last)).AtMost(length-last-headboardRoom))
	}
	return faults
}

// ribFaults checks the ribs and the lacing between them.
func ribFaults(h *hull.Hull, all []bay) []design.Fault {
	d := h.Design
	if !everyBay(d.Ribs, all) {
		n := d.Ribs + 1
		for !everyBay(n, all) {
			n++
		}
		return []design.Fault{design.NewFault("ribs",
			"So few ribs leave none between two of the thwarts, or outside the last.").AtLeast(float64(n))}
	}
	var faults []design.Fault
	places := ribPlaces(d.Ribs, all)
	if where, wide, apart := tooWide(h, places); where != "" {
		n := d.Ribs - 1
		for n > 0 && everyBay(n, all) {
			if where, _, _ := tooWide(h, ribPlaces(n, all)); where == "" {
				break
			}
			n--
		}
		f := design.NewFault("ribs", "The ribs are %s wide where they stand %s apart "+where+": have fewer or "+
			"narrower ones.", design.Small(wide), design.Small(apart))
		if everyBay(n, all) {
			f = f.AtMost(float64(n))
		}
		faults = append(faults, f)
	}
	if at := crowded(d, places); at >= 0 {
		f := design.NewFault("groupHoles",
			"A group of lacing %s long does not fit between the tips of ribs that stand %s apart: have fewer holes, holes "+
				"closer together, narrower tips or fewer ribs.",
			design.Small(groupLength(d)), design.Small(places[at].spacing))
		fewer := d
		for fewer.GroupHoles > 1 && crowded(fewer, places) >= 0 {
			fewer.GroupHoles--
		}
		faults = append(faults, f.AtMost(float64(fewer.GroupHoles)))
	}
	return faults
}

// everyBay tells whether a number of ribs leaves no bay without one.
func everyBay(ribs int, all []bay) bool {
	for _, n := range share(ribs/2, all) {
		if n == 0 {
			return false
		}
	}
	return true
}

// tooWide finds the first rib broader than its space along the gunwale, or two that lie
// over one another on the bottom: along the boat they stand closer than along the gunwale,
// and their feet no closer than their marks. It returns no place where there are none.
func tooWide(h *hull.Hull, places []place) (where string, wide, apart float64) {
	d := h.Design
	lastX, lastWide := 0.0, 0.0
	for i, p := range places {
		x, wide := h.StationAt(p.run), ribWidth(&d, places, i)
		if i == 0 && p.run > 0 {
			lastX, lastWide = -x, wide // its mate aft
		}
		switch mean := (wide + lastWide) / 2; {
		case wide > p.spacing+design.Rounding:
			return "along the gunwale", wide, p.spacing
		case (i > 0 || p.run > 0) && mean > x-lastX+design.Rounding:
			return "along the bottom", mean, x - lastX
		}
		lastX, lastWide = x, wide
	}
	return "", 0, 0
}

// crowded is the first rib whose tip and a group of lacing are longer than its
// space, or -1. Beside a rib under the middle thwart stands half a group more.
func crowded(d design.Design, places []place) int {
	for i, p := range places {
		need := d.RibTipWidth + groupLength(d)
		if p.run == 0 {
			need += splitRoom(&d) - d.RibTipWidth/2
		}
		if need > p.spacing+design.Rounding {
			return i
		}
	}
	return -1
}

// postFaults checks that every post has a length to cut.
func postFaults(h *hull.Hull, thwarts []Thwart) []design.Fault {
	d := h.Design
	shortest, crown := leastPost, d.BedCrown
	for _, p := range posts(h, thwarts) {
		shortest = min(shortest, p.Length)
		// A crown lower by one lowers the bed at x by this much against the heels.
		if eases := crownShare(h, p.X) - crownShare(h, h.HeelX); eases > 0 {
			crown = min(crown, d.BedCrown-(leastPost-p.Length)/eases)
		} else if p.Length < leastPost-design.Rounding {
			crown = -1 // no crown mends a post beyond the heel
		}
	}
	if shortest >= leastPost-design.Rounding {
		return nil
	}
	return []design.Fault{design.NewFault("bedCrown",
		"A post would be %s long, and %s is the least: lower the crown of the bed, or bring the blocks under the heels "+
			"nearer to the rocker.",
		design.Small(max(0, shortest)), design.Small(leastPost)).AtMost(crown)}
}
