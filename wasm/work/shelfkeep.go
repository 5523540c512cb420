package work

import (
	"errors"
	"maps"
	"slices"

	"barkwright/core/design"
	"barkwright/core/file"
	"barkwright/wasm/keep"
)

// asKept returns what is to be kept of the work now.
func (w *Work) asKept() *asKept {
	a := &asKept{state: w.state(), typed: w.Typed, held: w.held}
	if built := w.Boat().Built; built != nil {
		a.built = *built
	}
	return a
}

func (a *asKept) same(b *asKept) bool {
	return a != nil && a.state == b.state && a.built == b.built && a.held == b.held && maps.Equal(a.typed, b.typed)
}

// Kept is the result of keeping.
type Kept struct {
	// Split says that another page had changed a boat too: both versions are kept.
	Split bool
	// Err is why something could not be kept, or nil.
	Err error
}

// Keep keeps what has changed. The first boat of a new user is not kept until it is
// changed or another stands beside it.
func (s *Shelf) Keep() Kept {
	var out Kept
	for _, p := range slices.Concat(s.on, s.off) {
		waits := p.fresh && len(s.on) > 1
		if p.work == nil || p.kept.same(p.work.asKept()) && !waits {
			continue
		}
		split, err := s.keepOne(p)
		out.Split = out.Split || split
		if err != nil {
			out.Err = err
		}
	}
	s.keeper.SetInHand(s.hand.id)
	return out
}

func (s *Shelf) keepOne(p *place) (split bool, err error) {
	w := p.work
	now := w.asKept()
	text := file.Kept{Head: file.Head{Off: slices.Contains(s.off, p), From: p.head.From}, Boat: w.Boat(),
		Typed: w.Typed}
	b, err := s.keeper.Save(p.id, text)
	if errors.Is(err, keep.ErrElsewhere) {
		// The other page's version stays where it is. This one continues beside it.
		text.From = p.id
		own := s.keeper.NewID()
		if b, err = s.keeper.Save(own, text); err == nil {
			theirs := p.id
			p.id, p.elsewhere, split = own, false, true
			if other, ok := s.keeper.Heard(keep.KeyOf(theirs)); ok {
				s.list(other)
			}
		}
	}
	if err != nil {
		return false, err
	}
	p.head, p.kept, p.fresh = b.Head, now, false
	return split, nil
}

// Put is what came of opening a file: boats added, boats that were here already, and of
// those the ones brought back from where they were taken off.
type Put struct{ Added, Here, Back int }

// Put adds those of a file's boats that are not here already and takes its current one
// in hand. Where they cannot all be kept it adds none, unless nothing is kept at all.
func (s *Shelf) Put(f file.File) (Put, error) {
	out, from, err := s.put(f)
	if err != nil {
		return Put{}, err
	}
	out.Back, err = s.takeFrom(from, f.Current)
	return out, err
}

// filed are the places of a file's boats in its order, and among them those added.
type filed struct{ all, added []*place }

// put keeps those of a file's boats that are not here already, and works none out.
func (s *Shelf) put(f file.File) (out Put, from filed, err error) {
	var fresh []file.Kept
	at := make([]*place, len(f.Boats)) // where each of them stands, nil for a fresh one
	first := map[int]int{}             // which of the fresh ones a boat is
	find := s.finder()
	for i, b := range f.Boats {
		if at[i] = find(b); at[i] != nil {
			out.Here++
			continue
		}
		same := slices.IndexFunc(fresh, func(k file.Kept) bool { return file.Same(k.Boat, b) })
		if same < 0 {
			same = len(fresh)
			fresh = append(fresh, file.Kept{Boat: b})
		} else {
			out.Here++
		}
		first[i] = same
	}
	out.Added = len(fresh)
	added, err := s.saveAll(fresh)
	if err != nil {
		return Put{}, filed{}, err
	}
	for i := range f.Boats {
		if at[i] == nil {
			at[i] = added[first[i]]
		}
	}
	return out, filed{at, added}, nil
}

// takeFrom puts a file's boats on the shelf, the current one in hand, and tells how many
// were brought back from where they were taken off.
func (s *Shelf) takeFrom(from filed, current int) (back int, err error) {
	for _, p := range from.all {
		if i := slices.Index(s.off, p); i >= 0 && s.BringBack(i) == nil {
			back++
		}
	}
	s.on = append(s.on, from.added...)
	if len(from.all) > 0 {
		if i := slices.Index(s.on, from.all[current]); i >= 0 {
			err = s.Take(i)
		}
	}
	return back, err
}

// saveAll keeps new boats and gives each a place. Where the store takes nothing at all
// they are in memory only.
func (s *Shelf) saveAll(fresh []file.Kept) ([]*place, error) {
	places := make([]*place, len(fresh))
	saved, err := s.keeper.SaveAll(fresh)
	switch {
	case err == nil:
		for i, b := range saved {
			places[i] = &place{id: b.ID, head: b.Head}
		}
	case s.keeper.Refuses():
		for i, k := range fresh {
			places[i] = &place{id: s.keeper.NewID(), work: Open(k.Boat, s.system)}
		}
	default:
		return nil, err
	}
	return places, nil
}

// finder finds boats that are here already. It reads only those with the same line.
func (s *Shelf) finder() func(file.Boat) *place {
	byLine := map[string][]*place{}
	for _, p := range slices.Concat(s.on, s.off) {
		byLine[p.line()] = append(byLine[p.line()], p)
	}
	read := map[*place]file.Boat{}
	return func(b file.Boat) *place {
		line, _ := design.Line(b.Design)
		for _, p := range byLine[line] {
			have, ok := read[p]
			if !ok {
				var err error
				if have, err = s.boat(p); err != nil {
					continue
				}
				read[p] = have
			}
			if file.Same(have, b) {
				return p
			}
		}
		return nil
	}
}

// TakeOver puts the boats that older pages kept under one key on the shelf, once. It has
// to be called before Open.
func (s *Shelf) TakeOver() error {
	f, ok := s.keeper.Old()
	if !ok {
		return nil
	}
	_, from, err := s.put(f)
	if err != nil {
		// There is no room for both. What is there is shown, and stays where it is.
		for _, b := range f.Boats {
			s.on = append(s.on, &place{id: s.keeper.NewID(), work: Open(b, s.system)})
		}
		return err
	}
	// Before one is worked out, which may stop the page: they are not to be added again.
	s.keeper.Taken()
	_, err = s.takeFrom(from, f.Current)
	return err
}

// Retry puts a boat that was set aside on the shelf again.
func (s *Shelf) Retry(key string) {
	s.keeper.Retry(key)
	for _, b := range s.keeper.Boats() {
		if keep.KeyOf(b.ID) == key && !slices.ContainsFunc(s.on, func(p *place) bool { return p.id == b.ID }) {
			s.list(b)
		}
	}
}
