package refit

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/hull"
	"barkwright/core/record"
	"barkwright/core/units"
)

// plain is an invented record without contradictions.
func plain(more ...record.Datum) record.Record {
	return record.Record{Data: append([]record.Datum{
		{Kind: record.LengthOverall, Value: 192 * inch},
		{Kind: record.LengthOverGunwales, Value: 174 * inch},
		{Kind: record.BeamInside, Value: 33 * inch},
		{Kind: record.DepthInwale, Value: 12.5 * inch},
	}, more...)}
}

// Arithmetic on the record's own figures.
func TestContradictionsAreNamedAndLeftOut(t *testing.T) {
	thwart := func(n int, from record.Origin, v float64) record.Datum {
		return record.Datum{Kind: record.ThwartPosition, Number: n, At: record.Place{From: from}, Value: v * inch}
	}
	bay := func(n int, v float64) record.Datum { return record.Datum{Kind: record.Bay, Number: n, Value: v * inch} }
	for name, c := range map[string]struct {
		more  []record.Datum
		says  string
		aside []int
	}{
		"stations from both ends": {[]record.Datum{thwart(1, record.FromMiddle, 36), thwart(1, record.FromGunwaleEnd, 55)},
			"do not add up to half the length", []int{5}},
		"bays past the end": {[]record.Datum{bay(1, 36), bay(2, 31), bay(3, 24), thwart(2, record.FromMiddle, 67)},
			"add up to 7' 7\"", []int{4, 5, 6}},
		"thwart over beam": {[]record.Datum{thwart(1, record.FromMiddle, 36),
			{Kind: record.ClearWidth, Number: 1, Value: 35 * inch}}, "longer than the beam", []int{5}},
		"recorded twice": {[]record.Datum{{Kind: record.DepthInwale, Value: 14 * inch}}, "recorded twice", []int{4}},
		"gunwales over all": {[]record.Datum{{Kind: record.EndHeight, Value: 20 * inch}, {Kind: record.SheerHeight,
			At: record.Place{Distance: 80 * inch}, Value: 22 * inch}}, "higher than the stem head", []int{5}},
		"beams": {[]record.Datum{{Kind: record.BeamOutside, Value: 32 * inch}}, "more than", []int{2}},
		"thick gunwales": {[]record.Datum{{Kind: record.BeamOutside, Value: 40 * inch}},
			"greatest breadth of bark", []int{4}},
		"thick cap": {[]record.Datum{{Kind: record.DepthRail, Value: 15 * inch}}, "cap", []int{4}},
		"nowhere": {[]record.Datum{{Kind: record.ClearWidth, Number: 2, Value: 20 * inch}}, "not recorded",
			[]int{4}},
		"beyond the end": {[]record.Datum{{Kind: record.SheerHeight, At: record.Place{Distance: 90 * inch},
			Value: 20 * inch}}, "beyond the end", []int{4}},
		"thwart outside": {[]record.Datum{thwart(1, record.FromMiddle, 88)}, "beyond the end", []int{4}},
		"thwarts crossed": {[]record.Datum{thwart(1, record.FromMiddle, 60), thwart(2, record.FromMiddle, 50)},
			"no further out", []int{5}},
		"nothing": {[]record.Datum{{Kind: record.EndHeight}}, "more than zero", []int{4}},
		"not a number": {[]record.Datum{{Kind: record.EndHeight, Value: math.NaN()}}, "not a measurement",
			[]int{4}},
		"too big": {[]record.Datum{{Kind: record.FrameWidth, Value: 200 * inch}}, "outside what is drawn",
			[]int{4}},
		"too many thwarts": {[]record.Datum{thwart(7, record.FromMiddle, 60)}, "at most 4", []int{4}},
		"which thwart":     {[]record.Datum{thwart(0, record.FromMiddle, 60)}, "say which", []int{4}},
	} {
		f := Fit(plain(c.more...))
		require.Len(t, f.Conflicts, 1, "%s: %v", name, f.Conflicts)
		assert.Contains(t, f.Conflicts[0].Message, c.says, name)
		assert.Equal(t, c.aside, f.Conflicts[0].Aside, name)
		for _, i := range c.aside {
			assert.Equal(t, SetAside, f.Rows[i].State, name)
		}
		for _, r := range f.Rows {
			assert.False(t, math.IsNaN(r.Difference), name)
		}
	}
	assert.Empty(t, Fit(plain(bay(1, 36), bay(2, 31), bay(3, 20), thwart(2, record.FromMiddle, 67))).Conflicts)
}

// An empty record is the starting boat by rules, every one of them named.
func TestGapsAreHeldByRule(t *testing.T) {
	f := Fit(record.Record{})
	assert.Empty(t, f.Conflicts)
	keys := map[string]bool{}
	for _, h := range f.Held {
		keys[h.Key] = true
		assert.NotEmpty(t, h.Rule(units.Metric), h.Key)
		assert.NotEmpty(t, h.Cited, h.Key)
		p, ok := design.Lookup(h.Key)
		require.True(t, ok, h.Key)
		assert.Equal(t, p.Get(&f.Design), h.Value)
	}
	for _, k := range []string{"length", "beam", "depth", "beamFull", "sheerSweep", "rocker", "endHeight", "ribs"} {
		assert.True(t, keys[k], k)
	}
	assert.Empty(t, design.Validate(f.Design))
	for _, h := range Fit(plain()).Held {
		assert.NotContains(t, []string{"length", "overhang", "beam", "depth"}, h.Key)
	}
}

// A height two inches off among eleven good ones is the one that disagrees, and the
// others say what it should have been.
func TestTheOddMeasurementIsNamed(t *testing.T) {
	d := design.Default()
	rec := plain()
	h := finished(d)
	for i := range 12 {
		x := float64(i+1) * 7 * inch
		rec.Data = append(rec.Data, record.Datum{Kind: record.SheerHeight, At: record.Place{Distance: x}, Value: h.Sheer(x)})
	}
	odd := 9
	truth := rec.Data[odd].Value
	rec.Data[odd].Value += 2 * inch
	for i, r := range Fit(rec).Rows {
		assert.Equal(t, i == odd, r.Disagrees, r.Datum)
		if r.Disagrees {
			assert.InDelta(t, truth, r.Others, 1e-6, "eleven heights of one sheer: where the fit ends")
		}
	}
}

// Ends that differ are told, and the fit stands between them.
func TestEndsThatDifferAreTold(t *testing.T) {
	at := record.Place{Distance: 80 * inch}
	aft := at
	aft.Side = record.Aft
	f := Fit(plain(record.Datum{Kind: record.SheerHeight, At: at, Value: 18 * inch},
		record.Datum{Kind: record.SheerHeight, At: aft, Value: 17 * inch}))
	require.Len(t, f.EndsDiffer, 1)
	assert.True(t, strings.Contains(f.EndsDiffer[0], "1' 6\" of both ends, 1' 5\" aft"), f.EndsDiffer[0])
	assert.Empty(t, f.Conflicts)
	// Alike but for an inch, so the mean; a hundredth of a millimetre for where the fit ends.
	assert.InDelta(t, 17.5*inch, f.Rows[4].Model, 1e-5)
}

// A locked figure is kept though two others stand against it.
func TestLockedIsKept(t *testing.T) {
	at := func(x float64) record.Place { return record.Place{Distance: x * inch} }
	rec := plain(
		record.Datum{Kind: record.SheerHeight, At: at(79), Value: 17 * inch},
		record.Datum{Kind: record.SheerHeight, At: at(80), Value: 19 * inch, Locked: true},
		record.Datum{Kind: record.SheerHeight, At: at(81), Value: 17 * inch})
	assert.InDelta(t, 0, Fit(rec).Rows[5].Difference, inch/32, "kept to the sixteenth: half of one")
}

// What is stated amidships is weighed by its tolerance like any other figure there,
// and kept to the sixteenth, within half of one, where it is locked, as is the other: two
// weighed means.
func TestStatedIsWeighed(t *testing.T) {
	thwart := record.Datum{Kind: record.ClearWidth, Value: 33.6 * inch}
	// 33 good to a quarter and 33.6 to a half: the mean by the squares.
	mean := (33*16 + 33.6*4) / (16 + 4) * inch
	assert.InDelta(t, mean, Fit(plain(thwart)).Design.Beam, 1e-5, "a hundredth of a millimetre for the fit's end")
	thwart.Locked = true
	assert.InDelta(t, 33.6*inch, Fit(plain(thwart)).Design.Beam, inch/32)
	rail := record.Datum{Kind: record.SheerHeight, Value: 13 * inch, Locked: true}
	assert.InDelta(t, 13*inch, Fit(plain(rail)).Design.Depth, inch/32)
	sixteenth := record.Datum{Kind: record.ClearWidth, Value: 33.6 * inch, Tolerance: inch / 16}
	wide := plain(sixteenth)
	wide.Data[2].Tolerance = inch
	assert.InDelta(t, 33.6*inch, Fit(wide).Design.Beam, inch/32)

	end := record.Datum{Kind: record.EndHeight, Value: 24 * inch, Tolerance: 2 * inch}
	d := Fit(plain(end)).Design
	h := finished(d)
	var points []record.Datum
	for _, at := range []float64{0.3, 0.5, 0.7, 0.9, 1} {
		p := h.End.At(at)
		points = append(points, record.Datum{Kind: record.EndPoint, At: record.Place{Distance: p.X}, Value: p.Y + inch/2,
			Tolerance: inch / 16})
	}
	assert.InDelta(t, 24.5*inch, Fit(plain(append(points, end)...)).Design.EndHeight, inch/32,
		"the points outweigh the head")
}

// Two locked figures that no boat has together are named, and neither is left out.
func TestLockedConflictIsNamed(t *testing.T) {
	rec := plain(record.Datum{Kind: record.SheerHeight, Value: 13 * inch, Locked: true})
	rec.Data[3].Locked = true
	f := Fit(rec)
	require.Len(t, f.Conflicts, 2)
	for i, c := range f.Conflicts {
		assert.Equal(t, []int{3 + i}, c.Data)
		assert.Empty(t, c.Aside)
		assert.Contains(t, c.Message, "is to be kept at "+[]string{`1' 0 1/2"`, `1' 1"`}[i])
	}
	rec.Data[3].Locked = false
	assert.Empty(t, Fit(rec).Conflicts)
}

// A true end that lifts more steeply than this shape can is no disagreement; a bad
// figure among good ones on both sides is.
func TestSteepEndIsNoDisagreement(t *testing.T) {
	var data []record.Datum
	for i := range 11 {
		x := float64(i+1) * 7 * inch
		data = append(data, record.Datum{Kind: record.SheerHeight, At: record.Place{Distance: x},
			Value: 12.5*inch + 3*inch*math.Pow(x/(87*inch), 3)})
	}
	data = append(data, record.Datum{Kind: record.SheerHeight, At: record.Place{From: record.FromGunwaleEnd},
		Value: 20 * inch},
		record.Datum{Kind: record.EndHeight, Value: 26 * inch})
	f := Fit(plain(data...))
	for _, r := range f.Rows {
		assert.False(t, r.Disagrees, "%v", r.Datum.Named(units.Imperial16))
	}
	last := f.Rows[len(f.Rows)-2]
	assert.True(t, last.Unfollowed || last.State == InsideTolerance, "%v", last)
	t.Log(last.Unfollowed, last.Difference/inch)
}

// A sheer that rises steeply to a low stem head is eased until it can be built: the
// faults of hull are the check.
func TestFitKeepsToWhatCanBeBuilt(t *testing.T) {
	at := func(x float64) record.Place { return record.Place{Distance: x * inch} }
	f := Fit(plain(
		record.Datum{Kind: record.EndHeight, Value: 21 * inch},
		record.Datum{Kind: record.SheerHeight, At: at(60), Value: 13 * inch},
		record.Datum{Kind: record.SheerHeight, At: at(80), Value: 17 * inch},
		record.Datum{Kind: record.SheerHeight, At: at(87), Value: 20.5 * inch}))
	assert.Empty(t, design.Validate(f.Design))
	h := hull.New(f.Design)
	assert.Empty(t, h.Faults())
}

// The height of the stem head at both ends gives the mean of the two, which the
// notes say.
func TestEndsOfTwoHeights(t *testing.T) {
	f := Fit(plain(
		record.Datum{Kind: record.EndHeight, At: record.Place{Side: record.Forward}, Value: 25 * inch},
		record.Datum{Kind: record.EndHeight, At: record.Place{Side: record.Aft}, Value: 23 * inch}))
	require.Len(t, f.EndsDiffer, 1)
	assert.Contains(t, f.EndsDiffer[0], "Stem-head height: 2' 1\" forward, 1' 11\" aft")
	assert.InDelta(t, 24, f.Design.EndHeight/inch, 1e-9)
}

// Messages show lengths in the units asked for.
func TestMessagesInMetric(t *testing.T) {
	rec := plain(record.Datum{Kind: record.BeamOutside, Value: 20 * inch})
	rec.System = units.Metric
	f := Fit(rec)
	require.NotEmpty(t, f.Conflicts)
	assert.Contains(t, f.Conflicts[0].Message, "508 mm")
}
