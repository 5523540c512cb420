package frame_test

import (
	"math"
	"math/rand/v2"
	"os"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/frame"
	"barkwright/core/hull"
	"barkwright/core/internal/check"
	"barkwright/core/units"
)

func TestDefaultFrameHasNoFaults(t *testing.T) {
	assert.Nil(t, frame.Faults(hull.New(design.Default())))
}

// Each fault has a design that makes it; what is offered mends it and one step
// more does not.
func TestFrameFaults(t *testing.T) {
	rows := []struct {
		key, says string
		mends     bool
		d         design.Design
	}{
		{"thwart1", "under 6\" along the gunwale", true,
			check.With(t, "thwarts", 3.0, "length", 100*inch, "overhang", 20*inch, "thwart1", 0.1)},
		{"thwart2", "under 6\" along the gunwale", true, check.With(t, "thwart1", 0.6, "thwart2", 0.62)},
		{"thwart2", "inboard of it", true, check.With(t, "thwart1", 0.6, "thwart2", 0.4)},
		{"headboard", "2\" or more outside the last thwart", true, check.With(t, "thwart2", 0.9, "headboard", 9*inch)},
		{"headboard", "outside the last thwart", false, check.With(t, "thwart2", 0.97)},
		{"headboard", "under its neck", true, check.With(t, "overhang", 0.0, "headboard", 1*inch, "endFull", 0.2,
			"heelLength", 24*inch, "gunwaleEndHeight", 12.5*inch, "endHeight", 13*inch)},
		{"ribs", "leave none", true, check.With(t, "thwarts", 9.0, "ribs", 8.0)},
		{"ribs", "2 1/4\" wide where they stand", true, check.With(t, "ribs", 90.0)},
		{"groupHoles", "does not fit between the tips", true, check.With(t, "groupHoles", 8.0)},
		{"groupHoles", "does not fit between the tips", false,
			check.With(t, "ribs", 70.0, "ribTipWidth", 1.75*inch, "holeSpacing", 1*inch)},
		{"bedCrown", "A post would be", true, check.With(t, "depth", 7*inch, "inwaleDepth", 2.5*inch, "bedCrown", 5*inch,
			"bedLength", 150*inch, "frameLength", 140*inch)},
		{"bedCrown", "blocks under the heels", false, check.With(t, "depth", 7*inch, "inwaleDepth", 2.5*inch,
			"barkThickness", 0.3*inch, "rocker", 3.5*inch, "endBlocking", 0.0, "bedCrown", 0.0)},
	}
	for _, row := range rows {
		found := false
		for _, f := range frame.Faults(hull.New(row.d)) {
			if f.Key != row.key || !strings.Contains(f.Message(units.Imperial16), row.says) {
				continue
			}
			found = true
			require.Equal(t, row.mends, f.HasFit, f.Message(units.Imperial16))
			if !f.HasFit {
				continue
			}
			for _, s := range []units.System{units.Imperial16, units.Metric} {
				fit, ok := f.Suggest(s)
				require.True(t, ok)
				p, _ := design.Lookup(row.key)
				still := func(v float64) bool {
					for _, f := range frame.Faults(hull.New(p.Set(row.d, v))) {
						if f.Key == row.key {
							return true
						}
					}
					return false
				}
				assert.False(t, still(fit), "%s: %s", row.key, f.Message(s))
				step := p.Step(s)
				if f.FitLeast {
					step = -step
				}
				assert.True(t, still(fit+step), "%s: a step beyond %s", row.key, f.Message(s))
			}
		}
		assert.True(t, found, "%s: %s", row.key, row.says)
	}
}

// designs is how many random designs are built: BARKWRIGHT_DESIGNS, or a few
// thousand, or a few where -short is asked for.
func designs(t *testing.T) int {
	if s := os.Getenv("BARKWRIGHT_DESIGNS"); s != "" {
		n, err := strconv.Atoi(s)
		require.NoError(t, err)
		return n
	}
	if testing.Short() {
		return 150
	}
	return 3000
}

// Any design without a fault is built with no panic, no NaN or Inf, and inside
// bounds that no canoe leaves.
func TestRandomDesigns(t *testing.T) {
	source := rand.New(rand.NewPCG(6, 6))
	built, refused := 0, map[string]int{}
	for n := designs(t); built < n; {
		h := sound(source)
		if faults := frame.Faults(h); faults != nil {
			for _, f := range faults {
				refused[f.Key]++
				require.NotEmpty(t, f.Message(units.Metric))
			}
			continue
		}
		built++
		f := frame.Build(h)
		check.Numbers(f, func(at string, v float64) {
			if math.IsNaN(v) || math.IsInf(v, 0) {
				t.Fatalf("%s is %v in %+v", at, v, h.Design)
			}
		})
		inBounds(t, h, f)
	}
	t.Logf("%d built, refused %v", built, refused)
}

func inBounds(t *testing.T, h *hull.Hull, f frame.Frame) {
	d := &h.Design
	for _, thwart := range f.Thwarts {
		require.Greater(t, thwart.Shoulder, 0.0)
		require.LessOrEqual(t, thwart.Shoulder, d.Beam)
		require.GreaterOrEqual(t, thwart.Longest, thwart.EndToEnd)
	}
	for _, r := range f.Ribs {
		require.Greater(t, r.Inner, 0.0)
		require.Less(t, r.Inner, r.Length)
		require.Less(t, r.Length, 2*(d.EndHeight+d.OutsideBreadth()+d.GreatestBeam))
		require.True(t, r.Bend.Radius > 0 || r.Bend.WillNotFit)
		require.Greater(t, r.Width, 0.0)
	}
	for _, p := range f.Bed.Posts {
		require.GreaterOrEqual(t, p.Length, inch-1e-6)
		require.LessOrEqual(t, p.Length, d.GunwaleEndHeight+d.BedCrown+d.EndBlocking)
	}
	for _, s := range f.Bed.Stakes {
		require.Greater(t, s.Y, 0.0)
	}
	require.Greater(t, f.Stem.Curve, math.Hypot(h.HeadX-f.Stem.SolidFrom, d.EndHeight-h.Floor(f.Stem.SolidFrom))-rounding)
	require.Less(t, f.Stem.Curve, 2*(d.Length/2-f.Stem.SolidFrom+d.EndHeight))
	require.GreaterOrEqual(t, f.Stem.SolidEnd, f.Stem.SolidFrom)
	require.LessOrEqual(t, f.Stem.Solid, d.StemSolid)
	require.GreaterOrEqual(t, f.Stem.Stock, d.StemDepth)
	foot := math.Inf(-1)
	for i, r := range f.Ribs {
		if i > 0 {
			// Up a steep sheer marks stand closer along the boat than along the gunwale.
			before := f.Ribs[i-1]
			apart := min(r.X-before.X, (r.Width+before.Width)/2)
			require.GreaterOrEqual(t, r.FootX-before.FootX, apart-rounding,
				"the feet of ribs stand in order, as far apart as their marks or clear")
		}
		foot = r.FootX + r.Width/2
	}
	require.LessOrEqual(t, foot, f.Headboard.FootX-0.9*inch+rounding)
	require.GreaterOrEqual(t, f.Stem.SolidFrom, foot-rounding, "no rib over the solid heel")
	require.LessOrEqual(t, f.Headboard.FootX-f.Stem.SolidFrom, 2*inch+rounding)
	require.GreaterOrEqual(t, f.Gunwales.Run, h.GunwaleX)
	require.GreaterOrEqual(t, f.Gunwales.Outwale, f.Gunwales.Inwale)
	require.Greater(t, f.Lacing.Turn, 0.0)
	require.Greater(t, f.Headboard.Height, 0.0)
	require.Greater(t, f.Headboard.Neck, 0.0)
	require.Greater(t, f.Sheathing.Area, 0.0)
}
