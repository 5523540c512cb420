package design_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/internal/check"
	"barkwright/core/units"
)

// What no section can go round is said at a control that was set, never at the turn line
// that follows; what is offered there mends it. Where the walls stand was expected before
// this was written (a prototype's, whose 24 ft boat was not quite this one): frames to
// 0.968 of the beam, and 0.928 on the 24 ft boat; the bilge from 0.60 on that.
func TestGirthFaultsAreSaidWhereTheyAreMade(t *testing.T) {
	const in = units.Inch
	freight := design.Starting()[2]
	rows := []struct {
		key     string
		d       design.Design
		fit     float64
		within  float64
		atLeast bool
	}{
		{"frameWidth", check.With(t, "frameWidth", 33*in), 0.968 * 33 * in, 0.1 * in, false},
		{"frameWidth", set(t, freight, "frameWidth", 48*in), 0.928 * 50 * in, 0.005 * 50 * in, false},
		{"bilge", set(t, freight, "bilge", 0.56), 0.60, 0.02, true},
		{"frameWidth", check.With(t, "beam", 40*in, "depth", 7.5*in, "gunwaleEndHeight", 15*in, "frameWidth", 10*in),
			math.NaN(), 0, true},
	}
	for _, row := range rows {
		faults := design.Validate(row.d)
		require.Contains(t, keys(faults), row.key)
		assert.NotContains(t, keys(faults), "turnWidth")
		f := faults[0]
		require.True(t, f.HasFit, row.key)
		assert.Equal(t, row.atLeast, f.FitLeast)
		if !math.IsNaN(row.fit) {
			assert.InDelta(t, row.fit, f.Fit, row.within)
		}
		for _, key := range []string{"frameWidth", "ease", "bilge", "beam", "depth"} {
			at := f.At(key)
			assert.Equal(t, key, at.Key)
			if v, ok := at.Suggest(units.Imperial16); ok && at.HasFit {
				assert.NotContains(t, keys(design.Validate(set(t, row.d, key, v))), key)
			}
		}
		assert.Equal(t, f, f.At("cargo"), "a control that decides nothing of it")
	}
	for bilge := 0.56; bilge < 0.851; bilge += 0.01 {
		assert.Empty(t, design.Validate(check.With(t, "bilge", bilge)), "the default at %v", bilge)
	}
	for _, ease := range []float64{-0.2, 1.5} {
		for _, d := range append(design.Starting(), design.Default()) {
			assert.Empty(t, design.Validate(set(t, d, "ease", ease*in)), d.Name)
		}
	}
}

// Set the turn line or a greatest breadth, or build on the gunwales, and what then
// follows is a readout: the breadth of the turn line, and of the ease what is left.
func TestReadOuts(t *testing.T) {
	const in = units.Inch
	reads := func(d design.Design, key string) (float64, bool) {
		v, why, is := design.ReadOut(d, key)
		assert.Equal(t, is, why != "", key)
		return v, is
	}
	plain := design.Default()
	for _, p := range design.Params() {
		_, is := reads(plain, p.Key)
		assert.False(t, is, p.Key)
	}
	turned := set(t, plain, "turnWidth", plain.TurnWidth)
	left, is := reads(turned, "ease")
	assert.True(t, is)
	assert.InDelta(t, plain.Ease, left, 1e-9, "the turn line as it followed leaves the ease as it was")
	_, is = reads(turned, "turnWidth")
	assert.False(t, is)
	assert.True(t, turned.GirthsAgree())
	// The corner at the frame's edge, where boats stood before: the bark on the bed is too long.
	narrow := set(t, plain, "turnWidth", plain.FrameWidth)
	assert.False(t, narrow.GirthsAgree())
	left, _ = reads(narrow, "ease")
	assert.Greater(t, left, design.MostEase)
	wide := set(t, plain, "turnWidth", 39*in)
	assert.False(t, wide.GirthsAgree())
	left, _ = reads(wide, "ease")
	assert.Less(t, left, design.LeastEase)
	assert.Empty(t, design.Validate(narrow), "a readout is never a fault")
	assert.Empty(t, design.Validate(wide))

	bulging := set(t, plain, "greatestBeam", 38*in)
	turn, is := reads(bulging, "turnWidth")
	assert.True(t, is)
	assert.Greater(t, turn, plain.OutsideBreadth())
	_, is = reads(bulging, "ease")
	assert.True(t, is)

	box := set(t, plain, "builtOn", float64(design.OnGunwales))
	assert.InDelta(t, box.OutsideBreadth()/2+box.Depth, box.HalfGirth(), 1e-9)
	left, is = reads(box, "ease")
	assert.True(t, is)
	assert.InDelta(t, 0, left, 1e-9)
	frame, is := reads(box, "frameWidth")
	assert.True(t, is)
	assert.InDelta(t, 35, frame/in, 1e-9)
	eased := set(t, box, "ease", 1.5*in)
	assert.Equal(t, box.HalfGirth(), eased.HalfGirth(), "no ease there")
}
