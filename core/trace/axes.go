package trace

import (
	"math"

	"barkwright/core/geom"
)

// Point is a point pressed on a picture.
type Point struct {
	geom.Vec2
	// Spread is the standard deviation of each of its coordinates, pixels.
	Spread float64
}

// Rectangle is one of known sizes in the plane that is read: its corners in their order
// round it, what it measures from the first to the second and from the second to the third,
// and the spread of either, metres.
type Rectangle struct {
	Corners            [4]Point
	Wide, High, Spread float64
}

// Setting is what a view of a picture is read by.
type Setting struct {
	// Rectangle sets the view's plane square; nil where the picture is square as it stands.
	Rectangle *Rectangle
	// Base are two points of the line that heights are taken from, the first of them where x
	// is less. A view looked at from above has the boat's centre line for it.
	Base [2]Point
	// Middle is a point at x = 0.
	Middle Point
	// Up is roughly which way is up, in pixels.
	Up    geom.Vec2
	Sizes []Size
	// Uneven is the spread of the share by which one axis of the paper may be scaled other than
	// the other. Loose is the spread of a share of all lengths, for a picture of which nobody
	// knows how square on it was taken.
	Uneven, Loose float64
}

const (
	// shortest is the least distance, in pixels, between two points that give a direction or a
	// scale, and roughest the largest spread of a scale that lengths are read with, as a share.
	// leastUp is the least of the way up that may lie square to the base line. Choices of
	// this project.
	shortest, roughest, leastUp = 12.0, 0.05, 0.3
	// smallest keeps a length that is taken as exact from having an endless weight, metres.
	smallest = 1e-5
)

// axes is a view's plane as it lies in the picture.
type axes struct {
	square            Square
	origin, along, up geom.Vec2
	scale             Scale
}

// guess is what no point tells: by what share the paper is larger along than up, and by what
// share a picture is larger along and up than it was taken for.
type guess struct{ uneven, along, up float64 }

// lay finds the axes.
func lay(s Setting, g guess) (axes, error) {
	var a axes
	sizes := s.Sizes
	if r := s.Rectangle; r != nil {
		var corners [4]geom.Vec2
		for i, c := range r.Corners {
			corners[i] = c.Vec2
		}
		var err error
		if a.square, err = SquareOf(corners, r.Wide, r.High); err != nil {
			return axes{}, err
		}
		sides := []Size{{r.Corners[0], r.Corners[1], r.Wide, r.Spread}, {r.Corners[1], r.Corners[2], r.High, r.Spread}}
		sizes = append(sides, sizes...)
	}
	p, ok := a.square.At(s.Base[0].Vec2)
	q, ahead := a.square.At(s.Base[1].Vec2)
	middle, seen := a.square.At(s.Middle.Vec2)
	if !ok || !ahead || !seen {
		return axes{}, BeyondHorizon
	}
	if s.Base[1].Sub(s.Base[0].Vec2).Len() < shortest {
		return axes{}, ShortBase
	}
	a.along = q.Sub(p).Unit()
	a.up = a.along.Left()
	// Up as the plane has it, by a step of a pixel at the base line.
	step, ok := a.square.At(s.Base[0].Add(s.Up.Unit()))
	if !ok {
		return axes{}, BeyondHorizon
	}
	rise := a.up.Dot(step.Sub(p).Unit())
	if math.Abs(rise) < leastUp {
		return axes{}, NoUp
	}
	if rise < 0 {
		a.up = a.up.Scale(-1)
	}
	a.origin = p.Add(a.along.Scale(a.along.Dot(middle.Sub(p))))
	taken, err := a.crossed(sizes)
	if err != nil {
		return axes{}, err
	}
	a.scale = weigh(taken, s.Uneven, g.uneven)
	a.scale.Along *= 1 + g.along
	a.scale.Up *= 1 + g.up
	return a, nil
}

// crossed are the sizes as they run along and up the axes.
func (a axes) crossed(sizes []Size) ([]across, error) {
	if len(sizes) == 0 {
		return nil, NoSize
	}
	out := make([]across, len(sizes))
	for i, s := range sizes {
		p, ok := a.square.At(s.A.Vec2)
		q, seen := a.square.At(s.B.Vec2)
		pixels := s.B.Sub(s.A.Vec2).Len()
		switch {
		case !ok || !seen:
			return nil, BeyondHorizon
		case pixels < shortest:
			return nil, ShortSize
		case !(s.Length > 0):
			return nil, NoSize
		}
		d := q.Sub(p)
		pressed := math.Hypot(s.A.Spread, s.B.Spread) / pixels * s.Length
		out[i] = across{a.along.Dot(d), a.up.Dot(d), s.Length, math.Hypot(max(s.Spread, smallest), pressed)}
	}
	return out, nil
}

// at is where a point of the picture lies in the view, metres along from the middle and up
// from the base line.
func (a axes) at(p geom.Vec2) (geom.Vec2, bool) {
	q, ok := a.square.At(p)
	d := q.Sub(a.origin)
	return geom.Vec2{X: a.scale.Along * a.along.Dot(d), Y: a.scale.Up * a.up.Dot(d)}, ok
}
