package draw

// Clip returns what of an operation lies in a box: pieces of lines, polygons cut to it, and
// lettering only where it stands in it whole.
func Clip(op Op, b Box) []Op {
	switch op := op.(type) {
	case Fill:
		if op.Points = clipPolygon(op.Points, b); len(op.Points) > 2 {
			return []Op{op}
		}
	case Hatch:
		if op.Points = clipPolygon(op.Points, b); len(op.Points) > 2 {
			return []Op{op}
		}
	case Stroke:
		return clipStroke(op, b)
	case Text:
		if op.Bounds().Within(b) {
			return []Op{op}
		}
	}
	return nil
}

// clipStroke leaves a line whole where all of it lies in the box.
func clipStroke(s Stroke, b Box) []Op {
	if BoxOf(s.Points).Within(b) {
		return []Op{s}
	}
	points := s.Points
	if s.Closed && len(points) > 0 {
		points = append(append([]Point{}, points...), points[0])
		s.Closed = false
	}
	var out []Op
	var line []Point
	end := func() {
		if len(line) > 1 {
			piece := s
			piece.Points = line
			out = append(out, piece)
		}
		line = nil
	}
	for i := 1; i < len(points); i++ {
		p, q, ok := clipSegment(points[i-1], points[i], b)
		if !ok {
			end()
			continue
		}
		if len(line) == 0 || line[len(line)-1] != p {
			end()
			line = []Point{p}
		}
		line = append(line, q)
	}
	end()
	return out
}

func clipSegment(p, q Point, b Box) (from, to Point, ok bool) {
	first, last, ok := b.Crossed(p, q)
	from, to = p, q
	if first > 0 {
		from = p.Toward(q, first)
	}
	if last < 1 {
		to = p.Toward(q, last)
	}
	return from, to, ok
}

// Toward is the place a share of the way to another.
func (p Point) Toward(q Point, share float64) Point {
	return Point{p.X + share*(q.X-p.X), p.Y + share*(q.Y-p.Y)}
}

// Crossed returns from which share of a straight line to which it lies in the box, and false
// where it does not meet it. It is Liang and Barsky's: a line is cut by where it enters and leaves
// each pair of sides (ACM Transactions on Graphics 3, 1984; from memory).
func (b Box) Crossed(p, q Point) (first, last float64, ok bool) {
	first, last = 0, 1
	dx, dy := q.X-p.X, q.Y-p.Y
	for _, side := range [4][2]float64{{-dx, p.X - b.Left}, {dx, b.Right - p.X}, {-dy, p.Y - b.Top}, {dy, b.Bottom - p.Y}} {
		run, room := side[0], side[1]
		switch {
		case run == 0 && room < 0:
			return 0, 0, false
		case run < 0:
			first = max(first, room/run)
		case run > 0:
			last = min(last, room/run)
		}
	}
	return first, last, first <= last
}

// clipPolygon is Sutherland and Hodgman's: a polygon is cut by one side after another (Communications
// of the ACM 17, 1974; from memory). Parts of a hollow polygon stay joined along a side.
func clipPolygon(points []Point, b Box) []Point {
	for _, inside := range [4]func(Point) float64{
		func(p Point) float64 { return p.X - b.Left }, func(p Point) float64 { return b.Right - p.X },
		func(p Point) float64 { return p.Y - b.Top }, func(p Point) float64 { return b.Bottom - p.Y },
	} {
		var out []Point
		for i, p := range points {
			q := points[(i+1)%len(points)]
			u, v := inside(p), inside(q)
			if u >= 0 {
				out = append(out, p)
			}
			if u >= 0 != (v >= 0) {
				out = append(out, p.Toward(q, u/(u-v)))
			}
		}
		points = out
	}
	return points
}
