package gather_test

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/integrate/quad"

	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/frame"
	"barkwright/core/gather"
	"barkwright/core/hull"
	"barkwright/core/internal/check"
	"barkwright/core/units"
)

// Timber by volume and density. Northern white-cedar at 20 % is 357.149 kg/m3 (TestInwaleByHand). Sugar maple is
// 0.56 green (Wood Handbook): 0.56/(1 - 0.265 x 0.56/3) = 0.589143, times 1.2, is 706.972 kg/m3. Thwarts are of 3 by
// 7/8 in, worked away to 2/3 (Adney and Chapelle 1964, pp. 38-40). Tolerance: half the densities' last digit.
func TestTimberByHand(t *testing.T) {
	d := design.Default()
	h := hull.New(d)
	f := frame.Build(h)
	l := gather.Gather(h, f, bark.Plan(h))
	const cedar, maple, within = 357.149, 706.972, 0.0005 / 357
	outwales := 2 * f.Gunwales.Outwale * d.OutwaleDepth * d.OutwaleThickness * cedar
	assert.InEpsilon(t, outwales, piece(t, l, gather.Outwales).Mass.Typical, within)
	boards := 2 * f.Headboard.Sprung * f.Headboard.Width * frame.HeadboardThickness * cedar
	assert.InEpsilon(t, boards, piece(t, l, gather.Headboards).Mass.Typical, within)
	long, mass := 0.0, 0.0
	for i, thwart := range f.Thwarts {
		long += float64(min(i+1, 2)) * thwart.EndToEnd // the middle one is single
	}
	for _, p := range l.Pieces {
		if p.Kind == gather.Thwarts {
			mass += p.Mass.Typical
		}
	}
	assert.InEpsilon(t, long*3*inch*0.875*inch*2/3*maple, mass, within)
}

// Pitch stands 1 1/2 in broad and 1/16 in thick inside and outside of every seam: 2 1/4 cubic inches a foot.
func TestPitchByHand(t *testing.T) {
	h := hull.New(design.Default())
	b := bark.Plan(h)
	seams := 0.0
	for _, s := range b.Seams {
		seams += s.Length
	}
	p := gather.Gather(h, frame.Build(h), b).Pitch
	volume := seams / units.Foot * 2.25 * inch * inch * inch
	// Rosin weighs 1090 kg/m3 and tallow 900, from memory: what is melted of both lies between.
	assert.LessOrEqual(t, p.Typical/volume, 1090.0)
	assert.GreaterOrEqual(t, p.Typical/volume, 900.0)
	assert.Less(t, p.Low, 0.6*p.Typical, "half as much more or less, and the density's own range")
	assert.Greater(t, p.High, 1.4*p.Typical)
}

// The gunwales' middle is at the mean height of the sheer, which for a sheer that is a parabola is two thirds of the
// middle's and one of the end's: against gonum's quadrature.
func TestGunwalesAreWeighedAtTheirMeanHeight(t *testing.T) {
	d := check.With(t, "sheerSweep", 2.0)
	h := hull.New(d)
	mean := quad.Fixed(h.Sheer, 0, h.GunwaleX, 8, nil, 0) / h.GunwaleX
	for _, kind := range []gather.Kind{gather.Inwales, gather.Outwales, gather.Caps} {
		assert.InDelta(t, mean, piece(t, list(d), kind).Height, 1e-12)
	}
}

// The boat balances about its centre, and is no heavier and no lighter than its parts together. Parts of bark, root
// and pitch stand between the bottom and the gunwales' ends.
func TestCentreBalances(t *testing.T) {
	d := design.Default()
	h := hull.New(d)
	l := list(d)
	moment, mass, low, high := 0.0, 0.0, 0.0, 0.0
	for _, p := range l.Pieces {
		moment += p.Mass.Typical * (p.Height - l.Centre.Z)
		mass, low, high = mass+p.Mass.Typical, low+p.Mass.Low, high+p.Mass.High
	}
	rest := l.Weight.Typical - mass
	assert.Greater(t, moment+rest*(h.Sheer(h.GunwaleX)-l.Centre.Z), 0.0)
	assert.Less(t, moment-rest*l.Centre.Z, 0.0)
	assert.InDelta(t, low+l.Bark.Mass.Low+l.Bark.Doubled.Low+l.Root.Mass.Low+l.Pitch.Low, l.Weight.Low, 1e-9)
	assert.InDelta(t, high+l.Bark.Mass.High+l.Bark.Doubled.High+l.Root.Mass.High+l.Pitch.High, l.Weight.High, 1e-9)
}

// Spares are rounded up: of 44 ribs within the published boats' bends 15 % are 6.6, of two outwales that are split
// any share is one.
func TestSparesByHand(t *testing.T) {
	l := list(design.Default())
	ribs := piece(t, l, gather.Ribs)
	require.Equal(t, 44, ribs.Count)
	assert.Equal(t, 7, ribs.Spares)
	assert.Equal(t, 13, l.Billets, "51 from billets of four")
	strips := piece(t, l, gather.Sheathing)
	assert.Equal(t, (strips.Count*5+99)/100, strips.Spares)
	assert.Equal(t, 1, piece(t, l, gather.Outwales).Spares)
	assert.Zero(t, piece(t, l, gather.Headboards).Spares, "they are not bent in the rough")
}

// Counts by hand: a clamp to a foot of each gunwale begun and a temporary rib to two feet of bottom, a peg to a foot
// of each cap, and a peg in each end of a thwart. With power 2 and fineness 1 the building frame is a parabola, whose
// length has a closed form; 120 chords of it are short by under 1e-5.
func TestGearByHand(t *testing.T) {
	d := check.With(t, "frameFull", 2.0, "frameFine", 1.0)
	h := hull.New(d)
	f := frame.Build(h)
	l := gather.Gather(h, f, bark.Plan(h))
	found := map[string]gather.Gear{}
	for _, g := range l.Gear {
		name, _, _ := strings.Cut(g.Name, ",")
		found[name] = g
	}
	feet := func(v float64) int { return int(math.Floor(v/units.Foot)) + 1 } // none of these is whole
	assert.Equal(t, 2*feet(f.Gunwales.Inwale), found["clamps"].Count)
	assert.Equal(t, (feet(2*h.HeelX)+1)/2, found["temporary ribs"].Count)
	assert.Equal(t, gather.Pegs{Outwales: f.Lacing.Pegs, Caps: 2 * (feet(f.Gunwales.Cap) - 1), Thwarts: 10}, l.Pegs)
	a := h.FrameEnd()
	s := d.FrameWidth / a // the slope at the end
	parabola := a * (math.Sqrt(1+s*s) + math.Asinh(s)/s)
	assert.InEpsilon(t, parabola, found["long battens of the building frame"].Low, 1e-5)
	assert.Equal(t, found["stakes"].Count/2+found["inside stakes"].Count,
		found["ties: one across each pair of stakes"].Count)
}

// Bolts put into logs one after another, each into the first with room, leave at most one log half empty: so there
// are fewer than twice as many as the lengths add up to, and one more for each wood; and never fewer than that.
func TestLogsHoldTheirBolts(t *testing.T) {
	for _, d := range []design.Design{design.Default(), check.With(t, "cedarDiameter", 7*inch),
		check.With(t, "cedarDiameter", 7*inch, "cedarClear", 20*units.Foot), design.Starting()[2]} {
		l := list(d)
		woods, sum := map[string]bool{}, 0.0
		for _, n := range l.Bolts {
			sum += float64(n.Bolts) * n.Length
			woods[n.Wood] = woods[n.Wood] || n.Bolts > 0
			for _, u := range n.Uses {
				if each := u.Riving.Each(); each > 0 {
					assert.Less(t, (u.Sectors-1)*each, u.Piece.Count+u.Piece.Spares, "one sector fewer is too few")
				}
			}
		}
		assert.GreaterOrEqual(t, float64(l.Logs)*d.CedarClear, sum-1e-9)
		assert.Less(t, float64(l.Logs), 2*sum/d.CedarClear+float64(len(woods)))
	}
}
