package refit_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/design"
	"barkwright/core/internal/check"
	"barkwright/core/record"
	"barkwright/core/refit"
	"barkwright/core/units"
)

// What is said of a rule is what the design does: each number in its words is read off
// a boat that follows it.
func TestRuleWordsAreWhatIsDone(t *testing.T) {
	const in = units.Inch
	d := check.With(t, "length", 240*in, "beam", 50*in, "depth", 15*in, "overhang", 20*in, "heelLength", 30*in)
	says := func(key string, k units.Kind, v float64, rest string) {
		for _, s := range []units.System{units.Imperial16, units.Metric} {
			assert.Equal(t, check.Plain(k.Format(v, s))+rest, check.Plain(refit.Held{Key: key}.Rule(s)))
		}
	}
	says("frameWidth", units.Ratio, d.FrameWidth/d.Beam, " of the beam inside the gunwales")
	says("frameLength", units.SmallLength, 2*d.HalfGunwale()-d.FrameLength, " less than the gunwales")
	says("gunwaleEndHeight", units.SmallLength, d.GunwaleEndHeight-d.Depth, " over the depth")
	says("endHeight", units.SmallLength, d.EndHeight-d.GunwaleEndHeight, " over the end of the gunwale")
	says("headSetback", units.SmallLength, d.HeadSetback, ", or less where the ends overhang little")
	assert.Contains(t, check.Plain(refit.Held{Key: "ribs"}.Rule(units.Imperial16)),
		check.Plain(units.SmallLength.Format(2*d.HalfGunwale()/float64(d.Ribs), units.Imperial16)))
	assert.Equal(t, "the starting value", refit.Held{Key: "beamFull"}.Rule(units.Metric))
	fit := refit.Fit(record.Record{Name: "nothing"})
	for _, h := range fit.Held {
		p, _ := design.Lookup(h.Key)
		if share := map[string]float64{"overhang": fit.Design.Length, "beam": fit.Design.Length,
			"depth": fit.Design.Beam}[h.Key]; share > 0 {
			assert.Contains(t, h.Rule(units.Metric), units.Ratio.Format(p.Get(&fit.Design)/share, units.Metric), h.Key)
		}
	}
}

// An empty record tells nothing: every parameter that a measurement would state outright
// is then held by a rule, and listed.
func TestMeasuredParametersAreSpokenOf(t *testing.T) {
	held := map[string]bool{}
	for _, h := range refit.Fit(record.Record{}).Held {
		held[h.Key] = true
	}
	for _, k := range record.Kinds() {
		if key := k.Parameter(); key != "" {
			assert.True(t, held[key], "%s: add %s to spoken in rule.go", k, key)
		}
	}
}
