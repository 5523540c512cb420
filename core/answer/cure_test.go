package answer_test

import (
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/internal/check"
	"barkwright/core/units"
	"barkwright/core/wood"
)

// What a check offers as its cure cures it: the same check is then within guide.
func TestCuresCure(t *testing.T) {
	cured := map[string]int{}
	try := func(d design.Design) {
		for _, w := range answer.Checks(core.Evaluate(d)) {
			if w.Cure == nil {
				continue
			}
			p, ok := design.Lookup(w.Cure.Key)
			require.True(t, ok, w.Cure.Key)
			c, faults := core.Try(p.Set(d, w.Cure.Value))
			if len(faults) > 0 {
				continue
			}
			for _, again := range answer.Checks(c) {
				if again.Key == w.Key {
					assert.Equal(t, answer.Within, again.State, "%s: %s", w.Key, w.Cure.Says(units.Metric))
					cured[w.Key]++
				}
			}
		}
	}
	d := design.Default()
	d.StemLaminations, d.GunwaleEndSplits = 1, 1
	try(design.Follow(d))
	r := rand.New(rand.NewPCG(5, 5))
	for range 150 {
		if d := check.NearDesign(r, design.Default(), 0.4); len(core.Validate(d)) == 0 {
			try(d)
		}
	}
	for range 150 {
		if d := check.AtExtremes(r, design.Default(), 2); len(core.Validate(d)) == 0 {
			try(d)
		}
	}
	assert.Positive(t, cured["stem.verdict"])
	assert.Positive(t, cured["gunwales.verdict"])
	assert.Positive(t, cured["caps.verdict"])
}

// A stem-piece that would want more laminations than can be set is told that none are enough, not a
// number that its control refuses: 3 in deep and dry, it would want some 39.
func TestNoLaminationsAreNamedThatCannotBeSet(t *testing.T) {
	d := check.With(t, "stemDepth", 3*units.Inch, "stemCondition", float64(wood.Dry))
	c := core.Evaluate(d)
	outer := c.Frame.Stem.Radius - d.BarkThickness
	p, _ := design.Lookup("stemLaminations")
	need := (c.Frame.Stem.Innermost().Safe - 0.5) / (outer/d.StemDepth - 1)
	require.Greater(t, need, p.Max)
	require.Less(t, need, 2*p.Max)
	for _, n := range answer.All(c) {
		if n.Key == "stem.splitsNeeded" {
			assert.Equal(t, "no splitting is enough", n.Word)
		}
	}
	for _, w := range answer.Checks(c) {
		if w.Key == "stem.verdict" {
			assert.Nil(t, w.Cure)
			assert.NotContains(t, w.Text(units.Imperial16), "laminations")
		}
	}
}

// The caps go over the curve of the outwales past the gunwale's end, an inch thick as these or
// not: one as thick as a layer of them there takes the same bend.
func TestCapsAreChecked(t *testing.T) {
	word := func(thick float64) string {
		for _, w := range answer.Checks(core.Evaluate(check.With(t, "capThickness", thick*units.Inch))) {
			if w.Key == "caps.verdict" {
				return w.Word
			}
		}
		return ""
	}
	assert.Equal(t, "within guide", word(0.25))
	assert.Equal(t, "near the limit", word(0.375), "9 in over 3/8 are 25 thicknesses")
}

// No starting boat has a part that is too tight for its wood.
func TestStartingBoatsBend(t *testing.T) {
	for _, d := range append(design.Starting(), design.Default()) {
		for _, w := range answer.Checks(core.Evaluate(d)) {
			assert.NotEqual(t, wood.TooTight.String(), w.Word, "%s: %s", d.Name, w.Label)
		}
	}
}
