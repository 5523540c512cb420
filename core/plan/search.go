package plan

import "sort"

// found is the best plan of a search: what it was made by, and the slot after its last.
type found struct {
	crew hands
	// practised and learners are how many of the crew it uses.
	practised, learners int
	rank                []int
	deal                dealing
	end                 int
}

// best searches for the earliest end over a crew and every smaller one, so that more hands
// never end later; the plan may leave some with nothing to do. Nothing that does not end before a slot
// is found. o says what is tried. pause is called between runs, and ends the search where it returns false.
func (n *network) best(practised, learners int, factor float64, o *orders, before int,
	pause func() bool) (found, bool) {
	out := found{end: before}
	if !n.tryCrew(practised, learners, factor, o, &out, pause) {
		return found{}, false
	}
	smaller, ok := n.smaller(practised, learners, factor, out.end, pause)
	for k := 0; ok && k < len(smaller) && smaller[k].end < out.end; k++ {
		ok = n.tryCrew(smaller[k].Practised, smaller[k].Learners, factor, o, &out, pause)
	}
	return out, ok
}

// bounded is a crew and a slot that it cannot end before.
type bounded struct {
	Crew
	end int
}

// smaller are the crews smaller than one that may end before a slot, those first that may end first.
func (n *network) smaller(practised, learners int, factor float64, end int, pause func() bool) ([]bounded, bool) {
	var out []bounded
	work := n.work()
	for p := practised; p >= 0; p-- {
		for l := learners; l >= 0; l-- {
			if p+l == 0 || p == practised && l == learners {
				continue
			}
			// The work alone rules most of them out. In teams a crew ends no sooner than all together.
			crew := newHands(p, l, factor)
			if ceil(work/crew.most(p+l)) >= end {
				continue
			}
			if may := n.reach(crew).end; may < end {
				out = append(out, bounded{Crew{p, l}, may})
			}
			if pause != nil && !pause() {
				return nil, false
			}
		}
	}
	sort.SliceStable(out, func(a, b int) bool { return out[a].end < out[b].end })
	return out, true
}

// tryCrew tries a crew in as many teams as there are. One team works as any number would, too: what
// several can do, all together can, so that teams end no sooner.
func (n *network) tryCrew(practised, learners int, factor float64, o *orders, out *found, pause func() bool) bool {
	from, to := n.teams, n.teams
	if n.teams < 2 {
		from, to = 1, 1
		if !o.quick {
			to = n.boats
		}
	}
	for teams := from; teams <= to; teams++ {
		crew := newHands(practised, learners, factor).in(teams)
		if !crew.enough() {
			continue
		}
		if !n.tryAll(crew, o, out, pause) {
			return false
		}
		if out.crew == crew {
			out.practised, out.learners = practised, learners
		}
	}
	return true
}

// tryAll tries every order and dealing for one crew, and takes what ends sooner than out.
func (n *network) tryAll(crew hands, o *orders, out *found, pause func() bool) bool {
	r := newRun(n, crew)
	if r.reach.end >= out.end {
		return true
	}
	for _, rank := range o.of(&r.reach) {
		for _, deal := range o.ways {
			if end := r.finish(rank, deal, out.end); end < out.end {
				*out = found{crew: crew, rank: rank, deal: deal, end: end}
			}
			if pause != nil && !pause() {
				return false
			}
		}
	}
	return true
}
