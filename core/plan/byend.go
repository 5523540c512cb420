package plan

import "time"

// lookBack is how many days before the last one a first day is looked for.
const lookBack = 400

// byEnd plans from the latest first day that ends by the season's last one. It is looked
// for with the order that is best without seasons, day by day; where none is found the plan
// has no dates.
func (s Season) byEnd(c Counts, progress Progress, pause func() bool) (Plan, bool) {
	free := s
	free.Days[End] = ""
	p, ok := Make(free, c, progress, "", pause)
	p.Season = s
	last, dated := day(s.Days[End])
	if !ok || !dated || p.State != Made {
		return p, ok
	}
	rates := s.Rates(c, progress)
	for back := p.Days - 1; back <= lookBack; back++ {
		first := last.AddDate(0, 0, -back)
		n := s.newNetwork(c, progress, means(&rates), newClock(&s, first, true))
		r := newRun(n, p.won.crew)
		if end := r.finish(p.won.rank, p.won.deal, never); end < never && n.clock.day(end-1) <= back {
			return Make(s, c, progress, first.Format(time.DateOnly), pause)
		}
		if pause != nil && !pause() {
			return Plan{}, false
		}
	}
	return p, true
}
