package plan

import (
	"math"
	"math/rand/v2"
)

const (
	// shaken is how many orders are tried besides the two ranks, each the first with its
	// ranks changed at random by so much.
	shaken    = 24
	shakenBy  = 0.6
	orderSeed = 20
)

// found is the best plan of a search: what it was made by, and the slot after its last.
type found struct {
	crew hands
	// practised and learners are how many of the crew it uses.
	practised, learners int
	rank                []float64
	deal                dealing
	end                 int
}

// ranks are the orders tried: by the longest chain still to come, by all the work still to
// come, and shaken ones. Several teams also try the chain with its waits in full: a team whose
// hands are few loses more by a wait that begins late.
func (n *network) ranks(crew hands, shakes int) [][]float64 {
	tail := n.tails(crew, n.clock.worked())
	out := [][]float64{tail, n.following()}
	if n.teams > 1 {
		out = append(out, n.tails(crew, 1))
	}
	r := rand.New(rand.NewPCG(orderSeed, orderSeed))
	for range shakes {
		s := make([]float64, len(tail))
		for i, v := range tail {
			s[i] = v * (1 + shakenBy*(r.Float64()-0.5))
		}
		out = append(out, s)
	}
	return out
}

// tails is the longest chain from each job to the end, slots: the work at most hands and a share of
// the waits. Of a wait by the clock only the share that is worked keeps hands from the job.
func (n *network) tails(crew hands, share float64) []float64 {
	out := make([]float64, len(n.jobs))
	known := make([]bool, len(n.jobs))
	var tail func(i int) float64
	tail = func(i int) float64 {
		if known[i] {
			return out[i]
		}
		j := &n.jobs[i]
		longest := 0.0
		for _, k := range j.before {
			for _, w := range n.jobs[k].after {
				if w.job == i {
					longest = max(longest, tail(k)+float64(w.hours*perHour)*share)
				}
			}
		}
		out[i], known[i] = longest+n.least(j, crew), true
		return out[i]
	}
	for i := range n.jobs {
		tail(i)
	}
	return out
}

// least is the shortest time a job takes a crew, slots.
func (n *network) least(j *job, crew hands) float64 {
	if j.work <= done {
		return 0
	}
	return j.work / crew.of(j.team).most(j.most)
}

// following is all the work that waits for each job, its own included.
func (n *network) following() []float64 {
	out := make([]float64, len(n.jobs))
	for i := range n.jobs {
		seen := make([]bool, len(n.jobs))
		var add func(k int)
		add = func(k int) {
			if seen[k] {
				return
			}
			seen[k] = true
			out[i] += n.jobs[k].work
			for _, b := range n.jobs[k].before {
				add(b)
			}
		}
		add(i)
	}
	return out
}

// bound is a slot no plan of the crew ends before: the longest chain with as many hands to
// each job as it can use, and all the work shared by everyone, a team's by all who may be at it.
func (n *network) bound(crew hands) int {
	end, work := 0, make([]float64, 1+crew.teams) // by team
	first := make([]int, len(n.jobs))
	seen := make([]bool, len(n.jobs))
	var ends func(i int) int
	ends = func(i int) int {
		if seen[i] {
			return first[i]
		}
		j := &n.jobs[i]
		at := j.notBefore
		for _, w := range j.after {
			at = max(at, n.clock.after(ends(w.job), w.hours))
		}
		last := at - 1
		if j.work > done {
			at = n.clock.opening(at, j.season)
			last = at + int(math.Ceil(n.least(j, crew)-1e-6)) - 1
		}
		first[i], seen[i] = last, true
		return last
	}
	for i := range n.jobs {
		if last := ends(i); !n.jobs[i].late {
			end = max(end, last+1)
			work[0] += n.jobs[i].work
			if team := n.jobs[i].team; team > 0 {
				work[team] += n.jobs[i].work
			}
		}
	}
	for team, w := range work {
		if all := crew.of(team); all.all() > 0 {
			end = max(end, int(math.Ceil(w/all.most(all.all())-1e-6)))
		}
	}
	return min(end, never)
}

// best searches for the earliest end over a crew and every smaller one, so that more hands
// never end later; the plan may leave some with nothing to do. pause is called between runs,
// and ends the search where it returns false: nothing is found then.
func (n *network) best(practised, learners int, factor float64, shakes int, pause func() bool) (found, bool) {
	out := found{end: never}
	for p := practised; p >= 0; p-- {
		for l := learners; l >= 0; l-- {
			if p+l == 0 {
				continue
			}
			crew := newHands(p, l, factor).in(n.teams)
			if !crew.enough() || n.bound(crew) >= out.end {
				continue
			}
			if !n.tryAll(crew, shakes, &out, pause) {
				return found{}, false
			}
			if out.crew == crew {
				out.practised, out.learners = p, l
			}
		}
	}
	return out, true
}

// tryAll tries every order and dealing for one crew, and takes what ends sooner than out.
func (n *network) tryAll(crew hands, shakes int, out *found, pause func() bool) bool {
	r := newRun(n, crew)
	ways := dealings()
	for _, rank := range n.ranks(crew, shakes) {
		for _, deal := range ways {
			if end := r.finish(rank, deal, out.end); end < out.end {
				*out = found{crew: crew, rank: rank, deal: deal, end: end}
			}
			if pause != nil && !pause() {
				return false
			}
		}
	}
	return true
}
