package bark

import (
	"math"
	"sort"

	"barkwright/core/hull"
)

// Sheet is a sheet of bark on hand, m.
type Sheet struct{ Width, Length float64 }

// Laid is a sheet, or a strip cut from one, laid along the boat.
type Laid struct {
	Sheet    int     // its number in the list
	Aft, Bow float64 // where it lies along the flat bark, m forward of amidships
	Width    float64 // across, m
}

// Shortage is bark that is wanting.
type Shortage struct {
	Aft, Bow float64 // along the flat bark, m forward of amidships
	Width    float64 // of the strip or sheet that would fill it, m
	Panel    bool    // a side panel, not the sheet on the bed
}

// Length is how much of the boat it leaves bare, m.
func (s Shortage) Length() float64 { return s.Bow - s.Aft }

// Coverage says how a list of sheets covers a boat.
type Coverage struct {
	Bed    []Laid   // the sheets end to end, from the bow aft; each laps outside the next
	Beside []Beside // where side panels are sewn to them
	Port   []Laid   // strips for the side panels of each side
	Star   []Laid
	Joints []float64 // middles of the laps between the sheets on the bed
	Short  []Shortage
}

// Covers tells whether nothing is wanting.
func (c Coverage) Covers() bool { return len(c.Short) == 0 }

// widthSteps is in how many places along the boat the breadth of bark is asked for.
const widthSteps = 60

// demand is the breadth of bark asked for along the flat sheet.
type demand struct {
	along []float64 // m forward of amidships, both ends
	full  []float64 // breadth to cover it all, m
	bed   []float64 // least breadth of the sheet on the bed, m
}

// newDemand asks for the sides' reach and the bark left to trim; the sheet on the
// bed must at least come out to the gores' feet, since no seam lies on the bottom.
func newDemand(h hull.Hull, l Layout) demand {
	bottom := bottomRun(h)
	past := l.FlatLength/2 - bottom.heel()
	var half demand
	for i := 0; i <= widthSteps; i++ {
		v := 2 * float64(i) / widthSteps
		c := newLine(h, v)
		run := bottom.at(v)
		if v > 1 {
			run += past * (v - 1)
		}
		half.along = append(half.along, run)
		half.full = append(half.full, 2*(c.reach()+h.Design.GunwaleTurn))
		half.bed = append(half.bed, 2*(h.FrameHalfBreadth(c.foot.X)+h.Design.GoreFoot))
	}
	d := demand{}
	for i := -widthSteps; i <= widthSteps; i++ {
		k := i
		if i < 0 {
			k = -i
		}
		d.along = append(d.along, math.Copysign(half.along[k], float64(i)))
		d.full = append(d.full, half.full[k])
		d.bed = append(d.bed, half.bed[k])
	}
	return d
}

// most is the greatest of the values between two places along.
func (d demand) most(values []float64, aft, bow float64) float64 {
	most := 0.0
	for i, x := range d.along {
		if x >= aft && x <= bow {
			most = max(most, values[i])
		}
	}
	return most
}

// Cover lays sheets over the boat. On the bed lie as few of the widest as reach
// from end to end, the widest nearest amidships, each lapped outside the one
// aft of it so that no lap faces forward (Adney and Chapelle 1964, p. 147: two
// lengths in the bottom, lap to the stern). Where they fall short of the sides,
// panels are cut from what is left: other sheets, what is trimmed off the last and
// what is cut off the sides of wide ones. What cannot be had is named.
func Cover(h hull.Hull, l Layout, sheets []Sheet) Coverage {
	d := newDemand(h, l)
	lap := h.Design.SeamLap
	var c Coverage
	order, whole := chooseBed(sheets, l.FlatLength, lap)
	offcuts := c.layBed(d, sheets, order, lap)
	if whole < l.FlatLength {
		aft := -l.FlatLength / 2
		bow := aft + l.FlatLength - whole
		c.Short = append(c.Short, Shortage{Aft: aft, Bow: bow, Width: d.most(d.bed, aft, bow)})
	}
	used := map[int]bool{}
	for _, i := range order {
		used[i] = true
	}
	for i, s := range sheets {
		if !used[i] {
			offcuts = append(offcuts, offcut{sheet: i, width: s.Width, length: s.Length})
		}
	}
	c.Beside = c.besides(h, d, l.FlatLength)
	c.cutPanels(offcuts, lap)
	return c
}

// Narrowest is the width of the narrowest of the sheets that would lie on the bed, m.
func Narrowest(h hull.Hull, sheets []Sheet) float64 {
	order, _ := chooseBed(sheets, plainFlatLength(h, bottomRun(h)), h.Design.SeamLap)
	narrowest := math.Inf(1)
	for _, i := range order {
		narrowest = math.Min(narrowest, sheets[i].Width)
	}
	return narrowest
}

// chooseBed returns the sheets that lie on the bed, from the bow aft, and how far
// they reach: the widest, as many as are needed, the widest nearest amidships.
func chooseBed(sheets []Sheet, whole, lap float64) (order []int, reach float64) {
	byWidth := make([]int, len(sheets))
	for i := range byWidth {
		byWidth[i] = i
	}
	sort.SliceStable(byWidth, func(a, b int) bool {
		s, t := sheets[byWidth[a]], sheets[byWidth[b]]
		if s.Width != t.Width {
			return s.Width > t.Width
		}
		return s.Length > t.Length
	})
	for n, i := range byWidth {
		if reach >= whole {
			break
		}
		reach += sheets[i].Length
		if n > 0 {
			reach -= lap
		}
		if n%2 == 0 {
			order = append(order, i)
		} else {
			order = append([]int{i}, order...)
		}
	}
	return order, reach
}

// layBed lays the chosen sheets from the bow aft and returns what is cut off them.
// What they have over in length comes off the last.
func (c *Coverage) layBed(d demand, sheets []Sheet, order []int, lap float64) []offcut {
	var left []offcut
	bow, stern := d.along[len(d.along)-1], d.along[0]
	for n, i := range order {
		s := sheets[i]
		aft := max(stern, bow-s.Length)
		if over := s.Length - (bow - aft); over > 0 {
			left = append(left, offcut{sheet: i, width: s.Width, length: over})
		}
		if asked := d.most(d.bed, aft, bow); s.Width < asked {
			c.Short = append(c.Short, Shortage{Aft: aft, Bow: bow, Width: asked})
		}
		if spare := (s.Width - d.most(d.full, aft, bow)) / 2; spare > 0 {
			left = append(left,
				offcut{sheet: i, width: spare, length: bow - aft},
				offcut{sheet: i, width: spare, length: bow - aft})
		}
		c.Bed = append(c.Bed, Laid{Sheet: i, Aft: aft, Bow: bow, Width: s.Width})
		if n+1 < len(order) {
			c.Joints = append(c.Joints, aft+lap/2)
		}
		bow = aft + lap
	}
	return left
}
