package gather_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/frame"
	"barkwright/core/gather"
	"barkwright/core/hull"
	"barkwright/core/internal/check"
	"barkwright/core/units"
)

func list(d design.Design) gather.List {
	h := hull.New(d)
	return gather.Gather(h, frame.Build(h), bark.Plan(h))
}

const inch = units.Inch

// Weights of bark canoes of known size. Steele 1880: 18 to 20 ft Maine birches,
// 85 to 115 lb; the model boat is 19 ft, 32 in, 12 in deep with the default's
// timber, and its own range must meet the printed one.
func TestWeightMeetsPublished(t *testing.T) {
	w := list(check.With(t, "length", 228*inch, "beam", 34*inch, "depth", 13*inch, "ribThickness", 0.4375*inch, "ribWidthMid", 3*inch, "inwaleThickness", 1.25*inch, "inwaleDepth", 1.25*inch)).Weight
	t.Logf("19 ft: %.0f to %.0f lb", w.Low/units.Pound, w.High/units.Pound)
	assert.Less(t, w.Low, 115*units.Pound)
	assert.Greater(t, w.High, 85*units.Pound)
}

// The whole is the sum of its pieces, and its middle is among them.
func TestWeightIsTheSumOfThePieces(t *testing.T) {
	l := list(design.Default())
	sum := l.Bark.Mass.Typical + l.Root.Mass.Typical + l.Pitch.Typical
	for _, p := range l.Pieces {
		sum += p.Mass.Typical
		assert.LessOrEqual(t, p.Mass.Low, p.Mass.Typical, p.Name)
		assert.LessOrEqual(t, p.Mass.Typical, p.Mass.High, p.Name)
	}
	assert.InDelta(t, sum, l.Weight.Typical, 1e-9)
	assert.Greater(t, l.Centre.Z, 0.0)
	assert.Less(t, l.Centre.Z, 12.5*inch)
}

// An inwale by hand: two, as long as the gunwale, a square inch, 347.2 kg/m3 (Wood
// Handbook, northern white-cedar at 12 %: 0.31 x 1.12).
func TestInwaleByHand(t *testing.T) {
	d := design.Default()
	h := hull.New(d)
	want := 2 * 2 * h.Gunwale.Length() * inch * inch * 347.2
	assert.InDelta(t, want, list(d).Pieces[0].Mass.Typical, 1e-6)
}

// Four ribs from a billet (Adney and Chapelle 1964, p. 18), spares counted in.
func TestBillets(t *testing.T) {
	l := list(design.Default())
	for _, p := range l.Pieces {
		if p.Name == "ribs" {
			assert.Equal(t, int(math.Ceil(float64(p.Count+p.Spares)/4)), l.Billets)
			assert.Equal(t, 44, p.Count)
			assert.Positive(t, p.Spares, "ribs near the limit want spares")
		}
	}
}

// All lengths doubled, timber and bark too, weigh eight times as much.
func TestWeightScales(t *testing.T) {
	d := design.Default()
	big := d
	for _, p := range design.Params() {
		switch p.Kind {
		case units.Length, units.SmallLength, units.Thickness, units.Offset:
			big = p.Set(big, 2*p.Get(&d))
		}
	}
	p, _ := design.Lookup("ribs")
	big = p.Set(big, float64(d.Ribs))
	p, _ = design.Lookup("gores")
	big = p.Set(big, float64(d.Gores))
	d = p.Set(d, float64(d.Gores))
	small, large := list(d), list(big)
	for i, piece := range small.Pieces {
		if piece.Name == "sheathing strips" || piece.Name == "headboards" || piece.Log == gather.Hardwood {
			continue // counted in strips of a length, or of thickness that is no parameter
		}
		assert.InEpsilon(t, 8*piece.Mass.Typical, large.Pieces[i].Mass.Typical, 1e-6, piece.Name)
	}
	assert.InEpsilon(t, 8*small.Bark.Mass.Typical, large.Bark.Mass.Typical, 1e-3)
}

// A log gives what its pieces fill: the fuller the list, the thicker the log.
func TestLogs(t *testing.T) {
	few, many := list(check.With(t, "ribs", 30.0)), list(check.With(t, "ribs", 44.0))
	for i := range few.Logs {
		assert.Equal(t, math.Pi*few.Logs[i].Diameter, few.Logs[i].Girth)
		if few.Logs[i].Log == gather.RibLog {
			assert.Less(t, few.Logs[i].Diameter, many.Logs[i].Diameter)
			h := hull.New(design.Default())
			assert.GreaterOrEqual(t, few.Logs[i].Clear, h.Section(0).HalfGirth())
		}
	}
}
