package core

import (
	"math"

	"barkwright/core/plan"
	"barkwright/core/tally"
	"barkwright/core/units"
)

// Outlook is the plan of the work on a canoe and what would change it.
type Outlook struct {
	plan.Plan
	// Faults keep the season from being planned; nothing else holds then.
	Faults []plan.Fault
	// Today is the day the plan was made on, or empty where nothing hangs on it.
	Today string
	// Helped tells that what follows is worked out: WithHelp.
	Helped bool
	// Ways may bring the end forward; Crews are the least that meet the day set, if any is.
	Ways  []plan.Way
	Crews []plan.Crew
	// Sizes are boats of this shape by their length, with the days each takes; a larger one
	// never sooner.
	Sizes []Size
}

// Size is a boat of this shape by its length, m, with the days it takes.
type Size struct {
	Length float64
	Days   int
}

// TodayAt is the day of the plan that today is, or -1 where the plan has no dates or does not reach it.
func (o *Outlook) TodayAt() int {
	if d, ok := o.DayOf(o.Today); ok && d >= 0 && d < o.Days {
		return d
	}
	return -1
}

// shorter is how much shorter a boat is tried among what would help.
const shorter = 1 * units.Foot

// sameLength is within what a boat's length is one of the table's, m: a hair, past rounding.
const sameLength = 1e-6

// sizes are the lengths of the table of sizes.
var sizes = []float64{18 * units.Foot, 16 * units.Foot, 14 * units.Foot, 12 * units.Foot, 10 * units.Foot}

// PlanWork plans the work on the canoe: with what the log says is done, from the season's first
// day or, once something is done or that day is past, from today. of tells how many rows a
// step of the log has. It takes longer than a step may: pause is called between slices, and
// where it returns false no outlook is made.
func PlanWork(c Canoe, s plan.Season, log tally.Log, today string, of func(step string) int,
	pause func() bool) (*Outlook, bool) {
	o := &Outlook{Faults: s.Faults()}
	if len(o.Faults) > 0 {
		return o, true
	}
	asks := c.Asks()
	done := s.Read(asks, log, of)
	first := s.Days[plan.Begin]
	if first != "" || s.Days[plan.End] != "" || done.Any() {
		o.Today = today
		if done.Any() || first != "" && first < today {
			first = today
		}
	}
	var ok bool
	if o.Plan, ok = plan.Make(s, asks, done, first, pause); !ok {
		return nil, false
	}
	return o, true
}

// WithHelp is the outlook on the canoe with what would change it: ways to end sooner, the least
// crews and other sizes. It takes some times as long as the plan itself.
func (o Outlook) WithHelp(c Canoe, pause func() bool) (*Outlook, bool) {
	o.Helped = true
	if len(o.Faults) > 0 || o.State != plan.Made {
		return &o, true
	}
	var ok bool
	var smaller *plan.Counts
	if k := 1 - shorter/c.Design.Length; k > 0 {
		if less, faults := Try(c.Design.Scaled(k)); len(faults) == 0 {
			counts := less.Asks()
			smaller = &counts
		}
	}
	if o.Ways, ok = o.Plan.Ways(smaller, shorter, pause); !ok {
		return nil, false
	}
	if days, set := o.DaysSet(); set {
		if o.Crews, ok = o.Plan.Least(days, pause); !ok {
			return nil, false
		}
	}
	for _, length := range sizes {
		if math.Abs(length-c.Design.Length) < sameLength {
			o.Sizes = append(o.Sizes, Size{length, o.Days})
			continue
		}
		other, faults := Try(c.Design.Scaled(length / c.Design.Length))
		if len(faults) > 0 {
			continue
		}
		// A smaller boat's tasks are no longer: the plan of any larger one can be kept for it.
		most := 0
		if n := len(o.Sizes); n > 0 {
			most = o.Sizes[n-1].Days
		}
		if length < c.Design.Length && (most == 0 || o.Days < most) {
			most = o.Days
		}
		days, ok := o.Plan.Quick(other.Asks(), most, pause)
		if !ok {
			return nil, false
		}
		if length > c.Design.Length {
			days = max(days, o.Days)
		}
		o.Sizes = append(o.Sizes, Size{length, days})
	}
	return &o, true
}
