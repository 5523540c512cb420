package mesh

import "barkwright/core/draw"

// pen is what a line is drawn with: from one side to the other as far as its paint reaches.
type pen struct {
	width    float64 // of the whole line, device pixels
	from, to float64 // from the line's middle, device pixels
	paint
}

// newPen returns the pen of a line. It is feathered over a pixel on both sides. One thinner than a
// pixel is drawn a pixel wide and paler.
func newPen(c draw.Colour, width float64) pen {
	reach := (max(width, 1) + 1) / 2
	return pen{width, -reach, reach, paintOf(c, min(width, 1))}
}

// newRim returns the pen of a fill's rim: feathered over a pixel outward, and nothing inward, where
// the fill is. Outward is 1 or -1: the side of the outline, seen along it.
func newRim(c draw.Colour, outward float64) pen {
	return pen{1, 0, outward, paintOf(c, 1)}
}

// paint is a colour of 0 to 1, premultiplied by its alpha.
type paint struct{ r, g, b, a float32 }

func paintOf(c draw.Colour, alpha float64) paint {
	a := float32(alpha)
	return paint{float32(c.R) / 255 * a, float32(c.G) / 255 * a, float32(c.B) / 255 * a, a}
}

func (c paint) vertex(p draw.Point, across, reach float64) Vertex {
	return Vertex{X: float32(p.X), Y: float32(p.Y), Across: float32(across), Reach: float32(reach), R: c.r, G: c.g, B: c.b, A: c.a}
}
