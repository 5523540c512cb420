package frame_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/frame"
	"barkwright/core/geom"
	"barkwright/core/hull"
	"barkwright/core/internal/check"
	"barkwright/core/wood"
)

// A sheer of power 2 is a parabola y = a x^2, tightest at its vertex, radius
// 1/(2a), a the rise over the half length squared.
func TestSheerParabola(t *testing.T) {
	h, f := build(check.With(t, "gunwaleEndSplits", 1.0, "sheerSweep", 2.0))
	a := (h.Design.GunwaleEndHeight - h.Design.Depth) / (h.GunwaleX * h.GunwaleX)
	for _, b := range []frame.GunwaleBend{f.Gunwales.InwaleSheer, f.Gunwales.OutwaleSheer} {
		assert.InEpsilon(t, 1/(2*a), b.Radius, rounding)
		assert.InDelta(t, 0, b.X, 1e-6)
	}
}

// A plan of power 2 and fineness 1 is a parabola too: beam over 2, over the half
// length squared.
func TestPlanParabola(t *testing.T) {
	h, f := build(check.With(t, "beamFull", 2.0, "beamFine", 1.0))
	a := h.Design.Beam / 2 / (h.GunwaleX * h.GunwaleX)
	assert.InEpsilon(t, 1/(2*a), f.Gunwales.InwalePlan.Radius, rounding)
	assert.InDelta(t, 0, f.Gunwales.InwalePlan.X, 1e-6)
}

// A straight timber has a number: the largest radius spoken of.
func TestLevelGunwaleIsStraight(t *testing.T) {
	_, f := build(check.With(t, "gunwaleEndHeight", 12.5*inch, "endHeight", 13*inch, "overhang", 0.0, "headSetback", 0.0))
	// The innermost of four layers of an inch lies 3/8 in inside the middle.
	const inside = 3.0 / 8 * inch
	assert.InDelta(t, 1e4, f.Gunwales.InwaleSheer.Radius, inside+1e-11, "rounding of ten thousand")
	assert.Equal(t, wood.WithinGuide, f.Gunwales.InwaleSheer.Verdict)
	// With no overhang no outwale runs past the gunwale's end.
	assert.InDelta(t, 1e4, f.Gunwales.OutwaleEnd.Radius, inside+1e-11, "rounding of ten thousand")
	// It still closes in on the stem-piece, outside the inwale.
	assert.InDelta(t, f.Gunwales.Inwale, f.Gunwales.Outwale, inch/2)
}

// Past the gunwale's end the outwale follows the top edge: a cubic whose two end
// slopes have the chord's for their mean bends by the same second derivative all
// along, the difference of the slopes over the run; it is tightest where it is
// least steep.
func TestOutwalePastTheGunwalesEnd(t *testing.T) {
	h, f := build(check.With(t, "gunwaleEndSplits", 1.0))
	d := &h.Design
	run := h.HeadX - h.GunwaleX
	// The sheer's slope at its end, led on from a centimetre and half of one short.
	m0 := 2*geom.Slope(h.Sheer, h.GunwaleX-0.005, 1e-3) - geom.Slope(h.Sheer, h.GunwaleX-0.01, 1e-3)
	chord := (d.EndHeight - d.GunwaleEndHeight) / run
	second := 2 * (chord - m0) / run
	b := f.Gunwales.OutwaleEnd
	m := m0 + second*(b.X-h.GunwaleX)
	want := math.Pow(1+m*m, 1.5) / second
	t.Logf("outwale at the end: R %.1f in, R/t %.1f, %v; %d layers needed", b.Radius/inch, b.Ratio, b.Verdict, b.Mend)
	assert.InEpsilon(t, want, b.Radius, 2e-3, "the slope led on by a line")
	assert.InDelta(t, h.GunwaleX, b.X, 2e-3+1e-6, "it is looked for from two steps of a millimetre past it")
	assert.Equal(t, d.OutwaleDepth, b.Thickness)

	_, split := build(check.With(t, "gunwaleEndSplits", 4.0))
	four := split.Gunwales.OutwaleEnd
	assert.InDelta(t, d.OutwaleDepth/4, four.Thickness, rounding)
	assert.InDelta(t, b.Radius-d.OutwaleDepth*3/8, four.Radius, rounding, "the innermost of four")
	assert.Equal(t, b.Mend, four.Mend)
}

// The layers offered are within guide and one fewer is not.
func TestMendedGunwales(t *testing.T) {
	d := check.With(t, "gunwaleCondition", float64(wood.Dry), "sheerSweep", 8.0, "gunwaleEndSplits", 1.0)
	g := frame.Build(hull.New(d)).Gunwales
	mended := 0
	for _, b := range []frame.GunwaleBend{g.InwalePlan, g.InwaleSheer, g.OutwalePlan, g.OutwaleSheer, g.OutwaleEnd} {
		if b.Mend == 0 {
			continue
		}
		whole := wood.FromMiddle(b.Radius, b.Thickness, d.GunwaleStock)
		assert.Equal(t, wood.WithinGuide, whole.Innermost(b.Mend).Verdict)
		if b.Mend > 1 {
			mended++
			assert.NotEqual(t, wood.WithinGuide, whole.Innermost(b.Mend-1).Verdict)
		}
	}
	assert.Greater(t, mended, 2)
}

// The tape along a straight-sided boat, and the outwale's way on to the head
// against an independent sum of short chords.
func TestGunwaleLengths(t *testing.T) {
	h, f := build(design.Default())
	sum := func(at func(float64) geom.Vec3, from, to float64) float64 {
		const n = 200000
		total, last := 0.0, at(from)
		for i := 1; i <= n; i++ {
			p := at(from + (to-from)*float64(i)/n)
			total += p.Sub(last).Len()
			last = p
		}
		return total
	}
	inwale := 2 * sum(func(x float64) geom.Vec3 { return geom.Vec3{X: x, Y: h.HalfBeam(x), Z: h.Sheer(x)} }, 0, h.GunwaleX)
	edge := func(x float64) geom.Vec3 { return geom.Vec3{X: x, Y: h.SkinHalfBreadth(x), Z: h.TopEdge(x)} }
	outwale := 2 * sum(edge, 0, h.HeadX)
	// The bark closes in from the inwale's and its own thickness amidships to half the stem's at the ends.
	require.Greater(t, outwale, inwale+2*sum(edge, h.GunwaleX, h.HeadX)+inch/4)
	// A hundredth of a millimetre to each length between the knots, far under a pencil line.
	assert.InDelta(t, inwale, f.Gunwales.Inwale, 2e-5)
	assert.Equal(t, 2*f.Gunwales.Run, f.Gunwales.Inwale)
	assert.InDelta(t, outwale, f.Gunwales.Outwale, 4e-5)
	assert.Equal(t, f.Gunwales.Outwale, f.Gunwales.Cap)
}

// Layers are at the ends only: a sheer that is tightest amidships is bent whole
// there, however many layers its ends have.
func TestSplitsMendTheEndsOnly(t *testing.T) {
	pairs := []any{"gunwaleCondition", float64(wood.Dry), "sheerSweep", 1.5, "gunwaleEndHeight", 40 * inch,
		"endHeight", 45 * inch}
	_, whole := build(check.With(t, append(pairs, "gunwaleEndSplits", 1.0)...))
	_, split := build(check.With(t, append(pairs, "gunwaleEndSplits", 4.0)...))
	assert.Less(t, whole.Gunwales.InwaleSheer.X, 0.5)
	assert.Equal(t, whole.Gunwales.InwaleSheer, split.Gunwales.InwaleSheer)
	assert.Equal(t, 1, split.Gunwales.InwaleSheer.Layers)
	assert.Equal(t, 4, split.Gunwales.OutwaleEnd.Layers)
}

// A cap narrows evenly to half its width at its ends. Amidships a plan of power 2 is a parabola, tightest
// at its vertex for a cap of any width; where a plan is tightest at its end the cap is narrow there.
// The least of radius over width, by looking at every 4,000th of the gunwale.
func TestCapsInPlan(t *testing.T) {
	for _, d := range append(design.Starting(), design.Default(), check.With(t, "beamFull", 2.0, "beamFine", 1.0)) {
		h, f := build(d)
		g := f.Gunwales
		least, at := math.Inf(1), 0.0
		const n = 4000
		for i := range n + 1 {
			run := (g.Run - 2*inch) * float64(i) / n
			x := min(h.StationAt(run), h.StationAt(g.Run-2*inch)-2e-3)
			slope, second := h.PlanBend(x)
			width := d.CapWidth * (1 - run/(g.Cap/2)/2)
			if r := math.Pow(1+slope*slope, 1.5) / math.Abs(second) / width; r < least {
				least, at = r, x
			}
		}
		// Toward a plan's end the ratio falls by a share of 1e-4 in the last step of the search.
		assert.InEpsilon(t, least, g.CapPlan.Ratio, 2e-4, d.Name)
		assert.InDelta(t, at, g.CapPlan.X, 0.01, d.Name)
		assert.Greater(t, g.CapPlan.Thickness, d.CapWidth/2)
	}
}

// Up the sheer and past the gunwale's end a cap follows the outwale, whole.
func TestCapsFollowTheOutwale(t *testing.T) {
	_, f := build(check.With(t, "gunwaleEndSplits", 1.0))
	_, split := build(design.Default())
	g := f.Gunwales
	thick := design.Default().CapThickness
	assert.InDelta(t, g.OutwaleEnd.Radius, g.CapEnd.Radius, rounding)
	assert.InDelta(t, g.OutwaleEnd.Radius/thick, g.CapEnd.Ratio, 1e-9)
	assert.InDelta(t, g.OutwaleSheer.Radius, g.CapSheer.Radius, rounding)
	assert.Equal(t, g.CapEnd, split.Gunwales.CapEnd)
	assert.Equal(t, g.CapSheer, split.Gunwales.CapSheer)
}
