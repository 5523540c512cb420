package plan

import "barkwright/core/known"

// ID is a task's place in the table.
type ID int

// The tasks, in the order of the work.
const (
	AskLeave ID = iota
	FindBirch
	FindCedar
	GetMaple
	FellCedar
	CarryCedar
	DigRoots
	TakeBark
	CarryBark
	GatherGum
	CutStakes
	MakeSite
	MakeBed
	MakeFrame
	PeelRoots
	SplitSeamRoot
	SplitLacingRoot
	MakeGunwales
	MakeThwarts
	BendStems
	SplitRibs
	CarveRibs
	SplitSheathing
	MakeHeadboards
	MakePegs
	MeltGum
	SoakBark
	LayBark
	GoreBark
	StakeBark
	SewSeams
	SetGunwales
	Lace
	SetStems
	SewEnds
	FitThwarts
	BendRibs
	PitchInside
	LaySheathing
	DriveRibs
	SetHeadboards
	DriveAgain
	FitCaps
	PitchOutside
	TestWater
	KeepWinter
	Tasks // how many there are
)

// Part is a part of the work.
type Part int

// The parts, in their order.
const (
	Gathering Part = iota
	Preparing
	Building
	Afterwards
	Parts
)

// String names the part.
func (p Part) String() string {
	return [...]string{"gathering", "making ready", "building", "afterwards"}[p]
}

// Window is a part of the year in which a task can be worked.
type Window int

// The windows. AnyTime is the whole year.
const (
	AnyTime Window = iota
	Thawed         // from the thaw on, until winter
	BarkPeels
	Warm
	Windows
)

// Triangle is an estimate of a time: the least, the likely and the most.
type Triangle struct{ Low, Likely, High float64 }

// Mean is the mean of the triangular distribution, so that means of parts add up to the
// mean of the whole.
func (t Triangle) Mean() float64 { return (t.Low + t.Likely + t.High) / 3 }

// times is the triangle with every time so many times as long.
func (t Triangle) times(k float64) Triangle { return Triangle{t.Low * k, t.Likely * k, t.High * k} }

// Said is how often the list of days says what to beware of.
type Said int

// A warning is said where its task begins; there with the last day until which the work is kept so; or,
// where it hurts people, on each day.
const (
	Once Said = iota
	Throughout
	Daily
)

// Link is a task that must be done before, and how many hours by the clock must pass
// between its end and the start.
type Link struct {
	Task ID
	Wait int
}

// Task is one task of the work.
type Task struct {
	ID ID
	// Key names the task in files; it never changes.
	Key string
	// Name is what is done, and Unit what it is counted by.
	Name, Unit string
	Part       Part
	// Minutes are of one practised hand, for one of the unit.
	Minutes Triangle
	// Least and Most are how many hands it needs and can use. Lead tells that one of them
	// must be practised, Woods that the way there takes part of the day.
	Least, Most int
	Lead, Woods bool
	After       []Link
	Season      Window
	// Spoils says what is lost when it is late, or how the work must be kept meanwhile; Said is how often
	// the list of days says it.
	Spoils string
	Said   Said
	// Step is the key of the step of the log whose tick ends it, or empty.
	Step string
	// Count and Rate are how the number of units and the time of one are known.
	Count, Rate known.Source
}

// Mean is the minutes of one unit, in the mean of the estimate.
func (t *Task) Mean() float64 { return t.Minutes.Mean() }

var table = build()

// All lists the tasks in the order of the work.
func All() []Task { return table[:] }

// Of is a task's row in the table.
func Of(id ID) *Task { return &table[id] }

// Lookup finds a task by its key.
func Lookup(key string) (ID, bool) {
	for i := range table {
		if table[i].Key == key {
			return ID(i), true
		}
	}
	return 0, false
}

// build joins the rows of gathering, making ready and building.
func build() (t [Tasks]Task) {
	for _, rows := range [][]Task{gatheringTasks(), readyTasks(), buildingTasks()} {
		for _, r := range rows {
			if r.Rate.Cited == "" {
				r.Rate = known.Source{Basis: known.Estimate, Cited: noRate}
			}
			if r.Count.Cited == "" {
				r.Count = known.Source{Basis: known.Computed, Cited: "counted on this boat"}
			}
			t[r.ID] = r
		}
	}
	return t
}

// noRate stands beside every time for which no published figure was found.
const noRate = "estimate, no published rate found; set so that all together agree with published totals"
