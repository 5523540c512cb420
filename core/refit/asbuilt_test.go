package refit

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/hull"
	"barkwright/core/record"
	"barkwright/core/shape"
	"barkwright/core/units"
)

func halfBeam(d design.Design, x float64) float64 {
	g := d.Gunwale()
	return g.Breadth(x)
}

func widthAt(h *hull.Hull, n int) float64 { return 2 * h.HalfBeam(thwartX(h, n)) }

// Half an inch more between the gunwales at the first thwart: it is there, the plan
// from the next thwarts on is the same to the last bit, and the girth of the skin, so
// the ribs, grows near it by up to about half an inch. The girth follows from the
// section; no published source.
func TestSpreadAtOneThwartMovesTheRibsNearIt(t *testing.T) {
	d := design.Default()
	before := hull.New(d)
	read := widthAt(before, 1) + inch/2
	out := AsBuilt(d, []record.Datum{{Kind: record.ClearWidth, Number: 1, Value: read}}, units.Imperial16)
	require.Empty(t, out.Conflicts)
	after := hull.New(out.Design)
	assert.Empty(t, design.Validate(out.Design))
	// A micrometre: a thwart's station is read off the gunwale's path, which is in pieces.
	assert.InDelta(t, read, widthAt(after, 1), 1e-6)
	assert.Empty(t, out.Moved, "no number of the boat's moves")
	require.Len(t, out.Corrected, 1)
	assert.InDelta(t, inch/2, out.Corrected[0].Is-out.Corrected[0].Was, 1e-9)
	x, next := thwartX(before, 1), thwartX(before, 2)
	for i := range 101 {
		at := next + (before.GunwaleX-next)*float64(i)/100
		assert.Equal(t, before.HalfBeam(at), after.HalfBeam(at), "outboard of the next thwart")
		assert.Equal(t, before.Sheer(at), after.Sheer(at))
	}
	assert.InDelta(t, before.HalfBeam(0), after.HalfBeam(0), 1e-12)
	girth := func(at float64) float64 {
		return 2 * (after.Section(at).HalfGirth() - before.Section(at).HalfGirth()) / inch
	}
	assert.InDelta(t, 0, girth(0), 1e-9)
	assert.Greater(t, girth(x), 0.3)
	assert.Less(t, girth(x), 0.6)
	assert.InDelta(t, 0, girth(next), 1e-9)

	again := AsBuilt(out.Design, []record.Datum{{Kind: record.ClearWidth, Number: 1, Value: read}}, units.Imperial16)
	assert.Empty(t, again.Corrected, "read again, nothing changes")
	back := AsBuilt(out.Design, []record.Datum{{Kind: record.ClearWidth, Number: 1, Value: read - inch/2}},
		units.Imperial16)
	assert.InDelta(t, before.HalfBeam(x), halfBeam(back.Design, x), 1e-6)
	assert.Equal(t, 1, back.Design.Corrected.Plan.Count)
}

// Every curve as corrected has no step, no knuckle and no jump of curvature: second
// differences at a spacing s of a curve with bounded third derivative change from one
// to the next by no more than that derivative times s.
func TestCorrectionsAreSmooth(t *testing.T) {
	d := design.Default()
	h := hull.New(d)
	var readings []record.Datum
	for n := range 3 {
		readings = append(readings,
			record.Datum{Kind: record.ClearWidth, Number: n, Value: widthAt(h, n) + inch*(0.5-float64(n)/2)},
			record.Datum{Kind: record.SheerHeight, Number: n, Value: h.Sheer(thwartX(h, n)) - inch*(0.5-float64(n)/4)})
	}
	readings = append(readings, record.Datum{Kind: record.SheerHeight, At: record.Place{From: record.FromGunwaleEnd},
		Value: d.GunwaleEndHeight + inch/2})
	out := AsBuilt(d, readings, units.Imperial16)
	require.Empty(t, out.Conflicts)
	for _, r := range out.Rows {
		assert.InDelta(t, 0, r.Difference, 1e-5, r.Datum)
	}
	g, was := out.Design.Gunwale(), d.Gunwale()
	assert.InDelta(t, g.Breadth(0), out.Design.Beam/2, 1e-12)
	assert.InDelta(t, g.Sheer(0), out.Design.Depth, 1e-12)
	assert.InDelta(t, g.Sheer(g.Half), out.Design.GunwaleEndHeight, 1e-12)
	assert.InDelta(t, was.EndSlope(), g.EndSlope(), 1e-12)
	// The quintic's third derivative is 60 over the cube of its reach at most, and the
	// shortest reach here is from the end thwart to the gunwale's end.
	reach := g.Half - thwartX(hull.New(out.Design), 2)
	third := 60 * inch / (reach * reach * reach)
	const s = 0.5 * inch
	for _, f := range []func(float64) float64{
		func(x float64) float64 { return g.Breadth(x) - was.Breadth(x) },
		func(x float64) float64 { return g.Sheer(x) - was.Sheer(x) },
	} {
		second := func(x float64) float64 { return (f(x+s) - 2*f(x) + f(x-s)) / (s * s) }
		for x := -g.Half / 2; x < g.Half-3*s; x += s {
			assert.LessOrEqual(t, math.Abs(second(x+s)-second(x)), third*s+1e-3, "%v in from the middle", x/inch)
		}
	}
}

// What is far off is no correction, and neither is one that has no room; the boat stays.
func TestCorrectionsHaveLimits(t *testing.T) {
	d := design.Default()
	h := hull.New(d)
	for _, a := range []record.Datum{
		{Kind: record.ClearWidth, Number: 1, Value: widthAt(h, 1) + 7*inch},
		{Kind: record.SheerHeight, Number: 1, Value: h.Sheer(thwartX(h, 1)) + 3.5*inch},
		{Kind: record.ClearWidth, At: record.Place{From: record.FromGunwaleEnd, Distance: 2 * inch}, Value: 3 * inch},
	} {
		out := AsBuilt(d, []record.Datum{a}, units.Imperial16)
		require.Len(t, out.Conflicts, 1)
		assert.Equal(t, []int{0}, out.Conflicts[0].Aside)
		assert.Equal(t, d, out.Design)
	}
	for i := range shape.MostCorrections + 1 {
		x := float64(i+1) * 9 * inch
		if out := AsBuilt(d, []record.Datum{{Kind: record.ClearWidth, At: record.Place{Distance: x},
			Value: 2*halfBeam(d, x) + inch/4}}, units.Imperial16); len(out.Conflicts) > 0 {
			assert.Contains(t, out.Conflicts[0].Message, "8 places")
			return
		}
		d = AsBuilt(d, []record.Datum{{Kind: record.ClearWidth, At: record.Place{Distance: x},
			Value: 2*halfBeam(d, x) + inch/4}}, units.Imperial16).Design
	}
	t.Fatal("there is always room")
}

// A post that stands half an inch low and an inch more of length.
func TestSheerAndLengthAsBuilt(t *testing.T) {
	d := design.Default()
	before := hull.New(d)
	x := thwartX(before, 2)
	out := AsBuilt(d, []record.Datum{
		{Kind: record.SheerHeight, Number: 2, Value: before.Sheer(x) - inch/2},
		{Kind: record.LengthOverall, Value: d.Length + inch},
		{Kind: record.DepthInwale, Value: d.Depth + inch/4},
	}, units.Imperial16)
	require.Empty(t, out.Conflicts)
	after := hull.New(out.Design)
	for _, r := range out.Rows {
		assert.InDelta(t, 0, r.Difference, 1e-6, r.Datum, "a micrometre, as above")
	}
	assert.Equal(t, record.DepthInwale, out.Rows[2].Kind)
	assert.InDelta(t, before.GunwaleX, after.GunwaleX, 1e-12)
	assert.InDelta(t, before.Sheer(before.GunwaleX), after.Sheer(after.GunwaleX), 1e-12)
	assert.InDelta(t, d.EndHeight, out.Design.EndHeight, 1e-12)
	assert.InDelta(t, d.TurnWidth, out.Design.TurnWidth, 1e-12)
}

// No reading, no change.
func TestNothingReadNothingMoved(t *testing.T) {
	d := design.Default()
	out := AsBuilt(d, nil, units.Imperial16)
	assert.Equal(t, d, out.Design)
	assert.Empty(t, out.Moved)
	out = AsBuilt(d, []record.Datum{{Kind: record.ClearWidth, Number: 4, Value: inch}}, units.Imperial16)
	assert.Len(t, out.Conflicts, 1)
	assert.Equal(t, d, out.Design)
}
