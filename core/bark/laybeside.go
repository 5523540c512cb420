package bark

import "barkwright/core/geom"

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
	var e *edge
	for i := range l.beside {
		b := &l.beside[i]
		if half := l.bed[b.Piece].Width / 2; e == nil || e.half != half {
			e = l.d.edge(half)
		}
		b.Path = e.path(b.Aft, b.Bow)
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
