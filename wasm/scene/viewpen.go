package scene

import (
	"math"
	"sort"

	"barkwright/core/geom"
)

// pen draws one view: it knows the letters' size, weighs lines by it, leaves out
// what lies outside the picture and keeps labels off one another.
type pen struct {
	list   List
	view   View
	letter float64
	// weight is what line widths are multiplied by: 1 at the page's plain
	// lettering, more on a projector.
	weight float64
	marks  []Op
	notes  []note
	taken  []box
}

// The line widths, CSS pixels at plain lettering: the skin's outline is heaviest,
// then timber, then what lies on it. By eye.
const (
	outlineWidth = 1.9
	timberWidth  = 1.0
	fineWidth    = 0.7
	hairWidth    = 0.5
)

// plainLetter is the lettering that line widths are set for, CSS pixels.
const plainLetter = 16

// thin is a line's width round a piece so many metres thick: no more than a
// quarter of it, so that slender timber in a small drawing stays timber.
func (p *pen) thin(a plate, thickness, width float64) float64 {
	return min(width, max(0.3, thickness*a.Scale/4)/p.weight)
}

// outline is the width of the skin's outline, lighter in a small drawing: whole
// from about 5 pixels to the inch.
func (p *pen) outline(a plate) float64 {
	return min(outlineWidth, 0.8+a.Scale/180)
}

func newPen(v View, size Size) *pen {
	return &pen{
		list: List{Width: size.Width, Height: size.Height}, view: v, letter: lettering(size),
		weight: max(1, size.Letter/plainLetter),
	}
}

// seen tells whether any of the points may show.
func (p *pen) seen(points []Point) bool {
	left, top, right, bottom := true, true, true, true
	for _, q := range points {
		left = left && q.X < 0
		right = right && q.X > p.list.Width
		top = top && q.Y < 0
		bottom = bottom && q.Y > p.list.Height
	}
	return len(points) > 0 && !left && !right && !top && !bottom
}

func (p *pen) fill(r Role, points []Point) {
	if p.seen(points) {
		p.list.Add(Fill{Role: r, Points: points})
	}
}

func (p *pen) line(r Role, width float64, points ...Point) {
	if p.seen(points) {
		p.list.Add(Stroke{Role: r, Points: points, Width: width * p.weight})
	}
}

func (p *pen) ring(r Role, width float64, points []Point) {
	if p.seen(points) {
		p.list.Add(Stroke{Role: r, Points: points, Width: width * p.weight, Closed: true})
	}
}

func (p *pen) dashed(r Role, width float64, dash []float64, points ...Point) {
	if p.seen(points) {
		p.list.Add(Stroke{Role: r, Points: points, Width: width * p.weight, Dash: dash})
	}
}

// area fills a piece and draws its outline.
func (p *pen) area(fill, line Role, width float64, points []Point) {
	p.fill(fill, points)
	p.ring(line, width, points)
}

// The dashes: short for seams and what lies underneath, long for the boat
// compared with, dash and dot for centre lines.
var (
	shortDash  = []float64{4, 3}
	longDash   = []float64{9, 4}
	centreDash = []float64{14, 3, 2, 3}
)

// part names a piece so that it can be touched; the touched one gets a heavy rim
// and a hatch over everything else.
func (p *pen) part(name string, closed bool, points []Point) {
	if !p.seen(points) {
		return
	}
	p.list.Touch(name, closed, points...)
	if name != p.view.Touched {
		return
	}
	if closed {
		p.marks = append(p.marks, Hatch{Role: Mark, Points: points, Spacing: 4 * p.weight, Width: p.weight, Angle: math.Pi / 4})
	}
	p.marks = append(p.marks, Stroke{Role: Mark, Points: points, Width: 3 * p.weight, Closed: closed})
}

// note is a label that is shown if there is room. Lower ranks go first.
type note struct {
	rank int
	text Text
	// at are the places it may stand, the best first.
	at []spot
	// with is drawn if the label is.
	with []Op
}

type spot struct {
	At     Point
	Anchor Anchor
}

// The ranks of labels, the first to be placed first.
const (
	rankMain = iota
	rankTitle
	rankHeight
	rankPart
	rankExtra
)

// say asks for a label at the first of the places that is free.
func (p *pen) say(rank int, text string, r Role, halo Role, at ...spot) *note {
	p.notes = append(p.notes, note{rank: rank, text: Text{Role: r, Text: text, Size: p.letter, Halo: halo}, at: at})
	return &p.notes[len(p.notes)-1]
}

// glyphWidth is the breadth of a letter of a plain sans-serif face as a share of
// its size, on the broad side, and boldWidth that of a bold one.
const (
	glyphWidth = 0.56
	boldWidth  = 0.60
)

// bounds is the room a label takes, by an estimate of its letters' breadth.
func (t Text) bounds() box {
	width := glyphWidth
	if t.Bold {
		width = boldWidth
	}
	w, h := width*t.Size*float64(len([]rune(t.Text))), 1.15*t.Size
	before := w * [...]float64{0, 0.5, 1}[t.Anchor]
	if t.Angle != 0 {
		// Turned labels of a view run straight up.
		low := t.At.Y + before
		return box{t.At.X - h/2, low - w, t.At.X + h/2, low}
	}
	left := t.At.X - before
	return box{left, t.At.Y - h/2, left + w, t.At.Y + h/2}
}

func (b box) meets(o box) bool {
	return b.Left < o.Right && o.Left < b.Right && b.Top < o.Bottom && o.Top < b.Bottom
}

// keepOff keeps labels out of a box.
func (p *pen) keepOff(b box) { p.taken = append(p.taken, b) }

func (p *pen) free(b box) bool {
	const edge = 2 // px of paper round the whole picture
	if b.Left < edge || b.Top < edge || b.Right > p.list.Width-edge || b.Bottom > p.list.Height-edge {
		return false
	}
	for _, o := range p.taken {
		if b.meets(o) {
			return false
		}
	}
	return true
}

// done places the labels, most important first, and gives the picture back.
func (p *pen) done() List {
	p.list.Add(p.marks...)
	sort.SliceStable(p.notes, func(i, j int) bool { return p.notes[i].rank < p.notes[j].rank })
	for _, n := range p.notes {
		for _, s := range n.at {
			n.text.At, n.text.Anchor = s.At, s.Anchor
			b := n.text.bounds()
			if !p.free(b) {
				continue
			}
			// A little air between one label and the next.
			p.taken = append(p.taken, box{b.Left - 4, b.Top - 1, b.Right + 4, b.Bottom + 1})
			p.list.Add(n.with...)
			p.list.Add(n.text)
			break
		}
	}
	return p.list
}

// place puts points of a plate's axes in the picture.
func (a plate) place(points []geom.Vec2) []Point {
	out := make([]Point, len(points))
	for i, q := range points {
		out[i] = a.at(q.X, q.Y)
	}
	return out
}
