package work

import (
	"errors"

	"barkwright/core/design"
	"barkwright/core/file"
)

// DesignAt returns the design of the boat at a place, as it last could be built. It fails where the
// boat cannot be read.
func (s *Shelf) DesignAt(i int) (design.Design, error) {
	if i < 0 || i >= len(s.on) {
		return design.Design{}, errors.New("That boat is not on the shelf any more.")
	}
	b, err := s.boat(s.on[i])
	if b.Built != nil {
		name := b.Design.Name
		b.Design = *b.Built
		b.Design.Name = name
	}
	return b.Design, err
}

// Whole returns the boat in hand as a file.
func (s *Shelf) Whole() file.File { return file.File{Boats: []file.Boat{s.InHand().Boat()}} }

// All returns every boat on the shelf as a file. It fails on the first boat that cannot
// be read.
func (s *Shelf) All() (file.File, error) {
	f := file.File{Current: s.Current()}
	for _, p := range s.on {
		b, err := s.boat(p)
		if err != nil {
			return file.File{}, err
		}
		f.Boats = append(f.Boats, b)
	}
	return f, nil
}

// boat returns a boat of the shelf, without keeping it in memory.
func (s *Shelf) boat(p *place) (file.Boat, error) {
	if p.work != nil {
		return p.work.Boat(), nil
	}
	k, err := s.keeper.Load(p.id)
	return k.Boat, err
}
