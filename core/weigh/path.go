package weigh

import (
	"cmp"
	"slices"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/stage"
)

// What differs between designs beside their parameters, named as a control is.
const (
	Corrected = "corrected"
	OnHand    = "onHand"
)

// Step is one step of the way from the held boat to the present one.
type Step struct {
	// Keys are the controls set in it; empty in the last step, in which what follows others
	// is let go.
	Keys []string
	// Along tells that what follows moved along, because the boat cannot be built without.
	Along bool
	Canoe core.Canoe
	// More are numbers of the canoe beside those that answer.All lists.
	More []answer.Number
}

// Moved are the controls that differ between two designs and are the user's own, in the order
// in which they were last taken up where order tells it, and before those by the stages of the
// work. Followers are those that differ and follow.
func Moved(held, now design.Design, order []string) (moved, followers []string) {
	place := map[string]int{}
	for _, p := range design.Params() {
		if p.Get(&held) == p.Get(&now) && p.Owned(held) == p.Owned(now) {
			continue
		}
		if p.Follows() && !p.Owned(held) && !p.Owned(now) {
			followers = append(followers, p.Key)
			continue
		}
		_, at, _ := stage.Lookup(p.Home)
		place[p.Key] = at
		moved = append(moved, p.Key)
	}
	if held.Corrected != now.Corrected {
		moved = append(moved, Corrected)
	}
	if held.OnHand != now.OnHand {
		moved = append(moved, OnHand)
	}
	slices.SortStableFunc(moved, func(a, b string) int {
		return cmp.Or(cmp.Compare(slices.Index(order, a), slices.Index(order, b)), cmp.Compare(place[a], place[b]))
	})
	return moved, followers
}

// Path goes from the held boat to the present one: each of moved is set in turn while nothing
// follows, and then all followers are let go. Where the boat on the way cannot be built, what
// follows moves along from there on; where it still cannot, the step is one with the next.
func Path(held, now core.Canoe, moved []string) []Step {
	p := path{at: held.Design, now: now.Design, frozen: design.Decisions()}
	var steps []Step
	var waiting []string
	last := held.Design
	for _, key := range moved {
		p.set(key)
		waiting = append(waiting, key)
		c, faults := core.Try(p.stands())
		if len(faults) > 0 && !p.along {
			p.along = true
			c, faults = core.Try(p.stands())
		}
		if len(faults) > 0 {
			continue
		}
		steps = append(steps, Step{Keys: waiting, Along: p.along, Canoe: c})
		waiting, last = nil, c.Design
	}
	last.Own, last.Name, last.Notes = now.Design.Own, now.Design.Name, now.Design.Notes
	if len(steps) > 0 && last == now.Design {
		steps[len(steps)-1].Canoe = now
		return steps
	}
	return append(steps, Step{Keys: waiting, Along: len(waiting) > 0, Canoe: now})
}

// path is where a way stands.
type path struct {
	at, now design.Design
	frozen  design.Owned
	// along tells that nothing is held back any more.
	along bool
}

// stands is the design on the way.
func (p *path) stands() design.Design {
	d := p.at
	if !p.along {
		d.Own |= p.frozen
	}
	return design.Follow(d)
}

// set brings one control to where it stands now.
func (p *path) set(key string) {
	switch key {
	case Corrected:
		p.at.Corrected = p.now.Corrected
		return
	case OnHand:
		p.at.OnHand = p.now.OnHand
		return
	}
	param, ok := design.Lookup(key)
	if !ok {
		return
	}
	param.Put(&p.at, param.Get(&p.now))
	param.Release(&p.at)
	if param.Owned(p.now) {
		param.Claim(&p.at)
	}
}
