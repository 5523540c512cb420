package plan

import (
	"math"

	"barkwright/core/tally"
)

// Progress is what the log says is done: units of each task, by ticks or by entries of
// work, and of those entered with their hours how many took how long.
type Progress struct {
	Units [Tasks]float64
	// Timed are units entered with hours, and Worked those hours, of practised hands.
	Timed, Worked [Tasks]float64
}

// Any tells that something is done.
func (p *Progress) Any() bool { return *p != Progress{} }

const (
	// trust is the share of a task's units whose time weighs as much as the table's. An
	// estimate.
	trust = 1.0 / 5
	// learnedAfter is after how many hours of work half of what it shows is taken over for
	// tasks that are not begun. An estimate.
	learnedAfter = 20.0
	// suspect is how far past either end of its range a logged time may lie and still be
	// taken. An estimate.
	suspect = 3.0
)

// Read is the progress in a log. Of rows tells how many rows a step's table has; a step
// ticked row by row is done by as large a share. Learners' hours count by the season's
// factor.
func (s *Season) Read(c Counts, l tally.Log, of func(step string) int) Progress {
	var p Progress
	for _, e := range l {
		id, ok := Lookup(e.Step)
		if !ok || e.Units <= 0 {
			continue
		}
		p.Units[id] += e.Units
		if hours := e.Hours + e.Learners/s.Number(Factor); hours > 0 {
			p.Timed[id] += e.Units
			p.Worked[id] += hours
		}
	}
	for i := range table {
		t := &table[i]
		if t.Step == "" {
			continue
		}
		all := s.Asked(c, t.ID)
		if _, done := l.Done(t.Step, ""); done {
			p.Units[i] = max(p.Units[i], all)
		} else if n := of(t.Step); n > 0 {
			p.Units[i] = max(p.Units[i], all*min(1, float64(l.Rows(t.Step))/float64(n)))
		}
	}
	return p
}

// Suspect tells that the hours logged of a task are so far from its times that they are not
// taken: an entry to look at again.
func (s *Season) Suspect(p Progress, id ID) bool {
	if p.Timed[id] <= 0 || p.Worked[id] <= 0 {
		return false
	}
	own, t := 60*p.Worked[id]/p.Timed[id], s.Minutes(id)
	return own > suspect*t.High || own < t.Low/suspect
}

// Rates are the times of one unit of each task, minutes, as the log has shown them: those
// of a task with logged hours weighed against the table's, those of a task not begun moved
// by what all others took.
func (s *Season) Rates(c Counts, p Progress) (out [Tasks]Triangle) {
	took, thought := 0.0, 0.0
	for i := range table {
		id := ID(i)
		out[i] = s.Minutes(id)
		if p.Timed[i] <= 0 || s.Suspect(p, id) {
			continue
		}
		mean := out[i].Mean()
		took += p.Worked[i]
		thought += p.Timed[i] * mean / 60
		n0, n := s.Asked(c, id)*trust, p.Timed[i]
		rate := (n0*mean + 60*p.Worked[i]) / (n0 + n)
		out[i] = drawnIn(out[i].times(rate/mean), math.Sqrt(n0/(n0+n)))
	}
	if thought <= 0 {
		return out
	}
	by := math.Pow(took/thought, thought/(thought+learnedAfter))
	for i := range table {
		if p.Timed[i] <= 0 {
			out[i] = out[i].times(by)
		}
	}
	return out
}

// drawnIn is a triangle with its ends drawn toward its mean; the mean stays.
func drawnIn(t Triangle, by float64) Triangle {
	m := t.Mean()
	return Triangle{m + (t.Low-m)*by, m + (t.Likely-m)*by, m + (t.High-m)*by}
}

// Next is the season that another boat begins with: the same crew, the times as the log has
// shown them, no dates of its own and nothing at hand.
func (s *Season) Next(c Counts, p Progress) Season {
	next := *s
	rates := s.Rates(c, p)
	for i := range table {
		if p.Timed[i] > 0 && !s.Suspect(p, ID(i)) {
			// The table's triangle keeps its shape: its likely time moves as the mean does.
			next.Likely[i] = table[i].Minutes.Likely * rates[i].Mean() / table[i].Mean()
		}
		next.Have[i] = 0
	}
	next.Days[Begin], next.Days[End] = "", ""
	return next
}
