package frame

import (
	"math"
	"sort"

	"barkwright/core/design"
	"barkwright/core/geom"
	"barkwright/core/hull"
	"barkwright/core/shape"
	"barkwright/core/wood"
)

// Rib is one rib of the forward half; it has a mate the same in the after half,
// but for one under the middle thwart.
type Rib struct {
	// Number counts from the middle outward, from 1; 0 is the one under the middle
	// thwart where there is one.
	Number int
	// Bay is the bay between thwarts it stands in, from 0 at the middle.
	Bay int
	// Run along the gunwale and X from amidships are of its mark, FootX from amidships of
	// its middle on the bottom; Lean is its angle from upright, foot outboard.
	Run, X, FootX float64
	Lean          float64
	// Height is the mean over the bottom amidships of its section, along it.
	Height  float64
	Spacing float64 // of its bay, along the gunwale
	// Length is along its outer face from tip to tip, the long side of the bevels;
	// Inner is along the inner face.
	Length, Inner float64
	Width         float64 // on the bottom
	Thickness     float64
	// Bend is at its tightest place, which stands BendAt from the rib's middle.
	Bend   wood.Bend
	BendAt float64
	// Broken marks a rib near the end that cannot bend and is broken at the centre.
	Broken bool
	// Blank is the length the rule of twice the nearest thwart gives.
	Blank float64
	// Order is when it goes in, from 1: each end in turn, the middle last.
	Order int
}

// Alone tells whether the rib has no mate: it stands under the middle thwart.
func (r Rib) Alone() bool { return r.Number == 0 }

// bay is the gunwale between two thwarts, or the last thwart and the headboard.
type bay struct{ from, to float64 }

func bays(h *hull.Hull, thwarts []Thwart) []bay {
	out := make([]bay, len(thwarts))
	for i, t := range thwarts {
		out[i].from = t.Run
		if i > 0 {
			out[i-1].to = t.Run
		}
	}
	out[len(out)-1].to = HeadboardRun(h)
	return out
}

// share deals total whole ribs to bays in proportion to their lengths: whole
// parts first, then one each by the largest remainder.
func share(total int, bays []bay) []int {
	sum := 0.0
	for _, b := range bays {
		sum += b.to - b.from
	}
	counts := make([]int, len(bays))
	rest := make([]float64, len(bays))
	order := make([]int, len(bays))
	left := total
	for i, b := range bays {
		quota := float64(total) * (b.to - b.from) / sum
		counts[i] = int(quota)
		rest[i] = quota - float64(counts[i])
		order[i] = i
		left -= counts[i]
	}
	sort.SliceStable(order, func(i, j int) bool { return rest[order[i]] > rest[order[j]] })
	for _, i := range order[:left] {
		counts[i]++
	}
	return counts
}

// place is where one rib stands.
type place struct {
	bay          int
	run, spacing float64
}

// ribPlaces stands the ribs of one half: equal spaces inside a bay, half a space
// at each thwart, a whole one before the headboard and beside a rib under the
// middle thwart.
func ribPlaces(ribs int, all []bay) []place {
	odd := ribs%2 == 1
	counts := share(ribs/2, all)
	out := make([]place, 0, ribs/2+1)
	for i, n := range counts {
		spaces, first := float64(n), 0.5
		if i == 0 && odd {
			spaces, first = spaces+0.5, 1
		}
		if i == len(all)-1 {
			spaces += 0.5
		}
		space := (all[i].to - all[i].from) / spaces
		if i == 0 && odd {
			out = append(out, place{0, 0, space})
		}
		for j := range n {
			out = append(out, place{i, all[i].from + space*(first+float64(j)), space})
		}
	}
	return out
}

// outward is how far out rib i of places stands, from 0 at the middle to 1 for the
// last.
func outward(places []place, i int) float64 { return places[i].run / places[len(places)-1].run }

// ribWidth is the width of rib i of places on the bottom.
func ribWidth(d *design.Design, places []place, i int) float64 {
	return d.RibWidthMid + outward(places, i)*(d.RibWidthEnd-d.RibWidthMid)
}

func newRibs(h *hull.Hull, thwarts []Thwart) []Rib {
	d := &h.Design
	places := ribPlaces(d.Ribs, bays(h, thwarts))
	out := make([]Rib, len(places))
	for i, p := range places {
		out[i] = Rib{X: h.StationAt(p.run), Width: ribWidth(d, places, i)}
	}
	standRibs(h, out)
	for i, p := range places {
		number := i + 1 - d.Ribs%2
		out[i] = newRib(h, Rib{
			Number: number, Bay: p.bay, Run: p.run, X: out[i].X, FootX: out[i].FootX, Spacing: p.spacing,
			Width:     out[i].Width,
			Thickness: d.RibThickness + outward(places, i)*(d.RibThicknessEnd-d.RibThickness),
			Blank:     2 * nearest(thwarts, p.run).Shoulder,
			Order:     fittingOrder(d.Ribs, number),
		})
	}
	for i := max(0, len(out)-d.RibsBroken); i < len(out); i++ {
		out[i].Broken = true
	}
	return out
}

// newRib bends a rib into its section: inside the bark and the sheathing.
func newRib(h *hull.Hull, r Rib) Rib {
	d := &h.Design
	section := r.Cut(h)
	r.Lean = math.Atan2(section.Foot.X-r.X, section.P.Y*section.Up.Y)
	r.Height = meanHeight(section)
	inside := d.BarkThickness + d.SheathingThickness
	turning := section.Turning()
	r.Length = 2 * (section.HalfGirth() - inside*turning - d.RibTuck)
	r.Inner = r.Length - 2*r.Thickness*(turning+bevelRun)
	radius, at := section.TightestRadius()
	r.Bend = wood.Check(min(radius, straight)-inside-r.Thickness/2, r.Thickness, d.RibStock)
	r.BendAt = at
	return r
}

// meanHeight is the mean height over the bottom amidships of a cut, along it.
func meanHeight(cut hull.Cut) float64 {
	const samples = 8
	points := cut.Sample(samples)
	sum := 0.0
	for i := 1; i < len(points); i++ {
		sum += (cut.Lift(points[i]).Z + cut.Lift(points[i-1]).Z) / 2
	}
	return sum / samples
}

// bevelRun is how much shorter the inner face is at each tip, in thicknesses: the
// tips are cut at 45 degrees. Common practice, no published source.
const bevelRun = 1

// fittingOrder of a rib: the outermost pair first, forward then aft; the number is
// that of the forward one.
func fittingOrder(total, number int) int {
	if number == 0 {
		return total
	}
	return total - total%2 - 2*number + 1
}

func nearest(thwarts []Thwart, run float64) Thwart {
	best := thwarts[0]
	for _, t := range thwarts[1:] {
		// Half-way between two is the inner one's: last bits must not decide.
		if math.Abs(t.Run-run) < math.Abs(best.Run-run)-1e-9 {
			best = t
		}
	}
	return best
}

// Cut is the skin cut at the rib.
func (r Rib) Cut(h *hull.Hull) hull.Cut { return h.CutAt(r.FootX, r.X) }

// Shape is the port half of a rib's outer face in its section's plane, n+1 points
// from the centre line to its tip.
func (r Rib) Shape(h *hull.Hull, n int) []geom.Vec2 {
	d := &h.Design
	section := r.Cut(h).Section
	return Inside(section, d.BarkThickness+d.SheathingThickness, section.HalfGirth()-d.RibTuck, n)
}

// Inside is a section moved inward by depth along its normal, n+1 points from the
// centre line to girth along it. Where the bend is tighter than the depth the
// points double back.
func Inside(s shape.Section, depth, girth float64, n int) []geom.Vec2 {
	const step = 1e-4 // m: short against any bend, long against rounding
	out := make([]geom.Vec2, n+1)
	for i := range out {
		g := girth * float64(i) / float64(n)
		a, b := max(0, g-step), min(s.HalfGirth(), g+step)
		heading := s.At(b).Sub(s.At(a)).Unit()
		if i == 0 {
			heading = geom.Vec2{X: 1}
		}
		out[i] = s.At(g).Add(heading.Left().Scale(depth))
	}
	return out
}
