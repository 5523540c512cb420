package mesh

import "barkwright/core/draw"

// pen is what a line is drawn with: the vertices across it, from one side to the other.
type pen struct {
	width  float64 // of the whole line, device pixels
	across [4]place
	count  int
}

// place is a vertex across a line.
type place struct {
	reach float64 // from the line's middle, device pixels
	paint
}

// newPen returns the pen of a line. It is feathered over a pixel on both sides. One thinner than a
// pixel is drawn a pixel wide and paler.
func newPen(c draw.Colour, width float64) pen {
	p, solid, clear := pen{width: width}, paintOf(c, min(width, 1)), paint{}
	if width <= 1 {
		p.lay(place{-1, clear}, place{0, solid}, place{1, clear})
		return p
	}
	in, out := width/2-0.5, width/2+0.5
	p.lay(place{-out, clear}, place{-in, solid}, place{in, solid}, place{out, clear})
	return p
}

// newRim returns the pen of a fill's rim: feathered over a pixel outward, and nothing inward, where
// the fill is. Outward is 1 or -1: the side of the outline, seen along it.
func newRim(c draw.Colour, outward float64) pen {
	p := pen{width: 1}
	p.lay(place{0, paintOf(c, 1)}, place{outward, paint{}})
	return p
}

func (p *pen) lay(across ...place) { p.count = copy(p.across[:], across) }

// paint is a colour of 0 to 1, premultiplied by its alpha.
type paint struct{ r, g, b, a float32 }

func paintOf(c draw.Colour, alpha float64) paint {
	a := float32(alpha)
	return paint{float32(c.R) / 255 * a, float32(c.G) / 255 * a, float32(c.B) / 255 * a, a}
}

func (c paint) vertex(p draw.Point) Vertex {
	return Vertex{X: float32(p.X), Y: float32(p.Y), R: c.r, G: c.g, B: c.b, A: c.a}
}
