package design

import (
	"math"

	"barkwright/core/stage"
	"barkwright/core/units"
)

// Param is one number of the design: what the form shows and what it accepts.
type Param struct {
	Key, Label, Help string
	// Home is the stage of the work where the number is last free.
	Home stage.Key
	Kind units.Kind
	// Min, Max and Default in the kind's SI unit. A choice runs from 0 to its
	// last option.
	Min, Max, Default float64
	// StepInch and StepMetric are the sliders' steps in either system, SI.
	StepInch, StepMetric float64
	// Options names the choices; nil where the number is a quantity.
	Options []string
	// NoneAtMin says that the slider's lowest place means none and is kept as 0.
	NoneAtMin bool
	// Odd allows odd numbers only.
	Odd bool
	// Paddler is the one of the crew, from 1 at the bow, that the number belongs
	// to, or 0.
	Paddler int
	// Tolerance tells that it is how close a size comes out: no boat follows from it.
	Tolerance bool

	get    func(*Design) float64
	put    func(*Design, float64)
	follow func(Design) float64
	exact  bool // follows without being rounded to its step
	own    Owned
}

// Follows tells whether the parameter is a dependent one.
func (p Param) Follows() bool { return p.follow != nil }

// Solved tells whether a dependent parameter is another number's equal or worked out from
// others, and so moves with them: it is no decision of its own.
func (p Param) Solved() bool { return p.exact }

// Owned tells whether a dependent parameter no longer follows.
func (p Param) Owned(d Design) bool { return d.Own&p.own != 0 }

// free tells whether the parameter follows and is not owned.
func (p *Param) free(d *Design) bool { return p.follow != nil && d.Own&p.own == 0 }

// Get returns the parameter's value in SI. It takes a pointer only because a design
// is too large to hand over for each of its numbers.
func (p Param) Get(d *Design) float64 { return p.get(d) }

// Release marks the parameter as following again where it is one that does.
func (p Param) Release(d *Design) { d.Own &^= p.own }

// Format is a value of the parameter, SI, as the form shows it.
func (p Param) Format(v float64, s units.System) string {
	if p.NoneAtMin && v <= p.Min {
		return "none"
	}
	return p.Kind.Format(v, s)
}

// Whole tells whether the parameter is kept as a whole number.
func (p Param) Whole() bool { return p.Kind == units.Count }

// Put sets the parameter in d, in SI, and no other. It is the one way a value enters a
// design. A value that misses a bound of its range only by rounding becomes that bound,
// so that no code after Validate sees a value outside the range.
func (p Param) Put(d *Design, v float64) { p.put(d, onBound(v, p.Min, p.Max, p.StepMetric)) }

// roundingShare is how far, as a share of a step, a value may miss the bound it was
// meant for: units and decimals round far finer, and no step is this small.
const roundingShare = 1e-6

// onBound returns the bound that v misses by rounding alone, or else v.
func onBound(v, least, most, step float64) float64 {
	slack := roundingShare * step
	switch {
	case math.Abs(v-least) <= slack:
		return least
	case math.Abs(v-most) <= slack:
		return most
	}
	return v
}

// Claim marks the parameter as set where it is one that follows.
func (p Param) Claim(d *Design) { d.Own |= p.own }

// Set returns d with the parameter at v, in SI, marked as set where it follows,
// and every dependent parameter brought up to date. Counts are rounded to whole
// numbers.
func (p Param) Set(d Design, v float64) Design {
	p.Put(&d, v)
	d.Own |= p.own
	return Follow(d)
}

// Reset returns d with the parameter at its default, tied again where it follows.
func (p Param) Reset(d Design) Design {
	p.put(&d, p.Default)
	d.Own &^= p.own
	return Follow(d)
}

// Step returns the slider's step in a system, SI.
func (p Param) Step(s units.System) float64 {
	if s == units.Metric {
		return p.StepMetric
	}
	return p.StepInch
}

// Owned is the set of dependent parameters that the user has set, one bit each
// in the order of the table.
type Owned uint64

// Decisions are the marks of all dependent parameters but those that are another number's equal
// or solved from others: a design with these marks stands still but for what is set in it.
func Decisions() Owned {
	var o Owned
	for _, p := range table {
		if !p.exact && p.Paddler == 0 {
			o |= p.own
		}
	}
	return o
}

// Follow returns d with every dependent parameter that is not owned computed
// from what it depends on, rounded to its step, unless it repeats another number,
// and held inside its range.
func Follow(d Design) Design {
	for i := range table {
		if p := &table[i]; p.free(&d) {
			p.bring(&d)
		}
	}
	return d
}

// bring puts a dependent parameter at what it follows to.
func (p *Param) bring(d *Design) {
	v := p.follow(*d)
	if p.StepInch > 0 && !p.exact {
		v = math.Round(v/p.StepInch) * p.StepInch
	}
	p.Put(d, max(p.Min, min(p.Max, v)))
}

// Nudge is Set by which what follows in lengths and shapes is not rounded to its step, so that
// the slopes of results have no steps either. Counts stay as they are.
func (p Param) Nudge(d Design, v float64) Design {
	p.Put(&d, v)
	d.Own |= p.own
	for i := range table {
		if f := &table[i]; f.free(&d) && !f.Whole() {
			f.Put(&d, max(f.Min, min(f.Max, f.follow(d))))
		}
	}
	return d
}

// Params returns the table of parameters in the order of the form.
func Params() []Param { return append([]Param(nil), table...) }

// Lookup finds a parameter by key.
func Lookup(key string) (Param, bool) {
	for i := range table {
		if table[i].Key == key {
			return table[i], true
		}
	}
	return Param{}, false
}

// Default is the boat the page opens with; it is invented.
func Default() Design {
	d := Design{Name: "Heron Cove, first canoe"}
	for _, p := range table {
		p.put(&d, p.Default)
	}
	return Follow(d)
}
