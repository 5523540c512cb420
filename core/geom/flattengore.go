package geom

import "math"

// Gore is the opening of a slit on the sheet laid flat.
type Gore struct {
	Width float64 // across its mouth; negative where the banks overlap
	Angle float64 // between the chords of its banks, radians, signed like Width
	Depth float64 // from the foot to the middle of the mouth

	Before, After []Vec2 // its banks, foot first
}

// NewGore measures the opening between two banks that start at the same foot;
// the sheet lies to the left of before and to the right of after, both seen from
// the foot, or the other way about on a mirrored sheet (sense -1).
func NewGore(before, after []Vec2, sense float64) Gore {
	foot := before[0]
	b, a := before[len(before)-1].Sub(foot), after[len(after)-1].Sub(foot)
	mouth := a.Sub(b)
	middle := a.Add(b).Scale(0.5)
	turn := sense * math.Atan2(a.Cross(b), a.Dot(b))
	return Gore{
		Width:  math.Copysign(mouth.Len(), turn),
		Angle:  turn,
		Depth:  middle.Len(),
		Before: before,
		After:  after,
	}
}

// Gore returns the opening of slit number i.
func (f *Flat) Gore(i int) Gore {
	s := f.slits[i]
	sense := 1.0
	if turning(f.Points, f.mesh.triangles[0]) < 0 {
		sense = -1
	}
	return NewGore(f.Column(s.Col, s.Foot, Before), f.Column(s.Col, s.Foot, After), sense)
}

// crossingShare is how far two edges must pass each other, as a share of their
// lengths, to be called crossing: the closed banks of a slit in a surface that
// lies flat by itself touch, and rounding must not cross them.
const crossingShare = 1e-6

// SelfCrossing returns a place where a closed line crosses itself, and whether
// there is one. Banks that only touch do not cross.
func SelfCrossing(line []Vec2) (Vec2, bool) {
	n := len(line)
	for i := range n {
		a, b := line[i], line[(i+1)%n]
		for j := i + 2; j < n; j++ {
			if (j+1)%n == i {
				continue
			}
			if at, ok := crossing(a, b, line[j], line[(j+1)%n]); ok {
				return at, true
			}
		}
	}
	return Vec2{}, false
}

// crossing returns where the segments ab and cd pass through each other.
func crossing(a, b, c, d Vec2) (Vec2, bool) {
	if max(a.X, b.X) < min(c.X, d.X) || max(c.X, d.X) < min(a.X, b.X) ||
		max(a.Y, b.Y) < min(c.Y, d.Y) || max(c.Y, d.Y) < min(a.Y, b.Y) {
		return Vec2{}, false
	}
	u, v := b.Sub(a), d.Sub(c)
	scale := crossingShare * u.Len() * v.Len()
	turn := u.Cross(v)
	if math.Abs(turn) <= scale {
		return Vec2{}, false
	}
	t := c.Sub(a).Cross(v) / turn
	s := c.Sub(a).Cross(u) / turn
	const e = crossingShare
	if t <= e || t >= 1-e || s <= e || s >= 1-e {
		return Vec2{}, false
	}
	return a.Lerp(b, t), true
}
