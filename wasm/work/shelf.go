package work

import (
	"strings"

	"barkwright/core/design"
	"barkwright/core/file"
	"barkwright/core/units"
)

// Shelf is several designs kept side by side, each with its own undo; one is in hand.
type Shelf struct {
	All     []*Work
	Current int
	// Removed is the design last taken off, to be brought back, or nil.
	Removed *Work
}

// NewShelf starts with one design.
func NewShelf(d design.Design, s units.System) *Shelf {
	return &Shelf{All: []*Work{New(d, s)}}
}

// InHand is the design that the page shows.
func (s *Shelf) InHand() *Work { return s.All[s.Current] }

// Add puts one more design on the shelf and takes it in hand. One with faults
// shows them; its canoe is then that of the default.
func (s *Shelf) Add(d design.Design) {
	w := New(design.Default(), s.InHand().System)
	w.enter(d)
	w.Before = w.Canoe
	s.All = append(s.All, w)
	s.Current = len(s.All) - 1
}

// Copy puts the design in hand on the shelf once more, with what was measured beside
// it, and takes the copy in hand.
func (s *Shelf) Copy() {
	w := s.InHand()
	d := w.Entered
	d.Name = strings.TrimSpace(d.Name + " (copy)")
	s.Add(d)
	s.InHand().Notebook = w.Notebook
}

// Take takes another design in hand; a place that is none does nothing.
func (s *Shelf) Take(i int) {
	if i >= 0 && i < len(s.All) {
		s.InHand().Commit()
		system := s.InHand().System
		s.Current = i
		s.InHand().System = system
	}
}

// TakeLine takes in hand the boat that a line of text says: the one on the shelf that
// has that line, the one in hand first, or else d, put beside the others.
func (s *Shelf) TakeLine(line string, d design.Design) {
	for i := range s.All {
		i = (i + s.Current) % len(s.All)
		if text, err := design.Line(s.All[i].Entered); err == nil && text == line {
			s.Take(i)
			return
		}
	}
	s.Add(d)
}

// Remove takes the design in hand off the shelf. The last one stays.
func (s *Shelf) Remove() {
	if len(s.All) == 1 {
		return
	}
	s.Removed = s.InHand()
	system := s.Removed.System
	s.All = append(s.All[:s.Current:s.Current], s.All[s.Current+1:]...)
	s.Current = min(s.Current, len(s.All)-1)
	s.InHand().System = system
}

// BringBack puts the design last removed on the shelf again, in hand.
func (s *Shelf) BringBack() {
	if s.Removed == nil {
		return
	}
	s.Removed.System = s.InHand().System
	s.All = append(s.All, s.Removed)
	s.Current, s.Removed = len(s.All)-1, nil
}

// File is the shelf as it is saved.
func (s *Shelf) File() file.File {
	f := file.File{Current: s.Current}
	for _, w := range s.All {
		f.Boats = append(f.Boats, file.Boat{Design: w.Entered, Notebook: *w.Notebook})
	}
	return f
}

// Put adds a file's designs and takes its current one in hand.
func (s *Shelf) Put(f file.File) {
	first := len(s.All)
	for _, b := range f.Boats {
		s.Add(b.Design)
		s.InHand().Notebook = &b.Notebook
	}
	if len(f.Boats) > 0 {
		s.Take(first + f.Current)
	}
}

// Refill puts a file's designs in place of everything on the shelf.
func (s *Shelf) Refill(f file.File) {
	if len(f.Boats) == 0 {
		return
	}
	old := len(s.All)
	s.Put(f)
	s.All = s.All[old:]
	s.Current -= old
}
