package whatif

import (
	"math"
	"slices"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/geom"
	"barkwright/core/units"
)

// How many boats are worked out along a control.
const (
	fewest = 25
	most   = 48
	// nearShare is how far from its present value a control is tried, as a share of it, and
	// nearSteps the least number of its steps.
	nearShare = 0.25
	nearSteps = 12
	// bentShare is how far off its chord a curve's middle may lie, as a share of its height,
	// before more boats are worked out there.
	bentShare = 1.0 / 40
)

// Sample is the boat with the control at a value.
type Sample struct {
	// At is the control's value in SI.
	At float64
	// Fault is why the boat cannot be built, nil where it can.
	Fault *design.Fault
	// Numbers are the results watched, in their order, and Checks every check.
	Numbers []answer.Number
	Checks  []answer.Warning
}

// Sweep tries a control at other values.
type Sweep struct {
	Param  design.Param
	Keys   []string // of the results watched
	System units.System
	// Samples are what was worked out, by their values.
	Samples []Sample
	// Low and High bound what is tried: the range asked for, cut where the boat cannot be
	// built.
	Low, High float64

	from   design.Design
	memory geom.FlattenWorkspace
	pause  func() bool
	cut    bool
}

// NewSweep is a control to be tried near where it stands in a design, or over its whole
// range. It reports false for a key that nothing is shown of.
func NewSweep(d design.Design, control string, s units.System, whole bool) (*Sweep, bool) {
	p, ok := design.Lookup(control)
	keys := Watched(control)
	if !ok || len(keys) == 0 || p.NoneAtMin && p.Get(&d) <= p.Min {
		return nil, false
	}
	w := &Sweep{Param: p, Keys: keys, System: s, from: d, Low: p.Min, High: p.Max}
	if !whole && p.Options == nil {
		v := p.Get(&d)
		reach := max(nearShare*math.Abs(v), nearSteps*w.step())
		w.Low, w.High = w.snapped(v-reach), w.snapped(v+reach)
	}
	return w, true
}

// Run works the boats out: the present one, its neighbours, the ends, and those between by
// halving, so that a coarse curve stands soon. pause is called between them, and inside what
// takes long; where it returns false Run ends at once and reports false.
func (w *Sweep) Run(pause func() bool) bool {
	w.pause, w.memory.Pause, w.cut = pause, pause, false
	present := w.Param.Get(&w.from)
	w.try(present)
	w.try(w.Param.Stepped(present, -1, w.System))
	w.try(w.Param.Stepped(present, 1, w.System))
	low, high := w.wall(present, w.Low), w.wall(present, w.High)
	if w.cut {
		return false
	}
	w.Low, w.High = low, high
	n := fewest - 1
	for stride := n; stride >= 1 && !w.cut; stride /= 2 {
		for i := 0; i <= n && !w.cut; i += stride {
			w.try(w.snapped(w.Low + (w.High-w.Low)*float64(i)/float64(n)))
		}
	}
	w.turns()
	for !w.cut && len(w.Samples) < most && w.refine() {
	}
	return !w.cut
}

// step is the control's own step.
func (w *Sweep) step() float64 { return w.Param.Step(w.System) }

// Stepped is a value so many steps of the control farther, inside its whole range.
func (w *Sweep) Stepped(v float64, n int) float64 { return w.Param.Stepped(v, n, w.System) }

// Same tells whether two values of the control are one but for their last bits.
func (w *Sweep) Same(a, b float64) bool { return math.Abs(a-b) <= sameShare*w.step() }

// sameShare is how far apart one value may stand from itself, as a share of a step.
const sameShare = 1e-6

// snapped is a value on a step of the control inside its range.
func (w *Sweep) snapped(v float64) float64 {
	p, step := w.Param, w.step()
	return max(p.Min, min(p.Max, p.Min+math.Round((v-p.Min)/step)*step))
}

// place is where a value stands among the samples, and whether one is there.
func (w *Sweep) place(v float64) (int, bool) {
	return slices.BinarySearchFunc(w.Samples, v, func(s Sample, v float64) int {
		switch {
		case w.Same(s.At, v):
			return 0
		case s.At < v:
			return -1
		}
		return 1
	})
}

// try works out the boat with the control at a value, if it is not yet. It reports whether it
// can be built.
func (w *Sweep) try(v float64) bool {
	i, there := w.place(v)
	if there {
		return w.Samples[i].Fault == nil
	}
	if w.cut {
		return false
	}
	d := w.from
	if v != w.Param.Get(&d) {
		d = w.Param.Set(d, v)
	}
	s := Sample{At: v}
	c, faults := core.Try(d)
	if len(faults) > 0 {
		s.Fault = &faults[0]
	} else {
		if s.Numbers = w.numbers(c); w.cut {
			return false
		}
		s.Checks = answer.Checks(c)
	}
	w.Samples = slices.Insert(w.Samples, i, s)
	w.cut = w.pause != nil && !w.pause()
	return s.Fault == nil
}

// numbers are the results watched of a boat.
func (w *Sweep) numbers(c core.Canoe) []answer.Number {
	if slices.Contains(w.Keys, "bark.stretch") {
		f := core.LayFlat(c, bark.ForCurve, nil, &w.memory)
		if f.State == geom.CutOff {
			w.cut = true
			return nil
		}
		c = c.WithFlat(f)
	}
	out := make([]answer.Number, len(w.Keys))
	for _, n := range answer.All(c) {
		if i := slices.Index(w.Keys, n.Key); i >= 0 {
			out[i] = n
		}
	}
	return out
}

// wall is the farthest value from the present one toward an end that can be built, to a step.
// What cannot be built beyond stays among the samples, one step farther.
func (w *Sweep) wall(good, end float64) float64 {
	if w.try(end) {
		return end
	}
	bad := end
	for !w.cut && math.Abs(bad-good) > 1.5*w.step() {
		middle := w.snapped((good + bad) / 2)
		if w.try(middle) {
			good = middle
		} else {
			bad = middle
		}
	}
	return good
}

// turns finds, to a step, where a check's word turns.
func (w *Sweep) turns() {
	for i := 1; i < len(w.Samples) && !w.cut; i++ {
		for !w.cut && w.apart(i) && differ(w.Samples[i-1], w.Samples[i]) {
			if !w.halve(i) {
				break
			}
		}
	}
}

// apart tells whether there is a step between a sample and the one before.
func (w *Sweep) apart(i int) bool { return w.Samples[i].At-w.Samples[i-1].At > 1.5*w.step() }

// halve tries the value half-way between a sample and the one before.
func (w *Sweep) halve(i int) bool {
	if len(w.Samples) >= most {
		return false
	}
	before := len(w.Samples)
	w.try(w.snapped((w.Samples[i-1].At + w.Samples[i].At) / 2))
	return len(w.Samples) > before
}

func differ(a, b Sample) bool {
	for i := range min(len(a.Checks), len(b.Checks)) {
		if a.Checks[i].Word != b.Checks[i].Word {
			return true
		}
	}
	return false
}
