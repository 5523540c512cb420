package plan

// done is how little work counts as none, slots: hands are added up in doubles.
const done = 1e-9

// stint is what is worked at one job in one slot.
type stint struct{ slot, job, leads, rest int }

// run is a network being worked through by a list rule with one crew. Its slices are kept between runs.
type run struct {
	n    *network
	crew hands
	reach
	// team, need and short are by job: who works at it, the least hands that begin it, and whether
	// the whole team is fewer.
	team, need []int
	short      []bool

	deal dealing
	rank []int // of each job, the lower the sooner

	// By job: what is left, how many jobs before it are not done, the first slot in which it may be
	// worked, its first slot and its last, and its hands in the slot.
	left                       []float64
	waiting, ready, start, end []int
	leads, rest                []int

	front   []int // jobs that may be worked, by rank
	place   []int // where each of them stands, while they are sorted
	later   []int // jobs that wait by the clock alone
	got     []int // the jobs worked in the slot, by rank
	begun   bool  // one of them for the first time
	mixed   bool  // the front is not in order
	open    int   // jobs that the end waits for
	pending int   // all that are not done
	last    int   // the slot after the last one worked at a job that the end waits for
	beds    int
	idle    int
	pools   []pool    // all hands, as they are shared out to the teams
	free    []pool    // those of them that are not dealt yet
	owed    []float64 // what is left to do before the end, by team
	byOwed  []int     // the teams, those first that have the least to do
	moved   bool      // they are not in order
	paces   []float64 // the work of a slot by all who may be at a team's tasks
	early   float64   // what is left of the jobs that reach.least goes by

	// stints are what was done, kept where asked for.
	stints []stint
	keep   bool
	course *course // of a run that this one is compared with
}

func newRun(n *network, crew hands) *run {
	k := len(n.jobs)
	ints, floats := make([]int, 8*k), make([]float64, k)
	cut := func() []int {
		out := ints[:k:k]
		ints = ints[k:]
		return out
	}
	r := &run{n: n, crew: crew, reach: n.reach(crew), team: cut(), need: cut(), short: make([]bool, k), left: floats,
		waiting: cut(), ready: cut(), start: cut(), end: cut(), leads: cut(), rest: cut(), pools: crew.share()}
	r.free, r.owed, r.paces = make([]pool, len(r.pools)), make([]float64, len(r.pools)), n.paces(crew)
	for team := 1; team < len(r.pools); team++ {
		r.byOwed = append(r.byOwed, team)
	}
	for i := range n.jobs {
		r.team[i] = n.team(&n.jobs[i], crew)
		r.need[i] = min(n.jobs[i].least, crew.all())
		r.short[i] = n.short(&n.jobs[i], crew)
	}
	return r
}

// finish works the network through and returns the slot after the last one worked, or never
// where it would not come under the bound, or not within the horizon.
func (r *run) finish(rank []int, deal dealing, bound int) int {
	r.rank, r.deal = rank, deal
	if !r.set(bound) {
		return never
	}
	return r.goOn(0, bound)
}

// goOn works on from a slot.
func (r *run) goOn(slot, bound int) int {
	for r.open > 0 || r.keep && r.pending > 0 {
		if r.open > 0 && (slot >= bound || r.n.clock.day(slot) > horizon || r.hopeless(slot, bound)) {
			return never
		}
		if r.course != nil && slot%r.n.clock.slots == 0 && r.course.meets(r, slot) {
			return r.course.end
		}
		r.order()
		r.dealOut(slot)
		if len(r.got) == 0 {
			if slot = r.next(slot); slot >= never {
				return never
			}
		} else {
			slot += r.work(slot)
		}
		if !r.settle(slot-1, bound) {
			return never
		}
	}
	if r.last >= bound {
		return never
	}
	return r.last
}

// set puts everything back to the start; it reports false where no end can come under the bound.
func (r *run) set(bound int) bool {
	r.beds, r.front, r.later, r.got, r.stints = r.n.beds, r.front[:0], r.later[:0], r.got[:0], r.stints[:0]
	r.open, r.pending, r.last, r.early, r.mixed = 0, len(r.n.jobs), 0, 0, false
	r.moved = true
	for i := range r.owed {
		r.owed[i] = 0
	}
	for i := range r.n.jobs {
		j := &r.n.jobs[i]
		r.left[i], r.waiting[i], r.ready[i], r.start[i], r.end[i] = j.work, len(j.after), 0, -1, -1
		r.leads[i], r.rest[i] = 0, 0
		if !j.late {
			r.open++
			r.owed[r.team[i]] += j.work
			if r.after[i] >= r.least {
				r.early += j.work
			}
		}
	}
	ok := true
	for i := range r.n.jobs {
		if len(r.n.jobs[i].after) == 0 {
			ok = r.release(i, -1, bound) && ok
		}
	}
	return ok
}

// hopeless tells that what is left cannot be done under the bound, by all hands at their best.
func (r *run) hopeless(slot, bound int) bool {
	if left := ceil(r.early / r.most); left > 0 && slot+left+r.least >= bound {
		return true
	}
	if slot%r.n.clock.slots != 0 {
		return false
	}
	for team := 1; team < len(r.owed); team++ {
		if slot+ceil(r.owed[team]/r.paces[team]) >= bound {
			return true
		}
	}
	for _, i := range r.front {
		if !r.n.jobs[i].late && slot+ceil(r.left[i]/r.fastest[i])+r.after[i] >= bound {
			return true
		}
	}
	return false
}
