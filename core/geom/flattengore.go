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
