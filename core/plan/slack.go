package plan

// slacks finds for every job the most whole days that it can be held back and the end
// stays, by planning again in the winning order.
func (p *Plan) slacks(pause func() bool) bool {
	r := newRun(p.net, p.won.crew)
	r.course = &course{}
	end := r.finish(p.won.rank, p.won.deal, never)
	r.course.end, r.course.noted = end, true
	k := &p.net.clock
	for i := range p.Jobs {
		o := &p.Jobs[i]
		j := &p.net.jobs[o.index]
		if j.late {
			continue
		}
		until := func(days int) int { return k.slotAt((o.From+days)*ticksADay + o.Shifts[0].at) }
		on := true
		holds := func(days int) bool {
			held := r.heldBack(o.index, o.start, until(days), end+1)
			on = on && (pause == nil || pause())
			return held <= end
		}
		// What it can be at the most, by the shortest way from it to the end.
		most := 0
		for until(most+1)+ceil(j.work/r.fastest[o.index])+r.after[o.index] <= end {
			most++
		}
		low, high := 0, most+1
		if most > 0 && holds(most) {
			low = most
		}
		for step := 1; low+step < high && on; step *= 2 {
			if !holds(low + step) {
				high = low + step
				break
			}
			low += step
		}
		for high-low > 1 && on {
			if mid := (low + high) / 2; holds(mid) {
				low = mid
			} else {
				high = mid
			}
		}
		o.Slack = low
		if !on {
			return false
		}
	}
	return true
}
