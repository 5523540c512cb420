package pattern

import (
	"io"
	"math"
	"strings"

	"barkwright/core/draw"
)

// page is one sheet being drawn, in millimetres.
type page struct{ draw.List }

func newPage(b Block, title, description string) *page {
	return &page{draw.List{Width: b.Width, Height: b.Height, Title: title, Description: description}}
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

// wrap breaks text at spaces into lines of at most so many letters; a longer word
// is broken.
func wrap(text string, letters float64) []string {
	most := max(1, int(letters))
	var lines []string
	line := []rune{}
	for _, word := range strings.Fields(text) {
		w := []rune(word)
		if len(line) > 0 && len(line)+1+len(w) > most {
			lines = append(lines, string(line))
			line = nil
		}
		if len(line) > 0 {
			line = append(line, ' ')
		}
		for len(w) > most {
			lines = append(lines, string(w[:most]))
			w = w[most:]
		}
		line = append(line, w...)
	}
	if len(line) > 0 {
		lines = append(lines, string(line))
	}
	return lines
}
