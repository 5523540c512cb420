package trace

// Refusal is why a view of a picture cannot be read as it stands.
type Refusal int

// The refusals.
const (
	NoBase Refusal = iota
	ShortBase
	NoUp
	NoMiddle
	NoCorners
	BadCorners
	NoSides
	NoSize
	ShortSize
	SizesDisagree
	BeyondHorizon
)

var refusals = [...]string{
	NoBase:        "It has no base line yet.",
	ShortBase:     "The two points of the base line lie too near to each other.",
	NoUp:          "The base line stands upright: turn the picture until it lies level.",
	NoMiddle:      "It has no middle yet.",
	NoCorners:     "It is to be set square, and has no rectangle yet.",
	BadCorners:    "These are no corners of a rectangle: press its four corners in their order round it.",
	NoSides:       "The rectangle has no sizes yet: what it measures along and up.",
	NoSize:        "Nothing says what it measures yet: press two points and give the length between them.",
	ShortSize:     "The two points of a lettered size lie too near to each other.",
	SizesDisagree: "The lettered sizes disagree too much to give a scale: see which of them is off.",
	BeyondHorizon: "A point lies beyond what the plane of the rectangle shows.",
}

// Error says why in words.
func (r Refusal) Error() string { return refusals[r] }
