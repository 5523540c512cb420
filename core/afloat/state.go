package afloat

// State names how the boat lies. Numbers that go with a state other than Floats are
// described at the function that returns them.
type State int

const (
	// Floats: at rest, gunwales dry, stiff upright.
	Floats State = iota
	// Overloaded: even floated level the lowest sheer would be under water.
	Overloaded
	// Swamped: the load could be carried level, but as trimmed or heeled water
	// comes over the gunwale.
	Swamped
	// CapsizesUpright: the upright boat is not stiff (GM below zero); it falls to
	// its angle of loll or goes over.
	CapsizesUpright
	// NotConverged: no attitude was found that balances the load.
	NotConverged
)

// String returns the state in the words of the page.
func (s State) String() string {
	switch s {
	case Floats:
		return "floats"
	case Overloaded:
		return "overloaded"
	case Swamped:
		return "swamped"
	case CapsizesUpright:
		return "will not stay upright"
	case NotConverged:
		return "not converged"
	}
	return "unknown"
}
