package sheet

import (
	"math"
	"strings"

	"barkwright/core/draw"
	"barkwright/core/units"
)

// point is that of lettering, in the millimetres that sheets are drawn in.
const point = units.Inch / units.Millimetre / 72

// letters and lines of the sheets, mm.
const (
	plainLetter = 12 * point // read at the bench
	smallLetter = 10 * point
	leastLetter = 8 * point // no lettering is smaller; common practice, no published source
	leading     = 1.25      // a line's height over its letters
	hairLine    = 0.18
	ruleLine    = 0.5
	tickSize    = 4.2
)

// fit is how tightly a sheet is set.
type fit struct {
	letter float64 // of what is read at the bench, mm
	pad    float64 // over and under what stands in a row, mm
	figure float64 // a drawing's share of its full height
}

// fits are tried in turn, where that saves a page with next to nothing on it.
var fits = [...]fit{{plainLetter, 0.6, 1}, {plainLetter, 0.35, 0.86}, {11 * point, 0.3, 0.72}}

// strip is a piece of a sheet as broad as the sheet, which no page breaks.
type strip struct {
	high float64 // mm
	// space is the air over it, which it does not need at the head of a page.
	space float64
	// draw puts it on a page with its upper edge at top.
	draw func(s *paper, top float64)
	// words are what it says, unbroken.
	words string
	// tied keeps it on one page with the next strip.
	tied bool
	// floats lets it, with what is tied to it, stand at the head of the next page where the
	// one in hand has no room for it; what comes after it goes before it then.
	floats bool
	// head are the strips repeated over it where a page begins with it.
	head []strip
}

// flow is a sheet before it is parted into pages.
type flow struct {
	fit
	width  float64 // mm
	strips []strip
}

func (f *flow) add(s ...strip) { f.strips = append(f.strips, s...) }

// tie keeps what has been added since a place together, and with what comes next if open.
func (f *flow) tie(from int, open bool) {
	for i := from; i < len(f.strips); i++ {
		f.strips[i].tied = open || i < len(f.strips)-1
	}
}

// paper is one page being drawn, in millimetres.
type paper struct{ draw.List }

func newPaper(title string) *paper {
	return &paper{draw.List{Width: pageWidth, Height: pageHeight, Title: title}}
}

// at writes a line of lettering whose middle is at a height.
func (p *paper) at(x, y float64, text string, size float64, bold bool, anchor draw.Anchor) {
	p.Add(draw.Text{Role: draw.Ink, Text: text, At: draw.Point{X: x, Y: y}, Size: size, Bold: bold, Anchor: anchor})
}

// lines writes lines under one another, the first of them under top.
func (p *paper) lines(x, top float64, lines []string, size float64, bold bool, anchor draw.Anchor) {
	for i, l := range lines {
		p.at(x, top+(float64(i)+0.5)*leading*size, l, size, bold, anchor)
	}
}

// rule is a straight line; one at the page's edge lies inside it.
func (p *paper) rule(width float64, x1, y1, x2, y2 float64) {
	inside := func(x float64) float64 { return max(width/2, min(p.Width-width/2, x)) }
	x1, x2 = inside(x1), inside(x2)
	p.Add(draw.Stroke{Role: draw.Ink, Points: []draw.Point{{X: x1, Y: y1}, {X: x2, Y: y2}}, Width: width})
}

// box is an outline; its line lies inside it.
func (p *paper) box(x, y, width, height, line float64) {
	x, y, width, height = x+line/2, y+line/2, width-line, height-line
	p.Add(draw.Stroke{Role: draw.Ink, Width: line, Closed: true, Points: []draw.Point{
		{X: x, Y: y}, {X: x + width, Y: y}, {X: x + width, Y: y + height}, {X: x, Y: y + height}}})
}

// tick is a box to tick, ticked or not.
func (p *paper) tick(x, y float64, done bool) {
	p.box(x, y, tickSize, tickSize, 0.3)
	if done {
		p.Add(draw.Stroke{Role: draw.Ink, Width: 0.6, Points: []draw.Point{{X: x + 0.9, Y: y + 2.2}, {X: x + 1.8, Y: y + 3.2},
			{X: x + 3.4, Y: y + 0.9}}})
	}
}

// heading is a line over what follows it.
func (f *flow) heading(text string) {
	const size = 13 * point
	f.add(strip{high: leading * size, space: 3.5, words: text, tied: true, draw: func(s *paper, top float64) {
		s.lines(0, top, []string{text}, size, true, draw.Start)
	}})
}

// text is a paragraph.
func (f *flow) text(text string) { f.paragraph(text, f.letter, 1) }

// small is a paragraph of the smaller lettering, close under what it belongs to.
func (f *flow) small(text string) { f.paragraph(text, smallLetter, 0.6) }

// fewLines is how many lines of a paragraph no page parts.
const fewLines = 7

func (f *flow) paragraph(text string, size, space float64) {
	lines := draw.Wrapped(text, size, false, f.width)
	for i, l := range lines {
		st := strip{high: leading * size, draw: func(s *paper, top float64) {
			s.lines(0, top, []string{l}, size, false, draw.Start)
		}}
		if i == 0 {
			st.space, st.words = space, text
		}
		// A few lines stay together, and of more neither the first nor the last stands alone.
		st.tied = i < len(lines)-1 && (len(lines) <= fewLines || i == 0 || i == len(lines)-2)
		f.add(st)
	}
}

// millimetresPerPixel is the size of a CSS pixel, and figureSpace the air over a drawing, mm.
const (
	millimetresPerPixel = units.Inch / units.Millimetre / 96
	figureSpace         = 2.0
)

// figure is a drawing made in CSS pixels, with what it shows under it, both on one page.
func (f *flow) figure(g Figure) {
	caption := g.Caption
	if key := g.Drawing.KeyWords(); key != "" {
		caption = strings.TrimSuffix(caption, ".") + ". Key: " + key + "."
	}
	under := flow{fit: f.fit, width: f.width}
	under.small(caption)
	room := pageHeight - headHeight - length(under.strips)
	times := min(millimetresPerPixel, f.width/g.Drawing.Width, room/g.Drawing.Height)
	left := (f.width - times*g.Drawing.Width) / 2
	from := len(f.strips)
	f.add(strip{high: times * g.Drawing.Height, space: figureSpace, words: g.Drawing.Title, tied: true, floats: true,
		draw: func(s *paper, top float64) {
			s.Put(g.Drawing, draw.Point{X: left, Y: top}, times)
		}})
	f.strips = append(f.strips, under.strips...)
	f.tie(from, false)
}

// tally is what is needed and a box to tick for each, in tens; where they are many a box
// stands for several.
func (f *flow) tally(what, needed string, count int, s units.System) {
	const most = 100
	each := 1
	for _, n := range []int{2, 5, 10, 20, 50} {
		if count > most*each {
			each = n
		}
	}
	if each > 1 {
		needed += ", " + units.Count.Format(float64(each), s) + " to a box"
	}
	boxes := (count + each - 1) / each
	const pitch, ten = tickSize + 0.6, 10*(tickSize+0.6) + 2.2
	tens := max(1, int((f.width+2.2)/ten))
	from := len(f.strips)
	head := draw.Wrapped(what+": "+needed, f.letter, true, f.width)
	f.add(strip{high: leading*f.letter*float64(len(head)) + 0.8, space: 2.2, words: what + ": " + needed,
		draw: func(s *paper, top float64) { s.lines(0, top, head, f.letter, true, draw.Start) }})
	for first := 0; first < boxes; first += 10 * tens {
		n := min(10*tens, boxes-first)
		f.add(strip{high: tickSize + 1.2, draw: func(s *paper, top float64) {
			for i := range n {
				s.tick(math.Floor(float64(i)/10)*ten+float64(i%10)*pitch, top, false)
			}
		}})
	}
	f.tie(from, false)
}
