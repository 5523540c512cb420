package mesh

import (
	"math"

	"barkwright/core/draw"
)

// mitreLimit is the longest mitre, in half-widths. Two keeps square corners
// sharp and lets a turn past 120 degrees be cut into two lines instead.
const mitreLimit = 2.0

func (m *Mesh) stroke(op draw.Stroke, c draw.Colour, scale float64) {
	points, pen := m.scaled(op.Points, scale), newPen(c, op.Width*scale)
	if len(op.Dash) == 0 {
		m.line(points, &pen, op.Closed)
		return
	}
	if op.Closed && len(points) > 0 {
		points = append(points, points[0])
	}
	m.dashes(points, op.Dash, scale, &pen)
}

// line draws an unbroken line, feathered on both sides.
func (m *Mesh) line(points []draw.Point, pen *pen, closed bool) {
	m.path = distinct(m.path[:0], points, closed)
	points = m.path
	n := len(points)
	if n < 2 || !(pen.width > 0) {
		return
	}
	if closed && n < 3 {
		closed = false
	}
	segments := n - 1
	if closed {
		segments = n
	}
	along := direction(points[0], points[1])
	before := along
	if closed {
		before = direction(points[n-1], points[0])
	}
	joined, firstRow := false, uint32(0)
	var previous uint32
	for i := range segments {
		a, b := points[i], points[(i+1)%n]
		if !joined {
			if side, ok := mitre(before, along); ok {
				previous = m.row(a, side, pen)
			} else {
				previous = m.row(from(a, along, -pen.width/2), normal(along), pen)
			}
			if i == 0 {
				firstRow = previous
			}
		}
		last := i == segments-1
		next := along
		if closed || !last {
			next = direction(b, points[(i+2)%n])
		}
		side, ok := mitre(along, next)
		var row uint32
		switch {
		case ok && last && closed:
			row = firstRow
		case ok:
			row = m.row(b, side, pen)
		default:
			row = m.row(from(b, along, pen.width/2), normal(along), pen)
		}
		m.band(previous, row)
		previous, joined = row, ok
		before, along = along, next
	}
}

// row adds the pen's two vertices across the line at p. Side is across the line, longer than one where
// the corner is mitred.
func (m *Mesh) row(p, side draw.Point, pen *pen) uint32 {
	first, reach := uint32(len(m.Vertices)), math.Abs(pen.to)
	m.Vertices = append(m.Vertices, pen.vertex(from(p, side, pen.from), pen.from, reach),
		pen.vertex(from(p, side, pen.to), pen.to, reach))
	return first
}

// band joins two rows.
func (m *Mesh) band(a, b uint32) {
	m.triangle(a, a+1, b)
	m.triangle(a+1, b+1, b)
}

func direction(a, b draw.Point) draw.Point {
	x, y := b.X-a.X, b.Y-a.Y
	d := math.Sqrt(x*x + y*y) // math.Hypot is a call into plain Go in a browser
	return draw.Point{X: x / d, Y: y / d}
}

func normal(u draw.Point) draw.Point { return draw.Point{X: -u.Y, Y: u.X} }

// from is the point d along a vector from p.
func from(p, along draw.Point, d float64) draw.Point {
	return draw.Point{X: p.X + along.X*d, Y: p.Y + along.Y*d}
}

// mitre returns the vector across a corner between two unit directions. Its length is
// that of the mitre in half-widths. It returns false where the turn is too sharp for
// one.
func mitre(u, v draw.Point) (draw.Point, bool) {
	a, b := normal(u), normal(v)
	sum := draw.Point{X: a.X + b.X, Y: a.Y + b.Y}
	square := sum.X*sum.X + sum.Y*sum.Y
	// |sum| = 2 cos(turn/2) and the mitre is 1/cos(turn/2).
	if square < 4/(mitreLimit*mitreLimit) {
		return draw.Point{}, false
	}
	return draw.Point{X: sum.X * 2 / square, Y: sum.Y * 2 / square}, true
}

// distinct appends to out the points without those within a hundredth of a pixel of the
// one before. They have no direction, and nothing of them would show.
func distinct(out, points []draw.Point, closed bool) []draw.Point {
	for _, p := range points {
		if len(out) == 0 || !same(p, out[len(out)-1]) {
			out = append(out, p)
		}
	}
	if n := len(out); closed && n > 1 && same(out[0], out[n-1]) {
		out = out[:n-1]
	}
	return out
}

func same(p, q draw.Point) bool {
	const within = 0.01
	x, y := p.X-q.X, p.Y-q.Y
	return x*x+y*y <= within*within
}

// dashes draws the pieces of a line that a dash pattern draws, with the pattern's lengths
// multiplied by scale. A pattern of length zero draws the whole line.
func (m *Mesh) dashes(points []draw.Point, pattern []float64, scale float64, pen *pen) {
	total := 0.0
	for _, d := range pattern {
		total += max(d, 0)
	}
	if !(total > 0) {
		m.line(points, pen, false)
		return
	}
	piece := m.piece[:0]
	k, left := 0, pattern[0]*scale
	for i := 0; i+1 < len(points); i++ {
		a, b := points[i], points[i+1]
		length, done := math.Hypot(b.X-a.X, b.Y-a.Y), 0.0
		at := func() draw.Point {
			return draw.Point{X: a.X + (b.X-a.X)*done/length, Y: a.Y + (b.Y-a.Y)*done/length}
		}
		for done < length {
			if k%2 == 0 && len(piece) == 0 {
				piece = append(piece, at())
			}
			step := min(left, length-done)
			done, left = done+step, left-step
			if k%2 == 0 {
				piece = append(piece, at())
			}
			if left <= 0 {
				m.line(piece, pen, false)
				piece = piece[:0]
				k++
				left = max(pattern[k%len(pattern)], 0) * scale
			}
		}
	}
	m.line(piece, pen, false)
	m.piece = piece
}
