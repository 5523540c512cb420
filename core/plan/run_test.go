package plan

import (
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// plain works a network through slot by slot as the list rules say it: an oracle for run, which passes over
// slots that are alike and gives a run up as soon as it cannot come under a bound. One crew without teams.
func plain(n *network, crew hands, rank []int, deal dealing) int {
	k := len(n.jobs)
	left, end, begun := make([]float64, k), make([]int, k), make([]bool, k)
	for i := range n.jobs {
		left[i], end[i] = n.jobs[i].work, -1
	}
	for slot, open := 0, k; ; slot++ {
		var may []int
		for i, j := range n.jobs {
			ready := end[i] < 0
			for _, w := range j.after {
				ready = ready && end[w.job] >= 0 && n.clock.after(end[w.job], w.hours) <= slot
			}
			if ready {
				may = append(may, i)
			}
		}
		for a := range may {
			for b := a; b > 0; b-- {
				x, y := may[b], may[b-1]
				first := rank[x] < rank[y]
				if deal.pace == keepOn && begun[x] != begun[y] {
					first = begun[x]
				}
				if first {
					may[b], may[b-1] = y, x
				}
			}
		}
		leads, rest, at := crew.leads, crew.rest, map[int]pool{}
		hand := func(i int, mustLead bool) {
			h := at[i]
			if !mustLead && rest > 0 && (deal.learnersFirst || leads == 0) {
				rest, h.rest = rest-1, h.rest+1
			} else {
				leads, h.leads = leads-1, h.leads+1
			}
			at[i] = h
		}
		give := func(i, want int) {
			j := n.jobs[i]
			need := min(j.least, crew.all())
			if at[i] == (pool{}) && (leads+rest < need || j.lead && leads == 0) {
				return
			}
			for at[i].leads+at[i].rest < min(want, j.most) && leads+rest > 0 {
				if h := at[i]; deal.pace == noMore && h.leads+h.rest >= need && crew.rate(h.leads, h.rest) >= left[i]-done {
					return
				}
				hand(i, j.lead && at[i] == pool{})
			}
			begun[i] = true
		}
		if !deal.mostFirst {
			for _, i := range may {
				give(i, min(n.jobs[i].least, crew.all()))
			}
		}
		for _, i := range may {
			give(i, n.jobs[i].most)
		}
		for i, h := range at {
			if left[i] -= crew.rate(h.leads, h.rest); left[i] <= done {
				end[i] = slot
				open--
			}
		}
		if open == 0 {
			return slot + 1
		}
	}
}

// A run ends as the list rules worked slot by slot do, by every way of dealing, and is given up under a
// bound only where it does not come under it.
func TestRunAgainstSlotBySlot(t *testing.T) {
	r := rand.New(rand.NewPCG(13, 14))
	for range 60 {
		n := randomNetwork(r, 9)
		for i := range n.jobs {
			n.jobs[i].work *= 4 // long enough to pass over slots
		}
		crew := newHands(1+r.IntN(3), r.IntN(4), 2)
		run := newRun(n, crew)
		for _, rank := range n.orders(2).of(&run.reach) {
			for _, deal := range dealings() {
				want := plain(n, crew, rank, deal)
				require.Equal(t, want, run.finish(rank, deal, never), "%+v", deal)
				require.Equal(t, want, run.finish(rank, deal, want+1), "%+v", deal)
				require.Equal(t, never, run.finish(rank, deal, want), "%+v", deal)
			}
		}
	}
}

// A run with one job held back ends alike from the last day that it shares with the one it is compared
// with, and from the first slot on.
func TestHeldBackFromAnyDay(t *testing.T) {
	r := rand.New(rand.NewPCG(15, 16))
	for range 60 {
		n := randomNetwork(r, 9)
		for i := range n.jobs {
			n.jobs[i].work *= 4
		}
		crew := newHands(1+r.IntN(3), r.IntN(4), 2)
		run, whole := newRun(n, crew), newRun(n, crew)
		rank := n.orders(0).of(&run.reach)[0]
		deal := dealings()[r.IntN(len(dealings()))]
		run.course, whole.course = &course{}, &course{}
		end := run.finish(rank, deal, never)
		starts := append([]int(nil), run.start...)
		whole.finish(rank, deal, never)
		whole.course.all = whole.course.all[:1]
		for _, c := range []*course{run.course, whole.course} {
			c.end, c.noted = end, true
		}
		for i, start := range starts {
			until := start + r.IntN(20)
			want := whole.heldBack(i, 0, until, never)
			assert.Equal(t, want, run.heldBack(i, start, until, never))
			if until > 0 {
				assert.GreaterOrEqual(t, whole.start[i], until)
			}
		}
	}
}
