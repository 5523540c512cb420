package draw

import (
	"cmp"
	"math"
)

// Part is a named piece of the picture, "rib.12" or "thwart.3".
type Part struct {
	Name   string
	Points []Point
	Closed bool
	// Under marks a surface that other parts lie on.
	Under bool
	// Hides marks such a surface that hides the parts added before it.
	Hides bool
}

// Hit is the part touched at p, or "" and false. The part added last wins among
// those that contain p; where none does, the nearest within tolerance (CSS
// pixels) is taken, and of two equally near the later. A surface under others is
// touched where none of them is. What a surface hides at p is not touched there.
func (l List) Hit(p Point, tolerance float64) (name string, ok bool) {
	nearest, under, hidden := tolerance, "", false
	for i := len(l.Parts) - 1; i >= 0 && !hidden; i-- {
		part := l.Parts[i]
		switch {
		case part.Under:
			if (under == "" || part.Hides) && Encloses(part.Points, p) {
				under, hidden = cmp.Or(under, part.Name), part.Hides
			}
			continue
		case part.Closed && Encloses(part.Points, p):
			return part.Name, true
		}
		d := part.distance(p)
		if d < nearest || (d == nearest && name == "") {
			nearest, name = d, part.Name
		}
	}
	if name == "" {
		name = under
	}
	return name, name != ""
}

// distance from p to the part's line or outline; +Inf for a part without points.
func (part Part) distance(p Point) float64 {
	least := math.Inf(1)
	n := len(part.Points)
	if n == 1 {
		return math.Hypot(p.X-part.Points[0].X, p.Y-part.Points[0].Y)
	}
	last := n - 1
	if part.Closed {
		last = n
	}
	for i := 0; i < last; i++ {
		least = min(least, toSegment(p, part.Points[i], part.Points[(i+1)%n]))
	}
	return least
}

func toSegment(p, a, b Point) float64 {
	dx, dy := b.X-a.X, b.Y-a.Y
	t := 0.0
	if length := dx*dx + dy*dy; length > 0 {
		t = max(0, min(1, ((p.X-a.X)*dx+(p.Y-a.Y)*dy)/length))
	}
	return math.Hypot(p.X-a.X-t*dx, p.Y-a.Y-t*dy)
}

// Encloses reports whether a point lies in an outline, by the even-odd rule.
func Encloses(outline []Point, p Point) bool {
	in := false
	for i, a := range outline {
		b := outline[(i+1)%len(outline)]
		if (a.Y > p.Y) != (b.Y > p.Y) && p.X < a.X+(p.Y-a.Y)/(b.Y-a.Y)*(b.X-a.X) {
			in = !in
		}
	}
	return in
}
