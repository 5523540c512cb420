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
)

// crosses tells whether two pieces of a path cross inside both.
func crosses(a, b, c, d geom.Vec2) bool {
	side := func(p, q, r geom.Vec2) float64 { return q.Sub(p).Cross(r.Sub(p)) }
	return side(a, b, c)*side(a, b, d) < 0 && side(c, d, a)*side(c, d, b) < 0
}

func TestHeadboardsOutlineIsASimpleShape(t *testing.T) {
	source := rand.New(rand.NewPCG(4, 4))
	for range 150 {
		h := sound(source)
		if frame.Faults(h) != nil {
			continue
		}
		b := frame.Build(h).Headboard
		require.Greater(t, b.Height, 0.0)
		require.Greater(t, check.Area(b.Outline), 0.0, "up the port side and back along the middle")
		n := len(b.Outline)
		for i := range n {
			require.GreaterOrEqual(t, b.Outline[i].X, 0.0)
			for j := i + 2; j < n; j++ {
				require.False(t, crosses(b.Outline[i], b.Outline[i+1], b.Outline[j], b.Outline[(j+1)%n]), "%d %d", i, j)
			}
		}
		require.Zero(t, b.Outline[0].X)
		require.InDelta(t, b.NotchDepth, b.Outline[0].Y, rounding)
		require.Equal(t, geom.Vec2{Y: b.Height}, b.Outline[n-1])
		require.LessOrEqual(t, b.Foot, b.Width+rounding)
	}
}

// Breadths between the section's own points less the lining, height from half the
// stem-piece's depth over the bark to the top of the inwale, neck between the gunwales,
// notch over the heel.
func TestHeadboardsBreadths(t *testing.T) {
	h, f := build(design.Default())
	d, b := h.Design, f.Headboard
	assert.InDelta(t, f.Gunwales.Run-d.Headboard, b.Run, rounding)
	assert.InDelta(t, b.Run, h.RunTo(b.X), byKnots, "the mark that the gunwale's own table has")
	assert.Equal(t, b.X, b.FootX, "plumb")
	assert.InDelta(t, 2*h.HalfBeam(b.X), b.Neck, rounding)
	_, deep := frame.InwaleAt(h, b.Run)
	assert.Equal(t, deep, b.Tenon)
	lining := d.BarkThickness + d.SheathingThickness
	foot := h.Floor(b.X) + d.BarkThickness + d.StemDepth/2
	assert.InDelta(t, h.Sheer(b.X)-foot, b.Height, rounding)
	assert.InDelta(t, foot, b.Stands.Y, rounding)
	section := h.CutAt(b.X, b.X)
	points := section.Sample(4000)
	for _, p := range b.Outline[3:] {
		if p.Y <= 0 || p.Y >= b.Height-b.Tenon {
			continue
		}
		nearest := math.Inf(1)
		for _, q := range points {
			nearest = min(nearest, q.Sub(geom.Vec2{X: p.X, Y: p.Y + d.BarkThickness + d.StemDepth/2}).Len())
		}
		assert.InDelta(t, lining, nearest, 2e-5)
	}
	assert.Equal(t, []geom.Vec2{{Y: d.StemDepth / 2}, {X: d.StemWidth / 2, Y: d.StemDepth / 2}, {X: d.StemWidth / 2}},
		b.Outline[:3])
	t.Logf("%.1f in inside the end: %.2f high, %.2f wide, neck %.2f, foot %.2f", d.Headboard/inch, b.Height/inch,
		b.Width/inch, b.Neck/inch, b.Foot/inch)
}

// The board set farther in grows broader evenly: its numbers are read between the
// edge's points and not off the nearest, which made steps of up to 0.3 in.
func TestHeadboardsNumbersMoveWithoutSteps(t *testing.T) {
	var last frame.Headboard
	for i := range 400 {
		_, f := build(check.With(t, "headboard", (3+7*float64(i)/400)*inch))
		b := f.Headboard
		if i > 0 {
			// A step is 0.0175 in along the gunwale; twice its spread of breadth is ample.
			assert.InDelta(t, last.Foot, b.Foot, 0.03*inch, "foot at step %d", i)
			assert.InDelta(t, last.Width, b.Width, 0.03*inch, "width at step %d", i)
			assert.InDelta(t, last.Height, b.Height, 0.03*inch, "height at step %d", i)
		}
		last = b
	}
}

// A board whose foot stands farther out than its top leans by that and is cut so.
func TestHeadboardLeans(t *testing.T) {
	h, f := build(check.With(t, "headboardFoot", 2*inch))
	b := f.Headboard
	assert.InDelta(t, b.X+2*inch, b.FootX, rounding)
	assert.InDelta(t, math.Hypot(b.Top.X-b.Stands.X, b.Top.Y-b.Stands.Y), b.Height, rounding)
	assert.InDelta(t, h.Sheer(b.X), b.Top.Y, rounding)
	assert.InDelta(t, b.X, b.Top.X, rounding)
	assert.InDelta(t, h.Floor(b.FootX)+h.Design.BarkThickness+h.Design.StemDepth/2, b.Stands.Y, rounding)
}

// The arc of a parabola over a chord of 16 that stands off it by 1.8 in in the middle, and
// by 6, by a fine sum of chords, which is short by their length squared: 1e-8 of itself.
func TestSprungLength(t *testing.T) {
	for _, belly := range []float64{1.8 * inch, 6 * inch} {
		_, f := build(check.With(t, "headboardBelly", belly))
		b := f.Headboard
		sum, last := 0.0, geom.Vec2{}
		for i := 1; i <= 10000; i++ {
			s := float64(i) / 10000
			q := geom.Vec2{X: 4 * belly * s * (1 - s), Y: b.Height * s}
			sum += q.Sub(last).Len()
			last = q
		}
		assert.InEpsilon(t, sum, b.Sprung, 1e-8)
	}
	_, straight := build(check.With(t, "headboardBelly", 0.0))
	assert.Equal(t, straight.Headboard.Height, straight.Headboard.Sprung)
}

// Tenons through both inwales at the gunwale's angle, the angle from the plan's
// closed slope: for a parabolic plan beam x/xg^2.
func TestThwartsEnds(t *testing.T) {
	h, f := build(check.With(t, "beamFull", 2.0, "beamFine", 1.0))
	d := &h.Design
	for i, thwart := range f.Thwarts {
		slope := d.Beam * thwart.X / (h.GunwaleX * h.GunwaleX)
		// A power is good to some ulp of its exponent times a logarithm.
		assert.InDelta(t, math.Atan(slope), thwart.PlanAngle, 10*rounding)
		assert.InDelta(t, d.Beam*(1-math.Pow(thwart.X/h.GunwaleX, 2)), thwart.Shoulder, rounding)
		assert.InDelta(t, thwart.Shoulder+2*d.InwaleThickness*math.Sqrt(1+slope*slope), thwart.EndToEnd, rounding)
		assert.InDelta(t, thwart.EndToEnd+2*inch*slope, thwart.Longest, rounding)
		if i > 0 {
			assert.InDelta(t, d.ThwartAt[i-1]*f.Gunwales.Run, thwart.Run, rounding)
			assert.InDelta(t, thwart.Run, h.RunTo(thwart.X), byKnots)
		}
		assert.Equal(t, h.Sheer(thwart.X), thwart.Height)
	}
	assert.Equal(t, []string{"middle thwart", "first thwart", "end thwart"},
		[]string{frame.ThwartName(0, 3), frame.ThwartName(1, 3), frame.ThwartName(2, 3)})
}

// The side's angle against the section's last points.
func TestThwartsFlare(t *testing.T) {
	h, f := build(design.Default())
	for _, thwart := range f.Thwarts {
		s := h.Column(h.ColumnAtEdge(thwart.X)).Section
		side := s.P.Sub(s.At(s.HalfGirth() - 1e-5))
		// In 1e-5 m a bend of a tenth of a metre turns so far.
		assert.InDelta(t, math.Atan2(side.X, side.Y), thwart.Flare, 1e-4)
	}
}

// The strips cover the boat between the headboards: regions meet, and each is as
// many strips as its broadest girth takes.
func TestSheathingCoversTheBoat(t *testing.T) {
	// Toward the ends of the second and third the girth grows again.
	for _, d := range []design.Design{
		design.Default(),
		check.With(t, "length", 37*12*inch, "gunwaleEndHeight", 24.25*inch),
		check.With(t, "gunwaleEndHeight", 26.75*inch, "frameWidth", 15.75*inch, "sheathingWidth", 3.4375*inch),
	} {
		h, f := build(d)
		s := f.Sheathing
		area, strips := 0.0, 0
		for i, r := range s.Regions {
			if i > 0 {
				assert.InDelta(t, s.Regions[i-1].To, r.From, rounding)
			}
			assert.LessOrEqual(t, r.Length, 9*12*inch+rounding, "to 9 ft, Adney and Chapelle 1964, p. 51")
			assert.LessOrEqual(t, r.Shortest, r.Length)
			for _, x := range []float64{r.From, (r.From + r.To) / 2, r.To} {
				girth := 2 * h.Column(h.ColumnAtEdge(math.Abs(x))).Section.HalfGirth()
				assert.GreaterOrEqual(t, float64(r.Strips)*d.SheathingWidth, girth-rounding)
			}
			strips += r.Strips
			area += float64(r.Strips) * d.SheathingWidth * meanStrip(h, r, i > 0)
		}
		assert.InDelta(t, f.Headboard.X, s.Regions[len(s.Regions)-1].To, rounding)
		assert.InDelta(t, -f.Headboard.X, s.Regions[0].From, rounding)
		assert.Equal(t, strips, s.Strips)
		// Simpson's rule over five lines for 400, which the girth of high ends needs most: under a ten-thousandth.
		assert.InEpsilon(t, area, s.Area, 1e-4)
	}
}

// meanStrip is the mean length of a region's strips, laps included.
func meanStrip(h *hull.Hull, r frame.SheathingRegion, lapped bool) float64 {
	const lines = 400
	sum := 0.0
	for j := range lines {
		sum += alongSkin(h, r, (float64(j)+0.5)/lines)
	}
	if lapped {
		sum += lines * h.Design.SheathingLap
	}
	return sum / lines
}

// alongSkin is the length of the line on the skin at a share of the girth over a region.
func alongSkin(h *hull.Hull, r frame.SheathingRegion, share float64) float64 {
	const pieces = 100
	var last geom.Vec3
	sum := 0.0
	for i := range pieces + 1 {
		x := r.From + (r.To-r.From)*float64(i)/pieces
		column := h.Column(h.ColumnAtEdge(math.Abs(x)))
		at := column.At(column.Girth() * share)
		at.X = math.Copysign(at.X, x)
		if i > 0 {
			sum += at.Sub(last).Len()
		}
		last = at
	}
	return sum
}

// The strip under the gunwale is as long as a tape laid along the gunwale over its region
// reads, and its lap: the plan's curve and the sheer are in both. The bark's edge stands an inch
// and an eighth outside the gunwale's, and no strip is longer than the longest of many lines
// on the skin.
func TestLongestStripReaches(t *testing.T) {
	for _, d := range append(design.Starting(), design.Default(), check.With(t, "length", 96*inch, "overhang", 5*inch,
		"beam", 24*inch, "thwarts", 3.0, "ribs", 22.0, "ribWidthMid", 2*inch, "ribWidthEnd", 1.5*inch)) {
		h, f := build(d)
		for i, r := range f.Sheathing.Regions {
			lap := 0.0
			if i > 0 {
				lap = d.SheathingLap
			}
			tape := h.RunTo(r.To) - h.RunTo(r.From)
			if r.From < 0 && r.To > 0 {
				tape = h.RunTo(r.To) + h.RunTo(r.From)
			}
			assert.GreaterOrEqual(t, r.Length, math.Abs(tape)+lap-inch/16, "%s, region %d", d.Name, i+1)
			most := 0.0
			for j := range 21 {
				most = max(most, alongSkin(h, r, float64(j)/20))
			}
			// Chords in place of a hundred: under a sixteenth.
			assert.InDelta(t, most+lap, r.Length, inch/16, "%s, region %d", d.Name, i+1)
		}
	}
}

// A board with no wood beside the heel says so: these two are narrower than their notch.
func TestBoardTooNarrowForItsNotch(t *testing.T) {
	_, f := build(design.Default())
	assert.True(t, f.Headboard.Notched)
	for _, d := range []design.Design{
		check.With(t, "headboard", 1.25*inch, "sheathingThickness", 0.3125*inch),
		check.With(t, "length", 277.75*inch, "beamFine", 2.3, "frameLength", 187*inch),
	} {
		_, f := build(d)
		assert.Less(t, f.Headboard.Width, f.Headboard.NotchWidth)
		assert.False(t, f.Headboard.Notched)
		assert.Equal(t, f.Headboard.NotchDepth, f.Headboard.Outline[0].Y)
	}
}
