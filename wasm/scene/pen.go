package scene

import (
	"math"
	"sort"

	"barkwright/core/draw"
)

// Pen draws one view: it knows the letters' size, weighs lines by it, leaves out
// what lies outside the picture and keeps labels off one another.
type Pen struct {
	List   draw.List
	View   View
	Letter float64
	// Weight is what line widths are multiplied by: 1 at the page's plain
	// lettering, more on a projector.
	Weight float64
	Marks  []draw.Op
	notes  []Note
	taken  []draw.Box
}

// The line widths, CSS pixels at plain lettering: the skin's outline is heaviest,
// then timber, then what lies on it. By eye.
const (
	OutlineWidth = 1.9
	TimberWidth  = 1.0
	FineWidth    = 0.7
	HairWidth    = 0.5
)

// plainLetter is the lettering that line widths are set for, CSS pixels.
const plainLetter = 16

// Thin is a line's width round a piece so many metres thick: no more than a
// quarter of it, so that slender timber in a small drawing stays timber.
func (p *Pen) Thin(a Plate, thickness, width float64) float64 {
	return min(width, max(0.3, thickness*a.Scale/4)/p.Weight)
}

// Outline is the width of the skin's outline, lighter in a small drawing: whole
// from about 5 pixels to the inch.
func (p *Pen) Outline(a Plate) float64 {
	return min(OutlineWidth, 0.8+a.Scale/180)
}

func NewPen(v View, size draw.Size) *Pen {
	return &Pen{
		List: draw.List{Width: size.Width, Height: size.Height}, View: v, Letter: Lettering(size),
		Weight: max(1, size.Letter/plainLetter),
	}
}

// Seen tells whether any of the points may show.
func (p *Pen) Seen(points []draw.Point) bool {
	left, top, right, bottom := true, true, true, true
	for _, q := range points {
		left = left && q.X < 0
		right = right && q.X > p.List.Width
		top = top && q.Y < 0
		bottom = bottom && q.Y > p.List.Height
	}
	return len(points) > 0 && !left && !right && !top && !bottom
}

func (p *Pen) Fill(r draw.Role, points []draw.Point) {
	if p.Seen(points) {
		p.List.Add(draw.Fill{Role: r, Points: points})
	}
}

func (p *Pen) Line(r draw.Role, width float64, points ...draw.Point) {
	if p.Seen(points) {
		p.List.Add(draw.Stroke{Role: r, Points: points, Width: width * p.Weight})
	}
}

func (p *Pen) Ring(r draw.Role, width float64, points []draw.Point) {
	if p.Seen(points) {
		p.List.Add(draw.Stroke{Role: r, Points: points, Width: width * p.Weight, Closed: true})
	}
}

func (p *Pen) Dashed(r draw.Role, width float64, dash []float64, points ...draw.Point) {
	if p.Seen(points) {
		p.List.Add(draw.Stroke{Role: r, Points: points, Width: width * p.Weight, Dash: dash})
	}
}

// Area fills a piece and draws its outline.
func (p *Pen) Area(fill, line draw.Role, width float64, points []draw.Point) {
	p.Fill(fill, points)
	p.Ring(line, width, points)
}

// Hatch hatches an area with lines at an angle, radians. spacing and width are at plain
// lettering.
func (p *Pen) Hatch(r draw.Role, spacing, width, angle float64, points []draw.Point) {
	if p.Seen(points) {
		p.List.Add(draw.Hatch{Role: r, Points: points, Spacing: spacing * p.Weight, Width: width * p.Weight, Angle: angle})
	}
}

// The dashes: short for seams and what lies underneath, long for the boat
// compared with, dash and dot for centre lines.
var (
	ShortDash  = []float64{4, 3}
	LongDash   = []float64{9, 4}
	CentreDash = []float64{14, 3, 2, 3}
)

// Part names a piece so that it can be touched; the touched one gets a heavy rim
// and a hatch over everything else.
func (p *Pen) Part(name string, closed bool, points []draw.Point) {
	if !p.Seen(points) {
		return
	}
	p.List.Touch(name, closed, points...)
	if name != p.View.Touched {
		return
	}
	if closed {
		p.Marks = append(p.Marks, draw.Hatch{Role: draw.Mark, Points: points,
			Spacing: 4 * p.Weight, Width: p.Weight, Angle: math.Pi / 4})
	}
	p.Marks = append(p.Marks, draw.Stroke{Role: draw.Mark, Points: points, Width: 3 * p.Weight, Closed: closed})
}

// Note is a label that is shown if there is room. Lower ranks go first.
type Note struct {
	rank int
	Text draw.Text
	// At are the places it may stand, the best first.
	At []Spot
	// With is drawn if the label is.
	With []draw.Op
}

// Spot is a place for a label, and which end of it stands there.
type Spot struct {
	At     draw.Point
	Anchor draw.Anchor
}

// SpotAt is a spot at x and y of the picture.
func SpotAt(x, y float64, a draw.Anchor) Spot { return Spot{At: draw.Point{X: x, Y: y}, Anchor: a} }

// The ranks of labels, the first to be placed first.
const (
	RankMain = iota
	RankTitle
	RankHeight
	RankPart
	RankExtra
)

// Say asks for a label at the first of the places that is free.
func (p *Pen) Say(rank int, text string, r draw.Role, halo draw.Role, at ...Spot) *Note {
	p.notes = append(p.notes, Note{rank: rank, Text: draw.Text{Role: r, Text: text, Size: p.Letter, Halo: halo}, At: at})
	return &p.notes[len(p.notes)-1]
}

// KeepOff keeps labels out of a box.
func (p *Pen) KeepOff(b draw.Box) { p.taken = append(p.taken, b) }

func (p *Pen) free(b draw.Box) bool {
	const edge = 2 // px of paper round the whole picture
	if b.Left < edge || b.Top < edge || b.Right > p.List.Width-edge || b.Bottom > p.List.Height-edge {
		return false
	}
	for _, o := range p.taken {
		if b.Meets(o) {
			return false
		}
	}
	return true
}

// Done places the labels, most important first, and gives the picture back.
func (p *Pen) Done() draw.List {
	p.List.Add(p.Marks...)
	sort.SliceStable(p.notes, func(i, j int) bool { return p.notes[i].rank < p.notes[j].rank })
	for _, n := range p.notes {
		for _, s := range n.At {
			n.Text.At, n.Text.Anchor = s.At, s.Anchor
			b := n.Text.Bounds()
			if !p.free(b) {
				continue
			}
			// A little air between one label and the next.
			p.taken = append(p.taken, draw.Box{Left: b.Left - 4, Top: b.Top - 1, Right: b.Right + 4, Bottom: b.Bottom + 1})
			p.List.Add(n.With...)
			p.List.Add(n.Text)
			break
		}
	}
	return p.List
}

// Lettering is the size of the picture's letters, CSS pixels; 11 is the least
// that is read on a phone.
func Lettering(size draw.Size) float64 { return max(11, 0.74*size.Letter) }
