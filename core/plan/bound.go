package plan

import "sort"

// reach is what a crew can do at its best, whatever the order: bounds that a plan is measured by.
type reach struct {
	// fastest is by job the work of a slot with as many hands as it can use, after the fewest slots
	// from its end to the end of all; heads are the first slots it may begin in.
	fastest      []float64
	after, heads []int
	// most is the work of a slot by all hands. least is a tail: all work with as much or more after
	// it must be done before that tail begins.
	most  float64
	least int
	// end is a slot that no plan ends before.
	end int
}

// reach works the bounds of a crew out: the longest chain with as many hands to each job as it can
// use, and the work that lies between a first slot and a tail, shared by all hands: of everyone, of
// each team, and of those alone who lead.
func (n *network) reach(crew hands) reach {
	k := len(n.jobs)
	at := make([]int, 2*k)
	out := reach{fastest: make([]float64, k), after: at[:k:k], heads: at[k:], most: crew.most(crew.all())}
	length := func(i int) int {
		if n.jobs[i].work <= done {
			return 0
		}
		return ceil(n.jobs[i].work / out.fastest[i])
	}
	for _, i := range n.topo {
		j := &n.jobs[i]
		out.fastest[i] = crew.of(n.team(j, crew)).most(j.most)
		if n.short(j, crew) {
			out.fastest[i] = crew.most(j.least)
		}
		first := 0
		for _, w := range j.after {
			first = max(first, n.clock.after(out.heads[w.job]+length(w.job)-1, w.hours))
		}
		if j.work > done {
			first = n.clock.opening(first, j.season)
		}
		out.heads[i] = first
		if !j.late {
			out.end = max(out.end, first+length(i))
		}
	}
	for t := k - 1; t >= 0; t-- {
		i := n.topo[t]
		for _, w := range n.jobs[i].before {
			if !n.jobs[w.job].late {
				out.after[i] = max(out.after[i], n.idle[w.hours]+length(w.job)+out.after[w.job])
			}
		}
	}
	if out.end >= never {
		out.end = never
		return out
	}
	out.share(n, crew)
	return out
}

// share raises the end by the work that all must share.
func (b *reach) share(n *network, crew hands) {
	type stretch struct {
		head, after int
		work, led   float64
	}
	var all []stretch
	at := map[[2]int]int{}
	teams := make([]float64, 1+max(1, crew.teams))
	for i := range n.jobs {
		j := &n.jobs[i]
		if j.late || j.work <= done {
			continue
		}
		key := [2]int{b.heads[i], b.after[i]}
		k, known := at[key]
		if !known {
			k = len(all)
			at[key], all = k, append(all, stretch{head: key[0], after: key[1]})
		}
		all[k].work += j.work
		if j.lead {
			// The slots of those who lead: fewest where the others at it are as many as can be.
			all[k].led += j.work / crew.rate(1, min(max(j.most, j.least)-1, crew.rest))
		}
		teams[n.team(j, crew)] += j.work
	}
	sort.Slice(all, func(x, y int) bool { return all[x].after > all[y].after })
	best := 0
	heads := make([]int, 0, len(all))
	for _, s := range all {
		heads = append(heads, s.head)
	}
	sort.Ints(heads)
	for k, head := range heads {
		if k > 0 && head == heads[k-1] {
			continue
		}
		work, led := 0.0, 0.0
		for _, s := range all {
			if s.head < head {
				continue
			}
			work, led = work+s.work, led+s.led
			end := head + s.after + max(ceil(work/b.most), ceil(led/float64(crew.leads)))
			b.end = max(b.end, end)
			if head == 0 && end > best {
				best, b.least = end, s.after
			}
		}
	}
	for team, pace := range n.paces(crew) {
		b.end = max(b.end, ceil(teams[team]/pace))
	}
	b.end = min(b.end, never)
}

// paces is by team the most work of a slot by all who may be at its tasks: everyone, where others lend
// it hands.
func (n *network) paces(crew hands) []float64 {
	out := make([]float64, len(crew.share()))
	for team := range out {
		out[team] = crew.of(team).most(crew.all())
	}
	for i := range n.jobs {
		if n.short(&n.jobs[i], crew) {
			out[n.team(&n.jobs[i], crew)] = crew.most(crew.all())
		}
	}
	return out
}

// work is all there is to do before the end.
func (n *network) work() float64 {
	sum := 0.0
	for i := range n.jobs {
		if !n.jobs[i].late {
			sum += n.jobs[i].work
		}
	}
	return sum
}
