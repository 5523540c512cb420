package design

import (
	"fmt"
	"math"
	"slices"

	"barkwright/core/units"
)

// Fault is one thing that keeps a design from being built, shown at the control
// of the parameter Key ("name" and "notes" for the texts).
type Fault struct {
	Key string
	// Fit is the bound that would mend it, in SI, where HasFit says there is one:
	// the most the parameter may be, or the least where FitLeast is set.
	Fit              float64
	HasFit, FitLeast bool

	sentence string
	shown    []Shown
	// at is the design of a girth's fault, which other controls decide too.
	at *Design
}

// At returns the fault moved to the control of key, if key is one of the parameters that
// decide it: a fault is named at the control that was moved.
func (f Fault) At(key string) Fault {
	if f.at == nil || f.Key == key || !slices.Contains(girthDeciders, key) {
		return f
	}
	f.Key, f.HasFit = key, false
	return f.at.girthFit(f)
}

// Shown is a number inside a fault's sentence, written in the user's units.
type Shown struct {
	Kind  units.Kind
	Value float64
}

// Long and Small show a length and a size of timber.
func Long(v float64) Shown  { return Shown{units.Length, v} }
func Small(v float64) Shown { return Shown{units.SmallLength, v} }

// Rounding is by how much a number must pass a bound before it is a fault: the last
// bits of a value that was meant to be equal to the bound are not. Metres, radians or
// a ratio.
const Rounding = 1e-9

// NewFault states what is wrong with a parameter in one full sentence, with a %s
// for each number shown.
func NewFault(key, sentence string, shown ...Shown) Fault {
	return Fault{Key: key, sentence: sentence, shown: shown}
}

// AtMost returns f with the largest value that fits, unless the parameter's range
// holds none.
func (f Fault) AtMost(v float64) Fault { return f.fitting(v, false) }

// AtLeast returns f with the smallest value that fits, unless the parameter's
// range holds none.
func (f Fault) AtLeast(v float64) Fault { return f.fitting(v, true) }

func (f Fault) fitting(v float64, least bool) Fault {
	f.Fit, f.FitLeast = v, least
	_, f.HasFit = f.Suggest(units.Imperial16)
	return f
}

// Suggest returns the value to offer in a system, in SI: Fit moved to the next
// step on its good side, and false where no step inside the range is.
func (f Fault) Suggest(s units.System) (float64, bool) {
	p, known := Lookup(f.Key)
	if !known {
		return 0, false
	}
	step := p.Step(s)
	if p.Kind == units.Length || p.Kind == units.SmallLength {
		step = max(step, s.Step())
	}
	from := 0.0
	if p.Odd {
		from = 1
	}
	// A fit that stands on a step but for its last bits is that step.
	const nearly = 1e-6
	v := from + math.Floor((f.Fit-from)/step+nearly)*step
	if f.FitLeast {
		v = from + math.Ceil((f.Fit-from)/step-nearly)*step
	}
	slack := nearly * step
	return v, v >= p.Min-slack && v <= p.Max+slack
}

// Message says what is wrong and what would fit, in the user's units.
func (f Fault) Message(s units.System) string {
	words := make([]any, len(f.shown))
	for i, n := range f.shown {
		words[i] = n.Kind.Format(n.Value, s)
	}
	text := fmt.Sprintf(f.sentence, words...)
	if !f.HasFit {
		return text
	}
	v, ok := f.Suggest(s)
	if !ok {
		return text
	}
	p, _ := Lookup(f.Key)
	if f.FitLeast {
		return text + " " + p.Kind.Format(v, s) + " or more fits."
	}
	return text + " " + p.Kind.Format(v, s) + " or less fits."
}
