package plan

import (
	"math/rand/v2"
	"sort"
)

const (
	// shaken is how many orders are tried besides the two ranks, each the first with its
	// ranks changed at random by so much.
	shaken    = 24
	fewShakes = 4
	shakenBy  = 0.6
	orderSeed = 20
	// lag is how far a boat is put behind the one before, as a share of the longest chain. Of 0.05, 0.1,
	// 0.2, 0.4 and 1 the first was the best in eight of nine plans of 3 to 12 boats.
	lag = 0.05
	// Of a plan with more jobs than a boat has, fewer shaken orders are tried, by the square of how many
	// more; of one with many none, and few dealings. It goes by the jobs alone: neither a fast machine nor
	// other hands are to try more, or more hands could end later.
	aBoat, many = int(Tasks), 150
)

// orders are the ranks and dealings that a search tries for each crew.
type orders struct {
	n         *network
	following []float64   // of one boat: what waits for each job
	shakes    [][]float64 // factors, by job
	ways      []dealing
	quick     bool // where many plans are compared
}

// few are those that are tried where many plans are compared.
func (n *network) few() *orders {
	o := n.orders(fewShakes)
	o.quick = true
	if len(n.jobs) > many {
		o.ways = o.ways[:2]
	}
	return o
}

// orders are those of a network: by the longest chain still to come, by all the work still to
// come, and shaken ones.
func (n *network) orders(shakes int) *orders {
	o := &orders{n: n, ways: dealings()}
	if n.boats <= 1 {
		o.following = n.following()
	}
	if len(n.jobs) > many {
		shakes, o.ways = 0, fewDealings()
	} else {
		shakes = shakes * aBoat * aBoat / max(aBoat*aBoat, len(n.jobs)*len(n.jobs))
	}
	r := rand.New(rand.NewPCG(orderSeed, orderSeed))
	for range shakes {
		s := make([]float64, len(n.jobs))
		for i := range s {
			s[i] = 1 + shakenBy*(r.Float64()-0.5)
		}
		o.shakes = append(o.shakes, s)
	}
	return o
}

// of are the ranks for a crew. Several boats also try the chain with its waits in full, since a team
// whose hands are few loses more by a wait that begins late, and each boat somewhat behind the one before,
// so that those who lead do not have to be at all of them at a time.
func (o *orders) of(b *reach) [][]int {
	tail := o.n.tails(b, o.n.clock.worked())
	out := [][]int{o.n.ranked(tail)}
	if o.n.boats > 1 {
		out = append(out, o.n.ranked(o.n.tails(b, 1)), o.n.ranked(o.n.behind(tail)))
	} else {
		out = append(out, o.n.ranked(o.following))
	}
	for _, factors := range o.shakes {
		s := make([]float64, len(tail))
		for i, v := range tail {
			s[i] = v * factors[i]
		}
		out = append(out, o.n.ranked(s))
	}
	return out
}

// ranked is by job its place where those that matter most come first; those that the end does not
// wait for come last.
func (n *network) ranked(by []float64) []int {
	all := make([]int, len(by))
	for i := range all {
		all[i] = i
	}
	sort.SliceStable(all, func(a, b int) bool {
		x, y := all[a], all[b]
		if n.jobs[x].late != n.jobs[y].late {
			return n.jobs[y].late
		}
		return by[x] > by[y]
	})
	out := make([]int, len(by))
	for place, i := range all {
		out[i] = place
	}
	return out
}

// behind puts each boat a share of the longest chain behind the one before it.
func (n *network) behind(tail []float64) []float64 {
	longest := 0.0
	for _, v := range tail {
		longest = max(longest, v)
	}
	out := make([]float64, len(tail))
	for i := range tail {
		out[i] = tail[i] - lag*longest*float64(n.jobs[i].boat)
	}
	return out
}

// tails is the longest chain from each job to the end, slots: the work at most hands and a share of
// the waits. Of a wait by the clock only the share that is worked keeps hands from the job.
func (n *network) tails(b *reach, share float64) []float64 {
	out := make([]float64, len(n.jobs))
	for t := len(n.topo) - 1; t >= 0; t-- {
		i := n.topo[t]
		longest := 0.0
		for _, w := range n.jobs[i].before {
			longest = max(longest, out[w.job]+float64(w.hours*perHour)*share)
		}
		out[i] = longest + n.jobs[i].work/b.fastest[i]
	}
	return out
}

// following is all the work that waits for each job, its own included.
func (n *network) following() []float64 {
	out := make([]float64, len(n.jobs))
	seen := make([]int, len(n.jobs))
	var add func(k, of int)
	add = func(k, of int) {
		if seen[k] == of+1 {
			return
		}
		seen[k] = of + 1
		out[of] += n.jobs[k].work
		for _, w := range n.jobs[k].before {
			add(w.job, of)
		}
	}
	for i := range n.jobs {
		add(i, i)
	}
	return out
}
