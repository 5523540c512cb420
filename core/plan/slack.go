package plan

// slacks finds for every job the most whole days that it can be held back and the end
// stays, by planning again in the winning order.
func (p *Plan) slacks(pause func() bool) bool {
	r := newRun(p.net, p.won.crew)
	end := r.finish(p.won.rank, p.won.deal, never)
	for i := range p.Jobs {
		o := &p.Jobs[i]
		j := &p.net.jobs[o.index]
		k := &p.net.clock
		holds := func(days int) bool {
			j.notBefore = k.slotAt((o.From+days)*ticksADay + o.Shifts[0].at)
			defer func() { j.notBefore = 0 }()
			return r.finish(p.won.rank, p.won.deal, end+1) <= end
		}
		low, high := 0, 1
		for high <= p.Days && holds(high) {
			low, high = high, 2*high
		}
		for high-low > 1 {
			if mid := (low + high) / 2; holds(mid) {
				low = mid
			} else {
				high = mid
			}
		}
		o.Slack = low
		if pause != nil && !pause() {
			return false
		}
	}
	return true
}
