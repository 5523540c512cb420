package pattern_test

import (
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/bark"
	"barkwright/core/geom"
	"barkwright/core/model"
	"barkwright/core/pattern"
)

// Asked for, the panels of a boat whose sheet is narrow are drawn with an edge as long as the
// sheet's along their seam, which is found here by the places where both lie on the hull. Laid
// flat by itself a panel comes out up to a millimetre shorter.
func TestKitPanelsMeetTheSheet(t *testing.T) {
	seams := 0
	for _, d := range kitBoats() {
		b := model.New(d, 8, true)
		require.True(t, b.Flat())
		panels := named(pattern.KitPatterns(b), "kit-panel")
		sheet := &b.Skin.Flat.Sheet
		for i := range b.Skin.Flat.Panels {
			p := &b.Skin.Flat.Panels[i]
			pieces := named(panels, "kit-panel-"+strconv.Itoa(i+1))
			if len(pieces) == 0 {
				assert.Less(t, broadest(b, p), 3.0, "only a sliver is left out")
				continue
			}
			outline := pieces[0].Lines[0].Points
			edge, drawn, flat := 0.0, 0.0, 0.0
			for c := 1; c < len(p.Places); c++ {
				// In the last one on the seam the sheet ends.
				if !onHull(b, p, c-1) || !onHull(b, p, min(c+1, len(p.Places)-1)) {
					continue
				}
				edge += 1000 * b.OnModel(sheetEdge(sheet, p.Places[c-1], p.Places[c]))
				drawn += outline[c].Sub(outline[c-1]).Len()
				flat += 1000 * b.OnModel(p.At(c, 0, geom.Before).Sub(p.At(c-1, 0, geom.Before)).Len())
			}
			if edge == 0 {
				continue
			}
			seams++
			assert.InDelta(t, edge, drawn, 1e-9, "%s, panel %d", d.Name, i)
			assert.InDelta(t, edge, flat, 1, "and hardly longer than it lies flat")
		}
	}
	assert.GreaterOrEqual(t, seams, 3)
}

// broadest is how broad a panel is at its broadest, mm of the model.
func broadest(b model.Boat, p *bark.Piece) float64 {
	most := 0.0
	for c := range p.Places {
		most = max(most, 1000*b.OnModel(p.At(c, p.Rows-1, geom.Before).Sub(p.At(c, 0, geom.Before)).Len()))
	}
	return most
}

// onHull tells whether the foot of a panel's column stands where the sheet's half breadth ends.
func onHull(b model.Boat, p *bark.Piece, c int) bool {
	column := b.Hull.Column(p.Places[c])
	at := p.Curved.Point(c, 0)
	return column.At(min(column.Girth(), sheetGirth(b, p.Places[c]))).Sub(at).Len() < 0.002
}

// sheetGirth is how far up a column the sheet reaches.
func sheetGirth(b model.Boat, place float64) float64 {
	s := &b.Skin.Flat.Sheet
	for c := 1; c < len(s.Places); c++ {
		if s.Places[c] >= place {
			u := (place - s.Places[c-1]) / (s.Places[c] - s.Places[c-1])
			run := func(c int) (sum float64) {
				for r := 1; r < s.Rows; r++ {
					sum += s.Curved.Point(c, r).Sub(s.Curved.Point(c, r-1)).Len()
				}
				return sum
			}
			return run(c-1) + u*(run(c)-run(c-1))
		}
	}
	return 0
}

// sheetEdge is the sheet's edge between two places, measured column by column.
func sheetEdge(s *bark.Piece, from, to float64) float64 {
	sum := 0.0
	for c := 1; c < len(s.Places); c++ {
		share := (min(s.Places[c], to) - max(s.Places[c-1], from)) / (s.Places[c] - s.Places[c-1])
		if share > 0 {
			sum += share * s.At(c, s.Rows-1, geom.Before).Sub(s.At(c-1, s.Rows-1, geom.After)).Len()
		}
	}
	return sum
}
