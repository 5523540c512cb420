package draw

import (
	"io"
	"math"
	"strings"

	"barkwright/core/units"
)

// SVG says how a list becomes SVG text.
type SVG struct {
	Palette Palette
	// MillimetresPerUnit sizes the picture on paper: 1 for a full-size pattern
	// whose list is in millimetres. Zero leaves the size to the page.
	MillimetresPerUnit float64
	// ID makes the title's and description's ids its own on a page of several pictures.
	ID string
	// Hasty has smooth edges only on lines up to a unit wide, for a picture that stands only
	// until the program draws it: the others take a browser without a GPU a third of a second.
	Hasty bool
}

// thin are the lines up to a unit wide.
const thin = `[fill=none][stroke-width^="0."],[fill=none][stroke-width="1"]`

// Write draws the list as one SVG element with its text alternative. It returns
// the writer's first error.
func (s SVG) Write(w io.Writer, l List) error {
	e := &errWriter{w: w}
	e.printf(`<svg xmlns="http://www.w3.org/2000/svg" role="img" aria-labelledby="%s-title %s-desc"`,
		Escape(s.ID), Escape(s.ID))
	if k := s.MillimetresPerUnit; k > 0 {
		e.printf(` width="%smm" height="%smm"`, units.Trimmed(l.Width*k, 3), units.Trimmed(l.Height*k, 3))
	}
	e.printf(` viewBox="0 0 %s %s"`, s.number(l.Width), s.number(l.Height))
	e.printf(` font-family="%s" stroke-linejoin="round">`, FontFamily)
	e.printf("<title id=\"%s-title\">%s</title><desc id=\"%s-desc\">%s</desc>\n",
		Escape(s.ID), Escape(l.Title), Escape(s.ID), Escape(l.Words()))
	if s.Hasty {
		e.printf("<style>[aria-labelledby^=\"%s-title\"] path:not(%s){shape-rendering:crispEdges}</style>\n", Escape(s.ID), thin)
	}
	for _, p := range s.paths(l.Ops) {
		e.printf("<path d=\"%s\"%s/>\n", strings.Join(p.d, ""), p.look)
	}
	for _, op := range l.Ops {
		if text, ok := op.(Text); ok {
			s.text(e, text)
		}
	}
	e.printf("</svg>\n")
	return e.err
}

// FontFamily is the lettering of pictures, the same in SVG and on the canvas.
const FontFamily = "system-ui, sans-serif"

func (s SVG) text(e *errWriter, t Text) {
	e.printf(`<text x="%s" y="%s" dy="0.35em" font-size="%s" text-anchor="%s" fill="%s"`,
		s.number(t.At.X), s.number(t.At.Y), s.number(t.Size), t.Anchor, s.Palette.Of(t.Role).Hex())
	if t.Bold {
		e.printf(` font-weight="700"`)
	}
	if t.Halo != "" {
		e.printf(` stroke="%s" stroke-width="%s" paint-order="stroke"`,
			s.Palette.Of(t.Halo).Hex(), s.number(t.Size*HaloRatio))
	}
	if t.Angle != 0 {
		e.printf(` transform="rotate(%s %s %s)"`, s.number(t.Angle*180/math.Pi), s.number(t.At.X), s.number(t.At.Y))
	}
	e.printf(">%s</text>\n", Escape(t.Text))
}

// HaloRatio is the breadth of a halo's stroke to the size of the letters, by eye.
const HaloRatio = 0.3

// number writes a place or a length: a hundredth of a pixel is finer than any screen, and a
// thousandth of a millimetre than any tool.
func (s SVG) number(v float64) string {
	if s.MillimetresPerUnit > 0 {
		return units.Trimmed(v, 3)
	}
	return units.Trimmed(v, 2)
}

var escaper = strings.NewReplacer("&", "&amp;", "<", "&lt;", ">", "&gt;", `"`, "&#34;", "'", "&#39;")

// Escape makes text safe between tags and inside quoted attributes, of HTML and SVG alike.
func Escape(s string) string { return escaper.Replace(s) }
