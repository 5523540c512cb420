package plan

import "math"

// job is one task of one boat, or of all of them together.
type job struct {
	task        ID
	boat        int     // counted from 0; all boats where together
	team        int     // counted from 1; 0 is everyone
	work        float64 // slots of one practised hand, the way to the woods included
	least, most int
	lead        bool
	after       []wait
	before      []int // the jobs that wait for it
	season      Window
	// takes and frees tell the jobs by which a boat comes onto a bed and off it.
	takes, frees bool
	// late is not counted in the end: winter keeping.
	late bool
	// notBefore is the first slot it may be worked in.
	notBefore int
}

// wait is a job that must be done before, and the hours by the clock in between.
type wait struct{ job, hours int }

// network is everything that is left to do, and when it can be worked.
type network struct {
	jobs  []job
	clock clock
	beds  int
	teams int
}

// hands are those who work: how many, and what each does in the time of a practised hand.
// Without anyone practised one learner leads.
type hands struct {
	leads, rest         int
	leadSpeed, restRate float64
	// teams is how many they work in; 0 and 1 are everyone together.
	teams int
}

// teachesMost is how many learners each practised hand teaches without it costing half of
// its own work. An estimate.
const teachesMost = 3

// newHands are so many practised hands and learners.
func newHands(practised, learners int, factor float64) hands {
	h := hands{leads: practised, rest: learners, leadSpeed: 1, restRate: 1 / factor}
	switch {
	case practised == 0 && learners > 0:
		h.leads, h.rest, h.leadSpeed = 1, learners-1, 1/factor
	case learners > teachesMost*practised:
		h.leadSpeed = 0.5
	}
	return h
}

func (h hands) all() int { return h.leads + h.rest }

// rate is the work of so many hands in a slot.
func (h hands) rate(leads, rest int) float64 {
	return float64(leads)*h.leadSpeed + float64(rest)*h.restRate
}

// most is the most work that so many hands of the crew do in a slot.
func (h hands) most(n int) float64 {
	n = min(n, h.all())
	leads := min(n, h.leads)
	if h.leadSpeed < h.restRate {
		leads = n - min(n, h.rest)
	}
	return h.rate(leads, n-leads)
}

// waitHours are hours by the clock of so many days.
func waitHours(days float64) int { return int(math.Round(days * 24)) }

// links are what must be done before a task, for a boat and as the season has it.
func (s *Season) links(c Counts, id ID) []Link {
	out := append([]Link(nil), table[id].After...)
	replace := func(was, is ID) {
		for i := range out {
			if out[i].Task == was {
				out[i].Task = is
			}
		}
	}
	bound := func(was ID, days float64) {
		for i := range out {
			if out[i].Task == was {
				out[i].Wait = waitHours(days)
			}
		}
	}
	switch id {
	case SetStems:
		bound(BendStems, s.Number(StemsDry))
	case DriveRibs:
		bound(BendRibs, s.Number(RibsDry))
	case DriveAgain:
		bound(DriveRibs, s.Number(Settle))
	}
	if s.Int(SeamsLast) == 1 {
		switch id {
		case SetGunwales:
			replace(SewSeams, StakeBark)
		case SewSeams:
			replace(StakeBark, Lace)
		case SetStems:
			out = append(out, Link{SewSeams, 0})
		}
	}
	if c.OnGunwales {
		switch id {
		case LayBark:
			replace(MakeFrame, FitThwarts)
		case FitThwarts:
			replace(SetStems, MakeGunwales)
		case BendRibs:
			replace(FitThwarts, SetStems)
		}
	}
	return out
}

// newNetwork is what is left to do of a season's boats. minutes are the times of one unit.
func (s *Season) newNetwork(c Counts, done Progress, minutes *[Tasks]float64, k clock) *network {
	n := &network{clock: k, beds: s.Int(Beds), teams: s.Int(Teams)}
	boats := s.Int(Boats)
	at := make([][Tasks]int, boats)
	for b := range boats {
		for i := range table {
			id := ID(i)
			if b > 0 && together(id) {
				at[b][id] = at[0][id]
				continue
			}
			at[b][id] = len(n.jobs)
			n.jobs = append(n.jobs, s.newJob(c, done, id, b, minutes[id]))
		}
	}
	for b := range boats {
		for i := range table {
			id := ID(i)
			if b > 0 && together(id) {
				continue
			}
			me := at[b][id]
			for _, l := range s.links(c, id) {
				before := at[b][l.Task]
				w := wait{before, l.Wait}
				if n.jobs[before].work == 0 {
					w.hours = 0
				}
				n.jobs[me].after = append(n.jobs[me].after, w)
				n.jobs[before].before = append(n.jobs[before].before, me)
			}
		}
	}
	return n
}

func (s *Season) newJob(c Counts, done Progress, id ID, boat int, minutes float64) job {
	t := &table[id]
	left := s.Left(c, done, id)
	if !together(id) {
		left = s.leftOf(c, done, id, boat)
	}
	j := job{task: id, boat: boat, team: s.Team(id, boat), work: left * minutes / 60 * perHour, least: t.Least,
		most: t.Most, lead: t.Lead, season: t.Season, takes: id == LayBark, frees: id == SetStems,
		late: t.Part == Afterwards}
	if t.Woods {
		j.work *= s.woods()
	}
	return j
}

// leftOf is what is left of a task on one of several boats: what is done or at hand goes to
// the first of them.
func (s *Season) leftOf(c Counts, done Progress, id ID, boat int) float64 {
	if int(table[id].Part) < s.Int(From) {
		return 0
	}
	each := c.Units[id]
	return min(each, max(0, float64(boat+1)*each-s.Have[id]-done.Units[id]))
}
