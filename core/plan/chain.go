package plan

import "sort"

// chain walks back from the job that ended last by what held each start.
func (p *Plan) chain(r *run) {
	at := map[int]int{}
	last := -1
	for i := range p.Jobs {
		o := &p.Jobs[i]
		at[o.index] = i
		if j := &p.net.jobs[o.index]; !j.late && (last < 0 || o.end > p.Jobs[last].end) {
			last = i
		}
	}
	seen := map[int]bool{}
	for i := last; i >= 0 && !seen[i]; {
		seen[i] = true
		p.Jobs[i].OnChain = true
		before, by := p.holds(r, p.Jobs[i].index)
		p.Chain = append(p.Chain, Held{i, by})
		next, ok := at[before]
		if before < 0 || !ok {
			break
		}
		i = next
	}
	for a, b := 0, len(p.Chain)-1; a < b; a, b = a+1, b-1 {
		p.Chain[a], p.Chain[b] = p.Chain[b], p.Chain[a]
	}
	p.sort()
}

// holds says what kept a job from starting sooner, and the job that did, or -1.
func (p *Plan) holds(r *run, i int) (before int, by Cause) {
	j := &p.net.jobs[i]
	k := &p.net.clock
	start := r.start[i]
	if start == 0 {
		return -1, FromTheFirst
	}
	latest, waited := -1, 0
	for _, w := range j.after {
		if p.net.jobs[w.job].work <= done {
			continue
		}
		if latest < 0 || k.after(r.end[w.job], w.hours) > k.after(r.end[latest], waited) {
			latest, waited = w.job, w.hours
		}
	}
	ready := 0
	if latest >= 0 {
		ready = k.after(r.end[latest], waited)
	}
	if opens := k.opening(ready, j.season); opens == start && opens > ready {
		return -1, BySeason
	}
	if latest >= 0 && ready >= start {
		if ready > r.end[latest]+1 {
			return latest, ByWait
		}
		return latest, ByOrder
	}
	// The hands were elsewhere: at the job with most of them in the slot before, of those that may
	// have had this team's.
	most, had := -1, 0
	for _, s := range r.stints {
		if s.slot == start-1 && s.leads+s.rest > had && s.job != i &&
			!p.net.jobs[s.job].late && (r.short[i] || r.short[s.job] || p.won.crew.mingle(r.team[i], r.team[s.job])) {
			most, had = s.job, s.leads+s.rest
		}
	}
	if most < 0 {
		return latest, ByOrder
	}
	return most, ByHands
}

// sort puts the jobs in the order in which they begin, and keeps the chain's places.
func (p *Plan) sort() {
	places := make([]int, len(p.Jobs))
	for i := range places {
		places[i] = i
	}
	sort.SliceStable(places, func(a, b int) bool { return p.Jobs[places[a]].start < p.Jobs[places[b]].start })
	jobs, to := make([]Job, len(places)), make([]int, len(places))
	for n, i := range places {
		jobs[n], to[i] = p.Jobs[i], n
	}
	p.Jobs = jobs
	for i := range p.Chain {
		p.Chain[i].Job = to[p.Chain[i].Job]
	}
}

// HandsDecide tells that so many starts were held by hands that no order of tasks decides
// the end: more than half of the longest chain.
func (p *Plan) HandsDecide() bool {
	n := 0
	for _, h := range p.Chain {
		if h.By == ByHands {
			n++
		}
	}
	return 2*n > len(p.Chain)
}

// WaitAfter is how many days the longest wait after a job takes, by the clock.
func (p *Plan) WaitAfter(i int) float64 {
	most := 0
	index := p.Jobs[i].index
	for _, w := range p.net.jobs[index].before {
		if j := &p.net.jobs[w.job]; !j.late && j.work > done {
			most = max(most, w.hours)
		}
	}
	return float64(most) / 24
}
