package plan

import "slices"

// state is where a run stands at the beginning of a day.
type state struct {
	slot                       int
	left, owed                 []float64
	waiting, ready, start, end []int
	front, later               []int
	open, pending, last, beds  int
	early                      float64
}

// course is the states of a run day by day: one that differs from it in a single job goes on from the
// last day that both have in common, and is at its end as soon as it stands where that one stood.
type course struct {
	all   []state
	noted bool // all of them are
	end   int
}

// at is the place of the state at a slot, or of the first after it, and whether there is one at the slot.
func (d *course) at(slot int) (k int, known bool) {
	return slices.BinarySearchFunc(d.all, slot, func(s state, slot int) int { return s.slot - slot })
}

// meets notes a day or, once they are noted, tells that the run stands where the other did.
func (d *course) meets(r *run, slot int) bool {
	if !d.noted {
		d.all = append(d.all, r.state(slot))
		return false
	}
	k, known := d.at(slot)
	return known && r.stands(&d.all[k])
}

func (r *run) state(slot int) state {
	return state{slot, slices.Clone(r.left), slices.Clone(r.owed), slices.Clone(r.waiting), slices.Clone(r.ready),
		slices.Clone(r.start), slices.Clone(r.end), slices.Clone(r.front), slices.Clone(r.later), r.open, r.pending, r.last,
		r.beds, r.early}
}

// stands tells that everything still to come is as it was in a state.
func (r *run) stands(s *state) bool {
	if r.open != s.open || r.beds != s.beds {
		return false
	}
	for i, was := range s.left {
		left := r.left[i]
		if left > was+done || left < was-done || (r.end[i] < 0) != (s.end[i] < 0) {
			return false
		}
		if r.end[i] < 0 && ((r.start[i] < 0) != (s.start[i] < 0) || max(r.ready[i], s.slot) != max(s.ready[i], s.slot)) {
			return false
		}
	}
	return true
}

// heldBack works on from the last day on which a job was not begun, with the job held back until a
// slot, and returns the slot after the last one worked, or never where that is not under the bound.
func (r *run) heldBack(i, begun, until, bound int) int {
	k, known := r.course.at(begun)
	if !known {
		k--
	}
	s := &r.course.all[k]
	copy(r.left, s.left)
	copy(r.owed, s.owed)
	copy(r.waiting, s.waiting)
	copy(r.ready, s.ready)
	copy(r.start, s.start)
	copy(r.end, s.end)
	r.front, r.later = append(r.front[:0], s.front...), append(r.later[:0], s.later...)
	r.open, r.pending, r.last, r.beds, r.early = s.open, s.pending, s.last, s.beds, s.early
	for _, g := range r.got {
		r.leads[g], r.rest[g] = 0, 0
	}
	r.moved = true
	r.got, r.begun, r.mixed = r.got[:0], false, true
	r.ready[i] = max(r.ready[i], until)
	if at := slices.Index(r.front, i); at >= 0 && until > s.slot {
		r.front = slices.Delete(r.front, at, at+1)
		r.later = append(r.later, i)
	}
	return r.goOn(s.slot, bound)
}
