package bark_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/bark"
	"barkwright/core/geom"
	"barkwright/core/internal/check"
)

func laidArea(p *bark.Piece, r bark.Region) float64 {
	sum := 0.0
	for _, outline := range p.Lay(r) {
		sum += check.Area(outline)
	}
	return sum
}

// All of the skin laid on a piece is the piece: its outlines hold the flat area that the flattening
// sums up triangle by triangle. Rounding alone is between them.
func TestAllOfTheSkinIsThePiece(t *testing.T) {
	for _, width := range []float64{wide, 40 * inch} {
		_, f := flatten(t, boat(t, map[string]float64{"sheetWidth": width}), bark.ForPicture)
		for _, p := range f.Pieces() {
			assert.InEpsilon(t, p.FlatArea, laidArea(p, bark.Region{To: 2, High: 10}), 1e-9)
		}
	}
}

// A region cut in two by a column or by a girth is the two halves: columns are met at the same points,
// and a line of equal girth, which bends in every cell, at no fewer than five in each.
func TestRegionsAddUp(t *testing.T) {
	_, f := flatten(t, boat(t, map[string]float64{"sheetWidth": 40 * inch}), bark.ForPicture)
	all := bark.Region{From: 0.1, To: 1.4, Low: 0.05, High: 0.7}
	met := 0
	for _, p := range f.Pieces() {
		whole := laidArea(p, all)
		if whole == 0 {
			continue
		}
		met++
		for _, share := range []float64{0, 0.2, 0.5, 0.77, 1} {
			after, fore, low, high := all, all, all, all
			after.To = all.From + share*(all.To-all.From)
			fore.From = after.To
			low.High = all.Low + share*(all.High-all.Low)
			high.Low = low.High
			// Rounding.
			assert.InEpsilon(t, whole, laidArea(p, after)+laidArea(p, fore), 1e-9)
			// A cell of 5 cm whose sides differ by the stretch, half a hundredth, bends such a line by 0.06 mm,
			// its quarters by a sixteenth of that: 4 micrometres of a region 0.65 m high.
			assert.InEpsilon(t, whole, laidArea(p, low)+laidArea(p, high), 1e-5)
		}
	}
	assert.GreaterOrEqual(t, met, 2, "the sheet and a side panel")
}

// A region over a gore's foot falls in two at the gore, each with the gore's own edge; one round its
// foot stays whole and has both; one under it does not meet the gore.
func TestRegionAtAGore(t *testing.T) {
	h, f := flatten(t, boat(t, map[string]float64{"sheetWidth": wide}), bark.ForPicture)
	n := 0
	for _, g := range f.Gores {
		if g.X <= 0 || g.State != bark.GoreCut {
			continue
		}
		n++
		place := h.ColumnAtEdge(g.X)
		near := bark.Region{From: place - 0.03, To: place + 0.03}
		girth := h.Column(place).Girth()
		foot := girth - g.Depth
		lay := func(low, high float64) [][]geom.Vec2 {
			r := near
			r.Low, r.High = low, high
			return f.Sheet.Lay(r)
		}
		over := lay(foot+0.3*g.Depth, girth)
		require.Len(t, over, 2)
		assert.Less(t, offLine(over[0], g.After), 1e-9)
		assert.Less(t, offLine(over[1], g.Fore), 1e-9)
		round := lay(foot-0.05, girth)
		require.Len(t, round, 1)
		assert.Less(t, offLine(round[0], g.After), 1e-9)
		assert.Less(t, offLine(round[0], g.Fore), 1e-9)
		require.Len(t, lay(foot-0.06, foot-0.01), 1)
	}
	assert.GreaterOrEqual(t, n, 2)
}

// offLine is how far the upper half of a line is from an outline's nearest points, at the most.
func offLine(outline, line []geom.Vec2) float64 {
	most := 0.0
	for _, q := range line[len(line)*2/3:] {
		least := math.Inf(1)
		for _, o := range outline {
			least = min(least, o.Sub(q).Len())
		}
		most = max(most, least)
	}
	return most
}

// A column on the sheet is as long as the flattening says that it is; one past the piece is none.
func TestUpright(t *testing.T) {
	_, f := flatten(t, boat(t, map[string]float64{"sheetWidth": wide}), bark.ForPicture)
	for _, c := range []int{1, 20, len(f.Sheet.Places) - 2} {
		line := f.Sheet.Upright(f.Sheet.Places[c], 0, 10)
		sum := 0.0
		for i := 1; i < len(line); i++ {
			sum += line[i].Sub(line[i-1]).Len()
		}
		// Rounding: the same pieces are added up.
		assert.InDelta(t, f.Sheet.ColumnLengths(c, 0, geom.Before).Flat, sum, 1e-9)
	}
	assert.Nil(t, f.Sheet.Upright(2.5, 0, 10))
	assert.Nil(t, f.Sheet.Upright(0.5, 5, 10))
}
