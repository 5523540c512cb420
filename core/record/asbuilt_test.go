package record

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/hull"
	"barkwright/core/units"
)

func widthAt(h hull.Hull, n int) float64 { return 2 * h.HalfBeam(thwartX(h, n)) }

// Half an inch more between the gunwales at the first thwart: it is there, the other
// thwarts stay within their own sixteenth, and the girth of the skin, so the ribs,
// grows near it by up to about half an inch and nowhere else as much. The girth
// follows from the section; no published source.
func TestSpreadAtOneThwartMovesTheRibsNearIt(t *testing.T) {
	d := design.Default()
	before := hull.New(d)
	read := widthAt(before, 1) + inch/2
	out := AsBuilt(d, []Datum{{Kind: ClearWidth, Number: 1, Value: read}}, units.Imperial16)
	require.Empty(t, out.Conflicts)
	after := hull.New(out.Design)
	assert.Empty(t, design.Validate(out.Design))
	assert.InDelta(t, read, widthAt(after, 1), inch/32)
	assert.InDelta(t, widthAt(before, 0), widthAt(after, 0), inch/16)
	assert.InDelta(t, widthAt(before, 2), widthAt(after, 2), inch/16)
	for _, c := range out.Moved {
		assert.Contains(t, []string{"beam", "beamFull", "beamFine"}, c.Key)
	}
	x := thwartX(before, 1)
	girth := func(at float64) float64 {
		return 2 * (after.Section(at).HalfGirth() - before.Section(at).HalfGirth()) / inch
	}
	t.Logf("rib girth: amidships %+.2f in, at the first thwart %+.2f, at the end thwart %+.2f", girth(0), girth(x), girth(thwartX(before, 2)))
	assert.InDelta(t, 0, girth(0), 0.1)
	assert.Greater(t, girth(x), 0.3)
	assert.Less(t, girth(x), 0.6)
	assert.Less(t, girth(thwartX(before, 2)), 0.3)
}

// A post that stands half an inch low and an inch more of length.
func TestSheerAndLengthAsBuilt(t *testing.T) {
	d := design.Default()
	before := hull.New(d)
	x := thwartX(before, 2)
	out := AsBuilt(d, []Datum{
		{Kind: SheerHeight, Number: 2, Value: before.Sheer(x) - inch/2},
		{Kind: LengthOverall, Value: d.Length + inch},
		{Kind: DepthInwale, Value: d.Depth + inch/4},
	}, units.Imperial16)
	require.Empty(t, out.Conflicts)
	after := hull.New(out.Design)
	for _, r := range out.Rows {
		assert.InDelta(t, 0, r.Difference, inch/16, r.Datum)
	}
	assert.Equal(t, DepthInwale, out.Rows[2].Kind)
	assert.InDelta(t, before.GunwaleX, after.GunwaleX, 1e-12)
	assert.InDelta(t, before.Sheer(before.GunwaleX), after.Sheer(after.GunwaleX), inch/4)
	assert.InDelta(t, d.EndHeight, out.Design.EndHeight, 1e-12)
	assert.InDelta(t, d.TurnWidth, out.Design.TurnWidth, 1e-12)
}

// No reading, no change.
func TestNothingReadNothingMoved(t *testing.T) {
	d := design.Default()
	out := AsBuilt(d, nil, units.Imperial16)
	assert.Equal(t, d, out.Design)
	assert.Empty(t, out.Moved)
	out = AsBuilt(d, []Datum{{Kind: ClearWidth, Number: 4, Value: inch}}, units.Imperial16)
	assert.Len(t, out.Conflicts, 1)
	assert.Equal(t, d, out.Design)
}
