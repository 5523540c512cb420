package chart

import (
	"math"
	"slices"

	"barkwright/core/draw"
	"barkwright/core/geom"
)

// The letters' size, CSS pixels: 12 is the least that charts are read at.
const chartLetter = 13

// markRadius is half a mark's breadth, CSS pixels.
const markRadius = 5.0

// plot is a chart laid out in CSS pixels.
type plot struct {
	Chart
	list  draw.List
	area  draw.Box
	taken []draw.Box
}

// Draw draws the chart, width CSS pixels broad.
func (c Chart) Draw(width float64) draw.List {
	p := c.laidOut(width)
	p.list.Title, p.list.Description = c.Title, c.Description
	if c.Empty != "" {
		t := lettered(width/2, p.list.Height/2, draw.Middle, c.Empty)
		t.Bold = true
		p.list.Add(t)
		return p.list
	}
	p.grid()
	p.drawn()
	p.labels()
	return p.list
}

// laidOut finds the room for the axes' numbers and lays the ticks.
func (c Chart) laidOut(width float64) *plot {
	p := &plot{Chart: c, list: draw.List{Width: width, Height: math.Round(max(230, min(330, 0.6*width)))}}
	p.area = draw.Box{Top: 2.1 * chartLetter, Right: width - 1.4*chartLetter, Bottom: p.list.Height - 3*chartLetter}
	if c.Empty != "" {
		return p
	}
	p.Y = p.Y.widened(int(max(3, (p.area.Bottom-p.area.Top)/(2.6*chartLetter))))
	broadest := 0.0
	for _, t := range p.Y.ticks() {
		broadest = max(broadest, broad(t.text))
	}
	p.area.Left = broadest + 0.9*chartLetter
	p.X = p.X.widened(int(max(3, (p.area.Right-p.area.Left)/(5*chartLetter))))
	return p
}

// lettered is a line of lettering at a place.
func lettered(x, y float64, anchor draw.Anchor, text string) draw.Text {
	at := draw.Point{X: x, Y: y}
	return draw.Text{Role: draw.Ink, Halo: draw.Paper, Text: text, At: at, Anchor: anchor, Size: chartLetter}
}

// broad is how broad a text is.
func broad(text string) float64 { return lettered(0, 0, draw.Start, text).Bounds().Width() }

// at is where a point of the chart stands.
func (p *plot) at(q geom.Vec2) geom.Vec2 {
	return geom.Vec2{
		X: p.area.Left + (q.X-p.X.Low)/(p.X.High-p.X.Low)*(p.area.Right-p.area.Left),
		Y: p.area.Bottom - (q.Y-p.Y.Low)/(p.Y.High-p.Y.Low)*(p.area.Bottom-p.area.Top),
	}
}

// line draws a line through points of the picture.
func (p *plot) line(r draw.Role, width float64, points ...geom.Vec2) {
	p.list.Add(draw.Stroke{Role: r, Points: inPicture(points), Width: width})
}

func inPicture(points []geom.Vec2) []draw.Point {
	out := make([]draw.Point, len(points))
	for i, q := range points {
		out[i] = draw.Point(q)
	}
	return out
}

// grid draws the axes with their numbers and what they measure.
func (p *plot) grid() {
	for _, t := range p.Y.ticks() {
		q := p.at(geom.Vec2{X: p.X.Low, Y: t.at})
		role, width := draw.Faint, 0.4
		if t.at == 0 {
			role, width = draw.Ink, 1
		}
		p.line(role, width, q, geom.Vec2{X: p.area.Right, Y: q.Y})
		p.list.Add(lettered(q.X-0.4*chartLetter, q.Y, draw.End, t.text))
	}
	for _, t := range p.X.ticks() {
		q := p.at(geom.Vec2{X: t.at, Y: p.Y.Low})
		p.line(draw.Ink, 1, q, geom.Vec2{X: q.X, Y: q.Y + 0.35*chartLetter})
		p.list.Add(lettered(q.X, q.Y+chartLetter, draw.Middle, t.text))
	}
	p.line(draw.Ink, 1, geom.Vec2{X: p.area.Left, Y: p.area.Top}, geom.Vec2{X: p.area.Left, Y: p.area.Bottom},
		geom.Vec2{X: p.area.Right, Y: p.area.Bottom})
	y, x := p.yTitle(), lettered(p.area.Right, p.area.Bottom+2.3*chartLetter, draw.End, p.X.title())
	x.Bold = true
	p.list.Add(y, x)
}

// yTitle names the vertical axis in the chart's upper left corner.
func (p *plot) yTitle() draw.Text {
	t := lettered(0.2*chartLetter, 0.9*chartLetter, draw.Start, p.Y.title())
	t.Bold = true
	return t
}

// drawn draws bands, lines and marks.
func (p *plot) drawn() {
	for _, b := range p.Bands {
		band := inPicture(p.placed(b.Low))
		high := inPicture(p.placed(b.High))
		slices.Reverse(high)
		p.list.Add(draw.Fill{Role: draw.Bark, Points: append(band, high...)})
	}
	for _, l := range p.Lines {
		width, dash := 2.2, []float64(nil)
		if l.Dashed {
			width, dash = 1.4, []float64{6, 4}
		}
		p.list.Add(draw.Stroke{Role: draw.Ink, Points: inPicture(p.placed(l.Points)), Width: width, Dash: dash})
	}
	for _, m := range p.Marks {
		q := p.at(m.At)
		const r = markRadius
		disc := draw.Polygon(draw.Point(q), r, 24, 0)
		switch m.Shape {
		case Here:
			p.list.Add(draw.Fill{Role: draw.Mark, Points: disc},
				draw.Stroke{Role: draw.Paper, Points: disc, Width: 1.5, Closed: true})
		case Ring:
			p.list.Add(draw.Fill{Role: draw.Paper, Points: disc},
				draw.Stroke{Role: draw.Ink, Points: disc, Width: 1.8, Closed: true})
		case Cross:
			p.line(draw.Ink, 2.2, geom.Vec2{X: q.X - r, Y: q.Y - r}, geom.Vec2{X: q.X + r, Y: q.Y + r})
			p.line(draw.Ink, 2.2, geom.Vec2{X: q.X - r, Y: q.Y + r}, geom.Vec2{X: q.X + r, Y: q.Y - r})
		}
		p.taken = append(p.taken, draw.BoxOf(disc))
	}
}

func (p *plot) placed(points []geom.Vec2) []geom.Vec2 {
	out := make([]geom.Vec2, len(points))
	for i, q := range points {
		out[i] = p.at(q)
	}
	return out
}
