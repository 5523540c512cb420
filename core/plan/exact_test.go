package plan

import (
	"fmt"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
)

// exact is the earliest end of a small network: breadth first over what is left of every
// job, all ways to deal the hands in each slot.
func exact(n *network, crew hands, limit int) int {
	type state struct {
		left []float64
		end  []int // the slot a job was done in, or -1
	}
	start := state{}
	for _, j := range n.jobs {
		start.left = append(start.left, j.work)
		start.end = append(start.end, -1)
	}
	now := []state{start}
	for slot := 0; slot < limit; slot++ {
		seen := map[string]bool{}
		var next []state
		for _, s := range now {
			var deal func(i, leads, rest int, left []float64)
			deal = func(i, leads, rest int, left []float64) {
				if i == len(n.jobs) {
					to := state{append([]float64(nil), left...), append([]int(nil), s.end...)}
					all := true
					key := ""
					for k := range left {
						if left[k] <= done && to.end[k] < 0 {
							to.end[k] = slot
						}
						all = all && to.end[k] >= 0
						// Only how long ago it ended tells, and no longer than any wait.
						key += fmt.Sprint(int(2*max(0, left[k])+0.5), ",", min(12, slot-to.end[k]), ";")
					}
					if all {
						limit = -1
					}
					if !seen[key] {
						seen[key] = true
						next = append(next, to)
					}
					return
				}
				deal(i+1, leads, rest, left)
				j := &n.jobs[i]
				if left[i] <= done {
					return
				}
				for _, w := range j.after {
					if s.end[w.job] < 0 || n.clock.after(s.end[w.job], w.hours) > slot {
						return
					}
				}
				for p := 0; p <= min(leads, j.most); p++ {
					for l := 0; l <= min(rest, j.most-p); l++ {
						if p+l < min(j.least, crew.all()) || p+l == 0 || j.lead && p == 0 {
							continue
						}
						was := left[i]
						left[i] -= crew.rate(p, l)
						deal(i+1, leads-p, rest-l, left)
						left[i] = was
					}
				}
			}
			deal(0, crew.leads, crew.rest, append([]float64(nil), s.left...))
			if limit < 0 {
				return slot + 1
			}
		}
		now = next
	}
	return never
}

// The search against exact search on small random plans. A plan that ends before the exact
// one would be no plan. How often it ends later is this program's own finding, no published
// figure: in a prototype 28 of 400, by one hour at most and 1.1 % in the mean.
func TestSearchAgainstExact(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 4))
	const plans = 16
	later, gap := 0, 0.0
	for range plans {
		n := randomNetwork(r, 5)
		p, l := 1+r.IntN(2), r.IntN(2)
		crew := newHands(p, l, 2)
		won, _ := n.best(p, l, 2, shaken, nil)
		least := exact(n, crew, won.end)
		assert.LessOrEqual(t, n.bound(crew), least, "the bound is one")
		assert.LessOrEqual(t, least, won.end, "no plan ends sooner than can be")
		if won.end > least {
			later++
			gap += float64(won.end-least) / float64(least)
			assert.LessOrEqual(t, won.end-least, 2, "an hour")
		}
	}
	t.Logf("later in %d of %d, mean gap %.1f %%", later, plans, 100*gap/plans)
	assert.LessOrEqual(t, later, 2)
	assert.LessOrEqual(t, gap/plans, 0.02)
}
