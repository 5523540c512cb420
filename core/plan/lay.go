package plan

// record runs the best plan once more and notes who did what.
func (p *Plan) record() *run {
	r := newRun(p.net, p.won.crew)
	r.keep = true
	end := r.finish(p.won.rank, p.won.deal, never)
	p.Days, p.Working = p.net.clock.day(end-1)+1, (end-1)/p.net.clock.slots+1
	return r
}

// lay makes the jobs with their days out of what a run noted.
func (p *Plan) lay(r *run) {
	k := &p.net.clock
	at := make([]int, len(p.net.jobs))
	for i := range at {
		at[i] = -1
	}
	did := make([]float64, len(p.net.jobs))
	for _, h := range r.stints {
		j := &p.net.jobs[h.job]
		if at[h.job] < 0 {
			at[h.job] = len(p.Jobs)
			p.Jobs = append(p.Jobs, Job{Task: j.task, Boat: j.boat, From: k.day(h.slot), start: r.start[h.job],
				end: r.end[h.job], index: h.job})
		}
		o := &p.Jobs[at[h.job]]
		d := k.day(h.slot)
		if n := len(o.Shifts); n == 0 || o.Shifts[n-1].Day != d {
			before := p.units(j, did[h.job]/j.work)
			o.Shifts = append(o.Shifts, Shift{Day: d, Done: before, at: h.slot % k.slots})
		}
		sh := &o.Shifts[len(o.Shifts)-1]
		lead, rest := p.named(h)
		sh.Practised, sh.Others = max(sh.Practised, lead), max(sh.Others, rest)
		sh.Hours += float64(h.leads+h.rest) / perHour
		if p.Season.Team(j.task, j.boat) > 0 {
			sh.Lent = max(sh.Lent, h.leads+h.rest-p.won.crew.of(r.team[h.job]).all())
		}
		sh.Borrowed = max(sh.Borrowed, j.least-p.won.crew.all())
		did[h.job] = min(j.work, did[h.job]+p.won.crew.rate(h.leads, h.rest))
		sh.After = p.units(j, did[h.job]/j.work)
		o.To = d
		if !j.late {
			p.Hours += float64(h.leads+h.rest) / perHour
		}
	}
	p.shortest(r)
}

// named tells how many of a stint's hands are practised: a crew without any is led by a learner.
func (p *Plan) named(h stint) (practised, others int) {
	if p.won.practised == 0 {
		return 0, h.leads + h.rest
	}
	return h.leads, h.rest
}

// units is how many units of a job's task are done at a share of what was left.
func (p *Plan) units(j *job, share float64) float64 {
	var left, all float64
	if together(j.task) {
		left, all = p.Season.Left(p.Counts, p.Done, j.task), p.Season.Asked(p.Counts, j.task)
	} else {
		left, all = p.Season.leftOf(p.Counts, p.Done, j.task, j.boat), p.Counts.Units[j.task]
	}
	return all - left*(1-share)
}
