package plan

// hands are those who work: how many, and what each does in the time of a practised hand.
// Without anyone practised one learner leads.
type hands struct {
	leads, rest         int
	leadSpeed, restRate float64
	// teams is how many they work in; 0 and 1 are everyone together.
	teams int
}

// everyone is more hands than any plan uses, for what no crew can undercut.
const everyone = 1000

// teachesMost is how many learners each practised hand teaches without it costing half of
// its own work. An estimate.
const teachesMost = 3

// newHands are so many practised hands and learners.
func newHands(practised, learners int, factor float64) hands {
	h := hands{leads: practised, rest: learners, leadSpeed: 1, restRate: 1 / factor}
	switch {
	case practised == 0 && learners > 0:
		h.leads, h.rest, h.leadSpeed = 1, learners-1, 1/factor
	case learners > teachesMost*practised:
		h.leadSpeed = 0.5
	}
	return h
}

func (h hands) all() int { return h.leads + h.rest }

// rate is the work of so many hands in a slot.
func (h hands) rate(leads, rest int) float64 {
	return float64(leads)*h.leadSpeed + float64(rest)*h.restRate
}

// most is the most work that so many hands of the crew do in a slot: those who lead first, since no learner
// is faster.
func (h hands) most(n int) float64 {
	n = min(n, h.all())
	leads := min(n, h.leads)
	return h.rate(leads, n-leads)
}

// restOr is the pace of a hand of the crew: a learner's where there are any.
func (h hands) restOr() float64 {
	if h.rest > 0 {
		return h.restRate
	}
	return h.leadSpeed
}
