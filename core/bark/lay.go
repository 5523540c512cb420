package bark

import (
	"barkwright/core/geom"
	"slices"
	"strconv"
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
	over    []Offcut // what nothing is cut from
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
		if best == nil || l.wanting < best.wanting-areaTolerance ||
			(l.wanting < best.wanting+areaTolerance && l.seams < best.seams) {
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
	return 1 + int(geom.Ceil((whole-sheet)/(sheet-lap)))
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
		p := Laid{Name: OnBed.letter() + strconv.Itoa(k+1), Side: OnBed, Sheet: s.number,
			Aft: -d.whole / 2, Bow: d.whole / 2, Width: s.Width}
		if k > 0 {
			p.Bow = joints[k-1] + lap/2
		}
		if k < len(joints) {
			p.Aft = joints[k] - lap/2
			l.seams += d.at(d.full, joints[k])
		}
		if !p.Wanting() {
			p.Cut.Along = max(0, s.Length-p.Length())
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
			out = append(out, offcut{Offcut{Sheet: p.Sheet, Length: over, Width: s.Width}, FromEnd})
		}
		if spare := (s.Width - l.d.most(l.d.full, p.Aft, p.Bow)) / 2; spare > samePlace {
			side := offcut{Offcut{p.Sheet, p.Length(), spare, p.Cut}, FromSide}
			out = append(out, side)
			side.At.Across = s.Width - spare
			out = append(out, side)
		}
	}
	for i, s := range l.sheets {
		if !used[i] {
			out = append(out, offcut{Offcut: Offcut{Sheet: i, Width: s.Width, Length: s.Length}})
		}
	}
	return out
}
