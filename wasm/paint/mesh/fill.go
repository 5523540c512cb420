package mesh

import "barkwright/core/draw"

// clipper cuts polygons into triangles by removing ears, and reuses its memory from one
// polygon to the next. Only reflex corners are tested against an ear, so a boat's
// outline, nearly all of it convex, takes little more time than its number of points.
type clipper struct {
	ring   []uint32
	hollow []bool
	out    [][3]uint32
}

// triangulate cuts a simple polygon, wound either way, and returns its triangles and its area,
// negative where it is wound counterclockwise as seen. Repeated points and points in a
// straight line are skipped. A polygon that crosses itself is cut as far as possible,
// and never hangs. One without area gives no triangles.
func (c *clipper) triangulate(p []draw.Point) (triangles [][3]uint32, area float64) {
	c.out, c.ring, c.hollow = c.out[:0], c.ring[:0], c.hollow[:0]
	for i, a := range p {
		b := p[(i+1)%len(p)]
		area += (a.X*b.Y - b.X*a.Y) / 2
		if a != b {
			c.ring = append(c.ring, uint32(i))
		}
	}
	if len(c.ring) < 3 || area == 0 {
		return nil, area
	}
	if area < 0 {
		for i, j := 0, len(c.ring)-1; i < j; i, j = i+1, j-1 {
			c.ring[i], c.ring[j] = c.ring[j], c.ring[i]
		}
	}
	for i := range c.ring {
		c.hollow = append(c.hollow, c.turn(p, i) < 0)
	}
	at, refused := 0, 0
	for len(c.ring) > 3 {
		if at >= len(c.ring) {
			at = 0
		}
		// A whole round without an ear means that the polygon crosses itself. Any corner is then
		// removed, so that the loop ends.
		ear := c.isEar(p, at)
		if !ear && refused < len(c.ring) {
			at, refused = at+1, refused+1
			continue
		}
		if ear {
			c.emit(p, at)
		}
		c.remove(p, at)
		refused = 0
		// Moving on after each ear avoids a fan of thin triangles.
		at++
	}
	c.emit(p, 1)
	return c.out, area
}

func (c *clipper) neighbours(i int) (before, after int) {
	n := len(c.ring)
	return (i + n - 1) % n, (i + 1) % n
}

func (c *clipper) turn(p []draw.Point, i int) float64 {
	before, after := c.neighbours(i)
	return cross(p[c.ring[before]], p[c.ring[i]], p[c.ring[after]])
}

func (c *clipper) isEar(p []draw.Point, i int) bool {
	if c.hollow[i] {
		return false
	}
	before, after := c.neighbours(i)
	a, b, d := p[c.ring[before]], p[c.ring[i]], p[c.ring[after]]
	for j, hollow := range c.hollow {
		if !hollow || j == before || j == after {
			continue
		}
		q := p[c.ring[j]]
		if q != a && q != d && cross(a, b, q) >= 0 && cross(b, d, q) >= 0 && cross(d, a, q) >= 0 {
			return false
		}
	}
	return true
}

func (c *clipper) emit(p []draw.Point, i int) {
	if before, after := c.neighbours(i); c.turn(p, i) > 0 {
		c.out = append(c.out, [3]uint32{c.ring[before], c.ring[i], c.ring[after]})
	}
}

func (c *clipper) remove(p []draw.Point, i int) {
	c.ring = append(c.ring[:i], c.ring[i+1:]...)
	c.hollow = append(c.hollow[:i], c.hollow[i+1:]...)
	for _, j := range [2]int{i - 1, i} {
		j = (j + len(c.ring)) % len(c.ring)
		c.hollow[j] = c.turn(p, j) < 0
	}
}

func cross(a, b, c draw.Point) float64 {
	return (b.X-a.X)*(c.Y-a.Y) - (b.Y-a.Y)*(c.X-a.X)
}
