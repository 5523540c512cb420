package plan

import (
	"math/rand/v2"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// network tests plan jobs that are not a boat's: activities of textbooks, random ones.

// newTestNetwork joins jobs by what each waits for; a slot is a day unless said.
func newTestNetwork(jobs []job, k clock) *network {
	n := &network{jobs: jobs, clock: k, beds: 1, boats: 1}
	n.join()
	return n
}

var aSlotADay = clock{slots: 1, days: daysOfWeek}

// alone is a plan of a network by one crew and way of dealing.
func alone(n *network, crew hands) *Plan {
	p, r := &Plan{net: n, Season: NewSeason()}, newRun(n, crew)
	p.won = found{crew: crew, practised: crew.leads, rank: n.orders(0).of(&r.reach)[0]}
	r = p.record()
	p.lay(r)
	p.chain(r)
	p.slacks(nil)
	return p
}

// Reliable Construction Co.: 14 activities with their weeks, what each waits for, and the
// slack printed for it; the longest chain takes 44 weeks. F. S. Hillier and G. J. Lieberman,
// Introduction to Operations Research, 7th ed., 2001, ch. 22, tables 22.1 and 22.3 (from
// memory). Exact: they are whole weeks.
func TestTextbookNetwork(t *testing.T) {
	const names = "ABCDEFGHIJKLMN"
	weeks := []float64{2, 4, 10, 6, 4, 5, 7, 9, 7, 8, 4, 5, 2, 6}
	after := []string{"", "A", "B", "C", "C", "E", "D", "EG", "C", "FI", "J", "J", "H", "KL"}
	slack := []int{0, 0, 0, 4, 0, 0, 4, 4, 2, 0, 1, 0, 4, 0}
	jobs := make([]job, len(weeks))
	for i := range jobs {
		jobs[i] = job{task: ID(i), work: weeks[i], least: 1, most: 1}
		for _, a := range after[i] {
			jobs[i].after = append(jobs[i].after, wait{job: strings.IndexRune(names, a)})
		}
	}
	p := alone(newTestNetwork(jobs, aSlotADay), newHands(20, 0, 2))
	assert.Equal(t, 44, p.Days)
	assert.Equal(t, 44, p.net.reach(p.won.crew).end)
	chain := ""
	for _, h := range p.Chain {
		chain += string(names[p.Jobs[h.Job].Task])
	}
	assert.Equal(t, "ABCEFJLN", chain)
	require.Len(t, p.Jobs, len(jobs))
	for _, j := range p.Jobs {
		assert.Equal(t, slack[j.Task], j.Slack, "slack of %c", names[j.Task])
	}
}

// anomaly is the network of R. L. Graham, "Bounds on multiprocessing timing anomalies", SIAM
// J. Appl. Math. 17(2), 1969, fig. 2 to 4 (from memory): nine tasks worked in the order of
// the list by 3 hands end at 12, by 4 hands at 15, with each a unit shorter at 13 by 3.
func anomaly(shorter float64) *network {
	times := []float64{3, 2, 2, 2, 4, 4, 4, 4, 9}
	jobs := make([]job, len(times))
	for i := range jobs {
		jobs[i] = job{work: times[i] - shorter, least: 1, most: 1}
		switch {
		case i == 8:
			jobs[i].after = []wait{{job: 0}}
		case i >= 4:
			jobs[i].after = []wait{{job: 3}}
		}
	}
	return newTestNetwork(jobs, aSlotADay)
}

func TestOneListCanEndLaterWithMoreHands(t *testing.T) {
	rank := make([]int, 9)
	for i := range rank {
		rank[i] = i
	}
	by := func(n int, shorter float64) int {
		return newRun(anomaly(shorter), newHands(n, 0, 2)).finish(rank, dealing{}, never)
	}
	assert.Equal(t, 12, by(3, 0))
	assert.Equal(t, 15, by(4, 0))
	assert.Equal(t, 13, by(3, 1))
}

// The search takes the best over smaller crews: 12 is the least for any crew of three or
// more, the chain of the first task and the last.
func TestTheSearchDoesNotEndLaterWithMoreHands(t *testing.T) {
	for n := 3; n <= 6; n++ {
		won, ok := anomaly(0).best(n, 0, 2, anomaly(0).orders(0), never, nil)
		assert.True(t, ok)
		assert.Equal(t, 12, won.end, "%d hands", n)
	}
}

// randomNetwork is a small network with waits and tasks that only practised hands lead; its
// work is in halves, so that learners at half pace leave no rest.
func randomNetwork(r *rand.Rand, most int) *network {
	jobs := make([]job, 5+r.IntN(most-4))
	for i := range jobs {
		least := 1 + r.IntN(2)
		jobs[i] = job{work: float64(1+r.IntN(8)) / 2, least: least, most: least + r.IntN(3), lead: r.IntN(3) == 0}
		for k := range i {
			if r.IntN(3) == 0 {
				jobs[i].after = append(jobs[i].after, wait{k, []int{0, 0, 1, 3}[r.IntN(4)]})
			}
		}
	}
	return newTestNetwork(jobs, clock{slots: 6, days: 6})
}

// More hands never end later: a thousand random plans, with one practised hand or one
// learner more.
func TestMoreHandsNeverEndLater(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	for range 1000 {
		n := randomNetwork(r, 9)
		p, l := 1+r.IntN(3), r.IntN(4)
		now, _ := n.best(p, l, 2, n.orders(0), never, nil)
		more, _ := n.best(p+1, l, 2, n.orders(0), never, nil)
		learner, _ := n.best(p, l+1, 2, n.orders(0), never, nil)
		require.LessOrEqual(t, more.end, now.end)
		require.LessOrEqual(t, learner.end, now.end)
		require.GreaterOrEqual(t, now.end, n.reach(now.crew).end)
	}
}

// A search that is cut off finds nothing.
func TestSearchIsCutOff(t *testing.T) {
	turns := 0
	_, ok := anomaly(0).best(3, 0, 2, anomaly(0).orders(shaken), never, func() bool { turns++; return turns < 3 })
	assert.False(t, ok)
	assert.Equal(t, 3, turns)
}

// A teacher's own hands count half with more than three learners to each; without anyone
// practised one learner leads at a learner's pace.
func TestHands(t *testing.T) {
	assert.InDelta(t, 1+3/2.5, newHands(1, 3, 2.5).most(9), 1e-12)
	assert.InDelta(t, 0.5+4/2.5, newHands(1, 4, 2.5).most(9), 1e-12)
	assert.InDelta(t, 2/2.5, newHands(0, 2, 2.5).most(9), 1e-12)
	assert.Equal(t, 1, newHands(0, 2, 2.5).leads)
	assert.InDelta(t, 1, newHands(1, 3, 2.5).most(1), 1e-12, "the practised hand first")
	// Of so many hands no others do more: tried out, over the range of a learner's pace and its ends.
	for _, factor := range []float64{rows[Factor].Low, 2.5, rows[Factor].High} {
		for practised := range 4 {
			for learners := range 14 {
				h := newHands(practised, learners, factor)
				for n := range h.all() + 2 {
					most := 0.0
					for leads := range min(n, h.leads) + 1 {
						most = max(most, h.rate(leads, min(n-leads, h.rest)))
					}
					assert.InDelta(t, most, h.most(n), 1e-14, "%d of %+v: rounding of two products and their sum, under 20", n, h)
				}
			}
		}
	}
}
