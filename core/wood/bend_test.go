package wood_test

import (
	"math"
	"testing"

	"barkwright/core/units"
	"barkwright/core/wood"

	"github.com/stretchr/testify/assert"
)

// Every threshold of every stock, approached through thicknesses that do not
// divide evenly: on it the milder band, a thousandth under it the next.
func TestTheEdgeBelongsToTheMilderBand(t *testing.T) {
	for _, r := range wood.AllSpecies() {
		for _, c := range wood.AllConditions() {
			for _, g := range wood.AllGrains() {
				s := wood.Stock{Species: r.Species, Condition: c, Grain: g}
				guide := c.Guide()
				for _, thickness := range []float64{0.1 * units.Inch, 0.003, 1.0 / 3 * units.Inch, 0.0317} {
					on := func(threshold, k float64) wood.Verdict {
						return wood.Check(k*threshold*s.Multiplier()*thickness, thickness, s).Verdict
					}
					assert.Equal(t, wood.WithinGuide, on(guide.Safe, 1), "%v", s)
					assert.Equal(t, wood.NearLimit, on(guide.Safe, 0.999), "%v", s)
					assert.Equal(t, wood.NearLimit, on(guide.Limit, 1), "%v", s)
					assert.Equal(t, wood.TooTight, on(guide.Limit, 0.999), "%v", s)
				}
			}
		}
	}
	// t/R = 1/125 cut the other way: a radius of one metre.
	assert.Equal(t, wood.WithinGuide, wood.Check(1, 1.0/125, wood.Stock{Condition: wood.Dry}).Verdict)
}

func TestNoRadiusAndNoBend(t *testing.T) {
	for _, radius := range []float64{0, -0.01, math.Inf(-1)} {
		b := wood.Check(radius, 0.005, wood.Stock{})
		assert.True(t, b.WillNotFit)
		assert.Equal(t, wood.TooTight, b.Verdict)
		assert.Zero(t, b.Ratio)
		assert.Zero(t, b.Strain)
		assert.Zero(t, b.Springback(wood.Stock{}))
		assert.Contains(t, b.Advice(wood.Stock{}), "tighter than the piece is deep")
	}
	straight := wood.Check(math.Inf(1), 0.005, wood.Stock{Condition: wood.Dry})
	assert.Equal(t, wood.WithinGuide, straight.Verdict)
	assert.Zero(t, straight.Strain)
	assert.False(t, straight.WillNotFit)
	assert.True(t, straight.Springback(wood.Stock{}).FullyStraight)

	assert.PanicsWithValue(t, "wood: radius not a number", func() { wood.Check(math.NaN(), 0.005, wood.Stock{}) })
	assert.PanicsWithValue(t, "wood: thickness not positive", func() { wood.Check(1, 0, wood.Stock{}) })
	assert.PanicsWithValue(t, "wood: thickness not positive", func() { wood.Check(1, math.NaN(), wood.Stock{}) })
}

// Published radii of real ribs (Adney and Chapelle, figs. 31, 52, 104, measured
// off the drawings, +-20 to 25 %): they existed, so none may be too tight.
func TestRibsThatWereBentAreNotTooTight(t *testing.T) {
	for _, rib := range []struct{ thickness, radius float64 }{
		{3.0 / 8, 4.2}, {3.0 / 8, 4.8}, {1.0 / 4, 5.1}, {5.0 / 16, 5.6}, {3.0 / 8, 4.0}, {1.0 / 4, 5.8},
	} {
		b := wood.Check(rib.radius*units.Inch, rib.thickness*units.Inch, wood.Stock{})
		assert.Equal(t, wood.NearLimit, b.Verdict, "%v", rib)
	}
}

func TestAdviceSaysWhatToChange(t *testing.T) {
	at := func(ratio float64, s wood.Stock) string { return wood.Check(ratio*0.01, 0.01, s).Advice(s) }
	boiled, dry := wood.Stock{}, wood.Stock{Condition: wood.Dry}
	assert.Contains(t, at(40, boiled), "a trial piece first")
	assert.NotContains(t, at(25, boiled), "expect some to break")
	assert.Contains(t, at(19, boiled), "expect some to break")
	assert.Contains(t, at(80, dry), "soak or heat it")
	assert.Contains(t, at(5, boiled), "split thinner or open the curve")
	assert.NotContains(t, at(5, boiled), "bend it hot")
	assert.Contains(t, at(5, dry), "bend it hot")
	for _, c := range wood.AllConditions() {
		s := wood.Stock{Condition: c}
		assert.Contains(t, at(1.1*c.Guide().Limit, s), "may break", c)
		assert.Contains(t, at(1.1*c.Guide().Limit, s), "split thinner", c)
	}
	assert.Contains(t, wood.Bend{Verdict: wood.NotChecked}.Advice(boiled), "not asked to bend")
}

func TestEveryStateHasItsWord(t *testing.T) {
	assert.Equal(t, "within guide", wood.WithinGuide.String())
	assert.Equal(t, "near the limit", wood.NearLimit.String())
	assert.Equal(t, "too tight", wood.TooTight.String())
	assert.Equal(t, "not checked", wood.NotChecked.String())
	words := map[string]bool{}
	for _, c := range wood.AllConditions() {
		words[c.String()] = true
		guide := c.Guide()
		assert.Greater(t, guide.Safe, guide.Limit)
		assert.NotEmpty(t, guide.SafeBasis+guide.LimitBasis+guide.Uncertainty)
	}
	for _, g := range wood.AllGrains() {
		words[g.String()] = true
	}
	assert.Len(t, words, 9, "four conditions and five grains, all told apart")
}
