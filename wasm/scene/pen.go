package scene

import (
	"math"

	"barkwright/core/draw"
)

// Pen draws one view. It knows the size of the letters and scales line widths with it.
// It leaves out what lies outside the picture, and places labels where they can be read.
type Pen struct {
	List   draw.List
	View   View
	Letter float64
	// Weight multiplies line widths. It is 1 at the page's plain lettering, and more on a
	// projector.
	Weight float64
	Marks  []draw.Op
	notes  []Note
	taken  []draw.Box // where no label may stand
	said   []draw.Box // where labels stand
	lines  *raster
	// numbered is how many numbers of the key stand in the picture.
	numbered int
}

// The line widths in CSS pixels at plain lettering, chosen by eye. The skin's outline is
// the heaviest, then seams and timber in front, other timber, and what lies on timber.
const (
	OutlineWidth = 1.9
	StrongWidth  = 1.3
	TimberWidth  = 1.0
	// DimensionWidth is that of dimension lines, heavier than the fine lines of a surface.
	DimensionWidth = 0.8
	FineWidth      = 0.7
	HairWidth      = 0.5
)

// plainLetter is the lettering that line widths are set for, CSS pixels.
const plainLetter = 16

// Thin returns the width of the line round a piece of a thickness in metres. It is at
// most a quarter of the piece, so that slender timber still shows in a small drawing.
func (p *Pen) Thin(a Plate, thickness, width float64) float64 {
	return min(width, max(0.3, thickness*a.Scale/4)/p.Weight)
}

// Outline returns the width of the skin's outline. It is lighter in a small drawing, and
// full from about 5 pixels to the inch.
func (p *Pen) Outline(a Plate) float64 {
	return min(OutlineWidth, 0.8+a.Scale/180)
}

// NewPen returns a pen for an empty picture of a size.
func NewPen(v View, size draw.Size) *Pen {
	return &Pen{
		List: draw.List{Width: size.Width, Height: size.Height, Ops: make([]draw.Op, 0, 640),
			Parts: make([]draw.Part, 0, 192)},
		notes: make([]Note, 0, 48), View: v, Letter: Lettering(size),
		Weight: max(1, size.Letter/plainLetter),
	}
}

// Seen reports whether any of the points may lie in the picture.
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

// Fill fills a polygon.
func (p *Pen) Fill(r draw.Role, points []draw.Point) {
	if p.Seen(points) {
		p.List.Add(draw.Fill{Role: r, Points: points})
	}
}

// Line draws an open line. Its width is at plain lettering, as in all methods of a pen.
func (p *Pen) Line(r draw.Role, width float64, points ...draw.Point) {
	if p.Seen(points) {
		p.List.Add(draw.Stroke{Role: r, Points: points, Width: width * p.Weight})
	}
}

// Ring draws a closed line.
func (p *Pen) Ring(r draw.Role, width float64, points []draw.Point) {
	if p.Seen(points) {
		p.List.Add(draw.Stroke{Role: r, Points: points, Width: width * p.Weight, Closed: true})
	}
}

// Dashed draws an open line in dashes: lengths drawn and left out in turn, CSS pixels.
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

// Hatch hatches a polygon with lines at an angle in radians.
func (p *Pen) Hatch(r draw.Role, spacing, width, angle float64, points []draw.Point) {
	if p.Seen(points) {
		p.List.Add(draw.Hatch{Role: r, Points: points, Spacing: spacing * p.Weight, Width: width * p.Weight, Angle: angle})
	}
}

// The dash patterns. ShortDash is for seams and what lies underneath, LongDash for the boat
// as it was, HeldDash for the boat that this one is held against, SheetDash for the edges of
// sheets and strips, CentreDash for centre lines.
var (
	ShortDash  = []float64{4, 3}
	LongDash   = []float64{9, 4}
	HeldDash   = []float64{6, 2}
	SheetDash  = []float64{7, 2, 2, 2}
	CentreDash = []float64{14, 3, 2, 3}
)

// heldWidth is the width of the held boat's lines.
const heldWidth = 1.2

// HeldLine draws a line of the boat that this one is held against.
func (p *Pen) HeldLine(points ...draw.Point) { p.Dashed(draw.Ink, heldWidth, HeldDash, points...) }

// Part makes a piece touchable under a name. The piece that is touched gets a heavy rim,
// and a hatch where it is closed, both drawn over everything else.
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

// Surface makes a piece that others lie on touchable under a name. Touched, it has a rim.
func (p *Pen) Surface(name string, points []draw.Point) {
	p.surface(draw.Part{Name: name, Points: points, Closed: true, Under: true})
}

// Cover is Surface of a piece that hides what was made touchable before.
func (p *Pen) Cover(name string, points []draw.Point) {
	p.surface(draw.Part{Name: name, Points: points, Closed: true, Under: true, Hides: true})
}

func (p *Pen) surface(part draw.Part) {
	if !p.Seen(part.Points) {
		return
	}
	p.List.Parts = append(p.List.Parts, part)
	if part.Name == p.View.Touched {
		p.Marks = append(p.Marks, draw.Stroke{Role: draw.Mark, Points: part.Points, Width: 3 * p.Weight, Closed: true})
	}
}

// Lettering returns the size of the picture's letters in CSS pixels. 11 is the smallest
// that can be read on a phone.
func Lettering(size draw.Size) float64 { return max(11, 0.74*size.Letter) }
