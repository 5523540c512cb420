package work

import (
	"slices"
	"strings"

	"barkwright/core/design"
	"barkwright/core/file"
	"barkwright/core/tally"
	"barkwright/core/units"
	"barkwright/wasm/keep"
)

// Shelf holds boats side by side, each with its own undo. One of them is in hand. A kept
// boat is read only when it is first taken in hand.
type Shelf struct {
	keeper *keep.Keeper
	system units.System
	// Dates is how every boat's days are written.
	Dates tally.Dates
	on    []*place
	off   []*place // taken off, to be brought back
	hand  *place
}

// place is one boat's place on the shelf.
type place struct {
	id   string
	head file.Head // as it was last read or kept
	work *Work     // nil until it is taken in hand
	kept *asKept   // what of the work is kept, nil without any
	// fresh marks the first boat of a new user.
	fresh bool
	// elsewhere says that another page has kept the boat since.
	elsewhere bool
}

// asKept is all of a work that is kept.
type asKept struct {
	state
	typed map[string]string
	built design.Design
	held  *Holding
}

// NewShelf lists what is kept. Nothing is in hand yet.
func NewShelf(k *keep.Keeper, s units.System) *Shelf {
	shelf := &Shelf{keeper: k, system: s}
	for _, b := range k.Boats() {
		shelf.list(b)
	}
	return shelf
}

// Open takes a boat in hand: the one that was in hand when the page was left, or else
// another that can be read, or else a new one.
func (s *Shelf) Open() {
	if s.TakeID(s.keeper.InHand()) || s.hand != nil {
		return
	}
	for len(s.on) > 0 {
		if s.Take(len(s.on)-1) == nil {
			return
		}
	}
	s.Add(design.Default())
	s.hand.kept, s.hand.fresh = s.InHand().asKept(), true
}

func (s *Shelf) list(b keep.Boat) {
	p := &place{id: b.ID, head: b.Head}
	if b.Off {
		s.off = append(s.off, p)
	} else {
		s.on = append(s.on, p)
	}
}

// InHand returns the boat that the page shows. ID returns the ID it is kept under.
func (s *Shelf) InHand() *Work { return s.hand.work }
func (s *Shelf) ID() string    { return s.hand.id }

// Line returns the boat in hand as one line of text. It is empty where no boat is in
// hand or it cannot be written as a line.
func (s *Shelf) Line() string {
	if s.hand == nil {
		return ""
	}
	return s.hand.line()
}

// AsKept returns the ID of the boat in hand and the stamp it is kept with, and whether it
// has no fault and is kept as it stands.
func (s *Shelf) AsKept() (id, stamp string, stands bool) {
	p := s.hand
	if p == nil || p.fresh || p.elsewhere || p.work.None || len(p.work.Faults) > 0 || !p.kept.same(p.work.asKept()) {
		return "", "", false
	}
	return p.id, p.head.Stamp, true
}

// IDAt returns the ID of the boat at a place, or "".
func (s *Shelf) IDAt(i int) string {
	if i < 0 || i >= len(s.on) {
		return ""
	}
	return s.on[i].id
}

// Place returns the place of the boat with an ID, less than zero where it is not on the shelf.
func (s *Shelf) Place(id string) int {
	return slices.IndexFunc(s.on, func(p *place) bool { return p.id == id })
}

// Current returns the place of the boat in hand.
func (s *Shelf) Current() int { return slices.Index(s.on, s.hand) }

// Len returns the number of boats on the shelf.
func (s *Shelf) Len() int { return len(s.on) }

// Names returns the boats' names in their order. TakenOff returns those of the boats
// taken off the shelf.
func (s *Shelf) Names() []string    { return names(s.on) }
func (s *Shelf) TakenOff() []string { return names(s.off) }

func names(places []*place) []string {
	out := make([]string, len(places))
	for i, p := range places {
		out[i] = p.name()
	}
	return out
}

func (p *place) name() string {
	if p.work != nil {
		return p.work.Entered.Name
	}
	return p.head.Name
}

// SetSystem changes the units that every boat is shown in.
func (s *Shelf) SetSystem(system units.System) {
	s.system = system
	s.InHand().Commit()
	s.InHand().System = system
}

// Add appends a design and takes it in hand. A design with faults shows them. The crew and the
// times of its plan begin as those of the boat that was in hand.
func (s *Shelf) Add(d design.Design) {
	b := file.Boat{Design: d}
	if s.hand != nil && s.hand.work != nil {
		b.Notebook.Season = s.hand.work.nextSeason()
	}
	s.add(Open(b, s.system))
}

func (s *Shelf) add(w *Work) {
	p := &place{id: s.keeper.NewID(), work: w}
	s.on = append(s.on, p)
	s.inHand(p)
}

func (s *Shelf) inHand(p *place) {
	if s.hand != nil && s.hand.work != nil {
		s.hand.work.Commit()
		if s.hand != p {
			s.hand.work.boat.Rest()
		}
	}
	p.work.System, p.work.Dates = s.system, s.Dates
	s.hand = p
}

// Copy appends a copy of the boat in hand, as it last could be built, with what was
// measured beside it, and takes the copy in hand.
func (s *Shelf) Copy() {
	b := s.InHand().Boat()
	b.Design.Name = strings.TrimSpace(b.Design.Name + " (copy)")
	s.add(Open(b, s.system))
}

// Take takes another boat in hand. An unknown place changes nothing. A boat that cannot
// be read is removed from the shelf with an error; its text stays where it is kept.
func (s *Shelf) Take(i int) error {
	if i < 0 || i >= len(s.on) {
		return nil
	}
	p := s.on[i]
	if err := s.read(p); err != nil {
		s.on = slices.DeleteFunc(s.on, func(q *place) bool { return q == p })
		return err
	}
	s.inHand(p)
	return nil
}

// TakeID takes the boat with an ID in hand and reports whether it is in hand.
func (s *Shelf) TakeID(id string) bool {
	i := s.Place(id)
	return i >= 0 && s.Take(i) == nil
}

// read makes sure that the whole boat is in memory.
func (s *Shelf) read(p *place) error {
	if p.work != nil {
		return nil
	}
	k, err := s.keeper.Load(p.id)
	if err != nil {
		return err
	}
	w := Open(k.Boat, s.system)
	w.Typed = k.Typed
	p.work, p.head, p.elsewhere = w, k.Head, false
	if len(w.Moved) == 0 {
		p.kept = w.asKept()
	}
	return nil
}

// TakeLine takes the boat of a line of text in hand. That is a boat on the shelf with
// the same line, first of all the one already in hand. Otherwise d is appended.
func (s *Shelf) TakeLine(line string, d design.Design) {
	first := max(0, s.Current())
	for i := range s.on {
		i = (i + first) % len(s.on)
		if s.on[i].line() == line && s.Take(i) == nil {
			return
		}
	}
	s.Add(d)
}

func (p *place) line() string {
	if p.work == nil {
		return p.head.Line
	}
	// A design with an infinite or undefined number has no line.
	text, _ := design.Line(p.work.Entered)
	return text
}
