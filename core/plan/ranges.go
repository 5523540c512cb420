package plan

import (
	"math"
	"math/rand/v2"
	"slices"
	"sort"
)

const (
	draws = 100
	// commonShare is the share of the variance of all times that they have in common: a crew
	// that is slow at one task is slow at others. An estimate.
	commonShare = 0.5
	drawSeed    = 7
)

// ranges plans again with times drawn from their ranges, by the winning order, and takes
// the 10th and the 90th of a hundred. The common part goes in equal steps.
func (p *Plan) ranges(rates *[Tasks]Triangle, pause func() bool) bool {
	rng := rand.New(rand.NewPCG(drawSeed, drawSeed))
	var ends, works, hours, shares []float64
	drawn := *p.net
	drawn.jobs = slices.Clone(drawn.jobs)
	r := newRun(&drawn, p.won.crew)
	for i := range draws {
		common := normal((float64(i) + 0.5) / draws)
		minutes := new([Tasks]float64)
		sum, gathered := 0.0, 0.0
		for id := range table {
			z := math.Sqrt(commonShare)*common + math.Sqrt(1-commonShare)*normal(rng.Float64())
			minutes[id] = rates[id].quantile(0.5 * math.Erfc(-z/math.Sqrt2))
			h := p.Season.Left(p.Counts, p.Done, ID(id)) * minutes[id] / 60
			if table[id].Woods {
				h *= p.Season.woods()
			}
			sum += h
			if table[id].Part == Gathering {
				gathered += h
			}
		}
		hours, shares = append(hours, sum), append(shares, gathered/max(sum, done))
		drawn.times(minutes)
		end := r.finish(p.won.rank, p.won.deal, never)
		if !p.misses(r) && end < never {
			ends = append(ends, float64(p.net.clock.day(end-1)+1))
			works = append(works, float64((end-1)/p.net.clock.slots+1))
		}
		if pause != nil && !pause() {
			return false
		}
	}
	if len(ends) == 0 {
		ends, works = []float64{float64(p.Days)}, []float64{float64(p.Working)}
	}
	p.HoursLow, p.HoursHigh = middle(hours)
	p.ShareLow, p.ShareHigh = middle(shares)
	low, high := middle(ends)
	p.Low, p.High = min(whole(low), p.Days), max(whole(high), p.Days)
	low, high = middle(works)
	p.WorkLow, p.WorkHigh = min(whole(low), p.Working), max(whole(high), p.Working)
	return true
}

// misses tells that a run does a task of a season in a later one than the plan does, and counts it.
func (p *Plan) misses(r *run) bool {
	k, missed := &p.net.clock, false
	for i := range p.Jobs {
		o := &p.Jobs[i]
		w := p.net.jobs[o.index].season
		if w == AnyTime || !k.dated {
			continue
		}
		if end := r.end[o.index]; end < 0 || k.span(w, k.day(end)) > k.span(w, o.To) {
			p.Missed[o.Task]++
			missed = true
		}
	}
	return missed
}

// mostMissed is the task that most of the plans of the range miss the season of, and how many.
func (p *Plan) mostMissed() (id ID, n int) {
	for i, k := range p.Missed {
		if k > n {
			id, n = ID(i), k
		}
	}
	return id, n
}

// middle is the 10th and the 90th of a hundred.
func middle(of []float64) (low, high float64) {
	if len(of) == 0 {
		return 0, 0
	}
	sort.Float64s(of)
	return of[len(of)/10], of[len(of)-1-len(of)/10]
}

// quantile is the time that a share of all lies under.
func (t Triangle) quantile(share float64) float64 {
	span := t.High - t.Low
	if span <= 0 {
		return t.Likely
	}
	at := (t.Likely - t.Low) / span
	if share < at {
		return t.Low + math.Sqrt(share*span*(t.Likely-t.Low))
	}
	return t.High - math.Sqrt((1-share)*span*(t.High-t.Likely))
}

// normal is the quantile of the standard normal distribution.
func normal(share float64) float64 { return math.Sqrt2 * math.Erfinv(2*share-1) }

// whole is a float of days rounded to whole ones.
func whole(v float64) int { return int(math.Round(v)) }
