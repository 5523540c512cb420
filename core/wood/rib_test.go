package wood_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/units"
	"barkwright/core/wood"
)

// The bands of a cedar rib bent hot, on their bounds and just under them: 23, 10 and 8
// times the thickness (measured off drawings in Adney and Chapelle 1964).
func TestRibBands(t *testing.T) {
	at := func(ratio float64, s wood.Stock) wood.RibBand { return wood.Check(ratio*0.01, 0.01, s).Rib(s) }
	cedar := wood.Stock{}
	for _, row := range []struct {
		ratio float64
		want  wood.RibBand
	}{{30, wood.EasyRib}, {23, wood.EasyRib}, {22.9, wood.PublishedRib}, {10, wood.PublishedRib},
		{9.9, wood.TighterThanMost}, {8, wood.TighterThanMost}, {7.9, wood.TighterThanAny}} {
		assert.Equal(t, row.want, at(row.ratio, cedar), row.ratio)
	}
	assert.Equal(t, wood.TighterThanAny, wood.Check(-1, 0.01, cedar).Rib(cedar))
	// Cold, the guide's own thresholds: 100 and 50.
	cold := wood.Stock{Condition: wood.Soaked}
	assert.Equal(t, wood.EasyRib, at(100, cold))
	assert.Equal(t, wood.ColdRib, at(60, cold))
	assert.Equal(t, wood.TighterThanMost, at(45, cold))
	assert.Equal(t, wood.TighterThanAny, at(39, cold))
	// With a strap it is easy where the guide says so, from 16.
	strap := wood.Stock{Condition: wood.Strapped}
	assert.Equal(t, wood.EasyRib, at(16, strap))
	// Grain that runs out asks for more: 10 times 1/0.81.
	assert.Equal(t, wood.TighterThanMost, at(12, wood.Stock{Grain: wood.RunOut10}))
}

// Ribs that were bent are not called tighter than any: those measured off figs. 31, 52
// and 104, and the drawn sections of three boats with 3/8 in ribs, 8.2 to 8.7.
func TestPublishedRibsAreNotTighterThanAny(t *testing.T) {
	for _, rib := range []struct{ thickness, radius float64 }{
		{3.0 / 8, 4.2}, {3.0 / 8, 4.8}, {1.0 / 4, 5.1}, {5.0 / 16, 5.6}, {3.0 / 8, 4.0}, {1.0 / 4, 5.8},
	} {
		b := wood.Check(rib.radius*units.Inch, rib.thickness*units.Inch, wood.Stock{})
		assert.LessOrEqual(t, b.Rib(wood.Stock{}), wood.PublishedRib, "%v", rib)
	}
	for _, ratio := range []float64{8.2, 8.7} {
		assert.Equal(t, wood.TighterThanMost, wood.Check(ratio*0.01, 0.01, wood.Stock{}).Rib(wood.Stock{}))
	}
}
