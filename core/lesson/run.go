package lesson

import (
	"math"
	"slices"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/geom"
	"barkwright/core/sure"
	"barkwright/core/wood"
)

// Run is a lesson worked out on a boat, step by step.
type Run struct {
	Lesson Lesson
	// Canoes are the boats of the steps done, the one as opened first. One that cannot be built
	// is empty, and Faults tells why.
	Canoes []core.Canoe
	Faults []*design.Fault
	// Pause is called inside a step that takes long; where it returns false the step ends at
	// once and the run is of no use any more. nil for none.
	Pause func() bool

	numbers [][]answer.Number
	spreads []map[sure.Of]float64
	memory  geom.FlattenWorkspace
}

// NewRun is a lesson to be worked out on a boat without faults, with what to call in between.
func NewRun(l Lesson, c core.Canoe, pause func() bool) *Run {
	r := &Run{Lesson: l, Pause: pause}
	r.take(c, nil)
	return r
}

// Next does the next step, and reports false once all are done.
func (r *Run) Next() bool {
	n := len(r.Canoes) - 1
	if n == len(r.Lesson.Steps) {
		return false
	}
	c, faults := core.Try(r.Lesson.Steps[n].Apply(r))
	if len(faults) > 0 {
		r.take(core.Canoe{}, &faults[0])
	} else {
		r.take(c, nil)
	}
	return true
}

func (r *Run) take(c core.Canoe, fault *design.Fault) {
	var numbers []answer.Number
	var spreads map[sure.Of]float64
	if fault == nil {
		if slices.Contains(r.Lesson.Watch, stretch) {
			r.memory.Pause = r.Pause
			if f := core.LayFlat(c, bark.ForCurve, nil, &r.memory); f.State != geom.CutOff {
				c = c.WithFlat(f)
			}
		}
		if slices.Contains(r.Lesson.Watch, ribSpread) {
			spreads = r.spread(c)
		}
		numbers = answer.All(c)
	}
	r.Canoes, r.Faults, r.numbers = append(r.Canoes, c), append(r.Faults, fault), append(r.numbers, numbers)
	r.spreads = append(r.spreads, spreads)
}

// The results that the bark is laid flat for, and spreads are worked out for.
const (
	stretch   = "bark.stretch"
	ribSpread = "rib.spread"
)

// Number is a result at a step, and whether there is one.
func (r *Run) Number(key string, step int) (answer.Number, bool) {
	if step < 0 || step >= len(r.numbers) {
		return answer.Number{}, false
	}
	for _, n := range r.numbers[step] {
		if n.Key == key {
			return n, true
		}
	}
	return answer.Number{}, false
}

// Value is a result at a step in SI: one of the page's, or one of those that only lessons
// speak of; NaN where there is none.
func (r *Run) Value(key string, step int) float64 {
	if step < 0 || step >= len(r.Canoes) || r.Faults[step] != nil {
		return math.NaN()
	}
	if of, ok := aside[key]; ok {
		return of(r, step)
	}
	if p, ok := design.Lookup(key); ok {
		return p.Get(&r.Canoes[step].Design)
	}
	if n, ok := r.Number(key, step); ok && !n.Absent {
		return n.Value
	}
	return math.NaN()
}

// aside are the results that only lessons speak of.
var aside map[string]func(*Run, int) float64

func init() {
	last := func(c *core.Canoe) int { return len(c.Frame.Ribs) - 1 }
	ribs := func(of func(c *core.Canoe) float64) func(*Run, int) float64 {
		return func(r *Run, step int) float64 { return of(&r.Canoes[step]) }
	}
	aside = map[string]func(*Run, int) float64{
		"rib.middleRadius": ribs(func(c *core.Canoe) float64 { return c.Frame.Ribs[0].Bend.Radius }),
		"rib.lastRadius":   ribs(func(c *core.Canoe) float64 { return c.Frame.Ribs[last(c)].Bend.Radius }),
		"rib.middleLength": ribs(func(c *core.Canoe) float64 { return c.Frame.Ribs[0].Length }),
		"rib.lastLength":   ribs(func(c *core.Canoe) float64 { return c.Frame.Ribs[last(c)].Length }),
		"rib.tight": ribs(func(c *core.Canoe) float64 {
			n := 0
			for _, rib := range c.Frame.Ribs {
				if rib.Bend.Verdict == wood.TooTight {
					n++
				}
			}
			return float64(n)
		}),
		// Groups times the root in one, and lacing and seams with their waste.
		"root.byGroups": func(r *Run, step int) float64 {
			return r.Value("lacing.groups", step) * r.Value("lacing.group", step)
		},
		"root.added": func(r *Run, step int) float64 {
			return (r.Value("root.gunwales", step) + r.Value("root.seams", step)) * (1 + r.Value("rootWaste", step))
		},
		ribSpread: func(r *Run, step int) float64 { return r.spreads[step][sure.Rib] },
	}
}

// spread is how far the first figure of each kind may be off, the middle rib's for ribs.
func (r *Run) spread(c core.Canoe) map[sure.Of]float64 {
	s := sure.New(c)
	for s.Next() {
		if r.Pause != nil && !r.Pause() {
			break
		}
	}
	out := map[sure.Of]float64{}
	for i := len(s.Figures) - 1; i >= 0; i-- {
		out[s.Figures[i].Of] = s.Figures[i].Spread
	}
	return out
}

// Outcome is how a claim stands on a boat.
type Outcome int

// The outcomes.
const (
	Holds Outcome = iota
	// Fails is a claim that is not so on this boat.
	Fails
	// NotMade is one that is made on other boats only, or of a boat that cannot be built.
	NotMade
)

// Judge says how a claim stands, once all steps are done.
func (r *Run) Judge(c Claim) Outcome {
	if c.Where != nil && !c.Where(r) {
		return NotMade
	}
	sum := -c.Least
	for _, t := range c.Terms {
		sum += t.A * r.Value(t.Result, t.Step)
	}
	switch {
	case math.IsNaN(sum):
		return NotMade
	case sum >= -lastBits:
		return Holds
	}
	return Fails
}

// lastBits of SI values are not a difference.
const lastBits = 1e-9

// up is v rounded up to a step.
func up(v, step float64) float64 { return math.Ceil(v/step-1e-6) * step }
