package bark

import (
	"math"
	"slices"
	"sort"
)

// bedSheet is a sheet chosen for the bed: its number in the list, or Wanting.
type bedSheet struct {
	Sheet
	number int
}

// marks are the places along the bark that joints and butts keep clear of.
type marks struct {
	gores  []float64
	bay    float64 // of the first thwarts, m from amidships
	whole  float64
	joints []float64 // of the bed, for the butts of panels
}

// Costs of what is avoided in laying. The steps between them are so large that a lesser
// fault never outweighs a greater one. The numbers only order the choices.
const (
	costClash = 1000.0 // within a hand of a gore or of another joint
	costBay   = 300.0  // between the first thwarts, where the boat is strained most
	costSeam  = 200.0  // one more butt
	costOff   = 20.0   // a hand off a gore instead of on it
	costPlace = 1.0    // a metre from where it would rather be
)

// samePlace is how far apart two places may be that count as one, m.
const samePlace = 1e-6

// clear is the least distance of a place from the others, leaving out one that it
// stands on.
func clear(at float64, others []float64) (gap float64, on bool) {
	gap = math.Inf(1)
	for _, x := range others {
		if off := math.Abs(at - x); off > samePlace {
			gap = min(gap, off)
		} else {
			on = true
		}
	}
	return gap, on
}

func clash(gap float64) float64 {
	if gap >= Hand-samePlace {
		return 0
	}
	return costClash * (2 - gap/Hand)
}

// inBay is the cost of standing in the middle bay, the more the nearer amidships.
func (m *marks) inBay(at float64) float64 {
	if x := math.Abs(at); x < m.bay-samePlace {
		return costBay + costPlace*(m.bay-x)
	}
	return 0
}

// jointCost is how badly a joint of the bed stands at a place. On a gore is best: the
// joint then takes the gore's place.
func (m *marks) jointCost(at float64) float64 {
	gap, on := clear(at, m.gores)
	cost := clash(gap) + m.inBay(at)
	if !on {
		cost += costOff
	}
	return cost + costPlace*(at+m.whole/2)/m.whole
}

// stands lists places that a seam may stand at between two, those included: on and a
// hand off the marks, and half-way between them.
func stands(all []float64, low, high float64) []float64 {
	var out []float64
	add := func(x float64) {
		if x >= low-samePlace && x <= high+samePlace {
			out = append(out, max(low, min(high, x)))
		}
	}
	add(low)
	add(high)
	add((low + high) / 2)
	for i, x := range all {
		add(x)
		add(x - Hand)
		add(x + Hand)
		if i > 0 {
			add((x + all[i-1]) / 2)
		}
	}
	sort.Float64s(out)
	return slices.CompactFunc(out, func(a, b float64) bool { return math.Abs(a-b) < samePlace })
}

// slide finds the joints between sheets laid in order from the bow: of all ways that
// reach from end to end the one that stands best. A sheet must be as wide as the bed
// asks where it lies, unless narrow is let pass. It returns false where no way does.
func (d *demand) slide(order []bedSheet, m *marks, narrow bool) ([]float64, bool) {
	lap := d.hull.Design.SeamLap
	n := len(order)
	fits := func(k int, aft, bow float64) bool {
		length := bow - aft
		return length <= order[k].Length+samePlace && (length >= leastPiece || n == 1) &&
			(narrow || order[k].Width >= d.bedAt(aft, bow)-samePlace)
	}
	bow, aft := d.whole/2, -d.whole/2
	if n == 1 {
		return nil, fits(0, max(aft, bow-order[0].Length), bow) && order[0].Length >= d.whole-samePlace
	}
	// low is the aftmost place of each joint, every sheet before it whole, and high the
	// foremost one, every sheet after it whole.
	low, high := make([]float64, n-1), make([]float64, n-1)
	reach := bow
	for k := range low {
		reach += lap - order[k].Length
		if k == 0 {
			reach -= lap
		}
		low[k] = reach + lap/2
	}
	reach = aft
	for k := n - 2; k >= 0; k-- {
		reach += order[k+1].Length
		if k < n-2 {
			reach -= lap
		}
		high[k] = reach - lap/2
	}
	type node struct {
		at, cost float64
		from     int
	}
	steps := make([][]node, n-1)
	for k := range steps {
		if low[k] > high[k]+samePlace {
			return nil, false
		}
		for _, x := range stands(m.gores, max(low[k], aft), min(high[k], bow)) {
			best := node{at: x, cost: math.Inf(1)}
			if k == 0 {
				if fits(0, x-lap/2, bow) {
					best.cost = m.jointCost(x)
				}
			} else {
				for i, p := range steps[k-1] {
					if fits(k, x-lap/2, p.at+lap/2) {
						if c := p.cost + m.jointCost(x); c < best.cost {
							best.cost, best.from = c, i
						}
					}
				}
			}
			if !math.IsInf(best.cost, 1) {
				steps[k] = append(steps[k], best)
			}
		}
	}
	last, least := -1, math.Inf(1)
	for i, p := range steps[n-2] {
		if fits(n-1, aft, p.at+lap/2) && p.cost < least {
			last, least = i, p.cost
		}
	}
	if last < 0 {
		return nil, false
	}
	out := make([]float64, n-1)
	for k := n - 2; k >= 0; k-- {
		out[k], last = steps[k][last].at, steps[k][last].from
	}
	return out, true
}

// inOrder puts sheets in order from the bow, the widest nearest amidships.
func inOrder(sheets []bedSheet) []bedSheet {
	byWidth := slices.Clone(sheets)
	sort.SliceStable(byWidth, func(a, b int) bool { return wider(byWidth[a], byWidth[b]) })
	var order []bedSheet
	for n, s := range byWidth {
		if n%2 == 0 {
			order = append(order, s)
		} else {
			order = append([]bedSheet{s}, order...)
		}
	}
	return order
}

// wider puts sheets that are there before those that are wanting, then the wider and
// then the longer first.
func wider(a, b bedSheet) bool {
	switch {
	case (a.number == Wanting) != (b.number == Wanting):
		return b.number == Wanting
	case a.Width != b.Width:
		return a.Width > b.Width
	}
	return a.Length > b.Length
}
