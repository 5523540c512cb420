package work

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/tally"
	"barkwright/core/units"
)

// A repair is worked out once for each boat, log and season, however often it is shown, and anew for another.
func TestRepairsAreWorkedOutOnce(t *testing.T) {
	w := New(design.Default(), units.Imperial16)
	assert.Empty(t, w.Repairs())
	require.True(t, w.Repair("keep", "2027-06-14", tally.Damage{Kind: tally.Hole, Along: 0.1, Round: 0.1}))
	first := w.Repairs()
	require.Len(t, first, 1)
	again := func() bool { return &w.Repairs()[0] != &first[0] }
	assert.False(t, again())
	w.System = units.Metric
	assert.False(t, again(), "units are put in where it is shown")

	require.Empty(t, w.SetSeason("rate.seams.sew", "10"))
	require.True(t, again(), "another time of a stitch")
	assert.Greater(t, w.Repairs()[0].Repair.Hours, first[0].Repair.Hours)
	first = w.Repairs()
	w.Set("length", 180*units.Inch)
	require.True(t, again(), "another boat")
	first = w.Repairs()
	require.True(t, w.Undo())
	assert.True(t, again())
	require.True(t, w.Repair("keep", "2027-06-15", tally.Damage{Kind: tally.Crack, Round: 0.1}))
	assert.Len(t, w.Repairs(), 2)
}
