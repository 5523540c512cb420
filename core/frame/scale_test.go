package frame_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/design"
	"barkwright/core/frame"
	"barkwright/core/internal/check"
	"barkwright/core/units"
)

// A boat k times as large in every length is framed with every length by k, but
// for what is a fixed size: thwart timber, stakes, trims and the quarter inch to
// the lacing's holes.
func TestScaling(t *testing.T) {
	const k = 1.5
	small := check.With(t, "ribs", 45.0)
	large := small
	for _, p := range design.Params() {
		switch p.Kind {
		case units.Length, units.SmallLength, units.Thickness, units.Offset:
			large = p.Set(large, k*p.Get(&small))
		}
	}
	_, a := build(small)
	_, b := build(large)
	same := func(what string, x, y float64) {
		t.Helper()
		assert.InEpsilon(t, k*x, y, rounding, what)
	}
	// What is searched for, or hangs on a slope, goes by steps of fixed length, which do not grow with the boat.
	searched := func(what string, x, y float64) {
		t.Helper()
		assert.InEpsilon(t, k*x, y, 1e-9, what)
	}
	same("run", a.Gunwales.Run, b.Gunwales.Run)
	same("outwale", a.Gunwales.Outwale, b.Gunwales.Outwale)
	same("inwale", a.Gunwales.InwaleSheer.Radius, b.Gunwales.InwaleSheer.Radius)
	for i := range a.Thwarts {
		same("shoulder", a.Thwarts[i].Shoulder, b.Thwarts[i].Shoulder)
		assert.InDelta(t, k*a.Thwarts[i].EndToEnd, b.Thwarts[i].EndToEnd, rounding)
	}
	for i := range a.Ribs {
		same("length", a.Ribs[i].Length, b.Ribs[i].Length)
		same("inner", a.Ribs[i].Inner, b.Ribs[i].Inner)
		same("radius", a.Ribs[i].Bend.Radius, b.Ribs[i].Bend.Radius)
		assert.InDelta(t, k*a.Ribs[i].Run, b.Ribs[i].Run, rounding)
		assert.Equal(t, a.Ribs[i].Order, b.Ribs[i].Order)
	}
	for i := range a.Bed.Posts {
		same("post", a.Bed.Posts[i].Length, b.Bed.Posts[i].Length)
	}
	for i := range a.Lacing.Groups {
		assert.InDelta(t, k*a.Lacing.Groups[i].Run, b.Lacing.Groups[i].Run, rounding)
		assert.InDelta(t, k*a.Lacing.Groups[i].Holes[0], b.Lacing.Groups[i].Holes[0], rounding)
	}
	hole := 2 * 0.25 * inch // down to the hole and up
	same("turn", a.Lacing.Turn-hole, b.Lacing.Turn-hole)
	searched("stem", a.Stem.Curve, b.Stem.Curve)
	searched("innermost", a.Stem.Innermost().Radius, b.Stem.Innermost().Radius)
	searched("slack", a.Bed.Slack, b.Bed.Slack)
	searched("headboard", a.Headboard.Height, b.Headboard.Height)
}

// The frame of the default boat, its hull shaped anew: what one step of a slider
// costs here.
func BenchmarkBuild(b *testing.B) {
	d := design.Default()
	b.ReportAllocs()
	for b.Loop() {
		h, _ := build(d)
		frame.Faults(h)
	}
}
