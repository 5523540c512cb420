package answer_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/internal/check"
	"barkwright/core/units"
)

func byKey(c core.Canoe) map[string]answer.Number {
	all := map[string]answer.Number{}
	for _, n := range answer.All(c) {
		all[n.Key] = n
	}
	return all
}

// A label speaks of its number in the reader's units.
func TestLabelsSpeakInTheReadersUnits(t *testing.T) {
	all := byKey(core.Evaluate(design.Default()))
	for _, row := range [][3]string{
		{"afloat.gmHigher", `GM with the crew 2" higher`, "GM with the crew 51 mm higher"},
		{"afloat.gmLower", `GM with the crew 2" lower`, "GM with the crew 51 mm lower"},
		{"afloat.loadAtThreeInches", `Load that leaves 3" of freeboard`, "Load that leaves 76 mm of freeboard"},
		{"afloat.loadAtEightInches", `Load that leaves 8" of freeboard`, "Load that leaves 203 mm of freeboard"},
		{"bark.largestNarrower", `The same if every sheet comes 2" narrower`, "The same if every sheet comes 51 mm narrower"},
	} {
		assert.Equal(t, row[1], check.Plain(all[row[0]].Label(units.Imperial16)))
		assert.Equal(t, row[2], check.Plain(all[row[0]].Label(units.Metric)))
	}
	for key, n := range all {
		assert.NotContains(t, n.Label(units.Metric), "#", key)
	}
}

// The crew higher makes the boat less stiff than lower.
func TestGMHigherAndLower(t *testing.T) {
	all := byKey(core.Evaluate(design.Default()))
	assert.Less(t, all["afloat.gmHigher"].Value, all["afloat.gm"].Value)
	assert.Greater(t, all["afloat.gmLower"].Value, all["afloat.gm"].Value)
}

// The tightest radius is the least of the ribs that bend whole, which need not be that
// of the rib with the least radius over thickness.
func TestTightestRadiusIsTheLeast(t *testing.T) {
	other := 0
	for _, thick := range []float64{0.25, 0.3125, 0.375, 0.5, 0.625, 0.75} {
		c := core.Evaluate(check.With(t, "ribThickness", thick*units.Inch))
		all := byKey(c)
		hardest, whole := c.Frame.Ribs[0], 0
		for _, r := range c.Frame.Ribs {
			if r.Broken {
				continue
			}
			whole++
			assert.LessOrEqual(t, all["ribs.minRadius"].Value, r.Bend.Radius+1e-12, "rib %d at %g in", r.Number, thick)
			if r.Bend.Ratio < hardest.Bend.Ratio {
				hardest = r
			}
		}
		if hardest.Bend.Radius > all["ribs.minRadius"].Value+1e-6 {
			other++
		}
		assert.Positive(t, whole)
		assert.InDelta(t, float64(hardest.Bend.Rib(c.Design.RibStock)), all["ribs.verdict"].Value, 0, "%g in", thick)
	}
	assert.Positive(t, other, "no boat here has the two on different ribs")
}
