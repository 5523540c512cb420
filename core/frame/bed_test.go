package frame_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/frame"
	"barkwright/core/hull"
	"barkwright/core/internal/check"
)

// The post in the middle by hand on the default, inches: 12.5 of depth less 1 of
// inwale, 0.14 of bark and 1.75 of crown; the bark at the heels lies, on a bed of 111,
// 1.75 (1 - (81.7936/111)^2) = 0.7998 above its finished height. The heels are 2 in
// inboard of a mark 3.5 in from the gunwale's end, which a sum of short chords along
// plan and sheer puts 83.7936 out.
func TestPostsByHand(t *testing.T) {
	h, f := build(design.Default())
	assert.InDelta(t, 10.4098, f.Bed.Posts[0].Length/inch, 0.00005)
	// Under the gunwale's end, 87 out: 20 less the 3/4 that the inwale is deep there, 0.14 and the bed, + 0.7998; the bed
	// 1.75 (1 - (87/111)^2) + 1.5 (87/81.7936)^4 = 0.6749 + 1.9200.
	assert.InDelta(t, 17.3149, f.Bed.Posts[3].Length/inch, 0.00005)
	for i, p := range f.Bed.Posts[:3] {
		assert.Equal(t, f.Thwarts[i].X, p.X)
		assert.Equal(t, frame.PostLength(h, p.X), p.Length)
	}
	assert.Equal(t, h.GunwaleX, f.Bed.Posts[3].X)
}

// Blocks as high as the rocker lift the bark at the heels as much as it rises
// there: the middle post stays.
func TestRockerWithEqualBlockingMovesNoPostAmidships(t *testing.T) {
	_, before := build(design.Default())
	for _, rocker := range []float64{0, 1, 4} {
		_, f := build(check.With(t, "rocker", rocker*inch, "endBlocking", rocker*inch))
		assert.InDelta(t, before.Bed.Posts[0].Length, f.Bed.Posts[0].Length, rounding)
	}
	_, unblocked := build(check.With(t, "rocker", 4*inch, "endBlocking", 1.5*inch))
	assert.InDelta(t, before.Bed.Posts[0].Length-2.5*inch, unblocked.Bed.Posts[0].Length, rounding)
}

// A parabola through the bed's ends and its crown.
func TestBedsCrown(t *testing.T) {
	h, _ := build(check.With(t, "rocker", 0.0))
	d := &h.Design
	assert.InDelta(t, d.BedCrown, frame.BedHeight(h, 0), rounding)
	assert.InDelta(t, 0.75*d.BedCrown, frame.BedHeight(h, d.BedLength/4), rounding)
	assert.InDelta(t, 0, frame.BedHeight(h, d.BedLength/2), rounding)
	assert.Zero(t, frame.BedHeight(h, d.BedLength/2+1), "the ground beyond it is level")
	blocked, _ := build(check.With(t, "rocker", 0.0, "endBlocking", 2*inch))
	assert.InDelta(t, 2*inch, frame.BedHeight(blocked, h.HeelX)-frame.BedHeight(h, h.HeelX), rounding)
}

// The bark on a flat bed without blocks is as long as its span; a flat bottom on
// a crowned bed is shorter than the bark there by 2/3 of the crown squared over
// the half length, twice (the arc of a shallow parabola), taken to the heel.
func TestSlackOfTheBark(t *testing.T) {
	_, flat := build(check.With(t, "rocker", 0.0, "bedCrown", 0.0))
	assert.InDelta(t, 0, flat.Bed.Slack, rounding)
	h, crowned := build(check.With(t, "rocker", 0.0, "bedCrown", 3*inch))
	half := h.Design.BedLength / 2
	// Twice the integral of slope^2/2 to the heel, slope 2 crown x/half^2.
	want := 4.0 / 3 * math.Pow(3*inch, 2) * math.Pow(h.HeelX, 3) / math.Pow(half, 4)
	assert.InDelta(t, want, crowned.Bed.Slack, 0.002*want, "slope to the fourth left out: 0.1 %")
	_, hollow := build(check.With(t, "rocker", 4*inch, "bedCrown", 0.0, "endBlocking", 0.0))
	assert.Less(t, hollow.Bed.Slack, 0.0, "a rockered bottom is longer than a flat bed")
}

// inside is where the last thwart stands that is inside of end.
func inside(thwarts []frame.Thwart, end float64) (last float64) {
	for _, thwart := range thwarts {
		if thwart.X < end {
			last = thwart.X
		}
	}
	return last
}

// The bed of the published example is about 3 1/2 ft broad under its gunwales. Adney and
// Chapelle 1964, p. 40.
func TestPublishedBed(t *testing.T) {
	d := example(t, 7.5, 17).Design
	d.BuiltOn = design.OnGunwales
	f := frame.Build(hull.New(d))
	assert.InDelta(t, 3.5, f.Bed.Breadth/foot, 0.25, "half of its half feet")
	// A broad boat's stakes stand on it too.
	wide := check.With(t, "beam", 66*inch, "length", 400*inch, "frameWidth", 55*inch)
	f = frame.Build(hull.New(wide))
	assert.Greater(t, f.Bed.Breadth/2, f.Bed.Stakes[0].Y+2*inch)
}

// Adney and Chapelle 1964, pp. 40-41: stakes about 24 in apart and 1 in off the frame, the
// last pair but one about 12 in from its end, two pairs about 12 and 18 in beyond, the
// pairs there 1 1/2 in apart.
func TestStakes(t *testing.T) {
	wide := 0
	for _, d := range []design.Design{
		design.Default(), check.With(t, "thwarts", 7.0), check.With(t, "thwarts", 3.0),
		check.With(t, "length", 400*inch, "thwarts", 9.0),
		check.With(t, "frameLength", 150*inch), check.With(t, "frameLength", 164*inch),
		check.With(t, "frameLength", 100*inch),
	} {
		h, f := build(d)
		end := d.FrameLength / 2
		last := 0.0
		for i, s := range f.Bed.Stakes {
			if i > 0 {
				// 24 in, or two halves at a thwart.
				assert.LessOrEqual(t, s.X-last, 24*inch+rounding)
				assert.Greater(t, s.X, last)
			}
			last = s.X
			if s.Beyond {
				continue
			}
			for _, thwart := range f.Thwarts {
				if thwart.X < end-6*inch {
					assert.Greater(t, math.Abs(s.X-thwart.X), 1.5*inch, "none at a thwart")
				}
			}
			if s.X < end {
				assert.InDelta(t, h.FrameHalfBreadth(s.X)+inch, s.Y, rounding, "an inch off the frame")
			}
		}
		n := len(f.Bed.Stakes)
		require.Greater(t, n, 4)
		if end-inside(f.Thwarts, end) > 24*inch {
			wide++
			assert.InDelta(t, end-12*inch, f.Bed.Stakes[n-4].X, rounding, "about 12 in from the frame's end")
		}
		assert.InDelta(t, end, f.Bed.Stakes[n-3].X, rounding)
		most := h.HeelX + h.FlatPastHeel() + hull.FlatSpread
		assert.InDelta(t, min(most, end+12*inch), f.Bed.Stakes[n-2].X, rounding)
		assert.InDelta(t, min(most, end+18*inch), f.Bed.Stakes[n-1].X, rounding)
		assert.InDelta(t, 1.5*inch, 2*f.Bed.Stakes[n-1].Y, rounding, "a pair stands 1 1/2 apart")
		assert.Equal(t, 4*n, f.Bed.StakeCount)
	}
	assert.Positive(t, wide, "some frames have room for it")
}

func TestCrosspieces(t *testing.T) {
	h, f := build(design.Default())
	require.Len(t, f.Bed.Crosspieces, 4, "seven in all: commonly 7, Adney and Chapelle 1964, p. 54")
	for i, c := range f.Bed.Crosspieces {
		assert.InDelta(t, 2*h.FrameHalfBreadth(c.X), c.OutToOut, rounding)
		assert.InDelta(t, 2.5*inch, c.OutToOut-c.Clear, rounding, "two battens of 1 1/4")
		if i < 3 {
			assert.Equal(t, f.Thwarts[i].X, c.X)
		}
	}
	assert.InDelta(t, (f.Thwarts[2].X+h.Design.FrameLength/2)/2, f.Bed.Crosspieces[3].X, rounding)
	assert.InDelta(t, h.Design.FrameWidth, f.Bed.Crosspieces[0].OutToOut, rounding)
	// With power 2 and fineness 1 the plan is a parabola.
	p, _ := build(check.With(t, "frameFull", 2.0, "frameFine", 1.0))
	for _, s := range []float64{0.2, 0.5, 0.9} {
		assert.InDelta(t, p.Design.FrameWidth/2*(1-s*s), p.FrameHalfBreadth(s*p.Design.FrameLength/2), rounding)
	}
	assert.Zero(t, p.FrameHalfBreadth(p.Design.FrameLength/2))
}

// Where the bark ends soon after the frame the pairs beyond stand no farther than it may
// reach, and one that would stand beside another is left out.
func TestNoStakesBeyondTheBark(t *testing.T) {
	for d, beyond := range map[design.Design]int{
		check.With(t, "overhang", 3*inch, "beam", 22.5*inch): 1,
		check.With(t, "overhang", 9*inch):                    2,
	} {
		h, f := build(d)
		n := 0
		for _, s := range f.Bed.Stakes {
			assert.LessOrEqual(t, s.X, h.HeelX+h.FlatPastHeel()+hull.FlatSpread)
			if s.Beyond {
				n++
			}
		}
		assert.Equal(t, beyond, n, "beam %v", d.Beam)
	}
}
