package bark

import (
	"math"
	"slices"
	"sort"
	"strconv"

	"barkwright/core/geom"
)

// laying is one way of laying bark over the boat.
type laying struct {
	d       *demand
	marks   marks
	sheets  []Sheet
	bed     []Laid
	joints  []float64
	port    []Laid
	star    []Laid
	butts   []Butt
	scant   []Scant
	beside  []Beside
	narrow  float64 // breadth the bed asks for where it is narrower; 0 where it is not
	wanting float64 // area of bark that is wanting, m2
	seams   float64 // about how long they are, m
}

// lay lays sheets over the boat: those listed or, without a list, as many of the size
// set as it takes. Of a list it tries the likeliest choices for the bed and keeps the
// one that leaves least wanting and then least to sew. A plain rule of this
// project: a good eye may find a better cut.
func lay(d *demand, m marks, listed []Sheet) *laying {
	set := Sheet{Width: d.hull.Design.SheetWidth, Length: d.hull.Design.SheetLength}
	if len(listed) == 0 {
		l := &laying{d: d, marks: m}
		order := endToEnd(d, set, 0)
		for range order {
			l.sheets = append(l.sheets, set)
		}
		l.layBed(order, true)
		l.layStrips(set, set)
		return l
	}
	more := Sheet{Width: max(set.Width, d.bed[0]), Length: set.Length}
	var best *laying
	for i, order := range d.choices(listed, more) {
		if best != nil && (i >= mostTriedShort || (i >= mostTried && best.wanting == 0)) {
			break
		}
		l := &laying{d: d, marks: m, sheets: slices.Clone(listed)}
		if !l.layBed(order, false) {
			continue
		}
		l.layStrips(Sheet{}, more)
		if best == nil || l.wanting < best.wanting-areaTolerance || (l.wanting < best.wanting+areaTolerance && l.seams < best.seams) {
			best = l
		}
	}
	if best == nil {
		// No choice keeps every piece a foot long.
		best = &laying{d: d, marks: m, sheets: slices.Clone(listed)}
		best.layBed(endToEnd(d, more, Wanting), true)
		best.layStrips(Sheet{}, more)
	}
	return best
}

// endToEnd is as many sheets of a size as reach, numbered from one on or all wanting.
func endToEnd(d *demand, s Sheet, first int) []bedSheet {
	order := make([]bedSheet, sheetsEndToEnd(d.whole, s.Length, d.hull.Design.SeamLap))
	for i := range order {
		order[i] = bedSheet{s, first}
		if first != Wanting {
			order[i].number += i
		}
	}
	return order
}

// areaTolerance is by how much two areas may differ that count as equal, m2.
const areaTolerance = 1e-9

// sheetsEndToEnd is how many sheets of a length, each lapped over the next, make
// up the whole.
func sheetsEndToEnd(whole, sheet, lap float64) int {
	if sheet >= whole {
		return 1
	}
	return 1 + int(math.Ceil((whole-sheet)/(sheet-lap)-1e-9))
}

// layBed lays sheets on the bed from the bow aft, each lapped outside the next so that
// no lap faces forward (Adney and Chapelle 1964, p. 147: two lengths in the bottom,
// lap to the stern).
func (l *laying) layBed(order []bedSheet, narrow bool) bool {
	d := l.d
	joints, ok := d.slide(order, &l.marks, narrow)
	if !ok {
		return false
	}
	lap := d.hull.Design.SeamLap
	l.joints, l.marks.joints = joints, joints
	for k, s := range order {
		p := Laid{Name: OnBed.letter() + strconv.Itoa(k+1), Side: OnBed, Sheet: s.number, Aft: -d.whole / 2, Bow: d.whole / 2, Width: s.Width}
		if k > 0 {
			p.Bow = joints[k-1] + lap/2
		}
		if k < len(joints) {
			p.Aft = joints[k] - lap/2
			l.seams += d.at(d.full, joints[k])
		}
		if asked := d.bedAt(p.Aft, p.Bow); asked > p.Width {
			l.narrow = max(l.narrow, asked)
		}
		if p.Wanting() {
			l.wanting += d.areaUnder(p)
		}
		l.bed = append(l.bed, p)
	}
	return true
}

// areaUnder is the area of the boat that a piece on the bed covers, m2.
func (d *demand) areaUnder(p Laid) float64 {
	sum := 0.0
	places := d.between(p.Aft, p.Bow)
	for i := 1; i < len(places); i++ {
		a, b := min(p.Width, d.at(d.full, places[i-1])), min(p.Width, d.at(d.full, places[i]))
		sum += (a + b) / 2 * (places[i] - places[i-1])
	}
	return sum
}

// left is what is cut off the bed's sheets, and the sheets that do not lie on it.
func (l *laying) left() []offcut {
	var out []offcut
	used := map[int]bool{}
	for _, p := range l.bed {
		if p.Wanting() {
			continue
		}
		used[p.Sheet] = true
		s := l.sheets[p.Sheet]
		if over := s.Length - p.Length(); over > samePlace {
			out = append(out, offcut{p.Sheet, FromEnd, s.Width, over})
		}
		if spare := (s.Width - l.d.most(l.d.full, p.Aft, p.Bow)) / 2; spare > samePlace {
			side := offcut{p.Sheet, FromSide, spare, p.Length()}
			out = append(out, side, side)
		}
	}
	for i, s := range l.sheets {
		if !used[i] {
			out = append(out, offcut{sheet: i, width: s.Width, length: s.Length})
		}
	}
	return out
}

// layStrips cuts the side panels of both sides from what is left of the sheets, the
// widest stretches first. more is a sheet that may be brought besides, and set the
// size of what is wanting.
func (l *laying) layStrips(more, set Sheet) {
	b := &beside{l.d, l.bed}
	stretches, scant := b.stretches()
	l.scant = scant
	st := stock{left: l.left(), sheets: l.sheets, more: more}
	if lengths := st.lengths(fitLap(l.d.hull.Design)); len(lengths) > 0 {
		for i := range stretches {
			stretches[i] = b.shortened(stretches[i], lengths[0])
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
	lap := fitLap(l.d.hull.Design)
	if aft > s.aft {
		aft -= lap / 2
	}
	if bow < s.bow {
		bow += lap / 2
	}
	return Laid{Aft: aft, Bow: bow, Width: b.mostLack(aft, bow) + lap, Inside: s.aft < 0 && s.bow > 0 && aft < 0 && bow >= 0}
}

// alike cuts the strips of stretches alike for both sides, as long as they can be had,
// and reports false where there is no bark for that.
func (l *laying) alike(b *beside, stretches []stretchOf, st *stock) bool {
	for _, longest := range st.lengths(fitLap(l.d.hull.Design)) {
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

// splitAll splits stretches into strips no longer than longest: two of each, for the
// two sides, the widest first.
func (l *laying) splitAll(b *beside, stretches []stretchOf, longest float64) (strips []Laid, butts []float64, ok bool) {
	lap := fitLap(l.d.hull.Design)
	for _, s := range stretches {
		least := 1
		if s.aft < 0 && s.bow > 0 {
			least = max(1, l.d.hull.Design.Panels)
		}
		at, _, ok := l.marks.split(s, longest, lap, least)
		if !ok {
			return nil, nil, false
		}
		butts = append(butts, at...)
		ends := append(append([]float64{s.aft}, at...), s.bow)
		for i := 1; i < len(ends); i++ {
			p := l.strip(b, s, ends[i-1], ends[i])
			strips = append(strips, p, p)
		}
	}
	sort.SliceStable(strips, func(i, k int) bool { return strips[i].Width > strips[k].Width })
	return strips, butts, true
}

// cutAll cuts strips and notes what each is cut from; it reports false where one cannot
// be had.
func (s *stock) cutAll(strips []Laid) bool {
	for i := range strips {
		o, ok := s.cut(strips[i].Width, strips[i].Length())
		if !ok {
			return false
		}
		strips[i].Sheet, strips[i].From = o.sheet, o.from
	}
	return true
}

func (l *laying) butt(b *beside, at float64, port bool) {
	length := max(0, b.lackAt(at)-l.d.hull.Design.GunwaleTurn)
	l.butts = append(l.butts, Butt{Along: at, Port: port, Length: length})
	l.seams += length
}

// fill lays strips of one side from a stretch's forward end aft, each as long as the
// bark there is. Where no more is wide enough, the rest is split as for sheets of the
// size set, and those of its strips that cannot be cut are wanting.
func (l *laying) fill(b *beside, s stretchOf, st *stock, set Sheet, side *[]Laid, port bool) {
	lap := fitLap(l.d.hull.Design)
	bow := s.bow
	for {
		p := l.strip(b, s, s.aft, bow)
		if o, ok := st.cut(p.Width, p.Length()); ok {
			p.Sheet, p.From = o.sheet, o.from
			*side = append(*side, p)
			return
		}
		aft, ok := l.longestFrom(b, s, bow, st)
		if !ok {
			break
		}
		p = l.strip(b, s, aft, bow)
		o, _ := st.cut(p.Width, p.Length())
		p.Sheet, p.From = o.sheet, o.from
		*side = append(*side, p)
		l.butt(b, aft, port)
		bow = aft
	}
	rest := stretchOf{s.aft, bow}
	butts, _, ok := l.marks.split(rest, max(set.Length-lap/2, leastPiece), lap, 1)
	if !ok {
		butts = nil
	}
	ends := append(append([]float64{s.aft}, butts...), bow)
	for i := 1; i < len(ends); i++ {
		p := l.strip(b, s, ends[i-1], ends[i])
		if o, ok := st.cut(p.Width, p.Length()); ok {
			p.Sheet, p.From = o.sheet, o.from
		} else {
			p.Sheet = Wanting
			l.wanting += b.areaBeside(p)
		}
		*side = append(*side, p)
		if i > 1 {
			l.butt(b, ends[i-1], port)
		}
	}
}

// longestFrom is the after end of the longest strip that can be cut for a stretch from
// a place aft, at the best butt within a foot of that, and leaves a foot or more.
func (l *laying) longestFrom(b *beside, s stretchOf, bow float64, st *stock) (aft float64, ok bool) {
	lap := fitLap(l.d.hull.Design)
	for _, length := range st.lengths(lap) {
		reach := max(bow-length+lap/2, s.aft+leastPiece)
		if bow < s.bow {
			reach += lap / 2
		}
		if bow-reach < leastPiece || !st.has(l.strip(b, s, reach, bow)) {
			continue
		}
		aft = reach
		least := l.marks.buttCost(aft)
		for _, x := range l.marks.buttPlaces(stretchOf{reach, min(bow-leastPiece, reach+leastPiece)}, leastPiece, lap) {
			if c := l.marks.buttCost(x); c < least-1 && x > reach {
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

// Beside is a stretch in which a piece on the bed is narrower than the boat, so that
// a panel is sewn on there on both sides.
type Beside struct {
	Piece    int         // its number on the bed, from the bow
	Aft, Bow float64     // along the flat bark, m forward of amidships
	Width    float64     // of the strip that each side takes, with the lap and the bark to trim, m
	Path     []geom.Vec3 // the seam on the hull, port side, from the after end forward
	Seam     float64     // length of the seam, m
}

// measure measures the seams that panels are sewn on by.
func (l *laying) measure() {
	for i := range l.beside {
		b := &l.beside[i]
		b.Path = l.d.edgeOn(b.Aft, b.Bow, l.bed[b.Piece].Width/2)
		b.Seam = pathLength(b.Path)
	}
}

// besides lists where panels are sewn to the bark on the bed.
func (l *laying) besides(b *beside, stretches []stretchOf) {
	for i := range l.bed {
		from, to := b.extent(i)
		for _, s := range stretches {
			aft, bow := max(from, s.aft), min(to, s.bow)
			if aft >= bow {
				continue
			}
			side := Beside{Piece: i, Aft: aft, Bow: bow, Width: b.mostLack(aft, bow) + fitLap(l.d.hull.Design)}
			l.beside = append(l.beside, side)
			l.seams += 2 * (bow - aft)
		}
	}
}

// edgeOn is the edge of bark half wide out from the centre line, on the hull between
// two places along: as far as the end profile, which it ends on.
func (d *demand) edgeOn(aft, bow, half float64) []geom.Vec3 {
	var out []geom.Vec3
	past := func(along float64) float64 { return d.lineAt(along).lifted - half }
	add := func(l line, along float64) {
		q := l.At(l.girthAt(half))
		q.X = math.Copysign(q.X, along)
		out = append(out, q)
	}
	// near adds what lies between one that is on the bark and the end profile, closer
	// toward that, where the edge runs ever steeper.
	near := func(on, end float64) {
		for k := endPieces - 1; k > 0; k-- {
			t := float64(k) / endPieces
			along := end + (on-end)*t*t
			add(d.lineAt(along), along)
		}
	}
	places := d.between(aft, bow)
	was := false
	for i, x := range places {
		l := d.columnAt(i, len(places), x)
		on := l.lifted <= half
		if i > 0 && on != was {
			last := places[i-1]
			if end, ok := geom.Bisect(past, last, x, placeTolerance); ok {
				if was {
					near(last, end)
				}
				add(d.lineAt(end), end)
				if on {
					for k := 1; k < endPieces; k++ {
						t := float64(k) / endPieces
						along := end + (x-end)*t*t
						add(d.lineAt(along), along)
					}
				}
			}
		} else if on && i > 0 && min(math.Abs(x), math.Abs(places[i-1])) >= d.bottom.heel()-samePlace {
			for k := 1; k < pastPieces; k++ {
				along := places[i-1] + (x-places[i-1])*float64(k)/pastPieces
				add(d.lineAt(along), along)
			}
		}
		if on {
			add(l, x)
		}
		was = on
	}
	return out
}

// columnAt is the column at the i-th of n places: those between the first and the
// last are the plain ones.
func (d *demand) columnAt(i, n int, x float64) line {
	if i > 0 && i < n-1 {
		if k := sort.SearchFloat64s(d.along, math.Abs(x)); k < len(d.along) && d.along[k] == math.Abs(x) {
			return d.columns[k]
		}
	}
	return d.lineAt(x)
}
