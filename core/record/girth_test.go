package record

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/hull"
	"barkwright/core/internal/check"
	"barkwright/core/units"
)

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
		plain := design.Default()
		beam := 2 * (v("half_breadth_gunwale_in") - plain.InwaleThickness - plain.BarkThickness)
		rec := Record{Data: []Datum{{Kind: BeamInside, Value: beam}, {Kind: DepthInwale, Value: v("depth_in")}}}
		if row["lettered_frame_in"] != "" {
			rec.Data = append(rec.Data, Datum{Kind: FrameWidth, Value: v("lettered_frame_in")})
		}
		before := Fit(rec)
		// The turning of these sections is within a tenth of the default's.
		h := hull.New(before.Design)
		turning := h.Section(0).Turning()
		rec.Data = append(rec.Data, Datum{Kind: HalfGirth, Value: v("half_girth_in") - plain.BarkThickness*turning})
		after := Fit(rec)
		require.Empty(t, after.Conflicts, row["boat"])
		assert.Equal(t, before.Design.FrameWidth, after.Design.FrameWidth, "a girth moves no frame")
		assert.Equal(t, before.Design.Bilge, after.Design.Bilge)
		for _, at := range []string{"3", "4", "6"} {
			with.add((halfAt(after.Design, v("half_at_"+at+"_in"), at)) / inch)
			without.add((halfAt(before.Design, v("half_at_"+at+"_in"), at)) / inch)
		}
	}
	t.Logf("half-breadths with the half girth %.2f in rms, worst %.2f; without %.2f, worst %.2f", with.rms(), with.worst, without.rms(), without.worst)
	assert.Less(t, with.rms(), 0.25)
	assert.Less(t, with.rms(), without.rms())
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
	readings := []Datum{
		{Kind: HalfGirth, Value: before.HalfGirthInside(0) + inch/4},
		{Kind: HalfGirth, Number: 1, Value: before.HalfGirthInside(x) - inch/2},
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
	assert.InDelta(t, d.EaseLeft()-(out.Design.HalfGirth()-d.HalfGirth()), out.Design.EaseLeft(), 1e-9, "ease is what is left")
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
	bulging := plain(Datum{Kind: GreatestBeam, Value: 37 * inch})
	assert.Equal(t, design.OnGunwales, Fit(bulging).Design.BuiltOn)
	bulging.Data = append(bulging.Data, Datum{Kind: FrameWidth, Value: 27 * inch})
	assert.Equal(t, design.OnFrame, Fit(bulging).Design.BuiltOn)
	assert.Equal(t, design.OnFrame, Fit(plain()).Design.BuiltOn)
}
