package pattern

import (
	"sort"
	"strconv"

	"barkwright/core/bark"
	"barkwright/core/geom"
	"barkwright/core/model"
	"barkwright/core/units"
)

// panels are the side panels of a model that has them, each drawn so much longer that its edge is
// as long as the edge of the sheet it is sewn to: laid flat by itself it comes out shorter.
func (k kit) panels() []Pattern {
	if !k.Panelled {
		return nil
	}
	var out []Pattern
	f := &k.Skin.Flat
	for i := range f.Panels {
		p := &f.Panels[i]
		if k.sliver(p) {
			continue
		}
		foot := p.Row(0)[0]
		longer := longerBy(&f.Sheet, p)
		stretch := func(q geom.Vec2) geom.Vec2 { return k.at(geom.Vec2{X: longer * q.X, Y: q.Y}) }
		top := p.Row(p.Rows - 1)[0]
		round := append(append([]geom.Vec2{}, foot...), p.Column(len(p.Places)-1, 1, geom.Before)...)
		round = append(round, geom.Reversed(top)[1:]...)
		pieces, rest := 4, "at the ends"
		if p.Places[0] == 0 {
			// It goes on aft of amidships as its own mirror image.
			round = append(round, geom.Reversed(each(round, aft))[1:]...)
			pieces, rest = 2, "amidships"
		} else {
			round = append(round, p.Column(0, 0, geom.Before)...)
		}
		d := Pattern{Key: "kit-panel-" + strconv.Itoa(i+1), Name: k.name("side panel " + strconv.Itoa(i+1)),
			Note: strconv.Itoa(pieces) + " needed, " + rest + ". It is drawn longer by " +
				units.Trimmed(100*(longer-1), 1) + " %, so that its edge is as long as the sheet's. Sew it on with a lap of " +
				millimetre(k.OnModel(k.Design.SeamLap)) +
				", which is left on here as the dotted line. Turn it over for the other side."}
		d.draw(Cut, each(each(append(round, round[0]), stretch), downThePaper)...)
		lap := geom.Offset(each(foot, stretch), -k.OnModel(k.Design.SeamLap))
		d.draw(Dotted, each(lap, downThePaper)...)
		if p.Places[0] == 0 {
			d.draw(Dotted, each(each(lap, aft), downThePaper)...)
		}
		out = append(out, d.done())
	}
	return out
}

// downThePaper lays a drawing of the boat with its bow at the foot of the page.
func downThePaper(q geom.Vec2) geom.Vec2 { return geom.Vec2{X: q.Y, Y: -q.X} }

// longerBy is how many times as long as a panel's edge the sheet's is along their seam.
func longerBy(sheet, panel *bark.Piece) float64 {
	from, to := onSeam(sheet, panel)
	if to == from {
		return 1
	}
	seam := panel.Row(0)[0][from : to+1]
	edge := edgeLength(sheet, panel.Places[from], panel.Places[to])
	// What runs across the boat is not made longer, so a few rounds are taken.
	longer := 1.0
	for range 8 {
		longer *= edge / geom.NewPolyline(each(seam, func(q geom.Vec2) geom.Vec2 {
			return geom.Vec2{X: longer * q.X, Y: q.Y}
		})).Length()
	}
	return longer
}

// sliver tells whether a panel is too narrow on the model to be cut out: there the trim will do.
func (k kit) sliver(p *bark.Piece) bool {
	broadest := 0.0
	for c := range p.Places {
		broadest = max(broadest, p.At(c, p.Rows-1, geom.Before).Sub(p.At(c, 0, geom.Before)).Len())
	}
	return k.OnModel(broadest) < model.LeastStrip
}

// onSeam are the first and the last column of a panel whose foot lies on the sheet's edge: beyond
// it the sheet has ended at the profile, and the panel goes on along that.
func onSeam(sheet, panel *bark.Piece) (from, to int) {
	// As near as the hull is to the chords of its columns.
	const near = 2 * units.Millimetre
	from = -1
	for c, place := range panel.Places {
		k := min(max(1, sort.SearchFloat64s(sheet.Places, place)), len(sheet.Places)-1)
		share := (place - sheet.Places[k-1]) / (sheet.Places[k] - sheet.Places[k-1])
		edge := sheet.Curved.Point(k-1, sheet.Rows-1).Lerp(sheet.Curved.Point(k, sheet.Rows-1), share)
		if edge.Sub(panel.Curved.Point(c, 0)).Len() > near {
			continue
		}
		if from < 0 {
			from = c
		}
		to = c
	}
	return max(0, from), to
}

// edgeLength is that of the sheet's top edge between two places, without what rides over at the
// slits.
func edgeLength(sheet *bark.Piece, from, to float64) float64 {
	sum, column := 0.0, 0
	for _, run := range sheet.Row(sheet.Rows - 1) {
		for i := 1; i < len(run); i++ {
			a, b := sheet.Places[column+i-1], sheet.Places[column+i]
			if share := (min(b, to) - max(a, from)) / (b - a); share > 0 {
				sum += share * run[i].Sub(run[i-1]).Len()
			}
		}
		column += len(run) - 1
	}
	return sum
}
