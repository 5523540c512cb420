package chart

import (
	"math"

	"barkwright/core/draw"
	"barkwright/core/geom"
)

// Strip is a small curve without ticks: one result over the values of a control. Its numbers
// stand in a table beside it.
type Strip struct {
	// Title and Description are its text alternative.
	Title, Description string
	// Left, Right, Low and High bound what is drawn, in SI.
	Left, Right, Low, High float64
	// Points are the curve's, by Gap parted where no line goes.
	Points []StripPoint
	// Whole tells that there is nothing between points.
	Whole bool
	// Zero tells that a line is drawn where the result is zero.
	Zero bool
	// Here is the present boat's point and Held, where there is one, that of the boat it is held
	// against.
	Here geom.Vec2
	Held *geom.Vec2
	// Bands are what a guide says along the range, Walls where boats can no longer be built.
	Bands []StripBand
	Walls []float64
	// LowText and HighText label the height's ends, LeftText and RightText those of the range.
	LowText, HighText, LeftText, RightText string
}

// StripPoint is one of its points; Gap tells that no line goes to it from the one before.
type StripPoint struct {
	At  geom.Vec2
	Gap bool
}

// StripBand is a part of the range over which a guide says the same.
type StripBand struct {
	Left, Right float64
	Word        string
	Ground      Ground
}

// Ground is how the ground of a band is hatched, the worse the denser.
type Ground int

// The grounds. Close is hatched both ways.
const (
	Clear Ground = iota
	Sparse
	Close
)

// The letters of a strip, and the room round its curve, CSS pixels.
const (
	stripLetter = 11
	stripSide   = 4
	stripOver   = 3
	stripUnder  = 16
	stripPoint  = 4.5
)

// StripHeight is that of a strip's picture, CSS pixels.
const StripHeight = 92

// ValueAt is what a place in a strip stands for: x of its breadth, both CSS pixels.
func (s Strip) ValueAt(x, width float64) float64 {
	share := (x - stripSide) / (width - 2*stripSide)
	return s.Left + max(0, min(1, share))*(s.Right-s.Left)
}

// Draw draws the strip so many CSS pixels wide.
func (s Strip) Draw(width float64) draw.List {
	l := draw.List{Width: width, Height: StripHeight, Title: s.Title, Description: s.Description}
	area := draw.Box{Left: stripSide, Top: stripOver, Right: width - stripSide, Bottom: StripHeight - stripUnder}
	p := stripPen{s, &l, area}
	p.bands()
	p.ground()
	p.curve()
	p.marks()
	p.letters()
	return l
}

type stripPen struct {
	Strip
	list *draw.List
	area draw.Box
}

func (p *stripPen) x(v float64) float64 {
	if p.Right == p.Left {
		return (p.area.Left + p.area.Right) / 2
	}
	return p.area.Left + (v-p.Left)/(p.Right-p.Left)*p.area.Width()
}

func (p *stripPen) at(q geom.Vec2) draw.Point {
	return draw.Point{X: p.x(q.X), Y: p.area.Bottom - (q.Y-p.Low)/(p.High-p.Low)*p.area.Height()}
}

func (p *stripPen) line(r draw.Role, width float64, dash []float64, points ...draw.Point) {
	p.list.Add(draw.Stroke{Role: r, Points: points, Width: width, Dash: dash})
}

// ground is the frame, the zero line and the walls, hatched beyond.
func (p *stripPen) ground() {
	a := p.area
	p.line(draw.Faint, 0.6, nil, draw.Point{X: a.Left, Y: a.Bottom}, draw.Point{X: a.Right, Y: a.Bottom})
	if p.Zero && p.Low < 0 && p.High > 0 {
		zero := p.at(geom.Vec2{X: p.Left}).Y
		p.line(draw.Ink, 0.8, nil, draw.Point{X: a.Left, Y: zero}, draw.Point{X: a.Right, Y: zero})
	}
	for _, wall := range p.Walls {
		x := p.x(wall)
		p.line(draw.Ink, 2, nil, draw.Point{X: x, Y: a.Top}, draw.Point{X: x, Y: a.Bottom})
		const apart, long = 7, 4
		way := 1.0
		if wall > (p.Left+p.Right)/2 {
			way = -1
		}
		for y := a.Top; y < a.Bottom; y += apart {
			p.line(draw.Ink, 0.8, nil, draw.Point{X: x, Y: y + long}, draw.Point{X: x - way*long, Y: y})
		}
	}
}

// bands hatches the grounds, and draws a tick where one ends and the next begins.
func (p *stripPen) bands() {
	const sparse, closer, tick = 8, 5, 5
	a := p.area
	for i, b := range p.Bands {
		left, right := p.x(b.Left), p.x(b.Right)
		hatch := func(apart, angle float64) {
			p.list.Add(draw.Hatch{Role: draw.Faint, Spacing: apart, Width: 0.7, Angle: angle,
				Points: []draw.Point{
					{X: left, Y: a.Top}, {X: right, Y: a.Top}, {X: right, Y: a.Bottom}, {X: left, Y: a.Bottom}}})
		}
		switch b.Ground {
		case Sparse:
			hatch(sparse, math.Pi/4)
		case Close:
			hatch(closer, math.Pi/4)
			hatch(closer, -math.Pi/4)
		}
		if i > 0 && p.Bands[i-1].Right == b.Left {
			p.line(draw.Ink, 0.9, []float64{2, 2}, draw.Point{X: left, Y: a.Top}, draw.Point{X: left, Y: a.Bottom})
			p.line(draw.Ink, 2, nil, draw.Point{X: left, Y: a.Bottom - tick}, draw.Point{X: left, Y: a.Bottom})
		}
	}
}

// curve is the line, or a dot for each whole number.
func (p *stripPen) curve() {
	var line []draw.Point
	flush := func() {
		if len(line) > 1 {
			p.line(draw.Ink, 1.8, nil, line...)
		}
		line = nil
	}
	for _, q := range p.Points {
		at := p.at(q.At)
		if p.Whole {
			p.list.Add(draw.Fill{Role: draw.Ink, Points: draw.Polygon(at, 1.8, 12, 0)})
			continue
		}
		if q.Gap {
			flush()
		}
		line = append(line, at)
	}
	flush()
}

// marks are the present boat, filled, and the one held, open.
func (p *stripPen) marks() {
	disc := func(at geom.Vec2, fill, edge draw.Role, width float64) {
		round := draw.Polygon(p.at(at), stripPoint, 20, 0)
		p.list.Add(draw.Fill{Role: fill, Points: round},
			draw.Stroke{Role: edge, Points: round, Width: width, Closed: true})
	}
	if p.Held != nil {
		disc(*p.Held, draw.Paper, draw.Ink, 1.6)
	}
	disc(p.Here, draw.Mark, draw.Paper, 1.2)
}

// letters are the words of bands, and the range. They keep off the boats' points and one another,
// and those of the height off the curve. Those with no room are left out: the table has them.
func (p *stripPen) letters() {
	taken := []draw.Box{roomOf(p.at(p.Here))}
	if p.Held != nil {
		taken = append(taken, roomOf(p.at(*p.Held)))
	}
	say := func(x, y float64, anchor draw.Anchor, text string, off ...draw.Point) bool {
		t := draw.Text{Role: draw.Ink, Halo: draw.Paper, Text: text, At: draw.Point{X: x, Y: y}, Anchor: anchor,
			Size: stripLetter}
		box := t.Bounds()
		if text == "" || box.Left < 0 || box.Right > p.list.Width {
			return false
		}
		for _, o := range taken {
			if box.Meets(o) {
				return false
			}
		}
		for _, q := range off {
			if q.X >= box.Left && q.X <= box.Right && q.Y >= box.Top && q.Y <= box.Bottom {
				return false
			}
		}
		taken = append(taken, box)
		p.list.Add(t)
		return true
	}
	foot := StripHeight - stripUnder/2.
	say(p.area.Left, foot, draw.Start, p.LeftText)
	say(p.area.Right, foot, draw.End, p.RightText)
	const line = 1.2 * stripLetter
	var curve []draw.Point
	for _, q := range p.Points {
		curve = append(curve, p.at(q.At))
	}
	for _, b := range p.Bands {
		p.word(b, line, curve, say)
	}
	height := func(y float64, text string) {
		if !say(p.area.Left, y, draw.Start, text, curve...) {
			say(p.area.Right, y, draw.End, text, curve...)
		}
	}
	height(p.area.Top+line/2, p.HighText)
	height(p.area.Bottom-line/2, p.LowText)
}

// word says a band's word inside it, at its right edge, where that has room for it; off the curve if
// that can be.
func (p *stripPen) word(b StripBand, line float64, curve []draw.Point,
	say func(x, y float64, anchor draw.Anchor, text string, off ...draw.Point) bool) {
	const edge = 3
	left, right := p.x(b.Left), p.x(b.Right)
	t := draw.Text{Text: b.Word, At: draw.Point{X: right - edge}, Anchor: draw.End, Size: stripLetter}
	if t.Bounds().Left < left {
		return
	}
	heights := []float64{p.area.Top + line/2, p.area.Bottom - line/2 - edge, p.area.Top + 1.5*line,
		p.area.Bottom - 1.5*line - edge}
	for _, off := range [][]draw.Point{curve, nil} {
		for _, y := range heights {
			if say(right-edge, y, draw.End, b.Word, off...) {
				return
			}
		}
	}
}

// roomOf is the room that a boat's point takes.
func roomOf(at draw.Point) draw.Box {
	const r = stripPoint + 1
	return draw.Box{Left: at.X - r, Top: at.Y - r, Right: at.X + r, Bottom: at.Y + r}
}
