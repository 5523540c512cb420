package plan

// job is one task of one boat, or of all of them together.
type job struct {
	task ID
	boat int // counted from 0; 0 where shared
	// shared tells a job of all boats at a time.
	shared bool
	// units are how many are left to do, and slots how long one takes a practised hand for each
	// minute of its time, the way to the woods included. work is both with the time.
	units, slots, work float64
	least, most        int
	lead               bool
	after              []wait
	before             []wait // the jobs that wait for it
	season             Window
	// takes and frees tell the jobs by which a boat comes onto a bed and off it.
	takes, frees bool
	// late is not counted in the end: winter keeping.
	late bool
}

// wait is a job that must be done before or after, and the hours by the clock in between.
type wait struct{ job, hours int }

// network is everything that is left to do, and when it can be worked.
type network struct {
	jobs  []job
	clock clock
	beds  int
	// boats and teams are how many there are; with one team all build every boat.
	boats, teams int
	// topo are the jobs in an order in which each comes after all it waits for.
	topo []int
	// idle is the fewest slots that a wait of so many hours keeps a job from, wherever it begins.
	idle map[int]int
}

// newNetwork is what is left to do of a season's boats. minutes are the times of one unit.
func (s *Season) newNetwork(c Counts, done Progress, minutes *[Tasks]float64, k clock) *network {
	n := &network{clock: k, beds: s.Int(Beds), boats: s.Int(Boats), teams: s.Int(Teams)}
	var links [Tasks][]Link
	for i := range table {
		links[i] = s.links(c, ID(i))
	}
	at := make([][Tasks]int, n.boats)
	for b := range at {
		for i := range table {
			id := ID(i)
			if b > 0 && together(id) {
				at[b][id] = at[0][id]
				continue
			}
			at[b][id] = len(n.jobs)
			n.jobs = append(n.jobs, s.newJob(c, done, id, b))
		}
	}
	for b := range at {
		for i := range table {
			id := ID(i)
			if b > 0 && together(id) {
				continue
			}
			for _, l := range links[id] {
				w := wait{at[b][l.Task], l.Wait}
				if n.jobs[w.job].units == 0 {
					w.hours = 0
				}
				me := &n.jobs[at[b][id]]
				me.after = append(me.after, w)
			}
		}
	}
	n.join()
	n.times(minutes)
	return n
}

func (s *Season) newJob(c Counts, done Progress, id ID, boat int) job {
	t := &table[id]
	j := job{task: id, boat: boat, shared: together(id), units: s.leftOf(c, done, id, boat), slots: perHour / 60.0,
		least: t.Least, most: t.Most, lead: t.Lead, season: t.Season, takes: id == LayBark, frees: id == SetStems,
		late: t.Part == Afterwards}
	if j.shared {
		j.units = s.Left(c, done, id)
	}
	if t.Woods {
		j.slots *= s.woods()
	}
	return j
}

// leftOf is what is left of a task on one of several boats: what is done or at hand goes to
// the first of them.
func (s *Season) leftOf(c Counts, done Progress, id ID, boat int) float64 {
	if int(table[id].Part) < s.Int(From) {
		return 0
	}
	each := c.Units[id]
	return min(each, max(0, float64(boat+1)*each-s.Have[id]-done.Units[id]))
}

// join tells each job what waits for it.
func (n *network) join() {
	n.idle = map[int]int{}
	left := make([]int, len(n.jobs))
	for i := range n.jobs {
		left[i] = len(n.jobs[i].after)
		if left[i] == 0 {
			n.topo = append(n.topo, i)
		}
		for _, w := range n.jobs[i].after {
			before := &n.jobs[w.job].before
			*before = append(*before, wait{i, w.hours})
			if _, known := n.idle[w.hours]; !known {
				n.idle[w.hours] = n.clock.idle(w.hours)
			}
		}
	}
	for at := 0; at < len(n.topo); at++ {
		for _, w := range n.jobs[n.topo[at]].before {
			if left[w.job]--; left[w.job] == 0 {
				n.topo = append(n.topo, w.job)
			}
		}
	}
}

// times sets how long one unit of each task takes, minutes.
func (n *network) times(minutes *[Tasks]float64) {
	for i := range n.jobs {
		j := &n.jobs[i]
		j.work = j.units * j.slots * minutes[j.task]
	}
}
