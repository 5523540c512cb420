package plan

// settle takes what is done off the front at the end of a slot, and puts in what may be worked in
// the next; it reports false where no end can come under the bound any more.
func (r *run) settle(slot, bound int) bool {
	ok, some := true, false
	for _, i := range r.got {
		if r.left[i] <= done && r.end[i] < 0 {
			ok, some = r.complete(i, slot, bound) && ok, true
		}
	}
	if some {
		k := 0
		for _, i := range r.front {
			if r.end[i] < 0 {
				r.front[k] = i
				k++
			}
		}
		r.front = r.front[:k]
	}
	for k := 0; k < len(r.later); k++ {
		i := r.later[k]
		if r.ready[i] > slot+1 {
			continue
		}
		r.later[k] = r.later[len(r.later)-1]
		r.later = r.later[:len(r.later)-1]
		k--
		ok = r.enter(i, slot, bound) && ok
	}
	return ok
}

// complete notes that a job is done with a slot, and lets go what waits for it.
func (r *run) complete(i, slot, bound int) bool {
	j := &r.n.jobs[i]
	r.end[i] = slot
	if j.takes && j.work <= done {
		r.beds--
	}
	if j.frees {
		r.beds++
	}
	r.pending--
	if !j.late {
		r.open--
	}
	ok := true
	for _, w := range j.before {
		r.ready[w.job] = max(r.ready[w.job], r.n.clock.after(slot, w.hours))
		if r.waiting[w.job]--; r.waiting[w.job] == 0 {
			ok = r.release(w.job, slot, bound) && ok
		}
	}
	return ok
}

// release is called when nothing before a job is left to do.
func (r *run) release(i, slot, bound int) bool {
	if j := &r.n.jobs[i]; !j.late && r.ready[i]+ceil(j.work/r.fastest[i])+r.after[i] >= bound {
		return false
	}
	if r.ready[i] > slot+1 {
		r.later = append(r.later, i)
		return true
	}
	return r.enter(i, slot, bound)
}

// enter puts a job that may be worked in the next slot to the front. What has no work takes no slot:
// what comes after it may begin with it.
func (r *run) enter(i, slot, bound int) bool {
	if r.n.jobs[i].work <= done {
		return r.complete(i, max(slot, r.ready[i]-1), bound)
	}
	r.front, r.mixed = append(r.front, i), true
	return true
}

// order sorts the front: where begun jobs go on, they come first, then by rank. It is nearly in order
// already.
func (r *run) order() {
	if !r.mixed && !(r.begun && r.deal.pace == keepOn) {
		return
	}
	r.mixed = false
	f, place := r.front, r.place[:0]
	for _, i := range f {
		at := r.rank[i]
		if r.deal.pace == keepOn && r.start[i] < 0 {
			at += len(r.n.jobs)
		}
		place = append(place, at)
	}
	for a := 1; a < len(f); a++ {
		for b := a; b > 0 && place[b] < place[b-1]; b-- {
			f[b], f[b-1] = f[b-1], f[b]
			place[b], place[b-1] = place[b-1], place[b]
		}
	}
	r.place = place
}
