// Package mesh turns a display list into triangles: feathered strokes and
// ear-clipped fills in one batch, ready for a single draw call. It imports no
// graphics library, so that it is tested without a screen.
package mesh

import (
	"math"

	"barkwright/core/draw"
)

// Vertex is a corner of a triangle: a place in device pixels, how far it lies to one side of what is
// drawn and how far that reaches, device pixels too, and a colour of 0 to 1, premultiplied by its alpha.
// Each pixel takes Reach less the size of Across of the colour, none and all at the least and most.
type Vertex struct{ X, Y, Across, Reach, R, G, B, A float32 }

// Mesh is a batch of triangles, three indices each, in drawing order.
type Mesh struct {
	Vertices []Vertex
	Indices  []uint32

	clip clipper
	// points, path and piece are memory for the operation in hand: its points in device
	// pixels, those of them that a line goes by, and a dash of it.
	points, path, piece []draw.Point
}

// Build replaces the mesh by the list's on a paper of so many device pixels, keeping its memory. Scale
// is device pixels a CSS pixel. Labels are not triangles and are left out.
func (m *Mesh) Build(l draw.List, palette draw.Palette, width, height int, scale float64) {
	m.Vertices, m.Indices = m.Vertices[:0], m.Indices[:0]
	m.paper(float64(width), float64(height), paintOf(palette.Of(draw.Paper), 1))
	for _, op := range l.Ops {
		switch op := op.(type) {
		case draw.Fill:
			m.fill(m.scaled(op.Points, scale), palette.Of(op.Role))
		case draw.Stroke:
			m.stroke(op, palette.Of(op.Role), scale)
		case draw.Hatch:
			pen := newPen(palette.Of(op.Role), op.Width*scale)
			for _, line := range op.Lines() {
				m.line(m.scaled(line[:], scale), &pen, false)
			}
		}
	}
}

// scaled returns points in device pixels. They hold until it is called again.
func (m *Mesh) scaled(points []draw.Point, scale float64) []draw.Point {
	m.points = m.points[:0]
	for _, p := range points {
		m.points = append(m.points, draw.Point{X: p.X * scale, Y: p.Y * scale})
	}
	return m.points
}

func (m *Mesh) triangle(a, b, c uint32) { m.Indices = append(m.Indices, a, b, c) }

// paper lays the ground of a picture, if it has any.
func (m *Mesh) paper(width, height float64, c paint) {
	if width == 0 || height == 0 {
		return
	}
	for _, p := range [4]draw.Point{{}, {X: width}, {X: width, Y: height}, {Y: height}} {
		m.Vertices = append(m.Vertices, c.vertex(p, 0, 1))
	}
	m.triangle(0, 1, 2)
	m.triangle(0, 2, 3)
}

// fill covers a polygon and feathers its rim.
func (m *Mesh) fill(points []draw.Point, c draw.Colour) {
	first := uint32(len(m.Vertices))
	triangles, area := m.clip.triangulate(points)
	if len(triangles) == 0 {
		return
	}
	paint := paintOf(c, 1)
	for _, p := range points {
		m.Vertices = append(m.Vertices, paint.vertex(p, 0, 1))
	}
	for _, t := range triangles {
		m.triangle(first+t[0], first+t[1], first+t[2])
	}
	rim := newRim(c, -math.Copysign(1, area))
	m.line(points, &rim, true)
}
