package flat

import (
	"strings"

	"barkwright/core"
	"barkwright/core/draw"
	"barkwright/core/units"
	"barkwright/wasm/scene"
)

// legendEntry is one band of the hatch with its meaning. Band -1 stands for no hatch.
type legendEntry struct {
	band int
	text string
}

// legend is the hatch explained in rows under the sheet.
type legend struct {
	size, swatch, gap float64 // of the letters, of a band's box, and between things, px
	rows              [][]legendEntry
	title             string // before the first row, or over it where there are more
}

// newLegend lays the legend out in one row where the picture is wide enough. Otherwise
// it takes two rows under the title where they fit below the sheet, or one row of few
// words. Where even that is too long it keeps only the band that matters.
func (p *pen) newLegend(c core.Canoe, l flatLayout) legend {
	share := func(s float64) string {
		return units.Strain.Format(s*c.Design.StretchLimit, p.View.System)
	}
	all := []legendEntry{{-1, "under " + share(stretchBands[0])}}
	for i := 1; i < len(stretchBands); i++ {
		all = append(all, legendEntry{i - 1, "to " + share(stretchBands[i])})
	}
	last := len(stretchBands) - 1
	all = append(all, legendEntry{last, "over " + share(1) + ", your limit"})
	size := max(11, 0.9*p.Letter)
	g := legend{size: size, swatch: 2.4 * size, gap: 0.5 * size, title: "stretch left: ", rows: [][]legendEntry{all}}
	room := p.List.Width - 2*g.gap
	if p.List.Width < 60*size {
		g.title = ""
	}
	if g.width(all) <= room {
		return g
	}
	g.title, g.rows, g.swatch = "stretch left:", [][]legendEntry{all[:2], all[2:]}, 3.6*size
	if g.width(g.rows[1]) <= room && l.legendY+3*g.pitch() < l.legendLow {
		return g
	}
	bare := func(s float64) string { return strings.TrimSuffix(share(s), " %") }
	brief := []legendEntry{{-1, "to " + bare(stretchBands[0])}, {0, bare(stretchBands[1])}, {1, share(1)}, {last, "over"}}
	g.title, g.rows, g.swatch, g.gap = "stretch ", [][]legendEntry{brief}, 1.6*size, 0.3*size
	if g.width(brief) <= room {
		return g
	}
	g.title, g.rows, g.swatch = "", [][]legendEntry{all[last+1:]}, 2.4*size
	return g
}

// pitch is how far rows are apart.
func (g legend) pitch() float64 { return 1.5 * g.size }

func (g legend) lettered(t string) float64 {
	return draw.Lettered(t, g.size, false)
}

// between returns the space beside a band's box and after its words.
func (g legend) between() float64 { return 4 * g.gap }

// width is how long a row is, with the title where that stands before it.
func (g legend) width(row []legendEntry) float64 {
	total := 0.0
	if len(g.rows) == 1 {
		total = g.lettered(g.title)
	}
	for _, e := range row {
		total += g.swatch + g.between() + g.lettered(e.text)
	}
	return total
}

// stretchLegend explains the hatch under the sheet.
func (p *pen) stretchLegend(c core.Canoe, l flatLayout) {
	if !l.rows {
		return
	}
	g := p.newLegend(c, l)
	wide := 0.0
	for _, row := range g.rows {
		wide = max(wide, g.width(row))
	}
	x, y := max(g.gap, (p.List.Width-wide)/2), l.legendY
	under := y + g.size
	if len(g.rows) > 1 {
		under += float64(len(g.rows)) * g.pitch()
	}
	// When zoomed in, the sheet passes under the legend.
	p.Marks = append(p.Marks, draw.Fill{Role: draw.Paper, Points: []draw.Point{
		{X: x - g.gap, Y: y - g.size}, {X: x + wide + g.gap, Y: y - g.size},
		{X: x + wide + g.gap, Y: under}, {X: x - g.gap, Y: under},
	}})
	start := x
	if g.title != "" {
		p.legendText(g, g.title, x, y)
		start += g.lettered(g.title)
	}
	for i, row := range g.rows {
		if len(g.rows) > 1 {
			start, y = x, l.legendY+float64(i+1)*g.pitch()
		}
		p.legendRow(g, row, start, y)
	}
}

func (p *pen) legendText(g legend, t string, x, y float64) {
	p.Letters(draw.Text{Role: draw.Ink, Text: t, Size: g.size, At: draw.Point{X: x, Y: y}, Anchor: draw.Start})
}

func (p *pen) legendRow(g legend, row []legendEntry, x, y float64) {
	for _, e := range row {
		right, top, low := x+g.swatch, y-g.size/2, y+g.size/2
		box := []draw.Point{{X: x, Y: top}, {X: right, Y: top}, {X: right, Y: low}, {X: x, Y: low}}
		p.Marks = append(p.Marks, draw.Fill{Role: draw.Bark, Points: box})
		if e.band >= 0 {
			p.Marks = append(p.Marks, p.bandHatch(e.band, box))
		}
		p.Marks = append(p.Marks, draw.Stroke{Role: draw.Ink, Points: box, Width: scene.FineWidth * p.Weight, Closed: true})
		p.KeepOff(draw.BoxOf(box))
		p.legendText(g, e.text, x+g.swatch+g.gap, y)
		x += g.swatch + g.between() + g.lettered(e.text)
	}
}
