package draw

import "math"

// Box is a rectangle of the picture.
type Box struct{ Left, Top, Right, Bottom float64 }

// Width of the box.
func (b Box) Width() float64 { return b.Right - b.Left }

// Height of the box.
func (b Box) Height() float64 { return b.Bottom - b.Top }

// Meets tells whether two boxes cover any place in common.
func (b Box) Meets(o Box) bool {
	return b.Left < o.Right && o.Left < b.Right && b.Top < o.Bottom && o.Top < b.Bottom
}

// Within tells whether a box lies wholly in another.
func (b Box) Within(o Box) bool {
	return b.Left >= o.Left && b.Right <= o.Right && b.Top >= o.Top && b.Bottom <= o.Bottom
}

// BoxOf is the least box round points.
func BoxOf(points []Point) Box {
	b := Box{math.Inf(1), math.Inf(1), math.Inf(-1), math.Inf(-1)}
	for _, q := range points {
		b = Box{min(b.Left, q.X), min(b.Top, q.Y), max(b.Right, q.X), max(b.Bottom, q.Y)}
	}
	return b
}

// Bounds is the room a line of lettering takes, by its letters' breadth in a broad face.
func (t Text) Bounds() Box {
	w, h := Lettered(t.Text, t.Size, t.Bold), LineHeight*t.Size
	before := w * [...]float64{0, 0.5, 1}[t.Anchor]
	if t.Angle != 0 {
		// Turned lettering runs straight up.
		low := t.At.Y + before
		return Box{t.At.X - h/2, low - w, t.At.X + h/2, low}
	}
	left := t.At.X - before
	return Box{left, t.At.Y - h/2, left + w, t.At.Y + h/2}
}
