package bark

import (
	"math"
	"sort"

	"barkwright/core/geom"
)

// Beside is a stretch in which a piece on the bed is narrower than the boat, so that
// a panel is sewn on there on both sides.
type Beside struct {
	Piece    int         // its number on the bed, from the bow
	Aft, Bow float64     // along the flat bark, m forward of amidships
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
			side := Beside{Piece: i, Aft: aft, Bow: bow}
			l.beside = append(l.beside, side)
			l.seams += 2 * (bow - aft)
		}
	}
}

// edgeOn is the edge of bark half wide out from the centre line, on the hull between
// two places along: as far as the end profile, which it ends on.
func (d *demand) edgeOn(aft, bow, half float64) []geom.Vec3 {
	var out []geom.Vec3
	past := func(along float64) float64 { return d.columnAlong(along).lifted - half }
	add := func(l column, along float64) {
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
			add(d.columnAlong(along), along)
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
				add(d.columnAlong(end), end)
				if on {
					for k := 1; k < endPieces; k++ {
						t := float64(k) / endPieces
						along := end + (x-end)*t*t
						add(d.columnAlong(along), along)
					}
				}
			}
		} else if on && i > 0 && min(math.Abs(x), math.Abs(places[i-1])) >= d.bottom.heel()-samePlace {
			for k := 1; k < pastPieces; k++ {
				along := places[i-1] + (x-places[i-1])*float64(k)/pastPieces
				add(d.columnAlong(along), along)
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
func (d *demand) columnAt(i, n int, x float64) column {
	if i > 0 && i < n-1 {
		if k := sort.SearchFloat64s(d.along, math.Abs(x)); k < len(d.along) && d.along[k] == math.Abs(x) {
			return d.columns[k]
		}
	}
	return d.columnAlong(x)
}
