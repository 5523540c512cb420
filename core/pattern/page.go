package pattern

import (
	"io"
	"math"

	"barkwright/core/draw"
	"barkwright/core/geom"
)

// page is one sheet being drawn, in millimetres.
type page struct{ draw.List }

func newPage(b Block, title, description string) *page {
	width, height := b.Page()
	return &page{draw.List{Width: width, Height: height, Title: title, Description: description}}
}

// write writes a page in true millimetres, black on white: one unit of its viewBox is one.
// The id is its own where several stand on one page of HTML.
func (s *page) write(w io.Writer, id string) error {
	return draw.SVG{Palette: draw.Print(), MillimetresPerUnit: 1, ID: id}.Write(w, s.List)
}

func (s *page) line(l Line) {
	points := make([]draw.Point, len(l.Points))
	for i, q := range l.Points {
		points[i] = draw.Point(q)
	}
	s.Add(draw.Stroke{Role: draw.Ink, Points: points, Width: l.Style.width(), Dash: l.Style.dash()})
}

func (s *page) rect(x, y, width, height float64) {
	right, low := x+width, y+height
	s.Add(draw.Fill{Role: draw.Ink,
		Points: []draw.Point{{X: x, Y: y}, {X: right, Y: y}, {X: right, Y: low}, {X: x, Y: low}}})
}

func (s *page) label(l Label) { s.text(l, false) }
func (s *page) bold(l Label)  { s.text(l, true) }

// baseline is how far under the middle of a line of lettering it stands, as a share of the
// letters' size: draw centres lettering in height, and labels stand on their points.
const baseline = 0.35

func (s *page) text(l Label, bold bool) {
	t := draw.Text{Role: draw.Ink, Text: l.Text, At: draw.Point(l.At), Size: l.size(), Bold: bold}
	if l.End {
		t.Anchor = draw.End
	}
	if l.Turned {
		t.Angle = -math.Pi / 2
		t.At.X -= baseline * t.Size
	} else {
		t.At.Y -= baseline * t.Size
	}
	s.Add(t)
}

// line is the height of a line of a paragraph, mm.
const line = 1.3 * twelvePoints

// say writes the lines of a paragraph under a place, and returns where the next one may
// begin.
func (s *page) say(at geom.Vec2, lines []string) geom.Vec2 {
	for _, l := range lines {
		s.label(Label{At: at.Add(geom.Vec2{Y: 0.8 * line}), Text: l})
		at.Y += line
	}
	return at
}
