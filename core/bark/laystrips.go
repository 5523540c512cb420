package bark

import (
	"sort"
	"strconv"
)

// layStrips cuts the side panels of both sides from what is left of the sheets, the
// widest stretches first. more is a sheet that may be brought besides, and set the
// size of what is wanting.
func (l *laying) layStrips(more, set Sheet) {
	b := &beside{l.d, l.bed}
	stretches, scant := b.stretches()
	l.scant = scant
	st := stock{left: l.left(), sheets: l.sheets, more: more}
	if lengths := st.lengths(fitLap(&l.d.hull.Design)); len(lengths) > 0 {
		for i := range stretches {
			s := b.shortened(stretches[i], lengths[0])
			if longer := l.strip(b, s, s.aft, s.bow).Longer; longer > 0 {
				s = b.shortened(stretches[i], lengths[0]-longer)
			}
			stretches[i] = s
		}
	}
	l.besides(b, stretches)
	sort.SliceStable(stretches, func(i, k int) bool {
		return b.mostLack(stretches[i].aft, stretches[i].bow) > b.mostLack(stretches[k].aft, stretches[k].bow)
	})
	if !l.alike(b, stretches, &st) {
		for _, s := range stretches {
			if !l.alike(b, []stretchOf{s}, &st) {
				l.fill(b, s, &st, set, &l.port, true)
				l.fill(b, s, &st, set, &l.star, false)
			}
		}
	}
	l.sheets = st.sheets
	for _, o := range st.left {
		if o.Width > samePlace && o.Length > samePlace {
			l.over = append(l.over, o.Offcut)
		}
	}
	name(l.port, Port)
	name(l.star, Starboard)
}

// name numbers strips from the bow.
func name(strips []Laid, side Side) {
	sort.SliceStable(strips, func(i, k int) bool { return strips[i].Bow > strips[k].Bow })
	for i := range strips {
		strips[i].Name, strips[i].Side = side.letter()+strconv.Itoa(i+1), side
	}
}

// strip is the piece of a stretch between two butts.
func (l *laying) strip(b *beside, s stretchOf, aft, bow float64) Laid {
	lap := fitLap(&l.d.hull.Design)
	if aft > s.aft {
		aft -= lap / 2
	}
	if bow < s.bow {
		bow += lap / 2
	}
	d := &l.d.hull.Design
	width, beyond := b.mostLack(aft, bow)+lap, d.GunwaleTurn+d.SeamLap
	panels := b.sideBetween(aft, bow)
	length := bow - aft
	if len(panels) > 1 {
		width, length = panels.within(width, beyond)
	}
	return Laid{Aft: aft, Bow: bow, Width: width, Longer: max(0, length-(bow-aft)),
		Inside: s.aft < 0 && s.bow > 0 && aft < 0 && bow >= 0}
}

// alike cuts the strips of stretches alike for both sides, as long as they can be had,
// and reports false where there is no bark for that.
func (l *laying) alike(b *beside, stretches []stretchOf, st *stock) bool {
	for _, longest := range st.lengths(fitLap(&l.d.hull.Design)) {
		strips, butts, ok := l.splitAll(b, stretches, longest)
		if !ok {
			continue
		}
		for _, across := range []bool{false, true} {
			trial := st.clone()
			trial.across = across
			if !trial.cutAll(strips) {
				continue
			}
			trial.across = st.across
			*st = trial
			for i, p := range strips {
				if i%2 == 0 {
					l.port = append(l.port, p)
				} else {
					l.star = append(l.star, p)
				}
			}
			for _, x := range butts {
				l.butt(b, x, true)
				l.butt(b, x, false)
			}
			return true
		}
	}
	return len(stretches) == 0
}

// cutAll cuts strips and notes what each is cut from; it reports false where one cannot
// be had.
func (s *stock) cutAll(strips []Laid) bool {
	for i := range strips {
		o, ok := s.cut(strips[i].Width, strips[i].Length())
		if !ok {
			return false
		}
		strips[i].cutFrom(o)
	}
	return true
}

// cutFrom notes what a strip is cut from.
func (l *Laid) cutFrom(o offcut) { l.Sheet, l.From, l.Cut = o.Sheet, o.from, o.At }

func (l *laying) butt(b *beside, at float64, port bool) {
	length := max(0, b.lackAt(at)-l.d.hull.Design.GunwaleTurn)
	l.butts = append(l.butts, Butt{Along: at, Port: port, Length: length})
	l.seams += length
}

// fill lays strips of one side from a stretch's forward end aft, each as long as the
// bark there is. Where no more is wide enough, the rest is split as for sheets of the
// size set, and those of its strips that cannot be cut are wanting.
func (l *laying) fill(b *beside, s stretchOf, st *stock, set Sheet, side *[]Laid, port bool) {
	lap := fitLap(&l.d.hull.Design)
	bow := s.bow
	for {
		p := l.strip(b, s, s.aft, bow)
		if o, ok := st.cut(p.Width, p.Length()); ok {
			p.cutFrom(o)
			*side = append(*side, p)
			return
		}
		aft, ok := l.longestFrom(b, s, bow, st)
		if !ok {
			break
		}
		p = l.strip(b, s, aft, bow)
		o, _ := st.cut(p.Width, p.Length())
		p.cutFrom(o)
		*side = append(*side, p)
		l.butt(b, aft, port)
		bow = aft
	}
	rest := stretchOf{s.aft, bow}
	pieces, butts, _ := l.split(b, s, rest, max(set.Length-lap/2, leastPiece), max(set.Length, leastPiece), 1)
	for _, p := range pieces {
		if o, ok := st.cut(p.Width, p.Length()); ok {
			p.cutFrom(o)
		} else {
			p.Sheet = Wanting
			l.wanting += b.areaBeside(p)
		}
		*side = append(*side, p)
	}
	for _, x := range butts {
		l.butt(b, x, port)
	}
}

// longestFrom is the after end of the longest strip that can be cut for a stretch from
// a place aft, at the best butt within a foot of that, and leaves a foot or more.
func (l *laying) longestFrom(b *beside, s stretchOf, bow float64, st *stock) (aft float64, ok bool) {
	lap := fitLap(&l.d.hull.Design)
	for _, length := range st.lengths(lap) {
		reach := max(bow-length+lap/2, s.aft+leastPiece)
		if bow < s.bow {
			reach += lap / 2
		}
		p := l.strip(b, s, reach, bow)
		for bow-reach >= leastPiece && p.Length() > length+samePlace {
			reach += p.Length() - length
			p = l.strip(b, s, reach, bow)
		}
		if bow-reach < leastPiece || !st.has(p) {
			continue
		}
		aft = reach
		least := l.marks.buttCost(aft)
		for _, x := range l.marks.buttPlaces(stretchOf{reach, min(bow-leastPiece, reach+leastPiece)}, leastPiece, lap) {
			if c := l.marks.buttCost(x); c < least-1 && x > reach && st.has(l.strip(b, s, x, bow)) {
				aft, least = x, c
			}
		}
		return aft, true
	}
	return 0, false
}

// has tells whether a strip can be cut from what is left.
func (s *stock) has(p Laid) bool {
	trial := s.clone()
	_, ok := trial.cut(p.Width, p.Length())
	return ok
}
