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
}
