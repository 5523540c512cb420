package work

import "slices"

// News is what another page has done to the boats.
type News int

// The kinds of it that the user is told.
const (
	Nothing News = iota
	// ChangedInHand: the boat in hand is kept otherwise now than it is shown.
	ChangedInHand
	// SplitFromInHand: another page keeps its own version of the boat in hand beside it.
	SplitFromInHand
)

// Heard updates the shelf with what another page wrote under a key. It does not change
// the boat in hand.
func (s *Shelf) Heard(key string) News {
	b, stands := s.keeper.Heard(key)
	if b.ID == "" {
		return Nothing
	}
	for _, p := range slices.Concat(s.on, s.off) {
		switch {
		case p.id != b.ID:
			continue
		case p == s.hand:
			if stands && !s.keeper.Knows(b) {
				p.elsewhere = true
				return ChangedInHand
			}
			return Nothing
		}
		if p.work != nil && !p.kept.same(p.work.asKept()) {
			return Nothing // what is not kept yet stays: both versions are, with the next Keep
		}
		if stands && b.Off == slices.Contains(s.off, p) {
			*p = place{id: b.ID, head: b.Head}
			return Nothing
		}
		mine := func(q *place) bool { return q == p }
		s.on, s.off = slices.DeleteFunc(s.on, mine), slices.DeleteFunc(s.off, mine)
		if stands {
			s.list(b)
		}
		return Nothing
	}
	if !stands {
		return Nothing
	}
	s.list(b)
	if b.From == s.hand.id {
		return SplitFromInHand
	}
	return Nothing
}

// Cleared tells the shelf that all that was kept is gone. What is in memory is kept anew by the next
// Keep. It returns how many boats are not in memory: they are off the shelf.
func (s *Shelf) Cleared() (gone int) {
	lost := func(p *place) bool {
		if p.work == nil {
			gone++
		} else if !p.fresh {
			p.kept = nil
		}
		return p.work == nil
	}
	s.on, s.off = slices.DeleteFunc(s.on, lost), slices.DeleteFunc(s.off, lost)
	return gone
}

// Elsewhere reports whether the boat in hand is kept otherwise than it is shown.
func (s *Shelf) Elsewhere() bool { return s.hand.elsewhere }

// TakeTheirs replaces the boat in hand by the version that another page has kept.
func (s *Shelf) TakeTheirs() error {
	p := *s.hand
	p.work = nil
	if err := s.read(&p); err != nil {
		return err
	}
	*s.hand = p
	return nil
}

// SetAside takes a boat that stopped the page off the shelf, without changing what is
// kept of it. If it was in hand, no boat is until Open.
func (s *Shelf) SetAside(id string) {
	for _, p := range s.on {
		if p.id == id && p.work != nil && !p.kept.same(p.work.asKept()) {
			// A new boat is kept first, so that it can be offered again. If that is refused there is
			// nothing to offer.
			_, _ = s.keepOne(p)
			id = p.id
		}
	}
	s.keeper.Stops(id)
	s.on = slices.DeleteFunc(s.on, func(p *place) bool { return p.id == id })
	if s.hand != nil && s.hand.id == id {
		s.hand = nil
	}
}
