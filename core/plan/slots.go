package plan

import "math"

// ceil is how many slots a stretch of work takes, what is left by rounding not counted.
func ceil(slots float64) int { return int(math.Ceil(slots - 1e-6)) }

// work does the work of a slot, and of those after it for which the hands would be dealt out as
// they are; it returns how many.
func (r *run) work(slot int) int {
	slots := r.alike(slot)
	for _, i := range r.got {
		did := min(r.left[i], r.crew.rate(r.leads[i], r.rest[i])*float64(slots))
		r.left[i] -= did
		if j := &r.n.jobs[i]; !j.late {
			r.last = slot + slots
			r.owed[r.team[i]] -= did
			r.moved = r.moved || r.team[i] > 0
			if r.after[i] >= r.least {
				r.early -= did
			}
		}
	}
	if r.keep {
		for k := range slots {
			for _, i := range r.got {
				r.stints = append(r.stints, stint{slot + k, i, r.leads[i], r.rest[i]})
			}
		}
	}
	return slots
}

// alike is for how many slots from one on the hands would be dealt out as they are: until a job
// is done or may be begun, or the day is over.
func (r *run) alike(slot int) int {
	if r.begun {
		return 1
	}
	most := r.n.clock.slots - slot%r.n.clock.slots
	for _, i := range r.later {
		most = min(most, r.ready[i]-slot)
	}
	shared, own := false, false
	for _, i := range r.got {
		shared, own = shared || r.team[i] == 0, own || r.team[i] > 0
		slots := ceil(r.left[i] / r.crew.rate(r.leads[i], r.rest[i]))
		if r.deal.pace == noMore {
			slots-- // its last may want fewer
		}
		if most = min(most, slots); most <= 1 {
			return 1
		}
	}
	if shared && own {
		return 1 // whose hands are at what is shared goes by what each team has left
	}
	return most
}

// next is the next slot in which there may be work, where there is none in this one.
func (r *run) next(slot int) int {
	at := never
	for _, i := range r.front {
		if opens := r.n.clock.opening(slot, r.n.jobs[i].season); opens > slot {
			at = min(at, opens)
		}
	}
	for _, i := range r.later {
		at = min(at, max(slot+1, r.ready[i]))
	}
	return at
}
