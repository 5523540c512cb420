package plan

// shortest finds the day on which the most hours of hands are wanted beyond those there.
func (p *Plan) shortest(r *run) {
	k := &p.net.clock
	wanted := p.wanted(r)
	there := float64(k.slots*p.won.crew.all()) / perHour
	for d, w := range wanted {
		if over := w - there; over > p.ShortHours+done {
			p.Short, p.ShortHours = d, over
		}
	}
}

// wanted is by day the hours of hands that the jobs ready on it could use.
func (p *Plan) wanted(r *run) []float64 {
	k := &p.net.clock
	out := make([]float64, p.Days)
	for i := range p.net.jobs {
		j := &p.net.jobs[i]
		if j.work <= done || j.late {
			continue
		}
		// A job wants hands from when it is ready until it is done, and no more work than it has.
		left := j.work
		for slot := r.ready[i]; slot <= r.end[i] && left > done; slot++ {
			if k.opening(slot, j.season) != slot {
				continue
			}
			if d := k.day(slot); d < len(out) {
				out[d] += float64(j.most) / perHour
			}
			left -= float64(j.most) * p.won.crew.restOr()
		}
	}
	return out
}

// Wanted is by day the hours of hands that could be used.
func (p *Plan) Wanted() []float64 { return p.wanted(p.record()) }

// There is how many hours the hands used have on a day of the plan.
func (p *Plan) There(d int) float64 {
	if d%daysOfWeek >= p.net.clock.days {
		return 0
	}
	return float64(p.net.clock.slots*p.won.crew.all()) / perHour
}
