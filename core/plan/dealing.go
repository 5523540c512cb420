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

// fewDealings are those that won in large plans.
func fewDealings() []dealing {
	return []dealing{{true, false, noMore}, {true, true, noMore}, {true, true, breakOff}, {true, false, breakOff},
		{false, false, breakOff}}
}

// dealOut gives the hands of one slot out, by rank.
func (r *run) dealOut(slot int) {
	for _, i := range r.got {
		r.leads[i], r.rest[i] = 0, 0
	}
	r.got, r.begun, r.idle = r.got[:0], false, r.crew.all()
	copy(r.free, r.pools)
	for _, i := range r.front {
		if r.idle == 0 {
			break
		}
		j := &r.n.jobs[i]
		if j.takes && r.start[i] < 0 && r.beds == 0 || r.n.clock.opening(slot, j.season) != slot {
			continue
		}
		want := r.need[i]
		if r.deal.mostFirst {
			want = j.most
		}
		if !r.begin(i, want) {
			continue
		}
		r.got = append(r.got, i)
		if r.start[i] < 0 {
			r.start[i], r.begun = slot, true
			if j.takes {
				r.beds--
			}
		}
	}
	if r.deal.mostFirst {
		return
	}
	for _, i := range r.got {
		if r.idle == 0 {
			break
		}
		r.give(i, r.n.jobs[i].most-r.leads[i]-r.rest[i])
	}
}

// begin gives a job its first hands of a slot, a practised one among them where it needs that; it
// reports false where there are fewer than it needs.
func (r *run) begin(i, want int) bool {
	leads, rest := r.count(r.team[i])
	need := r.need[i]
	lent := max(0, need-leads-rest)
	if lent > 0 && (!r.short[i] || leads+rest == 0 || r.idle < need) || r.n.jobs[i].lead && leads == 0 {
		return false
	}
	if r.n.jobs[i].lead {
		r.take(i, lead, 1)
		want--
	}
	r.give(i, want)
	if lent > 0 {
		r.borrow(i, lent)
	}
	return true
}

// give gives a job so many more hands of those it may have, or as many as there are.
func (r *run) give(i, want int) {
	leads, rest := r.count(r.team[i])
	first, more, second := lead, leads, rest
	if r.deal.learnersFirst {
		first, more, second = other, rest, leads
	}
	if r.deal.pace == noMore {
		want = min(want, r.enough(i, want, first, more))
	}
	more = min(more, want)
	r.take(i, first, more)
	r.take(i, !first, min(second, want-more))
}

// enough is how many of the hands wanted at a job do all that is left of it in the slot, the first
// so many of one kind.
func (r *run) enough(i, want int, first kind, more int) int {
	leads, rest := r.leads[i], r.rest[i]
	for n := range want {
		if leads+rest >= r.need[i] && r.crew.rate(leads, rest) >= r.left[i]-done {
			return n
		}
		if (n < more) == (first == lead) {
			leads++
		} else {
			rest++
		}
	}
	return want
}
