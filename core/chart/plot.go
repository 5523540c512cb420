package chart

import (
	"bufio"
	"io"
	"math"
	"strconv"

	"barkwright/core/draw"
	"barkwright/core/geom"
)

// ChartColours are the colours of a chart, as SVG writes them: lines and letters,
// the grid, bands, marks, and the ground.
type Colours struct{ Ink, Faint, Fill, Mark, Paper string }

// The letters' size, CSS pixels: 12 is the least that charts are read at.
const chartLetter = 13

// markRadius is half a mark's breadth, CSS pixels.
const markRadius = 5.0

// glyph is the breadth of a letter as a share of its size, on the broad side.
const glyph = 0.56

// plot is a chart laid out in CSS pixels.
type plot struct {
	Chart
	colours       Colours
	w             *bufio.Writer
	width, height float64
	area          rect
	taken         []rect
}

type rect struct{ left, top, right, bottom float64 }

func (r rect) meets(o rect) bool {
	return r.left < o.right && o.left < r.right && r.top < o.bottom && o.top < r.bottom
}

func (r rect) within(o rect) bool {
	return r.left >= o.left && r.right <= o.right && r.top >= o.top && r.bottom <= o.bottom
}

// SVG writes the chart as one element, width CSS pixels broad, with its text
// alternative. It returns the writer's first error.
func (c Chart) SVG(w io.Writer, width float64, colours Colours) error {
	p := c.laidOut(width)
	p.colours, p.w = colours, bufio.NewWriter(w)
	id := "chart-" + draw.Escape(c.Key)
	p.put(`<svg xmlns="http://www.w3.org/2000/svg" role="img" data-chart="`, draw.Escape(c.Key), `" aria-labelledby="`, id, `-title `, id, `-desc" viewBox="0 0 `,
		px(p.width), ` `, px(p.height), `" width="`, px(p.width), `" height="`, px(p.height), `" font-family="system-ui, sans-serif" font-size="`, px(chartLetter), `">`)
	p.put(`<title id="`, id, `-title">`, draw.Escape(c.Title), `</title><desc id="`, id, `-desc">`, draw.Escape(c.Description), "</desc>\n")
	if c.Empty != "" {
		p.text(geom.Vec2{X: p.width / 2, Y: p.height / 2}, "middle", c.Empty, true)
	} else {
		p.grid()
		p.drawn()
		p.labels()
	}
	p.put("</svg>\n")
	return p.w.Flush()
}

// laidOut finds the room for the axes' numbers and lays the ticks.
func (c Chart) laidOut(width float64) *plot {
	p := &plot{Chart: c, width: width, height: math.Round(max(230, min(330, 0.6*width)))}
	p.area = rect{top: 2.1 * chartLetter, right: width - 1.2*chartLetter, bottom: p.height - 3*chartLetter}
	if c.Empty != "" {
		return p
	}
	p.Y = p.Y.widened(int(max(3, (p.area.bottom-p.area.top)/(2.6*chartLetter))))
	broadest := 0.0
	for _, t := range p.Y.ticks() {
		broadest = max(broadest, broad(t.text))
	}
	p.area.left = broadest + 0.9*chartLetter
	p.X = p.X.widened(int(max(3, (p.area.right-p.area.left)/(5*chartLetter))))
	return p
}

func broad(text string) float64 { return glyph * chartLetter * float64(len([]rune(text))) }

// at is where a point of the chart stands.
func (p *plot) at(q geom.Vec2) geom.Vec2 {
	return geom.Vec2{
		X: p.area.left + (q.X-p.X.Low)/(p.X.High-p.X.Low)*(p.area.right-p.area.left),
		Y: p.area.bottom - (q.Y-p.Y.Low)/(p.Y.High-p.Y.Low)*(p.area.bottom-p.area.top),
	}
}

func (p *plot) put(pieces ...string) {
	for _, s := range pieces {
		p.w.WriteString(s)
	}
}

// px writes a length to a tenth of a pixel.
func px(v float64) string {
	v = math.Round(v*10) / 10
	return strconv.FormatFloat(v+0, 'f', -1, 64)
}

func (p *plot) line(points []geom.Vec2, colour string, width float64, dash string) {
	p.put(`<polyline points="`)
	for i, q := range points {
		if i > 0 {
			p.put(" ")
		}
		p.put(px(q.X), ",", px(q.Y))
	}
	p.put(`" fill="none" stroke="`, colour, `" stroke-width="`, px(width), `" stroke-linejoin="round"`)
	if dash != "" {
		p.put(` stroke-dasharray="`, dash, `"`)
	}
	p.put("/>\n")
}

func (p *plot) text(at geom.Vec2, anchor, text string, bold bool) {
	p.put(`<text x="`, px(at.X), `" y="`, px(at.Y), `" dy="0.35em" text-anchor="`, anchor, `" fill="`, p.colours.Ink,
		`" stroke="`, p.colours.Paper, `" stroke-width="3" paint-order="stroke"`)
	if bold {
		p.put(` font-weight="700"`)
	}
	p.put(">", draw.Escape(text), "</text>\n")
}

// grid draws the axes with their numbers and what they measure.
func (p *plot) grid() {
	for _, t := range p.Y.ticks() {
		q := p.at(geom.Vec2{X: p.X.Low, Y: t.at})
		colour, width := p.colours.Faint, 0.4
		if math.Abs(t.at) < 1e-12 {
			colour, width = p.colours.Ink, 1
		}
		p.line([]geom.Vec2{q, {X: p.area.right, Y: q.Y}}, colour, width, "")
		p.text(geom.Vec2{X: q.X - 0.4*chartLetter, Y: q.Y}, "end", t.text, false)
	}
	for _, t := range p.X.ticks() {
		q := p.at(geom.Vec2{X: t.at, Y: p.Y.Low})
		p.line([]geom.Vec2{q, {X: q.X, Y: q.Y + 0.35*chartLetter}}, p.colours.Ink, 1, "")
		p.text(geom.Vec2{X: q.X, Y: q.Y + chartLetter}, "middle", t.text, false)
	}
	p.line([]geom.Vec2{{X: p.area.left, Y: p.area.top}, {X: p.area.left, Y: p.area.bottom}, {X: p.area.right,
		Y: p.area.bottom}}, p.colours.Ink, 1, "")
	p.text(geom.Vec2{X: 0.2 * chartLetter, Y: 0.9 * chartLetter}, "start", p.Y.title(), true)
	p.text(geom.Vec2{X: p.area.right, Y: p.area.bottom + 2.3*chartLetter}, "end", p.X.title(), true)
}

// drawn draws bands, lines and marks.
func (p *plot) drawn() {
	for _, b := range p.Bands {
		p.put(`<polygon points="`)
		for i := range b.Low {
			q := p.at(b.Low[i])
			p.put(px(q.X), ",", px(q.Y), " ")
		}
		for i := len(b.High) - 1; i >= 0; i-- {
			q := p.at(b.High[i])
			p.put(px(q.X), ",", px(q.Y), " ")
		}
		p.put(`" fill="`, p.colours.Fill, "\"/>\n")
	}
	for _, l := range p.Lines {
		width, dash := 2.2, ""
		if l.Dashed {
			width, dash = 1.4, "6 4"
		}
		p.line(p.placed(l.Points), p.colours.Ink, width, dash)
	}
	for _, m := range p.Marks {
		q := p.at(m.At)
		const r = markRadius
		switch m.Shape {
		case Here:
			p.put(`<circle cx="`, px(q.X), `" cy="`, px(q.Y), `" r="`, px(r), `" fill="`, p.colours.Mark, `" stroke="`, p.colours.Paper, "\" stroke-width=\"1.5\"/>\n")
		case Ring:
			p.put(`<circle cx="`, px(q.X), `" cy="`, px(q.Y), `" r="`, px(r), `" fill="`, p.colours.Paper, `" stroke="`, p.colours.Ink, "\" stroke-width=\"1.8\"/>\n")
		case Cross:
			p.line([]geom.Vec2{{X: q.X - r, Y: q.Y - r}, {X: q.X + r, Y: q.Y + r}}, p.colours.Ink, 2.2, "")
			p.line([]geom.Vec2{{X: q.X - r, Y: q.Y + r}, {X: q.X + r, Y: q.Y - r}}, p.colours.Ink, 2.2, "")
		}
		p.taken = append(p.taken, rect{q.X - r, q.Y - r, q.X + r, q.Y + r})
	}
}

func (p *plot) placed(points []geom.Vec2) []geom.Vec2 {
	out := make([]geom.Vec2, len(points))
	for i, q := range points {
		out[i] = p.at(q)
	}
	return out
}
