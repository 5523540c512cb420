// Package crew answers where the people aboard and the cargo have their centres of
// mass.
package crew

import "barkwright/core/design"

// PostureSpread is how far either way the heights of CentreHeight may be from a
// person's, m: the segment model is 3 cm above the one published sitting value
// (USAF, Santschi et al. 1963: 0.24 to 0.25 m above the seat, from memory), and
// results are to be rounded to 5 cm.
const PostureSpread = 0.05

const (
	unknownPosture = "crew: unknown posture"
	badSeatHeight  = "crew: seat height negative"
	badStature     = "crew: stature not positive"
)

// heightAt is a centre of mass at a seat height, both above the bottom, m.
type heightAt struct{ seat, centre float64 }

// Estimates of a segment model: segment masses and centres after de Leva, J.
// Biomechanics 29 (1996) 1223-1230 (fractions from memory), for design.ModelStature.
// At a seat height of zero the paddler sits on the heels or on the bottom.
var (
	kneelingHeights = []heightAt{{0, 0.37}, {0.20, 0.44}, {0.25, 0.47}, {0.30, 0.51}}
	sittingHeights  = []heightAt{{0, 0.29}, {0.20, 0.48}, {0.25, 0.53}, {0.30, 0.57}}
)

// CentreHeight returns the height of a paddler's centre of mass over the inside of
// the bottom, m, for a stature and a seat at a height over it. Sitting on the bottom
// leaves the seat out. Between the model's seat heights it is interpolated linearly,
// above the last it keeps the slope. Another stature scales the model as a whole. It
// panics on a negative seat height, a stature that is not positive or an unknown posture.
func CentreHeight(p design.Posture, seat, stature float64) float64 {
	if !(seat >= 0) {
		panic(badSeatHeight)
	}
	if !(stature > 0) {
		panic(badStature)
	}
	scale := stature / design.ModelStature
	return scale * modelHeight(p, seat/scale)
}

func modelHeight(p design.Posture, seat float64) float64 {
	switch p {
	case design.Kneeling:
		return along(kneelingHeights, seat)
	case design.SittingOnBottom:
		return sittingHeights[0].centre
	case design.SittingOnSeat:
		return along(sittingHeights, seat)
	}
	panic(unknownPosture)
}

func along(table []heightAt, seat float64) float64 {
	i := 0
	for i+2 < len(table) && table[i+1].seat < seat {
		i++
	}
	a, b := table[i], table[i+1]
	return a.centre + (seat-a.seat)*(b.centre-a.centre)/(b.seat-a.seat)
}
