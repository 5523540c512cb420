package answer

import (
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
}
