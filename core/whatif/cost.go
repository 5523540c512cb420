package whatif

import (
	"cmp"
	"math"
	"slices"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/units"
	"barkwright/core/weigh"
)

// Costed are the keys of the results that the table of costs has columns for.
func Costed() []string {
	return []string{"bark.width", "ribs.longest", "weight.total", "root.total", "seams.total", "afloat.freeboard", "afloat.gm",
		"afloat.loadAtSixInches"}
}

// Cost is what one more inch of a length costs in each result, one more step of a size that has no
// inches to spare, or one more piece of a count.
type Cost struct {
	Param design.Param
	// Per is the change of the control that it is for, in SI: an inch, its step, or one.
	Per float64
	// Slopes are the changes of the results, in SI, in the order of Costed; NaN where a result
	// has no number.
	Slopes []float64
	// OneSided tells that the boat can only be built on one side of where it stands.
	OneSided bool
}

// Costs are worked out one control after another.
type Costs struct {
	// Lengths, Sizes and Pieces are done so far.
	Lengths, Sizes, Pieces []Cost

	of   design.Design
	next int
}

// NewCosts is the table of a design's costs, empty at first.
func NewCosts(d design.Design) *Costs { return &Costs{of: d} }

// Next works out one more control, and reports false once all are.
func (c *Costs) Next() bool {
	all := design.Params()
	for c.next < len(all) {
		p := all[c.next]
		c.next++
		if per, ok := perOf(p, c.of); ok {
			if cost, ok := slopesOf(c.of, p, per); ok {
				switch {
				case p.Whole():
					c.Pieces = append(c.Pieces, cost)
				case small(p):
					c.Sizes = append(c.Sizes, cost)
				default:
					c.Lengths = append(c.Lengths, cost)
				}
			}
			return true
		}
	}
	return false
}

// small reports whether an inch is too much of a length to be told as its cost: a quarter of all that it
// can be, or more.
func small(p design.Param) bool { return p.Max-p.Min <= 4*units.Inch }

// perOf is the change that a control's cost is given for: an inch of a length of the boat, a step
// of a small one, or one piece of a count; false for a control that has none.
func perOf(p design.Param, d design.Design) (float64, bool) {
	switch {
	case p.Paddler > 0 || p.Options != nil || p.NoneAtMin && p.Get(&d) <= p.Min || Watched(p.Key) == nil:
		return 0, false
	case p.Odd:
		return 2, true
	case p.Whole():
		return 1, true
	case p.Kind == units.Length || p.Kind == units.SmallLength:
		if small(p) {
			return p.Step(units.Imperial16), true
		}
		return units.Inch, true
	}
	return 0, false
}

// slopesOf are central differences half a change either way; of a size, a step or a sixteenth of its range.
// Where the boat cannot be built on one side they are one-sided. It reports false where none of the
// results moves.
func slopesOf(d design.Design, p design.Param, per float64) (Cost, bool) {
	at := p.Get(&d)
	// half is half of what is tried, and told the change that must move something.
	half, told := per/2, per
	switch {
	case p.Whole():
		half = per
	case small(p):
		half = max(per, (p.Max-p.Min)/16)
		told = 2 * half
	}
	cost := Cost{Param: p, Per: per, Slopes: make([]float64, len(Costed()))}
	low, lowOK := costedAt(p, d, at-half)
	high, highOK := costedAt(p, d, at+half)
	run := 2 * half
	if !lowOK || !highOK {
		here, ok := costedAt(p, d, at)
		if !ok || !lowOK && !highOK {
			return cost, false
		}
		run, cost.OneSided = half, true
		if lowOK {
			high = here
		} else {
			low = here
		}
	}
	moves := false
	for i := range cost.Slopes {
		cost.Slopes[i] = math.NaN()
		if !low[i].Absent && !high[i].Absent {
			slope := (high[i].Value - low[i].Value) / run
			cost.Slopes[i] = slope * per
			moves = moves || math.Abs(slope)*told > weigh.Hardly*weigh.Unit(high[i])
		}
	}
	return cost, moves
}

// costedAt are the results of the boat with a control at a value, and whether it can be built.
func costedAt(p design.Param, d design.Design, v float64) ([]answer.Number, bool) {
	if v < p.Min || v > p.Max {
		return nil, false
	}
	c, faults := core.Try(p.Nudge(d, v))
	if len(faults) > 0 {
		return nil, false
	}
	out := make([]answer.Number, len(Costed()))
	for _, n := range answer.All(c) {
		if i := slices.Index(Costed(), n.Key); i >= 0 {
			out[i] = n
		}
	}
	return out, true
}

// Ranked are costs with the one that moves a result most first; in the order of the form where
// the result is none of Costed.
func Ranked(costs []Cost, result string) []Cost {
	i := slices.Index(Costed(), result)
	if i < 0 {
		return costs
	}
	out := slices.Clone(costs)
	size := func(c Cost) float64 {
		if math.IsNaN(c.Slopes[i]) {
			return -1
		}
		return math.Abs(c.Slopes[i])
	}
	slices.SortStableFunc(out, func(a, b Cost) int { return cmp.Compare(size(b), size(a)) })
	return out
}
