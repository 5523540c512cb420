package work

import "slices"

// Remove takes the boat in hand off the shelf. It is kept, so that it can be brought
// back. The last boat stays.
func (s *Shelf) Remove() error {
	if len(s.on) == 1 {
		return nil
	}
	p, i := s.hand, s.Current()
	next := s.on[max(i-1, 0)]
	if i+1 < len(s.on) {
		next = s.on[i+1]
	}
	if err := s.read(next); err != nil {
		return err
	}
	s.inHand(next)
	s.on = slices.Delete(s.on, i, i+1)
	s.off = append(s.off, p)
	p.kept = nil
	return nil
}

// TakeOff takes a boat that is not in hand off the shelf. It is kept, so that it can be brought back.
func (s *Shelf) TakeOff(id string) {
	i := s.Place(id)
	if i < 0 || s.on[i] == s.hand || s.read(s.on[i]) != nil {
		return
	}
	p := s.on[i]
	p.kept = nil
	s.on, s.off = slices.Delete(s.on, i, i+1), append(s.off, p)
}

// Discard deletes a boat that is not in hand for good.
func (s *Shelf) Discard(id string) {
	if i := s.Place(id); i >= 0 && s.on[i] != s.hand {
		s.on = slices.Delete(s.on, i, i+1)
		s.keeper.Clear(id)
	}
}

// BringBack puts a boat that was taken off back on the shelf, in hand.
func (s *Shelf) BringBack(i int) error {
	if i < 0 || i >= len(s.off) {
		return nil
	}
	p := s.off[i]
	err := s.read(p)
	s.off = slices.Delete(s.off, i, i+1)
	if err != nil {
		return err
	}
	p.kept = nil
	s.on = append(s.on, p)
	s.inHand(p)
	return nil
}

// ClearTakenOff deletes for good the boats that were taken off.
func (s *Shelf) ClearTakenOff() {
	for _, p := range s.off {
		s.keeper.Clear(p.id)
	}
	s.off = nil
}
