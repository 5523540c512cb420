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
		require.Equal(t, geom.Vec2{}, b.Outline[0])
		require.Equal(t, geom.Vec2{Y: b.Height}, b.Outline[n-1])
		require.LessOrEqual(t, b.Foot, b.Width+1e-12)
	}
}

// Breadths between the section's own points less the lining, height to the top of
// the inwale, neck between the gunwales.
func TestHeadboardsBreadths(t *testing.T) {
	h, f := build(design.Default())
	d, b := h.Design, f.Headboard
	assert.InDelta(t, f.Gunwales.Run-d.Headboard, b.Run, 1e-12)
	assert.InDelta(t, 2*h.HalfBeam(b.X), b.Neck, 1e-12)
	section := h.ColumnSection(h.ColumnAtEdge(b.X))
	lining := d.BarkThickness + d.SheathingThickness
	assert.InDelta(t, section.P.Y-section.A.Y-lining, b.Height, 1e-12)
	for _, p := range b.Outline {
		if p.Y <= 0 || p.Y >= b.Height-d.InwaleDepth {
			continue
		}
		nearest := math.Inf(1)
		for _, q := range section.Sample(4000) {
			nearest = math.Min(nearest, q.Sub(geom.Vec2{X: p.X, Y: p.Y + section.A.Y + lining}).Len())
		}
		assert.LessOrEqual(t, nearest, lining+1e-6)
		if p.X > 0 {
			assert.InDelta(t, lining, nearest, 2e-5)
		}
	}
	t.Logf("%.1f in inside the end: %.2f high, %.2f wide, neck %.2f, foot %.2f", d.Headboard/inch, b.Height/inch, b.Width/inch, b.Neck/inch, b.Foot/inch)
}

// Tenons through both inwales at the gunwale's angle, the angle from the plan's
// closed slope: for a parabolic plan beam x/xg^2.
func TestThwartsEnds(t *testing.T) {
	h, f := build(check.With(t, "beamFull", 2.0, "beamFine", 1.0))
	d := h.Design
	for i, thwart := range f.Thwarts {
		slope := d.Beam * thwart.X / (h.GunwaleX * h.GunwaleX)
		assert.InDelta(t, math.Atan(slope), thwart.PlanAngle, 1e-6)
		assert.InDelta(t, d.Beam*(1-math.Pow(thwart.X/h.GunwaleX, 2)), thwart.Shoulder, 1e-12)
		assert.InDelta(t, thwart.Shoulder+2*d.InwaleThickness*math.Sqrt(1+slope*slope), thwart.EndToEnd, 1e-6)
		assert.InDelta(t, thwart.EndToEnd+2*inch*slope, thwart.Longest, 1e-6)
		if i > 0 {
			assert.InDelta(t, d.ThwartAt[i-1]*f.Gunwales.Run, thwart.Run, 1e-12)
			assert.InDelta(t, thwart.Run, h.RunTo(thwart.X), 1e-6)
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
		s := h.ColumnSection(h.ColumnAtEdge(thwart.X))
		side := s.P.Sub(s.At(s.HalfGirth() - 1e-5))
		assert.InDelta(t, math.Atan2(side.X, side.Y), thwart.Flare, 1e-4)
	}
}

// The strips cover the boat between the headboards: regions meet, and each is as
// many strips as its broadest girth takes.
func TestSheathingCoversTheBoat(t *testing.T) {
	h, f := build(design.Default())
	d, s := h.Design, f.Sheathing
	area, strips := 0.0, 0
	for i, r := range s.Regions {
		if i > 0 {
			assert.InDelta(t, s.Regions[i-1].To, r.From, 1e-12)
		}
		assert.LessOrEqual(t, r.Length, 9*12*inch+1e-9, "to 9 ft, Adney and Chapelle 1964, p. 51")
		for _, x := range []float64{r.From, (r.From + r.To) / 2, r.To} {
			girth := 2 * h.ColumnSection(h.ColumnAtEdge(math.Abs(x))).HalfGirth()
			assert.GreaterOrEqual(t, float64(r.Strips)*d.SheathingWidth, girth-1e-9)
		}
		strips += r.Strips
		area += float64(r.Strips) * r.Length * d.SheathingWidth
	}
	assert.InDelta(t, f.Headboard.X, s.Regions[len(s.Regions)-1].To, 1e-12)
	assert.InDelta(t, -f.Headboard.X, s.Regions[0].From, 1e-12)
	assert.Equal(t, strips, s.Strips)
	assert.InDelta(t, area, s.Area, 1e-9)
}
