package frame_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/design"
	"barkwright/core/frame"
	"barkwright/core/internal/check"
)

// The published example's own timber gives its own joints: inwales 1 1/2 in square to
// 3/4 by 1 to 1 1/4, almost 1/2 in of bevel, a 2 in cap to 1 (Adney and Chapelle 1964,
// pp. 38, 52).
func TestJoineryOfTheExample(t *testing.T) {
	j := frame.NewJoinery(check.With(t, "inwaleThickness", 1.5*inch, "inwaleDepth", 1.5*inch, "capWidth", 2*inch))
	assert.InDelta(t, 0.5, j.Bevel/inch, rounding)
	assert.InDelta(t, 0.75, j.EndThickness/inch, rounding)
	assert.GreaterOrEqual(t, j.EndDepth, 1*inch)
	assert.LessOrEqual(t, j.EndDepth, 1.25*inch)
	assert.InDelta(t, 1, j.CapEnd/inch, rounding)
}

// What the example gives in inches is any boat's: half-arrowheads 3 in long (p. 38),
// mortises 1/4 by 2, thwarts 5/16 thick at the shoulder, lashing holes 1 1/2 in from it,
// three in the middle thwart's end and one in the others' (pp. 38-40), pegs from 1/4 in
// stock (p. 48), stem head 1/2 to 1 in over the outwale and outwale 1/4 to 1/2 in past
// the stem (p. 49). Adney and Chapelle 1964.
func TestJoineryInInches(t *testing.T) {
	for _, d := range append(design.Starting(), design.Default()) {
		j := frame.NewJoinery(d)
		for name, row := range map[string][2]float64{
			"arrow": {3, j.ArrowLength}, "mortise, high": {1. / 4, j.TenonThick}, "mortise, wide": {2, j.TenonWide},
			"shoulder": {5. / 16, j.ShoulderThick}, "hole": {1.5, j.HoleInboard}, "pegs": {1. / 4, j.PegStock},
			"head over, least": {1. / 2, j.HeadOver[0]}, "head over, most": {1, j.HeadOver[1]},
			"outwale past, least": {1. / 4, j.OutwalePast[0]}, "outwale past, most": {1. / 2, j.OutwalePast[1]},
		} {
			assert.InDelta(t, row[0], row[1]/inch, rounding, name)
		}
		assert.Equal(t, 3, j.HolesMiddle)
		assert.Equal(t, 1, j.HolesOther)
	}
}
