package wood

import (
	"math/bits"

	"barkwright/core/units"
)

// StemBend is a piece to be split into laminations before it is bent: its outer
// face follows the curve, its laminations lie inside it, so that the innermost
// has the tightest bend.
type StemBend struct {
	Depth       float64 // of the whole piece in the plane of the bend, m, positive
	OuterRadius float64 // tightest radius of the curve its outer face follows, m; +Inf for straight
	Stock       Stock
}

// FromMiddle is a piece known by the radius at the middle of its whole thickness,
// as a gunwale's is, rather than at its outer face. Both lengths in metres.
func FromMiddle(radius, thickness float64, s Stock) StemBend {
	return StemBend{Depth: thickness, OuterRadius: radius + thickness/2, Stock: s}
}

// MaxSplits is the most laminations tried and the most that can be set: five rounds of
// halving, far past the six that are the most a source counts (Adney and Chapelle,
// 1964, p. 49; "six or more" p. 74).
const MaxSplits = 32

// thinnestDocumented is the thinnest lamination a source gives: about 1/16 in
// or a little more (Adney and Chapelle, 1964, p. 119). Metres.
const thinnestDocumented = units.Inch / 16

const splitsOutOfRange = "wood: number of laminations under one"

// Laminations checks each of n equal laminations, the outermost first: with
// t = Depth/n the i-th from the outside (from 0) has its middle at
// OuterRadius - (i + 1/2) t.
func (p StemBend) Laminations(n int) []Bend {
	if n < 1 {
		panic(splitsOutOfRange)
	}
	t := p.Depth / float64(n)
	bends := make([]Bend, n)
	for i := range bends {
		bends[i] = Check(p.OuterRadius-(float64(i)+0.5)*t, t, p.Stock)
	}
	return bends
}

// Innermost checks the innermost of n equal laminations, middle radius
// OuterRadius - Depth + t/2: the one that breaks first.
func (p StemBend) Innermost(n int) Bend {
	if n < 1 {
		panic(splitsOutOfRange)
	}
	t := p.Depth / float64(n)
	return Check(p.OuterRadius-p.Depth+t/2, t, p.Stock)
}

// Splits is a number of laminations and how it is reached.
type Splits struct {
	Laminations int
	Rounds      int  // rounds of halving that give at least that many
	Halved      int  // laminations after those rounds: the next power of two
	Innermost   Bend // of Laminations
	// ThinnerThanDocumented tells that the laminations are thinner than any a
	// source gives.
	ThinnerThanDocumented bool
}

// LeastSplits finds the fewest laminations, 1 to MaxSplits, whose innermost is in
// the given band or a better one; ok is false where MaxSplits are not enough, as
// where the curve is tighter than the piece is deep. The innermost R/t,
// n (OuterRadius/Depth - 1) + 1/2, grows with n, so more laminations, as after
// the last round of halving, are in the band too.
func LeastSplits(p StemBend, band Verdict) (s Splits, ok bool) {
	for n := 1; n <= MaxSplits; n++ {
		b := p.Innermost(n)
		if b.WillNotFit || b.Verdict > band {
			continue
		}
		rounds := bits.Len(uint(n - 1))
		return Splits{
			Laminations: n, Rounds: rounds, Halved: 1 << rounds, Innermost: b,
			ThinnerThanDocumented: b.Thickness < thinnestDocumented*(1-edgeAllowance),
		}, true
	}
	return Splits{}, false
}

// SplitsNeeded returns the least number of laminations whose innermost is within
// guide. It returns zero and false where MaxSplits are not enough.
func SplitsNeeded(stem StemBend) (n int, ok bool) {
	s, ok := LeastSplits(stem, WithinGuide)
	return s.Laminations, ok
}
