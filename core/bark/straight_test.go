package bark_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"

	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/geom"
	"barkwright/core/hull"
	"barkwright/core/internal/check"
)

// stripRegion is what a strip must cover of a panel laid flat: its columns between the strip's ends,
// forward of amidships or, with a side of -1, mirrored aft of it.
func stripRegion(h *hull.Hull, l *bark.Layout, p *bark.Piece, strip bark.Laid, side float64) []geom.Vec2 {
	var out []geom.Vec2
	for c, place := range p.Places {
		x, _ := geom.Bisect(func(x float64) float64 { return l.PlaceAt(h, x) - place }, 0, l.FlatLength/2, 1e-9)
		if x *= side; x < strip.Aft || x > strip.Bow {
			continue
		}
		for _, row := range []int{0, p.Rows - 1} {
			q := p.Points[c*p.Rows+row]
			out = append(out, geom.Vec2{X: side * q.X, Y: q.Y})
		}
	}
	return out
}

// straightSteps is at how many angles either way a straight piece is tried, up to 45 degrees.
const straightSteps = 800

// straightLength is how long a straight piece of a breadth must be to hold points with a margin
// across, however it is turned: every angle is tried.
func straightLength(points []geom.Vec2, breadth, margin float64) float64 {
	length := math.Inf(1)
	for i := -straightSteps; i <= straightSteps; i++ {
		sin, cos := math.Sincos(float64(i) / straightSteps * math.Pi / 4)
		low, high := math.Inf(1), math.Inf(-1)
		after, fore := low, high
		for _, q := range points {
			x, y := cos*q.X+sin*q.Y, cos*q.Y-sin*q.X
			after, fore, low, high = min(after, x), max(fore, x), min(low, y), max(high, y)
		}
		if high-low+margin <= breadth {
			length = min(length, fore-after+margin*math.Abs(sin))
		}
	}
	return length
}

// A strip is straight, and as long as it is cut it holds what it covers of its panel laid flat,
// with the lap along its seam and the bark to trim along its top. Panels taper and flare, so that
// a strip no broader than asked lies turned on its panel and is longer than its stretch of the
// boat. No piece is larger than what it is cut from by it.
func TestStripsHoldTheirPanels(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 19))
	boats := design.Starting()
	for len(boats) < 10 {
		if d := check.NearDesign(r, design.Default(), 0.3); design.Validate(d) == nil && len(hullFaults(d)) == 0 {
			boats = append(boats, d)
		}
	}
	turned := 0
	for _, d := range boats {
		for _, width := range []float64{30, 36, 48, 60} {
			d.SheetWidth, d.OnHand = width*inch, design.Design{}.OnHand
			if r.IntN(4) == 0 {
				for i, s := range randomList(r) {
					d.OnHand = d.OnHand.Put(i, s)
				}
			}
			if len(design.Validate(d)) > 0 {
				continue
			}
			h := hull.New(d)
			plain := bark.Plan(h)
			f := bark.Flatten(h, plain, bark.ForPicture, nil, nil)
			if f.State != geom.Converged {
				continue
			}
			l := plain.OnFlat(h, f)
			checkPieces(t, h, l)
			for _, s := range append(append([]bark.Laid{}, l.Port...), l.Star...) {
				turned += checkHolds(t, h, &l, &f, s)
			}
		}
	}
	require.Greater(t, turned, 10, "or hardly a strip is longer than its stretch")
}

// checkHolds checks that a strip holds its panels; it returns 1 where it is longer for it than
// its stretch of the boat.
func checkHolds(t *testing.T, h *hull.Hull, l *bark.Layout, f *bark.Flat, s bark.Laid) (turned int) {
	t.Helper()
	margin := h.Design.GunwaleTurn + h.Design.SeamLap
	for i := range f.Panels {
		p := &f.Panels[i]
		after, fore := stripRegion(h, l, p, s, -1), stripRegion(h, l, p, s, 1)
		parts := [][]geom.Vec2{after, fore}
		if p.Places[0] == 0 {
			parts = [][]geom.Vec2{append(after, fore...)}
		}
		for _, points := range parts {
			if len(points) < 4 {
				continue
			}
			// Half a step of the angles tried moves an end across by that much.
			slack := s.Length() * math.Pi / 4 / straightSteps
			length := straightLength(points, s.Width+slack, margin)
			require.LessOrEqual(t, length, s.Length()+slack, "%s of %v, %+v", s.Name, h.Design.SheetWidth/inch, s)
			if length > s.Bow-s.Aft+slack {
				turned = 1
			}
		}
	}
	return turned
}

// Where a strip as long as a sheet would be cut longer than the sheet, the side is split into
// strips somewhat shorter, not many: four reach, and one more lets butts stand well.
func TestStripsCutLongerAreNotMany(t *testing.T) {
	for _, length := range []float64{84, 85.2, 88} {
		d := check.Of(t, longFreight(t), "sheetWidth", 36*inch, "sheetLength", length*inch)
		h := hull.New(d)
		plain := bark.Plan(h)
		f := bark.Flatten(h, plain, bark.ForPicture, nil, nil)
		require.Equal(t, geom.Converged, f.State)
		l := plain.OnFlat(h, f)
		checkPieces(t, h, l)
		require.Len(t, l.Port, len(l.Star))
		require.LessOrEqual(t, len(l.Port), 5, "sheets %v in long", length)
	}
}

// longFreight is the starting boat whose panels are the broadest.
func longFreight(t *testing.T) design.Design {
	t.Helper()
	for _, d := range design.Starting() {
		if d.Length > 20*12*inch {
			return d
		}
	}
	require.Fail(t, "no long boat")
	return design.Design{}
}
