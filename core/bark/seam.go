package bark

import (
	"math"

	"barkwright/core/design"
	"barkwright/core/geom"
	"barkwright/core/units"
)

// Kind is a kind of seam.
type Kind int

// The kinds, in the order they are sewn.
const (
	GoreSeams Kind = iota
	PanelSeams
	JointSeams
	EndSeams
)

// Kinds lists them in their order.
func Kinds() []Kind { return []Kind{GoreSeams, PanelSeams, JointSeams, EndSeams} }

// Stitching is how a seam is sewn.
type Stitching int

const (
	// OverAndOver is one strand: straight across outside, slanting inside.
	OverAndOver Stitching = iota
	// TwoStrandRunning is two strands in and out through the same holes, each on
	// the other side of the bark from the other.
	TwoStrandRunning
	// OverTheEdge is one strand spiralling through a sandwich and back round its edge.
	OverTheEdge
)

func (s Stitching) String() string {
	return [...]string{"over and over", "two-strand running", "spiral over the edge"}[s]
}

// Sewing is a kind of seam's stitches.
type Sewing struct {
	Stitching Stitching
	Pitch     float64 // along the seam from stitch to stitch, m
	Bite      float64 // from hole to hole across the seam, or from edge to hole twice, m
	Thickness float64 // of all that the root passes through, m
}

// SewingOf returns how a kind of seam is sewn.
//
// Gores are sewn over and over, straight across outside and slanting inside, and
// so are side panels (Adney and Chapelle 1964, pp. 43, 45, 48). An end joint is
// taken as two-strand running: the book has that stitch, as a harness stitch, on
// seams in general, and does not say how end joints of the sheet are sewn; a
// choice of this project. The ends are a spiral over the stem's edge (pp. 43, 49),
// through the stem-piece between two barks. A lap doubles the bark.
func SewingOf(k Kind, d design.Design) Sewing {
	bark := d.BarkThickness
	if d.SeamLap > 0 {
		bark *= 2
	}
	switch k {
	case GoreSeams:
		return Sewing{OverAndOver, d.GoreStitch, d.GoreBite, bark}
	case PanelSeams:
		return Sewing{OverAndOver, d.PanelStitch, d.PanelBite, bark}
	case JointSeams:
		return Sewing{TwoStrandRunning, d.JointStitch, d.JointBite, bark}
	case EndSeams:
		return Sewing{OverTheEdge, d.EndStitch, d.EndBite, 2*d.BarkThickness + d.StemWidth}
	}
	panic(noSuchKind)
}

const noSuchKind = "bark: no such kind of seam"

// PerStitch is the root one stitch takes, m. Over and over: across, back on the
// slant and twice through. Two-strand running: twice the pitch and once through.
// Over the edge: through, out to the edge and in again, and round it on the slant.
func (s Sewing) PerStitch() float64 {
	switch s.Stitching {
	case OverAndOver:
		return s.Bite + math.Hypot(s.Pitch, s.Bite) + 2*s.Thickness
	case TwoStrandRunning:
		return 2*s.Pitch + s.Thickness
	case OverTheEdge:
		return s.Thickness + s.Bite + math.Hypot(s.Pitch, s.Thickness)
	}
	panic(noSuchStitching)
}

// holes is how many holes a seam of so many stitches has: one each side of the
// seam for every stitch over and over, one right through for every turn over the
// edge; running stitches share theirs.
func (s Sewing) holes(stitches int) int {
	switch s.Stitching {
	case OverAndOver:
		return 2 * stitches
	case TwoStrandRunning:
		return stitches + 1
	case OverTheEdge:
		return stitches
	}
	panic(noSuchStitching)
}

const noSuchStitching = "bark: no such stitching"

// Seam is all the seams of a kind in the whole boat.
type Seam struct {
	Kind     Kind
	Sewing   Sewing
	Count    int     // of seams
	Length   float64 // of them all on the hull, m
	Stitches int
	Holes    int
	Root     float64 // split root before waste, m
	// Strands is the root that each seam takes, or each of its two strands where it is
	// sewn with two, m.
	Strands []float64
}

// newSeam sews seams of the given lengths, each alike so many times over.
func newSeam(k Kind, d design.Design) Seam { return Seam{Kind: k, Sewing: SewingOf(k, d)} }

// add sews so many seams of a length.
func (s *Seam) add(length float64, times int) {
	if length <= 0 {
		return
	}
	stitches := int(geom.Ceil(length / s.Sewing.Pitch))
	s.Count += times
	s.Length += float64(times) * length
	s.Stitches += times * stitches
	s.Holes += times * s.Sewing.holes(stitches)
	root := float64(stitches) * s.Sewing.PerStitch()
	s.Root += float64(times) * root
	for range times {
		if s.Sewing.Stitching == TwoStrandRunning {
			s.Strands = append(s.Strands, root/2, root/2)
			continue
		}
		s.Strands = append(s.Strands, root)
	}
}

// Root is the split root for the seams and what is dug for it.
type Root struct {
	Split     float64 // before waste, m
	WithWaste float64 // split root, m
	Dug       float64 // as it grows, with waste, m: split in half, one root gives two strands
	Whole     int     // roots of the length they grow to at most that make it up
}

// RootGrows is the length that roots of black spruce grow to (Adney and Chapelle
// 1964, p. 16).
const RootGrows = 20 * units.Foot

// strandsPerRoot is how many strands a root gives: it is split in half (Adney and
// Chapelle 1964, pp. 42-43).
const strandsPerRoot = 2

// NewRoot is the root that gives so much split root, metres, with a share for waste.
func NewRoot(split, waste float64) Root {
	r := Root{Split: split, WithWaste: split * (1 + waste)}
	r.Dug = r.WithWaste / strandsPerRoot
	r.Whole = int(geom.Ceil(r.Dug / RootGrows))
	return r
}
