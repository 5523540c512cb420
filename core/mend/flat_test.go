package mend_test

import (
	"fmt"
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/geom"
	"barkwright/core/internal/check"
	"barkwright/core/mend"
	"barkwright/core/tally"
)

// laidFlat is the default boat of sheets so wide with its bark laid flat.
func laidFlat(t *testing.T, sheetWidth float64) (core.Canoe, *bark.Flat) {
	t.Helper()
	d := design.Default()
	p, _ := design.Lookup("sheetWidth")
	d = p.Set(d, sheetWidth)
	c := core.Evaluate(d)
	f := bark.Flatten(c.Hull, c.Bark, bark.ForPicture, nil, nil)
	require.Equal(t, geom.Converged, f.State)
	return c, &f
}

// onHull is the area of a patch on the hull, from fine triangles between points of the skin, m2. It is cut
// at the edge of the bark. The triangles' corners lie on the skin: 40 a side are good to 1e-3.
func onHull(c core.Canoe, r mend.Repair) float64 {
	const n = 40
	at := func(i, k int) geom.Vec3 {
		run := r.Damage.At + r.PatchAlong*(float64(i)/n-0.5)
		up := r.Damage.Up + r.PatchRound*(float64(k)/n-0.5)
		column, girth := mend.Column(c.Hull, run)
		p := column.At(min(math.Abs(up), girth))
		return geom.Vec3{X: math.Copysign(p.X, run), Y: math.Copysign(p.Y, up), Z: p.Z}
	}
	sum := 0.0
	for i := range n {
		for k := range n {
			a, b, c, d := at(i, k), at(i+1, k), at(i+1, k+1), at(i, k+1)
			sum += (b.Sub(a).Cross(c.Sub(a)).Len() + c.Sub(a).Cross(d.Sub(a)).Len()) / 2
		}
	}
	return sum
}

// stretchNear are the least and the largest share by which the cells of a part's piece of bark grew in
// area to lie flat, of those that its outline's box meets.
func stretchNear(f *bark.Flat, parts []mend.Laid) (least, most float64) {
	least, most = math.Inf(1), 0
	for _, part := range parts {
		low, high := part.Outline[0], part.Outline[0]
		for _, q := range part.Outline {
			low = geom.Vec2{X: min(low.X, q.X), Y: min(low.Y, q.Y)}
			high = geom.Vec2{X: max(high.X, q.X), Y: max(high.Y, q.Y)}
		}
		for _, p := range f.Pieces() {
			if p.Panel != part.Panel {
				continue
			}
			for _, s := range p.Stretches {
				a, b, c := p.Points[s.Corners[0]], p.Points[s.Corners[1]], p.Points[s.Corners[2]]
				if max(a.X, b.X, c.X) >= low.X && min(a.X, b.X, c.X) <= high.X &&
					max(a.Y, b.Y, c.Y) >= low.Y && min(a.Y, b.Y, c.Y) <= high.Y {
					least, most = min(least, s.S1*s.S2), max(most, s.S1*s.S2)
				}
			}
		}
	}
	return least, most
}

func area(parts []mend.Laid) float64 {
	sum := 0.0
	for _, part := range parts {
		sum += math.Abs(check.Area(part.Outline))
	}
	return sum
}

func pieces(parts []mend.Laid) int {
	most := -1
	for _, part := range parts {
		most = max(most, part.Piece)
	}
	return most + 1
}

// A patch anywhere on the boat, laid on the flat bark, has the area that it has on the hull, within what
// the cells there stretched and gathered to lie flat. Besides, the cells of the grid are flat: their chords
// are up to 1 % shorter across the turn of the bilge than the skin.
func TestLaidPatchHasItsArea(t *testing.T) {
	r := rand.New(rand.NewPCG(16, 1))
	c, f := laidFlat(t, 80*in)
	for range 60 {
		d := tally.Damage{Kind: tally.Hole, At: (2*check.Share(r) - 1) * 0.9 * c.Hull.Gunwale.Length(),
			Along: (1 + 8*check.Share(r)) * in, Round: (1 + 8*check.Share(r)) * in}
		_, girth := mend.Column(c.Hull, d.At)
		d.Up = (2*check.Share(r) - 1) * girth
		repair := mend.Make(boat(), d)
		parts := mend.OnFlat(c.Hull, &c.Bark, f, repair)
		require.NotEmpty(t, parts)
		least, most := stretchNear(f, parts)
		grew := area(parts) / onHull(c, repair)
		where := fmt.Sprintf("%+v: %v between %v and %v", d, grew, least, most)
		assert.GreaterOrEqual(t, grew, least-0.01, where)
		assert.LessOrEqual(t, grew, most+0.01, where)
	}
}

// A patch across a gore over its foot falls in two pieces, one on each side of the gore, whose areas are
// those of the patch's two halves; round the gore's foot it hangs together. The halves' edges run along the
// gore, the whole's too: rounding alone is between their areas.
func TestPatchAcrossAGore(t *testing.T) {
	c, f := laidFlat(t, 80*in)
	tried := 0
	for _, g := range f.Gores {
		if g.State != bark.GoreCut || g.X == 0 {
			continue
		}
		tried++
		_, girth := mend.Column(c.Hull, g.Run)
		d := tally.Damage{Kind: tally.Hole, At: g.Run, Up: girth - 0.35*g.Depth, Along: 6 * in, Round: 1 * in}
		whole := mend.OnFlat(c.Hull, &c.Bark, f, mend.Make(boat(), d))
		assert.Equal(t, 2, pieces(whole), "gore at %v", g.Run)
		halves := 0.0
		for _, side := range []float64{-1, 1} {
			repair := mend.Make(boat(), d)
			repair.PatchAlong /= 2
			repair.Damage.At += side * repair.PatchAlong / 2
			half := mend.OnFlat(c.Hull, &c.Bark, f, repair)
			assert.Equal(t, 1, pieces(half))
			halves += area(half)
		}
		assert.InEpsilon(t, area(whole), halves, 1e-9)

		d.Up, d.Round = girth-g.Depth, 4*in
		assert.Equal(t, 1, pieces(mend.OnFlat(c.Hull, &c.Bark, f, mend.Make(boat(), d))), "round the foot")
	}
	assert.GreaterOrEqual(t, tried, 4)
}

// Over the centre line and amidships a patch lies in four quarters and is one piece; past the heel the
// bark is in two horns and so is the patch; over the seam of a side panel it is on the sheet and on the panel.
func TestPatchAcrossTheLinesOfTheBark(t *testing.T) {
	c, f := laidFlat(t, 40*in)
	hole := func(at, up, size float64) []mend.Laid {
		d := tally.Damage{Kind: tally.Hole, At: at, Up: up, Along: size, Round: size}
		return mend.OnFlat(c.Hull, &c.Bark, f, mend.Make(boat(), d))
	}
	middle := hole(0, 0, 4*in)
	assert.Len(t, middle, 4)
	assert.Equal(t, 1, pieces(middle))
	assert.Equal(t, 2, pieces(hole(0.97*c.Hull.Gunwale.Length(), 0, 2*in)))
	_, girth := mend.Column(c.Hull, 10*in)
	on := map[int]bool{}
	for _, part := range hole(10*in, -(girth - 2*in), 6*in) {
		assert.Equal(t, [2]float64{1, -1}, part.Quarter)
		on[part.Panel] = true
	}
	assert.Equal(t, map[int]bool{-1: true, 0: true}, on)
}

// Over the butt of two strips a patch falls in two parts, one on each strip, that meet in the butt's line: their
// areas by the shoelace formula are together that of the patch on a panel without strips, within rounding, and each
// lies where its strip reaches. On each side of each butt, forward and aft, on boats that have some.
func TestPatchAcrossAButt(t *testing.T) {
	tried := 0
	for _, d := range design.Starting() {
		p, _ := design.Lookup("sheetWidth")
		c, faults := core.Try(p.Set(d, 36*in))
		require.Empty(t, faults)
		f := bark.Flatten(c.Hull, c.Bark, bark.ForPicture, nil, nil)
		c = c.WithFlat(f)
		plain := c.Bark
		plain.Port, plain.Star, plain.Butts = nil, nil, nil
		strips := map[string]bark.Laid{}
		for _, s := range append(slices.Clone(c.Bark.Port), c.Bark.Star...) {
			strips[s.Name] = s
		}
		for _, b := range c.Bark.Butts {
			place := c.Bark.PlaceAt(c.Hull, b.Along)
			column := c.Hull.Column(place)
			damage := tally.Damage{Kind: tally.Hole, At: math.Copysign(runAt(c, place), b.Along), Up: column.Girth(),
				Along: 5 * in, Round: 4 * in}
			if !b.Port {
				damage.Up = -damage.Up
			}
			repair := mend.Make(boat(), damage)
			whole := onPanels(mend.OnFlat(c.Hull, &plain, &f, repair))
			parts := onPanels(mend.OnFlat(c.Hull, &c.Bark, &f, repair))
			require.Len(t, whole, 1)
			require.Len(t, parts, 2, "%s at %v", d.Name, b.Along)
			tried++
			assert.NotEqual(t, parts[0].Piece, parts[1].Piece)
			assert.InEpsilon(t, area(whole), area(parts), 1e-12, "sums of some twenty products of metres")
			assert.NotEqual(t, parts[0].Strip, parts[1].Strip)
			for _, part := range parts {
				aft, bow := c.Bark.Reach(strips[part.Strip])
				onButt := 0
				for _, q := range part.Outline {
					along := part.Quarter[0] * q.X
					assert.True(t, along >= aft-1e-12 && along <= bow+1e-12, "rounding of one place on a line")
					if along == b.Along {
						onButt++
					}
				}
				assert.GreaterOrEqual(t, onButt, 2, "they meet in the butt")
			}
		}
	}
	assert.GreaterOrEqual(t, tried, 10)
}

// runAt is the run along the gunwale of the column at a place, m.
func runAt(c core.Canoe, place float64) float64 {
	low, high := 0.0, c.Hull.Gunwale.Length()
	for range 60 {
		if run := (low + high) / 2; c.Hull.ColumnAtEdge(c.Hull.StationAt(run)) < place {
			low = run
		} else {
			high = run
		}
	}
	return low
}

// onPanels are the parts that lie on side panels.
func onPanels(all []mend.Laid) (out []mend.Laid) {
	for _, part := range all {
		if part.Panel >= 0 {
			out = append(out, part)
		}
	}
	return out
}

// A broken rib is a line from gunwale to gunwale in one piece, torn lacing a strip at the edge on its
// side; nothing entered makes points that are no numbers.
func TestOtherDamageLaidFlat(t *testing.T) {
	c, f := laidFlat(t, 80*in)
	rib := mend.OnFlat(c.Hull, &c.Bark, f, mend.Make(boat(), tally.Damage{Kind: tally.BrokenRib, At: -10 * in}))
	require.Len(t, rib, 2)
	assert.Equal(t, 1, pieces(rib))
	length := 0.0
	for _, part := range rib {
		assert.False(t, part.Closed)
		assert.Equal(t, -1.0, part.Quarter[0])
		for i := 1; i < len(part.Outline); i++ {
			length += part.Outline[i].Sub(part.Outline[i-1]).Len()
		}
	}
	_, girth := mend.Column(c.Hull, -10*in)
	assert.InEpsilon(t, 2*girth, length, c.Design.StretchLimit, "as long as the bark is round, within its stretch")

	for k := tally.Crack; k < tally.DamageKinds; k++ {
		for _, at := range []float64{-tally.MostDamage, -1, 0, c.Hull.Gunwale.Length(), tally.MostDamage} {
			for _, up := range []float64{-tally.MostDamage, 0, 0.3, tally.MostDamage} {
				d := tally.Damage{Kind: k, At: at, Up: up, Along: 0.2, Round: 0.2, Groups: 3}
				for _, part := range mend.OnFlat(c.Hull, &c.Bark, f, mend.Make(boat(), d)) {
					for _, q := range part.Outline {
						assert.False(t, math.IsNaN(q.X+q.Y))
						assert.LessOrEqual(t, max(2*math.Abs(q.X)-f.Length, 2*math.Abs(q.Y)-f.Breadth), 1e-9)
					}
				}
			}
		}
	}
}
