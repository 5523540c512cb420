package frame_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/frame"
	"barkwright/core/geom"
	"barkwright/core/hull"
	"barkwright/core/internal/check"
	"barkwright/core/units"
	"barkwright/core/wood"
)

// Largest remainder by hand: bays of 40, 30 and 20 in the middle half and ten
// ribs want 4.44, 3.33 and 2.22; wholes 4, 3, 2 and the one left over to the
// greatest remainder, the first.
func TestRibsDealtByLargestRemainder(t *testing.T) {
	counts := func(f frame.Frame) []int {
		out := make([]int, len(f.Thwarts))
		for _, r := range f.Ribs {
			if !r.Alone() {
				out[r.Bay]++
			}
		}
		return out
	}
	h := hull.New(design.Default())
	run := h.Gunwale.Length()
	to := run - h.Design.Headboard
	share := func(s float64) float64 { return s * to / run }
	for _, row := range []struct {
		ribs int
		want []int
	}{{20, []int{5, 3, 2}}, {21, []int{5, 3, 2}}, {18, []int{4, 3, 2}}, {32, []int{7, 5, 4}}} {
		// 32: 16 want 7.11, 5.33, 3.56: wholes 7, 5, 3, the one over to the last.
		_, f := build(check.With(t, "thwart1", share(4.0/9), "thwart2", share(7.0/9), "ribs", float64(row.ribs)))
		assert.Equal(t, row.want, counts(f), "%d ribs", row.ribs)
	}
}

// Marks by hand on true lengths: equal spaces inside a bay, half a space at each
// thwart, a whole one before the headboard and beside a rib under the middle thwart.
func TestRibMarks(t *testing.T) {
	for _, ribs := range []float64{44, 45} {
		h, f := build(check.With(t, "ribs", ribs))
		total := 0
		for i, r := range f.Ribs {
			total += 2
			if r.Alone() {
				total--
				assert.Zero(t, r.Run)
				assert.InDelta(t, r.Spacing, f.Ribs[1].Run, rounding)
				continue
			}
			assert.InDelta(t, r.Run, h.RunTo(r.X), byKnots, "the mark is a true length")
			from, to := f.Thwarts[r.Bay].Run, frame.HeadboardRun(h)
			if r.Bay+1 < len(f.Thwarts) {
				to = f.Thwarts[r.Bay+1].Run
			}
			first := i == 0 || f.Ribs[i-1].Bay != r.Bay
			last := i+1 == len(f.Ribs) || f.Ribs[i+1].Bay != r.Bay
			if first {
				assert.InDelta(t, r.Spacing/2, r.Run-from, rounding, "rib %d", r.Number)
			} else {
				assert.InDelta(t, r.Spacing, r.Run-f.Ribs[i-1].Run, rounding, "rib %d", r.Number)
			}
			if last {
				room := r.Spacing / 2
				if i+1 == len(f.Ribs) {
					room = r.Spacing
				}
				assert.InDelta(t, room, to-r.Run, rounding, "rib %d", r.Number)
			}
		}
		assert.Equal(t, int(ribs), total)
	}
}

// From the ends, the middle one last: common practice, no published source (Adney
// and Chapelle 1964, p. 52, the same with the last three or four amidships).
func TestFittingOrder(t *testing.T) {
	for _, ribs := range []float64{8, 9, 44, 45, 110} {
		d := check.With(t, "ribs", ribs)
		d.RibWidthMid, d.RibWidthEnd, d.RibTipWidth = 0.5*inch, 0.5*inch, 0.5*inch
		_, f := build(d)
		seen := map[int]bool{}
		for i, r := range f.Ribs {
			seen[r.Order] = true
			if r.Alone() {
				assert.Equal(t, int(ribs), r.Order, "the middle one last")
				continue
			}
			seen[r.Order+1] = true // its mate
			if i > 0 && !f.Ribs[i-1].Alone() {
				assert.Less(t, r.Order, f.Ribs[i-1].Order, "outer ones first")
			}
		}
		assert.Equal(t, 1, f.Ribs[len(f.Ribs)-1].Order)
		require.Len(t, seen, int(ribs))
		for n := 1; n <= int(ribs); n++ {
			assert.True(t, seen[n], "%d of %v", n, ribs)
		}
	}
}

// A curve moved inward by d is shorter by d times what it turns (differential
// geometry): the rib drawn point by point is as long as the number says, and the
// inner face with its bevels at 45 degrees is shorter by t (turning + 1) a side.
func TestRibLengthIsThatOfItsShape(t *testing.T) {
	for _, d := range []design.Design{design.Default(), check.With(t, "greatestBeam", 38*inch),
		check.With(t, "bilge", 0.5)} {
		h, f := build(d)
		for _, r := range f.Ribs {
			if r.Bend.WillNotFit {
				continue
			}
			shape := r.Shape(h, 1000)
			// Where the bend goes on past the tip, the last of the turning is counted
			// that the rib has no part in: up to 1/64 in for an easy bilge.
			const tolerance = inch / 64
			assert.InDelta(t, r.Length/2, length(shape), tolerance, "rib %d", r.Number)
			s := r.Cut(h).Section
			inner := length(frame.Inside(s, d.BarkThickness+d.SheathingThickness+r.Thickness, s.HalfGirth()-d.RibTuck, 1000))
			assert.InDelta(t, r.Inner/2, inner-r.Thickness, tolerance, "rib %d inside", r.Number)
			// The tip is the tuck under the top of the bark, along the side.
			tip := s.At(s.HalfGirth() - d.RibTuck)
			assert.InDelta(t, d.BarkThickness+d.SheathingThickness, tip.Sub(shape[1000]).Len(), rounding)
		}
	}
}

func TestRibWidthsAndThicknesses(t *testing.T) {
	d := design.Default()
	_, f := build(d)
	last := f.Ribs[len(f.Ribs)-1]
	assert.InDelta(t, d.RibWidthEnd, last.Width, rounding)
	assert.InDelta(t, d.RibThicknessEnd, last.Thickness, rounding)
	for _, r := range f.Ribs {
		share := r.Run / last.Run
		assert.InDelta(t, (1-share)*d.RibWidthMid+share*d.RibWidthEnd, r.Width, rounding)
		assert.Less(t, r.Width, r.Spacing)
	}
	_, odd := build(check.With(t, "ribs", 45.0))
	assert.InDelta(t, d.RibWidthMid, odd.Ribs[0].Width, rounding)
	assert.InDelta(t, d.RibThickness, odd.Ribs[0].Thickness, rounding)
}

// On opening, only ribs broken at the centre are too tight, no more than the last
// three an end (Adney and Chapelle 1964, p. 104 and fig. 116).
func TestOnlyBrokenRibsAreTooTightOnOpening(t *testing.T) {
	h, f := build(design.Default())
	broken := 0
	for _, r := range f.Ribs {
		assert.True(t, r.Broken || r.Bend.Verdict != wood.TooTight, "rib %d", r.Number)
		assert.True(t, r.Bend.Radius > 0 || r.Bend.WillNotFit)
		if r.Broken {
			broken++
		}
		// The radius is the section's less bark, sheathing and half the rib.
		section := r.Cut(h)
		radius, at := section.TightestRadius()
		assert.InDelta(t, radius-h.Design.BarkThickness-h.Design.SheathingThickness-r.Thickness/2, r.Bend.Radius, rounding)
		assert.Equal(t, at, r.BendAt)
	}
	assert.LessOrEqual(t, broken, 3)
	assert.Greater(t, broken, 0)
}

// Ribs inside a row of broken ones are not broken for being too tight farther in.
func TestBrokenRibsStandAtTheEnd(t *testing.T) {
	_, f := build(check.With(t, "ribThicknessEnd", 0.75*inch, "ribThickness", 0.75*inch))
	n := len(f.Ribs)
	for i, r := range f.Ribs {
		assert.Equal(t, wood.TooTight, r.Bend.Verdict)
		assert.Equal(t, i >= n-3, r.Broken)
	}
}

// The measured boat M1, its bark bulging to the greatest beam: the middle rib of
// 3/8 in bends to 9 to 15 times its thickness (measured off fig. 31 of Adney and
// Chapelle 1964, +-20 %), near the limit boiled and not too tight: it existed.
func TestMeasuredBulgingBoatsRib(t *testing.T) {
	var m check.Row
	for _, r := range check.Published(t, "measured-canoes") {
		if r["id"] == "M1" {
			m = r
		}
	}
	in := func(column string) float64 { return m.Float(t, column) * inch }
	overhang := (in("length_overall_in") - in("length_over_gunwales_in")) / 2
	_, f := build(check.With(t, "length", in("length_overall_in"), "overhang", overhang,
		"beam", in("beam_inside_gunwales_in"),
		"greatestBeam", in("beam_in"), "depth", in("depth_amidships_in"), "gunwaleEndHeight", in("rail_headboard_in"),
		"endHeight", in("end_height_in"), "beamFull", 1.9, "beamFine", 1.2, "inwaleThickness", 1*inch,
		"ribThickness", 0.375*inch, "ribThicknessEnd", 0.25*inch))
	ratio := f.Ribs[0].Bend.Radius / (0.375 * inch)
	t.Logf("middle rib's R/t %.1f", ratio)
	assert.GreaterOrEqual(t, ratio, 9.0)
	assert.LessOrEqual(t, ratio, 15.0)
	assert.Equal(t, wood.NearLimit, f.Ribs[0].Bend.Verdict)
}

func TestRibsOfRandomBoats(t *testing.T) {
	source := rand.New(rand.NewPCG(2, 2))
	for range 200 {
		h := sound(source)
		if frame.Faults(h) != nil {
			continue
		}
		f := frame.Build(h)
		last := math.Inf(-1)
		for _, r := range f.Ribs {
			assert.Greater(t, r.Run, last)
			last = r.Run
			for _, thwart := range f.Thwarts {
				if !r.Alone() {
					assert.GreaterOrEqual(t, math.Abs(r.Run-thwart.Run), r.Spacing/2-rounding, "clear of the thwart's end")
				}
			}
			assert.LessOrEqual(t, r.Width, r.Spacing+rounding)
		}
		assert.Less(t, last, frame.HeadboardRun(h))
	}
}

// Every rib but those held back stands square to the bottom at its foot: the line from
// foot to mark at right angles to the bottom's slope by differences, the heel's past it.
func TestRibsStandSquareToTheBottom(t *testing.T) {
	for _, d := range append(design.Starting(), check.With(t, "rocker", 3*inch)) {
		h, f := build(d)
		last := len(f.Ribs) - 1
		most := f.Ribs[last].FootX - f.Ribs[last].X
		for _, r := range f.Ribs {
			slope := geom.Slope(h.Bottom, min(r.FootX, h.HeelX-1e-4), 1e-5)
			out, up := r.FootX-r.X, h.TopEdge(r.X)-h.Floor(r.FootX)
			assert.LessOrEqual(t, out, most+rounding, "%s rib %d", d.Name, r.Number)
			assert.InDelta(t, math.Atan2(out, up), r.Lean, rounding)
			if out < most-1e-6 {
				// Just at the heel the slope by differences is that of a tenth of a millimetre inboard:
				// the bottom bends by less than 1/4 to the metre there, under half a metre up.
				assert.InDelta(t, slope*up, out, 2e-5, "%s rib %d", d.Name, r.Number)
			}
		}
		r := f.Ribs[last]
		clear := f.Headboard.FootX - r.FootX - r.Width/2
		square := math.Atan(geom.Slope(h.Bottom, h.HeelX-1e-4, 1e-5))
		assert.GreaterOrEqual(t, clear, 0.9*inch-rounding)
		assert.True(t, clear < 0.9*inch+1e-6 || math.Abs(r.Lean-square) < 0.01, "%s: held back only as far as need be",
			d.Name)
	}
}

// Ribs as broad as their space along the gunwale would lie over one another on the
// bottom, where the way is shorter; on boats without a fault none does. A rib that will not
// fit is bent nowhere outside itself.
func TestRibsLieBesideOneAnother(t *testing.T) {
	for _, d := range []design.Design{
		check.With(t, "length", 96.5*inch, "thwarts", 7.0, "ribWidthEnd", 2.875*inch),
		check.With(t, "length", 180.5*inch, "headboard", 4.5*inch, "ribWidthEnd", 4*inch),
	} {
		h := hull.New(d)
		require.Empty(t, h.Faults())
		faults := frame.Faults(h)
		require.Len(t, faults, 1)
		assert.Equal(t, "ribs", faults[0].Key)
		assert.Contains(t, faults[0].Message(units.Imperial16), "apart along the bottom")
		fewer, _ := design.Lookup("ribs")
		v, ok := faults[0].Suggest(units.Imperial16)
		require.True(t, ok)
		h = hull.New(fewer.Set(d, v))
		require.Empty(t, frame.Faults(h))
		ribs := frame.Build(h).Ribs
		for i, r := range ribs[1:] {
			assert.GreaterOrEqual(t, r.FootX-ribs[i].FootX, (r.Width+ribs[i].Width)/2-1e-6)
		}
	}
	h, f := build(check.With(t, "beam", 72*inch, "turnWidth", 8.5*inch, "headboard", 1.5*inch))
	for _, r := range f.Ribs {
		assert.GreaterOrEqual(t, r.BendFrom(h), 0.0)
	}
}
