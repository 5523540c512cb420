package refit

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/geom"
	"barkwright/core/hull"
	"barkwright/core/internal/check"
	"barkwright/core/record"
	"barkwright/core/units"
)

// drawnSection records a drawn midsection of the survey with its beam, its depth and its frame, where one is lettered.
func drawnSection(t *testing.T, row check.Row) record.Record {
	v := func(column string) float64 { return row.Float(t, column) * inch }
	d := design.Default()
	beam := 2 * (v("half_breadth_gunwale_in") - d.InwaleThickness - d.BarkThickness)
	rec := record.Record{Data: []record.Datum{{Kind: record.BeamInside, Value: beam},
		{Kind: record.DepthInwale, Value: v("depth_in")}}}
	if row["lettered_frame_in"] != "" {
		rec.Data = append(rec.Data, record.Datum{Kind: record.FrameWidth, Value: v("lettered_frame_in")})
	}
	return rec
}

// The drawn midsections of the survey, each recorded with its frame, where one is
// lettered, and its half girth alone: the half-breadths at three heights follow. Drawn
// half girths are round the outside, good to a quarter inch; the bound is the drawing's
// quarter inch and as much again for the bilge, which is held by rule: in rms a quarter.
func TestHalfGirthGivesTheDrawnSection(t *testing.T) {
	with, without := pooled{}, pooled{}
	for _, row := range check.Published(t, "drawn-sections") {
		if row["half_at_4_in"] == "" {
			continue
		}
		v := func(column string) float64 { return row.Float(t, column) * inch }
		rec := drawnSection(t, row)
		before := Fit(rec)
		// The turning of these sections is within a tenth of the default's.
		h := hull.New(before.Design)
		turning := h.Section(0).Turning()
		rec.Data = append(rec.Data, record.Datum{Kind: record.HalfGirth,
			Value: v("half_girth_in") - design.Default().BarkThickness*turning})
		after := Fit(rec)
		require.Empty(t, after.Conflicts, row["boat"])
		assert.Equal(t, before.Design.FrameWidth, after.Design.FrameWidth, "a girth moves no frame")
		assert.Equal(t, before.Design.Bilge, after.Design.Bilge)
		for _, at := range []string{"3", "4", "6"} {
			with.add((halfAt(after.Design, v("half_at_"+at+"_in"), at)) / inch)
			without.add((halfAt(before.Design, v("half_at_"+at+"_in"), at)) / inch)
		}
	}
	t.Logf("half-breadths with the half girth %.2f in rms, worst %.2f; without %.2f, worst %.2f", with.rms(),
		with.worst,
		without.rms(), without.worst)
	assert.Less(t, with.rms(), 0.25)
	assert.Less(t, with.rms(), without.rms())
}

// The same sections recorded with one half breadth at 4 in in place of the girth, and
// with both. The bound in rms is the quarter inch that the drawings are good to, and in
// each what two such readings, the recorded and the compared one, may differ by. Alone it
// frees the corner only, with the girth the bilge too; the frame never moves.
func TestHalfBreadthGivesTheDrawnSection(t *testing.T) {
	alone, both, girths := pooled{}, pooled{}, pooled{}
	for _, row := range check.Published(t, "drawn-sections") {
		if row["half_at_4_in"] == "" {
			continue
		}
		v := func(column string) float64 { return row.Float(t, column) * inch }
		rec := drawnSection(t, row)
		before := Fit(rec)
		h := hull.New(before.Design)
		turning := h.Section(0).Turning()
		at4 := record.Datum{Kind: record.HalfBreadth, At: record.Place{Height: 4 * inch}, Value: v("half_at_4_in")}
		girth := record.Datum{Kind: record.HalfGirth,
			Value: v("half_girth_in") - design.Default().BarkThickness*turning}
		one := Fit(record.Record{Data: append(rec.Data[:len(rec.Data):len(rec.Data)], at4)})
		two := Fit(record.Record{Data: append(rec.Data[:len(rec.Data):len(rec.Data)], at4, girth)})
		for _, f := range []Fitted{one, two} {
			require.Empty(t, f.Conflicts, row["boat"])
			assert.Equal(t, before.Design.FrameWidth, f.Design.FrameWidth, "no frame moves")
		}
		assert.Equal(t, before.Design.Bilge, one.Design.Bilge, "the corner only")
		assert.NotEqual(t, before.Design.Bilge, two.Design.Bilge, "the bilge too")
		assert.True(t, isHeld(before, "turnWidth") && isHeld(before, "bilge"), "none frees nothing")
		assert.True(t, !isHeld(one, "turnWidth") && isHeld(one, "bilge"))
		assert.True(t, !isHeld(two, "turnWidth") && !isHeld(two, "bilge"))
		girths.add((one.Design.HalfGirth() - v("half_girth_in")) / inch)
		for _, at := range []string{"3", "4", "6"} {
			alone.add(halfAt(one.Design, v("half_at_"+at+"_in"), at) / inch)
			both.add(halfAt(two.Design, v("half_at_"+at+"_in"), at) / inch)
		}
	}
	t.Logf("one breadth: half breadths %.2f in rms, worst %.2f, girths %.2f; with the girth %.2f, worst %.2f",
		alone.rms(), alone.worst, girths.rms(), both.rms(), both.worst)
	assert.Less(t, alone.rms(), 0.25)
	assert.Less(t, both.rms(), 0.25)
	assert.Less(t, both.rms(), alone.rms())
	assert.LessOrEqual(t, alone.worst, 0.5)
	assert.LessOrEqual(t, both.worst, 0.5)
	assert.Less(t, girths.rms(), 0.25)
}

// Read half an inch wrong either way with even odds of everything between, a girth and a
// breadth together give the half breadths no worse than they were read, 0.29 in rms
// (1/2 over the root of 3): the spreads of drawn boats keep the bilge from following the errors.
func TestSectionDoesNotFollowErrors(t *testing.T) {
	source := rand.New(rand.NewPCG(9, 9))
	off := func() float64 { return (source.Float64() - 0.5) * inch }
	both := pooled{}
	for _, row := range check.Published(t, "drawn-sections") {
		if row["half_at_4_in"] == "" {
			continue
		}
		v := func(column string) float64 { return row.Float(t, column) * inch }
		rec := drawnSection(t, row)
		h := hull.New(Fit(rec).Design)
		turning := h.Section(0).Turning()
		for range 12 {
			f := Fit(record.Record{Data: append(rec.Data[:len(rec.Data):len(rec.Data)],
				record.Datum{Kind: record.HalfBreadth, At: record.Place{Height: 4 * inch},
					Value: v("half_at_4_in") + off()},
				record.Datum{Kind: record.HalfGirth,
					Value: v("half_girth_in") - design.Default().BarkThickness*turning + off()})})
			for _, at := range []string{"3", "4", "6"} {
				both.add(halfAt(f.Design, v("half_at_"+at+"_in"), at) / inch)
			}
		}
	}
	t.Logf("half breadths %.2f in rms, worst %.2f", both.rms(), both.worst)
	assert.Less(t, both.rms(), 0.5/math.Sqrt(3))
}

func isHeld(f Fitted, key string) bool {
	return slices.ContainsFunc(f.Held, func(h Held) bool { return h.Key == key })
}

// A half breadth is modelled on the section there; at a height where the boat has no side
// it is set aside with the heights it has one between.
func TestHalfBreadthAtItsHeight(t *testing.T) {
	d := design.Default()
	h := hull.New(d)
	s := h.Section(24 * inch)
	rows := Measure(d, record.Record{Data: []record.Datum{{Kind: record.HalfBreadth,
		At: record.Place{Distance: 24 * inch, Height: 5 * inch}, Value: 15 * inch}}})
	points := s.Sample(20000)
	i := slices.IndexFunc(points, func(q geom.Vec2) bool { return q.Y >= 5*inch })
	assert.InDelta(t, points[i].X, rows[0].Model, 4e-5, "points of the sample are under 0.04 mm apart")
	for _, height := range []float64{0, 13 * inch} {
		f := Fit(plain(record.Datum{Kind: record.HalfBreadth, At: record.Place{Height: height}, Value: 15 * inch}))
		require.Len(t, f.Conflicts, 1, height)
		assert.True(t, isHeld(f, "turnWidth"))
	}
	// At two heights of one place there are two measurements and no conflict.
	f := Fit(plain(
		record.Datum{Kind: record.HalfBreadth, At: record.Place{Height: 3 * inch}, Value: 14.8 * inch},
		record.Datum{Kind: record.HalfBreadth, At: record.Place{Height: 6 * inch}, Value: 16.2 * inch}))
	assert.Empty(t, f.Conflicts)
	assert.True(t, isHeld(f, "bilge"), "breadths alone free the corner only")
}

// halfAt is by how much a design's midsection is broader than drawn at a height in inches.
func halfAt(d design.Design, drawn float64, at string) float64 {
	height := map[string]float64{"3": 3, "4": 4, "6": 6}[at] * inch
	h := hull.New(d)
	return h.Section(0).HalfBreadthAt(height) - drawn
}

// Half girths read after lacing correct the ribs where they were read, with what is
// between, and nothing past the next thwart; the plan and the sheer stay.
func TestHalfGirthAsBuilt(t *testing.T) {
	d := design.Default()
	before := hull.New(d)
	x, next := thwartX(before, 1), thwartX(before, 2)
	readings := []record.Datum{
		{Kind: record.HalfGirth, Value: before.HalfGirthInside(0) + inch/4},
		{Kind: record.HalfGirth, Number: 1, Value: before.HalfGirthInside(x) - inch/2},
	}
	out := AsBuilt(d, readings, units.Imperial16)
	require.Empty(t, out.Conflicts)
	require.Empty(t, design.Validate(out.Design))
	assert.Len(t, out.Corrected, 2)
	for _, r := range out.Rows {
		assert.InDelta(t, 0, r.Difference, 1e-5, r.Datum)
	}
	after := hull.New(out.Design)
	assert.Empty(t, after.Faults())
	assert.InDelta(t, out.Design.HalfGirth(), after.Section(0).HalfGirth(), 1e-9)
	assert.InDelta(t, d.EaseLeft()-(out.Design.HalfGirth()-d.HalfGirth()), out.Design.EaseLeft(), 1e-9,
		"ease is what is left")
	for i := range 21 {
		at := next + (before.HeelX-next)*float64(i)/20
		assert.InDelta(t, before.Section(at).HalfGirth(), after.Section(at).HalfGirth(), 1e-9)
		assert.Equal(t, before.HalfBeam(at), after.HalfBeam(at))
	}
	between := after.Section(x/2).HalfGirth() - before.Section(x/2).HalfGirth()
	assert.Greater(t, between, -inch/2)
	assert.Less(t, between, inch/4)
}

// Bark broader than its gunwales, with no frame recorded, was built on them.
func TestGreatestBeamMeansGunwaleFrame(t *testing.T) {
	bulging := plain(record.Datum{Kind: record.GreatestBeam, Value: 37 * inch})
	assert.Equal(t, design.OnGunwales, Fit(bulging).Design.BuiltOn)
	bulging.Data = append(bulging.Data, record.Datum{Kind: record.FrameWidth, Value: 27 * inch})
	assert.Equal(t, design.OnFrame, Fit(bulging).Design.BuiltOn)
	assert.Equal(t, design.OnFrame, Fit(plain()).Design.BuiltOn)
}
