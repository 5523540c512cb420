package plan_test

import (
	"math/rand/v2"
	"os"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/design"
	"barkwright/core/internal/check"
	"barkwright/core/plan"
	"barkwright/core/units"
)

// A boat longer by a step of its slider ends sooner by a day at most, by any crew: random boats and crews,
// and the ends of the slider's range. What a longer boat may gain is this program's own finding, no
// published figure: list rules are not the best there is, and one of them may end sooner with more work
// (R. L. Graham, 1969). BARKWRIGHT_PLANS=1 tries four hundred.
func TestALongerBoatEndsNoSooner(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 6))
	p, ok := design.Lookup("length")
	require.True(t, ok)
	n := 12
	if os.Getenv("BARKWRIGHT_PLANS") != "" {
		n = 400
	}
	tried, step := 0, p.Step(units.Imperial16)
	for i, boat := range check.SomeDesigns(n, 9) {
		length := p.Min + float64(r.IntN(int((p.Max-p.Min)/step)))*step
		switch i {
		case 0:
			length = p.Min
		case 1:
			length = p.Max - step
		}
		s := fromGathered(1+r.IntN(4), r.IntN(4))
		s.Numbers[plan.Hours], s.Numbers[plan.DaysAWeek] = float64(6+r.IntN(5)), float64(5+r.IntN(3))
		s.Numbers[plan.From] = float64(r.IntN(3))
		var days [2]int
		built := true
		for k := range days {
			d := boat
			if i%2 == 0 {
				d = design.Default()
			}
			d.Length = length + float64(k)*step
			c, faults := core.Try(design.Follow(d))
			if built = len(faults) == 0; !built {
				break
			}
			days[k] = planned(t, s, c.Asks(), "").Days
		}
		if !built {
			continue
		}
		tried++
		assert.GreaterOrEqual(t, days[1], days[0]-1, "%.3f m, %v", length, s.Numbers)
	}
	assert.Greater(t, tried, n/3)
}
