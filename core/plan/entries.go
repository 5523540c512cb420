package plan

import "slices"

// Entry is a line of the list of days: what is done of a job on a day, and what to beware of.
type Entry struct {
	Day   int
	Job   *Job
	Shift *Shift
	// Begins tells that what is to beware of begins at this entry. It holds until the day Until, whether
	// it begins here or began before.
	Begins bool
	Until  int
}

// Beware is what is to beware of at an entry, empty where nothing is.
func (e *Entry) Beware() string { return table[e.Job.Task].Spoils }

// Said is how often it is said in the list of days.
func (e *Entry) Said() Said { return table[e.Job.Task].Said }

// Entries lists what is done on each day. What is to beware of at a boat begins anew after a working day
// without it, and on every day where it is said daily.
func (p *Plan) Entries() []Entry {
	var out []Entry
	for d := range p.Through() {
		for i := range p.Jobs {
			j := &p.Jobs[i]
			for k := range j.Shifts {
				if j.Shifts[k].Day == d {
					out = append(out, Entry{Day: d, Job: j, Shift: &j.Shifts[k], Until: d})
				}
			}
		}
	}
	type key struct {
		text string
		boat int
	}
	runs := map[key][]int{}
	end := func(run []int) {
		for _, i := range run {
			out[i].Until = out[run[len(run)-1]].Day
		}
	}
	for i := range out {
		e := &out[i]
		if e.Beware() == "" {
			continue
		}
		at := key{e.Beware(), e.Job.Boat}
		run := runs[at]
		last := -1
		if n := len(run); n > 0 {
			last = out[run[n-1]].Day
		}
		if last < 0 || last < e.Day && (e.Said() == Daily || p.worksBetween(last, e.Day)) {
			end(run)
			e.Begins, run = true, nil
		}
		runs[at] = append(run, i)
	}
	for _, run := range runs {
		end(run)
	}
	return out
}

// worksBetween tells whether a day on which the crew works lies between two.
func (p *Plan) worksBetween(a, b int) bool {
	for d := a + 1; d < b; d++ {
		if d%daysOfWeek < p.Season.Int(DaysAWeek) {
			return true
		}
	}
	return false
}

// Still is what began at entries before one and holds on its day: of entries with the same words the one
// that holds the longest.
func Still(all []Entry, at int) []Entry {
	var out []Entry
	for _, e := range all[:at] {
		if !e.Begins || e.Until < all[at].Day {
			continue
		}
		k := slices.IndexFunc(out, func(o Entry) bool { return o.Beware() == e.Beware() })
		switch {
		case k < 0:
			out = append(out, e)
		case e.Until > out[k].Until:
			out[k] = e
		}
	}
	return out
}
