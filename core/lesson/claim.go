package lesson

import (
	"math"

	"barkwright/core/design"
	"barkwright/core/units"
)

// at is a result at a step, to be added or, with less, taken off.
func at(result string, step int) Term   { return Term{1, result, step} }
func less(result string, step int) Term { return Term{-1, result, step} }

// times is a term that counts so many times.
func (t Term) times(a float64) Term {
	t.A *= a
	return t
}

// rises claims that a result is more at each step than at the one before, and falls that it
// is less.
func rises(says, result string, steps ...int) []Claim { return each(says, result, 1, steps) }
func falls(says, result string, steps ...int) []Claim { return each(says, result, -1, steps) }

func each(says, result string, way float64, steps []int) []Claim {
	// By more than rounding.
	const least = 1e-6
	var out []Claim
	for i := 1; i < len(steps); i++ {
		out = append(out, Claim{Says: says, Terms: []Term{{way, result, steps[i]}, {-way, result, steps[i-1]}}, Least: least})
	}
	return out
}

// claim is that a sum is at least so much.
func claim(says string, least float64, terms ...Term) Claim {
	return Claim{Says: says, Terms: terms, Least: least}
}

// same claims that two terms differ by so much at most.
func same(says string, within float64, a, b Term) []Claim {
	return []Claim{claim(says, -within, a, b.times(-1)), claim(says, -within, a.times(-1), b)}
}

// where limits a claim to some boats.
func (c Claim) where(limit string, is func(*Run) bool) Claim {
	c.Limit, c.Where = limit, is
	return c
}

// widestAmidships tells whether the sheet has to be widest near the middle.
func widestAmidships(r *Run) bool {
	c := r.Canoes[0]
	return c.Bark.Needs.WidestAt < c.Design.HalfGunwale()/4
}

// oneSheetInRange tells whether a sheet as wide as is wanted can be set.
func oneSheetInRange(r *Run) bool {
	wide := r.Value("bark.width", 0)
	return wide <= widestSheet && wide > narrowSheet
}

const (
	widestSheet = 80 * units.Inch
	narrowSheet = 40 * units.Inch
)

// limited limits claims to some boats.
func limited(limit string, is func(*Run) bool, claims []Claim) []Claim {
	out := make([]Claim, len(claims))
	for i, c := range claims {
		out[i] = c.where(limit, is)
	}
	return out
}

// blocksFollow tells whether the blocks under the heels follow the rocker.
func blocksFollow(r *Run) bool {
	p, _ := design.Lookup("endBlocking")
	return !p.Owned(r.Canoes[0].Design)
}

// boltsCounted tells whether the trunk gives every piece of wood.
func boltsCounted(r *Run) bool { return !math.IsNaN(r.Value("logs.bolts", 0)) }

// all joins claims.
func all(lists ...[]Claim) []Claim {
	var out []Claim
	for _, l := range lists {
		out = append(out, l...)
	}
	return out
}

// one is a list of claims one by one.
func one(claims ...Claim) []Claim { return claims }
