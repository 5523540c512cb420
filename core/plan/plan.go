package plan

import (
	"math"
	"time"

	"barkwright/core/tally"
)

// State says whether there is a plan.
type State int

// The states of a plan.
const (
	// Made is a plan that ends.
	Made State = iota
	// NothingLeft is one with no work left to do.
	NothingLeft
	// NoHands has nobody to work.
	NoHands
	// OutOfSeason does not end within three years: a season that a task waits for is missing.
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
	// Borrowed is how many hands it needs beyond the crew.
	Borrowed int
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
	won, ok := p.net.best(s.Int(Practised), s.Int(Learners), s.Number(Factor), shaken, pause)
	if !ok {
		return Plan{}, false
	}
	p.won = won
	switch {
	case won.end >= never:
		p.State = OutOfSeason
		return p, true
	case p.Sums.Total() <= done:
		p.State = NothingLeft
		return p, true
	}
	p.Practised, p.Learners = won.practised, won.learners
	p.Floor = p.net.clock.day(p.net.bound(newHands(everyone, 0, 1).in(p.net.teams))-1) + 1
	r := p.record()
	p.lay(r)
	p.chain(r)
	if !p.slacks(pause) {
		return Plan{}, false
	}
	return p, p.ranges(&rates, pause)
}

// everyone is more hands than any plan uses, for what no crew can undercut.
const everyone = 1000

func means(rates *[Tasks]Triangle) *[Tasks]float64 {
	var out [Tasks]float64
	for i := range rates {
		out[i] = rates[i].Mean()
	}
	return &out
}

// record runs the best plan once more and notes who did what.
func (p *Plan) record() *run {
	r := newRun(p.net, p.won.crew)
	r.keep = true
	end := r.finish(p.won.rank, p.won.deal, never)
	p.Days, p.Working = p.net.clock.day(end-1)+1, (end-1)/p.net.clock.slots+1
	return r
}

// lay makes the jobs with their days out of what a run noted.
func (p *Plan) lay(r *run) {
	k := &p.net.clock
	at := make([]int, len(p.net.jobs))
	for i := range at {
		at[i] = -1
	}
	did := make([]float64, len(p.net.jobs))
	for _, h := range r.stints {
		j := &p.net.jobs[h.job]
		if at[h.job] < 0 {
			at[h.job] = len(p.Jobs)
			p.Jobs = append(p.Jobs, Job{Task: j.task, Boat: j.boat, From: k.day(h.slot), start: r.start[h.job],
				end: r.end[h.job], index: h.job})
		}
		o := &p.Jobs[at[h.job]]
		d := k.day(h.slot)
		if n := len(o.Shifts); n == 0 || o.Shifts[n-1].Day != d {
			before := p.units(j, did[h.job]/j.work)
			o.Shifts = append(o.Shifts, Shift{Day: d, Done: before, at: h.slot % k.slots})
		}
		sh := &o.Shifts[len(o.Shifts)-1]
		lead, rest := p.named(h)
		sh.Practised, sh.Others = max(sh.Practised, lead), max(sh.Others, rest)
		sh.Hours += float64(h.leads+h.rest) / perHour
		sh.Borrowed = max(sh.Borrowed, j.least-p.won.crew.of(j.team).all())
		did[h.job] = min(j.work, did[h.job]+p.won.crew.rate(h.leads, h.rest))
		sh.After = p.units(j, did[h.job]/j.work)
		o.To = d
		if !j.late {
			p.Hours += float64(h.leads+h.rest) / perHour
		}
	}
	p.shortest(r)
}

// named tells how many of a stint's hands are practised: a crew without any is led by a learner.
func (p *Plan) named(h stint) (practised, others int) {
	if p.won.practised == 0 {
		return 0, h.leads + h.rest
	}
	return h.leads, h.rest
}

// units is how many units of a job's task are done at a share of what was left.
func (p *Plan) units(j *job, share float64) float64 {
	var left, all float64
	if together(j.task) {
		left, all = p.Season.Left(p.Counts, p.Done, j.task), p.Season.Asked(p.Counts, j.task)
	} else {
		left, all = p.Season.leftOf(p.Counts, p.Done, j.task, j.boat), p.Counts.Units[j.task]
	}
	return all - left*(1-share)
}

// shortest finds the day on which the most hours of hands are wanted beyond those there.
func (p *Plan) shortest(r *run) {
	k := &p.net.clock
	wanted := p.wanted(r)
	there := float64(k.slots*p.won.crew.all()) / perHour
	for d, w := range wanted {
		if over := w - there; over > p.ShortHours+done {
			p.Short, p.ShortHours = d, over
		}
	}
}

// wanted is by day the hours of hands that the jobs ready on it could use.
func (p *Plan) wanted(r *run) []float64 {
	k := &p.net.clock
	out := make([]float64, p.Days)
	for i := range p.net.jobs {
		j := &p.net.jobs[i]
		if j.work <= done || j.late {
			continue
		}
		// A job wants hands from when it is ready until it is done, and no more work than it has.
		left := j.work
		for slot := r.ready[i]; slot <= r.end[i] && left > done; slot++ {
			if k.opening(slot, j.season) != slot {
				continue
			}
			if d := k.day(slot); d < len(out) {
				out[d] += float64(j.most) / perHour
			}
			left -= float64(j.most) * p.won.crew.restOr()
		}
	}
	return out
}

// restOr is the pace of a hand of the crew: a learner's where there are any.
func (h hands) restOr() float64 {
	if h.rest > 0 {
		return h.restRate
	}
	return h.leadSpeed
}

// DayOf is the day of the plan that a date is, also before its first and past its last; it
// reports false for what is no date, and without dates.
func (p *Plan) DayOf(date string) (d int, ok bool) {
	at, ok := day(date)
	if !ok || !p.Dated {
		return 0, false
	}
	return daysBetween(p.First, at), true
}

// Date is the calendar day of a day of the plan; the zero time without dates.
func (p *Plan) Date(d int) time.Time {
	if !p.Dated {
		return time.Time{}
	}
	return p.First.AddDate(0, 0, d)
}

// Wanted is by day the hours of hands that could be used.
func (p *Plan) Wanted() []float64 { return p.wanted(p.record()) }

// There is how many hours the hands used have on a day of the plan.
func (p *Plan) There(d int) float64 {
	if d%daysOfWeek >= p.net.clock.days {
		return 0
	}
	return float64(p.net.clock.slots*p.won.crew.all()) / perHour
}

// Open are the spans of days of a season within the plan.
func (p *Plan) Open(w Window) [][2]int {
	var out [][2]int
	for _, s := range p.net.clock.open[w] {
		if s[0] < p.Days {
			out = append(out, [2]int{s[0], min(s[1], p.Days-1)})
		}
	}
	return out
}

// whole is a float of days rounded to whole ones.
func whole(v float64) int { return int(math.Round(v)) }
