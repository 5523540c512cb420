// Package known says how a fact is known: whether it was worked out, printed, common
// practice or an estimate, and where it is written. It imports nothing, so that every
// other package may cite.
package known

// Basis is how a number is known.
type Basis string

// The four of them. One is no better than another: what is computed is exact of a shape
// that was assumed, and what is published is one boat's.
const (
	Computed       Basis = "computed from your shape"
	Published      Basis = "from a published rule"
	CommonPractice Basis = "common practice"
	Estimate       Basis = "estimate"
)

// Source is how a fact is known and where that is written.
type Source struct {
	Basis Basis
	// Cited names the work and its pages, or says that none was found.
	Cited string
}

// Works and standing reasons that are cited in more than one place.
const (
	BarkCanoes = "E. T. Adney and H. I. Chapelle, The Bark Canoes and Skin Boats of North America, " +
		"Smithsonian Institution, 1964"
	NoSource    = "common practice, no published source"
	OwnEstimate = "estimate of this calculator, no published source"
)
