package bark

import (
	"math"

	"barkwright/core/geom"
	"barkwright/core/hull"
)

// Verdict says whether a boat can be built from the sheets it is laid out with.
type Verdict int

const (
	// Enough is bark that covers the boat in one piece.
	Enough Verdict = iota
	// EnoughSewn is bark that covers it when joints and side panels are sewn.
	EnoughSewn
	// CannotBeBuilt is bark that leaves some of it bare.
	CannotBeBuilt
)

// Verdict is that of the sheets laid. What is scant does not count: it is said.
func (l *Layout) Verdict() Verdict {
	switch {
	case l.Short > 0 || l.Asked > 0:
		return CannotBeBuilt
	case len(l.Joints)+len(l.Beside) > 0:
		return EnoughSewn
	}
	return Enough
}

// Uneven tells whether the sheets on the bed differ in width: gores and panels are those
// beside the narrowest.
func (l *Layout) Uneven() bool {
	for _, p := range l.Bed {
		if math.Abs(p.Width-l.Bed[0].Width) > samePlace {
			return true
		}
	}
	return false
}

// Wanting lists the pieces that there is no bark for, those on the bed first.
func (l *Layout) Wanting() []Laid {
	var out []Laid
	for _, p := range l.Pieces() {
		if p.Wanting() {
			out = append(out, p)
		}
	}
	return out
}

// Pieces lists all pieces: the bed's, the port side's and the starboard side's, each
// from the bow aft.
func (l *Layout) Pieces() []Laid {
	out := make([]Laid, 0, len(l.Bed)+len(l.Port)+len(l.Star))
	return append(append(append(out, l.Bed...), l.Port...), l.Star...)
}

// CoversFlat tells whether a list of sheets covers a boat by the lengths of its bark laid flat, to a picture's
// mesh, and by strips as broad and as long as their sides then ask; where that does not converge, by the
// plain lengths. w is memory to work in; where its pause ends the work the answer means nothing.
func CoversFlat(h *hull.Hull, sheets []Sheet, w *geom.FlattenWorkspace) bool {
	if len(sheets) == 0 {
		return false
	}
	l := PlanWith(h, sheets)
	if f := Flatten(h, l, ForPicture, nil, w); f.State == geom.Converged {
		l.takeFlat(h, &f, sheets)
	}
	return l.Verdict() != CannotBeBuilt
}

// Covers tells whether a list of sheets covers a boat, by the plain lengths: sooner known than CoversFlat.
func Covers(h *hull.Hull, sheets []Sheet) bool {
	if len(sheets) == 0 {
		return false
	}
	bottom := bottomRun(h)
	d := newDemand(h, plainColumns(h), bottom, plainFlatLength(h, bottom))
	l := Layout{Gores: gores(h, goreShares(h.Design))}
	return lay(&d, l.marks(&d), sheets).wanting == 0
}
