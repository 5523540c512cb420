package answer

import (
	"barkwright/core/design"
	"barkwright/core/stage"
	"barkwright/core/units"
)

// State is how a part of the design stands, a larger one the worse.
type State int

// The states, on one scale for every check.
const (
	Within State = iota
	Near
	Beyond
	NotChecked
)

// String is the state's word.
func (s State) String() string {
	return [...]string{"within guide", "near the limit", "too tight", "not checked"}[s]
}

// Warning is a check of the design: its state in a word, and what to change.
type Warning struct {
	Key, Label string
	Home       stage.Key
	State      State
	// Word names the state; it differs from State's own where the check is not of
	// a bend: overloaded, short of bark.
	Word string
	// Text says what was found and what to change.
	Text func(units.System) string
	// Cure is a setting that brings the check within guide, where one is known.
	Cure *Cure
}

// Cure is a parameter, by its key, and the value to set it to, in SI.
type Cure struct {
	Key   string
	Value float64
}

// cure is a setting that cures a check, nil where the parameter does not reach it.
func cure(key string, value int) *Cure {
	p, ok := design.Lookup(key)
	if v := float64(value); ok && v >= p.Min && v <= p.Max {
		return &Cure{key, v}
	}
	return nil
}

// Says is what is done, such as Set laminations of the stem to 5.
func (c *Cure) Says(s units.System) string {
	p, _ := design.Lookup(c.Key)
	return "Set " + InSentence(p.Label) + " to " + p.Format(c.Value, s)
}
