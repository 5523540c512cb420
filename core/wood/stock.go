package wood

// Condition is how the piece is made ready to bend.
type Condition int

const (
	Boiled   Condition = iota // hot and wet, no strap
	Strapped                  // hot and wet, a strap on the outside with end stops
	Soaked                    // cold and wet
	Dry                       // cold, under about 20 % moisture
)

const noSuchCondition = "wood: no such condition"

// AllConditions lists the conditions in their order.
func AllConditions() []Condition { return []Condition{Boiled, Strapped, Soaked, Dry} }

func (c Condition) String() string {
	switch c {
	case Boiled:
		return "boiled or steamed, no strap"
	case Strapped:
		return "steamed with a strap and end stops"
	case Soaked:
		return "cold, soaked or green"
	case Dry:
		return "cold and dry"
	}
	panic(noSuchCondition)
}

// hot tells whether the piece is bent hot.
func (c Condition) hot() bool { return c == Boiled || c == Strapped }

// Grain is how the grain runs along the piece.
type Grain int

const (
	Straight Grain = iota // split, the grain following the piece
	RunOut20              // the grain leaves the piece 1 in 20
	RunOut10              // 1 in 10
	RunOut5               // 1 in 5
	Sawn                  // sawn with visible run-out, or kiln-dried
)

const noSuchGrain = "wood: no such grain"

// AllGrains lists the grains in their order.
func AllGrains() []Grain { return []Grain{Straight, RunOut20, RunOut10, RunOut5, Sawn} }

func (g Grain) String() string {
	switch g {
	case Straight:
		return "split, straight grain"
	case RunOut20:
		return "grain runs out 1 in 20"
	case RunOut10:
		return "grain runs out 1 in 10"
	case RunOut5:
		return "grain runs out 1 in 5"
	case Sawn:
		return "sawn with visible run-out, or kiln-dried"
	}
	panic(noSuchGrain)
}

// Stock is the wood a piece is made of, as far as bending it goes. The zero
// value is straight-grained northern white-cedar, boiled or steamed.
type Stock struct {
	Species   Species
	Condition Condition
	Grain     Grain
}

// strength is the table row for the stock's moisture: 12 % where it is bent dry,
// green otherwise. No figure for hot wood was found.
func (s Stock) strength() Strength {
	if s.Condition == Dry {
		return s.Species.Row().Dry
	}
	return s.Species.Row().Green
}
