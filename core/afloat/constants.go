package afloat

import (
	"math"

	"barkwright/core/units"
)

const (
	// Gravity is standard gravity, m/s^2.
	Gravity = units.StandardGravity

	// CrewHeightStep is how far the crew is raised and lowered, 2 in, in metres, to
	// show what height does to stiffness; a choice of the project.
	CrewHeightStep = 2 * units.Inch
)

// CustomaryFreeboard is what makers and instructors leave an open canoe with its largest
// load, in metres. Common practice, from memory.
const CustomaryFreeboard = 6 * units.Inch

// MarkedFreeboards are the freeboards at which a load is stated, in metres: the customary
// one, and others below and above it.
func MarkedFreeboards() []float64 {
	return []float64{3 * units.Inch, 4 * units.Inch, CustomaryFreeboard, 8 * units.Inch}
}

// Solver limits. Attitudes are wanted to 0.1 mm; Newton's last step is asked to
// be a ten-thousandth of that because it costs at most one more pass.
const (
	stepTolerance  = 1e-8 // m at the boat's ends
	newtonSteps    = 25
	bisectionSteps = 60
	steepestSlope  = 0.5   // trim looked for up to 1 in 2, past any canoe's
	angleTolerance = 1e-9  // rad, for heels found by search
	valueTolerance = 1e-10 // m, of an arm or a freeboard searched for in heel
	searchSteps    = 18    // heels tried in a search, so every 5 degrees
	mostHeel       = math.Pi / 2
)

// Friction line: ITTC-1957 model-ship correlation line, 8th International Towing
// Tank Conference, Madrid 1957, as given in NPL Ship Report 142 (Morrall 1970).
const (
	frictionFactor = 0.075
	frictionPole   = 2.0 // log10 of the Reynolds number where the line has its pole
	// leastReynolds is where the line is no longer used: a canoe passes it below
	// 3 mm/s, and the pole at 100 is near.
	leastReynolds = 1e4
)

// Thin-ship evaluator. The live grid is within about 0.3 % of the exact integral
// on the parabolic hull at Froude numbers 0.20 to 0.45.
const (
	steepestWave = 60.0 // secant of the last wave angle summed; what is beyond is below 1e-7
	waveBand     = 0.05 // humps and hollows of the theory are not placed closer than 5 % in speed
)

// WaveGrid is how finely the thin-ship integral is summed.
type WaveGrid struct{ Stations, Waterlines, Angles int }

// LiveGrid is the grid in use.
func LiveGrid() WaveGrid { return WaveGrid{40, 20, 400} }

// Paddling. Presets are judgement, set below the pedalling figures of the
// literature; efficiency of a paddle is about 0.6 to 0.75 (from memory).
const (
	LeastPower   = 20.0 // W at the paddle, each paddler: hardly at work
	TouringPower = 50.0 // W
	BriskPower   = 75.0 // W

	// CommonPace is what loaded canoes are commonly paddled at, m/s: 3 mph. Common
	// practice, no published source; one published track of a loaded 17 ft canoe in calm
	// air runs at 3 1/2 to 4.
	CommonPace = 3 * units.MilePerHour

	// PaddleEfficiency is the share of a paddler's power that drives the boat, and
	// its range.
	PaddleEfficiency      = 0.65
	LeastPaddleEfficiency = 0.60
	MostPaddleEfficiency  = 0.75

	// paddlingDay is six hours, in seconds: the day the result is stated for.
	paddlingDay = 6 * 3600.0
)
