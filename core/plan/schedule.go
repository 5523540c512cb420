package plan

// dealing is one way to deal hands to jobs in a slot.
type dealing struct {
	// mostFirst gives the job highest in rank all the hands it can use before the next has any;
	// otherwise each first has the least it needs.
	mostFirst bool
	// learnersFirst gives the highest in rank learners before practised hands.
	learnersFirst bool
	pace          pace
}

// pace is what becomes of a job that another of higher rank comes upon.
type pace int

// The paces: a job begun goes first until it is done; rank alone decides; or that, and no
// job has more hands than its last slot has work for.
const (
	keepOn pace = iota
	breakOff
	noMore
	paces
)

// dealings lists all ways.
func dealings() []dealing {
	var out []dealing
	for _, most := range []bool{false, true} {
		for _, learners := range []bool{false, true} {
			for p := range paces {
				out = append(out, dealing{most, learners, p})
			}
		}
	}
	return out
}

// done is how little work counts as none, slots: hands are added up in doubles.
const done = 1e-9

// stint is what is worked at one job in one slot.
type stint struct{ slot, job, leads, rest int }

// run is a network being worked through by a list rule. Its slices are kept between runs.
type run struct {
	n    *network
	crew hands
	deal dealing
	rank []float64 // of each job, the higher the sooner

	left    []float64
	waiting []int // jobs before that are not done
	ready   []int // the first slot in which it may be worked
	start   []int
	end     []int
	front   []int // jobs with nothing left before them, not done
	leads   []int // dealt this slot, by place in front
	rest    []int
	pools   []pool    // all hands, as they are shared out to the teams
	free    []pool    // those of them that are not dealt yet
	may     []int     // how many may be at a team's job, by team
	owed    []float64 // what is left to do, by team
	beds    int
	// stints are what was done, kept where asked for.
	stints []stint
	keep   bool
}

func newRun(n *network, crew hands) *run {
	k := len(n.jobs)
	r := &run{n: n, crew: crew, left: make([]float64, k), waiting: make([]int, k), ready: make([]int, k),
		start: make([]int, k), end: make([]int, k), pools: crew.share()}
	for team := range r.pools {
		r.may = append(r.may, crew.of(team).all())
	}
	return r
}

// finish works the network through and returns the slot after the last one worked, or never
// where it would not come under the bound, or not within the horizon.
func (r *run) finish(rank []float64, deal dealing, bound int) int {
	r.rank, r.deal, r.beds, r.front, r.stints = rank, deal, r.n.beds, r.front[:0], r.stints[:0]
	r.owed = append(r.owed[:0], make([]float64, len(r.pools))...)
	open, end := 0, 0
	for i := range r.n.jobs {
		j := &r.n.jobs[i]
		r.left[i], r.waiting[i], r.ready[i], r.start[i], r.end[i] = j.work, len(j.after), j.notBefore, -1, -1
		r.owed[j.team] += j.work
		if !j.late {
			open++
		}
	}
	for i := range r.n.jobs {
		if r.waiting[i] == 0 {
			r.front = append(r.front, i)
		}
	}
	r.settle(-1, &open)
	for slot := 0; open > 0; {
		if slot >= bound || r.n.clock.day(slot) > horizon {
			return never
		}
		r.order()
		worked, next := r.dealOut(slot)
		if !worked {
			if next >= never {
				return never
			}
			slot = next
			r.settle(slot-1, &open)
			continue
		}
		end = slot + 1
		r.settle(slot, &open)
		slot++
	}
	return end
}

// settle takes what is done off the front and puts in what waited for it, at the end of a
// slot. What has no work is done as soon as it is ready.
func (r *run) settle(slot int, open *int) {
	for again := true; again; {
		again = false
		for f := 0; f < len(r.front); f++ {
			i := r.front[f]
			j := &r.n.jobs[i]
			if r.left[i] > done || j.work <= done && r.ready[i] > slot+1 {
				continue
			}
			r.front[f] = r.front[len(r.front)-1]
			r.front = r.front[:len(r.front)-1]
			f--
			again = true
			r.end[i] = slot
			if j.work <= done {
				// It took no slot: what comes after it may begin with it.
				r.end[i] = max(slot, r.ready[i]-1)
			}
			if j.takes && j.work <= done {
				r.beds--
			}
			if j.frees {
				r.beds++
			}
			if !j.late {
				*open--
			}
			for _, k := range j.before {
				r.waiting[k]--
				for _, w := range r.n.jobs[k].after {
					if w.job == i {
						r.ready[k] = max(r.ready[k], r.n.clock.after(r.end[i], w.hours))
					}
				}
				if r.waiting[k] == 0 {
					r.front = append(r.front, k)
				}
			}
		}
	}
}

// order sorts the front: where begun jobs go on, they come first, then by rank. It is nearly
// in order already.
func (r *run) order() {
	for a := 1; a < len(r.front); a++ {
		for b := a; b > 0 && r.sooner(r.front[b], r.front[b-1]); b-- {
			r.front[b], r.front[b-1] = r.front[b-1], r.front[b]
		}
	}
}

func (r *run) sooner(x, y int) bool {
	if r.deal.pace == keepOn {
		if a, b := r.start[x] >= 0, r.start[y] >= 0; a != b {
			return a
		}
	}
	if r.rank[x] != r.rank[y] {
		return r.rank[x] > r.rank[y]
	}
	return x < y
}

// dealOut gives the hands of one slot out and does the work. Where there is none to do it
// says in which slot there may be.
func (r *run) dealOut(slot int) (worked bool, next int) {
	next = never
	r.free = append(r.free[:0], r.pools...)
	r.leads, r.rest = append(r.leads[:0], make([]int, len(r.front))...), append(r.rest[:0], make([]int, len(r.front))...)
	give := func(f, want int) {
		i := r.front[f]
		j := &r.n.jobs[i]
		has := r.leads[f] + r.rest[f]
		need := min(j.least, r.may[j.team])
		leads, others := r.count(j.team)
		want = min(want, j.most) - has
		if has == 0 && (want < need || leads+others < need || j.lead && leads == 0) {
			return
		}
		giveLead := func() {
			r.take(j.team, lead)
			leads--
			r.leads[f]++
		}
		if has == 0 && j.lead {
			giveLead()
			want--
		}
		for ; want > 0 && leads+others > 0; want-- {
			if r.deal.pace == noMore && r.leads[f]+r.rest[f] >= need &&
				r.crew.rate(r.leads[f], r.rest[f]) >= r.left[i]-done {
				return
			}
			if others > 0 && (r.deal.learnersFirst || leads == 0) {
				r.take(j.team, rest)
				others--
				r.rest[f]++
			} else {
				giveLead()
			}
		}
	}
	each := func(want func(j *job) int) {
		for f, i := range r.front {
			j := &r.n.jobs[i]
			if j.work <= done || r.ready[i] > slot || j.takes && r.start[i] < 0 && r.beds == 0 ||
				r.n.clock.opening(slot, j.season) != slot {
				continue
			}
			was := r.leads[f] + r.rest[f]
			give(f, want(j))
			if was == 0 && r.leads[f] > 0 || was == 0 && r.rest[f] > 0 {
				if j.takes && r.start[i] < 0 {
					r.beds--
				}
				if r.start[i] < 0 {
					r.start[i] = slot
				}
			}
		}
	}
	if !r.deal.mostFirst {
		each(func(j *job) int { return min(j.least, r.may[j.team]) })
	}
	each(func(j *job) int { return j.most })
	for f, i := range r.front {
		if r.leads[f]+r.rest[f] == 0 {
			j := &r.n.jobs[i]
			if at := r.n.clock.opening(max(slot, r.ready[i]), j.season); at > slot {
				next = min(next, at)
			}
			continue
		}
		worked = true
		did := r.crew.rate(r.leads[f], r.rest[f])
		r.left[i] -= did
		r.owed[r.n.jobs[i].team] -= did
		if r.keep {
			r.stints = append(r.stints, stint{slot, i, r.leads[f], r.rest[f]})
		}
	}
	return worked, next
}
