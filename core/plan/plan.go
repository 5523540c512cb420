package plan

import (
	"time"

	"barkwright/core/tally"
)

// State says whether there is a plan.
type State int

// The states of a plan.
const (
	// Made is a plan that ends.
	Made State = iota
	// NothingLeft is one with no work left to do but to lay the boat up for winter.
	NothingLeft
	// NoHands has nobody to work.
	NoHands
	// OutOfSeason does not end within three years: Stop says why.
	OutOfSeason
)

// Plan is who does what on which day. Days are counted from the first, which is 0.
type Plan struct {
	State  State
	Season Season
	Counts Counts
	Done   Progress
	// First is the first day; no date where Dated is false.
	First time.Time
	Dated bool
	// Dates is how its reader writes them.
	Dates tally.Dates
	// Sums are the hours of practised hands that are left, by part.
	Sums Sums
	// Jobs are what is left to do, in the order in which it begins.
	Jobs []Job
	// Days is how many days it takes by the calendar, Working how many of them are worked.
	Days, Working int
	// Low and High bound the days, WorkLow and WorkHigh the working days: the 10th and 90th
	// of a hundred plans with times drawn from their ranges. HoursLow and HoursHigh bound Sums,
	// ShareLow and ShareHigh the share of gathering.
	Low, High, WorkLow, WorkHigh             int
	HoursLow, HoursHigh, ShareLow, ShareHigh float64
	// Missed is by task in how many of the hundred it is not done in its season, as it is in the plan, and
	// the boat waits for the next. They are not in the range of days.
	Missed [Tasks]int
	// Stop is what keeps a plan that is OutOfSeason from ending.
	Stop Stop
	// Practised and Learners are the hands that the plan uses: fewer than there are where
	// more would not end it sooner.
	Practised, Learners int
	// Hours are the hours that people work, the slower learners' in full.
	Hours float64
	// Chain is the longest chain of jobs, the first first, as places in Jobs.
	Chain []Held
	// Short is the day on which most hours of hands are wanted beyond those there, and how
	// many; -1 where none are.
	Short      int
	ShortHours float64
	// Floor is how many days no crew, however large, can undercut.
	Floor int

	net *network
	won found
}

// Job is one task of one boat, or of all of them together, as planned.
type Job struct {
	Task ID
	Boat int
	// From and To are its first and its last day.
	From, To int
	Shifts   []Shift
	// Slack is how many days it can begin later and the end stays.
	Slack int
	// OnChain tells that it is one of the longest chain.
	OnChain bool

	start, end, index int
}

// Shift is the work at a job on one day.
type Shift struct {
	Day int
	// Practised and Others are the most hands at it at a time, Hours all hours worked at it.
	Practised, Others int
	Hours             float64
	// Done and After are how many units are done by the evening before and by this one.
	Done, After float64
	// Lent is how many of them are of other teams: its own is too few for it. Borrowed is how many
	// hands it needs beyond the crew.
	Lent, Borrowed int
	// at is when on the day it begins, in slots.
	at int
}

// Cause is what held a job from starting sooner.
type Cause int

// The causes.
const (
	FromTheFirst Cause = iota // it starts at once
	ByOrder                   // the job before it
	ByWait                    // the wait after the job before it
	BySeason                  // its season
	ByHands                   // the hands were at the job before it
)

// Held is a job of the longest chain and what held its start.
type Held struct {
	Job int
	By  Cause
}

// Make plans a season: the boats of c from a first day on, with what is done already. An
// empty day plans without dates, and holds to no season. Faults must have found nothing
// wrong. Where only the last day is set, the first is the latest that meets it.
// pause is called a few hundred times; where it returns false no plan is made.
func Make(s Season, c Counts, progress Progress, first string, pause func() bool) (Plan, bool) {
	p := Plan{Season: s, Counts: c, Done: progress, Sums: s.Sum(c, progress), Short: -1}
	p.First, p.Dated = day(first)
	if s.Int(Practised)+s.Int(Learners) == 0 {
		p.State = NoHands
		return p, true
	}
	if !p.Dated && s.Days[End] != "" {
		return s.byEnd(c, progress, pause)
	}
	rates := s.Rates(c, progress)
	p.net = s.newNetwork(c, progress, means(&rates), newClock(&s, p.First, p.Dated))
	won, ok := p.net.best(s.Int(Practised), s.Int(Learners), s.Number(Factor), p.net.orders(shaken), never, pause)
	if !ok {
		return Plan{}, false
	}
	p.won = won
	switch {
	case won.end >= never:
		p.State, p.Stop = OutOfSeason, p.net.stop(s.crew(s.Int(Practised), s.Int(Learners)))
		return p, true
	case p.Sums.Total()-p.Sums.Of(Afterwards) <= done:
		p.State = NothingLeft
		return p, true
	}
	p.Practised, p.Learners = won.practised, won.learners
	p.Floor = p.net.clock.day(p.net.reach(newHands(everyone, 0, 1).in(p.net.teams)).end-1) + 1
	r := p.record()
	p.lay(r)
	p.chain(r)
	if !p.slacks(pause) {
		return Plan{}, false
	}
	return p, p.ranges(&rates, pause)
}

func means(rates *[Tasks]Triangle) *[Tasks]float64 {
	var out [Tasks]float64
	for i := range rates {
		out[i] = rates[i].Mean()
	}
	return &out
}
